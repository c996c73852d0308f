"""A whole compression test in one answer: C02, C05 to C08 and C10, as far as they are known."""

from ringland_service.core.calculations.engine_tests import (
    compression_level,
    cranking_pressure,
    cylinder_spread,
    pressure_build_up,
    wet_gain,
)
from ringland_service.core.calculations.engine_tests import compression_steps as steps
from ringland_service.core.calculations.engine_tests.agreements import AGREEMENTS
from ringland_service.core.calculations.geometry import (
    compression_ratio,
    displacement,
    dynamic_ratio,
    port_timing,
)
from ringland_service.core.declare import Composite, field_like, record
from ringland_service.core.numbers import Number

LEVEL, CRANKING = compression_level.Inputs, cranking_pressure.Inputs
RATIO, DYNAMIC, PORTS = compression_ratio.Inputs, dynamic_ratio.Inputs, port_timing.Inputs
Readings = tuple[float, ...]
EXPONENT = "compression exponent of the gain that oil's own volume makes"


@record
class Inputs:
    """The readings, how they were taken, and what is known of the engine."""

    reading_kpa: Number | None = field_like(LEVEL, "reading_kpa")
    stroke_readings_kpa: Readings | None = field_like(
        pressure_build_up.Inputs, "stroke_readings_kpa", example=None
    )
    baseline_first_over_last: Number | None = field_like(
        pressure_build_up.Inputs, "baseline_first_over_last"
    )
    readings_kpa: Readings | None = field_like(cylinder_spread.Inputs, "readings_kpa", example=None)
    first_again_kpa: Number | None = field_like(
        cylinder_spread.Inputs, "first_again_kpa", example=None
    )
    layout: str | None = field_like(cylinder_spread.Inputs, "layout")
    wet_kpa: Number | None = field_like(wet_gain.Inputs, "wet_kpa", example=None)
    wet_oil_ml: Number | None = field_like(wet_gain.Inputs, "wet_oil_ml")
    n: Number | None = field_like(wet_gain.Inputs, "n", description=EXPONENT)
    cylinder_upright: bool | None = field_like(wet_gain.Inputs, "cylinder_upright")
    expected_kpa: Number | None = field_like(LEVEL, "expected_kpa", example=None)
    n_low: Number | None = field_like(CRANKING, "n_low")
    n_mid: Number | None = field_like(CRANKING, "n_mid")
    n_high: Number | None = field_like(CRANKING, "n_high")
    expected_altitude_m: Number | None = field_like(LEVEL, "expected_altitude_m")
    gauge_error_pct: Number | None = field_like(LEVEL, "gauge_error_pct")
    repeatability_kpa_diff: Number | None = field_like(LEVEL, "repeatability_kpa_diff")
    hose_error_pct: Number | None = field_like(LEVEL, "hose_error_pct")
    weather_kpa_diff: Number | None = field_like(LEVEL, "weather_kpa_diff")
    altitude_m: Number | None = field_like(LEVEL, "altitude_m")
    air_pressure_kpa_abs: Number | None = field_like(LEVEL, "air_pressure_kpa_abs", example=None)
    weather_report_kpa_abs: Number | None = field_like(
        LEVEL, "weather_report_kpa_abs", example=None
    )
    cycle: str | None = field_like(LEVEL, "cycle")
    valve_gear: str | None = field_like(LEVEL, "valve_gear")
    decompressor: str | None = field_like(LEVEL, "decompressor")
    decompressor_state: str | None = field_like(LEVEL, "decompressor_state")
    decompressor_closes_deg: Number | None = field_like(
        CRANKING, "decompressor_closes_deg", example=None
    )
    starter: str | None = field_like(LEVEL, "starter")
    throttle_open: bool | None = field_like(LEVEL, "throttle_open")
    throttle_closed_manifold_kpa_abs: Number | None = field_like(
        CRANKING, "throttle_closed_manifold_kpa_abs", example=None
    )
    choke_off: bool | None = field_like(LEVEL, "choke_off")
    engine_warm: bool | None = field_like(LEVEL, "engine_warm")
    plugs_out: bool | None = field_like(LEVEL, "plugs_out")
    air_filter_fitted: bool | None = field_like(LEVEL, "air_filter_fitted")
    battery_v: Number | None = field_like(LEVEL, "battery_v")
    cylinder_count: Number | None = field_like(displacement.Inputs, "cylinder_count")
    bore_mm: Number | None = field_like(DYNAMIC, "bore_mm")
    stroke_mm: Number | None = field_like(DYNAMIC, "stroke_mm")
    rod_mm: Number | None = field_like(DYNAMIC, "rod_mm")
    clearance_cc: Number | None = field_like(DYNAMIC, "clearance_cc")
    intake_closes_deg: Number | None = field_like(DYNAMIC, "intake_closes_deg")
    closing_lift_mm: Number | None = field_like(DYNAMIC, "closing_lift_mm")
    exhaust_port_top_below_deck_mm: Number | None = field_like(
        PORTS, "exhaust_port_top_below_deck_mm", example=None
    )
    transfer_port_top_below_deck_mm: Number | None = field_like(
        PORTS, "transfer_port_top_below_deck_mm", example=None
    )
    piston_edge_below_deck_at_tdc_mm: Number | None = field_like(
        PORTS, "piston_edge_below_deck_at_tdc_mm", example=None
    )
    thinner_base_gasket_by_mm: Number | None = field_like(
        PORTS, "thinner_base_gasket_by_mm", example=None
    )
    exhaust_duration_wanted_deg: Number | None = field_like(
        PORTS, "exhaust_duration_wanted_deg", example=None
    )
    transfer_duration_wanted_deg: Number | None = field_like(
        PORTS, "transfer_duration_wanted_deg", example=None
    )


CALCULATION = Composite(
    name="compression-test",
    number="C02 C05 C06 C07 C08 C10",
    stage="engine_tests",
    title="Compression test",
    summary="A compression test graded for this engine at this place, as far as it is known.",
    inputs=Inputs,
    any_of=((("reading_kpa",), ("stroke_readings_kpa",), ("readings_kpa",)),),
    steps=(*steps.EXPECTATION, *steps.GRADING),
    derive=steps.last_reading,
    derived_extremes=steps.lowest_of,
    agreements=AGREEMENTS,
)
