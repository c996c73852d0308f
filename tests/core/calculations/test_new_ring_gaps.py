"""New rings' gaps: judged by the range that is served, filed only under it, never past a limit."""

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.calculations.cylinder import ring_gap
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.engine.answer import Answer
from ringland_service.engine.question import Question
from ringland_service.engine.scalar import answer

RINGS = {
    "top": ("top_measured_mm", "top_ring_gap", "ring_gap.new.top"),
    "second": ("second_measured_mm", "second_ring_gap", "ring_gap.new.second"),
}


def ask(bore: float, ring: str, gap: float, own: Limit | None = None, **more: Any) -> Answer:
    field, check, _ = RINGS[ring]
    inputs = ring_gap.Inputs(bore_mm=bore, **{field: gap}, **more)
    limits = {} if own is None else {check: own}
    return answer(ring_gap.CALCULATION, Question(inputs, limits=limits))


def told(found: Answer, ring: str) -> tuple[str, str, float]:
    check = RINGS[ring][1]
    word = next(v.word for v in found.verdicts if v.check.name == check)
    outputs = found.outputs
    return word, getattr(outputs, f"{ring}_what_to_do"), getattr(outputs, f"file_{ring}_mm")


def test_a_gap_inside_the_range_served_passes_and_is_left() -> None:
    """By hand: 0.0035 · 65.6 = 0.2296 and 0.0045 · 65.6 = 0.2952; 0.25 lies between."""
    found = ask(65.6, "top", 0.25)
    verdict = found.verdicts[0]
    assert (verdict.limit.low, verdict.limit.high) == pytest.approx((0.2296, 0.2952))
    assert told(found, "top") == ("pass", "leave", 0.0)


@pytest.mark.parametrize(
    ("ring", "gap", "expected"),
    [
        # 0.0035 · 60 = 0.21, 0.0045 · 60 = 0.27, filed to 0.004 · 60 = 0.24.
        ("top", 0.21, ("pass", "leave", 0.0)),
        ("top", 0.20, ("fail", "file", 0.04)),
        ("top", 0.27, ("pass", "leave", 0.0)),
        ("top", 0.28, ("fail", "too_large", 0.0)),
        # 0.0045 · 60 = 0.27, 0.0055 · 60 = 0.33, filed to 0.005 · 60 = 0.30.
        ("second", 0.27, ("pass", "leave", 0.0)),
        ("second", 0.26, ("fail", "file", 0.04)),
        ("second", 0.34, ("fail", "too_large", 0.0)),
    ],
)
def test_the_ends_of_the_range(ring: str, gap: float, expected: tuple[str, str, float]) -> None:
    """By hand, from the table of limits (common practice, no source)."""
    word, action, filed = told(ask(60.0, ring, gap), ring)
    assert (word, action) == expected[:2]
    assert filed == pytest.approx(expected[2])


@pytest.mark.parametrize(
    ("own", "gap", "filed"),
    [
        (Limit(high=0.22), 0.20, 0.02),
        (Limit(high=0.22), 0.22, 0.0),
        (Limit(high=0.22), 0.25, 0.0),
        (Limit(low=0.15, high=0.3), 0.21, 0.0),
        (Limit(low=0.15, high=0.3), 0.12, 0.03),
        (Limit(low=0.3), 0.28, 0.02),
    ],
)
@pytest.mark.parametrize("ring", ["top", "second"])
def test_nothing_is_filed_past_a_stated_largest_gap(
    own: Limit, gap: float, filed: float, ring: str
) -> None:
    """By hand in a bore of 60 mm: usual targets 0.24 and 0.30, both past a largest gap of 0.22."""
    found = ask(60.0, ring, gap, own)
    assert told(found, ring)[2] == pytest.approx(filed)


@given(
    bore=st.floats(30.0, 110.0),
    gap=st.floats(0.05, 0.9),
    ring=st.sampled_from(["top", "second"]),
    low=st.none() | st.floats(0.1, 0.3),
    high=st.none() | st.floats(0.3, 0.6),
    factor=st.none() | st.floats(0.002, 0.012),
)
def test_verdict_filing_and_word_never_contradict_each_other(
    bore: float, gap: float, ring: str, low: float | None, high: float | None, factor: float | None
) -> None:
    own = None if low is None and high is None else Limit(low, high)
    more = {} if factor is None else {f"{ring}_factor": factor}
    found = ask(bore, ring, gap, own, **more)
    word, action, filed = told(found, ring)
    assert (filed > 0) == (action == "file") or filed == 0
    if action != "file":
        assert filed == 0
    if high is not None and at_most(gap, high):
        assert at_most(gap + filed, high)
    if own is None and factor is None:
        assert (word == "pass") == (action == "leave")
    if action == "file":
        after = ask(bore, ring, gap + filed, own, **more)
        assert told(after, ring)[0] == "pass"
        assert told(after, ring)[2] == pytest.approx(0.0, abs=1e-9)


def test_the_limit_is_the_row_that_is_served() -> None:
    for ring, (_, check, row) in RINGS.items():
        found = ask(50.0, ring, 0.2)
        limit = next(v.limit for v in found.verdicts if v.check.name == check)
        assert (limit.low, limit.high) == (
            LIMITS[row].limit(50.0).low,
            LIMITS[row].limit(50.0).high,
        )


def test_columns_say_the_same() -> None:
    gaps = np.array([0.20, 0.24, 0.28])
    inputs = ring_gap.Inputs(bore_mm=np.array([60.0] * 3), top_measured_mm=gaps)
    found = ring_gap.compute(inputs)
    assert found.top_what_to_do.tolist() == ["file", "leave", "too_large"]
    assert found.file_top_mm == pytest.approx([0.04, 0.0, 0.0])
    assert beyond(found.top_wanted_mm[0], 0.2)
