"""OpenAPI schemas of what every request may carry, and of batches."""

from typing import Any

from ringland_service.api.envelope import (
    FIGURE_KINDS,
    LONGEST_SOURCE,
    InstrumentField,
    MeasuringField,
    checks_of,
    kinds_judged,
)
from ringland_service.api.openapi_fields import (
    any_quantity,
    limit_quantity,
)
from ringland_service.api.quantity_fields import LARGEST
from ringland_service.core.declare import Declared
from ringland_service.core.kinds import KINDS, TEMPERATURE_DIFFERENCE
from ringland_service.core.limits import STANDINGS
from ringland_service.core.measuring import TYPICAL
from ringland_service.core.verdicts import DEFAULT_RULE, RULES
from ringland_service.units import symbols


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
                },
                "anyOf": [{"required": ["low"]}, {"required": ["high"]}],
            }
            for check, kind in kinds_judged(calculation).items()
        },
    }


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
