"""Which evidence is at hand: told, read out of measured tests, and following from both."""

from collections.abc import Iterator

from ringland_service.core.calculations.diagnosis._shapes import Grading, LeakDown
from ringland_service.core.calculations.diagnosis.diagnosis_inputs import Inputs
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
from ringland_service.core.numbers import Number

TOLD, MEASURED, DERIVED = "told", "measured", "derived"
KNOWN_FROM: dict[str, str] = {
    TOLD: "told in the request",
    MEASURED: "read out of a measured test",
    DERIVED: "follows from other evidence",
}
LOW = ("compression_low_one_cylinder", "compression_low_all_alike")
NORMAL_LEVEL, TIGHT = "compression_good", "leak_down_tight"
NOT_BY_LEVEL = "decompressor_active"
FIRST_STROKES = 4
LOW_LEVELS = ("low", "very_low")
HEARD = {
    "oil_filler_or_breather": "air_at_breather",
    "radiator": "bubbles_in_coolant",
    "neighbour_plug_hole": "air_at_neighbour_plug_hole",
    "head_joint": "foam_at_head_joint",
}
HEARD_AT_PORT: dict[str, dict[str, str]] = {
    "four_stroke": {"exhaust": "air_at_exhaust", "intake": "air_at_intake"},
    "two_stroke": {"exhaust": "two_stroke_air_at_exhaust", "intake": "two_stroke_air_at_intake"},
}
CRANKCASE = {
    "holds": "crankcase_holds",
    "leaks_under_pressure": "crankcase_leaks",
    "leaks_under_vacuum": "crankcase_leaks",
    "leaks_under_both": "crankcase_leaks",
}


def at_hand(i: Inputs) -> dict[str, str]:
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


def unwanted(i: Inputs) -> dict[str, str]:
    """Return the evidence told that cannot be taken as it was tested, each with why."""
    lacking = {
        "baseline": i.build_up_pattern == "pattern_not_judged",
        "gradeable": _not_gradeable(i),
        "upper_bound": _upper_bound(i),
    }
    rules = [rule for rule in of_kind("wants") if lacking[rule.id]]
    told = set(i.evidence or ())
    return {name: rule.label for rule in rules for name in rule.any if name in told}


Read = Iterator[str]


def _word(i: Grading, grade: str, value: Number) -> str | None:
    """Return the word of a value by the common steps; None where those are switched off."""
    return str(GRADES[grade].word(value)) if i.usual else None


def _conditions(i: Inputs, _: object) -> Read:
    if i.throttle_open is False or i.choke_off is False:
        yield "throttle_not_fully_open"
    if i.battery_v is not None and i.battery_v < LEAST_CRANKING_V:
        yield "cranking_slow"
    if i.engine_warm is False:
        yield "engine_cold_in_test"
    if i.decompressor_state == condition.ACTIVE:
        yield "decompressor_not_held_off"


def _level_word(i: Inputs) -> str | None:
    """Return the word of a level that can be graded."""
    if i.level_ratio is None or i.level_gradeable == NOT_BY_LEVEL:
        return None
    return _word(i, "compression_level", i.level_ratio)


def _level(i: Inputs, found: dict[str, str]) -> Read:
    word = _level_word(i)
    if word in LOW_LEVELS:
        if found.keys().isdisjoint(LOW):
            yield "compression_low_all_alike" if _all_low(i) else "compression_low_one_cylinder"
    elif word in ("good", "high"):
        yield NORMAL_LEVEL if word == "good" else "compression_high"


def _low(i: Inputs, ratio: Number | None) -> bool:
    return ratio is not None and _word(i, "compression_level", ratio) in LOW_LEVELS


def _all_low(i: Inputs) -> bool:
    """Return whether even the best cylinder is low, and all about alike."""
    if i.level_ratio is None or i.each_over_highest is None or not _all_told(i):
        return False
    # The level is that of the lowest cylinder; the share of a dead one must not divide by zero.
    best = i.level_ratio / max(min(i.each_over_highest), 1e-9)
    return _low(i, best) and _spread_word(i) == "good"


def _all_told(i: Inputs) -> bool:
    """Return whether every cylinder of the engine is read; where unknown, those read are all."""
    each, cylinders = i.each_over_highest, i.cylinder_count
    return each is None or cylinders is None or len(each) >= cylinders


def _spread_word(i: Inputs) -> str | None:
    spread = i.spread_pct
    if spread is None and i.each_over_highest is not None:
        spread = 100.0 * (1.0 - min(i.each_over_highest))
    return None if spread is None else _word(i, "cylinder_spread", spread)


