"""OpenAPI schemas that requests and answers of every form are made of."""

from collections.abc import Mapping, Sequence

from ringland_service.api.json_types import Json, JsonObject

# Schemas by the name that others refer to them by.
Components = dict[str, JsonObject]

NUMBER: JsonObject = {"type": "number"}
TEXT: JsonObject = {"type": "string"}
NUMBER_OR_NULL: JsonObject = {"type": ["number", "null"]}
NUMBERS_OR_NULL: JsonObject = {"type": "array", "items": NUMBER_OR_NULL}


INTERVAL: JsonObject = {
    "type": "object",
    "description": "95 % interval, same unit: it rests on the largest or smallest of readings that"
    " lie within their uncertainty, which noise pushes one way",
    "required": ["low", "high"],
    "properties": {"low": NUMBER, "high": NUMBER},
}
_INTERVAL_OR_NULL: list[Json] = [{"$ref": "#/components/schemas/Interval"}, {"type": "null"}]
INTERVAL_OR_NULL: JsonObject = {"anyOf": _INTERVAL_OR_NULL}
INTERVALS: JsonObject = {"type": "array", "items": INTERVAL_OR_NULL}


def pascal(name: str) -> str:
    """Return a name as a component's name."""
    return "".join(part.capitalize() for part in name.replace("-", "_").split("_"))


def ref(name: str) -> JsonObject:
    """Return a reference to a component."""
    return {"$ref": f"#/components/schemas/{name}"}


def one_of(tokens: Sequence[str] | Mapping[str, str]) -> JsonObject:
    """Return the schema of one token of a closed list."""
    return {"type": "string", "enum": list(tokens)}


def array_of(items: JsonObject) -> JsonObject:
    """Return the schema of a list."""
    return {"type": "array", "items": items}


def object_of(
    properties: JsonObject, optional: JsonObject | None = None, **more: Json
) -> JsonObject:
    """Return the schema of an object that has all of its members, and perhaps the optional ones."""
    every = {**properties, **(optional or {})}
    return {"type": "object", "required": list(properties), "properties": every, **more}


def column() -> JsonObject:
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
            "decimals": {"type": "integer"},
            "uncertainties": {
                "type": "array",
                "description": "expanded (k = 2); a list where the result is one",
                "items": {"anyOf": [NUMBER_OR_NULL, NUMBERS_OR_NULL]},
            },
            "intervals": {
                "type": "array",
                "description": "of 95 %; a list where the result is one",
                "items": {"anyOf": [*_INTERVAL_OR_NULL, INTERVALS]},
            },
        },
    }


def batch_column(description: str, more: JsonObject, most: int) -> JsonObject:
    """Return the schema of a column; a cell that is not what it should be is its row's problem."""
    return {
        "type": "object",
        "description": f"{description} a row, or null; any other cell becomes a problem of its row",
        "required": ["values", *(name for name in more if name == "unit")],
        "additionalProperties": False,
        "properties": {
            "values": {"type": "array", "minItems": 1, "maxItems": most},
            **more,
        },
    }


def measured_column(description: str, units: Sequence[str], exact: bool, most: int) -> JsonObject:
    """Return the schema of a column with a unit, and with uncertainties where it may have any."""
    uncertainties: JsonObject = {} if exact else {"uncertainty": UNCERTAINTIES}
    return batch_column(description, {"unit": one_of(units), **uncertainties}, most)


UNCERTAINTIES: JsonObject = {"description": "one number for all rows, or a list of one a row"}


def text_pattern(pattern: str, longest: int) -> JsonObject:
    """Return the schema of a text of one pattern."""
    return {"type": "string", "maxLength": longest, "pattern": pattern}
