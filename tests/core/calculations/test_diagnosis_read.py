"""What the diagnosis reads out of measured tests, and what the request may weigh itself."""

from typing import Any

import pytest
from diagnosing import at_hand, counted, diagnosed, scores


def in_words(value: Any) -> str:
    """Return a name that is the same in every process: a set has no order."""
    return str(sorted(value)) if isinstance(value, set) else str(value)


LIFTED = {
    "decompressor": "automatic_exhaust_lifter",
    "decompressor_state": "automatic_active",
}
MEASURED: list[tuple[dict[str, Any], set[str]]] = [
    # Level: below 0.80 low, 0.80 to 0.90 says nothing, to 1.10 good, above high.
    ({"level_ratio": 0.79}, {"E10"}),
    ({"level_ratio": 0.80}, set()),
    ({"level_ratio": 0.90}, {"E13"}),
    ({"level_ratio": 1.10}, {"E13"}),
    ({"level_ratio": 1.11}, {"E12"}),
    ({"level_ratio": 0.60, "level_gradeable": "decompressor_unknown"}, {"E10"}),
    ({"level_ratio": 0.60, "level_gradeable": "decompressor_active"}, set()),
    # Several cylinders: all low alike, one low, one low beside a watched one, a low pair.
    ({"level_ratio": 0.70, "each_over_highest": [1.0, 0.95]}, {"E11", "E32"}),
    ({"level_ratio": 0.70, "each_over_highest": [1.0, 0.75]}, {"E10", "E30"}),
    ({"level_ratio": 0.76, "each_over_highest": [1.0, 0.90]}, {"E10", "E32"}),
    ({"level_ratio": 0.96, "each_over_highest": [1.0, 0.97]}, {"E13", "E32"}),
    ({"each_over_highest": [1.0, 0.80, 0.85, 0.99]}, set()),
    ({"each_over_highest": [0.95, 0.80, 0.99, 1.0]}, {"E30"}),
    ({"each_over_highest": [0.85, 0.80, 0.99, 1.0]}, set()),
    ({"each_over_highest": [0.99, 0.85, 0.80, 1.0], "layout": "vee"}, {"E30"}),
    ({"each_over_highest": [1.0, 0.6, 0.62, 0.98], "adjacent_low_pair": [2, 3]}, {"E31"}),
    ({"spread_pct": 10.0}, {"E32"}),
    ({"spread_pct": 12.0}, set()),
    ({"spread_pct": 20.0}, set()),
    # Wet gain: 15 and 5 %; below that it says something of a low cylinder alone.
    ({"excess_gain_pct": 15.0}, {"E20"}),
    ({"excess_gain_pct": 20.0, "wet_over_expected": 0.79}, {"E20", "E23"}),
    ({"excess_gain_pct": 20.0, "wet_over_expected": 0.80}, {"E20"}),
    ({"excess_gain_pct": 5.0}, {"E22"}),
    ({"excess_gain_pct": 4.9}, set()),
    ({"excess_gain_pct": 4.9, "level_ratio": 0.7}, {"E10", "E21"}),
    # Build-up: short with q below 0.8 or not; full within four strokes.
    ({"build_up_pattern": "builds_up_but_short"}, {"E40"}),
    ({"build_up_pattern": "like_a_fixed_leak"}, {"E41"}),
    ({"build_up_pattern": "normal"}, set()),
    ({"build_up_pattern": "normal", "strokes_to_95": 4, "last_over_expected": 0.9}, {"E42"}),
    ({"build_up_pattern": "normal", "strokes_to_95": 5, "last_over_expected": 0.9}, set()),
    (
        {"build_up_pattern": "pattern_not_judged", "strokes_to_95": 3, "last_over_expected": 1.0},
        {"E42"},
    ),
    (
        {"build_up_pattern": "slow_but_full", "strokes_to_95": 4, "last_over_expected": 0.95},
        set(),
    ),
    # Leak-down: a grade goes before the per cent; the per cent counts where it can be graded.
    ({"leak_grade": "good"}, {"E50"}),
    ({"leak_grade": "tear_down"}, {"E51"}),
    ({"leak_grade": "worn"}, set()),
    ({"leak_grade": "not_gradeable", "leak_pct": 40.0}, set()),
    ({"leak_pct": 10.0, "leak_gradeable": "yes"}, {"E50"}),
    ({"leak_pct": 30.0, "leak_gradeable": "yes"}, set()),
    ({"leak_pct": 30.1, "leak_gradeable": "yes"}, {"E51"}),
    ({"leak_pct": 30.1}, set()),
    ({"leak_pct": 9.0, "leak_gradeable": "restrictor_outside", "leak_grade": "good"}, {"E50"}),
    # With a decompressor at work the leak is an upper bound: small proves tight, no more.
    ({"leak_pct": 10.0, "leak_gradeable": "upper_bound"}, {"E50"}),
    ({"leak_pct": 10.0, "leak_gradeable": "decompressor_active"}, {"E50"}),
    ({"leak_pct": 10.1, "leak_gradeable": "decompressor_active"}, set()),
    ({"leak_pct": 45.0, "leak_gradeable": "decompressor_active"}, set()),
    ({"leak_grade": "tear_down", **LIFTED}, {"E06"}),
    ({"leak_grade": "good", **LIFTED}, {"E06", "E50"}),
    ({"leak_pct": 45.0, "leak_gradeable": "yes", **LIFTED}, {"E06", "E51"}),
    ({"leak_grade": "tear_down", "leak_gradeable": "not_at_firing_tdc"}, set()),
    ({"heard_at": "oil_filler_or_breather"}, {"E60"}),
    ({"heard_at": "exhaust"}, {"E61"}),
    ({"heard_at": "intake"}, {"E62"}),
    ({"heard_at": "radiator"}, {"E63"}),
    ({"heard_at": "neighbour_plug_hole"}, {"E64"}),
    ({"heard_at": "head_joint"}, {"E65"}),
    ({"heard_at": "nowhere"}, set()),
    ({"heard_at": "intake", "cycle": "two_stroke"}, {"E66"}),
    ({"heard_at": "exhaust", "cycle": "two_stroke"}, {"E67"}),
    ({"crankcase_finding": "holds", "cycle": "two_stroke"}, {"E113"}),
    ({"crankcase_finding": "leaks_under_vacuum", "cycle": "two_stroke"}, {"E112"}),
    ({"crankcase_finding": "leaks_under_pressure", "cycle": "two_stroke"}, {"E112"}),
    ({"crankcase_finding": "leaks_under_both", "cycle": "two_stroke"}, {"E112"}),
    ({"crankcase_finding": "vacuum_not_tested", "cycle": "two_stroke"}, set()),
    # Oil use above its limit, together with a low or a normal cylinder; alone it says nothing.
    ({"oil_use_grade": "usual"}, {"E92"}),
    ({"oil_use_grade": "worn"}, set()),
    ({"oil_use_grade": "find_out"}, set()),
    ({"oil_use_grade": "find_out", "level_ratio": 0.7}, {"E10", "E91"}),
    ({"oil_use_grade": "find_out", "level_ratio": 1.0}, {"E13"}),
    ({"oil_use_grade": "find_out", "level_ratio": 1.0, "leak_grade": "worn"}, {"E13"}),
    (
        {"oil_use_grade": "find_out", "level_ratio": 1.0, "leak_grade": "serviceable"},
        {"E13", "E90"},
    ),
    # How the test was made.
    ({"throttle_open": False}, {"E01"}),
    ({"throttle_open": True, "choke_off": False}, {"E01"}),
    ({"throttle_open": True, "battery_v": 9.5}, {"E02"}),
    ({"throttle_open": True, "battery_v": 9.6}, set()),
    ({"throttle_open": True, "engine_warm": False}, {"E03"}),
    (
        {
            "throttle_open": True,
            "decompressor": "automatic_exhaust_lifter",
            "decompressor_state": "automatic_active",
        },
        {"E06"},
    ),
]


