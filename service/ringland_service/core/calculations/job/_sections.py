"""The sections of a job: what can be known of the engine, the place, the tests, the parts.

Each field is declared where its calculation is, and only taken over here, always optional.
"""

from ringland_service.core.calculations.cylinder import piston_clearance
from ringland_service.core.calculations.decision import cylinder_fields as fields
from ringland_service.core.calculations.engine_tests import compression_test
from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.calculations.geometry import (
    compression_ratio,
    displacement,
    overbore_ratio,
    port_timing,
)
from ringland_service.core.declare import field_like, partial_record, quantity, record, text
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths

TEST, RATIO = compression_test.Inputs, compression_ratio.Inputs
CLEARANCE, OVERBORE = piston_clearance.Inputs, overbore_ratio.Inputs


@record
class About:
    """What the job is about; carried along, never interpreted."""

    job: str | None = text("job number", example="26-014", longest=60, default=None)
    machine: str | None = text("machine", example="orchard pump", longest=120, default=None)
    owner_says: str | None = text(
        "what the owner says", example="smokes, hard to start", longest=400, default=None
    )
    notes: str | None = text(
        "notes from the bench", example="plug black", longest=800, default=None
    )


@record
class Bored:
    """Fields whose words are told more closely than where they are declared."""

    bore_mm: Number | None = field_like(
        displacement.Inputs, "bore_mm", description="nominal cylinder bore"
    )
    gap_bore_mm: Number | None = quantity(
        lengths.BORE,
        "bore where the new rings were gapped: finished, or the least worn zone",
        example=68.496,
        default=None,
    )


Engine = partial_record(
    "Engine",
    "The engine as its maker built it, and as it was measured.",
    (TEST, ("cycle", "valve_gear", "decompressor", "cylinder_count")),
    (CLEARANCE, ("bore_kind",)),
    (Bored, ("bore_mm",)),
    (TEST, ("stroke_mm", "rod_mm", "clearance_cc")),
    (
        RATIO,
        (
            "chamber_cc",
            "gasket_bore_mm",
            "gasket_area_mm2",
            "gasket_thickness_mm",
            "deck_mm",
            "dome_cc",
            "dish_cc",
            "crevice_cc",
            "land_mm",
            "land_height_mm",
            "burette_fill_cc",
            "plug_diameter_mm",
            "plug_reach_mm",
        ),
    ),
    (
        TEST,
        (
            "intake_closes_deg",
            "closing_lift_mm",
            "decompressor_closes_deg",
            "exhaust_port_top_below_deck_mm",
            "transfer_port_top_below_deck_mm",
            "piston_edge_below_deck_at_tdc_mm",
        ),
    ),
    (
        port_timing.Inputs,
        (
            "thinner_base_gasket_by_mm",
            "exhaust_duration_wanted_deg",
            "transfer_duration_wanted_deg",
        ),
    ),
    (displacement.Inputs, ("class_limit_cc",)),
    without_example=(
        "clearance_cc",
        "gasket_area_mm2",
        "land_mm",
        "land_height_mm",
        "burette_fill_cc",
        "plug_diameter_mm",
        "plug_reach_mm",
        "thinner_base_gasket_by_mm",
        "exhaust_duration_wanted_deg",
        "transfer_duration_wanted_deg",
    ),
)
Place = partial_record(
    "Place",
    "Where the engine was tested.",
    (TEST, ("altitude_m", "air_pressure_kpa_abs")),
    (air_pressure.Inputs, ("weather_report_kpa_abs",)),
    without_example=("weather_report_kpa_abs",),
)
Compression = partial_record(
    "Compression",
    "The compression test: readings, gauge, and how it was taken.",
    (
        TEST,
        (
            "reading_kpa",
            "stroke_readings_kpa",
            "baseline_first_over_last",
            "readings_kpa",
            "first_again_kpa",
            "layout",
            "wet_kpa",
            "wet_oil_ml",
            "n",
            "cylinder_upright",
            "expected_kpa",
            "n_low",
            "n_mid",
            "n_high",
            "expected_altitude_m",
            "gauge_error_pct",
            "repeatability_kpa_diff",
            "hose_error_pct",
            "weather_kpa_diff",
            "decompressor_state",
            "starter",
            "throttle_open",
            "throttle_closed_manifold_kpa_abs",
            "choke_off",
            "engine_warm",
            "plugs_out",
            "air_filter_fitted",
            "battery_v",
        ),
    ),
)
Cylinder = partial_record(
    "Cylinder",
    "The cylinder on the bench.",
    *fields.CYLINDER,
    without_example=("bore_alpha_per_k", "surface"),
)
Piston = partial_record(
    "Piston",
    "The piston on the bench, and its pin.",
    *fields.PISTON,
    without_example=("piston_alpha_per_k",),
)
Rings = partial_record(
    "Rings",
    "The rings: new ones in the bore they will run in, and the old ones.",
    (Bored, ("gap_bore_mm",)),
    *fields.OLD_AND_NEW_RINGS,
)
Plan = partial_record(
    "Plan",
    "What is meant to be done: pistons on the shelf, the machinist's sizes, the bore after.",
    (
        OVERBORE,
        ("new_bore_mm", *fields.AFTER),
    ),
    *fields.MACHINING,
    without_example=(
        "new_deck_mm",
        "new_gasket_bore_mm",
        "new_gasket_thickness_mm",
        "size_uncertainty_mm",
    ),
)
