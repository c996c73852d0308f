"""Slider-crank: where the piston stands at a crank angle, and the way back.

Angles count from the crank standing straight up. Without an offset that is top dead centre.
A positive offset moves the bore axis away from the crank axis, towards the side to which the
crank turns first (towards +sin of the angle).
"""

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas.elementary import (
    absolute,
    arcsine_deg,
    cosine_deg,
    direction_deg,
    insist,
    insist_positive,
    maximum,
    sine_deg,
    sqrt,
)
from ringland_service.core.numbers import Number

# A travel worked out elsewhere may pass the dead centre by the rounding of its last digits.
ROUNDING = 1e-12


def travel_mm(stroke_mm: Number, rod_mm: Number, angle_deg: Number) -> Number:
    """Piston travel from top dead centre, bore axis through the crank axis.

    Parameters
    ----------
    stroke_mm : float or array
        Stroke [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    angle_deg : float or array
        Crank angle from top dead centre, either way [deg].

    Returns
    -------
    float or array
        Travel [mm].

    Raises
    ------
    Contradiction
        When the rod is not longer than half the stroke.

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals:
    ``x = r + l - r cos(t) - sqrt(l² - r² sin²(t))``.
    """
    radius_mm = stroke_mm / 2
    _insist_rod_passes(radius_mm, rod_mm, 0.0)
    aside_mm = radius_mm * sine_deg(angle_deg)
    half_sine = sine_deg(angle_deg / 2)
    # 1 - cos(t) = 2 sin²(t/2), and the rod's part by its conjugate: the same sum without
    # the cancellation that eats its digits near top dead centre.
    rod_part_mm = aside_mm * aside_mm / (rod_mm + sqrt(rod_mm * rod_mm - aside_mm * aside_mm))
    return stroke_mm * half_sine * half_sine + rod_part_mm


def angle_deg(stroke_mm: Number, rod_mm: Number, travel_mm: Number) -> Number:
    """Crank angle at which the piston has travelled so far, bore axis through the crank axis.

    Parameters
    ----------
    stroke_mm : float or array
        Stroke [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    travel_mm : float or array
        Travel from top dead centre [mm].

    Returns
    -------
    float or array
        Crank angle from top dead centre, 0 to 180 [deg].

    Raises
    ------
    OutOfBounds
        When the stroke is not above zero, or the travel is below zero or beyond the stroke.
    Contradiction
        When the rod is not longer than half the stroke.

    References
    ----------
    `travel_mm` solved for the angle. With ``q = l + r - x`` the law of cosines gives
    ``cos(t) = (q² + r² - l²) / (2 r q)``; sine and cosine of half the angle follow as
    ``sqrt(x (2 l - x))`` and ``sqrt((S - x) (2 l + S - x))`` over one common divisor.
    """
    insist_positive("stroke_mm", stroke_mm)
    _insist_rod_passes(stroke_mm / 2, rod_mm, 0.0)
    slack_mm = ROUNDING * stroke_mm
    insist(
        (travel_mm >= -slack_mm) & (travel_mm <= stroke_mm + slack_mm),
        OutOfBounds,
        "travel_mm",
        "the piston does not travel that far",
        "from zero to the stroke",
    )
    below_top_mm = maximum(travel_mm, 0.0)
    above_bottom_mm = maximum(stroke_mm - travel_mm, 0.0)
    half_sine = sqrt(below_top_mm * (2 * rod_mm - below_top_mm))
    half_cosine = sqrt(above_bottom_mm * (2 * rod_mm + above_bottom_mm))
    return 2 * direction_deg(half_sine, half_cosine)


