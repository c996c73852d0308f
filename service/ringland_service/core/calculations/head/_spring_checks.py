"""The verdicts on a valve spring, what its readings must agree with, and what is warned of."""

from typing import Any

from ringland_service.core.declare import Check, Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit

# common practice, no source
FREE_APART_MM = 0.3
THIN_MARGIN_MM = 1.5
RATES_APART = 0.10
INDEX = (4.0, 12.0)


def _share(_: Any, __: Any) -> Limit:
    return LIMITS["seat_load_of_nominal"].limit()


def _loss(_: Any, __: Any) -> Limit:
    return LIMITS["free_length_loss"].limit()


def _lean(_: Any, __: Any) -> Limit:
    return LIMITS["spring_lean"].limit()


def _bind(_: Any, __: Any) -> Limit:
    return LIMITS["coil_bind_margin"].limit()


SETTLE_LOAD = "tester checked with a weight, five readings at each length"
SETTLE_FREE = "calliper between two flat plates, turned by quarters, mean of four"
CHECKS = (
    Check(
        "seat_load",
        "seat_load_n",
        "load at the installed height; only the maker's range judges it",
        SETTLE_LOAD,
    ),
    Check(
        "seat_load_of_nominal",
        "seat_load_of_nominal_pct",
        "load at the installed height against the nominal one",
        SETTLE_LOAD,
        _share,
    ),
    Check(
        "open_load",
        "open_load_n",
        "load at full lift; only the maker's range judges it",
        SETTLE_LOAD,
    ),
    Check(
        "spring_rate",
        "rate_n_per_mm",
        "rate of the spring; only the maker's range judges it",
        "two loads further apart, five readings at each length",
    ),
    Check(
        "coil_bind_margin",
        "coil_bind_margin_mm",
        "room before coil bind at full lift",
        "measure the installed height with retainer and keepers fitted, and the bind length on the "
        "tester",
        _bind,
    ),
    Check(
        "free_length",
        "free_length_mm",
        "free length; only the maker's limit judges it",
        SETTLE_FREE,
    ),
    Check(
        "free_length_loss",
        "free_length_loss_pct",
        "free length lost",
        SETTLE_FREE,
        _loss,
    ),
    Check(
        "spring_lean",
        "lean_deg",
        "lean of the spring",
        "on a flat plate against a square, turned all round, the largest gap at the top coil",
        _lean,
    ),
)

RULES = (
    Rule(
        ("length_1_mm", "length_2_mm"),
        lambda i: at_most(i.length_1_mm, i.length_2_mm),
        "the first length is not the longer one",
        "the longer length with the smaller load first",
    ),
    Rule(
        ("load_1_n", "load_2_n"),
        lambda i: at_most(i.load_2_n, i.load_1_n),
        "the second load is not the larger one",
        "the smaller load with the longer length first",
    ),
    Rule(
        ("valve_lift_mm", "installed_height_mm"),
        lambda i: at_most(i.installed_height_mm, i.valve_lift_mm),
        "the lift is not under the installed height",
        "the lift of the valve and the height of its spring; check the units",
    ),
    Rule(
        ("coil_bind_length_mm", "installed_height_mm"),
        lambda i: at_most(i.installed_height_mm, i.coil_bind_length_mm),
        "the spring is coil-bound with the valve shut",
        "the length with all coils shut, which is under the installed height",
    ),
    Rule(
        ("free_length_mm", "installed_height_mm"),
        lambda i: at_most(i.free_length_mm, i.installed_height_mm),
        "the free length is not above the installed height: the spring is loose, valve shut",
        "the free length, and the height of the spring under its retainer",
    ),
    Rule(
        ("length_1_mm", "free_length_mm"),
        lambda i: at_most(i.free_length_mm, i.length_1_mm),
        "the length under load is not under the free length",
        "the length under the smaller load",
    ),
    Rule(
        ("length_2_mm", "coil_bind_length_mm"),
        lambda i: beyond(i.coil_bind_length_mm, i.length_2_mm),
        "the second length is under the one with all coils shut",
        "a length at which the coils still have room",
    ),
    Rule(
        ("wire_mm", "mean_coil_dia_mm"),
        lambda i: at_most(i.mean_coil_dia_mm, i.wire_mm),
        "the coils are not larger than their wire",
        "the mean diameter of the coils: outside diameter less wire",
    ),
)


def _free_differs(i: Any, o: Any) -> Any:
    if i.free_length_mm is None or o.free_length_implied_mm is None:
        return False
    return abs(i.free_length_mm - o.free_length_implied_mm) > FREE_APART_MM


def _bound(_: Any, o: Any) -> Any:
    return False if o.coil_bind_margin_mm is None else o.coil_bind_margin_mm <= 0


def _thin(_: Any, o: Any) -> Any:
    margin = o.coil_bind_margin_mm
    return False if margin is None else (margin > 0) & (margin < THIN_MARGIN_MM)


def _rates_differ(_: Any, o: Any) -> Any:
    if o.rate_n_per_mm is None or o.rate_from_wire_n_per_mm is None:
        return False
    return abs(o.rate_from_wire_n_per_mm - o.rate_n_per_mm) > RATES_APART * o.rate_n_per_mm


def _index(_: Any, o: Any) -> Any:
    index = o.spring_index
    return False if index is None else (index < INDEX[0]) | (index > INDEX[1])


def _longer_than_new(_: Any, o: Any) -> Any:
    return False if o.free_length_loss_pct is None else o.free_length_loss_pct < -1.0


NOTICES = (
    Notice(
        "free_length_differs",
        "free_length_implied_mm",
        _free_differs,
        "free length and the one that the loads imply differ by over 0.3 mm: a progressive spring, "
        "whose rate holds only between these two lengths, or a bad reading",
    ),
    Notice(
        "coil_bound",
        "coil_bind_margin_mm",
        _bound,
        "the coils shut before full lift: lift, height or spring is wrong; do not turn the engine",
    ),
    Notice(
        "coil_bind_near",
        "coil_bind_margin_mm",
        _thin,
        "less than 1.5 mm of room in all at full lift: shops ask for 1.0 to 1.5 mm",
    ),
    Notice(
        "rates_differ",
        "rate_from_wire_n_per_mm",
        _rates_differ,
        "the wire gives a rate over a tenth off the measured one: it counts only if the count of "
        "active coils is sure, and the wire's diameter goes in by its fourth power",
    ),
    Notice(
        "spring_index_unusual",
        "spring_index",
        _index,
        "coil over wire is outside 4 to 12: check both diameters, the mean one of the coils",
    ),
    Notice(
        "longer_than_new",
        "free_length_loss_pct",
        _longer_than_new,
        "longer than a new spring by over a hundredth: another spring, or a wrong figure for new",
    ),
)
