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
    camshaft,
    charged,
    clocking,
    crank,
    crankcase,
    cranking,
    facing,
    fasteners,
    fits,
    geometry,
    lash,
    leak,
    machining,
    oil_use,
    plays,
    ports,
    position,
    readings,
    rings,
    running_in,
    sleeves,
    springs,
    squish,
    threads,
    valves,
)

MODULES = (
    air,
    bore,
    camshaft,
    charged,
    clocking,
    crank,
    crankcase,
    cranking,
    facing,
    fasteners,
    fits,
    geometry,
    lash,
    leak,
    machining,
    oil_use,
    plays,
    ports,
    position,
    readings,
    rings,
    running_in,
    sleeves,
    springs,
    squish,
    threads,
    valves,
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
    charged.piston_force_n: ([PRESSURE, BORE], 0),
    charged.crank_torque_nm: ([PRESSURE, STROKE, ROD, (0, 90)], 0),
    charged.peak_angle_deg: ([STROKE, ROD], 0),
    camshaft.lobe_lift_mm: ([BORE, BORE], 0),
    camshaft.sprocket_pitch_diameter_mm: ([(4, 13), (12, 60)], 0),
    camshaft.cam_retard_cam_deg: ([OFFSET, BORE], 0),
    camshaft.duration_deg: ([(-60, 120), (-60, 120)], 420),
    camshaft.lobe_centre_deg: ([(120, 400), (-60, 120)], 0),
    camshaft.lobe_separation_cam_deg: ([(80, 130), (80, 130)], 0),
    camshaft.height_lost_mm: ([OFFSET, (0, 45)], 0),
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
    crankcase.at_start_temperature_kpa: ([(-60, 60), (48, 110), (-20, 90), (-20, 90)], 60),
    crankcase.loss_per_minute_kpa: ([(-60, 60), (-60, 60), (0.5, 60)], 0),
    crankcase.leak_per_minute_cc: ([VOLUME, (-10, 60), (48, 110)], 0),
    cranking.cranking_pressure_kpa: ([(2, 15), (48, 110), EXPONENT, (10, 110)], 100),
    cranking.gain_percent: ([PRESSURE, PRESSURE], 100),
    cranking.ratio_with_oil: ([EFFECTIVE, CLEARANCE, SMALL], 0),
    cranking.volume_only_gain_percent: ([EFFECTIVE, CLEARANCE, SMALL, EXPONENT], 1000),
    cranking.excess_gain_percent: ([PRESSURE, PRESSURE, (0, 50)], 100),
    cranking.recommended_oil_ml: ([CLEARANCE], 0),
    cranking.ratio_with_hose: ([EFFECTIVE, CLEARANCE, SMALL], 0),
    cranking.hose_error_percent: ([EFFECTIVE, CLEARANCE, SMALL, EXPONENT], 1000),
    facing.cut_for_volume_mm: ([SMALL, (100, 20000)], 0),
    facing.volume_of_cut_cc: ([SMALL, (100, 20000)], 0),
    facing.skim_mm: ([SMALL, SMALL], 0),
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
    leak.leak_percent: ([(500, 1000), (0, 500)], 0),
    leak.hole_area_mm2: ([(0.3, 3)], 0),
    leak.hole_diameter_mm: ([(0.01, 30)], 0),
    leak.flow_function: ([(0, 1)], 0),
    leak.nozzle_ratio: ([(48, 600), (600, 1100)], 0),
    leak.leak_area_mm2: ([(500, 1000), (1, 499), (0.3, 3), (48, 110)], 0),
    leak.leak_percent_on_tester: ([(0, 30), (0.3, 3), (50, 1000), (48, 110)], 0),
    machining.worn_side_clean_up_mm: ([BORE, BORE, (0.5, 1)], 320),
    machining.score_clean_up_mm: ([BORE, BORE, SMALL, (0, 1)], 320),
    machining.finish_bore_mm: ([BORE, (0.005, 0.4)], 0),
    machining.bore_to_mm: ([BORE, (0, 0.3)], 0),
    machining.wall_mean_mm: ([BORE, BORE], 0),
    machining.wall_thinnest_mm: ([BORE, BORE, GAP], 160),
    machining.largest_bore_for_wall_mm: ([BORE, (0.8, 6), GAP], 0),
    machining.zone_over_uncertainty: ([GAP, (0.0005, 0.05)], 0),
    machining.circumferential_speed_m_s: ([BORE, (20, 1000)], 0),
    machining.axial_speed_m_s: ([(20, 300), (5, 300)], 0),
    machining.included_angle_deg: ([(0.003, 3), (0.02, 9)], 0),
    machining.cycles_for_angle_rpm: ([(0.02, 9), (20, 300), (5, 120)], 0),
    oil_use.oil_per_ml: ([(1, 20000), (0.1, 1e5)], 0),
    oil_use.oil_of_fuel_percent: ([(1, 20000), (0.1, 20000)], 0),
    plays.side_clearance_mm: ([SMALL, SMALL], 0),
    plays.back_clearance_mm: ([BORE, BORE, (1, 8)], 160),
    plays.pin_clearance_mm: ([BORE, BORE], 0),
    plays.wear_step_mm: ([BORE, BORE], 0),
    plays.bend_or_offset_mm: ([SMALL], 0),
    plays.radial_play_from_rock_mm: ([SMALL, (5, 60), ROD], 0),
    ports.port_travel_mm: ([(6, 15), OFFSET], 0),
    ports.port_opening_deg: ([(20, 60), ROD, (6, 15), OFFSET], 0),
    ports.port_duration_deg: ([(60, 180)], 360),
    ports.travel_for_duration_mm: ([STROKE, ROD, (30, 330)], 0),
    ports.blowdown_deg: ([(60, 180), (60, 180)], 0),
    ports.trapped_volume_cc: ([BORE, (6, 15), OFFSET], 0),
    position.angle_going_down_deg: ([RADIUS, ROD, OFFSET, (0, 13)], 180),
    position.angle_coming_up_deg: ([RADIUS, ROD, OFFSET, (0, 13)], 180),
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
    squish.squish_of_stack_mm: ([OFFSET, SMALL, OFFSET], 4),
    squish.squish_area_share: ([BORE, BORE], 0),
    squish.squish_with_gasket_mm: ([SMALL, SMALL, SMALL], 6),
    squish.gasket_for_squish_mm: ([SMALL, SMALL, SMALL], 6),
    running_in.mean_piston_speed_m_s: ([(15, 150), (50, 20000)], 0),
    running_in.oil_ml: ([(50, 500_000), (8, 200)], 0),
    running_in.oil_in_mix_ml: ([(50, 500_000), (8, 200)], 0),
    running_in.lacking: ([(0, 5000), (0, 5000)], 0),
    lash.shim_for_lash_mm: ([(0.5, 6), GAP, GAP, (0.4, 2)], 6),
    lash.lash_with_shim_mm: ([(0.5, 6), GAP, (0.5, 6), (0.4, 2)], 15),
    lash.lash_after_sink_mm: ([GAP, SMALL, (0.4, 2.5)], 8),
    lash.screw_turn_fraction: ([GAP, GAP, (0.3, 2), (0.7, 2.5)], 0),
    lash.lash_at_cam_mm: ([GAP, (0.7, 2.5)], 0),
    springs.rate_n_per_mm: ([(3, 300), (30, 60), (300, 900), (10, 25)], 0),
    springs.load_n: ([(3, 300), (30, 60), (1, 60), (10, 60)], 3600),
    springs.free_length_mm: ([(3, 300), (30, 60), (1, 60)], 0),
    springs.open_length_mm: ([(25, 60), (1, 20)], 0),
    springs.coil_bind_margin_mm: ([(20, 60), (8, 60)], 0),
    springs.loss_percent: ([(20, 60), (20, 60)], 0),
    springs.share_percent: ([(3, 300), (3, 300)], 0),
    springs.lean_angle_deg: ([SMALL, (20, 60)], 0),
    springs.rate_from_wire_n_per_mm: ([(70e3, 85e3), (0.8, 8), (5, 60), (1.5, 15)], 0),
    valves.guide_clearance_mm: ([(5, 6), (4, 6)], 0),
    valves.clearance_from_rock_mm: ([SMALL, (10, 120), (0, 120)], 0),
    valves.width_along_face_mm: ([(25, 40), (20, 25), (10, 80)], 0),
    valves.inside_rim_mm: ([(30, 40), (20, 40)], 0),
    valves.place_on_face: ([(30, 40), (20, 40), (0.5, 6), (10, 80)], 0),
    valves.edge_change_mm: ([(0.005, 2), (10, 40), (45, 80)], 0),
    valves.width_after_cut_mm: ([(30, 40), (20, 28), (0, 1.5), (10, 80)], 0),
    valves.feed_for_change_mm: ([(0, 2), (10, 40), (45, 80)], 0),
    threads.thread_pitch_diameter_mm: ([(5, 20), (0.3, 3)], 0),
    threads.thread_minor_diameter_mm: ([(5, 20), (0.3, 3)], 0),
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
