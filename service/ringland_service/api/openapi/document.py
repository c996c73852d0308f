"""The OpenAPI 3.1 document, assembled from the declarations."""

from functools import cache
from typing import Any

from apispec import APISpec

from ringland_service import __version__
from ringland_service.api import problems
from ringland_service.api.openapi.answers import answer_component
from ringland_service.api.openapi.batch import batch_request, lines_answer, lines_request
from ringland_service.api.openapi.envelope import envelope_schema, instrument_components
from ringland_service.api.openapi.fields import Components, pascal, record, ref
from ringland_service.api.openapi.parameters import (
    field_parameters,
    limit_parameters,
    shaping_parameter,
    text_components,
)
from ringland_service.api.reading import query
from ringland_service.api.shapes.examples import example
from ringland_service.api.writing import forms
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation, Declared, asked
from ringland_service.core.declare.notices import FIRST

DESCRIPTION = (
    "The arithmetic of a top-end engine job: one path a calculation, everything in the request,"
    f" nothing kept. {FIRST}"
)
FAILURES = {
    "post": (400, 406, 413, 415, 422),
    "get": (400, 406, 422),
    "system": (400,),
}
ALL_FAILURES = sorted({status for statuses in FAILURES.values() for status in statuses})


@cache
def document() -> dict[str, Any]:
    """Return the OpenAPI document as plain data."""
    spec = APISpec("Ringland", __version__, "3.1.0", info={"description": DESCRIPTION})
    components: Components = text_components() | instrument_components()
    for status in ALL_FAILURES:
        spec.components.response(f"Problem{status}", _failure(status))
    for calculation in CALCULATIONS:
        for path, operations in calculation_paths(calculation, components).items():
            spec.path(path=path, operations=operations)
    for path, summary in SYSTEM.items():
        spec.path(path=path, operations={"get": _system(path, summary)})
    for name in sorted(components):
        spec.components.schema(name, components[name])
    found: dict[str, Any] = spec.to_dict()
    found["tags"] = [{"name": stage} for stage in dict.fromkeys(c.stage for c in CALCULATIONS)]
    return found


SYSTEM = {
    "/v1": "Every calculation with its fields, bounds, defaults and units",
    "/v1/limits": "The common-practice limits and grades, each with its standing",
    "/v1/units": "The units of each kind of quantity",
    "/v1/materials": "Materials and their expansion coefficients",
    "/v1/sources": "The standards and books that figures rest on, what uses each, what was checked",
    "/v1/evidence": "Evidence of the diagnosis, what it says of each suspect and why, the rules",
    "/version": "Version of the service and of each calculation's arithmetic",
    "/health/live": "Whether the process is alive",
    "/health/ready": "Whether the service can answer",
    "/openapi.json": "This document",
}


def _system(path: str, summary: str) -> dict[str, Any]:
    content = {"application/json": {"schema": {"type": "object"}}}
    return {
        "summary": summary,
        "operationId": "get" + pascal(path.strip("/").replace("/", "_").replace(".", "_")),
        "tags": ["system"],
        "responses": {"200": {"description": summary, "content": content}, **failures("system")},
    }


def failures(method: str) -> dict[str, Any]:
    """Return the problem responses of an operation."""
    return {
        str(status): {"$ref": f"#/components/responses/Problem{status}"}
        for status in FAILURES[method]
    }


def _failure(status: int) -> dict[str, Any]:
    return {
        "description": problems.PAGES[problems.BY_STATUS[status]][0],
        "content": {problems.MEDIA_TYPE: {"schema": ref("Problem")}},
    }


def calculation_paths(calculation: Declared, components: Components) -> dict[str, Any]:
    """Return the paths of a calculation with their operations."""
    answer = answer_component(calculation, components)
    path = f"/v1/{calculation.name}"
    paths: dict[str, Any] = {path: {"post": _post(calculation, answer, components)}}
    if query.offers_get(calculation):
        paths[path]["get"] = _get(calculation, _answers(calculation, answer), "")
        for suffix, media_type in forms.SUFFIXES.items():
            paths[f"{path}{suffix}"] = {"get": _get(calculation, {media_type: STRING}, suffix)}
    for form in forms.further(calculation):
        paths[f"{path}{form.suffix}"] = _further(calculation, form)
    paths[f"{path}/batch"] = {"post": _batch(calculation, components)}
    return paths


def _about(calculation: Declared, operation: str) -> dict[str, Any]:
    return {
        "operationId": operation,
        "tags": [calculation.stage],
        "summary": calculation.title,
        "description": calculation.summary,
    }


