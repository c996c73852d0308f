"""Points 13 to 16 of the order card: wash, what comes back, when to stop, the head."""

from ringland_service.core.calculations.order_card import _order_heads
from ringland_service.core.calculations.order_card import order_choices as choices
from ringland_service.core.calculations.order_card._order_inputs import Inputs
from ringland_service.core.calculations.order_card._order_sizes import Sizes, depths
from ringland_service.core.calculations.order_card._order_words import (
    USUAL,
    Missing,
    Phrase,
    Point,
    in_inches,
    mm,
    not_applicable,
    point,
)
from ringland_service.core.calculations.order_card.order_choices import (
    BORED,
    HEADS_ONLY,
    HONE,
    LIGHT_HONE,
    REPLATE,
    SLEEVE,
)

STOP = "stop and call"


def wash(i: Inputs) -> Point:
    """Return point 13: how it is washed and packed."""
    grit = "no grit left in guides and oil ways" if i.work == HEADS_ONLY else "no hone grit left"
    return point("wash", "hot water and soap, brush, oil, bag", grit)


def hand_back(i: Inputs) -> Point:
    """Return point 14: what is measured and sent back with the parts."""
    if i.work == HEADS_ONLY:
        measured = "every figure of point 16 as measured, what was taken off the face, instrument"
        return point("return", measured, "name")
    where: Phrase = Missing("depths of the readings")
    if i.proof_depths_mm is not None:
        where = f"bore readings on both axes at {depths(i.proof_depths_mm)} from the deck"
    return point(
        "return",
        where,
        "with temperature, instrument, setting ring or micrometer used, and name",
        "plating proven by eddy-current probe or ball micrometer at the ports and mid-bore"
        if i.work == REPLATE
        else None,
    )


def stop_orders(i: Inputs, sizes: Sizes) -> Point:
    """Return point 15: when the machinist stops and calls."""
    if i.work == HEADS_ONLY:
        return point("stop orders", f"if a limit of point 16 cannot be kept, {STOP}")
    if i.work == REPLATE:
        cracked = f"if a port bridge is broken or the cylinder is cracked, {STOP}"
        return point("stop orders", cracked, f"if the plating does not hold, {STOP}")
    if i.work == LIGHT_HONE:
        left = f"if glaze, a score or a ridge is left after that, {STOP}"
        return point("stop orders", left)
    return point("stop orders", *_sleeve(i), _clean_up(i, sizes), _wall(i))


def _sleeve(i: Inputs) -> tuple[Phrase, ...]:
    if i.work != SLEEVE:
        return ()
    return (f"if the cylinder is cracked or cannot hold the interference, {STOP}",)


def _clean_up(i: Inputs, sizes: Sizes) -> Phrase:
    size = sizes.high_mm if i.work == HONE else sizes.bore_to_mm
    if size is None:
        return Missing("size at which it must clean up")
    where = f"{mm(size)}{in_inches(i.inches_too, size)}"
    return f"if it does not clean up at {where}, {STOP}"


def _wall(i: Inputs) -> Phrase:
    if i.work not in BORED:
        return None
    if i.wall_floor_mm is not None:
        return f"if the wall is under {mm(i.wall_floor_mm)}, {STOP}"
    usual = choices.usual_wall_mm(i.liner_kind) if i.usual_figures else None
    if usual is None:
        return Missing("wall that must be left")
    return f"if the wall is under {mm(usual)} {USUAL}, {STOP}"


def head(i: Inputs) -> Point:
    """Return point 16: the head."""
    if i.heads is not None:
        return point("head", *_order_heads.said(i.heads))
    if i.work == HEADS_ONLY:
        return point("head", Missing("what is ordered of the head: give the section heads"))
    return not_applicable("head", "no head sent")
