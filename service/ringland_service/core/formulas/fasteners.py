"""Threaded fasteners: wrench and adapter, clamp load, stress."""

import math

import numpy as np

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import cosine_deg, insist, insist_positive, sqrt
from ringland_service.core.numbers import Number

# Half of 1/cos 30°, rounded as textbooks print it: the flank's share of thread friction.
FLANK = 0.58
# Mean diameter of the bearing face over the thread's, where it is not known (common practice).
BEARING_OVER_THREAD = 1.3


def wrench_setting_nm(
    torque_nm: Number, wrench_length_mm: Number, extension_mm: Number, angle_deg: Number
) -> Number:
    """Wrench setting with an adapter in between.

    Parameters
    ----------
    torque_nm : float or array
        Torque wanted at the fastener [N.m].
    wrench_length_mm : float or array
        Centre of the grip to the square [mm].
    extension_mm : float or array
        Square to the centre of the fastener [mm].
    angle_deg : float or array
        Between adapter and wrench: 0 straight on, 90 across, 180 back [deg].

    Returns
    -------
    float or array
        Setting [N.m].

    Raises
    ------
    OutOfBounds
        When the adapter reaches back to the hand.

    References
    ----------
    Statics: one force at the grip, two levers.
    """
    lever_mm = wrench_length_mm + extension_mm * cosine_deg(angle_deg)
    insist(
        lever_mm > 0,
        OutOfBounds,
        "adapter_extension_mm",
        "reaches back to the hand",
        "give the length from the square to the centre of the fastener",
    )
    return torque_nm * wrench_length_mm / lever_mm


def uncorrected_torque_nm(
    setting_nm: Number, wrench_length_mm: Number, extension_mm: Number, angle_deg: Number
) -> Number:
    """Torque at the fastener for a setting of the wrench, adapter on.

    Parameters
    ----------
    setting_nm : float or array
        Setting of the wrench [N.m].
    wrench_length_mm, extension_mm, angle_deg : float or array
        As for ``wrench_setting_nm``.

    Returns
    -------
    float or array
        Torque [N.m].

    Raises
    ------
    OutOfBounds
        When the wrench has no length.

    References
    ----------
    Statics: one force at the grip, two levers.
    """
    insist_positive("wrench_length_mm", wrench_length_mm)
    lever_mm = wrench_length_mm + extension_mm * cosine_deg(angle_deg)
    return setting_nm * lever_mm / wrench_length_mm


def clamp_n(torque_nm: Number, nut_factor: Number, thread_dia_mm: Number) -> Number:
    """Clamp load of a tightened fastener.

    Parameters
    ----------
    torque_nm : float or array
        Torque at the fastener [N.m].
    nut_factor : float or array
        K [1].
    thread_dia_mm : float or array
        Nominal diameter [mm].

    Returns
    -------
    float or array
        Clamp load [N].

    Raises
    ------
    OutOfBounds
        When nut factor or diameter is not above zero.

    References
    ----------
    T = K·d·F: machine-design textbooks.
    """
    insist_positive("nut_factor", nut_factor)
    insist_positive("thread_dia_mm", thread_dia_mm)
    return 1000.0 * torque_nm / (nut_factor * thread_dia_mm)


