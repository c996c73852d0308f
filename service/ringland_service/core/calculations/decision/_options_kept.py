"""The repair options that leave the bore its size: leave alone, new rings, a piston chosen."""

from ringland_service.core.calculations.decision._conditions import (
    BROKEN,
    Assessment,
    Condition,
    broken,
    holds,
    judged,
    missing,
    unknown,
)
from ringland_service.core.calculations.decision._decision_inputs import Inputs
from ringland_service.core.calculations.decision._looked_at import undamaged, unridged, unscored
from ringland_service.core.calculations.decision._sealing import speaks_against, stands_in
from ringland_service.core.calculations.machining.bored import NEVER_BORED
from ringland_service.core.engines.condition import GLAZED, SCORED

BORE_CHECKS = {
    "bore_largest": "nothing judges the largest bore: give the maker's limit, or the nominal bore",
    "out_of_round": "nothing judges the out-of-round: read both axes at one depth",
    "taper_pin_axis": "nothing judges the taper on the pin axis",
    "taper_thrust_axis": "nothing judges the taper on the thrust axis",
}
NOT_SURVEYED = missing("the bore is not surveyed", ("depth_mm", "pin_axis_mm", "thrust_axis_mm"))
OLD_GAP = ("old_gap_mm", "old_gap_depth_mm", "unworn_mm")
# Fields of the job card, and of the decision's own route.
SEALING_TESTS = (
    ("supply_pressure_kpa", "cylinder_pressure_kpa", "restrictor_mm"),
    ("leak_pct", "leak_gradeable"),
    ("wet_kpa", "wet_oil_ml"),
    ("excess_gain_pct", "level_ratio"),
)


def _bore(i: Inputs) -> list[Condition]:
    """Return the verdicts on the bore as it is."""
    if i.survey_largest_mm is None:
        return [NOT_SURVEYED]
    conditions: list[Condition] = []
    for check, untold in BORE_CHECKS.items():
        ways = (("bore_mm",),) if check == "bore_largest" else ()
        conditions += judged(i.findings, check, missing(untold, *ways))
    return conditions


def leave_alone(i: Inputs) -> Assessment:
    """Return whether rings that seal can be left undisturbed.

    Where the pistons stay in, tests that show sealing rings stand in for what cannot be measured;
    what was measured all the same counts.
    """
    clearance = missing("the piston's clearance is not known", ("piston_size_mm",))
    bench = (
        *_bore(i),
        *judged(i.findings, "piston_clearance_max", clearance),
        *judged(i.findings, "ring_gap_used", _gap_untold(i)),
        _not_glazed(i),
    )
    headline = "bore, clearance and rings pass, and rings that seal are not disturbed"
    shown = stands_in(i)
    if shown is not None and any(condition.missing for condition in bench):
        bench = (shown, *(condition for condition in bench if not condition.missing))
        headline = shown.said
    against = tuple(speaks_against(i))
    return Assessment((undamaged(i), *bench, *against, _pistons_stay(i)), headline)


def _gap_untold(i: Inputs) -> Condition:
    """Return that the old rings' gap is not known, and what would tell that they seal."""
    if not i.piston_stays_in:
        return missing("the old rings' own gap is not known", OLD_GAP)
    said = "the old rings' gap cannot be read while the piston stays in, and no test shows that"
    return missing(f"{said} they seal", *SEALING_TESTS)


def _not_glazed(i: Inputs) -> Condition:
    if i.surface == GLAZED:
        return broken("the bore is glazed: rings do not seal on it and it uses oil")
    return unscored(i)


def _pistons_stay(i: Inputs) -> Condition:
    if i.piston_stays_in is None:
        return unknown("whether the pistons stay in is not told", ("piston_stays_in",))
    if not i.piston_stays_in:
        return broken("the piston comes out, and rings that were out are not put back")
    return holds("the pistons stay in: rings that seal are not disturbed")


RERING_CHECKS = {
    "re_ring_bore": unknown(
        "nothing judges the bore after the hone: give the maker's limit, or the nominal bore",
        ("bore_mm",),
    ),
    "re_ring_out_of_round": unknown("out-of-round is not known: read both axes at one depth"),
    "re_ring_taper_pin_axis": unknown("taper on the pin axis is not known"),
    "re_ring_taper_thrust_axis": unknown("taper on the thrust axis is not known"),
    "re_ring_clearance": unknown(
        "clearance of the piston that would go back is not judged",
        ("new_rings_piston_mm", "piston_size_mm"),
        ("piston_size_mm", "cycle"),
    ),
    "re_ring_ring_gap": unknown(
        "gap of a new ring in the worn zone is not known",
        ("new_rings_gap_mm", "bore_mm"),
    ),
}
RING_SIDE = (("top_feeler_mm",), ("top_groove_mm", "top_width_mm"))
PIN = ("pin_mm", "piston_pin_bore_mm")


def re_ring(i: Inputs) -> Assessment:
    """Return whether new rings in the bore, honed or deglazed, would do."""
    conditions = [undamaged(i)]
    if i.survey_largest_mm is None:
        return Assessment((*conditions, NOT_SURVEYED))
    for check, untold in RERING_CHECKS.items():
        conditions += judged(i.findings, check, untold)
    side = unknown("side clearance of a new ring in its groove is not known", *RING_SIDE)
    pin = unknown("the pin's fit in the piston is not known", PIN)
    conditions += [
        *_scores_go(i),
        unridged(i),
        *judged(i.findings, "top_ring_side", side, close=BROKEN),
        *judged(i.findings, "second_ring_side", None, close=BROKEN),
        *judged(i.findings, "pin_in_piston", pin, close=BROKEN),
    ]
    headline = "everything that new rings ask of bore, piston and pin is a plain pass"
    return Assessment(tuple(conditions), headline)


def _scores_go(i: Inputs) -> list[Condition]:
    """Return whether the hone takes the scores out."""
    if i.scores is not None:
        return judged(i.findings, "re_ring_score", None, close=BROKEN)
    if i.surface == SCORED:
        return [unknown("how deep the scores are is not known", ("scores",))]
    return [unscored(i)]


def select_piston(i: Inputs) -> Assessment:
    """Return whether a piston on offer fits the sound bore."""
    if i.bore_kind not in NEVER_BORED:
        return Assessment((broken("an iron bore is honed or bored to its piston"),))
    headline = f"the bore is sound, and piston {i.best} sits most central in the new fit"
    return Assessment((undamaged(i), *_bore(i), unscored(i), *_offer(i)), headline)


def _offer(i: Inputs) -> list[Condition]:
    if i.best is None:
        said = "no piston with its measured size is on offer, or the new fit is not told"
        return [unknown(said, ("pistons", "clearance_low_mm", "clearance_high_mm"))]
    return [
        condition
        for check in ("selected_piston_min", "selected_piston_max")
        for condition in judged(i.findings, check, None, of=i.best)
    ]
