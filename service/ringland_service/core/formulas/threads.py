"""Metric threads: diameters of the profile, stress area, advance of a turn."""

import math

from ringland_service.core.numbers import Number

# Height of the sharp 60° profile as a share of the pitch: ISO 68-1.
PROFILE_HEIGHT = math.sqrt(3.0) / 2.0


def thread_pitch_dia_mm(thread_dia_mm: Number, pitch_mm: Number) -> Number:
    """Pitch diameter d2 of a metric thread.

    Parameters
    ----------
    thread_dia_mm, pitch_mm : float or array
        Nominal diameter and pitch [mm].

    Returns
    -------
    float or array
        d - 3/4 of the profile's height [mm].

    References
    ----------
    ISO 724.
    """
    return thread_dia_mm - 0.75 * PROFILE_HEIGHT * pitch_mm


def thread_minor_dia_mm(thread_dia_mm: Number, pitch_mm: Number) -> Number:
    """Minor diameter d3 of a metric bolt, at the root of its thread.

    Parameters
    ----------
    thread_dia_mm, pitch_mm : float or array
        Nominal diameter and pitch [mm].

    Returns
    -------
    float or array
        d - 17/12 of the profile's height [mm].

    References
    ----------
    ISO 724, ISO 898-1: d3 = d1 - H/6, d1 = d - 5/4·H.
    """
    return thread_dia_mm - 17.0 / 12.0 * PROFILE_HEIGHT * pitch_mm


def stress_area_mm2(pitch_dia_mm: Number, minor_dia_mm: Number) -> Number:
    """Stress area of a thread.

    Parameters
    ----------
    pitch_dia_mm, minor_dia_mm : float or array
        d2 and d3 [mm].

    Returns
    -------
    float or array
        Area [mm2].

    References
    ----------
    ISO 898-1: π/4·((d2 + d3)/2)².
    """
    mean_mm = (pitch_dia_mm + minor_dia_mm) / 2.0
    return math.pi / 4.0 * mean_mm * mean_mm


def advance_mm(pitch_mm: Number, turn_deg: Number) -> Number:
    """How far a fastener goes in over a turn.

    Parameters
    ----------
    pitch_mm : float or array
        Pitch [mm].
    turn_deg : float or array
        Turn [deg].

    Returns
    -------
    float or array
        Advance [mm].

    References
    ----------
    Geometry of the helix, one start.
    """
    return pitch_mm * turn_deg / 360.0
