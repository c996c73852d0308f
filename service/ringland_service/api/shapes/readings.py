"""A list of readings of one quantity, in one unit."""

from collections.abc import Iterator
from typing import Any, Unpack

from marshmallow import fields as ma

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes import answer_json
from ringland_service.api.shapes.columns import Column, check_uncertainties, measured_row
from ringland_service.api.shapes.draft import COLUMN_KEYS
from ringland_service.api.shapes.hints import right_form
from ringland_service.api.shapes.json_checks import About, Reader, check_keys, fail, nested, show
from ringland_service.api.shapes.lists import LONGEST_LIST, SEPARATOR, ListShape, joined
from ringland_service.api.shapes.looks import AsQuantities
from ringland_service.api.shapes.number_text import (
    NUMBER,
    STATED,
    UNCERTAINTY,
    is_number_text,
    leading_number,
    number_of,
    unit_pattern,
)
from ringland_service.api.shapes.quantity import quantity_listing
from ringland_service.api.shapes.quantity_checks import (
    READINGS_KEYS,
    Read,
    check_exact,
    check_stated_uncertainty,
    check_value,
    read_unit,
)
from ringland_service.api.shapes.quantity_schema import INSTRUMENT, branches
from ringland_service.api.shapes.registry import adapts
from ringland_service.api.shapes.schema_parts import (
    Components,
    measured_column,
    one_of,
    pascal,
    ref,
    text_pattern,
)
from ringland_service.core.declare.fields import QuantityType, ReadingsField
from ringland_service.units import symbols


