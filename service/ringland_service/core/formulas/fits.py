"""Fit of the piston in the bore. Lists of readings lie along the last axis."""

import numpy as np

from ringland_service.core.formulas.elementary import insist_positive
from ringland_service.core.numbers import Column, Number


def clearance_mm(bore_mm: Number, piston_mm: Number) -> Number:
    """Diametral clearance of a piston in a bore.

    Parameters
    ----------
    bore_mm : float or array
        Bore diameter [mm].
    piston_mm : float or array
        Piston diameter across the thrust axis, at the maker's height on the skirt [mm].

    Returns
    -------
    float or array
        Clearance on the diameter, negative for an interference [mm].

    References
    ----------
    Difference of two diameters; ISO 286.
    """
    return bore_mm - piston_mm


def largest_clearance_mm(bores_mm: Column, piston_mm: Number) -> Number:
    """Clearance in the largest bore of the skirt travel.

    Parameters
    ----------
    bores_mm : array
        Bore readings inside the skirt travel, both axes, along the last axis [mm].
    piston_mm : float or array
        Piston diameter [mm].

    Returns
    -------
    float or array
        Clearance on the diameter [mm].

    References
    ----------
    Common practice.
    """
    return clearance_mm(np.max(bores_mm, axis=-1), piston_mm)


def smallest_clearance_mm(bores_mm: Column, piston_mm: Number) -> Number:
    """Clearance in the smallest bore of the skirt travel.

    An oval piston leaves more room on the pin axis, so this one is on the safe side.

    Parameters
    ----------
    bores_mm : array
        Bore readings inside the skirt travel, both axes, along the last axis [mm].
    piston_mm : float or array
        Piston diameter [mm].

    Returns
    -------
    float or array
        Clearance on the diameter [mm].

    References
    ----------
    Common practice.
    """
    return clearance_mm(np.min(bores_mm, axis=-1), piston_mm)


def mean_clearance_mm(bores_mm: Column, piston_mm: Number) -> Number:
    """Clearance in the mean bore of the skirt travel.

    Parameters
    ----------
    bores_mm : array
        Bore readings inside the skirt travel, both axes, along the last axis [mm].
    piston_mm : float or array
        Piston diameter [mm].

    Returns
    -------
    float or array
        Clearance on the diameter [mm].

    References
    ----------
    Common practice.
    """
    return clearance_mm(np.mean(bores_mm, axis=-1), piston_mm)


def skirt_wear_mm(piston_new_mm: Number, piston_mm: Number) -> Number:
    """Wear of the skirt since new.

    Parameters
    ----------
    piston_new_mm : float or array
        Piston diameter when new [mm].
    piston_mm : float or array
        Piston diameter as measured [mm].

    Returns
    -------
    float or array
        Wear on the diameter [mm].

    References
    ----------
    Difference of two diameters.
    """
    return piston_new_mm - piston_mm


def clearance_share(clearance_mm: Number, bore_mm: Number) -> Number:
    """Clearance as a share of the bore.

    Parameters
    ----------
    clearance_mm : float or array
        Clearance on the diameter [mm].
    bore_mm : float or array
        Bore diameter [mm].

    Returns
    -------
    float or array
        Share [1].

    Raises
    ------
    OutOfBounds
        When the bore is not above zero.

    References
    ----------
    Common practice: fits of pistons are compared as a share of the bore.
    """
    insist_positive("bore_mm", bore_mm)
    return clearance_mm / bore_mm
