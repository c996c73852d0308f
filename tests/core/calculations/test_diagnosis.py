"""The diagnosis: described engines, and the rules of addition one by one.

Weights and rules are those of the trade brief (common practice, no source); sums are by hand.
"""

from typing import Any

import pytest
from diagnosing import ENGINES, at_hand, counted, diagnosed, scores

FOR_RB_AND_PS = {"rings_or_bore": 2.0, "piston_damage": 1.1}


def test_there_are_thirty_described_engines() -> None:
    assert len(ENGINES) >= 30
    assert len({engine["name"] for engine in ENGINES}) == len(ENGINES)
    assert {e["source"] for e in ENGINES} <= {"trade brief", "common practice, no source"}
    assert all(engine["told"] and engine["reasoning"] for engine in ENGINES)


@pytest.mark.parametrize("engine", ENGINES, ids=lambda engine: engine["name"])
def test_described_engine(engine: dict[str, Any]) -> None:
    found = diagnosed(**{"evidence": [], "decompressor": "unknown", **engine["inputs"]})
    assert found.headline == engine["headline"]
    if "first" in engine:
        assert found.first == engine["first"]
    if "next" in engine:
        assert engine["next"] in found.next_test


def test_rule_1_two_lines_of_a_family_are_not_two_proofs() -> None:
    """One family: only the stronger counts, for and against (rings_or_bore 2.0 and 1.1)."""
    both = diagnosed("wet_gain_large", "wet_still_low_after_gain")
    assert counted(both, "rings_or_bore") == {
        "wet_gain_large": 2.0,
        "wet_still_low_after_gain": 0.0,
    }
    # exhaust_valve: wet_gain_large against, wet_still_low_after_gain for, 1.1 each.
    assert counted(both, "exhaust_valve") == {
        "wet_still_low_after_gain": 1.1,
        "wet_gain_large": -1.1,
    }
    (less,) = [line for line in both.lines if line.weight and not line.counts]
    assert "wet_gain_large of the same family counts" in less.why


def test_rule_1_direct_proofs_stand_in_families_of_their_own() -> None:
    assert (
        scores(diagnosed("coolant_falls_no_leak_seen", "combustion_gas_in_coolant"))["head_joint"]
        == 6.0
    )


@pytest.mark.parametrize(
    "trigger",
    [
        "throttle_not_fully_open",
        "cranking_slow",
        "readings_not_repeating",
        "gauge_adaptor_unsuitable",
        "decompressor_not_held_off",
    ],
)
def test_rule_2_readings_of_an_invalid_test_count_a_quarter(trigger: str) -> None:
    found = diagnosed(
        trigger,
        "compression_low_one_cylinder",
        "wet_gain_none",
        "air_at_exhaust",
        decompressor="unknown",
    )
    assert found.statement == "test not valid: repeat"
    # Level and wet gain at a quarter, 1.1/4; the place of the leak whole.
    assert counted(found, "lash_tight") == {
        "air_at_exhaust": 2.0,
        "compression_low_one_cylinder": 0.275,
        "wet_gain_none": 0.275,
    }


@pytest.mark.parametrize(
    "other", ["engine_cold_in_test", "jumps_to_normal", "oil_and_coolant_mixed"]
)
def test_rule_2_other_lines_of_test_error_do_not_trigger(other: str) -> None:
    found = diagnosed(other, "compression_low_one_cylinder")
    assert found.headline != "test_not_valid"
    assert counted(found, "rings_or_bore")["compression_low_one_cylinder"] == 1.1


def test_rule_3_suspects_that_the_engine_cannot_have() -> None:
    two_stroke = diagnosed("compression_low_one_cylinder", cycle="two_stroke")
    assert {row.id for row in two_stroke.left_out} == {
        "exhaust_valve",
        "intake_valve",
        "guide_or_stem_seal",
        "lash_tight",
        "lash_loose",
        "cam_timing",
        "decompressor",
    }
    assert not scores(two_stroke).keys() & {"exhaust_valve", "intake_valve", "lash_tight"}
    four_stroke = diagnosed("compression_low_one_cylinder", decompressor="manual_lifter")
    assert {row.id for row in four_stroke.left_out} == {"crankcase_leak"}


