"""Many rows: columns cut to what one request may hold, their answers joined in order."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any, TypeAlias, TypeVar

from ringland._answers import BatchAnswer, Column, MoreProblems, RowWarning, VerdictColumns
from ringland._asking import finite, values_of
from ringland._errors import InvalidInput, ServiceError
from ringland._types import Readings

# What the service takes in one request: rows at most, and half of its bytes. Of a calculation whose
# rows are dear it takes fewer, and says how many when it refuses them.
MOST_ROWS = 10_000
MOST_BYTES = 4 * 1024 * 1024

T = TypeVar("T")
ColumnLike: TypeAlias = tuple[Sequence[Any], str] | Readings | Sequence[Any] | Mapping[str, Any]


def columns_json(columns: Mapping[str, ColumnLike]) -> dict[str, dict[str, Any]]:
    """Return columns as the service reads them, all of one length.

    Raises
    ------
    InvalidInput
        Naming the column that is none, or the lengths where they differ.
    """
    found = {name: column_json(column, name) for name, column in columns.items()}
    lengths = {name: len(column["values"]) for name, column in found.items()}
    if len(set(lengths.values())) != 1 or not all(lengths.values()):
        raise InvalidInput(f"columns: one length is needed, of one row or more, not {lengths}")
    return found


def column_json(column: Any, name: str) -> dict[str, Any]:
    """Return one column; NaN is how arrays and frames write a gap, so it becomes one."""
    members: dict[str, Any] = {}
    if isinstance(column, Readings):
        members = {"unit": column.unit, "uncertainty": column.uncertainty}
        values: Any = column.values
    elif isinstance(column, Mapping):
        members = {str(k): v for k, v in column.items() if k != "values"}
        values = column.get("values")
    elif _is_pair(column):
        values, members["unit"] = column
    else:
        values = column
    found = {k: v for k, v in members.items() if v is not None}
    uncertainty = found.get("uncertainty")
    if uncertainty is not None:
        listed = hasattr(uncertainty, "__iter__")
        found["uncertainty"] = _entries(uncertainty, name) if listed else finite(uncertainty, name)
    return {"values": _entries(values, name), **found}


def _is_pair(column: Any) -> bool:
    """Return whether a column is (values, unit); two words are two rows."""
    pair = isinstance(column, tuple) and len(column) == 2 and isinstance(column[1], str)
    return pair and not isinstance(column[0], str)


def _entries(values: Any, name: str) -> list[Any]:
    return [_entry(value, f"{name}.{i}") for i, value in enumerate(values_of(values, name))]


def _entry(value: Any, where: str) -> Any:
    if value is None or isinstance(value, bool | str):
        return value
    if hasattr(value, "__iter__") and not isinstance(value, Mapping):
        # A list in a row: its gaps are gaps of the list.
        return _entries(value, where)
    return None if value != value else finite(value, where)


def row_count(columns: Mapping[str, Mapping[str, Any]]) -> int:
    """Return how many rows columns have."""
    return len(next(iter(columns.values()))["values"])


class RowLimit:
    """How many rows a calculation takes in one request, as far as the service has said."""

    def __init__(self) -> None:
        self.most = MOST_ROWS

    def learns(self, error: ServiceError) -> bool:
        """Return whether an error says that fewer rows are taken; then these count from now on."""
        for fault in error.errors:
            most = fault.allowed.get("most") if isinstance(fault.allowed, Mapping) else None
            if fault.code == "wrong_count" and isinstance(most, int) and 0 < most < self.most:
                self.most = most
                return True
        return False

    def asked(self, count: int, ask: Callable[[int, int], int]) -> None:
        """Call ``ask`` with the first row and the end of each request; it returns the next row.

        Raises
        ------
        ServiceError
            Of ``ask``, but for the one that says how many rows are taken.
        """
        row = 0
        while row < count:
            try:
                row = ask(row, min(row + self.most, count))
            except ServiceError as error:
                if not self.learns(error):
                    raise


def cut(columns: Mapping[str, Mapping[str, Any]], start: int, end: int) -> dict[str, Any]:
    """Return some rows of columns."""
    return {name: _cut(column, slice(start, end)) for name, column in columns.items()}


def _cut(column: Mapping[str, Any], rows: slice) -> dict[str, Any]:
    return {k: v[rows] if isinstance(v, list) else v for k, v in column.items()}


def joined(parts: Sequence[BatchAnswer]) -> BatchAnswer:
    """Return the answers of the requests as one, rows counted through."""
    first, starts = parts[0], _starts(parts)
    return replace(
        first,
        rows=sum(p.rows for p in parts),
        answered=sum(p.answered for p in parts),
        refused=sum(p.refused for p in parts),
        not_reached=sum(p.not_reached for p in parts),
        status=tuple(word for p in parts for word in p.status),
        results={name: _column(parts, name) for name in _names([p.results for p in parts])},
        verdicts={name: _verdicts(parts, name) for name in _names([p.verdicts for p in parts])},
        problems=tuple(
            replace(problem, row=problem.row + start)
            for part, start in zip(parts, starts, strict=True)
            for problem in part.problems
        ),
        more_problems=_more_problems(parts),
        warnings=_warnings(parts, starts),
    )


def _more_problems(parts: Sequence[BatchAnswer]) -> tuple[MoreProblems, ...]:
    counts: Counter[str] = Counter()
    for part in parts:
        counts.update({more.code: more.count for more in part.more_problems})
    return tuple(MoreProblems(code, count) for code, count in sorted(counts.items()))


def _starts(parts: Sequence[BatchAnswer]) -> list[int]:
    """Return the number of rows before each part."""
    starts = [0]
    for part in parts[:-1]:
        starts.append(starts[-1] + part.rows)
    return starts


def _names(parts: Sequence[Mapping[str, Any]]) -> list[str]:
    return list(dict.fromkeys(name for part in parts for name in part))


def _column(parts: Sequence[BatchAnswer], name: str) -> Column:
    return _one_column([(p.results.get(name), p.rows) for p in parts])


def _one_column(parts: Sequence[tuple[Column | None, int]]) -> Column:
    """Return a column's parts as one, None for the rows of a part that lacks it."""
    known = next(column for column, _ in parts if column is not None)
    unit, units = _units(parts, known)
    uncertainties = [(None if c is None else c.uncertainties, rows) for c, rows in parts]
    between = [(None if c is None else c.intervals, rows) for c, rows in parts]
    values = [(None if c is None else c.values, rows) for c, rows in parts]
    return Column(
        _concatenated(values),
        unit,
        known.decimals,
        _where_any(uncertainties),
        units,
        _where_any(between),
    )


