"""Port timing and trapped ratio.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


@dataclass(frozen=True, kw_only=True)
class PortTimingResult:
    """None is what cannot be known.

    Attributes
    ----------
    exhaust_travel : Quantity
        piston travel from top dead centre to the exhaust port
    exhaust_opens : Quantity
        exhaust opens after top dead centre, crank degrees
    exhaust_duration : Quantity
        exhaust port open, crank degrees
    transfer_travel : Quantity | None
        piston travel from top dead centre to the transfer ports
    transfer_opens : Quantity | None
        transfer ports open after top dead centre, crank degrees
    transfer_duration : Quantity | None
        transfer ports open, crank degrees
    blowdown : Quantity | None
        blowdown: exhaust opening to transfer opening, crank degrees
    trapped_volume : Quantity | None
        volume swept once the exhaust port is shut
    trapped_ratio : float | None
        trapped compression ratio: from the shutting of the exhaust port
    geometric_ratio : float | None
        geometric compression ratio: from bottom dead centre
    exhaust_duration_after : Quantity | None
        exhaust port open with the other base gasket, crank degrees
    transfer_duration_after : Quantity | None
        transfer ports open with the other base gasket, crank degrees
    blowdown_after : Quantity | None
        blowdown with the other base gasket, crank degrees
    trapped_volume_after : Quantity | None
        volume swept once the exhaust port is shut, with the other base gasket
    clearance_after : Quantity | None
        clearance volume with the other base gasket
    trapped_ratio_after : float | None
        trapped compression ratio with the other base gasket
    geometric_ratio_after : float | None
        geometric compression ratio with the other base gasket
    exhaust_thinner_by : Quantity | None
        base gasket thinner by this gives the exhaust duration wanted; negative: thicker
    transfer_thinner_by : Quantity | None
        base gasket thinner by this gives the transfer duration wanted; negative: thicker
    """

    exhaust_travel: Quantity
    exhaust_opens: Quantity
    exhaust_duration: Quantity
    transfer_travel: Quantity | None = None
    transfer_opens: Quantity | None = None
    transfer_duration: Quantity | None = None
    blowdown: Quantity | None = None
    trapped_volume: Quantity | None = None
    trapped_ratio: float | None = None
    geometric_ratio: float | None = None
    exhaust_duration_after: Quantity | None = None
    transfer_duration_after: Quantity | None = None
    blowdown_after: Quantity | None = None
    trapped_volume_after: Quantity | None = None
    clearance_after: Quantity | None = None
    trapped_ratio_after: float | None = None
    geometric_ratio_after: float | None = None
    exhaust_thinner_by: Quantity | None = None
    transfer_thinner_by: Quantity | None = None


class PortTiming(Calculation[PortTimingResult]):
    """Port timing and trapped ratio.

    Port timing of a two-stroke from port heights, its trapped and its geometric compression ratio,
    what another base gasket does to them, and which base gasket a wanted duration asks for. Take
    the heights at the port: a crown slopes, and its edge is rounded.
    """

    NAME = "port-timing"
    RESULT = PortTimingResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "stroke": "quantity",
        "rod": "quantity",
        "exhaust_port_top_below_deck": "quantity",
        "piston_edge_below_deck_at_tdc": "quantity",
        "transfer_port_top_below_deck": "quantity",
        "bore": "quantity",
        "clearance": "quantity",
        "thinner_base_gasket_by": "quantity",
        "exhaust_duration_wanted": "quantity",
        "transfer_duration_wanted": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        stroke: QuantityLike,
        rod: QuantityLike,
        exhaust_port_top_below_deck: QuantityLike,
        piston_edge_below_deck_at_tdc: QuantityLike,
        transfer_port_top_below_deck: QuantityLike | None = None,
        bore: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        thinner_base_gasket_by: QuantityLike | None = None,
        exhaust_duration_wanted: QuantityLike | None = None,
        transfer_duration_wanted: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[PortTimingResult]:
        """Ask ``port-timing`` one question.

        Parameters
        ----------
        stroke : QuantityLike
            stroke
        rod : QuantityLike
            rod length, centre to centre
        exhaust_port_top_below_deck : QuantityLike
            top edge of the exhaust port below the deck: the port's edge, not its chamfer; an
            exhaust valve in its low position
        piston_edge_below_deck_at_tdc : QuantityLike
            crown edge, at the port, below (+) or proud of (−) the deck at top dead centre
        transfer_port_top_below_deck : QuantityLike, optional
            top edge of the transfer ports below the deck
        bore : QuantityLike, optional
            cylinder bore
        clearance : QuantityLike, optional
            clearance volume: above the piston at top dead centre
        thinner_base_gasket_by : QuantityLike, optional
            new base gasket thinner by; negative for a thicker one
        exhaust_duration_wanted : QuantityLike, optional
            exhaust port open as wanted, crank degrees: asks for the base gasket that gives it
        transfer_duration_wanted : QuantityLike, optional
            transfer ports open as wanted, crank degrees: asks for the base gasket that gives it
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "stroke": stroke,
            "rod": rod,
            "exhaust_port_top_below_deck": exhaust_port_top_below_deck,
            "piston_edge_below_deck_at_tdc": piston_edge_below_deck_at_tdc,
            "transfer_port_top_below_deck": transfer_port_top_below_deck,
            "bore": bore,
            "clearance": clearance,
            "thinner_base_gasket_by": thinner_base_gasket_by,
            "exhaust_duration_wanted": exhaust_duration_wanted,
            "transfer_duration_wanted": transfer_duration_wanted,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
