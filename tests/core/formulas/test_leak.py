from collections.abc import Callable
from math import pi, sqrt
from typing import Any

import fluids
import numpy as np
import pytest
from formula_checks import number, rows
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas import leak

AIR = 101.325


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def nozzle_flux(before_kpa: float, after_kpa: float) -> float:
    """Flow function times pressure, by a library's nozzle expansibility and critical pressure.

    The expansibility of ISO 5167-3 at a vanishing diameter ratio is that of an ideal nozzle.
    """
    after = max(after_kpa, fluids.P_critical_flow(before_kpa, 1.4))
    if after >= before_kpa:
        return 0.0
    share = fluids.nozzle_expansibility(D=1.0, Do=1e-6, P1=before_kpa, P2=after, k=1.4)
    return float(share * sqrt(2 * before_kpa * (before_kpa - after)))


@st.composite
def readings(draw: st.DrawFn) -> tuple[float, float, float, float]:
    """Supply, cylinder, restrictor and air pressure of a tester in use."""
    supply = draw(number(50, 1000))
    return supply, supply * draw(number(0.02, 0.98)), draw(number(0.3, 3)), draw(number(48, 110))


def test_worked_leak_down() -> None:
    # By hand: 100 * 78 / 690; 100 * 242 / 690; 100 * 124 / 690.
    found = leak.leak_percent(690.0, np.array([612.0, 448.0, 566.0]))
    assert found == pytest.approx([11.3043, 35.0725, 17.9710], rel=2e-5)


def test_worked_leak_area() -> None:
    # By hand in leak-area's worked example; a hole of 0.824802 mm.
    area = leak.leak_area_mm2(690.0, 612.0, 1.0, AIR)
    assert area == near(0.534305)
    assert leak.hole_diameter_mm(area) == near(0.824802)
    assert leak.hole_area_mm2(leak.hole_diameter_mm(area)) == pytest.approx(area, rel=1e-14)


def test_worked_readings_on_other_testers() -> None:
    area = leak.leak_area_mm2(690.0, 612.0, 1.0, AIR)
    found = leak.leak_percent_on_tester(area, np.array([0.5, 1.0, 1.5]), 690.0, AIR)
    assert found == pytest.approx([72.5397, 11.3043, 2.40987], rel=2e-5)
    supplies = leak.leak_percent_on_tester(area, 1.0, np.array([350.0, 100.0]), AIR)
    assert supplies == pytest.approx([12.7105, 19.7738], rel=2e-5)
    either = leak.leak_percent_on_tester(area * np.array([0.85, 1.15]), 1.5, 690.0, AIR)
    assert either == pytest.approx([1.75061, 3.16712], rel=2e-5)


def test_critical_ratio_against_a_library() -> None:
    # Source: fluids 1.3.1, P_critical_flow.
    assert pytest.approx(fluids.P_critical_flow(1.0, 1.4), rel=1e-14) == leak.CRITICAL_RATIO
    assert pytest.approx(0.528282, abs=5e-7) == leak.CRITICAL_RATIO
    assert leak.nozzle_ratio(101.325, 713.325) == leak.CRITICAL_RATIO
    assert leak.nozzle_ratio(713.325, 791.325) == near(0.901431)


@given(number(60, 1100), number(0.0, 1.0))
def test_flow_function_against_a_library(before: float, drop: float) -> None:
    # Source: fluids 1.3.1, nozzle_expansibility (ISO 5167-3) and P_critical_flow.
    expected = nozzle_flux(before, before * (1 - drop))
    found = before * leak.flow_function(drop)
    # The library takes pressures, whose difference keeps few digits of a small drop.
    rel, pressure = (1e-7, 5e-5) if drop < 1e-6 else (1e-9, 1e-6)
    assert found == pytest.approx(expected, rel=rel, abs=pressure)


def test_flow_function_against_relief_valve_sizing() -> None:
    # Source: API 520 part 1 sizing of gas, critical and subcritical, as fluids 1.3.1 has it. Its
    # constants carry three digits.
    for before, after in ((791.325, 713.325), (713.325, 101.325), (201.325, 161.325)):
        area = fluids.API520_A_g(
            m=1.0, T=293.15, Z=1.0, MW=28.9647, k=1.4, P1=before * 1e3, P2=after * 1e3, Kd=1.0
        )
        # Mass flow per area is pressure times flow function over sqrt(R T).
        expected = sqrt(8314.4626 / 28.9647 * 293.15) / (area * before * 1e3)
        assert leak.flow_function((before - after) / before) == pytest.approx(expected, rel=1.5e-3)


