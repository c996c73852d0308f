"""Side and back clearance of rings.

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


class RingSideClearanceLimits(TypedDict, total=False):
    """Limits of your own, by check: ring-side-clearance.

    Attributes
    ----------
    top_ring_side : LimitAsked
        side clearance of the top ring
    second_ring_side : LimitAsked
        side clearance of the second ring
    top_ring_back : LimitAsked
        room behind the top ring
    second_ring_back : LimitAsked
        room behind the second ring
    """

    top_ring_side: LimitAsked
    second_ring_side: LimitAsked
    top_ring_back: LimitAsked
    second_ring_back: LimitAsked


@dataclass(frozen=True, kw_only=True)
class RingSideClearanceResult:
    """None is what cannot be known.

    Attributes
    ----------
    top_side_clearance : Quantity | None
        side clearance of the top ring
    second_side_clearance : Quantity | None
        side clearance of the second ring
    top_back_clearance : Quantity | None
        room behind the top ring, radial
    second_back_clearance : Quantity | None
        room behind the second ring, radial
    """

    top_side_clearance: Quantity | None = None
    second_side_clearance: Quantity | None = None
    top_back_clearance: Quantity | None = None
    second_back_clearance: Quantity | None = None


class RingSideClearance(Calculation[RingSideClearanceResult]):
    """Side and back clearance of rings.

    Side clearance of the rings in their grooves, by feeler or from two widths, and the room behind
    them. Clean the carbon out of the groove and measure with a new ring all round: grooves wear
    bell-mouthed.
    """

    NAME = "ring-side-clearance"
    RESULT = RingSideClearanceResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "top_feeler": "quantity",
        "top_groove": "quantity",
        "top_width": "quantity",
        "second_feeler": "quantity",
        "second_groove": "quantity",
        "second_width": "quantity",
        "bore": "quantity",
        "top_groove_root": "quantity",
        "top_thickness": "quantity",
        "second_groove_root": "quantity",
        "second_thickness": "quantity",
        "limits": {
            "top_ring_side": {"low": "quantity", "high": "quantity"},
            "second_ring_side": {"low": "quantity", "high": "quantity"},
            "top_ring_back": {"low": "quantity", "high": "quantity"},
            "second_ring_back": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        top_feeler: QuantityLike | None = None,
        top_groove: QuantityLike | None = None,
        top_width: QuantityLike | None = None,
        top_shape: Literal["plain", "keystone"] | None = None,
        second_feeler: QuantityLike | None = None,
        second_groove: QuantityLike | None = None,
        second_width: QuantityLike | None = None,
        bore: QuantityLike | None = None,
        top_groove_root: QuantityLike | None = None,
        top_thickness: QuantityLike | None = None,
        second_groove_root: QuantityLike | None = None,
        second_thickness: QuantityLike | None = None,
        measured_with_new_ring: bool | None = None,
        condition: Literal["new", "used"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: RingSideClearanceLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[RingSideClearanceResult]:
        """Ask ``ring-side-clearance`` one question.

        Needed: ``top_feeler`` or ``top_groove`` or ``second_feeler`` or ``second_groove`` or
        ``bore`` or ``bore``.

        Parameters
        ----------
        top_feeler : QuantityLike, optional
            side clearance of the top ring by feeler, the tightest place all round
        top_groove : QuantityLike, optional
            width of the top ring's groove, the narrowest place
        top_width : QuantityLike, optional
            width of the top ring, along the cylinder
        top_shape : str, optional
            sides of the top ring (plain: plain: both sides parallel; keystone: keystone: one or
            both sides tapered) (default plain)
        second_feeler : QuantityLike, optional
            side clearance of the second ring by feeler, the tightest place all round
        second_groove : QuantityLike, optional
            width of the second ring's groove, the narrowest place
        second_width : QuantityLike, optional
            width of the second ring, along the cylinder
        bore : QuantityLike, optional
            bore
        top_groove_root : QuantityLike, optional
            piston at the root of the top ring's groove
        top_thickness : QuantityLike, optional
            radial thickness of the top ring
        second_groove_root : QuantityLike, optional
            piston at the root of the second ring's groove
        second_thickness : QuantityLike, optional
            radial thickness of the second ring
        measured_with_new_ring : bool, optional
            measured with a new ring (default yes)
        condition : str, optional
            which limits apply (new: new parts, as they go together; used: used parts against their
            service limit) (default used)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : RingSideClearanceLimits, optional
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
            "top_feeler": top_feeler,
            "top_groove": top_groove,
            "top_width": top_width,
            "top_shape": top_shape,
            "second_feeler": second_feeler,
            "second_groove": second_groove,
            "second_width": second_width,
            "bore": bore,
            "top_groove_root": top_groove_root,
            "top_thickness": top_thickness,
            "second_groove_root": second_groove_root,
            "second_thickness": second_thickness,
            "measured_with_new_ring": measured_with_new_ring,
            "condition": condition,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
