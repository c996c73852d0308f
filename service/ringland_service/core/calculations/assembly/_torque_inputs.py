"""What torque steps are worked out from: the torque, the wrench, the thread."""

from ringland_service.core.calculations.assembly._thread import LUBRICANT
from ringland_service.core.declare import (
    choice,
    flag,
    number,
    numbers,
    quantity,
    readings,
    record,
    usual,
)
from ringland_service.core.formulas import fasteners
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import assembly as quantities

USE: dict[str, str] = {
    "reusable": "used again: clamp at most 0.75 of proof",
    "single_use": "for single use: clamp at most 0.90 of proof",
}


@record
class Inputs:
    """The torque, the wrench with its adapter, and the thread."""

    final_torque_nm: Number = quantity(quantities.TORQUE, "final torque at the fastener")
    stage_fractions: tuple[float, ...] = numbers(
        "stages as shares of the final torque, rising to 1 (40, 70, 100 % is common practice)",
        low=0.05,
        high=1.0,
        least=1,
        most=8,
        example=(0.4, 0.7, 1.0),
        default=usual((0.4, 0.7, 1.0)),
    )
    wrench_length_mm: Number | None = quantity(
        quantities.WRENCH_LENGTH,
        "wrench, from the centre of the grip (not the end of the handle) to the square",
        default=None,
    )
    adapter_extension_mm: Number = quantity(
        quantities.ADAPTER_EXTENSION,
        "adapter, from the square to the centre of the fastener; 0 without one",
        default=0.0,
    )
    adapter_angle_deg: Number = quantity(
        quantities.ADAPTER_ANGLE,
        "angle of the adapter: 0 straight on, 90 across, 180 back to the hand",
        default=0.0,
    )
    wrench_top_nm: Number | None = quantity(
        quantities.TORQUE, "top of the wrench's range", example=60.0, default=None
    )
    thread_dia_mm: Number | None = quantity(
        quantities.THREAD_DIAMETER, "nominal diameter of the thread", default=None
    )
    pitch_mm: Number | None = quantity(
        quantities.THREAD_PITCH, "pitch of the thread, mm per turn", default=None
    )
    thread_pitch_dia_mm: Number | None = quantity(
        quantities.THREAD_DIAMETER,
        "pitch diameter of the thread; else that of the metric profile",
        example=7.188,
        default=None,
    )
    thread_minor_dia_mm: Number | None = quantity(
        quantities.THREAD_DIAMETER,
        "minor diameter at the root; else that of the metric profile",
        example=6.466,
        default=None,
    )
    stress_area_mm2: Number | None = quantity(
        quantities.STRESS_AREA,
        "stress area; else from pitch and minor diameter",
        default=None,
    )
    nut_factor: Number | None = number(
        "nut factor K in torque = K · diameter · clamp",
        low=0.08,
        high=0.35,
        warn=(0.12, 0.22),
        example=0.17,
        default=None,
    )
    thread_friction: Number | None = number(
        "friction in the thread",
        low=0.04,
        high=0.4,
        warn=(0.08, 0.2),
        example=0.12,
        default=None,
    )
    head_friction: Number | None = number(
        "friction under the head; with the thread's it gives the nut factor where none is given",
        low=0.04,
        high=0.4,
        warn=(0.08, 0.2),
        example=0.12,
        default=None,
    )
    bearing_over_thread: Number = number(
        "mean diameter of the bearing face under the head over the thread's, for the nut factor "
        "from both frictions (1.3: common practice)",
        low=1.05,
        high=2.0,
        example=1.3,
        default=usual(fasteners.BEARING_OVER_THREAD),
    )
    lubricant: str = choice(
        "what is on thread and head; gives the nut factor where nothing better is known",
        LUBRICANT,
        example="oiled",
        default="unknown",
    )
    nut_factor_band: Number = number(
        "band of the nut factor, ± share (0.25: common practice)",
        low=0.0,
        high=0.5,
        example=0.25,
        default=usual(0.25),
    )
    proof_stress_mpa: Number | None = quantity(
        quantities.PROOF_STRESS, "proof stress of the fastener", default=None
    )
    fastener_use: str = choice(
        "whether the fastener is used again; the stricter limit holds where nothing is said",
        USE,
        example="reusable",
        default="reusable",
    )
    turns_deg: tuple[float, ...] | None = readings(
        quantities.TURN,
        "turns after the torque stages, one an angle stage",
        least=1,
        most=4,
        example=(90.0,),
        default=None,
    )
    thread_engagement_mm: Number | None = quantity(
        quantities.THREAD_ENGAGEMENT, "length of thread engaged", default=None
    )
    threads_in_aluminium: bool | None = flag(
        "the fastener goes into aluminium without an insert", default=None
    )
