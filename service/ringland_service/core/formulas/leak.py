"""Leak-down: the share that a cylinder loses, and the hole behind it.

Air flows through the tester's restrictor into the cylinder and through the leak out of it, the
same mass through both. Both are taken as nozzles with one flow coefficient.
"""

from typing import cast

import numpy as np

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas.elementary import (
    insist,
    insist_positive,
    maximum,
    minimum,
    power,
    sqrt,
)
from ringland_service.core.numbers import Number

# Air, any text on gas dynamics.
GAMMA = 1.4
# Pressure after a nozzle over the one before it, at and under which the flow is choked.
CRITICAL_RATIO = (2.0 / (GAMMA + 1.0)) ** (GAMMA / (GAMMA - 1.0))  # 0.528282
CHOKED_DROP = 1.0 - CRITICAL_RATIO
# Newton's steps, kept between two bounds; about ten are taken.
MOST_STEPS = 80
LEAST_SLOPE = 1e-30
SETTLED = 4.0 * float(np.finfo(float).eps)


def leak_percent(supply_kpa: Number, cylinder_kpa: Number) -> Number:
    """Leak-down: share of the supply pressure that the cylinder does not hold.

    Parameters
    ----------
    supply_kpa, cylinder_kpa : float or array
        Pressure before and after the restrictor, gauge, of one zero [kPa].

    Returns
    -------
    float or array
        Leak [%].

    Raises
    ------
    OutOfBounds
        When the supply pressure is not above zero.

    References
    ----------
    Common practice: ``100 (P1 - P2) / P1``.
    """
    insist_positive("supply_kpa", supply_kpa)
    return 100 * (supply_kpa - cylinder_kpa) / supply_kpa


def hole_area_mm2(diameter_mm: Number) -> Number:
    """Area of a round hole.

    Parameters
    ----------
    diameter_mm : float or array
        Diameter [mm].

    Returns
    -------
    float or array
        Area [mm²].

    References
    ----------
    Plane geometry.
    """
    return np.pi / 4 * diameter_mm * diameter_mm


def hole_diameter_mm(area_mm2: Number) -> Number:
    """Diameter of the round hole of an area.

    Parameters
    ----------
    area_mm2 : float or array
        Area [mm²].

    Returns
    -------
    float or array
        Diameter [mm].

    References
    ----------
    Plane geometry.
    """
    return sqrt(4 * area_mm2 / np.pi)


def flow_function(drop: Number) -> Number:
    """Mass flow of a nozzle, less its area, the pressure before it and ``1 / sqrt(R T)``.

    Parameters
    ----------
    drop : float or array
        Drop of pressure over the absolute pressure before the nozzle, 0 to 1 [1].

    Returns
    -------
    float or array
        Flow function; constant once the flow is choked, from a drop of 0.471718 on [1].

    Raises
    ------
    OutOfBounds
        When the drop is below 0 or above 1.

    References
    ----------
    Isentropic flow of a perfect gas, any text on gas dynamics:
    ``sqrt(2 g / (g - 1) (r^(2/g) - r^((g+1)/g)))`` with ``r = 1 - drop``, r not below
    ``(2 / (g + 1))^(g / (g - 1)) = 0.528282``, ``g = 1.4``.
    """
    insist(
        (drop >= 0) & (drop <= 1),
        OutOfBounds,
        "drop",
        "air flows from the higher pressure to the lower one",
        "a drop between 0 and the pressure before the nozzle",
    )
    return sqrt(_flow_squared(drop))


def nozzle_ratio(after_kpa: Number, before_kpa: Number) -> Number:
    """Pressure ratio that sets the flow of a nozzle.

    Parameters
    ----------
    after_kpa, before_kpa : float or array
        Pressures after and before the nozzle, absolute [kPa].

    Returns
    -------
    float or array
        Ratio, not below the critical one, at which the flow is choked [1].

    Raises
    ------
    OutOfBounds
        When the pressure before the nozzle is not above zero.

    References
    ----------
    As for `flow_function`.
    """
    insist_positive("before_kpa", before_kpa)
    return maximum(after_kpa / before_kpa, CRITICAL_RATIO)


