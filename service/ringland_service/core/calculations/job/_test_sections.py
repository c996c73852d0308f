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
from ringland_service.core.declare import optional

LeakDown = optional(
    "LeakDown",
    "The leak-down test, and the crank that its air tries to turn.",
    (
        leak_down.CALCULATION.inputs,
        (
            "supply_kpa",
            "cylinder_kpa",
            "rocked_forward_kpa",
            "rocked_back_kpa",
            "restrictor_mm",
            "gauge_difference_kpa_diff",
            "gauge_residual_kpa_diff",
            "gauge_full_scale_kpa",
            ("leak_gauge_error_pct", "gauge_error_pct"),
            "makers_good_to_pct",
            "makers_serviceable_to_pct",
            "makers_worn_to_pct",
            ("leak_use", "use"),
            "piston_at",
            "heard_at",
        ),
    ),
    (
        leak_area.CALCULATION.inputs,
        ("other_restrictor_mm", "other_supply_kpa", "coefficient_doubt_pct"),
    ),
    (
        charged_crank_torque.CALCULATION.inputs,
        ("held_at_deg", "second_deg", "opens_deg", "bar_mm"),
    ),
    unsaid=(
        "leak_gauge_error_pct",
        "gauge_full_scale_kpa",
        "gauge_residual_kpa_diff",
        "makers_good_to_pct",
        "makers_serviceable_to_pct",
        "makers_worn_to_pct",
        "rocked_forward_kpa",
        "rocked_back_kpa",
    ),
)
Crankcase = optional(
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
            ("crankcase_trapped_volume_cc", "trapped_volume_cc"),
            "plates_soaped",
            "second_crank_position",
        ),
    ),
)
Oil = optional(
    "Oil",
    "Oil that the engine used.",
    (
        oil_use.CALCULATION.inputs,
        (
            "oil_added_ml",
            "distance_km",
            "hours",
            ("fuel_used_l", "fuel_l"),
            "leaks_seen",
            "level_read_alike",
            "overfilled",
            "fuel_in_oil",
            ("still_running_in", "running_in"),
        ),
    ),
)
Signs = optional(
    "Signs",
    "What was seen, heard or found, and the request's own weights.",
    (
        diagnosis.CALCULATION.inputs,
        (
            "complaint_kind",
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
