"""OpenAPI schemas of the declared fields, one component a quantity of the trade."""

from functools import singledispatch
from typing import Any

from ringland_service.api.reading.bounds import bounds
from ringland_service.api.reading.quantity_fields import LARGEST, SMALLEST_DOUBT
from ringland_service.api.shapes.examples import example_of
from ringland_service.core.declare import asked, defaults
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field, QuantityType
from ringland_service.core.declare.kinds import Kind
from ringland_service.units import every_symbol, symbols

Components = dict[str, dict[str, Any]]
INSTRUMENT = {
    "type": "string",
    "minLength": 1,
    "maxLength": 40,
    "description": "id of an instrument described in measuring",
}


def pascal(name: str) -> str:
    """Return a name as a component's name."""
    return "".join(part.capitalize() for part in name.replace("-", "_").split("_"))


def ref(name: str) -> dict[str, Any]:
    """Return a reference to a component."""
    return {"$ref": f"#/components/schemas/{name}"}


def quantity_component(of: QuantityType, components: Components) -> str:
    """Add the component of a quantity and return its name."""
    name = pascal(of.name)
    if name not in components:
        components[name] = {
            "type": "object",
            "description": _described(of),
            "required": ["value", "unit"],
            "additionalProperties": False,
            "properties": {
                "value": {"type": "number"},
                "unit": {"type": "string", "enum": list(symbols(of.kind))},
                "uncertainty": {
                    "type": "number",
                    "description": "expanded uncertainty (k = 2), same unit",
                },
                "instrument": INSTRUMENT,
            },
            "not": {"required": ["uncertainty", "instrument"]},
            "anyOf": [_branch(of, group, "value") for group in _groups(of)],
            "examples": [{"value": of.example, "unit": of.kind.unit}],
        }
    return name


def _described(of: QuantityType) -> str:
    usual = ""
    if of.warn_low is not None or of.warn_high is not None:
        low = "" if of.warn_low is None else f"{of.warn_low:g}"
        high = "" if of.warn_high is None else f"{of.warn_high:g}"
        usual = f"; usual {low} to {high} {of.kind.unit}"
    how = f"; measured with: {of.instrument}" if of.instrument else ""
    return f"{of.words}{usual}{how}"


def _groups(of: QuantityType) -> list[list[str]]:
    """Return the symbols grouped by bounds, so that aliases share a branch."""
    found: dict[Any, list[str]] = {}
    for symbol in symbols(of.kind):
        found.setdefault(bounds(of, symbol), []).append(symbol)
    return list(found.values())


def _branch(of: QuantityType, group: list[str], member: str) -> dict[str, Any]:
    within = bounds(of, group[0])
    value: dict[str, Any] = {"minimum": within.low, "maximum": within.high}
    if member == "values":
        value = {"items": value}
    return {
        "properties": {
            "unit": {"enum": group},
            member: value,
            "uncertainty": {
                "minimum": within.least_uncertainty,
                "maximum": within.most_uncertainty,
            },
        }
    }


@singledispatch
def schema_of(field: Field, components: Components) -> dict[str, Any]:
    """Return the OpenAPI schema of a declared field."""
    raise TypeError(f"no schema for {type(field).__name__}")


@schema_of.register
def _(field: declared.QuantityField, components: Components) -> dict[str, Any]:
    found = {**ref(quantity_component(field.type, components)), "description": field.words}
    if field.exact:
        doubted = [{"required": ["uncertainty"]}, {"required": ["instrument"]}]
        found["not"] = {"anyOf": doubted}
    return {**found, **_examples(field)}


@schema_of.register
def _(field: declared.ReadingsField, components: Components) -> dict[str, Any]:
    of = field.type
    number: dict[str, Any] = {"type": ["number", "null"] if field.gaps else "number"}
    values: dict[str, Any] = {
        "type": "array",
        "minItems": field.least,
        "maxItems": field.most,
        "items": number,
    }
    if field.gaps:
        values["contains"] = {"type": "number"}
    return {
        "type": "object",
        "description": field.words,
        "required": ["values", "unit"],
        "additionalProperties": False,
        "properties": {
            "values": values,
            "unit": {"type": "string", "enum": list(symbols(of.kind))},
            "uncertainty": {"type": "number", "description": "of each reading (k = 2)"},
            "instrument": INSTRUMENT,
        },
        "not": {"required": ["uncertainty", "instrument"]},
        "anyOf": [_branch(of, group, "values") for group in _groups(of)],
        **_examples(field),
    }


