"""No verdict where none is due: the fourth outcome, in every form of an answer and of a batch."""

import csv
import io
from typing import Any

import pytest
from asking import get, post
from flask.testing import FlaskClient

from ringland_service.core.calculations import CALCULATIONS, PARTS
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.unjudged import LOWERS, RAISES, WHY

LOW_90_PSI = {"compression_reading": {"low": {"value": 90, "unit": "psi"}}}
SOUND = {"decompressor": "none", "throttle_open": True}
LIFTER = {"decompressor": "automatic_exhaust_lifter", "decompressor_state": "automatic_active"}


def level(client: FlaskClient, psi: float, limits: Any = LOW_90_PSI, **said: Any) -> dict[str, Any]:
    asked = {"reading": {"value": psi, "unit": "psi"}, "limits": limits, **said}
    found: dict[str, Any] = post(client, "compression-level", asked)
    return found


# Common practice, no source: each of these can only lower a compression reading.
LOWERED = [
    (LIFTER, "decompressor_at_work"),
    ({}, "decompressor_unknown"),
    ({**SOUND, "throttle_open": False}, "throttle_not_open"),
    ({**SOUND, "choke_off": False}, "throttle_not_open"),
    ({**SOUND, "engine_warm": False}, "engine_cold"),
    ({**SOUND, "plugs_out": False}, "cranking_slow"),
    ({**SOUND, "battery": {"value": 9.5, "unit": "V"}}, "cranking_slow"),
]
# And these leave open which way it is wrong.
SPOILT = [
    ({**SOUND, "repeat": {"value": 5, "unit": "psi"}}, "readings_not_repeating"),
    ({**SOUND, "hose_error": {"value": -10.5, "unit": "%"}}, "gauge_unfit"),
]


@pytest.mark.parametrize(("said", "why"), LOWERED + SPOILT)
def test_a_low_reading_that_something_spoilt_is_not_judged(
    client: FlaskClient, said: dict[str, Any], why: str
) -> None:
    verdict = level(client, 65, **said)["verdicts"][0]
    assert (verdict["verdict"], verdict["why"]) == ("not_judged", why)
    assert verdict["to_judge"]
    for absent in ("probability_within", "without_uncertainty", "to_settle"):
        assert verdict[absent] is None
    assert verdict["margin"]["value"] < 0


@pytest.mark.parametrize(("said", "why"), LOWERED)
def test_a_pass_stands_where_the_reading_can_only_have_been_lowered(
    client: FlaskClient, said: dict[str, Any], why: str
) -> None:
    verdict = level(client, 95, **said)["verdicts"][0]
    assert (verdict["verdict"], verdict["why"]) == ("pass", None)
    both = {"compression_reading": {**LOW_90_PSI["compression_reading"], "high": psi(120)}}
    verdict = level(client, 95, limits=both, **said)["verdicts"][0]
    # Lowered from above the upper limit it would stand between the two as well.
    assert (verdict["verdict"], verdict["why"]) == ("not_judged", why)


def psi(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "psi"}


@pytest.mark.parametrize(("said", "why"), SPOILT)
def test_no_pass_stands_where_the_reading_itself_is_unfit(
    client: FlaskClient, said: dict[str, Any], why: str
) -> None:
    assert level(client, 95, **said)["verdicts"][0]["why"] == why


@pytest.mark.parametrize(("reading", "word"), [(65, "fail"), (95, "pass")])
def test_a_reading_under_the_right_conditions_is_judged(
    client: FlaskClient, reading: float, word: str
) -> None:
    met = {**SOUND, "choke_off": True, "engine_warm": True, "plugs_out": True}
    more = {"repeat": {"value": 3, "unit": "psi"}, "hose_error": {"value": -10, "unit": "%"}}
    verdict = level(client, reading, rule="simple", **met, **more)["verdicts"][0]
    assert (verdict["verdict"], verdict["why"], verdict["to_judge"]) == (word, None, None)


