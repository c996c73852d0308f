"""OpenAPI schemas of a batch's answer: its columns, verdicts and problems."""

from typing import Any

from ringland_service.api.openapi_fields import ref

NUMBER_OR_NULL = {"type": ["number", "null"]}
NUMBERS_OR_NULL = {"type": "array", "items": NUMBER_OR_NULL}


def object_of(
    properties: dict[str, Any], optional: dict[str, Any] | None = None, **more: Any
) -> dict[str, Any]:
    """Return the schema of an object that has all of its members, and perhaps the optional ones."""
    every = {**properties, **(optional or {})}
    return {"type": "object", "required": list(properties), "properties": every, **more}


def column() -> dict[str, Any]:
    """Return the schema of one column."""
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
        },
    }


def batch_answer() -> dict[str, Any]:
    """Return the schema of a batch's answer."""
    text, count = {"type": "string"}, {"type": "integer"}
    words = {"type": "array", "items": {"type": ["string", "null"]}}
    verdicts = object_of(
        {
            "verdict": words,
            "why": words,
            "margin": ref("Column"),
            "uncertainty": ref("Column"),
            "probability_within": {"type": "array", "items": NUMBER_OR_NULL},
        }
    )
    return object_of(
        {
            "calculation": text,
            "formulas": text,
            "rows": count,
            "answered": count,
            "refused": count,
            "results": {"type": "object", "additionalProperties": ref("Column")},
            "verdicts": {"type": "object", "additionalProperties": verdicts},
            "problems": {
                "type": "array",
                "items": object_of({"row": count, "field": text, "code": text, "detail": text}),
            },
            "warnings": {
                "type": "array",
                "items": object_of(
                    {
                        "code": text,
                        "field": text,
                        "message": text,
                        "rows": {"type": "array", "items": count},
                    }
                ),
            },
            "cautions": {"type": "array", "items": text},
        },
        description="the answers of a batch as columns; bad rows stand under problems",
    )
