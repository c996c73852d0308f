"""C30: plays of the rod on its crankpin, and run-out of the crank."""

from ringland_service.core.calculations.cylinder import _rod_play_checks as judged
from ringland_service.core.calculations.cylinder._rod_play_inputs import Inputs as Inputs
from ringland_service.core.declare import Calculation, kinds, record, result
from ringland_service.core.formulas import plays
from ringland_service.core.formulas.elementary import maximum
from ringland_service.core.metrology.limits import GRADES
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

GEOMETRY = "plane geometry"


@record
class Outputs:
    """What the readings come to; side and radial play are judged as read."""

    bend_or_offset_left_mm: Number | None = result(
        "bend or offset of the left journal, radial",
        kind=kinds.LENGTH,
        decimals=4,
        formula="runout_left_mm / 2",
        source=GEOMETRY,
        default=None,
    )
    bend_or_offset_right_mm: Number | None = result(
        "bend or offset of the right journal, radial",
        kind=kinds.LENGTH,
        decimals=4,
        formula="runout_right_mm / 2",
        source=GEOMETRY,
        default=None,
    )
    runout_grade: str | None = result(
        "run-out of the crank, by the larger of the journals",
        basis="steps of the larger reading: good to 0.03 mm, serviceable to 0.05 mm",
        source=COMMON,
        common_practice=True,
        choices=GRADES["crank_runout"].choices,
        default=None,
    )
    radial_play_implied_by_rock_mm: Number | None = result(
        "radial play that the rock would take, were the big end to touch at both edges",
        kind=kinds.LENGTH,
        decimals=3,
        formula="small_end_tip_rock_mm * big_end_width_mm / (2 * rod_mm)",
        source=f"{COMMON}; similar triangles",
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Halve the run-outs, and bring the rock down to the big end."""
    left, right = inputs.runout_left_mm, inputs.runout_right_mm
    worse = _larger_mm(left, right)
    return Outputs(
        bend_or_offset_left_mm=None if left is None else plays.bend_or_offset_mm(left),
        bend_or_offset_right_mm=None if right is None else plays.bend_or_offset_mm(right),
        runout_grade=None if worse is None else GRADES["crank_runout"].word(worse),
        radial_play_implied_by_rock_mm=_implied_mm(inputs),
    )


def _larger_mm(left_mm: Number | None, right_mm: Number | None) -> Number | None:
    if left_mm is None or right_mm is None:
        return right_mm if left_mm is None else left_mm
    return maximum(left_mm, right_mm)


def _implied_mm(inputs: Inputs) -> Number | None:
    rock, width, rod = inputs.small_end_tip_rock_mm, inputs.big_end_width_mm, inputs.rod_mm
    if rock is None or width is None or rod is None:
        return None
    return plays.radial_play_from_rock_mm(rock, width, rod)


CALCULATION = Calculation(
    name="rod-play",
    number="C30",
    stage="cylinder",
    title="Rod and crank play",
    summary="Side and radial play of the big end, rock at the small end, and run-out of the crank "
    "between centres. A top end put on a worn big end comes back.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    any_of=(
        (
            ("big_end_side_mm",),
            ("big_end_radial_mm",),
            ("small_end_tip_rock_mm",),
            ("runout_left_mm",),
            ("runout_right_mm",),
        ),
    ),
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring",),
)
