"""Using a uncertain part again, or the repair: which costs less on average."""

from typing import cast

from ringland_service.core.calculations.decision import consequence as by
from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    any_quantity,
    flag,
    memoised,
    number,
    record,
    result,
    text,
    uncertainty_of,
)
from ringland_service.core.declare.fields import Quantified
from ringland_service.core.metrology.conformity import beyond, conformance_probability
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import cited

CONFORMING = cited("{jcgm_106_conformance}")


@record
class Inputs:
    """Three costs in one currency, and how likely the part is within its limit.

    That is told, or follows from a value with its uncertainty and its limit. The probability then
    holds the value's uncertainty in full, so the costs are not moved by it once more.
    """

    currency: str = text("currency of all costs", example="EUR", longest=12)
    cost_of_reuse: Number = by.cost("cost of using the part again, with tax", 40.0)
    cost_of_repair: Number = by.cost("cost of the repair or of a new part, with tax", 160.0)
    cost_of_comeback: Number = by.cost(
        "cost of a comeback: taking it apart again, and what breaks with the part, with tax",
        600.0,
        low=0.01,
    )
    known_within: Number | None = number(
        "probability that the part is within its limit, as a verdict gives it",
        low=0.0,
        high=1.0,
        example=0.904,
        default=None,
    )
    value: Quantified | None = any_quantity(
        "the value in uncertainty, with its uncertainty", example=None, default=None
    )
    low: Quantified | None = any_quantity("lower limit", example=None, default=None, exact=True)
    high: Quantified | None = any_quantity("upper limit", example=None, default=None, exact=True)
    failure_hurts: bool = flag(
        "the part's failure can hurt someone: then no choice is named by cost",
        example=False,
        default=False,
    )
    u_value: float | None = uncertainty_of("value")
    within: Number | None = memoised()

    def __post_init__(self) -> None:
        """Work the probability out once, as the value stands."""
        if self.within is None and self.value is not None and self.u_value:
            low, high = (None if side is None else side.value for side in (self.low, self.high))
            if low is not None or high is not None:
                found = conformance_probability(self.value.value, self.u_value, Limit(low, high))
                object.__setattr__(self, "within", found)


@record
class Outputs:
    """Both costs, the probability at which they meet, and the cheaper choice."""

    conformance_probability: Number = result(
        "probability that the part is within its limit",
        decimals=4,
        basis="as told, else Φ((high − y)/u) − Φ((low − y)/u)",
        source=CONFORMING,
    )
    probability_beyond: Number = result(
        "probability that the part is beyond its limit",
        decimals=4,
        formula="1 - conformance_probability",
        source=CONFORMING,
    )
    expected_cost_of_reuse: Number = result(
        "cost of using the part again, on average over many such parts",
        decimals=2,
        formula="cost_of_reuse + probability_beyond * cost_of_comeback",
        source=by.SOURCE,
    )
    break_even_probability: Number = result(
        "probability beyond the limit above which the repair is the cheaper",
        decimals=4,
        formula="(cost_of_repair - cost_of_reuse) / cost_of_comeback",
        source=by.SOURCE,
    )
    cheaper: str | None = result(
        "cheaper choice on average; absent where the part's failure hurts",
        choices=by.CHEAPER,
        basis="smaller of the expected cost of reuse and the cost of the repair",
        source=by.SOURCE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Weigh both choices; the customer decides."""
    told = inputs.within if inputs.known_within is None else inputs.known_within
    # The rules refuse a question that tells neither.
    within = cast(Number, told)
    weighed = by.weighed(inputs, within)
    return Outputs(
        conformance_probability=within,
        probability_beyond=weighed.beyond,
        expected_cost_of_reuse=weighed.expected,
        break_even_probability=by.break_even(
            inputs.cost_of_reuse, inputs.cost_of_repair, inputs.cost_of_comeback
        ),
        cheaper=weighed.cheaper,
    )


def _kinds_differ(side: str) -> Rule:
    return Rule(
        ("value", side),
        lambda i: getattr(i, side).kind.name != i.value.kind.name,
        "value and limit are not of one kind, so they cannot be compared",
        "both in one kind of unit; a pressure and its limit both gauge or both absolute",
    )


RULES = (
    _kinds_differ("low"),
    _kinds_differ("high"),
    Rule(
        ("value", "known_within"),
        lambda i: True,
        "the probability is told twice: by itself, and by a value with its limit",
        "known_within, or value with low or high",
    ),
    Rule(
        ("value",),
        lambda i: i.known_within is None and not i.u_value,
        "no uncertainty is stated, so how likely the part is within its limit is not known",
        "the value with its uncertainty (k = 2), or known_within",
    ),
    Rule(
        ("value",),
        lambda i: i.known_within is None and i.low is None and i.high is None,
        "there is no limit to judge the value by",
        "low, high, or both",
    ),
    Rule(
        ("low", "high"),
        lambda i: beyond(i.low.value, i.high.value),
        "the lower limit is above the upper one",
        "low at most high",
    ),
)

CALCULATION = Calculation(
    name="choice-by-consequence",
    number="E.2",
    stage="decision",
    title="Choice by consequence",
    summary="A part too close to its limit to call: what using it again costs on average, what the "
    "repair costs, and from which probability on the repair is the cheaper. Costs are the user's "
    "own, bare numbers in the currency named; the customer is told both and decides. Parts whose "
    "failure hurts are not judged by cost.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    any_of=((("known_within",), ("value", "low"), ("value", "high")),),
    rules=RULES,
    notices=(
        Notice("costs_are_your_own", "cost_of_comeback", lambda i, o: True, by.OWN_COSTS),
        Notice("not_judged_by_cost", "failure_hurts", lambda i, o: i.failure_hurts, by.NOT_BY_COST),
        Notice(
            "repair_not_dearer",
            "cost_of_repair",
            lambda i, o: o.break_even_probability <= 0.0,
            "the repair costs no more than using the part again: no probability speaks for reuse",
        ),
        Notice(
            "comeback_cheaper_than_repair",
            "cost_of_comeback",
            lambda i, o: o.break_even_probability > 1.0,
            "a comeback costs less than the repair costs more: by cost alone reuse is always the "
            "cheaper; ask whether the cost of a comeback is told in full",
        ),
    ),
    columns=False,
)
