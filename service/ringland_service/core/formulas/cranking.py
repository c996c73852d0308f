"""Cranking compression: what a sound cylinder should read, and what oil and hose do to it."""

from ringland_service.core.errors import Contradiction
from ringland_service.core.formulas.elementary import (
    insist,
    insist_positive,
    maximum,
    minimum,
    power,
)
from ringland_service.core.formulas.geometry import compression_ratio
from ringland_service.core.numbers import Number

OIL_SHARE_OF_CLEARANCE = 0.10
LEAST_OIL_ML = 0.5
MOST_OIL_ML = 5.0


def cranking_pressure_kpa(
    ratio: Number,
    air_pressure_kpa: Number,
    exponent: Number,
    intake_pressure_kpa: Number | None = None,
) -> Number:
    """Gauge pressure that a sound cylinder reaches on the starter.

    Parameters
    ----------
    ratio : float or array
        Dynamic ratio, or trapped ratio of a two-stroke [1].
    air_pressure_kpa : float or array
        Air pressure on the spot, absolute [kPa].
    exponent : float or array
        Polytropic exponent of the compression [1].
    intake_pressure_kpa : float or array, optional
        Pressure in the manifold, absolute; left out, the throttle is open and the manifold
        stands at air pressure [kPa].

    Returns
    -------
    float or array
        Cranking pressure, gauge [kPa].

    Raises
    ------
    OutOfBounds
        When the ratio is not above zero.

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals: polytropic compression,
    ``p = p_intake R^n - p_air``.
    """
    insist_positive("ratio", ratio)
    start_kpa = air_pressure_kpa if intake_pressure_kpa is None else intake_pressure_kpa
    return start_kpa * power(ratio, exponent) - air_pressure_kpa


def gain_percent(dry_kpa: Number, wet_kpa: Number) -> Number:
    """Gain of the reading after oil was put into the cylinder.

    Parameters
    ----------
    dry_kpa, wet_kpa : float or array
        Readings without and with oil, gauge [kPa].

    Returns
    -------
    float or array
        Gain [%].

    Raises
    ------
    OutOfBounds
        When the dry reading is not above zero.

    References
    ----------
    Common practice.
    """
    insist_positive("dry_kpa", dry_kpa)
    return 100 * (wet_kpa / dry_kpa - 1)


def ratio_with_oil(effective_cc: Number, clearance_cc: Number, oil_ml: Number) -> Number:
    """Dynamic ratio with all of the oil lying above the piston.

    Parameters
    ----------
    effective_cc : float or array
        Volume swept after the valve has closed [cm³].
    clearance_cc : float or array
        Clearance volume [cm³].
    oil_ml : float or array
        Oil put in [mL].

    Returns
    -------
    float or array
        Ratio [1].

    Raises
    ------
    Contradiction
        When the oil fills the clearance volume: the cylinder would lock.

    References
    ----------
    The oil takes its own volume from both ends of the stroke.
    """
    insist(
        oil_ml < clearance_cc,
        Contradiction,
        "oil_ml",
        "that much oil fills the clearance volume and locks the cylinder",
        "far less oil than the clearance volume",
    )
    return compression_ratio(effective_cc, clearance_cc - oil_ml)


def volume_only_gain_percent(
    effective_cc: Number, clearance_cc: Number, oil_ml: Number, exponent: Number
) -> Number:
    """Gain that the volume of the oil alone would give on sound rings.

    It is an upper bound, since some of the oil runs off or past the rings.

    Parameters
    ----------
    effective_cc : float or array
        Volume swept after the valve has closed [cm³].
    clearance_cc : float or array
        Clearance volume [cm³].
    oil_ml : float or array
        Oil put in [mL].
    exponent : float or array
        Polytropic exponent of the compression [1].

    Returns
    -------
    float or array
        Gain [%].

    Raises
    ------
    OutOfBounds
        When a volume or the exponent is not above zero.
    Contradiction
        When the oil fills the clearance volume.

    References
    ----------
    Ratio of two polytropic compressions, ``p = p_air (R^n - 1)``; Heywood, Internal Combustion
    Engine Fundamentals.
    """
    with_oil = ratio_with_oil(effective_cc, clearance_cc, oil_ml)
    return _pressure_change_percent(effective_cc, clearance_cc, with_oil, exponent)


