from math import asin, cos, degrees, hypot, pi, radians, sin, sqrt

import numpy as np
import pytest
from formula_checks import number
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import camshaft


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_example() -> None:
    # By hand: 6.35 / sin(180°/34) = 6.35 / 0.0922683 = 68.821; 0.25 / 34.4105 rad = 0.416267°.
    diameter = camshaft.sprocket_pitch_diameter_mm(6.35, 34)
    assert diameter == near(68.821)
    retard = camshaft.cam_retard_cam_deg(0.25, diameter)
    assert retard == near(0.416267)
    assert 2 * retard == near(0.832533)
    assert camshaft.lobe_lift_mm(33.42, 26.05) == near(7.37)


def test_worked_events() -> None:
    # By hand: 16 + 180 + 44 = 240, 240/2 - 16 = 104; 46 + 180 + 12 = 238, 238/2 - 12 = 107.
    intake = camshaft.duration_deg(16.0, 44.0)
    exhaust = camshaft.duration_deg(46.0, 12.0)
    assert (intake, exhaust) == (240.0, 238.0)
    centres = camshaft.lobe_centre_deg(intake, 16.0), camshaft.lobe_centre_deg(exhaust, 12.0)
    assert centres == (104.0, 107.0)
    assert camshaft.lobe_separation_cam_deg(*centres) == 105.5


def test_worked_height() -> None:
    # By hand: 0.25 * cos 16° = 0.240315.
    assert camshaft.height_lost_mm(0.25, 16.0) == pytest.approx(0.240315, rel=2e-6)


@pytest.mark.parametrize(
    ("teeth", "factor"), [(12, 3.8637), (17, 5.4422), (20, 6.3925), (25, 7.9787), (30, 9.5668)]
)
def test_pitch_diameter_against_the_handbook(teeth: int, factor: float) -> None:
    # Source: Machinery's Handbook, pitch diameters of sprockets for a pitch of one (from memory).
    assert camshaft.sprocket_pitch_diameter_mm(1.0, teeth) == pytest.approx(factor, abs=6e-5)


@given(number(4, 13), st.integers(12, 60))
def test_pins_lie_a_pitch_apart(pitch: float, teeth: int) -> None:
    """Pins set evenly around the circle, and the distance of two neighbours measured."""
    radius = float(camshaft.sprocket_pitch_diameter_mm(pitch, teeth)) / 2
    turn = 2 * pi / teeth
    assert hypot(radius * (1 - cos(turn)), radius * sin(turn)) == pytest.approx(pitch, rel=1e-12)


def cam_tooth_rad(centres: float, crank_radius: float, cam_radius: float) -> float:
    """Angle of a cam tooth held by a tight run of fixed length from a crank tooth at rest.

    Crank at the origin, cam above it, tight run on the right: from the crank tooth (at 0) around
    the crank to the tangent at the angle a, up the run, on around the cam to its tooth. The crank
    pulls the run down, so the cam turns clockwise; the angle counts the other way.
    """
    lean = asin((crank_radius - cam_radius) / centres)
    run = sqrt(centres**2 - (crank_radius - cam_radius) ** 2)
    chain = 1000.0
    return lean + (chain - run - crank_radius * lean) / cam_radius


@given(number(-0.6, 0.6), number(90, 250), st.integers(13, 24), number(6.0, 9.6))
def test_lag_against_a_chain_of_fixed_length(
    lowered: float, centres: float, teeth: int, pitch: float
) -> None:
    """Outside: the whole geometry of the tight run, by hand; cam sprocket of twice the teeth."""
    crank = float(camshaft.sprocket_pitch_diameter_mm(pitch, teeth)) / 2
    cam = float(camshaft.sprocket_pitch_diameter_mm(pitch, 2 * teeth)) / 2
    if centres < 3 * cam:
        return
    lag = cam_tooth_rad(centres - lowered, crank, cam) - cam_tooth_rad(centres, crank, cam)
    found = float(camshaft.cam_retard_cam_deg(lowered, 2 * cam))
    # The run leans against the line of centres: the shift is less by the cosine of that.
    leaning = sqrt(1 - ((cam - crank) / centres) ** 2)
    assert degrees(lag) == pytest.approx(found * leaning, rel=1e-3, abs=1e-9)
    assert degrees(lag) == pytest.approx(found, rel=0.02, abs=1e-9)


@given(number(-0.6, 0.6), number(60, 250), number(15, 29))
def test_lag_of_a_straight_run_is_exact(lowered: float, centres: float, radius: float) -> None:
    lag = cam_tooth_rad(centres - lowered, radius, radius) - cam_tooth_rad(centres, radius, radius)
    found = camshaft.cam_retard_cam_deg(lowered, 2 * radius)
    assert found == pytest.approx(degrees(lag), rel=1e-9, abs=1e-9)


@given(number(-60, 120), number(-60, 120))
def test_centre_lies_midway(opens: float, closes: float) -> None:
    """The events on one line of crank degrees from top dead centre: their mean is the centre."""
    middle = float(np.mean([-opens, 180.0 + closes]))
    open_deg = camshaft.duration_deg(opens, closes)
    assert camshaft.lobe_centre_deg(open_deg, opens) == pytest.approx(middle, abs=1e-11)


@given(number(-3, 3), number(0, 45))
def test_height_against_the_projection(lowered: float, tilt: float) -> None:
    """The head's way as a vector, on the valve's axis."""
    axis = np.array([sin(radians(tilt)), cos(radians(tilt))])
    along = float(np.array([0.0, lowered]) @ axis)
    assert camshaft.height_lost_mm(lowered, tilt) == pytest.approx(along, rel=1e-12, abs=1e-300)


def test_the_fewest_teeth_by_hand() -> None:
    # By hand: three pins are the corners of a triangle, in a circle of 1 / sin 60° = 2 / sqrt(3).
    assert camshaft.sprocket_pitch_diameter_mm(1.0, 3) == pytest.approx(2 / sqrt(3), rel=1e-14)


def test_refusals() -> None:
    with pytest.raises(OutOfBounds) as refused:
        camshaft.sprocket_pitch_diameter_mm(6.35, np.array([34, 2]))
    assert str(refused.value) == "teeth: no sprocket has so few (three teeth at least)"
    with pytest.raises(OutOfBounds) as refused:
        camshaft.cam_retard_cam_deg(0.25, 0.0)
    assert str(refused.value) == "pitch_diameter_mm: must be above zero (give a number above zero)"
