"""Clean-up, order sizes, walls and hone of a cylinder. Diameters, unless a name says radial."""

from math import pi

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import (
    cosine_deg,
    direction_deg,
    insist,
    insist_positive,
    sine_deg,
)
from ringland_service.core.numbers import Number

SECONDS_PER_MINUTE = 60.0
MM_PER_M = 1000.0
# A crank-driven hone moves as a sine: π/2 times its mean speed at mid-stroke.
MID_STROKE_OVER_MEAN = pi / 2.0


def worn_side_clean_up_mm(reference_mm: Number, largest_mm: Number, side_share: Number) -> Number:
    """Diameter that cleans up a worn bore when boring is centred on its unworn part.

    Parameters
    ----------
    reference_mm : float or array
        Bore where it has not worn [mm].
    largest_mm : float or array
        Largest bore [mm].
    side_share : float or array
        Share of the wear on the side that wore most: 0.5 even, 1 all on one side [1].

    Returns
    -------
    float or array
        Diameter [mm].

    References
    ----------
    Plane geometry: the worn side stands off by its share of the difference of diameters, and the
    bore must reach it from the unworn centre.
    """
    return reference_mm + 2.0 * side_share * (largest_mm - reference_mm)


def score_clean_up_mm(
    reference_mm: Number, local_mm: Number, depth_radial_mm: Number, side_share: Number
) -> Number:
    """Diameter that cleans up a score when boring is centred on the unworn part.

    Parameters
    ----------
    reference_mm : float or array
        Bore where it has not worn [mm].
    local_mm : float or array
        Bore at the depth of the score, beside it [mm].
    depth_radial_mm : float or array
        Depth of the score below the wall beside it, radial [mm].
    side_share : float or array
        Share of the local wear on the side of the score [1].

    Returns
    -------
    float or array
        Diameter [mm].

    References
    ----------
    Plane geometry, as for the worn side, with the score's depth beyond it.
    """
    return reference_mm + 2.0 * (side_share * (local_mm - reference_mm) + depth_radial_mm)


def finish_bore_mm(piston_mm: Number, clearance_mm: Number) -> Number:
    """Bore that gives a piston its clearance.

    Parameters
    ----------
    piston_mm : float or array
        Piston as measured [mm].
    clearance_mm : float or array
        Clearance, diametral [mm].

    Returns
    -------
    float or array
        Diameter [mm].

    References
    ----------
    Difference of two diameters.
    """
    return piston_mm + clearance_mm


def bore_to_mm(finish_mm: Number, hone_stock_mm: Number) -> Number:
    """Diameter to bore to before the hone.

    Parameters
    ----------
    finish_mm : float or array
        Finish bore [mm].
    hone_stock_mm : float or array
        Stock left for the hone, on the diameter [mm].

    Returns
    -------
    float or array
        Diameter [mm].

    References
    ----------
    Difference of two diameters.
    """
    return finish_mm - hone_stock_mm


def wall_mean_mm(outside_mm: Number, bore_mm: Number) -> Number:
    """Wall of a liner, were its bore in the middle.

    Parameters
    ----------
    outside_mm, bore_mm : float or array
        Outside diameter and bore [mm].

    Returns
    -------
    float or array
        Thickness, radial [mm].

    References
    ----------
    Plane geometry.
    """
    return (outside_mm - bore_mm) / 2.0


def wall_thinnest_mm(outside_mm: Number, bore_mm: Number, core_shift_mm: Number) -> Number:
    """Thinnest wall of a liner whose bore is out of the middle.

    Parameters
    ----------
    outside_mm, bore_mm : float or array
        Outside diameter and bore [mm].
    core_shift_mm : float or array
        Distance between the two centres [mm].

    Returns
    -------
    float or array
        Thickness, radial [mm].

    References
    ----------
    Plane geometry.
    """
    return wall_mean_mm(outside_mm, bore_mm) - core_shift_mm


