"""Bad input, case by case: status, pointer, code, and words that say what would be right."""

import json

import pytest
from asking import ENGINE, post, problem
from bad_requests import FORMS, QUERIES, UNREADABLE, Bad, cc, limited
from bad_values import BOUNDS
from flask.testing import FlaskClient

JSON = "application/json"


@pytest.mark.parametrize("bad", [*UNREADABLE, *FORMS, *BOUNDS], ids=str)
def test_bad_body(client: FlaskClient, bad: Bad) -> None:
    answer = client.post(f"/v1/{bad.path}", data=bad.data, content_type=JSON)
    found = problem(answer, bad.status)
    (fault,) = found["errors"]
    assert (fault["code"], fault["pointer"]) == (bad.code, bad.pointer)
    assert bad.says in fault["detail"]
    assert fault["detail"] in found["detail"]
    assert found["instance"] == f"/v1/{bad.path}"
    assert len(answer.data) < 6000


@pytest.mark.parametrize("bad", FORMS, ids=str)
def test_what_is_allowed_is_told(client: FlaskClient, bad: Bad) -> None:
    """A form fault tells the right form: in words, and for a program under ``allowed``."""
    answer = client.post(f"/v1/{bad.path}", data=bad.data, content_type=JSON)
    (fault,) = problem(answer, bad.status)["errors"]
    if bad.code not in ("null", "wrong_type"):
        assert fault["allowed"]


@pytest.mark.parametrize(
    ("content_type", "data"),
    [
        ("text/plain", b"{}"),
        ("application/x-www-form-urlencoded", b"bore=68"),
        ("multipart/form-data; boundary=x", b"--x--"),
        ("text/csv", b"bore [mm]\n68\n"),
        ("application/json; charset=utf-16", '{"bore": 1}'.encode("utf-16")),
        ("application/json; charset=latin-1", b"{}"),
        ("application/xml", b"<a/>"),
        ("", b"{}"),
        ("nonsense", b"{}"),
    ],
)
def test_other_body_is_415(client: FlaskClient, content_type: str, data: bytes) -> None:
    answer = client.post("/v1/displacement", data=data, content_type=content_type)
    found = problem(answer, 415)
    assert "application/json" in found["detail"]


@pytest.mark.parametrize("charset", ["utf-8", "UTF-8", "utf8", "us-ascii"])
def test_charset_of_the_standard_is_read(client: FlaskClient, charset: str) -> None:
    body = json.dumps(ENGINE).encode()
    kind = f"application/json; charset={charset}"
    assert client.post("/v1/displacement", data=body, content_type=kind).status_code == 200


@pytest.mark.parametrize("path", ["/v1/displacement", "/v1/displacement/batch"])
def test_huge_body_is_413(client: FlaskClient, path: str) -> None:
    body = b'{"bore": "' + b"x" * (8 * 1024 * 1024) + b'"}'
    found = problem(client.post(path, data=body, content_type=JSON), 413)
    assert found["type"] == "/problems/too-large"
    assert "Split the rows" in found["detail"]


@pytest.mark.parametrize("accept", ["image/png", "application/xml", "text/html;q=1", "text/csvx"])
def test_unknown_form_of_answer_is_406(client: FlaskClient, accept: str) -> None:
    headers = {"Accept": accept}
    for answer in (
        client.post("/v1/displacement", json=ENGINE, headers=headers),
        client.get("/v1/displacement?bore=68mm&stroke=66mm", headers=headers),
    ):
        found = problem(answer, 406)
        assert "application/json, text/plain and text/csv" in found["detail"]


@pytest.mark.parametrize(("path", "query", "code", "pointer", "says"), QUERIES)
def test_bad_query(
    client: FlaskClient, path: str, query: str, code: str, pointer: str, says: str
) -> None:
    found = problem(client.get(f"/v1/{path}?{query}"), 400)
    fault = found["errors"][0]
    assert (fault["code"], fault["pointer"]) == (code, pointer)
    assert says in fault["detail"]


@pytest.mark.parametrize(
    ("query", "code"), [("units=us&units=us", "given_twice"), ("bore=68mm", "unknown_field")]
)
@pytest.mark.parametrize("path", ["/v1/displacement", "/v1/displacement/batch"])
def test_query_of_a_post_shapes_the_answer_alone(
    client: FlaskClient, path: str, query: str, code: str
) -> None:
    body = {"columns": {"bore": {"values": [1], "unit": "mm"}}} if "batch" in path else ENGINE
    found = problem(client.post(f"{path}?{query}", json=body), 400)
    assert found["errors"][0]["code"] == code


@pytest.mark.parametrize("path", ["/v1", "/v1/units", "/openapi.json", "/health/live", "/version"])
def test_tables_take_no_parameters(client: FlaskClient, path: str) -> None:
    found = problem(client.get(f"{path}?x=1"), 400)
    assert found["errors"][0]["pointer"] == "#/x"


