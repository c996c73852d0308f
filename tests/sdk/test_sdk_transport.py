"""Behaviour on a wire: real servers on the loopback, no waiting (the waits are recorded)."""

import socket
from collections.abc import Iterator
from contextlib import closing
from itertools import count
from typing import Any

import pytest
import requests
from sdk_server import Scripted

from ringland import (
    Client,
    ConnectionFailed,
    InvalidInput,
    ServerFault,
    ServiceError,
    TimedOut,
    Timeout,
    TlsFailed,
    UnreadableAnswer,
    __version__,
)
from ringland._transport import CHUNK_BYTES, Transport, session_of_own

VERSION = b'{"version": "9.9", "formulas": {"displacement": "1"}}'


class Waits(list[float]):
    """Records waits instead of waiting."""

    def __call__(self, seconds: float) -> None:
        self.append(seconds)


@pytest.fixture
def session() -> Iterator[requests.Session]:
    with session_of_own() as found:
        yield found


def transport(url: str, session: requests.Session, waits: Waits, **options: Any) -> Transport:
    given = {"timeout": Timeout(), "retries": 2, "chance": lambda: 0.0, **options}
    return Transport(url, session, sleep=waits, **given)


@pytest.fixture
def free_port() -> int:
    """Return a port of the loopback on which nobody listens."""
    with closing(socket.create_server(("127.0.0.1", 0))) as listener:
        port: int = listener.getsockname()[1]
    return port


def test_unavailable_once_then_answered(scripted: Scripted) -> None:
    scripted.answers("503 Service Unavailable", Retry_After="0").answers("200 OK", VERSION)
    with Client(scripted.url) as client:
        assert client.version().version == "9.9"
    assert len(scripted.asked) == 2


def test_a_post_is_sent_again_whole(scripted: Scripted, session: requests.Session) -> None:
    scripted.answers("502 Bad Gateway").answers("504 Gateway Timeout").answers("200 OK")
    waits = Waits()
    sent = transport(scripted.url, session, waits).send(
        "POST", "/v1/x", params={"units": "us"}, body=b'{"a":1}', headers={"X-One": "1"}
    )
    assert sent.status == 200
    assert waits == [0.25, 0.5]
    assert [asked["body"] for asked in scripted.asked] == [b'{"a":1}'] * 3
    assert {asked["QUERY_STRING"] for asked in scripted.asked} == {"units=us"}
    assert {asked["HTTP_X_ONE"] for asked in scripted.asked} == {"1"}
    assert scripted.asked[0]["HTTP_USER_AGENT"].startswith(f"ringland/{__version__} ")


def test_what_retry_after_asks_for_is_waited(scripted: Scripted, session: requests.Session) -> None:
    scripted.answers("429 Too Many Requests", Retry_After="7").answers("200 OK")
    waits = Waits()
    transport(scripted.url, session, waits, chance=lambda: 1.0).send("GET", "/", headers={})
    assert waits == [8.75]


def test_unavailable_to_the_end(scripted: Scripted) -> None:
    scripted.answers("503 Service Unavailable", Retry_After="0")
    with Client(scripted.url, retries=1) as client, pytest.raises(ServerFault) as caught:
        client.version()
    assert (len(scripted.asked), caught.value.status) == (2, 503)


@pytest.mark.parametrize("status", ["500 Internal Server Error", "501 Not Implemented"])
def test_a_fault_that_would_come_again_is_not_retried(scripted: Scripted, status: str) -> None:
    scripted.answers(status, Retry_After="0")
    with Client(scripted.url) as client, pytest.raises(ServerFault) as caught:
        client.version()
    assert len(scripted.asked) == 1
    assert caught.value.retry_after is None


def test_no_wait_beyond_the_total(scripted: Scripted, session: requests.Session) -> None:
    scripted.answers("503 Service Unavailable", Retry_After="20")
    waits = Waits()
    sent = transport(scripted.url, session, waits, timeout=Timeout(total=10.0))
    assert sent.send("GET", "/", headers={}).status == 503
    assert (waits, len(scripted.asked)) == ([], 1)


def test_a_refused_connection_is_tried_again_and_then_told(
    free_port: int, session: requests.Session
) -> None:
    waits = Waits()
    url = f"http://127.0.0.1:{free_port}"
    with pytest.raises(ConnectionFailed, match=f"{url}: no answer: .*refused"):
        transport(url, session, waits).send("POST", "/v1/x", body=b"{}", headers={})
    assert waits == [0.25, 0.5]


def test_a_tls_fault_is_not_tried_again(scripted: Scripted, session: requests.Session) -> None:
    scripted.answers("200 OK")
    waits = Waits()
    url = scripted.url.replace("http:", "https:")
    with pytest.raises(TlsFailed, match="the connection is not secure"):
        transport(url, session, waits).send("GET", "/", headers={})
    assert (waits, scripted.asked) == ([], [])


