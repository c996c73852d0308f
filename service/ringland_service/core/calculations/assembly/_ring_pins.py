"""Two-stroke ring pins against the port windows."""

from collections.abc import Sequence
from typing import Any

from ringland_service.core.declare import Rule, quantity, record, text
from ringland_service.core.formulas.clocking import separation_deg
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.quantities import assembly as quantities

HALF_TURN_DEG = 180.0
# Edges nearer than this are one place: a conversion of units must not open a window.
ONE_PLACE_DEG = 1e-6


@record
class Pin:
    """The pin that holds one ring's ends."""

    name: str = text("name of the ring", example="top", longest=30)
    pin_angle_deg: float = quantity(quantities.ROUND_THE_BORE, "where its pin stands", example=20.0)


@record
class Window:
    """One port window, from edge to edge in the sense of the angles."""

    from_angle_deg: float = quantity(quantities.ROUND_THE_BORE, "the window begins", example=28.0)
    to_angle_deg: float = quantity(quantities.ROUND_THE_BORE, "the window ends", example=62.0)


def pin(name: str, angle_deg: float) -> Pin:
    """Return a pin."""
    return Pin(name=name, pin_angle_deg=angle_deg)


def window(from_angle_deg: float, to_angle_deg: float) -> Window:
    """Return a window."""
    return Window(from_angle_deg=from_angle_deg, to_angle_deg=to_angle_deg)


def width_deg(of: Window) -> float:
    """Return how far a window reaches; nothing where both edges are one."""
    return float((of.to_angle_deg - of.from_angle_deg) % 360.0)


def inside(angle_deg: float, of: Window) -> bool:
    """Return whether a place lies in a window or on its edge."""
    past_deg = (angle_deg - of.from_angle_deg) % 360.0
    return bool(at_most(past_deg, width_deg(of)) or at_most(360.0, past_deg))


def to_edge_deg(one: Pin, windows: Sequence[Window]) -> float:
    """Return the angle from a pin to the nearest edge of any window."""
    edges = [edge for of in windows for edge in (of.from_angle_deg, of.to_angle_deg)]
    return min(float(separation_deg(one.pin_angle_deg, edge)) for edge in edges)


def _pin_in_window(i: Any) -> bool:
    return any(inside(one.pin_angle_deg, of) for one in i.ring_pins for of in i.port_windows)


def _no_width(i: Any) -> bool:
    widths = [width_deg(of) for of in i.port_windows]
    return any(width <= ONE_PLACE_DEG or beyond(width, HALF_TURN_DEG) for width in widths)


RULES = (
    Rule(
        ("port_windows",),
        _no_width,
        "a port window is nothing or more than half the bore wide",
        "from and to in the sense of the angles, such as 28 to 62, or -12 to 12 across the zero",
    ),
    Rule(
        ("ring_pins", "port_windows"),
        lambda i: not _no_width(i) and _pin_in_window(i),
        "a ring pin stands in a port window: the ring would catch",
        "zero and sense the same for pins and windows; else these are not the parts of one engine",
    ),
    Rule(
        ("ring_pins", "ring_count"),
        lambda i: len(i.ring_pins) != i.ring_count,
        "not one pin a ring",
        "count the pins: one for each ring",
    ),
    Rule(
        ("ring_pins",),
        lambda i: len({one.name.strip() for one in i.ring_pins}) < len(i.ring_pins),
        "two rings have one name",
        "a name of its own for each ring, such as top and second",
    ),
)
