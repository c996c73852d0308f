"""The sections of a job: what can be known of the engine, the place, the tests, the parts.

Each field is declared where its calculation is, and only taken over here, always optional.
"""

from ringland_service.core import lengths
from ringland_service.core.calculations.cylinder import piston_clearance, ring_gap
from ringland_service.core.calculations.engine_tests import compression_test
from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.calculations.geometry import (
    compression_ratio,
    displacement,
    overbore_ratio,
    port_timing,
)
from ringland_service.core.declare import quantity, record, same, text
from ringland_service.core.numbers import Number
from ringland_service.core.survey import Survey

TEST, RATIO = compression_test.Inputs, compression_ratio.Inputs
CLEARANCE, RINGS, OVERBORE = piston_clearance.Inputs, ring_gap.Inputs, overbore_ratio.Inputs
Readings = tuple[float, ...]


@record
class About:
    """What the job is about; carried along, never interpreted."""

    job: str | None = text("job number", example="26-014", longest=60, default=None)
    machine: str | None = text("machine", example="orchard pump", longest=120, default=None)
    complaint: str | None = text(
        "what the owner says", example="smokes, hard to start", longest=400, default=None
    )
    notes: str | None = text(
        "notes from the bench", example="plug black", longest=800, default=None
    )


@record
class Engine:
    """The engine as its maker built it, and as it was measured."""

    cycle: str | None = same(TEST, "cycle")
    valve_gear: str | None = same(TEST, "valve_gear")
    decompressor: str | None = same(TEST, "decompressor")
    cylinders: Number | None = same(TEST, "cylinders")
    bore_kind: str | None = same(CLEARANCE, "bore_kind")
    bore_mm: Number | None = same(displacement.Inputs, "bore_mm", words="nominal cylinder bore")
    stroke_mm: Number | None = same(TEST, "stroke_mm")
    rod_mm: Number | None = same(TEST, "rod_mm")
    clearance_cc: Number | None = same(TEST, "clearance_cc", example=None)
    chamber_cc: Number | None = same(RATIO, "chamber_cc")
    gasket_bore_mm: Number | None = same(RATIO, "gasket_bore_mm")
    gasket_area_mm2: Number | None = same(RATIO, "gasket_area_mm2", example=None)
    gasket_thickness_mm: Number | None = same(RATIO, "gasket_thickness_mm")
    deck_mm: Number | None = same(RATIO, "deck_mm")
    dome_cc: Number | None = same(RATIO, "dome_cc")
    dish_cc: Number | None = same(RATIO, "dish_cc")
    crevice_cc: Number | None = same(RATIO, "crevice_cc")
    land_mm: Number | None = same(RATIO, "land_mm", example=None)
    land_height_mm: Number | None = same(RATIO, "land_height_mm", example=None)
    burette_fill_cc: Number | None = same(RATIO, "burette_fill_cc", example=None)
    plug_diameter_mm: Number | None = same(RATIO, "plug_diameter_mm", example=None)
    plug_reach_mm: Number | None = same(RATIO, "plug_reach_mm", example=None)
    intake_closes_deg: Number | None = same(TEST, "intake_closes_deg")
    closing_lift_mm: Number | None = same(TEST, "closing_lift_mm")
    decompressor_closes_deg: Number | None = same(TEST, "decompressor_closes_deg")
    exhaust_port_top_below_deck_mm: Number | None = same(TEST, "exhaust_port_top_below_deck_mm")
    transfer_port_top_below_deck_mm: Number | None = same(TEST, "transfer_port_top_below_deck_mm")
    piston_edge_below_deck_at_tdc_mm: Number | None = same(TEST, "piston_edge_below_deck_at_tdc_mm")
    thinner_base_gasket_by_mm: Number | None = same(
        port_timing.Inputs, "thinner_base_gasket_by_mm", example=None
    )
    class_limit_cc: Number | None = same(displacement.Inputs, "class_limit_cc")


@record
class Place:
    """Where the engine was tested."""

    altitude_m: Number | None = same(TEST, "altitude_m")
    air_pressure_kpa_abs: Number | None = same(TEST, "air_pressure_kpa_abs")
    weather_report_kpa_abs: Number | None = same(
        air_pressure.Inputs, "weather_report_kpa_abs", example=None
    )


