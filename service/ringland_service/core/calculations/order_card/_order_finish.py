"""Points 9 to 12 of the order card: crosshatch, torque plate, ports, mouths and deck."""

from ringland_service.core.calculations.machining import crosshatch as hatch
from ringland_service.core.calculations.order_card import order_choices as choices
from ringland_service.core.calculations.order_card._order_inputs import Inputs
from ringland_service.core.calculations.order_card._order_job import ONLY_HEADS
from ringland_service.core.calculations.order_card._order_words import (
    USUAL,
    Missing,
    Phrase,
    Point,
    Range,
    chamfer,
    given_or_usual,
    mm,
    not_applicable,
    point,
    tidy,
    written,
)
from ringland_service.core.calculations.order_card.order_choices import (
    HEADS_ONLY,
    LIGHT_HONE,
    REPLATE,
)

PLATERS_OWN = "finished by the plating maker's method"


def surface(i: Inputs) -> Point:
    """Return point 9: crosshatch angle, surface, kind of rings."""
    heading = "crosshatch"
    if i.work == HEADS_ONLY:
        return not_applicable(heading, ONLY_HEADS)
    rings = None if i.ring_kind is None else f"for {hatch.RING_KIND[i.ring_kind]}s"
    if i.work == REPLATE:
        return point(heading, f"surface {PLATERS_OWN}", tidy(i.finish) or None, rings)
    return point(heading, _angle(i), _stroke(i), _surface(i), rings or Missing("kind of rings"))


def _angle(i: Inputs) -> Phrase:
    usual = choices.usual_angle_deg(i.cycle) if i.usual_figures else None
    wanted = i.included_angle_deg
    included = given_or_usual(wanted, wanted, usual)
    if included is None or included.low is None or included.high is None:
        return Missing("included angle of the crosshatch")
    whole, each = Range(included.low, included.high), Range(included.low / 2, included.high / 2)
    lines = f"each line {each.degrees()} from horizontal{included.standing}"
    return f"included angle {whole.degrees()}, {lines}"


def _stroke(i: Inputs) -> Phrase:
    if i.stroke_drive in (None, "unknown"):
        return "write down how the stroke is driven: at constant speed, or by a crank"
    return f"stroke: {hatch.STROKE_DRIVE[i.stroke_drive]}"


def _surface(i: Inputs) -> Phrase:
    if tidy(i.finish):
        return f"surface {tidy(i.finish)}"
    if i.ring_kind is None or not i.usual_figures:
        return Missing("surface wanted, as Ra or Rk with its unit")
    return f"surface {hatch.FINISH[i.ring_kind]} {USUAL}"


def torque_plate(i: Inputs) -> Point:
    """Return point 10: torque plate, gasket, torque and studs, cold or hot."""
    heading = "torque plate"
    if i.work == HEADS_ONLY:
        return not_applicable(heading, ONLY_HEADS)
    honed = _honed(i)
    if i.torque_plate is None:
        return point(heading, Missing("torque plate, yes or no"), honed)
    if not i.torque_plate:
        return point(heading, "torque plate: NO", honed)
    return point(
        heading,
        "torque plate: YES",
        written(i.gasket, "head gasket ", "kind of head gasket"),
        Missing("torque of the studs") if i.torque_nm is None else f"torque {i.torque_nm:.1f} N·m",
        written(i.studs, "studs ", "size of the studs"),
        honed,
    )


def _honed(i: Inputs) -> Phrase:
    if i.work == REPLATE:
        return None
    if i.honed is None:
        return Missing("cold or hot while it is honed")
    return f"honed {choices.HONED[i.honed]}"


def ports(i: Inputs) -> Point:
    """Return point 11: the ports of a two-stroke."""
    if i.work == HEADS_ONLY:
        return not_applicable("ports", ONLY_HEADS)
    if i.cycle is None:
        return point("ports", Missing("four-stroke or two-stroke; a two-stroke's ports"))
    if i.cycle == "four_stroke":
        return not_applicable("ports", "four-stroke")
    return point("ports", _port_chamfer(i), _bridge(i), "deburr the lands of the ring pins")


def _port_chamfer(i: Inputs) -> Phrase:
    usual = choices.PORT_CHAMFER_MM if i.usual_figures else None
    usual_angle = choices.PORT_CHAMFER_DEG if i.usual_figures else None
    width = given_or_usual(i.port_chamfer_low_mm, i.port_chamfer_high_mm, usual)
    angle = given_or_usual(i.port_chamfer_angle_deg, i.port_chamfer_angle_deg, usual_angle)
    edges = "all ports, top and bottom edges,"
    return chamfer(width, angle, edges, "width and angle of the chamfer at the ports")


def _bridge(i: Inputs) -> Phrase:
    if i.exhaust_bridge is False:
        return "no exhaust bridge"
    usual = choices.BRIDGE_RELIEF_MM if i.usual_figures else None
    relief = given_or_usual(i.bridge_relief_low_mm, i.bridge_relief_high_mm, usual)
    if relief is None:
        return Missing("relief of the exhaust bridge, if there is one")
    where = "the exhaust bridge" if i.exhaust_bridge else "the exhaust bridge, if there is one,"
    return f"relieve {where} by {relief.mm()}"


def mouths(i: Inputs) -> Point:
    """Return point 12: chamfer at both mouths, and the deck."""
    if i.work == HEADS_ONLY:
        return not_applicable("mouths and deck", ONLY_HEADS)
    if i.work == LIGHT_HONE and i.mouth_chamfer_low_mm is None:
        leave = "leave both mouths as they are"
        return point("mouths and deck", leave, _deck(i.deck_height_mm, i.deck_cut_mm))
    usual = choices.MOUTH_CHAMFER_MM if i.usual_figures else None
    usual_angle = choices.MOUTH_CHAMFER_DEG if i.usual_figures else None
    width = given_or_usual(i.mouth_chamfer_low_mm, i.mouth_chamfer_high_mm, usual)
    angle = given_or_usual(i.mouth_chamfer_angle_deg, i.mouth_chamfer_angle_deg, usual_angle)
    cut = chamfer(width, angle, "both mouths", "width and angle of the chamfer at the mouths")
    return point("mouths and deck", cut, _deck(i.deck_height_mm, i.deck_cut_mm))


def _deck(height_mm: float | None, cut_mm: float | None) -> str:
    if cut_mm is None:
        stays = "" if height_mm is None else f", its height stays {mm(height_mm)}"
        return f"do not touch the deck face{stays}"
    if height_mm is None:
        return f"take {mm(cut_mm)} off the deck face, no more"
    left = f"deck height {mm(height_mm)} before, {mm(height_mm - cut_mm)} after"
    return f"take {mm(cut_mm)} off the deck face, no more: {left}"
