"""Uncertainty where readings tie: a kink, at which the slopes up and down cancel or halve.

The figures of one gauge: common practice, no source (table of bench uncertainty, 6 digits). What
a difference or an extreme of readings carries: JCGM 100:2008, 5.1 (from memory).
"""

import dataclasses
import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Calculation
from ringland_service.core.engines.survey import Survey
from ringland_service.core.metrology.instruments import Instrument
from ringland_service.core.metrology.propagation import Component, Effect, propagate
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.request import Measuring, Path, Request, Stated
from ringland_service.engine.response import Response
from ringland_service.engine.rows import Rows
from ringland_service.engine.scalar import answer

SIX_DIGITS = 5e-6
# Three readings each, one setting: out-of-round or taper U = 0.00378594 mm.
GAUGE = Instrument(
    "gauge",
    max_permissible_error=0.005,
    zero_setting_error=0.002,
    repeatability=0.002,
    resolution=0.001,
    short_range_error=0.0015,
)
OUT_OF_ROUND = 0.00378594


def survey(
    pin: tuple[float, ...], thrust: tuple[float, ...], uncertainty: Stated, **more: Any
) -> Response:
    calculation = BY_NAME["bore-survey"]
    assert isinstance(calculation, Calculation)
    depths = tuple(10.0 + 30.0 * place for place in range(len(pin)))
    inputs = calculation.inputs(depth_mm=depths, pin_axis_mm=pin, thrust_axis_mm=thrust, **more)
    uncertainties: dict[Path, Stated] = {
        ("pin_axis_mm",): uncertainty,
        ("thrust_axis_mm",): uncertainty,
    }
    measuring = Measuring(instruments={"gauge": GAUGE}, readings_each=3)
    return answer(
        calculation, Request(inputs=inputs, uncertainties=uncertainties, measuring=measuring)
    )


BY_GAUGE = Stated(instrument="gauge")
# Exactly round and straight; round but for one thousandth; two depths as far out of round;
# alike but for the last digit of a conversion; alike within less than a step of the derivative.
BORES = [
    ((68.0, 68.0), (68.0, 68.0)),
    ((68.0, 68.0, 68.0, 68.0), (68.0, 68.0, 68.0, 68.0)),
    ((68.0, 68.0), (68.001, 68.0)),
    ((68.0, 68.01), (68.004, 68.014)),
    ((76.2, 3 * 25.4), (3 * 25.4, 76.2)),
    ((68.0, 68.0), (68.0001, 68.00005)),
]


@pytest.mark.parametrize(("pin", "thrust"), BORES)
def test_a_round_bore_is_as_uncertain_as_a_nearly_round_one(
    pin: tuple[float, ...], thrust: tuple[float, ...]
) -> None:
    found = survey(pin, thrust, BY_GAUGE)
    expected = pytest.approx(OUT_OF_ROUND, rel=SIX_DIGITS)
    assert 2.0 * found.u["out_of_round_mm"] == expected
    assert 2.0 * found.u["taper_pin_axis_mm"] == expected
    assert 2.0 * found.u["taper_thrust_axis_mm"] == expected
    # What the gauge shares leaves no difference: the largest alone carries it.
    assert found.u["largest_mm"] > 1.5 * found.u["out_of_round_mm"]


def test_away_from_20_degrees_too() -> None:
    found = survey((68.0, 68.0), (68.0, 68.0), BY_GAUGE, bore_temperature_c=35.0, bore_kind="iron")
    # The readings are brought to 20 °C by 1 + α·15 K, 1.7e-4 more.
    assert 2.0 * found.u["out_of_round_mm"] == pytest.approx(OUT_OF_ROUND, rel=2e-4)


def test_the_verdict_on_a_round_bore_knows_its_uncertainty() -> None:
    (verdict,) = [
        v
        for v in survey((68.0, 68.0), (68.0, 68.0), BY_GAUGE).verdicts
        if v.check.value == "out_of_round_mm"
    ]
    assert verdict.rule == "guard_2u"
    warned = survey((68.0, 68.0), (68.0, 68.0), BY_GAUGE).warnings
    fields = {w.field for w in warned if w.code == "no_uncertainty_stated"}
    assert "out_of_round" not in fields


def test_each_reading_with_an_uncertainty_of_its_own() -> None:
    # By hand: U·√2 of a difference, U of the largest and the smallest.
    found = survey((68.0, 68.0), (68.0, 68.0), Stated(uncertainty=0.004))
    assert 2.0 * found.u["out_of_round_mm"] == pytest.approx(0.004 * math.sqrt(2.0), rel=1e-6)
    assert 2.0 * found.u["largest_mm"] == pytest.approx(0.004, rel=1e-6)
    assert 2.0 * found.u["smallest_mm"] == pytest.approx(0.004, rel=1e-6)
    # The mean of four is smooth: half of one.
    assert 2.0 * found.u["mean_mm"] == pytest.approx(0.002, rel=1e-6)


@dataclasses.dataclass(frozen=True)
class Values:
    """A few inputs without names."""

    x: tuple[Any, ...]


@dataclasses.dataclass(frozen=True)
class Results:
    """A difference without sign, the largest, and what is smooth."""

    apart: Any
    largest: Any
    product: Any
    turning: Any


def compute(values: Values) -> Results:
    a, b = values.x
    return Results(
        apart=abs(a - b),
        largest=np.maximum(a, b),
        product=a * b,
        turning=1.0 + (a - 2.0) ** 2,
    )


def own(place: int, u: Any) -> Component:
    return Component(f"x{place}", u, (Effect(("x", place), 2.0),))


SHARED = Component("setting", 0.5, (Effect(("x", 0), 2.0), Effect(("x", 1), 2.0)))


