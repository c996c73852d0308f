"""Ring end gap.

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


class RingGapLimits(TypedDict, total=False):
    """Limits of your own, by check: ring-gap.

    Attributes
    ----------
    top_ring_gap_new : LimitAsked
        new top ring's gap
    second_ring_gap_new : LimitAsked
        new second ring's gap
    oil_rail_gap_new : LimitAsked
        oil rails' gap
    ring_gap_used : LimitAsked
        used ring's own gap
    """

    top_ring_gap_new: LimitAsked
    second_ring_gap_new: LimitAsked
    oil_rail_gap_new: LimitAsked
    ring_gap_used: LimitAsked


@dataclass(frozen=True, kw_only=True)
class RingGapResult:
    """None is what cannot be known.

    Attributes
    ----------
    top_wanted : Quantity | None
        least gap of the top ring
    second_wanted : Quantity | None
        least gap of the second ring, not smaller than the top ring's
    file_top : Quantity | None
        to file off the top ring: one end, towards its face, then deburr; none can be put back, and
        plated and chromed faces chip
    file_second : Quantity | None
        to file off the second ring: one end, towards its face, then deburr
    top_what_to_do : Literal['file', 'leave', 'too_large'] | None
        what the new top ring's gap calls for
    second_what_to_do : Literal['file', 'leave', 'too_large'] | None
        what the new second ring's gap calls for
    gap_growth : Quantity | None
        what the worn bore adds to the used ring's gap
    own_gap : Quantity | None
        the used ring's own gap, as in the unworn bore
    ring_wear : Quantity | None
        the ring's own share of the growth
    new_gap_in_worn_zone : Quantity | None
        the new top ring's gap in the worn zone
    hot_gap : Quantity | None
        the new top ring's gap when running, unfiled; for comparison only
    hot_gap_after_filing : Quantity | None
        the same after filing; for comparison only
    """

    top_wanted: Quantity | None = None
    second_wanted: Quantity | None = None
    file_top: Quantity | None = None
    file_second: Quantity | None = None
    top_what_to_do: Literal["file", "leave", "too_large"] | None = None
    second_what_to_do: Literal["file", "leave", "too_large"] | None = None
    gap_growth: Quantity | None = None
    own_gap: Quantity | None = None
    ring_wear: Quantity | None = None
    new_gap_in_worn_zone: Quantity | None = None
    hot_gap: Quantity | None = None
    hot_gap_after_filing: Quantity | None = None


class RingGap(Calculation[RingGapResult]):
    """Ring end gap.

    End gaps of new rings, wanted and to file, and a used ring's own gap less what its worn bore
    adds. The maker's range wins: inside it nothing is filed. Pinned two-stroke rings are measured
    at the pin.
    """

    NAME = "ring-gap"
    RESULT = RingGapResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "top_gap": "quantity",
        "second_gap": "quantity",
        "oil_rail_gap": "quantity",
        "old_gap": "quantity",
        "old_gap_depth": "quantity",
        "old_gap_pin_axis": "quantity",
        "old_gap_thrust_axis": "quantity",
        "unworn": "quantity",
        "gap_when_new": "quantity",
        "worn_pin_axis": "quantity",
        "worn_thrust_axis": "quantity",
        "bore_rise": "quantity",
        "ring_rise": "quantity",
        "ring_alpha": "quantity",
        "bore_alpha": "quantity",
        "limits": {
            "top_ring_gap_new": {"low": "quantity", "high": "quantity"},
            "second_ring_gap_new": {"low": "quantity", "high": "quantity"},
            "oil_rail_gap_new": {"low": "quantity", "high": "quantity"},
            "ring_gap_used": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        top_gap: QuantityLike | None = None,
        second_gap: QuantityLike | None = None,
        oil_rail_gap: QuantityLike | None = None,
        top_factor: float | None = None,
        second_factor: float | None = None,
        old_gap: QuantityLike | None = None,
        old_gap_depth: QuantityLike | None = None,
        old_gap_pin_axis: QuantityLike | None = None,
        old_gap_thrust_axis: QuantityLike | None = None,
        unworn: QuantityLike | None = None,
        gap_when_new: QuantityLike | None = None,
        worn_pin_axis: QuantityLike | None = None,
        worn_thrust_axis: QuantityLike | None = None,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
        | None = None,
        bore_rise: QuantityLike | None = None,
        ring_rise: QuantityLike | None = None,
        ring_alpha: QuantityLike | None = None,
        bore_alpha: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: RingGapLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[RingGapResult]:
        """Ask ``ring-gap`` one question.

        Parameters
        ----------
        bore : QuantityLike
            bore where the new rings are measured: finished, or least worn
        top_gap : QuantityLike, optional
            new top ring's gap, squared with the piston
        second_gap : QuantityLike, optional
            new second ring's gap, squared with the piston
        oil_rail_gap : QuantityLike, optional
            oil rails' gap, the smaller; the expander is never filed
        top_factor : float, optional
            top ring's gap as a share of the bore, where the maker gives no range (default 0.004)
        second_factor : float, optional
            second ring's gap as a share of the bore, where the maker gives no range (default 0.005)
        old_gap : QuantityLike, optional
            used ring's gap in its worn bore
        old_gap_depth : QuantityLike, optional
            depth below the deck where it was taken
        old_gap_pin_axis : QuantityLike, optional
            bore along the pin at that depth
        old_gap_thrust_axis : QuantityLike, optional
            bore across the pin at that depth
        unworn : QuantityLike, optional
            that bore where no ring runs
        gap_when_new : QuantityLike, optional
            the used ring's gap when new
        worn_pin_axis : QuantityLike, optional
            worn zone where the new top ring will run, along the pin, after honing
        worn_thrust_axis : QuantityLike, optional
            worn zone where the new top ring will run, across the pin, after honing
        bore_kind : str, optional
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
            (default unknown)
        bore_rise : QuantityLike, optional
            bore above 20 °C when running
        ring_rise : QuantityLike, optional
            ring above 20 °C when running
        ring_alpha : QuantityLike, optional
            expansion of the ring
        bore_alpha : QuantityLike, optional
            effective expansion of the bore; wins over its kind
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : RingGapLimits, optional
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
            "top_gap": top_gap,
            "second_gap": second_gap,
            "oil_rail_gap": oil_rail_gap,
            "top_factor": top_factor,
            "second_factor": second_factor,
            "old_gap": old_gap,
            "old_gap_depth": old_gap_depth,
            "old_gap_pin_axis": old_gap_pin_axis,
            "old_gap_thrust_axis": old_gap_thrust_axis,
            "unworn": unworn,
            "gap_when_new": gap_when_new,
            "worn_pin_axis": worn_pin_axis,
            "worn_thrust_axis": worn_thrust_axis,
            "bore_kind": bore_kind,
            "bore_rise": bore_rise,
            "ring_rise": ring_rise,
            "ring_alpha": ring_alpha,
            "bore_alpha": bore_alpha,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
