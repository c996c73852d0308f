"""C19: how much metal or gasket a wanted compression ratio takes, and what squish that leaves."""

from dataclasses import replace as changed
from typing import Any

from ringland_service.core.calculations.geometry._parts import gasket_rules, opening_mm2
from ringland_service.core.calculations.geometry._squish_floor import floor_in_force, squish_floor
from ringland_service.core.calculations.geometry._wanted_rules import NOTICES, RULES
from ringland_service.core.declare import (
    Calculation,
    Check,
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
from ringland_service.core.formulas import facing, geometry
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import geometry as sizes
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import cited

RATIO = cited("{heywood_ratio}")
PRISM = "solid geometry: volume of a prism"
SETTLE = (
    "measure the squish again with fresh solder at the pin axis, head torqued down with its gasket"
)
MEETS = "a piston that meets the head breaks: the floor holds less the doubt"


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
    chamber_area_at_face_mm2: Number | None = quantity(
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


def _height(words: str, formula: str, **about: Any) -> Any:
    return result(
        words,
        **{
            "kind": kinds.LENGTH,
            "digits": 3,
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
        digits=2,
        formula="(swept_cc + clearance_cc) / clearance_cc",
        source=RATIO,
    )
    required_clearance_cc: Number = result(
        "clearance volume that gives the ratio wanted",
        kind=kinds.VOLUME,
        digits=2,
        formula="swept_cc / (wanted_ratio - 1)",
        source=RATIO,
    )
    remove_cc: Number = result(
        "volume to be lost; negative: to be gained",
        kind=kinds.VOLUME,
        digits=3,
        formula="clearance_cc - required_clearance_cc",
        source=RATIO,
    )
    skim_mm: Number | None = _height(
        "metal to take off the head's face; negative: no skim gives it",
        "1000 * remove_cc / chamber_area_at_face_mm2",
        source=PRISM,
    )
    skim_in_all_mm: Number | None = result(
        "metal taken off the head in all, with what is off already",
        kind=kinds.LENGTH,
        digits=3,
        basis="skim + skim_done; skim_done counts as none where it is not given",
        source="sum of lengths",
        default=None,
    )
    squish_after_skim_mm: Number | None = _height("squish after the skim", "squish_mm - skim_mm")
    gasket_change_mm: Number | None = result(
        "head gasket thinner by; negative: thicker",
        kind=kinds.LENGTH,
        digits=3,
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


def _after(inputs: Inputs, height_mm: Number | None) -> Number | None:
    """Return the squish after, or None where squish or height is not known."""
    if inputs.squish_mm is None or height_mm is None:
        return None
    left_mm: Number = inputs.squish_mm - height_mm
    return left_mm


def _cut(volume_cc: Number, area_mm2: Number | None) -> Number | None:
    return None if area_mm2 is None else facing.cut_for_volume_mm(volume_cc, area_mm2)


def compute(inputs: Inputs) -> Outputs:
    """Work out the volume to lose, and the height of each way to lose it."""
    required_cc = geometry.clearance_for_ratio_cc(inputs.swept_cc, inputs.wanted_ratio)
    remove_cc = inputs.clearance_cc - required_cc
    bore_mm, fitted = inputs.bore_mm, inputs.gasket_thickness_mm
    skim = _cut(remove_cc, inputs.chamber_area_at_face_mm2)
    gasket = _cut(remove_cc, opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2))
    deck = _cut(remove_cc, None if bore_mm is None else geometry.piston_area_mm2(bore_mm))
    done = 0.0 if inputs.skim_done_mm is None else inputs.skim_done_mm
    return Outputs(
        ratio_now=geometry.compression_ratio(inputs.swept_cc, inputs.clearance_cc),
        required_clearance_cc=required_cc,
        remove_cc=remove_cc,
        skim_mm=skim,
        skim_in_all_mm=None if skim is None else skim + done,
        squish_after_skim_mm=_after(inputs, skim),
        gasket_change_mm=gasket,
        gasket_wanted_mm=None if gasket is None or fitted is None else fitted - gasket,
        squish_after_gasket_mm=_after(inputs, gasket),
        deck_cut_mm=deck,
        squish_after_deck_cut_mm=_after(inputs, deck),
    )


def _usual_floor(inputs: Inputs, _: Outputs) -> Limit | None:
    return squish_floor(inputs.cycle, inputs.swept_cc)


def _floor(inputs: Inputs, outputs: Outputs) -> Limit | None:
    usual = _usual_floor(inputs, outputs) if inputs.usual else None
    return floor_in_force(inputs.floor_given, usual)


def _skim(inputs: Inputs, _: Outputs) -> Limit:
    # A ratio to be lowered asks for metal to be put on: no skim does that.
    return changed(LIMITS["head_skim"].limit(), low=0.0)


def _squish_check(way: str, words: str) -> Check:
    return Check(
        f"squish_after_{way}",
        f"squish_after_{way}_mm",
        f"squish {words}",
        SETTLE,
        _floor,
        doubt_fails=MEETS,
    )


CALCULATION = Calculation(
    name="wanted-ratio",
    number="C19",
    stage="geometry",
    title="Metal or gasket for a wanted ratio",
    summary="How much a head is skimmed, a head gasket thinned or a deck cut for a wanted "
    "compression ratio, and the squish that each leaves. Skim and thinner gasket bring head and "
    "piston, valves and piston, and the camshaft nearer: check squish, valve-to-piston clearance, "
    "cam timing, and the lash of pushrod engines after. A maker's floor is given as the limit of "
    "squish_before and holds after too, a maker's skim limit as that of skim_for_ratio.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=(
        Check(
            "squish_before",
            "squish_mm",
            "squish now",
            SETTLE,
            _usual_floor,
        ),
        Check(
            "skim_for_ratio",
            "skim_in_all_mm",
            "metal off the head in all",
            "measure the chamber's area at the face again, and the head's height against a new one",
            _skim,
        ),
        _squish_check("skim", "after the skim"),
        Check(
            "gasket_for_ratio",
            "gasket_wanted_mm",
            "head gasket that gives the ratio",
            "measure the used gasket at several places with a micrometer",
            lambda i, o: Limit(0.0, None, "computed", "a gasket has some thickness"),
        ),
        _squish_check("gasket", "with that gasket"),
        _squish_check("deck_cut", "after the cut of the deck"),
    ),
    rules=(*gasket_rules("gasket_bore_mm", "bore_mm", "gasket_area_mm2"), *RULES),
    notices=NOTICES,
    cautions=("measuring",),
)
