"""The decision for a cylinder hears the tests: one case a rule, and each edge met exactly.

Rules and steps: the trade brief, D.1 and the table of how decision and tests speak to each other
(common practice, no source). Engines invented; W1 and W2 are its two jobs of several cylinders.
"""

from typing import Any

import pytest
from cylinders import DECISION, HEALTHY, PLATED, asked, decided, ranked, wants, way

from ringland_service.core.calculations.decision import cylinder_ways
from ringland_service.core.calculations.decision._conditions import (
    BROKEN,
    HOLDS,
    NOT_KNOWN,
    judged,
)
from ringland_service.core.calculations.decision._options_kept import leave_alone
from ringland_service.core.calculations.decision._sealing import AGAINST, SEALS
from ringland_service.core.metrology.findings import Finding
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.composite import answer_composite
from ringland_service.engine.request import Request
from ringland_service.engine.response import DomainError

# A cylinder left on its engine: nothing measured, the piston stays in.
CLOSED: dict[str, Any] = {
    "bore_kind": "iron",
    "cycle": "four_stroke",
    "damage": "none",
    "piston_stays_in": True,
}
LEAK = {"leak_gradeable": "yes"}
EXHAUST = {"heard_at": "exhaust"}


# --- sealing rings ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("tests", "seals"),
    [
        ({**LEAK, "leak_pct": 20.0}, True),
        ({**LEAK, "leak_pct": 20.01}, False),
        ({**LEAK, "leak_pct": 100 * (690.0 - 552.0) / 690.0}, True),
        ({"leak_pct": 5.0}, False),
        ({"leak_pct": 5.0, "leak_gradeable": "restrictor_outside"}, False),
        ({"leak_pct": 5.0, "leak_gradeable": "not_at_firing_tdc"}, False),
        ({"leak_pct": 10.0, "leak_gradeable": "upper_bound"}, True),
        ({"leak_pct": 20.0, "leak_gradeable": "decompressor_active"}, True),
        ({"leak_pct": 21.0, "leak_gradeable": "decompressor_active"}, False),
        ({"leak_grade": "serviceable"}, True),
        ({"leak_grade": "worn"}, False),
        ({"leak_grade": "not_gradeable"}, False),
        ({"excess_gain_pct": 4.99, "level_ratio": 0.90}, True),
        ({"excess_gain_pct": 4.99, "level_ratio": 1.2}, True),
        ({"excess_gain_pct": 4.99, "level_ratio": 0.8999}, False),
        ({"excess_gain_pct": 5.0, "level_ratio": 0.95}, False),
        ({"excess_gain_pct": 4.99}, False),
        ({"level_ratio": 0.95}, False),
        ({**LEAK, "excess_gain_pct": 4.99, "leak_pct": 42.6, "heard_at": "exhaust"}, True),
        ({**LEAK, "excess_gain_pct": 4.99, "leak_pct": 20.01, "heard_at": "radiator"}, True),
        ({**LEAK, "excess_gain_pct": 5.0, "leak_pct": 42.6, "heard_at": "exhaust"}, False),
        ({**LEAK, "excess_gain_pct": 4.99, "leak_pct": 42.6, "heard_at": "nowhere"}, False),
        ({**LEAK, "excess_gain_pct": 4.99, "leak_pct": 42.6}, False),
        ({"excess_gain_pct": 4.99, "leak_pct": 42.6, "heard_at": "exhaust"}, False),
        (
            {
                "excess_gain_pct": 1.0,
                "level_ratio": 0.95,
                "diagnosis_headline": "test_not_valid",
            },
            False,
        ),
        ({}, False),
    ],
)
def test_tests_that_show_sealing_rings_stand_in_where_the_piston_stays_in(
    tests: dict[str, Any], seals: bool
) -> None:
    found = asked({**CLOSED, **tests})
    row = way(found, "leave_alone")
    assert decided(found).way == ("leave_alone" if seals else "not_settled")
    assert row.standing == ("taken" if seals else "open")
    assert any("the rings seal" in reason for reason in row.reasons) == seals
    assert decided(found).fault_shown is None
    assert decided(found).would_show is None


def test_what_would_show_sealing_rings_is_asked_for() -> None:
    found = asked(CLOSED)
    assert {"leak_pct", "leak_gradeable"} <= wants(found)
    assert not wants(asked({**CLOSED, **LEAK, "leak_pct": 12.0})) & {"bore_survey", "leak_pct"}


@pytest.mark.parametrize("told", [None, False])
def test_tests_stand_in_only_where_the_piston_stays_in(told: bool | None) -> None:
    found = asked({**CLOSED, **LEAK, "leak_pct": 5.0}, piston_stays_in=told)
    assert decided(found).way == "not_settled"


