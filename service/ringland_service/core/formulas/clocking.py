"""Angles and arcs round a bore: gaps of rings, pins and port windows."""

import math
from typing import cast

import numpy as np

from ringland_service.core.numbers import Number


def separation_deg(one_deg: Number, other_deg: Number) -> Number:
    """Smallest angle between two places round a bore.

    Parameters
    ----------
    one_deg, other_deg : float or array
        Angles from one zero in one sense; whole turns leave them unchanged [deg].

    Returns
    -------
    float or array
        Angle, 0 to 180 [deg].

    References
    ----------
    Plane geometry.
    """
    apart = np.mod(one_deg - other_deg, 360.0)
    return cast(Number, np.minimum(apart, 360.0 - apart))


def arc_mm(bore_mm: Number, angle_deg: Number) -> Number:
    """Length of an arc on the bore's wall.

    Parameters
    ----------
    bore_mm : float or array
        Bore diameter [mm].
    angle_deg : float or array
        Angle at the bore's axis [deg].

    Returns
    -------
    float or array
        π·D·angle/360 [mm].

    References
    ----------
    Plane geometry.
    """
    return math.pi * bore_mm * angle_deg / 360.0


def to_axis_deg(angle_deg: Number, thrust_axis_angle_deg: Number) -> Number:
    """Smallest angle to the thrust axis or the pin axis, either end.

    Parameters
    ----------
    angle_deg : float or array
        Place round the bore [deg].
    thrust_axis_angle_deg : float or array
        One end of the thrust axis; the pin axis lies at 90° to it [deg].

    Returns
    -------
    float or array
        Angle, 0 to 45 [deg].

    References
    ----------
    Plane geometry: the two axes cut the circle in four.
    """
    past = np.mod(angle_deg - thrust_axis_angle_deg, 90.0)
    return cast(Number, np.minimum(past, 90.0 - past))


def ring_end_margin_mm(bore_mm: Number, to_edge_deg: Number, half_width_mm: Number) -> Number:
    """Wall between a ring's end and the edge of the port window nearest to its pin.

    Parameters
    ----------
    bore_mm : float or array
        Bore diameter [mm].
    to_edge_deg : float or array
        From the pin to the edge [deg].
    half_width_mm : float or array
        How far the ring ends reach to either side of the pin [mm].

    Returns
    -------
    float or array
        Margin, negative where the end lies in the window [mm].

    References
    ----------
    Plane geometry.
    """
    return arc_mm(bore_mm, to_edge_deg) - half_width_mm
