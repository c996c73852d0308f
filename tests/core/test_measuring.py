"""The bench's instruments against its table of uncertainties.

The table: common practice, no source (figures of the trade brief, 6 digits); the arithmetic: JCGM
100:2008, 4.3 and 5.1 (from memory). u is one standard uncertainty, U twice that.
"""

import dataclasses
import math
from typing import Any

import pytest
from bench_instruments import (
    FEELER,
    GAUGE,
    MICROMETER,
    NEAR_ITS_RING,
    SET_IN_IT,
    SIX_DIGITS,
    STEADY,
    asked,
    fit,
    of_table,
    ordinary,
    typical,
)

from ringland_service.core.calculations.cylinder import piston_clearance
from ringland_service.core.metrology.instruments import Instrument, Measured, components
from ringland_service.core.metrology.propagation import propagate


def test_bore_ordinary() -> None:
    assert ordinary().u["bore_largest_at_20c_mm"] == of_table(0.00341216, 0.00682432)


def test_bore_set_in_a_ring_near_its_size() -> None:
    found = fit(
        68.0, 68.0, NEAR_ITS_RING, MICROMETER, readings_each=5, temperature_uncertainty_k=1.0
    )
    assert found.u["bore_largest_at_20c_mm"] == of_table(0.00122741, 0.00245483)


def test_piston_by_micrometer() -> None:
    assert ordinary().u["piston_at_20c_mm"] == of_table(0.00240345, 0.0048069)


def test_clearance_by_two_instruments() -> None:
    assert ordinary(68.05, 68.0).u["clearance_max_mm"] == of_table(0.00417375, 0.00834751)


def test_clearance_with_the_gauge_set_in_the_same_micrometer() -> None:
    found = fit(68.05, 68.0, SET_IN_IT, STEADY, readings_each=5, temperature_uncertainty_k=1.0)
    assert found.u["clearance_max_mm"] == of_table(0.0016409, 0.0032818)
    # The micrometer's own error drops out however large it is; it stays in the bore.
    coarse = dataclasses.replace(STEADY, max_permissible_error=0.05)
    worse = fit(68.05, 68.0, SET_IN_IT, coarse, readings_each=5, temperature_uncertainty_k=1.0)
    assert worse.u["clearance_max_mm"] == pytest.approx(found.u["clearance_max_mm"], rel=1e-6)
    assert worse.u["bore_largest_at_20c_mm"] > 0.05 / math.sqrt(3.0)


@dataclasses.dataclass(frozen=True)
class Difference:
    """Two readings of one gauge."""

    y: Any


def difference(i: Any) -> Difference:
    return Difference(i.bore_largest_mm - i.bore_smallest_mm)


TWO = piston_clearance.Inputs(
    piston_size_mm=68.0, bore_largest_mm=68.05, bore_smallest_mm=68.02, bore_survey=None
)


def u_of_difference(gauge: Instrument) -> float:
    readings = [
        Measured("gauge", (name,), getattr(TWO, name), 210.0)
        for name in ("bore_largest_mm", "bore_smallest_mm")
    ]
    return float(propagate(difference, TWO, components({"gauge": gauge}, readings, 3))["y"])


def test_out_of_round_is_a_difference_of_one_gauge() -> None:
    short = dataclasses.replace(GAUGE, short_range_error=0.0015)
    assert u_of_difference(short) == of_table(0.00189297, 0.00378594)
    # Its U is about half of a diameter's; without a short-range error nothing of it cancels.
    assert u_of_difference(GAUGE) > 2.0 * u_of_difference(short)
    # Split in two, the error of one reading alone stays what it was.
    found = fit(68.0, 68.0, short, MICROMETER, readings_each=3, temperature_uncertainty_k=2.0)
    assert found.u["bore_largest_at_20c_mm"] == of_table(0.00341216, 0.00682432)


def test_a_short_range_error_beyond_the_maximum_error_adds_nothing() -> None:
    wild = dataclasses.replace(GAUGE, short_range_error=1.0)
    assert u_of_difference(wild) == pytest.approx(u_of_difference(GAUGE), rel=1e-9)


RING = {"bore_mm": 68.496, "top_gap_mm": 0.21}
OLD = {
    "old_gap_mm": 0.62,
    "old_gap_pin_axis_mm": 68.062,
    "old_gap_thrust_axis_mm": 68.094,
    "unworn_mm": 68.012,
}


def test_ring_gap_by_feeler() -> None:
    found = asked("ring-gap", RING, {"top_gap_mm": "feeler"}, instruments=(FEELER,))
    assert found.u["top_gap_mm"] == of_table(0.00645497, 0.0129099)