def crank_radius_with_offset_mm(stroke_mm: Number, rod_mm: Number, offset_mm: Number) -> Number:
    """Crank radius that gives a stroke when the bore axis misses the crank axis.

    Parameters
    ----------
    stroke_mm : float or array
        Stroke, dead centre to dead centre [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    offset_mm : float or array
        Offset of pin or bore axis, either sign [mm].

    Returns
    -------
    float or array
        Crank radius, a little under half the stroke [mm].

    Raises
    ------
    Contradiction
        When no crank of that stroke can turn over with that rod and offset.

    References
    ----------
    The dead centres lie ``S = sqrt((l + r)² - e²) - sqrt((l - r)² - e²)`` apart. Squared
    twice this is linear in r²: ``r² (4 l² - S²) = S² (l² - e² - S²/4)``. The crank turns over
    while ``r + |e| < l``, which is ``S² < 4 l (l - |e|)``; S grows with r all the way, so r is
    the only one.
    """
    square_mm2 = stroke_mm * stroke_mm
    aside_mm = absolute(offset_mm)
    insist(
        (aside_mm < rod_mm) & (square_mm2 < 4 * rod_mm * (rod_mm - aside_mm)),
        Contradiction,
        "rod_mm",
        "the rod is too short for this stroke and offset",
        "a rod longer than the crank radius and the offset together",
    )
    reach_mm2 = rod_mm * rod_mm - offset_mm * offset_mm - square_mm2 / 4
    return stroke_mm * sqrt(reach_mm2 / (4 * rod_mm * rod_mm - square_mm2))


def travel_with_offset_mm(
    radius_mm: Number, rod_mm: Number, offset_mm: Number, angle_deg: Number
) -> Number:
    """Piston travel from its own top dead centre, bore axis beside the crank axis.

    Parameters
    ----------
    radius_mm : float or array
        Crank radius, see `crank_radius_with_offset_mm` [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    offset_mm : float or array
        Offset, positive towards +sin of the angle [mm].
    angle_deg : float or array
        Crank angle from the crank standing straight up [deg].

    Returns
    -------
    float or array
        Travel below the highest point that the piston reaches [mm].

    Raises
    ------
    Contradiction
        When the rod is not longer than the crank radius and the offset together.

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals, with the offset added:
    ``x = sqrt((l + r)² - e²) - r cos(t) - sqrt(l² - (r sin(t) - e)²)``.
    """
    _insist_rod_passes(radius_mm, rod_mm, offset_mm)
    longest_mm = rod_mm + radius_mm
    aside_mm = radius_mm * sine_deg(angle_deg) - offset_mm
    top_mm = sqrt(longest_mm * longest_mm - offset_mm * offset_mm)
    height_mm = radius_mm * cosine_deg(angle_deg) + sqrt(rod_mm * rod_mm - aside_mm * aside_mm)
    # No height passes the top; what rounding leaves there below zero is no travel.
    return maximum(top_mm - height_mm, 0.0)


def top_dead_centre_offset_deg(radius_mm: Number, rod_mm: Number, offset_mm: Number) -> Number:
    """Crank angle of top dead centre when the bore axis misses the crank axis.

    Parameters
    ----------
    radius_mm : float or array
        Crank radius [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    offset_mm : float or array
        Offset, positive towards +sin of the angle [mm].

    Returns
    -------
    float or array
        Angle from the crank standing straight up; it has the sign of the offset [deg].

    Raises
    ------
    Contradiction
        When the rod is not longer than the crank radius and the offset together.

    References
    ----------
    Crank and rod in one line: ``sin(t) = e / (l + r)``.
    """
    _insist_rod_passes(radius_mm, rod_mm, offset_mm)
    return arcsine_deg(offset_mm / (rod_mm + radius_mm))


def effective_stroke_mm(stroke_mm: Number, rod_mm: Number, closing_deg_abdc: Number) -> Number:
    """Stroke left for compression once the valve has closed.

    The lift at which the closing angle is stated belongs to the answer: the same camshaft
    closes at one angle at 1 mm of lift and at another near the seat.

    Parameters
    ----------
    stroke_mm : float or array
        Stroke [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    closing_deg_abdc : float or array
        Closing angle after bottom dead centre [deg].

    Returns
    -------
    float or array
        Travel from the closing point up to top dead centre [mm].

    Raises
    ------
    Contradiction
        When the rod is not longer than half the stroke.

    References
    ----------
    `travel_mm` at 180° less the closing angle.
    """
    return travel_mm(stroke_mm, rod_mm, 180.0 - closing_deg_abdc)


def _insist_rod_passes(radius_mm: Number, rod_mm: Number, offset_mm: Number) -> None:
    insist(
        rod_mm > absolute(radius_mm) + absolute(offset_mm),
        Contradiction,
        "rod_mm",
        "the crank cannot turn over with a rod that short",
        "a rod longer than the crank radius and the offset together",
    )
