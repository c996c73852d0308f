"""Intervals of a bore survey cover the true values: by simulation (seeded).

The bench's figures: common practice, no source (table of bench uncertainty).
"""

import math

import numpy as np
import pytest

from ringland_service.core.calculations.cylinder.bore_survey import CALCULATION as SURVEY
from ringland_service.core.metrology.extremes import interval, push
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.engine.intervals import candidates, contributions

AXES = ("pin_axis_mm", "thrust_axis_mm")
# Of each reading's own, and of the gauge, which all share [mm].
OWN, SHARED, TRIALS = 0.001, 0.002, 6000
FLAT, TAPER, SPOT = "round", "tapered", "one high spot"


def true_bore(shape: str, depths: int) -> dict[str, np.ndarray]:
    """Return the true diameters of both axes over 68 mm [mm]."""
    pin, thrust = np.zeros(depths), np.zeros(depths)
    if shape == TAPER:
        pin, thrust = np.linspace(0.012, 0.0, depths), np.linspace(0.012, 0.0, depths)
    if shape == SPOT:
        pin[depths // 2] = 0.006
    return dict(zip(AXES, (68.0 + pin, 68.0 + thrust), strict=True))


def components(depths: int) -> list[Component]:
    places = [(axis, k) for axis in AXES for k in range(depths)]
    own = [Component(f"{place}", OWN, (Effect(place, 68.0),)) for place in places]
    return [*own, Component("gauge", SHARED, tuple(Effect(place, 68.0) for place in places))]


def true_results(bores: dict[str, np.ndarray]) -> dict[str, float]:
    pin, thrust = bores.values()
    everything = np.concatenate([pin, thrust])
    return {
        "largest_mm": everything.max(),
        "smallest_mm": everything.min(),
        "worn_zone_mm": ((pin + thrust) / 2.0).max(),
        "out_of_round_mm": np.abs(pin - thrust).max(),
        "taper_pin_axis_mm": np.ptp(pin),
        "taper_thrust_axis_mm": np.ptp(thrust),
    }


# u of the first order, by hand.
FIRST_ORDER = {
    "largest_mm": math.hypot(OWN, SHARED),
    "smallest_mm": math.hypot(OWN, SHARED),
    "worn_zone_mm": math.hypot(OWN / math.sqrt(2.0), SHARED),
    "out_of_round_mm": OWN * math.sqrt(2.0),
    "taper_pin_axis_mm": OWN * math.sqrt(2.0),
    "taper_thrust_axis_mm": OWN * math.sqrt(2.0),
}
# Of the taper of the pin axis: median width of the interval [µm], and how often ± U alone covers.
MEDIANS = {
    (FLAT, 5): (5.02, 0.737),
    (FLAT, 10): (5.79, 0.405),
    (FLAT, 20): (6.45, 0.097),
    (TAPER, 5): (6.97, 0.956),
    (TAPER, 10): (7.56, 0.969),
    (TAPER, 20): (8.07, 0.960),
    (SPOT, 5): (6.97, 0.933),
    (SPOT, 10): (7.56, 0.870),
    (SPOT, 20): (8.07, 0.809),
}


@pytest.mark.parametrize("depths", [5, 10, 20])
@pytest.mark.parametrize("shape", [FLAT, TAPER, SPOT])
def test_the_true_value_is_covered(shape: str, depths: int) -> None:
    """6,000 bores, each read once: at least 95 % for every extreme of the survey.

    Each reading errs by 1 µm of its own, and all of them by 2 µm of the gauge. ± U of a taper is
    5.66 µm wide, and covers that of a round bore read at twenty depths in 10 %; the interval is
    6.45 µm wide there (median), and never over 8.1 µm.
    """
    bores = true_bore(shape, depths)
    chance = np.random.default_rng(20260101 + depths)
    gauge = SHARED * chance.standard_normal(TRIALS)
    nominal = {axis: tuple(float(v) for v in bores[axis]) for axis in AXES}
    read = {
        axis: tuple(v + gauge + OWN * chance.standard_normal(TRIALS) for v in bores[axis])
        for axis in AXES
    }
    where = tuple(10.0 + 4.0 * k for k in range(depths))
    drawn = candidates(SURVEY, SURVEY.inputs(depth_mm=where, **read))
    effects = contributions(SURVEY, SURVEY.inputs(depth_mm=where, **nominal), components(depths))
    for name, true in true_results(bores).items():
        (of,), (moved,) = drawn[name], effects[name]
        pushed = push(of, moved)
        assert pushed is not None
        value, u = of.side * of.values.max(axis=-1), FIRST_ORDER[name]
        told = interval(value, np.full(TRIALS, u), [pushed], of.floor)
        low = np.where(told.given, told.low, value - 2.0 * u)
        high = np.where(told.given, told.high, value + 2.0 * u)
        covered = np.mean((low <= true + 1e-12) & (true <= high + 1e-12))
        assert covered >= 0.95, (name, covered)
        if name == "taper_pin_axis_mm":
            width, by_u = MEDIANS[shape, depths]
            assert 1000.0 * np.median(high - low) == pytest.approx(width, abs=0.05)
            assert np.mean(np.abs(value - true) <= 2.0 * u) == pytest.approx(by_u, abs=0.01)
