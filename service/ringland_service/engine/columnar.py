"""Many rows of one calculation: computed as columns, answered row by row.

Rows are taken together where the same fields are given and the words (choices, flags) agree, so
the arithmetic never meets a missing number. A row that cannot be answered becomes a problem; the
others are computed, and nothing is dropped or reordered. A deadline is asked between groups, and
between rows that go singly: what is done by then is answered, the rest is not reached.
"""

import dataclasses
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, Rule, declared
from ringland_service.core.declare.fields import Field, Quantified, ResultField, UnitGiven
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.notices import Warned
from ringland_service.core.errors import CoreError, OutOfBounds
from ringland_service.core.metrology.conformity import is_column
from ringland_service.core.metrology.extremes import Interval
from ringland_service.engine.deadline import Deadline, never
from ringland_service.engine.intervals import ends, intervals, open_leads
from ringland_service.engine.judging import verdicts
from ringland_service.engine.request import all_components, present
from ringland_service.engine.response import DomainError, Response, Verdict
from ringland_service.engine.rows import Rows, groups, question_of, single_question
from ringland_service.engine.scalar import LOUD, answer, contradiction, uncertainty
from ringland_service.engine.standing_in import Kept, NeedsRows, kept, needs_limits
from ringland_service.engine.unstated import false_precision, left_out
from ringland_service.engine.warnings import (
    NOT_STATED,
    noticed_rows,
    public_field,
    value_alone,
    within_uncertainty,
)


@dataclass
class RowVerdicts:
    """The verdicts of one check, a column a member; numbers in the canonical unit of ``kind``."""

    kind: Kind | None
    decimals: int | None
    verdict: list[Any]
    value: list[Any]
    margin: list[Any]
    u: list[Any]
    probability: list[Any]
    why: list[Any]
    interval: list[Any]


@dataclass
class ColumnResponse:
    """What a batch answers; every list has one entry a row, None where there is nothing.

    Rows are counted from 0 here; what a caller sees counts from 1.
    """

    calculation: Calculation
    count: int
    results: dict[str, list[Any]] = field(default_factory=dict)
    u: dict[str, list[Any]] = field(default_factory=dict)
    intervals: dict[str, list[Any]] = field(default_factory=dict)
    verdicts: dict[str, RowVerdicts] = field(default_factory=dict)
    problems: dict[int, list[CoreError]] = field(default_factory=dict)
    warnings: dict[Warned, set[int]] = field(default_factory=dict)
    not_reached: set[int] = field(default_factory=set)

    def put(self, table: dict[str, list[Any]], name: str, rows: Sequence[int], values: Any) -> None:
        """Put the values of some rows into a column."""
        if name not in table:
            table[name] = [None] * self.count
        scatter(table[name], rows, values)

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


def answer_rows(
    calculation: Calculation, rows: Rows, deadline: Deadline | None = None
) -> ColumnResponse:
    """Answer every row that can be answered before the deadline."""
    deadline = deadline or never()
    found = ColumnResponse(calculation, rows.count)
    found.problems.update({row: list(faults) for row, faults in rows.faults.items()})
    for group in groups(rows):
        if deadline.passed():
            found.not_reached.update(group)
            continue
        try:
            if not calculation.columns or _uses_instruments(rows):
                raise NeedsRows
            with np.errstate(**LOUD):
                _answer_group(calculation, rows, group, found)
        except (NeedsRows, CoreError, ArithmeticError):
            _answer_singly(calculation, rows, group, found, deadline)
    return found


def _uses_instruments(rows: Rows) -> bool:
    return any(stated.instrument is not None for stated in rows.request.uncertainties.values())


def _answer_group(
    calculation: Calculation, rows: Rows, group: list[int], found: ColumnResponse
) -> None:
    request = question_of(rows, calculation, group)
    if any(present(request.inputs, agreement.of) for agreement in calculation.agreements):
        raise NeedsRows
    bad = _broken(calculation.rules, request.inputs, group, found)
    if bad:
        group = [row for row in group if row not in bad]
        if group:
            _answer_group(calculation, rows, group, found)
        return
    outputs = calculation.compute(request.inputs)
    components = all_components(request, calculation)
    u, moved, _, pushes = uncertainty(calculation, request.inputs, outputs, components)
    given = intervals(calculation, request.inputs, outputs, u, pushes)
    left = kept(calculation, request, outputs, moved)
    gone = None if request.defaults else left.gone
    # Worked out before any of it is put: where one raises, all its rows go singly.
    noticed = [
        *noticed_rows(calculation, request.inputs, outputs, moved, len(group), gone),
        *within_uncertainty(calculation, open_leads(pushes), len(group)),
    ]
    judged = list(verdicts(calculation, request, left.outputs, u, given))
    names = {verdict.check.name for verdict in judged}
    needs = (*left.needs, *needs_limits(calculation, request, names, left.outputs))
    unstated = left_out(calculation, request, outputs, u, moved)
    _put_results(left, group, u, given, found)
    for warned, where in noticed:
        found.warn(warned, [group[i] for i in where])
    for warned in needs:
        found.warn(warned, group)
    for warned, holds in false_precision(calculation, outputs, u, unstated):
        found.warn(warned, _rows_where(holds, group))
    for verdict in judged:
        _put_verdict(found, verdict, group)
        name = public_field(calculation, verdict.check.value)
        bare = _rows_where(value_alone(verdict), group)
        if bare:
            found.warn(Warned("no_uncertainty_stated", name, NOT_STATED), bare)


