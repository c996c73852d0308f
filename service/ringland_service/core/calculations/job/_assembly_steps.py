"""The parts of a job that follow the decision: the engine after, assembly, running in, price."""

from ringland_service.core.calculations.assembly import (
    estimate,
    fastener_order,
    premix,
    ring_clocking,
    run_in,
    torque_steps,
)
from ringland_service.core.calculations.cylinder import hot_clearance, rod_play
from ringland_service.core.calculations.decision.cylinder_steps import GAPS, NEW_BORE, begun
from ringland_service.core.calculations.decision.ruled_out import never_bored
from ringland_service.core.calculations.engine_tests import cranking_pressure
from ringland_service.core.calculations.engine_tests.compression_steps import (
    four_stroke,
    two_stroke,
)
from ringland_service.core.calculations.geometry import after_works as works
from ringland_service.core.calculations.geometry import dynamic_ratio, port_timing
from ringland_service.core.calculations.job import (
    before_assembly,
    consequences,
    parts_to_order,
    re_check,
)
from ringland_service.core.calculations.machining import crosshatch, sleeve_fit
from ringland_service.core.calculations.order_card import order_card
from ringland_service.core.calculations.order_card.order_choices import BORE_AND_HONE, SLEEVE
from ringland_service.core.declare import Known, Step, Way

DECISION = "cylinder_decision.way"
NO_PREMIX = "oil goes into the fuel of a two-stroke; this engine is a four-stroke"
PISTON = ("oversize_choice.chosen", "piston_selection.best")


def _ratio_after(known: Known) -> bool:
    return four_stroke(known) and "overbore_ratio.clearance_after_cc" in known


def _ports_after(known: Known) -> bool:
    asked = {"port_timing.trapped_ratio", "overbore_ratio.clearance_after_cc"}
    return two_stroke(known) and asked <= known.keys()


def _at_altitude(known: Known) -> bool:
    return "cranking_pressure_after.mid_kpa" in known and known.get("altitude_m", 0.0) > 0.0


ROD = Step(
    part="rod_play",
    calculation=rod_play.CALCULATION,
    purpose="whether the rod and crank below are worth a new top end",
    sources={"condition": ("rod_condition",)},
    when=begun(
        "big_end_side_mm",
        "big_end_radial_mm",
        "small_end_tip_rock_mm",
        "runout_left_mm",
        "runout_right_mm",
    ),
)
ENGINE_AFTER = (
    Step(
        part="dynamic_ratio_after",
        calculation=dynamic_ratio.CALCULATION,
        purpose="compression ratio from the intake's closing, after machining",
        title="Dynamic compression ratio after machining",
        sources={
            "bore_mm": (*NEW_BORE, "bore_mm"),
            "clearance_cc": ("overbore_ratio.clearance_after_cc",),
        },
        when=_ratio_after,
    ),
    Step(
        part=works.PORTS,
        calculation=port_timing.CALCULATION,
        purpose="port timing and trapped ratio after all works together",
        title="Port timing and trapped ratio after the work",
        sources={
            "bore_mm": (*NEW_BORE, "bore_mm"),
            "clearance_cc": ("overbore_ratio.clearance_after_cc",),
            "thinner_base_gasket_by_mm": (),
            **{name: (f"{name}_after",) for name in (*works.TOPS, works.EDGE)},
        },
        when=_ports_after,
        derive=works.ports_derived,
    ),
    Step(
        part="cranking_pressure_after",
        calculation=cranking_pressure.CALCULATION,
        purpose="the reading that the mended engine should give at this altitude",
        title="Expected cranking pressure after the work",
        sources={
            "ratio": (
                "dynamic_ratio_after.dynamic_ratio",
                f"{works.PORTS}.trapped_ratio",
                "port_timing.trapped_ratio_after",
                "squish.trapped_ratio_after",
            ),
            "bore_mm": (*NEW_BORE, "bore_mm"),
            "clearance_cc": ("overbore_ratio.clearance_after_cc", "port_timing.clearance_after_cc"),
        },
        when=begun(
            "dynamic_ratio_after.dynamic_ratio",
            f"{works.PORTS}.trapped_ratio",
            "port_timing.trapped_ratio_after",
            "squish.trapped_ratio_after",
        ),
    ),
    Step(
        part="cranking_pressure_after_at_sea_level",
        calculation=cranking_pressure.CALCULATION,
        purpose="the reading that the mended engine should give down at sea level",
        title="Expected cranking pressure after the work, at sea level",
        sources={
            "air_pressure_kpa_abs": (),
            "weather_report_kpa_abs": (),
            "ratio": (
                "dynamic_ratio_after.dynamic_ratio",
                f"{works.PORTS}.trapped_ratio",
                "port_timing.trapped_ratio_after",
                "squish.trapped_ratio_after",
            ),
            "bore_mm": (*NEW_BORE, "bore_mm"),
            "clearance_cc": ("overbore_ratio.clearance_after_cc", "port_timing.clearance_after_cc"),
        },
        fixed={"altitude_m": 0.0},
        when=_at_altitude,
    ),
    Step(
        part="hot_clearance",
        calculation=hot_clearance.CALCULATION,
        purpose="running clearance, for comparison only",
        sources={
            "bore_mm": (*NEW_BORE, "bore_survey.largest_mm"),
            "piston_size_mm": ("oversize_choice.chosen_piston_mm", "piston_size_mm"),
        },
        when=begun("bore_hot_c", "piston_hot_c"),
    ),
    Step(
        part="crosshatch",
        calculation=crosshatch.CALCULATION,
        purpose="what the hone must be set to",
        sources={"bore_mm": (*NEW_BORE, "bore_survey.largest_mm", "bore_mm")},
        when=begun("spindle_speed_rpm", "travel_mm", "strokes_per_minute_rpm"),
        falls_out=never_bored,
    ),
    Step(
        part="sleeve_fit",
        calculation=sleeve_fit.CALCULATION,
        purpose="whether a new sleeve holds, and how hot the cylinder must be to take it",
        when=begun("cylinder_bore_mm", "sleeve_od_mm"),
    ),
)


