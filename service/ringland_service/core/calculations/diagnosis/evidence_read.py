"""Which evidence is at hand: told, read out of measured tests, and following from both."""

from collections.abc import Iterator
from typing import Any

from ringland_service.core.calculations.diagnosis.tables import EVIDENCE, RULES, of_kind
from ringland_service.core.calculations.engine_tests.leak_words import (
    GRADED,
    NOT_GRADEABLE,
    UPPER_BOUND,
    YES,
    tight,
)
from ringland_service.core.calculations.engine_tests.test_conditions import LEAST_CRANKING_V
from ringland_service.core.engines import condition
from ringland_service.core.metrology.limits import GRADES

TOLD, MEASURED, DERIVED = "told", "measured", "derived"
KNOWN_FROM: dict[str, str] = {
    TOLD: "told in the request",
    MEASURED: "read out of a measured test",
    DERIVED: "follows from other evidence",
}
LOW = ("E10", "E11")
NORMAL_LEVEL, TIGHT = "E13", "E50"
NOT_BY_LEVEL = "decompressor_active"
FIRST_STROKES = 4
LOW_LEVELS = ("low", "very_low")
HEARD = {
    "oil_filler_or_breather": "E60",
    "radiator": "E63",
    "neighbour_plug_hole": "E64",
    "head_joint": "E65",
}
HEARD_AT_PORT: dict[str, dict[str, str]] = {
    "four_stroke": {"exhaust": "E61", "intake": "E62"},
    "two_stroke": {"exhaust": "E67", "intake": "E66"},
}
CRANKCASE = {
    "holds": "E113",
    "leaks_under_pressure": "E112",
    "leaks_under_vacuum": "E112",
    "leaks_under_both": "E112",
}


def at_hand(i: Any) -> dict[str, str]:
    """Return the evidence by id, each with what it is known from, in the order of the table."""
    without = unwanted(i)
    found = {name: TOLD for name in i.evidence or () if name not in without}
    for read in (_conditions, _level, _spread, _wet, _build_up, _leak, _heard, _rest):
        for name in read(i, found):
            found.setdefault(name, MEASURED)
    rule = RULES["low_but_tight"]
    if set(rule.all) <= found.keys() and not found.keys().isdisjoint(rule.any):
        found[rule.gives] = DERIVED
    return {name: found[name] for name in EVIDENCE if name in found}


def unwanted(i: Any) -> dict[str, str]:
    """Return the evidence told that cannot be taken as it was tested, each with why."""
    lacking = {
        "baseline": i.build_up_pattern == "pattern_not_judged",
        "gradeable": _not_gradeable(i),
        "upper_bound": _upper_bound(i),
    }
    rules = [rule for rule in of_kind("wants") if lacking[rule.id]]
    told = set(i.evidence or ())
    return {name: rule.words for rule in rules for name in rule.any if name in told}


Read = Iterator[str]


def _word(i: Any, grade: str, value: Any) -> str | None:
    """Return the word of a value by the common steps; None where those are switched off."""
    return str(GRADES[grade].word(value)) if i.usual else None


def _conditions(i: Any, _: Any) -> Read:
    if i.throttle_open is False or i.choke_off is False:
        yield "E01"
    if i.battery_v is not None and i.battery_v < LEAST_CRANKING_V:
        yield "E02"
    if i.engine_warm is False:
        yield "E03"
    if i.decompressor_state == condition.ACTIVE:
        yield "E06"


def _level_word(i: Any) -> str | None:
    """Return the word of a level that can be graded."""
    if i.level_ratio is None or i.level_gradeable == NOT_BY_LEVEL:
        return None
    return _word(i, "compression_level", i.level_ratio)


def _level(i: Any, found: dict[str, str]) -> Read:
    word = _level_word(i)
    if word in LOW_LEVELS:
        if found.keys().isdisjoint(LOW):
            yield "E11" if _all_low(i) else "E10"
    elif word in ("good", "high"):
        yield NORMAL_LEVEL if word == "good" else "E12"


def _low(i: Any, ratio: Any) -> bool:
    return ratio is not None and _word(i, "compression_level", ratio) in LOW_LEVELS


def _all_low(i: Any) -> bool:
    """Return whether even the best cylinder is low, and all about alike."""
    if i.each_over_highest is None or not _all_told(i):
        return False
    best = i.level_ratio / max(min(i.each_over_highest), 1e-9)
    return _low(i, best) and _spread_word(i) == "good"


def _all_told(i: Any) -> bool:
    """Return whether every cylinder of the engine is read; where unknown, those read are all."""
    each, cylinders = i.each_over_highest, i.cylinders
    return each is None or cylinders is None or len(each) >= cylinders


