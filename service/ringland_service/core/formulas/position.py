"""Crank angle at a piston travel, with the bore axis beside the crank axis.

Angles count from the crank standing straight up; a positive offset moves the bore axis to the
side to which the crank turns first, see `crank`.
"""

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas.crank import ROUNDING
from ringland_service.core.formulas.elementary import (
    absolute,
    direction_deg,
    insist,
    maximum,
    sqrt,
)
from ringland_service.core.numbers import Number


def angle_going_down_deg(
    radius_mm: Number, rod_mm: Number, offset_mm: Number, travel_mm: Number
) -> Number:
    """Crank angle at which the piston reaches a travel on its way down.

    Parameters
    ----------
    radius_mm : float or array
        Crank radius, see `crank.crank_radius_with_offset_mm` [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    offset_mm : float or array
        Offset, positive towards +sin of the angle [mm].
    travel_mm : float or array
        Travel from the piston's own top dead centre [mm].

    Returns
    -------
    float or array
        Angle from the crank standing straight up [deg].

    Raises
    ------
    OutOfBounds
        When the travel is below zero or beyond the stroke.
    Contradiction
        When the rod is not longer than the crank radius and the offset together.

    References
    ----------
    Triangle of crank, rod and the line from the crank axis to the pin, by the half-angle form of
    the law of cosines; the line itself leans by ``atan(e / h)``.
    """
    return _leaning_deg(radius_mm, rod_mm, offset_mm, travel_mm) + _opening_deg(
        radius_mm, rod_mm, offset_mm, travel_mm
    )


def angle_coming_up_deg(
    radius_mm: Number, rod_mm: Number, offset_mm: Number, travel_mm: Number
) -> Number:
    """Crank angle at which the piston reaches a travel on its way up.

    Parameters
    ----------
    radius_mm : float or array
        Crank radius, see `crank.crank_radius_with_offset_mm` [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    offset_mm : float or array
        Offset, positive towards +sin of the angle [mm].
    travel_mm : float or array
        Travel from the piston's own top dead centre [mm].

    Returns
    -------
    float or array
        Angle from the crank standing straight up, negative before it [deg].

    Raises
    ------
    OutOfBounds
        When the travel is below zero or beyond the stroke.
    Contradiction
        When the rod is not longer than the crank radius and the offset together.

    References
    ----------
    The other of the two triangles of `angle_going_down_deg`.
    """
    return _leaning_deg(radius_mm, rod_mm, offset_mm, travel_mm) - _opening_deg(
        radius_mm, rod_mm, offset_mm, travel_mm
    )


def _top_mm(radius_mm: Number, rod_mm: Number, offset_mm: Number) -> Number:
    insist(
        rod_mm > absolute(radius_mm) + absolute(offset_mm),
        Contradiction,
        "rod_mm",
        "the crank cannot turn over with a rod that short",
        "a rod longer than the crank radius and the offset together",
    )
    longest_mm = rod_mm + radius_mm
    return sqrt(longest_mm * longest_mm - offset_mm * offset_mm)


def _leaning_deg(radius_mm: Number, rod_mm: Number, offset_mm: Number, travel_mm: Number) -> Number:
    """Return how far the line from crank axis to pin leans from upright."""
    height_mm = _top_mm(radius_mm, rod_mm, offset_mm) - travel_mm
    return direction_deg(offset_mm, height_mm)


def _opening_deg(radius_mm: Number, rod_mm: Number, offset_mm: Number, travel_mm: Number) -> Number:
    """Return the angle between the crank and the line from crank axis to pin."""
    top_mm = _top_mm(radius_mm, rod_mm, offset_mm)
    shortest_mm = rod_mm - radius_mm
    bottom_mm = sqrt(shortest_mm * shortest_mm - offset_mm * offset_mm)
    stroke_mm = top_mm - bottom_mm
    slack_mm = ROUNDING * rod_mm
    insist(
        (travel_mm >= -slack_mm) & (travel_mm <= stroke_mm + slack_mm),
        OutOfBounds,
        "travel_mm",
        "the piston does not travel that far",
        "from zero to the stroke",
    )
    below_top_mm = maximum(travel_mm, 0.0)
    above_bottom_mm = maximum(stroke_mm - travel_mm, 0.0)
    height_mm = top_mm - below_top_mm
    line_mm = sqrt(height_mm * height_mm + offset_mm * offset_mm)
    # Products instead of differences of squares keep the digits near both dead centres.
    half_sine = sqrt(below_top_mm * (top_mm + height_mm)) * (rod_mm + line_mm - radius_mm)
    half_cosine = sqrt(above_bottom_mm * (height_mm + bottom_mm)) * (rod_mm + line_mm + radius_mm)
    return 2 * direction_deg(half_sine, half_cosine)
