"""Fields that hold fields: an optional group of them, and a list of records of one shape."""

from collections.abc import Iterator
from typing import Any, Unpack

from marshmallow import Schema
from marshmallow import fields as ma

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes.base import Parsed, Requested, Understand
from ringland_service.api.shapes.examples import example, example_record
from ringland_service.api.shapes.json_checks import About, Reader, fail, nested
from ringland_service.api.shapes.looks import AsSection, AsTable
from ringland_service.api.shapes.members import answer
from ringland_service.api.shapes.registry import adapters, adapts
from ringland_service.api.shapes.schema import load, schema, within
from ringland_service.api.shapes.schema_parts import Components
from ringland_service.core.declare import defaults
from ringland_service.core.declare.fields import QuantityType, RecordsField, SectionField
from ringland_service.engine.request import Path, Stated


class Section(ma.Field[dict[str, object]]):
    """An optional group of fields."""

    def __init__(self, of: Schema, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.of = of

    def _deserialize(
        self, value: object, attr: object, data: object, **kwargs: object
    ) -> dict[str, object]:
        return _inner(self.of, value)


class Records(ma.Field[list[dict[str, object]]]):
    """A list of records of one schema."""

    def __init__(self, of: Schema, least: int, most: int, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.of = of
        self.least = least
        self.most = most

    def _deserialize(
        self, value: object, attr: object, data: object, **kwargs: object
    ) -> list[dict[str, object]]:
        if not isinstance(value, list):
            raise fail(FieldError("wrong_type", "a list is needed here", "a list"))
        if not self.least <= len(value) <= self.most:
            detail = f"{self.least} to {self.most} entries are needed, {len(value)} given"
            raise fail(FieldError("wrong_count", detail, None, 422))
        return [nested(i, _inner, self.of, item) for i, item in enumerate(value)]


def _inner(of: Schema, value: object) -> dict[str, object]:
    """Return what an inner schema reads, its faults in the outer one's way."""
    try:
        return load(of, value)
    except FieldErrors as error:
        raise fail(*error.faults) from error


class _Nested(Requested):
    """What sections and lists of records have in common."""

    field: SectionField | RecordsField
    record: type

    def __init__(self, field: SectionField | RecordsField) -> None:
        super().__init__(field)
        self.record = field.record

    def listing(self) -> JsonObject:
        """Return the fields within."""
        return {"shape": self.shape, "fields": listed_fields(self.record)}

    def quantities(self) -> Iterator[QuantityType]:
        """Yield the quantities of the fields within."""
        return quantities_of(self.record)


@adapts(SectionField)
class SectionShape(_Nested, AsSection):
    """An optional group of fields."""

    field: SectionField
    shape = "section"

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read an object by the schema of the record."""
        return Section(schema(self.record), **about)

    def parsed(self, read: Any, understand: Understand) -> Parsed:
        """Return the record."""
        return understand(self.record, read)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the schema of the record."""
        return {**request_record(self.record, components), "description": self.field.description}

    def example(self) -> Json:
        """Return the record by the examples of its fields."""
        return example(self.record)


@adapts(RecordsField)
class RecordsShape(_Nested, AsTable):
    """A list of records of one shape."""

    field: RecordsField
    shape = "records"

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read a list of objects by the schema of the record."""
        return Records(schema(self.record), self.field.least, self.field.most, **about)

    def parsed(self, read: Any, understand: Understand) -> Parsed:
        """Return the records, and the uncertainties within them, by place and path."""
        values: list[object] = []
        uncertainties: dict[Path, Stated] = {}
        for place, item in enumerate(read):
            value, inner = within(place, understand, self.record, item)
            values.append(value)
            uncertainties |= {(place, *path): stated for path, stated in inner.items()}
        return tuple(values), uncertainties

    def request_schema(self, components: Components) -> JsonObject:
        """Return how many there may be, and the schema of each."""
        return {
            "type": "array",
            "description": self.field.description,
            "minItems": self.field.least,
            "maxItems": self.field.most,
            "items": request_record(self.record, components),
            **(self.examples() if self.field.example else {}),
        }

    def in_json(self, value: tuple[object, ...]) -> Json:
        """Return records of canonical values in JSON."""
        return [example_record(one) for one in value]

    def example(self) -> Json:
        """Return the example, else one record by the examples of its fields; None for ``()``."""
        if self.field.example == ():
            return None
        return self.in_json(self.field.example or ()) or [example(self.record)]

    def listed_example(self) -> Json:
        """Return the records of the example in JSON, where it has any."""
        return self.example() if self.field.example else None

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the records, each as a section."""
        by_place = u or {}
        return [
            answer(self.record, one, one, system, by_place.get(place, {}))
            for place, one in enumerate(value)
        ]


def request_record(
    record: type, components: Components, more: JsonObject | None = None
) -> JsonObject:
    """Return the OpenAPI schema of a record's fields in a request, and of ``more`` beside them."""
    optional = defaults(record)
    properties: JsonObject = {}
    required: list[Json] = []
    for name, shape in adapters(record).items():
        public = shape.field.public(name)
        said = shape.request_schema(components)
        if optional.get(name) is not None:
            said |= shape.default_schema(optional[name])
        properties[public] = said
        if name not in optional:
            required.append(public)
    found: JsonObject = {
        "type": "object",
        "additionalProperties": False,
        "properties": {**properties, **(more or {})},
    }
    return {**found, "required": required} if required else found


def listed_fields(record: type) -> list[Json]:
    """Return the fields of a record as the listing has them."""
    optional = defaults(record)
    return [
        {
            "name": shape.field.public(name),
            "description": shape.field.description,
            "required": name not in optional,
            "default": optional.get(name),
            "example": shape.listed_example(),
            **shape.listing(),
        }
        for name, shape in adapters(record).items()
    ]


def quantities_of(record: type) -> Iterator[QuantityType]:
    """Yield the quantities of a record's fields, down to its sections and lists of records."""
    for shape in adapters(record).values():
        yield from shape.quantities()
