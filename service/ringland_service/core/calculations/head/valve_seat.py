"""C32: width and place of a valve's contact on its seat, and the cuts that narrow it."""

from ringland_service.core.calculations.head import _seat_checks as judged
from ringland_service.core.calculations.head._seat_cuts import cuts, needed
from ringland_service.core.calculations.head._valve_words import VALVE
from ringland_service.core.declare import Calculation, choice, kinds, quantity, record, result
from ringland_service.core.engines.choices import FIT
from ringland_service.core.formulas import valves
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import valves as sizes

GEOMETRY = "plane geometry"
TOP_CHANGE = (
    "2 * {} * cosd(seat_angle_deg) * cosd(top_cutter_deg) / sind(seat_angle_deg - top_cutter_deg)"
)
BOTTOM_CHANGE = (
    "2 * {} * cosd(seat_angle_deg) * cosd(bottom_cutter_deg)"
    " / sind(bottom_cutter_deg - seat_angle_deg)"
)
TOP_FEED = (
    "({}) * sind(seat_angle_deg - top_cutter_deg)"
    " / (2 * cosd(seat_angle_deg) * cosd(top_cutter_deg))"
)
BOTTOM_FEED = (
    "({}) * sind(bottom_cutter_deg - seat_angle_deg)"
    " / (2 * cosd(seat_angle_deg) * cosd(bottom_cutter_deg))"
)


@record
class Inputs:
    """The blue mark on valve and seat, the valve, and the cutters at hand."""

    valve: str = choice("which valve", VALVE, example="exhaust")
    fit: str = choice(
        "which limits apply to the width as found", FIT, example="used", default="used"
    )
    contact_outer_dia_mm: Number = quantity(
        sizes.SEAT_DIAMETER, "outer diameter of the contact, by marking blue"
    )
    contact_inner_dia_mm: Number = quantity(
        sizes.SEAT_DIAMETER, "inner diameter of the contact, by marking blue", example=23.3
    )
    seat_angle_deg: Number = quantity(
        sizes.SEAT_ANGLE, "angle of the seat, from the plane across the valve's axis"
    )
    valve_head_dia_mm: Number | None = quantity(
        sizes.SEAT_DIAMETER, "diameter of the valve head", example=26.5, default=None
    )
    face_width_mm: Number | None = quantity(
        sizes.SEAT_WIDTH,
        "width of the valve's face along it, from the rim inwards",
        example=2.6,
        default=None,
    )
    rim_thickness_mm: Number | None = quantity(
        sizes.RIM, "thickness of the valve's rim, along the valve", default=None
    )
    seat_runout_tir_mm: Number | None = quantity(
        lengths.RUN_OUT,
        "run-out of the seat about the pilot in its guide, total indicator reading",
        default=None,
    )
    top_cutter_deg: Number | None = quantity(
        sizes.CUTTER_ANGLE,
        "angle of the top cutter, which lowers the outer edge; flatter than the seat",
        default=None,
    )
    bottom_cutter_deg: Number | None = quantity(
        sizes.CUTTER_ANGLE,
        "angle of the bottom cutter, which raises the inner edge; steeper than the seat",
        example=60.0,
        default=None,
    )
    feed_mm: Number | None = quantity(
        sizes.FEED, "feed of each cutter along the valve, from where it touches", default=None
    )
    wanted_outer_dia_mm: Number | None = quantity(
        sizes.SEAT_DIAMETER,
        "outer diameter of the contact wanted, for the feed of the top cutter",
        example=25.3,
        default=None,
    )
    wanted_width_mm: Number | None = quantity(
        sizes.SEAT_WIDTH,
        "width of the contact wanted, for the feed of the bottom cutter",
        default=None,
    )


