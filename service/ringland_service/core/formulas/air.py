"""Air pressure at altitude, readings brought to another air pressure, lengths at 20 °C."""

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import insist, insist_positive, power
from ringland_service.core.numbers import Number

# ISO 2533, Standard atmosphere.
SEA_LEVEL_KPA = 101.325
SEA_LEVEL_K = 288.15
LAPSE_K_PER_M = 0.0065
GRAVITY_M_PER_S2 = 9.80665
GAS_CONSTANT_J_PER_KG_K = 287.05287
PRESSURE_EXPONENT = GRAVITY_M_PER_S2 / (GAS_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M)  # 5.25588

# ISO 1, Standard reference temperature.
REFERENCE_TEMPERATURE_C = 20.0


def altitude_pressure_kpa(altitude_m: Number, sea_level_kpa: Number = SEA_LEVEL_KPA) -> Number:
    """Absolute air pressure on the spot.

    Parameters
    ----------
    altitude_m : float or array
        Height above mean sea level, taken as geopotential height [m].
    sea_level_kpa : float or array, optional
        Pressure at mean sea level: that of the standard atmosphere, or the one in the weather
        report, which is already brought to sea level [kPa].

    Returns
    -------
    float or array
        Absolute air pressure [kPa].

    Raises
    ------
    OutOfBounds
        When the altitude lies where this atmosphere has no air left.

    References
    ----------
    ISO 2533, Standard atmosphere: ``p = p0 (1 - 0.0065 h / 288.15)^5.25588``,
    valid to 11 000 m.
    """
    return sea_level_kpa * power(_temperature_ratio(altitude_m), PRESSURE_EXPONENT)


def density_ratio(altitude_m: Number) -> Number:
    """Air density as a share of the one at sea level, for comparison only.

    A compression reading goes with the pressure, not with the density.

    Parameters
    ----------
    altitude_m : float or array
        Height above mean sea level, taken as geopotential height [m].

    Returns
    -------
    float or array
        Density ratio [1].

    Raises
    ------
    OutOfBounds
        When the altitude lies where this atmosphere has no air left.

    References
    ----------
    ISO 2533, Standard atmosphere.
    """
    return power(_temperature_ratio(altitude_m), PRESSURE_EXPONENT - 1)


def reading_at_pressure_kpa(reading_kpa: Number, from_kpa: Number, to_kpa: Number) -> Number:
    """Compression reading brought from one air pressure to another, throttle open.

    Parameters
    ----------
    reading_kpa : float or array
        Compression reading, gauge [kPa].
    from_kpa : float or array
        Air pressure where it was read, absolute [kPa].
    to_kpa : float or array
        Air pressure to which it is brought, absolute [kPa].

    Returns
    -------
    float or array
        Reading at the other air pressure, gauge [kPa].

    Raises
    ------
    OutOfBounds
        When the air pressure of the reading is not above zero.

    References
    ----------
    ``p_gauge = p_air (R^n - 1)``: the bracket does not depend on the air pressure.
    Heywood, Internal Combustion Engine Fundamentals.
    """
    insist_positive("from_kpa", from_kpa)
    return reading_kpa * to_kpa / from_kpa


def length_at_20c_mm(length_mm: Number, temperature_c: Number, alpha_per_k: Number) -> Number:
    """Length of a part at the reference temperature of 20 °C.

    Parameters
    ----------
    length_mm : float or array
        Length as measured [mm].
    temperature_c : float or array
        Temperature of the part [°C].
    alpha_per_k : float or array
        Coefficient of linear expansion [1/K].

    Returns
    -------
    float or array
        Length at 20 °C [mm].

    Raises
    ------
    OutOfBounds
        When the expansion would leave no length.

    References
    ----------
    ISO 1; Machinery's Handbook: ``L20 = L / (1 + a (T - 20))``.
    """
    growth = 1 + alpha_per_k * (temperature_c - REFERENCE_TEMPERATURE_C)
    insist_positive("temperature_c", growth)
    return length_mm / growth


def _temperature_ratio(altitude_m: Number) -> Number:
    ratio = 1 - LAPSE_K_PER_M * altitude_m / SEA_LEVEL_K
    insist(
        ratio > 0,
        OutOfBounds,
        "altitude_m",
        "the standard atmosphere has no air there",
        "an altitude in its lowest layer, up to 11 000 m",
    )
    return ratio
