"""What holds for any evidence: order, direction, scale, families. Checked on drawn evidence."""

import math
from typing import Any

from diagnosing import at_hand, counted, diagnosed, scores
from hypothesis import assume, given
from hypothesis import strategies as st

from ringland_service.core.calculations.diagnosis.tables import (
    EVIDENCE,
    FIGURES,
    FOR,
    RULES,
    SUSPECTS,
    WEIGHTS,
)
from ringland_service.engine.answer import Refused

CYCLES = ("four_stroke", "two_stroke")
ENGINE = {"decompressor": "manual_lifter", "decompressor_state": "manual_not_used"}
CONNECTED = {
    name
    for rule in ("test_not_valid", "low_but_tight", "tight_cylinder", "oil_ring")
    for name in (*RULES[rule].all, *RULES[rule].any)
}


def possible(cycle: str) -> list[str]:
    return [r.id for r in EVIDENCE.values() if r.cycle in ("", cycle) and not r.derived]


@st.composite
def told(draw: Any, least: int = 1) -> tuple[str, list[str]]:
    """Return a cycle and evidence of it that can stand together."""
    cycle = draw(st.sampled_from(CYCLES))
    names = st.lists(st.sampled_from(possible(cycle)), min_size=least, max_size=12, unique=True)
    evidence = draw(names)
    try:
        ask(cycle, evidence)
    except Refused:
        assume(False)
    return cycle, evidence


def ask(cycle: str, evidence: list[str], **more: Any) -> Any:
    engine = ENGINE if cycle == "four_stroke" else {"decompressor": "none"}
    kept = [n for n in evidence if n not in ("E06", "E07") or cycle == "four_stroke"]
    return diagnosed(*kept, cycle=cycle, **{**engine, **more})


@given(told(), st.randoms(use_true_random=False))
def test_the_order_of_the_evidence_does_not_matter(of: Any, random: Any) -> None:
    cycle, evidence = of
    shuffled = list(evidence)
    random.shuffle(shuffled)
    assert ask(cycle, shuffled) == ask(cycle, evidence)


@given(told(), st.data())
def test_evidence_for_a_suspect_never_lowers_it(of: Any, data: Any) -> None:
    """But for evidence that makes the test invalid, or sets other lines aside."""
    cycle, evidence = of
    left = [n for n in possible(cycle) if n not in evidence and n not in CONNECTED]
    more = data.draw(st.sampled_from(left))
    before = scores(ask(cycle, evidence))
    try:
        after = scores(ask(cycle, [*evidence, more]))
    except Refused:
        assume(False)
    for line in EVIDENCE[more].lines:
        if line.suspect in after:
            change = after[line.suspect] - before.get(line.suspect, 0.0)
            assert change >= -1e-9 if line.direction == FOR else change <= 1e-9
    for suspect in before.keys() - {line.suspect for line in EVIDENCE[more].lines}:
        assert after[suspect] == before[suspect]


@given(told(), st.floats(0.1, 4.0))
def test_scores_scale_with_the_weights(of: Any, times: float) -> None:
    cycle, evidence = of
    scaled = {f"{name}_weight": FIGURES[name].value * times for name in WEIGHTS}
    plain, more = scores(ask(cycle, evidence)), scores(ask(cycle, evidence, **scaled))
    assert plain.keys() == more.keys()
    for suspect, score in plain.items():
        assert math.isclose(more[suspect], times * score, rel_tol=1e-9, abs_tol=1e-8)


@given(told())
def test_scores_are_the_sum_of_their_families(of: Any) -> None:
    """Families are added; the evidence of each by itself gives its share of the score."""
    cycle, evidence = of
    assume(not CONNECTED & set(evidence))
    whole = scores(ask(cycle, evidence))
    total = dict.fromkeys(SUSPECTS, 0.0)
    for family in {EVIDENCE[name].family for name in evidence}:
        part = [name for name in evidence if EVIDENCE[name].family == family]
        for suspect, score in scores(ask(cycle, part)).items():
            total[suspect] += score
    for suspect, score in whole.items():
        assert math.isclose(score, total[suspect], abs_tol=1e-9)


@given(told())
def test_of_a_family_one_line_counts_for_and_one_against(of: Any) -> None:
    cycle, evidence = of
    found = ask(cycle, evidence)
    for suspect in scores(found):
        seen = set()
        for name, counts in counted(found, suspect).items():
            if counts:
                side = (EVIDENCE[name].family, counts > 0)
                assert side not in seen
                seen.add(side)


@given(told())
def test_the_ranking_holds_together(of: Any) -> None:
    cycle, evidence = of
    found = ask(cycle, evidence)
    ranked = scores(found)
    assert list(ranked.values()) == sorted(ranked.values(), reverse=True)
    assert set(ranked) | set(found.silent) | {r.id for r in found.left_out} >= SUSPECTS.keys()
    assert not set(ranked) & set(found.silent)
    for suspect, score in ranked.items():
        assert math.isclose(score, sum(counted(found, suspect).values()), abs_tol=1e-9)
    assert set(evidence) <= at_hand(found).keys() | {"E06", "E07"}
    if found.headline == "leads":
        assert found.statement.startswith(f"{found.first} leads by ")
        assert ranked[found.first] >= 2.0
        assert found.lead >= 1.1 - 1e-9
