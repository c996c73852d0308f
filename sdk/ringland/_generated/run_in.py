"""Running in.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings


class RunInStep(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    fraction : float
        share of rated speed
    minutes : float
        minutes in this step; 0 for the open end
    """

    fraction: float
    minutes: float


@dataclass(frozen=True, kw_only=True)
class RunInResult:
    """None is what cannot be known.

    Attributes
    ----------
    mean_piston_speed_at_rated : Quantity
        mean piston speed at rated speed
    step_speed : Readings | None
        highest speed of each step
    step_mean_speed : Readings | None
        mean piston speed of each step
    total_minutes : float | None
        minutes of all steps together
    compression_change : Quantity | None
        change of compression
    compression_change_percent : Quantity | None
        change of compression, share of the reading before
    leak_change : Quantity | None
        change of leak-down, in points
    before_first_start : tuple[str | float, ...]
        before the first start
    recheck_list : tuple[str | float, ...]
        to be read or done again
    """

    mean_piston_speed_at_rated: Quantity
    step_speed: Readings | None = None
    step_mean_speed: Readings | None = None
    total_minutes: float | None = None
    compression_change: Quantity | None = None
    compression_change_percent: Quantity | None = None
    leak_change: Quantity | None = None
    before_first_start: tuple[str | float, ...]
    recheck_list: tuple[str | float, ...]


class RunIn(Calculation[RunInResult]):
    """Running in.

    Steps of running in with their piston speeds, what compression and leak-down did meanwhile, and
    what is looked at before and after. The maker's steps win. Long idling and low load glaze the
    bore.
    """

    NAME = "run-in"
    RESULT = RunInResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "stroke": "quantity",
        "rated_speed": "quantity",
        "compression_before": "quantity",
        "compression_after": "quantity",
        "leak_before": "quantity",
        "leak_after": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        stroke: QuantityLike,
        rated_speed: QuantityLike,
        steps: Sequence[RunInStep] | None = None,
        compression_before: QuantityLike | None = None,
        compression_after: QuantityLike | None = None,
        leak_before: QuantityLike | None = None,
        leak_after: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[RunInResult]:
        """Ask ``run-in`` one question.

        Parameters
        ----------
        stroke : QuantityLike
            stroke
        rated_speed : QuantityLike
            rated speed
        steps : Sequence[RunInStep], optional
            steps of running in, with varied load; without them 50, 60, 75 and 100 % of rated speed
        compression_before : QuantityLike, optional
            compression before running in, gauge
        compression_after : QuantityLike, optional
            compression after running in, gauge
        leak_before : QuantityLike, optional
            leak-down before running in
        leak_after : QuantityLike, optional
            leak-down after running in
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
            "rated_speed": rated_speed,
            "steps": steps,
            "compression_before": compression_before,
            "compression_after": compression_after,
            "leak_before": leak_before,
            "leak_after": leak_after,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
