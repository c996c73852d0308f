"""The example of each declared field, in JSON form."""

import dataclasses
from typing import Any

from ringland_service.api.json_types import Json
from ringland_service.api.shapes.registry import adapter, adapters
from ringland_service.core.declare import input_fields
from ringland_service.core.declare.fields import Field


def example_of(field: Field) -> Json:
    """Return the example of a field in JSON form; None where it has none."""
    return adapter(field).example()


def example(of: type) -> dict[str, Any]:
    """Return the example request of a record, in JSON form: every field by its example."""
    shown = {one.field.public(name): one.example() for name, one in adapters(of).items()}
    return {name: value for name, value in shown.items() if value is not None}


def example_record(one: object) -> Json:
    """Return a record of canonical values in JSON form."""
    record: type = type(one)
    known = {n: (f, getattr(one, n)) for n, f in input_fields(record).items()}
    given = {n: dataclasses.replace(f, example=v) for n, (f, v) in known.items() if v is not None}
    return {field.public(name): example_of(field) for name, field in given.items()}
