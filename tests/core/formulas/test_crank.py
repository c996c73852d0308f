from math import asin, degrees

import numpy as np
import pytest
from formula_checks import number, piston_height_mm, rows
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize_scalar

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas import crank, geometry


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


@st.composite
def cranks(draw: st.DrawFn) -> tuple[float, float]:
    """Stroke and rod of an engine that turns over."""
    stroke = draw(number(15, 150))
    return stroke, stroke * draw(number(1.0, 3.0))


@st.composite
def offset_cranks(draw: st.DrawFn) -> tuple[float, float, float]:
    stroke, rod = draw(cranks())
    return stroke, rod, draw(number(-5, 5))


def test_worked_travel() -> None:
    # By hand at 90°: 33 + 112 - sqrt(112² - 33²) = 145 - sqrt(11 455) = 145 - 107.0280.
    assert crank.travel_mm(66.0, 112.0, 90.0) == near(37.9720)
    assert crank.travel_mm(66.0, 112.0, 10.0) == near(0.648036)
    assert crank.angle_deg(66.0, 112.0, 33.0) == near(81.5283)


def test_worked_offset() -> None:
    # By hand: r² = 66² (112² - 1 - 33²) / (4 * 112² - 66²) = 4356 * 11 454 / 45 820 = 1088.905.
    radius = crank.crank_radius_with_offset_mm(66.0, 112.0, 1.0)
    assert radius == near(32.9986)
    assert crank.top_dead_centre_offset_deg(radius, 112.0, 1.0) == near(0.39515)


def test_worked_effective_stroke() -> None:
    assert crank.effective_stroke_mm(66.0, 112.0, 42.0) == near(59.7221)
    at_lift = crank.effective_stroke_mm(66.0, 112.0, 62.0)
    volume = geometry.swept_volume_cc(68.0, at_lift)
    assert geometry.compression_ratio(volume, 29.1863) == near(7.51385)
    assert geometry.swept_volume_cc(68.0, 59.7221) == near(216.892)


def test_travel_against_the_table() -> None:
    # Source: crank_slider.csv, sympy 30-digit evaluation, and scipy brentq on the rod length.
    for row in rows("crank_slider.csv"):
        found = crank.travel_mm(60.0, 110.0, float(row["deg"]))
        assert found == pytest.approx(float(row["x_sympy_mm"]), abs=6e-10)
        assert found == pytest.approx(float(row["x_numeric_mm"]), abs=6e-10)


def test_angle_against_the_table() -> None:
    # The same table read the other way; nine decimals of travel leave less than this in angle.
    for row in rows("crank_slider.csv")[1:-1]:
        found = crank.angle_deg(60.0, 110.0, float(row["x_sympy_mm"]))
        assert found == pytest.approx(float(row["deg"]), abs=1e-8)


def test_offset_travel_against_the_table() -> None:
    # The same source. Radius 30 mm, offset 1 mm towards +sin; zero is the piston's own top.
    for row in rows("crank_slider.csv"):
        found = crank.travel_with_offset_mm(30.0, 110.0, 1.0, float(row["deg"]))
        assert found == pytest.approx(float(row["x_offset1_mm"]), abs=6e-10)


def test_dynamic_ratio_against_the_table() -> None:
    # The same source, second table: bore 54 mm, clearance volume 15.2 cm³.
    table = rows("crank_slider.csv", table=1)
    assert len(table) == 10
    for row in table:
        stroke = crank.effective_stroke_mm(60.0, 110.0, float(row["abdc_deg"]))
        assert stroke == pytest.approx(float(row["x_mm"]), abs=6e-7)
        ratio = geometry.compression_ratio(geometry.swept_volume_cc(54.0, stroke), 15.2)
        assert ratio == pytest.approx(float(row["dynamic_ratio"]), abs=6e-7)


@given(cranks(), number(-360, 720))
def test_travel_against_a_numeric_root(engine: tuple[float, float], angle: float) -> None:
    stroke, rod = engine
    height = piston_height_mm(stroke / 2, rod, 0.0, angle)
    expected = stroke / 2 + rod - height
    assert crank.travel_mm(stroke, rod, angle) == pytest.approx(expected, abs=1e-11)


