"""Running in: piston speed, and oil in the fuel."""

from ringland_service.core.formulas.elementary import insist_positive, maximum
from ringland_service.core.numbers import Number


def mean_piston_speed_m_s(stroke_mm: Number, speed_rpm: Number) -> Number:
    """Mean piston speed.

    Parameters
    ----------
    stroke_mm : float or array
        Stroke [mm].
    speed_rpm : float or array
        Speed of the crankshaft [1/min].

    Returns
    -------
    float or array
        Two strokes a turn: 2·S·N/60000 [m/s].

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals, mean piston speed.
    """
    return 2.0 * stroke_mm * speed_rpm / 60000.0


def oil_ml(fuel_ml: Number, ratio: Number) -> Number:
    """Oil that goes with fuel.

    Parameters
    ----------
    fuel_ml : float or array
        Fuel without oil [mL].
    ratio : float or array
        Fuel to oil: 32 for 32:1 [1].

    Returns
    -------
    float or array
        Oil [mL].

    Raises
    ------
    OutOfBounds
        When the ratio is not above zero.

    References
    ----------
    Arithmetic of a ratio by volume.
    """
    insist_positive("ratio", ratio)
    return fuel_ml / ratio


def oil_in_mix_ml(mix_ml: Number, ratio: Number) -> Number:
    """Oil that a mix already holds.

    Parameters
    ----------
    mix_ml : float or array
        Mix: fuel and oil together [mL].
    ratio : float or array
        Fuel to oil: 40 for 40:1 [1].

    Returns
    -------
    float or array
        Oil: one part in ratio + 1 [mL].

    Raises
    ------
    OutOfBounds
        When the ratio is not above zero.

    References
    ----------
    Arithmetic of a ratio by volume.
    """
    insist_positive("ratio", ratio)
    return mix_ml / (ratio + 1.0)


def lacking(wanted: Number, present: Number) -> Number:
    """How much is still to be added; nothing where there is enough.

    Parameters
    ----------
    wanted, present : float or array
        Of one unit.

    Returns
    -------
    float or array
        Same unit.

    References
    ----------
    Arithmetic.
    """
    return maximum(wanted - present, 0.0)
