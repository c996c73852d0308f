"""Bounds in the caller's unit: the declared ones to the last digit, alike in every unit."""

import math
import pkgutil
from fractions import Fraction
from importlib import import_module

import pytest
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st
from marshmallow import ValidationError

from ringland_service.api.reading.bounds import apart, bounds, outside
from ringland_service.api.reading.quantity_fields import check_uncertainty, check_value
from ringland_service.core import quantities
from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.declare.significant import as_written
from ringland_service.units import TABLE, unit

TYPES = {
    found.name: found
    for module in pkgutil.iter_modules(quantities.__path__, "ringland_service.core.quantities.")
    for found in vars(import_module(module.name)).values()
    if isinstance(found, QuantityType)
}
EVERY = [(name, symbol) for name, of in TYPES.items() for symbol in TABLE[of.kind.name]]
# What binary dust may add on the way to the canonical unit and back.
DUST = 1e-12


def test_there_are_types_of_every_measured_kind() -> None:
    assert len(TYPES) > 30
    assert len({of.kind.name for of in TYPES.values()}) >= 10


def taken(of: QuantityType, number: float, symbol: str) -> bool:
    """Return whether the reader takes a number in a unit."""
    try:
        check_value(of, number, symbol)
    except ValidationError:
        return False
    return True


@pytest.mark.parametrize(("name", "symbol"), EVERY)
def test_bounds_in_a_unit_are_the_declared_ones(name: str, symbol: str) -> None:
    of = TYPES[name]
    within, measure = bounds(of, symbol), unit(of.kind, symbol)
    for bound, canonical in ((within.low, of.low), (within.high, of.high)):
        exact = (as_written(canonical) - measure.origin) / measure.ratio
        assert bound == float(exact)
        assert abs(measure.to_canonical(bound) - canonical) <= DUST * max(
            abs(of.low), abs(of.high), abs(measure.offset)
        )


@pytest.mark.parametrize(("name", "symbol"), EVERY)
def test_a_bound_is_taken_in_every_unit_and_the_next_number_is_not(name: str, symbol: str) -> None:
    """14.9 psi and 102.732 kPa are one pressure: it is taken, or refused, in both."""
    of = TYPES[name]
    within = bounds(of, symbol)
    assert taken(of, within.low, symbol)
    assert taken(of, within.high, symbol)
    assert not taken(of, math.nextafter(within.low, -math.inf), symbol)
    assert not taken(of, math.nextafter(within.high, math.inf), symbol)


@pytest.mark.parametrize("name", TYPES)
@pytest.mark.parametrize("off", [Fraction(-1, 10**12), Fraction(1, 10**12)], ids=["in", "out"])
def test_one_quantity_near_its_bound_is_judged_alike_in_every_unit(
    name: str, off: Fraction
) -> None:
    """A part in 10¹² to either side of the upper bound, told in each unit to the last digit."""
    of = TYPES[name]
    high = as_written(of.high)
    near = high + off * max(abs(high), 1 + abs(as_written(of.low)))
    units = [unit(of.kind, symbol) for symbol in TABLE[of.kind.name]]
    # Where a scale has its zero elsewhere a float holds fewer of the digits.
    told = {u.symbol: float((near - u.origin) / u.ratio) for u in units if not u.origin}
    assert {taken(of, number, s) for s, number in told.items()} <= {off < 0}


@pytest.mark.parametrize(("name", "symbol"), EVERY)
def test_uncertainty_is_bounded_by_a_tenth_of_the_span(name: str, symbol: str) -> None:
    of = TYPES[name]
    within, ratio = bounds(of, symbol), unit(of.kind, symbol).ratio
    tenth = (as_written(of.high) - as_written(of.low)) / 10
    assert within.most_uncertainty == float(tenth / ratio)
    assert within.least_uncertainty == float(tenth / ratio / 10**8)


@pytest.mark.parametrize(("name", "symbol"), EVERY)
def test_a_quarter_of_the_value_is_the_same_quarter_in_every_unit(name: str, symbol: str) -> None:
    of = TYPES[name]
    measure = unit(of.kind, symbol)
    value = of.low + 0.3 * of.span
    number = measure.from_canonical(value)
    for share, fits in ((1 - 1e-9, True), (1 + 1e-9, False)):
        doubt = share * of.most_uncertainty(value) / measure.factor
        given_ = {"value": number, "unit": symbol, "uncertainty": doubt}
        try:
            check_uncertainty(of, doubt, given_, symbol)
        except ValidationError:
            assert not fits
        else:
            assert fits


@pytest.mark.parametrize("name", TYPES)
def test_canonical_bounds_are_kept_as_declared(name: str) -> None:
    of = TYPES[name]
    within = bounds(of, of.kind.unit)
    assert (within.low, within.high) == (of.low, of.high)


@given(st.floats(-1e9, 1e9), st.integers(1, 10**6))
def test_a_number_and_the_bound_that_it_breaks_read_apart(bound: float, steps: int) -> None:
    number = bound
    for _ in range(min(steps, 3)):
        number = math.nextafter(number, math.inf)
    shown, limit = apart(number, bound)
    assert float(shown) > float(limit)
    assert outside(number, bound - 1.0, bound, "mm").startswith(f"{shown} mm is outside")


def test_a_bound_itself_is_accepted_and_the_next_float_is_not(client: FlaskClient) -> None:
    """20 to 160 mm, by hand: 20/25.4 = 0.7874015748031496..., 160/25.4 = 6.299212598425196..."""
    for symbol, low, high in (
        ("mm", 20.0, 160.0),
        ("in", 0.7874015748031496, 6.299212598425197),
    ):
        for value, status in (
            (low, 200),
            (math.nextafter(low, 0), 422),
            (high, 200),
            (math.nextafter(high, 999), 422),
        ):
            stroke = {"value": 60, "unit": "mm"}
            asked = {"bore": {"value": value, "unit": symbol}, "stroke": stroke}
            answer = client.post("/v1/displacement", json=asked)
            assert answer.status_code == status, (value, symbol, answer.json)
