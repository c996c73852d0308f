"""Each verdict that is too close to call, weighed by its consequences. Part of the job card."""

from ringland_service.core.calculations.decision import choice_by_consequence as one
from ringland_service.core.calculations.decision import consequence as by
from ringland_service.core.declare import (
    REQUIRED,
    Calculation,
    Notice,
    field_like,
    findings_so_far,
    record,
    result,
)
from ringland_service.core.metrology.findings import Finding
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE


@record
class Inputs:
    """The three costs, and what was found so far."""

    cost_of_reuse: Number = field_like(one.Inputs, "cost_of_reuse", default=REQUIRED)
    cost_of_repair: Number = field_like(one.Inputs, "cost_of_repair", default=REQUIRED)
    cost_of_comeback: Number = field_like(one.Inputs, "cost_of_comeback", default=REQUIRED)
    failure_hurts: bool = field_like(one.Inputs, "failure_hurts", default=False)
    findings: tuple[Finding, ...] = findings_so_far()


@record
class Choice:
    """One verdict that is too close to call, and what either way costs."""

    check: str = result("the check", basis="verdicts of the card", source="verdicts of the card")
    of: str | None = result(
        "of which, where there are several",
        basis="verdicts of the card",
        source="verdicts of the card",
        default=None,
    )
    conformance_probability: float = result(
        "probability that the part is within its limit",
        decimals=4,
        basis="verdicts of the card",
        source=one.CONFORMING,
    )
    probability_beyond: float = result(
        "probability that the part is beyond its limit",
        decimals=4,
        formula="1 - conformance_probability",
        source=one.CONFORMING,
    )
    expected_cost_of_reuse: float = result(
        "cost of using the part again, on average over many such parts",
        decimals=2,
        basis="cost of reuse and the probability beyond the limit times the cost of a comeback",
        source=by.SOURCE,
    )
    cheaper: str | None = result(
        "cheaper choice on average; absent where the part's failure hurts",
        choices=by.CHEAPER,
        basis="smaller of the expected cost of reuse and the cost of the repair",
        source=by.SOURCE,
        default=None,
    )


@record
class Outputs:
    """The verdicts that a choice may settle, and those that it may not."""

    break_even_probability: Number = result(
        "probability beyond the limit above which the repair is the cheaper",
        decimals=4,
        formula="(cost_of_repair - cost_of_reuse) / cost_of_comeback",
        source=by.SOURCE,
    )
    choices: tuple[Choice, ...] | None = result(
        "verdicts too close to call, each with the choice that costs less on average",
        basis="each verdict's probability, and the costs as told",
        source=by.SOURCE,
        record=Choice,
        default=None,
    )
    not_by_cost: tuple[str, ...] | None = result(
        "too close to call, and not judged by cost since uncertainty counts as a fail there",
        basis="verdicts of the card",
        source=NO_SOURCE,
        default=None,
    )
    not_weighed: tuple[str, ...] | None = result(
        "too close to call, and not weighed: judged from an interval, as its readings tie, so that "
        "no probability is known",
        basis="verdicts of the card",
        source="verdicts of the card",
        default=None,
    )


def _choice(inputs: Inputs, finding: Finding, within: float) -> Choice:
    weighed = by.weighed(inputs, within)
    return Choice(
        check=finding.check,
        of=finding.of or None,
        conformance_probability=within,
        probability_beyond=float(weighed.beyond),
        expected_cost_of_reuse=float(weighed.expected),
        cheaper=weighed.cheaper,
    )


def compute(inputs: Inputs) -> Outputs:
    """Weigh every verdict that is too close to call and whose probability is known."""
    close = [finding for finding in inputs.findings if finding.close]
    choices = tuple(
        _choice(inputs, finding, finding.probability)
        for finding in close
        if not finding.hurts and finding.probability is not None
    )
    return Outputs(
        break_even_probability=by.break_even(
            inputs.cost_of_reuse, inputs.cost_of_repair, inputs.cost_of_comeback
        ),
        choices=choices or None,
        not_by_cost=tuple(f.said for f in close if f.hurts) or None,
        not_weighed=tuple(f.said for f in close if f.by_interval and not f.hurts) or None,
    )


CALCULATION = Calculation(
    name="consequences",
    number="E.2, of a job",
    stage="job",
    title="Too close to call: choice by consequence",
    summary="What is too close to call, and which choice costs less on average. Costs are the "
    "user's own; the customer is told both and decides.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    notices=(
        Notice("costs_are_your_own", "cost_of_comeback", lambda i, o: True, by.OWN_COSTS),
        Notice(
            "not_judged_by_cost",
            "not_by_cost",
            lambda i, o: i.failure_hurts or o.not_by_cost is not None,
            by.NOT_BY_COST,
        ),
    ),
    columns=False,
)
