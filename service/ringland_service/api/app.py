"""The Flask application: configuration, request ids, headers, errors."""

import re
import secrets
import time
from typing import Any

from flask import Flask, Response, current_app, g, request
from werkzeug.exceptions import HTTPException

from ringland_service.api import problems
from ringland_service.api.faults import Faulty
from ringland_service.api.reading.row_budget import batch_seconds
from ringland_service.api.routes.calculation_routes import register_calculations
from ringland_service.api.routes.system_routes import register_system

MOST_BYTES = 8 * 1024 * 1024
_REQUEST_ID = re.compile(r"[A-Za-z0-9._-]{1,128}")

DEFAULTS: dict[str, Any] = {
    "MAX_CONTENT_LENGTH": MOST_BYTES,
    "PROPAGATE_EXCEPTIONS": False,
    "TRAP_HTTP_EXCEPTIONS": False,
}


def create_app(config: dict[str, Any] | None = None) -> Flask:
    """Return the application.

    Parameters
    ----------
    config : dict, optional
        Flask settings that win over the defaults, for tests say. Of its own the service has
        ``BATCH_SECONDS``, how long a batch may answer rows [s], and ``CLOCK``, what tells the time.

    Raises
    ------
    ValueError
        Where the variable of the server's timeout is no whole number of at least 1.
    """
    app = Flask("ringland_service", static_folder=None)
    app.config.update(DEFAULTS, BATCH_SECONDS=batch_seconds(), CLOCK=time.monotonic)
    app.config.update(config or {})
    app.url_map.strict_slashes = True
    app.url_map.merge_slashes = False
    app.before_request(_name_request)
    app.after_request(_headers)
    app.register_error_handler(Faulty, _faulty)
    app.register_error_handler(HTTPException, _http)
    app.register_error_handler(Exception, _failed)
    register_system(app)
    register_calculations(app)
    return app


def _name_request() -> None:
    given = request.headers.get("X-Request-ID")
    known = given is not None and _REQUEST_ID.fullmatch(given)
    g.request_id = given if known else secrets.token_hex(16)


def _headers(response: Response) -> Response:
    headers = response.headers
    headers.add("X-Request-ID", g.request_id)
    headers.add("X-Content-Type-Options", "nosniff")
    if "Content-Security-Policy" not in headers:
        headers.add("Content-Security-Policy", "default-src 'none'")
    if "Cache-Control" not in headers:
        headers.add("Cache-Control", "no-store")
    return response


def _faulty(error: Faulty) -> Response:
    if request.args.get("errors") == "text" and request.path.endswith(".txt"):
        text = f"#ERR {problems.summary(error.faults)}"
        return Response(text, 200, content_type="text/plain; charset=utf-8")
    return problems.from_faults(error.faults)


def _http(error: HTTPException) -> Response:
    return problems.from_http(error)


def _failed(error: Exception) -> Response:
    current_app.logger.exception("request %s failed", g.get("request_id", ""), exc_info=error)
    slug = problems.PAGES["server-fault"]
    return problems.response(problems.body(500, f"{slug[1]} {slug[2]}"))
