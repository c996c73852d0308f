import itertools

import pytest
from formula_checks import number, piston_height_mm
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import running_in


def test_worked_speed_and_oil() -> None:
    # By hand: 2 * 66 * 8500 / 60000; 9000 / 32; 2500 / 41; 76.2195 - 60.9756.
    assert running_in.mean_piston_speed_m_s(66.0, 8500.0) == pytest.approx(18.7, rel=1e-12)
    assert running_in.oil_ml(9000.0, 32.0) == pytest.approx(281.25, rel=1e-12)
    assert running_in.oil_in_mix_ml(2500.0, 40.0) == pytest.approx(60.9756, rel=2e-5)
    assert running_in.lacking(76.2195, 60.9756) == pytest.approx(15.2439, rel=2e-5)
    assert running_in.lacking(1.0, 2.0) == 0.0


@given(number(15, 150), number(50, 20000))
def test_speed_is_the_way_of_a_turn(stroke: float, rpm: float) -> None:
    # Outside: the way of the piston over one turn, from the root of the slider-crank.
    rod = 2 * stroke
    heights = [piston_height_mm(stroke / 2, rod, 0.0, angle) for angle in range(0, 361, 60)]
    way = sum(abs(b - a) for a, b in itertools.pairwise(heights))
    found = running_in.mean_piston_speed_m_s(stroke, rpm)
    assert found == pytest.approx(way / 1000 * rpm / 60, rel=1e-9)


def test_oil_of_a_us_gallon() -> None:
    # Source: 128 fluid ounces a gallon (NIST SP 811, from memory): 4 of them make 32:1.
    assert running_in.oil_ml(128.0, 32.0) == 4.0


@given(number(50, 500_000), number(8, 200))
def test_oil_of_the_mix_is_the_oil_put_in(fuel: float, ratio: float) -> None:
    oil = running_in.oil_ml(fuel, ratio)
    assert running_in.oil_in_mix_ml(fuel + oil, ratio) == pytest.approx(oil, rel=1e-12)


def test_no_ratio() -> None:
    with pytest.raises(OutOfBounds, match="ratio: must be above zero"):
        running_in.oil_ml(1000.0, 0.0)
    with pytest.raises(OutOfBounds, match="ratio: must be above zero"):
        running_in.oil_in_mix_ml(1000.0, 0.0)
