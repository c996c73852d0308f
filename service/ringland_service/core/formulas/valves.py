"""Valve guides and seats: clearance direct and by rocking, contact, narrowing cuts."""

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import (
    absolute,
    cosine_deg,
    insist,
    insist_positive,
    sine_deg,
)
from ringland_service.core.numbers import Number


def guide_clearance_mm(guide_mm: Number, stem_mm: Number) -> Number:
    """Clearance of a valve stem in its guide.

    Parameters
    ----------
    guide_mm : float or array
        Largest bore of the guide [mm].
    stem_mm : float or array
        Smallest diameter of the stem within it [mm].

    Returns
    -------
    float or array
        Clearance on the diameter [mm].

    References
    ----------
    Difference of two diameters.
    """
    return guide_mm - stem_mm


def clearance_from_rock_mm(rock_mm: Number, guide_length_mm: Number, beyond_mm: Number) -> Number:
    """Clearance that the rock of a valve implies, in a guide of one bore all along.

    Parameters
    ----------
    rock_mm : float or array
        Whole swing of the indicator, from side to side [mm].
    guide_length_mm : float or array
        Length of the guide [mm].
    beyond_mm : float or array
        Distance of the indicator beyond the end of the guide [mm].

    Returns
    -------
    float or array
        Clearance on the diameter [mm].

    Raises
    ------
    OutOfBounds
        When the length of the guide is not above zero.

    References
    ----------
    Similar triangles: the stem tilts by clearance over guide length to either side, about the
    middle of the guide.
    """
    insist_positive("guide_length_mm", guide_length_mm)
    return rock_mm * guide_length_mm / (guide_length_mm + 2 * beyond_mm)


def width_along_face_mm(outer_mm: Number, inner_mm: Number, seat_deg: Number) -> Number:
    """Width of a conical ring, along its face.

    Parameters
    ----------
    outer_mm, inner_mm : float or array
        Diameters of its edges [mm].
    seat_deg : float or array
        Angle of the face, from the plane across the axis [deg].

    Returns
    -------
    float or array
        Width [mm].

    References
    ----------
    Plane geometry.
    """
    return (outer_mm - inner_mm) / (2 * cosine_deg(seat_deg))


def inside_rim_mm(head_mm: Number, outer_mm: Number) -> Number:
    """Distance of the contact's outer edge inside the rim of the valve.

    Parameters
    ----------
    head_mm : float or array
        Diameter of the valve head [mm].
    outer_mm : float or array
        Outer diameter of the contact [mm].

    Returns
    -------
    float or array
        Radial distance [mm].

    References
    ----------
    Plane geometry.
    """
    return (head_mm - outer_mm) / 2


def place_on_face(head_mm: Number, contact_mm: Number, face_mm: Number, seat_deg: Number) -> Number:
    """Where the middle of the contact stands on the valve's face.

    Parameters
    ----------
    head_mm : float or array
        Diameter of the valve head, where its face begins [mm].
    contact_mm : float or array
        Mean diameter of the contact [mm].
    face_mm : float or array
        Width of the valve's face, along it [mm].
    seat_deg : float or array
        Angle of the face, from the plane across the axis [deg].

    Returns
    -------
    float or array
        0 at the rim, 1 at the face's inner edge.

    Raises
    ------
    OutOfBounds
        When the width of the face is not above zero.

    References
    ----------
    Plane geometry.
    """
    insist_positive("face_mm", face_mm)
    return width_along_face_mm(head_mm, contact_mm, seat_deg) / face_mm


def edge_change_mm(feed_mm: Number, seat_deg: Number, cutter_deg: Number) -> Number:
    """Change of a seat's edge by a narrowing cut, on the diameter.

    A flatter cutter (top) lowers the outer diameter by this, a steeper one (bottom) raises the
    inner diameter.

    Parameters
    ----------
    feed_mm : float or array
        Feed of the cutter along the axis, from where it touches the edge [mm].
    seat_deg, cutter_deg : float or array
        Angles of seat and cutter, from the plane across the axis [deg].

    Returns
    -------
    float or array
        Change on the diameter, above zero [mm].

    Raises
    ------
    OutOfBounds
        When both angles are alike.

    References
    ----------
    Plane geometry: 2·h / |tan α − tan β|, written as one fraction so that like angles lose no
    digits.
    """
    return feed_mm / _feed_per_change(seat_deg, cutter_deg)


def width_after_cut_mm(
    outer_mm: Number, inner_mm: Number, change_mm: Number, seat_deg: Number
) -> Number:
    """Width left, along the face, once narrowing cuts have moved the edges.

    Parameters
    ----------
    outer_mm, inner_mm : float or array
        Diameters of the edges before [mm].
    change_mm : float or array
        Change of both diameters together [mm].
    seat_deg : float or array
        Angle of the face, from the plane across the axis [deg].

    Returns
    -------
    float or array
        Width [mm].

    Raises
    ------
    OutOfBounds
        When nothing is left.

    References
    ----------
    Plane geometry.
    """
    insist(
        outer_mm - inner_mm > change_mm,
        OutOfBounds,
        "feed_mm",
        "these cuts take the whole contact away",
        "a smaller feed: cut in small bites",
    )
    return width_along_face_mm(outer_mm - change_mm, inner_mm, seat_deg)


def feed_for_change_mm(change_mm: Number, seat_deg: Number, cutter_deg: Number) -> Number:
    """Feed of a narrowing cut that moves an edge by a wanted change.

    Parameters
    ----------
    change_mm : float or array
        Change wanted, on the diameter [mm].
    seat_deg, cutter_deg : float or array
        Angles of seat and cutter, from the plane across the axis [deg].

    Returns
    -------
    float or array
        Feed along the axis [mm].

    Raises
    ------
    OutOfBounds
        When both angles are alike.

    References
    ----------
    Plane geometry: the inverse of ``edge_change_mm``.
    """
    return change_mm * _feed_per_change(seat_deg, cutter_deg)


def _feed_per_change(seat_deg: Number, cutter_deg: Number) -> Number:
    """Return |tan α − tan β| / 2 as sin|α − β| / (2·cos α·cos β)."""
    sine = sine_deg(absolute(seat_deg - cutter_deg))
    insist(
        sine > 0,
        OutOfBounds,
        "cutter_deg",
        "is the angle of the seat itself",
        "a flatter cutter for the outer edge, a steeper one for the inner edge",
    )
    return sine / (2 * cosine_deg(seat_deg) * cosine_deg(cutter_deg))
