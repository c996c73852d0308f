"""Build-up over the first strokes.

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
from ringland._types import QuantityLike, ReadingsLike


@dataclass(frozen=True, kw_only=True)
class PressureBuildUpResult:
    """None is what cannot be known.

    Attributes
    ----------
    first_over_expected : float
        first stroke over the expected pressure
    last_over_expected : float
        last stroke over the expected pressure
    rise : float
        rise from first to last stroke; it mixes the level with the gauge's own volume
    first_over_last : float
        first over last stroke
    strokes_to_95 : int
        strokes until 95 % of the last reading
    pattern : str
        pattern of the build-up
    q : float | None
        first over last stroke, against the same gauge on a sound cylinder
    """

    first_over_expected: float
    last_over_expected: float
    rise: float
    first_over_last: float
    strokes_to_95: int
    pattern: (
        Literal[
            "higher_than_expected",
            "pattern_not_judged",
            "slow_but_full",
            "normal",
            "builds_up_but_short",
            "like_a_fixed_leak",
        ]
        | None
    ) = None
    q: float | None = None


class PressureBuildUp(Calculation[PressureBuildUpResult]):
    """Build-up over the first strokes.

    How the compression reading comes up stroke by stroke, against the same gauge and hose on a
    sound cylinder. A long hose pumps up slowly on any engine: never compare patterns of two gauges.
    """

    NAME = "pressure-build-up"
    RESULT = PressureBuildUpResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "stroke_readings": "readings",
        "expected": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        stroke_readings: ReadingsLike,
        expected: QuantityLike,
        baseline_first_over_last: float | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[PressureBuildUpResult]:
        """Ask ``pressure-build-up`` one question.

        Parameters
        ----------
        stroke_readings : ReadingsLike
            reading at each compression stroke of one pull, gauge
        expected : QuantityLike
            pressure expected of a sound cylinder here, gauge
        baseline_first_over_last : float, optional
            first over last stroke of the same gauge and hose on a sound cylinder of like size
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
            "stroke_readings": stroke_readings,
            "expected": expected,
            "baseline_first_over_last": baseline_first_over_last,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
