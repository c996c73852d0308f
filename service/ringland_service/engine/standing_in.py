"""What of an answer rests on common practice, and what it needs where that is switched off."""

import dataclasses
from collections.abc import Collection, Iterable, Iterator, Mapping
from functools import cache
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, Check, asked, declared
from ringland_service.core.declare.expressions import names_in
from ringland_service.core.declare.fields import LimitSideField, ResultField
from ringland_service.core.declare.notices import Warned
from ringland_service.core.declare.usual import ALL, Figure, Usual
from ringland_service.core.metrology.instruments import Instrument
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.question import Path, Question

CODE = "needs_figure"
OFF = "common-practice figures are switched off (defaults: off)"


class NeedsRows(Exception):
    """Rows that differ in what stands in, or a calculation that goes row by row."""


@dataclasses.dataclass(frozen=True)
class Kept:
    """What is left of an answer: results, inputs, and what it needs for the rest."""

    inputs: Any
    outputs: Any
    gone: frozenset[str] = frozenset()
    needs: tuple[Warned, ...] = ()


@cache
def resting_on(calculation: Calculation, names: frozenset[str]) -> frozenset[str]:
    """Return the results that the named ones, or inputs, enter by the formulas, and themselves."""
    found = set(names)
    formulas = {
        name: set(names_in(f.formula))
        for name, f in declared(calculation.outputs).items()
        if isinstance(f, ResultField) and f.formula
    }
    while more := {n for n, used in formulas.items() if used & found} - found:
        found |= more
    return frozenset(found & declared(calculation.outputs).keys())


def _of_figure(calculation: Calculation, figure: Figure) -> frozenset[str]:
    if figure.results == ALL:
        return frozenset(declared(calculation.outputs))
    return resting_on(calculation, frozenset({figure.field, *figure.results}))


@cache
def graded(calculation: Calculation) -> frozenset[str]:
    """Return the results that are common practice whatever is told, and what they enter."""
    named = {
        name
        for name, f in declared(calculation.outputs).items()
        if isinstance(f, ResultField) and f.common_practice
    }
    return resting_on(calculation, frozenset(named))


@cache
def may_be_absent(calculation: Calculation) -> frozenset[str]:
    """Return the results that are absent where common practice is switched off."""
    found = graded(calculation)
    for figure in calculation.figures:
        found |= _of_figure(calculation, figure)
    return found


def _stands_in(figure: Figure, inputs: Any, moved: Collection[str]) -> bool:
    found = np.asarray(figure.stands_in(inputs, moved))
    if found.any() and not found.all():
        raise NeedsRows
    return bool(found.all())


def kept(
    calculation: Calculation, question: Question, outputs: Any, moved: Mapping[Path, Any]
) -> Kept:
    """Return what is left of an answer where common practice is switched off; all where it is on.

    Raises
    ------
    NeedsRows
        Where rows of a column differ in what stands in.
    """
    inputs = question.inputs
    if question.defaults:
        return Kept(inputs, outputs)
    names = {str(path[0]) for path in moved}
    used = [f for f in calculation.figures if _stands_in(f, inputs, names)]
    gone = set(graded(calculation))
    needs = list(_of_results(calculation, outputs))
    for figure in used:
        lost = _told(calculation, _of_figure(calculation, figure), outputs)
        gone |= {figure.field, *_of_figure(calculation, figure)}
        if lost:
            needs.append(_need(calculation, figure, lost))
    return Kept(
        _without(inputs, [n for n in asked(calculation.inputs) if _is_usual(inputs, n)]),
        _without(outputs, gone & declared(calculation.outputs).keys()),
        frozenset(gone),
        tuple(needs),
    )


def _is_usual(inputs: Any, name: str) -> bool:
    return isinstance(getattr(inputs, name), Usual)


def _without(record: Any, names: Iterable[str]) -> Any:
    gone = dict.fromkeys(names)
    return dataclasses.replace(record, **gone) if gone else record


def _told(calculation: Calculation, names: Collection[str], outputs: Any) -> list[str]:
    """Return the public names of those results that there would be."""
    return [
        field.public(name)
        for name, field in declared(calculation.outputs).items()
        if name in names and getattr(outputs, name) is not None
    ]


def public_place(calculation: Calculation, name: str) -> str:
    """Return where a request tells a figure: a field, or a limit."""
    field = declared(calculation.inputs)[name]
    if isinstance(field, LimitSideField):
        return f"limits.{field.check}.{field.side}" if field.side else f"limits.{field.check}"
    return field.public(name)


def _need(calculation: Calculation, figure: Figure, lost: list[str]) -> Warned:
    place = public_place(calculation, figure.field)
    other = f", or {figure.instead}" if figure.instead else ""
    message = f"{OFF}: {', '.join(lost)} not answered; give {place}{other}, as the maker states it"
    return Warned(CODE, place, message)


def _of_results(calculation: Calculation, outputs: Any) -> Iterator[Warned]:
    """Yield one need for all that is common practice itself.

    Which of those there would have been may hang on the figures, so all are named.
    """
    names = graded(calculation)
    if _told(calculation, names, outputs):
        known = declared(calculation.outputs)
        listed = [field.public(name) for name, field in known.items() if name in names]
        message = f"{OFF}: {', '.join(listed)} not answered; ask the maker for his figures"
        yield Warned(CODE, listed[0], message)


def needs_limits(
    calculation: Calculation, question: Question, passed: Collection[str], outputs: Any
) -> Iterator[Warned]:
    """Yield which limits would judge what common practice is not let to judge."""
    if question.defaults:
        return
    for check in calculation.checks:
        if check.name not in passed and _would_judge(check, question.inputs, outputs):
            place = f"limits.{check.name}"
            message = f"{OFF}: no verdict on the {check.words}; give {place}, the maker's limit"
            yield Warned(CODE, place, message)


def _would_judge(check: Check, inputs: Any, outputs: Any) -> bool:
    holder = outputs if hasattr(outputs, check.value) else inputs
    if check.default is None or getattr(holder, check.value) is None:
        return False
    limit = check.default(inputs, outputs)
    return isinstance(limit, Limit) and limit.standing == "common_practice"


def needs_errors(question: Question) -> Iterator[Warned]:
    """Yield which instruments would have to state their own errors."""
    if question.defaults:
        return
    known = question.measuring.instruments
    used = {stated.instrument for stated in question.doubts.values()}
    used |= {instrument.set_in for instrument in known.values() if instrument.id in used}
    for instrument in known.values():
        if instrument.id in used and instrument.typical:
            yield Warned(CODE, "measuring.instruments", _errors(instrument))


def _errors(instrument: Instrument) -> str:
    names = ", ".join(sorted(instrument.typical))
    return (
        f"{OFF}: of {instrument.id!r} only the figures given count, not the usual {names}; give "
        "them as its maker states them"
    )
