"""OpenAPI schemas that answers of every form are made of."""

from typing import Any

NUMBER_OR_NULL = {"type": ["number", "null"]}
NUMBERS_OR_NULL = {"type": "array", "items": NUMBER_OR_NULL}


INTERVAL = {
    "type": "object",
    "description": "95 % interval, same unit: it rests on the largest or smallest of readings that"
    " lie within their uncertainty, which noise pushes one way",
    "required": ["low", "high"],
    "properties": {"low": {"type": "number"}, "high": {"type": "number"}},
}
INTERVAL_OR_NULL = {"anyOf": [{"$ref": "#/components/schemas/Interval"}, {"type": "null"}]}
INTERVALS = {"type": "array", "items": INTERVAL_OR_NULL}


def object_of(
    properties: dict[str, Any], optional: dict[str, Any] | None = None, **more: Any
) -> dict[str, Any]:
    """Return the schema of an object that has all of its members, and perhaps the optional ones."""
    every = {**properties, **(optional or {})}
    return {"type": "object", "required": list(properties), "properties": every, **more}


def column() -> dict[str, Any]:
    """Return the schema of one column of a batch's answer."""
    return {
        "type": "object",
        "description": "one entry a row, null where there is none",
        "required": ["values"],
        "properties": {
            "values": {"type": "array"},
            "unit": {"type": "string"},
            "units": {
                "type": "array",
                "description": "a unit a row, where they differ",
                "items": {"type": ["string", "null"]},
            },
            "digits": {"type": "integer"},
            "uncertainties": {
                "type": "array",
                "description": "expanded (k = 2); a list where the result is one",
                "items": {"anyOf": [NUMBER_OR_NULL, NUMBERS_OR_NULL]},
            },
            "intervals": {
                "type": "array",
                "description": "of 95 %; a list where the result is one",
                "items": {"anyOf": [*INTERVAL_OR_NULL["anyOf"], INTERVALS]},
            },
        },
    }
