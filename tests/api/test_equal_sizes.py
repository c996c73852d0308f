"""One size written in two units is one size: 3 in is 76.2 mm, though 3 × 25.4 falls 1 ulp short."""

from typing import Any

import pytest
from asking import post
from flask.testing import FlaskClient

MM, INCH = {"value": 76.2, "unit": "mm"}, {"value": 3, "unit": "in"}
PARTS = {
    "stroke": {"value": 60, "unit": "mm"},
    "chamber": {"value": 30, "unit": "cc"},
    "gasket_thickness": {"value": 0.5, "unit": "mm"},
    "deck": {"value": 0.3, "unit": "mm"},
}
WIDE = {"value": 78, "unit": "mm"}
PISTON = {"value": 76.15, "unit": "mm"}


def test_three_inches_are_a_little_short_in_binary() -> None:
    assert 3 * 25.4 < 76.2


# Calculation, the field that must not be below the other, that other, and what else is needed.
PAIRS = [
    ("compression-ratio", "gasket_bore", "bore", PARTS),
    ("overbore-ratio", "new_bore", "bore", {**PARTS, "gasket_bore": WIDE}),
    ("overbore-ratio", "gasket_bore", "new_bore", {**PARTS, "bore": PISTON}),
    ("piston-clearance", "bore_largest", "bore_smallest", {"piston_size": PISTON}),
]


@pytest.mark.parametrize(("name", "upper", "lower", "more"), PAIRS)
def test_equal_sizes_the_longer_in_millimetres(
    client: FlaskClient, name: str, upper: str, lower: str, more: Any
) -> None:
    post(client, name, {**more, upper: MM, lower: INCH})


@pytest.mark.parametrize(("name", "upper", "lower", "more"), PAIRS)
def test_equal_sizes_the_longer_in_inches(
    client: FlaskClient, name: str, upper: str, lower: str, more: Any
) -> None:
    post(client, name, {**more, upper: INCH, lower: MM})


def test_depth_on_the_end_of_the_skirt_travel_counts_in_any_unit(client: FlaskClient) -> None:
    survey = {
        "depth": {"values": [25, 76.2], "unit": "mm"},
        "pin_axis": {"values": [68.0, 68.05], "unit": "mm"},
        "thrust_axis": {"values": [68.0, 68.02], "unit": "mm"},
    }
    asked = {"piston_size": {"value": 67.95, "unit": "mm"}, "bore_survey": survey}
    for end in (MM, INCH):
        found = post(client, "piston-clearance", {**asked, "skirt_to": end})
        assert found["result"]["clearance_max"]["value"] == pytest.approx(0.10)


@pytest.mark.parametrize(
    ("small_end", "code"), [("plain", "pin_tight_in_small_end"), ("press_fit", "press_fit_loose")]
)
def test_a_pin_as_large_as_its_small_end_is_warned_of_in_any_unit(
    client: FlaskClient, small_end: str, code: str
) -> None:
    sizes = [(n / 1000, round(n * 0.0254, 4)) for n in (407, 552, 555, 700, 945, 1192)]
    assert {inch * 25.4 - mm > 0 for inch, mm in sizes if inch * 25.4 != mm} == {True, False}
    for inch, mm in sizes:
        pair = [{"value": inch, "unit": "in"}, {"value": mm, "unit": "mm"}]
        for pin, hole in (pair, pair[::-1]):
            asked = {"pin": pin, "small_end_bore": hole, "small_end": small_end}
            found = post(client, "pin-fits", asked)
            assert code in {w["code"] for w in found["warnings"]}, (pin, hole)


@pytest.mark.parametrize("times", [1.3, 2.6])
def test_a_rod_on_the_bound_of_the_usual_is_usual_in_any_unit(
    client: FlaskClient, times: float
) -> None:
    for stroke in (45.03, 66.0, 68.25929, 71.7):
        rod = times * stroke
        for unit, per_mm in (("mm", 1.0), ("cm", 0.1), ("in", 1 / 25.4)):
            asked = {
                "stroke": {"value": stroke, "unit": "mm"},
                "rod": {"value": rod * per_mm, "unit": unit},
                "crank_angle": {"value": 30, "unit": "deg"},
            }
            warned = {w["code"] for w in post(client, "piston-position", asked)["warnings"]}
            assert "rod_unusual" not in warned, asked
