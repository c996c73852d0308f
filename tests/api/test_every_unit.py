"""Every reference case over the wire, and again with each of its quantities in every unit."""

from collections.abc import Iterator
from typing import Any

import pytest
from asking import PLAIN, strict
from case_requests import in_unit, request_of
from flask.testing import FlaskClient
from reference_cases import Case, cases

from ringland_service.api.reading.bounds import bounds
from ringland_service.core.declare import asked, declared
from ringland_service.core.declare.fields import QuantityField
from ringland_service.units import symbols, unit
from ringland_service.vocabulary import ALIASES

CASES = [case for case in cases() if case.declaration in PLAIN and not case.refused]
SAME = 1e-9


def asked_again(case: Case, body: dict[str, Any]) -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Yield the request with one quantity in another unit, each quantity in every unit."""
    for name, field in asked(case.declaration.inputs).items():
        public = field.public(name)
        if not isinstance(field, QuantityField) or public not in body:
            continue
        for symbol in symbols(field.type.kind):
            if symbol == field.type.kind.unit or symbol in ALIASES:
                continue
            given = in_unit(field, case.inputs[name], symbol)
            if within_bounds(field, given, symbol):
                if name in case.uncertainty:
                    factor = unit(field.type.kind, symbol).factor
                    given["uncertainty"] = case.uncertainty[name] / factor
                yield public, symbol, {**body, public: given}


def within_bounds(field: QuantityField, given: dict[str, Any], symbol: str) -> bool:
    """Return whether a value stays inside its bounds in this unit."""
    within = bounds(field.type, symbol)
    numbers = given.get("values", [given.get("value")])
    return all(number is None or within.low <= number <= within.high for number in numbers)


def same(one: Any, other: Any) -> bool:
    """Return whether two answers say the same, numbers within 1e-9."""
    if isinstance(one, dict):
        return one.keys() == other.keys() and all(same(one[k], other[k]) for k in one)
    if isinstance(one, list):
        return len(one) == len(other) and all(map(same, one, other))
    if isinstance(one, float) and isinstance(other, float):
        return one == pytest.approx(other, rel=SAME, abs=SAME)
    return bool(one == other)


def told(answer: Any) -> dict[str, Any]:
    """Return what must not depend on the units: results and verdicts."""
    return {
        "result": answer["result"],
        "verdicts": {v["check"]: v["verdict"] for v in answer["verdicts"]},
    }


@pytest.mark.parametrize("case", CASES, ids=str)
def test_case_in_every_unit(client: FlaskClient, case: Case) -> None:
    path, body = f"/v1/{case.calculation}", request_of(case)
    first = client.post(path, json=body)
    assert first.status_code == 200, first.text
    expected = told(strict(first))
    for public, symbol, again in asked_again(case, body):
        answer = client.post(path, json=again)
        assert answer.status_code == 200, (public, symbol, answer.text)
        assert same(told(strict(answer)), expected), (public, symbol)


@pytest.mark.parametrize("case", CASES, ids=str)
def test_case_over_the_wire(client: FlaskClient, case: Case) -> None:
    """The door adds nothing: the expected numbers of the case come out in canonical units."""
    answer = strict(client.post(f"/v1/{case.calculation}", json=request_of(case)))
    fields = declared(case.declaration.outputs)  # type: ignore[attr-defined]
    for name, value in case.expect.items():
        found = answer["result"].get(fields[name].public(name))
        if value == "absent":
            assert found is None, name
        elif isinstance(value, float):
            number = found["value"] if isinstance(found, dict) else found
            assert number == pytest.approx(value, rel=case.relative, abs=case.absolute), name
    verdicts = {v["check"]: v["verdict"] for v in answer["verdicts"]}
    assert {name: verdicts.get(name, "absent") for name in case.verdicts} == case.verdicts


def test_every_calculation_is_met() -> None:
    assert {case.calculation for case in CASES} == {c.name for c in PLAIN}


def test_units_are_met_in_numbers() -> None:
    """The loop above is not empty: each kind of quantity in its other units."""
    met = {(p, s) for case in CASES for p, s, _ in asked_again(case, request_of(case))}
    assert len(met) > 150
    assert {"in", "thou", "psi", "psig", "ft", "degF", "1/degF", "rad"} <= {s for _, s in met}
