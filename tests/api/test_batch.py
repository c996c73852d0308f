"""Batches: columns in, columns out; rows as single calls have them; bad rows keep their place."""

import csv
import io
import json
import math
from typing import Any

import pytest
from asking import PLAIN, post, problem, strict
from flask.testing import FlaskClient

from ringland_service.api.batch import MOST_ROWS
from ringland_service.api.openapi_fields import example
from ringland_service.api.query import offers_get, scalar_fields
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation, Declared, asked
from ringland_service.core.fields import AnyQuantityField, QuantityField

STROKE = {"value": 66, "unit": "mm"}
WITH_COLUMNS = [c for c in PLAIN if offers_get(c)]
LINES, CSV = "application/x-ndjson", "text/csv"


def column(*values: Any, unit: str = "mm", **more: Any) -> dict[str, Any]:
    return {"values": list(values), "unit": unit, **more}


def batch(client: FlaskClient, columns: dict[str, Any], **more: Any) -> Any:
    """Return the answer to a batch of bores, one stroke shared."""
    shared = more.pop("shared", {"stroke": STROKE})
    asked_ = {"shared": shared, "columns": columns}
    return post(client, "displacement/batch", asked_, **more)


def sent(client: FlaskClient, text: str, query: str = "?stroke=66mm", **headers: str) -> Any:
    """Return the response to a batch in CSV."""
    return client.post(
        f"/v1/displacement/batch{query}",
        data=text.encode(),
        content_type=CSV,
        headers={"Accept": "application/json", **headers},
    )


def near(one: float, other: float) -> bool:
    return abs(one - other) <= 4 * math.ulp(max(abs(one), abs(other)))


def rows_of(of: Calculation, count: int = 3) -> list[dict[str, Any]]:
    """Return sound requests like the example, their scalar quantities a little apart."""
    sound = example(of.inputs)
    fields = {f.public(n): f for n, f in asked(of.inputs).items()}
    scalar = {n: v for n, v in sound.items() if n in scalar_fields(of)}

    def row(i: int) -> dict[str, Any]:
        found = {}
        for name, value in scalar.items():
            found[name] = value
            plain = isinstance(fields[name], QuantityField) and not name.endswith("temperature")
            if plain and of.name != "convert":
                found[name] = {**value, "value": value["value"] * (1 - i * 1e-9)}
        return found

    return [row(i) for i in range(count)]


def as_columns(of: Calculation, rows: list[dict[str, Any]]) -> dict[str, Any]:
    fields = {f.public(n): f for n, f in asked(of.inputs).items()}
    found: dict[str, Any] = {}
    for name, first in rows[0].items():
        if isinstance(fields[name], (QuantityField, AnyQuantityField)):
            found[name] = {"values": [r[name]["value"] for r in rows], "unit": first["unit"]}
        else:
            found[name] = {"values": [r[name] for r in rows]}
    return found


@pytest.mark.parametrize("calculation", WITH_COLUMNS, ids=lambda c: c.name)
@pytest.mark.parametrize("units", ["metric", "us"])
def test_columns_agree_with_single_calls(
    client: FlaskClient, calculation: Calculation, units: str
) -> None:
    """Numbers within 4 ulp, verdicts exactly."""
    rows = rows_of(calculation)
    found = post(
        client,
        f"{calculation.name}/batch?units={units}",
        {"columns": as_columns(calculation, rows)},
    )
    assert (found["rows"], found["answered"], found["refused"]) == (3, 3, 0), found["problems"]
    for i, row in enumerate(rows):
        single = post(client, f"{calculation.name}?units={units}", row)
        assert single["result"].keys() == found["results"].keys()
        for name, shown in single["result"].items():
            there = found["results"][name]
            value = there["values"][i]
            if isinstance(shown, dict) and "value" in shown:
                assert near(value, shown["value"]), name
                assert there["unit"] == shown["unit"]
            elif isinstance(shown, float):
                assert near(value, shown), name
            else:
                assert value == (shown["values"] if isinstance(shown, dict) else shown), name
        verdicts = {v["check"]: v["verdict"] for v in single["verdicts"]}
        assert {c: v["verdict"][i] for c, v in found["verdicts"].items()} == verdicts


