"""Sizes for the machinist, and the work returned.

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


class BoreOrderLimits(TypedDict, total=False):
    """Limits of your own, by check: bore-order.

    Attributes
    ----------
    returned_smallest : LimitAsked
        smallest reading of the work returned
    returned_largest : LimitAsked
        largest reading of the work returned
    returned_out_of_round : LimitAsked
        out-of-round of the work returned
    returned_taper : LimitAsked
        taper of the work returned
    """

    returned_smallest: LimitAsked
    returned_largest: LimitAsked
    returned_out_of_round: LimitAsked
    returned_taper: LimitAsked


@dataclass(frozen=True, kw_only=True)
class BoreOrderResult:
    """None is what cannot be known.

    Attributes
    ----------
    finish_low : Quantity
        finish bore, lower limit at 20 °C
    finish_high : Quantity
        finish bore, upper limit at 20 °C
    bore_to : Quantity
        diameter to bore to; the rest is the hone's
    zone : Quantity
        upper less lower limit of the finish bore
    zone_over_2u : float | None
        zone over twice the expanded uncertainty: what the measurement can prove
    returned_smallest : Quantity | None
        smallest reading of the work returned
    returned_largest : Quantity | None
        largest reading of the work returned
    """

    finish_low: Quantity
    finish_high: Quantity
    bore_to: Quantity
    zone: Quantity
    zone_over_2u: float | None = None
    returned_smallest: Quantity | None = None
    returned_largest: Quantity | None = None


class BoreOrder(Calculation[BoreOrderResult]):
    """Sizes for the machinist, and the work returned.

    Finish bore as two limits (never ±), bore-to, and whether the work returned lies in them.
    Measure with the setting ring that the shop used, torque plate on or off as ordered, the bore
    washed and at 20 °C: it is warm after machining.
    """

    NAME = "bore-order"
    RESULT = BoreOrderResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "piston_size": "quantity",
        "clearance_low": "quantity",
        "clearance_high": "quantity",
        "hone_stock": "quantity",
        "size_uncertainty": "quantity",
        "returned_readings": "readings",
        "returned_out_of_round": "quantity",
        "returned_taper": "quantity",
        "limits": {
            "returned_smallest": {"low": "quantity", "high": "quantity"},
            "returned_largest": {"low": "quantity", "high": "quantity"},
            "returned_out_of_round": {"low": "quantity", "high": "quantity"},
            "returned_taper": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ],
        piston_size: QuantityLike,
        clearance_low: QuantityLike,
        clearance_high: QuantityLike,
        hone_stock: QuantityLike,
        size_uncertainty: QuantityLike | None = None,
        returned_readings: ReadingsLike | None = None,
        returned_out_of_round: QuantityLike | None = None,
        returned_taper: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: BoreOrderLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[BoreOrderResult]:
        """Ask ``bore-order`` one question.

        Parameters
        ----------
        bore_kind : str
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
        piston_size : QuantityLike
            the piston that goes in, as measured across the thrust axis at the maker's height
        clearance_low : QuantityLike
            least clearance wanted, diametral
        clearance_high : QuantityLike
            largest clearance wanted, diametral
        hone_stock : QuantityLike
            stock left for the hone after boring, on the diameter
        size_uncertainty : QuantityLike, optional
            expanded uncertainty (k = 2) of one bore diameter, by the gauge that proves the work;
            instead of one stated with the readings
        returned_readings : ReadingsLike, optional
            readings of the finished bore, both axes at each depth
        returned_out_of_round : QuantityLike, optional
            out-of-round of the finished bore, difference of two diameters at one depth
        returned_taper : QuantityLike, optional
            taper of the finished bore, difference of two diameters on one axis
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : BoreOrderLimits, optional
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
            "bore_kind": bore_kind,
            "piston_size": piston_size,
            "clearance_low": clearance_low,
            "clearance_high": clearance_high,
            "hone_stock": hone_stock,
            "size_uncertainty": size_uncertainty,
            "returned_readings": returned_readings,
            "returned_out_of_round": returned_out_of_round,
            "returned_taper": returned_taper,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
