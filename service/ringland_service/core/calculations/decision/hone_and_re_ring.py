"""Whether the bore may stay: what a light hone or a deglaze leaves, and new rings in it.

A part of the cylinder's decision; all its checks count too close to call as a fail.
"""

from dataclasses import replace

import numpy as np

from ringland_service.core.calculations.cylinder.piston_fit import FIT_RULES
from ringland_service.core.calculations.decision import _fitted as fitted
from ringland_service.core.calculations.decision._fitted import Fitted, clearance
from ringland_service.core.calculations.decision._re_ring_checks import CHECKS
from ringland_service.core.calculations.machining.bored import NEVER_BORED
from ringland_service.core.calculations.machining.clean_up import Score
from ringland_service.core.calculations.order_card.order_choices import LIGHT_REMOVAL_MM
from ringland_service.core.declare import (
    Calculation,
    Figure,
    Notice,
    Rule,
    choice,
    kinds,
    limit_of,
    quantity,
    record,
    records,
    result,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.formulas import rings
from ringland_service.core.metrology.candidates import Candidates, largest
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

SUM = "sum of two diameters"


@record
class Inputs(Fitted):
    """The survey's extremes, the piston and the ring that would go back, the scores."""

    bore_kind: str = choice("kind of bore", condition.BORE_KIND, example="iron_sleeve_in_aluminium")
    survey_largest_mm: float = quantity(lengths.BORE, "largest bore of the survey", example=68.094)
    hone_removal_mm: float | None = quantity(
        sizes.HONE_REMOVAL,
        "what the hone takes off for new rings, on the diameter; 0.010 mm where not given, nothing "
        "from a plated or bare silicon bore, which is only deglazed",
        default=None,
    )
    survey_worn_zone_mm: float | None = quantity(
        lengths.BORE, "mean of both axes where it is largest", example=68.078, default=None
    )
    survey_out_of_round_mm: float | None = quantity(
        sizes.FORM_ERROR, "largest out-of-round of the survey", example=0.032, default=None
    )
    survey_taper_pin_axis_mm: float | None = quantity(
        sizes.FORM_ERROR, "taper on the pin axis", example=0.05, default=None
    )
    survey_taper_thrust_axis_mm: float | None = quantity(
        sizes.FORM_ERROR, "taper on the thrust axis", example=0.078, default=None
    )
    nominal_bore_mm: float | None = quantity(
        lengths.BORE, "nominal bore that piston and rings were made for", default=None
    )
    new_rings_piston_mm: float | None = quantity(
        lengths.PISTON,
        "the piston that would go back with new rings: the old one as measured, or a new standard "
        "one",
        example=67.962,
        default=None,
    )
    new_rings_gap_mm: float | None = quantity(
        lengths.RING_GAP,
        "gap of the new top ring as measured in a bore of nominal size; else the maker's whole "
        "range counts",
        example=0.21,
        default=None,
    )
    clearance_high_mm: float | None = quantity(
        sizes.WANTED_CLEARANCE, "largest clearance of a new fit, diametral", default=None
    )
    scores: tuple[Score, ...] | None = records(
        Score, "scores, pits and seizure marks", most=20, default=None
    )
    bore_limit: Limit | None = limit_of("bore_largest")
    out_of_round_limit: Limit | None = limit_of("out_of_round")
    taper_pin_limit: Limit | None = limit_of("taper_pin_axis")
    taper_thrust_limit: Limit | None = limit_of("taper_thrust_axis")
    clearance_limit: Limit | None = limit_of("piston_clearance_max")
    new_gap_limit: Limit | None = limit_of("top_ring_gap_new")
    old_gap_limit: Limit | None = limit_of("ring_gap_used")


@record
class Outputs:
    """The bore after the hone, and the fits in it."""

    hone_removal_used_mm: float = result(
        "what the hone takes off, on the diameter",
        kind=kinds.LENGTH,
        decimals=3,
        basis="as given, else 0.010 mm; nothing from a plated or bare silicon bore",
        source=COMMON,
    )
    bore_after_hone_mm: float = result(
        "largest bore after the hone",
        kind=kinds.LENGTH,
        decimals=3,
        formula="survey_largest_mm + hone_removal_used_mm",
        source=SUM,
    )
    worn_zone_growth_mm: float | None = result(
        "what the worn zone adds to the gap of a new ring, after the hone",
        kind=kinds.LENGTH,
        decimals=3,
        formula="pi * (survey_worn_zone_mm + hone_removal_used_mm - nominal_bore_mm)",
        source="a ring follows the perimeter, plane geometry",
        default=None,
    )
    worn_zone_gap_low_mm: float | None = result(
        "smallest gap of the new top ring in the worn zone",
        kind=kinds.LENGTH,
        decimals=2,
        basis="gap as measured, else the least of the maker's range, + worn_zone_growth",
        source="a ring follows the perimeter, plane geometry",
        default=None,
    )
    worn_zone_gap_high_mm: float | None = result(
        "largest gap of the new top ring in the worn zone",
        kind=kinds.LENGTH,
        decimals=2,
        basis="gap as measured, else the most of the maker's range, + worn_zone_growth",
        source="a ring follows the perimeter, plane geometry",
        default=None,
    )
    clearance_after_hone_mm: float | None = result(
        "clearance of the piston after the hone, in the largest bore of the skirt travel",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest bore of the skirt travel + hone_removal_used − new_rings_piston, "
        "all at 20 °C",
        source="difference of two diameters",
        default=None,
    )
    deepest_score_mm: float | None = result(
        "depth of the deepest score, radial",
        kind=kinds.LENGTH,
        decimals=3,
        basis="the largest depth_radial of the scores",
        source="as given",
        extreme=True,
        default=None,
    )


def removal_mm(inputs: Inputs) -> float:
    """Return what comes off the diameter: as given, else what shops take; nothing off plating."""
    if inputs.hone_removal_mm is not None:
        return inputs.hone_removal_mm
    return 0.0 if inputs.bore_kind in NEVER_BORED else LIGHT_REMOVAL_MM


def _new_gap_mm(inputs: Inputs, side: str) -> float | None:
    """Return the new ring's gap: as measured, else that side of the maker's range."""
    if inputs.new_rings_gap_mm is not None or inputs.new_gap_limit is None:
        return inputs.new_rings_gap_mm
    found: float | None = getattr(inputs.new_gap_limit, side)
    return found


def _in_worn_zone_mm(gap_mm: float | None, growth_mm: float | None) -> float | None:
    if gap_mm is None or growth_mm is None:
        return None
    return float(rings.gap_in_worn_bore_mm(gap_mm, growth_mm))


def _growth_mm(inputs: Inputs, removal: float) -> float | None:
    worn, nominal = inputs.survey_worn_zone_mm, inputs.nominal_bore_mm
    if worn is None or nominal is None:
        return None
    return float(rings.gap_growth_mm(worn + removal, nominal))


def _clearance_mm(inputs: Inputs, removal: float) -> float | None:
    surveyed = inputs.bore_survey is not None or inputs.bore_largest_mm is not None
    if inputs.new_rings_piston_mm is None or not surveyed:
        return None
    return float(clearance(inputs, inputs.new_rings_piston_mm).clearance_max_mm) + removal


def compute(inputs: Inputs) -> Outputs:
    """Work out bore, clearance and ring gap after the hone."""
    removal = removal_mm(inputs)
    growth = _growth_mm(inputs, removal)
    return Outputs(
        hone_removal_used_mm=removal,
        bore_after_hone_mm=inputs.survey_largest_mm + removal,
        worn_zone_growth_mm=growth,
        worn_zone_gap_low_mm=_in_worn_zone_mm(_new_gap_mm(inputs, "low"), growth),
        worn_zone_gap_high_mm=_in_worn_zone_mm(_new_gap_mm(inputs, "high"), growth),
        clearance_after_hone_mm=_clearance_mm(inputs, removal),
        deepest_score_mm=max((s.depth_radial_mm for s in inputs.scores or ()), default=None),
    )


def extremes(inputs: Inputs) -> dict[str, Candidates]:
    """Return what the clearance in a survey, and the deepest score, are the largest of."""
    found: dict[str, Candidates] = {}
    if inputs.new_rings_piston_mm is not None and inputs.bore_survey is not None:
        rooms = fitted.extremes(inputs, inputs.new_rings_piston_mm)["clearance_max_mm"]
        after = rooms.values + np.asarray(removal_mm(inputs))[..., np.newaxis]
        found["clearance_after_hone_mm"] = replace(rooms, values=after)
    if inputs.scores:
        found["deepest_score_mm"] = largest([score.depth_radial_mm for score in inputs.scores])
    return found


def _past_the_middle(i: Inputs, o: Outputs) -> bool:
    """Return whether the clearance lies above the middle between a new fit and the limit."""
    limit, new = i.clearance_limit, i.clearance_high_mm
    if o.clearance_after_hone_mm is None or limit is None or limit.high is None or new is None:
        return False
    high = float(limit.high)
    return (new + high) / 2.0 < o.clearance_after_hone_mm <= high


CALCULATION = Calculation(
    name="hone-and-re-ring",
    number="D.2",
    stage="decision",
    title="The bore kept, with new rings",
    summary="What a light hone leaves of the bore, and what new rings and the piston would have in "
    "it. Too close to call counts as a fail.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    figures=(
        Figure(
            "hone_removal_mm",
            (
                "hone_removal_used_mm",
                "worn_zone_gap_low_mm",
                "worn_zone_gap_high_mm",
                "clearance_after_hone_mm",
            ),
            lambda i, _: i.hone_removal_mm is None and i.bore_kind not in NEVER_BORED,
        ),
        expansion_of_bore(("clearance_after_hone_mm",)),
    ),
    columns=False,
    checks=CHECKS,
    rules=(
        *FIT_RULES,
        Rule(
            ("hone_removal_mm", "bore_kind"),
            lambda i: i.bore_kind in NEVER_BORED and i.hone_removal_mm > 0.0,
            "a plated, chromed or bare silicon bore is not honed with stones",
            "0, or leave hone_removal out: it is only deglazed, by the plating maker's method",
        ),
    ),
    notices=(
        Notice(
            "clearance_past_the_middle",
            "clearance_after_hone_mm",
            _past_the_middle,
            "more than half of the way from a new fit to the service limit is used up: it would "
            "pass, and not for long",
        ),
    ),
    cautions=("measuring", "boring_and_honing"),
)
