"""The intervals of results that rest on tied readings, through the engine.

The bench's figures: common practice, no source (table of bench uncertainty).
"""

import math
from typing import Any

import numpy as np
import pytest
from reference_cases import Case, cases

from ringland_service.core.calculations import BY_NAME, EVERY
from ringland_service.core.declare import Calculation, Composite, declared
from ringland_service.core.declare.fields import NumberField, QuantityField, ResultField
from ringland_service.core.engines.survey import Survey
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.composite import CompositeResponse, answer_composite
from ringland_service.engine.intervals import candidates, own_pushes
from ringland_service.engine.request import Path, Request, Stated, fields_given, places
from ringland_service.engine.response import Response
from ringland_service.engine.rows import Rows
from ringland_service.engine.scalar import answer


def calculation(name: str) -> Calculation:
    found = BY_NAME[name]
    assert isinstance(found, Calculation)
    return found


SURVEY = calculation("bore-survey")
AXES = ("pin_axis_mm", "thrust_axis_mm")
WITH_EXTREMES = [c for c in EVERY if isinstance(c, Calculation) and c.extremes is not None]


def cases_with_extremes() -> list[Case]:
    names = {c.name for c in WITH_EXTREMES}
    return [case for case in cases() if case.calculation in names and not case.refused]


@pytest.mark.parametrize("case", cases_with_extremes(), ids=str)
def test_each_extreme_is_that_of_its_candidates(case: Case) -> None:
    of, inputs = case.declaration, case.request().inputs
    assert isinstance(of, Calculation)
    outputs = of.compute(inputs)
    for name, each in candidates(of, inputs).items():
        values = getattr(outputs, name)
        for value, one in zip(
            values if isinstance(values, tuple) else (values,), each, strict=True
        ):
            among = np.ones(one.values.shape, bool) if one.among is None else one.among
            if one.values.size:
                assert one.side * one.values[among].max() == pytest.approx(value, rel=1e-12), name


def every_reading(inputs: Any) -> list[Component]:
    """Return a component on each number that is given, and one on all of them."""
    effects = [
        Effect(place, max(abs(float(value)), 1.0))
        for path, field, given in fields_given(inputs)
        if isinstance(field, (QuantityField, NumberField))
        for place, value in places(path, given)
    ]
    each = [Component(str(effect.path), 1e-4 * effect.scale, (effect,)) for effect in effects]
    return [*each, Component("all", 1e-4, tuple(effects))]


@pytest.mark.parametrize("case", cases_with_extremes(), ids=str)
def test_any_input_may_be_uncertain(case: Case) -> None:
    of, inputs = case.declaration, case.request().inputs
    assert isinstance(of, Calculation)
    found = own_pushes(of, inputs, of.compute(inputs), every_reading(inputs))
    for by_source in found.values():
        for pushed in by_source.values():
            assert np.all(np.isfinite(pushed.shift))
            assert np.all(pushed.relief >= 0.0)


def test_every_extreme_declares_its_candidates() -> None:
    """In some case of its own, or else it is not shown to."""
    found: dict[str, set[str]] = {}
    for case in cases_with_extremes():
        of = case.declaration
        assert isinstance(of, Calculation)
        names = set(candidates(of, case.request().inputs))
        found[of.name] = found.get(of.name, set()) | names
    for of in EVERY:
        if not isinstance(of, Calculation):
            continue
        fields = declared(of.outputs).items()
        marked = {n for n, f in fields if isinstance(f, ResultField) and f.extreme}
        assert marked <= found.get(of.name, set()), of.name


DEPTHS = (10.0, 40.0, 70.0)
ROUND: dict[str, Any] = {
    "depth_mm": DEPTHS,
    "pin_axis_mm": (68.004, 68.003, 68.002),
    "thrust_axis_mm": (68.003, 68.004, 68.002),
}


def survey(limits: dict[str, Limit], u: float = 0.002, **more: Any) -> Response:
    uncertainties: dict[Path, Stated] = {(axis,): Stated(uncertainty=2.0 * u) for axis in AXES}
    inputs = SURVEY.inputs(**ROUND)
    return answer(
        SURVEY, Request(inputs=inputs, uncertainties=uncertainties, limits=limits, **more)
    )