def test_what_is_measured_counts_all_the_same() -> None:
    """Only what is missing is stood in for; a reading that fails, or is too close, is not."""
    sealed = {**HEALTHY, **LEAK, "leak_pct": 5.0}
    assert decided(asked(sealed, old_gap_mm=None)).way == "leave_alone"
    assert way(asked(sealed, old_gap_mm=0.60), "leave_alone").standing == "falls_out"
    assert way(asked(sealed, surface="glazed"), "leave_alone").standing == "falls_out"
    close = asked(
        {**sealed, "old_gap_mm": None},
        uncertainties={"bore_survey.pin_axis_mm": 0.007, "bore_survey.thrust_axis_mm": 0.007},
        limits={"bore_largest": Limit(None, 60.025)},
    )
    assert way(close, "leave_alone").standing == "open"


def test_the_gap_on_the_bench_needs_no_test() -> None:
    assert decided(asked(HEALTHY)).way == "leave_alone"


@pytest.mark.parametrize("close", [HOLDS, NOT_KNOWN, BROKEN])
@pytest.mark.parametrize(
    ("word", "state"),
    [("pass", HOLDS), ("fail", BROKEN), ("too_close_to_call", None), ("not_judged", NOT_KNOWN)],
)
def test_what_is_not_judged_counts_for_nothing(close: str, word: str, state: str | None) -> None:
    """Whatever too close to call counts as for a way: not judged is not settled."""
    finding = Finding("liner_wall", word, "a wall")
    (condition,) = judged([finding], "liner_wall", None, close=close)
    assert condition.state == (close if state is None else state)


@pytest.mark.parametrize(
    ("verdict", "tests", "standing"),
    [
        ("fail", {**LEAK, "leak_pct": 45.0, "heard_at": "oil_filler_or_breather"}, "falls_out"),
        ("not_judged", {**LEAK, "leak_pct": 45.0, "heard_at": "oil_filler_or_breather"}, "open"),
        ("not_judged", {**LEAK, "leak_pct": 45.0, "excess_gain_pct": 1.0, **EXHAUST}, "open"),
        ("pass", {**LEAK, "leak_pct": 15.0}, "possible"),
        ("too_close_to_call", {**LEAK, "leak_pct": 20.0}, "open"),
        ("fail", {**LEAK, "leak_pct": 15.0}, "open"),
        (
            "fail",
            {**LEAK, "leak_pct": 15.0, "excess_gain_pct": 1.0, "level_ratio": 0.95},
            "possible",
        ),
        ("pass", {"excess_gain_pct": 1.0, "level_ratio": 0.95}, "possible"),
        ("not_judged", {"excess_gain_pct": 1.0, "level_ratio": 0.95}, "open"),
    ],
)
def test_a_test_that_is_not_judged_speaks_neither_for_nor_against(
    verdict: str, tests: dict[str, Any], standing: str
) -> None:
    """Where the piston stood not told, say: valves may have been open; or a gauge that is unfit.

    A small leak speaks for the rings where its verdict passes: the maker's limit may be narrower.
    """
    findings = tuple(Finding(name, verdict, "") for name in ("leak_down", "compression_least"))
    inputs = cylinder_ways.Inputs(**{**CLOSED, "findings": findings, **tests})
    assert leave_alone(inputs).standing == standing


# --- what speaks against the rings --------------------------------------------------------------


@pytest.mark.parametrize(
    ("tests", "said"),
    [
        (
            {**LEAK, "leak_pct": 30.01, "heard_at": "oil_filler_or_breather"},
            "a leak-down of 30.0 % (above 30 %, common practice), heard at oil filler",
        ),
        ({**LEAK, "leak_pct": 30.0, "heard_at": "oil_filler_or_breather"}, None),
        ({**LEAK, "leak_pct": 45.0, "heard_at": "exhaust"}, None),
        ({**LEAK, "leak_pct": 45.0}, None),
        ({"leak_pct": 45.0, "heard_at": "oil_filler_or_breather"}, None),
        (
            {"leak_grade": "tear_down", "heard_at": "oil_filler_or_breather"},
            "a leak-down graded tear down",
        ),
        (
            {
                "leak_pct": 45.0,
                "leak_gradeable": "decompressor_active",
                "heard_at": "oil_filler_or_breather",
            },
            None,
        ),
        ({"excess_gain_pct": 15.0}, "a gain of 15.0 % beyond the oil's own volume"),
        ({"excess_gain_pct": 14.99}, None),
        ({"excess_gain_pct": 25.0, "diagnosis_headline": "test_not_valid"}, None),
        (
            {
                "oil_use_grade": "find_out",
                "suspects": ranked(rings_or_bore=3.1, guide_or_stem_seal=2.0),
            },
            "too much oil",
        ),
        (
            {
                "oil_use_grade": "find_out",
                "suspects": ranked(rings_or_bore=3.0, guide_or_stem_seal=2.0),
            },
            None,
        ),
        (
            {
                "oil_use_grade": "find_out",
                "suspects": ranked(guide_or_stem_seal=4.0, rings_or_bore=2.0),
            },
            None,
        ),
        ({"oil_use_grade": "find_out"}, None),
        ({"oil_use_grade": "worn", "suspects": ranked(rings_or_bore=1.9)}, None),
        ({"suspects": ranked(rings_or_bore=2.0)}, "rings or bore lead"),
        ({"suspects": ranked(rings_or_bore=3.0), "diagnosis_headline": "test_not_valid"}, None),
        ({"suspects": ranked(piston_damage=4.0, rings_or_bore=1.0)}, "the piston leads"),
        (
            {
                "suspects": ranked(exhaust_valve=5.0, rings_or_bore=1.0),
                "diagnosis_headline": "leads",
            },
            None,
        ),
    ],
)
def test_leaving_it_alone_falls_out_where_the_tests_speak_against_the_rings(
    tests: dict[str, Any], said: str | None
) -> None:
    """The bench passes throughout: without the test the cylinder is left alone."""
    found = asked({**HEALTHY, **tests})
    row = way(found, "leave_alone")
    if said is None:
        assert decided(found).way == "leave_alone"
        return
    assert row.standing == "falls_out"
    assert any(said in reason for reason in row.reasons), row.reasons
    assert decided(found).way == "hone_and_re_ring"


