"""Problems as ``application/problem+json`` (RFC 9457), and the pages that explain them."""

import json
from collections.abc import Mapping, Sequence
from typing import Any

from flask import Response, current_app, g, request
from werkzeug.exceptions import HTTPException

from ringland_service.api.faults import FieldError
from ringland_service.api.near import near
from ringland_service.api.refusals import MOST_FAULTS, cut, refusal

MEDIA_TYPE = "application/problem+json"
LONGEST_INSTANCE = 200
# All addresses begin alike, so only close ones are suggested.
ADDRESSES_ALIKE = 0.8

LISTED = (
    f"At most {MOST_FAULTS} faults are listed, sorted by place, and more counts the rest; a list of"
    " what is allowed stands once, and allowed_at of other entries points there."
)

# slug -> title, what it means, what to do.
PAGES: dict[str, tuple[str, str, str]] = {
    "unreadable": (
        "The request cannot be read",
        "The body is not JSON as the standard has it, or a field is unknown, missing, of the wrong"
        " type, or without a unit that its quantity has.",
        "Each entry of errors points at one place, says what is wrong and what is allowed."
        f" {LISTED}",
    ),
    "impossible": (
        "The request cannot be true",
        "It can be read, and says what cannot be: a number outside its bounds, or inputs that"
        " contradict each other.",
        "Each entry of errors names the field and its bounds; check the reading and its unit."
        f" {LISTED}",
    ),
    "not-found": (
        "There is nothing at this address",
        "The path names no calculation and no page of this service.",
        "GET /v1 lists every calculation with its path.",
    ),
    "method-not-allowed": (
        "This address does not take this method",
        "A calculation takes POST; it takes GET where its required inputs are single values.",
        "The Allow header lists what the address takes.",
    ),
    "not-acceptable": (
        "No such form of the answer",
        "The Accept header asks for a form that this answer does not have.",
        "Answers come as application/json, text/plain and text/csv; GET /v1 lists the forms of each"
        " calculation, pages and pictures among them.",
    ),
    "too-large": (
        "The request is too large",
        "The body is larger than the service reads in one request.",
        "Split the rows over several requests; GET /v1 states the limits.",
    ),
    "unsupported-media-type": (
        "This form of body is not read here",
        "The Content-Type header names a form that the address does not take.",
        "Send application/json; batches also take text/csv and application/x-ndjson.",
    ),
    "server-fault": (
        "The service failed",
        "This is a fault of the service, not of the request.",
        "Report the request_id; the same request will fail again until it is mended.",
    ),
}
BY_STATUS = {
    400: "unreadable",
    404: "not-found",
    405: "method-not-allowed",
    406: "not-acceptable",
    413: "too-large",
    415: "unsupported-media-type",
    422: "impossible",
    500: "server-fault",
}


def body(status: int, detail: str) -> dict[str, Any]:
    """Return the members that every problem has."""
    slug = BY_STATUS.get(status, "unreadable")
    found: dict[str, Any] = {
        "type": f"/problems/{slug}",
        "title": PAGES[slug][0],
        "status": status,
        "detail": detail,
        "instance": cut(request.path, LONGEST_INSTANCE),
        "request_id": g.get("request_id", ""),
    }
    return found


def of_faults(faults: Sequence[FieldError]) -> dict[str, Any]:
    """Return the members of a problem that says what is wrong with a request."""
    told = refusal(faults)
    found = body(status_of(faults), told.detail) | {"errors": told.entries}
    return found | {"more": told.more} if told.more else found


def status_of(faults: Sequence[FieldError]) -> int:
    """Return the status of several faults: any that cannot be read makes it 400."""
    return 400 if any(fault.status == 400 for fault in faults) else 422


def summary(faults: Sequence[FieldError]) -> str:
    """Return the faults in one line."""
    return refusal(faults).detail


def response(problem: Mapping[str, Any], headers: Mapping[str, str] | None = None) -> Response:
    """Return a problem as a response."""
    text = json.dumps(problem, ensure_ascii=False)
    status: int = problem["status"]
    found = Response(text.encode("utf-8", "replace"), status, content_type=MEDIA_TYPE)
    found.headers["Cache-Control"] = "no-store"
    for name, value in (headers or {}).items():
        found.headers[name] = value
    return found


def from_faults(faults: Sequence[FieldError]) -> Response:
    """Return the response to a request with faults."""
    return response(of_faults(faults))


def from_http(error: HTTPException) -> Response:
    """Return the response to an HTTP error, its headers (Allow, Retry-After) kept."""
    status = error.code or 500
    headers = {
        name: value
        for name, value in error.get_headers()
        if name.lower() not in ("content-type", "content-length")
    }
    slug = BY_STATUS.get(status)
    detail = " ".join(PAGES[slug][1:]) if slug else (error.description or "")
    if status == 404:
        detail += _near_address()
    return response(body(status, detail), headers)


def _near_address() -> str:
    """Return the question whether the address nearest to the one asked for was meant."""
    rules = current_app.url_map.iter_rules()
    known = sorted(rule.rule for rule in rules if not rule.arguments)
    found = near(request.path, known, ADDRESSES_ALIKE)
    return f" Did you mean {found}?" if found else ""
