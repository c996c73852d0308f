"""What a job may be told twice, and of one engine: it agrees within its uncertainty or is refused.

Each pair names both of its fields. A figure told twice agrees within the expanded uncertainty of
both together, or within the least difference that its readings can show where none is stated
(common practice, no source). Limits and choices agree exactly.
"""

from typing import Any

from ringland_service.core import condition
from ringland_service.core.calculations.cylinder._bore_told_twice import AGREEMENTS as BORE
from ringland_service.core.calculations.decision._cylinder_steps import GAP_AXES
from ringland_service.core.calculations.engine_tests import _complaints as complaints
from ringland_service.core.declare import Agreement
from ringland_service.core.survey import same_depth
from ringland_service.core.told_twice import (
    BORE_MM,
    GASKET_MM,
    ROUNDED_MM,
    SHARE,
    Doubts,
    Known,
    apart,
    together,
)
from ringland_service.core.verdicts import beyond


def _apart(known: Known, doubts: Doubts, one: str, other: str, least: float) -> bool:
    return apart(known[one], known[other], together(doubts, one, other), least)


def _figure(one: str, other: str, least: float, **about: Any) -> Agreement:
    """Return the agreement of a figure that is told, or follows, twice."""
    return Agreement(
        (one, other), lambda known, doubts: _apart(known, doubts, one, other, least), **about
    )


def _volume(known: Known, doubts: Doubts, other: str) -> bool:
    least = SHARE * max(known["clearance_cc"], known[other])
    return _apart(known, doubts, "clearance_cc", other, least)


def _clearance(result: str, *fields: str) -> Agreement:
    name = f"compression_ratio.{result}"
    return Agreement(
        ("clearance_cc", name),
        lambda known, doubts: _volume(known, doubts, name),
        "the clearance volume and its own parts make two different volumes",
        "volumes that agree within their uncertainty, or 1 %; or one way alone",
        fields=("clearance_cc", *fields),
    )


PARTS = ("chamber_cc", "gasket_bore_mm", "gasket_area_mm2", "gasket_thickness_mm", "deck_mm")
VOLUMES = (
    _clearance("clearance_cc", *PARTS, "burette_fill_cc"),
    _clearance("clearance_by_burette_cc", "burette_fill_cc"),
)


def _pressure_allowed(known: Known, doubts: Doubts, *names: str) -> float:
    repeat = 2.0 * float(known.get("repeat_kpa_diff", 0.0))
    share = SHARE * max(abs(float(known["reading_kpa"])), 1.0)
    return max(together(doubts, *names), repeat, share)


def _last_stroke_differs(known: Known, doubts: Doubts) -> bool:
    allowed = _pressure_allowed(known, doubts, "reading_kpa", "stroke_readings_kpa")
    return bool(beyond(abs(known["reading_kpa"] - known["stroke_readings_kpa"][-1]), allowed))


def _of_no_cylinder(known: Known, doubts: Doubts) -> bool:
    """Return whether the reading is none of the cylinders', all of which are read."""
    taken = known["readings_kpa"]
    if len(taken) < known.get("cylinders", 0):
        return False
    allowed = _pressure_allowed(known, doubts, "reading_kpa", "readings_kpa")
    nearest = min(abs(known["reading_kpa"] - one) for one in taken)
    return bool(beyond(nearest, allowed))


READINGS = (
    Agreement(
        ("reading_kpa", "stroke_readings_kpa"),
        _last_stroke_differs,
        "the reading is not that of its last stroke",
        "the reading at which the strokes end; or the strokes alone",
    ),
    Agreement(
        ("reading_kpa", "readings_kpa"),
        _of_no_cylinder,
        "the reading is none of those of the cylinders",
        "the reading of one of the cylinders; or the readings alone",
    ),
    Agreement(
        ("readings_kpa", "cylinders"),
        lambda known, _: len(known["readings_kpa"]) > known["cylinders"],
        "more readings than the engine has cylinders",
        "one reading a cylinder, or the number of cylinders as it is",
    ),
)


def _no_finish_size(known: Known, doubts: Doubts) -> bool:
    """Return whether the new bore lies outside the finish limits that follow from the piston."""
    low, high = "bore_order.finish_low_mm", "bore_order.finish_high_mm"
    allowed = max(together(doubts, "new_bore_mm", high), ROUNDED_MM)
    new = known["new_bore_mm"]
    return bool(beyond(known[low] - allowed, new) or beyond(new, known[high] + allowed))


def _no_finish(known: Known, doubts: Doubts) -> bool:
    if {"clearance_low_mm", "clearance_high_mm"} <= known.keys():
        return False
    finish = "oversize_choice.chosen_finish_mm"
    return _apart(known, doubts, "new_bore_mm", finish, ROUNDED_MM)


