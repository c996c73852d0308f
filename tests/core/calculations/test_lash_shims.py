"""Choosing lash shims: against every way to share them out, ties, doubt, and what is refused."""

import itertools
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from ringland_service.core.calculations.head import lash_shim
from ringland_service.core.calculations.head._shim_inputs import Inputs, Valve
from ringland_service.core.calculations.head._shim_jobs import pieces
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.question import Question, Stated
from ringland_service.engine.scalar import answer

SHIM = lash_shim.CALCULATION
RANGE = {"lash_low_mm": 0.2, "lash_high_mm": 0.3}
ONE: dict[str, Any] = {"old_shim_mm": 2.648, "measured_lash_mm": 0.06, **RANGE}
STEPS = {"shim_step_mm": 0.05, "shim_least_mm": 1.2, "shim_most_mm": 3.5}


def ask(inputs: dict[str, Any], **about: Any) -> Answer:
    return answer(SHIM, Question(inputs=Inputs(**inputs), **about))


def valve(name: str, old: float, lash: float, **more: Any) -> Valve:
    return Valve(name=name, old_shim_mm=old, measured_lash_mm=lash, **more)


# Hundredths of a millimetre: whole numbers, so that the witness below has no rounding.
Hundredths = st.integers(0, 60)


@given(
    st.lists(st.tuples(st.integers(235, 265), Hundredths), min_size=1, max_size=3),
    st.lists(st.integers(220, 280), min_size=1, max_size=4),
)
def test_no_other_way_to_share_them_out_is_better(
    taken: list[tuple[int, int]], at_hand: list[int]
) -> None:
    """Independent: every way to give the pieces out, tried one by one in whole hundredths."""
    # A valve in range as found takes no part: it is left as it is.
    taken = [(old, lash) for old, lash in taken if not 20 <= lash <= 30]
    assume(taken)
    several = tuple(valve(f"v{k}", old / 100, lash / 100) for k, (old, lash) in enumerate(taken))
    shims = tuple(shim / 100 for shim in at_hand)
    rows = ask({**RANGE, "valves": several, "shims_at_hand_mm": shims}).outputs.valve_shims
    given_out = [None if row.shim_mm is None else round(row.shim_mm * 100) for row in rows]
    places = [*range(len(at_hand)), *[None] * len(taken)]
    best = min(
        rank([None if p is None else at_hand[p] for p in way], taken)
        for way in set(itertools.permutations(places, len(taken)))
    )
    assert rank(given_out, taken) == best
    used = [shim for shim in given_out if shim is not None]
    assert all(used.count(shim) <= at_hand.count(shim) for shim in used)


def rank(way: list[int | None], taken: list[tuple[int, int]]) -> tuple[int, int]:
    """Return how many go without, and how far the others miss the aim of 25 hundredths."""
    lashes = [
        None if shim is None else old + lash - shim
        for shim, (old, lash) in zip(way, taken, strict=True)
    ]
    within = [lash for lash in lashes if lash is not None and 20 <= lash <= 30]
    return len(taken) - len(within), sum(abs(lash - 25) for lash in within)


@given(st.integers(200, 300), Hundredths, st.sets(st.integers(180, 340), min_size=1, max_size=12))
def test_one_valve_takes_the_nearest_and_the_looser_of_a_tie(
    old: int, lash: int, at_hand: set[int]
) -> None:
    found = ask(
        {
            **RANGE,
            "old_shim_mm": old / 100,
            "measured_lash_mm": lash / 100,
            "shims_at_hand_mm": tuple(shim / 100 for shim in at_hand),
        }
    ).outputs
    fitting = [old + lash - shim for shim in at_hand if 20 <= old + lash - shim <= 30]
    ranked = sorted(fitting, key=lambda gives: (abs(gives - 25), -gives))
    assert found.shims_that_fit == len(fitting)
    for name, place in (("lash_after_mm", 0), ("runner_up_lash_mm", 1)):
        value = getattr(found, name)
        if len(ranked) <= place:
            assert value is None
        else:
            assert round(value * 100) == ranked[place]
    told = {round(row.shim_mm * 100): row.outcome for row in found.shims_tried}
    assert told.keys() == at_hand
    for shim, outcome in told.items():
        gives = old + lash - shim
        expected = {"too_thick"} if gives < 20 else {"too_thin"} if gives > 30 else None
        assert outcome in (expected or {"chosen", "runner_up", "fits"})


