"""From what a caller gives to the JSON that the service reads."""

import math
from collections.abc import Mapping, Sequence
from numbers import Integral, Real
from typing import Any, TypeAlias

from ringland._errors import InvalidInput
from ringland._types import RIGHT, Quantity, Readings

RIGHT_READINGS = "write ([68.01, 68.02], 'mm')"


def finite(value: Any, where: str) -> Any:
    """Return a number that JSON can hold; numbers of other libraries become plain ones.

    Raises
    ------
    InvalidInput
        For NaN and infinity, and what is no number.
    """
    if isinstance(value, bool) or not isinstance(value, Real):
        raise InvalidInput(f"{where}: {value!r} is not a number")
    if isinstance(value, Integral):
        return int(value)
    number = float(value)
    if not math.isfinite(number):
        raise InvalidInput(f"{where}: {number} is not a number that can be computed with")
    return number


def quantity_json(given: Any, where: str) -> dict[str, Any]:
    """Return the JSON form of a quantity, however it was given.

    Raises
    ------
    InvalidInput
        Naming the field ``where``, with the right form.
    """
    if isinstance(given, Mapping):
        return {k: plain_json(v, f"{where}.{k}") for k, v in given.items() if v is not None}
    if isinstance(given, str):
        given = _parsed(given, where)
    elif isinstance(given, tuple):
        given = _paired(given, where)
    if not isinstance(given, Quantity):
        raise InvalidInput(f"{where}: {given!r} is not a quantity: {RIGHT}")
    found = {"value": finite(given.value, where), "unit": given.unit}
    return found | _uncertainty(given, where)


def _parsed(text: str, where: str) -> Quantity:
    try:
        return Quantity.parse(text)
    except InvalidInput as error:
        raise InvalidInput(f"{where}: {error}") from None


def _paired(given: tuple[Any, ...], where: str) -> Quantity:
    if len(given) != 2 or not isinstance(given[1], str):
        raise InvalidInput(f"{where}: {given!r} is not a quantity: {RIGHT}")
    return Quantity(given[0], given[1])


def _uncertainty(given: Quantity | Readings, where: str) -> dict[str, Any]:
    found: dict[str, Any] = {}
    if given.uncertainty is not None:
        found["uncertainty"] = finite(given.uncertainty, where)
    if given.instrument is not None:
        found["instrument"] = given.instrument
    return found


def readings_json(given: Any, where: str) -> dict[str, Any]:
    """Return the JSON form of readings, however they were given.

    Raises
    ------
    InvalidInput
        Naming the field ``where``, with the right form.
    """
    if isinstance(given, Mapping):
        return {k: plain_json(v, f"{where}.{k}") for k, v in given.items() if v is not None}
    if isinstance(given, tuple) and len(given) == 2 and isinstance(given[1], str):
        given = Readings(values_of(given[0], where), given[1])
    if not isinstance(given, Readings):
        raise InvalidInput(f"{where}: {given!r} is no list of readings: {RIGHT_READINGS}")
    values = [None if v is None else finite(v, where) for v in given.values]
    return {"values": values, "unit": given.unit} | _uncertainty(given, where)


def values_of(given: Any, where: str) -> tuple[Any, ...]:
    """Return the values of a list, or of an array or series of another library.

    Raises
    ------
    InvalidInput
        Where it is neither.
    """
    if hasattr(given, "tolist"):
        given = given.tolist()
    if isinstance(given, str | bytes | Mapping) or not hasattr(given, "__iter__"):
        raise InvalidInput(f"{where}: {given!r} is no list of values")
    return tuple(given)


def plain_json(value: Any, where: str) -> Any:
    """Return any value as JSON holds it.

    Raises
    ------
    InvalidInput
        Where JSON cannot hold it.
    """
    if value is None or isinstance(value, str | bool):
        return value
    if isinstance(value, Mapping):
        return {str(k): plain_json(v, f"{where}.{k}") for k, v in value.items()}
    if isinstance(value, Readings):
        return readings_json(value, where)
    if isinstance(value, Quantity):
        return quantity_json(value, where)
    if isinstance(value, tuple) and len(value) == 2 and isinstance(value[1], str):
        if isinstance(value[0], Real):
            return quantity_json(value, where)
        if not isinstance(value[0], str):
            return readings_json(value, where)
    if isinstance(value, Real):
        return finite(value, where)
    return [plain_json(v, f"{where}.{i}") for i, v in enumerate(values_of(value, where))]


# How a field is put into JSON: a quantity, readings, a record by field, or a list of one shape.
# Fields without an entry go as they are.
Shape: TypeAlias = "str | Mapping[str, Shape] | Sequence[Shape]"


def asked_json(value: Any, shape: "Shape | None", where: str) -> Any:
    """Return a field's value as the service reads it.

    Raises
    ------
    InvalidInput
        Naming the field.
    """
    if shape == "quantity":
        return quantity_json(value, where)
    if shape == "readings":
        return readings_json(value, where)
    if isinstance(shape, Mapping):
        if not isinstance(value, Mapping):
            raise InvalidInput(f"{where}: a mapping of fields is needed, not {value!r}")
        given = {k: v for k, v in value.items() if v is not None}
        return {k: asked_json(v, shape.get(k), f"{where}.{k}") for k, v in given.items()}
    if shape:
        listed = enumerate(values_of(value, where))
        return [asked_json(v, shape[0], f"{where}.{i}") for i, v in listed]
    return plain_json(value, where)