@given(offset_cranks(), number(-360, 720))
def test_offset_travel_against_a_numeric_root(
    engine: tuple[float, float, float], angle: float
) -> None:
    stroke, rod, offset = engine
    radius = float(crank.crank_radius_with_offset_mm(stroke, rod, offset))
    highest = minimize_scalar(
        lambda deg: -piston_height_mm(radius, rod, offset, deg),
        bounds=(-90, 90),
        method="bounded",
        options={"xatol": 1e-9},
    )
    expected = -highest.fun - piston_height_mm(radius, rod, offset, angle)
    found = crank.travel_with_offset_mm(radius, rod, offset, angle)
    assert found == pytest.approx(expected, abs=1e-10)
    # The top is flat, so the search finds its angle only to the root of its precision.
    centre = crank.top_dead_centre_offset_deg(radius, rod, offset)
    assert centre == pytest.approx(highest.x, abs=2e-4)


@given(offset_cranks())
def test_radius_against_a_numeric_root(engine: tuple[float, float, float]) -> None:
    stroke, rod, offset = engine

    def missing(radius: float) -> float:
        top = np.sqrt((rod + radius) ** 2 - offset**2)
        return float(top - np.sqrt((rod - radius) ** 2 - offset**2) - stroke)

    expected = brentq(missing, 0.0, stroke / 2 + 1e-6, xtol=1e-13, rtol=1e-15)
    found = crank.crank_radius_with_offset_mm(stroke, rod, offset)
    assert found == pytest.approx(expected, abs=1e-10)


@given(offset_cranks())
def test_offset_travel_runs_from_zero_to_the_stroke(engine: tuple[float, float, float]) -> None:
    stroke, rod, offset = engine
    radius = float(crank.crank_radius_with_offset_mm(stroke, rod, offset))
    top = float(crank.top_dead_centre_offset_deg(radius, rod, offset))
    bottom = 180 + degrees(asin(offset / (rod - radius)))
    travels = crank.travel_with_offset_mm(radius, rod, offset, np.array([top, bottom]))
    assert travels == pytest.approx([0.0, stroke], abs=1e-11)
    assert radius <= stroke / 2 * (1 + 1e-15)


@given(offset_cranks(), number(-360, 360))
def test_offset_the_other_way_mirrors(engine: tuple[float, float, float], angle: float) -> None:
    stroke, rod, offset = engine
    radius = crank.crank_radius_with_offset_mm(stroke, rod, offset)
    one = crank.travel_with_offset_mm(radius, rod, offset, angle)
    other = crank.travel_with_offset_mm(radius, rod, -offset, -angle)
    assert one == pytest.approx(other, abs=1e-12)


@given(cranks(), number(-360, 360))
def test_no_offset_is_the_plain_crank(engine: tuple[float, float], angle: float) -> None:
    stroke, rod = engine
    radius = crank.crank_radius_with_offset_mm(stroke, rod, 0.0)
    assert radius == pytest.approx(stroke / 2, rel=1e-14)
    offset_free = crank.travel_with_offset_mm(radius, rod, 0.0, angle)
    assert offset_free == pytest.approx(crank.travel_mm(stroke, rod, angle), abs=1e-11)


@given(cranks(), number(0, 180))
def test_angle_undoes_travel(engine: tuple[float, float], angle: float) -> None:
    stroke, rod = engine
    back = crank.angle_deg(stroke, rod, crank.travel_mm(stroke, rod, angle))
    # At bottom dead centre the travel stands still: there its last digit is 1e-6 degrees.
    assert back == pytest.approx(angle, abs=1e-9 if angle < 179 else 1e-5)


@given(cranks(), number(1e-7, 1))
def test_angle_keeps_its_digits_near_top(engine: tuple[float, float], angle: float) -> None:
    stroke, rod = engine
    back = crank.angle_deg(stroke, rod, crank.travel_mm(stroke, rod, angle))
    assert back == pytest.approx(angle, rel=1e-13)


@given(cranks(), number(0, 179), number(0.01, 1))
def test_travel_grows_to_bottom(engine: tuple[float, float], angle: float, more: float) -> None:
    stroke, rod = engine
    further = crank.travel_mm(stroke, rod, angle + more)
    assert crank.travel_mm(stroke, rod, angle) < further <= stroke * (1 + 1e-15)


