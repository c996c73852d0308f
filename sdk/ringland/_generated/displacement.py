"""Displacement.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class DisplacementLimits(TypedDict, total=False):
    """Limits of your own, by check: displacement.

    Attributes
    ----------
    class_limit : LimitAsked
        displacement within its class
    class_limit_after : LimitAsked
        displacement after machining within its class, at the largest finish bore
    """

    class_limit: LimitAsked
    class_limit_after: LimitAsked


@dataclass(frozen=True, kw_only=True)
class DisplacementResult:
    """None is what cannot be known.

    Attributes
    ----------
    displacement : Quantity
        displacement
    piston_area : Quantity
        area of one bore
    new_displacement : Quantity | None
        displacement after machining
    largest_new_displacement : Quantity | None
        largest displacement that the finish bore may come to; the class is judged by it
    change : Quantity | None
        change of displacement
    change_percent : Quantity | None
        change of displacement
    largest_bore_for_class : Quantity | None
        largest bore within the class
    """

    displacement: Quantity
    piston_area: Quantity
    new_displacement: Quantity | None = None
    largest_new_displacement: Quantity | None = None
    change: Quantity | None = None
    change_percent: Quantity | None = None
    largest_bore_for_class: Quantity | None = None


class Displacement(Calculation[DisplacementResult]):
    """Displacement.

    Displacement of an engine, what boring does to it, and the largest bore of a class.
    """

    NAME = "displacement"
    RESULT = DisplacementResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "stroke": "quantity",
        "new_bore": "quantity",
        "finish_high": "quantity",
        "class_limit": "quantity",
        "limits": {
            "class_limit": {"low": "quantity", "high": "quantity"},
            "class_limit_after": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        stroke: QuantityLike,
        cylinder_count: int | None = None,
        new_bore: QuantityLike | None = None,
        finish_high: QuantityLike | None = None,
        class_limit: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: DisplacementLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[DisplacementResult]:
        """Ask ``displacement`` one question.

        Parameters
        ----------
        bore : QuantityLike
            cylinder bore
        stroke : QuantityLike
            stroke
        cylinder_count : int, optional
            number of cylinders of this size (default 1)
        new_bore : QuantityLike, optional
            bore after machining
        finish_high : QuantityLike, optional
            upper limit of the finish bore: the class is judged there
        class_limit : QuantityLike, optional
            largest displacement that the class or licence allows
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : DisplacementLimits, optional
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
            "cylinder_count": cylinder_count,
            "new_bore": new_bore,
            "finish_high": finish_high,
            "class_limit": class_limit,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
