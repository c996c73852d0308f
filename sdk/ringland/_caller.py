"""One request and its answer: JSON both ways, problems raised as errors."""

import json
from collections.abc import Mapping, Sequence
from typing import Any

from ringland._errors import UnreadableAnswer, from_problem
from ringland._transport import Reply, Transport, asked_wait

JSON, TEXT, LINES = "application/json", "text/plain", "application/x-ndjson"
Params = Mapping[str, str] | Sequence[tuple[str, str]] | None


class Caller:
    """Asks the service, over a transport."""

    def __init__(self, transport: Transport) -> None:
        self.transport = transport

    def json(self, method: str, path: str, *, body: Any = None, params: Params = None) -> Any:
        """Return an answer in JSON; see ``named``."""
        return self.named(method, path, body=body, params=params)[0]

    def named(
        self, method: str, path: str, *, body: Any = None, params: Params = None
    ) -> tuple[Any, str]:
        """Return an answer in JSON, and the id of its request.

        Raises
        ------
        ServiceError, ConnectionFailed, UnreadableAnswer
        """
        reply = self._reply(method, path, JSON, body=body, params=params)
        return read_json(reply.body), request_id(reply)

    def text(self, method: str, path: str, *, body: Any = None, params: Params = None) -> str:
        """Return an answer as text for people.

        Raises
        ------
        ServiceError, ConnectionFailed
        """
        reply = self._reply(method, path, TEXT, body=body, params=params)
        return reply.body.decode("utf-8", "replace")

    def lines(self, path: str, body: bytes, params: Params) -> tuple[list[Any], str]:
        """Return an answer of one JSON object a line, and the id of its request.

        Raises
        ------
        ServiceError, ConnectionFailed, UnreadableAnswer
        """
        headers = {"Accept": LINES, "Content-Type": LINES}
        reply = self.transport.send("POST", path, params=params, body=body, headers=headers)
        raise_for_problem(reply)
        return [read_json(line) for line in reply.body.splitlines()], request_id(reply)

    def _reply(self, method: str, path: str, accept: str, *, body: Any, params: Params) -> Reply:
        headers = {"Accept": accept}
        data = None
        if body is not None:
            headers["Content-Type"] = JSON
            data = dumps(body)
        reply = self.transport.send(method, path, params=params, body=data, headers=headers)
        raise_for_problem(reply)
        return reply


def dumps(body: Any) -> bytes:
    """Return JSON as it is sent; bytes are sent as they are."""
    if isinstance(body, bytes):
        return body
    text = json.dumps(body, ensure_ascii=False, allow_nan=False, separators=(",", ":"))
    return text.encode("utf-8", "replace")


def request_id(reply: Reply) -> str:
    """Return the id of the request that a reply answers."""
    return reply.headers.get("X-Request-ID", "")


def read_json(body: bytes) -> Any:
    """Return a body in JSON.

    Raises
    ------
    UnreadableAnswer
    """
    try:
        return json.loads(body)
    except ValueError as error:
        raise UnreadableAnswer(f"the answer is not JSON: {error}") from error


def raise_for_problem(reply: Reply) -> None:
    """Raise the error that a reply tells of, if it does.

    Raises
    ------
    ServiceError
    """
    if reply.status == 200:
        return
    try:
        problem = json.loads(reply.body)
    except ValueError:
        problem = None
    location = reply.headers.get("Location")
    if 300 <= reply.status < 400 and location:
        problem = {"detail": f"redirected to {location}: use that address as base_url"}
    raise from_problem(
        reply.status, problem, request_id=request_id(reply), retry_after=asked_wait(reply)
    )
