"""OpenAPI schemas of batches: columns and lines in, columns and lines out."""

from ringland_service.api.json_types import JsonObject
from ringland_service.api.openapi.common_fields import envelope_schema
from ringland_service.api.openapi.problem import faults_schema
from ringland_service.api.reading.batch_status import STATUSES
from ringland_service.api.reading.common_fields import kinds_judged
from ringland_service.api.reading.query import text_fields
from ringland_service.api.reading.row_budget import most_rows
from ringland_service.api.shapes.records import request_record
from ringland_service.api.shapes.schema_parts import (
    INTERVALS,
    NUMBER_OR_NULL,
    TEXT,
    Components,
    batch_column,
    one_of,
    ref,
)
from ringland_service.api.shapes.schema_parts import object_of as _object
from ringland_service.api.writing.batch_render import MOST_PROBLEMS
from ringland_service.core.declare import Calculation, Operation
from ringland_service.units import symbols

COUNT: JsonObject = {"type": "integer", "minimum": 0}
ROW: JsonObject = {"type": "integer", "minimum": 1, "description": "rows count from 1"}
STATUS: JsonObject = {
    "type": "string",
    "enum": list(STATUSES),
    "description": "; ".join(f"{word}: {means}" for word, means in STATUSES.items()),
}
IN_LINES = (
    "a JSON object a line, each sent as soon as it is worked out; the answer of a single call with"
    " row and status, less basis, its measure_next without the words of the fields (GET /v1 has"
    " them): ways lists fields by name, why stands where it is not the part's purpose"
)


def batch_components() -> Components:
    """Return the components that the answers of batches are made of."""
    return {"BatchAnswer": _answer(), "BatchLine": _line(), "LineProblem": _line_problem()}


def _answer() -> JsonObject:
    words: JsonObject = {"type": "array", "items": {"type": ["string", "null"]}}
    verdicts = _object(
        {
            "verdict": words,
            "why": words,
            "margin": ref("Column"),
            "uncertainty": ref("Column"),
            "interval": {
                **INTERVALS,
                "description": "of 95 %, where the row is judged from it; in the unit of margin",
            },
            "conformance_probability": {"type": "array", "items": NUMBER_OR_NULL},
        }
    )
    problem = _object({"row": ROW, "field": TEXT, "code": TEXT, "detail": TEXT})
    warning: JsonObject = {"code": TEXT, "field": TEXT, "message": TEXT}
    return _object(
        {
            "calculation": TEXT,
            "formulas": TEXT,
            "rows": COUNT,
            "answered": COUNT,
            "refused": COUNT,
            "not_reached": {**COUNT, "description": "rows left when time was up: send them again"},
            "status": {"type": "array", "items": STATUS},
            "results": {"type": "object", "additionalProperties": ref("Column")},
            "verdicts": {"type": "object", "additionalProperties": verdicts},
            "problems": {
                "type": "array",
                "maxItems": MOST_PROBLEMS,
                "description": f"what is wrong with rows, the first {MOST_PROBLEMS} in full",
                "items": problem,
            },
            "more_problems": {
                "type": "array",
                "description": "how many further ones there are of each code",
                "items": _object({"code": TEXT, "count": COUNT}),
            },
            "warnings": {
                "type": "array",
                "items": _object({**warning, "rows": {"type": "array", "items": ROW}}),
            },
            "cautions": {"type": "array", "items": TEXT},
        },
        description="the answers of a batch as columns; status says what became of each row, bad"
        " rows stand under problems; rows count from 1",
    )


def _line() -> JsonObject:
    """Return the schema of one line of an answer in lines."""
    members: JsonObject = {"row": ROW, "status": STATUS, "problem": ref("LineProblem")}
    return {
        "type": "object",
        "description": "one line: an answer beside row and status, or what is wrong with the row",
        "required": ["row", "status"],
        "properties": members,
    }


def _line_problem() -> JsonObject:
    """Return the schema of a line's problem: RFC 9457, less what the response itself tells."""
    return _object(
        {"type": TEXT, "title": TEXT, "status": {"type": "integer"}, "detail": TEXT},
        faults_schema(),
        description="what is wrong with a line, as a single call would be told",
    )


def lines_request(calculation: Operation) -> JsonObject:
    """Return the schema of a batch in lines."""
    most = most_rows(calculation)
    return {"description": f"1 to {most} lines, each a JSON object as a single request; rows count"
            " from 1, lines left blank do not count"}  # fmt: skip


def lines_answer() -> JsonObject:
    """Return the schema of the answer in lines."""
    return {"type": "array", "description": IN_LINES, "items": ref("BatchLine")}


def batch_request(calculation: Calculation, components: Components) -> JsonObject:
    """Return the schema of a batch in JSON: shared fields, and columns."""
    most = most_rows(calculation)
    columns: JsonObject = {
        name: shape.column_schema(most) for name, shape in text_fields(calculation).items()
    }
    for check, kind in kinds_judged(calculation).items():
        unit: JsonObject = {} if kind is None else {"unit": one_of(symbols(kind))}
        for side in ("low", "high"):
            columns[f"limit.{check}.{side}"] = batch_column("a number", unit, most)
    return {
        "type": "object",
        "description": f"columns of one length, at most {most} rows, which count from 1; a bad row"
        " becomes a problem, the others are answered",
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


def shared_schema(calculation: Calculation, components: Components) -> JsonObject:
    """Return the schema of what the rows of a batch share: any of a request's fields."""
    more = envelope_schema(calculation)
    found = request_record(calculation.inputs, components, more)
    found.pop("required", None)
    found["description"] = "fields that all rows share; none of them a column as well"
    return found
