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
    """Difference of the diameters along and across the pin at one depth, without its sign [mm].

    Common practice, no source; not the radial roundness of ISO 12181.
    """
    return absolute(pin_axis_mm - thrust_axis_mm)


def taper_mm(bores_mm: Column) -> Number:
    """Largest less smallest diameter [mm, last axis] on one axis of the bore [mm].

    Common practice, no source; some makers mean top less bottom, see ``signed_taper_mm``.
    """
    # Anywhere on the axis, not from end to end: a bore worn in the middle is not even either.
    return cast(Number, np.max(bores_mm, axis=-1) - np.min(bores_mm, axis=-1))


def signed_taper_mm(top_mm: Number, bottom_mm: Number) -> Number:
    """Shallowest less deepest diameter of one axis [mm], above zero where the top is wider.

    Common practice, no source.
    """
    return top_mm - bottom_mm


def barrel_mm(top_mm: Number, middle_mm: Number, bottom_mm: Number) -> Number:
    """Middle diameter less the mean of the ends [mm], each the mean of both axes [mm].

    Above zero barrelled, below zero waisted. Common practice, no source.
    """
    return middle_mm - (top_mm + bottom_mm) / 2


def wear_mm(largest_mm: Number, reference_mm: Number) -> Number:
    """Largest diameter anywhere less the one where nothing rubs, else the new size [mm].

    Common practice, no source.
    """
    return largest_mm - reference_mm


def hot_size_mm(size_at_20c_mm: Number, temperature_c: Number, alpha_per_k: Number) -> Number:
    """Diameter [mm] at a running temperature [°C], of one at 20 °C [mm] and its expansion [1/K].

    ``alpha_per_k`` is the mean over that range. ISO 1; Machinery's Handbook, linear expansion.
    """
    # Sizes hold at 20 °C (ISO 1), so growth counts from there.
    return size_at_20c_mm * (1 + alpha_per_k * (temperature_c - REFERENCE_TEMPERATURE_C))


def hot_clearance_mm(
    bore_mm: Number,
    bore_hot_c: Number,
    bore_alpha_per_k: Number,
    piston_size_mm: Number,
    piston_hot_c: Number,
    piston_alpha_per_k: Number,
) -> Number:
    """Clearance of a piston in its bore, both at their running temperatures.

    Parameters
    ----------
    bore_mm, piston_size_mm : float or array
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
    # Each at its own temperature: a piston runs hotter than its bore and takes clearance up.
    return clearance_mm(
        hot_size_mm(bore_mm, bore_hot_c, bore_alpha_per_k),
        hot_size_mm(piston_size_mm, piston_hot_c, piston_alpha_per_k),
    )
