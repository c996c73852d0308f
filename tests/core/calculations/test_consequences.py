"""Reuse or repair by what each costs on average: alone, and as the job card offers it."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from reference_cases import filled, quantified
from scipy.stats import norm

from ringland_service.core.calculations import BY_NAME, PARTS
from ringland_service.core.declare import Calculation, Composite
from ringland_service.core.metrology.findings import Finding
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.composite import CompositeAnswer, answer_composite
from ringland_service.engine.question import Question, Stated
from ringland_service.engine.scalar import answer

ONE, CARD, PART = BY_NAME["choice-by-consequence"], BY_NAME["job-card"], PARTS["consequences"]
assert isinstance(ONE, Calculation)
assert isinstance(CARD, Composite)

money = st.floats(0.0, 1e5)
share = st.floats(0.0, 1.0)


def weighed(**given_: Any) -> Any:
    """Return the results for a probability that is told."""
    return answer(ONE, Question(inputs=ONE.inputs(currency="EUR", **given_))).outputs


@given(reuse=money, repair=money, comeback=st.floats(0.01, 1e5), within=share)
def test_the_cheaper_choice_is_the_one_of_the_least_mean_cost(
    reuse: float, repair: float, comeback: float, within: float
) -> None:
    """Outside check: the mean over both outcomes, as decision theory has it (from memory)."""
    found = weighed(
        cost_of_reuse=reuse, cost_of_repair=repair, cost_of_comeback=comeback, known_within=within
    )
    mean = within * reuse + (1.0 - within) * (reuse + comeback)
    assert found.expected_cost_of_reuse == pytest.approx(mean, rel=1e-9, abs=1e-9)
    if mean < repair * (1 - 1e-6) - 1e-6:
        assert found.cheaper == "reuse"
        assert found.probability_beyond < found.break_even_probability
    if mean > repair * (1 + 1e-6) + 1e-6:
        assert found.cheaper == "repair"
        assert found.probability_beyond > found.break_even_probability


@given(reuse=money, repair=money, comeback=st.floats(0.01, 1e5))
def test_at_the_break_even_both_cost_the_same(reuse: float, repair: float, comeback: float) -> None:
    costs = {"cost_of_reuse": reuse, "cost_of_repair": repair, "cost_of_comeback": comeback}
    beyond = weighed(**costs, known_within=1.0).break_even_probability
    if 0.0 <= beyond <= 1.0:
        mean = weighed(**costs, known_within=1.0 - beyond).expected_cost_of_reuse
        assert mean == pytest.approx(repair, rel=1e-9, abs=1e-6)


@given(
    value=st.floats(0.01, 0.2),
    expanded=st.floats(0.001, 0.05),
    low=st.floats(0.0, 0.1) | st.none(),
    width=st.floats(0.0, 0.1),
)
def test_the_probability_is_that_of_a_normal_distribution(
    value: float, expanded: float, low: float | None, width: float
) -> None:
    high = width + (low or 0.05)
    sides = {"high": high} if low is None else {"low": low, "high": high}
    given_ = {n: quantified(v, "mm", "length") for n, v in {"value": value, **sides}.items()}
    question = Question(
        inputs=ONE.inputs(
            currency="EUR", cost_of_reuse=1.0, cost_of_repair=2.0, cost_of_comeback=3.0, **given_
        ),
        doubts={("value",): Stated(uncertainty=expanded)},
    )
    found = answer(ONE, question)
    outside = norm(value, expanded / 2.0)
    within = outside.cdf(high) - (0.0 if low is None else outside.cdf(low))
    assert found.outputs.probability_within == pytest.approx(within, abs=2e-9)
    assert not found.u.get("expected_cost_of_reuse"), "the probability holds that uncertainty"


def finding(check: str, **more: Any) -> Finding:
    return Finding(check, "too_close_to_call", f"{check} said", close=True, **more)


def test_what_counts_doubt_as_a_fail_is_not_offered() -> None:
    """And neither is what is settled, or what has no uncertainty."""
    findings = (
        finding("clearance", probability=0.75),
        finding("gap", probability=0.9, of="second"),
        finding("rim", probability=0.6, hurts="a thin rim burns or breaks off"),
        finding("no_uncertainty"),
        Finding("settled", "pass", "settled", probability=0.99),
        Finding("open", "not_judged", "open"),
    )
    costs = {"cost_of_reuse": 40.0, "cost_of_repair": 160.0, "cost_of_comeback": 600.0}
    found = PART.compute(PART.inputs(**costs, findings=findings))
    told = [(c.check, c.of, c.expected_cost_of_reuse, c.cheaper) for c in found.choices]
    # By hand: 40 + 0.25 * 600 = 190 and 40 + 0.1 * 600 = 100, against 160.
    assert [(a, b, d) for a, b, _, d in told] == [
        ("clearance", None, "repair"),
        ("gap", "second", "reuse"),
    ]
    assert [c for _, _, c, _ in told] == pytest.approx([190.0, 100.0])
    assert found.not_by_cost == ("rim said",)
    hurts = PART.compute(PART.inputs(**costs, findings=findings, failure_hurts=True))
    assert [choice.cheaper for choice in hurts.choices] == [None, None]


def card(price: dict[str, Any], clearance_doubt: float = 0.01) -> CompositeAnswer:
    """Return a card whose clearance of 0.121 mm stands against a maker's limit of 0.120 mm."""
    job = {
        "cylinder": {"bore_max_mm": 73.052},
        "piston": {"piston_mm": 72.931, "fit": "used"},
        "price": price,
    }
    return answer_composite(
        CARD,
        Question(
            inputs=filled(CARD.inputs, job),
            doubts={("cylinder", "bore_max_mm"): Stated(uncertainty=clearance_doubt)},
            limits={"piston_clearance_max": Limit(None, 0.12)},
        ),
    )


COSTS = {"cost_of_reuse": 40.0, "cost_of_repair": 160.0, "cost_of_comeback": 600.0}


def test_the_card_offers_the_choice_where_prices_are_told() -> None:
    found = card(COSTS)
    (row,) = found.parts["consequences"].outputs.choices
    assert row.check == "piston_clearance_max"
    # Outside: a normal distribution at 0.121 with u = 0.005.
    within = norm(0.121, 0.005).cdf(0.12)
    assert row.probability_within == pytest.approx(within, abs=1e-9)
    assert row.expected_cost_of_reuse == pytest.approx(40.0 + (1.0 - within) * 600.0)
    assert row.cheaper == "repair"
    codes = {w.code for w in found.parts["consequences"].warnings}
    assert codes == {"costs_are_your_own"}


def test_the_card_offers_none_where_it_is_not_asked_or_settled() -> None:
    assert "consequences" not in card({}).parts
    settled = card(COSTS, clearance_doubt=0.0005)
    assert settled.parts["consequences"].outputs.choices is None
    half_told = card({"cost_of_reuse": 40.0})
    assert "consequences" not in half_told.parts
    (asked,) = [one for one in half_told.open if one.part == "consequences"]
    assert asked.ways == ((("price", "cost_of_repair"), ("price", "cost_of_comeback")),)
