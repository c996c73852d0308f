"""Columns of a batch: of numbers all at once, of anything else entry by entry."""

import re
from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from marshmallow import ValidationError
from numpy.typing import NDArray

from ringland_service.api.faults import FieldError
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes.bounds import bounds, outside
from ringland_service.api.shapes.draft import COLUMN_KEYS, RIGHT_COLUMN, Draft, Unreadable
from ringland_service.api.shapes.hints import taken_for
from ringland_service.api.shapes.json_checks import (
    Reader,
    check_keys,
    fail,
    faults_of,
    is_number,
    show,
)
from ringland_service.api.shapes.number_text import is_number_text
from ringland_service.api.shapes.quantity_checks import read_unit
from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.errors import OutOfBounds
from ringland_service.units import unit

# The JSON of a column, known to be an object with a list of values.
Column = dict[str, Any]
Floats = NDArray[np.float64]


def number_cell(text: str) -> Json:
    """Return a cell as a number, None where it is empty, or its text for the reader to refuse."""
    if not text:
        return None
    if re.fullmatch(r"[+-]?[0-9]{1,12}", text):
        return int(text)
    return float(text) if is_number_text(text) else text


def text_cell(text: str) -> Json:
    """Return a cell as its text, None where it is empty."""
    return text or None


def with_unit(values: list[Json], unit: str | None) -> JsonObject:
    """Return the JSON of a column whose header may name a unit."""
    return {"values": values, "unit": unit} if unit else {"values": values}


def number_cells(texts: Sequence[str], unit: str | None) -> JsonObject:
    """Return cells of numbers as the JSON of a column."""
    return with_unit([number_cell(text) for text in texts], unit)


def check_bare_column(column: Column, right: str = '{"values": [1, 2]}') -> None:
    """Refuse a column that has more than values."""
    check_keys(column, frozenset({"values"}), right)


def check_uncertainties(column: Column, count: int) -> None:
    """Refuse a column that states an uncertainty for some of its rows alone."""
    uncertainties = column.get("uncertainty")
    if isinstance(uncertainties, list) and len(uncertainties) != count:
        raise fail(FieldError("wrong_count", "one uncertainty a row is needed", None, 422))


def measured_row(column: Column, value: Any, row: int, key: str = "value") -> Any:
    """Return one entry of a column as a quantity; bare where the column has no unit."""
    if "unit" not in column:
        return value
    found = {key: value, "unit": column["unit"]}
    uncertainty = column.get("uncertainty")
    uncertainty = uncertainty[row] if isinstance(uncertainty, list) else uncertainty
    return found if uncertainty is None else found | {"uncertainty": uncertainty}


def read_entries(
    draft: Draft,
    name: str,
    reader: Reader,
    column: Column,
    entry: Callable[[Column, Any, int], object],
) -> None:
    """Read a column entry by entry: what ``entry`` makes of each, as ``reader`` reads it alone."""
    values: list[object] = [None] * draft.count
    for row, value in enumerate(column["values"]):
        try:
            values[row] = None if value is None else reader.deserialize(entry(column, value, row))
        except ValidationError as error:
            fault = faults_of(error)[0]
            draft.bad(row, Unreadable(name, fault.detail, code=fault.code))
    draft.columns[name] = values


def read_quantities(draft: Draft, name: str, of: QuantityType, column: Column) -> None:
    """Read a column of quantities as one array."""
    check_keys(column, COLUMN_KEYS, RIGHT_COLUMN)
    symbol = read_unit(column, of.kind)
    numbers = _numbers(draft, name, column["values"])
    within, measure = bounds(of, symbol), unit(of.kind, symbol)
    strays = (numbers < within.low) | (numbers > within.high)
    for row in np.flatnonzero(strays).tolist():
        told = outside(float(numbers[row]), within.low, within.high, symbol)
        detail = f"{of.description}: {told}{taken_for(of, symbol)}"
        draft.bad(row, OutOfBounds(name, detail))
    draft.columns[name] = _with_gaps(numbers * measure.factor + measure.offset)
    if column.get("uncertainty") is not None:
        _uncertainties(draft, name, of, column, numbers)


def _numbers(draft: Draft, name: str, values: Sequence[object]) -> Floats:
    """Return values as floats, NaN where one is missing or bad."""
    if not all(type(v) in (int, float) for v in values):
        for row, value in enumerate(values):
            if value is not None and not is_number(value):
                draft.bad(row, Unreadable(name, f"not a number: {show(value)}"))
        values = [v if is_number(v) else None for v in values]
    return np.array(values, dtype=float)


def _with_gaps(numbers: Floats) -> list[object]:
    """Return floats as a list, None for NaN."""
    found: list[object] = numbers.tolist()
    if np.isnan(numbers).any():
        found = [None if v != v else v for v in found]
    return found


def _uncertainties(
    draft: Draft, name: str, of: QuantityType, column: Column, numbers: Floats
) -> None:
    given, symbol = column["uncertainty"], column["unit"]
    check_uncertainties(column, draft.count)
    uncertainties = _numbers(
        draft, name, given if isinstance(given, list) else [given] * draft.count
    )
    within = bounds(of, symbol)
    most = np.full(draft.count, within.most_uncertainty)
    if of.excludes_zero:
        shift = unit(of.kind, symbol).offset / unit(of.kind, symbol).factor
        most = np.fmin(most, np.abs(numbers + shift) / 4.0)
    strays = (uncertainties < within.least_uncertainty) | (uncertainties > most)
    for row in np.flatnonzero(strays).tolist():
        detail = f"an expanded uncertainty of {uncertainties[row]:g} {symbol} cannot be meant here"
        draft.bad(row, OutOfBounds(name, detail, f"above 0, at most {most[row]:g} {symbol}"))
    draft.uncertainty[name] = _with_gaps(uncertainties * unit(of.kind, symbol).factor)
