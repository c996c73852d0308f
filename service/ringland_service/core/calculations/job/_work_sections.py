"""The sections of a job that follow the bench: the order, the machine shop, assembly, price.

Each field is declared where its calculation is, and only taken over here, always optional.
"""

from ringland_service.core.calculations.assembly import (
    estimate,
    fastener_order,
    premix,
    ring_clocking,
    run_in,
    torque_steps,
)
from ringland_service.core.calculations.cylinder import hot_clearance, rod_play
from ringland_service.core.calculations.decision import choice_by_consequence
from ringland_service.core.calculations.machining import crosshatch, sleeve_fit
from ringland_service.core.calculations.order_card import order_card
from ringland_service.core.declare import asked, optional

TORQUE, CLOCKING = torque_steps.CALCULATION.inputs, ring_clocking.CALCULATION.inputs

Bottom = optional(
    "Bottom",
    "The rod and the crank below.",
    (
        rod_play.Inputs,
        (
            "big_end_side_mm",
            "big_end_radial_mm",
            "big_end",
            "small_end_tip_rock_mm",
            "big_end_width_mm",
            "runout_tir_left_mm",
            "runout_tir_right_mm",
            ("rod_fit", "fit"),
        ),
    ),
)
Order = optional(
    "Order",
    "What the order card to the machinist states besides.",
    (
        order_card.Inputs,
        (
            "date",
            "cylinder_number",
            "end_up",
            "exhaust_side_marked",
            "parts_sent",
            "piston_mark",
            "piston_instrument",
            "inches_too",
            "replate_to",
            "out_of_round_max_mm",
            "taper_max_mm",
            "proof_depths_mm",
            "boring_centre",
            "finish",
            "torque_plate",
            "gasket",
            "torque_nm",
            "studs",
            "honed",
            "port_chamfer_low_mm",
            "port_chamfer_high_mm",
            "port_chamfer_angle_deg",
            "exhaust_bridge",
            "bridge_relief_low_mm",
            "bridge_relief_high_mm",
            "mouth_chamfer_low_mm",
            "mouth_chamfer_high_mm",
            "mouth_chamfer_angle_deg",
            "deck_height_mm",
            "deck_cut_mm",
            "wall_floor_mm",
            "heads",
            "price_limit",
            "wanted",
            "approver",
        ),
    ),
)
Hone = optional(
    "Hone",
    "The hone that the machinist has.",
    (
        crosshatch.Inputs,
        (
            "spindle_rpm",
            "hone_travel_mm",
            "full_cycles_rpm",
            "wanted_included_deg",
            "stroke_drive",
            "ring_kind",
        ),
    ),
)
Sleeve = optional(
    "Sleeve",
    "A new sleeve and the cylinder that takes it.",
    (
        sleeve_fit.Inputs,
        (
            "cylinder_bore_mm",
            "sleeve_od_mm",
            "drop_in_clearance_mm",
            "held_by",
            "sleeve_temperature_c",
            "running_temperature_c",
            "alpha_cylinder_per_k",
            "alpha_sleeve_per_k",
        ),
    ),
)
Hot = optional(
    "Hot",
    "Bore and piston when running.",
    (hot_clearance.Inputs, ("bore_hot_c", "piston_hot_c")),
)
Torque = optional(
    "Torque",
    "One kind of fastener, its torque, the wrench and the adapter.",
    (TORQUE, tuple(asked(TORQUE))),
)
Fasteners = optional(
    "Fasteners",
    "Where the fasteners of one face stand.",
    (
        fastener_order.Inputs,
        ("fasteners", "tighten_stages", "relief_steps", "relief_step_turn_deg", "ring_share"),
    ),
)
Clocking = optional(
    "Clocking",
    "Where the ring gaps go, or the pins of a two-stroke.",
    (
        CLOCKING,
        (
            "zero_and_sense",
            "thrust_axis_deg",
            "gaps",
            "ring_pins",
            "ring_count",
            "port_windows",
            "ring_end_half_width_mm",
        ),
    ),
)
Fuel = optional(
    "Fuel",
    "Fuel and oil of a two-stroke.",
    (premix.Inputs, ("fuel_l", "ratio_fuel_to_oil", "tank_has_l", "tank_ratio")),
)
RunIn = optional(
    "RunIn",
    "Running in, and the readings after it.",
    (
        run_in.Inputs,
        (
            "rated_speed_rpm",
            "steps",
            "compression_before_kpa",
            "compression_after_kpa",
            "leak_before_pct",
            "leak_after_pct",
        ),
    ),
)
Price = optional(
    "Price",
    "Prices of parts, machine shop and labour; what using a part again, a repair, a comeback cost.",
    (
        estimate.Inputs,
        (
            "currency",
            "parts",
            "machine_shop",
            "labour_hours",
            "labour_rate",
            "consumables",
            "parts_markup",
            "machine_markup",
            "contingency",
            "tax",
            "labour_tax",
            "replacement_cost",
            "money_decimals",
            ("price_of", "work"),
        ),
    ),
    (
        choice_by_consequence.Inputs,
        ("cost_of_reuse", "cost_of_repair", "cost_of_comeback", "failure_hurts"),
    ),
)