def test_flow_function_against_real_air() -> None:
    # Source: isentropic_air.csv, cantera, air with heat capacities that vary with temperature.
    # Along the isentrope the speed is v² = 2 ∫ dp / rho; the table gives p at the densities r.
    table = [row for row in rows("isentropic_air.csv") if row["T1_K"] == "293.0"]
    ratio = np.array([float(row["r"]) for row in table])
    pressure = np.array([float(row["p_cantera_kPa"]) for row in table])
    exponent = np.log(pressure[1:] / pressure[:-1]) / np.log(ratio[1:] / ratio[:-1])
    work = exponent / (exponent - 1) * np.diff(pressure / ratio)
    # From the densest state (its pressure and temperature stagnant) down to each of the others.
    speed = np.sqrt(2 * np.cumsum(work[::-1]))
    stagnant = pressure[-1]
    flow = ratio[-2::-1] * speed / stagnant / np.sqrt(ratio[-1] / stagnant)
    drops = 1 - pressure[-2::-1] / stagnant
    below = drops < leak.CHOKED_DROP
    assert below.sum() == 8
    # 763 K hot air has an isentropic exponent of 1.36, not 1.40: up to 1.2 % in the flow.
    assert leak.flow_function(drops[below]) == pytest.approx(flow[below], rel=0.012)


@given(number(0.02, leak.CHOKED_DROP))
def test_flow_function_against_integration(drop: float) -> None:
    # Speed from v² = 2 ∫ dp / rho along p = rho^1.4, times the density at the throat.
    square, _ = quad(lambda p: 2 * p ** (-1 / 1.4), 1 - drop, 1, epsabs=1e-13)
    expected = sqrt(square) * (1 - drop) ** (1 / 1.4)
    assert leak.flow_function(drop) == pytest.approx(expected, rel=1e-9)


@given(readings())
def test_leak_area_against_a_library(reading: tuple[float, float, float, float]) -> None:
    supply, cylinder, restrictor, outside = reading
    inside = nozzle_flux(supply + outside, cylinder + outside)
    outwards = nozzle_flux(cylinder + outside, outside)
    expected = pi / 4 * restrictor**2 * inside / outwards
    assert leak.leak_area_mm2(*reading) == pytest.approx(expected, rel=1e-9)


@given(readings(), number(0.3, 3), number(50, 1000))
def test_other_tester_against_a_numeric_root(
    reading: tuple[float, float, float, float], restrictor: float, supply: float
) -> None:
    # Source: scipy brentq on the library's nozzle flow.
    outside = reading[3]
    area = float(leak.leak_area_mm2(*reading))

    def excess(cylinder: float) -> float:
        inwards = pi / 4 * restrictor**2 * nozzle_flux(supply + outside, cylinder + outside)
        return inwards - area * nozzle_flux(cylinder + outside, outside)

    cylinder = brentq(excess, 0.0, supply, xtol=1e-12, rtol=1e-14)
    found = leak.leak_percent_on_tester(area, restrictor, supply, outside)
    assert found == pytest.approx(100 * (supply - cylinder) / supply, abs=1e-6)


@given(readings())
def test_the_own_tester_reads_what_it_read(reading: tuple[float, float, float, float]) -> None:
    supply, cylinder, restrictor, outside = reading
    area = leak.leak_area_mm2(*reading)
    found = leak.leak_percent_on_tester(area, restrictor, supply, outside)
    assert found == pytest.approx(leak.leak_percent(supply, cylinder), rel=1e-11)


@given(readings(), number(1.02, 3))
def test_a_wider_restrictor_and_a_smaller_hole_read_less(
    reading: tuple[float, float, float, float], factor: float
) -> None:
    supply, _, restrictor, outside = reading
    area = leak.leak_area_mm2(*reading)
    here = leak.leak_percent_on_tester(area, restrictor, supply, outside)
    assert leak.leak_percent_on_tester(area, factor * restrictor, supply, outside) < here
    assert leak.leak_percent_on_tester(area / factor, restrictor, supply, outside) < here
    # Doubling both holes changes nothing.
    both = leak.leak_percent_on_tester(area * factor**2, restrictor * factor, supply, outside)
    assert both == pytest.approx(here, rel=1e-9)


def test_both_choked_by_hand() -> None:
    # Flow functions cancel: A = pi/4 * 1² * 900 / 300; at 1100 kPa a2 = 1100 / 3.
    area = leak.leak_area_mm2(800.0, 200.0, 1.0, 100.0)
    assert area == pytest.approx(0.75 * pi, rel=1e-14)
    found = leak.leak_percent_on_tester(area, 1.0, 1000.0, 100.0)
    assert found == pytest.approx(100 * (1100 - 1100 / 3) / 1000, rel=1e-13)


def test_no_hole_reads_nothing() -> None:
    for supply in (20.0, 690.0, 3000.0):
        assert leak.leak_percent_on_tester(0.0, 1.0, supply, 110.0) == 0.0
    assert leak.flow_function(0.0) == 0.0


