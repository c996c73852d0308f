"""Physical nonsense is refused in the words of the trade, on single questions and on the job card.

Source: common practice, no source; a factor of 25.4 is that of the inch (exact).
"""

from typing import Any

import pytest
from flask.testing import FlaskClient


def mm(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "mm"}


def survey(unit: str, depths: list[float], pin: list[float], thrust: list[float]) -> dict[str, Any]:
    return {
        "depth": {"unit": "mm", "values": depths},
        "pin_axis": {"unit": unit, "values": pin},
        "thrust_axis": {"unit": unit, "values": thrust},
    }


DEPTHS = [8.0, 30.0]
INCH_AS_MM = survey("mm", DEPTHS, [2.679, 2.678], [2.680, 2.679])
MM_AS_INCH = survey("in", DEPTHS, [68.06, 68.05], [68.09, 68.07])
ONE_DEPTH = survey("mm", [8.0], [68.06], [68.09])
SOUND = survey("mm", DEPTHS, [68.06, 68.05], [68.09, 68.07])
HEAD = {
    "bore": mm(68.0),
    "stroke": mm(66.0),
    "chamber": {"value": 27.6, "unit": "cc"},
    "gasket_thickness": mm(0.5),
    "deck": mm(0.3),
}
ORDER = {
    "work": "bore_and_hone",
    "bore_kind": "iron",
    "piston_size": mm(68.461),
    "clearance_low": mm(0.030),
    "clearance_high": mm(0.040),
}
REFUSED: list[tuple[str, dict[str, Any], str, str]] = [
    (
        "compression-ratio",
        {**HEAD, "gasket_bore": mm(66.0)},
        "#/gasket_bore",
        "a gasket bore smaller than the cylinder overhangs it",
    ),
    (
        "job-card",
        {"engine": {**HEAD, "gasket_bore": mm(66.0)}},
        "#/engine/gasket_bore",
        "a gasket bore smaller than the cylinder overhangs it",
    ),
    (
        "piston-clearance",
        {"bore_largest": mm(68.496), "piston_size": mm(68.711)},
        "#/piston_size",
        "the piston is more than 0.05 mm larger than the bore",
    ),
    (
        "cylinder-decision",
        {"bore_kind": "iron", "bore_survey": SOUND, "piston_size": mm(68.461)},
        "#/piston_size",
        "the piston is more than 0.05 mm larger than the bore",
    ),
    (
        "order-card",
        {**ORDER, "gasket_bore": mm(68.4)},
        "#/gasket_bore",
        "the head gasket's bore is not larger than the finish bore",
    ),
    ("bore-survey", INCH_AS_MM, "#/pin_axis/values/0", "off by a factor of 25.4? 2.679 in"),
    ("bore-survey", MM_AS_INCH, "#/pin_axis/values/0", "off by a factor of 25.4? 68.06 mm"),
    (
        "job-card",
        {"cylinder": {"bore_survey": MM_AS_INCH}},
        "#/cylinder/bore_survey/pin_axis/values/0",
        "off by a factor of 25.4? 68.06 mm",
    ),
    ("bore-survey", ONE_DEPTH, "#/depth/values", "2 to 20 readings are needed, 1 given"),
    (
        "job-card",
        {"cylinder": {"bore_survey": ONE_DEPTH}},
        "#/cylinder/bore_survey/depth/values",
        "depths below the deck",
    ),
    (
        "order-card",
        {**ORDER, "bore_kind": "plated_aluminium"},
        "#/work",
        "a plated bore is never sent for boring",
    ),
    ("order-card", {**ORDER, "bore_kind": "unknown"}, "#/work", "kind of bore is not known"),
    (
        "bore-order",
        {
            **{name: ORDER[name] for name in ORDER if name != "work"},
            "hone_stock": mm(0.06),
            "clearance_low": mm(0.05),
        },
        "#/clearance_low",
        "the least clearance is not under the largest",
    ),
]


@pytest.mark.parametrize(("name", "request_", "pointer", "said"), REFUSED)
def test_refused_with_the_field_and_the_reason(
    client: FlaskClient, name: str, request_: dict[str, Any], pointer: str, said: str
) -> None:
    response = client.post(f"/v1/{name}", json=request_)
    assert response.status_code == 422
    assert response.content_type == "application/problem+json"
    found = {fault["pointer"]: fault["detail"] for fault in response.get_json()["errors"]}
    assert said in found[pointer]


@pytest.mark.parametrize("name", ["bore-survey", "cylinder-decision", "job-card"])
def test_a_bottom_wider_than_the_top_is_a_warning(client: FlaskClient, name: str) -> None:
    wider = survey("mm", [8.0, 30.0, 60.0], [68.01, 68.02, 68.04], [68.01, 68.03, 68.05])
    asked = {
        "bore-survey": wider,
        "cylinder-decision": {"bore_survey": wider},
        "job-card": {"cylinder": {"bore_survey": wider}},
    }
    found = client.post(f"/v1/{name}", json=asked[name]).get_json()
    assert "bottom_wider_than_top" in {w["code"] for w in found["warnings"]}
