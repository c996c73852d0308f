"""C11: the share of its supply that a cylinder loses, its grade and its place."""

import math

from ringland_service.core.calculations.engine_tests import _leak_notices as told
from ringland_service.core.calculations.engine_tests import leak_words as words
from ringland_service.core.declare import (
    NO_EXAMPLE,
    Calculation,
    Check,
    choice,
    flag,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.formulas import leak
from ringland_service.core.metrology.candidates import Candidates, largest, smallest, spread
from ringland_service.core.metrology.limits import GRADES, LIMITS, Limit
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.core.quantities import engine_tests as tests
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

GUM = cited("{jcgm_100_rectangular}: rectangular parts, k = 2")
READINGS = ("cylinder_pressure_kpa", "rocked_forward_pressure_kpa", "rocked_back_pressure_kpa")


@record
class Inputs:
    """The two pressures, the tester, and the conditions of the test."""

    supply_pressure_kpa: float = quantity(
        tests.LEAK_SUPPLY, "pressure before the restrictor, gauge, read while the air flows"
    )
    cylinder_pressure_kpa: float = quantity(
        tests.LEAK_CYLINDER, "pressure that the cylinder holds, gauge, the crank locked"
    )
    rocked_forward_pressure_kpa: float | None = quantity(
        tests.LEAK_CYLINDER,
        "the same with the crank rocked a little forward, gauge",
        example=616.0,
        default=None,
    )
    rocked_back_pressure_kpa: float | None = quantity(
        tests.LEAK_CYLINDER,
        "the same with the crank rocked a little back, gauge",
        example=610.0,
        default=None,
    )
    restrictor_mm: float | None = quantity(
        tests.RESTRICTOR, "bore of the tester's restrictor", default=None
    )
    gauge_difference_kpa_diff: float | None = quantity(
        tests.LEAK_GAUGE_DIFFERENCE,
        "cylinder gauge over supply gauge on one pressure (hose plugged); 0 for one differential "
        "gauge",
        default=None,
    )
    gauge_residual_kpa_diff: float | None = quantity(
        tests.LEAK_GAUGE_RESIDUAL,
        "what may be left of each gauge's error once the difference is taken out, ±",
        default=None,
        example=NO_EXAMPLE,
        exact=True,
    )
    gauge_full_scale_kpa: float | None = quantity(
        tests.LEAK_GAUGE_SPAN, "full scale of both gauges", default=None, exact=True
    )
    gauge_error_pct: float | None = quantity(
        tests.LEAK_GAUGE_CLASS,
        "maximum error of each gauge, ± share of full scale",
        default=None,
        exact=True,
    )
    good_to_pct: float | None = quantity(
        tests.LEAK_STEP, "tester maker's own scale: good up to", example=12.0, default=None
    )
    serviceable_to_pct: float | None = quantity(
        tests.LEAK_STEP, "tester maker's own scale: serviceable up to", example=25.0, default=None
    )
    worn_to_pct: float | None = quantity(
        tests.LEAK_STEP, "tester maker's own scale: worn up to", example=40.0, default=None
    )
    cycle: str | None = choice("cycle", condition.CYCLE, example="four_stroke", default=None)
    duty: str = choice("what the engine is for", words.USE, example="normal", default="normal")
    piston_at: str = choice(
        "where the piston stood", words.PISTON_AT, example="firing_tdc", default=UNKNOWN
    )
    engine_warm: bool | None = flag("engine warm", default=None)
    decompressor_state: str = choice(
        "decompressor during the test",
        condition.DECOMPRESSOR_STATE,
        example="none",
        default=UNKNOWN,
    )
    heard_at: str | None = choice(
        "where the air is heard, the loudest place",
        words.HEARD_AT,
        example="oil_filler_or_breather",
        default=None,
    )


@record
class Outputs:
    """The leak, its uncertainty, its grade and where the air goes."""

    kept_kpa: float = result(
        "pressure that the cylinder holds at best, gauge, difference of the gauges taken out",
        kind=kinds.PRESSURE_GAUGE,
        decimals=0,
        basis="the highest of the readings, less the difference of the two gauges",
        source=COMMON,
    )
    leak_pct: float = result(
        "leak-down: share of the supply that the cylinder does not hold, the lowest reading",
        kind=kinds.PERCENT,
        decimals=1,
        formula="100 * (supply_pressure_kpa - kept_kpa) / supply_pressure_kpa",
        source=COMMON,
        extreme=True,
    )
    leak_spread_pct: float | None = result(
        "spread of the leak as the crank is rocked, in points",
        kind=kinds.PERCENT,
        decimals=1,
        basis="highest less lowest reading of the cylinder, over the supply",
        source=COMMON,
        default=None,
    )
    gradeable: str = result(
        "whether the common steps grade this reading",
        basis="place of the piston, decompressor (at work, an upper bound: 10 % or less proves the "
        "cylinder tight), restrictor of 0.9 to 1.1 mm, supply of 550 to 700 kPa",
        source=COMMON,
        choices=words.GRADEABLE,
    )
    grade: str | None = result(
        "leak by the common steps: 10, 20 and 30 %",
        basis="steps of the leak, where they hold for this tester",
        source=COMMON,
        common_practice=True,
        choices=words.GRADE,
        default=None,
    )
    grade_on_makers_scale: str | None = result(
        "leak by the tester maker's own steps",
        basis="good, serviceable and worn up to the steps given",
        source="scale of the tester's maker, as given",
        choices=GRADES["leak_down"].choices,
        default=None,
    )
    leak_path: str | None = result(
        "where the air goes",
        basis="by the place where it is heard, and the cycle",
        source=COMMON,
        choices=words.LEAK_PATH,
        default=None,
    )
    gauge_error_pressure_kpa_diff: float | None = result(
        "maximum error of each gauge, ±",
        kind=kinds.PRESSURE_DIFFERENCE,
        decimals=1,
        basis="what is left once the difference is taken out, else the share of full scale",
        source=GUM,
        default=None,
    )
    leak_uncertainty_pct: float | None = result(
        "expanded uncertainty of the leak from both gauges, k = 2, in points",
        kind=kinds.PERCENT,
        decimals=2,
        formula="200 / sqrt(3) * gauge_error_pressure_kpa_diff / supply_pressure_kpa"
        " * sqrt(1 + (kept_kpa / supply_pressure_kpa)**2)",
        source=GUM,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Take the lowest leak of the readings and grade it as far as the tester allows."""
    supply, held = inputs.supply_pressure_kpa, _held_kpa(inputs)
    kept, least = max(held), min(held)
    lost = float(leak.leak_percent(supply, kept))
    able, error = words.gradeable(inputs, lost), _gauge_error_kpa(inputs)
    return Outputs(
        kept_kpa=kept,
        leak_pct=lost,
        leak_spread_pct=None if len(held) == 1 else 100 * (kept - least) / supply,
        gradeable=able,
        grade=GRADES["leak_down"].word(lost) if able in words.GRADED else words.NOT_GRADEABLE,
        grade_on_makers_scale=words.makers_grade(inputs, lost),
        leak_path=words.leak_path(inputs),
        gauge_error_pressure_kpa_diff=error,
        leak_uncertainty_pct=(
            None
            if error is None
            else 200 / math.sqrt(3) * error / supply * math.hypot(1, kept / supply)
        ),
    )


def _held_kpa(inputs: Inputs) -> list[float]:
    """Return the readings of the cylinder on the zero of the supply's gauge."""
    read = [getattr(inputs, name) for name in READINGS]
    apart = inputs.gauge_difference_kpa_diff
    return [kpa - (0.0 if apart is None else apart) for kpa in read if kpa is not None]


def extremes(inputs: Inputs) -> dict[str, Candidates]:
    """Return what the leak and what is kept are the smallest, the largest and the range of."""
    supply, held = inputs.supply_pressure_kpa, _held_kpa(inputs)
    return {
        "kept_kpa": largest(held),
        "leak_pct": smallest([leak.leak_percent(supply, kept) for kept in held]),
        "leak_spread_pct": spread([100 * kept / supply for kept in held]),
    }


def _gauge_error_kpa(inputs: Inputs) -> float | None:
    if inputs.gauge_residual_kpa_diff is not None:
        return inputs.gauge_residual_kpa_diff
    if inputs.gauge_full_scale_kpa is None or inputs.gauge_error_pct is None:
        return None
    return inputs.gauge_full_scale_kpa * inputs.gauge_error_pct / 100


def components(inputs: Inputs) -> list[Component]:
    """Return what each gauge's error does: one to the supply, one to all of the cylinder."""
    error = _gauge_error_kpa(inputs)
    if not error:
        return []
    u, scale = error / math.sqrt(3), tests.LEAK_CYLINDER.span
    read = [name for name in READINGS if getattr(inputs, name) is not None]
    return [
        Component("the supply gauge", u, (Effect(("supply_pressure_kpa",), scale),)),
        Component("the cylinder gauge", u, tuple(Effect((name,), scale) for name in read)),
    ]


def _service(inputs: Inputs, _: Outputs) -> Limit | None:
    own = inputs.serviceable_to_pct
    if own is not None:
        return Limit(high=own, source="serviceable on the tester maker's own scale")
    return LIMITS[f"leak_down.{inputs.duty}"].limit()


CALCULATION = Calculation(
    name="leak-down",
    number="C11",
    stage="engine_tests",
    title="Leak-down",
    summary="The share of its supply that a cylinder loses, its uncertainty, its grade and where "
    "the "
    "air "
    "goes. A little ring leak is always there; the same hole weighs more in a small bore. Per cent "
    "of testers with other restrictors or supplies do not compare: turn them into a leak area.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    components=components,
    checks=(
        Check(
            "leak_down",
            "leak_pct",
            "leak-down",
            "read both gauges on one pressure, take their difference out, and read again with the "
            "crank rocked to each side",
            _service,
            unjudged=words.UNJUDGED,
        ),
    ),
    rules=(*words.readings_rules(_held_kpa, _gauge_error_kpa), *words.RULES),
    notices=told.NOTICES,
    cautions=("leak_down", "fuel"),
    columns=False,
)
