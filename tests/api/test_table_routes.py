"""The tables, the document, the pages: what a user builds a form, a client or a check from."""

import json
import re
from pathlib import Path
from typing import Any

import pytest
from asking import ENGINE, get, operations, post, problem, strict
from flask.testing import FlaskClient
from openapi_spec_validator import validate

from ringland_service import __version__
from ringland_service.api import problems
from ringland_service.api.reading.query import offers_get
from ringland_service.api.routes.system_routes import ASSETS
from ringland_service.api.shapes.examples import example
from ringland_service.api.writing.forms import further
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Declared
from ringland_service.core.tables.sources import SOURCES
from ringland_service.units import TABLE

TABLES = ["/v1", "/v1/limits", "/v1/units", "/v1/materials", "/v1/sources", "/v1/evidence"]


def read(client: FlaskClient, path: str) -> Any:
    """Return the JSON at an address."""
    answer = client.get(path)
    assert answer.status_code == 200
    return strict(answer)


@pytest.mark.parametrize("path", [*TABLES, "/version", "/openapi.json"])
def test_table_is_public_and_tagged(client: FlaskClient, path: str) -> None:
    answer = client.get(path)
    assert answer.mimetype == "application/json"
    assert answer.headers["Cache-Control"] == "public, max-age=3600"
    again = client.get(path, headers={"If-None-Match": answer.headers["ETag"]})
    assert again.status_code == 304
    assert again.data == b""


def test_list_of_calculations(client: FlaskClient) -> None:
    found = read(client, "/v1")
    assert [c["name"] for c in found["calculations"]] == [c.name for c in CALCULATIONS]
    assert found["default_rule"] == "guard_2u"
    assert set(found["standings"]) == {"maker", "common_practice", "standard", "computed"}
    for listed, calculation in zip(found["calculations"], CALCULATIONS, strict=True):
        assert listed["path"] == f"/v1/{calculation.name}"
        assert listed["get"] == offers_get(calculation)
        assert listed["stage"]
        assert listed["summary"]
        assert ("results" in listed) != ("parts" in listed)


def every_field(fields: list[Any]) -> list[Any]:
    """Return fields, and those within their sections and records."""
    return [f for field in fields for f in (field, *every_field(field.get("fields", [])))]


def test_list_is_enough_to_build_a_form(client: FlaskClient) -> None:
    for listed in read(client, "/v1")["calculations"]:
        for field in every_field(listed["fields"]):
            assert field["words"]
            assert field["shape"]
            if field["shape"] in ("quantity", "readings"):
                assert field["unit"] == field["units"][0]
                assert field["low"] < field["high"]
            if field["shape"] == "choice":
                assert all(field["choices"].values())


@pytest.mark.parametrize("name", ["displacement", "compression-level", "ring-gap"])
def test_a_form_filled_from_the_list_is_answered(client: FlaskClient, name: str) -> None:
    """The list alone leads to a request: examples in their units, counts, choices, flags."""
    (listed,) = [c for c in read(client, "/v1")["calculations"] if c["name"] == name]
    asked = {
        f["name"]: {"value": f["example"], "unit": f["unit"]}
        if f["shape"] == "quantity"
        else f["example"]
        for f in listed["fields"]
        if f["example"] is not None
    }
    assert post(client, name, asked)["result"]


def test_bounds_in_the_list_are_those_that_hold(client: FlaskClient) -> None:
    (listed,) = [c for c in read(client, "/v1")["calculations"] if c["name"] == "displacement"]
    (bore,) = [f for f in listed["fields"] if f["name"] == "bore"]
    assert (bore["low"], bore["high"]) == (20, 160)
    for value, status in ((bore["low"], 200), (bore["high"], 200), (bore["high"] + 1, 422)):
        asked = {**ENGINE, "bore": {"value": value, "unit": bore["unit"]}}
        assert client.post("/v1/displacement", json=asked).status_code == status


def test_units_with_their_factors(client: FlaskClient) -> None:
    found = {entry["kind"]: entry for entry in read(client, "/v1/units")["kinds"]}
    assert found.keys() == TABLE.keys()
    units = {u["symbol"]: u for u in found["length"]["units"]}
    assert units["in"]["factor"] == 25.4
    assert found["length"]["aliases"]["inch"] == "in"
    assert found["temperature"]["us"] == "degF"
    for name, entry in found.items():
        listed = {u["symbol"] for u in entry["units"]} | entry["aliases"].keys()
        assert listed == TABLE[name].keys()


