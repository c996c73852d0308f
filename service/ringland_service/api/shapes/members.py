"""What JSON each declared field has in an answer.

Text, CSV and pages read an answer by this table, never by the look of a value: a result may well be
named ``values`` or ``unit``.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from ringland_service.api.shapes.base import Answered, Resulted
from ringland_service.api.shapes.registry import result_adapter, shown_by
from ringland_service.core.declare import (
    Calculation,
    Composite,
    Operation,
    declared,
    input_fields,
    result_shapes,
)
from ringland_service.core.declare.fields import ResultField
from ringland_service.core.metrology.extremes import Interval

NO_INTERVALS: Mapping[str, Interval] = {}


@dataclass(frozen=True)
class Member:
    """One declared field as an answer shows it: names on the wire and in the record, and shape."""

    name: str
    key: str
    shape: Answered

    def given(self, values: Mapping[str, Any]) -> Iterator[tuple["Member", Any]]:
        """Yield the members that a section, or a row of a list of records, holds."""
        record = self.shape.record
        return iter(()) if record is None else given(record, values)


@cache
def members(record: type) -> Mapping[str, Member]:
    """Return the fields that an answer shows of a record, by public name, in order."""
    holds = result_shapes(record)
    found = {}
    for key, field in input_fields(record).items():
        name = field.public(key)
        found[name] = Member(name, key, shown_by(field, holds[key]))
    return found


@cache
def results(record: type) -> Mapping[str, tuple[ResultField, Resulted]]:
    """Return the results that a record declares, each with its adapter, by name, in order."""
    holds = result_shapes(record)
    return {
        key: (field, result_adapter(field, holds[key]))
        for key, field in declared(record).items()
        if isinstance(field, ResultField)
    }


def given(record: type, values: Mapping[str, Any]) -> Iterator[tuple[Member, Any]]:
    """Yield the members that the JSON of a record holds, each with its value, as the JSON has them.

    What is not declared is not shown.
    """
    known = members(record)
    for name, value in values.items():
        if name in known:
            yield known[name], value


def answer(
    record: type,
    values: object,
    inputs: object,
    system: str,
    u: Mapping[str, Any],
    intervals: Mapping[str, Interval] = NO_INTERVALS,
) -> dict[str, Any]:
    """Return the fields that a record holds as JSON, by public name; see ``Answered.answer``."""
    found: dict[str, Any] = {}
    for name, member in members(record).items():
        value = getattr(values, member.key)
        if value is not None:
            told = member.shape.answer(value, inputs, system, u.get(member.key))
            if member.key in intervals:
                told = member.shape.with_interval(told, intervals[member.key], inputs, system)
            found[name] = told
    return found


def parts(calculation: Operation) -> Mapping[str, Calculation]:
    """Return the calculation behind each part of a composite's results."""
    if isinstance(calculation, Composite):
        return {step.part: step.calculation for step in calculation.steps}
    return {}
