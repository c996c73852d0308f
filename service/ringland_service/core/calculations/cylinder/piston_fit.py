"""What piston and bore must be to be one fit, and what an answer on their clearance warns of."""

from typing import Any

import numpy as np

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.engines import survey
from ringland_service.core.engines.bore_expansion import away_from_20c
from ringland_service.core.engines.materials import MATERIALS, alpha_of_bore_per_k
from ringland_service.core.errors import Contradiction
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.numbers import Number

# A fitted piston lies between 3 mm under and 0.05 mm over the bore (common practice, no source).
MOST_ROOM_MM = 3.0
MOST_INTERFERENCE_MM = 0.05
USUAL_CLEARANCE_MM = (0.005, 0.30)
MOST_SPREAD_MM = 0.5
MOST_SKIRT_WEAR_MM = 0.15
MOST_APART_K = 2.0

# Two-stroke pistons are cast too; which alloy, only their maker says.
MATERIAL_OF_PISTON: dict[str, str] = {
    "cast_air_cooled": "piston_cast_eutectic",
    "cast_liquid_cooled": "piston_cast_eutectic",
    "forged": "piston_forged_low_silicon",
    "two_stroke_iron": "piston_cast_eutectic",
    "two_stroke_plated": "piston_cast_eutectic",
}
BORES_OF_PISTON: dict[str, tuple[str, ...]] = {
    "two_stroke_iron": ("iron", "iron_sleeve_in_aluminium"),
    "two_stroke_plated": ("plated_aluminium", "bare_silicon_aluminium", "chromed"),
}
FOUR_STROKE_PISTONS = ("cast_air_cooled", "cast_liquid_cooled")


def cycle_of(i: Any) -> str | None:
    """Return the engine's cycle as given, else the one that its kind of piston tells."""
    if i.cycle is not None or i.piston_kind is None:
        return None if i.cycle is None else str(i.cycle)
    if i.piston_kind in FOUR_STROKE_PISTONS:
        return "four_stroke"
    return "two_stroke" if i.piston_kind in BORES_OF_PISTON else None


def bore_alpha_per_k(i: Any) -> Number:
    """Return the expansion of the bore: as given, of its kind, else of grey iron [1/K]."""
    if i.bore_alpha_per_k is not None:
        given: Number = i.bore_alpha_per_k
        return given
    return alpha_of_bore_per_k(i.bore_kind) or MATERIALS["grey_iron"].alpha


def piston_alpha_per_k(i: Any) -> Number:
    """Return the expansion of the piston: as given, of material or kind, else cast alloy [1/K]."""
    if i.piston_alpha_per_k is not None:
        given: Number = i.piston_alpha_per_k
        return given
    of_kind = MATERIAL_OF_PISTON.get(i.piston_kind, "piston_cast_eutectic")
    return MATERIALS[i.piston_material or of_kind].alpha


def largest_bore_mm(i: Any) -> Number:
    """Return the largest bore of the skirt travel as read; -inf where none was read there."""
    if i.survey is None:
        if i.bore_max_mm is None:
            raise Contradiction("bore_max_mm", "no bore is given", "give bore_max or a survey")
        given: Number = i.bore_max_mm
        return given
    return survey.largest_between_mm(i.survey, i.skirt_from_mm, i.skirt_to_mm)


def smallest_bore_mm(i: Any) -> Number | None:
    """Return the smallest bore of the skirt travel as read; None where it is not known."""
    if i.survey is None:
        given: Number | None = i.bore_min_mm
        return given
    return survey.smallest_between_mm(i.survey, i.skirt_from_mm, i.skirt_to_mm)


def mean_bore_mm(i: Any) -> Number | None:
    """Return the mean of the surveyed bores of the skirt travel as read; None without a survey."""
    if i.survey is None:
        return None
    return survey.mean_between_mm(i.survey, i.skirt_from_mm, i.skirt_to_mm)


def _room_mm(i: Any) -> Any:
    """Return the largest bore less the piston, as read; zero where there is no bore to compare."""
    if i.survey is None and i.bore_max_mm is None:
        return 0.0
    room = largest_bore_mm(i) - i.piston_mm
    return np.where(np.isfinite(room), room, 0.0)


def _bore_expansion_unknown(i: Any) -> Any:
    unknown = i.bore_alpha_per_k is None and alpha_of_bore_per_k(i.bore_kind) is None
    return unknown & away_from_20c(i.bore_temperature_c)


def _piston_expansion_unknown(i: Any) -> Any:
    named = (i.piston_alpha_per_k, i.piston_material, i.piston_kind)
    return all(name is None for name in named) & away_from_20c(i.piston_temperature_c)


def _wrong_bore(i: Any) -> bool:
    bores = BORES_OF_PISTON.get(i.piston_kind)
    return bores is not None and i.bore_kind != "unknown" and i.bore_kind not in bores