CELLS = (
    " A spreadsheet cell that cannot show an error's body may add errors=text: an error is then"
    " one line of text, begun by #ERR, with status 200."
)
STRING = {"schema": {"type": "string"}}


def _answers(calculation: Declared, answer: str) -> dict[str, Any]:
    """Return the content of an answer in every form that Accept can ask for."""
    as_text = dict.fromkeys(forms.media_types(calculation)[1:], STRING)
    return {"application/json": {"schema": ref(answer)}, **as_text}


def _further(calculation: Declared, form: forms.Form) -> dict[str, Any]:
    """Return the operations of a suffix that only some calculations have."""
    name = f"{pascal(calculation.name)}{pascal(form.suffix.strip('.'))}"
    body = {"application/json": {"schema": ref(f"{pascal(calculation.name)}Request")}}
    found = {
        "post": {
            **_about(calculation, name),
            "summary": f"{calculation.title}: {form.words}",
            "parameters": [shaping_parameter("units")],
            "requestBody": {"required": True, "content": body},
            "responses": {
                "200": {"description": form.words, "content": {form.media_type: STRING}},
                **failures("post"),
            },
        }
    }
    if query.offers_get(calculation):
        found["get"] = _get(calculation, {form.media_type: STRING}, form.suffix)
    return found


def _post(calculation: Declared, answer: str, components: Components) -> dict[str, Any]:
    request = f"{pascal(calculation.name)}Request"
    components[request] = request_schema(calculation, components)
    content = {
        "application/json": {
            "schema": ref(request),
            "example": example(calculation.inputs),
        }
    }
    answers = _answers(calculation, answer)
    return {
        **_about(calculation, pascal(calculation.name)),
        "parameters": [shaping_parameter(name) for name in ("units", "trace")],
        "requestBody": {"required": True, "content": content},
        "responses": {"200": {"description": "the answer", "content": answers}, **failures("post")},
    }


def request_schema(calculation: Declared, components: Components) -> dict[str, Any]:
    """Return the schema of a request's body."""
    found = record(calculation.inputs, components)
    found["description"] = calculation.summary
    found["properties"] = {**found["properties"], **envelope_schema(calculation)}
    some = [
        {"anyOf": [{"required": [_public(calculation, name) for name in way]} for way in ways]}
        for ways in calculation.one_of
    ]
    return {**found, "allOf": some} if some else found


def _public(calculation: Declared, name: str) -> str:
    return asked(calculation.inputs)[name].public(name)


def _get(calculation: Declared, content: dict[str, Any], suffix: str) -> dict[str, Any]:
    shaping = query.options_of(suffix)
    # What the document calls an error is a 200 with it, so it is told in words alone.
    names = [name for name in query.SHAPING if name in shaping and name != "errors"]
    about = _about(calculation, f"get{pascal(calculation.name)}{pascal(suffix.strip('.'))}")
    if "errors" in shaping:
        about["description"] += CELLS
    return {
        **about,
        "parameters": [
            *field_parameters(calculation),
            *limit_parameters(calculation),
            *(shaping_parameter(name) for name in names),
        ],
        "responses": {
            "200": {"description": "the answer", "content": content},
            "304": {"description": "the answer is the one that the caller has"},
            **failures("get"),
        },
    }


def _batch(calculation: Declared, components: Components) -> dict[str, Any]:
    lines = "application/x-ndjson"
    content: dict[str, Any] = {lines: {"schema": lines_request(calculation)}}
    answers: dict[str, Any] = {lines: {"schema": lines_answer()}}
    if isinstance(calculation, Calculation) and query.offers_get(calculation):
        name = f"{pascal(calculation.name)}Batch"
        components[name] = batch_request(calculation, components)
        content = {
            "application/json": {"schema": ref(name)},
            "text/csv": {"schema": {"type": "string"}},
            **content,
        }
        answers = {
            "application/json": {"schema": ref("BatchAnswer")},
            "text/csv": {"schema": {"type": "string"}},
            **answers,
        }
    return {
        **_about(calculation, f"{pascal(calculation.name)}Batch"),
        "summary": f"{calculation.title}: many rows in one request",
        "parameters": [shaping_parameter("units")],
        "requestBody": {"required": True, "content": content},
        "responses": {
            "200": {
                "description": "an answer a row, in order; rows count from 1",
                "content": answers,
            },
            **failures("post"),
        },
    }
