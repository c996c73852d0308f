"""A marshmallow schema per declared record, made once; and what it reads, understood."""

from collections.abc import Callable
from functools import cache, singledispatch
from typing import Any

from marshmallow import RAISE, Schema, ValidationError
from marshmallow import fields as ma

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading import fields
from ringland_service.api.reading import quantity_fields as quantities
from ringland_service.api.reading.any_kind import settle_kinds
from ringland_service.api.shapes.examples import example_of
from ringland_service.core.declare import asked, defaults
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field, SectionField
from ringland_service.engine.question import Path, Stated

# A value, and the doubts stated within it, by path.
Understood = tuple[Any, dict[Path, Stated]]

MISSING = "\0missing"
UNKNOWN = "\0unknown"
NULL = "\0null"
NOT_OBJECT = "\0object"


class Strict(Schema):
    """A schema that refuses unknown fields; its messages are tokens, put in words later."""

    error_messages = {"unknown": UNKNOWN, "type": NOT_OBJECT}  # noqa: RUF012

    class Meta:
        """Refuse what is not declared."""

        unknown = RAISE


@singledispatch
def field_for(field: Field, **kwargs: Any) -> ma.Field[Any]:
    """Return the marshmallow field of a declared field."""
    raise TypeError(f"no field for {type(field).__name__}")


@field_for.register
def _(field: declared.QuantityField, **kwargs: Any) -> ma.Field[Any]:
    return quantities.Quantity(field, **kwargs)


@field_for.register
def _(field: declared.ReadingsField, **kwargs: Any) -> ma.Field[Any]:
    return quantities.Readings(field, **kwargs)


@field_for.register
def _(field: declared.AnyQuantityField, **kwargs: Any) -> ma.Field[Any]:
    return quantities.AnyQuantity(field, **kwargs)


@field_for.register
def _(field: declared.UnitField, **kwargs: Any) -> ma.Field[Any]:
    return quantities.UnitSymbol(**kwargs)


@field_for.register
def _(field: declared.NumberField, **kwargs: Any) -> ma.Field[Any]:
    return fields.Number(field, **kwargs)


@field_for.register
def _(field: declared.NumbersField, **kwargs: Any) -> ma.Field[Any]:
    return fields.Numbers(field, **kwargs)


@field_for.register
def _(field: declared.CountField, **kwargs: Any) -> ma.Field[Any]:
    return fields.Count(field, **kwargs)


@field_for.register
def _(field: declared.FlagField, **kwargs: Any) -> ma.Field[Any]:
    return fields.Flag(**kwargs)


@field_for.register
def _(field: declared.ChoiceField, **kwargs: Any) -> ma.Field[Any]:
    return fields.Choice(tuple(field.choices), **kwargs)


@field_for.register
def _(field: declared.ChoicesField, **kwargs: Any) -> ma.Field[Any]:
    return fields.Choices(tuple(field.choices), **kwargs)


@field_for.register
def _(field: declared.TextField, **kwargs: Any) -> ma.Field[Any]:
    return fields.Text(field.longest, **kwargs)


@field_for.register
def _(field: declared.SectionField, **kwargs: Any) -> ma.Field[Any]:
    return Section(schema(field.record), **kwargs)


@field_for.register
def _(field: declared.RecordsField, **kwargs: Any) -> ma.Field[Any]:
    return Records(schema(field.record), field.least, field.most, **kwargs)


