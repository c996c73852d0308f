"""Bare numbers: a ratio or a factor, a whole number, a list of numbers."""

from collections.abc import Sequence
from typing import Unpack

from marshmallow import fields as ma

from ringland_service.api.faults import FieldError
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.json_checks import (
    About,
    Reader,
    fail,
    is_number,
    nested,
    show,
)
from ringland_service.api.shapes.lists import LONGEST_LIST, ListShape, joined
from ringland_service.api.shapes.looks import AsBare, AsBareList
from ringland_service.api.shapes.number_text import NUMBER, bare_number
from ringland_service.api.shapes.registry import adapts
from ringland_service.api.shapes.schema_parts import (
    NUMBER as A_NUMBER,
)
from ringland_service.api.shapes.schema_parts import (
    Components,
    array_of,
    batch_column,
    ref,
    text_pattern,
)
from ringland_service.core.declare.fields import CountField, NumberField, NumbersField


def _within(description: str, value: float, low: float, high: float) -> float:
    """Return a number within the bounds; refuse any other."""
    if not low <= value <= high:
        detail = f"{description}: {value:.6g} is outside {low:g} to {high:g}"
        raise fail(FieldError("out_of_bounds", detail, {"low": low, "high": high}, 422))
    return value


class Number(ma.Field[float]):
    """A bare number within its bounds."""

    def __init__(self, description: str, low: float, high: float, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.description, self.low, self.high = description, low, high

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> float:
        if not is_number(value):
            raise fail(FieldError("wrong_type", f"not a number: {show(value)}", "a number"))
        return float(_within(self.description, value, self.low, self.high))


class Count(ma.Field[int]):
    """A whole number within its bounds; 2.0 is one, as JSON Schema has it."""

    def __init__(self, description: str, low: int, high: int, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.description, self.low, self.high = description, low, high

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> int:
        if not is_number(value) or value != int(value):
            raise fail(
                FieldError("wrong_type", f"not a whole number: {show(value)}", "a whole number")
            )
        return int(_within(self.description, value, self.low, self.high))


class Numbers(ma.Field[tuple[float, ...]]):
    """A list of bare numbers within their bounds."""

    def __init__(self, field: NumbersField, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.field = field
        self.one = Number(field.description, field.low, field.high)

    def _deserialize(
        self, value: object, attr: object, data: object, **kwargs: object
    ) -> tuple[float, ...]:
        field = self.field
        if not isinstance(value, list):
            raise fail(
                FieldError("wrong_type", f"not a list of numbers: {show(value)}", [field.low])
            )
        if not field.least <= len(value) <= field.most:
            detail = f"{field.least} to {field.most} numbers are needed, {len(value)} given"
            allowed = {"least": field.least, "most": field.most}
            raise fail(FieldError("wrong_count", detail, allowed, 422))
        return tuple(nested(i, self._number, number) for i, number in enumerate(value))

    def _number(self, number: object) -> float:
        if number is None:
            raise fail(FieldError("null", "null is no number: leave it out of the list"))
        return float(self.one.deserialize(number))


class _Bounded(AsBare, InCells):
    """What bare numbers and whole ones have in common."""

    field: NumberField | CountField
    json_type: str

    def request_schema(self, components: Components) -> JsonObject:
        """Return type and bounds."""
        return self.described(self.parameter_schema())

    def listing(self) -> JsonObject:
        """Return the bounds."""
        return {"shape": self.shape, "low": self.field.low, "high": self.field.high}

    def answer_schema(self) -> JsonObject:
        """Return the type."""
        return {"type": self.json_type}

    def from_text(self, text: str) -> Json:
        """Return a number."""
        return bare_number(text)

    def example_text(self) -> str:
        """Return the example."""
        return str(self.field.example)

    def parameter_schema(self) -> JsonObject:
        """Return type and bounds."""
        return {"type": self.json_type, "minimum": self.field.low, "maximum": self.field.high}

    def parameter_example(self) -> Json:
        """Return the example as a number."""
        found: Json = self.field.example
        return found

    def column_schema(self, most: int) -> JsonObject:
        """Return the schema of a column of numbers without a unit."""
        return batch_column("a number", {}, most)


@adapts(NumberField)
class NumberShape(_Bounded):
    """A bare number: a ratio, an exponent, a factor."""

    field: NumberField
    shape = "number"
    json_type = "number"
    as_written = True

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read a number within its bounds."""
        return Number(self.field.description, self.field.low, self.field.high, **about)


@adapts(CountField)
class CountShape(_Bounded):
    """A whole number."""

    field: CountField
    shape = "count"
    json_type = "integer"

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read a whole number within its bounds."""
        return Count(self.field.description, self.field.low, self.field.high, **about)


@adapts(NumbersField)
class NumbersShape(AsBareList, ListShape):
    """A list of bare numbers."""

    field: NumbersField
    shape = "numbers"

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read a list of numbers within their bounds."""
        return Numbers(self.field, **about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return how many there may be, and their bounds."""
        field = self.field
        item: JsonObject = {"type": "number", "minimum": field.low, "maximum": field.high}
        counted: JsonObject = {"minItems": field.least, "maxItems": field.most}
        return self.described({"type": "array", **counted, "items": item})

    def in_json(self, value: Sequence[float]) -> Json:
        """Return a list."""
        return list(value)

    def listing(self) -> JsonObject:
        """Return the bounds, how many there may be, and how they are written."""
        field = self.field
        counted: JsonObject = {"least": field.least, "most": field.most}
        bounds: JsonObject = {"shape": self.shape, "low": field.low, "high": field.high}
        return bounds | counted | {"text": self.example_text()}

    def answer_schema(self) -> JsonObject:
        """Return the schema of a list of numbers."""
        return array_of(A_NUMBER)

    def entry(self, text: str) -> Json:
        """Return a number."""
        if not text:
            raise self.empty_place()
        return bare_number(text)

    def example_text(self) -> str:
        """Return the example, else a few numbers evenly between the bounds."""
        return joined(self.field.example or self._spread())

    def _spread(self) -> list[float]:
        low, few = self.field.low, min(max(self.field.least, 2), self.field.most)
        step = (self.field.high - low) / (few + 1)
        return [round(low + step * (i + 1), 3) for i in range(few)]

    def pattern(self) -> str:
        """Return numbers, as many as there may be."""
        counted = f"{{{self.field.least - 1},{self.field.most - 1}}}"
        return rf"^\s*{NUMBER}(\s*;\s*{NUMBER}){counted}\s*$"

    def parameter_schema(self) -> JsonObject:
        """Return the reference to the text; fields alike in count share it."""
        return ref(self._text_name())

    def text_components(self) -> Components:
        """Return the text's pattern by its name."""
        return {self._text_name(): text_pattern(self.pattern(), LONGEST_LIST)}

    def _text_name(self) -> str:
        return f"NumberList{self.field.least}To{self.field.most}Text"
