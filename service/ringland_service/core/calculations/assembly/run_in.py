"""C49: running-in steps, mean piston speed, and what is read again afterwards."""

import itertools

from ringland_service.core.declare import (
    Calculation,
    Figure,
    Notice,
    Rule,
    kinds,
    number,
    quantity,
    record,
    records,
    result,
)
from ringland_service.core.formulas.geometry import change_percent
from ringland_service.core.formulas.running_in import mean_piston_speed_m_s
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import assembly, lengths
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

HEYWOOD = cited("{heywood_piston_speed}")
# Shares of rated speed where the maker gives no steps: common practice, no source.
USUAL_FRACTIONS = (0.5, 0.6, 0.75, 1.0)
IDLING_SHARE = 0.3
BEFORE_FIRST_START = (
    "crank turned by hand twice through all strokes: no hard stop, valves and rings free",
    "oil feed proven with the plug out",
    "locks and clips counted against the tray",
)
RECHECK = (
    "three heat cycles: warm up, vary the load, let it cool right down",
    "lash after 1 h, and cold",
    "oil change at 1 to 2 h",
    "compression and leak-down at 1 to 3 h, same gauge, same place, decompressor as before",
    "plug reading",
    "torque again only if the maker says so",
)


@record
class RunInStep:
    """One step of running in."""

    fraction: float = number("share of rated speed", low=0.05, high=1.0, example=0.5)
    minutes: float = number(
        "minutes in this step; 0 for the open end", low=0.0, high=6000.0, example=20.0
    )


def _step(fraction: float, minutes: float) -> RunInStep:
    return RunInStep(fraction=fraction, minutes=minutes)


@record
class Inputs:
    """Stroke and rated speed, the steps, and readings before and after."""

    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    rated_speed_rpm: Number = quantity(assembly.ENGINE_SPEED, "rated speed")
    steps: tuple[RunInStep, ...] | None = records(
        RunInStep,
        "steps of running in, with varied load; without them 50, 60, 75 and 100 % of rated speed",
        most=20,
        example=(_step(0.5, 20.0), _step(0.6, 40.0), _step(0.75, 60.0), _step(1.0, 0.0)),
        default=None,
    )
    compression_before_kpa: Number | None = quantity(
        quantities.COMPRESSION, "compression before running in, gauge", example=1085.0, default=None
    )
    compression_after_kpa: Number | None = quantity(
        quantities.COMPRESSION, "compression after running in, gauge", example=1130.0, default=None
    )
    leak_before_pct: Number | None = quantity(
        assembly.LEAK_SHARE, "leak-down before running in", default=None
    )
    leak_after_pct: Number | None = quantity(
        assembly.LEAK_SHARE, "leak-down after running in", example=6.0, default=None
    )


