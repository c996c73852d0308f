import numpy as np
import pytest
from formula_checks import number
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import fits, machining


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_clean_up() -> None:
    # By hand: 68.012 + 2·(68.094 - 68.012) = 68.176; half on each side: 68.094; three quarters:
    # 68.012 + 1.5·0.082 = 68.135.
    assert machining.worn_side_clean_up_mm(68.012, 68.094, 1.0) == near(68.176)
    assert machining.worn_side_clean_up_mm(68.012, 68.094, 0.5) == near(68.094)
    assert machining.worn_side_clean_up_mm(68.012, 68.094, 0.75) == near(68.135)
    # By hand: 68.012 + 2·(0.064 + 0.06) = 68.260; opposite: 68.012 + 2·0.06 = 68.132.
    assert machining.score_clean_up_mm(68.012, 68.076, 0.06, 1.0) == near(68.260)
    assert machining.score_clean_up_mm(68.012, 68.076, 0.06, 0.0) == near(68.132)
    assert machining.score_clean_up_mm(68.012, 68.076, 0.06, 0.5) == near(68.196)


@given(number(20, 160), number(0, 0.5), number(0, 1), number(0, 0.5))
def test_the_bore_reaches_every_point_of_the_wall(
    reference: float, wear: float, share: float, depth: float
) -> None:
    """Outside check: points of the worn wall in coordinates, farthest from the unworn centre."""
    side = reference / 2 + share * wear + depth
    opposite = -(reference / 2 + (1 - share) * wear)
    farthest = max(side, -opposite)
    found = max(
        machining.score_clean_up_mm(reference, reference + wear, depth, share),
        machining.worn_side_clean_up_mm(reference, reference + wear, 1 - share),
    )
    assert found == pytest.approx(2 * farthest, rel=1e-12)


def test_worked_order() -> None:
    # By hand: 68.461 + 0.035 = 68.496; less 0.060 = 68.436.
    assert machining.finish_bore_mm(68.461, 0.035) == near(68.496)
    assert machining.bore_to_mm(68.496, 0.06) == near(68.436)
    # By hand: 0.010 / (2·0.005) = 1; by the wider 0.015 and 0.0025: 3.
    assert machining.zone_over_uncertainty(0.010, 0.005) == near(1.0)
    assert machining.zone_over_uncertainty(0.015, 0.0025) == near(3.0)
    # Bored to "0.020 over" as 0.508 mm (ISO inch of 25.4 mm) the same piston has 0.047 mm.
    assert fits.clearance_mm(68.0 + 0.020 * 25.4, 68.461) == near(0.047)


@given(number(20, 160), number(0.005, 0.4), number(0, 0.3))
def test_order_undone(piston: float, clearance: float, stock: float) -> None:
    finish = machining.finish_bore_mm(piston, clearance)
    assert fits.clearance_mm(finish, piston) == pytest.approx(clearance, abs=1e-12)
    bored = machining.bore_to_mm(finish, stock)
    assert finish - bored == pytest.approx(stock, abs=1e-12)


def test_worked_wall() -> None:
    # By hand: (75 - 68.501) / 2 = 3.2495; less 0.2; 75 - 2·(2 + 0.2) = 70.6.
    assert machining.wall_mean_mm(75.0, 68.501) == near(3.2495)
    assert machining.wall_thinnest_mm(75.0, 68.501, 0.2) == near(3.0495)
    assert machining.largest_bore_for_wall_mm(75.0, 2.0, 0.2) == near(70.6)


@given(number(60, 200), number(20, 50), number(0, 1.5))
def test_thinnest_wall_of_two_circles(outside: float, bore: float, shift: float) -> None:
    """Outside check: gap between two circles whose centres lie apart, searched all round."""
    angles = np.linspace(0, 2 * np.pi, 721)
    x = shift + bore / 2 * np.cos(angles)
    y = bore / 2 * np.sin(angles)
    searched = float(np.min(outside / 2 - np.hypot(x, y)))
    assert machining.wall_thinnest_mm(outside, bore, shift) == pytest.approx(searched, rel=1e-9)
    floor = machining.wall_thinnest_mm(outside, bore, shift)
    assert machining.largest_bore_for_wall_mm(outside, floor, shift) == pytest.approx(bore)


def test_worked_crosshatch() -> None:
    # By hand: π·68.496·200/60000 = 0.717288 m/s; 2·92·100/60000 = 0.306667 m/s;
    # 2·atan(0.306667/0.717288) = 46.2969°.
    around = machining.circumferential_speed_m_s(68.496, 200.0)
    along = machining.axial_speed_m_s(92.0, 100.0)
    assert around * 60 == near(43.0373)
    assert along * 60 == near(18.4)
    assert machining.included_angle_deg(along, around) == near(46.2969)
    assert machining.cycles_for_angle_rpm(around, 92.0, 45.0) == near(96.8839)
    mid = machining.MID_STROKE_OVER_MEAN * along
    assert machining.included_angle_deg(mid, around) == near(67.7684)


def test_mid_stroke_of_a_sine() -> None:
    # Outside check: largest over mean speed of s = sin t, by numeric differences.
    time = np.linspace(0, 2 * np.pi, 100001)
    speed = np.abs(np.gradient(np.sin(time), time))
    mean = np.sum((speed[1:] + speed[:-1]) / 2 * np.diff(time)) / (2 * np.pi)
    assert np.max(speed) / mean == pytest.approx(machining.MID_STROKE_OVER_MEAN, rel=1e-6)


@given(number(0.1, 3), number(20, 300), number(5, 120))
def test_crosshatch_undone(around: float, travel: float, included: float) -> None:
    cycles = machining.cycles_for_angle_rpm(around, travel, included)
    found = machining.included_angle_deg(machining.axial_speed_m_s(travel, cycles), around)
    assert found == pytest.approx(included, rel=1e-9)


@given(st.sampled_from([30.0, 45.0, 60.0, 90.0]))
def test_equal_speeds_cross_at_a_right_angle(speed: float) -> None:
    assert machining.included_angle_deg(speed, speed) == pytest.approx(90.0)


def test_what_is_refused() -> None:
    with pytest.raises(OutOfBounds, match="expanded_mm: must be above zero"):
        machining.zone_over_uncertainty(0.01, 0.0)
    with pytest.raises(OutOfBounds, match="travel_mm: must be above zero"):
        machining.cycles_for_angle_rpm(0.7, 0.0, 45.0)
    # By hand: 0.7·tan(0.25°)·60000 / (2·92) = 0.7·0.00436335·326.087.
    assert machining.cycles_for_angle_rpm(0.7, 92.0, 0.5) == near(0.995982)
    for included in (0.0, np.array([45.0, 180.0])):
        with pytest.raises(OutOfBounds, match=r"^included_deg: is no angle between two families"):
            machining.cycles_for_angle_rpm(0.7, 92.0, included)
