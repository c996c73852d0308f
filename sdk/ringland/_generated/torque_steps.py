"""Torque steps.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings, ReadingsLike


class TorqueStepsLimits(TypedDict, total=False):
    """Limits of your own, by check: torque-steps.

    Attributes
    ----------
    clamp_over_proof : RatioLimitAsked
        clamp load over proof load
    thread_engagement : RatioLimitAsked
        thread engaged in aluminium over its diameter
    """

    clamp_over_proof: RatioLimitAsked
    thread_engagement: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class TorqueStepsResult:
    """None is what cannot be known.

    Attributes
    ----------
    stages : Readings | None
        torque at the fastener, stage by stage
    wrench_setting : Quantity | None
        final setting of the wrench, adapter on; without the wrench's length absent
    stage_settings : Readings | None
        settings of the wrench, adapter on, stage by stage
    torque_if_not_corrected : Quantity | None
        what the fastener would get if the wrench were set to the final torque, adapter on
    nut_factor_used : float | None
        nut factor that was used
    stress_area_used : Quantity | None
        stress area that was used
    clamp : Quantity | None
        clamp load of the torque
    clamp_over_proof : float | None
        clamp load over proof load, torsion left out
    clamp_over_proof_low : float | None
        the same at the high end of the nut factor's band
    clamp_over_proof_high : float | None
        the same at the low end of the nut factor's band
    torsion_stress : Quantity | None
        shear stress in the shank while it is tightened
    combined_stress_over_proof : float | None
        tension and torsion together over the proof stress
    advance : Readings | None
        how far the fastener goes in, angle stage by angle stage
    engagement_over_diameter : float | None
        thread engaged over its diameter
    """

    stages: Readings | None = None
    wrench_setting: Quantity | None = None
    stage_settings: Readings | None = None
    torque_if_not_corrected: Quantity | None = None
    nut_factor_used: float | None = None
    stress_area_used: Quantity | None = None
    clamp: Quantity | None = None
    clamp_over_proof: float | None = None
    clamp_over_proof_low: float | None = None
    clamp_over_proof_high: float | None = None
    torsion_stress: Quantity | None = None
    combined_stress_over_proof: float | None = None
    advance: Readings | None = None
    engagement_over_diameter: float | None = None


class TorqueSteps(Calculation[TorqueStepsResult]):
    """Torque steps.

    Torque by stages, what the wrench is set to through an adapter, the clamp load with its band,
    and what an angle stage adds. The maker's torque and lubricant always win. Threads are chased,
    not cut; blind holes are dry before the bolt goes in; a stud that pulled out gets an insert,
    never a second try.
    """

    NAME = "torque-steps"
    RESULT = TorqueStepsResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "final_torque": "quantity",
        "wrench_length": "quantity",
        "adapter_extension": "quantity",
        "adapter_angle": "quantity",
        "wrench_top": "quantity",
        "thread_diameter": "quantity",
        "pitch": "quantity",
        "thread_pitch_diameter": "quantity",
        "thread_minor_diameter": "quantity",
        "stress_area": "quantity",
        "proof_stress": "quantity",
        "turns": "readings",
        "thread_engagement": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        final_torque: QuantityLike,
        stage_fractions: Sequence[float] | None = None,
        wrench_length: QuantityLike | None = None,
        adapter_extension: QuantityLike | None = None,
        adapter_angle: QuantityLike | None = None,
        wrench_top: QuantityLike | None = None,
        thread_diameter: QuantityLike | None = None,
        pitch: QuantityLike | None = None,
        thread_pitch_diameter: QuantityLike | None = None,
        thread_minor_diameter: QuantityLike | None = None,
        stress_area: QuantityLike | None = None,
        nut_factor: float | None = None,
        thread_friction: float | None = None,
        head_friction: float | None = None,
        bearing_over_thread: float | None = None,
        lubricant: Literal["dry", "oiled", "moly_paste", "unknown"] | None = None,
        nut_factor_band: float | None = None,
        proof_stress: QuantityLike | None = None,
        fastener_use: Literal["reusable", "single_use"] | None = None,
        turns: ReadingsLike | None = None,
        thread_engagement: QuantityLike | None = None,
        threads_in_aluminium: bool | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: TorqueStepsLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[TorqueStepsResult]:
        """Ask ``torque-steps`` one question.

        Parameters
        ----------
        final_torque : QuantityLike
            final torque at the fastener
        stage_fractions : Sequence[float], optional
            stages as shares of the final torque, rising to 1 (40, 70, 100 % is common practice)
            (default [0.4, 0.7, 1.0])
        wrench_length : QuantityLike, optional
            wrench, from the centre of the grip (not the end of the handle) to the square
        adapter_extension : QuantityLike, optional
            adapter, from the square to the centre of the fastener; 0 without one (default 0.0 mm)
        adapter_angle : QuantityLike, optional
            angle of the adapter: 0 straight on, 90 across, 180 back to the hand (default 0.0 deg)
        wrench_top : QuantityLike, optional
            top of the wrench's range
        thread_diameter : QuantityLike, optional
            nominal diameter of the thread
        pitch : QuantityLike, optional
            pitch of the thread, mm per turn
        thread_pitch_diameter : QuantityLike, optional
            pitch diameter of the thread; else that of the metric profile
        thread_minor_diameter : QuantityLike, optional
            minor diameter at the root; else that of the metric profile
        stress_area : QuantityLike, optional
            stress area; else from pitch and minor diameter
        nut_factor : float, optional
            nut factor K in torque = K · diameter · clamp
        thread_friction : float, optional
            friction in the thread
        head_friction : float, optional
            friction under the head; with the thread's it gives the nut factor where none is given
        bearing_over_thread : float, optional
            mean diameter of the bearing face under the head over the thread's, for the nut factor
            from both frictions (1.3: common practice) (default 1.3)
        lubricant : str, optional
            what is on thread and head; gives the nut factor where nothing better is known (dry: dry
            and clean: nut factor 0.20; oiled: engine oil: nut factor 0.165, middle of 0.15 to 0.18;
            moly_paste: molybdenum paste: nut factor 0.115, middle of 0.10 to 0.13; unknown: not
            known) (default unknown)
        nut_factor_band : float, optional
            band of the nut factor, ± share (0.25: common practice) (default 0.25)
        proof_stress : QuantityLike, optional
            proof stress of the fastener
        fastener_use : str, optional
            whether the fastener is used again; the stricter limit holds where nothing is said
            (reusable: used again: clamp at most 0.75 of proof; single_use: for single use: clamp at
            most 0.90 of proof) (default reusable)
        turns : ReadingsLike, optional
            turns after the torque stages, one an angle stage
        thread_engagement : QuantityLike, optional
            length of thread engaged
        threads_in_aluminium : bool, optional
            the fastener goes into aluminium without an insert
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : TorqueStepsLimits, optional
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
            "final_torque": final_torque,
            "stage_fractions": stage_fractions,
            "wrench_length": wrench_length,
            "adapter_extension": adapter_extension,
            "adapter_angle": adapter_angle,
            "wrench_top": wrench_top,
            "thread_diameter": thread_diameter,
            "pitch": pitch,
            "thread_pitch_diameter": thread_pitch_diameter,
            "thread_minor_diameter": thread_minor_diameter,
            "stress_area": stress_area,
            "nut_factor": nut_factor,
            "thread_friction": thread_friction,
            "head_friction": head_friction,
            "bearing_over_thread": bearing_over_thread,
            "lubricant": lubricant,
            "nut_factor_band": nut_factor_band,
            "proof_stress": proof_stress,
            "fastener_use": fastener_use,
            "turns": turns,
            "thread_engagement": thread_engagement,
            "threads_in_aluminium": threads_in_aluminium,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
