"""Clearance volume before and after an overbore; what contradicts it, and what it warns of."""

from typing import Any

from ringland_service.core.calculations.geometry._parts import (
    CROWN_FLAT,
    LARGEST_OVERSIZE_MM,
    NO_CREVICE,
    Parts,
    gasket_rules,
    no_room,
    opening_mm2,
    summed,
)
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas import geometry
from ringland_service.core.numbers import Number
from ringland_service.core.verdicts import beyond

# A change of the ratio that is worth a look at fuel and mixture: common practice, no source.
FELT = 0.05


def either(new: Number | None, old: Number | None) -> Number | None:
    """Return what is fitted after: the new, else the old."""
    return old if new is None else new


def gasket_after_mm(inputs: Any) -> Number | None:
    """Return the bore of the gasket fitted after, or None where only an area is known."""
    return either(inputs.new_gasket_bore_mm, inputs.gasket_bore_mm)


def before(inputs: Any) -> Parts | None:
    """Return the parts of the clearance volume before, or None without a gasket opening."""
    opening = opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    if opening is None:
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
    )


def after(inputs: Any) -> Parts | None:
    """Return the parts of the clearance volume after, or None without a gasket opening."""
    kept = opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    opening = either(opening_mm2(inputs.new_gasket_bore_mm, None), kept)
    thickness_mm = either(inputs.new_gasket_thickness_mm, inputs.gasket_thickness_mm)
    deck_mm = either(inputs.new_deck_mm, inputs.deck_mm)
    if opening is None or thickness_mm is None or deck_mm is None:
        return None
    return summed(
        bore_mm=inputs.new_bore_mm,
        chamber_cc=inputs.chamber_cc,
        opening_mm2=opening,
        thickness_mm=thickness_mm,
        deck_mm=deck_mm,
        dome_cc=either(inputs.new_dome_cc, inputs.dome_cc),
        dish_cc=either(inputs.new_dish_cc, inputs.dish_cc),
        crevice_cc=inputs.crevice_cc,
    )


def _left(parts: Parts | None) -> Number | None:
    return None if parts is None else parts.clearance_cc


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
    no_room("chamber_cc", lambda i: _left(before(i))),
    no_room("new_bore_mm", lambda i: _left(after(i))),
)


def _piston_taken_alike(inputs: Any, _: Any) -> bool:
    told = (inputs.new_dome_cc, inputs.new_dish_cc, inputs.new_deck_mm)
    return all(part is None for part in told)


def _flat_crown(inputs: Any, _: Any) -> bool:
    told = (inputs.dome_cc, inputs.dish_cc, inputs.new_dome_cc, inputs.new_dish_cc)
    return all(part is None for part in told)


NOTICES = (
    Notice(
        "ratio_changed",
        "ratio_change",
        lambda _, o: abs(o.ratio_change) >= FELT,
        "a changed ratio calls for a look at fuel octane, ignition timing and jetting: one more "
        "ratio asks for about 3 to 5 octane numbers (Heywood, from memory)",
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
    Notice("crevice_not_counted", "crevice_cc", lambda i, _: i.crevice_cc is None, NO_CREVICE),
)
