"""End gap of piston rings: wanted, to file, grown with bore wear, hot."""

from math import pi

from ringland_service.core.formulas.elementary import maximum
from ringland_service.core.numbers import Number


def mean_diameter_mm(pin_axis_mm: Number, thrust_axis_mm: Number) -> Number:
    """Mean of the two axes at one depth, for the perimeter that a ring follows.

    Parameters
    ----------
    pin_axis_mm, thrust_axis_mm : float or array
        Bore along and across the pin at one depth [mm].

    Returns
    -------
    float or array
        Mean diameter [mm].

    References
    ----------
    Perimeter of an ellipse that is nearly a circle: pi times the mean axis, to second order.
    """
    return (pin_axis_mm + thrust_axis_mm) / 2


def gap_growth_mm(mean_diameter_mm: Number, unworn_mm: Number) -> Number:
    """Growth of the end gap that bore wear alone accounts for.

    Parameters
    ----------
    mean_diameter_mm : float or array
        Mean of the two bore axes at the depth of the gap [mm].
    unworn_mm : float or array
        Bore where no ring runs [mm].

    Returns
    -------
    float or array
        Growth of the gap [mm].

    References
    ----------
    A ring follows the perimeter: pi times the growth of the diameter.
    """
    return pi * (mean_diameter_mm - unworn_mm)


def own_gap_mm(gap_mm: Number, growth_mm: Number) -> Number:
    """End gap less what the worn bore adds: the gap of the ring itself.

    Parameters
    ----------
    gap_mm : float or array
        Gap as measured in the worn bore [mm].
    growth_mm : float or array
        Growth from bore wear, see `gap_growth_mm` [mm].

    Returns
    -------
    float or array
        Gap that the ring would show in the unworn bore [mm].

    References
    ----------
    Difference of two lengths.
    """
    return gap_mm - growth_mm


def gap_in_worn_bore_mm(gap_mm: Number, growth_mm: Number) -> Number:
    """End gap that a ring shows in a worn bore.

    Parameters
    ----------
    gap_mm : float or array
        Gap in the unworn bore [mm].
    growth_mm : float or array
        Growth from bore wear, see `gap_growth_mm` [mm].

    Returns
    -------
    float or array
        Gap in the worn bore [mm].

    References
    ----------
    Sum of two lengths.
    """
    return gap_mm + growth_mm


def wanted_gap_mm(factor: Number, bore_mm: Number) -> Number:
    """Least end gap where the maker gives no range.

    Parameters
    ----------
    factor : float or array
        Gap as a share of the bore [1].
    bore_mm : float or array
        Finished bore [mm].

    Returns
    -------
    float or array
        Gap [mm].

    References
    ----------
    Common practice. The maker's range always wins.
    """
    return factor * bore_mm


def filing_mm(wanted_mm: Number, measured_mm: Number) -> Number:
    """Length to file off one end of the ring.

    A gap that is wide enough needs no filing: the answer is then zero, since metal cannot be
    put back.

    Parameters
    ----------
    wanted_mm : float or array
        Least gap wanted [mm].
    measured_mm : float or array
        Gap as measured [mm].

    Returns
    -------
    float or array
        Length to file, zero or more [mm].

    References
    ----------
    Common practice.
    """
    return maximum(wanted_mm - measured_mm, 0.0)


def hot_gap_mm(
    cold_gap_mm: Number,
    bore_mm: Number,
    bore_rise_k: Number,
    bore_alpha_per_k: Number,
    ring_rise_k: Number,
    ring_alpha_per_k: Number,
) -> Number:
    """End gap at running temperature, for comparison only.

    Parameters
    ----------
    cold_gap_mm : float or array
        Gap at 20 °C [mm].
    bore_mm : float or array
        Bore at 20 °C [mm].
    bore_rise_k, ring_rise_k : float or array
        Temperature of bore and ring above 20 °C [K].
    bore_alpha_per_k, ring_alpha_per_k : float or array
        Coefficients of linear expansion; for the bore the effective one of its kind [1/K].

    Returns
    -------
    float or array
        Hot gap, negative where the ends would meet [mm].

    References
    ----------
    Machinery's Handbook: linear expansion of both perimeters.
    """
    perimeter_mm = pi * bore_mm
    bore_growth_mm = perimeter_mm * bore_alpha_per_k * bore_rise_k
    return cold_gap_mm + bore_growth_mm - perimeter_mm * ring_alpha_per_k * ring_rise_k
