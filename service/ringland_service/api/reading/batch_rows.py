"""Batches that go row by row: each row as the JSON of a single request."""

from collections.abc import Mapping
from typing import cast

from marshmallow import ValidationError

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.reading import query
from ringland_service.api.reading.batch_limits import limit_of_column
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.columns import Column, measured_row
from ringland_service.api.shapes.draft import Unreadable
from ringland_service.api.shapes.json_checks import fail, faults_of
from ringland_service.api.shapes.registry import adapters
from ringland_service.core.declare import Calculation
from ringland_service.core.errors import CoreError


def check_columns(calculation: Calculation, columns: Mapping[str, Column]) -> None:
    """Refuse columns that are unknown, have unknown members, or a unit of another kind.

    Raises
    ------
    FieldErrors
    """
    known = {one.field.public(n): one for n, one in adapters(calculation.inputs).items()}
    faults: list[FieldError] = []
    for name, column in columns.items():
        try:
            if name.startswith("limit."):
                limit_of_column(calculation, name, column)
            elif isinstance(shape := known.get(name), InCells):
                shape.check_column(column)
            else:
                allowed = sorted(known)
                raise fail(FieldError("unknown_field", "no such column here", allowed, given=name))
        except ValidationError as error:
            faults += [fault.under(name).under("columns") for fault in faults_of(error)]
    if faults:
        raise FieldErrors(faults)


def single_row(
    calculation: Calculation, shared: dict[str, object], columns: Mapping[str, Column], row: int
) -> dict[str, object]:
    """Return a row of a batch as the JSON of a single request.

    Raises
    ------
    FieldErrors
        Where a list in it is a text that cannot be read.
    """
    known = query.text_fields(calculation)
    data = dict(shared)
    # What the rows share has been read already, so it is what it should be.
    given = cast(Mapping[str, Mapping[str, object]], shared.get("limits", {}))
    limits = {check: dict(sides) for check, sides in given.items()}
    for name, column in columns.items():
        value = column["values"][row]
        if value is None:
            continue
        if name.startswith("limit."):
            check, _, side = name.removeprefix("limit.").rpartition(".")
            limits.setdefault(check, {})[side] = measured_row(column, value, row)
        else:
            data[name] = known[name].row(column, value, row)
    return data | {"limits": limits} if limits else data


def unreadable(fault: FieldError) -> CoreError:
    """Return a fault of one row as the row's error."""
    name, _, inner = fault.pointer.lstrip("/").partition("/")
    if name == "limits":
        name = f"limit.{inner.replace('/', '.')}"
    return Unreadable(name or "row", fault.detail, code=fault.code)