@record
class Outputs:
    """Widths are along the face; across the valve they are shorter by the cosine of the angle."""

    width_mm: Number = result(
        "width of the contact along its face",
        kind=kinds.LENGTH,
        digits=2,
        formula="(contact_outer_dia_mm - contact_inner_dia_mm) / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
    )
    contact_mean_dia_mm: Number = result(
        "mean diameter of the contact",
        kind=kinds.LENGTH,
        digits=2,
        formula="(contact_outer_dia_mm + contact_inner_dia_mm) / 2",
        source=GEOMETRY,
    )
    outer_edge_inside_valve_rim_mm: Number | None = result(
        "outer edge of the contact inside the valve's rim, radial",
        kind=kinds.LENGTH,
        digits=2,
        formula="(valve_head_dia_mm - contact_outer_dia_mm) / 2",
        source=GEOMETRY,
        default=None,
    )
    contact_place: Number | None = result(
        "where the middle of the contact stands on the valve's face: 0 at the rim, 1 at its "
        "inner edge",
        digits=2,
        formula="(valve_head_dia_mm - contact_mean_dia_mm)"
        " / (2 * cosd(seat_angle_deg) * face_width_mm)",
        source=GEOMETRY,
        default=None,
    )
    outer_dia_drop_per_feed_mm: Number | None = result(
        "what the feed of the top cutter takes off the outer diameter",
        kind=kinds.LENGTH,
        digits=3,
        formula=TOP_CHANGE.format("feed_mm"),
        source=GEOMETRY,
        default=None,
    )
    width_after_top_cut_mm: Number | None = result(
        "width after the top cutter alone",
        kind=kinds.LENGTH,
        digits=2,
        formula="width_mm - outer_dia_drop_per_feed_mm / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
        default=None,
    )
    inside_rim_after_top_cut_mm: Number | None = result(
        "outer edge inside the valve's rim after the top cutter, radial",
        kind=kinds.LENGTH,
        digits=2,
        formula="outer_edge_inside_valve_rim_mm + outer_dia_drop_per_feed_mm / 2",
        source=GEOMETRY,
        default=None,
    )
    inner_dia_rise_per_feed_mm: Number | None = result(
        "what the feed of the bottom cutter adds to the inner diameter",
        kind=kinds.LENGTH,
        digits=3,
        formula=BOTTOM_CHANGE.format("feed_mm"),
        source=GEOMETRY,
        default=None,
    )
    width_after_bottom_cut_mm: Number | None = result(
        "width after the bottom cutter alone",
        kind=kinds.LENGTH,
        digits=2,
        formula="width_mm - inner_dia_rise_per_feed_mm / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
        default=None,
    )
    width_after_both_mm: Number | None = result(
        "width after both cutters",
        kind=kinds.LENGTH,
        digits=2,
        formula="width_after_top_cut_mm - inner_dia_rise_per_feed_mm / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
        default=None,
    )
    top_feed_needed_mm: Number | None = result(
        "feed of the top cutter down to the wanted outer diameter",
        kind=kinds.LENGTH,
        digits=3,
        formula=TOP_FEED.format("contact_outer_dia_mm - wanted_outer_dia_mm"),
        source=GEOMETRY,
        default=None,
    )
    bottom_feed_needed_mm: Number | None = result(
        "feed of the bottom cutter to the wanted width, after the top cutter where an outer "
        "diameter is wanted; below zero: too narrow already, widen with the seat's own cutter",
        kind=kinds.LENGTH,
        digits=3,
        basis="(outer diameter wanted, else as found − 2·wanted_width·cos(seat_angle) − "
        "contact_inner_dia)·sin(bottom_cutter − seat_angle) / (2·cos(seat_angle)·"
        "cos(bottom_cutter))",
        source=GEOMETRY,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the contact's width and place, and what the cutters do to it."""
    i = inputs
    outer, inner = i.contact_outer_dia_mm, i.contact_inner_dia_mm
    mean, head = (outer + inner) / 2, i.valve_head_dia_mm
    inside = None if head is None else valves.inside_rim_mm(head, outer)
    return Outputs(
        width_mm=valves.width_along_face_mm(outer, inner, i.seat_angle_deg),
        contact_mean_dia_mm=mean,
        outer_edge_inside_valve_rim_mm=inside,
        contact_place=None
        if head is None or i.face_width_mm is None
        else valves.place_on_face(head, mean, i.face_width_mm, i.seat_angle_deg),
        **cuts(i, inside),
        **needed(i),
    )


CALCULATION = Calculation(
    name="valve-seat",
    number="C32",
    stage="head",
    title="Valve seat width and narrowing cuts",
    summary="Width of the contact along its face and its place on the valve, what a feed of the "
    "top and the bottom cutter does to it, and the feed that a wanted contact takes. Feed in small "
    "bites; lapping does not cure width; titanium and coated valves are neither lapped nor "
    "refaced. After any valve work a leak test: solvent in the port and no drip for 30 to 60 s, or "
    "a vacuum on the port that holds (common practice).",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "seat_cutting", "exhaust_valves"),
)
