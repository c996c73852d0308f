"""A limit takes no uncertainty, wherever one can be told; it is refused, never ignored."""

from typing import Any

import pytest
from asking import PLAIN, post, problem
from flask.testing import FlaskClient

from ringland_service.api.reading import query
from ringland_service.api.reading.envelope import checks_of, kinds_judged
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import asked
from ringland_service.core.declare.fields import AnyQuantityField, QuantityField
from ringland_service.core.declare.kinds import Kind

# Every check of every calculation, with the kind that its limit has.
CHECKS = [
    (calculation.name, name, kind)
    for calculation in CALCULATIONS
    for name, kind in kinds_judged(calculation).items()
]
# A batch has columns where a question fits into a row.
COLUMNED = [calculation for calculation in PLAIN if query.offers_get(calculation)]
EXACT = [
    (calculation, name, field)
    for calculation in COLUMNED
    for name, field in asked(calculation.inputs).items()
    if isinstance(field, (QuantityField, AnyQuantityField)) and field.exact
]
VALUE = {"value": 0.0745, "unit": "mm"}
SIDES = ("low", "high")
WORDS = "takes no uncertainty"


def refusal(answer: Any) -> Any:
    """Return the fault that says so, of an answer that must be refused."""
    faults = problem(answer, answer.status_code)["errors"]
    (found,) = [fault for fault in faults if WORDS in fault["detail"]]
    assert answer.status_code in (400, 422)
    assert found["code"] == "exact"
    return found


def limit(kind: Kind | None, doubt: str = "uncertainty") -> dict[str, Any]:
    unit = kind.unit if kind else "mm"
    return {
        "value": 0.1,
        "unit": unit,
        doubt: 0.01 if doubt == "uncertainty" else "gauge",
    }


def test_there_are_many_checks() -> None:
    assert len(CHECKS) > 60
    assert {name for name, _, _ in CHECKS} == {c.name for c in CALCULATIONS if checks_of(c)}


@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize(("name", "check", "kind"), CHECKS, ids=lambda v: str(v)[:30])
def test_in_json(client: FlaskClient, name: str, check: str, kind: Kind | None, side: str) -> None:
    for doubt in ("uncertainty", "instrument"):
        body = {"limits": {check: {side: limit(kind, doubt)}}}
        fault = refusal(client.post(f"/v1/{name}", json=body))
        assert fault["pointer"] == f"#/limits/{check}/{side}/{doubt}"


@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize(("name", "check", "kind"), CHECKS, ids=lambda v: str(v)[:30])
@pytest.mark.parametrize("sign", ["+/-", "±", "/-"])
def test_in_an_address(
    client: FlaskClient, name: str, check: str, kind: Kind | None, side: str, sign: str
) -> None:
    calculation = next(c for c in CALCULATIONS if c.name == name)
    if not query.offers_get(calculation):
        assert client.get(f"/v1/{name}").status_code == 405
        return
    text = f"0.1 {kind.unit if kind else ''} {sign} 0.01"
    needed = {
        field.public(n): query.parameter_example(field)
        for n, field in asked(calculation.inputs).items()
        if query.has_text(field) and field.example is not None
    }
    asked_ = needed | {f"limit.{check}.{side}": text}
    refusal(client.get(f"/v1/{name}", query_string=asked_))


@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize(
    ("name", "check", "kind"),
    [check for check in CHECKS if check[0] in {c.name for c in COLUMNED}],
    ids=lambda v: str(v)[:30],
)
def test_in_a_column(
    client: FlaskClient, name: str, check: str, kind: Kind | None, side: str
) -> None:
    column = {"values": [0.1], "uncertainty": 0.01} | ({"unit": kind.unit} if kind else {})
    body = {"columns": {f"limit.{check}.{side}": column}}
    refusal(client.post(f"/v1/{name}/batch", json=body))
    unit = f" [{kind.unit}]" if kind else ""
    table = f"limit.{check}.{side}{unit},limit.{check}.{side} U{unit}\n0.1,0.01\n"
    headers = {"Content-Type": "text/csv"}
    refusal(client.post(f"/v1/{name}/batch", data=table, headers=headers))


@pytest.mark.parametrize("side", SIDES)
def test_in_the_verdict_s_own_fields(client: FlaskClient, side: str) -> None:
    doubted = {"value": 0.08, "unit": "mm", "uncertainty": 0.01}
    answer = client.post("/v1/verdict", json={"value": VALUE, side: doubted})
    assert refusal(answer)["pointer"] == f"#/{side}/uncertainty"
    for sign in ("+/-", "±", "/-"):
        asked_ = {"value": "0.0745mm", side: f"0.08mm {sign} 0.01"}
        refusal(client.get("/v1/verdict", query_string=asked_))


@pytest.mark.parametrize(("calculation", "name", "field"), EXACT, ids=lambda v: str(v)[:30])
def test_a_column_of_a_figure_that_takes_none(
    client: FlaskClient, calculation: Any, name: str, field: Any
) -> None:
    """Limits that are fields of their own (a class limit, the least lash) are of this class."""
    unit = field.type.kind.unit if isinstance(field, QuantityField) else "mm"
    public = field.public(name)
    column = {"values": [1.0], "unit": unit, "uncertainty": [0.01]}
    answer = client.post(f"/v1/{calculation.name}/batch", json={"columns": {public: column}})
    assert refusal(answer)["pointer"] == f"#/columns/{public}/uncertainty"
    table = f"{public} [{unit}],{public} U [{unit}]\n1.0,0.01\n"
    headers = {"Content-Type": "text/csv"}
    refusal(client.post(f"/v1/{calculation.name}/batch", data=table, headers=headers))


def test_a_class_limit(client: FlaskClient) -> None:
    body = {
        "bore": {"value": 68, "unit": "mm"},
        "stroke": {"value": 66, "unit": "mm"},
        "class_limit": {"value": 250, "unit": "cc", "uncertainty": 1},
    }
    (fault,) = post(client, "displacement", body, 422)["errors"]
    assert (fault["code"], fault["pointer"]) == ("exact", "#/class_limit/uncertainty")
