"""``defaults: off`` at the door: instruments, whole jobs, tables, and every representation."""

import json
from pathlib import Path
from typing import Any

import pytest
from asking import PLAIN, post
from flask.testing import FlaskClient

from cards import JOBS
from ringland_service.api.shapes.examples import example
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.instruments import TYPICAL
from ringland_service.engine.standing_in import CODE
from usual_figures import CHANGES, changed

DEMO = Path(__file__).parents[2] / "demo_data"
STAGES = {
    str(path.relative_to(DEMO)): json.loads(path.read_text("utf-8"))
    for path in sorted(DEMO.rglob("*.json"))
}
ALL = {**STAGES, **{name: job for name, job in JOBS.items() if name != "hostile"}}


def off(asked: dict[str, Any]) -> dict[str, Any]:
    """Return the question with common practice switched off."""
    return {**asked, "defaults": "off"}


def comparable(answer: dict[str, Any]) -> dict[str, Any]:
    """Return an answer without what differs from call to call."""
    return {name: value for name, value in answer.items() if name != "request_id"}


@pytest.mark.parametrize("name", ALL)
def test_no_job_moves_with_common_practice(client: FlaskClient, name: str) -> None:
    before = post(client, "job-card", off(ALL[name]))
    with changed(tuple(CHANGES)):
        after = post(client, "job-card", off(ALL[name]))
    assert comparable(before) == comparable(after)


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_no_example_moves_with_common_practice(
    client: FlaskClient, calculation: Calculation
) -> None:
    asked = off(example(calculation.inputs))
    before = post(client, calculation.name, asked)
    with changed(tuple(CHANGES)):
        after = post(client, calculation.name, asked)
    assert comparable(before) == comparable(after)


def measured(kind: str, **own: Any) -> tuple[str, dict[str, Any]]:
    """Return a question with one reading taken by an instrument of a kind."""
    reads = TYPICAL[kind]["reads"]
    name, field, value, others = {
        "length": ("displacement", "bore", {"value": 68.0, "unit": "mm"},
                   {"stroke": {"value": 66.0, "unit": "mm"}}),
        "volume": ("compression-ratio", "burette_fill", {"value": 31.2, "unit": "cc"},
                   {"bore": {"value": 68.0, "unit": "mm"}, "stroke": {"value": 66.0, "unit": "mm"},
                    "plug_diameter": {"value": 13.35, "unit": "mm"},
                    "plug_reach": {"value": 19.0, "unit": "mm"}}),
        "pressure_gauge": ("wet-gain", "dry", {"value": 660.0, "unit": "kPa"},
                           {"wet": {"value": 930.0, "unit": "kPa"}}),
    }[reads]  # fmt: skip
    instrument = {"id": "it", "kind": kind, **own}
    return name, {
        **others,
        field: {**value, "instrument": "it"},
        "measuring": {"instruments": [instrument]},
    }


def uncertainties(answer: dict[str, Any]) -> list[float]:
    """Return the uncertainties of the results."""
    found = [value for value in answer["result"].values() if isinstance(value, dict)]
    return [value["uncertainty"] for value in found if "uncertainty" in value]


@pytest.mark.parametrize("kind", TYPICAL)
def test_the_usual_errors_of_an_instrument_stay_out(client: FlaskClient, kind: str) -> None:
    name, asked = measured(kind)
    usual = post(client, name, asked)
    with changed((f"instruments {kind}",)):
        assert uncertainties(post(client, name, asked)) != uncertainties(usual)
    without = post(client, name, off(asked))
    assert uncertainties(usual)
    assert not uncertainties(without)
    needs = [w for w in without["warnings"] if w["code"] == CODE]
    assert any(w["field"] == "measuring.instruments" for w in needs)


def test_the_errors_told_of_an_instrument_count(client: FlaskClient) -> None:
    """By hand: ± 0.005 rectangular is 0.002887, twice that is 0.005774 on the bore."""
    name, asked = measured("bore_gauge", max_error={"value": 0.005, "unit": "mm"})
    bare = {"id": "it", "max_error": {"value": 0.005, "unit": "mm"}}
    own = {**asked, "measuring": {"instruments": [bare]}}
    told = post(client, name, off(asked))
    assert uncertainties(told) == pytest.approx(uncertainties(post(client, name, own)))
    assert uncertainties(told)


@pytest.mark.parametrize("form", ["text/plain", "text/csv", "text/html", "application/json"])
@pytest.mark.parametrize("name", ["job-card", *(c.name for c in PLAIN)])
def test_every_representation_stands_without(client: FlaskClient, name: str, form: str) -> None:
    """A result that is usually there may be absent: no table and no page may stumble over it."""
    inputs = next(c for c in (*PLAIN,) if c.name == name).inputs if name != "job-card" else None
    asked = off(JOBS["orchard_pump"] if inputs is None else example(inputs))
    answer = client.post(f"/v1/{name}", json=asked, headers={"Accept": form})
    assert answer.status_code in (200, 406), answer.text
    if answer.status_code == 200 and form != "application/json":
        assert "None" not in answer.text


def test_a_batch_leaves_out_the_same(client: FlaskClient) -> None:
    rows = {"bore": {"unit": "mm", "values": [68.0, 70.0]}, "top_factor": {"values": [0.004, None]}}
    asked = {"columns": rows, "shared": {"defaults": "off"}}
    answer = client.post("/v1/ring-gap/batch", json=asked)
    assert answer.status_code == 200, answer.text
    found = answer.get_json()
    # By hand: 0.004 of 68 mm.
    assert found["results"]["top_wanted"]["values"] == [pytest.approx(0.272), None]
    assert any(w["code"] == CODE and w["field"] == "top_factor" for w in found["warnings"])
