"""What ring clocking is worked out from: gaps, or ring pins with the port windows."""

from ringland_service.core.calculations.assembly import _ring_gaps as rings
from ringland_service.core.calculations.assembly import _ring_pins as pins
from ringland_service.core.declare import count, limit_side, quantity, record, records, text
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import assembly as quantities
from ringland_service.core.quantities import lengths


@record
class Inputs:
    """Gaps of one piston's rings, or the pins of a two-stroke's rings with the windows."""

    bore_mm: Number = quantity(lengths.BORE, "cylinder bore", example=68.5)
    zero_and_sense: str = text(
        "zero and sense of all angles",
        example="clockwise from the intake side, seen from above",
        longest=120,
        default="clockwise from the intake side, seen from above",
    )
    thrust_axis_deg: Number = quantity(
        quantities.ROUND_THE_BORE,
        "one end of the thrust axis; the pin axis lies at 90° to it",
        example=0.0,
        default=0.0,
    )
    gaps: tuple[rings.Gap, ...] | None = records(
        rings.Gap,
        "gaps of one piston's rings",
        most=6,
        example=(
            rings.gap("top", "compression", 45.0),
            rings.gap("second", "compression", 225.0),
            rings.gap("expander", "expander", 135.0),
            rings.gap("upper rail", "rail", 95.0),
            rings.gap("lower rail", "rail", 175.0),
        ),
        default=None,
    )
    ring_pins: tuple[pins.Pin, ...] | None = records(
        pins.Pin,
        "two-stroke: pins that hold the ring ends, one a ring",
        most=4,
        example=(pins.pin("top", 20.0), pins.pin("second", 340.0)),
        default=None,
    )
    ring_count: int | None = count(
        "two-stroke: number of rings", low=1, high=4, example=2, default=None
    )
    port_windows: tuple[pins.Window, ...] | None = records(
        pins.Window,
        "two-stroke: port windows that the rings pass",
        most=20,
        example=(
            pins.window(148.0, 212.0),
            pins.window(70.0, 118.0),
            pins.window(242.0, 290.0),
            pins.window(28.0, 62.0),
            pins.window(298.0, 332.0),
            pins.window(-12.0, 12.0),
        ),
        default=None,
    )
    ring_end_half_width_mm: Number | None = quantity(
        quantities.RING_END_HALF_WIDTH,
        "two-stroke: how far the ring ends reach to either side of their pin",
        default=None,
    )
    own_gap_separation: float | None = limit_side("compression_gap_separation", "low")
    own_gap_to_axis: float | None = limit_side("compression_gap_to_axis", "low")
    own_rail_arc: float | None = limit_side("rail_arc_from_expander", "low")
    own_rail_to_gap: float | None = limit_side("rail_to_compression_gap", "low")
