"""Refusals stay small, sorted and helpful, whatever is sent, and alike for every hash seed."""

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from asking import BORE, ENGINE, STROKE, problem, strict
from bad_requests import cc
from flask.testing import FlaskClient
from openapi_schema_validator import OAS31Validator
from refusals_sent import answers

from ringland_service.api.faults import FieldError
from ringland_service.api.openapi.document import document
from ringland_service.api.refusals import refusal

JSON, CSV, LINES = "application/json", "text/csv", "application/x-ndjson"
MOST_BYTES = 64_000


def refused(client: FlaskClient, body: Any, path: str = "displacement", status: int = 400) -> Any:
    """Return the problem that a body is answered with."""
    return problem(client.post(f"/v1/{path}", json=body), status)


@pytest.mark.parametrize("count", [1, 49, 50, 51, 60, 1998])
def test_fifty_faults_and_how_many_more(client: FlaskClient, count: int) -> None:
    found = refused(client, {**ENGINE, **{f"x{i:04}": 1 for i in range(count)}})
    pointers = [fault["pointer"] for fault in found["errors"]]
    assert pointers == [f"#/x{i:04}" for i in range(min(count, 50))]
    if count > 50:
        assert found["more"] == count - 50
        assert f"and {count - 50} more" in found["detail"]
    else:
        assert "more" not in found


def test_fault_told_twice_stands_once(client: FlaskClient) -> None:
    query = "&".join(["bore=68mm"] * 200)
    found = problem(client.get(f"/v1/displacement?{query}"), 400)
    assert [fault["code"] for fault in found["errors"]] == ["given_twice"]


def test_what_is_allowed_stands_once(client: FlaskClient) -> None:
    """Two places, the body and the bore, each with a list of its own."""
    bore = {**BORE, "u": 1, "v": 2}
    found = refused(client, {"bore": bore, "stroke": STROKE, "w": 1, "x": 2, "y": 3})
    told = {fault["pointer"]: fault for fault in found["errors"]}
    assert told["#/bore/u"]["allowed"] == ["instrument", "uncertainty", "unit", "value"]
    assert (told["#/bore/v"]["allowed"], told["#/bore/v"]["allowed_at"]) == (None, "#/bore/u")
    assert "stroke" in told["#/w"]["allowed"]
    for pointer in ("#/x", "#/y"):
        assert (told[pointer]["allowed"], told[pointer]["allowed_at"]) == (None, "#/w")
    assert not any("allowed_at" in told[pointer] for pointer in ("#/bore/u", "#/w"))


def test_faults_are_sorted_by_place_and_lists_by_number() -> None:
    """By code point, as Python compares text; entries of a list by their number."""
    pointers = [
        "/b",
        "/a/10/x",
        "/a/2/x",
        "/a/2",
        "",
        "/a",
        "/a/1000000000000000000000",
        "/A",
        "/²",
    ]
    told = refusal([FieldError("c", "d", pointer=pointer) for pointer in pointers])
    assert [entry["pointer"] for entry in told.entries] == [
        *("#", "#/A", "#/a", "#/a/2", "#/a/2/x", "#/a/10/x", "#/a/1000000000000000000000"),
        *("#/b", "#/²"),
    ]


def test_parameters_are_sorted(client: FlaskClient) -> None:
    found = problem(client.get("/v1/displacement?b=1&10=1&9=1&a=1&bore=68mm&stroke=66mm"), 400)
    assert [fault["pointer"] for fault in found["errors"]] == ["#/9", "#/10", "#/a", "#/b"]


NEAR = [
    ("displacement", {**ENGINE, "boar": 1}, "bore"),
    ("displacement", {**ENGINE, "Bore": 1}, "bore"),
    ("displacement", {**ENGINE, "cylinder": 1}, "cylinder_count"),
    ("displacement", {"bore": {**BORE, "unti": "mm"}, "stroke": STROKE}, "unit"),
    ("displacement", {"bore": {**BORE, "unit": "THOU"}, "stroke": STROKE}, "thou"),
    ("displacement", {"bore": {**BORE, "unit": "inchs"}, "stroke": STROKE}, "inch"),
    (
        "wet-gain",
        {"reading": {"value": 900, "unit": "kPs"}, "wet": {"value": 1, "unit": "psi"}},
        "kPa",
    ),
    ("convert", {"value": {"value": 1, "unit": "thuo"}, "to": "mm"}, "thou"),
    ("displacement", {**ENGINE, "rule": "gaurd_2u"}, "guard_2u"),
    ("displacement", {**ENGINE, "limits": {"clas_limit": {"high": cc(250)}}}, "class_limit"),
    ("displacement", {**ENGINE, "measuring": {"instrument": []}}, "instruments"),
    ("ring-gap", {"bore": BORE, "bore_kind": "irn"}, "iron"),
    ("job-card", {"engine": {"boar": BORE}}, "bore"),
    ("displacement/batch", {"colums": {}}, "columns"),
    ("displacement/batch", {"columns": {"boer": {"values": [68], "unit": "mm"}}}, "bore"),
]


