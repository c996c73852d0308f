"""A marshmallow schema per declared record, made once; its messages put in words."""

from collections.abc import Callable
from functools import cache
from typing import ParamSpec, TypeVar, cast

from marshmallow import RAISE, Schema, ValidationError
from marshmallow import fields as ma

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.shapes.base import Requested
from ringland_service.api.shapes.json_checks import About, Reader
from ringland_service.api.shapes.registry import adapters
from ringland_service.core.declare import defaults

P = ParamSpec("P")
T = TypeVar("T")

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


def about(shape: Requested | None = None, **more: object) -> About:
    """Return what marshmallow is told of a field: its own messages as tokens, and ``more``.

    Of a missing field the message says what would be right.
    """
    missing: object = MISSING if shape is None else [_missing(shape)]
    messages = {"required": missing, "null": NULL, "type": NOT_OBJECT, "invalid": NOT_OBJECT}
    return cast(About, {"error_messages": messages, **more})


def _missing(shape: Requested) -> FieldError:
    right = shape.example()
    shown: object = right
    if isinstance(right, dict) and "value" in right:
        shown = f"{right['value']:g} {right['unit']}"
    detail = f"this field is needed: {shape.field.description}, such as {shown}"
    return FieldError("missing_field", detail, right)


@cache
def schema(record: type, extra: tuple[tuple[str, Reader], ...] = ()) -> Schema:
    """Return the schema of a record; ``extra`` are further fields beside its own."""
    optional = defaults(record)
    members: dict[str, ma.Field[object]] = {
        name: shape.reader(
            **about(shape, data_key=shape.field.public(name), required=name not in optional)
        )
        for name, shape in adapters(record).items()
    }
    made = Strict.from_dict(members | dict(extra), name=f"{record.__module__}.{record.__name__}")
    return made()


def load(of: Schema, data: object, partial: bool = False) -> dict[str, object]:
    """Return what a schema reads.

    Raises
    ------
    FieldErrors
        With every fault found.
    """
    try:
        loaded: dict[str, object] = of.load(data, partial=partial)  # type: ignore[arg-type]
    except ValidationError as error:
        known = sorted(str(f.data_key or name) for name, f in of.fields.items())
        raise FieldErrors(worded(error.messages, known)) from error
    return loaded


def worded(messages: object, known: list[str]) -> list[FieldError]:
    """Return marshmallow's nested messages as faults with pointers."""
    if isinstance(messages, dict):
        found = []
        for key, inner in messages.items():
            faults = [_unknown(key, known)] if inner == [UNKNOWN] else worded(inner, known)
            found += faults if key == "_schema" else [fault.under(key) for fault in faults]
        return found
    told = cast(list[FieldError | str], messages)
    return [one if isinstance(one, FieldError) else _token(one) for one in told]


def _unknown(name: object, known: list[str]) -> FieldError:
    return FieldError("unknown_field", "this field is not known here", known, given=str(name))


def _token(token: str) -> FieldError:
    return {
        MISSING: FieldError("missing_field", "this field is needed"),
        NULL: FieldError("null", "null is no value: leave the field out when it is not known"),
        NOT_OBJECT: FieldError("wrong_type", "a JSON object is needed here"),
    }.get(token, FieldError("wrong_type", token))


def within(key: str | int, function: Callable[P, T], *args: P.args, **kwargs: P.kwargs) -> T:
    """Call a function that understands what stands under a key; its faults point there."""
    try:
        return function(*args, **kwargs)
    except FieldErrors as error:
        raise FieldErrors([fault.under(key) for fault in error.faults]) from error
