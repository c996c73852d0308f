"""Pressure and vacuum test of a crankcase: what leaks, and what is only cooling."""

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import insist, insist_positive
from ringland_service.core.numbers import Number

ZERO_C_K = 273.15


def at_start_temperature_kpa(
    end_kpa: Number, air_kpa: Number, start_c: Number, end_c: Number
) -> Number:
    """End pressure as it would be had the air kept its temperature.

    Parameters
    ----------
    end_kpa : float or array
        Pressure at the end, gauge [kPa].
    air_kpa : float or array
        Air pressure on the spot, absolute [kPa].
    start_c, end_c : float or array
        Temperature of the air shut in, at the start and at the end [°C].

    Returns
    -------
    float or array
        Pressure at the temperature of the start, gauge [kPa].

    Raises
    ------
    OutOfBounds
        When a temperature is not above absolute zero.

    References
    ----------
    Gas law at constant volume: ``(p1 + p_air) T0 / T1 - p_air``, temperatures in kelvin.
    """
    for name, value in (("start_c", start_c), ("end_c", end_c)):
        insist(value > -ZERO_C_K, OutOfBounds, name, "lies below absolute zero", "give it in °C")
    # The same sum, as the pressure and its small change.
    return end_kpa + (end_kpa + air_kpa) * (start_c - end_c) / (end_c + ZERO_C_K)


def loss_per_minute_kpa(from_kpa: Number, to_kpa: Number, minutes: Number) -> Number:
    """Pressure lost a minute; of a vacuum test, vacuum lost a minute with both swapped.

    Parameters
    ----------
    from_kpa, to_kpa : float or array
        The higher pressure and the lower one of a test that leaks, gauge [kPa].
    minutes : float or array
        Minutes between them [min].

    Returns
    -------
    float or array
        Loss a minute, positive where it leaks [kPa].

    Raises
    ------
    OutOfBounds
        When the time is not above zero.

    References
    ----------
    Common practice.
    """
    insist_positive("minutes", minutes)
    return (from_kpa - to_kpa) / minutes


def leak_per_minute_cc(volume_cc: Number, loss_kpa: Number, air_kpa: Number) -> Number:
    """Free air that leaks a minute.

    Parameters
    ----------
    volume_cc : float or array
        Air shut in [cm³].
    loss_kpa : float or array
        Pressure lost a minute at one temperature [kPa].
    air_kpa : float or array
        Air pressure on the spot, absolute [kPa].

    Returns
    -------
    float or array
        Air at the pressure outside, each minute [cm³].

    Raises
    ------
    OutOfBounds
        When the air pressure is not above zero.

    References
    ----------
    Boyle's law.
    """
    insist_positive("air_kpa", air_kpa)
    return volume_cc * loss_kpa / air_kpa
