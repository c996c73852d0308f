"""Survey, hot clearance, ring sides, pin and rod: uncertainty of the bench, and what is refused."""

import dataclasses
from typing import Any

import numpy as np
import pytest

from ringland_service.core.calculations.cylinder import (
    bore_survey,
    hot_clearance,
    pin_fits,
    ring_side_clearance,
    rod_play,
)
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.instruments import Instrument
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.request import Measuring, Request, Stated
from ringland_service.engine.response import DomainError, Response
from ringland_service.engine.scalar import answer

SURVEY, HOT = bore_survey.CALCULATION, hot_clearance.CALCULATION
SIDE, PIN, ROD = ring_side_clearance.CALCULATION, pin_fits.CALCULATION, rod_play.CALCULATION

WORN: dict[str, Any] = {
    "depth_mm": (8.0, 25.0, 45.0, 65.0, 85.0),
    "pin_axis_mm": (68.062, 68.048, 68.034, 68.022, 68.012),
    "thrust_axis_mm": (68.094, 68.076, 68.052, 68.034, 68.016),
    "unworn_mm": 68.012,
}
PLATED: dict[str, Any] = {
    "depth_mm": (8.0, 18.0, 27.0, 60.0),
    "pin_axis_mm": (56.014, 56.014, 56.013, 56.013),
    "thrust_axis_mm": (56.018, 56.017, 56.016, 56.015),
}
GAUGE = Instrument(
    "gauge",
    max_permissible_error=0.005,
    zero_setting_error=0.002,
    repeatability=0.002,
    resolution=0.001,
    short_range_error=0.0015,
)


def two(pin: tuple[Any, ...], thrust: tuple[Any, ...], *depths: float) -> dict[str, Any]:
    return {"depth_mm": depths, "pin_axis_mm": pin, "thrust_axis_mm": thrust}


REFUSED: list[tuple[Calculation, dict[str, Any], str]] = [
    (SURVEY, two((68.0, 68.0), (68.0,), 8.0, 25.0), "different length"),
    (SURVEY, two((68.0, 68.0), (68.0, 68.0), 8.0, 8.0), "stands there twice"),
    (SURVEY, two((68.0, None), (68.0, None), 8.0, 25.0), "no reading on either axis"),
    (SURVEY, WORN | {"nominal_bore_mm": 68.513}, "0.5 mm under or 3 mm over the nominal bore"),
    (SURVEY, WORN | {"nominal_bore_mm": 65.09}, "0.5 mm under or 3 mm over the nominal bore"),
    (SURVEY, WORN | {"unworn_mm": 72.0}, "the unworn reference"),
    (SURVEY, WORN | {"bore_temperature_c": 25.0}, "expansion of the bore must be known"),
    (
        HOT,
        {"bore_mm": 68.0, "piston_size_mm": 68.06, "bore_hot_c": 100.0, "piston_hot_c": 110.0},
        "larger than the bore",
    ),
    (
        HOT,
        {"bore_mm": 68.0, "piston_size_mm": 64.9, "bore_hot_c": 100.0, "piston_hot_c": 110.0},
        "3 mm smaller than the bore",
    ),
    (SIDE, {"top_groove_mm": 1.2, "top_width_mm": 1.23}, "wider than its groove"),
    (SIDE, {"second_groove_mm": 4.0, "second_width_mm": 1.2}, "more than 1 mm wider"),
    (SIDE, {"top_feeler_mm": 0.06, "top_shape": "keystone"}, "no plain side clearance"),
    (
        SIDE,
        {"bore_mm": 62.0, "top_groove_root_mm": 62.0, "top_thickness_mm": 2.7},
        "not smaller than the bore",
    ),
    (PIN, {"pin_mm": 16.0, "pin_worn_mm": 16.001}, "worn pin is larger"),
    (PIN, {"pin_mm": 16.0, "piston_pin_bore_mm": 15.96}, "larger than its bore in the piston"),
    (PIN, {"pin_mm": 16.0, "piston_pin_bore_mm": 16.6}, "0.5 mm larger than the pin"),
    (PIN, {"pin_mm": 16.0, "small_end_bore_mm": 20.0}, "small_end: needle"),
    (PIN, {"pin_mm": 16.0, "small_end_bore_mm": 15.8}, "no press fit is that tight"),
    (
        PIN,
        {"pin_mm": 16.0, "small_end_bore_mm": 20.0, "small_end": "needle"},
        "needles between them",
    ),
    (ROD, {"small_end_tip_rock_mm": 9.0, "rod_mm": 80.0}, "a tenth of its length"),
    (ROD, {"big_end_width_mm": 50.0, "rod_mm": 45.0}, "as wide as the rod is long"),
]


def ask(calculation: Calculation, inputs: dict[str, Any], **about: Any) -> Response:
    return answer(calculation, Request(inputs=calculation.inputs(**inputs), **about))


@pytest.mark.parametrize(("calculation", "inputs", "why"), REFUSED)
def test_refused(calculation: Calculation, inputs: dict[str, Any], why: str) -> None:
    with pytest.raises(DomainError, match=why):
        ask(calculation, inputs)