def test_a_limit_stated_with_the_decompressor_judges_such_a_reading_alone(
    client: FlaskClient,
) -> None:
    limits = {"compression_reading": {"low": psi(60), "with_decompressor": True}}
    found = level(client, 65, limits=limits, **LIFTER)["verdicts"][0]
    assert (found["verdict"], found["limit"]["with_decompressor"]) == ("pass", True)
    assert level(client, 55, limits=limits, **LIFTER)["verdicts"][0]["verdict"] == "fail"
    held = {**LIFTER, "decompressor_state": "automatic_held_off"}
    verdict = level(client, 65, limits=limits, **held)["verdicts"][0]
    assert (verdict["verdict"], verdict["why"]) == ("not_judged", "limit_with_decompressor")
    asked = (
        "/v1/compression-level?reading=65psi&limit.compression_reading.low=60psi"
        "&limit.compression_reading.with_decompressor=true"
        "&decompressor=automatic_exhaust_lifter&decompressor_state=automatic_active"
    )
    assert client.get(asked).get_json()["verdicts"][0]["verdict"] == "pass"


def test_only_a_compression_limit_knows_a_decompressor(client: FlaskClient) -> None:
    limits = {"class_limit": {"high": {"value": 250, "unit": "cc"}, "with_decompressor": True}}
    asked = {"bore": {"value": 68, "unit": "mm"}, "stroke": {"value": 66, "unit": "mm"}}
    response = client.post("/v1/displacement", json={**asked, "limits": limits})
    assert response.status_code == 400
    assert response.get_json()["errors"][0]["pointer"].startswith("#/limits/class_limit")


LEAK = {
    "supply_pressure": {"value": 690, "unit": "kPa"},
    "restrictor": {"value": 1.0, "unit": "mm"},
}


@pytest.mark.parametrize(
    ("said", "held", "outcome"),
    [
        ({"piston_at": "firing_tdc"}, 400.0, ("fail", None)),
        ({"piston_at": "firing_tdc"}, 640.0, ("pass", None)),
        ({"piston_at": "overlap_tdc"}, 400.0, ("not_judged", "not_at_firing_dead_centre")),
        ({"piston_at": "below_tdc"}, 640.0, ("not_judged", "not_at_firing_dead_centre")),
        ({}, 400.0, ("not_judged", "place_of_piston_unknown")),
        ({}, 640.0, ("pass", None)),
        (
            {"piston_at": "firing_tdc", "decompressor_state": "automatic_active"},
            400.0,
            ("not_judged", "decompressor_lets_air_out"),
        ),
        (
            {"piston_at": "firing_tdc", "decompressor_state": "automatic_active"},
            640.0,
            ("pass", None),
        ),
        (
            {"piston_at": "firing_tdc", "restrictor": {"value": 0.5, "unit": "mm"}},
            640.0,
            ("not_judged", "tester_outside_the_scale"),
        ),
    ],
)
def test_leak_down(
    client: FlaskClient, said: dict[str, Any], held: float, outcome: tuple[str, str | None]
) -> None:
    """Common practice, no source: an open valve or lifter can only add to a leak."""
    asked = {
        "supply": LEAK["supply_pressure"],
        "restrictor": LEAK["restrictor"],
        "cylinder": {"value": held, "unit": "kPa"},
        **said,
    }
    verdict = post(client, "leak-down", asked)["verdicts"][0]
    assert (verdict["verdict"], verdict["why"]) == outcome


def test_a_crankcase_that_gains_is_not_judged(client: FlaskClient) -> None:
    asked = {
        "start": {"value": 30, "unit": "kPa"},
        "end": {"value": 32, "unit": "kPa"},
        "minutes": 5,
    }
    verdict = post(client, "crankcase-leak", asked)["verdicts"][0]
    assert (verdict["verdict"], verdict["why"]) == ("not_judged", "gains_instead_of_losing")