@given(cranks(), number(0, 109), number(0.01, 1))
def test_later_closing_leaves_less_stroke(
    engine: tuple[float, float], closing: float, more: float
) -> None:
    stroke, rod = engine
    later = crank.effective_stroke_mm(stroke, rod, closing + more)
    assert 0 < later < crank.effective_stroke_mm(stroke, rod, closing) <= stroke


@given(offset_cranks())
def test_top_follows_the_offset(engine: tuple[float, float, float]) -> None:
    stroke, rod, offset = engine
    # Of an offset below the normal floats the angle may underflow to zero.
    assume(offset == 0 or abs(offset) >= np.finfo(float).tiny)
    angle = crank.top_dead_centre_offset_deg(stroke / 2, rod, offset)
    assert np.sign(angle) == np.sign(offset)


@pytest.mark.parametrize("rod", [33.0, 10.0, float("nan"), np.array([112.0, 20.0])])
def test_rod_too_short(rod: float) -> None:
    for ask in (crank.travel_mm, crank.angle_deg, crank.effective_stroke_mm):
        with pytest.raises(Contradiction, match="rod_mm: the crank cannot turn over"):
            ask(66.0, rod, 30.0)
    with pytest.raises(Contradiction, match="rod_mm: the crank cannot turn over"):
        crank.travel_with_offset_mm(33.0, rod, 1.0, 10.0)
    with pytest.raises(Contradiction, match="rod_mm: the crank cannot turn over"):
        crank.top_dead_centre_offset_deg(33.0, rod, 1.0)
    with pytest.raises(Contradiction, match="rod_mm: the rod is too short"):
        crank.crank_radius_with_offset_mm(66.0, rod, 1.0)


def test_rod_that_just_passes() -> None:
    # By hand at 90°: 33 + 33.0001 - sqrt(33.0001² - 33²) = 66.0001 - 0.0812406.
    travel = crank.travel_mm(66.0, 33.0001, 90.0)
    assert travel == near(65.9188594)
    assert crank.angle_deg(66.0, 33.0001, travel) == pytest.approx(90.0, abs=1e-7)


def test_offset_uses_up_the_rod() -> None:
    # Largest stroke that turns over with rod 40 and offset 5: 2 sqrt(40 * 35) = 74.8331 mm.
    radius = crank.crank_radius_with_offset_mm(74.833, 40.0, 5.0)
    assert radius < 35.0
    with pytest.raises(Contradiction, match="the rod is too short for this stroke and offset"):
        crank.crank_radius_with_offset_mm(74.834, 40.0, 5.0)
    with pytest.raises(Contradiction, match="the rod is too short for this stroke and offset"):
        crank.crank_radius_with_offset_mm(74.834, 40.0, -5.0)
    with pytest.raises(Contradiction, match="the rod is too short for this stroke and offset"):
        crank.crank_radius_with_offset_mm(10.0, 4.0, 5.0)
    # By hand, rod 40 and offset 30: stroke 40 wants a radius of 10, and 10 + 30 is all of the rod.
    assert crank.crank_radius_with_offset_mm(39.9999, 40.0, 30.0) == near(10.0)
    with pytest.raises(Contradiction, match="the rod is too short for this stroke and offset"):
        crank.crank_radius_with_offset_mm(40.0, 40.0, 30.0)


@pytest.mark.parametrize("travel", [-0.001, 66.001, float("nan"), np.array([10.0, 70.0])])
def test_travel_beyond_the_stroke(travel: float) -> None:
    with pytest.raises(OutOfBounds, match="travel_mm: the piston does not travel that far"):
        crank.angle_deg(66.0, 112.0, travel)


def test_angle_at_the_dead_centres_and_of_no_stroke() -> None:
    assert crank.angle_deg(66.0, 112.0, 0.0) == 0.0
    assert crank.angle_deg(66.0, 112.0, 66.0) == 180.0
    # Past a dead centre by the rounding of the last digits: it stands there. By more: refused.
    assert crank.angle_deg(66.0, 112.0, -0.9e-12 * 66.0) == 0.0
    assert crank.angle_deg(66.0, 112.0, (1 + 0.9e-12) * 66.0) == 180.0
    with pytest.raises(OutOfBounds, match="travel_mm: the piston does not travel that far"):
        crank.angle_deg(66.0, 112.0, (1 + 1.5e-12) * 66.0)
    with pytest.raises(OutOfBounds, match="stroke_mm: must be above zero"):
        crank.angle_deg(0.0, 112.0, 0.0)
