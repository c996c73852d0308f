"""What compressed air over the piston does to the crank."""

from typing import cast

import numpy as np

from ringland_service.core.errors import Contradiction
from ringland_service.core.formulas.elementary import (
    cosine_deg,
    direction_deg,
    insist,
    sine_deg,
    sqrt,
)
from ringland_service.core.formulas.geometry import piston_area_mm2
from ringland_service.core.numbers import Number

# kPa times mm² are mN, N times mm are mN·m.
MILLI = 1000.0


def piston_force_n(pressure_kpa: Number, bore_mm: Number) -> Number:
    """Force of the air on the piston, the crankcase at air pressure.

    Parameters
    ----------
    pressure_kpa : float or array
        Pressure in the cylinder, gauge [kPa].
    bore_mm : float or array
        Bore [mm].

    Returns
    -------
    float or array
        Force [N].

    References
    ----------
    Pressure times area.
    """
    return pressure_kpa * piston_area_mm2(bore_mm) / MILLI


def crank_torque_nm(
    force_n: Number, stroke_mm: Number, rod_mm: Number, angle_deg: Number
) -> Number:
    """Torque on the crank from a force along the cylinder, without friction.

    Parameters
    ----------
    force_n : float or array
        Force on the piston [N].
    stroke_mm, rod_mm : float or array
        Stroke, and rod from centre to centre [mm].
    angle_deg : float or array
        Crank angle from top dead centre [deg].

    Returns
    -------
    float or array
        Torque, positive away from top dead centre [N·m].

    Raises
    ------
    Contradiction
        When the rod is not longer than half the stroke.

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals, slider-crank:
    ``T = F (r sin t + r² sin t cos t / sqrt(l² - r² sin² t))``.
    """
    radius_mm = stroke_mm / 2
    _insist_rod_passes(radius_mm, rod_mm)
    aside_mm = radius_mm * sine_deg(angle_deg)
    upright_mm = sqrt(rod_mm * rod_mm - aside_mm * aside_mm)
    lever_mm = aside_mm * (1 + radius_mm * cosine_deg(angle_deg) / upright_mm)
    return force_n * lever_mm / MILLI


def peak_angle_deg(stroke_mm: Number, rod_mm: Number) -> Number:
    """Crank angle at which a force on the piston turns the crank hardest.

    Parameters
    ----------
    stroke_mm, rod_mm : float or array
        Stroke, and rod from centre to centre [mm].

    Returns
    -------
    float or array
        Angle from top dead centre, under 90 [deg].

    Raises
    ------
    Contradiction
        When the rod is not longer than half the stroke.

    References
    ----------
    `crank_torque_nm` differentiated and squared: with ``k = r / l`` and ``u = k² sin² t`` the
    largest torque lies at ``u³ - u² - u + k² = 0``. Of its three roots, given by the cosine of a
    third of an angle, one lies between 0 and k².
    """
    _insist_rod_passes(stroke_mm / 2, rod_mm)
    ratio = stroke_mm / 2 / rod_mm
    square = ratio * ratio
    third_deg = (np.degrees(np.arccos((11 - 27 * square) / 16)) - 360) / 3
    u = (1 + 4 * cosine_deg(cast(Number, third_deg))) / 3
    return direction_deg(sqrt(u), sqrt(square - u))


def _insist_rod_passes(radius_mm: Number, rod_mm: Number) -> None:
    insist(
        rod_mm > radius_mm,
        Contradiction,
        "rod_mm",
        "the crank cannot turn over with a rod that short",
        "a rod longer than half the stroke",
    )
