"""What values look like in an answer: one class a form of JSON, for inputs and results alike."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any

from ringland_service.api.json_types import IntervalJson, Json, JsonObject
from ringland_service.api.shapes.base import Answered, Row
from ringland_service.api.shapes.figures import (
    NOTHING,
    REMARK,
    bare,
    bare_list,
    cell,
    is_texts,
    plain,
    quantities,
    quantity,
    told_list,
    told_record,
    told_rows,
    told_value,
    words_of,
)
from ringland_service.api.shapes.members import Member, answer, given, members
from ringland_service.api.shapes.schema_parts import array_of, ref
from ringland_service.core.declare.notices import UNSTATED

_TOKEN = re.compile("[a-z0-9]+(_[a-z0-9]+)+")


class AsQuantity(Answered):
    """value, unit, decimals, perhaps uncertainty."""

    def answer_schema(self) -> JsonObject:
        """Return the reference to what all quantities share."""
        return ref("QuantityValue")

    def text(self, value: object) -> str:
        """Return number, ± and unit."""
        return quantity(told_value(value))

    def cell(self, value: object) -> str:
        """Return number and unit."""
        told = told_value(value)
        return f"{cell(told['value'])} {told['unit']}"

    def rows(self, part: str, name: str, value: object) -> Iterator[Row]:
        """Yield one row."""
        return _single_row(part, name, value)

    def picked(self, value: object, members: Sequence[str]) -> Any:
        """Return the number, or the one member named: unit, decimals, uncertainty."""
        return told_record(value).get(*(members or ["value"])) if len(members) <= 1 else None


class AsQuantities(Answered):
    """values, unit, decimals, perhaps uncertainties."""

    def answer_schema(self) -> JsonObject:
        """Return the reference to what all lists of quantities share."""
        return ref("QuantityList")

    def text(self, value: object) -> str:
        """Return the numbers, each with its ±, and the unit."""
        return quantities(told_list(value))

    def cell(self, value: object) -> str:
        """Return the numbers and the unit."""
        told = told_list(value)
        return f"{cell(told['values'])} {told['unit']}"

    def rows(self, part: str, name: str, value: object) -> Iterator[Row]:
        """Yield a row a number."""
        return _rows_of_list(part, name, value)


class AsSection(Answered):
    """An object of members."""

    is_section = True
    record: type

    def answer_schema(self) -> JsonObject:
        """Return the schema of the members, none of which need be there."""
        return record_schema(self.record)

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the members that are given."""
        return answer(self.record, value, value, system, u or {})

    def text(self, value: object) -> str:
        """Return the members in one line."""
        return _members(self.record, value)

    def cell(self, value: object) -> str:
        """Return the members in one line, by name."""
        return _members_in_cell(self.record, value)

    def rows(self, part: str, name: str, value: object) -> Iterator[Row]:
        """Yield the rows of each member, its part within this one."""
        return rows_of(_within(part, name), given(self.record, told_record(value)))


class AsTable(Answered):
    """A list of records."""

    is_table = True
    record: type

    def answer_schema(self) -> JsonObject:
        """Return the schema of a list of records."""
        return array_of(record_schema(self.record))

    def text(self, value: object) -> str:
        """Return the records in one line, each with its number."""
        rows = (f"({i}) {_members(self.record, row)}" for i, row in enumerate(told_rows(value), 1))
        return "; ".join(rows) or NOTHING

    def cell(self, value: object) -> str:
        """Return the records in one line."""
        return " | ".join(_members_in_cell(self.record, row) for row in told_rows(value))

    def column_cell(self, value: object) -> Json:
        """Return the records in one line, nothing where there are none for the row."""
        return "" if value is None else self.cell(value)

    def rows(self, part: str, name: str, value: object) -> Iterator[Row]:
        """Yield the rows of each record, its part within this one."""
        for i, row in enumerate(told_rows(value), 1):
            yield from rows_of(_within(part, f"{name} {i}"), given(self.record, row))


