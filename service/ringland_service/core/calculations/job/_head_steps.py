"""The parts of a job on squish and ratio, the head and its valves."""

from ringland_service.core.calculations.decision.cylinder_steps import begun
from ringland_service.core.calculations.engine_tests.compression_steps import CLEARANCE
from ringland_service.core.calculations.geometry import after_works as works
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
from ringland_service.core.declare import Step

SWEPT = ("compression_ratio.swept_cc",)

SQUISH = Step(
    part="squish",
    calculation=squish.CALCULATION,
    purpose="squish clearance, and the base gasket that brings it right",
    sources={"clearance_cc": CLEARANCE},
    when=begun("solder_at_pin_axis_mm", "head_step_mm"),
    gives_way=works.RATIO_AFTER
    | works.CLEARANCE_AFTER
    | {
        "trapped_ratio_after": f"{works.PORTS}.trapped_ratio",
        "exhaust_duration_after_deg": f"{works.PORTS}.exhaust_duration_deg",
        "transfer_duration_after_deg": f"{works.PORTS}.transfer_duration_deg",
    },
)
HEAD = (
    Step(
        part="flatness",
        calculation=flatness.CALCULATION,
        purpose="whether the face is flat, and what a skim does to the ratio",
        sources={"clearance_cc": CLEARANCE, "swept_cc": SWEPT},
        when=begun("straightedge_gaps_mm"),
        gives_way=works.RATIO_AFTER | works.CLEARANCE_AFTER,
    ),
    Step(
        part="wanted_ratio",
        calculation=wanted_ratio.CALCULATION,
        purpose="what brings the compression ratio to the one wanted",
        sources={
            "clearance_cc": CLEARANCE,
            "swept_cc": SWEPT,
            "squish_mm": ("squish.smallest_squish_mm",),
        },
        when=begun("wanted_ratio"),
    ),
    Step(
        part="guide_clearance",
        calculation=guide_clearance.CALCULATION,
        purpose="the stem's clearance in its guide",
        sources={"fit": ("valve_fit",), "valve": ("which_valve",)},
        when=begun("guide_bore_mm", "guide_along_mm", "rock_total_indicated_mm"),
    ),
    Step(
        part="valve_seat",
        calculation=valve_seat.CALCULATION,
        purpose="width and place of the seat, and the cuts that bring it right",
        sources={
            "fit": ("valve_fit",),
            "valve": ("which_valve",),
            "seat_angle_deg": ("cut_seat_angle_deg",),
        },
        when=begun("contact_outer_dia_mm", "contact_inner_dia_mm"),
    ),
    Step(
        part="valve_sink",
        calculation=valve_sink.CALCULATION,
        purpose="what seat cutting does to lash, spring and chamber",
        sources={"clearance_cc": CLEARANCE, "swept_cc": SWEPT},
        when=begun("sink_mm"),
        gives_way={"cr_after": works.RATIO_AFTER["ratio_after"]},
    ),
    Step(
        part="valve_spring",
        calculation=valve_spring.CALCULATION,
        purpose="load, rate, coil bind and lean of the spring",
        when=begun("load_1_n", "installed_height_mm", "free_length_mm", "wire_mm"),
    ),
    Step(
        part="lash_shim",
        calculation=lash_shim.CALCULATION,
        purpose="which shim goes in",
        when=begun("measured_lash_mm", "valves"),
    ),
    Step(
        part="lash_screw",
        calculation=lash_screw.CALCULATION,
        purpose="how far the adjuster turns",
        when=begun("lash_measured_mm", "screw_pitch_mm"),
    ),
    Step(
        part="cam_check",
        calculation=cam_check.CALCULATION,
        purpose="cam wear, cam timing, and the valves' room over the piston",
        when=begun(
            "lobe_height_mm",
            "cam_sprocket_teeth",
            "stack_lowered_mm",
            "intake_opens_btdc_deg",
            "exhaust_opens_bbdc_deg",
            "clay_intake_mm",
            "clay_exhaust_mm",
        ),
    ),
)