def test_rule_4_low_but_tight_is_evidence_of_its_own() -> None:
    assert (
        at_hand(diagnosed("compression_low_one_cylinder", "leak_down_tight"))["low_but_tight"]
        == "derived"
    )
    assert (
        at_hand(diagnosed("compression_low_all_alike", "leak_down_tight", cylinder_count=2))[
            "low_but_tight"
        ]
        == "derived"
    )
    assert "low_but_tight" not in at_hand(diagnosed("compression_good", "leak_down_tight"))
    assert "low_but_tight" not in at_hand(
        diagnosed("compression_low_one_cylinder", "leak_down_large")
    )


@pytest.mark.parametrize(
    ("place", "at"),
    [("air_at_breather", "four_stroke"), ("two_stroke_air_at_intake", "two_stroke")],
)
def test_rule_5_a_little_ring_leak_is_always_there(place: str, at: str) -> None:
    open_, tight = diagnosed(place, cycle=at), diagnosed(place, "leak_down_tight", cycle=at)
    for suspect, weight in FOR_RB_AND_PS.items():
        assert counted(open_, suspect)[place] == weight
        assert counted(tight, suspect) == {place: 0.0, "leak_down_tight": -4.0}
    assert counted(tight, "head_joint" if at == "four_stroke" else "crankcase_leak")[place] > 0


def test_rule_6_compression_and_leak_down_are_blind_to_the_oil_ring() -> None:
    with_oil = diagnosed(
        "compression_good", "full_in_few_strokes", "leak_down_tight", "oil_use_high_cylinder_tight"
    )
    assert counted(with_oil, "rings_or_bore") == {
        "oil_use_high_cylinder_tight": 1.1,
        "compression_good": 0.0,
        "full_in_few_strokes": 0.0,
        "leak_down_tight": 0.0,
    }
    assert counted(with_oil, "exhaust_valve") == {
        "compression_good": -2.0,
        "full_in_few_strokes": -1.1,
        "leak_down_tight": -4.0,
    }


def test_rule_7_what_cannot_be_judged_is_no_evidence() -> None:
    no_baseline = diagnosed("builds_up_but_short", build_up_pattern="pattern_not_judged")
    assert at_hand(no_baseline) == {}
    assert "baseline" in why_left_out(no_baseline)["builds_up_but_short"]
    other_tester = diagnosed("leak_down_large", "air_at_breather", leak_grade="not_gradeable")
    assert set(at_hand(other_tester)) == {"air_at_breather"}
    assert "cannot be graded" in why_left_out(other_tester)["leak_down_large"]
    by_the_common_steps = diagnosed(
        "leak_down_tight", leak_pct=9.0, leak_gradeable="supply_outside"
    )
    assert at_hand(by_the_common_steps) == {}


def test_a_leak_with_a_decompressor_at_work_is_an_upper_bound() -> None:
    """C11: small, it proves the cylinder tight; large, it says nothing, told or measured."""
    tight = diagnosed("leak_down_tight", leak_gradeable="decompressor_active")
    assert set(at_hand(tight)) == {"leak_down_tight"}
    large = diagnosed("leak_down_large", leak_gradeable="decompressor_active")
    assert at_hand(large) == {}
    assert "upper bound" in why_left_out(large)["leak_down_large"]
    too_large = diagnosed("leak_down_tight", leak_pct=12.0, leak_gradeable="decompressor_active")
    assert at_hand(too_large) == {}


def why_left_out(found: Any) -> dict[str, str]:
    return {row.id: row.why for row in found.left_out}


def test_rule_8_a_missing_test_is_no_evidence() -> None:
    bare, listened = (
        diagnosed("compression_low_one_cylinder"),
        diagnosed("compression_low_one_cylinder", heard_at="nowhere"),
    )
    assert scores(bare) == scores(listened)


@pytest.mark.parametrize(
    ("kind", "exhaust", "intake"),
    [
        ("automatic_exhaust_lifter", 1.1, 0.0),
        ("manual_lifter", 1.1, 0.0),
        ("automatic_intake_side", 0.0, 0.4),
        ("unknown", 1.1, 0.4),
    ],
)
def test_rule_12_the_kind_of_decompressor_decides_the_place(
    kind: str, exhaust: float, intake: float
) -> None:
    assert counted(diagnosed("air_at_exhaust", decompressor=kind), "decompressor") == {
        "air_at_exhaust": exhaust
    }
    assert counted(diagnosed("air_at_intake", decompressor=kind), "decompressor") == {
        "air_at_intake": intake
    }


