"""A body that does not arrive whole is refused, and never computed with what is left of it."""

import io
import json
import socket
from collections.abc import Iterator
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest
from asking import ENGINE, problem
from flask.testing import FlaskClient

from live_server import running_gunicorn

CONFIG = Path(__file__).parents[2] / "docker" / "gunicorn.conf.py"
SINGLE, BATCH = "/v1/displacement", "/v1/displacement/batch"
COLUMNS = {
    "shared": {"stroke": ENGINE["stroke"]},
    "columns": {"bore": {"values": [68, 69], "unit": "mm"}},
}
# Each is sound to the last byte; the cut falls where what is left would still be sound.
BODIES: dict[str, tuple[str, str, bytes, int]] = {
    "JSON": (SINGLE, "application/json", json.dumps(ENGINE).encode() + b"\n\n", 1),
    "JSON columns": (BATCH, "application/json", json.dumps(COLUMNS).encode() + b" ", 1),
    "CSV": (BATCH, "text/csv", b"bore [mm],stroke [mm]\n68.0,66.5", 2),
    "CSV rows": (BATCH, "text/csv", b"bore [mm],stroke [mm]\n68.0,66.0\n69.0,66.0\n", 10),
    "NDJSON": (BATCH, "application/x-ndjson", 2 * (json.dumps(ENGINE).encode() + b"\n"), 77),
    "page": ("/v1/job-card.html", "application/json", b'{"engine": {}}  ', 1),
}
BY_BODY = pytest.mark.parametrize("name", BODIES)
# What follows the head of a chunked request, by what is wrong with it; b"%b" is the body.
CHUNKS = {
    "size is no number": b"zz\r\n%b\r\n0\r\n\r\n",
    "size is signed": b"-5\r\n%b\r\n0\r\n\r\n",
    "size is too small": b"5\r\n%b\r\n0\r\n\r\n",
    "size is empty": b"\r\n%b\r\n0\r\n\r\n",
    "extension is none": b'5;="x\r\n%b\r\n0\r\n\r\n',
    "trailer is none": b"5\r\n     \r\n0\r\nno trailer\r\n\r\n",
}
# And those that end before a chunk is finished, or before the first line end.
CUT_CHUNKS = {
    "no size": b"%b",
    "lines end with LF alone": b"5\n%b\n0\n\n",
    "chunk is cut off": b"fff\r\n%b",
    "last chunk is missing": b"%x\r\n%b\r\n",
    "end of the last chunk is missing": b"%x\r\n%b\r\n0\r\n",
}


REST = ("Host: x", "Connection: close")


@pytest.fixture(scope="module", params=["as README starts it", "as the image starts it"])
def server(request: pytest.FixtureRequest) -> Iterator[tuple[str, int]]:
    """A real server; its log must not hold a trace."""
    log: list[str] = []
    options = ["--config", str(CONFIG)] if "image" in request.param else []
    with running_gunicorn(options=options, log=log) as address:
        parts = urlsplit(address)
        yield str(parts.hostname), int(parts.port or 0)
    assert "Traceback" not in log[0], log[0]


def sent(server: tuple[str, int], head: str, body: bytes) -> tuple[int, bytes]:
    """Send bytes, say that no more will come, and return status and body of the answer."""
    with socket.create_connection(server, timeout=20) as connection:
        connection.sendall(head.encode() + b"\r\n" + body)
        connection.shutdown(socket.SHUT_WR)
        answer = b"".join(iter(lambda: connection.recv(65536), b""))
    top, _, rest = answer.partition(b"\r\n\r\n")
    return int(top.split()[1]), rest


def head_of(name: str, framing: str) -> str:
    path, kind, *_ = BODIES[name]
    lines = [f"POST {path} HTTP/1.1", *REST, f"Content-Type: {kind}", framing, ""]
    return "\r\n".join(lines)


def chunked(pattern: bytes, body: bytes) -> bytes:
    return pattern.replace(b"%b", body).replace(b"%x", f"{len(body):x}".encode())


def says(found: tuple[int, bytes], code: str) -> Any:
    status, text = found
    assert status == 400, text
    problem_ = json.loads(text)
    (fault,) = problem_["errors"]
    assert (problem_["status"], fault["code"], fault["pointer"]) == (400, code, "#")
    return fault


