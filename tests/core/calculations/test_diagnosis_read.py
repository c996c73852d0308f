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
    ({"level_ratio": 0.79}, {"compression_low_one_cylinder"}),
    ({"level_ratio": 0.80}, set()),
    ({"level_ratio": 0.90}, {"compression_good"}),
    ({"level_ratio": 1.10}, {"compression_good"}),
    ({"level_ratio": 1.11}, {"compression_high"}),
    (
        {"level_ratio": 0.60, "level_gradeable": "decompressor_unknown"},
        {"compression_low_one_cylinder"},
    ),
    ({"level_ratio": 0.60, "level_gradeable": "decompressor_active"}, set()),
    # Several cylinders: all low alike, one low, one low beside a watched one, a low pair.
    (
        {"level_ratio": 0.70, "each_over_highest": [1.0, 0.95]},
        {"compression_low_all_alike", "cylinders_even"},
    ),
    (
        {"level_ratio": 0.70, "each_over_highest": [1.0, 0.75]},
        {"compression_low_one_cylinder", "one_cylinder_low"},
    ),
    (
        {"level_ratio": 0.76, "each_over_highest": [1.0, 0.90]},
        {"compression_low_one_cylinder", "cylinders_even"},
    ),
    (
        {"level_ratio": 0.96, "each_over_highest": [1.0, 0.97]},
        {"compression_good", "cylinders_even"},
    ),
    ({"each_over_highest": [1.0, 0.80, 0.85, 0.99]}, set()),
    ({"each_over_highest": [0.95, 0.80, 0.99, 1.0]}, {"one_cylinder_low"}),
    ({"each_over_highest": [0.85, 0.80, 0.99, 1.0]}, set()),
    ({"each_over_highest": [0.99, 0.85, 0.80, 1.0], "layout": "vee"}, {"one_cylinder_low"}),
    (
        {"each_over_highest": [1.0, 0.6, 0.62, 0.98], "adjacent_low_pair": [2, 3]},
        {"two_neighbours_low"},
    ),
    ({"spread_pct": 10.0}, {"cylinders_even"}),
    ({"spread_pct": 12.0}, set()),
    ({"spread_pct": 20.0}, set()),
    # Wet gain: 15 and 5 %; below that it says something of a low cylinder alone.
    ({"excess_gain_pct": 15.0}, {"wet_gain_large"}),
    (
        {"excess_gain_pct": 20.0, "wet_over_expected": 0.79},
        {"wet_gain_large", "wet_still_low_after_gain"},
    ),
    ({"excess_gain_pct": 20.0, "wet_over_expected": 0.80}, {"wet_gain_large"}),
    ({"excess_gain_pct": 5.0}, {"wet_gain_some"}),
    ({"excess_gain_pct": 4.9}, set()),
    (
        {"excess_gain_pct": 4.9, "level_ratio": 0.7},
        {"compression_low_one_cylinder", "wet_gain_none"},
    ),
    # Build-up: short with q below 0.8 or not; full within four strokes.
    ({"build_up_pattern": "builds_up_but_short"}, {"builds_up_but_short"}),
    ({"build_up_pattern": "like_a_fixed_leak"}, {"fixed_leak_pattern"}),
    ({"build_up_pattern": "normal"}, set()),
    (
        {"build_up_pattern": "normal", "strokes_to_95": 4, "last_over_expected": 0.9},
        {"full_in_few_strokes"},
    ),
    ({"build_up_pattern": "normal", "strokes_to_95": 5, "last_over_expected": 0.9}, set()),
    (
        {"build_up_pattern": "pattern_not_judged", "strokes_to_95": 3, "last_over_expected": 1.0},
        {"full_in_few_strokes"},
    ),
    (
        {"build_up_pattern": "slow_but_full", "strokes_to_95": 4, "last_over_expected": 0.95},
        set(),
    ),
    # Leak-down: a grade goes before the per cent; the per cent counts where it can be graded.
    ({"leak_grade": "good"}, {"leak_down_tight"}),
    ({"leak_grade": "tear_down"}, {"leak_down_large"}),
    ({"leak_grade": "worn"}, set()),
    ({"leak_grade": "not_gradeable", "leak_pct": 40.0}, set()),
    ({"leak_pct": 10.0, "leak_gradeable": "yes"}, {"leak_down_tight"}),
    ({"leak_pct": 30.0, "leak_gradeable": "yes"}, set()),
    ({"leak_pct": 30.1, "leak_gradeable": "yes"}, {"leak_down_large"}),
    ({"leak_pct": 30.1}, set()),
    (
        {"leak_pct": 9.0, "leak_gradeable": "restrictor_outside", "leak_grade": "good"},
        {"leak_down_tight"},
    ),
    # With a decompressor at work the leak is an upper bound: small proves tight, no more.
    ({"leak_pct": 10.0, "leak_gradeable": "upper_bound"}, {"leak_down_tight"}),
    ({"leak_pct": 10.0, "leak_gradeable": "decompressor_active"}, {"leak_down_tight"}),
    ({"leak_pct": 10.1, "leak_gradeable": "decompressor_active"}, set()),
    ({"leak_pct": 45.0, "leak_gradeable": "decompressor_active"}, set()),
    ({"leak_grade": "tear_down", **LIFTED}, {"decompressor_not_held_off"}),
    ({"leak_grade": "good", **LIFTED}, {"decompressor_not_held_off", "leak_down_tight"}),
    (
        {"leak_pct": 45.0, "leak_gradeable": "yes", **LIFTED},
        {"decompressor_not_held_off", "leak_down_large"},
    ),
    ({"leak_grade": "tear_down", "leak_gradeable": "not_at_firing_tdc"}, set()),
    ({"heard_at": "oil_filler_or_breather"}, {"air_at_breather"}),
    ({"heard_at": "exhaust"}, {"air_at_exhaust"}),
    ({"heard_at": "intake"}, {"air_at_intake"}),
    ({"heard_at": "radiator"}, {"bubbles_in_coolant"}),
    ({"heard_at": "neighbour_plug_hole"}, {"air_at_neighbour_plug_hole"}),
    ({"heard_at": "head_joint"}, {"foam_at_head_joint"}),
    ({"heard_at": "nowhere"}, set()),
    ({"heard_at": "intake", "cycle": "two_stroke"}, {"two_stroke_air_at_intake"}),
    ({"heard_at": "exhaust", "cycle": "two_stroke"}, {"two_stroke_air_at_exhaust"}),
    ({"crankcase_finding": "holds", "cycle": "two_stroke"}, {"crankcase_holds"}),
    ({"crankcase_finding": "leaks_under_vacuum", "cycle": "two_stroke"}, {"crankcase_leaks"}),
    ({"crankcase_finding": "leaks_under_pressure", "cycle": "two_stroke"}, {"crankcase_leaks"}),
    ({"crankcase_finding": "leaks_under_both", "cycle": "two_stroke"}, {"crankcase_leaks"}),
    ({"crankcase_finding": "vacuum_not_tested", "cycle": "two_stroke"}, set()),
    # Oil use above its limit, together with a low or a normal cylinder; alone it says nothing.
    ({"oil_use_grade": "usual"}, {"oil_use_negligible"}),
    ({"oil_use_grade": "worn"}, set()),
    ({"oil_use_grade": "find_out"}, set()),
    (
        {"oil_use_grade": "find_out", "level_ratio": 0.7},
        {"compression_low_one_cylinder", "oil_use_high_compression_low"},
    ),
    ({"oil_use_grade": "find_out", "level_ratio": 1.0}, {"compression_good"}),
    ({"oil_use_grade": "find_out", "level_ratio": 1.0, "leak_grade": "worn"}, {"compression_good"}),
    (
        {"oil_use_grade": "find_out", "level_ratio": 1.0, "leak_grade": "serviceable"},
        {"compression_good", "oil_use_high_cylinder_tight"},
    ),
    # How the test was made.
    ({"throttle_open": False}, {"throttle_not_fully_open"}),
    ({"throttle_open": True, "choke_off": False}, {"throttle_not_fully_open"}),
    ({"throttle_open": True, "battery_v": 9.5}, {"cranking_slow"}),
    ({"throttle_open": True, "battery_v": 9.6}, set()),
    ({"throttle_open": True, "engine_warm": False}, {"engine_cold_in_test"}),
    (
        {
            "throttle_open": True,
            "decompressor": "automatic_exhaust_lifter",
            "decompressor_state": "automatic_active",
        },
        {"decompressor_not_held_off"},
    ),
]


