"""Many rows of one calculation: computed as columns, answered row by row.

Rows are taken together where the same fields are given and the words (choices, flags) agree, so
the arithmetic never meets a missing number. A row that cannot be answered becomes a problem; the
others are computed, and nothing is dropped or reordered.
"""

import dataclasses
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, Rule, declared
from ringland_service.core.errors import CoreError, OutOfBounds
from ringland_service.core.fields import Field, Quantified, ResultField, UnitGiven
from ringland_service.core.kinds import Kind
from ringland_service.core.limits import Limit
from ringland_service.core.notices import Warned
from ringland_service.core.verdicts import is_column
from ringland_service.engine.answer import Answer, Refused, Verdict
from ringland_service.engine.judging import verdicts
from ringland_service.engine.question import Question, Stated, all_influences
from ringland_service.engine.single import (
    LOUD,
    answer,
    contradiction,
    doubt,
    present,
    with_limit_sides,
)
from ringland_service.engine.standing_in import Kept, NeedsRows, kept, needs_limits
from ringland_service.engine.unstated import false_precision, left_out
from ringland_service.engine.warnings import NOT_STATED, noticed_rows, public_field


@dataclass(frozen=True)
class Rows:
    """Rows of one calculation. Every column is a list with None where nothing is given.

    Attributes
    ----------
    columns : mapping
        Field to its column of canonical values (or words).
    shared : mapping
        Field to the one value that all rows share.
    uncertainty : mapping
        Field to its column of expanded uncertainties (k = 2), or to one for all rows.
    limits : mapping
        (check, side) to its column of limits.
    question : Question
        What all rows share besides: limits, rule, measuring; its inputs are not used.
    faults : mapping
        Row to the faults that reading it found.
    """

    count: int
    columns: Mapping[str, Sequence[Any]]
    shared: Mapping[str, Any]
    question: Question
    uncertainty: Mapping[str, Any] = field(default_factory=dict)
    limits: Mapping[tuple[str, str], Sequence[Any]] = field(default_factory=dict)
    faults: Mapping[int, Sequence[CoreError]] = field(default_factory=dict)


@dataclass
class RowVerdicts:
    """The verdicts of one check, a column a member; numbers in the canonical unit of ``kind``."""

    kind: Kind | None
    digits: int | None
    verdict: list[Any]
    value: list[Any]
    margin: list[Any]
    u: list[Any]
    probability: list[Any]
    why: list[Any]


@dataclass
class ColumnAnswer:
    """What a batch answers; every list has one entry a row, None where there is nothing."""

    calculation: Calculation
    count: int
    results: dict[str, list[Any]] = field(default_factory=dict)
    u: dict[str, list[Any]] = field(default_factory=dict)
    verdicts: dict[str, RowVerdicts] = field(default_factory=dict)
    problems: dict[int, list[CoreError]] = field(default_factory=dict)
    warnings: dict[Warned, set[int]] = field(default_factory=dict)

    def put(self, table: dict[str, list[Any]], name: str, rows: Sequence[int], values: Any) -> None:
        """Put the values of some rows into a column."""
        column = table.setdefault(name, [None] * self.count)
        scatter(column, rows, values)

    def warn(self, warned: Warned, rows: Sequence[int]) -> None:
        """Note a warning for some rows."""
        self.warnings.setdefault(warned, set()).update(rows)


def scatter(column: list[Any], rows: Sequence[int], values: Any) -> None:
    """Put values, or one value for all, at the rows of a column."""
    if isinstance(values, np.ndarray) and values.ndim:
        values = values.tolist()
    if not isinstance(values, list):
        values = [values] * len(rows)
    for row, value in zip(rows, values, strict=True):
        column[row] = value


def answer_rows(calculation: Calculation, rows: Rows) -> ColumnAnswer:
    """Answer every row that can be answered."""
    found = ColumnAnswer(calculation, rows.count)
    found.problems.update({row: list(faults) for row, faults in rows.faults.items()})
    for group in groups(rows):
        try:
            if not calculation.columns or _uses_instruments(rows):
                raise NeedsRows
            with np.errstate(**LOUD):
                _answer_group(calculation, rows, group, found)
        except (NeedsRows, CoreError, ArithmeticError):
            _answer_singly(calculation, rows, group, found)
    return found