@pytest.mark.parametrize("place", ["exhaust", "intake"])
def test_a_two_stroke_hears_its_rings_at_the_ports(place: str) -> None:
    """Air passes the rings to the port, or through the crankcase to the intake (C11)."""
    large = {**LEAK, "leak_pct": 45.0, "heard_at": place}
    base = {**PLATED, "piston_size_mm": 59.950}
    assert way(asked({**base, **large}), "leave_alone").standing == "falls_out"
    four_stroke = {**HEALTHY, **large}
    assert decided(asked(four_stroke)).way == "leave_alone"


def test_a_two_stroke_has_no_breather() -> None:
    with pytest.raises(DomainError, match="neither oil filler nor breather"):
        asked({**PLATED, **LEAK, "leak_pct": 45.0, "heard_at": "oil_filler_or_breather"})


def test_against_goes_before_for() -> None:
    """A small leak does not undo what the wet test shows."""
    both = {**CLOSED, **LEAK, "leak_pct": 12.0, "excess_gain_pct": 15.0}
    assert way(asked(both), "leave_alone").standing == "falls_out"


# --- the two jobs of several cylinders ------------------------------------------------------------


@pytest.mark.parametrize("leak", [5.79710, 5.07246, 6.08696])
def test_first_job_sound_cylinders_are_left_alone(leak: float) -> None:
    assert decided(asked({**CLOSED, **LEAK, "leak_pct": leak})).way == "leave_alone"


def test_first_job_a_burnt_valve_leaves_its_cylinder_alone() -> None:
    """Excess 0.337289 %, 42.6087 % heard at the exhaust, the exhaust valve before the lash."""
    weak = {
        **LEAK,
        "leak_pct": 42.6087,
        "heard_at": "exhaust",
        "excess_gain_pct": 0.337289,
        "level_ratio": 0.487522,
        "suspects": ranked(exhaust_valve=8.8, lash_tight=3.7, rings_or_bore=0.4),
        "diagnosis_headline": "leads",
    }
    found = asked({**CLOSED, **weak, "bore_kind": "plated_aluminium"})
    assert decided(found).way == "leave_alone"
    assert "confirms it" in decided(found).reason


def test_second_job_the_cylinder_that_stays_on() -> None:
    """602 of 690 kPa: 12.7536 %; piston 2.0, rings and joint 1.1: not settled."""
    stays = {
        **CLOSED,
        **LEAK,
        "cycle": "two_stroke",
        "bore_kind": "plated_aluminium",
        "surface": "clean",
        "leak_pct": 12.7536,
        "heard_at": "nowhere",
        "suspects": ranked(
            piston_damage=2.0, rings_or_bore=1.1, head_joint=1.1, crankcase_leak=-2.0
        ),
        "diagnosis_headline": "not_settled",
    }
    found = asked(stays)
    assert decided(found).way == "leave_alone"
    assert decided(found).fault_shown is None


# --- the table ------------------------------------------------------------------------------------


def test_each_rule_stands_once_in_the_table() -> None:
    assert len({one.id for one in SEALS}) == len(SEALS) == 3
    assert len({one.id for one in AGAINST}) == len(AGAINST) == 5


def test_common_practice_switched_off_takes_the_steps_away() -> None:
    """What is left are a scale of the tester's maker, and the figures of the request."""

    def off(**more: Any) -> Any:
        request = Request(inputs=DECISION.inputs(**CLOSED, **more), defaults=False)
        return decided(answer_composite(DECISION, request)).way

    assert off(leak_pct=5.0, leak_gradeable="yes") == "not_settled"
    assert off(excess_gain_pct=1.0, level_ratio=0.95) == "not_settled"
    assert off(leak_grade="good") == "leave_alone"
