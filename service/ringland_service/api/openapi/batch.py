"""OpenAPI schemas of batches: columns and lines in, columns and lines out."""

from typing import Any

from ringland_service.api.openapi.envelope import envelope_schema
from ringland_service.api.openapi.fields import Components, record, ref
from ringland_service.api.openapi.problem import faults_schema
from ringland_service.api.openapi.shapes import INTERVALS, NUMBER_OR_NULL
from ringland_service.api.openapi.shapes import object_of as _object
from ringland_service.api.reading.batch_status import STATUSES
from ringland_service.api.reading.envelope import kinds_judged
from ringland_service.api.reading.list_text import ListField, list_example
from ringland_service.api.reading.query import has_text
from ringland_service.api.reading.row_budget import most_rows
from ringland_service.api.writing.batch_render import MOST_PROBLEMS
from ringland_service.core.declare import Calculation, Declared, asked
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field
from ringland_service.units import every_symbol, symbols

TEXT, COUNT = {"type": "string"}, {"type": "integer", "minimum": 0}
ROW = {"type": "integer", "minimum": 1, "description": "rows count from 1"}
STATUS = {
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


def _answer() -> dict[str, Any]:
    words = {"type": "array", "items": {"type": ["string", "null"]}}
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
            "probability_within": {"type": "array", "items": NUMBER_OR_NULL},
        }
    )
    problem = _object({"row": ROW, "field": TEXT, "code": TEXT, "detail": TEXT})
    warning = {"code": TEXT, "field": TEXT, "message": TEXT}
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


def _line() -> dict[str, Any]:
    """Return the schema of one line of an answer in lines."""
    members = {"row": ROW, "status": STATUS, "problem": ref("LineProblem")}
    return {
        "type": "object",
        "description": "one line: an answer beside row and status, or what is wrong with the row",
        "required": ["row", "status"],
        "properties": members,
    }


def _line_problem() -> dict[str, Any]:
    """Return the schema of a line's problem: RFC 9457, less what the response itself tells."""
    found = _object(
        {"type": TEXT, "title": TEXT, "status": {"type": "integer"}, "detail": TEXT},
        description="what is wrong with a line, as a single call would be told",
    )
    return {**found, "properties": {**found["properties"], **faults_schema()}}


def lines_request(calculation: Declared) -> dict[str, Any]:
    """Return the schema of a batch in lines."""
    most = most_rows(calculation)
    return {"description": f"1 to {most} lines, each a JSON object as a single request; rows count"
            " from 1, lines left blank do not count"}  # fmt: skip


def lines_answer() -> dict[str, Any]:
    """Return the schema of the answer in lines."""
    return {"type": "array", "description": IN_LINES, "items": ref("BatchLine")}


def batch_request(calculation: Calculation, components: Components) -> dict[str, Any]:
    """Return the schema of a batch in JSON: shared fields, and columns."""
    most = most_rows(calculation)
    columns = {
        field.public(name): column_schema(field, most)
        for name, field in asked(calculation.inputs).items()
        if has_text(field)
    }
    for check, kind in kinds_judged(calculation).items():
        unit = {} if kind is None else {"unit": {"type": "string", "enum": list(symbols(kind))}}
        for side in ("low", "high"):
            columns[f"limit.{check}.{side}"] = _column("a number", unit, most)
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


def shared_schema(calculation: Calculation, components: Components) -> dict[str, Any]:
    """Return the schema of what the rows of a batch share: any of a request's fields."""
    found = record(calculation.inputs, components)
    found.pop("required", None)
    found["description"] = "fields that all rows share; none of them a column as well"
    found["properties"] = {**found["properties"], **envelope_schema(calculation)}
    return found


def _column(words: str, more: dict[str, Any], most: int) -> dict[str, Any]:
    """Return the schema of a column; a cell that is not what it should be is its row's problem."""
    return {
        "type": "object",
        "description": f"{words} a row, or null; any other cell becomes a problem of its row",
        "required": ["values", *(name for name in more if name == "unit")],
        "additionalProperties": False,
        "properties": {
            "values": {"type": "array", "minItems": 1, "maxItems": most},
            **more,
        },
    }


DOUBTS = {"description": "one number for all rows, or a list of one a row"}


def _doubts(exact: bool) -> dict[str, Any]:
    return {} if exact else {"uncertainty": DOUBTS}


def _list_column(field: ListField, most: int) -> dict[str, Any]:
    """Return the schema of a column of lists."""
    text = list_example(field)
    if not isinstance(field, declared.ReadingsField):
        return _column(f"a list, or its text such as {text},", {}, most)
    unit = {"type": "string", "enum": list(symbols(field.type.kind))}
    words = f"a list of numbers, or its text such as {text.rpartition(' ')[0]},"
    return _column(words, {"unit": unit, **_doubts(field.exact)}, most)


def column_schema(field: Field, most: int) -> dict[str, Any]:
    """Return the schema of a column of a field."""
    if isinstance(field, ListField):
        return _list_column(field, most)
    if isinstance(field, declared.QuantityField):
        unit = {"type": "string", "enum": list(symbols(field.type.kind))}
        return _column("a number", {"unit": unit, **_doubts(field.exact)}, most)
    if isinstance(field, (declared.NumberField, declared.CountField)):
        return _column("a number", {}, most)
    if isinstance(field, declared.FlagField):
        return _column("true or false", {}, most)
    if isinstance(field, declared.AnyQuantityField):
        unit = {"type": "string", "enum": list(every_symbol())}
        return _column("a number", {"unit": unit, **_doubts(field.exact)}, most)
    return _column("a text", {}, most)
