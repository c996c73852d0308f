import math
from typing import Any

import numpy as np
import pytest
from formula_checks import number, rows
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import fasteners, threads

# Source: ISO 68-1, ISO 724 and ISO 898-1 profile computed apart from the service, tabled stress
# areas as printed, and two general libraries; see the head of the file.
THREADS = rows("bolt_stress_area.csv")


def near(value: float, relative: float = 2e-5) -> Any:
    return pytest.approx(value, rel=relative, abs=1e-9)


def test_worked_wrench() -> None:
    # By hand: 24 * 300 / 350; 24 * 300 / 325; 24 * 350 / 300.
    assert fasteners.wrench_setting_nm(24.0, 300.0, 50.0, 0.0) == near(20.5714)
    assert fasteners.wrench_setting_nm(24.0, 300.0, 50.0, 60.0) == near(22.1538)
    assert fasteners.uncorrected_torque_nm(24.0, 300.0, 50.0, 0.0) == near(28.0)


def test_worked_stud() -> None:
    # By hand: 24000 / 1.36; over 36.6 * 580 = 21228; d0 = 6.827, thread torque 12339.3 N.mm.
    clamp = fasteners.clamp_n(24.0, 0.17, 8.0)
    assert clamp == near(17647.1)
    assert fasteners.clamp_over_proof(clamp, 36.6, 580.0) == near(0.83131)
    torsion = fasteners.torsion_stress_mpa(clamp, 1.25, 7.188, 6.466, 0.12)
    assert torsion == near(197.50)
    assert fasteners.combined_stress_over_proof(clamp, 36.6, torsion, 580.0) == near(1.01928)
    assert threads.advance_mm(1.25, 90.0) == near(0.3125)


@pytest.mark.parametrize("row", THREADS, ids=lambda row: str(row["thread"]))
def test_thread_of_the_table(row: dict[str, str]) -> None:
    d, pitch = float(row["d"]), float(row["P"])
    pitch_diameter = threads.thread_pitch_diameter_mm(d, pitch)
    minor_diameter = threads.thread_minor_diameter_mm(d, pitch)
    area = threads.stress_area_mm2(pitch_diameter, minor_diameter)
    assert pitch_diameter == pytest.approx(float(row["d2"]), abs=1e-6)
    assert minor_diameter == pytest.approx(float(row["d3"]), abs=1e-6)
    assert area == pytest.approx(float(row["As_computed"]), abs=1e-4)
    assert area == pytest.approx(float(row["As_me_toolbox"]), abs=2e-4)
    # Printed to three figures: 36.6, 115, 58.0; a half in the last one is granted.
    assert area == pytest.approx(float(row["table_As"]), rel=5e-3)
    assert abs(area - float(row["table_As"])) <= (0.5 if area > 100 else 0.05) + 1e-9


@pytest.mark.parametrize("row", [r for r in THREADS if r["proof_8_8_N"]], ids=lambda r: r["thread"])
def test_proof_load_of_class_8_8(row: dict[str, str]) -> None:
    # Source: ISO 898-1, proof loads of class 8.8 (580 MPa up to 16 mm), cut to hundreds of N there.
    d, pitch = float(row["d"]), float(row["P"])
    area = threads.stress_area_mm2(
        threads.thread_pitch_diameter_mm(d, pitch), threads.thread_minor_diameter_mm(d, pitch)
    )
    printed = float(row["proof_8_8_N"])
    share = fasteners.clamp_over_proof(printed, area, 580.0)
    assert printed / share == pytest.approx(printed, abs=100.0)


@pytest.mark.parametrize("friction", ["0.10", "0.12", "0.14"])
@pytest.mark.parametrize("row", THREADS, ids=lambda row: str(row["thread"]))
def test_nut_factor_of_the_table(row: dict[str, str], friction: str) -> None:
    # Source: ISO 16047 and VDI 2230 form, computed apart from the service.
    mu, d = float(friction), float(row["d"])
    found = fasteners.nut_factor_of_friction(d, float(row["P"]), float(row["d2"]), mu, mu)
    assert found == pytest.approx(float(row[f"K_mu{friction}"]), abs=1e-5)


