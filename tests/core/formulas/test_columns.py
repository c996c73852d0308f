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
    crank,
    cranking,
    fits,
    geometry,
    ports,
    readings,
    rings,
)

MODULES = (air, crank, cranking, fits, geometry, ports, readings, rings)
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
}
# Formulas of a list of readings, with the number of further inputs; lists along the last axis.
OF_LISTS: dict[Callable[..., Any], list[Bounds]] = {
    fits.largest_clearance_mm: [BORE],
    fits.smallest_clearance_mm: [BORE],
    fits.mean_clearance_mm: [BORE],
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
