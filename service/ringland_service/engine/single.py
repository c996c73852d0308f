"""One question, one answer."""

import dataclasses
import math
from collections.abc import Iterator, Sequence
from functools import cache
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, Declared, Rule, asked, declared
from ringland_service.core.errors import Contradiction, CoreError, OutOfBounds
from ringland_service.core.fields import LimitSideField, ResultField
from ringland_service.core.notices import CAUTIONS, FIRST
from ringland_service.core.uncertainty import Influence, propagate
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.judging import verdicts
from ringland_service.engine.question import Question, all_influences
from ringland_service.engine.warnings import doubt_notices, noticed

# A number too large to hold, or a division by nothing, is a refusal and never an answer.
LOUD: dict[str, Any] = {"over": "raise", "divide": "raise", "invalid": "raise"}
NOT_FINITE = "the arithmetic has no finite answer for these inputs"


def answer(calculation: Calculation, question: Question) -> Answer:
    """Answer one question.

    Raises
    ------
    Refused
        Where inputs contradict each other or lie where the arithmetic does not hold.
    """
    inputs = with_limit_sides(calculation, question)
    if inputs is not question.inputs:
        question = dataclasses.replace(question, inputs=inputs)
    insist_on(calculation.rules, inputs)
    try:
        with np.errstate(**LOUD):
            return _answer(calculation, question)
    except CoreError as fault:
        raise Refused([fault]) from fault
    except ArithmeticError as error:
        first = next(iter(asked(calculation.inputs)))
        raise Refused([OutOfBounds(first, NOT_FINITE, "check the readings")]) from error


def _answer(calculation: Calculation, question: Question) -> Answer:
    inputs = question.inputs
    outputs = calculation.compute(inputs)
    insist_finite(outputs)
    influences = all_influences(question, calculation)
    u = doubt(calculation, inputs, influences)
    passed = tuple(verdicts(calculation, question, outputs, u))
    warnings = (
        *noticed(calculation, inputs, outputs),
        *doubt_notices(calculation, inputs, influences, passed),
    )
    if not question.defaults:
        outputs = without_common_practice(outputs)
    return Answer(calculation, inputs, outputs, u, passed, warnings, cautions_of(calculation))


def doubt(calculation: Calculation, inputs: Any, influences: Sequence[Influence]) -> dict[str, Any]:
    """Return u of each result, and of each input that influences move, by name."""
    if not influences:
        return {}
    u = on_inputs(influences) | propagate(calculation.compute, inputs, influences)
    for name, value in u.items():
        if not np.all(np.isfinite(value)):
            raise OutOfBounds(
                name, "has no finite uncertainty for these inputs", "check the inputs"
            )
    return u


def on_inputs(influences: Sequence[Influence]) -> dict[str, Any]:
    """Return u of each single input that influences move directly, by name."""
    squares: dict[str, Any] = {}
    for influence in influences:
        for move in influence.moves:
            if len(move.path) == 1:
                share = influence.u * move.by
                name = str(move.path[0])
                squares[name] = squares.get(name, 0.0) + share * share
    return {name: np.sqrt(square) for name, square in squares.items()}


def cautions_of(calculation: Declared) -> tuple[str, ...]:
    """Return the cautions that ride with the calculation, the general one first."""
    lines = tuple(CAUTIONS[step] for step in calculation.cautions)
    return (FIRST, *lines) if lines else ()


@cache
def _limit_sides(record: type) -> tuple[tuple[str, LimitSideField], ...]:
    return tuple((n, f) for n, f in declared(record).items() if isinstance(f, LimitSideField))


def with_limit_sides(calculation: Calculation, question: Question) -> Any:
    """Return the inputs with the request's own limits filled in where the compute asks for them."""
    sides = {
        name: getattr(question.limits[f.check], f.side)
        for name, f in _limit_sides(calculation.inputs)
        if f.check in question.limits
    }
    return dataclasses.replace(question.inputs, **sides) if sides else question.inputs


def present(inputs: Any, names: Sequence[str]) -> bool:
    """Return whether all the named inputs are given."""
    return all(getattr(inputs, name) is not None for name in names)


def contradiction(rule: Rule) -> Contradiction:
    """Return the error of a broken rule."""
    return Contradiction(rule.fields[0], rule.message, rule.right)


def insist_on(rules: Sequence[Rule], inputs: Any) -> None:
    """Raise ``Refused`` with every broken rule."""
    faults = [
        contradiction(rule)
        for rule in rules
        if present(inputs, rule.fields) and bool(rule.broken(inputs))
    ]
    if faults:
        raise Refused(faults)


def _numbers(value: Any) -> Iterator[float]:
    if isinstance(value, float):
        yield value
    elif isinstance(value, tuple):
        for item in value:
            yield from _numbers(item)


def insist_finite(outputs: Any) -> None:
    """Raise OutOfBounds where a result is not a finite number."""
    record: type = type(outputs)
    for name in declared(record):
        for number in _numbers(getattr(outputs, name)):
            if not math.isfinite(number):
                raise OutOfBounds(name, "has no finite value for these inputs", "check the inputs")


def without_common_practice(outputs: Any) -> Any:
    """Return the results without the grades that rest on common practice."""
    record: type = type(outputs)
    gone = {
        name: None
        for name, f in declared(record).items()
        if isinstance(f, ResultField) and f.common_practice
    }
    return dataclasses.replace(outputs, **gone) if gone else outputs
