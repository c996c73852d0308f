"""Limits, rules and uncertainty in a request, over the wire."""

from typing import Any

import pytest
from asking import post, strict
from flask.testing import FlaskClient

# A used piston of a four-stroke: clearance 68.076 - 67.936 = 0.140 mm by hand.
FIT: dict[str, Any] = {
    "piston_size": {"value": 67.936, "unit": "mm"},
    "bore_largest": {"value": 68.076, "unit": "mm"},
    "cycle": "four_stroke",
    "measuring_height": {"value": 12, "unit": "mm"},
}
FIT_QUERY = {"piston_size": "67.936mm", "bore_largest": "68.076mm", "cycle": "four_stroke"}
LEVEL = {
    "reading": {"value": 880, "unit": "kPa"},
    "expected": {"value": 1072, "unit": "kPa"},
    "cycle": "four_stroke",
    "valve_gear": "overhead_valves",
    "decompressor": "none",
    "decompressor_state": "none",
}


def mm(number: float) -> dict[str, Any]:
    return {"value": number, "unit": "mm"}


def uncertain(**changed: Any) -> dict[str, Any]:
    """Return the fit with U = 0.006 mm on the bore and 0.008 mm on the piston: U = 0.010 mm."""
    piston = {**FIT["piston_size"], "uncertainty": 0.008}
    bore = {**FIT["bore_largest"], "uncertainty": 0.006}
    return {**FIT, "piston_size": piston, "bore_largest": bore, **changed}


def judged(found: Any, check: str = "piston_clearance_max") -> Any:
    """Return the one verdict of a check."""
    (verdict,) = [v for v in found["verdicts"] if v["check"] == check]
    return verdict


def limited(high: float, **more: Any) -> dict[str, Any]:
    return {"piston_clearance_max": {"high": mm(high), **more}}


def test_limit_of_the_request_wins_and_is_named(client: FlaskClient) -> None:
    without = judged(post(client, "piston-clearance", FIT))
    assert without["limit"]["standing"] == "common_practice"
    assert "common practice, no source" in without["limit"]["source"]
    asked = {**FIT, "limits": limited(0.15, source="workshop manual")}
    found = judged(post(client, "piston-clearance", asked))
    assert found["limit"]["standing"] == "maker"
    assert found["limit"]["source"] == "workshop manual"
    assert found["limit"]["high"]["value"] == 0.15
    assert found["limit"]["low"] is None
    assert found["verdict"] == "pass"
    assert found["margin"]["value"] == pytest.approx(0.010, abs=1e-12)


@pytest.mark.parametrize("standing", ["maker", "common_practice", "standard", "computed"])
def test_standing_is_said_and_kept(client: FlaskClient, standing: str) -> None:
    asked = {**FIT, "limits": limited(0.15, standing=standing), "defaults": "off"}
    found = judged(post(client, "piston-clearance", asked))
    assert found["limit"]["standing"] == standing


def test_limit_in_another_unit(client: FlaskClient) -> None:
    limits = {"piston_clearance_max": {"high": {"value": 5, "unit": "thou"}}}
    found = judged(post(client, "piston-clearance", {**FIT, "limits": limits}))
    assert found["limit"]["high"]["value"] == pytest.approx(0.127, rel=1e-15)
    assert found["verdict"] == "fail"
    assert found["margin"]["value"] == pytest.approx(-0.013, abs=1e-12)


def test_limit_in_a_get(client: FlaskClient) -> None:
    query = {
        **FIT_QUERY,
        "limit.piston_clearance_max.high": "0.15mm",
        "limit.piston_clearance_max.low": "0.02 mm",
        "limit.piston_clearance_max.source": "workshop manual",
        "limit.piston_clearance_max.standing": "standard",
    }
    answer = client.get("/v1/piston-clearance", query_string=query)
    sides = {"low": mm(0.02), "source": "workshop manual", "standing": "standard"}
    asked = {k: v for k, v in FIT.items() if k in FIT_QUERY}
    asked["limits"] = limited(0.15, **sides)
    assert strict(answer) == post(client, "piston-clearance", asked)
    assert judged(strict(answer))["limit"]["low"]["value"] == 0.02


def test_bare_limit_of_a_ratio_in_a_get(client: FlaskClient) -> None:
    query = {
        "bore": "68mm", "stroke": "66mm", "burette_fill": "31.9cc", "plug_diameter": "13.35mm",
        "plug_reach": "19mm", "limit.compression_ratio.low": "9",
        "limit.compression_ratio.high": "9.5",
    }  # fmt: skip
    answer = strict(client.get("/v1/compression-ratio", query_string=query))
    verdict = judged(answer, "compression_ratio")
    assert verdict["limit"]["low"] == 9.0
    assert verdict["limit"]["high"] == 9.5
    assert verdict["verdict"] == "pass"


