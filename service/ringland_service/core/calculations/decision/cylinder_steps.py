"""The parts of a cylinder's decision, shared by the decision itself and by the job card."""

from collections.abc import Callable, Mapping

from ringland_service.core.calculations.cylinder import (
    bore_survey,
    pin_fits,
    piston_clearance,
    ring_gap,
    ring_side_clearance,
)
from ringland_service.core.calculations.decision import (
    cylinder_ways,
    piston_selection,
)
from ringland_service.core.calculations.decision import (
    hone_and_re_ring as hone_and_re_ring,
)
from ringland_service.core.calculations.decision import ruled_out as ruled
from ringland_service.core.calculations.geometry import after_works as works
from ringland_service.core.calculations.geometry import displacement, overbore_ratio
from ringland_service.core.calculations.machining import (
    bore_order,
    clean_up,
    liner_wall,
    oversize_choice,
)
from ringland_service.core.calculations.machining.bored import NEVER_BORED
from ringland_service.core.declare import Derived, Known, Step
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.engines.survey import same_depth

When = Callable[[Known], bool]
FINISH, NEW_BORE = works.FINISH, works.NEW_BORE
FINISH_MAX = ("bore_order.finish_high_mm",)


def begun(*names: str) -> When:
    """Return whether one of the fields is given: a part that nobody asked for asks nothing."""
    return lambda known: bool(known.keys() & set(names))


ON_OFFER = begun("pistons")


def may_be_bored(known: Known) -> bool:
    """Return whether the bore is of a kind that boring does not destroy."""
    return known.get("bore_kind", UNKNOWN) not in (*NEVER_BORED, UNKNOWN)


def never_bored(known: Known) -> bool:
    """Return whether the bore is plated, chromed or bare silicon."""
    return known.get("bore_kind") in NEVER_BORED


def kind_known(known: Known) -> bool:
    """Return whether the kind of bore is known."""
    return bool(known.get("bore_kind", UNKNOWN) != UNKNOWN)


def _may_be_cleaned_up(known: Known) -> bool:
    """Return whether boring may be thought of: a bore that bears it, and its survey."""
    return may_be_bored(known) and begun("bore_survey", "depth_mm")(known)


def survey_readings(known: Known) -> Derived:
    """Return what the survey and the fit wanted tell besides: axes at the gap's depth, the middle.

    The old ring's gap was taken at some depth; where the survey has that depth, its two axes there
    are those of the gap.
    """
    return {**_middle_of_fit(known), **_axes_at_the_gap(known)}


def _middle_of_fit(known: Known) -> Derived:
    fit = ("clearance_low_mm", "clearance_high_mm")
    if "clearance_target_mm" in known or not set(fit) <= known.keys():
        return {}
    return {"clearance_target_mm": (sum(known[side] for side in fit) / 2.0, fit[0])}


# Where the axes at the depth of the old ring's gap are found in the survey.
GAP_AXES = {
    "old_gap_pin_axis_mm": "pin_axis_mm",
    "old_gap_thrust_axis_mm": "thrust_axis_mm",
}


def _axes_at_the_gap(known: Known) -> Derived:
    depth, survey = known.get("old_gap_depth_mm"), known.get("bore_survey")
    if depth is None or survey is None:
        return {}
    place = next((k for k, at in enumerate(survey.depth_mm) if same_depth(at, depth)), None)
    if place is None:
        return {}
    found = {name: (getattr(survey, axis)[place], axis) for name, axis in GAP_AXES.items()}
    return {n: read for n, read in found.items() if read[0] is not None and n not in known}


