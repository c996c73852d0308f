"""What the decision for a cylinder may be told twice: it agrees, or is refused.

As in a compression test, and besides: the sizes of bore and piston, and the bore beside its survey.
"""

from ringland_service.core.calculations.cylinder.bore_told_twice import AGREEMENTS as BORE
from ringland_service.core.calculations.decision.cylinder_steps import GAP_AXES
from ringland_service.core.calculations.diagnosis import complaints
from ringland_service.core.calculations.engine_tests import agreements as tests
from ringland_service.core.declare import Agreement, Known
from ringland_service.core.declare.told_twice import (
    BORE_MM,
    GASKET_MM,
    ROUNDED_MM,
    Uncertainties,
    differ,
    same_figure,
    together,
)
from ringland_service.core.engines.survey import same_depth
from ringland_service.core.metrology.conformity import beyond


def _no_finish_size(known: Known, uncertainties: Uncertainties) -> bool:
    """Return whether the new bore lies outside the finish limits that follow from the piston."""
    low, high = "bore_order.finish_low_mm", "bore_order.finish_high_mm"
    allowed = max(together(uncertainties, "new_bore_mm", high), ROUNDED_MM)
    new = known["new_bore_mm"]
    return bool(beyond(known[low] - allowed, new) or beyond(new, known[high] + allowed))


def _no_finish(known: Known, uncertainties: Uncertainties) -> bool:
    if {"clearance_low_mm", "clearance_high_mm"} <= known.keys():
        return False
    finish = "oversize_choice.chosen_finish_mm"
    return differ(known, uncertainties, "new_bore_mm", finish, ROUNDED_MM)


def _outside_its_range(known: Known, uncertainties: Uncertainties) -> bool:
    wanted = known["clearance_target_mm"]
    low, high = known["clearance_low_mm"], known["clearance_high_mm"]
    allowed = uncertainties.get("clearance_target_mm", 0.0)
    return bool(beyond(low - allowed, wanted) or beyond(wanted, high + allowed))


def _another_piston(known: Known, _: Uncertainties) -> bool:
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
        fields=("new_bore_mm", "pistons", "clearance_target_mm"),
    ),
    Agreement(
        ("clearance_target_mm", "clearance_low_mm", "clearance_high_mm"),
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
    same_figure(
        "thinner_base_gasket_by_mm",
        "squish.thinner_by_mm",
        GASKET_MM,
        message="the base gasket told is another than the one chosen for the squish",
        right="the change that the gasket chosen makes; or no change told: it follows by itself",
        fields=("thinner_base_gasket_by_mm", "base_gaskets_mm", "base_gasket_fitted_mm"),
    ),
)


def _other_axis(name: str, axis: str) -> Agreement:
    def broken(known: Known, uncertainties: Uncertainties) -> bool:
        read = known["bore_survey"]
        depth = known["old_gap_depth_mm"]
        among = zip(read.depth_mm, getattr(read, axis), strict=False)
        there = [bore for at, bore in among if bore is not None and same_depth(at, depth)]
        allowed = max(together(uncertainties, name, axis), BORE_MM)
        return any(beyond(abs(known[name] - bore), allowed) for bore in there)

    return Agreement(
        (name, "bore_survey", axis, "old_gap_depth_mm"),
        broken,
        "the bore at the depth of the old gap is not that of the survey there",
        "the survey's own reading at that depth, or the survey alone",
        fields=(name, "bore_survey"),
    )


def _complaint(name: str) -> Agreement:
    return Agreement(
        ("complaint", name),
        lambda known, _: complaints.known(known, name),
        complaints.MESSAGE,
        complaints.RIGHT,
    )


AGREEMENTS = (
    *tests.AGREEMENTS,
    *(_complaint(name) for name in complaints.TOLD),
    *SIZES,
    *BORE,
    *(_other_axis(name, axis) for name, axis in GAP_AXES.items()),
)
