"""Bounds in the caller's unit: rounded inward, and not by more than six digits tell."""

import math
from decimal import ROUND_CEILING, ROUND_FLOOR

import pytest
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.api.bounds import bounds, rounded
from ringland_service.core import lengths, quantities
from ringland_service.core.fields import QuantityType
from ringland_service.units import TABLE, unit

TYPES = {
    found.name: found
    for module in (lengths, quantities)
    for found in vars(module).values()
    if isinstance(found, QuantityType)
}
EVERY = [(name, symbol) for name, of in TYPES.items() for symbol in TABLE[of.kind.name]]
# What binary dust may add on the way to the canonical unit and back.
DUST = 1e-12


def test_there_are_types_of_every_measured_kind() -> None:
    assert len(TYPES) > 30
    assert len({of.kind.name for of in TYPES.values()}) >= 10


@pytest.mark.parametrize(("name", "symbol"), EVERY)
def test_bounds_in_a_unit_lie_inside_the_canonical_ones(name: str, symbol: str) -> None:
    of = TYPES[name]
    within, measure = bounds(of, symbol), unit(of.kind, symbol)
    low, high = measure.to_canonical(within.low), measure.to_canonical(within.high)
    dust = DUST * max(abs(of.low), abs(of.high), abs(measure.offset))
    assert of.low - dust <= low < high <= of.high + dust
    # Six digits: no bound gives away more than a unit of its sixth digit.
    slack = 1e-5 * max(abs(within.low), abs(within.high)) * measure.factor
    assert low - of.low <= slack
    assert of.high - high <= slack


@pytest.mark.parametrize(("name", "symbol"), EVERY)
def test_uncertainty_is_bounded_by_a_tenth_of_the_span(name: str, symbol: str) -> None:
    of = TYPES[name]
    within, factor = bounds(of, symbol), unit(of.kind, symbol).factor
    assert 0 < within.least_uncertainty < within.most_uncertainty
    assert within.most_uncertainty * factor <= of.span / 10 * (1 + DUST)
    assert within.most_uncertainty * factor >= of.span / 10 * (1 - 1e-5)


@pytest.mark.parametrize("name", TYPES)
def test_canonical_bounds_are_kept_as_declared(name: str) -> None:
    of = TYPES[name]
    within = bounds(of, of.kind.unit)
    assert (within.low, within.high) == (of.low, of.high)


@given(st.floats(1e-9, 1e9) | st.floats(-1e9, -1e-9) | st.just(0.0))
def test_rounding_goes_the_way_that_it_is_told(value: float) -> None:
    up, down = rounded(value, ROUND_CEILING), rounded(value, ROUND_FLOOR)
    assert down <= value <= up
    assert up - down <= 1.0000001e-5 * abs(value)
    assert all(float(f"{v:.6g}") == v for v in (up, down))


def test_a_bound_itself_is_accepted_and_the_next_float_is_not(client: FlaskClient) -> None:
    """20 to 160 mm: 160 mm = 6.29921259... in, inward 6.29921."""
    for symbol, low, high in (("mm", 20.0, 160.0), ("in", 0.787402, 6.29921)):
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
