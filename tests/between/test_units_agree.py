"""The same question in other accepted units: the same answer, the same words of the verdicts."""

import random
from typing import Any

import pytest
from asking import post
from comparing import Json, difference
from drawing import Drawn
from flask.testing import FlaskClient
from questions import Asked, every

from between_tally import Tally
from ringland_service.api.reading.common_fields import kinds_judged
from ringland_service.api.shapes.bounds import bounds
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Operation, input_fields
from ringland_service.core.declare.fields import (
    Field,
    QuantityField,
    QuantityType,
    RecordsField,
    SectionField,
)
from ringland_service.core.declare.kinds import Kind
from ringland_service.units import symbols, unit

RELATION = "other units"
# What a conversion answers hangs on the units given; tests/units has it.
ABOUT_UNITS = ("convert", "verdict")
OTHERS = [c for c in CALCULATIONS if c.name not in ABOUT_UNITS]


def in_other_units(calculation: Operation, body: Json, chance: random.Random) -> Json:
    """Return a request with each of its quantities in a unit taken at random."""
    found = _record(calculation.inputs, body, chance)
    kinds = kinds_judged(calculation)
    if "limits" in body:
        found["limits"] = {
            check: {s: _side(kinds[check], side, chance) for s, side in limit.items()}
            for check, limit in body["limits"].items()
        }
    return found


def _record(record: type, values: Json, chance: random.Random) -> Json:
    known = {field.public(name): field for name, field in input_fields(record).items()}
    return {n: _value(known[n], v, chance) if n in known else v for n, v in values.items()}


def _value(field: Field, value: Any, chance: random.Random) -> Any:
    if isinstance(field, SectionField):
        return _record(field.record, value, chance)
    if isinstance(field, RecordsField):
        return [_record(field.record, one, chance) for one in value]
    if isinstance(field, QuantityField):
        symbol = chance.choice(symbols(field.type.kind))
        again = _in_unit(field.type.kind, value, symbol)
        return again if _fits(field.type, again) else value
    return value


def _in_unit(kind: Kind, value: Json, symbol: str) -> Json:
    """Return a quantity, or readings, in another unit, uncertainty and all."""
    given, wanted = unit(kind, value["unit"]), unit(kind, symbol)

    def number(one: float | None) -> float | None:
        return None if one is None else float(wanted.from_canonical(given.to_canonical(one)))

    found = {**value, "unit": symbol}
    if "values" in value:
        found["values"] = [number(one) for one in value["values"]]
    else:
        found["value"] = number(value["value"])
    if "uncertainty" in value:
        found["uncertainty"] = value["uncertainty"] * given.factor / wanted.factor
    return found


def _fits(of: QuantityType, value: Json) -> bool:
    """Return whether a quantity lies well within the bounds of its unit."""
    within = bounds(of, value["unit"])
    numbers = [v for v in value.get("values", [value.get("value")]) if v is not None]
    most = within.most_uncertainty
    if of.low > 0 or of.high < 0:
        most = min([most, *(abs(v) / 4 for v in numbers)])
    uncertainty = value.get("uncertainty", within.least_uncertainty)
    return all(within.low <= v <= within.high for v in numbers) and uncertainty <= most


def _side(kind: Kind | None, side: Any, chance: random.Random) -> Any:
    if kind is None or not isinstance(side, dict):
        return side
    return _in_unit(kind, side, chance.choice(symbols(kind)))


def assert_alike(client: FlaskClient, asked: Asked, chance: random.Random, tally: Tally) -> None:
    first = post(client, asked.calculation, asked.body)
    again = in_other_units(asked.declaration, asked.body, chance)
    other = post(client, asked.calculation, again)
    try:
        apart = difference(first, other)
    except AssertionError as error:
        raise AssertionError(f"{error}\nfirst {asked.body}\nagain {again}") from error
    tally.add(apart, str(asked))


@pytest.mark.parametrize("calculation", OTHERS, ids=lambda c: c.name)
def test_random_questions(
    client: FlaskClient, calculation: Operation, questions: Drawn, tally: Tally
) -> None:
    for i, body in enumerate(questions(calculation)):
        assert_alike(client, Asked(calculation.name, f"drawn {i}", body), random.Random(i), tally)


KNOWN = [one for one in every() if one.calculation not in ABOUT_UNITS]


@pytest.mark.parametrize("asked", KNOWN, ids=str)
def test_known_questions(client: FlaskClient, asked: Asked, tally: Tally) -> None:
    assert_alike(client, asked, random.Random(str(asked)), tally)
