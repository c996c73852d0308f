"""Cranking compression: grading the level.

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


class CompressionLevelLimits(TypedDict, total=False):
    """Limits of your own, by check: compression-level.

    Attributes
    ----------
    compression_least : LimitAsked
        compression, brought to the altitude of its limit
    """

    compression_least: LimitAsked


@dataclass(frozen=True, kw_only=True)
class CompressionLevelResult:
    """None is what cannot be known.

    Attributes
    ----------
    reading_at_sea_level : Quantity
        the reading brought to sea level, gauge
    reading_at_expected_altitude : Quantity
        the reading brought to the altitude that the limit is stated for, gauge
    air_pressure_here : Quantity
        air pressure where the test was made, absolute
    air_pressure_at_expected_altitude : Quantity
        air pressure at the altitude that the limit is stated for, absolute
    gradeable : str
        whether the level can be graded
    unmet_conditions : float
        stated conditions of the test that were not met; each is named in the warnings
    ratio : float | None
        reading over the expected reading
    grade : str
        level of the reading
    gauge_uncertainty : Quantity | None
        expanded uncertainty of the reading from the gauge alone, k = 2
    reading_uncertainty : Quantity | None
        expanded uncertainty of the reading from gauge, repeat and weather, k = 2
    """

    reading_at_sea_level: Quantity
    reading_at_expected_altitude: Quantity
    air_pressure_here: Quantity
    air_pressure_at_expected_altitude: Quantity
    gradeable: Literal[
        "yes", "decompressor_unknown", "decompressor_active", "conditions_not_met", "reading_unfit"
    ]
    unmet_conditions: float
    ratio: float | None = None
    grade: Literal["high", "good", "watch", "low", "very_low", "not_judged"] | None = None
    gauge_uncertainty: Quantity | None = None
    reading_uncertainty: Quantity | None = None


class CompressionLevel(Calculation[CompressionLevelResult]):
    """Cranking compression: grading the level.

    A compression reading against the pressure expected here, and against a limit at the altitude
    that it is stated for. The maker's minimum wins. Peaks of the starter current say nothing of the
    level.
    """

    NAME = "compression-level"
    RESULT = CompressionLevelResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "reading": "quantity",
        "expected": "quantity",
        "altitude": "quantity",
        "air_pressure": "quantity",
        "weather_report": "quantity",
        "expected_altitude": "quantity",
        "gauge_error": "quantity",
        "repeatability": "quantity",
        "hose_error": "quantity",
        "weather": "quantity",
        "battery": "quantity",
        "limits": {"compression_least": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        reading: QuantityLike,
        expected: QuantityLike | None = None,
        altitude: QuantityLike | None = None,
        air_pressure: QuantityLike | None = None,
        weather_report: QuantityLike | None = None,
        expected_altitude: QuantityLike | None = None,
        gauge_error: QuantityLike | None = None,
        repeatability: QuantityLike | None = None,
        hose_error: QuantityLike | None = None,
        weather: QuantityLike | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        valve_gear: Literal["overhead_valves", "side_valve", "ports", "unknown"] | None = None,
        decompressor: Literal[
            "none",
            "automatic_exhaust_lifter",
            "automatic_intake_side",
            "manual_lifter",
            "manual_two_stroke_valve",
            "unknown",
        ]
        | None = None,
        decompressor_state: Literal[
            "none", "automatic_held_off", "automatic_active", "manual_not_used", "unknown"
        ]
        | None = None,
        starter: Literal["electric", "kick", "rope"] | None = None,
        throttle_open: bool | None = None,
        choke_off: bool | None = None,
        engine_warm: bool | None = None,
        plugs_out: bool | None = None,
        air_filter_fitted: bool | None = None,
        battery: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CompressionLevelLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CompressionLevelResult]:
        """Ask ``compression-level`` one question.

        Parameters
        ----------
        reading : QuantityLike
            compression reading once it rises no more, gauge
        expected : QuantityLike, optional
            pressure expected of a sound cylinder here, gauge
        altitude : QuantityLike, optional
            altitude of the place (geopotential)
        air_pressure : QuantityLike, optional
            air pressure on the spot, absolute
        weather_report : QuantityLike, optional
            air pressure of the weather report, absolute, brought to sea level; needs the altitude
        expected_altitude : QuantityLike, optional
            altitude that the limit is stated for; absent, sea level
        gauge_error : QuantityLike, optional
            maximum error of the gauge, ± share of the reading
        repeatability : QuantityLike, optional
            how well the reading repeats, ±
        hose_error : QuantityLike, optional
            error of the reading by the room in the gauge's hose; negative: it reads low
        weather : QuantityLike, optional
            weather's part of an air pressure worked out from altitude, ±
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        valve_gear : str, optional
            valve gear (overhead_valves: four-stroke, valves in the head; side_valve: four-stroke,
            valves beside the cylinder; ports: two-stroke, ports in the cylinder; unknown: not
            known: no bands are applied) (default unknown)
        decompressor : str, optional
            kind of decompressor (none: no decompressor; automatic_exhaust_lifter: automatic, lifts
            the exhaust valve by weights or the cam; automatic_intake_side: automatic, holds the
            intake valve or closes it late; manual_lifter: manual valve lifter;
            manual_two_stroke_valve: manual valve in the head or above the exhaust port, two-stroke;
            unknown: not known) (default unknown)
        decompressor_state : str, optional
            decompressor during the test (none: no decompressor; automatic_held_off: automatic one
            held off during the test; automatic_active: automatic one at work during the test;
            manual_not_used: manual one not used during the test; unknown: not known) (default
            unknown)
        starter : str, optional
            what turns the engine (electric: electric; kick: kick; rope: rope)
        throttle_open : bool, optional
            throttle held open, a vacuum slide lifted too
        choke_off : bool, optional
            choke off
        engine_warm : bool, optional
            engine warm
        plugs_out : bool, optional
            all plugs out
        air_filter_fitted : bool, optional
            air filter fitted
        battery : QuantityLike, optional
            battery while cranking
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CompressionLevelLimits, optional
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
            "reading": reading,
            "expected": expected,
            "altitude": altitude,
            "air_pressure": air_pressure,
            "weather_report": weather_report,
            "expected_altitude": expected_altitude,
            "gauge_error": gauge_error,
            "repeatability": repeatability,
            "hose_error": hose_error,
            "weather": weather,
            "cycle": cycle,
            "valve_gear": valve_gear,
            "decompressor": decompressor,
            "decompressor_state": decompressor_state,
            "starter": starter,
            "throttle_open": throttle_open,
            "choke_off": choke_off,
            "engine_warm": engine_warm,
            "plugs_out": plugs_out,
            "air_filter_fitted": air_filter_fitted,
            "battery": battery,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
