"""OpenAPI schemas of what every request may carry, and of batches."""

from typing import Any

from ringland_service.api.batch import MOST_ROWS
from ringland_service.api.envelope import (
    FIGURE_KINDS,
    LONGEST_SOURCE,
    WITH_DECOMPRESSOR,
    InstrumentField,
    MeasuringField,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.openapi_fields import (
    Components,
    any_quantity,
    limit_quantity,
    record,
)
from ringland_service.api.quantity_fields import LARGEST
from ringland_service.core import fields as declared
from ringland_service.core.declare import Calculation, Declared, asked
from ringland_service.core.fields import Field
from ringland_service.core.kinds import KINDS, TEMPERATURE_DIFFERENCE
from ringland_service.core.limits import STANDINGS
from ringland_service.core.measuring import TYPICAL
from ringland_service.core.verdicts import DEFAULT_RULE, RULES
from ringland_service.units import every_symbol, symbols


def envelope_schema(calculation: Declared) -> dict[str, Any]:
    """Return the properties that a request may carry beside the calculation's own."""
    found: dict[str, Any] = {
        "rule": {
            "type": "string",
            "enum": list(RULES),
            "default": DEFAULT_RULE,
            "description": "decision rule: " + "; ".join(f"{k}: {v}" for k, v in RULES.items()),
        },
        "defaults": {
            "type": "string",
            "enum": ["on", "off"],
            "default": "on",
            "description": "whether common-practice limits judge where the request gives none",
        },
        "measuring": measuring_schema(),
    }
    if checks_of(calculation):
        found["limits"] = limits_schema(calculation)
    return found


def limits_schema(calculation: Declared) -> dict[str, Any]:
    """Return the schema of the request's own limits, by check."""
    words = {check.name: check.words for check in checks_of(calculation)}
    members = {check.name: limit_members(check) for check in checks_of(calculation)}
    return {
        "type": "object",
        "description": "limits by check; these win over the common-practice ones",
        "additionalProperties": False,
        "properties": {
            check: {
                "type": "object",
                "description": words[check],
                "additionalProperties": False,
                "properties": {
                    "low": limit_quantity(kind),
                    "high": limit_quantity(kind),
                    "standing": {"type": "string", "enum": list(STANDINGS), "default": "maker"},
                    "source": {"type": "string", "maxLength": LONGEST_SOURCE},
                    **_working(members[check]),
                },
                "anyOf": [{"required": ["low"]}, {"required": ["high"]}],
            }
            for check, kind in kinds_judged(calculation).items()
        },
    }


def _working(members: tuple[str, ...]) -> dict[str, Any]:
    """Return the property of a limit that may be stated with the decompressor at work."""
    if WITH_DECOMPRESSOR not in members:
        return {}
    words = "stated for a reading with the decompressor at work; it judges such a reading, no other"
    return {WITH_DECOMPRESSOR: {"type": "boolean", "default": False, "description": words}}


def _figure(name: str) -> dict[str, Any]:
    kinds = [KINDS[kind] for kind in FIGURE_KINDS]
    allowed = [symbol for kind in kinds for symbol in symbols(kind)]
    if name == "max_error":
        allowed.append("%")
    found = any_quantity(list(dict.fromkeys(allowed)))
    found["properties"] = {
        "value": {"type": "number", "minimum": 0, "maximum": LARGEST},
        "unit": found["properties"]["unit"],
    }
    return found


def measuring_schema() -> dict[str, Any]:
    """Return the schema of how the readings were taken."""
    figures = {name: _figure(name) for name in InstrumentField.FIGURES}
    instrument = {
        "type": "object",
        "required": ["id"],
        "additionalProperties": False,
        "properties": {
            "id": {"type": "string", "minLength": 1, "maxLength": 40},
            "kind": {"type": "string", "enum": list(TYPICAL)},
            "set_in": {"type": "string", "minLength": 1, "maxLength": 40},
            **figures,
        },
        "anyOf": [{"required": ["kind"]}, *({"required": [name]} for name in figures)],
    }
    return {
        "type": "object",
        "description": "how the readings were taken; one instrument shares its setting error",
        "additionalProperties": False,
        "properties": {
            "instruments": {
                "type": "array",
                "maxItems": MeasuringField.MOST,
                "items": instrument,
            },
            "readings_each": {"type": "integer", "minimum": 1, "maximum": 50, "default": 1},
            "temperature_doubt": {
                **_temperature(),
                "description": "standard uncertainty of each part's temperature",
            },
        },
    }


def _temperature() -> dict[str, Any]:
    found = any_quantity(list(symbols(TEMPERATURE_DIFFERENCE)))
    found["properties"] = {
        "value": {"type": "number", "minimum": 0.001, "maximum": 20},
        "unit": found["properties"]["unit"],
    }
    return found


def batch_request(calculation: Calculation, components: Components) -> dict[str, Any]:
    """Return the schema of a batch in JSON: shared fields, and columns."""
    columns = {
        field.public(name): column_schema(field)
        for name, field in asked(calculation.inputs).items()
        if not isinstance(
            field,
            (
                declared.ReadingsField,
                declared.NumbersField,
                declared.ChoicesField,
                declared.SectionField,
                declared.RecordsField,
            ),
        )
    }
    for check, kind in kinds_judged(calculation).items():
        unit = {} if kind is None else {"unit": {"type": "string", "enum": list(symbols(kind))}}
        for side in ("low", "high"):
            columns[f"limit.{check}.{side}"] = _column("a number", unit)
    return {
        "type": "object",
        "description": f"columns of one length, at most {MOST_ROWS} rows; a bad row becomes a"
        " problem, the others are answered",
        "required": ["columns"],
        "additionalProperties": False,
        "properties": {
            "shared": shared_schema(calculation, components),
            "columns": {
                "type": "object",
                "minProperties": 1,
                "additionalProperties": False,
                "properties": columns,
            },
        },
    }


def shared_schema(calculation: Calculation, components: Components) -> dict[str, Any]:
    """Return the schema of what the rows of a batch share: any of a request's fields."""
    found = record(calculation.inputs, components)
    found.pop("required", None)
    found["description"] = "fields that all rows share; none of them a column as well"
    found["properties"] = {**found["properties"], **envelope_schema(calculation)}
    return found


def _column(words: str, more: dict[str, Any]) -> dict[str, Any]:
    """Return the schema of a column; a cell that is not what it should be is its row's problem."""
    return {
        "type": "object",
        "description": f"{words} a row, or null; any other cell becomes a problem of its row",
        "required": ["values", *(name for name in more if name == "unit")],
        "additionalProperties": False,
        "properties": {
            "values": {"type": "array", "minItems": 1, "maxItems": MOST_ROWS},
            **more,
        },
    }


DOUBTS = {"description": "one number for all rows, or a list of one a row"}


def column_schema(field: Field) -> dict[str, Any]:
    """Return the schema of a column of a field."""
    if isinstance(field, declared.QuantityField):
        unit = {"type": "string", "enum": list(symbols(field.type.kind))}
        return _column("a number", {"unit": unit, "uncertainty": DOUBTS})
    if isinstance(field, (declared.NumberField, declared.CountField)):
        return _column("a number", {})
    if isinstance(field, declared.FlagField):
        return _column("true or false", {})
    if isinstance(field, declared.AnyQuantityField):
        unit = {"type": "string", "enum": list(every_symbol())}
        return _column("a number", {"unit": unit, "uncertainty": DOUBTS})
    return _column("a text", {})
