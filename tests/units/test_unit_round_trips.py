"""There and back in every unit within 4 ulp."""

import math
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ringland_service.units import TABLE
from ringland_service.vocabulary import UNITS

EVERY = [(kind, symbol) for kind, symbols in UNITS.items() for symbol in symbols]
NUMBERS = st.floats(1e-9, 1e9) | st.floats(-1e9, -1e-9) | st.just(0.0)


@pytest.mark.parametrize(("kind", "symbol"), EVERY)
@given(number=NUMBERS)
@settings(max_examples=60)
def test_there_and_back(kind: str, symbol: str, number: float) -> None:
    unit = TABLE[kind][symbol]
    back = unit.from_canonical(unit.to_canonical(number))
    # An offset's rounding counts in ulp of the offset where the number is smaller.
    size = max(abs(number), abs(unit.offset / unit.factor))
    assert abs(back - number) <= 4 * math.ulp(size)
    forth = unit.to_canonical(unit.from_canonical(number))
    assert abs(forth - number) <= 4 * math.ulp(max(abs(number), abs(unit.offset)))


@pytest.mark.parametrize(("kind", "symbol"), EVERY)
@given(number=NUMBERS)
@settings(max_examples=40)
def test_one_conversion_is_within_two_ulp(kind: str, symbol: str, number: float) -> None:
    """Against exact fractions: one rounding of the factor, one of the product, one of the sum."""
    unit = TABLE[kind][symbol]
    exact = Fraction(number) * unit.ratio
    if kind == "temperature":
        exact += {"degC": Fraction(0), "K": Fraction("-273.15"), "degF": Fraction(-160, 9)}[symbol]
    found = unit.to_canonical(number)
    size = max(abs(float(exact)), abs(found), abs(unit.offset), abs(number) * unit.factor)
    assert abs(float(Fraction(found) - exact)) <= 2 * math.ulp(size)
