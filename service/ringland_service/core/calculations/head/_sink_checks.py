"""The verdicts on a sunk valve, what the figures must agree with, and what is warned of."""

from typing import Any

from ringland_service.core.declare import Check, Notice, Rule
from ringland_service.core.metrology.limits import Limit

HYDRAULIC = "hydraulic"
ADJUSTER: dict[str, str] = {
    "shim_or_screw": "by shim or screw: there is lash",
    HYDRAULIC: "hydraulic: there is none",
}
# common practice, no source
UNEQUAL_SHARE = 0.01


def _shim_room(_: Any, __: Any) -> Limit:
    return Limit(0.0, None, "computed", "the shim needed is at least the thinnest one")


def _some_lash(_: Any, __: Any) -> Limit:
    return Limit(0.0, None, "computed", "below zero the valve cannot shut")


CHECKS = (
    Check(
        "lash_after_sink",
        "lash_after_mm",
        "lash after the work, not yet set again; only the maker's range judges it",
        "assemble the valve with a light spring and measure by feeler, cam on its base circle",
    ),
    Check(
        "lash_left_after_sink",
        "lash_after_mm",
        "lash left after the work: below zero the valve is held open",
        "assemble the valve with a light spring and measure by feeler, cam on its base circle",
        _some_lash,
        doubt_fails="a valve that is held open burns",
    ),
    Check(
        "total_sink",
        "total_sink_mm",
        "sink in all; only the maker's limit judges it",
        "dial indicator on the stem end, the same valve before and after, three times",
    ),
    Check(
        "shim_room",
        "shim_room_left_mm",
        "room left for a thinner shim",
        "measure old shim and lash again; else a seat insert or a new valve",
        _shim_room,
    ),
    Check(
        "seat_load_after_sink",
        "seat_load_after_n",
        "load of the spring after the sink; only the maker's range judges it",
        "measure the load at the installed height on a spring tester",
    ),
)


def _without_ratio(i: Any) -> bool:
    return i.ratio_lash_per_stem_rise is None


def _alone(name: str, other: str, message: str, right: str) -> Rule:
    return Rule((name,), lambda i: getattr(i, other) is None, message, right)


RULES = (
    Rule(
        ("lash_before_mm",),
        lambda i: i.adjuster == HYDRAULIC,
        "a hydraulic adjuster has no lash",
        "leave lash_before out; the sink uses up the plunger's travel",
    ),
    Rule(
        ("lash_before_mm",),
        _without_ratio,
        "how the lash follows the stem must be known",
        "ratio_lash_per_stem_rise: 1 where lash is measured at the stem",
    ),
    _alone(
        "lash_wanted_mm",
        "lash_before_mm",
        "the shim needed takes the lash before the work",
        "give lash_before too",
    ),
    _alone(
        "lash_wanted_mm",
        "old_shim_mm",
        "the shim needed takes the shim fitted",
        "give old_shim too",
    ),
    _alone(
        "valve_head_dia_mm",
        "valves_cut",
        "the chamber's gain takes the count of valves cut",
        "give valves_cut too, of one cylinder",
    ),
)


def _held_open(_: Any, o: Any) -> Any:
    return False if o.lash_after_mm is None else o.lash_after_mm < 0


def _lash_moved(i: Any, o: Any) -> Any:
    return False if o.lash_after_mm is None else (o.lash_after_mm >= 0) & (i.sink_mm > 0)


def _unequal(i: Any, o: Any) -> Any:
    if o.chamber_gain_cc is None or i.clearance_cc is None:
        return False
    return o.chamber_gain_cc > UNEQUAL_SHARE * i.clearance_cc


def _spring_lost(_: Any, o: Any) -> Any:
    return False if o.seat_load_after_n is None else o.seat_load_after_n <= 0


NOTICES = (
    Notice(
        "valve_held_open",
        "lash_after_mm",
        _held_open,
        "no lash is left: with the old shim or screw setting the valve is held open and burns",
    ),
    Notice(
        "set_lash_again",
        "lash_after_mm",
        _lash_moved,
        "set the lash again after the work: a valve that sinks takes lash away",
    ),
    Notice(
        "hydraulic_hides_sink",
        "adjuster",
        lambda i, _: i.adjuster == HYDRAULIC,
        "a hydraulic adjuster hides the sink until its plunger bottoms and holds the valve open: "
        "check the plunger's travel that is left",
    ),
    Notice(
        "check_coil_bind",
        "spring_shim_to_restore_mm",
        lambda _, o: o.spring_shim_to_restore_mm is not None,
        "the shim restores load and height as they were before; after shimming check coil bind "
        "with the installed height as measured (valve-spring)",
    ),
    Notice(
        "no_seat_load",
        "seat_load_after_n",
        _spring_lost,
        "no load is left on the seat: check rate, load and sink",
    ),
    Notice(
        "unequal_chambers",
        "chamber_gain_cc",
        _unequal,
        "the chamber grows by over a hundredth of the clearance volume: bring the chambers of all "
        "cylinders to one volume",
    ),
)
