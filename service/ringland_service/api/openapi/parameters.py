"""OpenAPI query parameters of the text form: fields, limits, options."""

from ringland_service.api.json_types import JsonObject
from ringland_service.api.reading import query
from ringland_service.api.reading.common_fields import (
    LONGEST_SOURCE,
    WITH_DECOMPRESSOR,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.quantity_schema import BOUNDED, text_name
from ringland_service.api.shapes.quantity_schema import text_components as quantity_texts
from ringland_service.api.shapes.registry import adapters
from ringland_service.api.shapes.schema_parts import Components, one_of, ref
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Operation, defaults
from ringland_service.core.metrology.conformity import RULES
from ringland_service.core.metrology.limits import STANDINGS


def field_parameters(calculation: Operation) -> list[JsonObject]:
    """Return the query parameters of a calculation's fields."""
    optional = defaults(calculation.inputs)
    found = []
    for name, shape in adapters(calculation.inputs).items():
        if isinstance(shape, InCells):
            shown: JsonObject = {
                "name": shape.field.public(name),
                "in": "query",
                "required": name not in optional,
                "description": shape.parameter_words(),
                "schema": shape.parameter_schema(),
            }
            if shape.field.example is not None:
                shown["example"] = shape.parameter_example()
            found.append(shown)
    return found


def text_components() -> Components:
    """Return the components of fields in their text form: of quantities by kind, and of lists."""
    found = quantity_texts()
    for calculation in CALCULATIONS:
        for shape in query.text_fields(calculation).values():
            found |= shape.text_components()
    return found


def limit_parameters(calculation: Operation) -> list[JsonObject]:
    """Return the query parameters of rule, defaults and the checks' limits."""
    found = [
        _parameter("rule", one_of(RULES), "decision rule"),
        _parameter(
            "defaults",
            one_of(("on", "off")),
            "whether common-practice figures stand in, as limits and in the arithmetic",
        ),
    ]
    members = {check.name: limit_members(check) for check in checks_of(calculation)}
    for check, kind in kinds_judged(calculation).items():
        side = BOUNDED if kind is None else ref(text_name(kind, True))
        for name in ("low", "high"):
            found.append(_parameter(f"limit.{check}.{name}", side, f"{name} limit of {check}"))
        standing = one_of(STANDINGS)
        found.append(_parameter(f"limit.{check}.standing", standing, f"standing of {check}"))
        source: JsonObject = {"type": "string", "maxLength": LONGEST_SOURCE}
        found.append(_parameter(f"limit.{check}.source", source, f"source of {check}"))
        if WITH_DECOMPRESSOR in members[check]:
            description = f"{check}: stated with the decompressor at work"
            name = f"limit.{check}.{WITH_DECOMPRESSOR}"
            found.append(_parameter(name, {"type": "boolean"}, description))
    return found


def _parameter(name: str, schema: JsonObject, description: str) -> JsonObject:
    return {
        "name": name,
        "in": "query",
        "required": False,
        "description": description,
        "schema": schema,
    }


SHAPING_WORDS = {
    "units": "units of the answer",
    "trace": "whether to show each formula with its numbers",
    "pick": "the one result (or check) to answer, alone",
}


def shaping_parameter(name: str) -> JsonObject:
    """Return the parameter of an option that shapes the answer."""
    allowed = query.SHAPING[name]
    schema: JsonObject = {"type": "string", "maxLength": 80}
    if allowed is not None:
        schema = one_of(allowed)
    return _parameter(name, schema, SHAPING_WORDS[name])