def test_what_readings_share_does_not_part_them() -> None:
    found = propagate(compute, Values((2.0, 2.0)), [SHARED])
    assert found["largest"] == pytest.approx(0.5, rel=1e-7)
    assert "apart" not in found
    with_own = propagate(compute, Values((2.0, 2.0)), [SHARED, own(0, 0.3), own(1, 0.4)])
    assert with_own["apart"] == pytest.approx(0.5, rel=1e-6)
    # Of two that tie, the more uncertain one counts.
    assert with_own["largest"] == pytest.approx(math.hypot(0.5, 0.4), rel=1e-6)


def test_a_smooth_turn_is_no_kink() -> None:
    """(a − 2)² has no slope at 2, and no uncertainty of the first order: none is made up."""
    found = propagate(compute, Values((2.0, 3.0)), [own(0, 0.1)])
    assert found.get("turning", 0.0) < 1e-12
    assert found["product"] == pytest.approx(0.3, rel=1e-9)


def test_a_column_gives_what_its_rows_give() -> None:
    a, b = np.array([2.0, 2.0, 1.0, 2.0]), np.array([2.0, 2.5, 2.0, 2.0 + 4e-16])
    u = np.array([0.1, 0.2, 0.3, 0.4])
    column = propagate(compute, Values((a, b)), [own(0, u), own(1, 2.0 * u)])
    for row in range(a.size):
        values = Values((float(a[row]), float(b[row])))
        single = propagate(compute, values, [own(0, u[row]), own(1, 2.0 * u[row])])
        for name in ("apart", "largest", "product"):
            assert column[name][row] == pytest.approx(single[name], rel=1e-6), name
    assert column["apart"] == pytest.approx(u * math.sqrt(5.0), rel=1e-6)


@given(
    st.lists(st.floats(1e-3, 0.1), min_size=2, max_size=12),
    st.integers(0, 5),
)
def test_any_tie_is_as_uncertain_as_its_readings_just_apart(us: list[float], at: int) -> None:
    """max − min of n equal readings: of two of them, so within √2 of the least and the largest."""

    def spread(values: Values) -> Any:
        return Results(max(values.x) - min(values.x), max(values.x), 0.0, 0.0)

    components = [own(place, u) for place, u in enumerate(us)]
    found = propagate(spread, Values((float(at),) * len(us)), components)
    low, *_, high = sorted(us)
    assert math.sqrt(2.0) * low * (1 - 1e-6) <= found["apart"] <= math.sqrt(2.0) * high * (1 + 1e-6)
    assert low * (1 - 1e-6) <= found["largest"] <= high * (1 + 1e-6)


def test_rows_at_a_kink_through_the_engine() -> None:
    """Filing is wanted less measured, and never under none: at the kink by hand U of the gap.

    A factor that is told is filed to; the usual one leaves a gap inside the usual range.
    """
    calculation = BY_NAME["ring-gap"]
    assert isinstance(calculation, Calculation)
    wanted = answer(calculation, Request(inputs=calculation.inputs(bore_mm=68.0)))
    gap = float(wanted.outputs.top_wanted_mm)
    gaps = [gap, gap - 0.1, gap + 0.1]
    rows = Rows(
        count=3,
        columns={"top_gap_mm": gaps},
        shared={"bore_mm": 68.0, "top_factor": 0.004},
        request=Request(inputs=None),
        uncertainty={"top_gap_mm": [0.02] * 3},
    )
    found = answer_rows(calculation, rows)
    assert not found.problems
    at, below, above = found.u["file_top_mm"]
    assert 2.0 * at == pytest.approx(0.02, rel=1e-6)
    assert 2.0 * below == pytest.approx(0.02, rel=1e-6)
    assert above is None
    for row, value in enumerate(gaps):
        inputs = calculation.inputs(bore_mm=68.0, top_factor=0.004, top_gap_mm=value)
        uncertainties: dict[Path, Stated] = {("top_gap_mm",): Stated(uncertainty=0.02)}
        single = answer(calculation, Request(inputs=inputs, uncertainties=uncertainties))
        u = found.u["file_top_mm"][row]
        assert single.u.get("file_top_mm") == (None if u is None else pytest.approx(u, rel=1e-9))


def test_a_depth_at_the_end_of_the_skirt_travel_stays_in_it() -> None:
    """With its uncertainty stated, and that of the end: moved against each other, both are one.

    By hand: the mean of 68.01 and 68.00 less 67.95, and √(2·0.002²)/2 of it.
    """
    fit = BY_NAME["piston-clearance"]
    assert isinstance(fit, Calculation)
    read = Survey(
        depth_mm=(8.0, 30.0, 60.0),
        pin_axis_mm=(68.03, 68.01, 68.0),
        thrust_axis_mm=(68.05, None, None),
    )
    inputs = fit.inputs(
        bore_survey=read, piston_size_mm=67.95, skirt_from_mm=30.0, skirt_to_mm=60.0
    )
    uncertainties: dict[Path, Stated] = {
        ("bore_survey", "depth_mm"): Stated(uncertainty=0.5),
        ("bore_survey", "pin_axis_mm"): Stated(uncertainty=0.004),
        ("skirt_from_mm",): Stated(uncertainty=0.5),
        ("skirt_to_mm",): Stated(uncertainty=0.5),
    }
    found = answer(fit, Request(inputs=inputs, uncertainties=uncertainties))
    assert found.outputs.clearance_mean_mm == pytest.approx(0.055, abs=1e-9)
    assert found.u["clearance_mean_mm"] == pytest.approx(0.002 / math.sqrt(2.0), rel=1e-6)