def leak_area_mm2(
    supply_kpa: Number, cylinder_kpa: Number, restrictor_mm: Number, air_kpa: Number
) -> Number:
    """Area of the hole that leaks as much as the restrictor lets in.

    Parameters
    ----------
    supply_kpa, cylinder_kpa : float or array
        Pressure before and after the restrictor, gauge [kPa].
    restrictor_mm : float or array
        Bore of the restrictor [mm].
    air_kpa : float or array
        Air pressure on the spot, absolute [kPa].

    Returns
    -------
    float or array
        Leak area, flow coefficients of hole and restrictor taken as equal [mm²].

    Raises
    ------
    OutOfBounds
        When the cylinder holds no pressure: no hole is that large.
    OutOfBounds
        When the cylinder stands above its supply.

    References
    ----------
    Mass flow through restrictor and leak alike: ``A_leak = A_r a1 f(a2 / a1) / (a2 f(p / a2))``
    with absolute pressures a1 before and a2 after the restrictor, f the `flow_function`.
    """
    insist_positive("cylinder_kpa", cylinder_kpa)
    before, after = supply_kpa + air_kpa, cylinder_kpa + air_kpa
    let_in = before * flow_function((supply_kpa - cylinder_kpa) / before)
    let_out = after * flow_function(cylinder_kpa / after)
    return hole_area_mm2(restrictor_mm) * let_in / let_out


def leak_percent_on_tester(
    leak_mm2: Number, restrictor_mm: Number, supply_kpa: Number, air_kpa: Number
) -> Number:
    """Leak-down that a hole reads on a tester.

    Parameters
    ----------
    leak_mm2 : float or array
        Leak area [mm²].
    restrictor_mm : float or array
        Bore of the tester's restrictor [mm].
    supply_kpa : float or array
        Supply pressure of the tester, gauge [kPa].
    air_kpa : float or array
        Air pressure on the spot, absolute [kPa].

    Returns
    -------
    float or array
        Leak [%].

    Raises
    ------
    OutOfBounds
        When restrictor, supply or air pressure is not above zero.
    Contradiction
        When the leak area is below zero.

    References
    ----------
    `leak_area_mm2` solved for the pressure in the cylinder, by Newton's method between bounds. The
    squares of both flows are compared, as they are smooth where the flow itself starts steeply.
    """
    for name, value in (("restrictor_mm", restrictor_mm), ("supply_kpa", supply_kpa)):
        insist_positive(name, value)
    insist_positive("air_kpa", air_kpa)
    insist(
        leak_mm2 >= 0,
        Contradiction,
        "leak_mm2",
        "no hole has an area below zero",
        "a leak area of zero or more",
    )
    before = supply_kpa + air_kpa
    drop = _settled_drop(leak_mm2 / hole_area_mm2(restrictor_mm), air_kpa / before)
    return 100 * drop * before / supply_kpa


def _flow_squared(drop: Number) -> Number:
    """Return the square of the flow function; without cancellation for a small drop."""
    logarithm = np.log1p(-minimum(drop, CHOKED_DROP))
    squared = np.exp(2 / GAMMA * logarithm) * -np.expm1((GAMMA - 1) / GAMMA * logarithm)
    return cast(Number, 2 * GAMMA / (GAMMA - 1) * squared)


def _flow_squared_slope(drop: Number) -> Number:
    """Return how the square of the flow function grows with the drop; nothing once choked."""
    ratio = 1 - minimum(drop, CHOKED_DROP)
    grows = -10 * power(ratio, 3 / 7) + 12 * power(ratio, 5 / 7)  # exponents of gamma 1.4
    return cast(Number, np.where(drop < CHOKED_DROP, grows, 0.0))


def _settled_drop(areas: Number, outside: Number) -> Number:
    """Return the drop over the restrictor at which as much leaks out as comes in.

    ``areas`` is the leak over the restrictor, ``outside`` the air pressure over the supply, both
    absolute.
    """
    low, high = np.zeros_like(outside), 1 - outside
    drop, settled = high / 2, np.zeros_like(outside, dtype=bool)
    for _ in range(MOST_STEPS):
        excess, slope = _excess(drop, areas, outside)
        low, high = np.where(excess < 0, drop, low), np.where(excess < 0, high, drop)
        # Without a leak to speak of nothing changes with the drop while the restrictor is choked.
        step = drop - excess / np.where(slope > LEAST_SLOPE, slope, 1.0)
        # A step onto a bound stays: there the root is, but for rounding.
        step = np.where((step >= low) & (step <= high), step, (low + high) / 2)
        settled = settled | (np.abs(step - drop) <= SETTLED * drop)
        drop = np.where(settled, drop, step)
        if np.all(settled):
            break
    return cast(Number, np.where(areas > 0, drop, 0.0)[()])


def _excess(drop: Number, areas: Number, outside: Number) -> tuple[Number, Number]:
    """Return inflow less outflow, both squared, and how that grows with the drop."""
    kept = 1 - drop
    leaves = 1 - outside / kept
    flow, ratio = _flow_squared(leaves), areas * areas
    # The outflow is kept² f²(leaves); leaves grows with kept by outside / kept².
    change = 2 * kept * flow + outside * _flow_squared_slope(leaves)
    excess = _flow_squared(drop) - ratio * kept * kept * flow
    return excess, _flow_squared_slope(drop) + ratio * change
