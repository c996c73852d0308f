"""The parts of a job on squish and ratio, the head and its valves."""

from collections.abc import Mapping
from typing import Any

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
from ringland_service.core.engines.choices import SCREWS

SWEPT = ("compression_ratio.swept_cc",)

SQUISH = Step(
    part="squish",
    calculation=squish.CALCULATION,
    purpose="squish clearance, and the base gasket that brings it right",
    sources={"clearance_cc": CLEARANCE},
    when=begun("solder_mm", "head_step_mm"),
    gives_way=works.RATIO_AFTER
    | works.CLEARANCE_AFTER
    | {
        "trapped_ratio_after": f"{works.PORTS}.trapped_ratio",
        "exhaust_duration_after_deg": f"{works.PORTS}.exhaust_duration_deg",
        "transfer_duration_after_deg": f"{works.PORTS}.transfer_duration_deg",
    },
)


def _by_screw(known: Mapping[str, Any]) -> bool:
    """Return whether the lash is set by a screw: said, or a screw is described."""
    if "adjuster" in known:
        return known["adjuster"] in SCREWS
    return "screw_pitch_mm" in known


HEAD = (
    Step(
        part="flatness",
        calculation=flatness.CALCULATION,
        purpose="whether the face is flat, and what a skim does to the ratio",
        sources={"clearance_cc": CLEARANCE, "swept_cc": SWEPT},
        when=begun("lines_mm"),
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
        sources={"condition": ("valve_condition",), "valve_kind": ("valve_kind",)},
        when=begun("guide_bore_mm", "guide_along_mm", "rock_mm"),
    ),
    Step(
        part="valve_seat",
        calculation=valve_seat.CALCULATION,
        purpose="width and place of the seat, and the cuts that bring it right",
        sources={
            "condition": ("valve_condition",),
            "valve_kind": ("valve_kind",),
            "seat_angle_deg": ("cut_seat_angle_deg",),
        },
        when=begun("seat_outer_diameter_mm", "seat_inner_diameter_mm"),
    ),
    Step(
        part="valve_sink",
        calculation=valve_sink.CALCULATION,
        purpose="what seat cutting does to lash, spring and chamber",
        sources={
            "clearance_cc": CLEARANCE,
            "swept_cc": SWEPT,
            "lash_target_mm": ("target_mm",),
            "lash_shim_mm": ("shim_mm",),
        },
        when=begun("sink_cut_mm"),
        gives_way={"ratio_after": works.RATIO_AFTER["ratio_after"]},
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
        when=lambda known: begun("found_mm", "valves")(known) and not _by_screw(known),
    ),
    Step(
        part="lash_screw",
        calculation=lash_screw.CALCULATION,
        purpose="how far the adjuster turns",
        when=_by_screw,
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
