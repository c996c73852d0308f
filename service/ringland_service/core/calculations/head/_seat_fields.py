"""What a valve's contact on its seat is worked out from, and what is answered."""

from ringland_service.core.calculations.head._valve_words import VALVE
from ringland_service.core.declare import choice, kinds, quantity, record, result
from ringland_service.core.engines.choices import FIT
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

    valve_kind: str = choice("which valve", VALVE, example="exhaust")
    condition: str = choice(
        "which limits apply to the width as found", FIT, example="used", default="used"
    )
    seat_outer_diameter_mm: Number = quantity(
        sizes.SEAT_DIAMETER, "outer diameter of the contact, by marking blue"
    )
    seat_inner_diameter_mm: Number = quantity(
        sizes.SEAT_DIAMETER, "inner diameter of the contact, by marking blue", example=23.3
    )
    seat_angle_deg: Number = quantity(
        sizes.SEAT_ANGLE, "angle of the seat, from the plane across the valve's axis"
    )
    valve_head_diameter_mm: Number | None = quantity(
        sizes.SEAT_DIAMETER, "diameter of the valve head", example=26.5, default=None
    )
    face_width_mm: Number | None = quantity(
        sizes.SEAT_WIDTH,
        "width of the valve's face along it, from the rim inwards",
        example=2.6,
        default=None,
    )
    rim_mm: Number | None = quantity(
        sizes.RIM, "thickness of the valve's rim, along the valve", default=None
    )
    seat_runout_mm: Number | None = quantity(
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
    wanted_outer_diameter_mm: Number | None = quantity(
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
        decimals=2,
        formula="(seat_outer_diameter_mm - seat_inner_diameter_mm) / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
    )
    contact_mean_diameter_mm: Number = result(
        "mean diameter of the contact",
        kind=kinds.LENGTH,
        decimals=2,
        formula="(seat_outer_diameter_mm + seat_inner_diameter_mm) / 2",
        source=GEOMETRY,
    )
    outer_edge_inside_valve_rim_mm: Number | None = result(
        "outer edge of the contact inside the valve's rim, radial",
        kind=kinds.LENGTH,
        decimals=2,
        formula="(valve_head_diameter_mm - seat_outer_diameter_mm) / 2",
        source=GEOMETRY,
        default=None,
    )
    contact_place: Number | None = result(
        "where the middle of the contact stands on the valve's face: 0 at the rim, 1 at its "
        "inner edge",
        decimals=2,
        formula="(valve_head_diameter_mm - contact_mean_diameter_mm)"
        " / (2 * cosd(seat_angle_deg) * face_width_mm)",
        source=GEOMETRY,
        default=None,
    )
    outer_diameter_drop_per_feed_mm: Number | None = result(
        "what the feed of the top cutter takes off the outer diameter",
        kind=kinds.LENGTH,
        decimals=3,
        formula=TOP_CHANGE.format("feed_mm"),
        source=GEOMETRY,
        default=None,
    )
    width_after_top_cut_mm: Number | None = result(
        "width after the top cutter alone",
        kind=kinds.LENGTH,
        decimals=2,
        formula="width_mm - outer_diameter_drop_per_feed_mm / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
        default=None,
    )
    inside_rim_after_top_cut_mm: Number | None = result(
        "outer edge inside the valve's rim after the top cutter, radial",
        kind=kinds.LENGTH,
        decimals=2,
        formula="outer_edge_inside_valve_rim_mm + outer_diameter_drop_per_feed_mm / 2",
        source=GEOMETRY,
        default=None,
    )
    inner_diameter_rise_per_feed_mm: Number | None = result(
        "what the feed of the bottom cutter adds to the inner diameter",
        kind=kinds.LENGTH,
        decimals=3,
        formula=BOTTOM_CHANGE.format("feed_mm"),
        source=GEOMETRY,
        default=None,
    )
    width_after_bottom_cut_mm: Number | None = result(
        "width after the bottom cutter alone",
        kind=kinds.LENGTH,
        decimals=2,
        formula="width_mm - inner_diameter_rise_per_feed_mm / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
        default=None,
    )
    width_after_both_mm: Number | None = result(
        "width after both cutters",
        kind=kinds.LENGTH,
        decimals=2,
        formula="width_after_top_cut_mm"
        " - inner_diameter_rise_per_feed_mm / (2 * cosd(seat_angle_deg))",
        source=GEOMETRY,
        default=None,
    )
    top_feed_needed_mm: Number | None = result(
        "feed of the top cutter down to the wanted outer diameter",
        kind=kinds.LENGTH,
        decimals=3,
        formula=TOP_FEED.format("seat_outer_diameter_mm - wanted_outer_diameter_mm"),
        source=GEOMETRY,
        default=None,
    )
    bottom_feed_needed_mm: Number | None = result(
        "feed of the bottom cutter to the wanted width, after the top cutter where an outer "
        "diameter is wanted; below zero: too narrow already, widen with the seat's own cutter",
        kind=kinds.LENGTH,
        decimals=3,
        basis="(outer diameter wanted, else as found − 2·wanted_width·cos(seat_angle) − "
        "seat_inner_diameter)·sin(bottom_cutter − seat_angle) / (2·cos(seat_angle)·"
        "cos(bottom_cutter))",
        source=GEOMETRY,
        default=None,
    )
