import pytest
from formula_checks import number
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import sleeves
from ringland_service.core.formulas.air import length_at_20c_mm

ALUMINIUM, IRON = 2.2e-5, 1.1e-5


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_sleeve() -> None:
    # By hand: δ = 0.10; 20 + 0.15/(22e-6·75.99) = 20 + 89.725; chilled to -18 the sleeve is
    # 11e-6·76.09·38 = 0.031806 smaller.
    assert sleeves.interference_mm(76.09, 75.99) == near(0.1)
    hot = sleeves.heat_cylinder_to_c(75.99, 76.09, 0.05, 20.0, ALUMINIUM, IRON)
    assert hot == near(109.725)
    chilled = sleeves.heat_cylinder_to_c(75.99, 76.09, 0.05, -18.0, ALUMINIUM, IRON)
    assert chilled == near(90.6997)
    # By hand: (22e-6·75.99 - 11e-6·76.09)·110 = 0.0918269.
    assert sleeves.interference_left_mm(75.99, 76.09, 130.0, ALUMINIUM, IRON) == near(0.0081731)
    assert sleeves.interference_left_mm(75.99, 76.06, 130.0, ALUMINIUM, IRON) == near(-0.0218632)
    assert sleeves.interference_wanted_mm(75.99, 130.0, ALUMINIUM, IRON, 0.010) == near(0.101948)


def test_interference_of_a_standard_fit() -> None:
    # Source: ISO 286, fit 40 H7/p6 (from memory): hole 40.000 to 40.025, shaft 40.026 to 40.042.
    assert sleeves.interference_mm(40.042, 40.000) == near(0.042)
    assert sleeves.interference_mm(40.026, 40.025) == near(0.001)


@given(number(40, 160), number(0.01, 0.3), number(0.02, 0.15), number(-80, 60))
def test_the_hot_bore_clears_the_sleeve(
    bore: float, interference: float, drop_in: float, temperature: float
) -> None:
    """Both parts grown to their temperatures stand apart by the room that was wanted."""
    od = bore + interference
    hot = sleeves.heat_cylinder_to_c(bore, od, drop_in, temperature, ALUMINIUM, IRON)
    grown_bore = bore * (1 + ALUMINIUM * (hot - 20))
    grown_od = od * (1 + IRON * (temperature - 20))
    assert grown_bore - grown_od == pytest.approx(drop_in, abs=1e-10)
    assert length_at_20c_mm(grown_bore, hot, ALUMINIUM) == pytest.approx(bore, rel=1e-12)


@given(number(40, 160), number(60, 200))
def test_what_is_wanted_is_left(bore: float, running: float) -> None:
    wanted = sleeves.interference_wanted_mm(bore, running, ALUMINIUM, IRON, 0.010)
    left = sleeves.interference_left_mm(bore, bore + wanted, running, ALUMINIUM, IRON)
    # The sleeve is a little wider than the bore: its own growth adds up to 1e-3 mm.
    assert 0.010 - 1e-9 <= left <= 0.011


def test_what_is_refused() -> None:
    with pytest.raises(OutOfBounds, match="cylinder_alpha_per_k: must be above zero"):
        sleeves.heat_cylinder_to_c(76.0, 76.1, 0.05, 20.0, 0.0, IRON)
    with pytest.raises(OutOfBounds, match="cylinder_bore_mm: must be above zero"):
        sleeves.heat_cylinder_to_c(0.0, 76.1, 0.05, 20.0, ALUMINIUM, IRON)
