"""Rows count from 1 in every form of a batch; each says what became of it; refusals stay small."""

import csv
import io
import json
from typing import Any

import pytest
from asking import PLAIN, STROKE, get, post, problem, strict
from flask.testing import FlaskClient

from ringland_service.api.openapi.document import document
from ringland_service.api.reading.common_fields import kinds_judged
from ringland_service.api.reading.query import offers_get, text_fields
from ringland_service.api.reading.row_budget import COST_MS, MOST_ROWS, most_rows
from ringland_service.api.shapes.examples import example
from ringland_service.api.writing.batch_render import MOST_PROBLEMS
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Calculation, Operation
from ringland_service.core.declare.kinds import Kind

LINES, CSV = "application/x-ndjson", "text/csv"
BY = pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
LIMITED = [
    (c, check, kind) for c in PLAIN if offers_get(c) for check, kind in kinds_judged(c).items()
]
CROSSED = pytest.mark.parametrize(
    ("calculation", "check", "kind"), LIMITED, ids=lambda v: v if isinstance(v, str) else ""
)
BORES = [140.0, 2.0, 68.0, 141.0, None]


def bore(value: Any) -> dict[str, Any]:
    return {} if value is None else {"bore": {"value": value, "unit": "mm"}}


def test_rows_count_alike_in_every_form(client: FlaskClient) -> None:
    """Rows 2 and 5 are bad, rows 1 and 4 unusual; blank lines and the header do not count."""
    body = {"shared": {"stroke": STROKE}, "columns": {"bore": {"values": BORES, "unit": "mm"}}}
    columns = post(client, "displacement/batch", body)
    assert [entry["row"] for entry in columns["problems"]] == [2, 5]
    (unusual,) = columns["warnings"]
    assert unusual["rows"] == [1, 4]
    table = "bore [mm],cylinder_count\n\n140,1\n2,1\n68,1\n\n141,1\n,1\n"
    answer = client.post("/v1/displacement/batch?stroke=66mm", data=table, content_type=CSV)
    cells = list(csv.DictReader(io.StringIO(answer.text)))
    assert [row["row"] for row in cells] == ["1", "2", "3", "4", "5"]
    rows = "\n\n".join(json.dumps({**bore(one), "stroke": STROKE}) for one in BORES)
    answer = client.post("/v1/displacement/batch", data=rows, content_type=LINES)
    found = [json.loads(line) for line in answer.text.splitlines()]
    assert [line["row"] for line in found] == [1, 2, 3, 4, 5]
    words = ["ok", "refused", "ok", "ok", "refused"]
    assert columns["status"] == words
    assert [row["status"] for row in cells] == words
    assert [line["status"] for line in found] == words
    assert [i for i, line in enumerate(found, 1) if line.get("warnings")] == [1, 4]


@pytest.mark.parametrize("place", [1, 2, 3])
def test_a_row_of_another_width_is_named_by_the_same_count(client: FlaskClient, place: int) -> None:
    rows = ["68,1"] * 3
    rows[place - 1] = "68"
    table = "\n".join(["bore [mm],cylinders", *rows])
    answer = client.post("/v1/displacement/batch?stroke=66mm", data=table, content_type=CSV)
    assert f"row {place} has 1 cells" in problem(answer, 422)["detail"]


def test_the_document_says_from_where_rows_count() -> None:
    schemas = document()["components"]["schemas"]
    for schema in (schemas["BatchAnswer"], schemas["BatchLine"]["properties"]["row"]):
        assert "rows count from 1" in schema["description"]
    assert schemas["BatchAnswer"]["properties"]["problems"]["maxItems"] == MOST_PROBLEMS


@pytest.mark.parametrize("bad", [999, 1000, 1001, 10_000])
def test_problems_are_told_in_full_and_then_counted(client: FlaskClient, bad: int) -> None:
    body = {"shared": {"stroke": STROKE}, "columns": {"bore": {"values": [2.0] * bad}}}
    body["columns"]["bore"]["unit"] = "mm"
    found = post(client, "displacement/batch", body)
    assert len(found["problems"]) == min(bad, 1000)
    more = [{"code": "out_of_bounds", "count": bad - 1000}] if bad > 1000 else []
    assert found["more_problems"] == more
    assert (found["refused"], found["status"].count("refused")) == (bad, bad)
    assert len(json.dumps(found)) < 256_000


