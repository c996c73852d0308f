"""What the orders for the machinist refuse, and the uncertainty that they carry."""

from typing import Any

import pytest
from reference_cases import path_of

from ringland_service.core.calculations.machining import (
    bore_order,
    clean_up,
    crosshatch,
    liner_wall,
    oversize_choice,
    sleeve_fit,
)
from ringland_service.core.calculations.machining.clean_up import Score
from ringland_service.core.calculations.machining.oversize_choice import Offered
from ringland_service.core.declare import Calculation
from ringland_service.engine.request import Request, Stated
from ringland_service.engine.response import DomainError, Response
from ringland_service.engine.scalar import answer

CLEAN_UP = clean_up.CALCULATION
CHOICE = oversize_choice.CALCULATION
WALL = liner_wall.CALCULATION
ORDER = bore_order.CALCULATION
HATCH = crosshatch.CALCULATION
SLEEVE = sleeve_fit.CALCULATION

WORN = {"unworn_mm": 68.012, "bore_largest_mm": 68.094}
SECOND = Offered(mark="+0.50 mm", size_mm=68.461)
THIRD = Offered(mark="+0.75 mm", size_mm=68.711)
PISTONS = {
    "bore_kind": "iron",
    "clean_up_mm": 68.26,
    "clearance_target_mm": 0.035,
    "hone_stock_mm": 0.06,
    "pistons": (SECOND, THIRD),
}
SIZES = {
    "bore_kind": "iron",
    "piston_size_mm": 68.461,
    "clearance_low_mm": 0.03,
    "clearance_high_mm": 0.04,
    "hone_stock_mm": 0.06,
}
HONE = {
    "bore_mm": 68.496,
    "spindle_speed_rpm": 200.0,
    "travel_mm": 92.0,
    "strokes_per_minute_rpm": 100.0,
}
LINER = {"liner_od_mm": 75.0, "finish_high_mm": 68.5}
NOT_BORED = [
    ("plated_aluminium", "never sent for boring.*graded or selected piston.*replate"),
    ("chromed", "never sent for boring.*no chromed rings.*replate"),
    ("bare_silicon_aluminium", "never sent for plain boring.*special lapping"),
]

REFUSED: list[tuple[Calculation, dict[str, Any], str]] = [
    (CLEAN_UP, WORN | {"unworn_mm": 68.2}, "larger than the largest bore"),
    (CLEAN_UP, WORN | {"bore_largest_mm": 71.1}, "more than 3 mm"),
    (
        CLEAN_UP,
        WORN | {"scores": (Score(local_mm=68.095, depth_radial_mm=0.1),)},
        "local bore is larger",
    ),
    (
        CLEAN_UP,
        WORN | {"scores": (Score(local_mm=68.011, depth_radial_mm=0.1),)},
        "local bore is smaller",
    ),
    (CHOICE, PISTONS | {"pistons": (SECOND, SECOND)}, "two pistons carry one mark"),
    (
        CHOICE,
        PISTONS | {"pistons": (Offered(mark="  ", size_mm=68.461),)},
        "a mark is empty",
    ),
    (CHOICE, PISTONS | {"nominal_bore_mm": 65.0}, "not one offered for this bore"),
    (CHOICE, PISTONS | {"nominal_bore_mm": 69.0}, "not one offered for this bore"),
    (CHOICE, PISTONS | {"clean_up_mm": 72.0}, "more than 3 mm apart"),
    (CHOICE, PISTONS | {"largest_oversize_mm": 1.0}, "without the nominal bore"),
    (WALL, LINER | {"finish_high_mm": 75.0}, "as large as the outside"),
    (WALL, {"liner_od_mm": 70.0, "finish_high_mm": 68.0, "core_shift_mm": 1.0}, "breaks out"),
    (ORDER, SIZES | {"clearance_high_mm": 0.03}, "not under the largest"),
    (ORDER, SIZES | {"returned_readings_mm": (68.496, 67.99)}, "not one of this bore"),
    (ORDER, SIZES | {"returned_readings_mm": (68.496, 69.002)}, "not one of this bore"),
    (SLEEVE, {"cylinder_bore_mm": 76.0, "sleeve_od_mm": 76.0}, "no interference"),
    (SLEEVE, {"cylinder_bore_mm": 76.0, "sleeve_od_mm": 76.301}, "above 0.3 mm"),
    *[
        (calculation, inputs | {"bore_kind": kind}, words)
        for calculation, inputs in ((CHOICE, PISTONS), (ORDER, SIZES), (HATCH, HONE))
        for kind, words in NOT_BORED
    ],
    (CHOICE, PISTONS | {"bore_kind": "unknown"}, "find out: a magnet"),
    (ORDER, SIZES | {"bore_kind": "unknown"}, "find out: a magnet"),
]