def _uses_instruments(rows: Rows) -> bool:
    return any(stated.instrument is not None for stated in rows.question.doubts.values())


def groups(rows: Rows) -> list[list[int]]:
    """Return the good rows, grouped by which fields are given and by their words."""
    found: dict[Any, list[int]] = {}
    columns = [*rows.columns.values(), *rows.limits.values()]
    columns += [c for c in rows.uncertainty.values() if isinstance(c, list)]
    keyed = [marks for marks in map(_pattern, columns) if marks is not None]
    for row in range(rows.count):
        if row not in rows.faults:
            found.setdefault(tuple(column[row] for column in keyed), []).append(row)
    return list(found.values())


def _pattern(column: Sequence[Any]) -> list[Any] | None:
    """Return what tells groups apart in a column, or None where all rows are alike."""
    marks = [v if isinstance(v, (str, bool, tuple)) or v is None else 0 for v in column]
    return None if all(mark == 0 and mark is not False for mark in marks) else marks


def _taken(column: Sequence[Any], group: Sequence[int]) -> Any:
    """Return the group's part of a column: an array of numbers, or the one word of all."""
    first = column[group[0]]
    if first is None or isinstance(first, (str, bool, tuple)):
        return first
    return np.array([column[row] for row in group], dtype=float)


def question_of(rows: Rows, calculation: Calculation, group: Sequence[int]) -> Question:
    """Return the question of a group of rows, its numbers as columns."""
    values = dict(rows.shared) | {n: _taken(c, group) for n, c in rows.columns.items()}
    given = {name: value for name, value in values.items() if value is not None}
    doubts = dict(rows.question.doubts)
    for name, column in rows.uncertainty.items():
        stated = _taken(column, group) if isinstance(column, list) else column
        if stated is not None:
            doubts[(name,)] = Stated(uncertainty=stated)
    limits = dict(rows.question.limits)
    for (check, side), column in rows.limits.items():
        stated = _taken(column, group)
        if stated is not None:
            limits[check] = dataclasses.replace(limits.get(check, Limit()), **{side: stated})
    inputs = calculation.inputs(**given)
    question = dataclasses.replace(rows.question, inputs=inputs, doubts=doubts, limits=limits)
    return dataclasses.replace(question, inputs=with_limit_sides(calculation, question))


def _answer_group(
    calculation: Calculation, rows: Rows, group: list[int], found: ColumnAnswer
) -> None:
    question = question_of(rows, calculation, group)
    bad = _broken(calculation.rules, question.inputs, group, found)
    if bad:
        group = [row for row in group if row not in bad]
        if group:
            _answer_group(calculation, rows, group, found)
        return
    outputs = calculation.compute(question.inputs)
    influences = all_influences(question, calculation)
    u, moved = doubt(calculation, question.inputs, outputs, influences)
    left = kept(calculation, question, outputs, moved)
    gone = None if question.defaults else left.gone
    _put_results(left, group, u, found)
    for warned, where in noticed_rows(
        calculation, question.inputs, outputs, moved, len(group), gone
    ):
        found.warn(warned, [group[i] for i in where])
    passed = list(verdicts(calculation, question, left.outputs, u))
    judged = {verdict.check.name for verdict in passed}
    for warned in (*left.needs, *needs_limits(calculation, question, judged, left.outputs)):
        found.warn(warned, group)
    unstated = left_out(calculation, question, outputs, u, moved)
    for warned, holds in false_precision(calculation, outputs, u, unstated):
        where = np.flatnonzero(np.broadcast_to(np.asarray(holds), len(group))).tolist()
        found.warn(warned, [group[i] for i in where])
    for verdict in passed:
        _put_verdict(found, verdict, group)
        if verdict.u is None:
            name = public_field(calculation, verdict.check.value)
            found.warn(Warned("no_uncertainty_stated", name, NOT_STATED), group)


def _broken(
    rules: Sequence[Rule], inputs: Any, group: Sequence[int], found: ColumnAnswer
) -> set[int]:
    bad: set[int] = set()
    for rule in rules:
        if present(inputs, rule.fields):
            where = np.broadcast_to(np.asarray(rule.broken(inputs)), len(group))
            for i in np.flatnonzero(where).tolist():
                found.problems.setdefault(group[i], []).append(contradiction(rule))
                bad.add(group[i])
    return bad


