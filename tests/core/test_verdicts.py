"""The three-way verdict against decision cases worked outside, and its own rules."""

import csv
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.stats import norm

from ringland_service.core.metrology.conformity import (
    CLOSE,
    FAIL,
    GUARDS,
    ONE_SIDED_95,
    PASS,
    RULES,
    WORDS,
    at_most,
    beyond,
    is_column,
    judge,
    margin_to,
    narrower_than_guard,
    normal_cdf,
    probability_within,
)
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.unjudged import NOT_JUDGED

DATA = Path(__file__).resolve().parents[1] / "reference" / "data"
WORD = {"pass": PASS, "fail": FAIL, "inconclusive": CLOSE}


def decision_cases() -> list[dict[str, str]]:
    """Decision cases: words in exact decimal, probabilities of scipy and mpmath; see the file."""
    lines = (DATA / "decision_cases.csv").read_text("utf-8").splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("#")))


CASES = decision_cases()


def side(text: str) -> float | None:
    return float(text) if text else None


def limit_of(row: dict[str, str]) -> Limit:
    return Limit(side(row["lower"]), side(row["upper"]))


@pytest.mark.parametrize("rule", GUARDS)
@pytest.mark.parametrize("row", CASES, ids=[row["case"][:30] for row in CASES])
def test_decision_case(row: dict[str, str], rule: str) -> None:
    judged = judge(float(row["y"]), float(row["u"]), limit_of(row), rule)
    assert judged.verdict == WORD[row[rule]]
    assert judged.without == WORD[row["simple"]]
    assert judged.probability == pytest.approx(float(row["p_conform"]), abs=1e-9)


@pytest.mark.parametrize("rule", GUARDS)
def test_decision_cases_as_one_column(rule: str) -> None:
    for upper_only in (True, False):
        rows = [r for r in CASES if r["upper"] and (r["lower"] == "") == upper_only]
        low = None if upper_only else np.array([float(r["lower"]) for r in rows])
        limit = Limit(low, np.array([float(r["upper"]) for r in rows]))
        y = np.array([float(r["y"]) for r in rows])
        u = np.array([float(r["u"]) for r in rows])
        judged = judge(y, u, limit, rule)
        assert judged.verdict.tolist() == [WORD[r[rule]] for r in rows]
        expected = [float(r["p_conform"]) for r in rows]
        assert judged.probability == pytest.approx(expected, abs=1e-9)


def test_every_rule_and_word_is_spoken() -> None:
    assert GUARDS.keys() == RULES.keys()
    assert WORDS.keys() == {PASS, FAIL, CLOSE, NOT_JUDGED}
    # ISO 14253-1:2017 (from memory): one-sided 95 % of the normal distribution.
    assert pytest.approx(norm.ppf(0.95), rel=1e-12) == ONE_SIDED_95


def test_binary_dust_decides_nothing() -> None:
    """0.005 + 0.005 against 0.010, and 0.1 + 0.2 against 0.3 (worked by hand)."""
    assert 0.1 + 0.2 > 0.3
    assert judge(0.1 + 0.2, None, Limit(high=0.3)).verdict == PASS
    assert judge(0.005, 0.0025, Limit(high=0.010)).verdict == PASS
    assert judge(0.3, None, Limit(low=0.1 + 0.2)).verdict == PASS
    assert judge(0.3 * (1 + 1.1e-9), None, Limit(high=0.3)).verdict == FAIL


def test_the_tolerance_is_one_in_a_thousand_million() -> None:
    assert at_most(1.0 + 0.9e-9, 1.0)
    assert not at_most(1.0 + 1.1e-9, 1.0)
    assert at_most(-1.0 + 0.9e-9, -1.0)
    assert beyond(1.0 + 1.1e-9, 1.0)
    assert not beyond(1.0 + 0.9e-9, 1.0)
    assert not at_most(1e-12, 0.0)
    assert at_most(0.0, 0.0)
    assert not beyond(0.0, 0.0)


def test_one_number_gets_plain_answers() -> None:
    """What is asked of one engine goes out as JSON, which knows no numpy types."""
    judged = judge(0.0745, 0.002, Limit(0.03, 0.08))
    assert [type(found) for found in (judged.margin, judged.probability, judged.needed)] == [
        float
    ] * 3
    assert at_most(1.0, 2.0) is True
    assert not is_column(np.array(1.0))
    assert is_column(np.array([1.0]))


def test_a_limit_may_be_a_column_on_one_side() -> None:
    """By hand: 0.5 from 0 to 0.6, to 3 and to 0.4."""
    limit = Limit(0.0, np.array([0.6, 3.0, 0.4]))
    assert margin_to(0.5, limit) == pytest.approx([0.1, 0.5, -0.1])
    assert judge(0.5, None, limit).verdict.tolist() == [PASS, PASS, FAIL]
    low = Limit(np.array([0.4, -3.0, 0.6]), 1.0)
    assert margin_to(0.5, low) == pytest.approx([0.1, 0.5, -0.1])


sizes = st.floats(-1e4, 1e4, allow_nan=False).filter(lambda x: x == 0.0 or abs(x) > 1e-6)
doubts = st.floats(1e-6, 1e3)
rules = st.sampled_from(sorted(GUARDS))


@given(sizes, doubts, rules)
def test_equality_accepts_and_never_rejects(value: float, u: float, rule: str) -> None:
    assert judge(value, None, Limit(high=value)).verdict == PASS
    assert judge(value, None, Limit(low=value)).verdict == PASS
    assert judge(value, u, Limit(high=value), rule).verdict != FAIL
    assert judge(value, u, Limit(low=value), rule).verdict != FAIL


