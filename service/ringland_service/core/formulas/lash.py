"""Valve lash: shims, adjusting screws, and what a sunk valve does to it.

Sense: lash is positive where there is room. A thicker shim takes lash away, a thinner one gives it.
"""

from ringland_service.core.formulas.elementary import absolute, insist_positive
from ringland_service.core.numbers import Number


def shim_for_lash_mm(
    old_shim_mm: Number, lash_mm: Number, wanted_mm: Number, movement: Number
) -> Number:
    """Shim that brings the lash to a wanted one.

    Parameters
    ----------
    old_shim_mm : float or array
        Shim fitted now [mm].
    lash_mm : float or array
        Lash with it [mm].
    wanted_mm : float or array
        Lash wanted [mm].
    movement : float or array
        Movement at the shim per unit of measured lash; 1 for a bucket.

    Returns
    -------
    float or array
        Thickness [mm].

    References
    ----------
    Plane geometry: what the lash has too much, the shim has too little.
    """
    return old_shim_mm + movement * (lash_mm - wanted_mm)


def lash_with_shim_mm(
    old_shim_mm: Number, lash_mm: Number, new_shim_mm: Number, movement: Number
) -> Number:
    """Lash that another shim gives.

    Parameters
    ----------
    old_shim_mm : float or array
        Shim fitted now [mm].
    lash_mm : float or array
        Lash with it [mm].
    new_shim_mm : float or array
        The other shim [mm].
    movement : float or array
        Movement at the shim per unit of measured lash; 1 for a bucket.

    Returns
    -------
    float or array
        Lash; below zero the valve is held open [mm].

    Raises
    ------
    OutOfBounds
        When the movement is not above zero.

    References
    ----------
    Plane geometry: the inverse of ``shim_for_lash_mm``.
    """
    insist_positive("movement", movement)
    return lash_mm + (old_shim_mm - new_shim_mm) / movement


def lash_after_sink_mm(lash_mm: Number, sink_mm: Number, ratio: Number) -> Number:
    """Lash of a valve that has sunk into its seat.

    Parameters
    ----------
    lash_mm : float or array
        Lash before [mm].
    sink_mm : float or array
        Rise of the stem [mm].
    ratio : float or array
        Lash lost per rise of the stem; 1 where lash is measured at the stem.

    Returns
    -------
    float or array
        Lash; below zero the valve is held open [mm].

    References
    ----------
    Difference of two lengths.
    """
    return lash_mm - ratio * sink_mm


def screw_turn_fraction(
    lash_mm: Number, wanted_mm: Number, pitch_mm: Number, ratio: Number
) -> Number:
    """Turn of an adjusting screw that brings the lash to a wanted one.

    Parameters
    ----------
    lash_mm, wanted_mm : float or array
        Lash measured and wanted, at the valve [mm].
    pitch_mm : float or array
        Pitch of the screw, single start [mm].
    ratio : float or array
        Movement at the valve per movement of the screw: 1 for a screw at the valve, the rocker's
        ratio (valve : cam) for one at the cam or pushrod.

    Returns
    -------
    float or array
        Turns, without sign [1].

    Raises
    ------
    OutOfBounds
        When pitch or ratio is not above zero.

    References
    ----------
    Lead of a thread: one turn moves a single-start screw by its pitch.
    """
    insist_positive("pitch_mm", pitch_mm)
    insist_positive("ratio", ratio)
    return absolute(lash_mm - wanted_mm) / (pitch_mm * ratio)


def lash_at_cam_mm(lash_mm: Number, ratio: Number) -> Number:
    """Lash at the cam's end of a rocker.

    Parameters
    ----------
    lash_mm : float or array
        Lash at the valve's end [mm].
    ratio : float or array
        Ratio of the rocker, valve : cam.

    Returns
    -------
    float or array
        Lash at the cam or pushrod [mm].

    Raises
    ------
    OutOfBounds
        When the ratio is not above zero.

    References
    ----------
    Plane geometry: the law of the lever.
    """
    insist_positive("ratio", ratio)
    return lash_mm / ratio