@pytest.mark.parametrize(("known", "expected"), MEASURED, ids=in_words)
def test_a_measured_test_is_evidence_by_itself(known: dict[str, Any], expected: set[str]) -> None:
    found = at_hand(diagnosed(**known))
    assert found == dict.fromkeys(sorted(expected, key=lambda name: int(name[1:])), "measured")


def test_what_is_told_is_not_read_twice() -> None:
    """Told low on all cylinders, measured low: the measurement alone cannot say on how many."""
    found = diagnosed("E11", level_ratio=0.7, cylinders=2)
    assert at_hand(found) == {"E11": "told"}
    assert at_hand(diagnosed("E10", level_ratio=0.7)) == {"E10": "told"}


def own(weight: float, evidence: str = "E10", suspect: str = "RB", **more: Any) -> dict[str, Any]:
    return {"weights": [{"evidence": evidence, "suspect": suspect, "weight": weight, **more}]}


def test_a_weight_of_the_request_takes_the_place_of_the_table() -> None:
    assert scores(diagnosed("E10"))["RB"] == 1.1
    assert scores(diagnosed("E10", **own(1.7)))["RB"] == 1.7
    assert scores(diagnosed("E10", **own(-0.3)))["RB"] == -0.3
    assert "RB" not in scores(diagnosed("E10", **own(0.0)))
    # Of other evidence it changes nothing.
    assert scores(diagnosed("E20", **own(1.7))) == scores(diagnosed("E20"))


