"""The verdicts on a valve's contact, what the sizes must agree with, and what is warned of."""

from typing import Any

import numpy as np

from ringland_service.core.declare import Check, Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit

# common practice, no source
SMALL_HEAD_MM = 30.0
ANGLES_APART_DEG = 2.0
MOST_OVER_FACE_MM = 20.0


def _as_found(inputs: Any, _: Any) -> Limit:
    return LIMITS[f"seat_width.{inputs.fit}.{inputs.valve}"].limit()


def _new(inputs: Any, _: Any) -> Limit:
    return LIMITS[f"seat_width.new.{inputs.valve}"].limit()


def _place(_: Any, __: Any) -> Limit:
    return LIMITS["contact_place"].limit()


def _runout(_: Any, __: Any) -> Limit:
    return LIMITS["seat_runout"].limit()


def _rim(inputs: Any, _: Any) -> Limit:
    """Return the limit of the rim; that of a large valve where the head is not known."""
    small, large = LIMITS["valve_rim.small"], LIMITS["valve_rim.large"]
    head = inputs.valve_head_dia_mm
    if head is None or not isinstance(head, np.ndarray):
        return (small if head is not None and head < SMALL_HEAD_MM else large).limit()
    low = np.where(head < SMALL_HEAD_MM, float(small.low or 0), float(large.low or 0))
    return Limit(low, None, large.standing, f"rim by the size of the head; {large.source}")


SETTLE_WIDTH = "blue the contact again and read both edges with a magnifier at four places"
CHECKS = (
    Check("seat_width", "width_mm", "width of the contact as found", SETTLE_WIDTH, _as_found),
    Check(
        "seat_width_after_top_cut",
        "width_after_top_cut_mm",
        "width after the top cutter alone",
        SETTLE_WIDTH,
        _new,
    ),
    Check(
        "seat_width_after_both",
        "width_after_both_mm",
        "width after both cutters",
        SETTLE_WIDTH,
        _new,
    ),
    Check(
        "contact_place",
        "contact_place",
        "middle of the contact on the valve's face",
        "blue the valve and measure from its rim to both edges of the contact",
        _place,
    ),
    Check(
        "seat_runout",
        "seat_runout_tir_mm",
        "run-out of the seat",
        "pilot fast in its guide, three turns, mean of the swings",
        _runout,
    ),
    Check(
        "valve_rim",
        "rim_thickness_mm",
        "thickness of the valve's rim",
        "calliper at four places, the thinnest counts",
        _rim,
        "a thin rim burns or breaks off",
    ),
)


def _wanted_gone(i: Any) -> Any:
    outer = i.contact_outer_dia_mm if i.wanted_outer_dia_mm is None else i.wanted_outer_dia_mm
    return at_most(outer, i.contact_inner_dia_mm)


def _top_too_steep(i: Any) -> Any:
    return beyond(i.top_cutter_deg + ANGLES_APART_DEG, i.seat_angle_deg)


def _bottom_too_flat(i: Any) -> Any:
    return beyond(i.seat_angle_deg + ANGLES_APART_DEG, i.bottom_cutter_deg)


RULES = (
    Rule(
        ("contact_inner_dia_mm", "contact_outer_dia_mm"),
        lambda i: at_most(i.contact_outer_dia_mm, i.contact_inner_dia_mm),
        "the inner diameter of the contact is not under its outer one",
        "the smaller diameter as contact_inner_dia",
    ),
    Rule(
        ("contact_inner_dia_mm", "contact_outer_dia_mm"),
        lambda i: beyond(i.contact_outer_dia_mm, i.contact_inner_dia_mm + MOST_OVER_FACE_MM),
        "the contact would be more than 10 mm wide across the valve",
        "both diameters of one contact; check the units",
    ),
    Rule(
        ("contact_outer_dia_mm", "valve_head_dia_mm"),
        lambda i: beyond(i.contact_outer_dia_mm, i.valve_head_dia_mm),
        "the contact reaches beyond the valve head",
        "the blue mark on the valve, which ends at its rim at most",
    ),
    Rule(
        ("top_cutter_deg", "seat_angle_deg"),
        _top_too_steep,
        "the top cutter is not flatter than the seat by 2° at least",
        "a flatter cutter, such as 30° for a 45° seat; angles from the plane across the valve",
    ),
    Rule(
        ("bottom_cutter_deg", "seat_angle_deg"),
        _bottom_too_flat,
        "the bottom cutter is not steeper than the seat by 2° at least",
        "a steeper cutter, such as 60° for a 45° seat; angles from the plane across the valve",
    ),
    Rule(
        ("feed_mm",),
        lambda i: i.top_cutter_deg is None and i.bottom_cutter_deg is None,
        "a feed without a cutter cuts nothing",
        "top_cutter, bottom_cutter, or both",
    ),
    Rule(
        ("wanted_outer_dia_mm",),
        lambda i: i.top_cutter_deg is None,
        "a wanted outer diameter takes a top cutter",
        "give top_cutter too",
    ),
    Rule(
        ("wanted_width_mm",),
        lambda i: i.bottom_cutter_deg is None,
        "a wanted width takes a bottom cutter",
        "give bottom_cutter too",
    ),
    Rule(
        ("wanted_outer_dia_mm", "contact_outer_dia_mm"),
        lambda i: beyond(i.wanted_outer_dia_mm, i.contact_outer_dia_mm),
        "a top cutter lowers the outer diameter, it cannot raise it",
        "a wanted diameter under the one found; the seat's own cutter widens it",
    ),
    Rule(
        ("wanted_outer_dia_mm", "contact_inner_dia_mm"),
        _wanted_gone,
        "the wanted outer diameter leaves no contact",
        "a wanted diameter above contact_inner_dia",
    ),
)


def _too_narrow(_: Any, o: Any) -> Any:
    return False if o.bottom_feed_needed_mm is None else o.bottom_feed_needed_mm < 0


NOTICES = (
    Notice(
        "seat_too_narrow",
        "bottom_feed_needed_mm",
        _too_narrow,
        "narrower than wanted without the bottom cutter: widen the contact with the seat's own "
        "cutter, a little at a time",
    ),
    Notice(
        "rim_without_head",
        "rim_thickness_mm",
        lambda i, _: i.rim_thickness_mm is not None and i.valve_head_dia_mm is None,
        "the size of the valve head is not told, so the rim of a large valve is asked for",
    ),
    Notice(
        "seat_then_lash",
        "feed_mm",
        lambda i, _: i.feed_mm is not None or i.wanted_width_mm is not None,
        "cutting lets the valve sink: lash, installed height and chamber change; ask valve-sink",
    ),
)