def test_further_problems_are_counted_by_code(client: FlaskClient) -> None:
    values = [2.0] * 1500 + [None] * 20 + ["x"] * 3
    body = {"shared": {"stroke": STROKE}, "columns": {"bore": {"values": values, "unit": "mm"}}}
    found = post(client, "displacement/batch", body)
    counted = {more["code"]: more["count"] for more in found["more_problems"]}
    assert counted == {"out_of_bounds": 500, "missing_field": 20, "wrong_type": 3}
    answer = client.post("/v1/displacement/batch", json=body, headers={"Accept": CSV})
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    assert "20 to 160 mm" in rows[0]["problem"]
    assert rows[1499]["problem"] == "bore: out_of_bounds"
    assert {row["status"] for row in rows} == {"refused"}


def test_an_empty_job_answers_a_short_line(client: FlaskClient) -> None:
    answer = client.post("/v1/job-card/batch", data="{}\n{}\n", content_type=LINES)
    first, _ = answer.data.splitlines()
    assert len(first) < 2_000
    found, whole = json.loads(first), post(client, "job-card", {})
    assert found["cautions"] == whole["cautions"]
    # What is asked for next is still named, field by field.
    assert [entry["opens"] for entry in found["result"]["measure_next"]] == [
        entry["opens"] for entry in whole["result"]["measure_next"]
    ]
    listed = {c["name"]: c for c in strict(client.get("/v1"))["calculations"]}["job-card"]
    assert {e["opens"]: e["why"] for e in whole["result"]["measure_next"]}.items() <= listed[
        "purposes"
    ].items()


@BY
def test_the_list_says_how_many_rows_a_batch_may_have(
    client: FlaskClient, calculation: Operation
) -> None:
    listed = {c["name"]: c for c in strict(client.get("/v1"))["calculations"]}
    most = listed[calculation.name]["most_rows"]
    assert most == most_rows(calculation)
    assert 1 <= most <= MOST_ROWS
    over = client.post(
        f"/v1/{calculation.name}/batch", data=b"{}\n" * (most + 1), content_type=LINES
    )
    (fault,) = problem(over, 422)["errors"]
    assert fault["allowed"] == {"most": most}
    assert f"{most} lines" in fault["detail"]


@pytest.mark.parametrize("name", ["piston-clearance", "lash-shim", "squish"])
def test_too_many_rows_in_columns_and_csv_name_the_number(client: FlaskClient, name: str) -> None:
    calculation = BY_NAME[name]
    most = most_rows(calculation)
    column = next(k for k, v in example(calculation.inputs).items() if "unit" in v)
    columns = {column: {"values": [1.0] * (most + 1), "unit": "mm"}}
    answer = client.post(f"/v1/{name}/batch", json={"columns": columns})
    detail = f"{most + 1} rows; at most {most} in one request of {name}"
    assert problem(answer, 422)["errors"][0]["detail"] == detail
    table = f"{column} [mm]\n" + "1\n" * (most + 1)
    answer = client.post(f"/v1/{name}/batch", data=table, content_type=CSV)
    (fault,) = problem(answer, 422)["errors"]
    assert (fault["detail"], fault["allowed"]) == (detail, {"most": most})


def test_costs_are_of_calculations_that_there_are() -> None:
    assert COST_MS.keys() <= BY_NAME.keys()
    # Two digits of half the default timeout over the cost: by hand 15 000 / 110 = 136.
    assert most_rows(BY_NAME["job-card"]) == 130


def side(kind: Kind | None, value: float) -> Any:
    return value if kind is None else {"value": value, "unit": kind.unit}


