"""What JSON each declared field has in an answer.

Text, CSV and pages read an answer by this table, never by the look of a value: a result may well be
named ``values`` or ``unit``.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import Enum, auto
from functools import cache
from typing import Any

from ringland_service.core.declare import (
    Calculation,
    Composite,
    Declared,
    asked,
    result_shapes,
)
from ringland_service.core.declare.fields import (
    AnyQuantityField,
    ChoiceField,
    ChoicesField,
    Field,
    NumbersField,
    QuantityField,
    ReadingsField,
    RecordsField,
    ResultField,
    SectionField,
)


class Shape(Enum):
    """The forms of a value in the JSON of an answer."""

    QUANTITY = auto()  # value, unit, digits, perhaps uncertainty
    QUANTITIES = auto()  # values, unit, digits, perhaps uncertainties
    SECTION = auto()  # an object of members
    RECORDS = auto()  # a list of such objects
    LIST = auto()  # a list of numbers or texts
    PLAIN = auto()  # a number, a text, a yes or no


@dataclass(frozen=True)
class Member:
    """One declared field as an answer shows it, by its name on the wire."""

    name: str
    field: Field
    shape: Shape

    @property
    def record(self) -> type | None:
        """The record that a section or each row of a list of records has."""
        if isinstance(self.field, (RecordsField, SectionField, ResultField)):
            return self.field.record
        return None

    def given(self, values: Mapping[str, Any]) -> Iterator[tuple["Member", Any]]:
        """Yield the members that a section, or a row of a list of records, holds."""
        return iter(()) if self.record is None else given(self.record, values)

    @property
    def digits(self) -> int | None:
        """The suggested decimals of a bare number."""
        return self.field.digits if isinstance(self.field, ResultField) else None

    @property
    def choices(self) -> Mapping[str, str] | None:
        """The words of the tokens of a closed list."""
        closed = isinstance(self.field, (ChoiceField, ChoicesField, ResultField))
        return self.field.choices if closed else None  # type: ignore[attr-defined]


@cache
def members(record: type) -> Mapping[str, Member]:
    """Return the fields that an answer shows of a record, by public name, in order."""
    shapes = result_shapes(record)
    found = {}
    for name, field in asked(record).items():
        public = field.public(name)
        found[public] = Member(public, field, _shape(field, shapes[name]))
    return found


def given(record: type, values: Mapping[str, Any]) -> Iterator[tuple[Member, Any]]:
    """Yield the members that the JSON of a record holds, each with its value, as the JSON has them.

    What is not declared is not shown.
    """
    known = members(record)
    for name, value in values.items():
        if name in known:
            yield known[name], value


def parts(calculation: Declared) -> Mapping[str, Calculation]:
    """Return the calculation behind each part of a composite's results."""
    if isinstance(calculation, Composite):
        return {step.part: step.calculation for step in calculation.steps}
    return {}


def _shape(field: Field, of_result: str) -> Shape:
    """Return the shape of a field; ``of_result`` is what the annotation of a result says."""
    if isinstance(field, ResultField):
        return _result_shape(field, of_result)
    for kinds, shape in _SHAPES:
        if isinstance(field, kinds):
            return shape
    return Shape.PLAIN


# A list of readings is a quantity field too, so it comes first.
_SHAPES: tuple[tuple[type | tuple[type, ...], Shape], ...] = (
    (ReadingsField, Shape.QUANTITIES),
    ((QuantityField, AnyQuantityField), Shape.QUANTITY),
    (SectionField, Shape.SECTION),
    (RecordsField, Shape.RECORDS),
    ((NumbersField, ChoicesField), Shape.LIST),
)


def _result_shape(field: ResultField, shape: str) -> Shape:
    if field.record is not None:
        return Shape.RECORDS
    measured = field.kind is not None or bool(field.kind_of)
    if shape == "list":
        return Shape.QUANTITIES if measured else Shape.LIST
    return Shape.QUANTITY if measured or shape == "quantity" else Shape.PLAIN
