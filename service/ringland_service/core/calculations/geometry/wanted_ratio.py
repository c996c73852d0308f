"""C19: how much metal or gasket a wanted compression ratio takes, and what squish that leaves."""

from dataclasses import replace as changed

from ringland_service.core.calculations.geometry._parts import gasket_rules, opening_mm2
from ringland_service.core.calculations.geometry._squish_floor import floor_in_force, squish_floor
from ringland_service.core.calculations.geometry._wanted_fields import Inputs, Outputs
from ringland_service.core.calculations.geometry._wanted_rules import NOTICES, RULES
from ringland_service.core.declare import Calculation, Check
from ringland_service.core.formulas import facing, geometry
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number

SETTLE = (
    "measure the squish again with fresh solder at the pin axis, head torqued down with its gasket"
)
MEETS = "a piston that meets the head breaks: the floor holds less the uncertainty"


def _after(inputs: Inputs, height_mm: Number | None) -> Number | None:
    """Return the squish after, or None where squish or height is not known."""
    if inputs.squish_mm is None or height_mm is None:
        return None
    return inputs.squish_mm - height_mm


def _cut(volume_cc: Number, area_mm2: Number | None) -> Number | None:
    return None if area_mm2 is None else facing.cut_for_volume_mm(volume_cc, area_mm2)


def compute(inputs: Inputs) -> Outputs:
    """Work out the volume to lose, and the height of each way to lose it."""
    required_cc = geometry.clearance_for_ratio_cc(inputs.swept_cc, inputs.wanted_ratio)
    remove_cc = inputs.clearance_cc - required_cc
    bore_mm, fitted = inputs.bore_mm, inputs.gasket_thickness_mm
    # Each work counts on its own face: the chamber's, the gasket's opening, the bore.
    skim = _cut(remove_cc, inputs.chamber_area_mm2)
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
        inconclusive_fails=MEETS,
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
