"""What narrowing cuts do to a seat, and the feed that a wanted contact takes."""

from ringland_service.core.calculations.head._seat_fields import Inputs
from ringland_service.core.formulas import valves
from ringland_service.core.formulas.elementary import cosine_deg
from ringland_service.core.numbers import Number


def cuts(i: Inputs, inside_rim_mm: Number | None) -> dict[str, Number]:
    """Return the results of one feed of each cutter that is told of."""
    if i.feed_mm is None:
        return {}
    drop = _change_mm(i, i.feed_mm, i.top_cutter_deg)
    rise = _change_mm(i, i.feed_mm, i.bottom_cutter_deg)
    found: dict[str, Number] = {}
    if drop is not None:
        found["outer_diameter_drop_per_feed_mm"] = drop
        found["width_after_top_cut_mm"] = _width_mm(i, drop)
        if inside_rim_mm is not None:
            found["inside_rim_after_top_cut_mm"] = inside_rim_mm + drop / 2
    if rise is not None:
        found["inner_diameter_rise_per_feed_mm"] = rise
        found["width_after_bottom_cut_mm"] = _width_mm(i, rise)
    if drop is not None and rise is not None:
        found["width_after_both_mm"] = _width_mm(i, drop + rise)
    return found


def _change_mm(i: Inputs, feed_mm: Number, cutter_deg: Number | None) -> Number | None:
    if cutter_deg is None:
        return None
    return valves.edge_change_mm(feed_mm, i.seat_angle_deg, cutter_deg)


def _width_mm(i: Inputs, less_mm: Number) -> Number:
    return valves.width_after_cut_mm(
        i.seat_outer_diameter_mm, i.seat_inner_diameter_mm, less_mm, i.seat_angle_deg
    )


def needed(i: Inputs) -> dict[str, Number]:
    """Return the feeds that lead to the contact wanted."""
    found: dict[str, Number] = {}
    outer = i.seat_outer_diameter_mm
    if i.wanted_outer_diameter_mm is not None:
        outer = i.wanted_outer_diameter_mm
        if i.top_cutter_deg is not None:
            change = i.seat_outer_diameter_mm - outer
            found["top_feed_needed_mm"] = valves.feed_for_change_mm(
                change, i.seat_angle_deg, i.top_cutter_deg
            )
    if i.wanted_width_mm is not None and i.bottom_cutter_deg is not None:
        inner = outer - 2 * i.wanted_width_mm * cosine_deg(i.seat_angle_deg)
        found["bottom_feed_needed_mm"] = valves.feed_for_change_mm(
            inner - i.seat_inner_diameter_mm, i.seat_angle_deg, i.bottom_cutter_deg
        )
    return found