def test_doubt_agrees_with_single_calls(client: FlaskClient) -> None:
    bores, doubts = [68.0, 68.5, 69.0], [0.004, 0.02, None]
    columns = {
        "bore": column(*bores, uncertainty=doubts),
        "class_limit": column(239.7, 243.2, 246.0, unit="cc"),
    }
    found = batch(client, columns)
    limit = {"value": 239.7, "unit": "cc"}
    for i, (bore, doubt) in enumerate(zip(bores, doubts, strict=True)):
        one: dict[str, Any] = {"value": bore, "unit": "mm"}
        if doubt is not None:
            one["uncertainty"] = doubt
        limit = {"value": columns["class_limit"]["values"][i], "unit": "cc"}
        single = post(client, "displacement", {"bore": one, "stroke": STROKE, "class_limit": limit})
        (verdict,) = single["verdicts"]
        there = found["verdicts"]["class_limit"]
        assert there["verdict"][i] == verdict["verdict"]
        assert near(there["margin"]["values"][i], verdict["margin"]["value"])
        doubted = found["results"]["displacement"]["uncertainties"][i]
        if doubt is None:
            assert doubted is None
            assert there["probability_within"][i] is None
        else:
            assert doubted == pytest.approx(single["result"]["displacement"]["uncertainty"])
            assert there["probability_within"][i] == pytest.approx(verdict["probability_within"])


def test_one_uncertainty_may_serve_all_rows(client: FlaskClient) -> None:
    one = batch(client, {"bore": column(68, 69, uncertainty=0.004)})
    each = batch(client, {"bore": column(68, 69, uncertainty=[0.004, 0.004])})
    assert one == each
    assert all(one["results"]["displacement"]["uncertainties"])


def test_bad_rows_keep_their_place(client: FlaskClient) -> None:
    found = batch(client, {"bore": column(68, 10, None, "x", True, 70), "cylinders": {
        "values": [1, 1, 1, 1, 1, 99]
    }})  # fmt: skip
    assert (found["rows"], found["answered"], found["refused"]) == (6, 1, 5)
    values = found["results"]["displacement"]["values"]
    assert [value is None for value in values] == [False, True, True, True, True, True]
    told = {entry["row"]: (entry["field"], entry["code"]) for entry in found["problems"]}
    assert told == {
        1: ("bore", "out_of_bounds"),
        2: ("bore", "missing_field"),
        3: ("bore", "wrong_type"),
        4: ("bore", "wrong_type"),
        5: ("cylinders", "wrong_type"),
    }
    assert "20 to 160 mm" in found["problems"][0]["detail"]


def test_a_row_that_contradicts_itself(client: FlaskClient) -> None:
    found = batch(client, {"bore": column(68, 159), "cylinders": {"values": [1, 8]}})
    (entry,) = found["problems"]
    assert (entry["row"], entry["code"]) == (1, "contradiction")
    assert "15 to 3000 cc" in entry["detail"]
    assert found["results"]["displacement"]["values"][1] is None


def test_every_row_bad_is_still_an_answer(client: FlaskClient) -> None:
    found = batch(client, {"bore": column(None, None)})
    assert (found["answered"], found["refused"]) == (0, 2)


def test_gaps_in_an_optional_column(client: FlaskClient) -> None:
    found = batch(client, {"bore": column(68, 68), "new_bore": column(None, 68.5)})
    assert found["refused"] == 0
    alone = post(client, "displacement", {"bore": {"value": 68, "unit": "mm"}, "stroke": STROKE})
    assert found["results"]["displacement"]["values"][0] == alone["result"]["displacement"]["value"]
    assert found["results"]["new_displacement"]["values"][0] is None
    assert found["results"]["new_displacement"]["values"][1] == pytest.approx(243.229, rel=1e-5)


def test_order_is_kept(client: FlaskClient) -> None:
    """Swept volume grows with the bore: the order of the one is the order of the other."""
    bores = [60 + (i * 7919 % 1000) / 100 for i in range(1000)]
    values = batch(client, {"bore": column(*bores)})["results"]["displacement"]["values"]
    expected = [math.pi / 4 * bore**2 * 66 / 1000 for bore in bores]
    assert values == pytest.approx(expected, rel=1e-14)


def test_limit_columns(client: FlaskClient) -> None:
    columns = {
        "bore": column(68, 68, 68, 68),
        "limit.class_limit.high": column(240, 239, None, "x", unit="cc"),
    }
    found = batch(client, columns)
    assert found["verdicts"]["class_limit"]["verdict"] == ["pass", "fail", None, None]
    assert [(e["row"], e["code"]) for e in found["problems"]] == [(3, "wrong_type")]
    assert found["verdicts"]["class_limit"]["margin"]["values"][0] == pytest.approx(0.309, abs=1e-3)


