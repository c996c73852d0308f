"""The one lookup from a declared field to the adapter of its shape.

The modules of the shapes enter their classes here, and the package imports them all, so that none
of them need know the others: a section may hold any shape, sections among them.
"""

from collections.abc import Callable, Mapping
from functools import cache
from typing import TypeVar

from ringland_service.api.shapes.base import Answered, Requested, Resulted
from ringland_service.core.declare import input_fields
from ringland_service.core.declare.fields import Field, ResultField

A = TypeVar("A", bound=Answered)

REQUESTED: dict[type[Field], type[Requested]] = {}
RESULTED: dict[str, type[Resulted]] = {}


def adapts(of: type[Field]) -> Callable[[type[A]], type[A]]:
    """Enter the class below as the adapter of a shape of field that a request may hold."""

    def enter(adapter: type[A]) -> type[A]:
        assert issubclass(adapter, Requested)  # noqa: S101 - results are entered by their look
        REQUESTED[of] = adapter
        return adapter

    return enter


def adapts_result(look: str) -> Callable[[type[A]], type[A]]:
    """Enter the class below as the adapter of results of one look; see ``look_of``."""

    def enter(adapter: type[A]) -> type[A]:
        assert issubclass(adapter, Resulted)  # noqa: S101 - fields are entered by their class
        RESULTED[look] = adapter
        return adapter

    return enter


def adapter(field: Field) -> Requested:
    """Return the adapter of a field that a request may hold.

    Raises
    ------
    TypeError
        Where its shape has none, as what the engine fills.
    """
    found = REQUESTED.get(type(field))
    if found is None:
        raise TypeError(f"no adapter for {type(field).__name__}")
    return found(field)


@cache
def adapters(record: type) -> Mapping[str, Requested]:
    """Return the adapters of the fields that a user may fill, by name, in order."""
    return {name: adapter(field) for name, field in input_fields(record).items()}


def shown_by(field: Field, holds: str) -> Answered:
    """Return the adapter of a field in an answer; ``holds`` is what its annotation says."""
    return result_adapter(field, holds) if isinstance(field, ResultField) else adapter(field)


def result_adapter(field: ResultField, holds: str) -> Resulted:
    """Return the adapter of a result; ``holds`` is what its annotation says, in JSON's terms."""
    return RESULTED[look_of(field, holds)](field, holds)


def look_of(field: ResultField, holds: str) -> str:
    """Return what a result looks like: table, quantities, list, choice, quantity, bare."""
    measured = field.kind is not None or bool(field.kind_of)
    if field.record is not None:
        return "table"
    if holds == "list":
        return "quantities" if measured else "list"
    if field.choices is not None:
        return "choice"
    return "quantity" if measured or holds == "quantity" else "bare"
