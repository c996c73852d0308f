"""Metal or gasket for a wanted ratio.

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
from ringland._types import Quantity, QuantityLike


class WantedRatioLimits(TypedDict, total=False):
    """Limits of your own, by check: wanted-ratio.

    Attributes
    ----------
    squish_before : LimitAsked
        squish now
    skim_for_ratio : LimitAsked
        metal off the head in all
    squish_after_skim : LimitAsked
        squish after the skim
    gasket_for_ratio : LimitAsked
        head gasket that gives the ratio
    squish_after_gasket : LimitAsked
        squish with that gasket
    squish_after_deck_cut : LimitAsked
        squish after the cut of the deck
    """

    squish_before: LimitAsked
    skim_for_ratio: LimitAsked
    squish_after_skim: LimitAsked
    gasket_for_ratio: LimitAsked
    squish_after_gasket: LimitAsked
    squish_after_deck_cut: LimitAsked


@dataclass(frozen=True, kw_only=True)
class WantedRatioResult:
    """None is what cannot be known.

    Attributes
    ----------
    ratio_now : float
        compression ratio now
    required_clearance : Quantity
        clearance volume that gives the ratio wanted
    remove : Quantity
        volume to be lost; negative: to be gained
    skim : Quantity | None
        metal to take off the head's face; negative: no skim gives it
    skim_in_all : Quantity | None
        metal taken off the head in all, with what is off already
    squish_after_skim : Quantity | None
        squish after the skim
    gasket_change : Quantity | None
        head gasket thinner by; negative: thicker
    gasket_wanted : Quantity | None
        head gasket that gives the ratio, compressed; negative: none is thin enough
    squish_after_gasket : Quantity | None
        squish with that gasket
    deck_cut : Quantity | None
        metal to take off the cylinder's deck; negative: no cut gives it
    squish_after_deck_cut : Quantity | None
        squish after the cut of the deck
    """

    ratio_now: float
    required_clearance: Quantity
    remove: Quantity
    skim: Quantity | None = None
    skim_in_all: Quantity | None = None
    squish_after_skim: Quantity | None = None
    gasket_change: Quantity | None = None
    gasket_wanted: Quantity | None = None
    squish_after_gasket: Quantity | None = None
    deck_cut: Quantity | None = None
    squish_after_deck_cut: Quantity | None = None


class WantedRatio(Calculation[WantedRatioResult]):
    """Metal or gasket for a wanted ratio.

    How much a head is skimmed, a head gasket thinned or a deck cut for a wanted compression ratio,
    and the squish that each leaves. Skim and thinner gasket bring head and piston, valves and
    piston, and the camshaft nearer: check squish, valve-to-piston clearance, cam timing, and the
    lash of pushrod engines after. A maker's floor is given as the limit of squish_before and holds
    after too, a maker's skim limit as that of skim_for_ratio.
    """

    NAME = "wanted-ratio"
    RESULT = WantedRatioResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "swept": "quantity",
        "clearance": "quantity",
        "chamber_area": "quantity",
        "gasket_bore": "quantity",
        "gasket_area": "quantity",
        "gasket_thickness": "quantity",
        "bore": "quantity",
        "squish": "quantity",
        "skim_done": "quantity",
        "limits": {
            "squish_before": {"low": "quantity", "high": "quantity"},
            "skim_for_ratio": {"low": "quantity", "high": "quantity"},
            "squish_after_skim": {"low": "quantity", "high": "quantity"},
            "gasket_for_ratio": {"low": "quantity", "high": "quantity"},
            "squish_after_gasket": {"low": "quantity", "high": "quantity"},
            "squish_after_deck_cut": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        swept: QuantityLike,
        clearance: QuantityLike,
        wanted_ratio: float,
        chamber_area: QuantityLike | None = None,
        gasket_bore: QuantityLike | None = None,
        gasket_area: QuantityLike | None = None,
        gasket_thickness: QuantityLike | None = None,
        bore: QuantityLike | None = None,
        squish: QuantityLike | None = None,
        skim_done: QuantityLike | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: WantedRatioLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[WantedRatioResult]:
        """Ask ``wanted-ratio`` one question.

        Parameters
        ----------
        swept : QuantityLike
            swept volume of one cylinder
        clearance : QuantityLike
            clearance volume now: above the piston at top dead centre
        wanted_ratio : float
            compression ratio wanted
        chamber_area : QuantityLike, optional
            area of the combustion chamber at the head's face, as measured: it shrinks with depth
        gasket_bore : QuantityLike, optional
            bore of the head gasket
        gasket_area : QuantityLike, optional
            area of the head gasket's opening, where it is not round; it counts before gasket_bore
        gasket_thickness : QuantityLike, optional
            head gasket fitted now, compressed
        bore : QuantityLike, optional
            cylinder bore: a cut of the deck counts with its area
        squish : QuantityLike, optional
            squish clearance now, at its smallest point
        skim_done : QuantityLike, optional
            metal already taken off the head, in all
        cycle : str, optional
            cycle, for the squish floor that shops keep (four_stroke: four-stroke; two_stroke:
            two-stroke)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : WantedRatioLimits, optional
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
            "swept": swept,
            "clearance": clearance,
            "wanted_ratio": wanted_ratio,
            "chamber_area": chamber_area,
            "gasket_bore": gasket_bore,
            "gasket_area": gasket_area,
            "gasket_thickness": gasket_thickness,
            "bore": bore,
            "squish": squish,
            "skim_done": skim_done,
            "cycle": cycle,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