class Section(ma.Field[dict[str, Any]]):
    """An optional group of fields."""

    def __init__(self, of: Schema, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.of = of

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> dict[str, Any]:
        return _inner(self.of, value)


class Records(ma.Field[list[dict[str, Any]]]):
    """A list of records of one schema."""

    def __init__(self, of: Schema, least: int, most: int, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.of = of
        self.least = least
        self.most = most

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> list[dict[str, Any]]:
        if not isinstance(value, list):
            raise quantities.fail(Fault("wrong_type", "a list is needed here", "a list"))
        if not self.least <= len(value) <= self.most:
            detail = f"{self.least} to {self.most} entries are needed, {len(value)} given"
            raise quantities.fail(Fault("wrong_count", detail, None, 422))
        return [quantities.nested(i, _inner, self.of, item) for i, item in enumerate(value)]


def _inner(of: Schema, value: Any) -> dict[str, Any]:
    """Return what an inner schema reads, its faults in the outer one's way."""
    try:
        return load(of, value)
    except Faulty as error:
        raise quantities.fail(*error.faults) from error


def messages(field: Field | None = None) -> dict[str, str | list[Any] | dict[Any, Any]]:
    """Return marshmallow's own messages as tokens; of a missing field, what would be right."""
    missing: Any = MISSING if field is None else [_missing(field)]
    return {"required": missing, "null": NULL, "type": NOT_OBJECT, "invalid": NOT_OBJECT}


def _missing(field: Field) -> Fault:
    right = example_of(field)
    shown = right
    if isinstance(right, dict) and "value" in right:
        shown = f"{right['value']:g} {right['unit']}"
    return Fault("missing_field", f"this field is needed: {field.words}, such as {shown}", right)


@cache
def schema(record: type, extra: tuple[tuple[str, ma.Field[Any]], ...] = ()) -> Schema:
    """Return the schema of a record; ``extra`` are further fields beside its own."""
    optional = defaults(record)
    members: dict[str, ma.Field[Any]] = {
        name: field_for(
            field,
            data_key=field.public(name),
            required=name not in optional,
            error_messages=messages(field),
        )
        for name, field in asked(record).items()
    }
    made = Strict.from_dict(members | dict(extra), name=f"{record.__module__}.{record.__name__}")
    return made()


def load(of: Schema, data: Any, partial: bool = False) -> dict[str, Any]:
    """Return what a schema reads.

    Raises
    ------
    Faulty
        With every fault found.
    """
    try:
        loaded: dict[str, Any] = of.load(data, partial=partial)
    except ValidationError as error:
        known = sorted(str(f.data_key or name) for name, f in of.fields.items())
        raise Faulty(worded(error.messages, known)) from error
    return loaded


def worded(messages_: Any, known: list[str]) -> list[Fault]:
    """Return marshmallow's nested messages as faults with pointers."""
    if isinstance(messages_, dict):
        found = []
        for key, inner in messages_.items():
            faults = [_unknown(key, known)] if inner == [UNKNOWN] else worded(inner, known)
            found += faults if key == "_schema" else [fault.under(key) for fault in faults]
        return found
    return [m if isinstance(m, Fault) else _token(m) for m in messages_]


def _unknown(name: Any, known: list[str]) -> Fault:
    return Fault("unknown_field", "this field is not known here", known, given=str(name))


def _token(token: str) -> Fault:
    return {
        MISSING: Fault("missing_field", "this field is needed"),
        NULL: Fault("null", "null is no value: leave the field out when it is not known"),
        NOT_OBJECT: Fault("wrong_type", "a JSON object is needed here"),
    }.get(token, Fault("wrong_type", token))


def understand(record: type, loaded: dict[str, Any]) -> Understood:
    """Return the record of canonical values, and the doubts stated with them, by path.

    Raises
    ------
    Faulty
        Where quantities of any kind are not of one kind.
    """
    values, doubts = understand_some(record, loaded)
    return record(**values), doubts


def understand_some(
    record: type, loaded: dict[str, Any]
) -> tuple[dict[str, Any], dict[Path, Stated]]:
    """Return the canonical values of the fields given, and their doubts, as ``understand``."""
    doubts: dict[Path, Stated] = {}
    values: dict[str, Any] = {}
    known = asked(record)
    # In the order of the declaration, so that what is said of several follows from it.
    for name in known:
        if name not in loaded:
            continue
        value = loaded[name]
        if isinstance(value, quantities.Read):
            values[name] = value.value
            if value.stated is not None:
                doubts[(name,)] = value.stated
        else:
            public = known[name].public(name)
            values[name], inner = within(public, _inner_record, known[name], value)
            doubts |= {(name, *path): stated for path, stated in inner.items()}
    settle_kinds(record, values, doubts)
    return values, doubts


def within(key: str | int, function: Callable[..., Understood], *args: Any) -> Understood:
    """Call a function that understands what stands under a key; its faults point there."""
    try:
        return function(*args)
    except Faulty as error:
        raise Faulty([fault.under(key) for fault in error.faults]) from error


def _inner_record(field: Field, value: Any) -> Understood:
    """Return the value of a field that may hold records, and the doubts within."""
    if isinstance(field, SectionField):
        return understand(field.record, value)
    if isinstance(field, declared.RecordsField):
        return _inner_records(field.record, value)
    return value, {}


def _inner_records(record: type, items: list[Any]) -> Understood:
    """Return the records of a list, and the doubts within them, by place and path."""
    values: list[Any] = []
    doubts: dict[Path, Stated] = {}
    for place, item in enumerate(items):
        value, inner = within(place, understand, record, item)
        values.append(value)
        doubts |= {(place, *path): stated for path, stated in inner.items()}
    return tuple(values), doubts
