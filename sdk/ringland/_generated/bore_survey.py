"""Bore survey.

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


class BoreSurveyLimits(TypedDict, total=False):
    """Limits of your own, by check: bore-survey.

    Attributes
    ----------
    bore_largest : LimitAsked
        largest bore
    out_of_round : LimitAsked
        largest out-of-round, difference of two diameters
    taper_pin_axis : LimitAsked
        taper on the pin axis, difference of diameters
    taper_thrust_axis : LimitAsked
        taper on the thrust axis, difference of diameters
    bore_wear : LimitAsked
        wear of the bore
    """

    bore_largest: LimitAsked
    out_of_round: LimitAsked
    taper_pin_axis: LimitAsked
    taper_thrust_axis: LimitAsked
    bore_wear: LimitAsked


@dataclass(frozen=True, kw_only=True)
class BoreSurveyResult:
    """None is what cannot be known.

    Attributes
    ----------
    largest : Quantity | None
        largest bore
    largest_at_depth : Quantity | None
        depth of the largest bore; of equals the one nearer the deck
    largest_at_axis : Literal['pin', 'thrust'] | None
        axis of the largest bore; of equals at one depth thrust
    smallest : Quantity | None
        smallest bore
    smallest_at_depth : Quantity | None
        depth of the smallest bore; of equals the one nearer the deck
    smallest_at_axis : Literal['pin', 'thrust'] | None
        axis of the smallest bore; of equals at one depth thrust
    mean : Quantity | None
        mean bore
    worn_zone : Quantity | None
        mean of the two axes at the depth where it is largest: what a ring sees of the wear, since
        it follows the perimeter
    out_of_round : Quantity | None
        largest out-of-round
    out_of_round_at_depth : Quantity | None
        depth of the largest out-of-round
    taper_pin_axis : Quantity | None
        taper along the pin axis, the largest difference anywhere on it
    taper_thrust_axis : Quantity | None
        taper along the thrust axis, the largest difference anywhere on it
    signed_taper_pin_axis : Quantity | None
        pin axis, top less bottom: what some makers call taper
    signed_taper_thrust_axis : Quantity | None
        thrust axis, top less bottom: what some makers call taper
    barrel : Quantity | None
        middle less ends: above zero wider in the middle
    wear : Quantity | None
        wear of the bore
    wear_from : Literal['unworn', 'nominal_bore'] | None
        what the wear is counted from
    shape : str
        shape of the bore lengthwise
    cross_section : Literal['round', 'oval'] | None
        shape of the bore across
    """

    largest: Quantity | None = None
    largest_at_depth: Quantity | None = None
    largest_at_axis: Literal["pin", "thrust"] | None = None
    smallest: Quantity | None = None
    smallest_at_depth: Quantity | None = None
    smallest_at_axis: Literal["pin", "thrust"] | None = None
    mean: Quantity | None = None
    worn_zone: Quantity | None = None
    out_of_round: Quantity | None = None
    out_of_round_at_depth: Quantity | None = None
    taper_pin_axis: Quantity | None = None
    taper_thrust_axis: Quantity | None = None
    signed_taper_pin_axis: Quantity | None = None
    signed_taper_thrust_axis: Quantity | None = None
    barrel: Quantity | None = None
    wear: Quantity | None = None
    wear_from: Literal["unworn", "nominal_bore"] | None = None
    shape: Literal["straight", "tapered", "barrel", "hourglass", "bell_mouth"] | None = None
    cross_section: Literal["round", "oval"] | None = None


class BoreSurvey(Calculation[BoreSurveyResult]):
    """Bore survey.

    Largest and smallest bore, out-of-round, taper, shape and wear, from readings on two axes at
    several depths: top of the ring travel, 8 to 10 mm below the deck, middle and bottom, and one
    below it as the unworn reference. All figures are diametral. A cylinder off the engine reads
    otherwise than one under its torqued head.
    """

    NAME = "bore-survey"
    RESULT = BoreSurveyResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "depth": "readings",
        "pin_axis": "readings",
        "thrust_axis": "readings",
        "unworn": "quantity",
        "nominal_bore": "quantity",
        "bore_temperature": "quantity",
        "bore_alpha": "quantity",
        "limits": {
            "bore_largest": {"low": "quantity", "high": "quantity"},
            "out_of_round": {"low": "quantity", "high": "quantity"},
            "taper_pin_axis": {"low": "quantity", "high": "quantity"},
            "taper_thrust_axis": {"low": "quantity", "high": "quantity"},
            "bore_wear": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        depth: ReadingsLike,
        pin_axis: ReadingsLike,
        thrust_axis: ReadingsLike,
        unworn: QuantityLike | None = None,
        nominal_bore: QuantityLike | None = None,
        bore_use: Literal["used", "re_ring", "fresh"] | None = None,
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
        bore_alpha: QuantityLike | None = None,
        surface: Literal["clean", "glazed", "scored", "corroded", "smeared"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: BoreSurveyLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[BoreSurveyResult]:
        """Ask ``bore-survey`` one question.

        Parameters
        ----------
        depth : ReadingsLike
            depths below the deck; on a two-stroke clear of the port windows
        pin_axis : ReadingsLike
            bore along the piston pin at each depth, as a diameter
        thrust_axis : ReadingsLike
            bore across the piston pin (thrust) at each depth, as a diameter
        unworn : QuantityLike, optional
            bore where no ring runs, same gauge and temperature
        nominal_bore : QuantityLike, optional
            nominal bore, standard or the oversize it is at
        bore_use : str, optional
            what the bore is judged for (used: a used bore, to stay as it is; re_ring: a used bore,
            to be honed and given new rings; fresh: a freshly bored and honed one) (default used)
        bore_kind : str, optional
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
            (default unknown)
        bore_temperature : QuantityLike, optional
            temperature of the cylinder when measured (default 20.0 degC)
        bore_alpha : QuantityLike, optional
            expansion of the cylinder; wins over the kind of bore
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
        limits : BoreSurveyLimits, optional
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
            "depth": depth,
            "pin_axis": pin_axis,
            "thrust_axis": thrust_axis,
            "unworn": unworn,
            "nominal_bore": nominal_bore,
            "bore_use": bore_use,
            "bore_kind": bore_kind,
            "bore_temperature": bore_temperature,
            "bore_alpha": bore_alpha,
            "surface": surface,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
