from math import pi

import numpy as np
import pytest
from formula_checks import number, piston_height_mm, rows
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import minimize_scalar

from ringland_service.core.errors import Contradiction
from ringland_service.core.formulas import charged


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


@st.composite
def cranks(draw: st.DrawFn) -> tuple[float, float]:
    """Stroke and rod of an engine that turns over."""
    stroke = draw(number(15, 150))
    return stroke, stroke * draw(number(0.6, 3.0))


def test_worked_force_and_torque() -> None:
    # By hand: 690 * pi/4 * 8100 / 1000 = 4389.59 N; at 10°: 31 * 0.173648 = 5.38309 mm aside,
    # sqrt(106² - 5.38309²) = 105.863; 5.38309 * (1 + 31 * 0.984808 / 105.863) = 6.93548 mm.
    force = charged.piston_force_n(690.0, 90.0)
    assert force == near(4389.59)
    found = charged.crank_torque_nm(force, 62.0, 106.0, np.array([3.0, 10.0]))
    assert found == pytest.approx([9.20190, 30.4439], rel=2e-5)


def test_worked_peak() -> None:
    at = charged.peak_angle_deg(62.0, 106.0)
    assert at == near(74.8475)
    assert charged.crank_torque_nm(4389.59, 62.0, 106.0, at) == near(141.813)


def test_torque_against_the_slider_crank_table() -> None:
    # Source: crank_slider.csv, dx/dt by sympy [mm/rad]. Virtual work: torque = force * dx/dt.
    for row in rows("crank_slider.csv"):
        found = charged.crank_torque_nm(1000.0, 60.0, 110.0, float(row["deg"]))
        assert found == pytest.approx(float(row["dx_dtheta_mm_per_rad"]), abs=1e-9)


@given(cranks(), number(1, 179))
def test_torque_against_a_numeric_slider_crank(engine: tuple[float, float], angle: float) -> None:
    # Virtual work again, on a piston found as a root: the rod keeps its length.
    stroke, rod = engine
    step = 1e-3
    ahead, behind = (piston_height_mm(stroke / 2, rod, 0.0, angle + s) for s in (step, -step))
    lever_mm = (behind - ahead) / np.radians(2 * step)
    found = charged.crank_torque_nm(1000.0, stroke, rod, angle)
    assert found == pytest.approx(lever_mm, rel=1e-6, abs=1e-6)


@given(cranks())
def test_peak_against_a_numeric_maximum(engine: tuple[float, float]) -> None:
    # Source: scipy, bounded minimisation of the torque turned over.
    stroke, rod = engine
    found = minimize_scalar(
        lambda angle: -charged.crank_torque_nm(1000.0, stroke, rod, angle),
        bounds=(0.0, 180.0),
        method="bounded",
        options={"xatol": 1e-9},
    )
    at = charged.peak_angle_deg(stroke, rod)
    # The top is flat: its place is found to the root of the precision, its height to all of it.
    assert at == pytest.approx(found.x, abs=1e-4)
    assert charged.crank_torque_nm(1000.0, stroke, rod, at) == pytest.approx(-found.fun, rel=1e-12)
    assert 0 < at < 90


@given(cranks(), number(0, 180))
def test_no_angle_turns_harder_than_the_peak(engine: tuple[float, float], angle: float) -> None:
    stroke, rod = engine
    peak = charged.crank_torque_nm(1.0, stroke, rod, charged.peak_angle_deg(stroke, rod))
    assert charged.crank_torque_nm(1.0, stroke, rod, angle) <= peak * (1 + 1e-12)


@given(number(20, 160), number(50, 1000), number(1.1, 3))
def test_force_goes_with_the_square_of_the_bore(bore: float, supply: float, by: float) -> None:
    force = charged.piston_force_n(supply, bore)
    assert force == pytest.approx(supply * pi * (bore / 2) ** 2 / 1000, rel=1e-12)
    assert charged.piston_force_n(supply, by * bore) == pytest.approx(by * by * force, rel=1e-12)


def test_dead_centres_turn_nothing() -> None:
    found = charged.crank_torque_nm(5000.0, 62.0, 106.0, np.array([0.0, 180.0]))
    assert found == pytest.approx([0.0, 0.0], abs=1e-12)


def test_refused() -> None:
    fault = (
        "rod_mm: the crank cannot turn over with a rod that short "
        "(a rod longer than half the stroke)"
    )
    with pytest.raises(Contradiction) as refused:
        charged.crank_torque_nm(1000.0, 62.0, 31.0, 10.0)
    assert str(refused.value) == fault
    with pytest.raises(Contradiction) as refused:
        charged.peak_angle_deg(62.0, 30.0)
    assert str(refused.value) == fault
