"""Whatever stands in the address or in the headers, the answer is an answer or a problem."""

import json

import pytest
from asking import ENGINE, PROBLEM, strict
from flask.testing import FlaskClient

ODD = [
    *("", " ", ";", ",", "=", '"', "\\", "\xff", "\x7f", "é", "\ufffd", "*", "*/", "/*", "a/b/c"),
    *("9" * 5000, "-" + "9" * 5000, "1e999", "nan", "a" * 8000, "a," * 4000, "a;" * 4000),
    *('a/b;q="1', "a/b;q=nan", "a/b;q=1e999", "a/b;q=" + "9" * 5000, "a/b;q=-1", "text/csv;q=x"),
    *('W/"', 'W/""', '"a', "bytes=0-", "bytes=9-1,", "Thu, 99 Foo 9999 99:99:99 GMT", "0", "%00"),
    *("application/json; charset=\xff", "application/json;charset=" + "u" * 5000, "text/csv;;"),
    *("application/json; charset*=utf-8''x", "application/json;charset=undefined", "text/\x01"),
]
NAMES = [
    *("Accept", "Accept-Encoding", "Accept-Language", "Accept-Charset", "Authorization", "Cookie"),
    *("Content-Encoding", "Content-Type", "If-Match", "If-Modified-Since", "If-None-Match"),
    *("If-Range", "If-Unmodified-Since", "Origin", "Range", "X-Forwarded-For", "X-Request-ID"),
    "X-HTTP-Method-Override",
]
STATUSES = {200, 206, 304, 400, 404, 405, 406, 412, 413, 415, 416, 422}


def as_wsgi(text: str) -> str:
    """Return a header as a server hands it on: bytes as Latin-1."""
    return text.encode("utf-8").decode("latin-1")


@pytest.mark.parametrize("name", NAMES)
def test_any_header(client: FlaskClient, name: str) -> None:
    key = "CONTENT_TYPE" if name == "Content-Type" else f"HTTP_{name.upper().replace('-', '_')}"
    body = json.dumps(ENGINE)
    for given in ODD:
        environ = {key: as_wsgi(given)}
        for answer in (
            client.get("/v1/displacement?bore=68mm&stroke=66mm", environ_overrides=environ),
            client.get("/v1/units", environ_overrides=environ),
            client.get("/docs/start.js", environ_overrides=environ),
            client.post("/v1/displacement", data=body, environ_overrides=environ),
            client.post("/v1/displacement/batch", data=body, environ_overrides=environ),
        ):
            assert answer.status_code in STATUSES, (given, answer.text)
            # An If-Match that does not match is told by the status alone.
            if answer.status_code >= 400 and answer.status_code != 412:
                assert answer.content_type == PROBLEM
                assert strict(answer)["status"] == answer.status_code
                assert len(answer.data) < 64_000


@pytest.mark.parametrize("length", ["-1", "x", "9" * 5000, "1e3", " ", "+5", "٣", "0x10"])
def test_any_length(client: FlaskClient, length: str) -> None:
    """What no number is counts as none told; a server refuses it before."""
    environ = {"CONTENT_LENGTH": length}
    kind = "application/json"
    answer = client.post("/v1/displacement", content_type=kind, environ_overrides=environ)
    assert answer.status_code in (400, 413)
    assert answer.content_type == PROBLEM


@pytest.mark.parametrize(
    "step",
    ["%00", "%ff", "%ED%A0%80", "%F0%9D%84%9E", "%0a", "%2f", "..", "%", "9" * 5000, "a" * 60_000],
)
@pytest.mark.parametrize("before", ["/", "/v1/", "/v1/displacement", "/docs/", "/problems/"])
def test_any_address(client: FlaskClient, before: str, step: str) -> None:
    for method in ("GET", "POST", "OPTIONS", "PUT"):
        answer = client.open(f"{before}{step}", method=method)
        assert answer.status_code in ((200, 404) if method == "OPTIONS" else (308, 404, 405))
        assert len(answer.data) < 64_000
        if answer.status_code >= 400:
            assert answer.content_type == PROBLEM
            assert strict(answer)["status"] == answer.status_code


@pytest.mark.parametrize("given", ["9" * 5000, "\x00", "\ud800", "1e999", "-" * 5000, "٣" * 100])
@pytest.mark.parametrize("suffix", ["", ".txt", ".csv"])
def test_any_parameter(client: FlaskClient, suffix: str, given: str) -> None:
    text = given.encode("utf-8", "surrogatepass")
    quoted = "".join(f"%{byte:02x}" for byte in text)
    names = (
        "bore",
        "cylinder_count",
        "rule",
        "units",
        "pick",
        "limit.class_limit.high",
        "x" + quoted,
    )
    for name in names:
        query = f"bore=68mm&stroke=66mm&{name}={quoted}" if name != "bore" else f"bore={quoted}"
        answer = client.get(f"/v1/displacement{suffix}?{query}")
        assert answer.status_code in (400, 422)
        assert answer.content_type == PROBLEM
        assert len(answer.data) < 64_000
