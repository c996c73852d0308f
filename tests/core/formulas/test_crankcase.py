import numpy as np
import pytest
from formula_checks import number
from hypothesis import given
from scipy import constants

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import crankcase


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def moles(gauge_kpa: float, air_kpa: float, celsius: float, volume_cc: float) -> float:
    """Air shut in, by the gas law with scipy's gas constant."""
    kelvin = celsius + constants.zero_Celsius
    return (gauge_kpa + air_kpa) * 1e3 * volume_cc * 1e-6 / (constants.R * kelvin)


def test_worked_pressure_test() -> None:
    # By hand: 145.525 * 295.15 / 294.65 - 101.325 = 44.4469; 0.5531 / 5; 420 * 0.110611 / 101.325.
    kept = crankcase.at_start_temperature_kpa(44.2, 101.325, 22.0, 21.5)
    assert kept == near(44.4469)
    assert kept - 44.2 == near(0.246946)
    assert crankcase.loss_per_minute_kpa(45.0, 44.2, 5.0) == near(0.16)
    loss = crankcase.loss_per_minute_kpa(45.0, kept, 5.0)
    assert loss == near(0.110611)
    assert crankcase.leak_per_minute_cc(420.0, loss, 101.325) == near(0.458491)


def test_worked_vacuum_test() -> None:
    kept = crankcase.at_start_temperature_kpa(-39.4, 101.325, 21.5, 21.0)
    assert crankcase.loss_per_minute_kpa(kept, -40.0, 5.0) == near(0.141052)


def test_worked_at_altitude() -> None:
    # The standard atmosphere's 84.556 kPa at 1500 m (ISO 2533, from memory).
    kept = crankcase.at_start_temperature_kpa(44.2, 84.556, 22.0, 21.5)
    assert crankcase.loss_per_minute_kpa(45.0, kept, 5.0) == near(0.116302)
    kept = crankcase.at_start_temperature_kpa(-39.4, 84.556, 21.5, 21.0)
    assert crankcase.loss_per_minute_kpa(kept, -40.0, 5.0) == near(0.135351)


@given(number(-60, 60), number(70, 110), number(-20, 90), number(-20, 90))
def test_correction_keeps_the_air_shut_in(
    end: float, air: float, start_c: float, end_c: float
) -> None:
    # Source: gas law, scipy's constants: as many moles at the start's temperature.
    kept = crankcase.at_start_temperature_kpa(end, air, start_c, end_c)
    expected = moles(end, air, end_c, 420.0)
    assert moles(float(kept), air, start_c, 420.0) == pytest.approx(expected, rel=1e-12)


@given(number(5, 60), number(0, 5), number(70, 110), number(20, 2000))
def test_flow_is_the_air_that_is_gone(start: float, lost: float, air: float, volume: float) -> None:
    # The moles gone in a minute, brought to the pressure outside at the same temperature.
    gone = moles(start, air, 20.0, volume) - moles(start - lost, air, 20.0, volume)
    kelvin = 20.0 + constants.zero_Celsius
    expected = gone * constants.R * kelvin / (air * 1e3) * 1e6
    found = crankcase.leak_per_minute_cc(volume, lost, air)
    assert found == pytest.approx(expected, rel=1e-9, abs=1e-9)


@given(number(-60, 60), number(70, 110), number(-20, 90))
def test_one_temperature_changes_nothing(end: float, air: float, celsius: float) -> None:
    assert crankcase.at_start_temperature_kpa(end, air, celsius, celsius) == end


def test_half_a_degree_is_a_quarter_of_a_kilopascal() -> None:
    # By hand at 45 kPa and sea level: 146.325 * 0.5 / 293.15 = 0.2496.
    effect = crankcase.at_start_temperature_kpa(45.0, 101.325, 20.5, 20.0) - 45.0
    assert effect == pytest.approx(0.25, abs=0.001)


@pytest.mark.parametrize(
    ("field", "start", "end"),
    [
        ("start_c", np.array([20.0, -273.15]), 20.0),
        ("start_c", -300.0, 20.0),
        ("end_c", 20.0, -300.0),
        ("end_c", 20.0, float("nan")),
    ],
)
def test_colder_than_can_be(field: str, start: float, end: float) -> None:
    with pytest.raises(OutOfBounds) as refused:
        crankcase.at_start_temperature_kpa(44.0, 101.325, start, end)
    assert str(refused.value) == f"{field}: lies below absolute zero (give it in °C)"


def test_no_time_and_no_air() -> None:
    with pytest.raises(OutOfBounds) as refused:
        crankcase.loss_per_minute_kpa(45.0, 44.0, 0.0)
    assert str(refused.value) == "minutes: must be above zero (give a number above zero)"
    with pytest.raises(OutOfBounds) as refused:
        crankcase.leak_per_minute_cc(420.0, 0.1, 0.0)
    assert str(refused.value) == "air_kpa: must be above zero (give a number above zero)"