def _wrong_cycle(i: Any) -> bool:
    if i.cycle == "four_stroke":
        return i.piston_kind in BORES_OF_PISTON
    return i.piston_kind in FOUR_STROKE_PISTONS


# What bore and piston must be, whichever piston it is.
FIT_RULES = (
    Rule(
        ("bore_min_mm", "bore_max_mm"),
        lambda i: beyond(i.bore_min_mm, i.bore_max_mm),
        "the smallest bore is larger than the largest",
        "bore_min at or below bore_max",
    ),
    Rule(
        ("skirt_from_mm", "skirt_to_mm"),
        lambda i: at_most(i.skirt_to_mm, i.skirt_from_mm),
        "the skirt travel ends above where it starts",
        "two depths below the deck, skirt_from above skirt_to",
    ),
    Rule(
        ("survey",),
        lambda i: survey.uneven(i.survey),
        "depths and axes are lists of different length",
        "one reading or gap per depth on each axis",
    ),
    Rule(
        ("survey",),
        lambda i: survey.depth_repeated(i.survey) or survey.depth_without_reading(i.survey),
        "a depth stands there twice, or has no reading on either axis",
        "each depth once, with the bore on at least one axis",
    ),
    Rule(
        ("survey",),
        lambda i: survey.depths_between(i.survey, i.skirt_from_mm, i.skirt_to_mm) < 2,
        "fewer than two surveyed depths lie in the skirt travel",
        "gauge the bore at two depths or more between skirt_from and skirt_to",
    ),
    Rule(
        ("bore_temperature_c",),
        _bore_expansion_unknown,
        "away from 20 °C the expansion of the bore must be known",
        "give bore_alpha or bore_kind, or let the cylinder come to 20 °C",
    ),
    Rule(
        ("piston_temperature_c",),
        _piston_expansion_unknown,
        "away from 20 °C the expansion of the piston must be known",
        "give piston_alpha, piston_material or piston_kind, or let the piston come to 20 °C",
    ),
    Rule(
        ("piston_kind", "bore_kind"),
        _wrong_bore,
        "a piston for one kind of bore in another kind: it needs another clearance",
        "two_stroke_iron in iron, two_stroke_plated in plated or bare aluminium",
    ),
    Rule(
        ("piston_kind", "cycle"),
        _wrong_cycle,
        "this kind of piston belongs to an engine of the other cycle",
        "two_stroke_iron, two_stroke_plated or forged for a two-stroke, cast or forged for a "
        "four-stroke",
    ),
)
RULES = (
    *FIT_RULES,
    Rule(
        ("piston_mm",),
        lambda i: beyond(-MOST_INTERFERENCE_MM, _room_mm(i)),
        "the piston is more than 0.05 mm larger than the bore",
        "a piston that goes into this bore; check both sizes and their units",
    ),
    Rule(
        ("piston_mm",),
        lambda i: beyond(_room_mm(i), MOST_ROOM_MM),
        "the piston is more than 3 mm smaller than the bore",
        "the skirt across the thrust axis at the maker's height, not the crown; check the units",
    ),
    Rule(
        ("piston_new_mm", "piston_mm"),
        lambda i: (
            beyond(i.piston_mm, i.piston_new_mm + 0.01) | beyond(i.piston_new_mm, i.piston_mm + 1.0)
        ),
        "a new piston of that size cannot have worn to the measured one",
        "from 0.01 mm under to 1 mm over the measured piston",
    ),
)


def _surveyed_too_little(i: Any, _: Any) -> bool:
    return i.survey is not None and len(i.survey.depth_mm) < 3


def _spread(i: Any, _: Any) -> Any:
    smallest = smallest_bore_mm(i)
    return False if smallest is None else largest_bore_mm(i) - smallest > MOST_SPREAD_MM


def _unusual(_: Any, o: Any) -> Any:
    low, high = USUAL_CLEARANCE_MM
    return (o.clearance_max_mm < low) | (o.clearance_max_mm > high)


def _no_limit(i: Any, _: Any) -> bool:
    return i.piston_kind is None if i.fit == "new" else cycle_of(i) is None


NOTICES = (
    Notice(
        "piston_height_not_given",
        "height_above_skirt_bottom_mm",
        lambda i, _: i.height_above_skirt_bottom_mm is None,
        "where was the piston measured? It is tapered, barrelled and oval: its size holds only at "
        "the maker's height above the skirt bottom, 90° to the pin",
    ),
    Notice(
        "skirt_travel_not_given",
        "skirt_from_mm",
        lambda i, _: i.survey is not None and i.skirt_from_mm is None and i.skirt_to_mm is None,
        "all surveyed depths are used; those that only the rings reach do not belong to the skirt",
    ),
    Notice(
        "survey_used",
        "survey",
        lambda i, _: i.survey is not None and i.bore_max_mm is not None,
        "largest bore and survey both given: the survey is used",
    ),
    Notice("few_depths", "survey", _surveyed_too_little, "gauge the bore at three depths or more"),
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
