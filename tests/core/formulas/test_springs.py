"""Valve springs, by hand, against a spring wound and twisted coil by coil, and handbook values."""

from math import atan2, cos, degrees, pi, radians, sin

import numpy as np
import pytest
from formula_checks import number
from hypothesis import given
from scipy.integrate import quad

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import springs


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_spring() -> None:
    # By hand: 230 / 9; 150 + 25.5556 * 8.6; 34 - 8.6; 25.4 - 23.1; 34 + 150 / 25.5556; 13 / 40;
    # 150 / 1.55; atan(1.1 / 39.87) = 0.0275826 rad.
    rate = springs.rate_n_per_mm(150.0, 34.0, 380.0, 25.0)
    assert rate == near(25.5556)
    assert springs.load_n(150.0, 34.0, rate, 25.4) == near(369.778)
    assert springs.open_length_mm(34.0, 8.6) == near(25.4)
    assert springs.coil_bind_margin_mm(25.4, 23.1) == near(2.3)
    assert springs.free_length_mm(150.0, 34.0, rate) == near(39.8696)
    assert springs.loss_percent(40.0, 39.87) == near(0.325)
    assert springs.share_percent(150.0, 155.0) == near(96.7742)
    assert springs.lean_angle_deg(1.1, 39.87) == near(1.58037)


def test_rate_of_a_handbook_spring() -> None:
    # Source: Shigley, Mechanical Engineering Design, example 10-1 (from memory): music wire of
    # 0.037 in, mean diameter 0.400 in, 10.5 active coils, 11.85e6 psi: 4.13 lbf/in. The formula is
    # of one dimension, so it takes inches and pounds as well.
    assert springs.rate_from_wire_n_per_mm(11.85e6, 0.037, 0.4, 10.5) == pytest.approx(
        4.13, abs=0.005
    )


def test_rate_after_the_standard() -> None:
    # Source: EN 13906-1 (from memory); by hand: 81500 * 256 / (8 * 32768 * 8.5); and the spring of
    # the worked example, 79500 * 118.5921 / 370440.
    assert springs.rate_from_wire_n_per_mm(81500.0, 4.0, 32.0, 8.5) == near(9.36351)
    assert springs.rate_from_wire_n_per_mm(79500.0, 3.3, 21.0, 5.0) == near(25.451)


@given(number(70e3, 85e3), number(0.8, 8), number(4, 12), number(1.5, 15))
def test_rate_by_the_twist_of_the_wire(
    modulus: float, wire: float, index: float, coils: float
) -> None:
    # Independent (Castigliano): under 1 N the torque D/2 twists the wire; the energy is summed
    # along the turns, the polar moment over rings of the section.
    coil = index * wire
    polar, _ = quad(lambda r: 2 * pi * r**3, 0, wire / 2)
    energy, _ = quad(
        lambda _: (coil / 2) ** 2 / (2 * modulus * polar) * coil / 2, 0, 2 * pi * coils
    )
    rate = springs.rate_from_wire_n_per_mm(modulus, wire, coil, coils)
    assert rate == pytest.approx(1 / (2 * energy), rel=1e-9)


@given(number(30, 90), number(1, 100), number(0.5, 10), number(0.5, 10))
def test_two_loads_of_a_spring_rebuild_it(
    free: float, rate: float, first: float, more: float
) -> None:
    lengths = (free - first, free - first - more)
    loads = [rate * (free - length) for length in lengths]
    found = springs.rate_n_per_mm(loads[0], lengths[0], loads[1], lengths[1])
    assert found == pytest.approx(rate, rel=1e-9)
    assert springs.free_length_mm(loads[0], lengths[0], found) == pytest.approx(free, rel=1e-9)
    halfway = springs.load_n(loads[0], lengths[0], found, (lengths[0] + lengths[1]) / 2)
    assert halfway == pytest.approx(sum(loads) / 2, rel=1e-9)


@given(number(8, 100), number(0, 45))
def test_a_spring_tilted_on_purpose(free: float, tilt: float) -> None:
    top, height = free * sin(radians(tilt)), free * cos(radians(tilt))
    assert springs.lean_angle_deg(top, height) == pytest.approx(tilt, abs=1e-9)
    assert springs.lean_angle_deg(top, height) == pytest.approx(
        degrees(atan2(top, height)), abs=1e-12
    )


@given(number(8, 100), number(-5, 20))
def test_loss_and_share_make_the_whole(new: float, loss: float) -> None:
    now = new * (1 - loss / 100)
    assert springs.loss_percent(new, now) == pytest.approx(loss, abs=1e-9)
    assert springs.share_percent(now, new) + springs.loss_percent(new, now) == pytest.approx(100.0)


@given(number(20, 100), number(1, 15), number(8, 60))
def test_margin_goes_down_with_lift(installed: float, lift: float, bind: float) -> None:
    opened = springs.open_length_mm(installed, lift)
    assert springs.coil_bind_margin_mm(opened, bind) + lift + bind == pytest.approx(installed)


def test_out_of_bounds() -> None:
    with pytest.raises(OutOfBounds, match="length_1_mm: must be above length_2"):
        springs.rate_n_per_mm(150.0, np.array([34.0, 25.0]), 380.0, 25.0)
    with pytest.raises(OutOfBounds, match="rate: must be above zero"):
        springs.free_length_mm(150.0, 34.0, 0.0)
    with pytest.raises(OutOfBounds, match="new: must be above zero"):
        springs.loss_percent(0.0, 1.0)
    with pytest.raises(OutOfBounds, match="nominal: must be above zero"):
        springs.share_percent(1.0, 0.0)
    with pytest.raises(OutOfBounds, match="coil_mm: must be above zero"):
        springs.rate_from_wire_n_per_mm(79500.0, 3.3, 0.0, 5.0)
    with pytest.raises(OutOfBounds, match="coils: must be above zero"):
        springs.rate_from_wire_n_per_mm(79500.0, 3.3, 21.0, 0.0)