def test_defaults_off_takes_the_common_practice_limits_away(client: FlaskClient) -> None:
    assert post(client, "piston-clearance", FIT)["verdicts"]
    assert post(client, "piston-clearance", {**FIT, "defaults": "on"})["verdicts"]
    assert post(client, "piston-clearance", {**FIT, "defaults": "off"})["verdicts"] == []
    query = {**FIT_QUERY, "defaults": "off"}
    assert strict(client.get("/v1/piston-clearance", query_string=query))["verdicts"] == []


def test_defaults_off_takes_the_grades_away_but_no_physics(client: FlaskClient) -> None:
    on = post(client, "compression-level", LEVEL)
    off = post(client, "compression-level", {**LEVEL, "defaults": "off"})
    assert on["result"]["grade"] == "watch"  # 880/1072 = 0.821: at least 0.80, under 0.90
    assert "grade" not in off["result"]
    assert off["result"]["ratio"] == on["result"]["ratio"]


def test_without_uncertainty_the_answer_says_so(client: FlaskClient) -> None:
    found = post(client, "piston-clearance", FIT)
    verdict = judged(found)
    assert verdict["rule"] == "simple"
    assert verdict["uncertainty"] is None
    assert verdict["conformance_probability"] is None
    assert {w["code"] for w in found["warnings"]} >= {"no_uncertainty_stated"}
    with_uncertainty = post(client, "piston-clearance", uncertain())
    assert "no_uncertainty_stated" not in {w["code"] for w in with_uncertainty["warnings"]}


def test_uncertainty_makes_it_too_close_to_call(client: FlaskClient) -> None:
    """0.140 ± 0.010 against 0.149: U from two independent readings, √(0.006² + 0.008²)."""
    found = judged(post(client, "piston-clearance", uncertain(limits=limited(0.149))))
    assert found["uncertainty"]["value"] == pytest.approx(0.010, rel=1e-6)
    assert found["verdict"] == "too_close_to_call"
    assert found["without_uncertainty"] == "pass"
    assert found["rule"] == "guard_2u"
    # Φ(0.009/0.005) = Φ(1.8) = 0.9641 (table of the normal distribution)
    assert found["conformance_probability"] == pytest.approx(0.9641, abs=5e-5)
    assert found["to_settle"]["target_uncertainty"]["value"] == pytest.approx(0.009, rel=1e-6)
    assert found["to_settle"]["advice"]


@pytest.mark.parametrize(
    ("rule", "word"),
    [("simple", "pass"), ("guard_1645u", "pass"), ("guard_2u", "too_close_to_call")],
)
def test_rule_of_the_request_decides(client: FlaskClient, rule: str, word: str) -> None:
    """Guard by hand: 2u = 0.010, 1.645u = 0.008224; margin 0.009 lies between."""
    asked = uncertain(limits=limited(0.149), rule=rule)
    found = judged(post(client, "piston-clearance", asked))
    assert (found["rule"], found["verdict"]) == (rule, word)


def test_value_on_its_limit_passes(client: FlaskClient) -> None:
    """68.076 - 67.936 is 0.14000000000000057 in binary: dust does not fail a part."""
    found = judged(post(client, "piston-clearance", {**FIT, "limits": limited(0.14)}))
    assert found["value"]["value"] != 0.14
    assert found["verdict"] == "pass"
    uncertainty = judged(post(client, "piston-clearance", uncertain(limits=limited(0.15))))
    assert uncertainty["verdict"] == "pass"


def test_one_instrument_shares_its_setting_error(client: FlaskClient) -> None:
    """Two readings of one gauge lose what they share; of two gauges they do not."""
    reads = {"kind": "outside_micrometer", "zero_setting_error": mm(0.02)}
    same = {"measuring": {"instruments": [{"id": "a", **reads}]}}
    two = {"measuring": {"instruments": [{"id": "a", **reads}, {"id": "b", **reads}]}}
    bore = {**FIT["bore_largest"], "instrument": "a"}

    def uncertainty(measuring: dict[str, Any], of_piston: str) -> float:
        piston = {**FIT["piston_size"], "instrument": of_piston}
        asked = {**FIT, "bore_largest": bore, "piston_size": piston, **measuring}
        found: float = judged(post(client, "piston-clearance", asked))["uncertainty"]["value"]
        return found

    assert uncertainty(two, "b") == pytest.approx(
        (uncertainty(same, "a") ** 2 + 2 * (2 * 0.02 / 3**0.5) ** 2) ** 0.5, rel=1e-6
    )


def test_many_readings_shrink_the_repeat_alone(client: FlaskClient) -> None:
    """u² = a²/3 + r²/n by hand, a = 0.006 mm, r = 0.004 mm, n = 4: U = 2·√(12e-6 + 4e-6)."""
    gauge = {"id": "g", "max_permissible_error": mm(0.006), "repeatability": mm(0.004)}
    asked = {
        **FIT,
        "bore_largest": {**FIT["bore_largest"], "instrument": "g"},
        "measuring": {"instruments": [gauge], "readings_each": 4},
    }
    found = judged(post(client, "piston-clearance", asked))
    assert found["uncertainty"]["value"] == pytest.approx(2 * 16e-6**0.5, rel=1e-6)
