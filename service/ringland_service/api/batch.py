"""Batches: columns in, columns out; a bad row keeps its place and says what is wrong."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from marshmallow import ValidationError

from ringland_service.api import query
from ringland_service.api.bounds import bounds, outside
from ringland_service.api.envelope import kinds_judged, limit_side
from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.hints import taken_for
from ringland_service.api.quantity_fields import (
    check_exact,
    check_keys,
    fail,
    faults_of,
    is_number,
    read_unit,
    show,
)
from ringland_service.api.request import (
    partly_understood,
    public_names,
    request_schema,
    spoken_ways,
)
from ringland_service.core import fields as declared
from ringland_service.core.declare import Calculation, Way, asked, defaults
from ringland_service.core.errors import CoreError, OutOfBounds
from ringland_service.core.fields import QuantityType
from ringland_service.engine.columns import Rows
from ringland_service.units import unit

MOST_ROWS = 10_000
COLUMN_KEYS = frozenset({"values", "unit", "uncertainty"})
RIGHT_COLUMN = '{"unit": "mm", "values": [68.0, 68.5]}'


class MissingInput(CoreError):
    """A row without a value that the calculation needs."""

    code = "missing_field"


class Unreadable(CoreError):
    """A row with a value that cannot be read."""

    code = "wrong_type"


@dataclass
class Draft:
    """Rows while they are read."""

    count: int
    columns: dict[str, list[Any]] = field(default_factory=dict)
    uncertainty: dict[str, Any] = field(default_factory=dict)
    limits: dict[tuple[str, str], list[Any]] = field(default_factory=dict)
    faults: dict[int, list[CoreError]] = field(default_factory=dict)

    def bad(self, row: int, error: CoreError) -> None:
        """Note what is wrong with a row."""
        self.faults.setdefault(row, []).append(error)


def split(data: Any) -> tuple[dict[str, Any], dict[str, Any]]:
    """Return the shared fields and the columns of a batch in JSON.

    Raises
    ------
    Faulty
    """
    if not isinstance(data, dict):
        raise Faulty([Fault("wrong_type", "a JSON object is needed here")])
    unknown = [name for name in data if name not in ("shared", "columns")]
    if unknown:
        allowed = ["shared", "columns"]
        raise Faulty(
            Fault("unknown_field", "not known here", allowed, given=n).under(n) for n in unknown
        )
    columns, shared = data.get("columns"), data.get("shared", {})
    if not isinstance(columns, dict) or not columns:
        detail = f'columns are needed: {{"bore": {RIGHT_COLUMN}}}'
        raise Faulty([Fault("missing_field", detail, pointer="/columns")])
    if not isinstance(shared, dict):
        raise Faulty([Fault("wrong_type", "a JSON object is needed here", pointer="/shared")])
    return shared, columns


def count_rows(columns: Mapping[str, Any]) -> int:
    """Return the one length of all columns.

    Raises
    ------
    Faulty
        Where a column is no list of values, or their lengths differ, or there are too many rows.
    """
    faults, lengths = [], {}
    for name, column in columns.items():
        values = column.get("values") if isinstance(column, dict) else None
        if not isinstance(values, list) or not values:
            detail = f"a column is needed: {RIGHT_COLUMN}"
            faults.append(Fault("wrong_type", detail).under(name).under("columns"))
        else:
            lengths[name] = len(values)
    if len(set(lengths.values())) > 1:
        detail = f"columns differ in length: {lengths}"[:300]
        faults.append(Fault("wrong_count", detail, None, 422, "/columns"))
    if lengths and max(lengths.values()) > MOST_ROWS:
        detail = f"{max(lengths.values())} rows; at most {MOST_ROWS} in one request"
        faults.append(Fault("wrong_count", detail, {"most": MOST_ROWS}, 422, "/columns"))
    if faults:
        raise Faulty(faults)
    return next(iter(lengths.values()))


def read(calculation: Calculation, shared: dict[str, Any], columns: dict[str, Any]) -> Rows:
    """Return the rows of a batch, ready to be answered as columns.

    Raises
    ------
    Faulty
        Where the batch as a whole cannot be read; a single bad row is not a fault of the whole.
    """
    draft = Draft(count_rows(columns))
    question, given = check_shared(calculation, shared, columns)
    core = {public: name for name, public in public_names(calculation).items()}
    known = sorted(core)
    faults: list[Fault] = []
    for name, column in columns.items():
        try:
            if name.startswith("limit."):
                _limit_column(calculation, draft, name, column)
            elif name not in core:
                raise fail(Fault("unknown_field", "no such column here", known, given=name))
            else:
                _column(calculation, draft, core[name], column)
        except ValidationError as error:
            faults += [fault.under(name).under("columns") for fault in faults_of(error)]
    if faults:
        raise Faulty(faults)
    _missing(calculation, draft, given)
    return Rows(
        count=draft.count,
        columns=draft.columns,
        shared=given,
        question=question,
        uncertainty=draft.uncertainty,
        limits=draft.limits,
        faults=draft.faults,
    )


def check_shared(
    calculation: Calculation, shared: dict[str, Any], columns: Mapping[str, Any]
) -> tuple[Any, dict[str, Any]]:
    """Return what all rows share; refuse what stands in a column as well, or cannot be read.

    Raises
    ------
    Faulty
    """
    both = sorted(shared.keys() & columns.keys())
    if both:
        detail = "given as a column and as shared"
        fault = Fault("given_twice", detail, None, 422)
        raise Faulty(fault.under(name).under("shared") for name in both)
    try:
        return partly_understood(calculation, shared)
    except Faulty as error:
        raise Faulty([fault.under("shared") for fault in error.faults]) from error


def _column(calculation: Calculation, draft: Draft, name: str, column: dict[str, Any]) -> None:
    """Read one column; its bad values are faults of their rows."""
    known = asked(calculation.inputs)[name]
    if isinstance(known, declared.ReadingsField) or not query.is_scalar(known):
        raise fail(Fault("wrong_type", "this field takes no column; send it as shared"))
    if isinstance(known, declared.QuantityField):
        check_exact(known.exact, column)
        _quantities(draft, name, known.type, column)
        return
    check_keys(column, frozenset({"values"}), '{"values": [1, 2]}')
    reader = request_schema(calculation).fields[name]
    values: list[Any] = [None] * draft.count
    for row, value in enumerate(column["values"]):
        try:
            values[row] = None if value is None else reader.deserialize(value)
        except ValidationError as error:
            draft.bad(row, Unreadable(name, faults_of(error)[0].detail))
    draft.columns[name] = values


def _quantities(draft: Draft, name: str, of: QuantityType, column: dict[str, Any]) -> None:
    check_keys(column, COLUMN_KEYS, RIGHT_COLUMN)
    symbol = read_unit(column, of.kind)
    numbers = _numbers(draft, name, column["values"])
    within, measure = bounds(of, symbol), unit(of.kind, symbol)
    strays = (numbers < within.low) | (numbers > within.high)
    for row in np.flatnonzero(strays).tolist():
        told = outside(float(numbers[row]), within.low, within.high, symbol)
        detail = f"{of.words}: {told}{taken_for(of, symbol)}"
        draft.bad(row, OutOfBounds(name, detail))
    draft.columns[name] = _with_gaps(numbers * measure.factor + measure.offset)
    if column.get("uncertainty") is not None:
        _uncertainties(draft, name, of, column, numbers)


def _numbers(draft: Draft, name: str, values: Sequence[Any]) -> Any:
    """Return values as floats, NaN where one is missing or bad."""
    if not all(type(v) in (int, float) for v in values):
        for row, value in enumerate(values):
            if value is not None and not is_number(value):
                draft.bad(row, Unreadable(name, f"not a number: {show(value)}"))
        values = [v if is_number(v) else None for v in values]
    return np.array(values, dtype=float)


def _with_gaps(numbers: Any) -> list[Any]:
    """Return floats as a list, None for NaN."""
    found: list[Any] = numbers.tolist()
    if np.isnan(numbers).any():
        found = [None if v != v else v for v in found]
    return found


def _uncertainties(
    draft: Draft, name: str, of: QuantityType, column: dict[str, Any], numbers: Any
) -> None:
    given, symbol = column["uncertainty"], column["unit"]
    if isinstance(given, list) and len(given) != draft.count:
        raise fail(Fault("wrong_count", "one uncertainty a row is needed", None, 422))
    doubts = _numbers(draft, name, given if isinstance(given, list) else [given] * draft.count)
    within = bounds(of, symbol)
    most = np.full(draft.count, within.most_uncertainty)
    if of.excludes_zero:
        shift = unit(of.kind, symbol).offset / unit(of.kind, symbol).factor
        most = np.fmin(most, np.abs(numbers + shift) / 4.0)
    strays = (doubts < within.least_uncertainty) | (doubts > most)
    for row in np.flatnonzero(strays).tolist():
        detail = f"an expanded uncertainty of {doubts[row]:g} {symbol} cannot be meant here"
        draft.bad(row, OutOfBounds(name, detail, f"above 0, at most {most[row]:g} {symbol}"))
    draft.uncertainty[name] = _with_gaps(doubts * unit(of.kind, symbol).factor)


def limit_of_column(calculation: Calculation, name: str, column: dict[str, Any]) -> tuple[str, str]:
    """Return the check and the side that a column of limits is for, its members checked."""
    check, _, side = name.removeprefix("limit.").rpartition(".")
    kinds = kinds_judged(calculation)
    if check not in kinds or side not in ("low", "high"):
        allowed = [f"limit.{known}.{s}" for known in kinds for s in ("low", "high")]
        raise fail(Fault("unknown_field", "no such limit here", allowed, given=name))
    kind = kinds[check]
    check_exact(True, column, "a limit")
    check_keys(column, frozenset({"values"} if kind is None else {"values", "unit"}), RIGHT_COLUMN)
    if kind is not None:
        read_unit(column, kind)
    return check, side


def _limit_column(
    calculation: Calculation, draft: Draft, name: str, column: dict[str, Any]
) -> None:
    """Read a column of limits, named ``limit.<check>.low`` or ``.high``."""
    check, side = limit_of_column(calculation, name, column)
    kind = kinds_judged(calculation)[check]
    values: list[Any] = [None] * draft.count
    for row, value in enumerate(column["values"]):
        given = value if kind is None else {"value": value, "unit": column.get("unit")}
        if value is None:
            continue
        try:
            values[row] = limit_side(kind, given)
        except ValidationError as error:
            draft.bad(row, Unreadable(name, faults_of(error)[0].detail))
    draft.limits[(check, side)] = values


def _missing(calculation: Calculation, draft: Draft, shared: Mapping[str, Any]) -> None:
    """Note the rows that lack an input which the calculation needs."""
    optional = defaults(calculation.inputs)
    needs: list[tuple[Way, ...]] = [((n,),) for n in asked(calculation.inputs) if n not in optional]
    for ways in (*needs, *calculation.one_of):
        lacking = np.ones(draft.count, dtype=bool)
        for way in ways:
            lacking &= _lacks(draft, way, shared)
        detail = f"needed in every row: {spoken_ways(calculation, ways)}"
        for row in np.flatnonzero(lacking).tolist():
            if row not in draft.faults:
                draft.bad(row, MissingInput(ways[0][0], detail))


def _lacks(draft: Draft, way: Way, shared: Mapping[str, Any]) -> Any:
    """Return which rows lack one of the fields of a way."""
    lacking = np.zeros(draft.count, dtype=bool)
    for name in way:
        if name in shared:
            continue
        column = draft.columns.get(name, [None] * draft.count)
        lacking |= np.array([value is None for value in column])
    return lacking
