"""Expected cranking pressure.

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
class CrankingPressureResult:
    """None is what cannot be known.

    Attributes
    ----------
    air_pressure_here : Quantity
        air pressure that was used, absolute
    low : Quantity | None
        expected pressure, low, gauge, throttle open
    mid : Quantity | None
        expected pressure, middle, gauge, throttle open
    high : Quantity | None
        expected pressure, high, gauge, throttle open
    throttle_closed_mid : Quantity | None
        middle pressure that the same cylinder reads with the throttle closed, gauge
    decompressor_ratio : float | None
        ratio left once the decompressor has closed, all pressure before that lost
    decompressor_mid : Quantity | None
        lower bound of the middle pressure with the decompressor at work, gauge; the true reading
        lies between it and the middle pressure
    """

    air_pressure_here: Quantity
    low: Quantity | None = None
    mid: Quantity | None = None
    high: Quantity | None = None
    throttle_closed_mid: Quantity | None = None
    decompressor_ratio: float | None = None
    decompressor_mid: Quantity | None = None


class CrankingPressure(Calculation[CrankingPressureResult]):
    """Expected cranking pressure.

    What a sound cylinder reads on the starter here, with the throttle open or closed and with a
    decompressor at work. The maker's figure wins. Supercharged engines crank unboosted; side-valve
    engines go by their own ratio and closing angle.
    """

    NAME = "cranking-pressure"
    RESULT = CrankingPressureResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "altitude": "quantity",
        "air_pressure": "quantity",
        "weather_report": "quantity",
        "throttle_closed_manifold": "quantity",
        "decompressor_closes": "quantity",
        "bore": "quantity",
        "stroke": "quantity",
        "rod": "quantity",
        "clearance": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        ratio: float,
        altitude: QuantityLike | None = None,
        air_pressure: QuantityLike | None = None,
        weather_report: QuantityLike | None = None,
        n_low: float | None = None,
        n_mid: float | None = None,
        n_high: float | None = None,
        throttle_closed_manifold: QuantityLike | None = None,
        decompressor_closes: QuantityLike | None = None,
        bore: QuantityLike | None = None,
        stroke: QuantityLike | None = None,
        rod: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CrankingPressureResult]:
        """Ask ``cranking-pressure`` one question.

        Parameters
        ----------
        ratio : float
            dynamic ratio (closing angle at 0.1 to 0.3 mm of lift) or trapped ratio of a two-stroke
        altitude : QuantityLike, optional
            altitude of the place (geopotential)
        air_pressure : QuantityLike, optional
            air pressure on the spot, absolute
        weather_report : QuantityLike, optional
            air pressure of the weather report, absolute, brought to sea level; needs the altitude
        n_low : float, optional
            compression exponent of a slow, cold or leaky engine (default 1.2)
        n_mid : float, optional
            compression exponent of a usual engine on the starter (default 1.25)
        n_high : float, optional
            compression exponent of a fast, warm and tight engine (default 1.3)
        throttle_closed_manifold : QuantityLike, optional
            intake pressure with the throttle closed, absolute
        decompressor_closes : QuantityLike, optional
            decompressor closing after bottom dead centre, crank; a manual one is shut for the test
        bore : QuantityLike, optional
            cylinder bore, for the decompressor
        stroke : QuantityLike, optional
            stroke, for the decompressor
        rod : QuantityLike, optional
            rod, centre to centre, for the decompressor
        clearance : QuantityLike, optional
            volume above the piston at top dead centre, for the decompressor
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
            "ratio": ratio,
            "altitude": altitude,
            "air_pressure": air_pressure,
            "weather_report": weather_report,
            "n_low": n_low,
            "n_mid": n_mid,
            "n_high": n_high,
            "throttle_closed_manifold": throttle_closed_manifold,
            "decompressor_closes": decompressor_closes,
            "bore": bore,
            "stroke": stroke,
            "rod": rod,
            "clearance": clearance,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