@pytest.mark.parametrize(("path", "body", "meant"), NEAR)
def test_near_name_is_suggested(client: FlaskClient, path: str, body: Any, meant: str) -> None:
    found = refused(client, body, path)
    details = [fault["detail"] for fault in found["errors"]]
    assert any(f"did you mean {meant}?" in detail for detail in details), details
    assert f"did you mean {meant}?" in found["detail"]


@pytest.mark.parametrize(
    ("address", "meant"),
    [
        ("displacement?boar=68mm&stroke=66mm", "bore"),
        ("displacement?bore=68mm&stroke=66mm&unit=us", "units"),
        ("displacement?bore=68mm&stroke=66mm&units=metrc", "metric"),
        ("displacement?bore=68mmm&stroke=66mm", "mm"),
        ("displacement?bore=68mm&stroke=66mm&limit.class_limt.high=1cc", "limit.class_limit.high"),
    ],
)
def test_near_parameter_is_suggested(client: FlaskClient, address: str, meant: str) -> None:
    found = problem(client.get(f"/v1/{address}"), 400)
    assert f"did you mean {meant}?" in found["detail"]


@pytest.mark.parametrize(
    ("address", "meant"),
    [
        ("/v1/displacment", "/v1/displacement"),
        ("/v1/Displacement", "/v1/displacement"),
        ("/v1/displacement/", "/v1/displacement"),
        ("/v1/displacment.txt", "/v1/displacement.txt"),
        ("/v1/displacment/batch", "/v1/displacement/batch"),
        ("/v1/piston_clearance", "/v1/piston-clearance"),
        ("/v1/jobcard", "/v1/job-card"),
        ("/v1/unit", "/v1/units"),
        ("/openapi.jsn", "/openapi.json"),
    ],
)
def test_near_address_is_suggested(client: FlaskClient, address: str, meant: str) -> None:
    found = problem(client.get(address), 404)
    assert found["detail"].endswith(f"Did you mean {meant}?")


@pytest.mark.parametrize("address", ["/", "/x", "/v1/xyz", "/v1/" + "displacement" * 9, "/v2"])
def test_nothing_is_suggested_where_nothing_is_near(client: FlaskClient, address: str) -> None:
    assert "Did you mean" not in problem(client.get(address), 404)["detail"]


@pytest.mark.parametrize(
    ("path", "name", "given"),
    [
        ("displacement", "bore", "mils"),
        ("cranking-pressure", "air_pressure", "psig"),
        ("displacement", "bore", "furlong"),
    ],
)
def test_no_unit_is_suggested_where_the_choice_is_the_users(
    client: FlaskClient, path: str, name: str, given: str
) -> None:
    """A unit with two meanings, one of the other pressure, and one that is like none."""
    found = refused(client, {name: {"value": 68, "unit": given}}, path)
    details = [f["detail"] for f in found["errors"] if f["code"] == "unknown_unit"]
    assert len(details) == 1
    assert "did you mean" not in details[0]


@pytest.mark.parametrize(
    ("address", "meant"),
    [
        ("displacement.txt?bore=68mm&stroke=66mm&pick=displacment", "displacement"),
        (
            "piston-clearance.txt?bore_largest=68mm&piston_size=67.9mm&pick=clearence_max",
            "clearance_max",
        ),
    ],
)
def test_near_result_is_suggested(client: FlaskClient, address: str, meant: str) -> None:
    found = problem(client.get(f"/v1/{address}"), 422)
    assert f"did you mean {meant}?" in found["detail"]


LONG = [
    "x" * 60_000,
    "\x01" * 60_000,
    "é" * 60_000,
    "𝄞" * 60_000,
    '"' * 60_000,
    "~/" * 30_000,
]
SHOWN = ["x", "\x01", "𝄞", "~"]


@pytest.mark.parametrize("text", LONG, ids=lambda t: ascii(t[:2]))
@pytest.mark.parametrize("path", ["displacement", "displacement/batch", "job-card", "convert"])
def test_over_long_texts_are_cut(client: FlaskClient, path: str, text: str) -> None:
    unit = {"value": 68, "unit": text}
    for body in (
        *({text: 1}, {"bore": text}, {"bore": unit}, {"bore": {text: 1}}, {"rule": text}),
        *({"limits": {text: {}}}, {"limits": text}, {"measuring": {text: 1}}, {"defaults": text}),
        {"measuring": {"instruments": [{"id": text, "kind": text, "zero_set_in": text}]}},
        *({"columns": {text: 1}}, {"columns": {text: {"values": [1]}}}, {"engine": {text: text}}),
        *({"columns": {"bore": unit}}, {"shared": {text: text}, "columns": {text: 1}}),
        *({"value": unit, "to": text}, text, [text], {"bore": {**BORE, "instrument": text}}),
    ):
        answer = client.post(f"/v1/{path}", json=body)
        assert answer.status_code in (400, 422)
        assert len(answer.data) < MOST_BYTES


