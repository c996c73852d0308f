"""Problems as ``application/problem+json`` (RFC 9457), and the pages that explain them."""

import json
from collections.abc import Mapping, Sequence
from typing import Any

from flask import Response, g, request
from werkzeug.exceptions import HTTPException

from ringland_service.api.faults import Fault

MEDIA_TYPE = "application/problem+json"

# slug -> title, what it means, what to do.
PAGES: dict[str, tuple[str, str, str]] = {
    "unreadable": (
        "The request cannot be read",
        "The body is not JSON as the standard has it, or a field is unknown, missing, of the wrong"
        " type, or without a unit that its quantity has.",
        "Each entry of errors points at one place, says what is wrong and what is allowed.",
    ),
    "impossible": (
        "The request cannot be true",
        "It can be read, and says what cannot be: a number outside its bounds, or inputs that"
        " contradict each other.",
        "Each entry of errors names the field and its bounds; check the reading and its unit.",
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


def body(status: int, detail: str, faults: Sequence[Fault] = ()) -> dict[str, Any]:
    """Return the members of a problem."""
    slug = BY_STATUS.get(status, "unreadable")
    found: dict[str, Any] = {
        "type": f"/problems/{slug}",
        "title": PAGES[slug][0],
        "status": status,
        "detail": detail,
        "instance": request.path,
        "request_id": g.get("request_id", ""),
    }
    if faults:
        found["errors"] = [entry(fault) for fault in faults]
    return found


def entry(fault: Fault) -> dict[str, Any]:
    """Return a fault as an entry of ``errors``; pointers in URI-fragment form.

    A fault that lies between several fields lists them all under ``pointers``, its own first.
    """
    found = {
        "code": fault.code,
        "pointer": f"#{fault.pointer}",
        "detail": fault.detail,
        "allowed": fault.allowed,
    }
    if fault.also:
        found["pointers"] = [f"#{pointer}" for pointer in (fault.pointer, *fault.also)]
    return found


def status_of(faults: Sequence[Fault]) -> int:
    """Return the status of several faults: any that cannot be read makes it 400."""
    return 400 if any(fault.status == 400 for fault in faults) else 422


def summary(faults: Sequence[Fault]) -> str:
    """Return the faults in one line."""
    shown = "; ".join(f"{f.pointer.lstrip('/') or 'body'}: {f.detail}" for f in faults[:3])
    more = len(faults) - 3
    return f"{shown}; and {more} more" if more > 0 else shown


def response(
    status: int, detail: str, faults: Sequence[Fault] = (), headers: Mapping[str, str] | None = None
) -> Response:
    """Return a problem as a response."""
    text = json.dumps(body(status, detail, faults), ensure_ascii=False)
    found = Response(text.encode("utf-8", "replace"), status, content_type=MEDIA_TYPE)
    found.headers["Cache-Control"] = "no-store"
    for name, value in (headers or {}).items():
        found.headers[name] = value
    return found


def from_faults(faults: Sequence[Fault]) -> Response:
    """Return the response to a request with faults."""
    return response(status_of(faults), summary(faults), faults)


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
    return response(status, detail, headers=headers)