def judged(high: float, **more: Any) -> Any:
    found = survey({"taper_pin_axis": Limit(None, high)}, **more)
    (verdict,) = [v for v in found.verdicts if v.check.name == "taper_pin_axis"]
    return verdict


def test_a_verdict_is_that_of_the_whole_interval() -> None:
    """R = 0.002, u = 0.002 each: by hand from none to 0.002 + 1.96 · √2 · 0.002 = 0.00754."""
    inside, across = judged(0.0076), judged(0.0075)
    assert (inside.word, across.word) == ("pass", "too_close_to_call")
    for verdict in (inside, across):
        assert verdict.interval.low == 0.0
        assert verdict.interval.high == pytest.approx(0.0075437, abs=1e-7)
        assert verdict.judged.probability is None
        assert verdict.judged.needed is None
        assert "too high" in verdict.bias
        assert "95 % interval" in verdict.bias
    outside = judged(0.001, u=0.0001)
    assert outside.word == "fail"
    # The guard of U = 2u on the value, 0.0076 − 0.002 < 2 · √2 · 0.002, would not pass it.
    assert "uncertainty" in inside.bias


def test_the_value_alone_decides_where_that_is_asked_for() -> None:
    verdict = judged(0.0025, rule="simple")
    assert (verdict.word, verdict.interval, verdict.bias) == ("pass", None, "")


def test_first_order_uncertainty_stays() -> None:
    found = survey({})
    assert found.u["taper_pin_axis_mm"] == pytest.approx(0.002 * math.sqrt(2.0), rel=1e-6)
    assert {
        "largest_mm",
        "smallest_mm",
        "worn_zone_mm",
        "out_of_round_mm",
    } <= found.intervals.keys()
    assert "mean_mm" not in found.intervals
    told = {w.field for w in found.warnings if w.code == "readings_within_uncertainty"}
    assert {"largest", "smallest", "out_of_round", "taper_pin_axis"} <= told


def test_clear_readings_have_no_interval() -> None:
    """Each reading 0.001 mm from the next on its axis, U of a difference 0.0003 mm."""
    found = survey({}, u=0.0001)
    assert "taper_pin_axis_mm" not in found.intervals
    (verdict,) = [v for v in found.verdicts if v.check.name == "taper_pin_axis"]
    assert (verdict.interval, verdict.rule) == (None, "guard_2u")
    assert verdict.judged.probability is not None


FIT = calculation("piston-clearance")


def test_rows_have_the_intervals_that_they_have_alone() -> None:
    """A survey that rows share, pistons and skirt travel of their own."""
    section = Survey(**ROUND)
    pistons, ends = [67.95, 67.96, 67.97, 67.96], [85.0, 50.0, 85.0, 85.0]
    uncertainties: dict[Path, Stated] = {
        ("bore_survey", axis): Stated(uncertainty=0.004) for axis in AXES
    }
    rows = Rows(
        count=4,
        columns={"piston_size_mm": pistons, "skirt_to_mm": ends},
        shared={"bore_survey": section, "cycle": "four_stroke"},
        request=Request(inputs=None, uncertainties=uncertainties, limits={}),
        uncertainty={"piston_size_mm": [0.003, 0.003, 0.004, 0.0001]},
    )
    found = answer_rows(FIT, rows)
    assert not found.problems
    for row, (piston, end) in enumerate(zip(pistons, ends, strict=True)):
        stated = rows.uncertainty["piston_size_mm"][row]
        inputs = FIT.inputs(
            piston_size_mm=piston, skirt_to_mm=end, bore_survey=section, cycle="four_stroke"
        )
        told = uncertainties | {("piston_size_mm",): Stated(uncertainty=stated)}
        alone = answer(FIT, Request(inputs=inputs, uncertainties=told))
        assert alone.intervals.keys() == {n for n, c in found.intervals.items() if c[row]}
        for name, one in alone.intervals.items():
            assert found.intervals[name][row] == pytest.approx((one.low, one.high), rel=1e-11)
        (verdict,) = [v for v in alone.verdicts if v.check.name == "piston_clearance_max"]
        column = found.verdicts["piston_clearance_max"]
        assert column.verdict[row] == verdict.word
        assert column.probability[row] is None
        assert verdict.interval is not None
        assert column.interval[row] == pytest.approx(
            (verdict.interval.low, verdict.interval.high), rel=1e-11
        )


