"""What must be a plain pass before a bore is kept and given new rings.

The maker's service limits judge where the request gives them; else what shops use.
"""

from collections.abc import Callable
from dataclasses import replace
from typing import Protocol, cast

from ringland_service.core.calculations.cylinder.bore_checks import SETTLE_DIFFERENCE, SETTLE_SIZE
from ringland_service.core.calculations.machining.bored import NEVER_BORED
from ringland_service.core.declare import Check
from ringland_service.core.metrology.limits import LIMITS, Limit


class Kept(Protocol):
    """What the checks read of the question: the bore, and the limits of the request."""

    bore_kind: str
    cycle: str | None
    nominal_bore_mm: float | None
    bore_limit: Limit | None
    out_of_round_limit: Limit | None
    taper_pin_limit: Limit | None
    taper_thrust_limit: Limit | None
    clearance_limit: Limit | None
    old_gap_limit: Limit | None


class Left(Protocol):
    """What the checks read of the results."""

    hone_removal_used_mm: float | None


Limiting = Callable[[Kept, Left], Limit | None]
SURE = "new rings in an uncertain bore do not last: re-measure first"


def _most_bore(i: Kept, _: Left) -> Limit | None:
    if i.bore_limit is not None or i.nominal_bore_mm is None:
        return _high_of(i.bore_limit)
    row = LIMITS["bore_wear.used"]
    return replace(row.limit(), high=i.nominal_bore_mm + cast(float, row.high))


def _high_of(limit: Limit | None) -> Limit | None:
    """Return the upper side of a limit of the request."""
    return None if limit is None or limit.high is None else replace(limit, low=None)


def _most_out_of_round(i: Kept, _: Left) -> Limit:
    return _high_of(i.out_of_round_limit) or LIMITS["out_of_round.re_ring"].limit()


def _most_taper(limit: Limit | None, bore_kind: str) -> Limit:
    row = "bore_taper.re_ring_plated" if bore_kind in NEVER_BORED else "bore_taper.re_ring"
    return _high_of(limit) or LIMITS[row].limit()


def _most_clearance(i: Kept, _: Left) -> Limit | None:
    if i.clearance_limit is not None or i.cycle is None:
        return _high_of(i.clearance_limit)
    return LIMITS[f"piston_clearance.service.{i.cycle}"].limit()


def _most_gap(i: Kept, _: Left) -> Limit | None:
    if i.old_gap_limit is not None or i.nominal_bore_mm is None:
        return _high_of(i.old_gap_limit)
    return LIMITS["ring_gap.service"].limit(i.nominal_bore_mm)


def _half_of_the_hone(_: Kept, o: Left) -> Limit | None:
    source = "half of what the hone takes off the diameter"
    if o.hone_removal_used_mm is None:
        return None
    return Limit(None, o.hone_removal_used_mm / 2.0, "computed", source)


def _check(name: str, value: str, words: str, settle: str, limit: Limiting) -> Check:
    return Check(name, value, words, settle, limit, inconclusive_fails=SURE)


CHECKS = (
    _check(
        "re_ring_bore", "bore_after_hone_mm", "largest bore after the hone", SETTLE_SIZE, _most_bore
    ),
    _check(
        "re_ring_out_of_round",
        "survey_out_of_round_mm",
        "out-of-round of a bore to be kept, difference of two diameters",
        SETTLE_DIFFERENCE,
        _most_out_of_round,
    ),
    _check(
        "re_ring_taper_pin_axis",
        "survey_taper_pin_axis_mm",
        "pin-axis taper of a bore to be kept, difference of two diameters",
        SETTLE_DIFFERENCE,
        lambda i, _: _most_taper(i.taper_pin_limit, i.bore_kind),
    ),
    _check(
        "re_ring_taper_thrust_axis",
        "survey_taper_thrust_axis_mm",
        "thrust-axis taper of a bore to be kept, difference of two diameters",
        SETTLE_DIFFERENCE,
        lambda i, _: _most_taper(i.taper_thrust_limit, i.bore_kind),
    ),
    _check(
        "re_ring_clearance",
        "clearance_after_hone_mm",
        "clearance after the hone",
        "set the bore gauge in the micrometer that measures the piston, five readings each",
        _most_clearance,
    ),
    _check(
        "re_ring_ring_gap",
        "worn_zone_gap_high_mm",
        "gap of a new top ring in the worn zone",
        "gap the very ring that goes in, in a bore of nominal size (new_rings_gap)",
        _most_gap,
    ),
    _check(
        "re_ring_score",
        "deepest_score_mm",
        "deepest score against what the hone takes off, radial",
        "pin gauge or replica of the score",
        _half_of_the_hone,
    ),
)
