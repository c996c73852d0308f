"""Piston clearance.

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
from ringland._types import Quantity, QuantityLike, ReadingsLike


class PistonClearanceBoreSurvey(TypedDict):
    """Bore survey, in place of largest and smallest bore.

    Attributes
    ----------
    depth : ReadingsLike
        depths below the deck; on a two-stroke clear of the port windows
    pin_axis : ReadingsLike
        bore along the piston pin at each depth, as a diameter
    thrust_axis : ReadingsLike
        bore across the piston pin (thrust) at each depth, as a diameter
    """

    depth: ReadingsLike
    pin_axis: ReadingsLike
    thrust_axis: ReadingsLike


class PistonClearanceLimits(TypedDict, total=False):
    """Limits of your own, by check: piston-clearance.

    Attributes
    ----------
    piston_clearance_max : LimitAsked
        largest clearance
    piston_clearance_min : LimitAsked
        smallest clearance
    """

    piston_clearance_max: LimitAsked
    piston_clearance_min: LimitAsked


@dataclass(frozen=True, kw_only=True)
class PistonClearanceResult:
    """None is what cannot be known.

    Attributes
    ----------
    clearance_max : Quantity | None
        clearance in the largest bore of the skirt travel, diametral, at 20 °C
    bore_largest_at_20c : Quantity | None
        largest bore of the skirt travel at 20 °C
    piston_at_20c : Quantity
        piston at 20 °C
    temperature_error : Quantity | None
        clearance as read less the clearance at 20 °C: the error that was avoided
    clearance_max_share : float | None
        largest clearance as a share of the bore
    bore_alpha_used : Quantity | None
        expansion of the bore that was used
    piston_alpha_used : Quantity
        expansion of the piston that was used
    clearance_min : Quantity | None
        clearance in the smallest bore of the skirt travel, either axis, diametral, at 20 °C; an
        oval piston leaves more on the pin axis, so it is on the safe side
    bore_smallest_at_20c : Quantity | None
        smallest bore of the skirt travel at 20 °C
    clearance_mean : Quantity | None
        clearance in the mean of the readings in the skirt travel, diametral, at 20 °C
    skirt_wear : Quantity | None
        wear of the skirt on the diameter, at the piston's temperature
    """

    clearance_max: Quantity | None = None
    bore_largest_at_20c: Quantity | None = None
    piston_at_20c: Quantity
    temperature_error: Quantity | None = None
    clearance_max_share: float | None = None
    bore_alpha_used: Quantity | None = None
    piston_alpha_used: Quantity
    clearance_min: Quantity | None = None
    bore_smallest_at_20c: Quantity | None = None
    clearance_mean: Quantity | None = None
    skirt_wear: Quantity | None = None


class PistonClearance(Calculation[PistonClearanceResult]):
    """Piston clearance.

    Clearance of a piston in its bore at 20 °C, from largest and smallest bore or from a survey,
    against the new fit or the service limit. A maker's limit goes with the maker's way of sizing:
    largest bore anywhere, in the skirt travel, or at one depth.
    """

    NAME = "piston-clearance"
    RESULT = PistonClearanceResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "piston_size": "quantity",
        "bore_largest": "quantity",
        "bore_smallest": "quantity",
        "bore_survey": {"depth": "readings", "pin_axis": "readings", "thrust_axis": "readings"},
        "skirt_from": "quantity",
        "skirt_to": "quantity",
        "piston_size_new": "quantity",
        "measuring_height": "quantity",
        "bore_temperature": "quantity",
        "piston_temperature": "quantity",
        "bore_alpha": "quantity",
        "piston_alpha": "quantity",
        "limits": {
            "piston_clearance_max": {"low": "quantity", "high": "quantity"},
            "piston_clearance_min": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        piston_size: QuantityLike,
        bore_largest: QuantityLike | None = None,
        bore_smallest: QuantityLike | None = None,
        bore_survey: PistonClearanceBoreSurvey | None = None,
        skirt_from: QuantityLike | None = None,
        skirt_to: QuantityLike | None = None,
        piston_size_new: QuantityLike | None = None,
        measuring_height: QuantityLike | None = None,
        skirt_coated: bool | None = None,
        piston_condition: Literal["new", "used"] | None = None,
        piston_kind: Literal[
            "cast_air_cooled",
            "cast_liquid_cooled",
            "forged",
            "two_stroke_iron",
            "two_stroke_plated",
        ]
        | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        piston_material: Literal[
            "grey_iron",
            "steel",
            "piston_forged_low_silicon",
            "piston_cast_eutectic",
            "piston_high_silicon",
            "aluminium_cylinder",
            "iron_sleeve_in_aluminium",
        ]
        | None = None,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
        | None = None,
        bore_temperature: QuantityLike | None = None,
        piston_temperature: QuantityLike | None = None,
        bore_alpha: QuantityLike | None = None,
        piston_alpha: QuantityLike | None = None,
        surface: Literal["clean", "glazed", "scored", "corroded", "smeared"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: PistonClearanceLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[PistonClearanceResult]:
        """Ask ``piston-clearance`` one question.

        Needed: ``bore_largest`` or ``bore_survey``.

        Parameters
        ----------
        piston_size : QuantityLike
            piston across the thrust axis (90° to the pin), at the maker's height on the skirt
        bore_largest : QuantityLike, optional
            largest bore in the skirt travel
        bore_smallest : QuantityLike, optional
            smallest bore in the skirt travel
        bore_survey : PistonClearanceBoreSurvey, optional
            bore survey, in place of largest and smallest bore
        skirt_from : QuantityLike, optional
            skirt travel starts at this depth below the deck
        skirt_to : QuantityLike, optional
            skirt travel ends at this depth below the deck
        piston_size_new : QuantityLike, optional
            the piston's size when new
        measuring_height : QuantityLike, optional
            height above the skirt bottom where the piston was measured
        skirt_coated : bool, optional
            the skirt carries a coating
        piston_condition : str, optional
            which limits apply: new fit or used parts (new: new fit: piston and bore as they go
            together; used: used parts against their service limit) (default used)
        piston_kind : str, optional
            kind of piston (cast_air_cooled: cast, air-cooled four-stroke; cast_liquid_cooled: cast,
            liquid-cooled four-stroke; forged: forged; two_stroke_iron: two-stroke, for an iron
            bore; two_stroke_plated: two-stroke, for a plated bore)
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        piston_material : str, optional
            alloy of the piston, for its expansion (grey_iron: grey iron; steel: steel;
            piston_forged_low_silicon: low-silicon forged piston alloy; piston_cast_eutectic:
            eutectic cast piston alloy; piston_high_silicon: high-silicon piston alloy;
            aluminium_cylinder: aluminium cylinder, plated, chromed or bare;
            iron_sleeve_in_aluminium: iron sleeve cast in aluminium, effective)
        bore_kind : str, optional
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
            (default unknown)
        bore_temperature : QuantityLike, optional
            temperature of the cylinder when measured (default 20.0 degC)
        piston_temperature : QuantityLike, optional
            temperature of the piston when measured (default 20.0 degC)
        bore_alpha : QuantityLike, optional
            expansion of the cylinder; wins over the kind of bore
        piston_alpha : QuantityLike, optional
            expansion of the piston; wins over its material and kind
        surface : str, optional
            look of the bore's surface (clean: clean: hone marks to be seen, no score, no glaze;
            glazed: glazed: bright and hard, hone marks gone; scored: scored or seized; corroded:
            pitted by rust or corrosion; smeared: aluminium of the piston smeared on it)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : PistonClearanceLimits, optional
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
            "piston_size": piston_size,
            "bore_largest": bore_largest,
            "bore_smallest": bore_smallest,
            "bore_survey": bore_survey,
            "skirt_from": skirt_from,
            "skirt_to": skirt_to,
            "piston_size_new": piston_size_new,
            "measuring_height": measuring_height,
            "skirt_coated": skirt_coated,
            "piston_condition": piston_condition,
            "piston_kind": piston_kind,
            "cycle": cycle,
            "piston_material": piston_material,
            "bore_kind": bore_kind,
            "bore_temperature": bore_temperature,
            "piston_temperature": piston_temperature,
            "bore_alpha": bore_alpha,
            "piston_alpha": piston_alpha,
            "surface": surface,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
