from math import atan, cos, hypot, radians, sin, tan

import numpy as np
import pytest
from formula_checks import number
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import plays


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_plays() -> None:
    # By hand: 1.235 - 1.175; (68.016 - 61.7) / 2 - 2.7; 16.009 - 15.994; 15.994 - 15.982;
    # 0.031 / 2; 1.35 * 17 / 220.
    assert plays.side_clearance_mm(1.235, 1.175) == near(0.06)
    assert plays.back_clearance_mm(68.016, 61.7, 2.7) == near(0.458)
    assert plays.pin_clearance_mm(16.009, 15.994) == near(0.015)
    assert plays.wear_step_mm(15.994, 15.982) == near(0.012)
    assert plays.bend_or_offset_mm(0.031) == near(0.0155)
    assert plays.radial_play_from_rock_mm(1.35, 17.0, 110.0) == near(0.104318)


def test_pin_in_standard_fits() -> None:
    # Source: ISO 286 (from memory): 16 H6/g5, hole 16.000 to 16.011, shaft 15.986 to 15.994.
    assert plays.pin_clearance_mm(16.0, 15.994) == near(0.006)
    assert plays.pin_clearance_mm(16.011, 15.986) == near(0.025)


@given(number(20, 160), number(1, 8), number(0, 3))
def test_groove_root_rebuilt(bore: float, thickness: float, room: float) -> None:
    root = bore - 2 * (thickness + room)
    assert plays.back_clearance_mm(bore, root, thickness) == pytest.approx(room, abs=1e-12)


@given(number(0.5, 6), number(-0.02, 0.3))
def test_groove_is_ring_and_clearance(ring: float, side: float) -> None:
    assert plays.side_clearance_mm(ring + side, ring) == pytest.approx(side, abs=1e-14)
    assert plays.wear_step_mm(ring + side, ring) == pytest.approx(side, abs=1e-14)
    assert plays.pin_clearance_mm(ring, ring + side) == pytest.approx(-side, abs=1e-14)


@given(number(0, 0.5), number(8, 20), number(0, 360))
def test_an_eccentric_journal_swings_the_indicator(
    offset: float, radius: float, start: float
) -> None:
    # Independent: a flat-tipped indicator on a journal of this radius, its centre turning about
    # the axis between centres, read at each of 7200 steps.
    heights = [radius + offset * sin(radians(start + k / 20)) for k in range(7200)]
    swing = max(heights) - min(heights)
    assert plays.bend_or_offset_mm(swing) == pytest.approx(offset, abs=1e-6)


@given(number(0.01, 0.2), number(10, 30), number(80, 200))
def test_rock_of_a_big_end_that_touches_at_both_edges(
    play: float, width: float, rod: float
) -> None:
    # Independent: solve the tilt at which a straight big end just fills its play, then swing the
    # rod both ways; the rule leaves out second-order terms.
    tilt = atan(play / width)
    corner = hypot(width, play)
    assert corner * sin(tilt) == pytest.approx(play)
    rock = 2 * rod * tan(tilt) * cos(tilt)
    assert plays.radial_play_from_rock_mm(rock, width, rod) == pytest.approx(play, rel=5e-4)


def test_no_rod() -> None:
    with pytest.raises(OutOfBounds, match="rod_mm: must be above zero"):
        plays.radial_play_from_rock_mm(1.0, 17.0, np.array([110.0, 0.0]))
