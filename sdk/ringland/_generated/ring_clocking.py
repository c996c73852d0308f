"""Ring clocking.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings


class RingClockingGap(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    name : str
        name of the ring
    kind : Literal['compression', 'expander', 'rail']
        kind of ring (compression: compression ring, or an oil ring in one piece; expander: expander
        of the oil ring; rail: rail of the oil ring)
    angle : QuantityLike
        where its gap stands
    """

    name: str
    kind: Literal["compression", "expander", "rail"]
    angle: QuantityLike


class RingClockingRingPin(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    name : str
        name of the ring
    pin_angle : QuantityLike
        where its pin stands
    """

    name: str
    pin_angle: QuantityLike


class RingClockingPortWindow(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    from_angle : QuantityLike
        the window begins
    to_angle : QuantityLike
        the window ends
    """

    from_angle: QuantityLike
    to_angle: QuantityLike


class RingClockingLimits(TypedDict, total=False):
    """Limits of your own, by check: ring-clocking.

    Attributes
    ----------
    compression_gap_separation : LimitAsked
        compression gaps apart
    compression_gap_to_axis : LimitAsked
        compression gaps off the thrust and pin axes
    rail_arc_from_expander : LimitAsked
        rails from the expander's gap
    rail_to_compression_gap : LimitAsked
        rails off the compression gaps
    ring_end_margin : LimitAsked
        wall between ring ends and port windows
    """

    compression_gap_separation: LimitAsked
    compression_gap_to_axis: LimitAsked
    rail_arc_from_expander: LimitAsked
    rail_to_compression_gap: LimitAsked
    ring_end_margin: LimitAsked


@dataclass(frozen=True, kw_only=True)
class RingClockingResult:
    """None is what cannot be known.

    Attributes
    ----------
    compression_gap_separation : Quantity | None
        smallest angle between two compression gaps
    compression_gap_to_axis : Quantity | None
        smallest angle from a compression gap to the thrust or the pin axis
    rail_arc_from_expander : Quantity | None
        shortest arc from a rail's gap to the expander's
    rail_to_compression_gap : Quantity | None
        smallest angle from a rail's gap to a compression gap
    clocked_well : bool | None
        no gap stands too near another or an axis
    violations : tuple[str | float, ...] | None
        what stands too near to what; absent where nothing does
    proposed_gaps : Readings | None
        places for the gaps, in the order given, that break no limit
    pin_to_window : Readings | None
        from each pin to the nearest edge of a port window
    ring_end_margin : Readings | None
        wall between each ring's end and the nearest window, in the order of the pins
    smallest_ring_end_margin : Quantity | None
        the smallest of these margins
    assembly_checks : tuple[str | float, ...]
        to be looked at before the cylinder goes on
    """

    compression_gap_separation: Quantity | None = None
    compression_gap_to_axis: Quantity | None = None
    rail_arc_from_expander: Quantity | None = None
    rail_to_compression_gap: Quantity | None = None
    clocked_well: bool | None = None
    violations: tuple[str | float, ...] | None = None
    proposed_gaps: Readings | None = None
    pin_to_window: Readings | None = None
    ring_end_margin: Readings | None = None
    smallest_ring_end_margin: Quantity | None = None
    assembly_checks: tuple[str | float, ...]


class RingClocking(Calculation[RingClockingResult]):
    """Ring clocking.

    Where the gaps of the piston rings stand round the bore, what stands too near, and places that
    would do; on a two-stroke the ring ends against the port windows. The maker's diagram wins.
    Rings rotate in use: clocking is for the first minutes.
    """

    NAME = "ring-clocking"
    RESULT = RingClockingResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "thrust_axis_angle": "quantity",
        "gaps": [{"angle": "quantity"}],
        "ring_pins": [{"pin_angle": "quantity"}],
        "port_windows": [{"from_angle": "quantity", "to_angle": "quantity"}],
        "ring_end_half_width": "quantity",
        "limits": {
            "compression_gap_separation": {"low": "quantity", "high": "quantity"},
            "compression_gap_to_axis": {"low": "quantity", "high": "quantity"},
            "rail_arc_from_expander": {"low": "quantity", "high": "quantity"},
            "rail_to_compression_gap": {"low": "quantity", "high": "quantity"},
            "ring_end_margin": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        zero_and_sense: str | None = None,
        thrust_axis_angle: QuantityLike | None = None,
        gaps: Sequence[RingClockingGap] | None = None,
        ring_pins: Sequence[RingClockingRingPin] | None = None,
        ring_count: int | None = None,
        port_windows: Sequence[RingClockingPortWindow] | None = None,
        ring_end_half_width: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: RingClockingLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[RingClockingResult]:
        """Ask ``ring-clocking`` one question.

        Needed: ``gaps`` or ``ring_pins``.

        Parameters
        ----------
        bore : QuantityLike
            cylinder bore
        zero_and_sense : str, optional
            zero and sense of all angles (default clockwise from the intake side, seen from above)
        thrust_axis_angle : QuantityLike, optional
            one end of the thrust axis; the pin axis lies at 90° to it (default 0.0 deg)
        gaps : Sequence[RingClockingGap], optional
            gaps of one piston's rings
        ring_pins : Sequence[RingClockingRingPin], optional
            two-stroke: pins that hold the ring ends, one a ring
        ring_count : int, optional
            two-stroke: number of rings
        port_windows : Sequence[RingClockingPortWindow], optional
            two-stroke: port windows that the rings pass
        ring_end_half_width : QuantityLike, optional
            two-stroke: how far the ring ends reach to either side of their pin
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : RingClockingLimits, optional
            limits by check; these win over the common-practice ones
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "bore": bore,
            "zero_and_sense": zero_and_sense,
            "thrust_axis_angle": thrust_axis_angle,
            "gaps": gaps,
            "ring_pins": ring_pins,
            "ring_count": ring_count,
            "port_windows": port_windows,
            "ring_end_half_width": ring_end_half_width,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
