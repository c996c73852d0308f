"""One question, one answer."""

import dataclasses
import math
from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, Operation, Rule, declared, input_fields
from ringland_service.core.declare.fields import (
    LimitSideField,
    UncertaintyOfField,
    UsualFiguresField,
)
from ringland_service.core.declare.notices import CAUTIONS, FIRST
from ringland_service.core.errors import Contradiction, CoreError, OutOfBounds
from ringland_service.core.metrology.propagation import Component, budget, combined
from ringland_service.engine.agreeing import insist_agree
from ringland_service.engine.intervals import (
    Pushes,
    carried_pushes,
    intervals,
    open_leads,
    own_pushes,
    together,
)
from ringland_service.engine.judging import verdicts
from ringland_service.engine.request import (
    Path,
    Request,
    all_components,
    as_stated,
    on_inputs,
    present,
    stated_components,
)
from ringland_service.engine.response import DomainError, Response, Shares
from ringland_service.engine.standing_in import kept, needs_errors, needs_limits
from ringland_service.engine.unstated import false_precision, left_out
from ringland_service.engine.warnings import noticed, uncertainty_notices

# A number too large to hold, or a division by nothing, is a refusal and never an answer.
LOUD: dict[str, Any] = {"over": "raise", "divide": "raise", "invalid": "raise"}
NOT_FINITE = "the arithmetic has no finite answer for these inputs"


def answer(calculation: Calculation, request: Request) -> Response:
    """Answer one question.

    Raises
    ------
    Refused
        Where inputs contradict each other or lie where the arithmetic does not hold.
    """
    inputs = with_limit_sides(calculation, request)
    if inputs is not request.inputs:
        request = dataclasses.replace(request, inputs=inputs)
    insist_on(calculation.rules, inputs)
    insist_agree(calculation, request)
    try:
        with np.errstate(**LOUD):
            return _answer(calculation, request)
    except CoreError as fault:
        raise DomainError([fault]) from fault
    except ArithmeticError as error:
        first = next(iter(input_fields(calculation.inputs)))
        raise DomainError([OutOfBounds(first, NOT_FINITE, "check the readings")]) from error


def _answer(calculation: Calculation, request: Request) -> Response:
    inputs = request.inputs
    outputs = calculation.compute(inputs)
    insist_finite(outputs)
    components = all_components(request, calculation)
    u, moved, shares, own = uncertainty(calculation, inputs, outputs, components)
    shown = as_stated(request.uncertainties, moved)
    u |= _one_for_one(calculation, inputs, shown)
    pushes = together(own, carried_pushes(calculation, inputs, outputs, request.pushed))
    given = intervals(calculation, inputs, outputs, u, pushes)
    unstated = left_out(calculation, request, outputs, u, moved)
    left = kept(calculation, request, outputs, moved)
    passed = tuple(verdicts(calculation, request, left.outputs, u, given))
    warnings = (
        *noticed(calculation, inputs, outputs, moved, None if request.defaults else left.gone),
        *uncertainty_notices(calculation, passed, open_leads(own)),
        *left.needs,
        *needs_limits(calculation, request, {v.check.name for v in passed}, left.outputs),
        *needs_errors(request),
        *(warned for warned, _ in false_precision(calculation, outputs, u, unstated)),
    )
    cautions = cautions_of(calculation)
    u = {name: value for name, value in u.items() if name not in left.gone}
    given = {name: one for name, one in given.items() if name not in left.gone}
    return Response(
        calculation,
        left.inputs,
        left.outputs,
        u,
        passed,
        warnings,
        cautions,
        shown,
        unstated,
        shares,
        given,
        pushes,
    )


def uncertainty(
    calculation: Calculation, inputs: Any, outputs: Any, components: Sequence[Component]
) -> tuple[dict[str, Any], dict[Path, Any], Shares, Pushes]:
    """Return u of each result and single input by name, and of each input moved by its path.

    Then what each component contributes to each result, and how noise pushes those that are
    a largest or a smallest of readings.
    """
    if not components:
        return {}, {}, (), {}
    moved = on_inputs(components)
    single = {str(path[0]): u for path, u in moved.items() if len(path) == 1}
    working = _working(calculation, inputs, components)
    shares = budget(calculation.compute, inputs, working, outputs)
    u = single | combined(shares)
    for name, value in u.items():
        if not np.all(np.isfinite(value)):
            raise OutOfBounds(
                name, "has no finite uncertainty for these inputs", "check the inputs"
            )
    names = [component.name for component in working]
    pushes = own_pushes(calculation, inputs, outputs, working)
    return u, moved, tuple(zip(names, shares, strict=True)), pushes


