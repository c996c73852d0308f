"""Plays of rings in their grooves, of the piston pin, and of rod and crank."""

from ringland_service.core.formulas.elementary import insist_positive
from ringland_service.core.numbers import Number


def side_clearance_mm(groove_width_mm: Number, ring_width_mm: Number) -> Number:
    """Side clearance of a plain ring in its groove.

    Parameters
    ----------
    groove_width_mm : float or array
        Width of the groove [mm].
    ring_width_mm : float or array
        Width of the ring [mm].

    Returns
    -------
    float or array
        Clearance, both sides together [mm].

    References
    ----------
    Difference of two lengths.
    """
    return groove_width_mm - ring_width_mm


def back_clearance_mm(bore_mm: Number, groove_root_mm: Number, thickness_mm: Number) -> Number:
    """Room behind a ring that lies against the bore, the piston central.

    Parameters
    ----------
    bore_mm : float or array
        Bore [mm].
    groove_root_mm : float or array
        Diameter of the piston at the root of the groove [mm].
    thickness_mm : float or array
        Radial thickness of the ring [mm].

    Returns
    -------
    float or array
        Radial room; below zero the ring stands proud of the bore [mm].

    References
    ----------
    Plane geometry.
    """
    return (bore_mm - groove_root_mm) / 2 - thickness_mm


def pin_clearance_mm(hole_mm: Number, pin_mm: Number) -> Number:
    """Clearance of the piston pin in its hole.

    Parameters
    ----------
    hole_mm : float or array
        Bore of the piston or of the rod's small end [mm].
    pin_mm : float or array
        Diameter of the pin [mm].

    Returns
    -------
    float or array
        Clearance on the diameter, below zero for a press fit [mm].

    References
    ----------
    Difference of two diameters; ISO 286.
    """
    return hole_mm - pin_mm


def wear_step_mm(unworn_mm: Number, worn_mm: Number) -> Number:
    """Step worn into a pin.

    Parameters
    ----------
    unworn_mm : float or array
        Diameter where nothing rubs [mm].
    worn_mm : float or array
        Smallest diameter [mm].

    Returns
    -------
    float or array
        Wear on the diameter [mm].

    References
    ----------
    Difference of two diameters.
    """
    return unworn_mm - worn_mm


def bend_or_offset_mm(runout_mm: Number) -> Number:
    """Distance of a crank's journal from the axis between centres.

    Parameters
    ----------
    runout_mm : float or array
        Run-out over one turn, total indicator reading [mm].

    Returns
    -------
    float or array
        Bend or offset, radial [mm].

    References
    ----------
    Plane geometry: an indicator on a round journal off its axis by e swings through 2·e.
    """
    return runout_mm / 2


def radial_play_from_rock_mm(rock_mm: Number, width_mm: Number, rod_mm: Number) -> Number:
    """Radial play of the big end that a sideways rock at the small end would take.

    Parameters
    ----------
    rock_mm : float or array
        Whole sideways rock at the small end [mm].
    width_mm : float or array
        Width of the big end [mm].
    rod_mm : float or array
        Rod length, centre to centre [mm].

    Returns
    -------
    float or array
        Diametral play of a big end that touches at both edges [mm].

    Raises
    ------
    OutOfBounds
        When the rod length is not above zero.

    References
    ----------
    Common practice, no source; similar triangles, the crown of the rollers left out.
    """
    insist_positive("rod_mm", rod_mm)
    return rock_mm * width_mm / (2 * rod_mm)
