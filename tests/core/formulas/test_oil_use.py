import pint
import pytest
from formula_checks import number
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import oil_use

UNITS: "pint.UnitRegistry[float]" = pint.UnitRegistry()


def test_worked() -> None:
    # By hand: 1000 * 420 / 900; 420 / 14; 420 mL in 41 L.
    assert oil_use.oil_per_ml(420.0, 900.0, 1000.0) == pytest.approx(466.667, rel=2e-5)
    assert oil_use.oil_per_ml(420.0, 14.0) == pytest.approx(30.0, rel=1e-12)
    assert oil_use.oil_of_fuel_percent(420.0, 41.0) == pytest.approx(1.02439, rel=2e-5)


@given(number(1, 20000), number(0.1, 20000), number(1, 1e6))
def test_against_a_library_of_units(oil: float, fuel: float, distance: float) -> None:
    # Source: pint, the quantities divided with their units.
    used = UNITS.Quantity(oil, "mL")
    share = (used / UNITS.Quantity(fuel, "L")).to("percent").magnitude
    assert oil_use.oil_of_fuel_percent(oil, fuel) == pytest.approx(share, rel=1e-12)
    by_distance = (used / UNITS.Quantity(distance, "km")).to("mL / megameter").magnitude
    assert oil_use.oil_per_ml(oil, distance, 1000.0) == pytest.approx(by_distance, rel=1e-12)


@given(number(1, 20000), number(0.1, 1e5), number(0.1, 10))
def test_a_run_as_long_again_uses_as_much_again(oil: float, hours: float, by: float) -> None:
    found = oil_use.oil_per_ml(by * oil, by * hours)
    assert found == pytest.approx(oil_use.oil_per_ml(oil, hours), rel=1e-12)


def test_refused() -> None:
    with pytest.raises(OutOfBounds) as refused:
        oil_use.oil_of_fuel_percent(420.0, 0.0)
    assert str(refused.value) == "fuel_l: must be above zero (give a number above zero)"
    with pytest.raises(OutOfBounds) as refused:
        oil_use.oil_per_ml(420.0, 0.0)
    assert str(refused.value) == "amount: must be above zero (give a number above zero)"