def _one_for_one(
    calculation: Calculation, inputs: Any, moved: Mapping[Path, Any]
) -> dict[str, float]:
    """Return u of the results that move one for one with inputs: no derivative rounds it."""
    if calculation.one_for_one is None:
        return {}
    found = {}
    for name, paths in calculation.one_for_one(inputs).items():
        each = [float(moved[path]) for path in paths if path in moved]
        if each:
            found[name] = math.hypot(*each)
    return found


def _working(
    calculation: Calculation, inputs: Any, components: Sequence[Component]
) -> Sequence[Component]:
    """Return the components less the readings that no result rests on."""
    gone = calculation.left_out(inputs) if calculation.left_out is not None else ()
    if not gone:
        return components
    working = [
        dataclasses.replace(one, effects=tuple(m for m in one.effects if m.path not in gone))
        for one in components
    ]
    return [one for one in working if one.effects]


def cautions_of(calculation: Operation) -> tuple[str, ...]:
    """Return the cautions that ride with the calculation, the general one first."""
    lines = tuple(CAUTIONS[step] for step in calculation.cautions)
    return (FIRST, *lines) if lines else ()


@cache
def _limit_sides(record: type) -> tuple[tuple[str, LimitSideField], ...]:
    return tuple((n, f) for n, f in declared(record).items() if isinstance(f, LimitSideField))


@cache
def _usual_figures(record: type) -> tuple[str, ...]:
    return tuple(n for n, f in declared(record).items() if isinstance(f, UsualFiguresField))


@cache
def _uncertainties(record: type) -> tuple[tuple[str, str], ...]:
    found = declared(record).items()
    return tuple((n, f.of) for n, f in found if isinstance(f, UncertaintyOfField))


def _stated(record: type, request: Request) -> dict[str, Any]:
    """Return the standard uncertainties that the record asks of its own inputs."""
    asked_for = _uncertainties(record)
    if not asked_for:
        return {}
    moved = on_inputs(stated_components(request))
    found = {name: moved.get((of,), moved.get((of, "value"))) for name, of in asked_for}
    return {name: u for name, u in found.items() if u is not None}


def with_limit_sides(calculation: Calculation, request: Request) -> Any:
    """Return the inputs with what the compute asks of the request itself filled in.

    That is the request's own limits, the uncertainty of an input, and whether common-practice
    figures may stand in.
    """
    filled: dict[str, Any] = {
        name: getattr(request.limits[f.check], f.side) if f.side else request.limits[f.check]
        for name, f in _limit_sides(calculation.inputs)
        if f.check in request.limits
    }
    filled |= _stated(calculation.inputs, request)
    if not request.defaults:
        filled |= dict.fromkeys(_usual_figures(calculation.inputs), False)
    return dataclasses.replace(request.inputs, **filled) if filled else request.inputs


def contradiction(rule: Rule) -> Contradiction:
    """Return the error of a broken rule; it names every field that the rule lies between."""
    first, *others = dict.fromkeys(rule.fields)
    return Contradiction(first, rule.message, rule.right, tuple(others))


def insist_on(rules: Sequence[Rule], inputs: Any) -> None:
    """Raise ``Refused`` with every broken rule."""
    faults = [
        contradiction(rule)
        for rule in rules
        if present(inputs, rule.fields) and bool(rule.broken(inputs))
    ]
    if faults:
        raise DomainError(faults)


def _numbers(value: Any) -> Iterator[float]:
    if isinstance(value, float):
        yield value
    elif isinstance(value, tuple):
        for item in value:
            yield from _numbers(item)
    elif dataclasses.is_dataclass(value):
        for field_ in dataclasses.fields(value):
            yield from _numbers(getattr(value, field_.name))


def insist_finite(outputs: Any) -> None:
    """Raise OutOfBounds where a result is not a finite number."""
    record: type = type(outputs)
    for name in declared(record):
        for number in _numbers(getattr(outputs, name)):
            if not math.isfinite(number):
                raise OutOfBounds(name, "has no finite value for these inputs", "check the inputs")