def largest_bore_for_wall_mm(outside_mm: Number, floor_mm: Number, core_shift_mm: Number) -> Number:
    """Largest bore that leaves a wall.

    Parameters
    ----------
    outside_mm : float or array
        Outside diameter [mm].
    floor_mm : float or array
        Wall to be left at the thinnest place, radial [mm].
    core_shift_mm : float or array
        Distance between the two centres [mm].

    Returns
    -------
    float or array
        Diameter [mm].

    References
    ----------
    Plane geometry.
    """
    return outside_mm - 2.0 * (floor_mm + core_shift_mm)


def zone_over_doubt(zone_mm: Number, expanded_mm: Number) -> Number:
    """Tolerance zone over the whole width of the doubt.

    Parameters
    ----------
    zone_mm : float or array
        Upper less lower limit [mm].
    expanded_mm : float or array
        Expanded uncertainty U of a size, k = 2 [mm].

    Returns
    -------
    float or array
        Zone over 2·U [1].

    Raises
    ------
    OutOfBounds
        When the uncertainty is not above zero.

    References
    ----------
    JCGM 106:2012, measurement capability index.
    """
    insist_positive("expanded_mm", expanded_mm)
    return zone_mm / (2.0 * expanded_mm)


def circumferential_m_s(bore_mm: Number, spindle_rpm: Number) -> Number:
    """Speed of a hone's stones around the bore.

    Parameters
    ----------
    bore_mm : float or array
        Bore [mm].
    spindle_rpm : float or array
        Turns a minute [1/min].

    Returns
    -------
    float or array
        Speed [m/s].

    References
    ----------
    Kinematics: π·D·N.
    """
    return pi * bore_mm * spindle_rpm / (MM_PER_M * SECONDS_PER_MINUTE)


def axial_m_s(travel_mm: Number, cycles_rpm: Number) -> Number:
    """Mean speed of a hone along the bore.

    Parameters
    ----------
    travel_mm : float or array
        Travel end to end [mm].
    cycles_rpm : float or array
        Full cycles, down and up, a minute [1/min].

    Returns
    -------
    float or array
        Speed [m/s].

    References
    ----------
    Kinematics: twice the travel in each cycle.
    """
    return 2.0 * travel_mm * cycles_rpm / (MM_PER_M * SECONDS_PER_MINUTE)


def included_angle_deg(axial_m_s: Number, circumferential_m_s: Number) -> Number:
    """Angle between the two families of lines that a hone leaves, opening around the bore.

    Parameters
    ----------
    axial_m_s, circumferential_m_s : float or array
        Speed of the stones along and around the bore [m/s].

    Returns
    -------
    float or array
        Included angle; each line lies at half of it from horizontal [deg].

    References
    ----------
    Kinematics: two velocities at right angles.
    """
    return 2.0 * direction_deg(axial_m_s, circumferential_m_s)


def cycles_for_angle_rpm(
    circumferential_m_s: Number, travel_mm: Number, included_deg: Number
) -> Number:
    """Full cycles a minute that give a crosshatch angle at constant stroke speed.

    Parameters
    ----------
    circumferential_m_s : float or array
        Speed of the stones around the bore [m/s].
    travel_mm : float or array
        Travel end to end, above zero [mm].
    included_deg : float or array
        Wanted included angle, under 180° [deg].

    Returns
    -------
    float or array
        Cycles a minute [1/min].

    Raises
    ------
    OutOfBounds
        When the travel is not above zero, or the angle not between 0 and 180°.

    References
    ----------
    Kinematics: the included angle solved for the cycles.
    """
    insist_positive("travel_mm", travel_mm)
    insist(
        (included_deg > 0) & (included_deg < 180),
        OutOfBounds,
        "included_deg",
        "is no angle between two families of lines",
        "give an angle between 0 and 180°",
    )
    half = included_deg / 2.0
    axial = circumferential_m_s * sine_deg(half) / cosine_deg(half)
    return axial * MM_PER_M * SECONDS_PER_MINUTE / (2.0 * travel_mm)
