"""What every reader of JSON needs: its readers, faults in marshmallow's way, checks that narrow."""

from collections.abc import Callable
from typing import Any, ParamSpec, TypeAlias, TypedDict, TypeGuard, TypeVar

from marshmallow import ValidationError
from marshmallow import fields as ma

from ringland_service.api.faults import FieldError

P = ParamSpec("P")
T = TypeVar("T")
# What marshmallow reads one member of a request with.
Reader: TypeAlias = ma.Field[Any]


class About(TypedDict, total=False):
    """What marshmallow is told of a field beside its shape."""

    data_key: str
    required: bool
    # As marshmallow has it.
    error_messages: dict[str, str | list[Any] | dict[Any, Any]]


def fail(*faults: FieldError) -> ValidationError:
    """Return the marshmallow error that carries the faults."""
    return ValidationError(list(faults))


def faults_of(error: ValidationError) -> list[FieldError]:
    """Return the faults that a marshmallow error carries."""
    return [message for message in error.messages if isinstance(message, FieldError)]


def nested(key: str | int, function: Callable[P, T], *args: P.args, **kwargs: P.kwargs) -> T:
    """Call a check, its faults placed under a key."""
    try:
        return function(*args, **kwargs)
    except ValidationError as error:
        raise fail(*(fault.under(key) for fault in faults_of(error))) from error


def read_at(key: str | int, reader: ma.Field[T], value: object) -> T:
    """Return what a reader makes of a value, its faults placed under a key."""
    return nested(key, reader.deserialize, value)


def is_number(value: object) -> TypeGuard[float]:
    """Return whether a JSON value is a number (a yes or no is not)."""
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def show(value: object) -> str:
    """Return a value as a message may repeatability it, cut to a sensible length."""
    # The end of a long text is never shown, so it is not escaped either.
    text = repr(value[:61] if isinstance(value, str) else value)
    return text if len(text) <= 60 else text[:60] + "…"


def check_keys(value: object, keys: frozenset[str], right: str) -> dict[str, object]:
    """Return an object with known keys; refuse anything else."""
    if not isinstance(value, dict):
        detail = "a number alone has no unit" if is_number(value) else "not a quantity"
        raise fail(FieldError("not_a_quantity", f"{detail}: write {right}", right))
    unknown = [name for name in value if name not in keys]
    if unknown:
        known = sorted(keys)
        raise fail(
            *(
                FieldError("unknown_field", f"unknown field {show(name)}", known, given=name).under(
                    name
                )
                for name in unknown
            )
        )
    return value
