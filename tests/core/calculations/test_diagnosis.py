"""The diagnosis: described engines, and the rules of addition one by one.

Weights and rules are those of the trade brief (common practice, no source); sums are by hand.
"""

from typing import Any

import pytest
from diagnosing import ENGINES, at_hand, counted, diagnosed, scores

from ringland_service.engine.answer import Refused

FOR_RB_AND_PS = {"RB": 2.0, "PS": 1.1}


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
    """E20 (RB 2.0) and E23 (RB 1.1) are one family: only the stronger counts, for and against."""
    both = diagnosed("E20", "E23")
    assert counted(both, "RB") == {"E20": 2.0, "E23": 0.0}
    # VX: E20 against, 1.1; E23 for, 1.1: the strongest of either side.
    assert counted(both, "VX") == {"E23": 1.1, "E20": -1.1}
    (less,) = [line for line in both.lines if line.weight and not line.counts]
    assert "E20 of the same family counts" in less.why


def test_rule_1_direct_proofs_stand_in_families_of_their_own() -> None:
    assert scores(diagnosed("E100", "E102"))["HG"] == 6.0


@pytest.mark.parametrize("trigger", ["E01", "E02", "E04", "E05", "E06"])
def test_rule_2_readings_of_an_invalid_test_count_a_quarter(trigger: str) -> None:
    found = diagnosed(trigger, "E10", "E21", "E61", decompressor="unknown")
    assert found.statement == "test not valid: repeat"
    # Level and wet gain at a quarter, 1.1/4; the place of the leak whole.
    assert counted(found, "LT") == {"E61": 2.0, "E10": 0.275, "E21": 0.275}


@pytest.mark.parametrize("other", ["E03", "E43", "E101"])
def test_rule_2_other_lines_of_test_error_do_not_trigger(other: str) -> None:
    found = diagnosed(other, "E10")
    assert found.headline != "test_not_valid"
    assert counted(found, "RB")["E10"] == 1.1


def test_rule_3_suspects_that_the_engine_cannot_have() -> None:
    two_stroke = diagnosed("E10", cycle="two_stroke")
    assert {row.id for row in two_stroke.left_out} == {"VX", "VI", "GS", "LT", "LL", "CT", "DC"}
    assert not scores(two_stroke).keys() & {"VX", "VI", "LT"}
    four_stroke = diagnosed("E10", decompressor="manual_lifter")
    assert {row.id for row in four_stroke.left_out} == {"CK"}


def test_rule_4_low_but_tight_is_evidence_of_its_own() -> None:
    assert at_hand(diagnosed("E10", "E50"))["E52"] == "derived"
    assert at_hand(diagnosed("E11", "E50", cylinders=2))["E52"] == "derived"
    assert "E52" not in at_hand(diagnosed("E13", "E50"))
    assert "E52" not in at_hand(diagnosed("E10", "E51"))


@pytest.mark.parametrize(("place", "at"), [("E60", "four_stroke"), ("E66", "two_stroke")])
def test_rule_5_a_little_ring_leak_is_always_there(place: str, at: str) -> None:
    open_, tight = diagnosed(place, cycle=at), diagnosed(place, "E50", cycle=at)
    for suspect, weight in FOR_RB_AND_PS.items():
        assert counted(open_, suspect)[place] == weight
        assert counted(tight, suspect) == {place: 0.0, "E50": -4.0}
    assert counted(tight, "HG" if at == "four_stroke" else "CK")[place] > 0


def test_rule_6_compression_and_leak_down_are_blind_to_the_oil_ring() -> None:
    with_oil = diagnosed("E13", "E42", "E50", "E90")
    assert counted(with_oil, "RB") == {"E90": 1.1, "E13": 0.0, "E42": 0.0, "E50": 0.0}
    assert counted(with_oil, "VX") == {"E13": -2.0, "E42": -1.1, "E50": -4.0}


def test_rule_7_what_cannot_be_judged_is_no_evidence() -> None:
    no_baseline = diagnosed("E40", build_up_pattern="pattern_not_judged")
    assert at_hand(no_baseline) == {}
    assert "baseline" in why_left_out(no_baseline)["E40"]
    other_tester = diagnosed("E51", "E60", leak_grade="not_gradeable")
    assert set(at_hand(other_tester)) == {"E60"}
    assert "cannot be graded" in why_left_out(other_tester)["E51"]
    by_the_common_steps = diagnosed("E50", leak_pct=9.0, leak_gradeable="supply_outside")
    assert at_hand(by_the_common_steps) == {}


def test_a_leak_with_a_decompressor_at_work_is_an_upper_bound() -> None:
    """C11: small, it proves the cylinder tight; large, it says nothing, told or measured."""
    tight = diagnosed("E50", leak_gradeable="decompressor_active")
    assert set(at_hand(tight)) == {"E50"}
    large = diagnosed("E51", leak_gradeable="decompressor_active")
    assert at_hand(large) == {}
    assert "upper bound" in why_left_out(large)["E51"]
    too_large = diagnosed("E50", leak_pct=12.0, leak_gradeable="decompressor_active")
    assert at_hand(too_large) == {}


