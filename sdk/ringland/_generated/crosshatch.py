"""Crosshatch angle.

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


class CrosshatchLimits(TypedDict, total=False):
    """Limits of your own, by check: crosshatch.

    Attributes
    ----------
    included_angle : LimitAsked
        included angle of the crosshatch
    """

    included_angle: LimitAsked


@dataclass(frozen=True, kw_only=True)
class CrosshatchResult:
    """None is what cannot be known.

    Attributes
    ----------
    circumferential_speed : Quantity
        speed of the stones around the bore
    axial_speed : Quantity
        mean speed of the stones along the bore
    included_angle_reached : Quantity
        included angle of the crosshatch at the mean stroke speed
    each_line : Quantity
        angle of each line from horizontal
    included_angle_at_mid_stroke : Quantity | None
        included angle at mid-stroke where a crank drives the stroke
    strokes_for_angle : Quantity | None
        full strokes a minute for the wanted included angle, at constant stroke speed
    finish : str | None
        surface that shops order for these rings; the ring maker's figure comes first
    """

    circumferential_speed: Quantity
    axial_speed: Quantity
    included_angle_reached: Quantity
    each_line: Quantity
    included_angle_at_mid_stroke: Quantity | None = None
    strokes_for_angle: Quantity | None = None
    finish: str | None = None


class Crosshatch(Calculation[CrosshatchResult]):
    """Crosshatch angle.

    Included angle of the lines that a hone leaves, and the strokes for a wanted one. 45° may mean
    the included angle or each line: the order says both (included 45°, each line 22.5° from
    horizontal). Overtravel about a third of the stones' length; the turning zones at the ends of
    the stroke come out flat.
    """

    NAME = "crosshatch"
    RESULT = CrosshatchResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "spindle_speed": "quantity",
        "travel": "quantity",
        "strokes_per_minute": "quantity",
        "included_angle": "quantity",
        "limits": {"included_angle": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        spindle_speed: QuantityLike,
        travel: QuantityLike,
        strokes_per_minute: QuantityLike,
        included_angle: QuantityLike | None = None,
        stroke_drive: Literal["constant", "crank", "unknown"] | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        ring_kind: Literal["plain_iron", "coated"] | None = None,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
        | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CrosshatchLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CrosshatchResult]:
        """Ask ``crosshatch`` one question.

        Parameters
        ----------
        bore : QuantityLike
            bore being honed
        spindle_speed : QuantityLike
            spindle speed of the hone
        travel : QuantityLike
            travel of the hone, end to end, overtravel at both ends counted
        strokes_per_minute : QuantityLike
            full strokes, down and up, a minute; not single strokes
        included_angle : QuantityLike, optional
            wanted included angle, between the two families of lines; twice what each line makes
            with horizontal
        stroke_drive : str, optional
            how the stroke is driven (constant: constant speed, turned round at the ends (hydraulic,
            or by hand); crank: driven by a crank, fastest at mid-stroke; unknown: not known)
            (default unknown)
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        ring_kind : str, optional
            kind of rings that will run on it (plain_iron: plain iron ring; coated: coated or
            nitrided ring)
        bore_kind : str, optional
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
            (default unknown)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CrosshatchLimits, optional
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
            "spindle_speed": spindle_speed,
            "travel": travel,
            "strokes_per_minute": strokes_per_minute,
            "included_angle": included_angle,
            "stroke_drive": stroke_drive,
            "cycle": cycle,
            "ring_kind": ring_kind,
            "bore_kind": bore_kind,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