def test_a_weight_of_the_request_where_the_table_has_none() -> None:
    found = diagnosed("E10", **own(3.0, suspect="LL", reason="seen on these engines"))
    (line,) = [line for line in found.lines if line.suspect == "LL"]
    assert (line.counts, line.why) == (3.0, "seen on these engines")
    turned = diagnosed("E10", **own(-1.0))
    (line,) = [line for line in turned.lines if line.suspect == "RB"]
    assert line.why == "weight of the request"
    kept = diagnosed("E10", **own(1.5))
    (line,) = [line for line in kept.lines if line.suspect == "RB"]
    assert line.why == "leak past rings lowers the peak"


def test_the_figures_of_the_request_hold() -> None:
    """RB: E20 strong and E10 moderate, 3.0 + 1.0; with the table's weights 2.0 + 1.1."""
    found = diagnosed("E10", "E20", strong_weight=3.0, moderate_weight=1.0)
    assert scores(found)["RB"] == 4.0
    assert diagnosed("E10", "E20", least_score=3.2).headline == "no_strong_suspect"
    # RB 3.1; the next is LT with 1.1 of E10, as the wet gain says nothing of it.
    assert diagnosed("E10", "E20").statement == "RB leads by 2.0"
    assert diagnosed("E10", "E20", least_lead=2.1).headline == "not_settled"
    halved = diagnosed("E01", "E10", unsound_test_share=0.5)
    assert counted(halved, "RB") == {"E10": 0.55}


def test_common_practice_switched_off_leaves_the_weights_of_the_request() -> None:
    found = diagnosed("E10", "E61", defaults=False, **own(2.5))
    assert scores(found) == {"RB": 2.5}
    assert found.headline == "ranking_only"
    assert found.next_test is None
    assert at_hand(found) == {"E10": "told", "E61": "told"}


def test_common_practice_switched_off_and_nothing_weighed() -> None:
    found = diagnosed("E13", "E42", "E50", defaults=False)
    assert found.suspects == ()
    assert found.headline == "nothing_weighed"
    assert found.first is None
    assert found.lead is None


def test_common_practice_switched_off_judges_by_the_figures_of_the_request() -> None:
    figures = {"least_score": 2.0, "least_lead": 1.0}
    found = diagnosed("E10", defaults=False, **own(2.5), **figures)
    assert found.statement == "RB leads by 2.5"
    assert diagnosed("E10", defaults=False, **own(1.5), **figures).headline == "no_strong_suspect"


def test_common_practice_switched_off_gives_an_invalid_test_no_share() -> None:
    found = diagnosed("E01", "E10", defaults=False, **own(2.0))
    assert found.headline == "test_not_valid"
    assert counted(found, "RB") == {"E10": 0.0}
    whole = diagnosed("E01", "E10", defaults=False, unsound_test_share=1.0, **own(2.0))
    assert counted(whole, "RB") == {"E10": 2.0}