@record
class Compression:
    """The compression test: readings, gauge, and how it was taken."""

    reading_kpa: Number | None = same(TEST, "reading_kpa")
    stroke_readings_kpa: Readings | None = same(TEST, "stroke_readings_kpa")
    baseline_first_over_last: Number | None = same(TEST, "baseline_first_over_last")
    readings_kpa: Readings | None = same(TEST, "readings_kpa")
    layout: str | None = same(TEST, "layout")
    wet_kpa: Number | None = same(TEST, "wet_kpa")
    oil_ml: Number | None = same(TEST, "oil_ml")
    expected_kpa: Number | None = same(TEST, "expected_kpa")
    limit_altitude_m: Number | None = same(TEST, "limit_altitude_m")
    gauge_error_pct: Number | None = same(TEST, "gauge_error_pct")
    repeat_kpa_diff: Number | None = same(TEST, "repeat_kpa_diff")
    weather_kpa_diff: Number | None = same(TEST, "weather_kpa_diff")
    decompressor_state: str | None = same(TEST, "decompressor_state")
    starter: str | None = same(TEST, "starter")
    throttle_open: bool | None = same(TEST, "throttle_open")
    throttle_closed_manifold_kpa_abs: Number | None = same(TEST, "throttle_closed_manifold_kpa_abs")
    choke_off: bool | None = same(TEST, "choke_off")
    engine_warm: bool | None = same(TEST, "engine_warm")
    plugs_out: bool | None = same(TEST, "plugs_out")
    air_filter_fitted: bool | None = same(TEST, "air_filter_fitted")
    battery_v: Number | None = same(TEST, "battery_v")


@record
class Cylinder:
    """The cylinder on the bench."""

    survey: Survey | None = same(CLEARANCE, "survey")
    bore_max_mm: Number | None = same(CLEARANCE, "bore_max_mm")
    bore_min_mm: Number | None = same(CLEARANCE, "bore_min_mm")
    unworn_bore_mm: Number | None = same(RINGS, "unworn_bore_mm")
    skirt_from_mm: Number | None = same(CLEARANCE, "skirt_from_mm")
    skirt_to_mm: Number | None = same(CLEARANCE, "skirt_to_mm")
    bore_temperature_c: Number | None = same(CLEARANCE, "bore_temperature_c")
    bore_alpha_per_k: Number | None = same(CLEARANCE, "bore_alpha_per_k", example=None)


@record
class Piston:
    """The piston on the bench."""

    piston_mm: Number | None = same(CLEARANCE, "piston_mm")
    piston_new_mm: Number | None = same(CLEARANCE, "piston_new_mm")
    height_above_skirt_bottom_mm: Number | None = same(CLEARANCE, "height_above_skirt_bottom_mm")
    fit: str | None = same(CLEARANCE, "fit")
    piston_kind: str | None = same(CLEARANCE, "piston_kind")
    piston_material: str | None = same(CLEARANCE, "piston_material")
    skirt_coated: bool | None = same(CLEARANCE, "skirt_coated")
    piston_temperature_c: Number | None = same(CLEARANCE, "piston_temperature_c")
    piston_alpha_per_k: Number | None = same(CLEARANCE, "piston_alpha_per_k", example=None)


@record
class Rings:
    """The rings: new ones in the bore they will run in, and the old ones."""

    gap_bore_mm: Number | None = quantity(
        lengths.BORE,
        "bore where the new rings were gapped: finished, or the least worn zone",
        example=68.496,
        default=None,
    )
    top_measured_mm: Number | None = same(RINGS, "top_measured_mm")
    second_measured_mm: Number | None = same(RINGS, "second_measured_mm")
    oil_rail_measured_mm: Number | None = same(RINGS, "oil_rail_measured_mm")
    top_factor: Number | None = same(RINGS, "top_factor")
    second_factor: Number | None = same(RINGS, "second_factor")
    old_gap_mm: Number | None = same(RINGS, "old_gap_mm")
    old_gap_depth_mm: Number | None = same(RINGS, "old_gap_depth_mm")
    old_gap_pin_axis_mm: Number | None = same(RINGS, "old_gap_pin_axis_mm")
    old_gap_thrust_axis_mm: Number | None = same(RINGS, "old_gap_thrust_axis_mm")
    gap_when_new_mm: Number | None = same(RINGS, "gap_when_new_mm")
    worn_pin_axis_mm: Number | None = same(RINGS, "worn_pin_axis_mm")
    worn_thrust_axis_mm: Number | None = same(RINGS, "worn_thrust_axis_mm")


@record
class Plan:
    """What is meant to be done: the bore after machining and the piston that goes in."""

    new_bore_mm: Number | None = same(OVERBORE, "new_bore_mm")
    new_dome_cc: Number | None = same(OVERBORE, "new_dome_cc")
    new_dish_cc: Number | None = same(OVERBORE, "new_dish_cc")
    new_deck_mm: Number | None = same(OVERBORE, "new_deck_mm", example=None)
    new_gasket_bore_mm: Number | None = same(OVERBORE, "new_gasket_bore_mm", example=None)
    new_gasket_thickness_mm: Number | None = same(OVERBORE, "new_gasket_thickness_mm", example=None)