def excess_gain_percent(
    dry_kpa: Number, wet_kpa: Number, volume_only_gain_percent: Number
) -> Number:
    """Gain of the wet reading beyond what the volume of the oil gives.

    Parameters
    ----------
    dry_kpa, wet_kpa : float or array
        Readings without and with oil, gauge [kPa].
    volume_only_gain_percent : float or array
        Gain from the volume of the oil alone [%].

    Returns
    -------
    float or array
        Excess over the reading that sound rings would give [%].

    Raises
    ------
    OutOfBounds
        When the dry reading is not above zero, or the gain from volume alone is a total loss.

    References
    ----------
    Common practice.
    """
    growth = 1 + volume_only_gain_percent / 100
    insist_positive("volume_only_gain_percent", growth)
    return gain_percent(dry_kpa * growth, wet_kpa)


def recommended_oil_ml(clearance_cc: Number) -> Number:
    """Advice on the oil dose of a wet test: a tenth of the clearance volume, 0.5 to 5 mL.

    The two ends hold the dose to what a syringe can measure and what spreads round the ring.
    Under 2 cm³ of clearance the lower end is a quarter of the room or more: too much oil.

    Parameters
    ----------
    clearance_cc : float or array
        Clearance volume [cm³].

    Returns
    -------
    float or array
        Dose [mL].

    References
    ----------
    Common practice.
    """
    return minimum(maximum(OIL_SHARE_OF_CLEARANCE * clearance_cc, LEAST_OIL_ML), MOST_OIL_ML)


def ratio_with_hose(effective_cc: Number, clearance_cc: Number, hose_cc: Number) -> Number:
    """Dynamic ratio with the room between the cylinder and the gauge's check valve added.

    Parameters
    ----------
    effective_cc : float or array
        Volume swept after the valve has closed [cm³].
    clearance_cc : float or array
        Clearance volume [cm³].
    hose_cc : float or array
        Hose and adaptor up to the check valve [cm³].

    Returns
    -------
    float or array
        Ratio [1].

    Raises
    ------
    OutOfBounds
        When clearance and hose together are not above zero.

    References
    ----------
    The hose adds its volume to both ends of the stroke.
    """
    return compression_ratio(effective_cc, clearance_cc + hose_cc)


def hose_error_percent(
    effective_cc: Number, clearance_cc: Number, hose_cc: Number, exponent: Number
) -> Number:
    """Error of the reading from the room in hose and adaptor.

    Parameters
    ----------
    effective_cc : float or array
        Volume swept after the valve has closed [cm³].
    clearance_cc : float or array
        Clearance volume [cm³].
    hose_cc : float or array
        Hose and adaptor up to the check valve [cm³].
    exponent : float or array
        Polytropic exponent of the compression [1].

    Returns
    -------
    float or array
        Error, negative: the gauge reads low [%].

    Raises
    ------
    OutOfBounds
        When a volume or the exponent is not above zero.

    References
    ----------
    Ratio of two polytropic compressions; Heywood, Internal Combustion Engine Fundamentals.
    """
    with_hose = ratio_with_hose(effective_cc, clearance_cc, hose_cc)
    return _pressure_change_percent(effective_cc, clearance_cc, with_hose, exponent)


def _pressure_change_percent(
    effective_cc: Number, clearance_cc: Number, changed_ratio: Number, exponent: Number
) -> Number:
    insist_positive("effective_cc", effective_cc)
    insist_positive("exponent", exponent)
    before = power(compression_ratio(effective_cc, clearance_cc), exponent) - 1
    after = power(changed_ratio, exponent) - 1
    return 100 * (after / before - 1)
