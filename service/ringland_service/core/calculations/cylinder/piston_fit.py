"""What piston and bore must be to be one fit, whichever piston it is."""

from ringland_service.core.calculations.cylinder._shapes import (
    BoreRead,
    OfOneCycle,
    Paired,
    WarmBore,
    WarmPiston,
)
from ringland_service.core.declare import Rule
from ringland_service.core.engines import survey
from ringland_service.core.engines.bore_expansion import away_from_20c
from ringland_service.core.engines.materials import MATERIALS, alpha_of_bore_per_k
from ringland_service.core.errors import Contradiction
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.numbers import Number, Truth

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


def cycle_of(i: OfOneCycle) -> str | None:
    """Return the engine's cycle as given, else the one that its kind of piston tells."""
    if i.cycle is not None or i.piston_kind is None:
        return i.cycle
    if i.piston_kind in FOUR_STROKE_PISTONS:
        return "four_stroke"
    return "two_stroke" if i.piston_kind in BORES_OF_PISTON else None


def bore_alpha_per_k(i: WarmBore) -> Number:
    """Return the expansion of the bore: as given, of its kind, else of grey iron [1/K]."""
    if i.bore_alpha_per_k is not None:
        return i.bore_alpha_per_k
    return alpha_of_bore_per_k(i.bore_kind) or MATERIALS["grey_iron"].alpha


def piston_alpha_per_k(i: WarmPiston) -> Number:
    """Return the expansion of the piston: as given, of material or kind, else cast alloy [1/K]."""
    if i.piston_alpha_per_k is not None:
        return i.piston_alpha_per_k
    if i.piston_material is not None:
        return MATERIALS[i.piston_material].alpha
    of_kind = "piston_cast_eutectic" if i.piston_kind is None else MATERIAL_OF_PISTON[i.piston_kind]
    return MATERIALS[of_kind].alpha


def largest_bore_mm(i: BoreRead) -> Number:
    """Return the largest bore of the skirt travel as read; -inf where none was read there."""
    if i.bore_survey is None:
        if i.bore_largest_mm is None:
            raise Contradiction(
                "bore_largest_mm", "no bore is given", "give bore_largest or a survey"
            )
        return i.bore_largest_mm
    return survey.largest_between_mm(i.bore_survey, i.skirt_from_mm, i.skirt_to_mm)


def smallest_bore_mm(i: BoreRead) -> Number | None:
    """Return the smallest bore of the skirt travel as read; None where it is not known."""
    if i.bore_survey is None:
        return i.bore_smallest_mm
    return survey.smallest_between_mm(i.bore_survey, i.skirt_from_mm, i.skirt_to_mm)


def mean_bore_mm(i: BoreRead) -> Number | None:
    """Return the mean of the surveyed bores of the skirt travel as read; None without a survey."""
    if i.bore_survey is None:
        return None
    return survey.mean_between_mm(i.bore_survey, i.skirt_from_mm, i.skirt_to_mm)


def _bore_expansion_unknown(i: WarmBore) -> Truth:
    unknown = i.bore_alpha_per_k is None and alpha_of_bore_per_k(i.bore_kind) is None
    away: Truth = away_from_20c(i.bore_temperature_c)
    return unknown & away


def _piston_expansion_unknown(i: WarmPiston) -> Truth:
    named = (i.piston_alpha_per_k, i.piston_material, i.piston_kind)
    away: Truth = away_from_20c(i.piston_temperature_c)
    return all(name is None for name in named) & away


def _wrong_bore(i: Paired) -> bool:
    # Every other kind of piston goes into whichever bore it fits.
    if i.piston_kind not in BORES_OF_PISTON or i.bore_kind == "unknown":
        return False
    return i.bore_kind not in BORES_OF_PISTON[i.piston_kind]


def _wrong_cycle(i: OfOneCycle) -> bool:
    if i.cycle == "four_stroke":
        return i.piston_kind in BORES_OF_PISTON
    return i.piston_kind in FOUR_STROKE_PISTONS


# What bore and piston must be, whichever piston it is.
FIT_RULES = (
    Rule(
        ("bore_smallest_mm", "bore_largest_mm"),
        lambda i: beyond(i.bore_smallest_mm, i.bore_largest_mm),
        "the smallest bore is larger than the largest",
        "bore_smallest at or below bore_largest",
    ),
    Rule(
        ("skirt_from_mm", "skirt_to_mm"),
        lambda i: at_most(i.skirt_to_mm, i.skirt_from_mm),
        "the skirt travel ends above where it starts",
        "two depths below the deck, skirt_from above skirt_to",
    ),
    Rule(
        ("bore_survey",),
        lambda i: survey.uneven(i.bore_survey),
        "depths and axes are lists of different length",
        "one reading or gap per depth on each axis",
    ),
    Rule(
        ("bore_survey",),
        lambda i: (
            survey.depth_repeated(i.bore_survey) or survey.depth_without_reading(i.bore_survey)
        ),
        "a depth stands there twice, or has no reading on either axis",
        "each depth once, with the bore on at least one axis",
    ),
    Rule(
        ("bore_survey",),
        lambda i: survey.depths_between(i.bore_survey, i.skirt_from_mm, i.skirt_to_mm) < 2,
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
