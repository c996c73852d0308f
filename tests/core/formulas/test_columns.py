"""Every formula gives a column what it gives each engine by itself, and fits shapes together."""

import inspect
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.formulas import (
    air,
    bore,
    clocking,
    crank,
    cranking,
    fasteners,
    fits,
    geometry,
    machining,
    plays,
    ports,
    readings,
    rings,
    running_in,
    sleeves,
    threads,
)

MODULES = (
    air,
    bore,
    clocking,
    crank,
    cranking,
    fasteners,
    fits,
    geometry,
    machining,
    plays,
    ports,
    readings,
    rings,
    running_in,
    sleeves,
    threads,
)
BORE, STROKE, ROD, VOLUME, PRESSURE = (20, 160), (15, 60), (62, 200), (2, 900), (48, 1500)
CLEARANCE, EXPONENT, ANGLE, SMALL, GAP = (5, 60), (1.1, 1.4), (-360, 720), (0, 3), (0, 1.5)
EFFECTIVE, OFFSET, RADIUS, RISE, ALPHA = (90, 900), (-2, 2), (7, 50), (0, 200), (8e-6, 26e-6)

# Formula: the bounds of its inputs, and the size of what cancels in it. Four units in the last
# place are granted of the answer or of that, whichever is wider.
Bounds = tuple[float, float]
FORMULAS: dict[Callable[..., Any], tuple[list[Bounds], float]] = {
    air.altitude_pressure_kpa: ([(-430, 5500), (90, 110)], 0),
    air.density_ratio: ([(-430, 5500)], 0),
    air.reading_at_pressure_kpa: ([PRESSURE, (48, 110), (48, 110)], 0),
    air.length_at_20c_mm: ([BORE, (0, 50), ALPHA], 0),
    bore.out_of_round_mm: ([BORE, BORE], 0),
    bore.signed_taper_mm: ([BORE, BORE], 0),
    bore.barrel_mm: ([BORE, BORE, BORE], 160),
    bore.wear_mm: ([BORE, BORE], 0),
    bore.hot_size_mm: ([BORE, (-80, 260), ALPHA], 0),
    bore.hot_clearance_mm: ([BORE, (-80, 260), ALPHA, BORE, (-80, 260), ALPHA], 160),
    clocking.separation_deg: ([(-720, 720), (-720, 720)], 1440),
    clocking.arc_mm: ([BORE, (0, 180)], 0),
    clocking.to_axis_deg: ([(-720, 720), (-720, 720)], 1440),
    clocking.ring_end_margin_mm: ([BORE, (0, 180), SMALL], 160),
    crank.travel_mm: ([STROKE, ROD, ANGLE], 0),
    crank.angle_deg: ([(15, 60), ROD, (0, 15)], 0),
    crank.crank_radius_with_offset_mm: ([STROKE, ROD, OFFSET], 0),
    crank.travel_with_offset_mm: ([RADIUS, ROD, OFFSET, ANGLE], 250),
    crank.top_dead_centre_offset_deg: ([RADIUS, ROD, OFFSET], 0),
    crank.effective_stroke_mm: ([STROKE, ROD, (0, 110)], 0),
    cranking.cranking_pressure_kpa: ([(2, 15), (48, 110), EXPONENT, (10, 110)], 100),
    cranking.gain_percent: ([PRESSURE, PRESSURE], 100),
    cranking.ratio_with_oil: ([EFFECTIVE, CLEARANCE, SMALL], 0),
    cranking.volume_only_gain_percent: ([EFFECTIVE, CLEARANCE, SMALL, EXPONENT], 1000),
    cranking.excess_gain_percent: ([PRESSURE, PRESSURE, (0, 50)], 100),
    cranking.recommended_oil_ml: ([CLEARANCE], 0),
    cranking.ratio_with_hose: ([EFFECTIVE, CLEARANCE, SMALL], 0),
    cranking.hose_error_percent: ([EFFECTIVE, CLEARANCE, SMALL, EXPONENT], 1000),
    fasteners.wrench_setting_nm: ([(1, 400), (200, 1500), (0, 150), (0, 180)], 0),
    fasteners.uncorrected_torque_nm: ([(1, 400), (200, 1500), (0, 150), (0, 180)], 400),
    fasteners.clamp_n: ([(1, 400), (0.08, 0.35), (3, 20)], 0),
    fasteners.nut_factor_of_friction: ([(3, 20), (0.3, 3), (2, 20), (0.04, 0.4), (0.04, 0.4)], 0),
    fasteners.clamp_over_proof: ([(100, 50000), (5, 200), (200, 1300)], 0),
    fasteners.torsion_stress_mpa: ([(100, 50000), (0.3, 3), (2, 20), (2, 20), (0.04, 0.4)], 0),
    fasteners.combined_stress_over_proof: ([(100, 50000), (5, 200), (0, 800), (200, 1300)], 0),
    fits.clearance_mm: ([BORE, BORE], 0),
    fits.skirt_wear_mm: ([BORE, BORE], 0),
    fits.clearance_share: ([SMALL, BORE], 0),
    geometry.piston_area_mm2: ([BORE], 0),
    geometry.disc_volume_cc: ([BORE, (-6, 10)], 0),
    geometry.swept_volume_cc: ([BORE, STROKE], 0),
    geometry.displacement_cc: ([BORE, STROKE, (1, 8)], 0),
    geometry.largest_bore_mm: ([VOLUME, STROKE, (1, 8)], 0),
    geometry.crevice_cc: ([BORE, BORE, (1, 10)], 0),
    geometry.clearance_volume_cc: ([VOLUME, SMALL, SMALL, SMALL, SMALL, SMALL], 0),
    geometry.compression_ratio: ([VOLUME, CLEARANCE], 0),
    geometry.clearance_for_ratio_cc: ([VOLUME, (4, 18)], 0),
    geometry.gasket_overhang_mm: ([BORE, BORE], 0),
    geometry.change_percent: ([VOLUME, VOLUME], 0),
    machining.worn_side_clean_up_mm: ([BORE, BORE, (0.5, 1)], 320),
    machining.score_clean_up_mm: ([BORE, BORE, SMALL, (0, 1)], 320),
    machining.finish_bore_mm: ([BORE, (0.005, 0.4)], 0),
    machining.bore_to_mm: ([BORE, (0, 0.3)], 0),
    machining.wall_mean_mm: ([BORE, BORE], 0),
    machining.wall_thinnest_mm: ([BORE, BORE, GAP], 160),
    machining.largest_bore_for_wall_mm: ([BORE, (0.8, 6), GAP], 0),
    machining.zone_over_doubt: ([GAP, (0.0005, 0.05)], 0),
    machining.circumferential_m_s: ([BORE, (20, 1000)], 0),
    machining.axial_m_s: ([(20, 300), (5, 300)], 0),
    machining.included_angle_deg: ([(0.003, 3), (0.02, 9)], 0),
    machining.cycles_for_angle_rpm: ([(0.02, 9), (20, 300), (5, 120)], 0),
    plays.side_clearance_mm: ([SMALL, SMALL], 0),
    plays.back_clearance_mm: ([BORE, BORE, (1, 8)], 160),
    plays.pin_clearance_mm: ([BORE, BORE], 0),
    plays.wear_step_mm: ([BORE, BORE], 0),
    plays.bend_or_offset_mm: ([SMALL], 0),
    plays.radial_play_from_rock_mm: ([SMALL, (5, 60), ROD], 0),
    ports.port_travel_mm: ([(6, 15), OFFSET], 0),
    ports.port_opening_deg: ([(20, 60), ROD, (6, 15), OFFSET], 0),
    ports.port_duration_deg: ([(60, 180)], 360),
    ports.blowdown_deg: ([(60, 180), (60, 180)], 0),
    ports.trapped_volume_cc: ([BORE, (6, 15), OFFSET], 0),
    readings.level_ratio: ([PRESSURE, PRESSURE], 0),
    readings.mismatch_percent: ([PRESSURE, PRESSURE], 0),
    rings.mean_diameter_mm: ([BORE, BORE], 0),
    rings.gap_growth_mm: ([BORE, BORE], 0),
    rings.own_gap_mm: ([GAP, GAP], 0),
    rings.gap_in_worn_bore_mm: ([GAP, GAP], 0),
    rings.wanted_gap_mm: ([(0.002, 0.012), BORE], 0),
    rings.filing_mm: ([GAP, GAP], 0),
    rings.hot_gap_mm: ([GAP, BORE, RISE, ALPHA, RISE, ALPHA], 2),
    sleeves.interference_mm: ([BORE, BORE], 0),
    sleeves.heat_cylinder_to_c: ([BORE, BORE, GAP, (-80, 260), ALPHA, ALPHA], 1e6),
    sleeves.interference_left_mm: ([BORE, BORE, (20, 260), ALPHA, ALPHA], 160),
    sleeves.interference_wanted_mm: ([BORE, (20, 260), ALPHA, ALPHA, GAP], 2),
    running_in.mean_piston_speed_m_s: ([(15, 150), (50, 20000)], 0),
    running_in.oil_ml: ([(50, 500_000), (8, 200)], 0),
    running_in.oil_in_mix_ml: ([(50, 500_000), (8, 200)], 0),
    running_in.lacking: ([(0, 5000), (0, 5000)], 0),
    threads.thread_pitch_dia_mm: ([(5, 20), (0.3, 3)], 0),
    threads.thread_minor_dia_mm: ([(5, 20), (0.3, 3)], 0),
    threads.stress_area_mm2: ([(2, 20), (2, 20)], 0),
    threads.advance_mm: ([(0.3, 3), (5, 360)], 0),
}
# Formulas of a list of readings, with the number of further inputs; lists along the last axis.
OF_LISTS: dict[Callable[..., Any], list[Bounds]] = {
    fits.largest_clearance_mm: [BORE],
    fits.smallest_clearance_mm: [BORE],
    fits.mean_clearance_mm: [BORE],
    bore.taper_mm: [],
    readings.spread_percent: [],
    readings.lowest_over_highest: [],
    readings.each_over_highest: [],
    readings.first_over_expected: [PRESSURE],
    readings.last_over_expected: [PRESSURE],
    readings.first_over_last: [],
    readings.build_up_quotient: [(0.1, 1)],
    readings.strokes_to_95_percent: [],
}
ROWS = 9