def test_limits_with_their_standing(client: FlaskClient) -> None:
    found = read(client, "/v1/limits")
    checks = {c["name"] for one in read(client, "/v1")["calculations"] for c in one["checks"]}
    for row in found["limits"]:
        assert row["standing"] in ("common_practice", "standard")
        unsourced = row["source"] == "common practice, no source"
        assert unsourced == (row["standing"] == "common_practice"), row["id"]
        assert row["source"]
        assert row["check"] in checks
        assert row["low"] is not None or row["high"] is not None
    for grade in found["grades"]:
        assert grade["standing"] == "common_practice"
        assert grade["steps"]


def test_materials_with_their_sources(client: FlaskClient) -> None:
    materials = read(client, "/v1/materials")["materials"]
    assert len(materials) >= 7
    for row in materials:
        assert 8e-6 <= row["alpha"] <= 26e-6
        assert row["source"]


def test_sources_with_what_uses_them(client: FlaskClient) -> None:
    found = {row["token"]: row for row in read(client, "/v1/sources")["sources"]}
    assert found.keys() == SOURCES.keys()
    assert found["iso_898_1_proof_stress"] == {
        "token": "iso_898_1_proof_stress",
        "title": "ISO 898-1",
        "edition": None,
        "clause": "proof stress of the property classes",
        "checked": None,
        "used_by": {
            "calculations": ["torque-steps", "job-card"],
            "limits": [],
            "materials": [],
            "methods": [],
        },
    }
    assert found["jcgm_106_rules"]["edition"] == "2012"
    assert found["jcgm_106_rules"]["used_by"]["methods"] == ["verdicts"]
    assert "grey_iron" in found["material_tables"]["used_by"]["materials"]
    assert "clamp_over_proof.reusable" in found["machine_design_preload"]["used_by"]["limits"]


def test_an_answer_marks_what_the_list_calls_unchecked(client: FlaskClient) -> None:
    rows = {row["token"]: row for row in read(client, "/v1/sources")["sources"]}
    (listed,) = [c for c in read(client, "/v1")["calculations"] if c["name"] == "torque-steps"]
    told = {r["name"]: r["source"] for r in listed["results"]}
    assert rows["iso_724"]["checked"] is None
    assert rows["iso_898_1_stress_area"]["checked"]
    assert told["stress_area_used"] == (
        "ISO 724, basic thread dimensions (from memory); ISO 898-1, stress area"
    )


def test_sources_take_no_parameter(client: FlaskClient) -> None:
    problem(client.get("/v1/sources?checked=no"), 400)


def test_version(client: FlaskClient) -> None:
    found = read(client, "/version")
    assert found["version"] == __version__
    assert found["formulas"] == {c.name: c.formulas for c in CALCULATIONS}


@pytest.mark.parametrize("path", ["/health/live", "/health/ready"])
def test_health(client: FlaskClient, path: str) -> None:
    answer = client.get(path)
    assert strict(answer) == {"status": "ok"}
    assert answer.headers["Cache-Control"] == "no-store"


def test_document_is_openapi(client: FlaskClient) -> None:
    document = read(client, "/openapi.json")
    validate(document)
    assert document["openapi"] == "3.1.0"
    assert document["info"]["version"] == __version__
    ids = [operation["operationId"] for _, _, operation in operations(document)]
    assert len(ids) == len(set(ids))


def test_document_lists_every_address(client: FlaskClient) -> None:
    """No route without its entry, no entry without its route; docs and pages are for people."""
    listed = {(path, method.upper()) for path, method, _ in operations(document(client))}
    routes = {
        (rule.rule, method)
        for rule in client.application.url_map.iter_rules()
        for method in (rule.methods or set()) & {"GET", "POST", "PUT", "DELETE", "PATCH"}
    }
    assert {r for r in routes - listed if not r[0].startswith(("/docs", "/problems"))} == set()
    assert listed <= routes


def document(client: FlaskClient) -> Any:
    """Return the OpenAPI document."""
    return read(client, "/openapi.json")


