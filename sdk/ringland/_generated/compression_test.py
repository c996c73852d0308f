"""Compression test.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._parts import MeasureNext, NotWorkedOut
from ringland._generated._words import Defaults, Rule, Units
from ringland._generated.air_pressure import AirPressureResult
from ringland._generated.compression_level import CompressionLevelResult
from ringland._generated.cranking_pressure import CrankingPressureResult
from ringland._generated.cylinder_spread import CylinderSpreadResult
from ringland._generated.dynamic_ratio import DynamicRatioResult
from ringland._generated.port_timing import PortTimingResult
from ringland._generated.pressure_build_up import PressureBuildUpResult
from ringland._generated.wet_gain import WetGainResult
from ringland._types import QuantityLike, ReadingsLike


class CompressionTestLimits(TypedDict, total=False):
    """Limits of your own, by check: compression-test.

    Attributes
    ----------
    compression_least : LimitAsked
        compression, brought to the altitude of its limit
    lowest_over_highest : RatioLimitAsked
        lowest cylinder over the highest
    """

    compression_least: LimitAsked
    lowest_over_highest: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class CompressionTestResult:
    """None is what cannot be known.

    Attributes
    ----------
    dynamic_ratio : DynamicRatioResult | None
    port_timing : PortTimingResult | None
    cranking_pressure : CrankingPressureResult | None
    air_pressure : AirPressureResult | None
    compression_level : CompressionLevelResult | None
    cylinder_spread : CylinderSpreadResult | None
    wet_gain : WetGainResult | None
    pressure_build_up : PressureBuildUpResult | None
    not_worked_out : tuple[NotWorkedOut, ...] | None
    measure_next : tuple[MeasureNext, ...]
    """

    dynamic_ratio: DynamicRatioResult | None = None
    port_timing: PortTimingResult | None = None
    cranking_pressure: CrankingPressureResult | None = None
    air_pressure: AirPressureResult | None = None
    compression_level: CompressionLevelResult | None = None
    cylinder_spread: CylinderSpreadResult | None = None
    wet_gain: WetGainResult | None = None
    pressure_build_up: PressureBuildUpResult | None = None
    not_worked_out: tuple[NotWorkedOut, ...] | None = None
    measure_next: tuple[MeasureNext, ...]


class CompressionTest(Calculation[CompressionTestResult]):
    """Compression test.

    A compression test graded for this engine at this place, as far as it is known.
    """

    NAME = "compression-test"
    RESULT = CompressionTestResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "reading": "quantity",
        "stroke_readings": "readings",
        "readings": "readings",
        "first_again": "quantity",
        "wet": "quantity",
        "wet_oil": "quantity",
        "expected": "quantity",
        "expected_altitude": "quantity",
        "gauge_error": "quantity",
        "repeatability": "quantity",
        "hose_error": "quantity",
        "weather": "quantity",
        "altitude": "quantity",
        "air_pressure": "quantity",
        "weather_report": "quantity",
        "decompressor_closes": "quantity",
        "throttle_closed_manifold": "quantity",
        "battery": "quantity",
        "bore": "quantity",
        "stroke": "quantity",
        "rod": "quantity",
        "clearance": "quantity",
        "intake_closes": "quantity",
        "closing_lift": "quantity",
        "exhaust_port_top_below_deck": "quantity",
        "transfer_port_top_below_deck": "quantity",
        "piston_edge_below_deck_at_tdc": "quantity",
        "thinner_base_gasket_by": "quantity",
        "exhaust_duration_wanted": "quantity",
        "transfer_duration_wanted": "quantity",
        "limits": {"compression_least": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        reading: QuantityLike | None = None,
        stroke_readings: ReadingsLike | None = None,
        baseline_first_over_last: float | None = None,
        readings: ReadingsLike | None = None,
        first_again: QuantityLike | None = None,
        layout: Literal["in_line", "vee", "opposed"] | None = None,
        wet: QuantityLike | None = None,
        wet_oil: QuantityLike | None = None,
        n: float | None = None,
        cylinder_upright: bool | None = None,
        expected: QuantityLike | None = None,
        n_low: float | None = None,
        n_mid: float | None = None,
        n_high: float | None = None,
        expected_altitude: QuantityLike | None = None,
        gauge_error: QuantityLike | None = None,
        repeatability: QuantityLike | None = None,
        hose_error: QuantityLike | None = None,
        weather: QuantityLike | None = None,
        altitude: QuantityLike | None = None,
        air_pressure: QuantityLike | None = None,
        weather_report: QuantityLike | None = None,
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
        decompressor_closes: QuantityLike | None = None,
        starter: Literal["electric", "kick", "rope"] | None = None,
        throttle_open: bool | None = None,
        throttle_closed_manifold: QuantityLike | None = None,
        choke_off: bool | None = None,
        engine_warm: bool | None = None,
        plugs_out: bool | None = None,
        air_filter_fitted: bool | None = None,
        battery: QuantityLike | None = None,
        cylinder_count: int | None = None,
        bore: QuantityLike | None = None,
        stroke: QuantityLike | None = None,
        rod: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        intake_closes: QuantityLike | None = None,
        closing_lift: QuantityLike | None = None,
        exhaust_port_top_below_deck: QuantityLike | None = None,
        transfer_port_top_below_deck: QuantityLike | None = None,
        piston_edge_below_deck_at_tdc: QuantityLike | None = None,
        thinner_base_gasket_by: QuantityLike | None = None,
        exhaust_duration_wanted: QuantityLike | None = None,
        transfer_duration_wanted: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CompressionTestLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CompressionTestResult]:
        """Ask ``compression-test`` one question.

        Needed: ``reading`` or ``stroke_readings`` or ``readings``.

        Parameters
        ----------
        reading : QuantityLike, optional
            compression reading once it rises no more, gauge
        stroke_readings : ReadingsLike, optional
            reading at each compression stroke of one pull, gauge
        baseline_first_over_last : float, optional
            first over last stroke of the same gauge and hose on a sound cylinder of like size
        readings : ReadingsLike, optional
            reading of each cylinder, gauge; same gauge, one after another, bank by bank
        first_again : QuantityLike, optional
            the first cylinder read once more at the end, gauge
        layout : str, optional
            how the cylinders stand; in two banks the first half of the readings is one bank
            (in_line: all cylinders in one bank, read in order; vee: two banks, read bank by bank;
            opposed: two opposed banks, read bank by bank)
        wet : QuantityLike, optional
            reading with the oil in, gauge, same gauge and starter
        wet_oil : QuantityLike, optional
            oil put in, measured by syringe
        n : float, optional
            compression exponent of the gain that oil's own volume makes
        cylinder_upright : bool, optional
            the cylinder stands upright
        expected : QuantityLike, optional
            pressure expected of a sound cylinder here, gauge
        n_low : float, optional
            compression exponent of a slow, cold or leaky engine
        n_mid : float, optional
            compression exponent of a usual engine on the starter
        n_high : float, optional
            compression exponent of a fast, warm and tight engine
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
        altitude : QuantityLike, optional
            altitude of the place (geopotential)
        air_pressure : QuantityLike, optional
            air pressure on the spot, absolute
        weather_report : QuantityLike, optional
            air pressure of the weather report, absolute, brought to sea level; needs the altitude
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        valve_gear : str, optional
            valve gear (overhead_valves: four-stroke, valves in the head; side_valve: four-stroke,
            valves beside the cylinder; ports: two-stroke, ports in the cylinder; unknown: not
            known: no bands are applied)
        decompressor : str, optional
            kind of decompressor (none: no decompressor; automatic_exhaust_lifter: automatic, lifts
            the exhaust valve by weights or the cam; automatic_intake_side: automatic, holds the
            intake valve or closes it late; manual_lifter: manual valve lifter;
            manual_two_stroke_valve: manual valve in the head or above the exhaust port, two-stroke;
            unknown: not known)
        decompressor_state : str, optional
            decompressor during the test (none: no decompressor; automatic_held_off: automatic one
            held off during the test; automatic_active: automatic one at work during the test;
            manual_not_used: manual one not used during the test; unknown: not known)
        decompressor_closes : QuantityLike, optional
            decompressor closing after bottom dead centre, crank; a manual one is shut for the test
        starter : str, optional
            what turns the engine (electric: electric; kick: kick; rope: rope)
        throttle_open : bool, optional
            throttle held open, a vacuum slide lifted too
        throttle_closed_manifold : QuantityLike, optional
            intake pressure with the throttle closed, absolute
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
        cylinder_count : int, optional
            number of cylinders of this size
        bore : QuantityLike, optional
            cylinder bore
        stroke : QuantityLike, optional
            stroke
        rod : QuantityLike, optional
            rod length, centre to centre
        clearance : QuantityLike, optional
            clearance volume: above the piston at top dead centre
        intake_closes : QuantityLike, optional
            intake closes after bottom dead centre, crank degrees
        closing_lift : QuantityLike, optional
            valve lift at which that closing angle is stated
        exhaust_port_top_below_deck : QuantityLike, optional
            top edge of the exhaust port below the deck: the port's edge, not its chamfer; an
            exhaust valve in its low position
        transfer_port_top_below_deck : QuantityLike, optional
            top edge of the transfer ports below the deck
        piston_edge_below_deck_at_tdc : QuantityLike, optional
            crown edge, at the port, below (+) or proud of (−) the deck at top dead centre
        thinner_base_gasket_by : QuantityLike, optional
            new base gasket thinner by; negative for a thicker one
        exhaust_duration_wanted : QuantityLike, optional
            exhaust port open as wanted, crank degrees: asks for the base gasket that gives it
        transfer_duration_wanted : QuantityLike, optional
            transfer ports open as wanted, crank degrees: asks for the base gasket that gives it
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CompressionTestLimits, optional
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
            "stroke_readings": stroke_readings,
            "baseline_first_over_last": baseline_first_over_last,
            "readings": readings,
            "first_again": first_again,
            "layout": layout,
            "wet": wet,
            "wet_oil": wet_oil,
            "n": n,
            "cylinder_upright": cylinder_upright,
            "expected": expected,
            "n_low": n_low,
            "n_mid": n_mid,
            "n_high": n_high,
            "expected_altitude": expected_altitude,
            "gauge_error": gauge_error,
            "repeatability": repeatability,
            "hose_error": hose_error,
            "weather": weather,
            "altitude": altitude,
            "air_pressure": air_pressure,
            "weather_report": weather_report,
            "cycle": cycle,
            "valve_gear": valve_gear,
            "decompressor": decompressor,
            "decompressor_state": decompressor_state,
            "decompressor_closes": decompressor_closes,
            "starter": starter,
            "throttle_open": throttle_open,
            "throttle_closed_manifold": throttle_closed_manifold,
            "choke_off": choke_off,
            "engine_warm": engine_warm,
            "plugs_out": plugs_out,
            "air_filter_fitted": air_filter_fitted,
            "battery": battery,
            "cylinder_count": cylinder_count,
            "bore": bore,
            "stroke": stroke,
            "rod": rod,
            "clearance": clearance,
            "intake_closes": intake_closes,
            "closing_lift": closing_lift,
            "exhaust_port_top_below_deck": exhaust_port_top_below_deck,
            "transfer_port_top_below_deck": transfer_port_top_below_deck,
            "piston_edge_below_deck_at_tdc": piston_edge_below_deck_at_tdc,
            "thinner_base_gasket_by": thinner_base_gasket_by,
            "exhaust_duration_wanted": exhaust_duration_wanted,
            "transfer_duration_wanted": transfer_duration_wanted,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