def test_rows_of_a_batch_are_judged_or_not_one_by_one(client: FlaskClient) -> None:
    batteries = [9.5, 12.6, 9.5, 12.6]
    asked = {
        "shared": {"limits": LOW_90_PSI, **SOUND},
        "columns": {
            "reading": {"unit": "psi", "values": [65, 65, 95, 95], "uncertainty": 2.0},
            "battery": {"unit": "V", "values": batteries},
        },
    }
    found = client.post("/v1/compression-level/batch", json=asked).get_json()
    columns = found["verdicts"]["compression_reading"]
    assert columns["verdict"] == ["not_judged", "fail", "pass", "pass"]
    assert columns["why"] == ["cranking_slow", None, None, None]
    assert columns["probability_within"][0] is None
    assert columns["probability_within"][1] is not None
    table = client.post(
        "/v1/compression-level/batch", json=asked, headers={"Accept": "text/csv"}
    ).get_data(as_text=True)
    rows = list(csv.DictReader(io.StringIO(table)))
    assert [row["compression_reading why"] for row in rows] == ["cranking_slow", "", "", ""]


def test_text_says_why_and_what_to_do(client: FlaskClient) -> None:
    asked = {"reading": "65psi", "limit.compression_reading.low": "90psi"}
    text = " ".join(get(client, "compression-level.txt", asked).get_data(as_text=True).split())
    assert "NOT JUDGED (a decompressor may have let pressure off during the test)" in text
    assert "to judge it: find out whether the engine has a decompressor" in text


def test_every_reason_is_one_of_the_table_and_its_sign_is_known() -> None:
    for calculation in (*CALCULATIONS, *PARTS):
        if not isinstance(calculation, Calculation):
            continue
        for check in calculation.checks:
            for condition in check.unjudged:
                assert condition.why in WHY
                assert condition.only in ("", LOWERS, RAISES)
                assert condition.to_judge


@pytest.mark.parametrize("surface", ["smeared", "scored"])
def test_a_bore_with_metal_smeared_on_it_has_no_size_to_judge(
    client: FlaskClient, surface: str
) -> None:
    """Common practice, no source: the smear is gauged, not the bore."""
    survey = {
        "depth": {"unit": "mm", "values": [10, 40, 70]},
        "pin_axis": {"unit": "mm", "values": [68.02, 68.01, 68.0]},
        "thrust_axis": {"unit": "mm", "values": [68.04, 68.02, 68.0]},
    }
    found = post(client, "bore-survey", {**survey, "surface": surface})["verdicts"]
    piston = {"piston": {"value": 67.9, "unit": "mm"}, "bore_max": {"value": 68.04, "unit": "mm"}}
    found += post(
        client, "piston-clearance", {**piston, "cycle": "four_stroke", "surface": surface}
    )["verdicts"]
    whys = {verdict["why"] for verdict in found}
    assert len(found) == 4
    assert whys == ({"surface_smeared"} if surface == "smeared" else {None})


BARE = "no_uncertainty_stated"


@pytest.mark.parametrize(("said", "why"), LOWERED + SPOILT)
def test_where_no_verdict_is_due_no_value_decides(
    client: FlaskClient, said: dict[str, Any], why: str
) -> None:
    """Nothing says beside ``not_judged`` that the value alone decides, as it does beside a fail."""
    assert BARE not in {w["code"] for w in level(client, 65, **said)["warnings"]}
    assert BARE in {w["code"] for w in level(client, 65, **SOUND)["warnings"]}


def test_in_a_batch_it_is_said_of_the_rows_that_are_judged(client: FlaskClient) -> None:
    columns = {
        "reading": {"values": [65, 65, 95], "unit": "psi"},
        "decompressor": {"values": ["none", None, None]},
        "throttle_open": {"values": [True] * 3},
    }
    body = {"shared": {"limits": LOW_90_PSI}, "columns": columns}
    found = post(client, "compression-level/batch", body)
    assert found["verdicts"]["compression_reading"]["verdict"] == ["fail", "not_judged", "pass"]
    assert [w["rows"] for w in found["warnings"] if w["code"] == BARE] == [[1, 3]]
