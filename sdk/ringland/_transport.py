"""How requests travel: a pooled session, finite timeouts, a total deadline, retries."""

import math
import random
import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

import requests
from requests import exceptions as failures
from requests.adapters import HTTPAdapter

from ringland import __version__, _retry
from ringland._errors import (
    ConnectionFailed,
    InvalidInput,
    RinglandError,
    TimedOut,
    TlsFailed,
)

POOL = 16
CHUNK_BYTES = 64 * 1024


@dataclass(frozen=True)
class Timeout:
    """How long to wait, all finite.

    Attributes
    ----------
    connect : float
        For a connection, each try [s]; a little above 3 s, when a lost packet is sent again.
    read : float
        For the next bytes of the answer [s].
    total : float
        For everything: all tries and the waits between them [s].
    """

    connect: float = 3.05
    read: float = 30.0
    total: float = 60.0

    def __post_init__(self) -> None:
        for name, value in vars(self).items():
            if not isinstance(value, int | float) or not 0.0 < value < math.inf:
                raise InvalidInput(f"timeout: {name} must be a number of seconds above 0")

    @classmethod
    def of(cls, given: "Timeout | float") -> "Timeout":
        """Return a timeout; a number is the total, and the other two stay within it."""
        if isinstance(given, Timeout):
            return given
        usual = cls()
        if isinstance(given, bool) or not isinstance(given, int | float):
            raise InvalidInput("timeout: a number of seconds, or Timeout(...)")
        return cls(min(usual.connect, given), min(usual.read, given), given)


@dataclass(frozen=True)
class Reply:
    """An answer of the server, not yet understood."""

    status: int
    headers: Mapping[str, str]
    body: bytes


def session_of_own() -> requests.Session:
    """Return a session with a pool of connections and no retries below our own."""
    session = requests.Session()
    for scheme in ("http://", "https://"):
        session.mount(scheme, HTTPAdapter(pool_connections=4, pool_maxsize=POOL, max_retries=0))
    return session


class Transport:
    """Sends requests to one service.

    Parameters
    ----------
    base_url : str
    session : requests.Session
    timeout : Timeout
    retries : int
        Further tries after one that failed, as ``_retry`` decides.
    sleep, clock, chance : callable
        Replaced in tests.
    """

    def __init__(
        self,
        base_url: str,
        session: requests.Session,
        *,
        timeout: Timeout,
        retries: int,
        sleep: Callable[[float], None] = time.sleep,
        clock: Callable[[], float] = time.monotonic,
        chance: Callable[[], float] = random.random,
    ) -> None:
        if not base_url.startswith(("http://", "https://")):
            raise InvalidInput(f"base_url: {base_url!r} is no address: write 'http://host:8000'")
        if isinstance(retries, bool) or not isinstance(retries, int) or retries < 0:
            raise InvalidInput("retries: a whole number, 0 or more")
        self.base_url = base_url.rstrip("/")
        self.session = session
        self.timeout = timeout
        self.retries = retries
        self._sleep, self._clock, self._chance = sleep, clock, chance

    def send(
        self,
        method: str,
        path: str,
        *,
        params: Any = None,
        body: bytes | None = None,
        headers: Mapping[str, str],
    ) -> Reply:
        """Return the server's answer, whatever its status.

        Raises
        ------
        ConnectionFailed
            Where none came, after the tries allowed.
        """
        deadline = self._clock() + self.timeout.total
        attempt = 0
        while True:
            attempt += 1
            reply, fault = self._try(method, path, params, body, headers, deadline)
            status = None if reply is None else reply.status
            if isinstance(fault, TlsFailed) or not _retry.decision(attempt, self.retries, status):
                break
            asked = None if reply is None else asked_wait(reply)
            wait = _retry.delay(attempt, asked)
            wait = None if wait is None else _retry.jitter(wait, self._chance())
            if wait is None or self._clock() + wait >= deadline:
                break
            self._sleep(wait)
        if fault is not None:
            raise fault
        assert reply is not None  # noqa: S101 - a try gives a reply or a fault
        return reply

    def _try(
        self,
        method: str,
        path: str,
        params: Any,
        body: bytes | None,
        headers: Mapping[str, str],
        deadline: float,
    ) -> tuple[Reply | None, RinglandError | None]:
        try:
            return self._once(method, path, params, body, headers, deadline), None
        except ConnectionFailed as fault:
            return None, fault
        except failures.RequestException as error:
            return None, self._understood(error)

    def _once(
        self,
        method: str,
        path: str,
        params: Any,
        body: bytes | None,
        headers: Mapping[str, str],
        deadline: float,
    ) -> Reply:
        left = max(deadline - self._clock(), 0.001)
        # Redirects would turn a POST into a GET: not followed, the caller is told.
        response = self.session.request(
            method,
            self.base_url + path,
            params=params,
            data=body,
            headers={"User-Agent": user_agent(), **headers},
            timeout=(min(self.timeout.connect, left), min(self.timeout.read, left)),
            allow_redirects=False,
            stream=True,
        )
        with response:
            return Reply(response.status_code, response.headers, self._read(response, deadline))

    def _read(self, response: requests.Response, deadline: float) -> bytes:
        """Return the body; the deadline holds even where it comes a drop at a time."""
        parts = []
        for part in response.iter_content(CHUNK_BYTES):
            parts.append(part)
            if self._clock() > deadline:
                raise TimedOut(f"no whole answer within {self.timeout.total:g} s")
        return b"".join(parts)

    def _understood(self, error: failures.RequestException) -> RinglandError:
        """Return a failure of the session as an error of ours."""
        # SSLError is a ConnectionError to requests, so it is asked for first.
        if isinstance(error, failures.SSLError):
            return TlsFailed(f"{self.base_url}: the connection is not secure: {error}")
        if isinstance(error, failures.Timeout):
            return TimedOut(f"{self.base_url}: no answer in time: {error}")
        return ConnectionFailed(f"{self.base_url}: no answer: {error}")


def asked_wait(reply: Reply) -> float | None:
    """Return the wait that a refusal asks for [s]; on other answers the header means nothing."""
    if reply.status not in _retry.RETRIED:
        return None
    return _retry.retry_after(reply.headers.get("Retry-After"), datetime.now(UTC))


def user_agent() -> str:
    """Return what this client calls itself."""
    return f"ringland/{__version__} requests/{requests.__version__}"
