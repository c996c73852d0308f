"""A deadline between rows: what is done by then stands, the rest is not reached."""

import math
from typing import Any

import pytest
from drawn_questions import example_row
from rows_alone import as_columns, assert_row, single

from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Calculation
from ringland_service.core.errors import OutOfBounds
from ringland_service.engine.columnar import ColumnAnswer, answer_rows
from ringland_service.engine.deadline import Deadline, never

COLUMNS = [c for c in CALCULATIONS if isinstance(c, Calculation) and c.columns]


class Looks:
    """A clock that goes on by a second each time that it is looked at."""

    def __init__(self) -> None:
        self.count = -1.0

    def __call__(self) -> float:
        self.count += 1.0
        return self.count


def after(looks: int) -> Deadline:
    return Deadline(looks + 0.5, Looks())


def empty(found: ColumnAnswer, row: int) -> bool:
    columns = [*found.results.values(), *found.u.values()]
    columns += [v.verdict for v in found.verdicts.values()]
    return all(column[row] is None for column in columns)


@pytest.mark.parametrize("calculation", COLUMNS, ids=lambda c: c.name)
def test_a_group_is_answered_whole_or_not_reached(calculation: Calculation) -> None:
    row = example_row(calculation)
    rows = as_columns([row, row], faults={})
    found = answer_rows(calculation, rows, after(0))
    assert found.not_reached == {0, 1}
    assert not found.problems
    assert all(empty(found, i) for i in (0, 1))
    found = answer_rows(calculation, rows, after(1))
    assert not found.not_reached
    assert_row(found, 1, single(calculation, row, {}))


def test_rows_that_go_singly_are_looked_at_one_by_one() -> None:
    of = BY_NAME["cylinder-spread"]
    assert isinstance(of, Calculation)
    row: Any = {"readings_kpa": (1180.0, 760.0), "layout": "in_line"}
    found = answer_rows(of, as_columns([row] * 4), after(3))
    assert found.not_reached == {2, 3}
    assert_row(found, 1, single(of, row, {}))
    assert empty(found, 2)


def test_a_bad_row_is_told_even_when_time_is_up() -> None:
    of = BY_NAME["displacement"]
    assert isinstance(of, Calculation)
    row = example_row(of)
    faults = {1: [OutOfBounds("bore_mm", "not a number")]}
    found = answer_rows(of, as_columns([row, row], faults=faults), after(0))
    assert found.not_reached == {0}
    assert found.problems.keys() == {1}


def test_a_deadline_comes_when_its_clock_says() -> None:
    now = 100.0
    deadline = Deadline(5.0, lambda: now)
    assert not deadline.passed()
    now = 104.999
    assert not deadline.passed()
    now = 105.0
    assert deadline.passed()
    assert not never().passed()
    assert not Deadline(math.inf, lambda: 1e300).passed()
