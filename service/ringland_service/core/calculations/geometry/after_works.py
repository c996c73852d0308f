"""What several works change together on one engine: one clearance volume and one ratio after.

Bore, crown, gaskets, deck, skim and sunk valves all move one volume. A job works it out once, in
the part ``overbore_ratio``; the parts that tell of one work each show that ratio as theirs.
"""

from collections.abc import Mapping

from ringland_service.core.declare import Derived, Known
from ringland_service.core.metrology.conformity import CLOSE, FAIL, at_most
from ringland_service.core.numbers import Number

FINISH = "oversize_choice.chosen_finish_mm"
NEW_BORE = ("new_bore_mm", FINISH)
JOINT, PORTS = "overbore_ratio", "port_timing_after"
# Where the joint calculation takes each work from.
SOURCES = {
    "new_bore_mm": (*NEW_BORE, "bore_mm"),
    "clearance_cc": ("whole_clearance_cc",),
    "crevice_cc": ("crevice_cc", "compression_ratio.crevice_counted_cc"),
    "base_gasket_thinner_by_mm": (
        "thinner_base_gasket_by_mm",
        "squish.thinner_by_mm",
        "base_gasket_thinner_by_mm",
    ),
    "deck_cut_mm": ("deck_cut_mm",),
    "skim_loss_cc": ("skim_to_do_cc", "skim_loss_cc"),
    "sink_gain_cc": ("valve_sink.chamber_gain_cc", "sink_gain_cc"),
}
# Works other than a new bore that change the volume.
GIVEN = (
    "new_dome_cc",
    "new_dish_cc",
    "new_deck_mm",
    "new_gasket_bore_mm",
    "new_gasket_thickness_mm",
)
OTHER_WORKS = (
    *GIVEN,
    *(source for name in list(SOURCES)[3:] for source in SOURCES[name]),
)
RATIO_AFTER = {"ratio_after": f"{JOINT}.ratio_after"}
CLEARANCE_AFTER = {"clearance_after_cc": f"{JOINT}.clearance_after_cc"}


def new_bore(known: Known) -> Number | None:
    """Return the bore that is meant to be cut, or None."""
    return next((known[name] for name in NEW_BORE if name in known), None)


def changes(known: Known) -> bool:
    """Return whether a work is known that changes the ratio; a chosen bore the gasket clears."""
    new = new_bore(known)
    if new is None:
        other = any(known.get(name) for name in OTHER_WORKS if name not in GIVEN)
        told = any(name in known for name in GIVEN)
        return (other or told) and ("whole_clearance_cc" in known or "chamber_cc" in known)
    if "new_bore_mm" in known:
        return True
    gasket = known.get("new_gasket_bore_mm", known.get("gasket_bore_mm"))
    return gasket is None or not at_most(gasket, new)


def without(known: Known) -> tuple[str, ...]:
    """Return the fields that say nothing where no new bore is cut: the gasket fits as it did."""
    whole = "whole_clearance_cc" in known
    changed = {"new_gasket_bore_mm", "new_gasket_thickness_mm"} & known.keys()
    return ("gasket_bore_mm",) if new_bore(known) is None and whole and not changed else ()


def derived(known: Known, words: Mapping[str, str]) -> Derived:
    """Return the skim that is to be done, and the clearance volume known as a whole.

    A face is skimmed where it is not flat, or where an allowance is told; the volume counts whole
    where it is told, or where no new bore makes its parts grow apart.
    """
    found: dict[str, tuple[Number, str]] = {}
    loss = "flatness.chamber_loss_cc"
    to_do = words.get("flatness") in (FAIL, CLOSE) or bool(known.get("skim_allowance_mm"))
    if loss in known and to_do:
        found["skim_to_do_cc"] = (known[loss], loss)
    whole = next((n for n in WHOLE if n in known), None)
    if whole is not None and _whole_will_do(known, whole):
        found["whole_clearance_cc"] = (known[whole], whole)
    return found


WHOLE = ("clearance_cc", "compression_ratio.clearance_cc")


def _whole_will_do(known: Known, whole: str) -> bool:
    """Return whether all is known that the works change besides, and no part would be exacter."""
    if whole != WHOLE[0] and "compression_ratio.deck_volume_cc" in known:
        return False
    if (new_bore(known) is not None or "new_deck_mm" in known) and "deck_mm" not in known:
        return False
    if not {"new_gasket_bore_mm", "new_gasket_thickness_mm"} & known.keys():
        return True
    opening = {"gasket_bore_mm", "gasket_area_mm2"} & known.keys()
    return bool(opening) and "gasket_thickness_mm" in known


# A two-stroke's ports after base gasket and deck: the crown edge comes nearer to the deck, and the
# port tops too where the deck is cut.
TOPS = ("exhaust_port_top_below_deck_mm", "transfer_port_top_below_deck_mm")
EDGE = "piston_edge_below_deck_at_tdc_mm"


def ports_derived(known: Known, _: Mapping[str, str]) -> Derived:
    """Return crown edge and port tops below the deck after the works."""
    thinner = next(
        (known[n] for n in SOURCES["base_gasket_thinner_by_mm"] if n in known),
        0.0,
    )
    cut = known.get("deck_cut_mm", 0.0)
    moved = 0.0
    if {"new_deck_mm", "deck_mm"} <= known.keys():
        moved = known["new_deck_mm"] - known["deck_mm"]
    found = {f"{top}_after": (known[top] - cut, top) for top in TOPS if top in known}
    if EDGE in known:
        found[f"{EDGE}_after"] = (known[EDGE] + moved - thinner - cut, EDGE)
    return found
