"""The base gasket chosen, and the floor of squish by size of cylinder."""

import dataclasses
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.calculations.geometry import squish
from ringland_service.core.calculations.geometry._squish_floor import floor_in_force, squish_floor
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.question import Question, Stated
from ringland_service.engine.scalar import answer

SQUISH = squish.CALCULATION
JOB: dict[str, Any] = {
    "solder_at_pin_axis_mm": (1.32, 1.36),
    "squish_doubt_mm": 0.04,
    "base_gasket_fitted_mm": 0.5,
    "base_gaskets_mm": (0.2, 0.3, 0.4, 0.5, 0.8),
    "squish_wanted_mm": 1.0,
}


def asked(limit: float | None = None, *, defaults: bool = True, **changed: Any) -> Any:
    limits = {} if limit is None else {"smallest_squish": Limit(limit)}
    inputs = squish.Inputs(**{**JOB, **changed})
    return answer(SQUISH, Question(inputs, limits=limits, defaults=defaults))


def hundredths(low: int, high: int) -> st.SearchStrategy[int]:
    return st.integers(low, high)


@given(
    solder=st.lists(hundredths(60, 200), min_size=2, max_size=4),
    fitted=hundredths(0, 100),
    at_hand=st.lists(hundredths(0, 150), min_size=1, max_size=8),
    wanted=hundredths(60, 200),
    floor=hundredths(50, 150),
    doubt=hundredths(1, 10),
)
def test_the_choice_against_counting_in_hundredths(
    solder: list[int], fitted: int, at_hand: list[int], wanted: int, floor: int, doubt: int
) -> None:
    """Outside: whole numbers, every gasket tried one by one, with no rounding anywhere."""
    found = asked(
        floor / 100,
        solder_at_pin_axis_mm=tuple(s / 100 for s in solder),
        base_gasket_fitted_mm=fitted / 100,
        base_gaskets_mm=tuple(g / 100 for g in at_hand),
        squish_wanted_mm=wanted / 100,
        squish_doubt_mm=doubt / 100,
    ).outputs
    keep = [g for g in at_hand if min(solder) - (fitted - g) - doubt >= floor]
    # Distances times the number of readings are whole; on a tie the thicker.
    count, total = len(solder), sum(solder)

    def far(gasket: int) -> tuple[int, int]:
        return abs(count * (gasket - fitted - wanted) + total), -gasket

    best = min(keep, key=far, default=None)
    assert found.chosen_gasket_mm == (None if best is None else best / 100)
    others = [g for g in keep if g != best]
    second = min(others, key=far, default=None)
    assert found.runner_up_gasket_mm == (None if second is None else second / 100)
    assert found.nearest_gasket_mm == min(at_hand, key=far) / 100
    words = ["keeps_floor" if g in keep else "under_floor" for g in at_hand]
    assert list(found.outcomes) == words


def test_the_requests_own_floor_decides() -> None:
    """The worked example's 1.0 lets 0.3 in; 0.9 lets 0.2 in, 1.2 only 0.5 and 0.8 (by hand)."""
    chosen = {floor: asked(floor).outputs.chosen_gasket_mm for floor in (0.9, 1.0, 1.2)}
    assert chosen == {0.9: 0.2, 1.0: 0.3, 1.2: 0.5}


def test_doubt_of_the_reading_does_not_tip_the_choice() -> None:
    """U of what follows from the reading is that of the reading, though 0.3 is on the floor."""
    found = asked(1.08)
    assert found.outputs.chosen_gasket_mm == 0.3
    assert 2 * found.u["squish_after_mm"] == pytest.approx(0.04, rel=1e-6)
    verdicts = {v.check.name: v.word for v in found.verdicts}
    assert verdicts["smallest_squish_after"] == "pass"


def test_doubt_stated_on_each_solder_averages_in_the_mean() -> None:
    """Two readings of U = 0.04 each: 0.04/sqrt(2) in the mean (JCGM 100:2008, from memory)."""
    inputs = squish.Inputs(solder_at_pin_axis_mm=(1.32, 1.36))
    doubts: dict[Any, Stated] = {("solder_at_pin_axis_mm",): Stated(0.04)}
    found = answer(SQUISH, Question(inputs, doubts=doubts))
    assert 2 * found.u["squish_mm"] == pytest.approx(0.04 / 2**0.5, rel=1e-6)
    assert 2 * found.u["smallest_squish_mm"] == pytest.approx(0.04, rel=1e-6)


def test_without_common_practice_only_what_is_given_decides() -> None:
    size: dict[str, Any] = {"cycle": "two_stroke", "bore_mm": 56.0, "stroke_mm": 58.0}
    plain = asked(**size, squish_doubt_mm=None, squish_wanted_mm=None, defaults=False).outputs
    assert (plain.floor_used_mm, plain.wanted_used_mm, plain.doubt_used_mm) == (None, None, 0.0)
    assert plain.chosen_gasket_mm is None
    usual = asked(**size, squish_doubt_mm=None, squish_wanted_mm=None).outputs
    assert (usual.floor_used_mm, usual.doubt_used_mm) == (1.1, 0.04)
    assert usual.wanted_used_mm == pytest.approx(1.3, rel=1e-12)


# Common practice, no source: the larger of what shops say, by size of cylinder.
FLOORS = [
    ("two_stroke", 50.0, 0.7),
    ("two_stroke", 65.0, 0.7),
    ("two_stroke", 65.1, 0.9),
    ("two_stroke", 125.0, 0.9),
    ("two_stroke", 142.9, 1.1),
    ("two_stroke", 250.1, 1.5),
    ("four_stroke", 125.0, 0.8),
    ("four_stroke", 239.7, 1.0),
]


@pytest.mark.parametrize(("cycle", "swept", "low"), FLOORS)
def test_floor_by_size(cycle: str, swept: float, low: float) -> None:
    found = squish_floor(cycle, swept)
    assert found is not None
    assert (found.low, found.high, found.standing) == (low, None, "common_practice")


@pytest.mark.parametrize("cycle", ["two_stroke", "four_stroke"])
def test_floor_of_a_column(cycle: str) -> None:
    sizes = np.array([swept for of, swept, _ in FLOORS if of == cycle])
    found = squish_floor(cycle, sizes)
    assert found is not None
    assert found.low == pytest.approx([low for of, _, low in FLOORS if of == cycle])


def test_floor_in_force() -> None:
    usual, own = Limit(1.0, None, "common_practice"), Limit(0.9, 1.4, "maker")
    assert floor_in_force(own, usual) == dataclasses.replace(own, high=None)
    assert floor_in_force(Limit(None, 1.4), usual) is usual
    assert floor_in_force(None, None) is None
    assert squish_floor(None, 100.0) is None
    assert squish_floor("two_stroke", None) is None
