"""Routes that serve the service itself: health, version, tables, document, docs, problem pages."""

import json
from html import escape
from importlib import resources
from typing import Any

from flask import Flask, Response, request
from werkzeug.exceptions import NotFound
from werkzeug.wrappers import Response as BaseResponse

from ringland_service import __version__
from ringland_service.api import problems
from ringland_service.api.faults import Faulty
from ringland_service.api.openapi import listing, source_list
from ringland_service.api.openapi.document import document
from ringland_service.api.reading.query import unknown_parameters
from ringland_service.core.calculations import CALCULATIONS

TABLES = {
    "/v1": listing.calculations,
    "/v1/limits": listing.limits,
    "/v1/units": listing.units,
    "/v1/materials": listing.materials,
    "/v1/sources": source_list.sources,
    "/v1/evidence": listing.evidence,
}
PUBLIC = "public, max-age=3600"
DOCS_POLICY = "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:"
ASSETS = {
    "swagger-ui.css": "text/css",
    "swagger-ui-bundle.js": "text/javascript",
    "favicon-32x32.png": "image/png",
}


def register_system(app: Flask) -> None:
    """Register the system routes; tables and the document are made once, at start."""
    for path, make in TABLES.items():
        app.add_url_rule(path, f"table_{path}", _constant(make()), methods=["GET"])
    app.add_url_rule("/openapi.json", "openapi", _constant(document()), methods=["GET"])
    app.add_url_rule("/version", "version", _constant(version()), methods=["GET"])
    app.add_url_rule("/health/live", "live", _health, methods=["GET"])
    app.add_url_rule("/health/ready", "ready", _health, methods=["GET"])
    app.add_url_rule("/docs", "docs", _docs, methods=["GET"])
    app.add_url_rule("/docs/<name>", "docs_asset", _asset, methods=["GET"])
    app.add_url_rule("/problems/<slug>", "problem", _problem, methods=["GET"])


def version() -> dict[str, Any]:
    """Return the version of the service and of each calculation's arithmetic."""
    return {"version": __version__, "formulas": {c.name: c.formulas for c in CALCULATIONS}}


def _constant(value: Any) -> Any:
    body = json.dumps(value, ensure_ascii=False, allow_nan=False)

    def get() -> BaseResponse:
        _no_parameters()
        response = Response(body, content_type="application/json")
        response.headers["Cache-Control"] = PUBLIC
        response.add_etag()
        return response.make_conditional(request)

    return get


def _no_parameters() -> None:
    faults = unknown_parameters(request.args)
    if faults:
        raise Faulty(faults)


def _health() -> Response:
    _no_parameters()
    return Response('{"status": "ok"}', content_type="application/json")


PAGE = """<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>{title}</title>{head}</head>
<body>{body}</body>
</html>
"""


def _docs() -> Response:
    head = '<link rel="stylesheet" href="/docs/swagger-ui.css">'
    body = (
        '<div id="swagger-ui"></div><script src="/docs/swagger-ui-bundle.js"></script>'
        '<script src="/docs/start.js"></script>'
    )
    page = PAGE.format(title="Ringland: the calculations", head=head, body=body)
    return _page(page, "text/html; charset=utf-8")


START = "SwaggerUIBundle({url: '/openapi.json', dom_id: '#swagger-ui', deepLinking: true});"


def _asset(name: str) -> Response:
    if name == "start.js":
        return _page(START, "text/javascript; charset=utf-8")
    if name not in ASSETS:
        raise NotFound
    body = resources.files("flask_swagger_ui").joinpath("dist", name).read_bytes()
    return _page(body, ASSETS[name])


def _page(body: str | bytes, content_type: str) -> Response:
    response = Response(body, content_type=content_type)
    response.headers["Content-Security-Policy"] = DOCS_POLICY
    response.headers["Cache-Control"] = PUBLIC
    return response


def _problem(slug: str) -> Response:
    if slug not in problems.PAGES:
        raise NotFound
    title, means, remedy = map(escape, problems.PAGES[slug])
    body = f"<h1>{title}</h1><p>{means}</p><p>{remedy}</p>"
    return _page(PAGE.format(title=title, head="", body=body), "text/html; charset=utf-8")
