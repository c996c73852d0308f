"""Lash, by hand, and against a valve train put together length by length."""

import numpy as np
import pytest
from formula_checks import number
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import lash


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_lash() -> None:
    # By hand: 2.648 + 0.06 - 0.25; 0.06 + 2.648 - 2.45; 0.25 - 0.18; 0.08 / 0.5;
    # 0.08 / (0.5 * 1.3); 0.08 / 1.3.
    assert lash.shim_for_lash_mm(2.648, 0.06, 0.25, 1.0) == near(2.458)
    assert lash.lash_with_shim_mm(2.648, 0.06, 2.45, 1.0) == near(0.258)
    assert lash.lash_after_sink_mm(0.25, 0.18, 1.0) == near(0.07)
    assert lash.screw_turn_fraction(0.16, 0.08, 0.5, 1.0) == near(0.16)
    assert 360 * lash.screw_turn_fraction(0.16, 0.08, 0.5, 1.3) == near(44.3077)
    assert lash.lash_at_cam_mm(0.08, 1.3) == near(0.0615385)


@given(number(20, 40), number(0.5, 6), number(0.5, 6), number(0, 1.5), number(0, 2))
def test_a_bucket_built_up_length_by_length(
    stem: float, old: float, new: float, room: float, sink: float
) -> None:
    # Independent: the base circle stands over stem and shim; what is left between them is lash.
    cam = stem + old + room
    before = cam - stem - old
    assert lash.lash_with_shim_mm(old, before, new, 1.0) == pytest.approx(
        cam - stem - new, abs=1e-12
    )
    # A valve that sinks lets its stem rise.
    assert lash.lash_after_sink_mm(before, sink, 1.0) == pytest.approx(
        cam - (stem + sink) - old, abs=1e-12
    )


@given(number(0.5, 6), number(0, 1.5), number(0, 1.5), number(0.4, 2))
def test_the_exact_shim_gives_the_lash_wanted(
    old: float, measured: float, wanted: float, movement: float
) -> None:
    exact = lash.shim_for_lash_mm(old, measured, wanted, movement)
    assert lash.lash_with_shim_mm(old, measured, exact, movement) == pytest.approx(
        wanted, abs=1e-11
    )
    # A thicker shim never gives more lash: the sense cannot be turned round.
    thicker = lash.lash_with_shim_mm(old, measured, exact + 0.1, movement)
    assert thicker < wanted


@given(number(10, 40), number(10, 40), number(0, 1), number(0, 1), number(0.3, 2))
def test_a_rocker_turned_about_its_shaft(
    valve_arm: float, cam_arm: float, measured: float, wanted: float, pitch: float
) -> None:
    # Independent: arms as lengths; a screw at the cam's end lifts its own arm by pitch * turns,
    # and the valve's end follows by the ratio of the arms (small angles).
    turns = lash.screw_turn_fraction(measured, wanted, pitch, valve_arm / cam_arm)
    at_valve = turns * pitch / cam_arm * valve_arm
    assert at_valve == pytest.approx(abs(measured - wanted), abs=1e-12)
    assert lash.lash_at_cam_mm(wanted, valve_arm / cam_arm) / cam_arm * valve_arm == pytest.approx(
        wanted, abs=1e-12
    )


def test_one_turn_is_one_pitch() -> None:
    # Source: ISO 5408 (from memory): lead, the advance of a thread in one turn; single start.
    assert lash.screw_turn_fraction(0.75, 0.0, 0.75, 1.0) == 1.0
    assert lash.screw_turn_fraction(0.0, 0.75, 0.75, 1.0) == 1.0


def test_out_of_bounds() -> None:
    with pytest.raises(OutOfBounds, match="movement: must be above zero"):
        lash.lash_with_shim_mm(2.5, 0.1, 2.4, np.array([1.0, 0.0]))
    with pytest.raises(OutOfBounds, match="pitch_mm: must be above zero"):
        lash.screw_turn_fraction(0.1, 0.2, 0.0, 1.0)
    with pytest.raises(OutOfBounds, match="ratio: must be above zero"):
        lash.screw_turn_fraction(0.1, 0.2, 0.5, 0.0)
    with pytest.raises(OutOfBounds, match="ratio: must be above zero"):
        lash.lash_at_cam_mm(0.1, 0.0)
