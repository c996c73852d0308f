"""Real servers for tests: on the loopback, on a port that the system picks, in a thread."""

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any
from wsgiref.simple_server import WSGIRequestHandler, WSGIServer, make_server

PATIENCE_S = 30


class _Quiet(WSGIRequestHandler):
    def log_message(self, format: str, *args: Any) -> None:  # noqa: A002 - its name
        pass


class _Server(WSGIServer):
    def handle_error(self, request: Any, client_address: Any) -> None:
        """Say nothing: callers that go away are part of the tests."""


@contextmanager
def serving(app: Any) -> Iterator[str]:
    """Run a WSGI application and yield its address."""
    server = make_server("127.0.0.1", 0, app, server_class=_Server, handler_class=_Quiet)
    thread = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.01})
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_port}"
    finally:
        server.shutdown()
        thread.join(PATIENCE_S)
        server.server_close()


@dataclass
class Scripted:
    """A WSGI application that answers from a script and remembers what it was asked.

    Each entry is a status line, headers, and a body; the last one is answered again and again.
    """

    script: list[tuple[str, dict[str, str], bytes]] = field(default_factory=list)
    asked: list[dict[str, Any]] = field(default_factory=list)
    url: str = ""

    def answers(self, status: str, body: bytes = b"{}", **headers: str) -> "Scripted":
        self.script.append((status, {k.replace("_", "-"): v for k, v in headers.items()}, body))
        return self

    def __call__(self, environ: dict[str, Any], start_response: Any) -> list[bytes]:
        length = int(environ.get("CONTENT_LENGTH") or 0)
        self.asked.append({**environ, "body": environ["wsgi.input"].read(length)})
        status, headers, body = self.script.pop(0) if len(self.script) > 1 else self.script[0]
        start_response(status, list(headers.items()))
        return [body]
