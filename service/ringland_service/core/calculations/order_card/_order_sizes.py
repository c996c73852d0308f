"""Points 4 to 8 of the order card: finish bore, clearance, boring and honing, form, centre."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import cast

from ringland_service.core.calculations.order_card import order_choices as choices
from ringland_service.core.calculations.order_card._order_inputs import Inputs
from ringland_service.core.calculations.order_card._order_job import KEEPS_ITS_SIZE, ONLY_HEADS
from ringland_service.core.calculations.order_card._order_words import (
    USUAL,
    Missing,
    Phrase,
    Point,
    in_inches,
    limits,
    listed,
    mm,
    not_applicable,
    point,
    written,
)
from ringland_service.core.calculations.order_card.order_choices import (
    BORED,
    HEADS_ONLY,
    HONE,
    LIGHT_HONE,
    REPLATE,
    SLEEVE,
)
from ringland_service.core.formulas import machining

NO_BORING = {
    HONE: "no boring: hone to the limits of point 4",
    LIGHT_HONE: "no boring: even strokes over the whole bore, all for the surface",
}


@dataclass(frozen=True)
class Sizes:
    """The sizes ordered; None where they cannot be worked out yet."""

    low_mm: float | None = None
    high_mm: float | None = None
    bore_to_mm: float | None = None


def sizes_of(i: Inputs) -> Sizes:
    """Return the finish limits, and the size to bore to where boring is ordered."""
    low, high = i.clearance_low_mm, i.clearance_high_mm
    if (
        i.work in (HEADS_ONLY, LIGHT_HONE)
        or i.piston_size_mm is None
        or low is None
        or high is None
    ):
        return Sizes()
    middle = machining.finish_bore_mm(i.piston_size_mm, (low + high) / 2.0)
    stock = i.hone_stock_mm if i.work in BORED else None
    return Sizes(
        float(machining.finish_bore_mm(i.piston_size_mm, low)),
        float(machining.finish_bore_mm(i.piston_size_mm, high)),
        None if stock is None else float(machining.bore_to_mm(middle, stock)),
    )


def finish_bore(i: Inputs, sizes: Sizes) -> Point:
    """Return point 4: the finish bore as two limits."""
    if i.work == HEADS_ONLY:
        return not_applicable("finish bore", ONLY_HEADS)
    if i.work == LIGHT_HONE:
        return point("finish bore", KEEPS_ITS_SIZE, *_removal(i))
    if sizes.low_mm is None or sizes.high_mm is None:
        lacking = "finish bore as two limits: needs the piston as measured, and the clearance"
        return point("finish bore", Missing(lacking))
    inches = in_inches(i.inches_too, sizes.low_mm, sizes.high_mm)
    size = f"finish bore {limits(sizes.low_mm, sizes.high_mm)}{inches} at 20 °C"
    return point("finish bore", size, _plating(i))


def _removal(i: Inputs) -> tuple[Phrase, ...]:
    if i.hone_removal_mm is not None:
        return (f"take {mm(i.hone_removal_mm)} off the diameter and no more",)
    if not i.usual_figures:
        return (Missing("what the hone takes off the diameter"),)
    return (f"take {mm(choices.LIGHT_REMOVAL_MM)} off the diameter and no more {USUAL}",)


def _plating(i: Inputs) -> Phrase:
    if i.work != REPLATE:
        return None
    return written(i.replate_to, "over the plating; plating to ", "size that the plating goes to")


def clearance(i: Inputs) -> Point:
    """Return point 5: the clearance that the finish bore must give, as a check."""
    if i.work == HEADS_ONLY:
        return not_applicable("clearance", ONLY_HEADS)
    if i.work == LIGHT_HONE:
        return not_applicable("clearance", KEEPS_ITS_SIZE)
    if i.clearance_low_mm is None or i.clearance_high_mm is None:
        return point("clearance", Missing("clearance of the piston wanted, as two limits"))
    wanted = limits(i.clearance_low_mm, i.clearance_high_mm)
    return point("clearance", f"piston clearance must come out at {wanted}, on the diameter")


def boring(i: Inputs, sizes: Sizes) -> Point:
    """Return point 6: what is bored, and what is left for the hone."""
    heading = "boring and stock"
    if i.work == HEADS_ONLY:
        return not_applicable(heading, ONLY_HEADS)
    if i.work == REPLATE:
        return point(heading, "finished by the plating maker's method, NO common stones")
    if i.work in (HONE, LIGHT_HONE):
        return point(heading, NO_BORING[i.work])
    sleeve = _sleeve(i) if i.work == SLEEVE else ()
    if i.hone_stock_mm is None:
        return point(heading, *sleeve, Missing(_stock(i)))
    if sizes.bore_to_mm is None:
        lacking = "diameter to bore to: needs the piston as measured, and the clearance"
        return point(heading, *sleeve, Missing(lacking))
    inches = in_inches(i.inches_too, sizes.bore_to_mm)
    what = "only then bore the sleeve" if sleeve else "bore"
    hone = f"then hone {mm(i.hone_stock_mm)} on the diameter"
    return point(heading, *sleeve, f"{what} to {mm(sizes.bore_to_mm)}{inches}, {hone}", _fine(i))


def _stock(i: Inputs) -> str:
    lacking = "stock to be left for the hone, on the diameter"
    if not i.usual_figures:
        return lacking
    return f"{lacking}; shops leave {limits(*choices.HONE_STOCK_MM)} {USUAL}"


def _fine(i: Inputs) -> Phrase:
    if not i.usual_figures:
        return None
    return f"the last {limits(*choices.FINE_STOCK_MM)} of it with fine stones {USUAL}"


def _sleeve(i: Inputs) -> tuple[Phrase, ...]:
    # The rules refuse a sleeve ordered without its interference.
    interference = mm(cast(float, i.interference_mm))
    room = i.drop_in_clearance_mm
    return (
        f"fit an iron sleeve with {interference} interference on the diameter at 20 °C",
        f"heat the cylinder to {i.heat_c:.0f} °C, dry sleeve"
        + ("" if room is None else f", {mm(room)} of room as it drops in"),
        "seat it and let it cool",
    )


def form(i: Inputs) -> Point:
    """Return point 7: form limits, and the depths at which they are to be proven."""
    if i.work == HEADS_ONLY:
        return not_applicable("form", ONLY_HEADS)
    if i.work == LIGHT_HONE:
        return point("form", "left as it is: do not true the bore up with the hone")
    limit_of = (
        ("out-of-round", i.out_of_round_max_mm, choices.usual_form_mm("out_of_round")),
        ("taper", i.taper_max_mm, choices.usual_form_mm("taper")),
    )
    said = [_form(words, given, usual, i.usual_figures) for words, given, usual in limit_of]
    told = any(isinstance(part, str) for part in said)
    return point(
        "form",
        *said,
        "each as a difference of two diameters" if told else None,
        Missing("depths from the deck at which size and form are to be proven")
        if i.proof_depths_mm is None
        else f"proven on both axes at {depths(i.proof_depths_mm)} from the deck",
    )


def _form(words: str, given: float | None, usual: float | None, allowed: bool) -> Phrase:
    if given is not None:
        return f"{words} at most {mm(given)}"
    if usual is None or not allowed:
        return Missing(f"most {words} allowed")
    return f"{words} at most {mm(usual)} {USUAL}"


def depths(depths_mm: Sequence[float]) -> str:
    """Return the depths of proof with their unit."""
    return listed(mm(depth, 1) for depth in sorted(depths_mm))


def centre(i: Inputs) -> Point:
    """Return point 8: what boring is centred on."""
    if i.work not in BORED:
        return not_applicable("boring centre", "no boring")
    if i.boring_centre is None:
        return point("boring centre", Missing("what boring is centred on"))
    return point("boring centre", f"centred {choices.BORING_CENTRE[i.boring_centre]}")