@pytest.mark.parametrize(
    ("method", "path", "allowed"),
    [
        ("GET", "/v1/oversize-choice", {"POST", "OPTIONS"}),
        ("GET", "/v1/job-card", {"POST", "OPTIONS"}),
        ("GET", "/v1/displacement/batch", {"POST", "OPTIONS"}),
        ("PUT", "/v1/displacement", {"GET", "HEAD", "POST", "OPTIONS"}),
        ("DELETE", "/v1/displacement", {"GET", "HEAD", "POST", "OPTIONS"}),
        ("POST", "/v1/displacement.txt", {"GET", "HEAD", "OPTIONS"}),
        ("POST", "/v1", {"GET", "HEAD", "OPTIONS"}),
        ("POST", "/openapi.json", {"GET", "HEAD", "OPTIONS"}),
    ],
)
def test_wrong_method_is_405_and_tells_the_right_ones(
    client: FlaskClient, method: str, path: str, allowed: set[str]
) -> None:
    answer = client.open(path, method=method)
    problem(answer, 405)
    assert set(answer.headers["Allow"].split(", ")) == allowed


@pytest.mark.parametrize(
    "path",
    ["/", "/v1/", "/v2", "/v1/displacement/", "/v1/disp", "/v1//displacement", "/docs/x", "/%00"],
)
def test_unknown_address_is_404(client: FlaskClient, path: str) -> None:
    found = problem(client.get(path), 404)
    assert "GET /v1 lists every calculation" in found["detail"]


SEVERAL = {
    "bore": {"value": 19, "unit": "mm"},
    "stroke": {"value": 200, "unit": "mm", "uncertainty": 0},
    "cylinder_count": 9,
    "limits": {"class_limit": {}},
}


def test_several_faults_are_all_reported(client: FlaskClient) -> None:
    found = problem(client.post("/v1/displacement", json=SEVERAL), 422)
    pointers = {fault["pointer"] for fault in found["errors"]}
    assert pointers >= {
        "#/bore/value",
        "#/stroke/value",
        "#/cylinder_count",
        "#/limits/class_limit",
    }


def test_one_unreadable_fault_makes_it_400(client: FlaskClient) -> None:
    found = problem(client.post("/v1/displacement", json={**SEVERAL, "x": 1}), 400)
    codes = {fault["code"] for fault in found["errors"]}
    assert codes >= {"unknown_field", "out_of_bounds"}
    assert "more" in found["detail"]


def test_several_faults_in_a_query_are_all_reported(client: FlaskClient) -> None:
    found = problem(client.get("/v1/displacement?bore=68&stroke=x&y=1&units=si"), 400)
    assert {f["pointer"] for f in found["errors"]} == {"#/bore", "#/stroke", "#/y", "#/units"}


def test_pointer_escapes_what_json_pointer_escapes(client: FlaskClient) -> None:
    """RFC 6901, 3: ~ is ~0 and / is ~1."""
    found = problem(client.post("/v1/displacement", json={**ENGINE, "a/b~c": 1}), 400)
    assert found["errors"][0]["pointer"] == "#/a~1b~0c"


def test_type_leads_to_a_page(client: FlaskClient) -> None:
    for answer in (
        client.post("/v1/displacement", json={}),
        client.post("/v1/displacement", json=SEVERAL),
        client.post("/v1/displacement", data=b"{}", content_type="text/plain"),
        client.get("/v1/nothing"),
        client.get("/v1/job-card"),
        client.get("/v1/displacement?bore=68mm&stroke=66mm", headers={"Accept": "image/png"}),
    ):
        found = problem(answer, answer.status_code)
        page = client.get(found["type"])
        assert page.status_code == 200
        assert found["title"] in page.text


@pytest.mark.parametrize("given", ["a", "job-26.014_b", "A" * 128])
def test_request_id_is_echoed(client: FlaskClient, given: str) -> None:
    headers = {"X-Request-ID": given}
    found = problem(client.post("/v1/displacement", json={}, headers=headers), 400)
    assert found["request_id"] == given
    assert client.get("/v1", headers=headers).headers["X-Request-ID"] == given


@pytest.mark.parametrize("given", ["", "A" * 129, "a b", "a;b", "<script>", "é", "a/b"])
def test_request_id_that_could_do_harm_is_replaced(client: FlaskClient, given: str) -> None:
    headers = {"X-Request-ID": given}
    found = problem(client.post("/v1/displacement", json={}, headers=headers), 400)
    assert found["request_id"] != given
    assert len(found["request_id"]) == 32


def test_each_request_has_an_id_of_its_own(client: FlaskClient) -> None:
    ids = {client.get("/health/live").headers["X-Request-ID"] for _ in range(20)}
    assert len(ids) == 20


def test_longest_texts_fit(client: FlaskClient) -> None:
    found = post(client, "displacement", limited(high=cc(250), source="x" * 200))
    assert found["verdicts"][0]["limit"]["source"] == "x" * 200
