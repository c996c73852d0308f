"""One air pressure on a card: every part that needs one uses the same, however the place is told.

The air pressure expected is worked out beside the service with the public atmosphere library
ambiance, where the altitude alone tells it, and scaled by the weather report where there is one.
"""

import copy
from typing import Any

import pytest
from ambiance import Atmosphere
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.cards import JOBS

from ringland_service.wsgi import app

CARDS = ("orchard_pump", "crawler_twin", "ridge_two_stroke", "example")
SEA_LEVEL_KPA = 101.325
AT_SEA_LEVEL = "cranking_pressure_after_at_sea_level"
LEAK_AREA = {
    "supply_pressure": {"value": 690, "unit": "kPa"},
    "cylinder_pressure": {"value": 612, "unit": "kPa"},
    "restrictor": {"value": 1.0, "unit": "mm"},
    "other_restrictor": {"value": 1.5, "unit": "mm"},
}


def kpa(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "kPa"}


def pressures(card: dict[str, Any]) -> dict[str, float]:
    """Return the air pressure that each part says it used, in kPa."""
    return {
        part: result["air_pressure_here"]["value"]
        for part, result in card["result"].items()
        if isinstance(result, dict) and "air_pressure_here" in result
    }


def asked(client: FlaskClient, name: str, place: dict[str, Any]) -> dict[str, Any]:
    job = copy.deepcopy(JOBS[name])
    job["place"] = place
    job.get("compression", {}).pop("weather", None)
    job.setdefault("leak_down", {}).update(LEAK_AREA)
    response = client.post("/v1/job-card?units=metric", json=job)
    card: dict[str, Any] = response.get_json()
    assert response.status_code == 200, card
    return card


PLACES = st.one_of(
    st.builds(
        lambda h: ({"altitude": {"value": h, "unit": "m"}}, None, h),
        st.integers(1, 2500),
    ),
    st.builds(
        lambda h, q: (
            {"altitude": {"value": h, "unit": "m"}, "weather_report": kpa(q)},
            q,
            h,
        ),
        st.integers(1, 2500),
        st.integers(970, 1035).map(lambda q: q / 10),
    ),
    st.builds(lambda p: ({"air_pressure": kpa(p)}, p, None), st.integers(75, 104)),
)


def expected_kpa(report: float | None, altitude: int | None) -> float:
    if altitude is None:
        assert report is not None
        return report
    share = float(Atmosphere(altitude).pressure[0]) / 1000.0 / SEA_LEVEL_KPA
    return share * (report or SEA_LEVEL_KPA)


@settings(
    max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(name=st.sampled_from(CARDS), place=PLACES)
def test_every_part_uses_the_one_air_pressure(
    name: str, place: tuple[dict[str, Any], float | None, int | None]
) -> None:
    told, report, altitude = place
    card = asked(app.test_client(), name, told)
    used = pressures(card)
    at_sea_level = used.pop(AT_SEA_LEVEL, SEA_LEVEL_KPA)
    assert at_sea_level == pytest.approx(SEA_LEVEL_KPA)
    assert len(used) >= 3
    # ambiance takes geometric height; geopotential differs by 0.04 % at 2500 m.
    assert used["air_pressure"] == pytest.approx(expected_kpa(report, altitude), rel=4e-4)
    assert set(used.values()) == {used["air_pressure"]}
    codes = {warning["code"] for warning in card["warnings"]}
    assert not codes & {"sea_level_assumed", "air_pressure_on_the_spot_used"}


@pytest.mark.parametrize("name", CARDS)
def test_one_reading_at_sea_level(client: FlaskClient, name: str) -> None:
    place = {"altitude": {"value": 900, "unit": "m"}, "weather_report": kpa(99.1)}
    result = asked(client, name, place)["result"]
    readings = [
        result[part]["reading_at_sea_level"]["value"]
        for part in ("air_pressure", "compression_level")
        if "reading_at_sea_level" in result.get(part, {})
    ]
    assert len(readings) == 2
    assert readings[0] == pytest.approx(readings[1])


def test_the_report_reaches_the_compression_test_too(client: FlaskClient) -> None:
    engine = {
        "reading": kpa(800),
        "altitude": {"value": 900, "unit": "m"},
        "cycle": "four_stroke",
        "bore": {"value": 68, "unit": "mm"},
        "stroke": {"value": 66, "unit": "mm"},
        "rod": {"value": 110, "unit": "mm"},
        "clearance": {"value": 29.2, "unit": "cc"},
        "intake_closes": {"value": 50, "unit": "deg"},
    }
    asked = [
        client.post("/v1/compression-test", json=engine | more).get_json()
        for more in ({}, {"weather_report": kpa(98.0)})
    ]
    without, used = map(pressures, asked)
    assert set(without) == set(used) == {"air_pressure", "compression_level", "cranking_pressure"}
    assert len(set(used.values())) == 1
    # 98.0 / 101.325 of the standard atmosphere's pressure there: hydrostatics, worked by hand.
    assert used["air_pressure"] == pytest.approx(without["air_pressure"] * 98.0 / 101.325)


@pytest.mark.parametrize(
    "route",
    ["compression-level", "cranking-pressure", "leak-area", "crankcase-leak", "gauge-hose-loss"],
)
def test_every_route_that_takes_an_altitude_takes_the_report(
    client: FlaskClient, route: str
) -> None:
    from ringland_service.api.shapes.examples import example
    from ringland_service.core.calculations import BY_NAME

    body = example(BY_NAME[route].inputs)
    body = {k: v for k, v in body.items() if k not in ("air_pressure", "weather")}
    body |= {"altitude": {"value": 500, "unit": "m"}, "weather_report": kpa(100.0)}
    answer = client.post(f"/v1/{route}", json=body).get_json()
    share = float(Atmosphere(500).pressure[0]) / 101325.0
    here = answer["result"]["air_pressure_here"]["value"]
    assert here == pytest.approx(100.0 * share, rel=1e-4), answer


def test_a_report_without_its_altitude_is_said_to_count_for_nothing(client: FlaskClient) -> None:
    card = asked(client, "crawler_twin", {"weather_report": kpa(99.0)})
    assert "weather_report_needs_altitude" in {w["code"] for w in card["warnings"]}
    assert any(item["opens"] == "air_pressure" for item in card["result"]["measure_next"])
