import ambiance
import numpy as np
import pytest
from fluids.atmosphere import ATMOSPHERE_1976
from formula_checks import number, rows
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import air

EARTH_RADIUS_M = 6_356_766.0  # of both atmospheres below: H = R z / (R + z)


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def geopotential_m(geometric_m: float) -> float:
    return EARTH_RADIUS_M * geometric_m / (EARTH_RADIUS_M + geometric_m)


def test_worked_air_pressure() -> None:
    # By hand: 1 - 0.0065 * 1500 / 288.15 = 0.9661635; its 5.25588th power is 0.834503.
    pressure = air.altitude_pressure_kpa(1500.0)
    assert pressure == near(84.5560)
    assert air.reading_at_pressure_kpa(880.0, pressure, 101.325) == near(1054.52)
    assert air.density_ratio(1500.0) == near(0.863728)
    assert 880.0 / air.density_ratio(1500.0) == near(1018.84)


def test_worked_weather_report() -> None:
    station = air.altitude_pressure_kpa(1500.0, 102.1)
    assert station == near(85.2027)
    assert air.reading_at_pressure_kpa(880.0, station, 101.325) == near(1046.52)


def test_worked_lengths_at_20c() -> None:
    # By hand: 72.036 / (1 - 22e-6) = 72.037585; 71.982 / (1 + 225.5e-6) = 71.965772.
    bore = air.length_at_20c_mm(72.036, 18.0, 1.1e-5)
    piston = air.length_at_20c_mm(71.982, 31.0, 2.05e-5)
    assert bore == pytest.approx(72.037585, abs=1e-6)
    assert piston == pytest.approx(71.965772, abs=1e-6)
    assert bore - piston == near(0.0718131)


def test_pressure_against_the_table() -> None:
    # Source: atmosphere.csv, geopotential columns: closed form with the exponent 5.255877, and
    # ambiance (ICAO Doc 7488, 1993) at the geometric height of the same geopotential.
    for row in rows("atmosphere.csv"):
        found = 1000 * air.altitude_pressure_kpa(float(row["z_m"]))
        assert found == pytest.approx(float(row["p_closed_geopotential_Pa"]), rel=6e-7)
        assert found == pytest.approx(float(row["p_ambiance_at_geopotential_Pa"]), rel=6e-7)
        ratio = found / 101_325
        assert ratio == pytest.approx(float(row["delta_geopotential"]), abs=1e-6)


@given(number(-430, 5500))
def test_pressure_against_two_libraries(geometric: float) -> None:
    # Sources: fluids (US Standard Atmosphere 1976), ambiance (ICAO Doc 7488, 1993), run here.
    height = geopotential_m(geometric)
    found = 1000 * air.altitude_pressure_kpa(height)
    assert found == pytest.approx(ATMOSPHERE_1976(geometric).P, rel=6e-7)
    assert found == pytest.approx(float(ambiance.Atmosphere(geometric).pressure[0]), rel=6e-7)


@given(number(-430, 5500))
def test_density_against_two_libraries(geometric: float) -> None:
    found = air.density_ratio(geopotential_m(geometric))
    us_1976 = ATMOSPHERE_1976(geometric).rho / ATMOSPHERE_1976(0.0).rho
    icao = ambiance.Atmosphere(geometric).density[0] / ambiance.Atmosphere(0.0).density[0]
    assert found == pytest.approx(us_1976, rel=1e-6)
    assert found == pytest.approx(float(icao), rel=1e-6)


def test_corrected_reading_against_isentropic_air() -> None:
    # Source: altitude_gauge.csv, cantera end pressures of air at volume ratio 8.
    table = rows("altitude_gauge.csv")
    at_sea_level = float(table[0]["gauge_kPa_cantera"])
    for row in table:
        here_kpa = float(row["p_ambient_Pa"]) / 1000
        found = air.reading_at_pressure_kpa(at_sea_level, 101.325, here_kpa)
        assert found == pytest.approx(float(row["gauge_kPa_cantera"]), rel=1e-6)
        altitude_kpa = air.altitude_pressure_kpa(float(row["geopotential_m"]))
        assert altitude_kpa == pytest.approx(here_kpa, rel=6e-7)


def test_length_against_textbook_coefficients() -> None:
    # Source: thermal_expansion.csv, rows read in Callister, Appendix B, Table B.6. The textbook
    # law is dL = alpha L0 dT: a part grown by it from 20 °C must come back to its own length.
    table = [row for row in rows("thermal_expansion.csv") if row["origin"].startswith("(b)")]
    assert len(table) >= 15
    for row in table:
        alpha = float(row["alpha_1e-6_per_K"]) * 1e-6
        for kelvin in (-20.0, -2.0, 0.0, 11.0, 30.0):
            grown = 100.0 + alpha * 100.0 * kelvin
            assert air.length_at_20c_mm(grown, 20 + kelvin, alpha) == pytest.approx(100, abs=1e-12)


@given(number(-430, 5499), number(0.1, 1))
def test_pressure_and_density_fall_with_altitude(altitude: float, more: float) -> None:
    assert air.altitude_pressure_kpa(altitude + more) < air.altitude_pressure_kpa(altitude)
    assert air.density_ratio(altitude + more) < air.density_ratio(altitude)


@given(number(0, 5500), number(90, 110))
def test_pressure_goes_with_the_report(altitude: float, report: float) -> None:
    share = air.altitude_pressure_kpa(altitude) / 101.325
    assert air.altitude_pressure_kpa(altitude, report) == pytest.approx(report * share, rel=1e-14)


@given(number(0, 2500), number(48, 110), number(48, 110))
def test_reading_there_and_back(reading: float, here: float, there: float) -> None:
    moved = air.reading_at_pressure_kpa(reading, here, there)
    assert air.reading_at_pressure_kpa(moved, there, here) == pytest.approx(reading, rel=1e-14)


@given(number(20, 160), number(0, 50), number(8e-6, 26e-6))
def test_warm_part_is_shorter_at_20c(length: float, temperature: float, alpha: float) -> None:
    found = air.length_at_20c_mm(length, temperature, alpha)
    assert found * (1 + alpha * (temperature - 20)) == pytest.approx(length, rel=1e-14)
    assert (found <= length) == (temperature >= 20) or found == length


@pytest.mark.parametrize(
    "altitude", [288.15 / 0.0065, 44_331.0, float("nan"), np.array([0.0, 50_000.0])]
)
def test_no_air_left(altitude: float) -> None:
    with pytest.raises(OutOfBounds, match="altitude_m: the standard atmosphere has no air"):
        air.altitude_pressure_kpa(altitude)
    with pytest.raises(OutOfBounds, match="altitude_m: the standard atmosphere has no air"):
        air.density_ratio(altitude)


def test_no_pressure_and_no_length() -> None:
    with pytest.raises(OutOfBounds, match="from_kpa: must be above zero"):
        air.reading_at_pressure_kpa(880.0, np.array([84.0, 0.0]), 101.325)
    with pytest.raises(OutOfBounds, match="temperature_c: must be above zero"):
        air.length_at_20c_mm(72.0, -1e6, 2e-5)