Sides = tuple[float | None, float | None]


def in_order(sides: Sides) -> bool:
    """Whether there is a limit, and the lower one is not above the upper one."""
    low, high = sides
    return sides != (None, None) and (low is None or high is None or low <= high)


limits: st.SearchStrategy[Sides] = st.tuples(st.none() | sizes, st.none() | sizes).filter(in_order)


@given(st.lists(st.tuples(sizes, doubts), min_size=1, max_size=6), limits, rules)
def test_a_column_gives_the_words_of_its_rows(
    rows: list[tuple[float, float]], sides: Sides, rule: str
) -> None:
    limit = Limit(*sides)
    y, u = (np.array(column) for column in zip(*rows, strict=True))
    column = judge(y, u, limit, rule)
    one_by_one = [judge(value, doubt, limit, rule) for value, doubt in rows]
    assert column.verdict.tolist() == [judged.verdict for judged in one_by_one]
    assert column.without.tolist() == [judged.without for judged in one_by_one]
    assert column.margin.tolist() == [judged.margin for judged in one_by_one]
    assert column.probability.tolist() == [judged.probability for judged in one_by_one]


@given(sizes, limits, doubts)
def test_a_verdict_never_jumps_from_pass_to_fail(value: float, sides: Sides, u: float) -> None:
    """Doubt only opens a verdict: it never turns pass into fail or back."""
    limit = Limit(*sides)
    for rule in GUARDS:
        assert judge(value, u, limit, rule).verdict in (judge(value, None, limit).verdict, CLOSE)


@given(
    limits,
    st.floats(0.1, 1e3),
    st.floats(0.05, 0.95),
    st.sampled_from([-1.0, 1.0]),
    st.sampled_from(["guard_2u", "guard_1645u"]),
)
def test_the_needed_uncertainty_settles(
    sides: Sides, u: float, share: float, way: float, rule: str
) -> None:
    limit = Limit(*sides)
    # So near to a limit that its guard reaches past the value.
    near = next(side for side in sides if side is not None)
    value = near + way * share * GUARDS[rule] * u
    judged = judge(value, u, limit, rule)
    assert judged.verdict == CLOSE
    # Next to the other limit of a narrow zone the margin is dust.
    assume(abs(judged.margin) > 0.005)
    needed = judged.needed
    assert needed < 2.0 * u
    # Inside a limit the needed uncertainty is enough; outside it takes a little less, since
    # equality never rejects.
    settled = judge(value, needed * (1.0 - 1e-2) / 2.0, limit, rule).verdict
    assert settled == (PASS if judged.margin > 0 else FAIL)
    assert judge(value, needed * (1.0 + 1e-2) / 2.0, limit, rule).verdict == CLOSE


def test_needed_by_hand() -> None:
    """0.0745 under 0.08: U must be 0.0055; one-sided 2·0.0055/1.644854 = 0.00668753."""
    limit = Limit(high=0.08)
    assert judge(0.0745, 0.005, limit).needed == pytest.approx(0.0055, rel=1e-12)
    one_sided = judge(0.0745, 0.005, limit, "guard_1645u")
    assert one_sided.verdict == CLOSE
    assert one_sided.needed == pytest.approx(0.00668753, rel=1e-6)


def test_no_rule_no_need() -> None:
    assert judge(1.0, 0.1, Limit(high=1.05), "simple").needed is None


@pytest.mark.parametrize(
    ("value", "low", "high", "margin"),
    [
        (0.0745, None, 0.08, 0.0055),
        (0.0745, 0.03, 0.08, 0.0055),
        (0.0745, 0.07, 0.08, 0.0045),
        (660.0, 900.0, None, -240.0),
        (0.56, 0.15, 0.50, -0.06),
        (0.10, 0.15, 0.50, -0.05),
    ],
)
def test_margin_by_hand(value: float, low: Any, high: Any, margin: float) -> None:
    assert margin_to(value, Limit(low, high)) == pytest.approx(margin, rel=1e-12)


def test_a_zone_narrower_than_twice_the_guard() -> None:
    """A window of 0.015 mm and U = 0.008: no reading can pass (by hand)."""
    window = Limit(0.035, 0.050)
    assert narrower_than_guard(0.004, window, "guard_2u")
    assert judge(0.0425, 0.004, window).verdict == CLOSE
    assert not narrower_than_guard(0.00375, window, "guard_2u")
    assert judge(0.0425, 0.00375, window).verdict == PASS
    assert not narrower_than_guard(0.004, window, "guard_1645u")
    assert not narrower_than_guard(0.004, window, "simple")
    assert not narrower_than_guard(9.0, Limit(high=0.05), "guard_2u")
    assert not narrower_than_guard(9.0, Limit(low=0.05), "guard_2u")


@given(st.floats(-37.0, 8.0))
def test_the_normal_distribution_is_scipys(x: float) -> None:
    assert normal_cdf(x) == pytest.approx(norm.cdf(x), rel=1e-12, abs=1e-300)


def test_a_negligible_probability_is_none() -> None:
    assert probability_within(0.0, 1.0, Limit(low=6.0)) == 0.0
    assert probability_within(0.0, 1.0, Limit(low=5.9)) == pytest.approx(norm.sf(5.9), rel=1e-9)
    column = probability_within(np.zeros(2), np.array([1.0, 0.0]), Limit(low=6.0))
    assert column.tolist() == [0.0, 0.0]


def test_without_doubt_there_is_no_probability() -> None:
    for none in (None, 0.0):
        judged = judge(0.0745, none, Limit(high=0.08))
        assert judged.probability is None
        assert judged.verdict == judged.without == PASS