def _where_any(parts: Sequence[tuple[tuple[T, ...] | None, int]]) -> tuple[T | None, ...] | None:
    """Return the parts as one; None where no part has any."""
    return _concatenated(parts) if any(part is not None for part, _ in parts) else None


def _units(
    parts: Sequence[tuple[Column | None, int]], known: Column
) -> tuple[str | None, tuple[str | None, ...] | None]:
    """Return the one unit of a column's parts, or the unit of each row where they differ."""
    columns = [column for column, _ in parts if column is not None]
    if all((c.unit, c.units) == (known.unit, None) for c in columns):
        return known.unit, None
    each = [(None if c is None else c.units or (c.unit,) * rows, rows) for c, rows in parts]
    return None, _concatenated(each)


def _concatenated(parts: Sequence[tuple[tuple[T, ...] | None, int]]) -> tuple[T | None, ...]:
    found: list[T | None] = []
    for values, rows in parts:
        found.extend([None] * rows if values is None else values)
    return tuple(found)


def _verdicts(parts: Sequence[BatchAnswer], name: str) -> VerdictColumns:
    """Return one check's columns as one, None for the rows of a part that lacks it."""
    found = [(p.verdicts.get(name, ABSENT), p.rows) for p in parts]
    return VerdictColumns(
        verdict=_concatenated([(v.verdict or None, rows) for v, rows in found]),
        why=_concatenated([(v.why or None, rows) for v, rows in found]),
        margin=_one_column([(_given(v.margin), rows) for v, rows in found]),
        uncertainty=_one_column([(_given(v.uncertainty), rows) for v, rows in found]),
        interval=_concatenated([(v.interval or None, rows) for v, rows in found]),
        conformance_probability=_concatenated(
            [(v.conformance_probability or None, r) for v, r in found]
        ),
    )


# Stands for the check in a part that lacks it; no real column is empty.
ABSENT = VerdictColumns((), (), Column(()), Column(()), (), ())


def _given(column: Column) -> Column | None:
    return column if column.values else None


def _warnings(parts: Sequence[BatchAnswer], starts: Sequence[int]) -> tuple[RowWarning, ...]:
    """Return the warnings, each once with all of its rows."""
    rows: dict[tuple[str, str, str], list[int]] = {}
    for part, start in zip(parts, starts, strict=True):
        for said in part.warnings:
            key = (said.code, said.field, said.message)
            rows.setdefault(key, []).extend(row + start for row in said.rows)
    return tuple(RowWarning(*key, tuple(found)) for key, found in rows.items())
