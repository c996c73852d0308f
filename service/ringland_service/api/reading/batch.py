"""Batches: columns in, columns out; a bad row keeps its place and says what is wrong."""

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from marshmallow import ValidationError

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading import query
from ringland_service.api.reading.batch_draft import COLUMN_KEYS, RIGHT_COLUMN, Draft, Unreadable
from ringland_service.api.reading.batch_limits import crossed_limits, limit_column
from ringland_service.api.reading.batch_lists import read_lists
from ringland_service.api.reading.bounds import bounds, outside
from ringland_service.api.reading.hints import taken_for
from ringland_service.api.reading.list_text import ListField
from ringland_service.api.reading.quantity_fields import (
    check_exact,
    check_keys,
    fail,
    faults_of,
    is_number,
    read_unit,
    show,
)
from ringland_service.api.reading.request import (
    partly_understood,
    public_names,
    request_schema,
    spoken_ways,
)
from ringland_service.api.reading.row_budget import most_rows
from ringland_service.core.declare import Calculation, Way, asked, defaults
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.errors import CoreError, OutOfBounds
from ringland_service.engine.rows import Rows
from ringland_service.units import unit


class MissingInput(CoreError):
    """A row without a value that the calculation needs."""

    code = "missing_field"


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


def count_rows(calculation: Calculation, columns: Mapping[str, Any]) -> int:
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
    if lengths:
        faults += too_many(calculation, max(lengths.values()), "/columns")
    if faults:
        raise Faulty(faults)
    return next(iter(lengths.values()))


def too_many(calculation: Calculation, count: int, pointer: str = "") -> list[Fault]:
    """Return the fault of too many rows, none where the calculation takes as many."""
    most = most_rows(calculation)
    if count <= most:
        return []
    detail = f"{count} rows; at most {most} in one request of {calculation.name}"
    return [Fault("wrong_count", detail, {"most": most}, 422, pointer)]


def read(calculation: Calculation, shared: dict[str, Any], columns: dict[str, Any]) -> Rows:
    """Return the rows of a batch, ready to be answered as columns.

    Raises
    ------
    Faulty
        Where the batch as a whole cannot be read; a single bad row is not a fault of the whole.
    """
    draft = Draft(count_rows(calculation, columns))
    question, given = check_shared(calculation, shared, columns)
    core = {public: name for name, public in public_names(calculation).items()}
    known = sorted(core)
    faults: list[Fault] = []
    for name, column in columns.items():
        try:
            if name.startswith("limit."):
                limit_column(calculation, draft, name, column)
            elif name not in core:
                raise fail(Fault("unknown_field", "no such column here", known, given=name))
            else:
                _column(calculation, draft, core[name], column)
        except ValidationError as error:
            faults += [fault.under(name).under("columns") for fault in faults_of(error)]
    if faults:
        raise Faulty(faults)
    crossed_limits(draft, question.limits)
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
    if not query.has_text(known):
        raise fail(Fault("wrong_type", "this field takes no column; send it as shared"))
    if isinstance(known, ListField):
        reader = request_schema(calculation).fields[name]
        read_lists(draft, name, known, reader, column)
        return
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
            fault = faults_of(error)[0]
            draft.bad(row, Unreadable(name, fault.detail, code=fault.code))
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
