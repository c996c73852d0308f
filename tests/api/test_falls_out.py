"""A part whose work is not done on this engine falls out with its reason, and the card stands."""

import copy
from typing import Any

import pytest
from flask.testing import FlaskClient
from tests.cards import JOBS


def mm(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "mm"}


HONE = {
    "spindle_speed": {"value": 180, "unit": "rpm"},
    "travel": mm(96),
    "strokes_per_minute": {"value": 80, "unit": "rpm"},
}
PARTS_OF_THE_VOLUME = {
    "chamber": {"value": 7.8, "unit": "cc"},
    "gasket_bore": mm(54),
    "gasket_thickness": mm(0.4),
    "deck": mm(0),
}
# Every result that says what a new bore leaves, by part.
AFTER_A_BORE = {
    "displacement": ("new_displacement", "change"),
    "bore_order": ("finish_low", "bore_to"),
}


def asked(client: FlaskClient, job: dict[str, Any], accept: str = "application/json") -> Any:
    response = client.post("/v1/job-card?units=metric", json=job, headers={"Accept": accept})
    assert response.status_code == 200, response.get_data(as_text=True)
    return response.get_json() if accept == "application/json" else response.get_data(as_text=True)


def fallen_out(card: dict[str, Any]) -> dict[str, str]:
    rows = card["result"].get("not_worked_out", ())
    assert all(row["part"] not in card["result"] for row in rows)
    return {row["part"]: row["why"] for row in rows}


@pytest.fixture(params=["plated_aluminium", "chromed", "bare_silicon_aluminium"])
def plated(request: pytest.FixtureRequest) -> dict[str, Any]:
    """Return a job on a bore that is never bored, a new bore and a hone asked for."""
    job = copy.deepcopy(JOBS["ridge_two_stroke"])
    job["engine"] |= PARTS_OF_THE_VOLUME | {"bore_kind": request.param}
    job["engine"].pop("clearance")
    job["plan"]["new_bore"] = mm(52.5)
    job["cylinder"]["liner_od"] = mm(58)
    job["piston"].pop("piston_kind")
    del job["squish"]
    return job


def test_a_new_bore_on_plating_falls_out_and_the_card_stands(
    client: FlaskClient, plated: dict[str, Any]
) -> None:
    card = asked(client, plated)
    out = fallen_out(card)
    assert {"overbore_ratio", "liner_wall"} <= out.keys()
    assert all("never sent for" in why for why in out.values())
    for part, names in AFTER_A_BORE.items():
        assert not set(names) & card["result"].get(part, {}).keys()
    assert not {"dynamic_ratio_after", "port_timing_after"} & card["result"].keys()
    assert card["result"]["ring_gap"]
    assert card["result"]["cylinder_decision"]["way"] == "select_piston"
    assert not any(
        reading["field"] == "plan.new_bore"
        for item in card["result"]["measure_next"]
        for way in item["ways"]
        for reading in way
    )


def test_a_hone_on_plating_falls_out_and_nothing_else_changes(
    client: FlaskClient, plated: dict[str, Any]
) -> None:
    without, told = asked(client, plated), asked(client, plated | {"hone": HONE})
    assert set(fallen_out(told)) - set(fallen_out(without)) == {"crosshatch"}
    assert "stones" in fallen_out(told)["crosshatch"] or "honing" in fallen_out(told)["crosshatch"]
    assert told["verdicts"] == without["verdicts"]
    kept = {k: v for k, v in told["result"].items() if k != "not_worked_out"}
    assert kept == {k: v for k, v in without["result"].items() if k != "not_worked_out"}


def test_the_reasons_are_read_on_paper_too(client: FlaskClient, plated: dict[str, Any]) -> None:
    for accept in ("text/plain", "text/html"):
        text = asked(client, plated | {"hone": HONE}, accept)
        assert "Not worked out" in text
        assert "Crosshatch angle: " in text


@pytest.fixture
def kept() -> dict[str, Any]:
    """Return the pump's job with a bore in order, so that no new bore is cut."""
    job = copy.deepcopy(JOBS["orchard_pump"])
    job["cylinder"] |= {"surface": "clean", "piston_stays_in": True}
    del job["cylinder"]["scores"]
    for axis in ("pin_axis", "thrust_axis"):
        values = job["cylinder"]["bore_survey"][axis]["values"]
        job["cylinder"]["bore_survey"][axis]["values"] = [73.010] * len(values)
    job["piston"]["piston_size"] |= {"value": 72.962}
    for name in ("returned_readings", "returned_out_of_round", "returned_taper"):
        del job["plan"][name]
    for section in ("order", "hone", "compression", "leak_down", "signs"):
        job.pop(section, None)
    job["rings"] = {"old_gap": mm(0.3), "old_gap_depth": mm(9), "gap_when_new": mm(0.28)}
    return job


def test_after_figures_of_a_work_that_the_decision_rules_out_are_not_given(
    client: FlaskClient, kept: dict[str, Any]
) -> None:
    card = asked(client, kept)
    decision = card["result"]["cylinder_decision"]
    overbore = next(row for row in decision["ways"] if row["way"] == "overbore")
    if decision["way"] in ("overbore", "not_settled", "find_out_the_kind"):
        pytest.fail(f"{decision['decision']}: {decision['reason']} {overbore}")
    kept["plan"] |= {"new_bore": mm(73.25)}
    # A size of its own, without pistons on offer: no finish size to contradict.
    del kept["plan"]["pistons"]
    card = asked(client, kept)
    assert card["result"]["cylinder_decision"]["way"] == decision["way"]
    out = fallen_out(card)
    assert "no new bore is cut" in out["overbore_ratio"]
    for part, names in AFTER_A_BORE.items():
        assert not set(names) & card["result"].get(part, {}).keys()
    assert "dynamic_ratio_after" not in card["result"]


@pytest.mark.parametrize(
    ("job", "more", "part", "said"),
    [
        (
            "orchard_pump",
            {"fuel": {"fuel": {"value": 5, "unit": "L"}, "ratio": 40}},
            "premix",
            "two-stroke",
        ),
        (
            "orchard_pump",
            {
                "crankcase": {
                    "start": {"value": 45, "unit": "kPa"},
                    "end": {"value": 44, "unit": "kPa"},
                    "minutes": 5,
                }
            },
            "crankcase_leak",
            "four-stroke",
        ),
        (
            "orchard_pump",
            {"engine": {"exhaust_port_top_below_deck": mm(30)}},
            "port_timing",
            "ports",
        ),
        (
            "ridge_two_stroke",
            {"engine": {"intake_closes": {"value": 50, "unit": "deg"}}},
            "dynamic_ratio",
            "trapped ratio",
        ),
    ],
)
def test_what_this_engine_does_not_have_is_said_and_not_passed_over(
    client: FlaskClient, job: str, more: dict[str, Any], part: str, said: str
) -> None:
    request = copy.deepcopy(JOBS[job])
    before = asked(client, request)
    for section, fields in more.items():
        request[section] = request.get(section, {}) | fields
    card = asked(client, request)
    assert said in fallen_out(card)[part]
    assert card["verdicts"] == before["verdicts"]
