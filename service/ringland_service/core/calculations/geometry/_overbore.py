"""Clearance volume before and after an overbore; what contradicts it, and what it warns of."""

from typing import Any

from ringland_service.core.calculations.geometry._parts import (
    CROWN_FLAT,
    LARGEST_OVERSIZE_MM,
    NO_CREVICE,
    counted,
    gasket_rules,
    no_room,
    opening_mm2,
    summed,
)
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas import geometry
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import cited

# A change of the ratio that is worth a look at fuel and mixture: common practice, no source.
FELT = 0.05


def either(new: Number | None, old: Number | None) -> Number | None:
    """Return what is fitted after: the new, else the old."""
    return old if new is None else new


def gasket_after_mm(inputs: Any) -> Number | None:
    """Return the bore of the gasket fitted after, or None where only an area is known."""
    return either(inputs.new_gasket_bore_mm, inputs.gasket_bore_mm)


ONE_OF = (
    (
        ("chamber_cc", "gasket_bore_mm", "gasket_thickness_mm", "deck_mm"),
        ("chamber_cc", "gasket_area_mm2", "gasket_thickness_mm", "deck_mm"),
        ("clearance_cc",),
    ),
)
NOT_TOLD = "what the clearance volume is made of is not given"
TELL = "chamber, gasket bore or area, gasket thickness and deck; or the clearance volume, measured"


def deck_lowered_mm(inputs: Any) -> Number:
    """Return how much the deck comes down: a thinner base gasket, and metal off the deck [mm]."""
    lowered: Number = counted(inputs.base_gasket_thinner_by_mm) + counted(inputs.deck_cut_mm)
    return lowered


def deck_after_mm(inputs: Any) -> Number | None:
    """Return the crown edge below the deck after all works, or None where it is not known."""
    edge_mm = either(inputs.new_deck_mm, inputs.deck_mm)
    return None if edge_mm is None else edge_mm - deck_lowered_mm(inputs)


def head_gains_cc(inputs: Any) -> Number:
    """Return what head work gives to the chamber, less what it takes [cc]."""
    gained: Number = counted(inputs.sink_gain_cc) - counted(inputs.skim_loss_cc)
    return gained


def before_cc(inputs: Any) -> Number | None:
    """Return the clearance volume before: measured whole, else summed; None where not known."""
    if inputs.clearance_cc is not None:
        whole: Number = inputs.clearance_cc
        return whole
    opening = opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    told = (inputs.chamber_cc, inputs.gasket_thickness_mm, inputs.deck_mm)
    if opening is None or any(part is None for part in told):
        return None
    return summed(
        bore_mm=inputs.bore_mm,
        chamber_cc=inputs.chamber_cc,
        opening_mm2=opening,
        thickness_mm=inputs.gasket_thickness_mm,
        deck_mm=inputs.deck_mm,
        dome_cc=inputs.dome_cc,
        dish_cc=inputs.dish_cc,
        crevice_cc=inputs.crevice_cc,
    ).clearance_cc


def after_cc(inputs: Any) -> Number | None:
    """Return the clearance volume after all works together; None where it is not known."""
    if inputs.clearance_cc is not None:
        return _after_whole_cc(inputs)
    opening = _opening_after_mm2(inputs)
    thickness_mm = either(inputs.new_gasket_thickness_mm, inputs.gasket_thickness_mm)
    deck_mm = deck_after_mm(inputs)
    if inputs.chamber_cc is None or opening is None or thickness_mm is None or deck_mm is None:
        return None
    return summed(
        bore_mm=inputs.new_bore_mm,
        chamber_cc=inputs.chamber_cc + head_gains_cc(inputs),
        opening_mm2=opening,
        thickness_mm=thickness_mm,
        deck_mm=deck_mm,
        dome_cc=either(inputs.new_dome_cc, inputs.dome_cc),
        dish_cc=either(inputs.new_dish_cc, inputs.dish_cc),
        crevice_cc=inputs.crevice_cc,
    ).clearance_cc


def _opening_after_mm2(inputs: Any) -> Number | None:
    kept = opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    return either(opening_mm2(inputs.new_gasket_bore_mm, None), kept)


def _after_whole_cc(inputs: Any) -> Number:
    """Return the clearance volume measured whole, with what every work changes."""
    left_cc: Number = inputs.clearance_cc + head_gains_cc(inputs)
    # The deck's part is that of the old bore before, of the new one after.
    before_mm, after_mm = counted(inputs.deck_mm), counted(deck_after_mm(inputs))
    if inputs.deck_mm is None and inputs.new_deck_mm is None:
        after_mm = -deck_lowered_mm(inputs)
    left_cc = left_cc + geometry.disc_volume_cc(inputs.new_bore_mm, after_mm)
    left_cc = left_cc - geometry.disc_volume_cc(inputs.bore_mm, before_mm)
    for new, old, sign in (
        (inputs.new_dish_cc, inputs.dish_cc, 1.0),
        (inputs.new_dome_cc, inputs.dome_cc, -1.0),
    ):
        if new is not None:
            left_cc = left_cc + sign * (new - counted(old))
    return left_cc + _gasket_gains_cc(inputs)


def _gasket_gains_cc(inputs: Any) -> Number:
    """Return what another head gasket gives to the clearance volume [cc]."""
    if inputs.new_gasket_bore_mm is None and inputs.new_gasket_thickness_mm is None:
        return 0.0
    old_mm2 = opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    new_mm2, old_mm = _opening_after_mm2(inputs), inputs.gasket_thickness_mm
    if old_mm2 is None or new_mm2 is None or old_mm is None:
        return 0.0
    new_mm = old_mm if inputs.new_gasket_thickness_mm is None else inputs.new_gasket_thickness_mm
    gained: Number = (new_mm2 * new_mm - old_mm2 * old_mm) / geometry.MM3_PER_CC
    return gained