def why_left_out(found: Any) -> dict[str, str]:
    return {row.id: row.why for row in found.left_out}


def test_rule_8_a_missing_test_is_no_evidence() -> None:
    bare, listened = diagnosed("E10"), diagnosed("E10", heard_at="nowhere")
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
    assert counted(diagnosed("E61", decompressor=kind), "DC") == {"E61": exhaust}
    assert counted(diagnosed("E62", decompressor=kind), "DC") == {"E62": intake}


HEADLINES = [
    # The first that fits: an invalid test goes before everything.
    (("E01", "E13", "E42", "E50"), {}, "test not valid: repeat"),
    (("E13", "E42", "E50"), {}, "nothing wrong shown by these tests"),
    # Guides at 2.0 stand above 0, so something is shown.
    (("E13", "E42", "E50", "E70"), {}, "GS leads by 2.0"),
    (("E10",), {}, "no strong suspect from these tests"),
    # Two moderate lines of two families: 2.2 is enough, but six suspects share it.
    (("E10", "E21", "E125"), {}, "not settled"),
    (
        ("E61", "E133"),
        {"decompressor": "manual_lifter"},
        "not settled: hold the decompressor off and repeat first",
    ),
    (("E61", "E133"), {}, "not settled: measure the lash first"),
    (("E61", "E133", "E125"), {}, "VX leads by 2.0"),
    (("E144",), {}, "CT leads by 4.0"),
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
    found = diagnosed("E61", "E125", "E133", **lifter)
    valve_first = found.statement == "VX leads by 2.0"
    assert valve_first is held
    # Shown directly: the decompressor itself leads.
    assert diagnosed("E07", "E61", "E125", **lifter).first == "DC"


def test_rule_9_a_lead_of_exactly_the_least_is_one() -> None:
    """RB: E71 2.0 + E135 1.1 = 3.1; PS: E82 2.0; 3.1 - 2.0 is 1.1 but for a float's hair."""
    found = diagnosed("E71", "E82", "E135")
    assert scores(found)["RB"] - scores(found)["PS"] == pytest.approx(1.1, rel=1e-12)
    assert found.statement == "RB leads by 1.1"


def test_rule_10_strong_evidence_for_and_against_is_flagged() -> None:
    found = diagnosed("E61", "E62")
    flagged = {(r.suspect, r.speaks_for, r.speaks_against) for r in found.contradictory}
    assert flagged == {("VX", "E61", "E62"), ("VI", "E62", "E61")}
    assert diagnosed("E61", "E133").contradictory is None
    # What is set aside contradicts nothing: E60 for RB is out by E50.
    assert diagnosed("E50", "E60").contradictory is None


def test_rule_11_kicking_back_at_a_good_level() -> None:
    good, high = diagnosed("E13", "E131"), diagnosed("E12", "E131")
    assert good.next_test == "check the flywheel key and the ignition timing"
    assert high.next_test != good.next_test


def test_the_lead_is_over_those_that_nothing_spoke_of_too() -> None:
    """E12 speaks for CB 2.0 and TE 0.4 and against the rest; E144 alone for CT 4.0."""
    found = diagnosed("E144")
    assert (found.first, found.lead) == ("CT", 4.0)
    assert set(found.silent) >= {"RB", "VX", "HG"}


REFUSED = [
    (("E10", "E12"), {}, r"E10 .* and E12 .* cannot both be: one dry reading"),
    (("E50", "E51"), {}, r"cannot both be: one leak-down"),
    (("E120", "E125"), {}, r"cannot both be: lash within its limits"),
    (("E11",), {"cylinders": 1}, r"a single has no neighbour"),
    (("E06",), {}, r"this engine has no decompressor"),
    (("E112",), {}, r"E112, .*: not on a four-stroke"),
    (("E70", "E71"), {"cycle": "two_stroke"}, r"E70, .*; E71, .*: not on a two-stroke"),
    (("E10",), {"moderate_weight": 3.0}, r"moderate line would count more than a strong one"),
    (
        ("E10",),
        {"weights": [{"evidence": "E10", "suspect": "RB", "weight": w} for w in (1.0, 2.0)]},
        r"weighed twice: E10 for RB",
    ),
]


@pytest.mark.parametrize(("evidence", "engine", "message"), REFUSED)
def test_what_cannot_be_is_refused(
    evidence: tuple[str, ...], engine: dict[str, Any], message: str
) -> None:
    with pytest.raises(Refused, match=message):
        diagnosed(*evidence, **engine)


def test_tight_and_loose_lash_may_stand_together() -> None:
    """On an engine with several valves; only lash within its limits excludes both."""
    assert scores(diagnosed("E120", "E121"))["LL"] == 2.0
