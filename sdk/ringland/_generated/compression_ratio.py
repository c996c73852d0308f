"""Static compression ratio.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class CompressionRatioLimits(TypedDict, total=False):
    """Limits of your own, by check: compression-ratio.

    Attributes
    ----------
    compression_ratio : RatioLimitAsked
        static compression ratio within the maker's
    """

    compression_ratio: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class CompressionRatioResult:
    """None is what cannot be known.

    Attributes
    ----------
    swept : Quantity
        swept volume of one cylinder
    gasket_opening : Quantity | None
        opening of the head gasket
    gasket_volume : Quantity | None
        volume in the head gasket
    deck_volume : Quantity | None
        volume between crown edge and deck; negative for a piston proud of it
    crevice_counted : Quantity | None
        crevice above the top ring, as counted
    clearance : Quantity
        clearance volume: what is left above the piston at top dead centre
    compression_ratio : float
        static (geometric) compression ratio
    plug_hole : Quantity | None
        volume of the plug hole; the plug's own nose is not counted
    clearance_by_burette : Quantity | None
        clearance volume by burette; gasket, deck, crown and crevice are inside it
    ratio_by_burette : float | None
        static compression ratio by burette
    ways_apart : Quantity | None
        clearance volume by burette against the one from the parts
    ratio_change_by_volume : float
        change of the ratio for each cc more in chamber, dish or any other part
    ratio_change_by_gasket : float | None
        change of the ratio for each mm more of gasket
    ratio_change_by_deck : float
        change of the ratio for each mm that the piston stops lower
    """

    swept: Quantity
    gasket_opening: Quantity | None = None
    gasket_volume: Quantity | None = None
    deck_volume: Quantity | None = None
    crevice_counted: Quantity | None = None
    clearance: Quantity
    compression_ratio: float
    plug_hole: Quantity | None = None
    clearance_by_burette: Quantity | None = None
    ratio_by_burette: float | None = None
    ways_apart: Quantity | None = None
    ratio_change_by_volume: float
    ratio_change_by_gasket: float | None = None
    ratio_change_by_deck: float


class CompressionRatio(Calculation[CompressionRatioResult]):
    """Static compression ratio.

    Static compression ratio from the parts of the clearance volume, by burette, or both ways
    against each other.
    """

    NAME = "compression-ratio"
    RESULT = CompressionRatioResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "stroke": "quantity",
        "chamber": "quantity",
        "gasket_bore": "quantity",
        "gasket_area": "quantity",
        "gasket_thickness": "quantity",
        "deck": "quantity",
        "dome": "quantity",
        "dish": "quantity",
        "crevice": "quantity",
        "land": "quantity",
        "land_height": "quantity",
        "burette_fill": "quantity",
        "plug_diameter": "quantity",
        "plug_reach": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        stroke: QuantityLike,
        valve_gear: Literal["overhead_valves", "side_valve", "ports", "unknown"] | None = None,
        chamber: QuantityLike | None = None,
        gasket_bore: QuantityLike | None = None,
        gasket_area: QuantityLike | None = None,
        gasket_thickness: QuantityLike | None = None,
        deck: QuantityLike | None = None,
        dome: QuantityLike | None = None,
        dish: QuantityLike | None = None,
        crevice: QuantityLike | None = None,
        land: QuantityLike | None = None,
        land_height: QuantityLike | None = None,
        burette_fill: QuantityLike | None = None,
        plug_diameter: QuantityLike | None = None,
        plug_reach: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CompressionRatioLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CompressionRatioResult]:
        """Ask ``compression-ratio`` one question.

        Needed: ``chamber`` or ``chamber`` or ``burette_fill``.

        Parameters
        ----------
        bore : QuantityLike
            cylinder bore
        stroke : QuantityLike
            stroke
        valve_gear : str, optional
            valve gear (overhead_valves: four-stroke, valves in the head; side_valve: four-stroke,
            valves beside the cylinder; ports: two-stroke, ports in the cylinder; unknown: not
            known: no bands are applied) (default unknown)
        chamber : QuantityLike, optional
            combustion chamber in the head, valves and plug fitted
        gasket_bore : QuantityLike, optional
            bore of the head gasket; without a gasket, of the joint
        gasket_area : QuantityLike, optional
            opening of a head gasket that is not round; wins over its bore
        gasket_thickness : QuantityLike, optional
            compressed head gasket; 0 without one
        deck : QuantityLike, optional
            piston crown edge at top dead centre: below (+) or proud of (−) the deck
        dome : QuantityLike, optional
            dome on the crown, never negative; 0 without one
        dish : QuantityLike, optional
            dish and valve pockets in the crown, never negative; 0 for a flat crown
        crevice : QuantityLike, optional
            crevice above the top ring; wins over land diameter and height
        land : QuantityLike, optional
            diameter of the top land
        land_height : QuantityLike, optional
            height of the top land
        burette_fill : QuantityLike, optional
            thin liquid filled in at top dead centre up to the top of the plug hole; rings sealed
            with grease, tilted so that no bubble stays
        plug_diameter : QuantityLike, optional
            plug thread: mean of major and minor diameter
        plug_reach : QuantityLike, optional
            depth of the plug hole that the fill covers
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CompressionRatioLimits, optional
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
            "stroke": stroke,
            "valve_gear": valve_gear,
            "chamber": chamber,
            "gasket_bore": gasket_bore,
            "gasket_area": gasket_area,
            "gasket_thickness": gasket_thickness,
            "deck": deck,
            "dome": dome,
            "dish": dish,
            "crevice": crevice,
            "land": land,
            "land_height": land_height,
            "burette_fill": burette_fill,
            "plug_diameter": plug_diameter,
            "plug_reach": plug_reach,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