@record
class Outputs:
    """Speeds, steps, changes, and the lists that go with running in."""

    mean_piston_speed_at_rated_m_s: Number = result(
        "mean piston speed at rated speed",
        kind=kinds.VELOCITY,
        digits=1,
        formula="2 * stroke_mm * rated_speed_rpm / 60000",
        source=HEYWOOD,
    )
    step_speed_rpm: tuple[float, ...] = result(
        "highest speed of each step",
        kind=kinds.ROTATION,
        digits=0,
        basis="share times rated speed",
        source=COMMON,
    )
    step_mean_speed_m_s: tuple[float, ...] = result(
        "mean piston speed of each step",
        kind=kinds.VELOCITY,
        digits=1,
        basis="2 times stroke times the step's speed, over 60000",
        source=HEYWOOD,
    )
    total_minutes: Number | None = result(
        "minutes of all steps together",
        digits=0,
        basis="sum of the steps' minutes",
        source="arithmetic",
        default=None,
    )
    compression_change_kpa_diff: Number | None = result(
        "change of compression",
        kind=kinds.PRESSURE_DIFFERENCE,
        digits=0,
        formula="compression_after_kpa - compression_before_kpa",
        source="arithmetic",
        default=None,
    )
    compression_change_percent_pct: Number | None = result(
        "change of compression, share of the reading before",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * (compression_after_kpa / compression_before_kpa - 1)",
        source="arithmetic",
        default=None,
    )
    leak_change_pct: Number | None = result(
        "change of leak-down, in points",
        kind=kinds.PERCENT,
        digits=0,
        formula="leak_after_pct - leak_before_pct",
        source="arithmetic",
        default=None,
    )
    before_first_start: tuple[str, ...] = result(
        "before the first start", basis="list of the trade", source=COMMON
    )
    recheck_list: tuple[str, ...] = result(
        "to be read or done again", basis="list of the trade", source=COMMON
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the steps, and the changes where both readings are given."""
    steps = tuple(float(share * inputs.rated_speed_rpm) for share in _fractions(inputs))
    before, after = inputs.compression_before_kpa, inputs.compression_after_kpa
    change = percent = leak = None
    if before is not None and after is not None:
        change, percent = after - before, change_percent(before, after)
    if inputs.leak_before_pct is not None and inputs.leak_after_pct is not None:
        leak = inputs.leak_after_pct - inputs.leak_before_pct
    return Outputs(
        mean_piston_speed_at_rated_m_s=mean_piston_speed_m_s(
            inputs.stroke_mm, inputs.rated_speed_rpm
        ),
        step_speed_rpm=steps,
        step_mean_speed_m_s=tuple(
            float(mean_piston_speed_m_s(inputs.stroke_mm, rpm)) for rpm in steps
        ),
        total_minutes=None if inputs.steps is None else sum(s.minutes for s in inputs.steps),
        compression_change_kpa_diff=change,
        compression_change_percent_pct=percent,
        leak_change_pct=leak,
        before_first_start=BEFORE_FIRST_START,
        recheck_list=RECHECK,
    )


def _fractions(inputs: Inputs) -> tuple[float, ...]:
    return USUAL_FRACTIONS if inputs.steps is None else tuple(s.fraction for s in inputs.steps)


def _falling(inputs: Inputs) -> bool:
    fractions = _fractions(inputs)
    return any(b < a for a, b in itertools.pairwise(fractions))


def _compression_fell(_: Inputs, outputs: Outputs) -> bool:
    change = outputs.compression_change_kpa_diff
    return change is not None and bool(change < 0)


def _leak_rose(_: Inputs, outputs: Outputs) -> bool:
    return outputs.leak_change_pct is not None and bool(outputs.leak_change_pct > 0)


CALCULATION = Calculation(
    name="run-in",
    number="C49",
    stage="assembly",
    title="Running in",
    summary="Steps of running in with their piston speeds, what compression and leak-down did "
    "meanwhile, and what is looked at before and after. The maker's steps win. Long idling and low "
    "load glaze the bore.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    figures=(Figure("steps", ("step_speed_rpm", "step_mean_speed_m_s")),),
    columns=False,
    rules=(
        Rule(
            ("steps",),
            _falling,
            "the steps of running in fall",
            "shares of rated speed that rise or stay, such as 0.5, 0.6, 0.75, 1",
        ),
        Rule(
            ("compression_before_kpa", "compression_after_kpa"),
            lambda i: i.compression_before_kpa <= 0,
            "a cylinder without compression has nothing to run in",
            "the gauge reading before running in, above zero",
        ),
    ),
    notices=(
        Notice(
            "usual_steps",
            "steps",
            lambda i, _: i.steps is None,
            "no steps given: 50, 60, 75 and 100 % of rated speed (common practice, no source); the "
            "maker's steps win",
            common_practice=True,
        ),
        Notice(
            "idling_glazes",
            "steps",
            lambda i, _: min(_fractions(i)) < IDLING_SHARE,
            "a step under 30 % of rated speed is long idling: that glazes the bore",
        ),
        Notice(
            "compression_fell",
            "compression_change_kpa_diff",
            _compression_fell,
            "compression fell: same gauge, altitude and decompressor on both days? Else find out",
        ),
        Notice(
            "leak_rose",
            "leak_change_pct",
            _leak_rose,
            "leak-down rose: rings, valves or gasket did not settle; find out before the next step",
        ),
    ),
    cautions=("first_start", "break_in", "road_test"),
)
