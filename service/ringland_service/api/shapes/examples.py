"""The example of each declared field, in JSON form."""

import dataclasses
from typing import Any

from ringland_service.core.declare import asked
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field


def example_of(field: Field) -> Any:
    """Return the example of a field in JSON form; None where it has none."""
    if isinstance(field, declared.SectionField):
        return example(field.record)
    if isinstance(field, declared.RecordsField) and field.example == ():
        return None
    if isinstance(field, declared.RecordsField):
        return [_example_record(one) for one in field.example or ()] or [example(field.record)]
    if isinstance(field, (declared.NumbersField, declared.ChoicesField)):
        return None if field.example is None else list(field.example)
    if field.example is None:
        return None
    if isinstance(field, declared.ReadingsField):
        return {"values": list(field.example), "unit": field.type.kind.unit}
    if isinstance(field, declared.QuantityField):
        return {"value": field.example, "unit": field.type.kind.unit}
    if isinstance(field, declared.AnyQuantityField):
        return {"value": field.example[0], "unit": field.example[1]}
    return field.example


def example(of: type) -> dict[str, Any]:
    """Return the example request of a record, in JSON form: every field by its example."""
    shown = {field.public(name): example_of(field) for name, field in asked(of).items()}
    return {name: value for name, value in shown.items() if value is not None}


def _example_record(one: Any) -> dict[str, Any]:
    """Return a record of canonical values in JSON form."""
    record_: type = type(one)
    known = {n: (f, getattr(one, n)) for n, f in asked(record_).items()}
    given = {n: dataclasses.replace(f, example=v) for n, (f, v) in known.items() if v is not None}
    return {field.public(name): example_of(field) for name, field in given.items()}
