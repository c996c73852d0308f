"""The verdicts on rod and crank, what the readings must agree with, and what is warned of."""

from typing import Any

from ringland_service.core.declare import Check, Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit

ROLLERS = "rollers"
BIG_END: dict[str, str] = {
    ROLLERS: "rollers or needles on a built-up crank",
    "plain": "plain shell bearings",
}
# common practice, no source
PLAYS_MM = 0.05
MOST_ROCK_SHARE = 0.1


def _side(inputs: Any, _: Any) -> Limit:
    return LIMITS[f"big_end_side.{inputs.fit}"].limit()


def _radial(inputs: Any, _: Any) -> Limit | None:
    return LIMITS["big_end_radial.rollers"].limit() if inputs.big_end == ROLLERS else None


def _runout(_: Any, __: Any) -> Limit:
    return LIMITS["crank_runout"].limit()


SETTLE_RUNOUT = (
    "between centres, the indicator on the bare journal, three turns, mean of the swings"
)

CHECKS = (
    Check(
        "big_end_side",
        "big_end_side_mm",
        "side clearance of the big end",
        "try the next leaf up and down, 0.01 mm apart",
        _side,
    ),
    Check(
        "big_end_radial",
        "big_end_radial_mm",
        "radial play of the big end",
        "oil washed out, indicator on the rod along the cylinder axis, five pulls and pushes",
        _radial,
    ),
    Check(
        "small_end_tip_rock",
        "small_end_tip_rock_mm",
        "rock at the small end; only the maker's limit judges it",
        "indicator at the pin's height, big end pushed to one cheek, five times",
    ),
    Check(
        "crank_runout_left",
        "runout_tir_left_mm",
        "run-out of the left journal",
        SETTLE_RUNOUT,
        _runout,
    ),
    Check(
        "crank_runout_right",
        "runout_tir_right_mm",
        "run-out of the right journal",
        SETTLE_RUNOUT,
        _runout,
    ),
)

RULES = (
    Rule(
        ("small_end_tip_rock_mm", "rod_mm"),
        lambda i: beyond(i.small_end_tip_rock_mm, MOST_ROCK_SHARE * i.rod_mm),
        "the rod rocks by more than a tenth of its length",
        "the whole swing at the small end, from one side to the other; check the units",
    ),
    Rule(
        ("big_end_width_mm", "rod_mm"),
        lambda i: at_most(i.rod_mm, i.big_end_width_mm),
        "the big end is as wide as the rod is long",
        "the width of the big end along the crankpin; check the units",
    ),
)


def _plays(i: Any, _: Any) -> Any:
    return False if i.big_end_radial_mm is None else i.big_end_radial_mm > PLAYS_MM


def _rock_incomplete(i: Any, _: Any) -> bool:
    missing = i.rod_mm is None or i.big_end_width_mm is None
    return i.small_end_tip_rock_mm is not None and missing


NOTICES = (
    Notice(
        "tip_rock_not_judged",
        "small_end_tip_rock_mm",
        lambda i, _: i.small_end_tip_rock_mm is not None,
        "rock depends on the crown of the rollers and on the side clearance: only the maker's "
        "limit judges it, and the play that it implies is for comparison",
    ),
    Notice(
        "tip_rock_incomplete",
        "small_end_tip_rock_mm",
        _rock_incomplete,
        "the play that the rock implies takes the rod length and the width of the big end",
    ),
    Notice(
        "worn_big_end",
        "big_end_radial_mm",
        _plays,
        "radial play above 0.05 mm: a new top end on a worn big end comes back; feel for it along "
        "the cylinder axis, not sideways",
    ),
    Notice(
        "plain_big_end",
        "big_end",
        lambda i, _: i.big_end == "plain" and i.big_end_radial_mm is not None,
        "a plain big end is judged by the maker's oil clearance, measured by pin and bore or by "
        "plastic strip, not by feel",
    ),
)
