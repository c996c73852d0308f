"""The service in the same process: requests go to its WSGI object, without a socket."""

import io
import sys
from collections.abc import Callable, Iterable, Mapping
from typing import Any
from urllib.parse import unquote, urlsplit
from wsgiref.types import WSGIApplication

import requests
from requests.adapters import BaseAdapter
from requests.structures import CaseInsensitiveDict

from ringland._errors import ServiceMissing

# "invalid" is reserved (RFC 2606): it can never be a real host.
BASE_URL = "http://embedded.invalid"
HINT = "the service is not installed here; pip install 'ringland[embedded]'"


def service() -> WSGIApplication:
    """Return the service's WSGI object.

    Raises
    ------
    ServiceMissing
        Where ``ringland-service`` is not installed.
    """
    try:
        from ringland_service.wsgi import app
    except ModuleNotFoundError as error:
        # Another missing module is a broken installation, and says so itself.
        if (error.name or "").partition(".")[0] != "ringland_service":
            raise
        raise ServiceMissing(HINT) from error
    found: WSGIApplication = app
    return found


def session(app: WSGIApplication) -> requests.Session:
    """Return a session whose requests to ``BASE_URL`` are answered by ``app``."""
    found = requests.Session()
    found.trust_env = False  # no proxy and no .netrc between a process and itself
    found.mount(BASE_URL, WsgiAdapter(app))
    return found


class WsgiAdapter(BaseAdapter):
    """Answers requests by calling a WSGI application."""

    def __init__(self, app: WSGIApplication) -> None:
        super().__init__()
        self.app = app

    def send(
        self,
        request: requests.PreparedRequest,
        stream: bool = False,
        timeout: Any = None,
        verify: Any = True,
        cert: Any = None,
        proxies: Mapping[str, str] | None = None,
    ) -> requests.Response:
        """Return the application's response; a call in the process takes no timeout."""
        started: list[tuple[str, list[tuple[str, str]]]] = []

        def start_response(
            status: str, headers: list[tuple[str, str]], exc_info: Any = None
        ) -> Callable[[bytes], object]:
            started.append((status, headers))
            return lambda data: None

        answered = self.app(environ(request), start_response)
        body = _joined(answered)
        status, headers = started[-1]
        response = requests.Response()
        response.status_code = int(status.split(" ", 1)[0])
        response.reason = status.partition(" ")[2]
        response.headers = CaseInsensitiveDict(headers)
        response.raw = io.BytesIO(body)
        response.url = request.url or BASE_URL
        response.request = request
        return response

    def close(self) -> None:
        """Release nothing: there is no connection."""


def _joined(parts: Iterable[bytes]) -> bytes:
    """Return a WSGI body as one, closed as PEP 3333 asks."""
    try:
        return b"".join(parts)
    finally:
        close = getattr(parts, "close", None)
        if close is not None:
            close()


def environ(request: requests.PreparedRequest) -> dict[str, Any]:
    """Return a request as WSGI has it (PEP 3333)."""
    url = urlsplit(request.url or "")
    body = request.body or b""
    body = body.encode() if isinstance(body, str) else body
    assert isinstance(body, bytes)  # noqa: S101 - this package sends no streams
    found: dict[str, Any] = {
        "REQUEST_METHOD": request.method or "GET",
        "SCRIPT_NAME": "",
        # WSGI wants the bytes of the path, one character each.
        "PATH_INFO": unquote(url.path or "/", "latin-1"),
        "QUERY_STRING": url.query,
        "SERVER_NAME": url.hostname or "",
        "SERVER_PORT": "80",
        "SERVER_PROTOCOL": "HTTP/1.1",
        "REMOTE_ADDR": "127.0.0.1",
        "CONTENT_LENGTH": str(len(body)),
        "wsgi.version": (1, 0),
        "wsgi.url_scheme": url.scheme,
        "wsgi.input": io.BytesIO(body),
        "wsgi.errors": sys.stderr,
        "wsgi.multithread": True,
        "wsgi.multiprocess": False,
        "wsgi.run_once": False,
        "HTTP_HOST": url.netloc,
    }
    for name, value in request.headers.items():
        key = name.upper().replace("-", "_")
        text = value.decode("latin-1") if isinstance(value, bytes) else value
        if key == "CONTENT_TYPE":
            found[key] = text
        elif key != "CONTENT_LENGTH":
            found[f"HTTP_{key}"] = text
    return found
