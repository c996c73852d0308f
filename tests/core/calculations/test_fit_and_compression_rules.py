"""What piston clearance, ring gap and the compression tests refuse, and their uncertainty."""

from typing import Any

import pytest

from ringland_service.core.calculations.cylinder import piston_clearance, ring_gap
from ringland_service.core.calculations.engine_tests import (
    compression_level,
    cranking_pressure,
    cylinder_spread,
    pressure_build_up,
    wet_gain,
)
from ringland_service.core.declare import Calculation
from ringland_service.core.engines.survey import Survey
from ringland_service.core.metrology.instruments import Instrument
from ringland_service.engine.request import Measuring, Request, Stated
from ringland_service.engine.response import DomainError, Response
from ringland_service.engine.scalar import answer

FIT = piston_clearance.CALCULATION
LEVEL = compression_level.CALCULATION
CRANKING = cranking_pressure.CALCULATION
SURVEY = Survey(
    depth_mm=(8.0, 25.0, 45.0, 65.0, 85.0),
    pin_axis_mm=(68.062, 68.048, 68.034, 68.022, 68.012),
    thrust_axis_mm=(68.094, 68.076, 68.052, 68.034, 68.016),
)
UNEVEN = Survey(depth_mm=(8.0, 25.0), pin_axis_mm=(68.0, 68.0), thrust_axis_mm=(68.0,))
EMPTY = Survey(depth_mm=(8.0, 25.0), pin_axis_mm=(68.0, None), thrust_axis_mm=(68.0, None))
TWICE = Survey(depth_mm=(8.0, 8.0), pin_axis_mm=(68.0, 68.0), thrust_axis_mm=(68.0, 68.0))
IN_68 = {"piston_size_mm": 67.95, "bore_largest_mm": 68.0}
DECOMPRESSOR = {"ratio": 7.5, "decompressor_closes_deg": 95.0}

REFUSED: list[tuple[Calculation, dict[str, Any], str]] = [
    (FIT, {"piston_size_mm": 68.051, "bore_largest_mm": 68.0}, "larger than the bore"),
    (FIT, {"piston_size_mm": 64.99, "bore_largest_mm": 68.0}, "3 mm smaller than the bore"),
    (FIT, {"piston_size_mm": 64.9, "bore_survey": SURVEY}, "3 mm smaller than the bore"),
    (FIT, IN_68 | {"bore_smallest_mm": 68.001}, "smallest bore is larger"),
    (FIT, IN_68 | {"piston_temperature_c": 25.0}, "expansion of the piston must be known"),
    (FIT, IN_68 | {"bore_temperature_c": 25.0}, "expansion of the bore must be known"),
    (FIT, IN_68 | {"piston_size_new_mm": 67.93}, "cannot have worn"),
    (FIT, IN_68 | {"piston_kind": "two_stroke_iron", "bore_kind": "chromed"}, "kind of bore"),
    (FIT, IN_68 | {"piston_kind": "cast_air_cooled", "cycle": "two_stroke"}, "other cycle"),
    (FIT, {"piston_size_mm": 67.95, "bore_survey": UNEVEN}, "different length"),
    (FIT, {"piston_size_mm": 67.95, "bore_survey": EMPTY}, "no reading on either axis"),
    (FIT, {"piston_size_mm": 67.95, "bore_survey": TWICE}, "stands there twice"),
    (
        FIT,
        {"piston_size_mm": 67.95, "bore_survey": SURVEY, "skirt_from_mm": 80.0},
        "fewer than two",
    ),
    (
        FIT,
        {
            "piston_size_mm": 67.95,
            "bore_survey": SURVEY,
            "skirt_from_mm": 60.0,
            "skirt_to_mm": 30.0,
        },
        "ends above where it starts",
    ),
    (FIT, {"piston_size_mm": 67.95}, "no bore is given"),
    (
        ring_gap.CALCULATION,
        {
            "bore_mm": 68.0,
            "old_gap_pin_axis_mm": 72.0,
            "old_gap_thrust_axis_mm": 72.0,
            "unworn_mm": 68.0,
        },
        "not a zone of that bore",
    ),
    (LEVEL, {"reading_kpa": 800.0, "weather_kpa_diff": 2.0}, "worked out from altitude"),
    (
        LEVEL,
        {"reading_kpa": 800.0, "weather_kpa_diff": 2.0, "air_pressure_kpa_abs": 90.0},
        "has the weather in it",
    ),
    (
        LEVEL,
        {"reading_kpa": 800.0, "decompressor": "none", "decompressor_state": "automatic_active"},
        "cannot be in that state",
    ),
    (LEVEL, {"reading_kpa": 800.0, "cycle": "two_stroke", "valve_gear": "side_valve"}, "gear"),
    (CRANKING, {"ratio": 8.0, "n_low": 1.26}, "not in order"),
    (
        CRANKING,
        {"ratio": 8.0, "altitude_m": 1500.0, "throttle_closed_manifold_kpa_abs": 95.0},
        "above the air pressure",
    ),
    (CRANKING, DECOMPRESSOR | {"bore_mm": 68.0}, "says nothing without the engine's sizes"),
    (cylinder_spread.CALCULATION, {"readings_kpa": (0.0, 0.0)}, "no cylinder reads anything"),
    (
        cylinder_spread.CALCULATION,
        {"readings_kpa": (900.0, 900.0, 900.0), "layout": "vee"},
        "odd number",
    ),
    (
        wet_gain.CALCULATION,
        {"reading_kpa": 600.0, "wet_kpa": 700.0, "wet_oil_ml": 3.0, "clearance_cc": 12.0},
        "may lock the engine",
    ),
    (wet_gain.CALCULATION, {"reading_kpa": 0.0, "wet_kpa": 700.0}, "no gain"),
    (
        pressure_build_up.CALCULATION,
        {"stroke_readings_kpa": (300.0, 500.0, 499.0), "expected_kpa": 1000.0},
        "check valve leaks",
    ),
]


