"""C45: torque stages, what the wrench reads through an adapter, clamp load, angle stages."""

from ringland_service.core.calculations.assembly import _thread as thread
from ringland_service.core.calculations.assembly._torque_inputs import Inputs
from ringland_service.core.calculations.assembly._torque_notices import NOTICES, RULES
from ringland_service.core.declare import (
    Calculation,
    Check,
    Figure,
    kinds,
    record,
    result,
)
from ringland_service.core.formulas import fasteners, threads
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE, cited

STATICS = "statics: one force at the grip, two levers"
TEXTBOOKS = cited("{machine_design_nut_factor}")


@record
class Outputs:
    """What to set, and whether the thread carries it."""

    stages_nm: tuple[float, ...] = result(
        "torque at the fastener, stage by stage",
        kind=kinds.TORQUE,
        digits=1,
        basis="each share times the final torque",
        source=NO_SOURCE,
    )
    wrench_setting_nm: Number | None = result(
        "final setting of the wrench, adapter on; without the wrench's length absent",
        kind=kinds.TORQUE,
        digits=1,
        formula="final_torque_nm * wrench_length_mm"
        " / (wrench_length_mm + adapter_extension_mm * cosd(adapter_angle_deg))",
        source=STATICS,
        default=None,
    )
    stage_settings_nm: tuple[float, ...] | None = result(
        "settings of the wrench, adapter on, stage by stage",
        kind=kinds.TORQUE,
        digits=1,
        basis="each share times the final setting",
        source=STATICS,
        default=None,
    )
    torque_if_not_corrected_nm: Number | None = result(
        "what the fastener would get if the wrench were set to the final torque, adapter on",
        kind=kinds.TORQUE,
        digits=1,
        formula="final_torque_nm * (wrench_length_mm"
        " + adapter_extension_mm * cosd(adapter_angle_deg)) / wrench_length_mm",
        source=STATICS,
        default=None,
    )
    nut_factor_used: Number | None = result(
        "nut factor that was used",
        digits=3,
        basis="as given, else (P/(2π) + µ·d2/(2·cos 30°) + µ·b·d/2)/d of the two frictions, "
        "b the bearing face over the thread, else of the lubricant",
        source=cited("{iso_16047}; {machine_design_nut_factor}"),
        default=None,
    )
    stress_area_used_mm2: Number | None = result(
        "stress area that was used",
        kind=kinds.AREA,
        digits=2,
        basis="as given, else π/4·((d2 + d3)/2)² with d2 = d − 0.6495·P and d3 = d − 1.2269·P",
        source=cited("{iso_724}; {iso_898_1_stress_area}"),
        default=None,
    )
    clamp_n: Number | None = result(
        "clamp load of the torque",
        kind=kinds.FORCE,
        digits=0,
        formula="1000 * final_torque_nm / (nut_factor_used * thread_dia_mm)",
        source=TEXTBOOKS,
        default=None,
    )
    clamp_over_proof: Number | None = result(
        "clamp load over proof load, torsion left out",
        digits=3,
        formula="clamp_n / (stress_area_used_mm2 * proof_stress_mpa)",
        source=cited("{iso_898_1_proof_load}"),
        default=None,
    )
    clamp_over_proof_low: Number | None = result(
        "the same at the high end of the nut factor's band",
        digits=3,
        formula="clamp_over_proof / (1 + nut_factor_band)",
        source=TEXTBOOKS,
        default=None,
    )
    clamp_over_proof_high: Number | None = result(
        "the same at the low end of the nut factor's band",
        digits=3,
        formula="clamp_over_proof / (1 - nut_factor_band)",
        source=TEXTBOOKS,
        default=None,
    )
    torsion_stress_mpa: Number | None = result(
        "shear stress in the shank while it is tightened",
        kind=kinds.STRESS,
        digits=0,
        basis="16·F·(P/(2π) + 0.58·d2·µ)/(π·d0³), d0 = (d2 + d3)/2",
        source=cited("{vdi_2230}"),
        default=None,
    )
    combined_stress_over_proof: Number | None = result(
        "tension and torsion together over the proof stress",
        digits=3,
        formula="((clamp_n / stress_area_used_mm2)**2 + 3 * torsion_stress_mpa**2)**0.5"
        " / proof_stress_mpa",
        source=cited("distortion energy; {vdi_2230}"),
        default=None,
    )
    advance_mm: tuple[float, ...] | None = result(
        "how far the fastener goes in, angle stage by angle stage",
        kind=kinds.LENGTH,
        digits=4,
        basis="pitch times the turn over 360°",
        source="geometry of the helix",
        default=None,
    )
    engagement_over_dia: Number | None = result(
        "thread engaged over its diameter",
        digits=2,
        formula="thread_engagement_mm / thread_dia_mm",
        source=NO_SOURCE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the stages and settings, then what the thread bears, as far as it is known."""
    torque, length = inputs.final_torque_nm, inputs.wrench_length_mm
    setting = uncorrected = None
    if length is not None:
        adapter = (length, inputs.adapter_extension_mm, inputs.adapter_angle_deg)
        setting = fasteners.wrench_setting_nm(torque, *adapter)
        uncorrected = fasteners.uncorrected_torque_nm(torque, *adapter)
    clamp, area = _clamp_n(inputs), thread.stress_area_mm2(inputs)
    share = _clamp_over_proof(inputs, clamp, area)
    torsion = thread.torsion_mpa(inputs, clamp)
    return Outputs(
        stages_nm=_stages(inputs, torque),
        wrench_setting_nm=setting,
        stage_settings_nm=None if setting is None else _stages(inputs, setting),
        torque_if_not_corrected_nm=uncorrected,
        nut_factor_used=thread.nut_factor(inputs),
        stress_area_used_mm2=area,
        clamp_n=clamp,
        clamp_over_proof=share,
        clamp_over_proof_low=None if share is None else share / (1 + inputs.nut_factor_band),
        clamp_over_proof_high=None if share is None else share / (1 - inputs.nut_factor_band),
        torsion_stress_mpa=torsion,
        combined_stress_over_proof=_combined_over_proof(inputs, clamp, area, torsion),
        advance_mm=_advance_mm(inputs),
        engagement_over_dia=_engagement_over_dia(inputs),
    )


def _stages(inputs: Inputs, torque_nm: Number) -> tuple[float, ...]:
    return tuple(float(share * torque_nm) for share in inputs.stage_fractions)


def _clamp_n(inputs: Inputs) -> Number | None:
    factor = thread.nut_factor(inputs)
    if factor is None or inputs.thread_dia_mm is None:
        return None
    return fasteners.clamp_n(inputs.final_torque_nm, factor, inputs.thread_dia_mm)


def _clamp_over_proof(
    inputs: Inputs, clamp_n: Number | None, area_mm2: Number | None
) -> Number | None:
    if clamp_n is None or area_mm2 is None or inputs.proof_stress_mpa is None:
        return None
    return fasteners.clamp_over_proof(clamp_n, area_mm2, inputs.proof_stress_mpa)


def _combined_over_proof(
    inputs: Inputs, clamp_n: Number | None, area_mm2: Number | None, torsion_mpa: Number | None
) -> Number | None:
    if clamp_n is None or area_mm2 is None or torsion_mpa is None:
        return None
    if inputs.proof_stress_mpa is None:
        return None
    return fasteners.combined_stress_over_proof(
        clamp_n, area_mm2, torsion_mpa, inputs.proof_stress_mpa
    )


def _advance_mm(inputs: Inputs) -> tuple[float, ...] | None:
    if inputs.turns_deg is None or inputs.pitch_mm is None:
        return None
    return tuple(float(threads.advance_mm(inputs.pitch_mm, turn)) for turn in inputs.turns_deg)


def _engagement_over_dia(inputs: Inputs) -> Number | None:
    if inputs.thread_engagement_mm is None or inputs.thread_dia_mm is None:
        return None
    return inputs.thread_engagement_mm / inputs.thread_dia_mm


def _most_clamp(inputs: Inputs, _: Outputs) -> Limit:
    return LIMITS[f"clamp_over_proof.{inputs.fastener_use}"].limit()


def _least_engagement(inputs: Inputs, _: Outputs) -> Limit | None:
    return LIMITS["thread_engagement.aluminium"].limit() if inputs.threads_in_aluminium else None


CALCULATION = Calculation(
    name="torque-steps",
    number="C45",
    stage="assembly",
    title="Torque steps",
    summary="Torque by stages, what the wrench is set to through an adapter, the clamp load with "
    "its band, and what an angle stage adds. The maker's torque and lubricant always win. Threads "
    "are chased, not cut; blind holes are dry before the bolt goes in; a stud that pulled out gets "
    "an insert, never a second try.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    checks=(
        Check(
            "clamp_over_proof",
            "clamp_over_proof",
            "clamp load over proof load",
            "a torque wrench of known error, and the maker's own torque and lubricant",
            _most_clamp,
            doubt_fails="a stud that yields lets go of the head: doubt counts as too much",
        ),
        Check(
            "thread_engagement",
            "engagement_over_dia",
            "thread engaged in aluminium over its diameter",
            "measure the depth of sound thread, or fit an insert",
            _least_engagement,
            doubt_fails="a thread that pulls out lets go of the head: doubt counts as too little",
        ),
    ),
    rules=(*RULES, *thread.RULES),
    notices=NOTICES,
    cautions=("torque", "adapter"),
    figures=(
        Figure("stage_fractions", ("stages_nm", "stage_settings_nm")),
        Figure("nut_factor_band"),
        *thread.FIGURES,
    ),
)