def ask(calculation: Calculation, inputs: dict[str, Any], **uncertainties: float) -> Response:
    stated = {path_of(name): Stated(uncertainty=u) for name, u in uncertainties.items()}
    return answer(calculation, Request(inputs=calculation.inputs(**inputs), uncertainties=stated))


@pytest.mark.parametrize(("calculation", "inputs", "words"), REFUSED)
def test_refused(calculation: Calculation, inputs: dict[str, Any], words: str) -> None:
    with pytest.raises(DomainError, match=words) as refused:
        ask(calculation, inputs)
    assert len(refused.value.faults) == 1


@pytest.mark.parametrize("kind", ["iron", "iron_sleeve_in_aluminium"])
def test_iron_is_bored(kind: str) -> None:
    assert ask(CHOICE, PISTONS | {"bore_kind": kind}).outputs.chosen == "+0.50 mm"
    assert ask(ORDER, SIZES | {"bore_kind": kind}).outputs.zone_mm == pytest.approx(0.01)


def test_a_hone_of_an_unknown_bore_is_warned_of() -> None:
    assert "bore_kind_unknown" in {w.code for w in ask(HATCH, HONE).warnings}


def test_the_depth_of_a_score_counts_twice() -> None:
    # By hand: the score governs, 68.012 + 2·(0.064 + 0.06); of it 2·U(depth) = 0.04 mm, and
    # twice the local bore's share.
    scores = (
        Score(local_mm=68.076, depth_radial_mm=0.06, side="worn_side"),
        Score(local_mm=68.03, depth_radial_mm=0.01, side="worn_side"),
    )
    depths = dict.fromkeys(("scores.0.depth_radial_mm", "scores.1.depth_radial_mm"), 0.02)
    found = ask(CLEAN_UP, WORN | {"scores": scores}, **depths)
    assert 2 * found.u["clean_up_mm"] == pytest.approx(0.04, rel=1e-6)
    assert 2 * found.u["score_diameters_mm"] == pytest.approx([0.04, 0.04], rel=1e-6)
    # Of one score alone the other stays as it is; so does what is said of a uncertain depth.
    assert "score_depth_uncertain" not in {w.code for w in found.warnings}
    one = ask(CLEAN_UP, WORN | {"scores": scores}, **{"scores.1.depth_radial_mm": 0.02})
    assert 2 * one.u["score_diameters_mm"] == pytest.approx([0.0, 0.04], rel=1e-6)
    assert "clean_up_mm" not in one.u
    assert "score_depth_uncertain" in {w.code for w in one.warnings}


def test_the_local_bore_of_a_score_carries_its_uncertainty() -> None:
    # By hand: 2·(share·local + depth), share 1: 2·sqrt(0.006² + 0.02²).
    scores = (Score(local_mm=68.076, depth_radial_mm=0.06, side="worn_side"),)
    uncertainties = {"scores.0.local_mm": 0.006, "scores.0.depth_radial_mm": 0.02}
    found = ask(CLEAN_UP, WORN | {"wear_side_share": 1.0, "scores": scores}, **uncertainties)
    assert 2 * found.u["clean_up_mm"] == pytest.approx(2 * (0.006**2 + 0.02**2) ** 0.5, rel=1e-6)


def test_one_sided_wear_counts_twice() -> None:
    # By hand: clean-up = 2·largest - reference: U = sqrt(4 + 1)·0.004.
    found = ask(CLEAN_UP, WORN, bore_largest_mm=0.004, unworn_mm=0.004)
    assert 2 * found.u["clean_up_mm"] == pytest.approx(0.004 * 5**0.5, rel=1e-6)


