"""From the JSON of an answer to typed, frozen objects.

Unknown members are ignored, so that a newer service can say more; a missing one that the service
promises is an error.
"""

import dataclasses
import keyword
from collections.abc import Callable, Mapping
from functools import cache
from types import NoneType, UnionType
from typing import Any, Literal, TypeVar, Union, get_args, get_origin

from ringland._errors import UnreadableAnswer
from ringland._types import Quantity, Readings

T = TypeVar("T")


def read(of: type[T], data: Any) -> T:
    """Return a dataclass filled from JSON.

    Raises
    ------
    UnreadableAnswer
        Where a member is missing or of another form than promised.
    """
    if not isinstance(data, Mapping):
        raise UnreadableAnswer(f"{of.__name__}: an object was promised, not {data!r:.60}")
    found = {}
    kind: Any = of
    for name, public, reader, needed in _members(kind):
        if public in data:
            try:
                found[name] = reader(data[public])
            except (TypeError, ValueError) as error:
                raise UnreadableAnswer(f"{of.__name__}.{public}: {error}") from error
        elif needed:
            raise UnreadableAnswer(f"{of.__name__}: the answer has no {public!r}")
    return of(**found)


@cache
def _members(of: Any) -> tuple[tuple[str, str, Callable[[Any], Any], bool], ...]:
    """Return name, name on the wire, reader and whether it is needed, of each member."""
    return tuple(
        (f.name, on_wire(f.name), _reader(f.type), f.default is dataclasses.MISSING)
        for f in dataclasses.fields(of)
    )


def on_wire(name: str) -> str:
    """Return a Python name as the wire has it: ``from_`` is ``from``."""
    bare = name.removesuffix("_")
    return bare if keyword.iskeyword(bare) else name


def _same(value: Any) -> Any:
    return value


def _reader(hint: Any) -> Callable[[Any], Any]:
    """Return what reads a value of a type."""
    origin, args = get_origin(hint), get_args(hint)
    if origin in (Union, UnionType):
        return _of_some(tuple(a for a in args if a is not NoneType))
    if origin is tuple:
        return _of_list(_reader(args[0]))
    if origin is not None and origin is not Literal and issubclass(origin, Mapping):
        return _of_map(_reader(args[1]))
    if dataclasses.is_dataclass(hint):
        return lambda value: read(hint, value)  # type: ignore[arg-type]
    return float if hint is float else _same


def _of_some(kinds: tuple[Any, ...]) -> Callable[[Any], Any]:
    """Return a reader that takes null, an object for a dataclass, and else a plain value."""
    of_object = [_reader(kind) for kind in kinds if dataclasses.is_dataclass(kind)]
    of_plain = [_reader(kind) for kind in kinds if not dataclasses.is_dataclass(kind)]
    plain = of_plain[0] if len(of_plain) == 1 else _same

    def reader(value: Any) -> Any:
        if value is None:
            return None
        if of_object and (isinstance(value, Mapping) or not of_plain):
            return of_object[0](value)
        return plain(value)

    return reader


def _of_list(inner: Callable[[Any], Any]) -> Callable[[Any], Any]:
    def reader(value: Any) -> Any:
        if not isinstance(value, list):
            raise TypeError(f"a list was promised, not {value!r:.60}")
        return tuple(map(inner, value))

    return reader


def _of_map(inner: Callable[[Any], Any]) -> Callable[[Any], Any]:
    def reader(value: Any) -> Any:
        if not isinstance(value, Mapping):
            raise TypeError(f"an object was promised, not {value!r:.60}")
        return {key: inner(one) for key, one in value.items()}

    return reader


def _measured(value: Mapping[str, Any], name: str) -> bool:
    """Return whether an object is numbers with a unit: a result may well be named ``values``."""
    if not isinstance(value.get("unit"), str) or name not in value:
        return False
    numbers = value[name] if name == "values" else [value[name]]
    return isinstance(numbers, list) and all(
        one is None or isinstance(one, int | float) for one in numbers
    )


def untyped(value: Any) -> Any:
    """Return JSON with its quantities and readings as such, the rest as it is."""
    if isinstance(value, Mapping):
        if _measured(value, "value"):
            return read(Quantity, value)
        if _measured(value, "values"):
            return read(Readings, value)
        return {key: untyped(one) for key, one in value.items()}
    return [untyped(one) for one in value] if isinstance(value, list) else value