def test_every_status_has_its_page(client: FlaskClient) -> None:
    shared = document(client)["components"]["responses"]
    for _, _, operation in operations(document(client)):
        for status, told in operation["responses"].items():
            if status not in ("200", "304"):
                response = shared[told["$ref"].rpartition("/")[2]]
                assert list(response["content"]) == ["application/problem+json"]
                assert int(status) in problems.BY_STATUS


def bodies(client: FlaskClient) -> list[tuple[str, Any]]:
    found = []
    for path, _, operation in operations(document(client)):
        content = operation.get("requestBody", {}).get("content", {}).get("application/json", {})
        if "example" in content:
            found.append((path, content["example"]))
    return found


def test_every_example_of_a_body_is_answered(client: FlaskClient) -> None:
    found = bodies(client)
    assert {path for path, _ in found} == {f"/v1/{c.name}" for c in CALCULATIONS}
    for path, body in found:
        answer = client.post(path, json=body)
        assert answer.status_code == 200, answer.text


def test_every_example_of_a_parameter_is_answered(client: FlaskClient) -> None:
    """All examples of an operation together make one sound request."""
    asked = 0
    for path, method, operation in operations(document(client)):
        if method != "get" or not path.startswith("/v1/") or path in TABLES:
            continue
        query = {
            p["name"]: json.dumps(p["example"]) if isinstance(p["example"], bool) else p["example"]
            for p in operation["parameters"]
            if "example" in p
        }
        answer = client.get(path, query_string=query)
        assert answer.status_code == 200, answer.text
        asked += 1
    assert asked == sum(3 + len(further(c)) for c in CALCULATIONS if offers_get(c))


@pytest.mark.parametrize(
    "calculation", [c for c in CALCULATIONS if offers_get(c)], ids=lambda c: c.name
)
def test_examples_of_body_and_address_are_one_question(
    client: FlaskClient, calculation: Declared
) -> None:
    item = document(client)["paths"][f"/v1/{calculation.name}"]["get"]
    query = {
        p["name"]: json.dumps(p["example"]) if isinstance(p["example"], bool) else p["example"]
        for p in item["parameters"]
        if "example" in p
    }
    body = {k: v for k, v in example(calculation.inputs).items() if k in query}
    assert strict(get(client, calculation.name, query)) == post(client, calculation.name, body)


def test_docs_load_from_here_alone(client: FlaskClient) -> None:
    page = client.get("/docs")
    assert page.mimetype == "text/html"
    links = re.findall(r'(?:src|href)="([^"]+)"', page.text)
    assert links
    assert "http" not in page.text
    for link in links:
        assert link.startswith("/docs/")
        assert client.get(link).status_code == 200
    assert "'self'" in page.headers["Content-Security-Policy"]
    assert "http" not in page.headers["Content-Security-Policy"]


@pytest.mark.parametrize("name", [*ASSETS, "start.js"])
def test_docs_assets(client: FlaskClient, name: str) -> None:
    answer = client.get(f"/docs/{name}")
    assert answer.status_code == 200
    assert len(answer.data) > 50
    if name.endswith(".css"):
        assert not re.search(rb"url\(['\"]?https?:|@import", answer.data)
    if name == "start.js":
        assert "/openapi.json" in answer.text
        assert "http" not in answer.text


@pytest.mark.parametrize("name", ["../app.py", "%2e%2e%2fapp.py", "index.html", "..%5capp.py"])
def test_docs_serve_nothing_else(client: FlaskClient, name: str) -> None:
    problem(client.get(f"/docs/{name}"), 404)


@pytest.mark.parametrize("slug", problems.PAGES)
def test_problem_page(client: FlaskClient, slug: str) -> None:
    page = client.get(f"/problems/{slug}")
    assert page.status_code == 200
    assert page.mimetype == "text/html"
    assert all(text.replace("'", "&#x27;") in page.text for text in problems.PAGES[slug])


def test_problem_page_that_is_not(client: FlaskClient) -> None:
    problem(client.get("/problems/nothing"), 404)


def test_committed_document_is_the_one_served(client: FlaskClient) -> None:
    committed = Path(__file__).parents[2] / "openapi" / "openapi.json"
    assert json.loads(committed.read_text("utf-8")) == document(client)
