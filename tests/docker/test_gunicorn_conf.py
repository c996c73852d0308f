"""The server's settings: accepted by the server, and a real run on the loopback."""

import http.client
import json
import os
import re
import runpy
import signal
import socket
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import pytest
from gunicorn.config import KNOWN_SETTINGS

from ringland_service.api.reading import row_budget

DOCKER = Path(__file__).parents[2] / "docker"
CONF = DOCKER / "gunicorn.conf.py"
PATIENCE_S = 30
IMPORTED = {"os", "suppress", "Any"}

# Answers 200, or what STATUS says; /slow calls the test on a port and waits for a byte.
TINY_APP = """
import os
import socket


def app(environ, start_response):
    if environ["PATH_INFO"] == "/slow":
        with socket.create_connection(("127.0.0.1", int(environ["QUERY_STRING"])), 30) as caller:
            caller.recv(1)
    body = environ["wsgi.url_scheme"].encode()
    start_response(os.environ.get("STATUS", "200 OK"), [("Content-Length", str(len(body)))])
    return [body]
"""


def environment(**changes: str) -> dict[str, str]:
    """Return this process's environment less all that steers the server, with changes."""
    steering = ("RINGLAND_", "GUNICORN_", "WEB_CONCURRENCY", "FORWARDED_ALLOW_IPS", "XDG_RUNTIME")
    kept = {k: v for k, v in os.environ.items() if not k.startswith(steering)}
    return kept | changes


def command(*options: str) -> list[str]:
    return [sys.executable, "-m", "gunicorn", "--config", str(CONF), *options, "tiny:app"]


@pytest.fixture
def app_dir(tmp_path: Path) -> Path:
    (tmp_path / "tiny.py").write_text(TINY_APP)
    return tmp_path


@contextmanager
def running(app_dir: Path, **changes: str) -> Iterator[tuple["subprocess.Popen[str]", int]]:
    """Run the server on a listening socket made here: the port is known and takes calls at once."""
    log = app_dir / "server.log"
    with socket.create_server(("127.0.0.1", 0)) as listener, log.open("w") as out:
        port: int = listener.getsockname()[1]
        env = environment(
            RINGLAND_BIND=f"fd://{listener.fileno()}", HOME=str(app_dir / "no-home"), **changes
        )
        server = subprocess.Popen(
            command(),
            cwd=app_dir,
            env=env,
            pass_fds=[listener.fileno()],
            stdout=out,
            stderr=subprocess.STDOUT,
            text=True,
        )
    try:
        yield server, port
    finally:
        server.kill()
        server.wait(PATIENCE_S)


def get(port: int, path: str = "/", **headers: str) -> tuple[int, bytes]:
    with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=PATIENCE_S)) as call:
        call.request("GET", path, headers=headers)
        answer = call.getresponse()
        return answer.status, answer.read()


def settings_under(monkeypatch: pytest.MonkeyPatch, **changes: str) -> dict[str, object]:
    """Return the settings that the file makes of an environment."""
    for name in set(os.environ) - set(environment()):
        monkeypatch.delenv(name)
    for name, value in changes.items():
        monkeypatch.setenv(name, value)
    loaded = runpy.run_path(str(CONF))
    return {k: v for k, v in loaded.items() if not k.startswith("_") and k not in IMPORTED}


def test_server_accepts_the_settings(app_dir: Path) -> None:
    run = subprocess.run(
        command("--check-config"),
        cwd=app_dir,
        env=environment(),
        capture_output=True,
        text=True,
        timeout=PATIENCE_S,
    )
    assert (run.returncode, run.stdout, run.stderr) == (0, "", "")


# The server passes over names that it does not know, so a misspelt one would do nothing.
def test_every_name_is_a_setting_of_the_server(monkeypatch: pytest.MonkeyPatch) -> None:
    known = {setting.name for setting in KNOWN_SETTINGS}
    assert set(settings_under(monkeypatch)) <= known


def test_defaults(monkeypatch: pytest.MonkeyPatch) -> None:
    found = settings_under(monkeypatch)
    assert found["wsgi_app"] == "ringland_service.wsgi:app"
    assert found["bind"] == "0.0.0.0:8000"
    assert found["workers"] == len(os.sched_getaffinity(0))
    assert found["worker_class"] == "gthread"
    assert found["limit_request_line"] == 8190
    assert found["forwarded_allow_ips"] == "127.0.0.1,::1"
    assert found["accesslog"] is None
    assert found["preload_app"] is True


def test_environment_sets_what_a_site_may_change(monkeypatch: pytest.MonkeyPatch) -> None:
    found = settings_under(
        monkeypatch,
        RINGLAND_BIND="127.0.0.1:9000",
        RINGLAND_WORKERS="3",
        RINGLAND_THREADS="5",
        RINGLAND_TIMEOUT_S="7",
        RINGLAND_GRACEFUL_TIMEOUT_S="8",
        RINGLAND_FORWARDED_ALLOW_IPS="10.0.0.0/8",
        RINGLAND_SERVER_ACCESS_LOG="-",
    )
    names = ["bind", "workers", "threads", "timeout", "graceful_timeout"]
    assert [found[name] for name in names] == ["127.0.0.1:9000", 3, 5, 7, 8]
    assert found["forwarded_allow_ips"] == "10.0.0.0/8"
    assert found["accesslog"] == "-"


@pytest.mark.parametrize("text", ["", "two", "0", "-1", "1.5", "²", "1_0"])
def test_bad_count_is_refused_by_name(monkeypatch: pytest.MonkeyPatch, text: str) -> None:
    message = (
        f"^RINGLAND_WORKERS must be a whole number of at least 1, .* got {re.escape(repr(text))}$"
    )
    with pytest.raises(ValueError, match=message):
        settings_under(monkeypatch, RINGLAND_WORKERS=text)


