from math import hypot, radians, sin

import numpy as np
import pytest
from formula_checks import number, piston_height_mm, rows
from hypothesis import given
from scipy.optimize import brentq

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas import crank, geometry, ports


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_port_timing() -> None:
    exhaust = ports.port_opening_deg(58.0, 110.0, 31.0)
    transfer = ports.port_opening_deg(58.0, 110.0, 41.4)
    # By hand: q = 29 + 110 - 31 = 108; cos = (108² + 29² - 110²) / (2 * 29 * 108) = 0.0646552.
    assert exhaust == near(86.2929)
    assert ports.port_duration_deg(exhaust) == near(187.414)
    assert transfer == near(107.829)
    assert ports.port_duration_deg(transfer) == near(144.341)
    assert ports.blowdown_deg(exhaust, transfer) == near(21.5364)


def test_worked_trapped_ratio() -> None:
    trapped = ports.trapped_volume_cc(56.0, 31.0)
    assert trapped == near(76.3533)
    assert geometry.compression_ratio(trapped, 11.9) == near(7.41624)
    swept = geometry.swept_volume_cc(56.0, 58.0)
    assert geometry.compression_ratio(swept, 11.9) == near(13.0046)


def test_worked_thinner_base_gasket() -> None:
    # The cylinder comes down by 0.3 mm, so the crown edge stands 0.3 mm proud.
    opening = ports.port_opening_deg(58.0, 110.0, 31.0, -0.3)
    assert ports.port_duration_deg(opening) == near(186.246)
    assert ports.port_travel_mm(31.0, -0.3) == near(31.3)


def test_openings_and_volumes_against_the_table() -> None:
    # Source: crank_slider.csv, stroke 60, rod 110, bore 54 mm, sympy 30-digit evaluation.
    for row in rows("crank_slider.csv")[1:-1]:
        top = float(row["x_sympy_mm"]) + 0.25
        opening = ports.port_opening_deg(60.0, 110.0, top, 0.25)
        assert opening == pytest.approx(float(row["deg"]), abs=1e-8)
        trapped = ports.trapped_volume_cc(54.0, top, 0.25)
        assert trapped == pytest.approx(float(row["swept_cm3"]), abs=6e-7)


@given(number(15, 150), number(1.0, 3.0), number(0.05, 0.95))
def test_opening_against_a_numeric_root(stroke: float, rod_share: float, share: float) -> None:
    rod, top = stroke * rod_share, stroke * share
    radius = stroke / 2

    def gap(angle: float) -> float:
        return radius + rod - piston_height_mm(radius, rod, 0.0, angle) - top

    expected = brentq(gap, 0.0, 180.0, xtol=1e-11)
    assert ports.port_opening_deg(stroke, rod, top) == pytest.approx(expected, abs=1e-8)


@given(number(15, 150), number(1.0, 3.0), number(0.05, 0.95), number(-2, 5))
def test_rod_keeps_its_length_at_the_opening(
    stroke: float, rod_share: float, share: float, edge: float
) -> None:
    rod, radius = stroke * rod_share, stroke / 2
    angle = float(ports.port_opening_deg(stroke, rod, stroke * share + edge, edge))
    across = radius * sin(radians(angle))
    along = radius + rod - stroke * share - radius * sin(radians(90 - angle))
    assert hypot(across, along) == pytest.approx(rod, rel=1e-12)


def test_travel_for_a_duration_by_hand() -> None:
    # Open for 180°: the crank at 90°, 29 + 110 - sqrt(110² - 29²) = 139 - 106.108435.
    assert ports.travel_for_duration_mm(58.0, 110.0, 180.0) == pytest.approx(32.891565, rel=2e-8)
    assert ports.travel_for_duration_mm(60.0, 50.0, 180.0) == pytest.approx(40.0, rel=1e-14)


def test_travel_for_a_duration_against_the_table() -> None:
    # Source: crank_slider.csv, sympy 30-digit evaluation.
    for row in rows("crank_slider.csv"):
        found = ports.travel_for_duration_mm(60.0, 110.0, 360.0 - 2 * float(row["deg"]))
        assert found == pytest.approx(float(row["x_sympy_mm"]), abs=6e-10)


@given(number(15, 150), number(1.0, 3.0), number(30, 330))
def test_duration_there_and_back(stroke: float, rod_share: float, duration: float) -> None:
    travel = ports.travel_for_duration_mm(stroke, stroke * rod_share, duration)
    opening = ports.port_opening_deg(stroke, stroke * rod_share, travel)
    assert ports.port_duration_deg(opening) == pytest.approx(duration, abs=1e-9)


@given(number(0.05, 0.9), number(0.001, 0.09))
def test_lower_port_opens_later_and_less(share: float, more: float) -> None:
    upper = ports.port_opening_deg(58.0, 110.0, 58 * share)
    lower = ports.port_opening_deg(58.0, 110.0, 58 * (share + more))
    assert ports.blowdown_deg(upper, lower) > 0
    assert ports.port_duration_deg(lower) < ports.port_duration_deg(upper)
    # Durations are even about bottom dead centre: blowdown is half their difference.
    half = (ports.port_duration_deg(upper) - ports.port_duration_deg(lower)) / 2
    assert ports.blowdown_deg(upper, lower) == pytest.approx(half, abs=1e-10)


@given(number(20, 160), number(5, 100), number(-2, 5))
def test_trapped_volume_is_area_times_travel(bore: float, top: float, edge: float) -> None:
    volume = geometry.piston_area_mm2(bore) * (top - edge) / 1000
    assert ports.trapped_volume_cc(bore, top, edge) == pytest.approx(volume, rel=1e-14)


@pytest.mark.parametrize(
    ("top", "edge"), [(58.5, 0.0), (58.0, -0.3), (0.2, 0.5), (np.array([31.0, 60.0]), 0.0)]
)
def test_port_out_of_reach(top: float, edge: float) -> None:
    with pytest.raises(OutOfBounds, match="port_top_below_deck_mm: the crown edge does not pass"):
        ports.port_opening_deg(58.0, 110.0, top, edge)


def test_rod_too_short() -> None:
    with pytest.raises(Contradiction, match="rod_mm: the crank cannot turn over"):
        ports.port_opening_deg(58.0, 29.0, 31.0)


def test_port_at_bottom_dead_centre_never_opens() -> None:
    opening = ports.port_opening_deg(58.0, 110.0, 58.0)
    assert ports.port_duration_deg(opening) == 0.0
    assert crank.travel_mm(58.0, 110.0, opening) == 58.0


def test_port_at_top_dead_centre_is_open_all_the_turn() -> None:
    # By hand: the crown edge stands at the port's top already, so the port opens at 0°.
    opening = ports.port_opening_deg(58.0, 110.0, 0.5, 0.5)
    assert opening == 0.0
    assert ports.port_duration_deg(opening) == 360.0
