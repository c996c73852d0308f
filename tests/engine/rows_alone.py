"""A batch beside its rows asked one by one."""

import math
from typing import Any

import pytest
from drawn_questions import Row

from ringland_service.core.declare import Calculation
from ringland_service.engine.columnar import ColumnResponse
from ringland_service.engine.intervals import ends
from ringland_service.engine.request import Path, Request, Stated
from ringland_service.engine.response import DomainError, Response
from ringland_service.engine.rows import Rows
from ringland_service.engine.scalar import answer

# A batch says these once for all its rows.
ONCE = {"no_uncertainty_stated"}


def as_columns(rows: list[Row], **more: Any) -> Rows:
    """Rows as the door hands them over: columns with None where nothing is given."""
    columns = {name: [row[name] for row in rows] for name in rows[0]}
    request = more.pop("request", Request(inputs=None))
    return Rows(count=len(rows), columns=columns, shared={}, request=request, **more)


def single(
    of: Calculation, row: Row, uncertainties: dict[str, float], **more: Any
) -> Response | DomainError:
    """The answer to one row alone."""
    inputs = of.inputs(**{n: v for n, v in row.items() if v is not None})
    stated: dict[Path, Stated] = {
        (n,): Stated(uncertainty=u) for n, u in uncertainties.items() if row[n] is not None
    }
    try:
        return answer(of, Request(inputs=inputs, uncertainties=stated, **more))
    except DomainError as refused:
        return refused


def within_ulp(a: Any, b: Any, ulp: int = 4) -> bool:
    if isinstance(a, float) and isinstance(b, float):
        return abs(a - b) <= ulp * math.ulp(max(abs(a), abs(b)))
    return bool(a == b)


def alike(a: float | None, b: float | None, relative: float) -> bool:
    """Whether two numbers agree but for rounding, or neither is there."""
    if a is None or b is None:
        return a is b
    return math.isclose(a, b, rel_tol=relative, abs_tol=1e-11)


def same_ends(here: Any, there: Any) -> bool:
    """Whether two intervals agree but for rounding, each of a list, or neither is there."""
    if isinstance(here, list) and isinstance(there, list):
        return len(here) == len(there) and all(map(same_ends, here, there))
    if here is None or there is None:
        return here is there
    return all(alike(a, b, 1e-9) for a, b in zip(here, there, strict=True))


def told(faults: Any) -> list[tuple[str, str, str]]:
    return [(fault.field, fault.message, fault.right) for fault in faults]


def assert_row(found: ColumnResponse, row: int, alone: Response | DomainError) -> None:
    """Assert that one row of a batch says what the row says alone, and nothing else."""
    if isinstance(alone, DomainError):
        assert told(found.problems[row]) == told(alone.faults)
        assert all(column[row] is None for column in found.results.values())
        assert all(column.verdict[row] is None for column in found.verdicts.values())
        return
    assert row not in found.problems
    assert_results(found, row, alone)
    assert_verdicts(found, row, alone)
    codes = {(w.code, w.field) for w, where in found.warnings.items() if row in where}
    assert {c for c in codes if c[0] not in ONCE} == {
        (w.code, w.field) for w in alone.warnings if w.code not in ONCE
    }


def assert_results(found: ColumnResponse, row: int, alone: Response) -> None:
    given = {n for n, value in vars(alone.outputs).items() if value is not None}
    assert given <= found.results.keys()
    for name, column in found.results.items():
        expected = getattr(alone.outputs, name)
        assert within_ulp(column[row], expected), (name, column[row], expected)
    assert {n for n in alone.u if hasattr(alone.outputs, n)} <= found.u.keys()
    for name, column in found.u.items():
        assert alike(column[row], alone.u.get(name), 1e-9), (name, column[row], alone.u.get(name))
    between = {n: ends(one) for n, one in alone.intervals.items() if hasattr(alone.outputs, n)}
    assert between.keys() <= found.intervals.keys()
    for name, column in found.intervals.items():
        assert same_ends(column[row], between.get(name)), (name, column[row], between.get(name))


def assert_verdicts(found: ColumnResponse, row: int, alone: Response) -> None:
    verdicts = {v.check.name: v for v in alone.verdicts}
    assert verdicts.keys() <= found.verdicts.keys()
    for name, judged in found.verdicts.items():
        one = verdicts.get(name)
        assert judged.verdict[row] == (one.word if one else None), name
        if one:
            assert judged.value[row] == pytest.approx(one.value, rel=1e-12, abs=1e-12)
            assert judged.margin[row] == pytest.approx(one.judged.margin, rel=1e-9, abs=1e-9)
            assert alike(judged.probability[row], one.judged.probability, 1e-6)
            between = None if one.interval is None else ends(one.interval)
            assert same_ends(judged.interval[row], between), (name, judged.interval[row], between)