@schema_of.register
def _(field: declared.AnyQuantityField, components: Components) -> dict[str, Any]:
    shape = any_quantity(list(every_symbol()))
    if field.exact:
        del shape["properties"]["uncertainty"]
    return {**shape, "description": field.words, **_examples(field)}


def any_quantity(allowed: list[str]) -> dict[str, Any]:
    """Return the schema of a number with one of many units."""
    return {
        "type": "object",
        "required": ["value", "unit"],
        "additionalProperties": False,
        "properties": {
            "value": {"type": "number", "minimum": -LARGEST, "maximum": LARGEST},
            "unit": {"type": "string", "enum": allowed},
            "uncertainty": {"type": "number", "minimum": SMALLEST_DOUBT, "maximum": LARGEST},
        },
    }


@schema_of.register
def _(field: declared.UnitField, components: Components) -> dict[str, Any]:
    return _plain(field, {"type": "string", "enum": list(every_symbol())})


@schema_of.register
def _(field: declared.NumberField, components: Components) -> dict[str, Any]:
    return _plain(field, {"type": "number", "minimum": field.low, "maximum": field.high})


@schema_of.register
def _(field: declared.NumbersField, components: Components) -> dict[str, Any]:
    item = {"type": "number", "minimum": field.low, "maximum": field.high}
    shape = {"type": "array", "minItems": field.least, "maxItems": field.most, "items": item}
    return _plain(field, shape)


@schema_of.register
def _(field: declared.CountField, components: Components) -> dict[str, Any]:
    return _plain(field, {"type": "integer", "minimum": field.low, "maximum": field.high})


@schema_of.register
def _(field: declared.FlagField, components: Components) -> dict[str, Any]:
    return _plain(field, {"type": "boolean"})


@schema_of.register
def _(field: declared.ChoiceField, components: Components) -> dict[str, Any]:
    words = "; ".join(f"{token}: {text}" for token, text in field.choices.items())
    found = _plain(field, {"type": "string", "enum": list(field.choices)})
    return {**found, "description": f"{field.words} ({words})"}


@schema_of.register
def _(field: declared.ChoicesField, components: Components) -> dict[str, Any]:
    item = {"type": "string", "enum": list(field.choices)}
    shape = {"type": "array", "uniqueItems": True, "maxItems": len(field.choices), "items": item}
    return _plain(field, shape)


@schema_of.register
def _(field: declared.TextField, components: Components) -> dict[str, Any]:
    return _plain(field, {"type": "string", "maxLength": field.longest})


@schema_of.register
def _(field: declared.SectionField, components: Components) -> dict[str, Any]:
    return {**record(field.record, components), "description": field.words}


@schema_of.register
def _(field: declared.RecordsField, components: Components) -> dict[str, Any]:
    return {
        "type": "array",
        "description": field.words,
        "minItems": field.least,
        "maxItems": field.most,
        "items": record(field.record, components),
        **(_examples(field) if field.example else {}),
    }


def _plain(field: Field, shape: dict[str, Any]) -> dict[str, Any]:
    return {**shape, "description": field.words, **_examples(field)}


def _examples(field: Field) -> dict[str, Any]:
    shown = example_of(field)
    return {} if shown is None else {"examples": [shown]}


def record(of: type, components: Components) -> dict[str, Any]:
    """Return the schema of a record's fields."""
    optional = defaults(of)
    properties = {}
    for name, field in asked(of).items():
        shape = schema_of(field, components)
        if optional.get(name) is not None:
            shape = {**shape, **_default(field, optional[name])}
        properties[field.public(name)] = shape
    required = [field.public(name) for name, field in asked(of).items() if name not in optional]
    found: dict[str, Any] = {
        "type": "object",
        "additionalProperties": False,
        "properties": properties,
    }
    return {**found, "required": required} if required else found


def _default(field: Field, value: Any) -> dict[str, Any]:
    if isinstance(field, declared.QuantityField):
        return {"default": {"value": value, "unit": field.type.kind.unit}}
    if isinstance(field, (declared.NumbersField, declared.ChoicesField)):
        return {"default": list(value)}
    return {"default": value}


def limit_quantity(kind: Kind | None) -> dict[str, Any]:
    """Return the schema of one side of a limit."""
    if kind is None:
        return {"type": "number", "minimum": -LARGEST, "maximum": LARGEST}
    found = any_quantity(list(symbols(kind)))
    del found["properties"]["uncertainty"]
    return found
