"""What narrowing cuts do to a seat, and the feed that a wanted contact takes."""

from typing import Any

from ringland_service.core.formulas import valves
from ringland_service.core.formulas.elementary import cosine_deg
from ringland_service.core.numbers import Number


def cuts(i: Any, inside_rim_mm: Number | None) -> dict[str, Number]:
    """Return the results of one feed of each cutter that is told of."""
    if i.feed_mm is None:
        return {}
    drop, rise = _change_mm(i, i.top_cutter_deg), _change_mm(i, i.bottom_cutter_deg)
    found: dict[str, Number] = {}
    if drop is not None:
        found["outer_dia_drop_per_feed_mm"] = drop
        found["width_after_top_cut_mm"] = _width_mm(i, drop)
        if inside_rim_mm is not None:
            found["inside_rim_after_top_cut_mm"] = inside_rim_mm + drop / 2
    if rise is not None:
        found["inner_dia_rise_per_feed_mm"] = rise
        found["width_after_bottom_cut_mm"] = _width_mm(i, rise)
    if drop is not None and rise is not None:
        found["width_after_both_mm"] = _width_mm(i, drop + rise)
    return found


def _change_mm(i: Any, cutter_deg: Number | None) -> Number | None:
    if cutter_deg is None:
        return None
    return valves.edge_change_mm(i.feed_mm, i.seat_angle_deg, cutter_deg)


def _width_mm(i: Any, less_mm: Number) -> Number:
    return valves.width_after_cut_mm(
        i.contact_outer_dia_mm, i.contact_inner_dia_mm, less_mm, i.seat_angle_deg
    )


def needed(i: Any) -> dict[str, Number]:
    """Return the feeds that lead to the contact wanted."""
    found: dict[str, Number] = {}
    outer = i.contact_outer_dia_mm
    if i.wanted_outer_dia_mm is not None:
        outer = i.wanted_outer_dia_mm
        if i.top_cutter_deg is not None:
            change = i.contact_outer_dia_mm - outer
            found["top_feed_needed_mm"] = valves.feed_for_change_mm(
                change, i.seat_angle_deg, i.top_cutter_deg
            )
    if i.wanted_width_mm is not None and i.bottom_cutter_deg is not None:
        inner = outer - 2 * i.wanted_width_mm * cosine_deg(i.seat_angle_deg)
        found["bottom_feed_needed_mm"] = valves.feed_for_change_mm(
            inner - i.contact_inner_dia_mm, i.seat_angle_deg, i.bottom_cutter_deg
        )
    return found
