"""Squish clearance and base gasket.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings, ReadingsLike


class SquishLimits(TypedDict, total=False):
    """Limits of your own, by check: squish.

    Attributes
    ----------
    smallest_squish : LimitAsked
        squish at its smallest point
    squish_side_difference : LimitAsked
        squish from side to side
    smallest_squish_after : LimitAsked
        smallest point with the chosen gasket
    """

    smallest_squish: LimitAsked
    squish_side_difference: LimitAsked
    smallest_squish_after: LimitAsked


@dataclass(frozen=True, kw_only=True)
class SquishResult:
    """None is what cannot be known.

    Attributes
    ----------
    squish : Quantity
        squish clearance, mean
    smallest_squish : Quantity
        squish clearance at its smallest point
    uncertainty_used : Quantity
        uncertainty taken off the smallest point
    smallest_less_uncertainty : Quantity
        smallest point less its uncertainty
    side_difference : Quantity | None
        difference of the solder readings
    squish_by_stack : Quantity | None
        squish clearance by the stack
    squish_area_share : float | None
        area of the squish band over that of the bore
    squish_area : Quantity | None
        area of the squish band
    floor_used : Quantity | None
        squish that must be left at the smallest point less its uncertainty
    wanted_used : Quantity | None
        squish aimed for
    gasket_wanted : Quantity | None
        base gasket that gives the squish aimed for; negative: none is thin enough
    gaskets : Readings | None
        base gaskets at hand, in the order given
    squish_afters : Readings | None
        mean squish with each gasket
    less_uncertainty_afters : Readings | None
        smallest point less its uncertainty with each gasket
    outcomes : tuple[str | float, ...] | None
        whether each gasket keeps the floor
    reason : str
        why this gasket, or why none
    nearest_gasket : Quantity | None
        gasket at hand nearest to the one wanted, whether it keeps the floor or not
    nearest_less_uncertainty : Quantity | None
        smallest point less its uncertainty with the nearest gasket
    chosen_gasket : Quantity | None
        base gasket to take
    runner_up_gasket : Quantity | None
        next nearest gasket that keeps the floor, of another thickness
    thinner_by : Quantity | None
        by how much the chosen gasket is thinner than the one fitted; negative: thicker
    squish_after : Quantity | None
        mean squish with the chosen gasket
    smallest_after : Quantity | None
        smallest point with the chosen gasket
    after_less_uncertainty : Quantity | None
        smallest point less its uncertainty with the chosen gasket
    piston_proud_after : Quantity | None
        crown edge proud of (+) or below (−) the deck with the chosen gasket
    clearance_after : Quantity | None
        clearance volume with the chosen gasket
    ratio_before : float | None
        compression ratio now, from bottom dead centre
    ratio_after : float | None
        compression ratio with the chosen gasket, from bottom dead centre
    trapped_ratio_after : float | None
        trapped compression ratio with the chosen gasket, from the shutting of the exhaust port
    exhaust_duration_after : Quantity | None
        exhaust port open with the chosen gasket, crank degrees
    transfer_duration_after : Quantity | None
        transfer ports open with the chosen gasket, crank degrees
    """

    squish: Quantity
    smallest_squish: Quantity
    uncertainty_used: Quantity
    smallest_less_uncertainty: Quantity
    side_difference: Quantity | None = None
    squish_by_stack: Quantity | None = None
    squish_area_share: float | None = None
    squish_area: Quantity | None = None
    floor_used: Quantity | None = None
    wanted_used: Quantity | None = None
    gasket_wanted: Quantity | None = None
    gaskets: Readings | None = None
    squish_afters: Readings | None = None
    less_uncertainty_afters: Readings | None = None
    outcomes: tuple[str | float, ...] | None = None
    reason: (
        Literal["nearest_keeps_floor", "nearer_under_floor", "none_keeps_floor", "no_floor"] | None
    ) = None
    nearest_gasket: Quantity | None = None
    nearest_less_uncertainty: Quantity | None = None
    chosen_gasket: Quantity | None = None
    runner_up_gasket: Quantity | None = None
    thinner_by: Quantity | None = None
    squish_after: Quantity | None = None
    smallest_after: Quantity | None = None
    after_less_uncertainty: Quantity | None = None
    piston_proud_after: Quantity | None = None
    clearance_after: Quantity | None = None
    ratio_before: float | None = None
    ratio_after: float | None = None
    trapped_ratio_after: float | None = None
    exhaust_duration_after: Quantity | None = None
    transfer_duration_after: Quantity | None = None


class Squish(Calculation[SquishResult]):
    """Squish clearance and base gasket.

    Squish clearance from crushed solder or from the stack, the area of the squish band, and which
    of the base gaskets at hand comes nearest to the squish wanted while its smallest point less the
    uncertainty keeps the floor; with what it does to piston height, ratio and port timing. Bearings
    and the stretch of the rod take 0.1 to 0.3 mm at speed (common practice, no source). A maker's
    floor is given as the limit of smallest_squish; it holds for the gasket chosen too.
    """

    NAME = "squish"
    RESULT = SquishResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "solder": "readings",
        "solder_wire": "quantity",
        "deck": "quantity",
        "gasket_thickness": "quantity",
        "head_step": "quantity",
        "solder_uncertainty": "quantity",
        "bore": "quantity",
        "stroke": "quantity",
        "bowl_diameter": "quantity",
        "base_gasket_fitted": "quantity",
        "base_gaskets": "readings",
        "squish_wanted": "quantity",
        "piston_edge_below_deck_at_tdc": "quantity",
        "clearance": "quantity",
        "rod": "quantity",
        "exhaust_port_top_below_deck": "quantity",
        "transfer_port_top_below_deck": "quantity",
        "limits": {
            "smallest_squish": {"low": "quantity", "high": "quantity"},
            "squish_side_difference": {"low": "quantity", "high": "quantity"},
            "smallest_squish_after": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        solder: ReadingsLike | None = None,
        solder_wire: QuantityLike | None = None,
        deck: QuantityLike | None = None,
        gasket_thickness: QuantityLike | None = None,
        head_step: QuantityLike | None = None,
        solder_uncertainty: QuantityLike | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        bore: QuantityLike | None = None,
        stroke: QuantityLike | None = None,
        bowl_diameter: QuantityLike | None = None,
        base_gasket_fitted: QuantityLike | None = None,
        base_gaskets: ReadingsLike | None = None,
        squish_wanted: QuantityLike | None = None,
        piston_edge_below_deck_at_tdc: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        rod: QuantityLike | None = None,
        exhaust_port_top_below_deck: QuantityLike | None = None,
        transfer_port_top_below_deck: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: SquishLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[SquishResult]:
        """Ask ``squish`` one question.

        Needed: ``solder`` or ``deck``.

        Parameters
        ----------
        solder : ReadingsLike, optional
            crushed solder at the pin axis, one reading a side, head torqued down with its gasket;
            on the thrust axis the piston rocks
        solder_wire : QuantityLike, optional
            solder before it was crushed
        deck : QuantityLike, optional
            crown edge at the squish band below (+) or proud of (−) the deck at top dead centre
        gasket_thickness : QuantityLike, optional
            head gasket, compressed
        head_step : QuantityLike, optional
            squish band of the head recessed in (+) or standing out of (−) its gasket face
        solder_uncertainty : QuantityLike, optional
            uncertainty of the smallest point, expanded (k = 2); where not given, 0.04 mm of crushed
            solder (common practice, no source)
        cycle : str, optional
            cycle, for the floor that shops keep (four_stroke: four-stroke; two_stroke: two-stroke)
        bore : QuantityLike, optional
            cylinder bore
        stroke : QuantityLike, optional
            stroke
        bowl_diameter : QuantityLike, optional
            diameter of the bowl inside the squish band
        base_gasket_fitted : QuantityLike, optional
            base gasket fitted when the squish was measured
        base_gaskets : ReadingsLike, optional
            base gaskets at hand, in any order
        squish_wanted : QuantityLike, optional
            squish wanted; where not given, 0.2 mm over the floor (common practice, no source)
        piston_edge_below_deck_at_tdc : QuantityLike, optional
            crown edge, at the ports, below (+) or proud of (−) the deck at top dead centre; where
            not given, deck
        clearance : QuantityLike, optional
            clearance volume now: above the piston at top dead centre
        rod : QuantityLike, optional
            rod length, centre to centre
        exhaust_port_top_below_deck : QuantityLike, optional
            top edge of a two-stroke's exhaust port below the deck
        transfer_port_top_below_deck : QuantityLike, optional
            top edge of a two-stroke's transfer ports below the deck
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : SquishLimits, optional
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
            "solder": solder,
            "solder_wire": solder_wire,
            "deck": deck,
            "gasket_thickness": gasket_thickness,
            "head_step": head_step,
            "solder_uncertainty": solder_uncertainty,
            "cycle": cycle,
            "bore": bore,
            "stroke": stroke,
            "bowl_diameter": bowl_diameter,
            "base_gasket_fitted": base_gasket_fitted,
            "base_gaskets": base_gaskets,
            "squish_wanted": squish_wanted,
            "piston_edge_below_deck_at_tdc": piston_edge_below_deck_at_tdc,
            "clearance": clearance,
            "rod": rod,
            "exhaust_port_top_below_deck": exhaust_port_top_below_deck,
            "transfer_port_top_below_deck": transfer_port_top_below_deck,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
