"""Piston position against crank angle.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


@dataclass(frozen=True, kw_only=True)
class PistonPositionResult:
    """None is what cannot be known.

    Attributes
    ----------
    crank_radius : Quantity
        crank radius that gives this stroke; half of it without an offset
    top_dead_centre : Quantity
        top dead centre after the crank has stood straight up, crank degrees
    upright_angle : Quantity | None
        crank angle asked about, from the crank standing straight up
    travel : Quantity | None
        piston travel from top dead centre at that angle
    travel_share : Quantity | None
        piston travel over the stroke
    angle_after : Quantity | None
        crank angle after top dead centre at which the piston, going down, has the travel asked
    angle_before : Quantity | None
        crank angle before top dead centre at which the piston, coming up, has the travel asked
    """

    crank_radius: Quantity
    top_dead_centre: Quantity
    upright_angle: Quantity | None = None
    travel: Quantity | None = None
    travel_share: Quantity | None = None
    angle_after: Quantity | None = None
    angle_before: Quantity | None = None


class PistonPosition(Calculation[PistonPositionResult]):
    """Piston position against crank angle.

    Piston travel at a crank angle, in mm and as a share of the stroke, and the crank angle at a
    travel, with the pin's or the bore's offset. At 90° the piston is past half its stroke. Find top
    dead centre with a positive stop from both sides and halve the reading: a dial indicator on the
    flat top is good for ±2° only (common practice, no source).
    """

    NAME = "piston-position"
    RESULT = PistonPositionResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "stroke": "quantity",
        "rod": "quantity",
        "pin_offset": "quantity",
        "crank_angle": "quantity",
        "travel_asked": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        stroke: QuantityLike,
        rod: QuantityLike,
        pin_offset: QuantityLike | None = None,
        crank_angle: QuantityLike | None = None,
        counted_from: Literal["top_dead_centre", "crank_upright"] | None = None,
        travel_asked: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[PistonPositionResult]:
        """Ask ``piston-position`` one question.

        Needed: ``crank_angle`` or ``travel_asked``.

        Parameters
        ----------
        stroke : QuantityLike
            stroke
        rod : QuantityLike
            rod length, centre to centre
        pin_offset : QuantityLike, optional
            offset of pin or bore axis from the crank axis, positive to the side to which the crank
            turns first after top dead centre (default 0.0 mm)
        crank_angle : QuantityLike, optional
            crank angle, negative before
        counted_from : str, optional
            what crank_angle counts from; one and the same without an offset (top_dead_centre: from
            the piston's own top dead centre; crank_upright: from the crank standing straight up,
            along the bore axis) (default top_dead_centre)
        travel_asked : QuantityLike, optional
            travel from top dead centre whose crank angle is asked
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "stroke": stroke,
            "rod": rod,
            "pin_offset": pin_offset,
            "crank_angle": crank_angle,
            "counted_from": counted_from,
            "travel_asked": travel_asked,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