@pytest.mark.parametrize("nested", range(0, 22, 7))
@pytest.mark.parametrize("sign", SHOWN)
def test_many_over_long_texts_are_cut(client: FlaskClient, sign: str, nested: int) -> None:
    """Every fault at its longest: fifty of them, and those of the summary, still fit."""
    body: Any = {f"{i}" + sign * 300: 1 for i in range(1900)}
    for _ in range(nested):
        body = {"bore": body}
    for path in ("displacement", "job-card", "displacement/batch"):
        for sent in (body, {"bore": body}, {"limits": body}, {"columns": body}, {"engine": body}):
            answer = client.post(f"/v1/{path}", data=json.dumps(sent), content_type=JSON)
            assert answer.status_code == 400
            assert len(answer.data) < MOST_BYTES


@pytest.mark.parametrize("sign", ["x", "%01", "%F0%9D%84%9E", "%ff", "1", "."])
def test_over_long_addresses_are_cut(client: FlaskClient, sign: str) -> None:
    long = sign * 20_000
    many = "&".join(f"{i}{sign * 300}=1" for i in range(300))
    for query in (f"{long}=1", f"bore={long}", f"limit.{long}.low=1", f"pick={long}", many):
        for suffix in ("", ".txt", ".csv"):
            answer = client.get(f"/v1/displacement{suffix}?bore=68mm&stroke=66mm&{query}")
            assert answer.status_code == 400 or (answer.status_code, suffix) == (422, ".txt")
            assert len(answer.data) < MOST_BYTES
        assert len(client.get(f"/v1?{query}").data) < MOST_BYTES
        text = client.get(f"/v1/displacement.txt?errors=text&{query}")
        assert text.text.startswith("#ERR ")
        assert len(text.data) < MOST_BYTES
    found = client.get(f"/v1/{long}")
    assert found.status_code == 404
    assert len(found.data) < MOST_BYTES


@pytest.mark.parametrize("sign", SHOWN)
def test_over_long_tables_and_lines_are_cut(client: FlaskClient, sign: str) -> None:
    long = sign * 100_000
    path = "/v1/displacement/batch"
    headers = ",".join(f"{i}{sign * 1000}" for i in range(1900)) + "\n" + ",".join(["1"] * 1900)
    for table in (f"{long}\n1\n", f"bore [{long}]\n1\n", f"b{long} U [mm]\n1\n", headers):
        answer = client.post(path, data=table.encode(), content_type=CSV)
        assert answer.status_code == 400
        assert len(answer.data) < MOST_BYTES
    line = json.dumps({long: 1}) + "\n"
    answer = client.post(path, data=line, content_type=LINES)
    assert len(answer.data) < MOST_BYTES
    assert json.loads(answer.data)["problem"]["status"] == 400


@pytest.mark.parametrize("name", ["a/b", "a~b", "~1"])
def test_pointers_escape_names_everywhere(client: FlaskClient, name: str) -> None:
    """RFC 6901, 3, in columns and parameters as in bodies."""
    step = name.replace("~", "~0").replace("/", "~1")
    column = {"values": [1]}
    for body, place in (
        ({"columns": {name: 1}}, "columns"),
        ({"columns": {name: column}}, "columns"),
        ({"columns": {name: column}, "shared": {name: 1}}, "shared"),
    ):
        answer = client.post("/v1/displacement/batch", json=body)
        assert [f["pointer"] for f in strict(answer)["errors"]] == [f"#/{place}/{step}"]
    found = problem(client.get("/v1/units", query_string={name: "1"}), 400)
    assert [f["pointer"] for f in found["errors"]] == [f"#/{step}"]


def test_document_describes_what_a_problem_holds() -> None:
    """Every refusal of the wide set, and one of 60 faults, by the component, nothing beyond it."""
    described = document()["components"]["schemas"]["Problem"]
    closed = {**described, "additionalProperties": False}
    validator = OAS31Validator(closed)
    known = set(described["properties"]["errors"]["items"]["properties"])
    count = 0
    for sent, status, data in answers():
        if status < 400:
            continue
        found = json.loads(data)
        assert not list(validator.iter_errors(found)), (sent.name, found)
        assert all(set(entry) <= known for entry in found.get("errors", ()))
        assert len(data) < MOST_BYTES
        count += 1
    assert count > 500


def test_bytes_are_the_same_for_every_hash_seed() -> None:
    """Three processes, each with a seed of its own, answer alike to the byte."""
    script = Path(__file__).parent / "refusals_sent.py"
    running = [
        subprocess.Popen(
            [sys.executable, str(script)],
            env={**os.environ, "PYTHONHASHSEED": seed},
            stdout=subprocess.PIPE,
        )
        for seed in ("0", "1", "4242")
    ]
    first, *others = (
        [json.loads(line) for line in run.communicate()[0].splitlines()] for run in running
    )
    assert all(run.returncode == 0 for run in running)
    assert len({name for name, _, _ in first}) == len(first) > 1000
    for other in others:
        assert [a[0] for a, b in zip(first, other, strict=True) if a != b] == []