def limits_of(calculation: Calculation) -> tuple[dict[str, Any], str, dict[str, Any]]:
    """Return a sound request less one field, and that field as a column of two rows."""
    sound = example(calculation.inputs)
    name = next(name for name in sound if name in text_fields(calculation))
    value = sound.pop(name)
    if not isinstance(value, dict):
        return sound, name, {"values": [value] * 2}
    cell = value.get("value", value.get("values"))
    return sound, name, {"values": [cell] * 2, "unit": value["unit"]}


@CROSSED
def test_columns_refuse_a_low_above_its_high_row_by_row(
    client: FlaskClient, calculation: Calculation, check: str, kind: Kind | None
) -> None:
    shared, name, column = limits_of(calculation)
    unit = {} if kind is None else {"unit": kind.unit}
    low = {f"limit.{check}.low": {"values": [2.0, 1.0], **unit}}
    high = {f"limit.{check}.high": {"values": [1.0, 2.0], **unit}}
    halves = (
        ({}, {**low, **high}),
        ({"limits": {check: {"low": side(kind, 1.5)}}}, high),
        ({"limits": {check: {"high": side(kind, 1.5)}}}, low),
    )
    alone = {**shared, name: example(calculation.inputs)[name]}
    crossed = {check: {"low": side(kind, 2.0), "high": side(kind, 1.0)}}
    single = client.post(f"/v1/{calculation.name}", json={**alone, "limits": crossed})
    (fault,) = problem(single, 422)["errors"]
    for limits, columns in halves:
        body = {"shared": {**shared, **limits}, "columns": {name: column, **columns}}
        found = post(client, f"{calculation.name}/batch", body)
        told = [(e["row"], e["field"], e["code"]) for e in found["problems"] if e["row"] == 1]
        assert told == [(1, f"limit.{check}", "contradiction")]
        assert found["problems"][0]["detail"] == fault["detail"]
        assert found["status"][0] == "refused"
        assert all(e["field"] != f"limit.{check}" for e in found["problems"][1:])


def test_a_shared_low_above_its_high_is_refused_as_a_whole(client: FlaskClient) -> None:
    crossed = {"class_limit": {"low": side_cc(2.0), "high": side_cc(1.0)}}
    columns = {"bore": {"values": [68.0], "unit": "mm"}}
    body = {"shared": {"stroke": STROKE, "limits": crossed}, "columns": columns}
    (fault,) = problem(client.post("/v1/displacement/batch", json=body), 422)["errors"]
    assert (fault["pointer"], fault["code"]) == ("#/shared/limits/class_limit", "contradiction")
    asked = "stroke=66mm&limit.class_limit.low=2cc&limit.class_limit.high=1cc"
    answer = client.post(
        f"/v1/displacement/batch?{asked}", data="bore [mm]\n68\n", content_type=CSV
    )
    assert problem(answer, 422)["errors"][0]["code"] == "contradiction"


def side_cc(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "cc"}


def test_csv_and_lines_refuse_a_low_above_its_high(client: FlaskClient) -> None:
    head = "bore [mm],limit.class_limit.low [cc],limit.class_limit.high [cc]"
    table = f"{head}\n68,240,241\n68,241,240\n"
    answer = client.post("/v1/displacement/batch?stroke=66mm", data=table, content_type=CSV)
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    assert [row["status"] for row in rows] == ["ok", "refused"]
    assert rows[1]["problem"] == "limit.class_limit: low is above high"
    crossed = {"class_limit": {"low": side_cc(241), "high": side_cc(240)}}
    line = json.dumps({**bore(68), "stroke": STROKE, "limits": crossed})
    answer = client.post("/v1/displacement/batch", data=line, content_type=LINES)
    (fault,) = json.loads(answer.text)["problem"]["errors"]
    assert (fault["pointer"], fault["code"]) == ("#/limits/class_limit", "contradiction")


def test_a_get_still_counts_nothing(client: FlaskClient) -> None:
    """A single answer has neither row nor status: those are a batch's."""
    found = strict(get(client, "displacement", {"bore": "68mm", "stroke": "66mm"}))
    assert not {"row", "status"} & found.keys()
