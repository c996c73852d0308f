"""The 95 % interval of results that rest on tied readings, in every form of an answer.

By hand: order statistics of the normal distribution, 97.5 % of the range of three errors 3.6823 and
of the largest of six 2.6347 standard deviations (tests/core/test_extremes.py).
"""

import csv
import io
import math
from typing import Any

import pytest
from asking import post, strict
from flask.testing import FlaskClient
from jsonschema import Draft202012Validator

from page_reader import Reader

U = 0.002
INCH = 25.4
SURVEY: dict[str, Any] = {
    "depth": {"unit": "mm", "values": [10, 40, 70]},
    "pin_axis": {"unit": "mm", "values": [68.004, 68.003, 68.002], "uncertainty": 2 * U},
    "thrust_axis": {"unit": "mm", "values": [68.003, 68.004, 68.002], "uncertainty": 2 * U},
    "nominal_bore": {"value": 68.0, "unit": "mm"},
}
# R + 1.96 · √2 · u, and the largest bore less and plus what it may be off by.
TAPER_HIGH = 0.002 + 1.959964 * math.sqrt(2.0) * U
LARGEST = (68.004 - 2.6347 * U, 68.004 + 1.959964 * U)


def verdict_on(answer: dict[str, Any], check: str) -> dict[str, Any]:
    (found,) = [v for v in answer["verdicts"] if v["check"] == check]
    return dict(found)


def test_beside_the_uncertainty_in_the_same_unit(client: FlaskClient) -> None:
    result = post(client, "bore-survey", SURVEY)["result"]
    taper, largest = result["taper_pin_axis"], result["largest"]
    assert taper["interval"]["low"] == 0.0
    assert taper["interval"]["high"] == pytest.approx(TAPER_HIGH, rel=1e-6)
    assert taper["uncertainty"] == pytest.approx(2 * math.sqrt(2.0) * U, rel=1e-6)
    assert largest["interval"]["low"] == pytest.approx(LARGEST[0], abs=1e-6)
    assert largest["interval"]["high"] == pytest.approx(LARGEST[1], abs=1e-6)
    assert "interval" not in result["mean"]


def test_in_inches(client: FlaskClient) -> None:
    result = post(client, "bore-survey?units=us", SURVEY)["result"]
    assert result["largest"]["unit"] == "in"
    assert result["largest"]["interval"]["low"] == pytest.approx(LARGEST[0] / INCH, abs=1e-7)
    assert result["taper_pin_axis"]["interval"]["high"] == pytest.approx(TAPER_HIGH / INCH)


def test_a_verdict_says_what_it_is_judged_from(client: FlaskClient) -> None:
    limits = {"taper_pin_axis": {"high": {"value": 0.0074, "unit": "mm"}}}
    found = verdict_on(post(client, "bore-survey", {**SURVEY, "limits": limits}), "taper_pin_axis")
    assert found["verdict"] == "too_close_to_call"
    assert found["rule"] == "interval_95"
    assert found["interval"]["high"] == pytest.approx(TAPER_HIGH, rel=1e-6)
    assert found["bias"].endswith("noise makes it read too high")
    assert found["conformance_probability"] is None
    assert found["to_settle"]["target_uncertainty"] is None
    assert found["to_settle"]["advice"]
    clear = {**SURVEY, "rule": "simple", "limits": limits}
    alone = verdict_on(post(client, "bore-survey", clear), "taper_pin_axis")
    assert (alone["rule"], alone["verdict"]) == ("simple", "pass")
    assert (alone["interval"], alone["bias"]) == (None, None)


def test_limits_closer_than_the_interval_are_told(client: FlaskClient) -> None:
    sides = {"low": {"value": 68.0, "unit": "mm"}, "high": {"value": 68.005, "unit": "mm"}}
    asked = {**SURVEY, "limits": {"bore_largest": sides}}
    found = verdict_on(post(client, "bore-survey", asked), "bore_largest")
    assert found["to_settle"]["advice"].startswith("the limits are closer together")


def test_the_rule_cannot_be_asked_for(client: FlaskClient) -> None:
    assert client.post("/v1/bore-survey", json={**SURVEY, "rule": "interval_95"}).status_code == 400


SPREAD = {
    "readings": {"unit": "kPa", "values": [1000, 1000, 1000]},
    "repeatability": {"value": 10, "unit": "kPa"},
}
# u = 10/√3 kPa each: of a range of three.
LEAST_SHARE = 1.0 - 1.959964 * math.sqrt(2.0) * 0.010 / math.sqrt(3.0)


def test_bare_results_have_theirs_under_intervals(client: FlaskClient) -> None:
    found = post(client, "cylinder-spread", SPREAD)
    told = found["intervals"]["lowest_over_highest"]
    assert told["high"] == 1.0
    assert told["low"] == pytest.approx(LEAST_SHARE, rel=1e-6)
    each = found["intervals"]["each_over_highest"]
    assert len(each) == 3
    # Each may be the lowest: no reading is known to be the highest.
    assert all(one["high"] == 1.0 and one["low"] < 1.0 for one in each)
    assert verdict_on(found, "lowest_over_highest")["bias"].endswith("read too low")