def _ordered(known: Known) -> bool:
    """Return whether work goes to the machine shop; a sleeve only once its fit is worked out."""
    work = known.get("cylinder_decision.work")
    return work is not None and (work != SLEEVE or "sleeve_fit.interference_mm" in known)


def _order_needs(known: Known) -> tuple[tuple[Way, ...], ...]:
    """Return what an order states of this work: it is open without, and the card stands."""
    bored = known["cylinder_decision.work"] == BORE_AND_HONE
    fit: tuple[tuple[Way, ...], ...] = ((("clearance_low_mm", "clearance_high_mm"),),)
    piston: tuple[tuple[Way, ...], ...] = ((("piston_size_mm",),),)
    return (*(fit if bored else ()), *(piston if bored or "piston_mark" in known else ()))


AFTER_DECISION = (
    Step(
        part="order_card",
        calculation=order_card.CALCULATION,
        purpose="the order to the machinist",
        sources={
            "work": ("cylinder_decision.work",),
            "piston_size_mm": ("oversize_choice.chosen_piston_mm", "new_rings_piston_mm"),
            "piston_mark": ("piston_mark", "oversize_choice.chosen"),
            "interference_mm": ("sleeve_fit.interference_mm",),
            "heat_c": ("sleeve_fit.heat_cylinder_to_c",),
            "included_angle_deg": ("included_angle_deg",),
            "proof_depths_mm": ("proof_depths_mm", "depth_mm"),
            "wall_floor_mm": ("wall_floor_mm", "liner_wall.floor_used_mm"),
        },
        when=_ordered,
        needs=_order_needs,
    ),
    Step(
        part="parts_to_order",
        calculation=parts_to_order.CALCULATION,
        purpose="what must be ordered",
        sources={"way": (DECISION,), "piston": PISTON},
        when=begun(DECISION),
    ),
    Step(
        part="re_check",
        calculation=re_check.CALCULATION,
        purpose="what to read again when the cylinder is back",
        sources={
            "way": (DECISION,),
            "finish_low_mm": ("bore_order.finish_low_mm",),
            "finish_high_mm": ("bore_order.finish_high_mm",),
            "gap_bore_mm": GAPS.sources["bore_mm"],
        },
        when=begun(DECISION),
    ),
    Step(
        part="before_assembly",
        calculation=before_assembly.CALCULATION,
        purpose="what must be found and cleaned before anything goes back together",
        sources={"way": (DECISION,)},
        when=begun(DECISION),
    ),
)
ASSEMBLY = (
    Step(
        part="torque_steps",
        calculation=torque_steps.CALCULATION,
        purpose="what the wrench is set to in each stage, and whether the thread carries it",
        when=begun("final_torque_nm"),
    ),
    Step(
        part="fastener_order",
        calculation=fastener_order.CALCULATION,
        purpose="the order in which the fasteners are relieved and tightened",
        when=begun("fasteners"),
    ),
    Step(
        part="ring_clocking",
        calculation=ring_clocking.CALCULATION,
        purpose="where the ring gaps go",
        sources={"bore_mm": (*NEW_BORE, "unworn_mm", "bore_mm")},
        when=begun("gaps", "ring_pins", "port_windows"),
    ),
    Step(
        part="premix",
        calculation=premix.CALCULATION,
        purpose="oil for the fuel",
        falls_out=lambda known: "" if two_stroke(known) or "cycle" not in known else NO_PREMIX,
        when=begun("fuel_l", "ratio", "tank_has_l"),
    ),
    Step(
        part="run_in",
        calculation=run_in.CALCULATION,
        purpose="steps of running in, and what to read again",
        when=begun("rated_speed_rpm", "steps"),
    ),
    Step(
        part="consequences",
        calculation=consequences.CALCULATION,
        purpose="whether using a uncertain part again costs less than the repair",
        when=begun("cost_of_reuse", "cost_of_repair", "cost_of_comeback"),
    ),
    Step(
        part="estimate",
        calculation=estimate.CALCULATION,
        purpose="price of the job, against a replacement",
        sources={"of_way": ("of_way",)},
        when=begun("parts", "machine_shop", "labour_rate"),
    ),
)
