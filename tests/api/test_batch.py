"""Batches: columns in, columns out; rows as single calls have them; bad rows keep their place."""

import math
from typing import Any

import pytest
from asking import PLAIN, post, problem
from flask.testing import FlaskClient

from ringland_service.api.reading.query import offers_get, text_fields
from ringland_service.api.reading.row_budget import MOST_ROWS
from ringland_service.api.shapes.examples import example
from ringland_service.core.declare import Calculation, asked
from ringland_service.core.declare.fields import AnyQuantityField, QuantityField

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
    """Return sound requests like the example, their quantities a little apart."""
    sound = example(of.inputs)
    fields = {f.public(n): f for n, f in asked(of.inputs).items()}
    told = {n: v for n, v in sound.items() if n in text_fields(of)}

    def row(i: int) -> dict[str, Any]:
        found = {}
        for name, value in told.items():
            found[name] = value
            plain = isinstance(fields[name], QuantityField) and not name.endswith("temperature")
            if plain and "values" in value:
                numbers = [one and one * (1 - i * 1e-9) for one in value["values"]]
                found[name] = {**value, "values": numbers}
            elif plain and of.name != "convert":
                found[name] = {**value, "value": value["value"] * (1 - i * 1e-9)}
        return found

    return [row(i) for i in range(count)]


def as_columns(of: Calculation, rows: list[dict[str, Any]]) -> dict[str, Any]:
    fields = {f.public(n): f for n, f in asked(of.inputs).items()}
    found: dict[str, Any] = {}
    for name, first in rows[0].items():
        if isinstance(fields[name], (QuantityField, AnyQuantityField)):
            key = "values" if "values" in first else "value"
            found[name] = {"values": [r[name][key] for r in rows], "unit": first["unit"]}
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
        2: ("bore", "out_of_bounds"),
        3: ("bore", "missing_field"),
        4: ("bore", "wrong_type"),
        5: ("bore", "wrong_type"),
        6: ("cylinders", "out_of_bounds"),
    }
    assert "20 to 160 mm" in found["problems"][0]["detail"]


def test_a_row_that_contradicts_itself(client: FlaskClient) -> None:
    found = batch(client, {"bore": column(68, 159), "cylinders": {"values": [1, 8]}})
    (entry,) = found["problems"]
    assert (entry["row"], entry["code"]) == (2, "contradiction")
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
    assert [(e["row"], e["code"]) for e in found["problems"]] == [(4, "wrong_type")]
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
    (fault,) = problem(answer, 422 if code == "given_twice" else 400)["errors"]
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
