"""What a wanted compression ratio takes, and what it answers."""

from typing import Any

from ringland_service.core.declare import (
    choice,
    kinds,
    limit_of,
    number,
    quantity,
    record,
    result,
    usual_figures,
)
from ringland_service.core.engines import condition
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import geometry as sizes
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import cited

RATIO = cited("{heywood_ratio}")
PRISM = "solid geometry: volume of a prism"


@record
class Inputs:
    """The cylinder and its ratio wanted, the areas on which a cut counts, and the squish."""

    swept_cc: Number = quantity(
        quantities.CYLINDER_VOLUME, "swept volume of one cylinder", example=239.691
    )
    clearance_cc: Number = quantity(
        quantities.CLEARANCE_VOLUME, "clearance volume now: above the piston at top dead centre"
    )
    wanted_ratio: Number = number(
        "compression ratio wanted", low=4.0, high=18.0, example=9.4, warn=(6.0, 15.0)
    )
    chamber_area_mm2: Number | None = quantity(
        sizes.CHAMBER_FACE,
        "area of the combustion chamber at the head's face, as measured: it shrinks with depth",
        default=None,
    )
    gasket_bore_mm: Number | None = quantity(
        lengths.GASKET_BORE, "bore of the head gasket", default=None
    )
    gasket_area_mm2: Number | None = quantity(
        quantities.GASKET_AREA,
        "area of the head gasket's opening, where it is not round; it counts before gasket_bore",
        default=None,
    )
    gasket_thickness_mm: Number | None = quantity(
        lengths.GASKET_THICKNESS, "head gasket fitted now, compressed", default=None
    )
    bore_mm: Number | None = quantity(
        lengths.BORE, "cylinder bore: a cut of the deck counts with its area", default=None
    )
    squish_mm: Number | None = quantity(
        sizes.SQUISH, "squish clearance now, at its smallest point", default=None
    )
    skim_done_mm: Number | None = quantity(
        sizes.SKIM_DONE, "metal already taken off the head, in all", default=None
    )
    cycle: str | None = choice(
        "cycle, for the squish floor that shops keep",
        condition.CYCLE,
        example="four_stroke",
        default=None,
    )
    floor_given: Limit | None = limit_of("squish_before")
    usual: bool = usual_figures()


def _height(words: str, formula: str, **about: object) -> Any:
    return result(
        words,
        **{
            "kind": kinds.LENGTH,
            "decimals": 3,
            "formula": formula,
            "source": "sum of lengths",
            "default": None,
            **about,
        },
    )


@record
class Outputs:
    """The volume to lose, and each way to lose it with the squish that it leaves."""

    ratio_now: Number = result(
        "compression ratio now",
        decimals=2,
        formula="(swept_cc + clearance_cc) / clearance_cc",
        source=RATIO,
    )
    required_clearance_cc: Number = result(
        "clearance volume that gives the ratio wanted",
        kind=kinds.VOLUME,
        decimals=2,
        formula="swept_cc / (wanted_ratio - 1)",
        source=RATIO,
    )
    remove_cc: Number = result(
        "volume to be lost; negative: to be gained",
        kind=kinds.VOLUME,
        decimals=3,
        formula="clearance_cc - required_clearance_cc",
        source=RATIO,
    )
    skim_mm: Number | None = _height(
        "metal to take off the head's face; negative: no skim gives it",
        "1000 * remove_cc / chamber_area_mm2",
        source=PRISM,
    )
    skim_in_all_mm: Number | None = result(
        "metal taken off the head in all, with what is off already",
        kind=kinds.LENGTH,
        decimals=3,
        basis="skim + skim_done; skim_done counts as none where it is not given",
        source="sum of lengths",
        default=None,
    )
    squish_after_skim_mm: Number | None = _height("squish after the skim", "squish_mm - skim_mm")
    gasket_change_mm: Number | None = result(
        "head gasket thinner by; negative: thicker",
        kind=kinds.LENGTH,
        decimals=3,
        basis="1000 · remove / area of the gasket's opening",
        source=PRISM,
        default=None,
    )
    gasket_wanted_mm: Number | None = _height(
        "head gasket that gives the ratio, compressed; negative: none is thin enough",
        "gasket_thickness_mm - gasket_change_mm",
    )
    squish_after_gasket_mm: Number | None = _height(
        "squish with that gasket", "squish_mm - gasket_change_mm"
    )
    deck_cut_mm: Number | None = _height(
        "metal to take off the cylinder's deck; negative: no cut gives it",
        "1000 * remove_cc / (pi/4 * bore_mm**2)",
        source=PRISM,
    )
    squish_after_deck_cut_mm: Number | None = _height(
        "squish after the cut of the deck", "squish_mm - deck_cut_mm"
    )