@given(
    st.integers(1000, 3400), st.integers(0, 1500), st.sampled_from([5, 10, 20, 25, 50, 100, 500])
)
def test_shims_made_to_a_step(old: int, lash: int, step: int) -> None:
    """In thousandths: the choice among 1.2, 1.2 + step … up to 3.5 mm, by counting."""
    found = ask(
        {
            **RANGE,
            "old_shim_mm": old / 1000,
            "measured_lash_mm": lash / 1000,
            "shim_step_mm": step / 1000,
            "shim_least_mm": 1.2,
            "shim_most_mm": 3.5,
        }
    ).outputs
    made = range(1200, 3501, step)
    lashes = [old + lash - shim for shim in made]
    fitting = [gives for gives in lashes if 200 <= gives <= 300]
    assert found.shims_that_fit == len(fitting)
    if fitting:
        nearest = min(fitting, key=lambda gives: (abs(gives - 250), -gives))
        assert found.lash_after_mm == pytest.approx(nearest / 1000, abs=1e-9)
        return
    assert found.outcome == "none_fits"
    thin = max((shim for shim in made if old + lash - shim > 300), default=None)
    thick = min((shim for shim in made if old + lash - shim < 200), default=None)
    assert found.nearest_thinner_mm == (None if thin is None else pytest.approx(thin / 1000))
    assert found.nearest_thicker_mm == (None if thick is None else pytest.approx(thick / 1000))


def test_the_steps_made_end_where_the_maker_says() -> None:
    made = pieces(Inputs(**ONE, **STEPS))
    assert (made[0], made[1], made[-1], len(made)) == (1.2, 1.25, 3.5, 47)


def test_doubt_near_a_tie_does_not_tip_the_choice() -> None:
    """Aims of 0.25 missed by 0.025 either way: the doubt is the readings' own, no step of 0.05."""
    inputs = {**ONE, "old_shim_mm": 2.6, "measured_lash_mm": 0.125, **STEPS}
    doubts = {("measured_lash_mm",): Stated(uncertainty=0.0141421)}
    found = ask(inputs, doubts=doubts)
    assert found.outputs.shim_chosen_mm == 2.45
    assert found.outputs.lash_after_mm == pytest.approx(0.275)
    assert 2 * found.u["lash_after_mm"] == pytest.approx(0.0141421, rel=1e-6)
    assert "shim_chosen_mm" not in found.u
    word = next(v.word for v in found.verdicts if v.check.name == "lash_with_new_shim")
    assert word == "pass"


def test_each_of_several_valves_is_judged() -> None:
    several = (valve("intake", 2.6, 0.1), valve("exhaust", 2.7, 0.05, lash_low_mm=0.25))
    inputs = {**RANGE, "valves": several, "shims_at_hand_mm": (2.41, 2.46)}
    doubts = {("valves", k, "measured_lash_mm"): Stated(uncertainty=0.0141421) for k in range(2)}
    found = ask(inputs, doubts=doubts)
    judged = {v.of: (v.word, v.u) for v in found.verdicts if v.check.name == "lash_after_each"}
    # By hand: 2.7 - 2.41 = 0.29 or 2.7 - 2.46 = 0.24 for the intake, 2.75 - 2.46 = 0.29 for the
    # exhaust alone; margins 0.01 each, both within 0.0141421.
    assert found.outputs.valves_shimmed == ("intake", "exhaust")
    assert found.outputs.lash_margins_mm == pytest.approx((0.01, 0.01))
    assert {name: word for name, (word, _) in judged.items()} == {
        "intake": "too_close_to_call",
        "exhaust": "too_close_to_call",
    }
    assert all(u == pytest.approx(0.00707105, rel=1e-6) for _, u in judged.values())


REFUSED: list[tuple[dict[str, Any], str]] = [
    ({**ONE, **STEPS, "shims_at_hand_mm": (2.4,)}, "offered at once"),
    ({**ONE, **STEPS, "gear": "bucket", "stem_movement_per_lash": 1.2}, "under a bucket"),
    ({**ONE, **STEPS, "lash_low_mm": 0.3, "lash_high_mm": 0.2}, "least lash is not under"),
    ({**ONE, **STEPS, "target_lash_mm": 0.31}, "aimed at is outside the range"),
    ({**ONE, **STEPS, "shim_least_mm": 3.6}, "thicker than the thickest"),
    ({**ONE, "use_shims_taken_out": True}, "only one valve is asked about"),
    ({**ONE, "use_shims_taken_out": False}, "no shims are on offer"),
    ({**RANGE, **STEPS, "valves": (valve("a", 2.5, 0.1), valve("a ", 2.5, 0.1))}, "one name"),
    ({**RANGE, **STEPS, "valves": (valve(" ", 2.5, 0.1),)}, "a name is empty"),
    ({**STEPS, "valves": (valve("a", 2.5, 0.1, lash_low_mm=0.2),)}, "no range of lash"),
    ({**ONE, **STEPS, "valves": (valve("a", 2.5, 0.1),)}, "asked about at once"),
]


