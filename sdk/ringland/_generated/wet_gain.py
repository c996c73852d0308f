"""Wet-test gain.

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
class WetGainResult:
    """None is what cannot be known.

    Attributes
    ----------
    gain : Quantity
        gain of the reading with oil
    dry_ratio : float | None
        dynamic or trapped ratio without oil
    ratio_with_oil : float | None
        the ratio with all of the oil above the piston
    volume_only_gain : Quantity | None
        gain that the oil's volume gives on sound rings; upper bound, as some oil runs off
    excess_gain : Quantity | None
        gain beyond what the oil's volume gives
    finding : str
        what the excess says of the rings; a big gap or a broken ring does not gain
    recommended_oil : Quantity | None
        dose for this cylinder: a tenth of its clearance volume, 0.5 to 5 mL
    wet_over_expected : float | None
        reading with oil over the expected pressure
    """

    gain: Quantity
    dry_ratio: float | None = None
    ratio_with_oil: float | None = None
    volume_only_gain: Quantity | None = None
    excess_gain: Quantity | None = None
    finding: Literal["rings_and_bore", "some_ring_leak", "rings_not_shown"] | None = None
    recommended_oil: Quantity | None = None
    wet_over_expected: float | None = None


class WetGain(Calculation[WetGainResult]):
    """Wet-test gain.

    What oil in the cylinder adds to the compression reading, less what its volume alone adds: rings
    or valves.
    """

    NAME = "wet-gain"
    RESULT = WetGainResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "reading": "quantity",
        "wet": "quantity",
        "wet_oil": "quantity",
        "clearance": "quantity",
        "effective_volume": "quantity",
        "expected": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        reading: QuantityLike,
        wet: QuantityLike,
        wet_oil: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        effective_volume: QuantityLike | None = None,
        n: float | None = None,
        expected: QuantityLike | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        cylinder_upright: bool | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[WetGainResult]:
        """Ask ``wet-gain`` one question.

        Parameters
        ----------
        reading : QuantityLike
            reading before the oil, gauge
        wet : QuantityLike
            reading with the oil in, gauge, same gauge and starter
        wet_oil : QuantityLike, optional
            oil put in, measured by syringe
        clearance : QuantityLike, optional
            volume above the piston at top dead centre
        effective_volume : QuantityLike, optional
            volume swept after the intake valve or port has closed
        n : float, optional
            compression exponent (default 1.25)
        expected : QuantityLike, optional
            pressure expected of a sound cylinder here, gauge
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        cylinder_upright : bool, optional
            the cylinder stands upright
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
            "reading": reading,
            "wet": wet,
            "wet_oil": wet_oil,
            "clearance": clearance,
            "effective_volume": effective_volume,
            "n": n,
            "expected": expected,
            "cycle": cycle,
            "cylinder_upright": cylinder_upright,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
