import numpy as np
import pytest
from formula_checks import number, rows
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas import crank, cranking, geometry


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def integrated_kpa(start_kpa: float, from_cc: float, to_cc: float, exponent: float) -> float:
    """End pressure of dp/dV = -n p/V, integrated step by step instead of in closed form."""
    path = solve_ivp(
        lambda volume, pressure: -exponent * pressure / volume,
        (from_cc, to_cc),
        [start_kpa],
        rtol=1e-11,
        atol=1e-10,
    )
    return float(path.y[0, -1])


@st.composite
def cylinders(draw: st.DrawFn) -> tuple[float, float]:
    """Effective and clearance volume of a cylinder with a dynamic ratio of 3 to 15."""
    clearance = draw(number(0.5, 200))
    return clearance * draw(number(2, 14)), clearance


def test_worked_cranking_pressure() -> None:
    # By hand: 7.51384^1.25 = 12.4403; 94.3217 * 11.4403 = 1079.06.
    found = cranking.cranking_pressure_kpa(7.51384, 94.3217, np.array([1.20, 1.25, 1.30]))
    assert found == pytest.approx([966.508, 1079.06, 1203.55], rel=2e-5)
    closed = cranking.cranking_pressure_kpa(7.51384, 94.3217, 1.25, 60.0)
    assert closed == near(652.09)


def test_worked_decompressor() -> None:
    stroke = crank.effective_stroke_mm(66.0, 112.0, 95.0)
    ratio = geometry.compression_ratio(geometry.swept_volume_cc(68.0, stroke), 29.1863)
    assert ratio == near(5.3622)
    assert cranking.cranking_pressure_kpa(ratio, 94.3217, 1.25) == near(675.323)


def test_worked_wet_test() -> None:
    # By hand: (190.115 + 26.1863) / 26.1863 = 8.26009; (8.26009^1.25 - 1) / (7.51384^1.25 - 1)
    # = 13.0034 / 11.4403 = 1.136634.
    assert cranking.gain_percent(660.0, 930.0) == near(40.9091)
    assert geometry.compression_ratio(190.115, 29.1863) == near(7.51384)
    assert cranking.ratio_with_oil(190.115, 29.1863, 3.0) == near(8.26009)
    volume_only = cranking.volume_only_gain_percent(190.115, 29.1863, 3.0, 1.25)
    assert volume_only == near(13.6634)
    assert cranking.excess_gain_percent(660.0, 930.0, volume_only) == near(23.9705)
    assert cranking.recommended_oil_ml(29.1863) == near(2.91863)


def test_worked_hose() -> None:
    # By hand: (43 + 8.5) / 8.5 = 6.05882; 6.05882^1.25 - 1 = 8.50573; 8.04918^1.25 - 1 = 12.5579.
    assert geometry.compression_ratio(43.0, 6.1) == near(8.04918)
    with_hose = cranking.ratio_with_hose(43.0, 6.1, 2.4)
    assert with_hose == near(6.05882)
    assert cranking.cranking_pressure_kpa(8.04918, 101.325, 1.25) == near(1272.42)
    assert cranking.cranking_pressure_kpa(with_hose, 101.325, 1.25) == near(861.843)
    assert cranking.hose_error_percent(43.0, 6.1, 2.4, 1.25) == near(-32.2674)


@given(st.sampled_from(rows("isentropic_air.csv")), number(1.0, 1.30))
def test_cranking_stays_under_the_isentropic_ceiling(row: dict[str, str], exponent: float) -> None:
    # Source: isentropic_air.csv, cantera air from 100 kPa absolute without loss of heat or gas.
    gauge = cranking.cranking_pressure_kpa(float(row["r"]), 100.0, exponent)
    assert gauge + 100 < float(row["p_cantera_kPa"])


def test_every_row_stays_under_the_ceiling_at_the_highest_exponent() -> None:
    table = rows("isentropic_air.csv")
    assert len(table) == 52
    ratio = np.array([float(row["r"]) for row in table])
    ceiling = np.array([float(row["p_cantera_kPa"]) for row in table])
    gauge = cranking.cranking_pressure_kpa(ratio, 100.0, 1.30)
    assert np.all(gauge + 100 < ceiling)
    assert np.all(gauge + 100 > 0.8 * ceiling)


def test_pressure_against_isentropic_air_at_its_own_exponent() -> None:
    # The same source: n_eff is printed to five decimals, worth 5e-6 * ln(12) of the pressure.
    for row in rows("isentropic_air.csv"):
        gauge = cranking.cranking_pressure_kpa(float(row["r"]), 100.0, float(row["n_eff"]))
        assert gauge + 100 == pytest.approx(float(row["p_cantera_kPa"]), rel=2e-5)


@given(cylinders(), number(1.1, 1.4), number(48, 110), number(10, 110))
def test_pressure_against_integration(
    cylinder: tuple[float, float], exponent: float, outside: float, intake: float
) -> None:
    effective, clearance = cylinder
    end = integrated_kpa(intake, effective + clearance, clearance, exponent)
    ratio = geometry.compression_ratio(effective, clearance)
    found = cranking.cranking_pressure_kpa(ratio, outside, exponent, intake)
    assert found == pytest.approx(end - outside, abs=1e-7 * end)


@given(cylinders(), number(1.1, 1.4), number(0.01, 0.24))
def test_oil_gain_against_integration(
    cylinder: tuple[float, float], exponent: float, share: float
) -> None:
    effective, clearance = cylinder
    room = clearance * (1 - share)
    dry = integrated_kpa(100.0, effective + clearance, clearance, exponent) - 100
    wet = integrated_kpa(100.0, effective + room, room, exponent) - 100
    found = cranking.volume_only_gain_percent(effective, clearance, clearance * share, exponent)
    assert found == pytest.approx(cranking.gain_percent(dry, wet), abs=1e-4)
    assert found > 0