@pytest.mark.parametrize(
    ("columns", "status", "pointer", "says"),
    [
        ({}, 400, "#/columns", "columns are needed"),
        ([], 400, "#/columns", "columns are needed"),
        ({"bore": [68]}, 400, "#/columns/bore", "a column is needed"),
        ({"bore": {"values": []}}, 400, "#/columns/bore", "a column is needed"),
        ({"bore": {"values": [68]}}, 400, "#/columns/bore", "unit is missing"),
        ({"bore": column(68, unit="cc")}, 400, "#/columns/bore/unit", "not a unit of length"),
        ({"bore": column(68, x=1)}, 400, "#/columns/bore/x", "unknown field"),
        ({"boar": column(68)}, 400, "#/columns/boar", "no such column"),
        ({"bore": column(68), "stroke": column(1, 2)}, 422, "#/columns", "differ in length"),
        (
            {"bore": column(68, uncertainty=[1, 2])},
            422,
            "#/columns/bore",
            "one uncertainty a row",
        ),
        (
            {"bore": column(68), "limit.class.high": column(1, unit="cc")},
            400,
            "#/columns/limit.class.high",
            "no such limit",
        ),
        (
            {"bore": column(68), "limit.class_limit.middle": column(1, unit="cc")},
            400,
            "#/columns/limit.class_limit.middle",
            "no such limit",
        ),
        (
            {"bore": column(68), "limit.class_limit.high": {"values": [1]}},
            400,
            "#/columns/limit.class_limit.high",
            "unit is missing",
        ),
    ],
)
def test_batch_as_a_whole_refused(
    client: FlaskClient, columns: Any, status: int, pointer: str, says: str
) -> None:
    answer = client.post("/v1/displacement/batch", json={"columns": columns, "shared": {}})
    fault = problem(answer, status)["errors"][0]
    assert fault["pointer"] == pointer
    assert says in fault["detail"]


@pytest.mark.parametrize(
    ("body", "pointer", "code"),
    [
        ([], "#", "wrong_type"),
        ({"columns": {"bore": column(68)}, "x": 1}, "#/x", "unknown_field"),
        ({"columns": {"bore": column(68)}, "shared": []}, "#/shared", "wrong_type"),
        ({"columns": {"bore": column(68)}, "shared": {"x": 1}}, "#/shared/x", "unknown_field"),
        (
            {"columns": {"bore": column(68)}, "shared": {"bore": {"value": 68, "unit": "mm"}}},
            "#/shared/bore",
            "given_twice",
        ),
        (
            {"columns": {"bore": column(68)}, "shared": {"stroke": 66}},
            "#/shared/stroke",
            "not_a_quantity",
        ),
    ],
)
def test_shared_fields_refused(client: FlaskClient, body: Any, pointer: str, code: str) -> None:
    answer = client.post("/v1/displacement/batch", json=body)
    (fault,) = problem(answer, 400)["errors"]
    assert (fault["pointer"], fault["code"]) == (pointer, code)


def test_most_rows_and_one_more(client: FlaskClient) -> None:
    found = batch(client, {"bore": column(*[68.0] * MOST_ROWS)})
    assert found["answered"] == MOST_ROWS
    too_many = {"columns": {"bore": column(*[68.0] * (MOST_ROWS + 1))}, "shared": {}}
    answer = client.post("/v1/displacement/batch", json=too_many)
    (fault,) = problem(answer, 422)["errors"]
    assert fault["allowed"] == {"most": MOST_ROWS}
    problem(sent(client, "bore [mm]\n" + "68\n" * (MOST_ROWS + 1)), 422)
    lines = client.post(
        "/v1/displacement/batch", data=b"{}\n" * (MOST_ROWS + 1), content_type=LINES
    )
    problem(lines, 422)


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_lines_are_answers_and_problems_in_order(
    client: FlaskClient, calculation: Declared
) -> None:
    sound = json.dumps(example(calculation.inputs))
    body = f'{sound}\n\n{{"x": 1}}\nnonsense\n{sound}'
    answer = client.post(f"/v1/{calculation.name}/batch", data=body, content_type=LINES)
    assert answer.status_code == 200
    assert answer.content_type == LINES
    found = [json.loads(line) for line in answer.text.splitlines()]
    single = post(client, calculation.name, example(calculation.inputs))
    assert found[0] == found[3] == single
    assert [entry["status"] for entry in found[1:3]] == [400, 400]
    assert "#/x" in {fault["pointer"] for fault in found[1]["errors"]}
    assert found[2]["errors"][0]["code"] == "not_json"


def test_lines_take_units(client: FlaskClient) -> None:
    body = json.dumps({"bore": {"value": 68, "unit": "mm"}, "stroke": STROKE})
    answer = client.post("/v1/displacement/batch?units=us", data=body, content_type=LINES)
    assert json.loads(answer.text)["result"]["displacement"]["unit"] == "in3"


@pytest.mark.parametrize("body", [b"", b"\n \n"])
def test_no_lines_are_refused(client: FlaskClient, body: bytes) -> None:
    answer = client.post("/v1/displacement/batch", data=body, content_type=LINES)
    problem(answer, 422)


def test_lists_take_lines_alone(client: FlaskClient) -> None:
    for kind in (CSV, "application/json"):
        problem(client.post("/v1/job-card/batch", data=b"{}", content_type=kind), 415)