def test_the_margin_carries_the_uncertainty_of_both_sizes() -> None:
    # By hand: sqrt(0.04² + 0.003²) on each margin.
    sizes = {"pistons.0.size_mm": 0.003, "pistons.1.size_mm": 0.003}
    found = ask(CHOICE, PISTONS, clean_up_mm=0.04, **sizes)
    expected = (0.04**2 + 0.003**2) ** 0.5
    assert 2 * found.u["margins_mm"] == pytest.approx([expected, expected], rel=1e-6)
    assert 2 * found.u["chosen_margin_mm"] == pytest.approx(expected, rel=1e-6)


def test_each_piston_carries_its_own_uncertainty() -> None:
    # By hand: the first is chosen, so its uncertainty is the margin's; the other's stays its own.
    found = ask(CHOICE, PISTONS, **{"pistons.0.size_mm": 0.003, "pistons.1.size_mm": 0.008})
    assert 2 * found.u["margins_mm"] == pytest.approx([0.003, 0.008], rel=1e-6)
    assert 2 * found.u["chosen_margin_mm"] == pytest.approx(0.003, rel=1e-6)
    assert 2 * found.moved["pistons", 1, "size_mm"] == pytest.approx(0.008, rel=1e-12)


@pytest.mark.parametrize("beyond", [0.0, 1e-4, 5e-4, -1e-4, -5e-4])
def test_uncertainty_does_not_choose_another_piston(beyond: float) -> None:
    """Near no margin a step up would choose another size; its uncertainty is that of one margin."""
    clean = 68.436 + beyond
    found = ask(CHOICE, PISTONS | {"clean_up_mm": clean}, clean_up_mm=0.01)
    assert found.outputs.chosen == ("+0.75 mm" if beyond > 0 else "+0.50 mm")
    assert 2 * found.u["chosen_margin_mm"] == pytest.approx(0.01, rel=1e-6)


@pytest.mark.parametrize("beyond", [0.0, 1e-4, -1e-4])
def test_a_uncertain_piston_on_the_edge_stays_the_choice(beyond: float) -> None:
    edge = PISTONS | {"clean_up_mm": 68.436 + beyond}
    found = ask(CHOICE, edge, **{"pistons.0.size_mm": 0.01})
    assert found.outputs.chosen == ("+0.75 mm" if beyond > 0 else "+0.50 mm")
    # Of the piston that is not chosen no uncertainty reaches the margin.
    assert 2 * found.u.get("chosen_margin_mm", 0.0) == pytest.approx(
        0.0 if beyond > 0 else 0.01, rel=1e-6
    )


@pytest.mark.parametrize("beyond", [0.0, 1e-4, -1e-4])
def test_uncertainty_at_the_end_of_the_sizes(beyond: float) -> None:
    """Where the last piston is on the edge, uncertainty neither finds nor loses it."""
    edge = PISTONS | {"pistons": (SECOND,), "clean_up_mm": 68.436 + beyond}
    found = ask(CHOICE, edge, clean_up_mm=0.01)
    assert (found.outputs.chosen_margin_mm is None) == (beyond > 0)


def test_a_size_of_the_same_gauge_moves_all_readings() -> None:
    # Two readings alike: the smallest is as uncertain as each of them, not less.
    readings = {"returned_readings_mm": (68.496, 68.496), "size_uncertainty_mm": 0.005}
    found = ask(ORDER, SIZES | readings)
    assert 2 * found.u["returned_smallest_mm"] == pytest.approx(0.005, rel=1e-6)


def test_uncertainty_stated_twice_is_refused() -> None:
    readings = {"returned_readings_mm": (68.496,), "size_uncertainty_mm": 0.005}
    with pytest.raises(DomainError, match="stated twice"):
        ask(ORDER, SIZES | readings, returned_readings_mm=0.005)


def test_two_readings_alike_are_as_uncertain_as_each() -> None:
    # By hand: each reading with an uncertainty of its own; the smallest is one of them.
    for readings in ((68.496, 68.496), (68.496, 68.497)):
        found = ask(ORDER, SIZES | {"returned_readings_mm": readings}, returned_readings_mm=0.005)
        assert 2 * found.u["returned_smallest_mm"] == pytest.approx(0.005, rel=1e-6)
