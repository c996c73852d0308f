"""Shape and wear of a bore from two-point readings, and its clearance when hot.

Out-of-round and taper are differences of two diameters, as a bore gauge reads them. The radial
roundness of ISO 12181 is another figure: half of it for a plain oval, and more than nothing for
a bore of three lobes, whose diameters are all alike.
"""

from typing import cast

import numpy as np

from ringland_service.core.formulas.air import REFERENCE_TEMPERATURE_C
from ringland_service.core.formulas.elementary import absolute
from ringland_service.core.formulas.fits import clearance_mm
from ringland_service.core.numbers import Column, Number


def out_of_round_mm(pin_axis_mm: Number, thrust_axis_mm: Number) -> Number:
    """Out-of-round at one depth.

    Parameters
    ----------
    pin_axis_mm, thrust_axis_mm : float or array
        Diameters along and across the piston pin at that depth [mm].

    Returns
    -------
    float or array
        Difference of the two diameters, without its sign [mm].

    References
    ----------
    Common practice, no source; not the radial roundness of ISO 12181.
    """
    return absolute(pin_axis_mm - thrust_axis_mm)


def taper_mm(bores_mm: Column) -> Number:
    """Taper along one axis: the largest difference anywhere on it.

    Parameters
    ----------
    bores_mm : array
        Diameters on that axis, along the last axis of the array [mm].

    Returns
    -------
    float or array
        Largest less smallest diameter [mm].

    References
    ----------
    Common practice, no source; some makers mean top less bottom, see ``signed_taper_mm``.
    """
    return cast(Number, np.max(bores_mm, axis=-1) - np.min(bores_mm, axis=-1))


def signed_taper_mm(top_mm: Number, bottom_mm: Number) -> Number:
    """Taper along one axis with its sign.

    Parameters
    ----------
    top_mm, bottom_mm : float or array
        Diameters at the shallowest and the deepest reading of that axis [mm].

    Returns
    -------
    float or array
        Top less bottom: above zero where the top is wider, as wear leaves it [mm].

    References
    ----------
    Common practice, no source.
    """
    return top_mm - bottom_mm


def barrel_mm(top_mm: Number, middle_mm: Number, bottom_mm: Number) -> Number:
    """How much wider the middle of a bore is than its ends.

    Parameters
    ----------
    top_mm, middle_mm, bottom_mm : float or array
        Mean diameters of both axes at the top, half-way and at the bottom [mm].

    Returns
    -------
    float or array
        Middle less the mean of the ends: above zero barrelled, below zero waisted [mm].

    References
    ----------
    Common practice, no source.
    """
    return middle_mm - (top_mm + bottom_mm) / 2


def wear_mm(largest_mm: Number, reference_mm: Number) -> Number:
    """Wear of a bore on the diameter.

    Parameters
    ----------
    largest_mm : float or array
        Largest diameter anywhere [mm].
    reference_mm : float or array
        Diameter where nothing rubs, else the new size [mm].

    Returns
    -------
    float or array
        Wear [mm].

    References
    ----------
    Common practice, no source.
    """
    return largest_mm - reference_mm


def hot_size_mm(size_at_20c_mm: Number, temperature_c: Number, alpha_per_k: Number) -> Number:
    """Size of a part at its running temperature.

    Parameters
    ----------
    size_at_20c_mm : float or array
        Diameter at 20 °C [mm].
    temperature_c : float or array
        Temperature when running [°C].
    alpha_per_k : float or array
        Linear expansion, the mean over that range [1/K].

    Returns
    -------
    float or array
        Diameter when running [mm].

    References
    ----------
    ISO 1; Machinery's Handbook, linear expansion.
    """
    return size_at_20c_mm * (1 + alpha_per_k * (temperature_c - REFERENCE_TEMPERATURE_C))


def hot_clearance_mm(
    bore_mm: Number,
    bore_hot_c: Number,
    bore_alpha_per_k: Number,
    piston_mm: Number,
    piston_hot_c: Number,
    piston_alpha_per_k: Number,
) -> Number:
    """Clearance of a piston in its bore, both at their running temperatures.

    Parameters
    ----------
    bore_mm, piston_mm : float or array
        Diameters at 20 °C [mm].
    bore_hot_c, piston_hot_c : float or array
        Temperatures when running [°C].
    bore_alpha_per_k, piston_alpha_per_k : float or array
        Linear expansions [1/K].

    Returns
    -------
    float or array
        Clearance on the diameter, below zero where the bare sizes overlap [mm].

    References
    ----------
    Machinery's Handbook, linear expansion.
    """
    return clearance_mm(
        hot_size_mm(bore_mm, bore_hot_c, bore_alpha_per_k),
        hot_size_mm(piston_mm, piston_hot_c, piston_alpha_per_k),
    )