def drawn(data: st.DataObject, bounds: Bounds, *shape: int) -> Any:
    count = int(np.prod(shape))
    one = st.floats(*bounds, allow_subnormal=False)
    return np.array(data.draw(st.lists(one, min_size=count, max_size=count))).reshape(shape)


def assert_close(found: Any, expected: Any, size: float) -> None:
    granted = 4 * np.spacing(np.maximum(np.abs(expected), size))
    assert np.all(np.abs(found - expected) <= granted)


def label(formula: Callable[..., Any]) -> str:
    return f"{formula.__module__.rsplit('.', 1)[1]}.{formula.__name__}"


def test_no_formula_is_left_out() -> None:
    public = {
        member
        for module in MODULES
        for name, member in inspect.getmembers(module, inspect.isfunction)
        if member.__module__ == module.__name__ and not name.startswith("_")
    }
    assert public == set(FORMULAS) | set(OF_LISTS)


@pytest.mark.parametrize("formula", FORMULAS, ids=label)
@given(data=st.data())
def test_column_equals_scalars(formula: Callable[..., Any], data: st.DataObject) -> None:
    bounds, size = FORMULAS[formula]
    columns = [drawn(data, each, ROWS) for each in bounds]
    found = formula(*columns)
    one_by_one = [formula(*map(float, row)) for row in zip(*columns, strict=True)]
    assert found.shape == (ROWS,)
    assert all(isinstance(value, float) for value in one_by_one)
    assert np.all(np.isfinite(found))
    assert_close(found, np.array(one_by_one), size)


@pytest.mark.parametrize("formula", FORMULAS, ids=label)
@given(data=st.data())
def test_shapes_fit_together(formula: Callable[..., Any], data: st.DataObject) -> None:
    bounds, size = FORMULAS[formula]
    first = drawn(data, bounds[0], ROWS)
    rest = [float(drawn(data, each, 1)[0]) for each in bounds[1:]]
    filled = [np.full(ROWS, value) for value in rest]
    assert_close(formula(first, *rest), formula(first, *filled), size)


@pytest.mark.parametrize("formula", OF_LISTS, ids=label)
@given(data=st.data())
def test_lists_lie_along_the_last_axis(formula: Callable[..., Any], data: st.DataObject) -> None:
    lists = drawn(data, (20, 160), ROWS, 5)
    rest = [drawn(data, each, ROWS) for each in OF_LISTS[formula]]
    found = formula(lists, *rest)
    alone = [formula(lists[row], *(float(each[row]) for each in rest)) for row in range(ROWS)]
    assert_close(found, np.array(alone), 160)