@BY_BODY
def test_whole_body_is_answered(server: tuple[str, int], name: str) -> None:
    """The bodies are sound, in one piece and in chunks: what follows fails for the cut alone."""
    body = BODIES[name][2]
    length = head_of(name, f"Content-Length: {len(body)}")
    assert sent(server, length, body)[0] == 200
    pieces = chunked(b"%x\r\n%b\r\n0\r\n\r\n", body)
    assert sent(server, head_of(name, "Transfer-Encoding: chunked"), pieces)[0] == 200


@BY_BODY
def test_body_shorter_than_announced(server: tuple[str, int], name: str) -> None:
    body, cut = BODIES[name][2:]
    head = head_of(name, f"Content-Length: {len(body)}")
    for left in (len(body) - cut, len(body) - 1, len(body) // 2, 0):
        fault = says(sent(server, head, body[:left]), "incomplete_body")
        assert str(len(body)) in fault["detail"]


@BY_BODY
def test_what_is_left_would_have_been_answered(client: FlaskClient, name: str) -> None:
    """So the test above guards against a wrong answer, not only against a worse message."""
    path, kind, body, cut = BODIES[name]
    assert client.post(path, data=body[:-cut], content_type=kind).status_code == 200


@BY_BODY
@pytest.mark.parametrize("wrong", CHUNKS)
def test_malformed_chunk(server: tuple[str, int], name: str, wrong: str) -> None:
    head = head_of(name, "Transfer-Encoding: chunked")
    fault = says(sent(server, head, chunked(CHUNKS[wrong], BODIES[name][2])), "broken_body")
    assert "RFC 9112" in fault["detail"]


@BY_BODY
@pytest.mark.parametrize("wrong", CUT_CHUNKS)
def test_chunked_body_that_ends_early(server: tuple[str, int], name: str, wrong: str) -> None:
    head = head_of(name, "Transfer-Encoding: chunked")
    status, text = sent(server, head, chunked(CUT_CHUNKS[wrong], BODIES[name][2]))
    assert status == 400
    (fault,) = json.loads(text)["errors"]
    assert fault["code"] in ("incomplete_body", "broken_body")


def test_server_lives_on(server: tuple[str, int]) -> None:
    status, text = sent(
        server, "GET /health/live HTTP/1.1\r\nHost: x\r\nConnection: close\r\n", b""
    )
    assert (status, json.loads(text)) == (200, {"status": "ok"})


class Breaking(io.RawIOBase):
    """An input that fails while it is read, as a server's own does."""

    def __init__(self, error: Exception) -> None:
        self.error = error

    def read(self, size: int = -1) -> bytes:
        raise self.error

    readinto = read  # type: ignore[assignment]


class ServersOwnError(Exception):
    """What no application can know by name."""


@BY_BODY
@pytest.mark.parametrize(
    ("error", "code"),
    [(ServersOwnError(), "broken_body"), (OSError(), "incomplete_body")],
    ids=["malformed", "connection lost"],
)
def test_input_that_fails(client: FlaskClient, name: str, error: Exception, code: str) -> None:
    path, kind, *_ = BODIES[name]
    environ = {"wsgi.input": Breaking(error), "wsgi.input_terminated": True}
    found = problem(client.post(path, content_type=kind, environ_overrides=environ), 400)
    assert [fault["code"] for fault in found["errors"]] == [code]


@BY_BODY
@pytest.mark.parametrize("terminated", [True, False])
def test_input_that_ends_early(client: FlaskClient, name: str, terminated: bool) -> None:
    """Of a server that says it ends the input, as gunicorn does, and of one that does not."""
    path, kind, body, cut = BODIES[name]
    environ: dict[str, Any] = {
        "wsgi.input": io.BytesIO(body[:-cut]),
        "CONTENT_LENGTH": str(len(body)),
    }
    if terminated:
        environ["wsgi.input_terminated"] = True
    found = problem(client.post(path, content_type=kind, environ_overrides=environ), 400)
    assert [fault["code"] for fault in found["errors"]] == ["incomplete_body"]