def test_csv_answers_as_the_same_columns_in_json(client: FlaskClient) -> None:
    text = "bore [mm],bore U [mm],cylinders,limit.class_limit.high [cc]\n68,0.004,1,240\n2,,1,\n"
    found = strict(sent(client, text))
    columns = {
        "bore": column(68, 2, uncertainty=[0.004, None]),
        "cylinders": {"values": [1, 1]},
        "limit.class_limit.high": column(240, None, unit="cc"),
    }
    assert found == batch(client, columns)
    assert found["refused"] == 1


@pytest.mark.parametrize(
    "text",
    [
        "\ufeffbore [mm]\r\n68\r\n",
        "bore [mm]\n68",
        'bore [mm]\n"68"\n',
        "bore [mm]\n\n68\n\n",
        " bore  [mm] \n 68 \n",
        "bore[mm]\n+6.8e1\n",
        "bore [in]\n2.677165354330709\n",
    ],
)
def test_csv_as_spreadsheets_write_it(client: FlaskClient, text: str) -> None:
    found = strict(sent(client, text))
    assert found["rows"] == 1
    assert found["results"]["displacement"]["values"][0] == pytest.approx(239.690953, rel=1e-8)


@pytest.mark.parametrize(
    ("text", "status", "says"),
    [
        ("", 422, "a header and at least one row"),
        ("bore [mm]\n", 422, "a header and at least one row"),
        ("bore [mm],cylinders\n68\n", 422, "row 1 has 1 cells, the header 2"),
        ("bore [mm],cylinders\n68,1\n68,1,1\n", 422, "row 2 has 3 cells"),
        ("bore [mm],bore [mm]\n68,68\n", 400, "stands twice"),
        ("Bore [mm]\n68\n", 400, "not of the form 'bore [mm]'"),
        ("bore mm\n68\n", 400, "not of the form 'bore [mm]'"),
        ("boar [mm]\n68\n", 400, "no such column"),
        ("bore\n68\n", 400, "unit is missing"),
        ("bore [cc]\n68\n", 400, "not a unit of length"),
        ("bore U [mm]\n0.1\n", 400, "stands without bore"),
        ('bore [mm]\n"68\n', 400, "not CSV"),
    ],
)
def test_csv_refused(client: FlaskClient, text: str, status: int, says: str) -> None:
    found = problem(sent(client, text), status)
    assert says in found["detail"]


def test_csv_in_latin_1_is_refused(client: FlaskClient) -> None:
    body = "bore [mm]\n6é\n".encode("latin-1")
    answer = client.post("/v1/displacement/batch", data=body, content_type=CSV)
    assert problem(answer, 400)["errors"][0]["code"] == "not_utf8"


def test_csv_column_and_address_clash(client: FlaskClient) -> None:
    answer = sent(client, "bore [mm],stroke [mm]\n68,66\n")
    (fault,) = problem(answer, 400)["errors"]
    assert fault["code"] == "given_twice"


def test_csv_bad_cells_are_problems_of_their_rows(client: FlaskClient) -> None:
    found = strict(sent(client, "bore [mm],cylinders\n68,1\nabc,1\n68,x\nNaN,1\n1_0,1\n"))
    assert [entry["row"] for entry in found["problems"]] == [1, 2, 3, 4]
    assert "'abc'" in found["problems"][0]["detail"]
    assert found["answered"] == 1


def test_csv_out_is_one_flat_table(client: FlaskClient) -> None:
    answer = sent(client, "bore [mm]\n68\n2\n", Accept="text/csv")
    assert answer.content_type == "text/csv; charset=utf-8"
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    assert [row["row"] for row in rows] == ["1", "2"]
    assert float(rows[0]["displacement [cc]"]) == pytest.approx(239.690953, rel=1e-8)
    assert rows[0]["problem"] == ""
    assert rows[1]["displacement [cc]"] == ""
    assert "20 to 160 mm" in rows[1]["problem"]


def test_json_in_csv_out(client: FlaskClient) -> None:
    body = {"columns": {"bore": column(68)}, "shared": {"stroke": STROKE}}
    answer = client.post("/v1/displacement/batch", json=body, headers={"Accept": CSV})
    assert answer.mimetype == CSV
    image = client.post("/v1/displacement/batch", json=body, headers={"Accept": "image/png"})
    problem(image, 406)


def test_a_name_from_outside_is_no_formula_in_csv(client: FlaskClient) -> None:
    body = {"columns": {"value": column(1), "=1+1": {"values": [1]}}, "shared": {"to": "mm"}}
    answer = client.post("/v1/convert/batch", json=body, headers={"Accept": CSV})
    assert all(
        not cell.startswith(("=", "+", "-", "@"))
        for row in csv.reader(io.StringIO(answer.text))
        for cell in row
    )
