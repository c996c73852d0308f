"""Routes of the calculations: POST, GET where inputs have a text, batch; suffixes and Accept."""

import hashlib
import json
from collections.abc import Callable
from typing import Any, cast

from flask import Flask, Response, current_app, request, stream_with_context
from werkzeug.exceptions import NotAcceptable, UnsupportedMediaType
from werkzeug.wrappers import Response as BaseResponse

from ringland_service.api.faults import Faulty
from ringland_service.api.reading import batch_csv, query
from ringland_service.api.reading.body import whole_body
from ringland_service.api.reading.json_reader import read as read_json
from ringland_service.api.reading.list_text import placed
from ringland_service.api.routes.answering import answered, answered_batch, answered_lines
from ringland_service.api.writing import batch_render, flat_table, forms
from ringland_service.api.writing.forms import CSV, JSON, TEXT
from ringland_service.api.writing.job_text import job_text
from ringland_service.api.writing.picking import picked
from ringland_service.api.writing.printed import printed
from ringland_service.api.writing.single_text import single_text
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation, Composite, Declared
from ringland_service.engine.deadline import Deadline

LINES = "application/x-ndjson"
PUBLIC = "public, max-age=3600"


def register_calculations(app: Flask) -> None:
    """Register the routes of every calculation."""
    for calculation in CALCULATIONS:
        path = f"/v1/{calculation.name}"
        posted = ("", *(form.suffix for form in forms.further(calculation)))
        asked = ("", *forms.suffixes(calculation)) if query.offers_get(calculation) else ()
        for suffix in posted:
            rule, view = f"{path}{suffix}", _post(calculation, suffix)
            app.add_url_rule(rule, f"post {rule}", view, methods=["POST"])
        for suffix in asked:
            rule, view = f"{path}{suffix}", _get(calculation, suffix)
            app.add_url_rule(rule, f"get {rule}", view, methods=["GET"])
        app.add_url_rule(f"{path}/batch", f"batch {path}", _batch(calculation), methods=["POST"])


def _wanted(calculation: Declared, suffix: str) -> str:
    """Return the form of the answer: what the suffix says, else what Accept likes best."""
    by_suffix = forms.suffixes(calculation).get(suffix)
    return by_suffix or acceptable(forms.media_types(calculation))


def _post(calculation: Declared, suffix: str) -> Callable[[], BaseResponse]:
    def post() -> BaseResponse:
        wanted = _wanted(calculation, suffix)
        options = query.shaping(request.args.items(multi=True), suffix)
        insist_on_type(JSON)
        found = answered(calculation, read_json(whole_body()), options)
        return represented(calculation, found, wanted, options)

    return post


def _get(calculation: Declared, suffix: str) -> Callable[[], BaseResponse]:
    def get() -> BaseResponse:
        wanted = _wanted(calculation, suffix)
        data, options = query.as_json(calculation, request.args.items(multi=True), suffix)
        try:
            found = answered(calculation, data, options)
        except Faulty as error:
            raise Faulty(placed(error.faults, query.readings_of(calculation))) from error
        response = represented(calculation, found, wanted, options)
        digest = hashlib.sha256(response.get_data()).hexdigest()[:24]
        response.set_etag(f"{calculation.formulas}-{digest}")
        response.headers["Cache-Control"] = PUBLIC
        response.vary.add("Accept")
        return response.make_conditional(request)

    return get


def _batch(calculation: Declared) -> Callable[[], BaseResponse]:
    columns = isinstance(calculation, Calculation) and query.offers_get(calculation)

    def post() -> BaseResponse:
        deadline = Deadline(current_app.config["BATCH_SECONDS"], current_app.config["CLOCK"])
        kind = insist_on_type(*((JSON, CSV, LINES) if columns else (LINES,)))
        if kind == LINES:
            options = query.shaping(request.args.items(multi=True), "batch")
            body, logger = whole_body(), current_app.logger
            lines = answered_lines(calculation, body, options, deadline, logger)
            return Response(stream_with_context(lines), content_type=LINES)
        assert isinstance(calculation, Calculation)  # noqa: S101 - as ``columns`` says
        if kind == CSV:
            data, options = batch_csv.read(calculation, whole_body(), request.args)
            wanted = acceptable((CSV, JSON))
        else:
            options = query.shaping(request.args.items(multi=True), "batch")
            data, wanted = read_json(whole_body()), acceptable((JSON, CSV))
        found = answered_batch(calculation, data, deadline)
        system = options.get("units", "metric")
        if wanted == CSV:
            table = batch_render.table(found, system)
            return Response(table, content_type=f"{CSV}; charset=utf-8")
        return as_json(batch_render.answer(found, system))

    return post


def acceptable(forms: tuple[str, ...]) -> str:
    """Return the form of the answer that the Accept header likes best.

    Raises
    ------
    NotAcceptable
        Where it likes none of them.
    """
    header = request.headers.get("Accept")
    if header is None or header == "*/*":
        return forms[0]
    best = request.accept_mimetypes.best_match(forms)
    if best is None:
        raise NotAcceptable
    return best


def insist_on_type(*types: str) -> str:
    """Return the media type of the body, one of ``types``; UTF-8 where it names a charset.

    Raises
    ------
    UnsupportedMediaType
    """
    given = request.mimetype
    charset = request.mimetype_params.get("charset", "utf-8").lower()
    if given not in types or charset not in ("utf-8", "utf8", "us-ascii"):
        raise UnsupportedMediaType
    return given


def as_json(found: dict[str, Any]) -> Response:
    """Return an answer as a JSON response."""
    return Response(ENCODE(found), content_type=JSON)


# Made once: json.dumps would build an encoder for each answer.
ENCODE = json.JSONEncoder(ensure_ascii=False, allow_nan=False).encode


def represented(
    calculation: Declared, found: dict[str, Any], wanted: str, options: dict[str, str]
) -> Response:
    """Return an answer in the form wanted; with ``pick``, the one number alone as text."""
    pick = options.get("pick")
    if wanted == TEXT:
        body = as_text(calculation, found) if pick is None else picked(calculation, found, pick)
        return Response(body, content_type=f"{TEXT}; charset=utf-8")
    if wanted == CSV:
        table = flat_table.table(calculation, printed(calculation, found))
        return Response(table, content_type=f"{CSV}; charset=utf-8")
    for form in forms.further(calculation):
        if wanted == form.media_type:
            body = form.render(calculation, found)
            content_type = f"{form.media_type}; charset=utf-8"
            return Response(body, content_type=content_type, headers=dict(form.headers))
    return as_json(found)


def as_text(calculation: Declared, found: dict[str, Any]) -> str:
    """Return an answer for people."""
    if isinstance(calculation, Composite):
        return job_text(calculation, found)
    return single_text(cast(Calculation, calculation), found)
