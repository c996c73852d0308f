from math import atan2, cos, degrees, hypot, radians, sin

import pytest
from formula_checks import number, piston_height_mm, rows
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas import crank, position


@st.composite
def cranks(draw: st.DrawFn) -> tuple[float, float, float]:
    """Radius, rod and offset of an engine that turns over."""
    stroke = draw(number(15, 150))
    return stroke / 2, stroke * draw(number(1.0, 3.0)), draw(number(-5, 5))


def test_triangle_of_30_40_50() -> None:
    # By hand: crank 30 across at 90°, rod 50, so the pin stands 40 high: 80 - 40 = 40 of travel.
    assert position.angle_going_down_deg(30.0, 50.0, 0.0, 40.0) == pytest.approx(90.0, rel=1e-14)
    assert position.angle_coming_up_deg(30.0, 50.0, 0.0, 40.0) == pytest.approx(-90.0, rel=1e-14)


def test_offset_by_hand() -> None:
    # Crank of 30 across, bore axis 30 aside: the rod of 80 stands upright and the pin 80 high.
    # Top: sqrt(110² - 30²) = sqrt(11 200), so the travel is sqrt(11 200) - 80.
    travel = 11200.0**0.5 - 80.0
    found = position.angle_going_down_deg(30.0, 80.0, 30.0, travel)
    assert found == pytest.approx(90.0, rel=1e-13)


@pytest.mark.parametrize(("rod", "offset"), [(50.0, 30.0), (60.0, 30.0), (60.0, -30.0)])
def test_rod_too_short(rod: float, offset: float) -> None:
    # A rod just as long as radius and offset together would lie flat at one point and jam.
    with pytest.raises(Contradiction) as refused:
        position.angle_going_down_deg(30.0, rod, offset, 10.0)
    assert str(refused.value) == (
        "rod_mm: the crank cannot turn over with a rod that short "
        "(a rod longer than the crank radius and the offset together)"
    )


def test_against_the_table() -> None:
    # Source: crank_slider.csv, sympy 30-digit evaluation; the offset column by the same means.
    for row in rows("crank_slider.csv")[1:-1]:
        angle = float(row["deg"])
        straight = position.angle_going_down_deg(30.0, 110.0, 0.0, float(row["x_sympy_mm"]))
        assert straight == pytest.approx(angle, abs=1e-8)
        aside = position.angle_going_down_deg(30.0, 110.0, 1.0, float(row["x_offset1_mm"]))
        assert aside == pytest.approx(angle, abs=1e-8)


@given(cranks(), number(0.02, 0.98))
def test_against_a_numeric_root(engine: tuple[float, float, float], share: float) -> None:
    """The angle found by search on the rod's length, either side of top dead centre."""
    radius, rod, offset = engine
    top = (rod + radius) ** 2 - offset**2
    bottom = (rod - radius) ** 2 - offset**2
    if rod <= radius + abs(offset) + 1:
        return
    travel = share * (top**0.5 - bottom**0.5)
    centre = float(crank.top_dead_centre_offset_deg(radius, rod, offset))
    lowest = 180.0 + degrees(atan2(offset, bottom**0.5))

    def gap(angle: float) -> float:
        return top**0.5 - piston_height_mm(radius, rod, offset, angle) - travel

    down = brentq(gap, centre, lowest, xtol=1e-11)
    up = brentq(gap, lowest - 360.0, centre, xtol=1e-11)
    assert position.angle_going_down_deg(radius, rod, offset, travel) == pytest.approx(
        down, abs=1e-7
    )
    assert position.angle_coming_up_deg(radius, rod, offset, travel) == pytest.approx(up, abs=1e-7)


@given(cranks(), number(0.001, 0.999))
def test_the_rod_keeps_its_length_and_the_way_back(
    engine: tuple[float, float, float], share: float
) -> None:
    radius, rod, offset = engine
    if rod <= radius + abs(offset) + 1:
        return
    top = ((rod + radius) ** 2 - offset**2) ** 0.5
    travel = share * (top - ((rod - radius) ** 2 - offset**2) ** 0.5)
    for angle in (
        float(position.angle_going_down_deg(radius, rod, offset, travel)),
        float(position.angle_coming_up_deg(radius, rod, offset, travel)),
    ):
        across = radius * sin(radians(angle)) - offset
        along = top - travel - radius * cos(radians(angle))
        assert hypot(across, along) == pytest.approx(rod, rel=1e-12)
        again = crank.travel_with_offset_mm(radius, rod, offset, angle)
        assert again == pytest.approx(travel, rel=1e-9, abs=1e-11)


@pytest.mark.parametrize("travel", [-0.001, 60.001])
def test_out_of_reach(travel: float) -> None:
    with pytest.raises(OutOfBounds, match="travel_mm: the piston does not travel that far"):
        position.angle_coming_up_deg(30.0, 110.0, 0.0, travel)


def test_rounding_is_allowed_for_by_the_length_of_the_rod() -> None:
    # Travels are worked out from lengths like the rod's, so it is the rod that sets their rounding.
    half, double = (share * crank.ROUNDING * 110.0 for share in (0.5, 2.0))
    assert position.angle_going_down_deg(30.0, 110.0, 0.0, -half) == 0.0
    with pytest.raises(OutOfBounds, match="travel_mm"):
        position.angle_going_down_deg(30.0, 110.0, 0.0, -double)


def test_dead_centres() -> None:
    assert position.angle_going_down_deg(30.0, 110.0, 0.0, 0.0) == 0.0
    assert position.angle_going_down_deg(30.0, 110.0, 0.0, 60.0) == pytest.approx(180.0, rel=1e-14)