CARD = BY_NAME["cylinder-decision"]


def card(pin: tuple[float, ...]) -> CompositeResponse:
    """Return the decision on a bore that both axes read alike, to be honed by 0.010 mm."""
    assert isinstance(CARD, Composite)
    inputs = CARD.inputs(
        bore_kind="iron_sleeve_in_aluminium",
        bore_survey=Survey(depth_mm=DEPTHS, pin_axis_mm=pin, thrust_axis_mm=pin),
        hone_removal_mm=0.01,
    )
    uncertainties: dict[Path, Stated] = {
        ("bore_survey", axis): Stated(uncertainty=0.004) for axis in AXES
    }
    limits = {"bore_largest": Limit(None, 68.2)}
    return answer_composite(
        CARD, Request(inputs=inputs, uncertainties=uncertainties, limits=limits)
    )


def test_what_noise_pushes_in_a_part_it_pushes_in_those_that_rest_on_it() -> None:
    """The bore after the hone is the largest bore and 0.010 mm, which has no uncertainty here."""
    parts = card((68.054, 68.053, 68.053)).parts
    read, after = parts["bore_survey"], parts["hone_and_re_ring"]
    one, two = read.intervals["largest_mm"], after.intervals["bore_after_hone_mm"]
    assert two.low == pytest.approx(one.low + 0.01, abs=1e-8)
    assert two.high == pytest.approx(one.high + 0.01, abs=1e-8)
    # By hand: six readings tie, q = 2.6347 · 0.002.
    assert read.outputs.largest_mm - one.low == pytest.approx(2.6347 * 0.002, rel=1e-4)
    by_check = {v.check.name: v for v in after.verdicts}
    assert by_check["re_ring_bore"].interval == two
    assert by_check["re_ring_bore"].judged.probability is None
    # A figure of the survey that is judged as it stands is judged from the survey's interval.
    form = by_check["re_ring_out_of_round"].interval
    assert form is not None
    assert form.low == read.intervals["out_of_round_mm"].low == 0.0
    assert form.high == pytest.approx(read.intervals["out_of_round_mm"].high, abs=1e-8)


def test_a_clear_reading_pushes_nothing_on() -> None:
    """Taper of 0.08 mm, each reading 0.04 mm from the next: no end of it is open."""
    parts = card((68.094, 68.054, 68.014)).parts
    assert "taper_pin_axis_mm" not in parts["bore_survey"].intervals
    by_check = {v.check.name: v for v in parts["hone_and_re_ring"].verdicts}
    assert by_check["re_ring_taper_pin_axis"].interval is None
    assert by_check["re_ring_taper_pin_axis"].judged.probability is not None


TEST = BY_NAME["compression-test"]


def test_the_lowest_of_several_cylinders_reads_too_low() -> None:
    """Four alike at 1000 kPa, u = 10 kPa each, by hand q = 2.4943 · 10 kPa upwards."""
    assert isinstance(TEST, Composite)
    inputs = TEST.inputs(readings_kpa=(1000.0, 1000.0, 1000.0, 1000.0), expected_kpa=1000.0)
    uncertainties: dict[Path, Stated] = {("readings_kpa",): Stated(uncertainty=20.0)}
    found = answer_composite(TEST, Request(inputs=inputs, uncertainties=uncertainties))
    level = found.parts["compression_level"]
    one = level.intervals["ratio"]
    assert one.high - level.outputs.ratio == pytest.approx(2.4943 * 0.010, rel=1e-4)
    assert one.lean == -1.0