@given(number(1, 400), number(50, 1500), number(0, 500), number(0, 90))
def test_setting_undone(torque: float, length: float, extension: float, angle: float) -> None:
    setting = fasteners.wrench_setting_nm(torque, length, extension, angle)
    assert setting <= torque * (1 + 1e-12)
    reached = fasteners.uncorrected_torque_nm(setting, length, extension, angle)
    assert reached == pytest.approx(torque, rel=1e-12)


@given(number(1, 400), number(0.08, 0.35), number(3, 20))
def test_torque_is_nut_factor_times_diameter_times_clamp(
    torque: float, nut_factor: float, diameter: float
) -> None:
    clamp = fasteners.clamp_n(torque, nut_factor, diameter)
    assert nut_factor * diameter / 1000 * clamp == pytest.approx(torque, rel=1e-12)


@given(number(100, 50000), number(10, 200), number(0, 800), number(200, 1300))
def test_torsion_only_adds(clamp: float, area: float, torsion: float, proof: float) -> None:
    alone = fasteners.clamp_over_proof(clamp, area, proof)
    both = fasteners.combined_stress_over_proof(clamp, area, torsion, proof)
    assert both >= alone * (1 - 1e-12)
    assert fasteners.combined_stress_over_proof(clamp, area, 0.0, proof) == pytest.approx(alone)


def test_torsion_of_a_round_bar() -> None:
    # Source: torsion of a round bar, tau = T·r/J with J = π·d⁴/32 (strength of materials, from
    # memory); the thread torque is the pitch's part alone where friction is nothing.
    clamp, pitch, d0 = 10000.0, 1.5, 9.0
    torque, polar = clamp * pitch / (2 * math.pi), math.pi * d0**4 / 32
    found = fasteners.torsion_stress_mpa(clamp, pitch, d0, d0, 0.0)
    assert found == pytest.approx(torque * d0 / 2 / polar, rel=1e-12)


def test_adapter_to_the_hand() -> None:
    # By hand: half a millimetre of lever is left, 24 * 300 / 0.5.
    assert fasteners.wrench_setting_nm(24.0, 300.0, 299.5, 180.0) == near(14400.0)
    with pytest.raises(OutOfBounds, match="adapter_extension_mm: reaches back to the hand"):
        fasteners.wrench_setting_nm(24.0, np.array([300.0, 200.0]), 200.0, 180.0)


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: fasteners.clamp_n(24.0, 0.0, 8.0), "nut_factor"),
        (lambda: fasteners.clamp_n(24.0, 0.2, 0.0), "thread_diameter_mm"),
        (lambda: fasteners.nut_factor_of_friction(0.0, 1.25, 7.2, 0.1, 0.1), "thread_diameter_mm"),
        (lambda: fasteners.clamp_over_proof(1.0, 0.0, 580.0), "stress_area_mm2"),
        (lambda: fasteners.clamp_over_proof(1.0, 36.6, 0.0), "proof_stress_mpa"),
        (lambda: fasteners.torsion_stress_mpa(1.0, 1.0, 0.0, 0.0, 0.1), "thread_minor_diameter_mm"),
        (lambda: fasteners.combined_stress_over_proof(1.0, 0.0, 1.0, 1.0), "stress_area_mm2"),
        (lambda: fasteners.combined_stress_over_proof(1.0, 36.6, 1.0, 0.0), "proof_stress_mpa"),
        (lambda: fasteners.uncorrected_torque_nm(24.0, 0.0, 50.0, 0.0), "wrench_length_mm"),
    ],
)
def test_nothing_is_divided_by_nothing(call: Any, name: str) -> None:
    with pytest.raises(OutOfBounds, match=f"{name}: must be above zero"):
        call()