@pytest.mark.parametrize(("inputs", "why"), REFUSED)
def test_refused(inputs: dict[str, Any], why: str) -> None:
    with pytest.raises(Refused, match=why):
        ask(inputs)


def test_a_finger_that_is_said_to_move_as_the_lash_does() -> None:
    found = ask({**ONE, **STEPS, "gear": "finger_or_rocker"})
    assert "finger_moves_otherwise" in {w.code for w in found.warnings}


def test_own_ranges_go_before_the_common_one() -> None:
    """The exhaust's own range has its own middle; the common target is the intake's."""
    several = (
        valve("intake", 2.5, 0.1),
        valve("exhaust", 2.5, 0.1, lash_low_mm=0.3, lash_high_mm=0.4),
        valve("exhaust 2", 2.5, 0.1, lash_low_mm=0.3, lash_high_mm=0.4, target_lash_mm=0.38),
    )
    rows = ask({**RANGE, **STEPS, "target_lash_mm": 0.24, "valves": several}).outputs.valve_shims
    assert [row.exact_mm for row in rows] == pytest.approx([2.36, 2.25, 2.22])


def test_valves_in_range_are_left_and_keep_their_shims() -> None:
    """By hand: A reads 0.22 of 0.20 to 0.30; its 2.50 would suit B (2.75 - 2.5 = 0.25)."""
    several = (valve("A", 2.5, 0.22), valve("B", 2.7, 0.05))
    inputs = {**RANGE, "valves": several, "use_shims_taken_out": True, "shims_at_hand_mm": (2.49,)}
    found = ask(inputs)
    rows = {row.valve: row for row in found.outputs.valve_shims}
    assert (rows["A"].outcome, rows["A"].shim_mm) == ("leave", None)
    assert (rows["B"].outcome, rows["B"].shim_mm) == ("fits", 2.49)
    words = {(v.check.name, v.of): v.word for v in found.verdicts}
    assert words == {
        ("lash_found_each", "A"): "pass",
        ("lash_found_each", "B"): "fail",
        ("lash_after_each", "B"): "pass",
    }


def test_each_valve_is_judged_by_its_own_range_as_found_and_after() -> None:
    several = (
        valve("intake", 2.6, 0.12, lash_low_mm=0.1, lash_high_mm=0.15),
        valve("exhaust", 2.6, 0.12),
    )
    found = ask({**RANGE, "valves": several, "shims_at_hand_mm": (2.47,)})
    judged = {(v.check.name, v.of): v for v in found.verdicts}
    limits = {key: (v.limit.low, v.limit.high) for key, v in judged.items()}
    assert limits[("lash_found_each", "intake")] == (0.1, 0.15)
    assert limits[("lash_found_each", "exhaust")] == (0.2, 0.3)
    assert judged[("lash_found_each", "exhaust")].value == 0.12
    assert judged[("lash_after_each", "exhaust")].value == pytest.approx(0.25)
    assert {v.word for key, v in judged.items() if key[1] == "intake"} == {"pass"}


def test_uncertainty_at_the_edge_of_the_range_does_not_tip_who_is_left() -> None:
    several = (valve("A", 2.5, 0.2), valve("B", 2.7, 0.05))
    inputs = {**RANGE, "valves": several, "use_shims_taken_out": True, "shims_at_hand_mm": (2.49,)}
    doubts = {("valves", k, "measured_lash_mm"): Stated(uncertainty=0.0141421) for k in range(2)}
    found = ask(inputs, doubts=doubts)
    words = {(v.check.name, v.of): v.word for v in found.verdicts}
    assert words[("lash_found_each", "A")] == "too_close_to_call"
    assert found.outputs.valves_shimmed == ("B",)


@pytest.mark.parametrize(
    ("more", "field"),
    [
        ({**ONE, **STEPS, "lash_low_mm": 0.3, "lash_high_mm": 0.2}, "lash_low_mm"),
        ({**ONE, **STEPS, "target_lash_mm": 0.31}, "target_lash_mm"),
        ({**RANGE, **STEPS, "valves": (valve("A", 2.5, 0.1, lash_low_mm=0.4),)}, "valves"),
        ({**RANGE, **STEPS, "valves": (valve("A", 2.5, 0.1, target_lash_mm=0.4),)}, "valves"),
    ],
)
def test_what_is_wrong_with_the_lash_is_said_of_the_lash(more: dict[str, Any], field: str) -> None:
    with pytest.raises(Refused) as refused:
        ask(more)
    assert [fault.field for fault in refused.value.faults] == [field]
