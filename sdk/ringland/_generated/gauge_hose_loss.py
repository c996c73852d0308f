"""Loss of reading in the gauge's hose.

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


class GaugeHoseLossLimits(TypedDict, total=False):
    """Limits of your own, by check: gauge-hose-loss.

    Attributes
    ----------
    gauge_hose_error : LimitAsked
        error of the gauge's hose on this cylinder
    """

    gauge_hose_error: LimitAsked


@dataclass(frozen=True, kw_only=True)
class GaugeHoseLossResult:
    """None is what cannot be known.

    Attributes
    ----------
    ratio : float
        dynamic compression ratio of the cylinder
    ratio_with_hose : float
        ratio with the hose's room added to both ends of the stroke
    air_pressure_here : Quantity
        air pressure that was used, absolute
    true : Quantity | None
        pressure without the hose, gauge
    shown : Quantity | None
        pressure that the gauge shows
    reading_error : Quantity | None
        error of the reading; negative: the gauge reads low
    """

    ratio: float
    ratio_with_hose: float
    air_pressure_here: Quantity
    true: Quantity | None = None
    shown: Quantity | None = None
    reading_error: Quantity | None = None


class GaugeHoseLoss(Calculation[GaugeHoseLossResult]):
    """Loss of reading in the gauge's hose.

    What a compression gauge loses to the room in its hose and adaptor.
    """

    NAME = "gauge-hose-loss"
    RESULT = GaugeHoseLossResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "effective_volume": "quantity",
        "clearance": "quantity",
        "hose_volume": "quantity",
        "altitude": "quantity",
        "air_pressure": "quantity",
        "weather_report": "quantity",
        "limits": {"gauge_hose_error": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        effective_volume: QuantityLike,
        clearance: QuantityLike,
        hose_volume: QuantityLike,
        n: float | None = None,
        altitude: QuantityLike | None = None,
        air_pressure: QuantityLike | None = None,
        weather_report: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: GaugeHoseLossLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[GaugeHoseLossResult]:
        """Ask ``gauge-hose-loss`` one question.

        Parameters
        ----------
        effective_volume : QuantityLike
            volume swept after the intake valve or port has closed
        clearance : QuantityLike
            volume above the piston at top dead centre
        hose_volume : QuantityLike
            room between the cylinder and the gauge's check valve: hose and bore of the adaptor
        n : float, optional
            compression exponent (default 1.25)
        altitude : QuantityLike, optional
            altitude of the place
        air_pressure : QuantityLike, optional
            air pressure on the spot, absolute
        weather_report : QuantityLike, optional
            air pressure of the weather report, absolute, brought to sea level; needs the altitude
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : GaugeHoseLossLimits, optional
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
            "effective_volume": effective_volume,
            "clearance": clearance,
            "hose_volume": hose_volume,
            "n": n,
            "altitude": altitude,
            "air_pressure": air_pressure,
            "weather_report": weather_report,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
