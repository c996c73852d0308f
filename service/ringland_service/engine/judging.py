"""Which limit judges which value, and the verdict that follows."""

import dataclasses
from collections.abc import Iterator, Mapping
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, Check, declared, input_fields
from ringland_service.core.declare.fields import Field
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.significant import kind_and_decimals
from ringland_service.core.metrology.conformity import CLOSE, FAIL, PASS, SIMPLE, judge
from ringland_service.core.metrology.extremes import Interval, member
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.unjudged import NOT_JUDGED, reasons
from ringland_service.engine.request import Request
from ringland_service.engine.response import Verdict


def judged_field(
    calculation: Calculation, name: str, inputs: Any
) -> tuple[Kind | None, int | None]:
    """Return kind and decimals of the result or input that a check judges."""
    outputs = declared(calculation.outputs)
    judged: Field = outputs[name] if name in outputs else input_fields(calculation.inputs)[name]
    return kind_and_decimals(judged, inputs)


def limit_in_force(
    check: Check, request: Request, inputs: Any, outputs: Any
) -> Limit | tuple[Limit, ...] | None:
    """Return the request's limit, else the default one (of each member its own), else None."""
    limit = request.limits.get(check.name)
    if limit is None and check.default is not None:
        default = check.default(inputs, outputs)
        if isinstance(default, tuple):
            return default or None
        limit = default
        if limit and not request.defaults and limit.standing == "common_practice":
            return None
    if limit is None or (limit.low is None and limit.high is None):
        return None
    return limit


def value_judged(check: Check, inputs: Any, outputs: Any) -> Any:
    """Return the value that a check judges: a result, or an input."""
    holder = outputs if hasattr(outputs, check.value) else inputs
    return getattr(holder, check.value)


def verdicts(
    calculation: Calculation,
    request: Request,
    outputs: Any,
    u: Mapping[str, Any],
    intervals: Mapping[str, Interval],
) -> Iterator[Verdict]:
    """Yield the verdict of each check that has a value and a limit."""
    for check in calculation.checks:
        value = value_judged(check, request.inputs, outputs)
        if value is None:
            # A default limit may be reckoned from what is absent with it.
            continue
        limit = limit_in_force(check, request, request.inputs, outputs)
        if limit is None:
            continue
        kind, decimals = judged_field(calculation, check.value, request.inputs)
        name = check.value
        for place, (of, one, uncertainty) in enumerate(_each(check, value, u.get(name), outputs)):
            own = limit[place] if isinstance(limit, tuple) else limit
            rule = request.rule if uncertainty is not None else SIMPLE
            interval = None
            if rule != SIMPLE and name in intervals:
                interval = member(intervals[name], place) if check.each else intervals[name]
            judged = judge(one, uncertainty, own, rule, interval)
            word = _word(check, judged.verdict)
            why = reasons(check.unjudged, request.inputs, outputs, own, word == PASS)
            if isinstance(why, str):
                # Without a verdict there is nothing that a value conforms to.
                judged = dataclasses.replace(judged, probability=None)
            found = (
                kind,
                decimals,
                one,
                uncertainty,
                own,
                rule,
                judged,
                _or_none(word, why),
                of,
                why,
            )
            yield Verdict(check, *found, interval)


def _each(
    check: Check, value: Any, uncertainty: Any, outputs: Any
) -> Iterator[tuple[str, Any, Any]]:
    """Yield what a check judges: the value, or each member of a list with its name."""
    if not check.each:
        yield "", value, uncertainty
        return
    names = getattr(outputs, check.each)
    # A member that no uncertainty moves has none, as a single value has.
    uncertainties = [None] * len(value) if uncertainty is None else [u or None for u in uncertainty]
    yield from zip(names, value, uncertainties, strict=True)


def _or_none(word: Any, why: Any) -> Any:
    """Return the word of the verdict, or that none is due."""
    if isinstance(why, np.ndarray):
        return np.where(why == "", word, NOT_JUDGED)
    return word if why is None else NOT_JUDGED


def _word(check: Check, verdict: Any) -> Any:
    """Return the word of the verdict; where uncertainty means fail, too close is a fail."""
    if not check.inconclusive_fails:
        return verdict
    if isinstance(verdict, str):
        return FAIL if verdict == CLOSE else verdict
    return np.where(verdict == CLOSE, FAIL, verdict)
