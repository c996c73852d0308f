"""The service in the process: what the WSGI application sees (PEP 3333), and when it is missing."""

import subprocess
import sys
from typing import Any

import pytest

from ringland import Client, ServiceMissing, embedded

# A finder before all others that knows no service.
BLOCK = """
import sys
class Block:
    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] == {name!r}:
            raise ModuleNotFoundError("blocked", name=name)
sys.meta_path.insert(0, Block())
from ringland import Client
Client.embedded()
"""


def run(code: str) -> "subprocess.CompletedProcess[str]":
    return subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)


def test_a_missing_service_says_what_to_install() -> None:
    done = run(BLOCK.format(name="ringland_service"))
    assert done.returncode == 1
    assert done.stderr.splitlines()[-1] == (
        "ringland._errors.ServiceMissing: the service is not installed here;"
        " pip install 'ringland[embedded]'"
    )


def test_a_broken_installation_says_what_is_missing() -> None:
    done = run(BLOCK.format(name="marshmallow"))
    assert done.stderr.splitlines()[-1] == "ModuleNotFoundError: blocked"


class Recorder:
    """An application that remembers what it was asked, and whether its answer was closed."""

    def __init__(self) -> None:
        self.environ: dict[str, Any] = {}
        self.body = b""
        self.closed = 0

    def __call__(self, environ: dict[str, Any], start_response: Any) -> "Recorder":
        self.environ, self.body = environ, environ["wsgi.input"].read()
        start_response("200 OK", [("X-Request-ID", "r1")])
        return self

    def __iter__(self) -> Any:
        yield b'{"calculation": "x", "formulas": "1", "uncertainties": {}, "intervals": {},'
        yield b' "verdicts": [], "warnings": [], "cautions": [], "basis": [],'
        yield b' "result": {"a": 1}, "later": true}'

    def close(self) -> None:
        self.closed += 1


def test_a_request_as_wsgi_has_it() -> None:
    app = Recorder()
    with Client.embedded(app) as client:
        answer = client.ask("ä/b", units="us", field="µ")
    assert (answer.result, answer.request_id) == ({"a": 1}, "r1")
    environ = app.environ
    assert environ["PATH_INFO"].encode("latin-1").decode() == "/v1/ä/b"
    assert (environ["QUERY_STRING"], environ["REQUEST_METHOD"]) == ("units=us", "POST")
    assert environ["CONTENT_TYPE"] == "application/json"
    assert app.body.decode() == '{"field":"µ"}'
    assert environ["CONTENT_LENGTH"] == str(len(app.body))
    assert environ["HTTP_ACCEPT"] == "application/json"
    assert "HTTP_CONTENT_LENGTH" not in environ
    assert app.closed == 1


def test_a_request_is_valid_wsgi() -> None:
    from wsgiref.validate import validator

    app = validator(embedded.service())
    with Client.embedded(app) as client:
        assert client.displacement(bore="68 mm", stroke="66 mm").calculation == "displacement"


def test_the_error_is_an_import_error() -> None:
    assert issubclass(ServiceMissing, ImportError)
    with pytest.raises(ImportError, match="x"):
        raise ServiceMissing("x")
