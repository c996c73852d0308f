"""The sections of a job that tell of further tests on the assembled engine, and of what was seen.

Each field is declared where its calculation is, and only taken over here, always optional.
"""

from ringland_service.core.calculations.diagnosis import diagnosis
from ringland_service.core.calculations.engine_tests import (
    charged_crank_torque,
    crankcase_leak,
    leak_area,
    leak_down,
    oil_use,
)
from ringland_service.core.declare import partial_record

LeakDown = partial_record(
    "LeakDown",
    "The leak-down test, and the crank that its air tries to turn.",
    (
        leak_down.CALCULATION.inputs,
        (
            "supply_pressure_kpa",
            "cylinder_pressure_kpa",
            "rocked_forward_pressure_kpa",
            "rocked_back_pressure_kpa",
            "restrictor_mm",
            "gauge_difference_kpa_diff",
            "gauge_residual_kpa_diff",
            "gauge_full_scale_kpa",
            ("leak_gauge_error_pct", "gauge_error_pct"),
            "good_to_pct",
            "serviceable_to_pct",
            "worn_to_pct",
            ("duty", "duty"),
            "piston_at",
            "heard_at",
        ),
    ),
    (
        leak_area.CALCULATION.inputs,
        ("other_restrictor_mm", "other_supply_pressure_kpa", "coefficient_uncertainty_pct"),
    ),
    (
        charged_crank_torque.CALCULATION.inputs,
        ("held_at_deg", "second_deg", "opens_deg", "bar_mm"),
    ),
    without_example=(
        "leak_gauge_error_pct",
        "gauge_full_scale_kpa",
        "gauge_residual_kpa_diff",
        "good_to_pct",
        "serviceable_to_pct",
        "worn_to_pct",
        "rocked_forward_pressure_kpa",
        "rocked_back_pressure_kpa",
    ),
)
Crankcase = partial_record(
    "Crankcase",
    "The pressure and vacuum test of a two-stroke's crankcase.",
    (
        crankcase_leak.CALCULATION.inputs,
        (
            "start_kpa",
            "end_kpa",
            "minutes",
            "start_temperature_c",
            "end_temperature_c",
            "vacuum_start_kpa",
            "vacuum_end_kpa",
            "vacuum_minutes",
            "vacuum_start_temperature_c",
            "vacuum_end_temperature_c",
            ("trapped_volume_cc", "trapped_volume_cc"),
            "plates_soaped",
            "second_crank_position",
        ),
    ),
)
Oil = partial_record(
    "Oil",
    "Oil that the engine used.",
    (
        oil_use.CALCULATION.inputs,
        (
            "added_ml",
            "distance_km",
            "hours",
            ("fuel_used_l", "fuel_l"),
            "leaks_seen",
            "level_read_alike",
            "overfilled",
            "fuel_in_oil",
            "not_run_in_yet",
        ),
    ),
)
Signs = partial_record(
    "Signs",
    "What was seen, heard or found, and the request's own weights.",
    (
        diagnosis.CALCULATION.inputs,
        (
            "complaint",
            "evidence",
            "cooling",
            "weights",
            "decisive_weight",
            "strong_weight",
            "moderate_weight",
            "weak_weight",
            "least_score",
            "least_lead",
            "unsound_test_share",
        ),
    ),
)
