"""What a job is told twice, or of one engine, agrees within its uncertainty or is refused.

Every refusal names all the places that it lies between. The cases stand in ``agreeing_cards``.
"""

import copy
from typing import Any

import pytest
from agreeing_cards import CASES, FLAT
from flask.testing import FlaskClient
from tests.cards import JOBS

from ringland_service.api.reading.request import core_fault
from ringland_service.core.calculations import CALCULATIONS, EVERY
from ringland_service.core.calculations.job._agreements import AGREEMENTS
from ringland_service.core.declare import Declared, Rule, asked
from ringland_service.engine.scalar import contradiction


@pytest.mark.parametrize("case", CASES)
def test_what_agrees_is_answered_and_what_does_not_is_refused(
    client: FlaskClient, case: str
) -> None:
    agrees, contradicts, places = CASES[case]
    response = client.post("/v1/job-card", json=agrees)
    assert response.status_code == 200, response.get_json()
    response = client.post("/v1/job-card", json=contradicts)
    problem = response.get_json()
    assert response.status_code == 422, problem
    named = [{p.lstrip("#") for p in entry.get("pointers", ())} for entry in problem["errors"]]
    assert any(places <= one for one in named), problem["errors"]
    # A result that follows from what was told is no place in the request.
    for entry in problem["errors"]:
        for pointer in (entry["pointer"], *entry.get("pointers", ())):
            assert stands_in(contradicts, pointer), entry


def stands_in(body: Any, pointer: str) -> bool:
    """Return whether a JSON pointer (RFC 6901, as a URI fragment) names a place in the body."""
    for step in pointer.removeprefix("#/").split("/"):
        if isinstance(body, list):
            body = body[int(step)] if step.isdigit() and int(step) < len(body) else None
        else:
            body = body.get(step)
        if body is None:
            return False
    return True


def test_a_clearance_outside_its_range_is_one_fault_of_the_fields_told(
    client: FlaskClient,
) -> None:
    """The finish that follows lies outside its limits too, which says nothing more."""
    job = copy.deepcopy(JOBS["orchard_pump"])
    job["plan"]["wanted_clearance"] = {"value": 0.09, "unit": "mm"}
    for name in ("returned_readings", "returned_out_of_round", "returned_taper"):
        del job["plan"][name]
    problem = client.post("/v1/job-card", json=job).get_json()
    assert problem["status"] == 422
    assert all(
        stands_in(job, pointer)
        for entry in problem["errors"]
        for pointer in (entry["pointer"], *entry.get("pointers", ()))
    ), problem["errors"]
    assert [entry["pointer"] for entry in problem["errors"]] == ["#/plan/wanted_clearance"]


def test_every_agreement_has_a_case() -> None:
    """The class, not the case: an agreement without a pair of requests is not proven."""
    names: dict[str, str] = {}
    for _, contradicts, _ in CASES.values():
        names |= {field: section for section, told in contradicts.items() for field in told}
        names |= dict.fromkeys(contradicts, "")
    for agreement in AGREEMENTS:
        for name in agreement.fields or agreement.of:
            if name not in ("gasket_area_mm2", "burette_fill_cc", "old_gap_thrust_axis_mm"):
                public = name
                for suffix in ("_mm", "_cc", "_kpa", "_deg"):
                    public = public.removesuffix(suffix)
                assert public in names or name in names, (agreement.of, name)


@pytest.mark.parametrize("case", FLAT)
def test_the_same_on_every_route_that_takes_both(client: FlaskClient, case: str) -> None:
    route, agrees, contradicts, places = FLAT[case]
    response = client.post(f"/v1/{route}", json=agrees)
    assert response.status_code == 200, response.get_json()
    problem = client.post(f"/v1/{route}", json=contradicts)
    assert problem.status_code == 422
    named = [set(e.get("pointers", ())) for e in problem.get_json()["errors"]]
    assert any({f"#{place}" for place in places} <= one for one in named), named


PAIRS_OF_AN_ENGINE = (
    ({"cycle": "two_stroke", "valve_gear": "overhead_valves"}, ("cycle", "valve_gear")),
    (
        {"cycle": "four_stroke", "decompressor": "manual_two_stroke_valve"},
        ("cycle", "decompressor"),
    ),
    ({"decompressor": "none", "decompressor_state": "automatic_active"}, ("decompressor",)),
)


@pytest.mark.parametrize(("engine", "names"), PAIRS_OF_AN_ENGINE)
def test_no_route_takes_an_engine_that_cannot_be(
    client: FlaskClient, engine: dict[str, str], names: tuple[str, ...]
) -> None:
    from ringland_service.api.shapes.examples import example

    routes = [c for c in CALCULATIONS if engine.keys() <= asked(c.inputs).keys()]
    assert len(routes) >= 3
    for calculation in routes:
        body = example(calculation.inputs) | engine
        problem = client.post(f"/v1/{calculation.name}", json=body)
        assert problem.status_code == 422, calculation.name
        said = [p for e in problem.get_json()["errors"] for p in e.get("pointers", ())]
        assert all(f"#/{name}" in said for name in names), (calculation.name, said)


def between() -> list[tuple[Declared, Rule]]:
    return [(c, rule) for c in EVERY for rule in c.rules if len(set(rule.fields)) > 1]


@pytest.mark.parametrize(
    ("calculation", "rule"), between(), ids=lambda one: str(getattr(one, "name", ""))
)
def test_a_contradiction_names_every_field_that_it_lies_between(
    calculation: Declared, rule: Rule
) -> None:
    fault = core_fault(calculation, contradiction(rule))
    public = {f"/{asked(calculation.inputs)[name].public(name)}" for name in rule.fields}
    assert {fault.pointer, *fault.also} == public


def test_fewer_readings_than_cylinders_say_nothing_of_all(client: FlaskClient) -> None:
    """Both readings of a four are low and alike: of the other two nobody knows."""
    job = copy.deepcopy(JOBS["crawler_twin"])
    job["compression"]["readings"] = {"values": [6.0, 5.9], "unit": "bar"}
    job["signs"] = {}
    found = {}
    for cylinders in (2, 4):
        job["engine"]["cylinders"] = cylinders
        card = client.post("/v1/job-card", json=job).get_json()
        told = {row["evidence"] for row in card["result"]["diagnosis"]["at_hand"]}
        verdict = next(v for v in card["verdicts"] if v["check"] == "lowest_over_highest")
        found[cylinders] = (told, verdict["verdict"], "grade" in card["result"]["cylinder_spread"])
    assert {"E11", "E32"} <= found[2][0]
    assert found[2][1:] == ("pass", True)
    assert not {"E11", "E32", "E31"} & found[4][0]
    assert "E10" in found[4][0]
    assert found[4][1:] == ("not_judged", False)