def test_stops_within_the_time_that_the_container_is_given(monkeypatch: pytest.MonkeyPatch) -> None:
    (stop_s,) = re.findall(r"stop_grace_period: (\d+)s", (DOCKER / "compose.yaml").read_text())
    assert settings_under(monkeypatch)["graceful_timeout"] < int(stop_s)  # type: ignore[operator]


def test_unread_bodies_are_taken_as_large_as_the_proxy_lets_through() -> None:
    (allowed_mib,) = re.findall(
        r"client_max_body_size (\d+)m;", (DOCKER / "nginx.conf").read_text()
    )
    assert runpy.run_path(str(CONF))["_LARGEST_BODY_BYTES"] == int(allowed_mib) * 2**20


# One worker: a second could still be starting, and would learn of the stop only by the timeout.
def test_answers_and_stops_cleanly_without_a_home(app_dir: Path) -> None:
    with running(app_dir, RINGLAND_WORKERS="1") as (server, port):
        assert get(port) == (200, b"http")
        server.send_signal(signal.SIGTERM)
        assert server.wait(PATIENCE_S) == 0
    log = (app_dir / "server.log").read_text()
    assert log.count("Booting worker") == 1
    assert "Using worker: gthread" in log
    assert not re.search(r"\[(ERROR|WARNING|CRITICAL)\]", log), log
    assert not (app_dir / "no-home").exists()


def test_request_in_flight_is_finished_on_sigterm(app_dir: Path) -> None:
    with (
        running(app_dir, RINGLAND_WORKERS="1") as (server, port),
        socket.create_server(("127.0.0.1", 0)) as meeting,
        socket.create_connection(("127.0.0.1", port), PATIENCE_S) as client,
    ):
        path = f"/slow?{meeting.getsockname()[1]}"
        client.sendall(f"GET {path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n".encode())
        meeting.settimeout(PATIENCE_S)
        in_app, _ = meeting.accept()
        with in_app:
            server.send_signal(signal.SIGTERM)
            in_app.sendall(b".")
        assert client.recv(4096).startswith(b"HTTP/1.1 200 OK\r\n")
        assert server.wait(PATIENCE_S) == 0


@pytest.mark.parametrize(("trusted", "scheme"), [("127.0.0.1", b"https"), ("10.0.0.1", b"http")])
def test_scheme_header_counts_from_a_trusted_proxy_only(
    app_dir: Path, trusted: str, scheme: bytes
) -> None:
    changes = {"RINGLAND_FORWARDED_ALLOW_IPS": trusted, "RINGLAND_WORKERS": "1"}
    with running(app_dir, **changes) as (_, port):
        assert get(port, **{"X-Forwarded-Proto": "https"}) == (200, scheme)


def test_request_line_up_to_the_limit_is_taken(app_dir: Path) -> None:
    frame = len("GET / HTTP/1.1")
    with running(app_dir, RINGLAND_WORKERS="1") as (_, port):
        assert get(port, "/" + "a" * (8190 - frame))[0] == 200
        assert get(port, "/" + "a" * (8190 - frame + 3))[0] == 414


# The application here never reads a body, as a refusal by address or media type does not.
def test_answer_to_an_unread_body_arrives(app_dir: Path) -> None:
    with running(app_dir, RINGLAND_WORKERS="1") as (_, port):
        for _ in range(5):
            with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=PATIENCE_S)) as call:
                call.request("POST", "/", bytes(3_000_000), {"Connection": "close"})
                assert call.getresponse().status == 200


def health_command(port: int) -> list[str]:
    """Return the image's health check, for this interpreter and port."""
    text = (DOCKER / "Dockerfile").read_text()
    (found,) = re.findall(r"HEALTHCHECK .*?\\\n\s+CMD (\[.*\])\n", text)
    interpreter, *rest = json.loads(found)
    assert interpreter == "python"
    assert rest[1].count("8000") == 1
    return [sys.executable, rest[0], rest[1].replace("8000", str(port))]


@pytest.mark.parametrize(("status", "code"), [("200 OK", 0), ("503 Service Unavailable", 1)])
def test_health_check_tells_well_from_ill(app_dir: Path, status: str, code: int) -> None:
    with running(app_dir, RINGLAND_WORKERS="1", STATUS=status) as (_, port):
        # A proxy in the environment must not come between.
        env = environment(http_proxy="http://127.0.0.1:9")
        run = subprocess.run(health_command(port), env=env, timeout=PATIENCE_S)
        assert run.returncode == code


def test_health_check_fails_where_nothing_listens() -> None:
    with socket.socket() as unused:
        unused.bind(("127.0.0.1", 0))
        run = subprocess.run(
            health_command(unused.getsockname()[1]), capture_output=True, timeout=PATIENCE_S
        )
    assert run.returncode == 1
    assert b"ConnectionRefusedError" in run.stderr


def test_the_service_takes_the_servers_timeout_for_its_deadline(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """One variable and one default: batches end before the server gives a worker up."""
    monkeypatch.delenv("RINGLAND_TIMEOUT_S", raising=False)
    assert runpy.run_path(str(CONF))["timeout"] == row_budget.DEFAULT_TIMEOUT_S
    assert f'"{row_budget.VARIABLE}"' in CONF.read_text("utf-8")
    assert 0 < row_budget.ROWS_SHARE < row_budget.DEADLINE_SHARE < 1
