"""Dynamic compression ratio.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


@dataclass(frozen=True, kw_only=True)
class DynamicRatioResult:
    """None is what cannot be known.

    Attributes
    ----------
    effective_stroke : Quantity
        stroke left for compression once the intake valve has closed
    effective_volume : Quantity
        volume swept once the intake valve has closed
    dynamic_ratio : float
        dynamic (effective) compression ratio, at the lift stated
    static_ratio : float
        static (geometric) compression ratio
    """

    effective_stroke: Quantity
    effective_volume: Quantity
    dynamic_ratio: float
    static_ratio: float


class DynamicRatio(Calculation[DynamicRatioResult]):
    """Dynamic compression ratio.

    Compression ratio of what is left in the cylinder once the intake valve has closed.
    """

    NAME = "dynamic-ratio"
    RESULT = DynamicRatioResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "stroke": "quantity",
        "rod": "quantity",
        "clearance": "quantity",
        "intake_closes": "quantity",
        "closing_lift": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        stroke: QuantityLike,
        rod: QuantityLike,
        clearance: QuantityLike,
        intake_closes: QuantityLike,
        closing_lift: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[DynamicRatioResult]:
        """Ask ``dynamic-ratio`` one question.

        Parameters
        ----------
        bore : QuantityLike
            cylinder bore
        stroke : QuantityLike
            stroke
        rod : QuantityLike
            rod length, centre to centre
        clearance : QuantityLike
            clearance volume: above the piston at top dead centre
        intake_closes : QuantityLike
            intake closes after bottom dead centre, crank degrees
        closing_lift : QuantityLike, optional
            valve lift at which that closing angle is stated
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
            "bore": bore,
            "stroke": stroke,
            "rod": rod,
            "clearance": clearance,
            "intake_closes": intake_closes,
            "closing_lift": closing_lift,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
