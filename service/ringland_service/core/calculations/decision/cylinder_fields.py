"""What a cylinder's decision rests on, by the part of the engine that it is measured on.

Each field is declared where its calculation is, and only taken over here, always optional.
"""

from ringland_service.core.calculations.cylinder import (
    bore_survey,
    pin_fits,
    piston_clearance,
    ring_gap,
    ring_side_clearance,
)
from ringland_service.core.calculations.decision import (
    cylinder_ways,
)
from ringland_service.core.calculations.decision import (
    hone_and_re_ring as hone_and_re_ring,
)
from ringland_service.core.calculations.geometry import displacement, overbore_ratio
from ringland_service.core.calculations.machining import (
    bore_order,
    clean_up,
    liner_wall,
    oversize_choice,
)
from ringland_service.core.declare.records import Taken

CLEARANCE, RINGS = piston_clearance.Inputs, ring_gap.Inputs
SEEN, KEPT = cylinder_ways.Inputs, hone_and_re_ring.Inputs
RATIO = overbore_ratio.Inputs
# The engine after boring, where it differs from the engine before.
AFTER = (
    "new_dome_cc",
    "new_dish_cc",
    "new_deck_mm",
    "new_gasket_bore_mm",
    "new_gasket_thickness_mm",
)

GEOMETRY: tuple[Taken, ...] = (
    (SEEN, ("bore_kind",)),
    (CLEARANCE, ("cycle",)),
    (displacement.Inputs, ("bore_mm", "stroke_mm", "cylinder_count", "class_limit_cc")),
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
            "clearance_cc",
            "base_gasket_thinner_by_mm",
            "deck_cut_mm",
            "skim_loss_cc",
            "sink_gain_cc",
            *AFTER,
        ),
    ),
)
CYLINDER: tuple[Taken, ...] = (
    (CLEARANCE, ("bore_survey", "bore_largest_mm", "bore_smallest_mm")),
    (bore_survey.Inputs, ("bore_use",)),
    (RINGS, ("unworn_mm",)),
    (CLEARANCE, ("skirt_from_mm", "skirt_to_mm", "bore_temperature_c", "bore_alpha_per_k")),
    (SEEN, ("damage", "surface", "ridge", "piston_stays_in")),
    (clean_up.Inputs, ("scores", "wear_side_share")),
    (liner_wall.Inputs, ("liner_od_mm", "core_shift_mm", "liner_kind")),
)
PISTON: tuple[Taken, ...] = (
    (
        CLEARANCE,
        (
            "piston_size_mm",
            "piston_size_new_mm",
            "measuring_height_mm",
            "piston_condition",
            "piston_kind",
            "piston_material",
            "skirt_coated",
            "piston_temperature_c",
            "piston_alpha_per_k",
        ),
    ),
    (KEPT, ("new_rings_piston_mm",)),
    (
        pin_fits.Inputs,
        (
            "pin_mm",
            "pin_worn_mm",
            "piston_pin_bore_mm",
            "small_end_bore_mm",
            "small_end",
            "heat_marks",
            ("pin_condition", "condition"),
        ),
    ),
)
OLD_AND_NEW_RINGS: tuple[Taken, ...] = (
    (
        RINGS,
        (
            "top_gap_mm",
            "second_gap_mm",
            "oil_rail_gap_mm",
            "top_factor",
            "second_factor",
            "old_gap_mm",
            "old_gap_depth_mm",
            "old_gap_pin_axis_mm",
            "old_gap_thrust_axis_mm",
            "gap_when_new_mm",
            "bore_rise_k",
            "ring_rise_k",
            "ring_alpha_per_k",
            "worn_pin_axis_mm",
            "worn_thrust_axis_mm",
        ),
    ),
    (KEPT, ("new_rings_gap_mm",)),
    (
        ring_side_clearance.Inputs,
        (
            "top_feeler_mm",
            "top_groove_mm",
            "top_width_mm",
            "top_shape",
            "second_feeler_mm",
            "second_groove_mm",
            "second_width_mm",
            "top_groove_root_mm",
            "top_thickness_mm",
            "second_groove_root_mm",
            "second_thickness_mm",
            "measured_with_new_ring",
            ("ring_condition", "condition"),
        ),
    ),
)
# Told on the decision's own route; a job card has them from its tests.
TESTS: tuple[Taken, ...] = (
    (
        SEEN,
        (
            "leak_pct",
            "leak_gradeable",
            "leak_grade",
            "heard_at",
            "decompressor_state",
            "excess_gain_pct",
            "level_ratio",
            "oil_use_grade",
            "diagnosis_headline",
            "suspects",
            "next_test",
            "least_score",
            "least_lead",
        ),
    ),
)
MACHINING: tuple[Taken, ...] = (
    (KEPT, ("hone_removal_mm",)),
    (oversize_choice.Inputs, ("pistons",)),
    (bore_order.Inputs, ("clearance_low_mm", "clearance_high_mm")),
    (
        oversize_choice.Inputs,
        ("clearance_target_mm", "hone_stock_mm", "largest_oversize_mm"),
    ),
    (
        bore_order.Inputs,
        (
            "returned_readings_mm",
            "returned_out_of_round_mm",
            "returned_taper_mm",
            "size_uncertainty_mm",
        ),
    ),
)
