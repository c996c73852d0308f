"""Camshaft: lobe lift, chain drive, timing, and the room between valve and piston."""

from math import pi

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import cosine_deg, insist, insist_positive, sine_deg
from ringland_service.core.numbers import Number


def lobe_lift_mm(height_mm: Number, base_mm: Number) -> Number:
    """Lift of a cam lobe.

    Parameters
    ----------
    height_mm : float or array
        Height of the lobe, nose to heel [mm].
    base_mm : float or array
        Diameter of the base circle [mm].

    Returns
    -------
    float or array
        Lift at the cam [mm].

    References
    ----------
    The heel is the base circle: nose radius less base radius.
    """
    return height_mm - base_mm


def sprocket_pitch_dia_mm(pitch_mm: Number, teeth: Number) -> Number:
    """Pitch diameter of a chain sprocket.

    Parameters
    ----------
    pitch_mm : float or array
        Pitch of the chain [mm].
    teeth : float or array
        Teeth of the sprocket [1].

    Returns
    -------
    float or array
        Diameter of the circle through the pins of the chain wrapped around it [mm].

    Raises
    ------
    OutOfBounds
        When there are fewer than three teeth.

    References
    ----------
    Regular polygon of side p and z corners: ``d = p / sin(180° / z)``; ISO 606.
    """
    insist(teeth >= 3, OutOfBounds, "teeth", "no sprocket has so few", "three teeth at least")
    return pitch_mm / sine_deg(180.0 / teeth)


def cam_retard_cam_deg(lowered_mm: Number, pitch_dia_mm: Number) -> Number:
    """Angle by which a camshaft lags once it sits nearer to the crankshaft.

    The slack of the tight run is taken up at the slack run; the tight run pulls the sprocket that
    much later. The run is taken as parallel to the line of centres: where it leans by an angle a,
    the shift is less by ``cos(a)``, under 1 % in usual drives.

    Parameters
    ----------
    lowered_mm : float or array
        How much nearer the camshaft sits; negative: farther [mm].
    pitch_dia_mm : float or array
        Pitch diameter of the cam sprocket [mm].

    Returns
    -------
    float or array
        Lag in cam degrees; negative: the camshaft runs early [deg].

    Raises
    ------
    OutOfBounds
        When the diameter is not above zero.

    References
    ----------
    Plane geometry: arc over radius. Common practice.
    """
    insist_positive("pitch_dia_mm", pitch_dia_mm)
    return lowered_mm / (pitch_dia_mm / 2) * (180.0 / pi)


def duration_deg(before_deg: Number, after_deg: Number) -> Number:
    """Crank angle for which a valve is open, at the lift of its events.

    Parameters
    ----------
    before_deg : float or array
        Opening before the first dead centre; negative: after it [deg].
    after_deg : float or array
        Closing after the second dead centre; negative: before it [deg].

    Returns
    -------
    float or array
        Duration, crank [deg].

    References
    ----------
    Half a turn lies between the dead centres.
    """
    return before_deg + 180.0 + after_deg


def lobe_centre_deg(duration_deg: Number, over_tdc_deg: Number) -> Number:
    """Crank angle from top dead centre at overlap to the middle of a valve's opening.

    Parameters
    ----------
    duration_deg : float or array
        Duration at the lift of the events, crank [deg].
    over_tdc_deg : float or array
        The event beyond top dead centre: intake opening before it, exhaust closing after it [deg].

    Returns
    -------
    float or array
        Intake after, exhaust before top dead centre, crank [deg].

    References
    ----------
    Middle of the events; for lobes that are alike on both sides.
    """
    return duration_deg / 2 - over_tdc_deg


def lobe_separation_cam_deg(intake_centre_deg: Number, exhaust_centre_deg: Number) -> Number:
    """Angle between the lobes, measured on the camshaft.

    Parameters
    ----------
    intake_centre_deg : float or array
        Intake centre after top dead centre, crank [deg].
    exhaust_centre_deg : float or array
        Exhaust centre before top dead centre, crank [deg].

    Returns
    -------
    float or array
        Separation, cam [deg].

    References
    ----------
    The camshaft turns at half the speed of the crank.
    """
    return (intake_centre_deg + exhaust_centre_deg) / 2


def height_lost_mm(lowered_mm: Number, tilt_deg: Number) -> Number:
    """Valve-to-piston clearance lost, along the valve, when the head comes down.

    Parameters
    ----------
    lowered_mm : float or array
        How much the head comes down; negative: up [mm].
    tilt_deg : float or array
        Tilt of the valve from the cylinder axis; 0 where its pocket is not square to it [deg].

    Returns
    -------
    float or array
        Clearance lost, negative where it is gained [mm].

    References
    ----------
    Plane geometry: part of the height along the valve, with the pocket's floor square to it.
    """
    return lowered_mm * cosine_deg(tilt_deg)