def test_a_server_that_says_nothing_is_given_up(session: requests.Session) -> None:
    waits = Waits()
    with closing(socket.create_server(("127.0.0.1", 0))) as listener:
        url = f"http://127.0.0.1:{listener.getsockname()[1]}"
        sent = transport(url, session, waits, timeout=Timeout(read=0.05), retries=1)
        with pytest.raises(TimedOut, match="no answer in time"):
            sent.send("GET", "/", headers={})
    assert waits == [0.25]


def test_a_body_that_drips_ends_at_the_deadline(
    scripted: Scripted, session: requests.Session
) -> None:
    scripted.answers("200 OK", b"x" * 3 * CHUNK_BYTES)
    ticks = count(0.0, 4.0)
    sent = transport(
        scripted.url,
        session,
        Waits(),
        timeout=Timeout(total=10.0),
        retries=0,
        clock=lambda: next(ticks),
    )
    with pytest.raises(TimedOut, match="no whole answer within 10 s"):
        sent.send("GET", "/", headers={})


def test_a_body_cut_short_is_a_failed_connection(
    scripted: Scripted, session: requests.Session
) -> None:
    scripted.answers("200 OK", b"{", Content_Length="100")
    waits = Waits()
    with pytest.raises(ConnectionFailed, match="no answer"):
        transport(scripted.url, session, waits, retries=1).send("GET", "/", headers={})
    assert len(scripted.asked) == 2


def test_a_redirect_is_told_not_followed(scripted: Scripted) -> None:
    scripted.answers("301 Moved Permanently", Location="https://elsewhere.invalid/")
    with Client(scripted.url) as client, pytest.raises(ServiceError, match="use that address"):
        client.displacement(bore="68 mm", stroke="66 mm")
    assert len(scripted.asked) == 1


@pytest.mark.parametrize(
    ("body", "message"),
    [
        (b"<html>", "the answer is not JSON"),
        (b"[]", "an object was promised"),
        (b'{"formulas": {}}', "has no 'version'"),
        (b'{"version": "1", "formulas": 3}', "formulas: an object was promised"),
    ],
)
def test_an_answer_of_another_kind_is_told(scripted: Scripted, body: bytes, message: str) -> None:
    scripted.answers("200 OK", body)
    with Client(scripted.url) as client, pytest.raises(UnreadableAnswer, match=message):
        client.version()


def test_unknown_members_of_an_answer_are_ignored(scripted: Scripted) -> None:
    scripted.answers("200 OK", VERSION[:-1] + b', "later": {"x": [1]}}')
    with Client(scripted.url) as client:
        assert client.version().formulas == {"displacement": "1"}


class Counted(requests.Session):
    closed = 0

    def close(self) -> None:
        self.closed += 1
        super().close()


def test_a_session_that_was_given_stays_open(scripted: Scripted) -> None:
    scripted.answers("200 OK", VERSION)
    session = Counted()
    session.headers["X-Own"] = "yes"
    with Client(f"{scripted.url}/", session=session) as client:
        client.version()
    assert session.closed == 0
    assert scripted.asked[0]["HTTP_X_OWN"] == "yes"
    assert scripted.asked[0]["PATH_INFO"] == "/version"
    session.close()


def test_a_session_of_our_own_is_closed(monkeypatch: pytest.MonkeyPatch) -> None:
    session = Counted()
    monkeypatch.setattr("ringland._client.session_of_own", lambda: session)
    with Client("http://127.0.0.1:1"):
        pass
    assert session.closed == 1


def test_timeouts_are_finite() -> None:
    assert Timeout() == Timeout(connect=3.05, read=30.0, total=60.0)
    assert Timeout.of(2.0) == Timeout(connect=2.0, read=2.0, total=2.0)
    assert Timeout.of(45) == Timeout(connect=3.05, read=30.0, total=45)
    for wrong in (0.0, -1.0, float("inf"), float("nan"), None):
        with pytest.raises(InvalidInput, match="timeout: read must be a number of seconds above"):
            Timeout(read=wrong)  # type: ignore[arg-type]
    with pytest.raises(InvalidInput, match="a number of seconds"):
        Client("http://127.0.0.1:1", timeout=None)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("options", "message"),
    [
        ({"base_url": "127.0.0.1:8000"}, "base_url: .* is no address"),
        ({"base_url": "http://127.0.0.1:1", "retries": -1}, "retries: a whole number"),
        ({"base_url": "http://127.0.0.1:1", "retries": True}, "retries: a whole number"),
    ],
)
def test_a_client_that_could_not_work_is_not_made(options: dict[str, Any], message: str) -> None:
    with pytest.raises(InvalidInput, match=message):
        Client(**options)
