"""What pin, piston and small end must agree with, and what an answer on them warns of."""

from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond

# common practice, no source
MOST_ROOM_MM = 0.5
PRESS_MM = 0.10
TIGHT_MM = 0.03
PLAIN, PRESSED, NEEDLE = "plain", "press_fit", "needle"
SMALL_END: dict[str, str] = {
    PLAIN: "plain or bushed: the pin turns in it",
    PRESSED: "press fit: the pin is held by the rod",
    NEEDLE: "needle bearing",
}

RULES = (
    Rule(
        ("pin_worn_mm", "pin_mm"),
        lambda i: beyond(i.pin_worn_mm, i.pin_mm),
        "the worn pin is larger than the unworn one",
        "pin where nothing rubs, and pin_worn, its smallest diameter",
    ),
    Rule(
        ("pin_mm", "piston_pin_bore_mm"),
        lambda i: beyond(i.pin_mm, i.piston_pin_bore_mm + TIGHT_MM),
        "the pin is more than 0.03 mm larger than its bore in the piston",
        "a pin that goes into this piston; check both sizes and their units",
    ),
    Rule(
        ("pin_mm", "piston_pin_bore_mm"),
        lambda i: beyond(i.piston_pin_bore_mm, i.pin_mm + MOST_ROOM_MM),
        "the piston's pin bore is more than 0.5 mm larger than the pin",
        "pin and piston of one engine; check both sizes and their units",
    ),
    Rule(
        ("small_end_bore_mm",),
        lambda i: i.small_end == NEEDLE,
        "with needles between them, small end less pin is no clearance",
        "leave small_end_bore out: needles, pin and rod are a matched set, judged by their marks",
    ),
    Rule(
        ("pin_mm", "small_end_bore_mm"),
        lambda i: beyond(i.small_end_bore_mm, i.pin_mm + MOST_ROOM_MM),
        "the small end is more than 0.5 mm larger than the pin",
        "pin and rod of one engine, the bush in place; small_end: needle where there are needles",
    ),
    Rule(
        ("pin_mm", "small_end_bore_mm"),
        lambda i: beyond(i.pin_mm, i.small_end_bore_mm + PRESS_MM),
        "the pin is more than 0.10 mm larger than the small end: no press fit is that tight",
        "pin and rod of one engine; check both sizes and their units",
    ),
)


def _loose_press_fit(i: Any, o: Any) -> Any:
    if i.small_end != PRESSED or o.worst_small_end_mm is None:
        return False
    worn = i.pin_mm if i.pin_worn_mm is None else i.pin_worn_mm
    return at_most(worn, i.small_end_bore_mm)


def _tight_plain(i: Any, o: Any) -> Any:
    if i.small_end != PLAIN or o.pin_small_end_mm is None:
        return False
    # The two sizes, and not their difference: alike is alike in every unit.
    return at_most(i.small_end_bore_mm, i.pin_mm)


NOTICES = (
    Notice(
        "smallest_pin_not_given",
        "pin_worn_mm",
        lambda i, _: i.pin_worn_mm is None,
        "pin taken as unworn: measure it at the centre and at both ends, on two axes, and give "
        "the smallest",
    ),
    Notice(
        "press_fit_loose",
        "worst_small_end_mm",
        _loose_press_fit,
        "a press-fit pin that is not larger than the small end moves in it: rod or pin is done",
    ),
    Notice(
        "pin_tight_in_small_end",
        "pin_small_end_mm",
        _tight_plain,
        "no clearance in a plain small end: is it a press fit? Then say so; else it will seize",
    ),
    Notice(
        "press_fit_is_negative",
        "small_end",
        lambda i, _: i.small_end == PRESSED,
        "a press fit has a clearance below zero; only the maker's interference judges it",
    ),
    Notice(
        "needle_small_end",
        "small_end",
        lambda i, _: i.small_end == NEEDLE,
        "needle small end: pin, needles and rod are a matched set; look for marks, pits and blue, "
        "and fit new needles with a new pin",
    ),
    Notice(
        "pin_blued",
        "heat_marks",
        lambda i, _: bool(i.heat_marks),
        "blue heat marks: the pin has lost its hardness; replace it whatever it measures, and find "
        "out why it ran dry",
    ),
)
