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
    hone_and_re_ring as hone_and_rering,
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
SEEN, KEPT = cylinder_ways.Inputs, hone_and_rering.Inputs
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
    (displacement.Inputs, ("bore_mm", "stroke_mm", "cylinders", "class_limit_cc")),
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
    (CLEARANCE, ("survey", "bore_max_mm", "bore_min_mm")),
    (bore_survey.Inputs, (("bore_use", "use"),)),
    (RINGS, ("unworn_bore_mm",)),
    (CLEARANCE, ("skirt_from_mm", "skirt_to_mm", "bore_temperature_c", "bore_alpha_per_k")),
    (SEEN, ("damage", "surface", "ridge", "pistons_stay_in")),
    (clean_up.Inputs, ("scores", "wear_side_share")),
    (liner_wall.Inputs, ("liner_od_mm", "core_shift_mm", "liner_kind")),
)
PISTON: tuple[Taken, ...] = (
    (
        CLEARANCE,
        (
            "piston_mm",
            "piston_new_mm",
            "height_above_skirt_bottom_mm",
            "fit",
            "piston_kind",
            "piston_material",
            "skirt_coated",
            "piston_temperature_c",
            "piston_alpha_per_k",
        ),
    ),
    (KEPT, ("rering_piston_mm",)),
    (
        pin_fits.Inputs,
        (
            "pin_mm",
            "pin_worn_mm",
            "piston_pin_bore_mm",
            "small_end_bore_mm",
            "small_end",
            "heat_marks",
            ("pin_fit", "fit"),
        ),
    ),
)
OLD_AND_NEW_RINGS: tuple[Taken, ...] = (
    (
        RINGS,
        (
            "top_measured_mm",
            "second_measured_mm",
            "oil_rail_measured_mm",
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
    (KEPT, ("rering_gap_mm",)),
    (
        ring_side_clearance.Inputs,
        (
            "top_feeler_mm",
            "top_groove_width_mm",
            "top_ring_width_mm",
            "top_ring_shape",
            "second_feeler_mm",
            "second_groove_width_mm",
            "second_ring_width_mm",
            "top_groove_root_mm",
            "top_ring_thickness_mm",
            "second_groove_root_mm",
            "second_ring_thickness_mm",
            "measured_with_new_ring",
            ("ring_fit", "fit"),
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
        ("wanted_clearance_mm", "hone_stock_mm", "makers_largest_oversize_mm"),
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