def _put_results(
    left: Kept,
    group: Sequence[int],
    u: Mapping[str, Any],
    found: ColumnAnswer,
) -> None:
    """Put the results of a group; raise where one is not finite, so that rows go singly."""
    shown = left.outputs
    for result in dataclasses.fields(shown):
        value = getattr(shown, result.name)
        if np.asarray(value).dtype.kind == "f" and not np.all(np.isfinite(value)):
            raise OutOfBounds(result.name, "has no finite value for these inputs")
    for result in dataclasses.fields(shown):
        value = getattr(shown, result.name)
        if value is not None:
            found.put(found.results, result.name, group, value)
    for name, doubted in u.items():
        if hasattr(shown, name) and name not in left.gone:
            found.put(found.u, name, group, _where_doubted(doubted, doubted))


def _where_doubted(values: Any, u: Any) -> Any:
    """Return the values of a column, None in rows without doubt: a single answer has none there."""
    if not is_column(u):
        return values
    return [v if doubt else None for v, doubt in zip(values.tolist(), u.tolist(), strict=True)]


def _put_verdict(found: ColumnAnswer, verdict: Verdict, group: Sequence[int]) -> None:
    empty: list[Any] = [None] * found.count
    column = found.verdicts.setdefault(
        verdict.check.name,
        RowVerdicts(verdict.kind, verdict.digits, *(list(empty) for _ in range(6))),
    )
    scatter(column.verdict, group, verdict.word)
    scatter(column.value, group, verdict.value)
    scatter(column.margin, group, verdict.judged.margin)
    scatter(column.u, group, _where_doubted(verdict.u, verdict.u))
    scatter(column.probability, group, _probability(verdict))
    whys = verdict.why
    scatter(
        column.why, group, [why or None for why in whys] if isinstance(whys, np.ndarray) else whys
    )


def _probability(verdict: Verdict) -> Any:
    """Return the probability within; None in rows without uncertainty or without a verdict."""
    found = _where_doubted(verdict.judged.probability, verdict.u)
    if isinstance(verdict.why, np.ndarray) and isinstance(found, list):
        return [None if why else p for p, why in zip(found, verdict.why.tolist(), strict=True)]
    return None if isinstance(verdict.why, str) else found


def single_question(rows: Rows, calculation: Calculation, row: int) -> Question:
    """Return the question of one row, its numbers as floats."""
    question = question_of(rows, calculation, [row])
    return dataclasses.replace(
        question,
        inputs=_scalar(question.inputs),
        doubts={p: _scalar(stated) for p, stated in question.doubts.items()},
        limits={name: _scalar(limit) for name, limit in question.limits.items()},
    )


def _scalar(record: Any) -> Any:
    changes = {
        f.name: float(getattr(record, f.name)[0])
        for f in dataclasses.fields(record)
        if isinstance(getattr(record, f.name), np.ndarray)
    }
    return dataclasses.replace(record, **changes)


def _answer_singly(
    calculation: Calculation, rows: Rows, group: Sequence[int], found: ColumnAnswer
) -> None:
    for row in group:
        try:
            put_answer(found, answer(calculation, single_question(rows, calculation, row)), row)
        except Refused as refused:
            found.problems[row] = list(refused.faults)


def _with_kind(of: Field, value: Any, inputs: Any) -> Any:
    """Return a result with its kind beside it where only the inputs know the kind."""
    if not isinstance(of, ResultField) or not of.kind_of:
        return value
    kind = getattr(inputs, of.kind_of).kind
    return Quantified(value, UnitGiven(kind.unit, kind, Fraction(1), 0.0))


def put_answer(found: ColumnAnswer, single: Answer, row: int) -> None:
    """Put the answer of one row into the columns."""
    for name, field_ in declared(single.calculation.outputs).items():
        value = getattr(single.outputs, name)
        if value is not None:
            found.put(found.results, name, [row], [_with_kind(field_, value, single.inputs)])
    for name, doubted in single.u.items():
        if hasattr(single.outputs, name):
            found.put(found.u, name, [row], [doubted])
    for verdict in single.verdicts:
        _put_verdict(found, verdict, [row])
    for warned in single.warnings:
        found.warn(warned, [row])