def _rows_where(holds: Any, group: Sequence[int]) -> list[int]:
    where = np.broadcast_to(np.asarray(holds), len(group))
    return [group[i] for i in np.flatnonzero(where).tolist()]


def _broken(
    rules: Sequence[Rule], inputs: Any, group: Sequence[int], found: ColumnResponse
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
    given: Mapping[str, Interval],
    found: ColumnResponse,
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
    for name, uncertain in u.items():
        if hasattr(shown, name) and name not in left.gone:
            found.put(found.u, name, group, _where_uncertain(uncertain, uncertain))
    for name, one in given.items():
        if name not in left.gone:
            found.put(found.intervals, name, group, ends(one))


def _where_uncertain(values: Any, u: Any) -> Any:
    """Return the values of a column, None in rows without uncertainty, as in a single answer."""
    if not is_column(u):
        return values
    return [
        v if uncertainty else None
        for v, uncertainty in zip(values.tolist(), u.tolist(), strict=True)
    ]


def _put_verdict(found: ColumnResponse, verdict: Verdict, group: Sequence[int]) -> None:
    if verdict.check.name not in found.verdicts:
        empty: list[Any] = [None] * found.count
        columns = (list(empty) for _ in range(7))
        found.verdicts[verdict.check.name] = RowVerdicts(verdict.kind, verdict.decimals, *columns)
    column = found.verdicts[verdict.check.name]
    scatter(column.verdict, group, verdict.word)
    scatter(column.value, group, verdict.value)
    scatter(column.margin, group, verdict.judged.margin)
    scatter(column.u, group, _where_uncertain(verdict.u, verdict.u))
    scatter(column.probability, group, _probability(verdict))
    if verdict.interval is not None:
        scatter(column.interval, group, ends(verdict.interval))
    whys = verdict.why
    scatter(
        column.why, group, [why or None for why in whys] if isinstance(whys, np.ndarray) else whys
    )


def _probability(verdict: Verdict) -> Any:
    """Return the probability within; None in rows without uncertainty or without a verdict.

    Nor has a row one that is judged from an interval.
    """
    found = _where_uncertain(verdict.judged.probability, verdict.u)
    if verdict.interval is not None and isinstance(found, list):
        given = np.broadcast_to(verdict.interval.given, len(found)).tolist()
        found = [None if by_interval else p for p, by_interval in zip(found, given, strict=True)]
    if isinstance(verdict.why, np.ndarray) and isinstance(found, list):
        return [None if why else p for p, why in zip(found, verdict.why.tolist(), strict=True)]
    return found


def _answer_singly(
    calculation: Calculation,
    rows: Rows,
    group: Sequence[int],
    found: ColumnResponse,
    deadline: Deadline,
) -> None:
    for row in group:
        if deadline.passed():
            found.not_reached.add(row)
            continue
        try:
            put_answer(found, answer(calculation, single_question(rows, calculation, row)), row)
        except DomainError as refused:
            found.problems[row] = list(refused.faults)


def _with_kind(of: Field, value: Any, inputs: Any) -> Any:
    """Return a result with its kind beside it where only the inputs know the kind."""
    if not isinstance(of, ResultField) or not of.kind_of:
        return value
    kind = getattr(inputs, of.kind_of).kind
    return Quantified(value, UnitGiven(kind.unit, kind, Fraction(1), 0.0))


def put_answer(found: ColumnResponse, single: Response, row: int) -> None:
    """Put the answer of one row into the columns."""
    for name, field_ in declared(single.calculation.outputs).items():
        value = getattr(single.outputs, name)
        if value is not None:
            found.put(found.results, name, [row], [_with_kind(field_, value, single.inputs)])
    for name, uncertain in single.u.items():
        if hasattr(single.outputs, name):
            found.put(found.u, name, [row], [uncertain])
    for name, one in single.intervals.items():
        if hasattr(single.outputs, name):
            found.put(found.intervals, name, [row], [ends(one)])
    for verdict in single.verdicts:
        _put_verdict(found, verdict, [row])
    for warned in single.warnings:
        found.warn(warned, [row])
