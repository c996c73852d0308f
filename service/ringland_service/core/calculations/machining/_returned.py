"""What judges the work that a machinist returns, and what an order of sizes must be."""

from typing import Any

from ringland_service.core.declare import Check, Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit

LEAST_CAPABILITY = 2.0
MOST_OFF_FINISH_MM = 0.5


def _finish_limits(_: Any, o: Any) -> Limit:
    return Limit(o.finish_low_mm, o.finish_high_mm, "computed", "piston and clearance wanted")


def _form(row: str) -> Any:
    return lambda i, o: LIMITS[row].limit()


SIZE_SETTLE = (
    "set the gauge in the shop's ring near this size, five readings each at 20 °C; a zone twice "
    "2·U wide or more can be proven"
)
FORM_SETTLE = "one gauge on one setting, five readings at each place, at the depths of the order"

CHECKS = (
    Check(
        "returned_smallest",
        "returned_min_mm",
        "smallest reading of the work returned",
        SIZE_SETTLE,
        _finish_limits,
    ),
    Check(
        "returned_largest",
        "returned_max_mm",
        "largest reading of the work returned",
        SIZE_SETTLE,
        _finish_limits,
    ),
    Check(
        "returned_out_of_round",
        "returned_out_of_round_mm",
        "out-of-round of the work returned",
        FORM_SETTLE,
        _form("returned.out_of_round"),
    ),
    Check(
        "returned_taper",
        "returned_taper_mm",
        "taper of the work returned",
        FORM_SETTLE,
        _form("returned.taper"),
    ),
)


def _off_finish(i: Any) -> Any:
    low = i.piston_mm + i.clearance_low_mm - MOST_OFF_FINISH_MM
    high = i.piston_mm + i.clearance_high_mm + MOST_OFF_FINISH_MM
    return beyond(low, min(i.returned_readings_mm)) or beyond(max(i.returned_readings_mm), high)


RULES = (
    Rule(
        ("clearance_low_mm", "clearance_high_mm"),
        lambda i: at_most(i.clearance_high_mm, i.clearance_low_mm),
        "the least clearance is not under the largest",
        "clearance_low under clearance_high: nobody can bore to one size",
    ),
    Rule(
        ("returned_readings_mm", "piston_mm", "clearance_low_mm", "clearance_high_mm"),
        _off_finish,
        "a reading more than 0.5 mm off the ordered finish bore is not one of this bore",
        "readings of the finished bore, as diameters; check the unit and the gauge's setting",
    ),
)


def _hard_to_prove(_: Any, o: Any) -> Any:
    return False if o.zone_over_2u is None else o.zone_over_2u < LEAST_CAPABILITY


NOTICES = (
    Notice(
        "zone_hard_to_prove",
        "zone_over_2u",
        _hard_to_prove,
        "the zone is under twice 2·U: two shops can honestly disagree on this bore; agree on one "
        "setting ring and one gauge",
    ),
    Notice(
        "size_uncertainty_not_stated",
        "size_uncertainty_mm",
        lambda i, _: i.size_uncertainty_mm is None,
        "without the uncertainty of a size nobody can say whether this zone can be proven",
    ),
    Notice(
        "form_is_a_difference",
        "returned_out_of_round_mm",
        lambda i, _: i.returned_out_of_round_mm is not None or i.returned_taper_mm is not None,
        "out-of-round and taper are differences of two diameters: give each its own uncertainty, "
        "about half of a size's, since the gauge's setting cancels",
    ),
)
