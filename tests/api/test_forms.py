"""The forms that only some calculations have: pictures and pages, by Accept and by suffix."""

from typing import Any

import pytest
from asking import PROBLEM, problem, strict
from flask.testing import FlaskClient

from ringland_service.api.reading.query import offers_get
from ringland_service.api.shapes.examples import example
from ringland_service.api.writing.forms import FURTHER, Form, media_types
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Declared

# What browsers send (from memory).
BROWSER = "text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,*/*;q=0.8"
WITH_MORE = [(BY_NAME[name], form) for name, form in FURTHER.items() if name in BY_NAME]
each_form = pytest.mark.parametrize(
    ("calculation", "form"), WITH_MORE, ids=[calculation.name for calculation, _ in WITH_MORE]
)


@each_form
def test_accept_and_suffix_give_the_same(
    client: FlaskClient, calculation: Declared, form: Form
) -> None:
    path, asked = f"/v1/{calculation.name}", example(calculation.inputs)
    by_accept = client.post(path, json=asked, headers={"Accept": form.media_type})
    headers = {"Accept": "application/json"}
    by_suffix = client.post(f"{path}{form.suffix}", json=asked, headers=headers)
    for answer in (by_accept, by_suffix):
        assert answer.status_code == 200, answer.text
        assert answer.content_type == f"{form.media_type}; charset=utf-8"
        assert answer.headers["Cache-Control"] == "no-store"
    assert by_accept.data == by_suffix.data
    assert client.post(path, json=asked).mimetype == "application/json"


@each_form
def test_units_of_the_answer(client: FlaskClient, calculation: Declared, form: Form) -> None:
    path, asked = f"/v1/{calculation.name}{form.suffix}", example(calculation.inputs)
    metric, us = (client.post(f"{path}?units={u}", json=asked).text for u in ("metric", "us"))
    assert " mm" in metric
    assert " in" in us
    assert us != metric


@each_form
def test_get_where_the_calculation_offers_it(
    client: FlaskClient, calculation: Declared, form: Form
) -> None:
    answer = client.get(f"/v1/{calculation.name}{form.suffix}")
    if offers_get(calculation):
        assert answer.status_code in (200, 400, 422)
    else:
        problem(answer, 405)


@each_form
@pytest.mark.parametrize(
    ("query", "body", "kind", "status"),
    [
        ("", "{", "application/json", 400),
        ("", '{"nothing": 1}', "application/json", 400),
        ("?pick=max", "{}", "application/json", 400),
        ("?units=furlongs", "{}", "application/json", 400),
        ("", "{}", "text/plain", 415),
    ],
)
def test_errors_stay_problems(
    client: FlaskClient,
    calculation: Declared,
    form: Form,
    query: str,
    body: str,
    kind: str,
    status: int,
) -> None:
    path = f"/v1/{calculation.name}"
    headers = {"Accept": form.media_type}
    suffixed = client.post(f"{path}{form.suffix}{query}", data=body, content_type=kind)
    accepted = client.post(f"{path}{query}", data=body, content_type=kind, headers=headers)
    for answer in (suffixed, accepted):
        assert problem(answer, status)
        assert answer.content_type == PROBLEM


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_no_form_where_there_is_none(client: FlaskClient, calculation: Declared) -> None:
    for form in {form.media_type: form for form in FURTHER.values()}.values():
        if form.media_type in media_types(calculation):
            continue
        headers = {"Accept": form.media_type}
        problem(client.post(f"/v1/{calculation.name}", json={}, headers=headers), 406)
        problem(client.post(f"/v1/{calculation.name}{form.suffix}", json={}), 404)


def test_a_browser_gets_the_page(client: FlaskClient) -> None:
    asked: dict[str, Any] = {"about": {"job": "1"}}
    page = client.post("/v1/job-card", json=asked, headers={"Accept": BROWSER})
    assert page.mimetype == "text/html"
    survey = example(BY_NAME["bore-survey"].inputs)
    other = client.post("/v1/bore-survey", json=survey, headers={"Accept": BROWSER})
    assert other.mimetype == "application/json"


def test_list_and_document_name_the_forms(client: FlaskClient) -> None:
    listed = {c["name"]: c["forms"] for c in strict(client.get("/v1"))["calculations"]}
    paths = strict(client.get("/openapi.json"))["paths"]
    for calculation in CALCULATIONS:
        forms = listed[calculation.name]
        assert forms[:3] == ["application/json", "text/plain", "text/csv"]
        answers = paths[f"/v1/{calculation.name}"]["post"]["responses"]["200"]["content"]
        assert list(answers) == forms
    for calculation, form in WITH_MORE:
        assert listed[calculation.name][3:] == [form.media_type]
        suffixed = paths[f"/v1/{calculation.name}{form.suffix}"]["post"]["responses"]["200"]
        assert list(suffixed["content"]) == [form.media_type]
