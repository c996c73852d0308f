"""OpenAPI schemas of what every request may carry, and of batches."""

from collections.abc import Mapping
from typing import Any

from ringland_service.api.batch import MOST_ROWS
from ringland_service.api.envelope import (
    LONGEST_SOURCE,
    WITH_DECOMPRESSOR,
    MeasuringField,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.instrument_figures import (
    ERRORS,
    FIGURES,
    MOST_PERCENT,
    PERCENT,
    figures,
)
from ringland_service.api.openapi_fields import (
    Components,
    any_quantity,
    limit_quantity,
    record,
    ref,
)
from ringland_service.api.quantity_fields import SMALLEST_DOUBT
from ringland_service.core import fields as declared
from ringland_service.core.declare import Calculation, Declared, asked
from ringland_service.core.fields import Field
from ringland_service.core.kinds import TEMPERATURE_DIFFERENCE
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
            "description": "whether common-practice figures stand in where the request gives none, "
            "as limits and inside the arithmetic; off: what rests on one is absent, and a warning "
            "(needs_figure) says what to give",
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


# At least one figure of an instrument is no zero.
ABOVE_ZERO = {"minimum": SMALLEST_DOUBT}
FIGURE, ERROR = "InstrumentFigure", "InstrumentError"


def instrument_components() -> Components:
    """Return the components of an instrument's figures, bounded in each unit."""
    units: dict[float, list[str]] = {}
    for of in figures().values():
        units.setdefault(of.most, []).append(of.symbol)
    words = "a figure of an instrument, at most a tenth of the widest span of what it reads"
    share = {**units, MOST_PERCENT: [*units.get(MOST_PERCENT, ()), PERCENT]}
    return {
        FIGURE: _figure(units, words),
        ERROR: _figure(share, f"{words}; or a share of the reading"),
    }


def _figure(units: Mapping[float, list[str]], words: str) -> dict[str, Any]:
    allowed = [symbol for group in units.values() for symbol in group]
    found = any_quantity(allowed)
    found["properties"] = {
        "value": {"type": "number", "minimum": 0},
        "unit": found["properties"]["unit"],
    }
    branches = [
        {"properties": {"unit": {"enum": group}, "value": {"maximum": most}}}
        for most, group in units.items()
    ]
    return {**found, "description": words, "anyOf": branches}


def measuring_schema() -> dict[str, Any]:
    """Return the schema of how the readings were taken."""
    shapes = {name: ref(ERROR if name == "max_error" else FIGURE) for name in FIGURES}
    instrument = {
        "type": "object",
        "required": ["id"],
        "additionalProperties": False,
        "properties": {
            "id": {"type": "string", "minLength": 1, "maxLength": 40},
            "kind": {"type": "string", "enum": list(TYPICAL)},
            "set_in": {"type": "string", "minLength": 1, "maxLength": 40},
            **shapes,
        },
        "anyOf": [
            {"required": ["kind"]},
            *(
                {"required": [n], "properties": {n: {"properties": {"value": ABOVE_ZERO}}}}
                for n in ERRORS
                if n in shapes
            ),
        ],
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


def _doubts(exact: bool) -> dict[str, Any]:
    return {} if exact else {"uncertainty": DOUBTS}


def column_schema(field: Field) -> dict[str, Any]:
    """Return the schema of a column of a field."""
    if isinstance(field, declared.QuantityField):
        unit = {"type": "string", "enum": list(symbols(field.type.kind))}
        return _column("a number", {"unit": unit, **_doubts(field.exact)})
    if isinstance(field, (declared.NumberField, declared.CountField)):
        return _column("a number", {})
    if isinstance(field, declared.FlagField):
        return _column("true or false", {})
    if isinstance(field, declared.AnyQuantityField):
        unit = {"type": "string", "enum": list(every_symbol())}
        return _column("a number", {"unit": unit, **_doubts(field.exact)})
    return _column("a text", {})