@given(cylinders(), number(1.1, 1.4), number(0.01, 5))
def test_hose_error_against_integration(
    cylinder: tuple[float, float], exponent: float, share: float
) -> None:
    effective, clearance = cylinder
    room = clearance * (1 + share)
    true = integrated_kpa(100.0, effective + clearance, clearance, exponent) - 100
    read = integrated_kpa(100.0, effective + room, room, exponent) - 100
    found = cranking.hose_error_percent(effective, clearance, clearance * share, exponent)
    assert found == pytest.approx(100 * (read / true - 1), abs=1e-4)
    assert -100 < found < 0


@given(number(2, 15), number(1.0, 1.4), number(48, 110))
def test_open_throttle_is_air_pressure(ratio: float, exponent: float, outside: float) -> None:
    open_throttle = cranking.cranking_pressure_kpa(ratio, outside, exponent)
    assert open_throttle == cranking.cranking_pressure_kpa(ratio, outside, exponent, outside)
    shut = cranking.cranking_pressure_kpa(ratio, outside, exponent, 0.6 * outside)
    assert shut < open_throttle


@given(number(2, 14), number(0.001, 1), number(1.1, 1.4))
def test_pressure_grows_with_ratio_and_exponent(ratio: float, more: float, exponent: float) -> None:
    found = cranking.cranking_pressure_kpa(ratio, 100.0, exponent)
    assert found < cranking.cranking_pressure_kpa(ratio + more, 100.0, exponent)
    assert found < cranking.cranking_pressure_kpa(ratio, 100.0, exponent + more)


@given(number(100, 2000), number(-0.5, 2), number(0, 60))
def test_sound_rings_leave_no_excess(dry: float, share: float, volume_only: float) -> None:
    sound = dry * (1 + volume_only / 100)
    assert cranking.excess_gain_percent(dry, sound, volume_only) == pytest.approx(0, abs=1e-12)
    wet = dry * (1 + share)
    gain = cranking.gain_percent(dry, wet)
    assert gain == pytest.approx(100 * share, abs=1e-11)
    excess = cranking.excess_gain_percent(dry, wet, volume_only)
    together = (1 + excess / 100) * (1 + volume_only / 100)
    assert together == pytest.approx(wet / dry, rel=1e-13)


@given(cylinders(), number(0, 0.9), number(0, 5))
def test_oil_raises_and_hose_lowers_the_ratio(
    cylinder: tuple[float, float], oil_share: float, hose_share: float
) -> None:
    effective, clearance = cylinder
    plain = geometry.compression_ratio(effective, clearance)
    assert cranking.ratio_with_oil(effective, clearance, oil_share * clearance) >= plain
    assert cranking.ratio_with_hose(effective, clearance, hose_share * clearance) <= plain
    # Taking out as oil what was put in as hose leads back.
    longer = clearance * (1 + hose_share)
    back = cranking.ratio_with_oil(effective, longer, hose_share * clearance)
    assert back == pytest.approx(plain, rel=1e-14 * (1 + hose_share))


def test_dose_has_two_ends() -> None:
    # common practice, no source: a tenth of the clearance volume, 0.5 to 5 mL.
    doses = cranking.recommended_oil_ml(np.array([0.3, 5.0, 6.1, 29.0, 50.0, 300.0]))
    assert doses == pytest.approx([0.5, 0.5, 0.61, 2.9, 5.0, 5.0])


@given(number(0.3, 300))
def test_dose_is_a_tenth_between_its_ends(clearance: float) -> None:
    dose = cranking.recommended_oil_ml(clearance)
    assert dose == pytest.approx(sorted([0.5, clearance / 10, 5.0])[1])


@pytest.mark.parametrize("oil", [6.1, 7.0, float("nan"), np.array([1.0, 6.5])])
def test_oil_locks_the_cylinder(oil: float) -> None:
    with pytest.raises(Contradiction, match="oil_ml: that much oil fills the clearance volume"):
        cranking.ratio_with_oil(43.0, 6.1, oil)
    with pytest.raises(Contradiction, match="oil_ml: that much oil fills the clearance volume"):
        cranking.volume_only_gain_percent(43.0, 6.1, oil, 1.25)


def test_nothing_to_compress() -> None:
    with pytest.raises(OutOfBounds, match="ratio: must be above zero"):
        cranking.cranking_pressure_kpa(np.array([7.0, 0.0]), 100.0, 1.25)
    with pytest.raises(OutOfBounds, match="effective_cc: must be above zero"):
        cranking.hose_error_percent(0.0, 6.1, 2.4, 1.25)
    with pytest.raises(OutOfBounds, match="exponent: must be above zero"):
        cranking.hose_error_percent(43.0, 6.1, 2.4, 0.0)
    with pytest.raises(OutOfBounds, match="clearance_cc: the parts leave no volume"):
        cranking.ratio_with_hose(43.0, 6.1, -6.1)


def test_gain_over_nothing() -> None:
    with pytest.raises(OutOfBounds, match="dry_kpa: must be above zero"):
        cranking.gain_percent(np.array([660.0, 0.0]), 930.0)
    with pytest.raises(OutOfBounds, match="volume_only_gain_percent: must be above zero"):
        cranking.excess_gain_percent(660.0, 930.0, -100.0)