SURVEY = Step(
    part="bore_survey",
    calculation=bore_survey.CALCULATION,
    purpose="how worn, round and tapered the bore is",
    sources={
        "unworn_mm": ("unworn_mm",),
        "nominal_bore_mm": ("bore_mm",),
        "bore_use": ("bore_use",),
    },
)
FITS = (
    Step(
        part="piston_clearance",
        calculation=piston_clearance.CALCULATION,
        purpose="piston clearance, new or worn",
    ),
    Step(
        part="ring_side_clearance",
        calculation=ring_side_clearance.CALCULATION,
        purpose="side clearance of the rings in their grooves",
        sources={"condition": ("ring_condition",)},
        when=begun(
            "top_feeler_mm",
            "top_groove_mm",
            "second_feeler_mm",
            "second_groove_mm",
            "top_groove_root_mm",
            "second_groove_root_mm",
        ),
    ),
    Step(
        part="pin_fits",
        calculation=pin_fits.CALCULATION,
        purpose="the pin's fit in piston and small end",
        sources={"condition": ("pin_condition",)},
        when=begun("pin_mm", "piston_pin_bore_mm", "small_end_bore_mm"),
    ),
)
OVERSIZE = (
    Step(
        part="clean_up",
        calculation=clean_up.CALCULATION,
        purpose="the diameter that cuts out wear and scores",
        sources={
            "unworn_mm": ("unworn_mm",),
            "bore_largest_mm": ("bore_survey.largest_mm",),
        },
        when=_may_be_cleaned_up,
    ),
    Step(
        part="oversize_choice",
        calculation=oversize_choice.CALCULATION,
        purpose="the smallest oversize that cleans up",
        sources={"clean_up_mm": ("clean_up.clean_up_mm",), "nominal_bore_mm": ("bore_mm",)},
        when=lambda known: "clean_up.clean_up_mm" in known and ON_OFFER(known),
    ),
    Step(
        part="bore_order",
        calculation=bore_order.CALCULATION,
        purpose="finish bore as two limits, and what the machinist bores to",
        sources={"piston_size_mm": ("oversize_choice.chosen_piston_mm",)},
        when=lambda known: FINISH in known,
        after_work=True,
    ),
    Step(
        part="liner_wall",
        calculation=liner_wall.CALCULATION,
        purpose="the wall that boring leaves",
        sources={"finish_high_mm": ("bore_order.finish_high_mm", "new_bore_mm")},
        when=lambda known: "liner_od_mm" in known and kind_known(known),
        falls_out=ruled.never_bored,
    ),
)
AFTER = (
    Step(
        part="displacement",
        calculation=displacement.CALCULATION,
        purpose="displacement, before and after machining",
        sources={"new_bore_mm": NEW_BORE, "finish_high_mm": FINISH_MAX},
        after_work=True,
    ),
    Step(
        part="overbore_ratio",
        calculation=overbore_ratio.CALCULATION,
        purpose="compression ratio after machining, and the gasket's room",
        title="Compression ratio after the work",
        sources=works.SOURCES,
        when=works.changes,
        derive=works.derived,
        without=works.without,
        after_work=True,
    ),
)
GAPS = Step(
    part="ring_gap",
    calculation=ring_gap.CALCULATION,
    purpose="ring end gaps: wanted, to file, and what wear added",
    sources={"bore_mm": ("gap_bore_mm", *NEW_BORE, "unworn_mm")},
    after_work=True,
)
# What the tests said: from their parts on a job card, else as told.
TESTED: Mapping[str, tuple[str, ...]] = {
    "leak_pct": ("leak_down.leak_pct", "leak_pct"),
    "leak_gradeable": ("leak_down.gradeable", "leak_gradeable"),
    "leak_grade": ("leak_down.grade_on_makers_scale", "leak_grade"),
    "excess_gain_pct": ("wet_gain.excess_gain_pct", "excess_gain_pct"),
    "level_ratio": ("compression_level.ratio", "level_ratio"),
    "oil_use_grade": ("oil_use.grade", "oil_use_grade"),
    "diagnosis_headline": ("diagnosis.headline", "diagnosis_headline"),
    "suspects": ("diagnosis.suspects", "suspects"),
    "next_test": ("diagnosis.next_test", "next_test"),
}
DECISION = (
    Step(
        part="hone_and_re_ring",
        calculation=hone_and_re_ring.CALCULATION,
        purpose="whether the bore may be kept, with new rings",
        sources={
            "survey_largest_mm": ("bore_survey.largest_mm",),
            "survey_worn_zone_mm": ("bore_survey.worn_zone_mm",),
            "survey_out_of_round_mm": ("bore_survey.out_of_round_mm",),
            "survey_taper_pin_axis_mm": ("bore_survey.taper_pin_axis_mm",),
            "survey_taper_thrust_axis_mm": ("bore_survey.taper_thrust_axis_mm",),
            "nominal_bore_mm": ("bore_mm",),
            "new_rings_piston_mm": ("new_rings_piston_mm", "piston_size_mm"),
        },
        when=kind_known,
    ),
    Step(
        part="piston_selection",
        calculation=piston_selection.CALCULATION,
        purpose="which piston on offer fits the bore as it is",
        when=lambda known: never_bored(known) and "pistons" in known,
    ),
    Step(
        part="cylinder_decision",
        calculation=cylinder_ways.CALCULATION,
        purpose="what to do with the cylinder, and why the other ways fall out",
        sources={
            "survey_largest_mm": ("bore_survey.largest_mm",),
            "clean_up_mm": ("clean_up.clean_up_mm",),
            "choice_reason": ("oversize_choice.reason",),
            "chosen": ("oversize_choice.chosen",),
            "finish_high_mm": ("bore_order.finish_high_mm", FINISH),
            "best": ("piston_selection.best",),
            **TESTED,
        },
        wants=cylinder_ways.wanted,
        rules_out=ruled.of_the_decision,
    ),
)
STEPS = (SURVEY, *FITS, *OVERSIZE, GAPS, *AFTER, *DECISION)
