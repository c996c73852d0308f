from math import pi

import numpy as np
import pytest
from formula_checks import number
from hypothesis import given
from scipy.special import ellipe

from ringland_service.core.formulas import rings


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def ellipse_perimeter_mm(one_axis: float, other_axis: float) -> float:
    """Perimeter by the complete elliptic integral of the second kind (scipy)."""
    long, short = max(one_axis, other_axis), min(one_axis, other_axis)
    return float(2 * long * ellipe(1 - (short / long) ** 2))


def test_worked_wanted_gap_and_filing() -> None:
    # By hand: 0.004 * 68.496 and 0.005 * 68.496.
    top = rings.wanted_gap_mm(0.004, 68.496)
    second = rings.wanted_gap_mm(0.005, 68.496)
    assert (top, second) == (near(0.273984), near(0.34248))
    assert rings.filing_mm(top, 0.21) == near(0.063984)
    assert rings.filing_mm(second, 0.3) == near(0.04248)
    # A maker's range from 0.15: the measured 0.21 is inside it and nothing is filed.
    assert rings.filing_mm(0.15, 0.21) == 0


def test_worked_gap_in_a_worn_bore() -> None:
    # By hand: mean of 68.062 and 68.094 is 68.078; pi * 0.066 = 0.207345; pi * 0.082 = 0.257611.
    growth = rings.gap_growth_mm(rings.mean_diameter_mm(68.062, 68.094), 68.012)
    assert growth == near(0.207345)
    assert rings.gap_growth_mm(68.094, 68.012) == near(0.257611)
    own = rings.own_gap_mm(0.62, growth)
    assert own == near(0.412655)
    assert own - 0.21 == near(0.202655)
    assert rings.gap_in_worn_bore_mm(own, growth) == near(0.62)


def test_worked_hot_gap() -> None:
    # By hand: pi * 68.496 = 215.1865; times (1.5e-5 * 100 - 1.2e-5 * 180) is -0.142023.
    hot = rings.hot_gap_mm(0.21, 68.496, 100.0, 1.5e-5, 180.0, 1.2e-5)
    assert hot == near(0.0679769)
    assert rings.hot_gap_mm(0.273984, 68.496, 100.0, 1.5e-5, 180.0, 1.2e-5) == near(0.131961)
    assert rings.hot_gap_mm(0.21, 68.496, 100.0, 1.1e-5, 180.0, 1.2e-5) == near(-0.0180977)


@given(number(20, 160), number(0, 0.3), number(0, 0.3))
def test_growth_against_the_perimeter_of_an_ellipse(
    unworn: float, pin_wear: float, thrust_wear: float
) -> None:
    # Outside check: scipy's elliptic integral. The mean axis is short by pi (a - b)² / (16 D).
    pin, thrust = unworn + pin_wear, unworn + thrust_wear
    exact = ellipse_perimeter_mm(pin, thrust) - pi * unworn
    found = rings.gap_growth_mm(rings.mean_diameter_mm(pin, thrust), unworn)
    second_order = pi * (pin - thrust) ** 2 / (16 * unworn)
    assert found == pytest.approx(exact, abs=1.01 * second_order + 1e-10)


@given(number(20, 160), number(0.05, 1.5), number(0, 250), number(0, 250))
def test_hot_gap_against_the_two_perimeters(
    bore: float, cold: float, bore_rise: float, ring_rise: float
) -> None:
    # Outside check by another way: bore perimeter less ring length, each grown by itself. The
    # ring is shorter than the perimeter by its gap, which is what the formula leaves out.
    perimeter = pi * bore
    exact = perimeter * (1 + 2e-5 * bore_rise) - (perimeter - cold) * (1 + 1.2e-5 * ring_rise)
    found = rings.hot_gap_mm(cold, bore, bore_rise, 2e-5, ring_rise, 1.2e-5)
    assert found == pytest.approx(exact - cold * 1.2e-5 * ring_rise, abs=1e-11)


@given(number(0, 5), number(20, 160), number(0, 1))
def test_own_gap_undone(gap: float, unworn: float, wear: float) -> None:
    growth = rings.gap_growth_mm(unworn + wear, unworn)
    assert growth == pytest.approx(pi * wear, abs=1e-12)
    back = rings.gap_in_worn_bore_mm(rings.own_gap_mm(gap, growth), growth)
    assert back == pytest.approx(gap, abs=1e-14)


@given(number(0.002, 0.012), number(20, 160), number(0, 2))
def test_a_filed_ring_has_the_wanted_gap(factor: float, bore: float, measured: float) -> None:
    wanted = rings.wanted_gap_mm(factor, bore)
    assert wanted / bore == pytest.approx(factor, rel=1e-14)
    filed = measured + rings.filing_mm(wanted, measured)
    assert filed == pytest.approx(max(wanted, measured), abs=1e-14)


def test_filing_never_puts_metal_back() -> None:
    # common practice, no source
    assert rings.filing_mm(0.3, np.array([0.2, 0.3, 0.4])) == pytest.approx([0.1, 0.0, 0.0])
