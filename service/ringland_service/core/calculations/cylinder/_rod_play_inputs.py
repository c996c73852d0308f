"""What rod and crank are measured for."""

from ringland_service.core.declare import choice, quantity, record
from ringland_service.core.engines.choices import FIT
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths

ROLLERS = "rollers"
BIG_END: dict[str, str] = {
    ROLLERS: "rollers or needles on a built-up crank",
    "plain": "plain shell bearings",
}


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
    big_end: str = choice("kind of big end", BIG_END, example="rollers", default="rollers")
    small_end_tip_rock_mm: Number | None = quantity(
        lengths.TIP_ROCK, "whole sideways rock at the small end", default=None
    )
    rod_mm: Number | None = quantity(
        lengths.ROD, "rod length, centre to centre", example=110.0, default=None
    )
    big_end_width_mm: Number | None = quantity(
        lengths.BIG_END_WIDTH, "width of the big end", default=None
    )
    runout_left_mm: Number | None = quantity(
        lengths.RUN_OUT,
        "run-out of the left journal between centres, total indicator reading",
        default=None,
    )
    runout_right_mm: Number | None = quantity(
        lengths.RUN_OUT,
        "run-out of the right journal between centres, total indicator reading",
        example=0.031,
        default=None,
    )
    condition: str = choice("which limits apply", FIT, example="used", default="used")