@pytest.mark.parametrize("share", [1e-6, 1e-9])
def test_a_pinhole_reads_with_the_square_of_its_area(share: float) -> None:
    # By hand: hardly any drop, so the inflow is that of a liquid, f² = 2 drop; the outflow is
    # choked, and (2/2.4)^3.5 gives f² = 7 ((5/6)^5 - (5/6)^6) = 0.468866. Both alike:
    # drop = share² * 0.468866 / 2. A search that only halves would not come down to it.
    drop = share**2 * 7 * ((5 / 6) ** 5 - (5 / 6) ** 6) / 2
    found = leak.leak_percent_on_tester(share * pi / 4, 1.0, 690.0, 100.0)
    assert found == pytest.approx(100 * drop * 790 / 690, rel=1e-12, abs=0.0)


@pytest.mark.parametrize("supply", [350.0, 690.0, 1000.0])
@pytest.mark.parametrize("area", [0.05, 0.2, 0.5, 0.534305, 0.75 * pi, 3.0, 10.0])
def test_a_reading_takes_about_ten_steps(
    area: float, supply: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    # Newton doubles the digits each step; halving would take fifty.
    steps = []
    weigh = leak._excess

    def counted(*inputs: Any) -> Any:
        steps.append(inputs)
        return weigh(*inputs)

    monkeypatch.setattr(leak, "_excess", counted)
    leak.leak_percent_on_tester(area, 1.0, supply, AIR)
    assert 0 < len(steps) <= 12


@given(number(0.001, leak.CHOKED_DROP - 0.001))
def test_slope_against_differences(drop: float) -> None:
    # Independent: central differences of the flow function, which libraries have confirmed above.
    ahead, behind = (leak.flow_function(drop + step) ** 2 for step in (1e-5, -1e-5))
    expected = (ahead - behind) / 2e-5
    assert leak._flow_squared_slope(drop) == pytest.approx(expected, abs=1e-7)


def test_a_choked_flow_grows_no_more() -> None:
    assert leak._flow_squared_slope(0.6) == 0.0
    assert leak.flow_function(0.6) == leak.flow_function(0.9)


@given(number(0.02, 0.98), number(0.05, 0.9), number(0.1, 10))
def test_slope_of_the_excess_against_differences(
    share: float, outside: float, areas: float
) -> None:
    # Independent: central differences, with the leak choked and not.
    drop = share * (1 - outside)
    ahead, behind = (leak._excess(drop + step, areas, outside)[0] for step in (1e-6, -1e-6))
    found = leak._excess(drop, areas, outside)[1]
    assert found == pytest.approx((ahead - behind) / 2e-6, rel=1e-4, abs=1e-4)


ABOVE_ZERO = "must be above zero (give a number above zero)"
DOWNHILL = (
    "drop: air flows from the higher pressure to the lower one "
    "(a drop between 0 and the pressure before the nozzle)"
)
NO_AREA = "leak_mm2: no hole has an area below zero (a leak area of zero or more)"


@pytest.mark.parametrize(
    ("formula", "inputs", "fault"),
    [
        (leak.leak_percent, (0.0, 0.0), f"supply_pressure_kpa: {ABOVE_ZERO}"),
        (leak.leak_area_mm2, (690.0, 0.0, 1.0, AIR), f"cylinder_pressure_kpa: {ABOVE_ZERO}"),
        (leak.leak_area_mm2, (600.0, 612.0, 1.0, AIR), DOWNHILL),
        (leak.flow_function, (float("nan"),), DOWNHILL),
        (leak.flow_function, (1.001,), DOWNHILL),
        (leak.flow_function, (np.array([0.5, -1e-9]),), DOWNHILL),
        (leak.nozzle_ratio, (100.0, 0.0), f"before_kpa: {ABOVE_ZERO}"),
        (leak.leak_percent_on_tester, (0.5, 0.0, 690.0, AIR), f"restrictor_mm: {ABOVE_ZERO}"),
        (leak.leak_percent_on_tester, (0.5, 1.0, 0.0, AIR), f"supply_pressure_kpa: {ABOVE_ZERO}"),
        (leak.leak_percent_on_tester, (0.5, 1.0, 690.0, 0.0), f"air_kpa: {ABOVE_ZERO}"),
    ],
)
def test_out_of_bounds(formula: Callable[..., Any], inputs: tuple[Any, ...], fault: str) -> None:
    with pytest.raises(OutOfBounds) as refused:
        formula(*inputs)
    assert str(refused.value) == fault


def test_no_hole_is_smaller_than_none() -> None:
    with pytest.raises(Contradiction) as refused:
        leak.leak_percent_on_tester(-0.1, 1.0, 690.0, AIR)
    assert str(refused.value) == NO_AREA
