"""A stated uncertainty comes back as it was stated, whatever the field, the unit and the door."""

import copy
import json
from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from asking import COMPOSITES, PLAIN, post
from flask.testing import FlaskClient
from possible_requests import text_of

from ringland_service.api.reading import query
from ringland_service.api.reading.bounds import bounds
from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import asked
from ringland_service.core.declare.fields import QuantityField, RecordsField, SectionField
from ringland_service.units import canonical_symbols, unit

Where = tuple[str | int, ...]


def fields_of(record: type, shown: Any, path: Where = ()) -> Iterator[tuple[Where, QuantityField]]:
    """Yield the fields of an example that take an uncertainty, down to sections and records."""
    for name, field in asked(record).items():
        public = field.public(name)
        if public not in shown:
            continue
        here = (*path, public)
        if isinstance(field, QuantityField) and not field.exact:
            yield here, field
        elif isinstance(field, SectionField):
            yield from fields_of(field.record, shown[public], here)
        elif isinstance(field, RecordsField):
            for place, one in enumerate(shown[public][:1]):
                yield from fields_of(field.record, one, (*here, place))


def at(shown: Any, path: Where) -> Any:
    for key in path:
        shown = shown[key]
    return shown


CASES = [
    (calculation, path, field)
    for calculation in CALCULATIONS
    for path, field in fields_of(calculation.inputs, example(calculation.inputs))
]
# Digits that binary floats do not hold, small against what each field may take.
SHARES = ("0.0137", "0.0371")


def stated(field: QuantityField, given: dict[str, Any], symbol: str, share: str) -> dict[str, Any]:
    """Return a quantity in a unit with an uncertainty of three digits."""
    measure = unit(field.type.kind, symbol)
    canonical = unit(field.type.kind, given["unit"])

    def brought(value: float | None) -> float | None:
        return None if value is None else measure.from_canonical(canonical.to_canonical(value))

    most = bounds(field.type, symbol).most_uncertainty
    numbers = [given["value"]] if "value" in given else given["values"]
    if field.type.excludes_zero:
        most = min(most, *(field.type.most_uncertainty(v) / measure.factor for v in numbers))
    doubt = float(f"{most * float(share):.3g}")
    key = "value" if "value" in given else "values"
    told = brought(given[key]) if key == "value" else [brought(v) for v in given[key]]
    return {key: told, "unit": symbol, "uncertainty": doubt}


def shown_as(field: QuantityField, doubt: float, symbol: str, other: str) -> float:
    """Return an uncertainty in another unit, by exact fractions of the digits stated."""
    kind = field.type.kind
    return float(Fraction(repr(doubt)) * unit(kind, symbol).ratio / unit(kind, other).ratio)


def comes_back(client: FlaskClient, calculation: Any, path: Where, field: Any, unit_: str) -> bool:
    """Return whether the example is answered, asserting that its uncertainty is as stated.

    Some examples cannot take one more uncertainty (a doubt told twice, ways that exclude each
    other): those are refused, and say so.
    """
    body = copy.deepcopy(example(calculation.inputs))
    at(body, path[:-1])[path[-1]] = told = stated(field, at(body, path), unit_, SHARES[0])
    system = "us" if unit_ == field.type.kind.us else "metric"
    answer = client.post(f"/v1/{calculation.name}?units={system}", json=body)
    if answer.status_code == 422:
        return False
    assert answer.status_code == 200, answer.text
    found = at(answer.json["inputs"], path)
    expected = shown_as(field, told["uncertainty"], unit_, found["unit"])
    if found["unit"] == unit_:
        assert expected == told["uncertainty"]
    if "values" in found:
        assert found["uncertainties"] == [None if v is None else expected for v in found["values"]]
    else:
        assert found["uncertainty"] == expected, path
    return True


def units_of(field: QuantityField, turn: int) -> set[str]:
    """Return three units of a field: its own, the American one, and another in turn."""
    kind, known = field.type.kind, canonical_symbols(field.type.kind)
    return {kind.unit, kind.us, known[turn % len(known)]}


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_it_comes_back_as_stated(client: FlaskClient, calculation: Any) -> None:
    for turn, (path, field) in enumerate((p, f) for c, p, f in CASES if c is calculation):
        for symbol in units_of(field, turn):
            comes_back(client, calculation, path, field, symbol)