def _spread_word(i: Any) -> str | None:
    spread = i.spread_pct
    if spread is None and i.each_over_highest is not None:
        spread = 100.0 * (1.0 - min(i.each_over_highest))
    return None if spread is None else _word(i, "cylinder_spread", spread)


def _spread(i: Any, _: Any) -> Read:
    if i.adjacent_low_pair is not None:
        yield "E31"
    elif _spread_word(i) == "good":
        if _all_told(i):
            yield "E32"
    elif _spread_word(i) == "find_out" and _neighbours_sound(i):
        yield "E30"


def _neighbours_sound(i: Any) -> bool:
    """Return whether the neighbours of the lowest cylinder in its bank are sound."""
    each = i.each_over_highest
    if each is None:
        return False
    bank = len(each) if i.layout == "in_line" else max(len(each) // 2, 1)
    lowest = each.index(min(each))
    beside = [k for k in (lowest - 1, lowest + 1) if 0 <= k < len(each)]
    same_bank = [each[k] for k in beside if k // bank == lowest // bank]
    return all(_word(i, "cylinder_share", share) == "sound" for share in same_bank)


def _wet(i: Any, found: dict[str, str]) -> Read:
    if i.excess_gain_pct is None:
        return
    word = _word(i, "wet_gain", i.excess_gain_pct)
    if word == "rings_and_bore":
        yield "E20"
        if _low(i, i.wet_over_expected):
            yield "E23"
    elif word == "some_ring_leak":
        yield "E22"
    elif word is not None and not found.keys().isdisjoint(LOW):
        yield "E21"


def _build_up(i: Any, _: Any) -> Read:
    pattern = i.build_up_pattern
    if pattern == "builds_up_but_short":
        yield "E40"
    elif pattern == "like_a_fixed_leak":
        yield "E41"
    elif pattern != "slow_but_full" and _full_at_once(i):
        yield "E42"


def _full_at_once(i: Any) -> bool:
    if i.strokes_to_95 is None or i.last_over_expected is None:
        return False
    full = _word(i, "build_up_level", i.last_over_expected) == "full"
    return full and bool(i.strokes_to_95 <= FIRST_STROKES)


def _not_gradeable(i: Any) -> bool:
    if i.leak_grade is not None:
        return bool(i.leak_grade == NOT_GRADEABLE)
    if i.leak_gradeable == NOT_BY_LEVEL:
        return i.leak_pct is not None and not tight(i.leak_pct)
    return i.leak_gradeable not in (None, *GRADED)


def _upper_bound(i: Any) -> bool:
    """Return whether a decompressor let air out as well, so that the leak is an upper bound."""
    if i.leak_gradeable in (NOT_BY_LEVEL, UPPER_BOUND):
        return True
    return bool(i.leak_gradeable != YES and i.decompressor_state == condition.ACTIVE)


def leak_word(i: Any) -> str | None:
    """Return the grade of the leak-down: as given, else by the common steps where they hold.

    None where nothing can be said: the piston stood elsewhere, the steps do not hold for the
    tester, or an upper bound is not small enough to say that the cylinder is serviceable.
    """
    word = _leak_word(i)
    return None if word in ("worn", "tear_down") and _upper_bound(i) else word


def _leak_word(i: Any) -> str | None:
    if i.leak_gradeable == "not_at_firing_tdc":
        return None
    if i.leak_grade is not None:
        return str(i.leak_grade)
    if i.leak_pct is None or i.leak_gradeable not in (*GRADED, NOT_BY_LEVEL):
        return None
    return _word(i, "leak_down", i.leak_pct)


def _leak(i: Any, _: Any) -> Read:
    word = leak_word(i)
    if word in ("good", "tear_down"):
        yield TIGHT if word == "good" else "E51"


def _heard(i: Any, _: Any) -> Read:
    places = HEARD | HEARD_AT_PORT[i.cycle]
    if i.heard_at in places:
        yield places[i.heard_at]


def _rest(i: Any, found: dict[str, str]) -> Read:
    if i.crankcase_finding in CRANKCASE:
        yield CRANKCASE[i.crankcase_finding]
    if i.oil_use_grade == "usual":
        yield "E92"
    elif i.oil_use_grade == "find_out":
        yield from _oil_use(i, found)


def _oil_use(i: Any, found: dict[str, str]) -> Read:
    """Yield what oil use above its limit says, together with compression and leak-down."""
    if not found.keys().isdisjoint(LOW):
        yield "E91"
    elif NORMAL_LEVEL in found and (TIGHT in found or leak_word(i) == "serviceable"):
        yield "E90"