def ask(calculation: Calculation, inputs: dict[str, Any], **about: Any) -> Response:
    return answer(calculation, Request(inputs=calculation.inputs(**inputs), **about))


@pytest.mark.parametrize(("calculation", "inputs", "why"), REFUSED)
def test_refused(calculation: Calculation, inputs: dict[str, Any], why: str) -> None:
    with pytest.raises(DomainError, match=why):
        ask(calculation, inputs)


def clearance_u(
    gauge: Instrument, micrometer: Instrument, each: int, kelvin: float, **inputs: Any
) -> float:
    """Return the expanded uncertainty (k = 2) of the largest clearance."""
    bores = (
        [("bore_largest_mm",)]
        if "bore_largest_mm" in inputs
        else [("bore_survey", "pin_axis_mm"), ("bore_survey", "thrust_axis_mm")]
    )
    uncertainties = {path: Stated(instrument="gauge") for path in bores}
    uncertainties[("piston_size_mm",)] = Stated(instrument="micrometer")
    measuring = Measuring({"gauge": gauge, "micrometer": micrometer}, each, 2.0 * kelvin)
    return float(
        2 * ask(FIT, inputs, uncertainties=uncertainties, measuring=measuring).u["clearance_max_mm"]
    )


ORDINARY = Instrument(
    "gauge",
    max_permissible_error=0.005,
    zero_setting_error=0.002,
    repeatability=0.002,
    resolution=0.001,
)
OUTSIDE = Instrument(
    "micrometer", max_permissible_error=0.003, repeatability=0.0015, resolution=0.001
)
SET_IN = Instrument(
    "gauge",
    max_permissible_error=0.0015,
    zero_setting_error=0.0015,
    repeatability=0.001,
    resolution=0.001,
    zero_set_in="micrometer",
)
SAME = Instrument("micrometer", max_permissible_error=0.003, repeatability=0.001, resolution=0.001)
ALPHAS = {"bore_alpha_per_k": 1.1e-5, "piston_alpha_per_k": 2.05e-5}
PAIR = {"bore_largest_mm": 68.05, "piston_size_mm": 68.0} | ALPHAS


def test_clearance_by_two_instruments() -> None:
    # Table of bench uncertainty of the trade brief, 6 digits: parts 0.00289, 0.00115, 0.00115,
    # 0.000749, 0.00173, 0.000866, 0.00139, 0.000408.
    assert clearance_u(ORDINARY, OUTSIDE, 3, 1.0, **PAIR) == pytest.approx(0.00834751, rel=2e-6)


