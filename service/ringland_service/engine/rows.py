"""Rows of one calculation as they are asked: columns, what all rows share, which rows are alike."""

import dataclasses
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation
from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.question import Question, Stated
from ringland_service.engine.scalar import with_limit_sides


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


def groups(rows: Rows) -> list[list[int]]:
    """Return the good rows, grouped by which fields are given and by their words."""
    found: dict[Any, list[int]] = {}
    columns = [*rows.columns.values(), *rows.limits.values()]
    listed = _listed(rows)
    columns += [c for n, c in rows.uncertainty.items() if isinstance(c, list) and n not in listed]
    keyed = [marks for marks in map(_pattern, columns) if marks is not None]
    # The readings of a list share one uncertainty, which is no column in their group.
    keyed += [c for n, c in rows.uncertainty.items() if isinstance(c, list) and n in listed]
    for row in range(rows.count):
        if row not in rows.faults:
            found.setdefault(tuple(column[row] for column in keyed), []).append(row)
    return list(found.values())


def _listed(rows: Rows) -> set[str]:
    """Return the names of the columns that hold a list in each row."""
    return {n for n, column in rows.columns.items() if any(isinstance(v, tuple) for v in column)}


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
    return _question(rows, calculation, lambda column: _taken(column, group))


def single_question(rows: Rows, calculation: Calculation, row: int) -> Question:
    """Return the question of one row, its numbers as floats."""

    def cell(column: Sequence[Any]) -> Any:
        value = column[row]
        return value if isinstance(value, (str, bool, tuple, type(None))) else float(value)

    return _question(rows, calculation, cell)


def _question(
    rows: Rows, calculation: Calculation, take: Callable[[Sequence[Any]], Any]
) -> Question:
    """Return the question that ``take`` leaves of the columns, beside what all rows share."""
    values = dict(rows.shared) | {n: take(c) for n, c in rows.columns.items()}
    given = {name: value for name, value in values.items() if value is not None}
    doubts = dict(rows.question.doubts)
    for name, column in rows.uncertainty.items():
        stated = take(column) if isinstance(column, list) else column
        if isinstance(values.get(name), tuple) and np.ndim(stated):
            stated = float(stated[0])
        if stated is not None:
            doubts[(name,)] = Stated(uncertainty=stated)
    limits = dict(rows.question.limits)
    for (check, side), column in rows.limits.items():
        stated = take(column)
        if stated is not None:
            limits[check] = dataclasses.replace(limits.get(check, Limit()), **{side: stated})
    inputs = calculation.inputs(**given)
    question = dataclasses.replace(rows.question, inputs=inputs, doubts=doubts, limits=limits)
    filled = with_limit_sides(calculation, question)
    return question if filled is inputs else dataclasses.replace(question, inputs=filled)