def nut_factor_of_friction(
    thread_dia_mm: Number,
    pitch_mm: Number,
    pitch_dia_mm: Number,
    thread_friction: Number,
    head_friction: Number,
    bearing_over_thread: Number = BEARING_OVER_THREAD,
) -> Number:
    """Nut factor from friction in the thread and under the head.

    Parameters
    ----------
    thread_dia_mm, pitch_mm, pitch_dia_mm : float or array
        Nominal diameter, pitch and pitch diameter [mm].
    thread_friction, head_friction : float or array
        Coefficients of friction [1].
    bearing_over_thread : float or array
        Mean diameter of the bearing face over the nominal one [1].

    Returns
    -------
    float or array
        K [1].

    Notes
    -----
    K = (P/(2π) + µ_thread·d2/(2·cos 30°) + µ_head·b·d/2)/d, the bearing face's mean diameter b·d.

    Raises
    ------
    OutOfBounds
        When the diameter is not above zero.

    References
    ----------
    ISO 16047, VDI 2230: torque as the sum of pitch, thread and head parts.
    """
    insist_positive("thread_dia_mm", thread_dia_mm)
    thread = thread_friction * pitch_dia_mm / (2.0 * np.cos(np.radians(30.0)))
    head = head_friction * bearing_over_thread * thread_dia_mm / 2.0
    found: Number = (pitch_mm / (2.0 * np.pi) + thread + head) / thread_dia_mm
    return found


def clamp_over_proof(clamp_n: Number, stress_area_mm2: Number, proof_stress_mpa: Number) -> Number:
    """Clamp load as a share of the proof load; torsion is left out.

    Parameters
    ----------
    clamp_n : float or array
        Clamp load [N].
    stress_area_mm2 : float or array
        Stress area [mm2].
    proof_stress_mpa : float or array
        Proof stress [MPa].

    Returns
    -------
    float or array
        Share [1].

    Raises
    ------
    OutOfBounds
        When area or proof stress is not above zero.

    References
    ----------
    ISO 898-1: proof load is proof stress times stress area.
    """
    insist_positive("stress_area_mm2", stress_area_mm2)
    insist_positive("proof_stress_mpa", proof_stress_mpa)
    return clamp_n / (stress_area_mm2 * proof_stress_mpa)


def torsion_stress_mpa(
    clamp_n: Number,
    pitch_mm: Number,
    pitch_dia_mm: Number,
    minor_dia_mm: Number,
    thread_friction: Number,
) -> Number:
    """Shear stress in the shank while it is tightened.

    Parameters
    ----------
    clamp_n : float or array
        Clamp load [N].
    pitch_mm, pitch_dia_mm, minor_dia_mm : float or array
        Pitch, d2 and d3 [mm].
    thread_friction : float or array
        Coefficient of friction in the thread [1].

    Returns
    -------
    float or array
        τ = 16·F·(P/(2π) + 0.58·d2·µ)/(π·d0³), d0 = (d2 + d3)/2 [MPa].

    Raises
    ------
    OutOfBounds
        When the diameters are not above zero.

    References
    ----------
    VDI 2230.
    """
    mean_mm = (pitch_dia_mm + minor_dia_mm) / 2.0
    insist_positive("thread_minor_dia_mm", mean_mm)
    thread_torque_nmm = clamp_n * (
        pitch_mm / (2.0 * math.pi) + FLANK * pitch_dia_mm * thread_friction
    )
    return 16.0 * thread_torque_nmm / (math.pi * mean_mm * mean_mm * mean_mm)


def combined_stress_over_proof(
    clamp_n: Number, stress_area_mm2: Number, torsion_mpa: Number, proof_stress_mpa: Number
) -> Number:
    """Tension and torsion together as a share of the proof stress.

    Parameters
    ----------
    clamp_n : float or array
        Clamp load [N].
    stress_area_mm2 : float or array
        Stress area [mm2].
    torsion_mpa, proof_stress_mpa : float or array
        Shear stress and proof stress [MPa].

    Returns
    -------
    float or array
        √((F/A)² + 3·τ²) over the proof stress [1].

    Raises
    ------
    OutOfBounds
        When area or proof stress is not above zero.

    References
    ----------
    Distortion energy: machine-design textbooks, VDI 2230.
    """
    insist_positive("stress_area_mm2", stress_area_mm2)
    insist_positive("proof_stress_mpa", proof_stress_mpa)
    tension_mpa = clamp_n / stress_area_mm2
    return sqrt(tension_mpa * tension_mpa + 3.0 * torsion_mpa * torsion_mpa) / proof_stress_mpa