def test_a_rings_own_gap_less_the_bores_growth() -> None:
    """The table takes the growth as one difference of two readings: U = 0.00378594."""
    uncertainties = {"old_gap_mm": "feeler", "unworn_mm": 0.00378594}
    found = asked("ring-gap", RING | OLD, uncertainties, instruments=(FEELER,))
    assert found.u["gap_growth_mm"] == pytest.approx(0.00594694, rel=SIX_DIGITS)
    assert found.u["own_gap_mm"] == of_table(0.00877683, 0.0175537)
    # Reading by reading the mean of two axes is a little better than one of them.
    short = dataclasses.replace(GAUGE, short_range_error=0.0015)
    gauged = dict.fromkeys(OLD, "gauge") | {"old_gap_mm": "feeler"}
    better = asked("ring-gap", RING | OLD, gauged, instruments=(FEELER, short), readings_each=3)
    assert 0.00645497 < better.u["own_gap_mm"] < 0.00877683


@pytest.mark.parametrize(
    ("error", "weather", "u", "expanded"),
    [
        (3.0, None, 13.4288, 26.8576),
        (5.0, None, 21.0159, 42.0317),
        (4.0, 2.0, 18.9289, 37.8578),
    ],
)
def test_compression_at_700_kpa(
    error: float, weather: float | None, u: float, expanded: float
) -> None:
    inputs = {
        "reading_kpa": 700.0,
        "altitude_m": 0.0,
        "gauge_error_pct": error,
        "repeatability_kpa_diff": 10.0,
        "weather_kpa_diff": weather,
    }
    found = asked("compression-level", inputs, {})
    assert found.u["reading_at_sea_level_kpa"] == of_table(u, expanded)
    assert found.outputs.reading_uncertainty_kpa_diff == pytest.approx(expanded, rel=SIX_DIGITS)


def test_ratio_of_two_cylinders_by_one_gauge() -> None:
    """√2·10/(700·√3): the gauge's own error cancels. Readings 0.02 kPa apart, clear of the kink."""
    inputs = {"readings_kpa": (700.0, 699.98)}
    stated = asked("cylinder-spread", inputs | {"repeatability_kpa_diff": 10.0}, {})
    assert stated.u["lowest_over_highest"] == pytest.approx(0.0116642, rel=2e-5)
    kind = "compression_gauge"
    by_gauge = asked(
        "cylinder-spread", inputs, {"readings_kpa": kind}, instruments=(typical(kind),)
    )
    assert by_gauge.u["lowest_over_highest"] == pytest.approx(0.0116642, rel=2e-5)


def test_an_error_that_is_a_share_cancels_in_a_ratio_of_unlike_readings() -> None:
    gauge = Instrument("gauge", relative_error=0.05, short_range_error=0.0)
    inputs = {"readings_kpa": (1180.0, 760.0)}
    found = asked("cylinder-spread", inputs, {"readings_kpa": "gauge"}, instruments=(gauge,))
    assert found.u["lowest_over_highest"] < 1e-9
    zero = Instrument("gauge", max_permissible_error=20.0, short_range_error=0.0)
    found = asked("cylinder-spread", inputs, {"readings_kpa": "gauge"}, instruments=(zero,))
    # By hand: (20 / √3) · (1 − 760/1180) / 1180.
    expected = 20.0 / math.sqrt(3.0) * (1.0 - 760.0 / 1180.0) / 1180.0
    assert found.u["lowest_over_highest"] == pytest.approx(expected, rel=1e-7)


def test_static_ratio() -> None:
    parts = {
        "bore_mm": 68.0,
        "stroke_mm": 66.0,
        "chamber_cc": 27.6,
        "gasket_bore_mm": 69.5,
        "gasket_thickness_mm": 0.5,
        "deck_mm": 0.3,
        "dome_cc": 1.8,
        "dish_cc": 0.0,
        "crevice_cc": 0.4,
    }
    uncertainties = {
        "chamber_cc": "burette",
        "gasket_thickness_mm": "depth_gauge",
        "deck_mm": "depth_gauge",
    }
    bench = (typical("burette"), typical("depth_gauge"))
    found = asked("compression-ratio", parts, uncertainties, instruments=bench)
    assert found.u["compression_ratio"] == of_table(0.0366991, 0.0733981)


def test_the_worked_combination_by_instruments() -> None:
    found = ordinary(72.036, 71.9615)
    assert found.u["clearance_max_mm"] == of_table(0.00420961, 0.00841922)
