"""The sections of a job that tell of squish, ratio, head and valves.

Each field is declared where its calculation is, and only taken over here, always optional. The
valve told of is the worst one; each other valve is a question of its own.
"""

from ringland_service.core.calculations.geometry import squish, wanted_ratio
from ringland_service.core.calculations.head import (
    cam_check,
    flatness,
    guide_clearance,
    lash_screw,
    lash_shim,
    valve_seat,
    valve_sink,
    valve_spring,
)
from ringland_service.core.declare import input_fields, partial_record

SPRING, CAM = valve_spring.CALCULATION.inputs, cam_check.CALCULATION.inputs

Squish = partial_record(
    "Squish",
    "Squish clearance, and the base gaskets at hand.",
    (
        squish.CALCULATION.inputs,
        (
            "solder_mm",
            "solder_wire_mm",
            "head_step_mm",
            "solder_uncertainty_mm",
            "bowl_diameter_mm",
            "base_gasket_fitted_mm",
            "base_gaskets_mm",
            "squish_wanted_mm",
        ),
    ),
    without_example=("head_step_mm",),
)
HeadFace = partial_record(
    "HeadFace",
    "The head's face, and the ratio wanted.",
    (
        flatness.CALCULATION.inputs,
        (
            "lines_mm",
            "face_length_mm",
            "rocks",
            "skim_allowance_mm",
            "skim_done_mm",
            "chamber_area_mm2",
            "gasket_kind",
            "roughness_mm",
        ),
    ),
    (wanted_ratio.CALCULATION.inputs, ("wanted_ratio",)),
)
Valve = partial_record(
    "Valve",
    "The worst valve: guide, seat, sink and spring.",
    (
        guide_clearance.CALCULATION.inputs,
        (
            "valve_kind",
            ("valve_condition", "condition"),
            "guide_bore_mm",
            "guide_along_mm",
            "guide_across_mm",
            "stem_size_mm",
            "stem_heights_mm",
            "rock_mm",
            "guide_length_mm",
            "rock_distance_mm",
        ),
    ),
    (
        valve_seat.CALCULATION.inputs,
        (
            "seat_outer_diameter_mm",
            "seat_inner_diameter_mm",
            ("cut_seat_angle_deg", "seat_angle_deg"),
            "valve_head_diameter_mm",
            "face_width_mm",
            "rim_mm",
            "seat_runout_mm",
            "top_cutter_deg",
            "bottom_cutter_deg",
            "feed_mm",
            "wanted_outer_diameter_mm",
            "wanted_width_mm",
        ),
    ),
    (
        valve_sink.CALCULATION.inputs,
        (
            "sink_cut_mm",
            "sink_now_mm",
            "lash_found_mm",
            "ratio_lash_per_stem_rise",
            "thinnest_shim_mm",
            "spring_rate_n_per_mm",
            "seat_load_nominal_n",
            "valves_cut",
        ),
    ),
)
Spring = partial_record("Spring", "One valve spring.", (SPRING, tuple(input_fields(SPRING))))
Lash = partial_record(
    "Lash",
    "Valve lash: shims at hand, or the screw.",
    (
        lash_shim.CALCULATION.inputs,
        (
            "shim_mm",
            "found_mm",
            "shim_mark_mm",
            "found_last_time_mm",
            "valves",
            "lash_low_mm",
            "lash_high_mm",
            "target_mm",
            "adjuster",
            "stem_movement_per_lash",
            "shims_mm",
            "use_shims_taken_out",
            "shim_step_mm",
            "shim_thinnest_mm",
            "shim_thickest_mm",
        ),
    ),
    (
        lash_screw.CALCULATION.inputs,
        (
            "screw_pitch_mm",
            "rocker_ratio",
            "pad_worn_hollow",
        ),
    ),
    without_example=("valves", "shims_mm", "use_shims_taken_out"),
)
Cam = partial_record(
    "Cam", "Cam lobes, cam timing, valves to piston.", (CAM, tuple(input_fields(CAM)))
)
