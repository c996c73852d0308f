"""Compression ratio after an overbore.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class OverboreRatioLimits(TypedDict, total=False):
    """Limits of your own, by check: overbore-ratio.

    Attributes
    ----------
    gasket_clearance_per_side : LimitAsked
        gasket clear of the new bore on each side
    compression_ratio_after : RatioLimitAsked
        static compression ratio after the overbore within the maker's
    """

    gasket_clearance_per_side: LimitAsked
    compression_ratio_after: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class OverboreRatioResult:
    """None is what cannot be known.

    Attributes
    ----------
    swept_before : Quantity
        swept volume before
    clearance_before : Quantity
        clearance volume before
    ratio_before : float
        static compression ratio before
    swept_after : Quantity
        swept volume after
    clearance_after : Quantity
        clearance volume after
    ratio_after : float
        static compression ratio after
    ratio_change : float
        change of the static compression ratio
    ratio_after_clearance_held : float
        static compression ratio after, by the shortcut that holds the clearance volume
    gasket_clearance_per_side : Quantity | None
        room between the new bore and the gasket in place, on each side (radial)
    """

    swept_before: Quantity
    clearance_before: Quantity
    ratio_before: float
    swept_after: Quantity
    clearance_after: Quantity
    ratio_after: float
    ratio_change: float
    ratio_after_clearance_held: float
    gasket_clearance_per_side: Quantity | None = None


class OverboreRatio(Calculation[OverboreRatioResult]):
    """Compression ratio after an overbore.

    Static compression ratio before and after an overbore, with the gasket kept or changed and the
    new piston's own crown, and the room between gasket and cylinder. What other works change at the
    same time counts in: base gasket, deck, skim, valves that sit deeper.
    """

    NAME = "overbore-ratio"
    RESULT = OverboreRatioResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "new_bore": "quantity",
        "stroke": "quantity",
        "chamber": "quantity",
        "gasket_thickness": "quantity",
        "deck": "quantity",
        "gasket_bore": "quantity",
        "gasket_area": "quantity",
        "dome": "quantity",
        "dish": "quantity",
        "crevice": "quantity",
        "new_dome": "quantity",
        "new_dish": "quantity",
        "new_deck": "quantity",
        "new_gasket_bore": "quantity",
        "new_gasket_thickness": "quantity",
        "clearance": "quantity",
        "base_gasket_thinner_by": "quantity",
        "deck_cut": "quantity",
        "skim_loss": "quantity",
        "sink_gain": "quantity",
        "limits": {"gasket_clearance_per_side": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        new_bore: QuantityLike,
        stroke: QuantityLike,
        chamber: QuantityLike | None = None,
        gasket_thickness: QuantityLike | None = None,
        deck: QuantityLike | None = None,
        gasket_bore: QuantityLike | None = None,
        gasket_area: QuantityLike | None = None,
        dome: QuantityLike | None = None,
        dish: QuantityLike | None = None,
        crevice: QuantityLike | None = None,
        new_dome: QuantityLike | None = None,
        new_dish: QuantityLike | None = None,
        new_deck: QuantityLike | None = None,
        new_gasket_bore: QuantityLike | None = None,
        new_gasket_thickness: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        base_gasket_thinner_by: QuantityLike | None = None,
        deck_cut: QuantityLike | None = None,
        skim_loss: QuantityLike | None = None,
        sink_gain: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: OverboreRatioLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[OverboreRatioResult]:
        """Ask ``overbore-ratio`` one question.

        Needed: ``chamber`` or ``chamber`` or ``clearance``.

        Parameters
        ----------
        bore : QuantityLike
            cylinder bore before machining
        new_bore : QuantityLike
            bore after machining
        stroke : QuantityLike
            stroke
        chamber : QuantityLike, optional
            combustion chamber in the head before; kept but for what head work is told
        gasket_thickness : QuantityLike, optional
            compressed head gasket; 0 without one
        deck : QuantityLike, optional
            piston crown edge at top dead centre: below (+) or proud of (−) the deck
        gasket_bore : QuantityLike, optional
            bore of the head gasket; without a gasket, of the joint
        gasket_area : QuantityLike, optional
            opening of a head gasket that is not round; wins over its bore
        dome : QuantityLike, optional
            dome of the old piston, never negative
        dish : QuantityLike, optional
            dish and valve pockets of the old piston, never negative
        crevice : QuantityLike, optional
            crevice above the top ring; kept
        new_dome : QuantityLike, optional
            dome of the new piston; like the old one's where not given
        new_dish : QuantityLike, optional
            dish and valve pockets of the new piston; like the old one's where not given
        new_deck : QuantityLike, optional
            crown edge of the new piston below (+) or proud of (−) the deck; like the old one's
            where not given
        new_gasket_bore : QuantityLike, optional
            bore of the new head gasket; kept where not given
        new_gasket_thickness : QuantityLike, optional
            compressed new head gasket; kept where not given
        clearance : QuantityLike, optional
            clearance volume before, measured whole; counts before the sum of its parts
        base_gasket_thinner_by : QuantityLike, optional
            new base gasket thinner by; negative for a thicker one
        deck_cut : QuantityLike, optional
            metal taken off the cylinder's deck
        skim_loss : QuantityLike, optional
            what a skim of the head takes from the chamber
        sink_gain : QuantityLike, optional
            what the chamber gains by valves that sit deeper
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : OverboreRatioLimits, optional
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
            "new_bore": new_bore,
            "stroke": stroke,
            "chamber": chamber,
            "gasket_thickness": gasket_thickness,
            "deck": deck,
            "gasket_bore": gasket_bore,
            "gasket_area": gasket_area,
            "dome": dome,
            "dish": dish,
            "crevice": crevice,
            "new_dome": new_dome,
            "new_dish": new_dish,
            "new_deck": new_deck,
            "new_gasket_bore": new_gasket_bore,
            "new_gasket_thickness": new_gasket_thickness,
            "clearance": clearance,
            "base_gasket_thinner_by": base_gasket_thinner_by,
            "deck_cut": deck_cut,
            "skim_loss": skim_loss,
            "sink_gain": sink_gain,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
