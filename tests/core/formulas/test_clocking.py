import cmath
import math

import pytest
from formula_checks import number
from hypothesis import given

from ringland_service.core.formulas import clocking


def test_worked_gaps() -> None:
    # By hand: 45 to 225; pi * 68.5 * 40 / 360; pi * 56 * 8 / 360 less 0.8.
    assert clocking.separation_deg(45.0, 225.0) == 180.0
    assert clocking.separation_deg(350.0, 20.0) == 30.0
    assert clocking.to_axis_deg(45.0, 0.0) == 45.0
    assert clocking.to_axis_deg(350.0, 0.0) == 10.0
    assert clocking.arc_mm(68.5, 40.0) == pytest.approx(23.911, rel=2e-5)
    assert clocking.ring_end_margin_mm(56.0, 8.0, 0.8) == pytest.approx(3.10954, rel=2e-5)
    assert clocking.ring_end_margin_mm(56.0, 1.0, 0.8) < 0


@given(number(-720, 720), number(-720, 720))
def test_separation_is_the_angle_between_directions(one: float, other: float) -> None:
    # Outside: the phase of the quotient of two complex numbers (standard library cmath).
    turn = cmath.rect(1.0, math.radians(one)) / cmath.rect(1.0, math.radians(other))
    found = clocking.separation_deg(one, other)
    assert found == pytest.approx(abs(math.degrees(cmath.phase(turn))), abs=1e-6)


@given(number(-720, 720), number(-360, 360))
def test_to_axis_is_the_nearest_of_four(angle: float, thrust: float) -> None:
    each = [clocking.separation_deg(angle, thrust + quarter) for quarter in (0, 90, 180, 270)]
    assert clocking.to_axis_deg(angle, thrust) == pytest.approx(min(each), abs=1e-9)


def test_whole_arc_is_the_circumference() -> None:
    # Source: circumference of a circle of diameter 100: 314.159 (any handbook's table of circles).
    assert clocking.arc_mm(100.0, 360.0) == pytest.approx(314.159, rel=1e-6)


@given(number(20, 160), number(0, 180), number(0, 4))
def test_margin_opens_with_the_angle(bore: float, angle: float, half: float) -> None:
    margin = clocking.ring_end_margin_mm(bore, angle, half)
    assert margin + half == pytest.approx(clocking.arc_mm(bore, angle), abs=1e-9)
    assert clocking.ring_end_margin_mm(bore, angle + 1, half) > margin