def test_clearance_by_a_gauge_set_in_the_same_micrometer() -> None:
    # The same table: the error of the micrometer cancels.
    assert clearance_u(SET_IN, SAME, 5, 0.5, **PAIR) == pytest.approx(0.0032818, rel=2e-6)


def test_clearance_at_20c_takes_its_uncertainty_from_the_table_of_materials() -> None:
    plain = {name: PAIR[name] for name in ("bore_largest_mm", "piston_size_mm")}
    assert clearance_u(SET_IN, SAME, 5, 0.5, **plain) == pytest.approx(0.0032818, rel=2e-6)


def test_clearance_by_survey() -> None:
    # Whole jobs of the trade brief, 6 digits: the worn single.
    inputs = {
        "bore_survey": SURVEY,
        "skirt_from_mm": 25.0,
        "skirt_to_mm": 85.0,
        "piston_size_mm": 67.935,
    }
    found = clearance_u(ORDINARY, OUTSIDE, 3, 1.0, **inputs, **ALPHAS)
    assert found == pytest.approx(0.00834672, rel=2e-6)


@pytest.mark.parametrize(
    ("gauge", "weather", "expanded"),
    [(3.0, None, 26.8576), (5.0, None, 42.0317), (4.0, 2.0, 37.8578)],
)
def test_compression_at_700_kpa(gauge: float, weather: float | None, expanded: float) -> None:
    # Table of bench uncertainty of the trade brief, 6 digits.
    found = ask(
        LEVEL,
        {
            "reading_kpa": 700.0,
            "altitude_m": 0.0,
            "gauge_error_pct": gauge,
            "repeatability_kpa_diff": 10.0,
            "weather_kpa_diff": weather,
        },
    )
    assert found.outputs.reading_uncertainty_kpa_diff == pytest.approx(expanded, rel=2e-6)
    # The formula and the propagation are two ways to the same uncertainty.
    assert 2 * found.u["reading_at_sea_level_kpa"] == pytest.approx(expanded, rel=2e-6)


def test_weather_counts_once_in_the_ratio() -> None:
    # Worked example of the trade brief: U = 48.348 kPa of the reading, over 1072 kPa expected.
    found = ask(
        LEVEL,
        {
            "reading_kpa": 905.0,
            "expected_kpa": 1072.0,
            "altitude_m": 300.0,
            "gauge_error_pct": 4.0,
            "repeatability_kpa_diff": 10.0,
            "weather_kpa_diff": 2.0,
        },
    )
    assert 2 * found.u["ratio"] == pytest.approx(48.348 / 1072.0, rel=2e-6)


def test_two_cylinders_on_one_gauge() -> None:
    # By hand: u(b/a) = 10 / √3 · √(1/a² + b²/a⁴); the error of the gauge itself cancels.
    found = ask(
        cylinder_spread.CALCULATION,
        {"readings_kpa": (700.0, 630.0), "repeatability_kpa_diff": 10.0},
    )
    by_hand = 10 / 3**0.5 * (1 / 700**2 + 630**2 / 700**4) ** 0.5
    assert found.u["lowest_over_highest"] == pytest.approx(by_hand, rel=1e-6)


def test_band_of_common_practice_needs_a_known_engine_without_decompressor() -> None:
    known = {
        "reading_kpa": 850.0,
        "altitude_m": 0.0,
        "cycle": "four_stroke",
        "valve_gear": "overhead_valves",
        "decompressor": "none",
    }
    assert [v.word for v in ask(LEVEL, known).verdicts] == ["fail"]
    assert not ask(LEVEL, known, defaults=False).verdicts
    for change in (
        {"decompressor": "unknown"},
        {"valve_gear": "side_valve"},
        {"cycle": None},
        {"throttle_open": False},
        {"expected_kpa": 1000.0},
    ):
        assert not ask(LEVEL, known | change).verdicts


def test_second_ring_smaller_than_the_top_ring_after_filing() -> None:
    # 0.004 and 0.005 of 68 mm: 0.272 and 0.340; the second ring is filed to 0.340.
    small = {"bore_mm": 68.0, "top_gap_mm": 0.25, "second_gap_mm": 0.20}
    wide = small | {"top_gap_mm": 0.35}
    codes = [{w.code for w in ask(ring_gap.CALCULATION, i).warnings} for i in (small, wide)]
    assert ["second_gap_smaller" in found for found in codes] == [False, True]