def surveyed(inputs: dict[str, Any]) -> Response:
    """Return the answer to a survey by the ordinary bore gauge, three readings each."""
    fields = ("pin_axis_mm", "thrust_axis_mm", "unworn_mm")
    uncertainties = {(name,): Stated(instrument="gauge") for name in fields if name in inputs}
    measuring = Measuring({"gauge": GAUGE}, 3, 2.0)
    maker = {"bore_largest": Limit(high=68.1), "out_of_round": Limit(high=0.05)}
    return ask(SURVEY, inputs, uncertainties=uncertainties, measuring=measuring, limits=maker)


def test_uncertainty_of_one_gauge_on_one_setting() -> None:
    # Source: bench table of the trade brief, 6 digits: a bore √(0.00289² + 0.00115² + 0.00115² +
    # 0.000748² + 0.000289²); a difference √(0.00163² + 0.000408² + 0.000866²); k = 2.
    found = surveyed(WORN | {"bore_alpha_per_k": 1.1e-5})
    u = {name: 2 * value for name, value in found.u.items()}
    assert u["largest_mm"] == pytest.approx(0.00682477, rel=2e-5)
    for name in ("out_of_round_mm", "taper_pin_axis_mm", "taper_thrust_axis_mm", "wear_mm"):
        assert u[name] == pytest.approx(0.00378594, rel=2e-5), name
    verdicts = {v.check.name: v for v in found.verdicts}
    words = {name: v.word for name, v in verdicts.items()}
    assert words == {
        "bore_largest": "too_close_to_call",
        "out_of_round": "pass",
        "taper_pin_axis": "too_close_to_call",
        "taper_thrust_axis": "fail",
        "bore_wear": "pass",
    }
    assert verdicts["bore_largest"].judged.probability == pytest.approx(0.960652, rel=2e-5)
    assert verdicts["taper_pin_axis"].judged.probability == pytest.approx(0.5, rel=1e-6)


def test_where_an_extreme_stands_carries_no_uncertainty() -> None:
    # Three readings of 56.013 share the smallest bore: moving one must not move its depth.
    found = surveyed(PLATED)
    places = {"largest_at_depth_mm", "smallest_at_depth_mm", "out_of_round_at_depth_mm"}
    assert not places & found.u.keys()
    assert found.outputs.smallest_at_depth_mm == 27.0
    assert "readings_within_uncertainty" in {w.code for w in found.warnings}


def test_a_clear_lead_is_settled() -> None:
    steep = two((68.0, 68.2), (68.1, 68.4), 8.0, 25.0)
    found = surveyed(steep)
    assert "readings_within_uncertainty" not in {w.code for w in found.warnings}


@pytest.mark.parametrize(
    ("bore_use", "codes"), [("used", {"bottom_wider_than_top"}), ("fresh", set[str]())]
)
def test_a_wide_bottom_warns_in_a_used_bore_only(bore_use: str, codes: set[str]) -> None:
    found = ask(SURVEY, two((68.0, 68.006), (68.0, 68.0), 8.0, 85.0) | {"bore_use": bore_use})
    assert {w.code for w in found.warnings} & {"bottom_wider_than_top"} == codes


COLUMNS: list[tuple[Calculation, dict[str, Any]]] = [
    (
        HOT,
        {"bore_mm": 68.496, "piston_size_mm": 68.461, "bore_hot_c": 105.0, "piston_hot_c": 110.0},
    ),
    (
        SIDE,
        {
            "top_groove_mm": 1.235,
            "top_width_mm": 1.175,
            "bore_mm": 68.016,
            "top_groove_root_mm": 61.7,
            "top_thickness_mm": 2.7,
        },
    ),
    (PIN, {"pin_mm": 15.994, "pin_worn_mm": 15.982, "small_end_bore_mm": 16.027}),
    (ROD, {"small_end_tip_rock_mm": 1.35, "rod_mm": 110.0, "big_end_width_mm": 17.0}),
    (ROD, {"runout_left_mm": 0.02, "runout_right_mm": 0.04}),
]


@pytest.mark.parametrize(("calculation", "inputs"), COLUMNS)
def test_a_column_gives_what_each_engine_gives(
    calculation: Calculation, inputs: dict[str, Any]
) -> None:
    rows = [{name: value * (1 + k / 50) for name, value in inputs.items()} for k in range(4)]
    column = calculation.inputs(**{n: np.array([row[n] for row in rows]) for n in inputs})
    together = calculation.compute(column)
    for k, row in enumerate(rows):
        alone = calculation.compute(calculation.inputs(**row))
        for field in dataclasses.fields(alone):
            one = getattr(alone, field.name)
            many = getattr(together, field.name)
            if isinstance(one, str) or one is None:
                assert (many if one is None else many[k]) == one, field.name
            else:
                assert many[k] == pytest.approx(one, rel=1e-12, abs=1e-12), field.name
