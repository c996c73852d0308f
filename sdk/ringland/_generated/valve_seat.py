"""Valve seat width and narrowing cuts.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class ValveSeatLimits(TypedDict, total=False):
    """Limits of your own, by check: valve-seat.

    Attributes
    ----------
    seat_width : LimitAsked
        width of the contact as found
    seat_width_after_top_cut : LimitAsked
        width after the top cutter alone
    seat_width_after_both : LimitAsked
        width after both cutters
    contact_place : RatioLimitAsked
        middle of the contact on the valve's face
    seat_runout : LimitAsked
        run-out of the seat
    valve_rim : LimitAsked
        thickness of the valve's rim
    """

    seat_width: LimitAsked
    seat_width_after_top_cut: LimitAsked
    seat_width_after_both: LimitAsked
    contact_place: RatioLimitAsked
    seat_runout: LimitAsked
    valve_rim: LimitAsked


@dataclass(frozen=True, kw_only=True)
class ValveSeatResult:
    """None is what cannot be known.

    Attributes
    ----------
    width : Quantity
        width of the contact along its face
    contact_mean_diameter : Quantity
        mean diameter of the contact
    outer_edge_inside_valve_rim : Quantity | None
        outer edge of the contact inside the valve's rim, radial
    contact_place : float | None
        where the middle of the contact stands on the valve's face: 0 at the rim, 1 at its inner
        edge
    outer_diameter_drop_per_feed : Quantity | None
        what the feed of the top cutter takes off the outer diameter
    width_after_top_cut : Quantity | None
        width after the top cutter alone
    inside_rim_after_top_cut : Quantity | None
        outer edge inside the valve's rim after the top cutter, radial
    inner_diameter_rise_per_feed : Quantity | None
        what the feed of the bottom cutter adds to the inner diameter
    width_after_bottom_cut : Quantity | None
        width after the bottom cutter alone
    width_after_both : Quantity | None
        width after both cutters
    top_feed_needed : Quantity | None
        feed of the top cutter down to the wanted outer diameter
    bottom_feed_needed : Quantity | None
        feed of the bottom cutter to the wanted width, after the top cutter where an outer diameter
        is wanted; below zero: too narrow already, widen with the seat's own cutter
    """

    width: Quantity
    contact_mean_diameter: Quantity
    outer_edge_inside_valve_rim: Quantity | None = None
    contact_place: float | None = None
    outer_diameter_drop_per_feed: Quantity | None = None
    width_after_top_cut: Quantity | None = None
    inside_rim_after_top_cut: Quantity | None = None
    inner_diameter_rise_per_feed: Quantity | None = None
    width_after_bottom_cut: Quantity | None = None
    width_after_both: Quantity | None = None
    top_feed_needed: Quantity | None = None
    bottom_feed_needed: Quantity | None = None


class ValveSeat(Calculation[ValveSeatResult]):
    """Valve seat width and narrowing cuts.

    Width of the contact along its face and its place on the valve, what a feed of the top and the
    bottom cutter does to it, and the feed that a wanted contact takes. Feed in small bites; lapping
    does not cure width; titanium and coated valves are neither lapped nor refaced. After any valve
    work a leak test: solvent in the port and no drip for 30 to 60 s, or a vacuum on the port that
    holds (common practice).
    """

    NAME = "valve-seat"
    RESULT = ValveSeatResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "seat_outer_diameter": "quantity",
        "seat_inner_diameter": "quantity",
        "seat_angle": "quantity",
        "valve_head_diameter": "quantity",
        "face_width": "quantity",
        "rim": "quantity",
        "seat_runout": "quantity",
        "top_cutter": "quantity",
        "bottom_cutter": "quantity",
        "feed": "quantity",
        "wanted_outer_diameter": "quantity",
        "wanted_width": "quantity",
        "limits": {
            "seat_width": {"low": "quantity", "high": "quantity"},
            "seat_width_after_top_cut": {"low": "quantity", "high": "quantity"},
            "seat_width_after_both": {"low": "quantity", "high": "quantity"},
            "seat_runout": {"low": "quantity", "high": "quantity"},
            "valve_rim": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        valve_kind: Literal["intake", "exhaust"],
        seat_outer_diameter: QuantityLike,
        seat_inner_diameter: QuantityLike,
        seat_angle: QuantityLike,
        condition: Literal["new", "used"] | None = None,
        valve_head_diameter: QuantityLike | None = None,
        face_width: QuantityLike | None = None,
        rim: QuantityLike | None = None,
        seat_runout: QuantityLike | None = None,
        top_cutter: QuantityLike | None = None,
        bottom_cutter: QuantityLike | None = None,
        feed: QuantityLike | None = None,
        wanted_outer_diameter: QuantityLike | None = None,
        wanted_width: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: ValveSeatLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[ValveSeatResult]:
        """Ask ``valve-seat`` one question.

        Parameters
        ----------
        valve_kind : str
            which valve (intake: intake valve; exhaust: exhaust valve)
        seat_outer_diameter : QuantityLike
            outer diameter of the contact, by marking blue
        seat_inner_diameter : QuantityLike
            inner diameter of the contact, by marking blue
        seat_angle : QuantityLike
            angle of the seat, from the plane across the valve's axis
        condition : str, optional
            which limits apply to the width as found (new: new parts, as they go together; used:
            used parts against their service limit) (default used)
        valve_head_diameter : QuantityLike, optional
            diameter of the valve head
        face_width : QuantityLike, optional
            width of the valve's face along it, from the rim inwards
        rim : QuantityLike, optional
            thickness of the valve's rim, along the valve
        seat_runout : QuantityLike, optional
            run-out of the seat about the pilot in its guide, total indicator reading
        top_cutter : QuantityLike, optional
            angle of the top cutter, which lowers the outer edge; flatter than the seat
        bottom_cutter : QuantityLike, optional
            angle of the bottom cutter, which raises the inner edge; steeper than the seat
        feed : QuantityLike, optional
            feed of each cutter along the valve, from where it touches
        wanted_outer_diameter : QuantityLike, optional
            outer diameter of the contact wanted, for the feed of the top cutter
        wanted_width : QuantityLike, optional
            width of the contact wanted, for the feed of the bottom cutter
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : ValveSeatLimits, optional
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
            "valve_kind": valve_kind,
            "seat_outer_diameter": seat_outer_diameter,
            "seat_inner_diameter": seat_inner_diameter,
            "seat_angle": seat_angle,
            "condition": condition,
            "valve_head_diameter": valve_head_diameter,
            "face_width": face_width,
            "rim": rim,
            "seat_runout": seat_runout,
            "top_cutter": top_cutter,
            "bottom_cutter": bottom_cutter,
            "feed": feed,
            "wanted_outer_diameter": wanted_outer_diameter,
            "wanted_width": wanted_width,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
