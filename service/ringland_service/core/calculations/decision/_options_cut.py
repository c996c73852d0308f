"""The repair options that change the bore: overbore, sleeve, replate, replace."""

from ringland_service.core.calculations.decision._conditions import (
    HOLDS,
    Assessment,
    Condition,
    broken,
    holds,
    judged,
    unknown,
)
from ringland_service.core.calculations.decision._decision_inputs import Inputs
from ringland_service.core.calculations.decision._looked_at import structural, undamaged
from ringland_service.core.calculations.decision.damage import DAMAGE
from ringland_service.core.calculations.machining.bored import NEVER_BORED
from ringland_service.core.declare import Want
from ringland_service.core.metrology.conformity import at_most

WALL = Want("how much wall boring leaves", (("liner_od_mm", "liner_kind"),))
SLEEVE_FIT = Want(
    "the sleeve's interference and the heat that it goes in by, for the order",
    (("cylinder_bore_mm", "sleeve_od_mm"),),
)
ON_OFFER = ("pistons", "clearance_low_mm", "clearance_high_mm", "hone_stock_mm")


def overbore(i: Inputs) -> Assessment:
    """Return whether boring to a piston on offer mends the cylinder."""
    if i.bore_kind in NEVER_BORED:
        message, right = NEVER_BORED[i.bore_kind]
        return Assessment((broken(f"{message}; ways on: {right}"),))
    return Assessment(
        (
            undamaged(i),
            *_clean_up(i),
            *_wall(i),
            *_gasket(i),
            *judged(i.findings, "class_limit_after", None, close=HOLDS),
            *judged(i.findings, "compression_ratio_after", None, close=HOLDS),
        ),
        _cleans_up(i),
    )


def _cleans_up(i: Inputs) -> str:
    if i.chosen is None:
        return ""
    return f"piston {i.chosen} is the smallest that cleans up {i.clean_up_mm:.3f} mm"


def _clean_up(i: Inputs) -> list[Condition]:
    if i.clean_up_mm is None:
        said = "the clean-up diameter is not known without the unworn bore"
        return [unknown(said, ("unworn_mm",))]
    if i.choice_reason is None:
        said = "which pistons can be had, their measured sizes, the fit and the hone's stock"
        return [unknown(f"not told: {said}", ON_OFFER)]
    if i.choice_reason == "only_at_the_hone":
        return [unknown("no piston cleans up at boring; one may at the hone: ask the machinist")]
    if i.chosen is None:
        return [broken(f"no piston on offer cleans up {i.clean_up_mm:.3f} mm")]
    return [
        holds(_cleans_up(i)),
        *judged(i.findings, "oversize_margin", None, close=HOLDS),
    ]


def _wall(i: Inputs) -> list[Condition]:
    """Return whether the wall bears it; untold, the order's stop line guards it."""
    if i.chosen is None:
        return []
    stop = "the wall that boring leaves is not known: the order says at which wall to stop"
    return judged(i.findings, "liner_wall", holds(stop, WALL), close=HOLDS)


def _gasket(i: Inputs) -> list[Condition]:
    """Return whether the head gasket clears the bore; less than usual room asks for another."""
    if i.gasket_bore_mm is None or i.finish_high_mm is None:
        return []
    if at_most(i.gasket_bore_mm, i.finish_high_mm):
        gasket, finish = f"{i.gasket_bore_mm:.3f} mm", f"{i.finish_high_mm:.3f} mm"
        said = f"the gasket bore of {gasket} is no larger than the finish bore of {finish}"
        return [broken(f"{said}: it takes a gasket with a larger bore")]
    close = judged(i.findings, "gasket_clearance_per_side", None, close=HOLDS)
    return [c if c.state == HOLDS else holds(f"{c.said}: take a wider gasket") for c in close]


def sleeve(i: Inputs) -> Assessment:
    """Return whether a new sleeve may mend it."""
    said = "a new sleeve carries the standard piston"
    if i.bore_kind in NEVER_BORED:
        said = "an iron sleeve changes clearance, heat path and weight: where the maker allows it"
    return Assessment((_body_whole(i), holds(said, SLEEVE_FIT)), said)


def replate(i: Inputs) -> Assessment:
    """Return whether new plating may mend it."""
    if i.bore_kind not in ("plated_aluminium", "chromed"):
        return Assessment((broken("only a plated bore is plated again"),))
    said = (
        "replating to standard or repair size, proven by eddy-current probe or ball micrometer "
        "at the ports and at mid-bore"
    )
    return Assessment((_body_whole(i), holds(said)), said)


def replace(_: Inputs) -> Assessment:
    """Return the option that is always left."""
    said = "another cylinder, measured like this one before it is fitted"
    return Assessment((holds(said),), said)


def _body_whole(i: Inputs) -> Condition:
    if i.damage is not None and structural(i):
        said = f"{DAMAGE[i.damage]}: the cylinder itself is broken, not its surface alone"
        return broken(said)
    return holds("the cylinder itself is whole, as far as told")
