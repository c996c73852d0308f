"""Batches: columns in, columns out; a bad row keeps its place and says what is wrong."""

from collections.abc import Mapping
from typing import cast

import numpy as np
from marshmallow import ValidationError
from numpy.typing import NDArray

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.reading.batch_limits import crossed_limits, limit_column
from ringland_service.api.reading.request import partly_understood, public_names, spoken_ways
from ringland_service.api.reading.row_budget import most_rows
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.columns import Column
from ringland_service.api.shapes.draft import RIGHT_COLUMN, Draft
from ringland_service.api.shapes.json_checks import fail, faults_of
from ringland_service.api.shapes.registry import adapters
from ringland_service.core.declare import Calculation, Way, defaults, input_fields
from ringland_service.core.errors import CoreError
from ringland_service.engine.request import Request
from ringland_service.engine.rows import Rows


class MissingInput(CoreError):
    """A row without a value that the calculation needs."""

    code = "missing_field"


def split(data: object) -> tuple[dict[str, object], dict[str, object]]:
    """Return the shared fields and the columns of a batch in JSON.

    Raises
    ------
    FieldErrors
    """
    if not isinstance(data, dict):
        raise FieldErrors([FieldError("wrong_type", "a JSON object is needed here")])
    unknown = [name for name in data if name not in ("shared", "columns")]
    if unknown:
        allowed = ["shared", "columns"]
        raise FieldErrors(
            FieldError("unknown_field", "not known here", allowed, given=n).under(n)
            for n in unknown
        )
    columns, shared = data.get("columns"), data.get("shared", {})
    if not isinstance(columns, dict) or not columns:
        detail = f'columns are needed: {{"bore": {RIGHT_COLUMN}}}'
        raise FieldErrors([FieldError("missing_field", detail, pointer="/columns")])
    if not isinstance(shared, dict):
        raise FieldErrors(
            [FieldError("wrong_type", "a JSON object is needed here", pointer="/shared")]
        )
    return shared, columns


def count_rows(calculation: Calculation, columns: Mapping[str, object]) -> int:
    """Return the one length of all columns.

    Raises
    ------
    FieldErrors
        Where a column is no list of values, or their lengths differ, or there are too many rows.
    """
    faults, lengths = [], {}
    for name, column in columns.items():
        values = column.get("values") if isinstance(column, dict) else None
        if not isinstance(values, list) or not values:
            detail = f"a column is needed: {RIGHT_COLUMN}"
            faults.append(FieldError("wrong_type", detail).under(name).under("columns"))
        else:
            lengths[name] = len(values)
    if len(set(lengths.values())) > 1:
        detail = f"columns differ in length: {lengths}"[:300]
        faults.append(FieldError("wrong_count", detail, None, 422, "/columns"))
    if lengths:
        faults += too_many(calculation, max(lengths.values()), "/columns")
    if faults:
        raise FieldErrors(faults)
    return next(iter(lengths.values()))


def too_many(calculation: Calculation, count: int, pointer: str = "") -> list[FieldError]:
    """Return the fault of too many rows, none where the calculation takes as many."""
    most = most_rows(calculation)
    if count <= most:
        return []
    detail = f"{count} rows; at most {most} in one request of {calculation.name}"
    return [FieldError("wrong_count", detail, {"most": most}, 422, pointer)]


def read(
    calculation: Calculation, shared: dict[str, object], columns: Mapping[str, object]
) -> Rows:
    """Return the rows of a batch, ready to be answered as columns.

    Raises
    ------
    FieldErrors
        Where the batch as a whole cannot be read; a single bad row is not a fault of the whole.
    """
    draft = Draft(count_rows(calculation, columns))
    request, given = check_shared(calculation, shared, columns)
    core = {public: name for name, public in public_names(calculation).items()}
    known = adapters(calculation.inputs)
    faults: list[FieldError] = []
    for name, column in cast(Mapping[str, Column], columns).items():
        try:
            if name.startswith("limit."):
                limit_column(calculation, draft, name, column)
            elif name not in core:
                allowed = sorted(core)
                raise fail(FieldError("unknown_field", "no such column here", allowed, given=name))
            elif isinstance(shape := known[core[name]], InCells):
                shape.read_column(core[name], column, draft)
            else:
                raise fail(
                    FieldError("wrong_type", "this field takes no column; send it as shared")
                )
        except ValidationError as error:
            faults += [fault.under(name).under("columns") for fault in faults_of(error)]
    if faults:
        raise FieldErrors(faults)
    crossed_limits(draft, request.limits)
    _missing(calculation, draft, given)
    return Rows(
        count=draft.count,
        columns=draft.columns,
        shared=given,
        request=request,
        uncertainty=draft.uncertainty,
        limits=draft.limits,
        faults=draft.faults,
    )


def check_shared(
    calculation: Calculation, shared: dict[str, object], columns: Mapping[str, object]
) -> tuple[Request, dict[str, object]]:
    """Return what all rows share; refuse what stands in a column as well, or cannot be read.

    Raises
    ------
    FieldErrors
    """
    both = sorted(shared.keys() & columns.keys())
    if both:
        detail = "given as a column and as shared"
        fault = FieldError("given_twice", detail, None, 422)
        raise FieldErrors(fault.under(name).under("shared") for name in both)
    try:
        return partly_understood(calculation, shared)
    except FieldErrors as error:
        raise FieldErrors([fault.under("shared") for fault in error.faults]) from error


def _missing(calculation: Calculation, draft: Draft, shared: Mapping[str, object]) -> None:
    """Note the rows that lack an input which the calculation needs."""
    optional = defaults(calculation.inputs)
    needs: list[tuple[Way, ...]] = [
        ((n,),) for n in input_fields(calculation.inputs) if n not in optional
    ]
    for ways in (*needs, *calculation.any_of):
        lacking = np.ones(draft.count, dtype=bool)
        for way in ways:
            lacking &= _lacks(draft, way, shared)
        detail = f"needed in every row: {spoken_ways(calculation, ways)}"
        for row in np.flatnonzero(lacking).tolist():
            if row not in draft.faults:
                draft.bad(row, MissingInput(ways[0][0], detail))


def _lacks(draft: Draft, way: Way, shared: Mapping[str, object]) -> NDArray[np.bool_]:
    """Return which rows lack one of the fields of a way."""
    lacking = np.zeros(draft.count, dtype=bool)
    for name in way:
        if name in shared:
            continue
        column = draft.columns.get(name, [None] * draft.count)
        lacking |= np.array([value is None for value in column])
    return lacking
