"""What a piston must be for its bore, and what an answer on its clearance warns of."""

import numpy as np

from ringland_service.core.calculations.cylinder._piston_fields import Inputs, Outputs
from ringland_service.core.calculations.cylinder.piston_fit import (
    FIT_RULES,
    cycle_of,
    largest_bore_mm,
    smallest_bore_mm,
)
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number, Truth

# A fitted piston lies between 3 mm under and 0.05 mm over the bore (common practice, no source).
MOST_ROOM_MM = 3.0
MOST_INTERFERENCE_MM = 0.05
USUAL_CLEARANCE_MM = (0.005, 0.30)
MOST_SPREAD_MM = 0.5
MOST_SKIRT_WEAR_MM = 0.15
MOST_APART_K = 2.0


def _room_mm(i: Inputs) -> Number:
    """Return the largest bore less the piston, as read; zero where there is no bore to compare."""
    if i.bore_survey is None and i.bore_largest_mm is None:
        return 0.0
    room = largest_bore_mm(i) - i.piston_size_mm
    # No reading in the skirt travel: another rule says so, and this one has nothing to compare.
    return np.where(np.isfinite(room), room, 0.0)


RULES = (
    *FIT_RULES,
    Rule(
        ("piston_size_mm",),
        lambda i: beyond(-MOST_INTERFERENCE_MM, _room_mm(i)),
        "the piston is more than 0.05 mm larger than the bore",
        "a piston that goes into this bore; check both sizes and their units",
    ),
    Rule(
        ("piston_size_mm",),
        lambda i: beyond(_room_mm(i), MOST_ROOM_MM),
        "the piston is more than 3 mm smaller than the bore",
        "the skirt across the thrust axis at the maker's height, not the crown; check the units",
    ),
    Rule(
        ("piston_size_new_mm", "piston_size_mm"),
        lambda i: (
            beyond(i.piston_size_mm, i.piston_size_new_mm + 0.01)
            | beyond(i.piston_size_new_mm, i.piston_size_mm + 1.0)
        ),
        "a new piston of that size cannot have worn to the measured one",
        "from 0.01 mm under to 1 mm over the measured piston",
    ),
)


def _surveyed_too_little(i: Inputs, _: object) -> bool:
    return i.bore_survey is not None and len(i.bore_survey.depth_mm) < 3


def _spread(i: Inputs, _: object) -> Truth:
    smallest = smallest_bore_mm(i)
    return False if smallest is None else largest_bore_mm(i) - smallest > MOST_SPREAD_MM


def _unusual(_: object, o: Outputs) -> Truth:
    low, high = USUAL_CLEARANCE_MM
    return (o.clearance_max_mm < low) | (o.clearance_max_mm > high)


def _no_limit(i: Inputs, _: object) -> bool:
    return i.piston_kind is None if i.piston_condition == "new" else cycle_of(i) is None


NOTICES = (
    Notice(
        "piston_height_not_given",
        "measuring_height_mm",
        lambda i, _: i.measuring_height_mm is None,
        "where was the piston measured? It is tapered, barrelled and oval: its size holds only at "
        "the maker's height above the skirt bottom, 90° to the pin",
    ),
    Notice(
        "skirt_travel_not_given",
        "skirt_from_mm",
        lambda i, _: (
            i.bore_survey is not None and i.skirt_from_mm is None and i.skirt_to_mm is None
        ),
        "all surveyed depths are used; those that only the rings reach do not belong to the skirt",
    ),
    Notice(
        "survey_used",
        "bore_survey",
        lambda i, _: i.bore_survey is not None and i.bore_largest_mm is not None,
        "largest bore and survey both given: the survey is used",
    ),
    Notice(
        "few_depths", "bore_survey", _surveyed_too_little, "gauge the bore at three depths or more"
    ),
    Notice(
        "bore_readings_far_apart",
        "bore_largest_at_20c_mm",
        _spread,
        "bore readings more than 0.5 mm apart: check them, or give it up as a bore to keep",
    ),
    Notice(
        "clearance_unusual",
        "clearance_max_mm",
        _unusual,
        "outside the usual 0.005 to 0.30 mm: was the piston measured at the crown, on the pin "
        "axis, or over its coating?",
    ),
    Notice(
        "skirt_wear_unusual",
        "skirt_wear_mm",
        lambda _, o: False if o.skirt_wear_mm is None else o.skirt_wear_mm > MOST_SKIRT_WEAR_MM,
        "more than 0.15 mm of skirt gone: worn, collapsed, or measured at another height than new",
    ),
    Notice(
        "parts_differ_in_temperature",
        "piston_temperature_c",
        lambda i, _: np.abs(i.piston_temperature_c - i.bore_temperature_c) > MOST_APART_K,
        "piston and cylinder more than 2 K apart: let both soak two hours in one room, away from "
        "hands, sun, hot wash and blow gun",
    ),
    Notice(
        "skirt_coating",
        "skirt_coated",
        lambda i, _: bool(i.skirt_coated),
        "a skirt coating is 0.01 to 0.02 mm thick per side: ask whether the maker's size counts it",
    ),
    Notice(
        "no_limit_known",
        "piston_kind",
        _no_limit,
        "without the kind of piston (new fit) or the cycle (used parts) no common-practice limit "
        "judges; the maker's limit is asked for anyway",
    ),
)
