"""Columns whose cells are lists: each a list of entries, its text parted by ``;``, or null."""

from typing import Any

from marshmallow import ValidationError
from marshmallow import fields as ma

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading.batch_draft import COLUMN_KEYS, Draft, Unreadable
from ringland_service.api.reading.list_text import ListField, entries, in_words, list_example
from ringland_service.api.reading.quantity_fields import (
    Read,
    check_exact,
    check_keys,
    fail,
    faults_of,
    read_unit,
)
from ringland_service.core.declare.fields import ReadingsField


def check_list_column(field: ListField, column: dict[str, Any], count: int) -> None:
    """Refuse a column of lists with unknown members, without its unit, or with too few doubts."""
    if not isinstance(field, ReadingsField):
        check_keys(column, frozenset({"values"}), f'{{"values": ["{list_example(field)}"]}}')
        return
    check_exact(field.exact, column)
    texts, _, unit = list_example(field).rpartition(" ")
    check_keys(column, COLUMN_KEYS, f'{{"unit": "{unit}", "values": ["{texts}"]}}')
    read_unit(column, field.type.kind)
    stated = column.get("uncertainty")
    if isinstance(stated, list) and len(stated) != count:
        raise fail(Fault("wrong_count", "one uncertainty a row is needed", None, 422))


def read_lists(
    draft: Draft, name: str, field: ListField, reader: ma.Field[Any], column: dict[str, Any]
) -> None:
    """Read a column of lists, each as ``reader`` reads it alone; bad ones are their rows' faults.

    Raises
    ------
    ValidationError
        Where the column as a whole cannot be read.
    """
    check_list_column(field, column, draft.count)
    values: list[Any] = [None] * draft.count
    stated: list[Any] = [None] * draft.count
    for row, value in enumerate(column["values"]):
        if value is None:
            continue
        try:
            found = reader.deserialize(list_cell(field, column, value, row))
        except (Faulty, ValidationError) as error:
            faults = error.faults if isinstance(error, Faulty) else faults_of(error)
            for fault in faults:
                detail = in_words(fault.pointer) + fault.detail
                draft.bad(row, Unreadable(name, detail, code=fault.code))
            continue
        if isinstance(found, Read):
            values[row] = found.value
            stated[row] = found.stated and found.stated.uncertainty
        else:
            values[row] = found
    draft.columns[name] = values
    if any(one is not None for one in stated):
        draft.uncertainty[name] = stated


def list_cell(field: ListField, column: dict[str, Any], value: Any, row: int) -> Any:
    """Return the list in one row of a column as the JSON of a single request.

    Raises
    ------
    Faulty
        Where it is a text that cannot be read.
    """
    listed = entries(field, value) if isinstance(value, str) else value
    if not isinstance(field, ReadingsField):
        return listed
    found = {"values": listed, "unit": column["unit"]}
    stated = column.get("uncertainty")
    stated = stated[row] if isinstance(stated, list) else stated
    return found if stated is None else found | {"uncertainty": stated}
