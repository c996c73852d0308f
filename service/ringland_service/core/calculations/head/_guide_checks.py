"""The verdicts on stem and guide, what the readings must agree with, and what is warned of."""

from typing import Any

from ringland_service.core.declare import Check, Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit

# common practice, no source
MOST_CLEARANCE_MM = 0.5
TIGHT_MM = 0.005
WIDE_MM = 0.2
APART_MM = 0.01
TAPER_MM = 0.01


def _clearance(inputs: Any, _: Any) -> Limit:
    return LIMITS[f"guide_clearance.{inputs.fit}.{inputs.valve}"].limit()


def _rock(_: Any, __: Any) -> Limit:
    return LIMITS["valve_rock"].limit()


CHECKS = (
    Check(
        "guide_clearance",
        "clearance_direct_mm",
        "clearance of the stem by two diameters",
        "set the small-hole gauge in the micrometer that measures the stem, five readings each, "
        "at 3 heights on 2 axes",
        _clearance,
    ),
    Check(
        "guide_clearance_from_rock",
        "clearance_from_rock_mm",
        "clearance of the stem by rocking",
        "measure guide and stem by small-hole gauge and micrometer at 3 heights",
        _clearance,
    ),
    Check(
        "valve_rock",
        "rock_total_indicated_mm",
        "whole rock of the valve at about 10 mm lift",
        "indicator at the rim of the head, along and across the push of rocker or cam, five times",
        _rock,
    ),
)


def _guide_twice(i: Any) -> bool:
    return i.guide_along_mm is not None or i.guide_across_mm is not None


def _smallest(value: Any) -> Any:
    return min(value) if isinstance(value, tuple) else value


def _largest(value: Any) -> Any:
    return max(value) if isinstance(value, tuple) else value


def _no_room(guide: str, stem: str) -> Rule:
    return Rule(
        (guide, stem),
        lambda i: at_most(_largest(getattr(i, guide)), _smallest(getattr(i, stem))),
        "the stem is not smaller than its guide",
        "a stem that goes into this guide: a new guide is reamed cold before it is measured",
    )


def _too_far(guide: str, stem: str) -> Rule:
    return Rule(
        (guide, stem),
        lambda i: beyond(
            _largest(getattr(i, guide)), _smallest(getattr(i, stem)) + MOST_CLEARANCE_MM
        ),
        "guide and stem are more than 0.5 mm apart",
        "the stem of this guide; check sizes and units",
    )


GUIDES = ("guide_bore_mm", "guide_along_mm", "guide_across_mm")
PAIRS = [(guide, stem) for guide in GUIDES for stem in ("stem_mm", "stem_heights_mm")]
RULES = (
    Rule(
        ("guide_bore_mm",),
        _guide_twice,
        "the bore of the guide is given twice, as one figure and as readings",
        "guide_bore alone, or guide_along with guide_across",
    ),
    Rule(
        ("stem_mm", "stem_heights_mm"),
        lambda i: True,
        "the stem is given twice, as one figure and as readings",
        "stem alone, or stem_heights alone",
    ),
    Rule(
        ("guide_across_mm",),
        lambda i: i.guide_along_mm is None or len(i.guide_along_mm) != len(i.guide_across_mm),
        "the guide's two axes are not read at the same heights",
        "guide_along and guide_across, one reading each at every height",
    ),
    *(make(guide, stem) for guide, stem in PAIRS for make in (_no_room, _too_far)),
)


def _differ(o: Any) -> Any:
    """Return how much more the rock says than two diameters; None where one is missing."""
    if o.clearance_direct_mm is None or o.clearance_from_rock_mm is None:
        return None
    return o.clearance_from_rock_mm - o.clearance_direct_mm


def _rock_more(_: Any, o: Any) -> Any:
    more = _differ(o)
    return False if more is None else more > APART_MM


def _rock_less(_: Any, o: Any) -> Any:
    more = _differ(o)
    return False if more is None else more < -APART_MM


def _tight(_: Any, o: Any) -> Any:
    return False if o.clearance_direct_mm is None else o.clearance_direct_mm < TIGHT_MM


def _wide(_: Any, o: Any) -> Any:
    return False if o.clearance_direct_mm is None else o.clearance_direct_mm > WIDE_MM


def _tapered(_: Any, o: Any) -> Any:
    return False if o.stem_taper_mm is None else o.stem_taper_mm > TAPER_MM


def _bell(_: Any, o: Any) -> Any:
    return False if o.guide_bell_mouth_mm is None else o.guide_bell_mouth_mm > APART_MM


def _rock_incomplete(i: Any, _: Any) -> bool:
    missing = i.guide_length_mm is None or i.indicator_distance_beyond_guide_mm is None
    return i.rock_total_indicated_mm is not None and missing


NOTICES = (
    Notice(
        "rock_reads_more",
        "clearance_from_rock_mm",
        _rock_more,
        "rocking reads over 0.01 mm more than the two diameters: a bell-mouthed guide, or a bent "
        "stem that looks like one; roll the stem on a flat plate, read the guide at 3 heights",
    ),
    Notice(
        "rock_reads_less",
        "clearance_from_rock_mm",
        _rock_less,
        "rocking reads over 0.01 mm less than the two diameters, which it cannot: valve too near "
        "its seat, indicator off the way of the rock, or a reading wrong",
    ),
    Notice(
        "rock_incomplete",
        "rock_total_indicated_mm",
        _rock_incomplete,
        "the clearance that the rock implies takes the length of the guide and how far beyond its "
        "end the indicator touches",
    ),
    Notice(
        "guide_bell_mouthed",
        "guide_bell_mouth_mm",
        _bell,
        "an end of the guide is over 0.01 mm larger than between: it wears bell-mouthed and lets "
        "the valve rock more than its smallest bore says",
    ),
    Notice(
        "stem_not_even",
        "stem_taper_mm",
        _tapered,
        "the stem differs by over 0.01 mm along its length: worn, or tapered by design, smaller "
        "towards the head; the maker's sheet tells",
    ),
    Notice(
        "clearance_tight",
        "clearance_direct_mm",
        _tight,
        "less than 0.005 mm: the stem sticks when hot; clean both, measure again, ream the guide",
    ),
    Notice(
        "clearance_wide",
        "clearance_direct_mm",
        _wide,
        "more than 0.2 mm: check that stem and guide belong together, and the units",
    ),
    Notice(
        "ream_then_cut",
        "fit",
        lambda i, _: i.fit == "new",
        "ream new guides cold, after pressing them in; the seat is cut afterwards, always",
    ),
)
