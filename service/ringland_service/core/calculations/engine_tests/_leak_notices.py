"""What a leak-down warns of: the wrong dead centre, the tester, the gauges, the engine."""

from typing import Any

from ringland_service.core.calculations.engine_tests.leak_words import GOOD, UPPER_BOUND
from ringland_service.core.declare import Notice
from ringland_service.core.engines.condition import ACTIVE
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.metrology.limits import GRADES

# Common practice, no source: about as much as both valves open let through, and next to nothing.
NEAR_ALL_PCT = 90.0
NEAR_NOTHING_PCT = 0.5


def _step_pct(place: int) -> float:
    """Return from where on a step of the grade counts."""
    return float(GRADES["leak_down"].steps[place]["above"])


def _worn_pct() -> float:
    return _step_pct(0)


def _not_gradeable(*why: str) -> Any:
    return lambda _, o: o.gradeable in why


def _proven_tight(o: Any) -> bool:
    """Return whether an upper bound of the leak is small enough to call the cylinder tight."""
    return bool(o.gradeable == UPPER_BOUND or o.grade_on_makers_scale == GOOD)


def _halved(_: Any, o: Any) -> bool:
    """Return whether rocking the crank takes away half of the leak or more."""
    if o.leak_spread_pct is None or o.leak_spread_pct <= 0:
        return False
    return bool(o.leak_pct <= o.leak_spread_pct)


def _place_wants_cycle(i: Any, o: Any) -> bool:
    return i.heard_at is not None and o.leak_path is None


NOTICES = (
    Notice(
        "near_all_of_it",
        "leak_pct",
        lambda i, o: o.leak_pct >= NEAR_ALL_PCT,
        "nearly all of the air goes: look first whether the piston is at firing top dead centre "
        "(at overlap both valves are open) and whether lash holds a valve open",
    ),
    Notice(
        "dead_centre_not_stated",
        "piston_at",
        lambda i, o: (
            i.piston_at == UNKNOWN and i.cycle != "two_stroke" and o.leak_pct > _worn_pct()
        ),
        "above 30 %, check first that the piston is at firing top dead centre: a turn of the crank "
        "away both valves are open, and a head comes off for nothing",
        common_practice=True,
    ),
    Notice(
        "not_at_firing_tdc",
        "piston_at",
        _not_gradeable("not_at_firing_tdc"),
        "not graded away from firing top dead centre; lower down compare readings of one engine "
        "alone, and only with the crank held mechanically",
    ),
    Notice(
        "decompressor_active",
        "decompressor_state",
        lambda i, o: i.decompressor_state == ACTIVE and not _proven_tight(o),
        "a decompressor at work leaks like a valve, so the figure is an upper bound and fails no "
        "cylinder: hold it off and read again; a change shows it",
    ),
    Notice(
        "tight_with_decompressor_active",
        "decompressor_state",
        lambda i, o: i.decompressor_state == ACTIVE and _proven_tight(o),
        "the decompressor at work can only have added to this leak: the figure is an upper bound, "
        "and so small a one proves the cylinder tight",
    ),
    Notice(
        "restrictor_not_known",
        "restrictor_mm",
        _not_gradeable("restrictor_not_known"),
        "without the restrictor's bore the per cent are not graded: ask the tester's maker, try "
        "drill shanks, or give its maker's own scale; a hole that reads 11 % on 1.0 mm reads "
        "73 % on 0.5 mm",
    ),
    Notice(
        "tester_outside_the_steps",
        "restrictor_mm",
        _not_gradeable("restrictor_outside"),
        "the common steps hold for restrictors of 0.9 to 1.1 mm: the same hole reads 11 % on "
        "1.0 mm and 2.4 % on 1.5 mm; use the tester maker's own scale",
    ),
    Notice(
        "supply_outside_the_steps",
        "supply_kpa",
        _not_gradeable("supply_outside"),
        "the common steps hold for supplies of 550 to 700 kPa: the same hole reads 11 % at 690 kPa "
        "and 20 % at 100 kPa; a low supply is for finding top dead centre",
    ),
    Notice(
        "rock_the_crank",
        "rocked_forward_kpa",
        lambda i, o: o.leak_spread_pct is None and o.leak_pct > _step_pct(-1),
        "repeat with the crank rocked to each side, and after a tap on the valve stem: ring gaps "
        "in line or a chip of carbon on a seat leak too; the lowest reading counts",
        common_practice=True,
    ),
    Notice(
        "leak_moves_with_the_crank",
        "leak_spread_pct",
        _halved,
        "half of the leak or more goes as the crank is rocked: carbon on a seat or ring ends in "
        "line rather than wear; read again",
    ),
    Notice(
        "hardly_any_leak",
        "leak_pct",
        lambda i, o: o.leak_pct < NEAR_NOTHING_PCT,
        "hardly any leak: is a check valve left in the adaptor, a hose kinked, the supply open? A "
        "little ring leak is always there",
    ),
    Notice(
        "gauges_not_compared",
        "gauge_difference_kpa_diff",
        lambda i, _: i.gauge_difference_kpa_diff is None,
        "two gauges not compared on one pressure leave 3 to 4 points of doubt (1.6 % of 1000 kPa "
        "each): read both with the hose plugged and take the difference out",
    ),
    Notice(
        "cold_reading",
        "engine_warm",
        lambda i, _: i.engine_warm is False,
        "a cold engine leaks more: read again warm before it is judged",
    ),
    Notice(
        "cycle_not_stated",
        "cycle",
        _place_wants_cycle,
        "where that air comes from depends on the cycle: valves of a four-stroke, rings of a "
        "two-stroke",
    ),
)