class AsBare(Answered):
    """A number, a text, a yes or no."""

    is_bare = True

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the value as it is."""
        return plain_json(value)

    def text(self, value: object) -> str:
        """Return the value, with its ± where it is printed with one."""
        told = told_value(value)
        measured = told.keys() > {"value"}
        return quantity(told, self.decimals) if measured else bare(value, self.decimals)

    def page_text(self, value: object) -> str:
        """Return the value; a token of a closed list in its words."""
        return self.text(value) if isinstance(value, Mapping) else page_word(self, value)

    def cell(self, value: object) -> str:
        """Return the value."""
        return str(cell(value))

    def rows(self, part: str, name: str, value: object) -> Iterator[Row]:
        """Yield one row."""
        return _single_row(part, name, value)

    def picked(self, value: Any, members: Sequence[str]) -> Json:
        """Return the value; it has no members."""
        found: Json = None if members else value
        return found


class AsBareList(AsBare):
    """A list of numbers or texts."""

    is_bare_list = True

    def text(self, value: object) -> str:
        """Return the entries, each with its ± where they are printed with one."""
        told = told_list(value)
        measured = told.keys() > {"values"}
        return (
            quantities(told, self.decimals)
            if measured
            else bare_list(told["values"], self.decimals)
        )

    def page_text(self, value: object) -> str:
        """Return the entries; tokens of a closed list in their words."""
        if is_texts(value):
            return "; ".join(page_word(self, one) for one in told_list(value)["values"])
        return self.text(value)

    def rows(self, part: str, name: str, value: object) -> Iterator[Row]:
        """Yield a row an entry."""
        return _rows_of_list(part, name, value)

    def picked(self, value: object, members: Sequence[str]) -> Json:
        """Return nothing: a list is no single value."""
        return None


def plain_json(value: Any) -> Json:
    """Return a bare number, a count, a word, a yes or no, or a list of those."""
    if isinstance(value, tuple):
        return [plain_json(item) for item in value]
    if isinstance(value, float):
        return float(value)
    found: Json = value
    return found


def page_word(shape: Answered, value: object) -> str:
    """Return a bare value, or one of a list of them, as a page has it."""
    if isinstance(value, str):
        if shape.choices and value in shape.choices:
            return shape.choices[value]
        # A text of one's own is shown as it was written; a token of the wire never is.
        return bare(value) if _TOKEN.fullmatch(value) else value
    if shape.as_written and isinstance(value, float):
        return plain(value)
    return bare(value, shape.decimals)


def record_schema(record: type) -> JsonObject:
    """Return the schema of a record as an answer shows it; absent where not known."""
    properties: JsonObject = {
        name: {**member.shape.answer_schema(), "description": member.shape.field.description}
        for name, member in members(record).items()
    }
    return {"type": "object", "properties": properties}


def rows_of(part: str, found: Iterable[tuple[Member, object]]) -> Iterator[Row]:
    """Yield the rows of members, each by its shape."""
    for member, value in found:
        yield from member.shape.rows(part, member.name, value)


def _within(part: str, name: str) -> str:
    """Return the name of a part of a part; the one part of a single answer goes unsaid."""
    return name if part == "result" else f"{part}.{name}"


def _members(record: type, value: object) -> str:
    found = given(record, told_record(value))
    return "; ".join(f"{words_of(m.name)} {m.shape.text(v)}" for m, v in found)


def _members_in_cell(record: type, value: object) -> str:
    found = given(record, told_record(value))
    return "; ".join(f"{m.name}: {m.shape.cell(v)}" for m, v in found)


def _single_row(part: str, name: str, value: object) -> Iterator[Row]:
    told = told_value(value)
    row: Row = {"part": part, "name": name, "value": told["value"], "unit": told.get("unit")}
    row |= {"uncertainty": told.get("uncertainty"), UNSTATED: told.get(REMARK)}
    yield row | interval_ends(told.get("interval"))


def _rows_of_list(part: str, name: str, value: object) -> Iterator[Row]:
    told = told_list(value)
    none = [None] * len(told["values"])
    uncertainties, intervals = told.get("uncertainties") or none, told.get("intervals") or none
    each = zip(told["values"], uncertainties, intervals, strict=True)
    for i, (one, uncertainty, interval) in enumerate(each, 1):
        row: Row = {"part": part, "name": f"{name} {i}", "value": one, "uncertainty": uncertainty}
        row |= {"unit": told.get("unit"), UNSTATED: told.get(REMARK)}
        yield row | interval_ends(interval)


def interval_ends(interval: IntervalJson | None) -> Row:
    """Return both ends of a 95 % interval as columns, where there is one."""
    return {f"interval_{end}": one for end, one in (interval or {}).items()}
