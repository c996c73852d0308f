"""OpenAPI schemas of what every request may carry, and of batches."""

from collections.abc import Mapping
from typing import Any

from ringland_service.api.openapi.fields import Components, any_quantity, limit_quantity, ref
from ringland_service.api.reading.envelope import (
    LONGEST_SOURCE,
    WITH_DECOMPRESSOR,
    MeasuringField,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.reading.instrument_figures import (
    ERRORS,
    FIGURES,
    MOST_PERCENT,
    PERCENT,
    figures,
)
from ringland_service.api.reading.quantity_fields import SMALLEST_DOUBT
from ringland_service.core.declare import Declared
from ringland_service.core.declare.kinds import TEMPERATURE_DIFFERENCE
from ringland_service.core.metrology.conformity import DEFAULT_RULE, RULES
from ringland_service.core.metrology.instruments import TYPICAL
from ringland_service.core.metrology.limits import STANDINGS
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
