"""Batches that go row by row: each row as the JSON of a single request."""

from collections.abc import Mapping
from typing import Any

from marshmallow import ValidationError

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading import query
from ringland_service.api.reading.batch_draft import COLUMN_KEYS, RIGHT_COLUMN, Unreadable
from ringland_service.api.reading.batch_limits import limit_of_column
from ringland_service.api.reading.batch_lists import check_list_column, list_cell
from ringland_service.api.reading.list_text import ListField
from ringland_service.api.reading.quantity_fields import (
    any_unit,
    check_exact,
    check_keys,
    fail,
    faults_of,
    nested,
    read_unit,
)
from ringland_service.core.declare import Calculation, asked
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field
from ringland_service.core.errors import CoreError


def check_columns(calculation: Calculation, columns: Mapping[str, Any]) -> None:
    """Refuse columns that are unknown, have unknown members, or a unit of another kind.

    Raises
    ------
    Faulty
    """
    known = {field.public(name): field for name, field in asked(calculation.inputs).items()}
    faults: list[Fault] = []
    for name, column in columns.items():
        try:
            if name.startswith("limit."):
                limit_of_column(calculation, name, column)
            elif name not in known or not query.has_text(known[name]):
                allowed = sorted(known)
                raise fail(Fault("unknown_field", "no such column here", allowed, given=name))
            else:
                _check_members(known[name], column)
        except ValidationError as error:
            faults += [fault.under(name).under("columns") for fault in faults_of(error)]
    if faults:
        raise Faulty(faults)


def _check_members(known: Field, column: dict[str, Any]) -> None:
    if isinstance(known, ListField):
        check_list_column(known, column, len(column["values"]))
        return
    if not isinstance(known, (declared.QuantityField, declared.AnyQuantityField)):
        check_keys(column, frozenset({"values"}), '{"values": [1, 2]}')
        return
    check_exact(known.exact, column)
    check_keys(column, COLUMN_KEYS, RIGHT_COLUMN)
    doubts = column.get("uncertainty")
    if isinstance(doubts, list) and len(doubts) != len(column["values"]):
        raise fail(Fault("wrong_count", "one uncertainty a row is needed", None, 422))
    if isinstance(known, declared.QuantityField):
        read_unit(column, known.type.kind)
    else:
        nested("unit", any_unit, column.get("unit"))


def single_row(
    calculation: Calculation, shared: dict[str, Any], columns: Mapping[str, Any], row: int
) -> dict[str, Any]:
    """Return a row of a batch as the JSON of a single request.

    Raises
    ------
    Faulty
        Where a list in it is a text that cannot be read.
    """
    known = query.text_fields(calculation)
    data = dict(shared)
    limits = {check: dict(sides) for check, sides in shared.get("limits", {}).items()}
    for name, column in columns.items():
        value, field = column["values"][row], known.get(name)
        if value is None:
            continue
        if name.startswith("limit."):
            check, _, side = name.removeprefix("limit.").rpartition(".")
            limits.setdefault(check, {})[side] = _cell(column, value, row)
        elif isinstance(field, ListField):
            data[name] = list_cell(field, column, value, row)
        else:
            data[name] = _cell(column, value, row)
    return data | {"limits": limits} if limits else data


def _cell(column: Mapping[str, Any], value: Any, row: int) -> Any:
    if "unit" not in column:
        return value
    found = {"value": value, "unit": column["unit"]}
    doubt = column.get("uncertainty")
    doubt = doubt[row] if isinstance(doubt, list) else doubt
    return found if doubt is None else found | {"uncertainty": doubt}


def unreadable(fault: Fault) -> CoreError:
    """Return a fault of one row as the row's error."""
    name, _, inner = fault.pointer.lstrip("/").partition("/")
    if name == "limits":
        name = f"limit.{inner.replace('/', '.')}"
    return Unreadable(name or "row", fault.detail, code=fault.code)