@pytest.mark.parametrize(("known", "expected"), MEASURED, ids=in_words)
def test_a_measured_test_is_evidence_by_itself(known: dict[str, Any], expected: set[str]) -> None:
    found = at_hand(diagnosed(**known))
    assert found == dict.fromkeys(expected, "measured")


def test_what_is_told_is_not_read_twice() -> None:
    """Told low on all cylinders, measured low: the measurement alone cannot say on how many."""
    found = diagnosed("compression_low_all_alike", level_ratio=0.7, cylinder_count=2)
    assert at_hand(found) == {"compression_low_all_alike": "told"}
    assert at_hand(diagnosed("compression_low_one_cylinder", level_ratio=0.7)) == {
        "compression_low_one_cylinder": "told"
    }


def own(
    weight: float,
    evidence: str = "compression_low_one_cylinder",
    suspect: str = "rings_or_bore",
    **more: Any,
) -> dict[str, Any]:
    return {"weights": [{"evidence": evidence, "suspect": suspect, "weight": weight, **more}]}


def test_a_weight_of_the_request_takes_the_place_of_the_table() -> None:
    assert scores(diagnosed("compression_low_one_cylinder"))["rings_or_bore"] == 1.1
    assert scores(diagnosed("compression_low_one_cylinder", **own(1.7)))["rings_or_bore"] == 1.7
    assert scores(diagnosed("compression_low_one_cylinder", **own(-0.3)))["rings_or_bore"] == -0.3
    assert "rings_or_bore" not in scores(diagnosed("compression_low_one_cylinder", **own(0.0)))
    # Of other evidence it changes nothing.
    assert scores(diagnosed("wet_gain_large", **own(1.7))) == scores(diagnosed("wet_gain_large"))