def _old_gasket_not_told(inputs: Any) -> bool:
    """Return whether a gasket is changed whose old volume is not known."""
    if inputs.clearance_cc is None:
        return False
    opening = opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    return opening is None or inputs.gasket_thickness_mm is None


def _over_gasket(inputs: Any) -> Any:
    gasket_mm = gasket_after_mm(inputs)
    return False if gasket_mm is None else beyond(inputs.new_bore_mm, gasket_mm)


def _over_area(inputs: Any) -> Any:
    if inputs.new_gasket_bore_mm is not None:
        return False
    return beyond(geometry.piston_area_mm2(inputs.new_bore_mm), inputs.gasket_area_mm2)


def _half_told(given: Any, other: Any, old: Any) -> Any:
    """Return whether one part of the new crown is told and the old one's other part is not none."""
    return False if other is not None or old is None or given is None else old > 0.0


_OVERHANG = "the new bore exceeds the gasket bore: the gasket would overhang the cylinder"
_WIDER = "a gasket with a bore above the new cylinder bore, best 0.25 mm or more on each side"
_OLD_GASKET = (
    "another head gasket is told, and the size of the old one is not",
    "give gasket_bore (or its area) and gasket_thickness of the old one too",
)
_BOTH = "both dome and dish of the new piston, 0 for none"

RULES = (
    *gasket_rules("gasket_bore_mm", "bore_mm", "gasket_area_mm2"),
    Rule(
        ("new_bore_mm", "bore_mm"),
        lambda i: beyond(i.bore_mm, i.new_bore_mm),
        "the bore after machining is smaller than before",
        "a bore after machining at least as large as the one before",
    ),
    Rule(("new_bore_mm",), _over_gasket, _OVERHANG, _WIDER),
    Rule(("new_bore_mm", "gasket_area_mm2"), _over_area, _OVERHANG, _WIDER),
    Rule(
        ("new_gasket_bore_mm", "new_bore_mm"),
        lambda i: beyond(i.new_gasket_bore_mm, i.new_bore_mm + LARGEST_OVERSIZE_MM),
        "a gasket bore more than 12 mm above the cylinder is not this cylinder's gasket",
        "a gasket bore from the new cylinder bore up to 12 mm above it",
    ),
    Rule(
        ("new_dome_cc",),
        lambda i: _half_told(i.new_dome_cc, i.new_dish_cc, i.dish_cc),
        "the new piston's dome is told but not its dish, and the old piston has one",
        _BOTH,
    ),
    Rule(
        ("new_dish_cc",),
        lambda i: _half_told(i.new_dish_cc, i.new_dome_cc, i.dome_cc),
        "the new piston's dish is told but not its dome, and the old piston has one",
        _BOTH,
    ),
    Rule(
        ("clearance_cc", "new_bore_mm"),
        lambda i: False if i.deck_mm is not None else beyond(i.new_bore_mm, i.bore_mm),
        "with a wider bore the part of the clearance volume under the deck grows, and the deck is "
        "not told",
        "give deck too, 0 where the crown edge comes level with it",
    ),
    Rule(
        ("clearance_cc", "new_deck_mm"),
        lambda i: i.deck_mm is None,
        "the new piston's deck is told, that of the old one is not",
        "give deck too",
    ),
    Rule(("clearance_cc", "new_gasket_thickness_mm"), _old_gasket_not_told, *_OLD_GASKET),
    Rule(("clearance_cc", "new_gasket_bore_mm"), _old_gasket_not_told, *_OLD_GASKET),
    no_room("chamber_cc", before_cc),
    no_room("new_bore_mm", after_cc),
)


def _piston_taken_alike(inputs: Any, _: Any) -> Any:
    told = (inputs.new_dome_cc, inputs.new_dish_cc, inputs.new_deck_mm)
    if any(part is not None for part in told):
        return False
    return beyond(inputs.new_bore_mm, inputs.bore_mm)


def _flat_crown(inputs: Any, _: Any) -> bool:
    told = (inputs.dome_cc, inputs.dish_cc, inputs.new_dome_cc, inputs.new_dish_cc)
    return inputs.clearance_cc is None and all(part is None for part in told)


def _no_crevice(inputs: Any, _: Any) -> bool:
    return inputs.crevice_cc is None and inputs.clearance_cc is None


NOTICES = (
    Notice(
        "ratio_changed",
        "ratio_change",
        lambda _, o: abs(o.ratio_change) >= FELT,
        cited(
            "a changed ratio calls for a look at fuel octane, ignition timing and jetting: one "
            "more ratio asks for about 3 to 5 octane numbers; {heywood_octane}"
        ),
    ),
    Notice(
        "squish_band_step",
        "new_bore_mm",
        lambda i, _: beyond(i.new_bore_mm, i.bore_mm),
        "the head's squish band stays at the old bore: look for a step that traps mixture, and "
        "check squish clearance again",
    ),
    Notice(
        "piston_taken_alike",
        "new_dome_cc",
        _piston_taken_alike,
        "the new piston's crown and pin height are taken like the old one's: an oversize piston "
        "may have another dome, dish or pin height",
    ),
    Notice("crown_taken_flat", "dome_cc", _flat_crown, CROWN_FLAT),
    Notice("crevice_not_counted", "crevice_cc", _no_crevice, NO_CREVICE),
)