HEADLINES = [
    # The first that fits: an invalid test goes before everything.
    (
        ("throttle_not_fully_open", "compression_good", "full_in_few_strokes", "leak_down_tight"),
        {},
        "test not valid: repeat",
    ),
    (
        ("compression_good", "full_in_few_strokes", "leak_down_tight"),
        {},
        "nothing wrong shown by these tests",
    ),
    # Guides at 2.0 stand above 0, so something is shown.
    (
        ("compression_good", "full_in_few_strokes", "leak_down_tight", "blue_smoke_on_overrun"),
        {},
        "guide or stem seal leads by 2.0",
    ),
    (("compression_low_one_cylinder",), {}, "no strong suspect from these tests"),
    # Two moderate lines of two families: 2.2 is enough, but six suspects share it.
    (("compression_low_one_cylinder", "wet_gain_none", "lash_within"), {}, "not settled"),
    (
        ("air_at_exhaust", "pops_in_exhaust"),
        {"decompressor": "manual_lifter"},
        "not settled: hold the decompressor off and repeat first",
    ),
    (("air_at_exhaust", "pops_in_exhaust"), {}, "not settled: measure the lash first"),
    (("air_at_exhaust", "pops_in_exhaust", "lash_within"), {}, "exhaust valve leads by 2.0"),
    (("timing_marks_off",), {}, "cam timing leads by 4.0"),
]


@pytest.mark.parametrize(("evidence", "engine", "statement"), HEADLINES)
def test_rule_9_the_headline_is_the_first_that_fits(
    evidence: tuple[str, ...], engine: dict[str, Any], statement: str
) -> None:
    assert diagnosed(*evidence, **engine).statement == statement


@pytest.mark.parametrize(
    ("state", "held"),
    [("automatic_held_off", True), ("automatic_active", False), ("unknown", False)],
)
def test_rule_9_a_valve_and_a_decompressor(state: str, held: bool) -> None:
    lifter = {"decompressor": "automatic_intake_side", "decompressor_state": state}
    found = diagnosed("air_at_exhaust", "lash_within", "pops_in_exhaust", **lifter)
    valve_first = found.statement == "exhaust valve leads by 2.0"
    assert valve_first is held
    # Shown directly: the decompressor itself leads.
    assert (
        diagnosed(
            "changes_with_decompressor_held_off", "air_at_exhaust", "lash_within", **lifter
        ).first
        == "decompressor"
    )


def test_rule_9_a_lead_of_exactly_the_least_is_one() -> None:
    """rings_or_bore 2.0 + 1.1 = 3.1; piston_damage 2.0; 3.1 - 2.0 is 1.1 but for a float's hair."""
    found = diagnosed("blue_smoke_on_load", "plug_metal_specks", "slap_when_cold")
    assert scores(found)["rings_or_bore"] - scores(found)["piston_damage"] == pytest.approx(
        1.1, rel=1e-12
    )
    assert found.statement == "rings or bore leads by 1.1"


def test_rule_10_strong_evidence_for_and_against_is_flagged() -> None:
    found = diagnosed("air_at_exhaust", "air_at_intake")
    flagged = {(r.suspect, r.speaks_for, r.speaks_against) for r in found.contradictory}
    assert flagged == {
        ("exhaust_valve", "air_at_exhaust", "air_at_intake"),
        ("intake_valve", "air_at_intake", "air_at_exhaust"),
    }
    assert diagnosed("air_at_exhaust", "pops_in_exhaust").contradictory is None
    # What is set aside contradicts nothing: a tight leak-down puts air at the breather out.
    assert diagnosed("leak_down_tight", "air_at_breather").contradictory is None


def test_rule_11_kicking_back_at_a_good_level() -> None:
    good, high = (
        diagnosed("compression_good", "kicks_back"),
        diagnosed("compression_high", "kicks_back"),
    )
    assert good.next_test == "check the flywheel key and the ignition timing"
    assert high.next_test != good.next_test


def test_the_lead_is_over_those_that_nothing_spoke_of_too() -> None:
    """timing_marks_off speaks for cam_timing alone, 4.0; compression_high for carbon, 2.0."""
    found = diagnosed("timing_marks_off")
    assert (found.first, found.lead) == ("cam_timing", 4.0)
    assert set(found.silent) >= {"rings_or_bore", "exhaust_valve", "head_joint"}
