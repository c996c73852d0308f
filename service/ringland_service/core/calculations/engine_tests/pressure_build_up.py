"""C08: how the reading builds up over the first strokes."""

from itertools import pairwise
from typing import Any

import numpy as np

from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    number,
    quantity,
    readings,
    record,
    result,
)
from ringland_service.core.formulas import readings as formulas
from ringland_service.core.metrology.limits import GRADES
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import NO_SOURCE

TEACHING = f"old workshop teaching; {NO_SOURCE}"
LOW_CONFIDENCE = f"{NO_SOURCE}, low confidence"
USUAL_STROKES = (4, 8)
PATTERNS = {
    "higher_than_expected": "more than 1.10 of the expected pressure",
    "pattern_not_judged": "no baseline of the same gauge on a sound cylinder",
    "slow_but_full": "comes up slowly and gets there",
    "normal": "normal",
    "builds_up_but_short": "comes up slowly and stays short: rings and bore",
    "like_a_fixed_leak": "comes up as a sound cylinder does and stays short: a fixed leak",
}


@record
class Inputs:
    """The readings stroke by stroke, the expected pressure, and the gauge's own pattern."""

    stroke_readings_kpa: tuple[float, ...] = readings(
        quantities.COMPRESSION,
        "reading at each compression stroke of one pull, gauge",
        least=2,
        most=12,
        example=(310.0, 520.0, 660.0, 740.0, 775.0, 780.0),
    )
    expected_kpa: Number = quantity(
        quantities.EXPECTED, "pressure expected of a sound cylinder here, gauge", example=1080.0
    )
    baseline_first_over_last: Number | None = number(
        "first over last stroke of the same gauge and hose on a sound cylinder of like size",
        low=0.1,
        high=1.0,
        warn=(0.3, 0.9),
        example=0.56,
        default=None,
    )


@record
class Outputs:
    """The build-up in numbers, and its pattern; the rise is shown, never judged."""

    first_over_expected: Number = result(
        "first stroke over the expected pressure",
        digits=3,
        basis="the first of the readings over the expected pressure",
        source=TEACHING,
    )
    last_over_expected: Number = result(
        "last stroke over the expected pressure",
        digits=3,
        basis="the last of the readings over the expected pressure",
        source=TEACHING,
    )
    rise: Number = result(
        "rise from first to last stroke; it mixes the level with the gauge's own volume",
        digits=3,
        formula="last_over_expected - first_over_expected",
        source=TEACHING,
    )
    first_over_last: Number = result(
        "first over last stroke",
        digits=3,
        formula="first_over_expected / last_over_expected",
        source=TEACHING,
    )
    strokes_to_95: int = result(
        "strokes until 95 % of the last reading",
        digits=0,
        basis="the first stroke at or above 0.95 of the last reading",
        source=TEACHING,
    )
    pattern: str = result(
        "pattern of the build-up",
        basis="in this order: last over 1.10 of expected; no baseline; last at 0.90 or more with "
        "q under 0.8, or not; last short with q under 0.8, or not",
        source=LOW_CONFIDENCE,
        common_practice=True,
        choices=PATTERNS,
    )
    q: Number | None = result(
        "first over last stroke, against the same gauge on a sound cylinder",
        digits=3,
        formula="first_over_last / baseline_first_over_last",
        source=LOW_CONFIDENCE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Put the strokes in relation to the expected pressure and to the gauge's baseline."""
    strokes = np.array(inputs.stroke_readings_kpa)
    baseline = inputs.baseline_first_over_last
    first = formulas.first_over_expected(strokes, inputs.expected_kpa)
    last = formulas.last_over_expected(strokes, inputs.expected_kpa)
    q = None if baseline is None else formulas.build_up_quotient(strokes, baseline)
    return Outputs(
        first_over_expected=first,
        last_over_expected=last,
        rise=last - first,
        first_over_last=formulas.first_over_last(strokes),
        strokes_to_95=int(formulas.strokes_to_95_percent(strokes)),
        pattern=_pattern(last, q),
        q=q,
    )


def _pattern(last: Number, q: Number | None) -> str:
    level = GRADES["build_up_level"].word(last)
    if level == "higher":
        return "higher_than_expected"
    if q is None:
        return "pattern_not_judged"
    slow = GRADES["build_up_quotient"].word(q) == "below_baseline"
    if level == "full":
        return "slow_but_full" if slow else "normal"
    return "builds_up_but_short" if slow else "like_a_fixed_leak"


def _falls(i: Any) -> bool:
    return any(after - before < -1e-9 * before for before, after in pairwise(i.stroke_readings_kpa))


def _above_baseline(_: Any, o: Any) -> bool:
    above = o.q is not None and GRADES["build_up_quotient"].word(o.q) == "above_baseline"
    return bool(above and o.pattern == "like_a_fixed_leak")


CALCULATION = Calculation(
    name="pressure-build-up",
    number="C08",
    stage="engine_tests",
    title="Build-up over the first strokes",
    summary="How the compression reading comes up stroke by stroke, against the same gauge and "
    "hose on a sound cylinder. A long hose pumps up slowly on any engine: never compare patterns "
    "of two gauges.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    rules=(
        Rule(
            ("stroke_readings_kpa",),
            _falls,
            "the readings fall: the gauge's check valve leaks",
            "readings that never fall; cure the check valve and read again",
        ),
        Rule(
            ("stroke_readings_kpa",),
            lambda i: i.stroke_readings_kpa[-1] <= 0,
            "the cylinder reads nothing",
            "a last reading above zero; a cylinder that reads nothing wants a leak-down",
        ),
    ),
    notices=(
        Notice(
            "no_baseline",
            "baseline_first_over_last",
            lambda i, _: i.baseline_first_over_last is None,
            "the pattern is not judged without the same gauge and hose on a sound cylinder of like "
            "size; a sound neighbour will do",
        ),
        Notice(
            "gross_leak_or_doubtful_baseline",
            "q",
            _above_baseline,
            "it comes up faster than a sound cylinder and stays short: a gross leak, or a baseline "
            "that is not this gauge's",
            common_practice=True,
        ),
        Notice(
            "strokes_unusual",
            "stroke_readings_kpa",
            lambda i, _: not USUAL_STROKES[0] <= len(i.stroke_readings_kpa) <= USUAL_STROKES[1],
            "usual are 4 to 8 strokes: fewer may not have settled, more says nothing new",
        ),
    ),
    cautions=("compression_test",),
)
