"""OpenAPI schema of a problem (RFC 9457)."""

from typing import Any

from ringland_service.api.refusals import MOST_FAULTS


def faults_schema() -> dict[str, Any]:
    """Return the members of a problem that say what is wrong with a request."""
    text = {"type": "string"}
    fault = {
        "type": "object",
        "required": ["code", "pointer", "detail", "allowed"],
        "properties": {
            "code": text,
            "pointer": {
                "type": "string",
                "description": "RFC 6901 in URI-fragment form; an over-long name is cut, with …",
            },
            "detail": text,
            "allowed": {
                "description": "what would be right, null where the detail says it all;"
                " a list that several entries share stands with the first of them"
            },
            "allowed_at": {
                "type": "string",
                "description": "pointer of the earlier entry that carries this entry's allowed",
            },
            "pointers": {
                "type": "array",
                "items": text,
                "description": "all fields that a contradiction lies between, that of pointer"
                " first",
            },
        },
    }
    return {
        "errors": {
            "type": "array",
            "items": fault,
            "maxItems": MOST_FAULTS,
            "description": "the first faults, sorted by pointer, entries of a list by number",
        },
        "more": {
            "type": "integer",
            "minimum": 1,
            "description": "how many faults there are beyond those in errors; absent for none",
        },
    }


def problem_component() -> dict[str, Any]:
    """Return the schema of a problem, and of the faults in it."""
    text = {"type": "string"}
    return {
        "type": "object",
        "description": "RFC 9457; type leads to a page that explains it",
        "required": ["type", "title", "status", "detail", "instance", "request_id"],
        "properties": {
            "type": text,
            "title": text,
            "status": {"type": "integer"},
            "detail": text,
            "instance": text,
            "request_id": text,
            **faults_schema(),
        },
    }
