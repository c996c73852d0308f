"""What a diagnosis refuses, and what it warns of."""

from typing import Any

from ringland_service.core.calculations.diagnosis import complaints
from ringland_service.core.calculations.diagnosis._next_test import BY_ID
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.engines import condition
from ringland_service.core.engines.choices import SIDE_VALVE

KICK_BACK = BY_ID["kick_back"].words


def _wet_at_the_valves(i: Any, o: Any) -> bool:
    wet = {"E20", "E21", "E22", "E23"}
    return i.valve_gear == SIDE_VALVE and any(row.evidence in wet for row in o.at_hand)


def _not_counted(i: Any, _: Any) -> bool:
    return i.leak_pct is not None and i.leak_grade is None and i.leak_gradeable is None


def _decompressor_unknown(i: Any, _: Any) -> bool:
    return condition.decompressor_uncertain(i.decompressor, i.decompressor_state)


RULES = (
    *condition.ENGINE_RULES,
    *(complaints.rule(name) for name in complaints.TOLD),
    Rule(
        ("each_over_highest", "cylinders"),
        lambda i: len(i.each_over_highest) > i.cylinders,
        "more cylinders are read than the engine has",
        "one reading a cylinder, or the number of cylinders as it is",
    ),
)

# Measured readings that the common steps turn into evidence.
BY_STEPS = (
    "level_ratio",
    "spread_pct",
    "each_over_highest",
    "excess_gain_pct",
    "last_over_expected",
    "leak_pct",
)


def _not_graded(i: Any, _: Any) -> bool:
    return not i.usual and any(getattr(i, name) is not None for name in BY_STEPS)


NOTICES = (
    Notice(
        "needs_figure",
        "evidence",
        _not_graded,
        "common-practice figures are switched off (defaults: off): readings are not graded into "
        "evidence by the common steps; tell the evidence itself, as the maker's figures have it",
    ),
    Notice(
        "needs_figure",
        "weights",
        lambda i, _: not i.usual,
        "common-practice figures are switched off (defaults: off): only evidence with weights of "
        "your own is weighed; give weights, and least_score and least_lead",
    ),
    Notice(
        "decompressor_unknown",
        "decompressor",
        _decompressor_unknown,
        "whether a decompressor let pressure off is not known: a sound cylinder then reads low; "
        "find out before anything is judged",
    ),
    Notice(
        "oil_reaches_side_valves",
        "valve_gear",
        _wet_at_the_valves,
        "beside the cylinder the valves lie where the oil of the wet test runs: a gain may be "
        "theirs; leak-down with listening says more",
    ),
    Notice(
        "leak_down_not_counted",
        "leak_pct",
        _not_counted,
        "a leak-down per cent counts only where it can be graded: give leak_gradeable (yes with a "
        "restrictor of 0.9 to 1.1 mm and a supply of 550 to 700 kPa)",
    ),
    Notice(
        "strong_evidence_contradicts",
        "contradictory",
        lambda _, o: o.contradictory is not None,
        "strong evidence speaks both for and against one suspect: look again at both",
    ),
    Notice(
        "timing_and_key_outside",
        "next_test",
        lambda _, o: o.next_test == KICK_BACK,
        "kicking back at a good level: flywheel key and ignition timing lie outside these suspects",
    ),
)