def _outside_its_range(known: Known, doubts: Doubts) -> bool:
    wanted = known["wanted_clearance_mm"]
    low, high = known["clearance_low_mm"], known["clearance_high_mm"]
    allowed = doubts.get("wanted_clearance_mm", 0.0)
    return bool(beyond(low - allowed, wanted) or beyond(wanted, high + allowed))


def _another_piston(known: Known, _: Doubts) -> bool:
    marks = {piston.mark for piston in known["pistons"]}
    return known["piston_mark"] in marks - {known["oversize_choice.chosen"]}


NEW_BORE = "the new bore is not the finish size that follows from piston and clearance"
BORE_RIGHT = "the finish size of the piston chosen, or no new bore: it then follows by itself"
SIZES = (
    Agreement(
        ("new_bore_mm", "bore_order.finish_low_mm", "bore_order.finish_high_mm"),
        _no_finish_size,
        NEW_BORE,
        BORE_RIGHT,
        fields=("new_bore_mm", "pistons", "clearance_low_mm", "clearance_high_mm"),
    ),
    Agreement(
        ("new_bore_mm", "oversize_choice.chosen_finish_mm"),
        _no_finish,
        NEW_BORE,
        BORE_RIGHT,
        fields=("new_bore_mm", "pistons", "wanted_clearance_mm"),
    ),
    Agreement(
        ("wanted_clearance_mm", "clearance_low_mm", "clearance_high_mm"),
        _outside_its_range,
        "the clearance wanted lies outside its own range",
        "a clearance from clearance_low to clearance_high; or the range alone",
    ),
    Agreement(
        ("piston_mark", "oversize_choice.chosen", "pistons"),
        _another_piston,
        "the order names another piston than the one chosen of those on offer",
        "the mark of the piston chosen, or none: it then follows by itself",
        fields=("piston_mark", "pistons"),
    ),
    _figure(
        "thinner_base_gasket_by_mm",
        "squish.thinner_by_mm",
        GASKET_MM,
        message="the base gasket told is another than the one chosen for the squish",
        right="the change that the gasket chosen makes; or no change told: it follows by itself",
        fields=("thinner_base_gasket_by_mm", "base_gaskets_mm", "base_gasket_fitted_mm"),
    ),
)


def _other_axis(name: str, axis: str) -> Agreement:
    def broken(known: Known, doubts: Doubts) -> bool:
        read = known["survey"]
        depth = known["old_gap_depth_mm"]
        among = zip(read.depth_mm, getattr(read, axis), strict=False)
        there = [bore for at, bore in among if bore is not None and same_depth(at, depth)]
        allowed = max(together(doubts, name, axis), BORE_MM)
        return any(beyond(abs(known[name] - bore), allowed) for bore in there)

    return Agreement(
        (name, "survey", axis, "old_gap_depth_mm"),
        broken,
        "the bore at the depth of the old gap is not that of the survey there",
        "the survey's own reading at that depth, or the survey alone",
        fields=(name, "survey"),
    )


def _engine(one: str, other: str, broken: Any, message: str, right: str) -> Agreement:
    """Return the agreement of two things told of one engine."""
    return Agreement(
        (one, other), lambda known, _: bool(broken(known[one], known[other])), message, right
    )


def _without_valves(section: str) -> Agreement:
    return _engine(
        "cycle",
        section,
        lambda cycle, _: cycle == "two_stroke",
        "a two-stroke has no valves, springs, lash or cam to measure",
        "the cycle as it is, or these readings left out",
    )


def _complaint(name: str) -> Agreement:
    return Agreement(
        ("complaint_kind", name),
        lambda known, _: complaints.known(known, name),
        complaints.MESSAGE,
        complaints.RIGHT,
    )


ENGINE = (
    *(
        _engine(rule.fields[0], rule.fields[1], broken, rule.message, rule.right)
        for rule, broken in zip(
            condition.ENGINE_RULES,
            (
                condition.decompressor_contradicts,
                lambda gear, cycle: condition.valve_gear_contradicts(cycle, gear),
                lambda kind, cycle: condition.decompressor_of_the_other_cycle(cycle, kind),
            ),
            strict=True,
        )
    ),
    _engine(
        "decompressor_closes_deg",
        "decompressor",
        lambda _, kind: kind == "none",
        "there is no decompressor, and it closes at an angle",
        "the kind of decompressor, or no closing angle",
    ),
    *(_without_valves(section) for section in ("valve", "spring", "lash", "cam")),
    *(_complaint(name) for name in complaints.TOLD),
    _engine(
        "cylinder_number",
        "cylinders",
        lambda number, cylinders: number > cylinders,
        "the order is for a cylinder that the engine does not have",
        "a cylinder from 1 to the number of cylinders",
    ),
)
AGREEMENTS = (
    *ENGINE,
    *READINGS,
    *VOLUMES,
    *SIZES,
    *BORE,
    *(_other_axis(name, axis) for name, axis in GAP_AXES.items()),
)
