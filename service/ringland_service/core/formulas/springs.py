"""Valve springs: rate, loads, free length, lean, and the rate that the wire gives."""

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import direction_deg, insist, insist_positive
from ringland_service.core.numbers import Number


def rate_n_per_mm(
    load_1_n: Number, length_1_mm: Number, load_2_n: Number, length_2_mm: Number
) -> Number:
    """Rate of a spring between two loads.

    Parameters
    ----------
    load_1_n, load_2_n : float or array
        Smaller and larger load [N].
    length_1_mm, length_2_mm : float or array
        Lengths under them, the first the larger [mm].

    Returns
    -------
    float or array
        Rate [N/mm].

    Raises
    ------
    OutOfBounds
        When the first length is not the larger one.

    References
    ----------
    Hooke's law; EN 13906-1.
    """
    insist(
        length_1_mm > length_2_mm,
        OutOfBounds,
        "length_1_mm",
        "must be above length_2",
        "give the longer length first, with the smaller load",
    )
    return (load_2_n - load_1_n) / (length_1_mm - length_2_mm)


def load_n(load_1_n: Number, length_1_mm: Number, rate: Number, length_mm: Number) -> Number:
    """Load of a spring of one rate at a length.

    Parameters
    ----------
    load_1_n, length_1_mm : float or array
        A load [N] and the length under it [mm].
    rate : float or array
        Rate [N/mm].
    length_mm : float or array
        Length [mm].

    Returns
    -------
    float or array
        Load [N].

    References
    ----------
    Hooke's law.
    """
    return load_1_n + rate * (length_1_mm - length_mm)


def free_length_mm(load_1_n: Number, length_1_mm: Number, rate: Number) -> Number:
    """Free length that a load and a rate imply.

    Parameters
    ----------
    load_1_n, length_1_mm : float or array
        A load [N] and the length under it [mm].
    rate : float or array
        Rate [N/mm].

    Returns
    -------
    float or array
        Length without load [mm].

    Raises
    ------
    OutOfBounds
        When the rate is not above zero.

    References
    ----------
    Hooke's law.
    """
    insist_positive("rate", rate)
    return length_1_mm + load_1_n / rate


def open_length_mm(installed_mm: Number, lift_mm: Number) -> Number:
    """Length of the spring at full lift.

    Parameters
    ----------
    installed_mm : float or array
        Installed height, valve shut [mm].
    lift_mm : float or array
        Lift of the valve [mm].

    Returns
    -------
    float or array
        Length [mm].

    References
    ----------
    Difference of two lengths.
    """
    return installed_mm - lift_mm


def coil_bind_margin_mm(open_mm: Number, bind_mm: Number) -> Number:
    """Room that all coils together keep at full lift.

    Parameters
    ----------
    open_mm : float or array
        Length at full lift [mm].
    bind_mm : float or array
        Length with all coils shut [mm].

    Returns
    -------
    float or array
        Room; below zero the coils bind before full lift [mm].

    References
    ----------
    Difference of two lengths.
    """
    return open_mm - bind_mm


def loss_percent(new: Number, now: Number) -> Number:
    """Loss of a length or a load, as a share of the new one.

    Parameters
    ----------
    new, now : float or array
        In one unit.

    Returns
    -------
    float or array
        Loss [%].

    Raises
    ------
    OutOfBounds
        When the new value is not above zero.

    References
    ----------
    Arithmetic.
    """
    insist_positive("new", new)
    return 100 * (new - now) / new


def share_percent(now: Number, nominal: Number) -> Number:
    """Load as a share of its nominal one.

    Parameters
    ----------
    now, nominal : float or array
        In one unit.

    Returns
    -------
    float or array
        Share [%].

    Raises
    ------
    OutOfBounds
        When the nominal value is not above zero.

    References
    ----------
    Arithmetic.
    """
    insist_positive("nominal", nominal)
    return 100 * now / nominal


def lean_deg(lean_mm: Number, free_mm: Number) -> Number:
    """Lean of a spring that stands on a flat plate.

    Parameters
    ----------
    lean_mm : float or array
        Distance of the top coil from a square [mm].
    free_mm : float or array
        Free length [mm].

    Returns
    -------
    float or array
        Lean [deg].

    References
    ----------
    Plane geometry.
    """
    return direction_deg(lean_mm, free_mm)


def rate_from_wire_n_per_mm(
    modulus_mpa: Number, wire_mm: Number, coil_mm: Number, coils: Number
) -> Number:
    """Rate of a helical spring of round wire.

    Parameters
    ----------
    modulus_mpa : float or array
        Shear modulus of the wire [MPa].
    wire_mm : float or array
        Diameter of the wire [mm].
    coil_mm : float or array
        Mean diameter of the coils [mm].
    coils : float or array
        Active coils.

    Returns
    -------
    float or array
        Rate [N/mm].

    Raises
    ------
    OutOfBounds
        When the coil diameter or the count of coils is not above zero.

    References
    ----------
    EN 13906-1: R = G·d⁴ / (8·D³·n).
    """
    insist_positive("coil_mm", coil_mm)
    insist_positive("coils", coils)
    return modulus_mpa * wire_mm**4 / (8 * coil_mm**3 * coils)
