"""Reference cases as the JSON of requests, in canonical units."""

from typing import Any

from reference_cases import Case, path_of

from ringland_service.api.reading.envelope import kinds_judged
from ringland_service.api.reading.request import public_path
from ringland_service.core.declare import asked
from ringland_service.core.declare.fields import (
    AnyQuantityField,
    Field,
    QuantityField,
    RecordsField,
    SectionField,
    UnitField,
)
from ringland_service.units import unit


def in_unit(field: QuantityField, value: Any, symbol: str) -> dict[str, Any]:
    """Return canonical readings, or one canonical value, as JSON in a unit."""
    measure = unit(field.type.kind, symbol)
    if isinstance(value, list):
        numbers = [None if v == "absent" else measure.from_canonical(float(v)) for v in value]
        return {"values": numbers, "unit": symbol}
    return {"value": measure.from_canonical(float(value)), "unit": symbol}


def as_json(field: Field, value: Any) -> Any:
    """Return a case's value of a field as JSON, in the canonical unit."""
    if isinstance(field, QuantityField):
        return in_unit(field, value, field.type.kind.unit)
    if isinstance(field, SectionField):
        return record_json(field.record, value)
    if isinstance(field, RecordsField):
        return [record_json(field.record, one) for one in value]
    if isinstance(field, AnyQuantityField):
        return {"value": value["value"], "unit": value["unit"]}
    return value["unit"] if isinstance(field, UnitField) else value


def record_json(record: type, values: dict[str, Any]) -> dict[str, Any]:
    known = asked(record)
    return {known[name].public(name): as_json(known[name], v) for name, v in values.items()}


def request_of(case: Case) -> dict[str, Any]:
    """Return a case as the JSON of a request."""
    calculation = case.declaration
    body = record_json(calculation.inputs, case.inputs)
    for name, doubt in case.uncertainty.items():
        given: Any = body
        for key in public_path(calculation.inputs, path_of(name)):
            given = given[key]
        given["uncertainty"] = doubt
    if calculation.name == "convert":
        # The unit alone does not say of which kind it is where a case means a difference.
        kinds = {v["kind"] for v in case.inputs.values() if isinstance(v, dict) and "kind" in v}
        if len(kinds) == 1:
            body.setdefault("kind", kinds.pop())
    kinds_of_checks = kinds_judged(calculation)
    for check, limit in case.limits.items():
        kind = kinds_of_checks[check]
        sides = {
            s: limit[s] if kind is None else {"value": limit[s], "unit": kind.unit}
            for s in ("low", "high")
            if s in limit
        }
        told = {m: limit[m] for m in ("standing", "source") if m in limit}
        body.setdefault("limits", {})[check] = sides | told
    return body | {"rule": case.rule}