class Readings(ma.Field[Read]):
    """``{"unit": "mm", "values": [68.062, 68.048]}``; null where a reading is missing."""

    def __init__(self, field: ReadingsField, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.field = field

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> Read:
        field = self.field
        given = check_keys(value, READINGS_KEYS, right_form(field.type, "values"))
        values = given.get("values")
        if not isinstance(values, list):
            raise fail(
                FieldError("missing_field", "a list of values is missing", "values").under("values")
            )
        if not field.least <= len(values) <= field.most:
            needed = f"{field.least} to {field.most} readings are needed, {len(values)} given"
            detail = f"{field.description}: {needed}"
            allowed = {"least": field.least, "most": field.most}
            raise fail(FieldError("wrong_count", detail, allowed, 422).under("values"))
        symbol = read_unit(given, field.type.kind)
        numbers = nested("values", self._numbers, values, symbol)
        return Read(numbers, check_stated_uncertainty(field.type, given, symbol))

    def _numbers(self, values: list[object], symbol: str) -> tuple[float | None, ...]:
        numbers = [
            None
            if number is None and self.field.gaps
            else nested(i, check_value, self.field.type, number, symbol)
            for i, number in enumerate(values)
        ]
        if all(number is None for number in numbers):
            raise fail(FieldError("wrong_count", "at least one reading is needed", None, 422))
        return tuple(numbers)


@adapts(ReadingsField)
class ReadingsShape(AsQuantities, ListShape):
    """A list of readings of one quantity, in one unit; with gaps some may be missing."""

    field: ReadingsField
    shape = "readings"
    entries_under = "values"

    def __init__(self, field: ReadingsField) -> None:
        super().__init__(field)
        self.instrument = field.type.instrument

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read an object of values, unit, and perhaps the uncertainty of each."""
        return Readings(self.field, **about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the schema of the object; its bounds hang on the unit."""
        field = self.field
        number: JsonObject = {"type": ["number", "null"] if field.gaps else "number"}
        values: JsonObject = {
            "type": "array",
            "minItems": field.least,
            "maxItems": field.most,
            "items": number,
        }
        if field.gaps:
            values["contains"] = {"type": "number"}
        return {
            "type": "object",
            "description": field.description,
            "required": ["values", "unit"],
            "additionalProperties": False,
            "properties": {
                "values": values,
                "unit": one_of(symbols(field.type.kind)),
                "uncertainty": {"type": "number", "description": "of each reading (k = 2)"},
                "instrument": INSTRUMENT,
            },
            "not": {"required": ["uncertainty", "instrument"]},
            "anyOf": branches(field.type, "values"),
            **self.examples(),
        }

    def in_json(self, value: tuple[float | None, ...]) -> Json:
        """Return the readings in the canonical unit."""
        return {"values": list(value), "unit": self.field.type.kind.unit}

    def listing(self) -> JsonObject:
        """Return what is said of the quantity, how many there may be, and how they are written."""
        field = self.field
        counted: JsonObject = {"least": field.least, "most": field.most, "gaps": field.gaps}
        return quantity_listing(self.shape, field.type) | counted | {"text": self.example_text()}

    def quantities(self) -> Iterator[QuantityType]:
        """Yield the quantity of its readings."""
        yield self.field.type

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the readings in the unit that answers show their kind in."""
        of = self.field.type
        return answer_json.listed(value, of.kind, of.decimals, system, u)

    def from_text(self, text: str) -> Json:
        """Return numbers and unit, and what stands behind ±; see ``ListShape.from_text``."""
        self.check_whole(text)
        right = self.example_text()
        left, *stated = STATED.split(text, maxsplit=1)
        *before, last = left.split(SEPARATOR)
        number, symbol = leading_number(last)
        # Where places may be empty all may be: what then cannot be worked out, the reader says.
        told = any(one.strip() for one in (*before, number or "")) or (self.field.gaps and before)
        if not told or (stated and not is_number_text(stated[-1].strip())):
            raise FieldErrors(
                [FieldError("not_a_quantity", f"not a list of readings: write {right}", right)]
            )
        numbers = self.each([*before, number or ""])
        if not symbol:
            detail = f"numbers alone have no unit: write {right}"
            raise FieldErrors([FieldError("missing_unit", detail, right)])
        found: JsonObject = {"values": numbers, "unit": symbol}
        if stated:
            found["uncertainty"] = number_of(stated[-1].strip())
        return found

    def entry(self, text: str) -> Json:
        """Return a number, None for an empty place where there may be one."""
        if not text:
            if self.field.gaps:
                return None
            raise self.empty_place()
        if not is_number_text(text):
            # Most likely each entry was given its own unit.
            end = ", one unit and one ± end the list" if leading_number(text)[0] else ""
            right = self.example_text()
            detail = f"not a number: {show(text)}{end}: write {right}"
            raise FieldErrors([FieldError("wrong_type", detail, right)])
        return number_of(text)

    def example_text(self) -> str:
        """Return the example, else a few readings around that of the quantity."""
        return f"{joined(self.field.example or self._made())} {self.field.type.kind.unit}"

    def _made(self) -> list[float]:
        of, few = self.field.type, min(max(self.field.least, 3), self.field.most)
        around = (round(of.example * (1 - i / 50), of.decimals) for i in range(few))
        return [min(max(number, of.low), of.high) for number in around]

    def pattern(self) -> str:
        """Return numbers, unit, and ± where one may be stated."""
        field = self.field
        counted = f"{{{field.least - 1},{field.most - 1}}}"
        end = unit_pattern(field.type.kind) + ("" if field.exact else UNCERTAINTY)
        if not field.gaps:
            return rf"^\s*{NUMBER}(\s*;\s*{NUMBER}){counted}{end}\s*$"
        # A blank belongs to the place before it, so that nothing can be read in two ways.
        return rf"^\s*({NUMBER}\s*)?(;\s*({NUMBER}\s*)?){counted}{end}\s*$"

    def of_gaps(self) -> str:
        """Return that a place may be empty, where it may."""
        return "; an empty place for a missing one" if self.field.gaps else ""

    def parameter_schema(self) -> JsonObject:
        """Return the reference to the text; fields alike in kind and count share it."""
        return ref(self._text_name())

    def text_components(self) -> Components:
        """Return the text's pattern by its name."""
        return {self._text_name(): text_pattern(self.pattern(), LONGEST_LIST)}

    def _text_name(self) -> str:
        field = self.field
        marks = ("Gaps" if field.gaps else "") + ("Exact" if field.exact else "")
        return f"{pascal(field.type.kind.name)}List{field.least}To{field.most}{marks}Text"

    def column_schema(self, most: int) -> JsonObject:
        """Return the schema of a column of lists of numbers with a unit."""
        description = f"a list of numbers, or its text such as {self._texts()},"
        return measured_column(description, symbols(self.field.type.kind), self.field.exact, most)

    def _texts(self) -> str:
        return self.example_text().rpartition(" ")[0]

    def check_column(self, column: Column) -> None:
        """Refuse unknown members, a unit that does not fit, and too few uncertainties."""
        check_exact(self.field.exact, column)
        unit = self.field.type.kind.unit
        check_keys(column, COLUMN_KEYS, f'{{"unit": "{unit}", "values": ["{self._texts()}"]}}')
        read_unit(column, self.field.type.kind)
        check_uncertainties(column, len(column["values"]))

    def row(self, column: Column, value: Any, row: int) -> object:
        """Return the list in one row with the unit of its column."""
        return measured_row(column, super().row(column, value, row), row, "values")
