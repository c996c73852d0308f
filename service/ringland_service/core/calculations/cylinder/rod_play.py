"""C30: plays of the rod on its crankpin, and run-out of the crank."""

from ringland_service.core.calculations.cylinder import _rod_play_checks as judged
from ringland_service.core.declare import Calculation, choice, kinds, quantity, record, result
from ringland_service.core.engines.choices import FIT
from ringland_service.core.formulas import plays
from ringland_service.core.formulas.elementary import maximum
from ringland_service.core.metrology.limits import GRADES
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

GEOMETRY = "plane geometry"


@record
class Inputs:
    """What feeler and dial indicator read on rod and crank."""

    big_end_side_mm: Number | None = quantity(
        lengths.BIG_END_SIDE, "side clearance of the big end, feeler", default=None
    )
    big_end_radial_mm: Number | None = quantity(
        lengths.BIG_END_RADIAL,
        "radial play of the big end, pulled and pushed along the cylinder axis, not sideways",
        default=None,
    )
    big_end: str = choice("kind of big end", judged.BIG_END, example="rollers", default="rollers")
    small_end_tip_rock_mm: Number | None = quantity(
        lengths.TIP_ROCK, "whole sideways rock at the small end", default=None
    )
    rod_mm: Number | None = quantity(
        lengths.ROD, "rod length, centre to centre", example=110.0, default=None
    )
    big_end_width_mm: Number | None = quantity(
        lengths.BIG_END_WIDTH, "width of the big end", default=None
    )
    runout_tir_left_mm: Number | None = quantity(
        lengths.RUN_OUT,
        "run-out of the left journal between centres, total indicator reading",
        default=None,
    )
    runout_tir_right_mm: Number | None = quantity(
        lengths.RUN_OUT,
        "run-out of the right journal between centres, total indicator reading",
        example=0.031,
        default=None,
    )
    fit: str = choice("which limits apply", FIT, example="used", default="used")


@record
class Outputs:
    """What the readings come to; side and radial play are judged as read."""

    bend_or_offset_left_mm: Number | None = result(
        "bend or offset of the left journal, radial",
        kind=kinds.LENGTH,
        digits=4,
        formula="runout_tir_left_mm / 2",
        source=GEOMETRY,
        default=None,
    )
    bend_or_offset_right_mm: Number | None = result(
        "bend or offset of the right journal, radial",
        kind=kinds.LENGTH,
        digits=4,
        formula="runout_tir_right_mm / 2",
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
        digits=3,
        formula="small_end_tip_rock_mm * big_end_width_mm / (2 * rod_mm)",
        source=f"{COMMON}; similar triangles",
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Halve the run-outs, and bring the rock down to the big end."""
    left, right = inputs.runout_tir_left_mm, inputs.runout_tir_right_mm
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
    one_of=(
        (
            ("big_end_side_mm",),
            ("big_end_radial_mm",),
            ("small_end_tip_rock_mm",),
            ("runout_tir_left_mm",),
            ("runout_tir_right_mm",),
        ),
    ),
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring",),
)