def test_a_weight_of_the_request_where_the_table_has_none() -> None:
    found = diagnosed(
        "compression_low_one_cylinder",
        **own(3.0, suspect="lash_loose", reason="seen on these engines"),
    )
    (line,) = [line for line in found.lines if line.suspect == "lash_loose"]
    assert (line.counts, line.why) == (3.0, "seen on these engines")
    turned = diagnosed("compression_low_one_cylinder", **own(-1.0))
    (line,) = [line for line in turned.lines if line.suspect == "rings_or_bore"]
    assert line.why == "weight of the request"
    kept = diagnosed("compression_low_one_cylinder", **own(1.5))
    (line,) = [line for line in kept.lines if line.suspect == "rings_or_bore"]
    assert line.why == "leak past rings lowers the peak"


def test_the_figures_of_the_request_hold() -> None:
    """rings_or_bore: strong and moderate, 3.0 + 1.0; with the table's weights 2.0 + 1.1."""
    found = diagnosed(
        "compression_low_one_cylinder", "wet_gain_large", strong_weight=3.0, moderate_weight=1.0
    )
    assert scores(found)["rings_or_bore"] == 4.0
    assert (
        diagnosed("compression_low_one_cylinder", "wet_gain_large", least_score=3.2).headline
        == "no_strong_suspect"
    )
    # Rings 3.1; the next is tight lash with 1.1 of the low reading: the wet gain says nothing.
    assert (
        diagnosed("compression_low_one_cylinder", "wet_gain_large").statement
        == "rings or bore leads by 2.0"
    )
    assert (
        diagnosed("compression_low_one_cylinder", "wet_gain_large", least_lead=2.1).headline
        == "not_settled"
    )
    halved = diagnosed(
        "throttle_not_fully_open", "compression_low_one_cylinder", unsound_test_share=0.5
    )
    assert counted(halved, "rings_or_bore") == {"compression_low_one_cylinder": 0.55}


def test_common_practice_switched_off_leaves_the_weights_of_the_request() -> None:
    found = diagnosed("compression_low_one_cylinder", "air_at_exhaust", defaults=False, **own(2.5))
    assert scores(found) == {"rings_or_bore": 2.5}
    assert found.headline == "ranking_only"
    assert found.next_test is None
    assert at_hand(found) == {"compression_low_one_cylinder": "told", "air_at_exhaust": "told"}


def test_common_practice_switched_off_and_nothing_weighed() -> None:
    found = diagnosed("compression_good", "full_in_few_strokes", "leak_down_tight", defaults=False)
    assert found.suspects == ()
    assert found.headline == "nothing_weighed"
    assert found.first is None
    assert found.lead is None


def test_common_practice_switched_off_judges_by_the_figures_of_the_request() -> None:
    figures = {"least_score": 2.0, "least_lead": 1.0}
    found = diagnosed("compression_low_one_cylinder", defaults=False, **own(2.5), **figures)
    assert found.statement == "rings or bore leads by 2.5"
    assert (
        diagnosed("compression_low_one_cylinder", defaults=False, **own(1.5), **figures).headline
        == "no_strong_suspect"
    )


def test_common_practice_switched_off_gives_an_invalid_test_no_share() -> None:
    found = diagnosed(
        "throttle_not_fully_open", "compression_low_one_cylinder", defaults=False, **own(2.0)
    )
    assert found.headline == "test_not_valid"
    assert counted(found, "rings_or_bore") == {"compression_low_one_cylinder": 0.0}
    whole = diagnosed(
        "throttle_not_fully_open",
        "compression_low_one_cylinder",
        defaults=False,
        unsound_test_share=1.0,
        **own(2.0),
    )
    assert counted(whole, "rings_or_bore") == {"compression_low_one_cylinder": 2.0}