def test_text_csv_and_page_tell_it(client: FlaskClient) -> None:
    printed = client.post("/v1/bore-survey", json=SURVEY, headers={"Accept": "text/plain"}).text
    lines = " ".join(printed.split())
    assert "taper pin axis 0.002 ± 0.006 (95 %: 0.000 to 0.008) mm" in lines
    assert "judged from its 95 % interval" in lines
    sheet = client.post("/v1/bore-survey", json=SURVEY, headers={"Accept": "text/csv"}).text
    rows = {(r["part"], r["name"]): r for r in csv.DictReader(io.StringIO(sheet), strict=True)}
    for part in ("result", "verdict"):
        row = rows[part, "taper_pin_axis"]
        assert row["interval_low"] == "0"
        assert float(row["interval_high"]) == pytest.approx(TAPER_HIGH, rel=1e-6)
    assert rows["result", "mean"]["interval_low"] == ""
    bare = client.post("/v1/cylinder-spread", json=SPREAD, headers={"Accept": "text/plain"}).text
    assert "lowest over highest 1.000 ± 0.016 (95 %: 0.984 to 1.000)" in " ".join(bare.split())


def test_a_card_tells_it_in_its_parts(client: FlaskClient) -> None:
    axes = {name: SURVEY[name] for name in ("depth", "pin_axis", "thrust_axis")}
    job = {"cylinder": {"bore_survey": axes, "unworn": {"value": 68.0, "unit": "mm"}}}
    found = post(client, "job-card", job)
    part = found["result"]["bore_survey"]
    assert part["taper_pin_axis"]["interval"]["high"] == pytest.approx(TAPER_HIGH, rel=1e-6)
    assert verdict_on(found, "taper_pin_axis")["interval"]["low"] == 0.0
    page = client.post("/v1/job-card", json=job, headers={"Accept": "text/html"})
    told = " ".join(Reader(page.text).told())
    assert "(95 %: 0.000 to 0.008) mm" in told
    assert "Judged from its 95 % interval" in told


def test_rows_tell_it_where_they_have_it(client: FlaskClient) -> None:
    """The second row's readings are clear of each other."""
    body = {
        "columns": {
            "depth": {"unit": "mm", "values": ["10;40;70"] * 2},
            "pin_axis": {
                "unit": "mm",
                "values": ["68.004;68.003;68.002", "68.064;68.033;68.002"],
                "uncertainty": 2 * U,
            },
            "thrust_axis": {
                "unit": "mm",
                "values": ["68.003;68.004;68.002", "68.003;68.033;68.060"],
                "uncertainty": 2 * U,
            },
        }
    }
    found = post(client, "bore-survey/batch", body)
    tied, clear = found["results"]["taper_pin_axis"]["intervals"]
    assert tied["high"] == pytest.approx(TAPER_HIGH, rel=1e-6)
    assert clear is None
    verdicts = found["verdicts"]["taper_pin_axis"]
    assert verdicts["interval"] == [tied, None]
    assert verdicts["conformance_probability"][0] is None
    assert verdicts["conformance_probability"][1] is not None
    warned = [w for w in found["warnings"] if w["code"] == "readings_within_uncertainty"]
    assert [w["rows"] for w in warned if w["field"] == "taper_pin_axis"] == [[1]]
    sheet = client.post("/v1/bore-survey/batch", json=body, headers={"Accept": "text/csv"}).text
    first, second = csv.DictReader(io.StringIO(sheet), strict=True)
    high = "taper_pin_axis interval high [mm]"
    assert float(first[high]) == pytest.approx(TAPER_HIGH, rel=1e-6)
    assert second[high] == ""


@pytest.mark.parametrize(
    ("path", "asked"),
    [
        ("bore-survey", SURVEY),
        ("cylinder-spread", SPREAD),
        (
            "cylinder-spread/batch",
            {"columns": {"readings": {"unit": "kPa", "values": ["1000;1000;1000", "900;500"]}}},
        ),
    ],
)
def test_the_document_describes_it(client: FlaskClient, path: str, asked: dict[str, Any]) -> None:
    whole = strict(client.get("/openapi.json"))
    schema = whole["paths"][f"/v1/{path}"]["post"]["responses"]["200"]["content"]
    validator = Draft202012Validator(
        {**schema["application/json"]["schema"], "components": whole["components"]}
    )
    if "columns" in asked:
        asked = {**asked, "shared": {"repeatability": {"value": 10, "unit": "kPa"}}}
    found = post(client, path, asked)
    validator.validate(found)
    assert "interval" in str(found)