def test_most_examples_can_be_asked(client: FlaskClient) -> None:
    plain = [case for case in CASES if case[0] in PLAIN]
    met = [comes_back(client, c, path, f, f.type.kind.unit) for c, path, f in plain]
    assert len(met) > 250
    assert sum(met) > 0.7 * len(met)


@pytest.mark.parametrize("calculation", COMPOSITES, ids=lambda c: c.name)
def test_a_whole_job_gives_it_back_as_stated(client: FlaskClient, calculation: Any) -> None:
    """Every seventh field: a card is long, and its fields are those of its parts."""
    cases = [(p, f) for c, p, f in CASES if c is calculation]
    met = [comes_back(client, calculation, p, f, f.type.kind.us) for p, f in cases[::7]]
    assert any(met)


SCALARS = [
    case
    for case in CASES
    if query.offers_get(case[0]) and len(case[1]) == 1 and query.is_scalar(case[2])
]


@pytest.mark.parametrize("sign", ["+/-", "±"])
def test_it_comes_back_from_an_address(client: FlaskClient, sign: str) -> None:
    assert len(SCALARS) > 100
    met = 0
    for calculation, (name,), field in SCALARS:
        shown = example(calculation.inputs)
        symbol = field.type.kind.unit
        told = stated(field, shown[name], symbol, SHARES[1])
        known = query.text_fields(calculation)
        texts = {n: text_of(v) for n, v in shown.items() if n in known and not isinstance(v, bool)}
        texts[name] = f"{told['value']:.12g} {symbol} {sign} {told['metrology.propagation']!r}"
        answer = client.get(f"/v1/{calculation.name}", query_string=texts)
        if answer.status_code == 200:
            met += 1
            assert answer.json["inputs"][name]["uncertainty"] == told["uncertainty"]
    assert met > 100


def test_by_hand(client: FlaskClient) -> None:
    """0.007 in is 0.1778 mm (0.007 · 25.4); a float's product reads 0.17779999999999999."""
    body = {
        "bore": {"value": 2.677, "unit": "in", "uncertainty": 0.007},
        "stroke": {"value": 66, "unit": "mm", "uncertainty": 0.007},
    }
    found = post(client, "displacement", body)["inputs"]
    assert found["bore"]["uncertainty"] == 0.1778
    assert found["stroke"]["uncertainty"] == 0.007
    american = client.post("/v1/displacement?units=us", json=body).json["inputs"]
    assert american["bore"]["uncertainty"] == 0.007


def test_lines_of_a_batch_too(client: FlaskClient) -> None:
    line = (
        b'{"bore": {"value": 2.677, "unit": "in", "uncertainty": 0.007},'
        b' "stroke": {"value": 66, "unit": "mm", "uncertainty": 0.007}}\n'
    )
    headers = {"Content-Type": "application/x-ndjson"}
    answer = client.post("/v1/displacement/batch?units=us", data=line * 2, headers=headers)
    assert answer.status_code == 200
    assert answer.text.count('"uncertainty":0.007') == 2


def expanded(shown: Any) -> Iterator[float]:
    """Yield every uncertainty of a quantity in an answer."""
    if isinstance(shown, dict):
        if isinstance(shown.get("uncertainty"), float):
            yield shown["uncertainty"]
        for one in shown.values():
            yield from expanded(one)
    elif isinstance(shown, list):
        for one in shown:
            yield from expanded(one)


JOBS = sorted((Path(__file__).parents[2] / "demo_data").rglob("*.json"))


@pytest.mark.parametrize("job", JOBS, ids=lambda p: f"{p.parent.name}-{p.stem}")
def test_a_result_that_follows_one_reading_has_its_uncertainty(
    client: FlaskClient, job: Path
) -> None:
    """A difference over a small step gives 0.00999999999998 where 0.01 was stated."""
    found = post(client, "job-card", json.loads(job.read_text(encoding="utf-8")))
    for u in expanded([found["result"], found["verdicts"]]):
        short = float(f"{u:.5g}")
        assert u == short or abs(u - short) > 1e-9 * u