def _spread(i: Inputs, _: object) -> Read:
    if i.adjacent_low_pair is not None:
        yield "two_neighbours_low"
    elif _spread_word(i) == "good":
        if _all_told(i):
            yield "cylinders_even"
    elif _spread_word(i) == "find_out" and _neighbours_sound(i):
        yield "one_cylinder_low"


def _neighbours_sound(i: Inputs) -> bool:
    """Return whether the neighbours of the lowest cylinder in its bank are sound."""
    each = i.each_over_highest
    if each is None:
        return False
    bank = len(each) if i.layout == "in_line" else max(len(each) // 2, 1)
    lowest = each.index(min(each))
    beside = [k for k in (lowest - 1, lowest + 1) if 0 <= k < len(each)]
    same_bank = [each[k] for k in beside if k // bank == lowest // bank]
    return all(_word(i, "cylinder_share", share) == "sound" for share in same_bank)


def _wet(i: Inputs, found: dict[str, str]) -> Read:
    if i.excess_gain_pct is None:
        return
    word = _word(i, "wet_gain", i.excess_gain_pct)
    if word == "rings_and_bore":
        yield "wet_gain_large"
        if _low(i, i.wet_over_expected):
            yield "wet_still_low_after_gain"
    elif word == "some_ring_leak":
        yield "wet_gain_some"
    elif word is not None and not found.keys().isdisjoint(LOW):
        yield "wet_gain_none"


def _build_up(i: Inputs, _: object) -> Read:
    pattern = i.build_up_pattern
    if pattern == "builds_up_but_short":
        yield "builds_up_but_short"
    elif pattern == "like_a_fixed_leak":
        yield "fixed_leak_pattern"
    elif pattern != "slow_but_full" and _full_at_once(i):
        yield "full_in_few_strokes"


def _full_at_once(i: Inputs) -> bool:
    if i.strokes_to_95 is None or i.last_over_expected is None:
        return False
    full = _word(i, "build_up_level", i.last_over_expected) == "full"
    return full and bool(i.strokes_to_95 <= FIRST_STROKES)


def _not_gradeable(i: Inputs) -> bool:
    if i.leak_grade is not None:
        return bool(i.leak_grade == NOT_GRADEABLE)
    if i.leak_gradeable == NOT_BY_LEVEL:
        return i.leak_pct is not None and not tight(i.leak_pct)
    return i.leak_gradeable not in (None, *GRADED)


def _upper_bound(i: LeakDown) -> bool:
    """Return whether a decompressor let air out as well, so that the leak is an upper bound."""
    if i.leak_gradeable in (NOT_BY_LEVEL, UPPER_BOUND):
        return True
    return bool(i.leak_gradeable != YES and i.decompressor_state == condition.ACTIVE)


def leak_word(i: LeakDown) -> str | None:
    """Return the grade of the leak-down: as given, else by the common steps where they hold.

    None where nothing can be said: the piston stood elsewhere, the steps do not hold for the
    tester, or an upper bound is not small enough to say that the cylinder is serviceable.
    """
    word = _leak_word(i)
    return None if word in ("worn", "tear_down") and _upper_bound(i) else word


def _leak_word(i: LeakDown) -> str | None:
    if i.leak_gradeable == "not_at_firing_tdc":
        return None
    if i.leak_grade is not None:
        return str(i.leak_grade)
    if i.leak_pct is None or i.leak_gradeable not in (*GRADED, NOT_BY_LEVEL):
        return None
    return _word(i, "leak_down", i.leak_pct)


def _leak(i: Inputs, _: object) -> Read:
    word = leak_word(i)
    if word in ("good", "tear_down"):
        yield TIGHT if word == "good" else "leak_down_large"


def _heard(i: Inputs, _: object) -> Read:
    places = HEARD | HEARD_AT_PORT[i.cycle]
    if i.heard_at in places:
        yield places[i.heard_at]


def _rest(i: Inputs, found: dict[str, str]) -> Read:
    if i.crankcase_finding in CRANKCASE:
        yield CRANKCASE[i.crankcase_finding]
    if i.oil_use_grade == "usual":
        yield "oil_use_negligible"
    elif i.oil_use_grade == "find_out":
        yield from _oil_use(i, found)


def _oil_use(i: Inputs, found: dict[str, str]) -> Read:
    """Yield what oil use above its limit says, together with compression and leak-down."""
    if not found.keys().isdisjoint(LOW):
        yield "oil_use_high_compression_low"
    elif NORMAL_LEVEL in found and (TIGHT in found or leak_word(i) == "serviceable"):
        yield "oil_use_high_cylinder_tight"
