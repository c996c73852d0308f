import pytest
from formula_checks import number
from hypothesis import given
from scipy.integrate import quad

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import squish


def test_worked_example() -> None:
    # By hand: 0.5 + 1.0 - 1.34 = 0.16; 1.34 - (0.5 - 0.3) = 1.14; 1 - (34/56)² = 0.631378.
    assert squish.gasket_for_squish_mm(1.34, 0.5, 1.0) == pytest.approx(0.16, rel=1e-12)
    assert squish.squish_with_gasket_mm(1.34, 0.5, 0.3) == pytest.approx(1.14, rel=1e-12)
    assert squish.squish_area_share(56.0, 34.0) == pytest.approx(0.631378, rel=2e-6)


def test_stack_by_hand() -> None:
    assert squish.squish_of_stack_mm(-0.1, 0.8, 0.3) == pytest.approx(1.0, rel=1e-12)


@given(number(20, 160), number(0.1, 0.99))
def test_area_against_quadrature(bore: float, share: float) -> None:
    # Outside: scipy.integrate.quad of rings 2·r over the band, over those of the whole disc.
    band, _ = quad(lambda r: 2 * r, share * bore / 2, bore / 2)
    disc, _ = quad(lambda r: 2 * r, 0, bore / 2)
    assert squish.squish_area_share(bore, share * bore) == pytest.approx(band / disc, rel=1e-10)


@given(number(0.1, 6), number(0, 3), number(0.3, 4))
def test_gasket_wanted_gives_the_squish(now: float, fitted: float, wanted: float) -> None:
    gasket = squish.gasket_for_squish_mm(now, fitted, wanted)
    assert squish.squish_with_gasket_mm(now, fitted, gasket) == pytest.approx(wanted, abs=1e-12)


@given(number(0.1, 6), number(0, 3), number(0, 2.9))
def test_thinner_gasket_less_squish(now: float, fitted: float, gasket: float) -> None:
    thin = squish.squish_with_gasket_mm(now, fitted, gasket)
    assert squish.squish_with_gasket_mm(now, fitted, gasket + 0.1) > thin


def test_no_bore() -> None:
    with pytest.raises(OutOfBounds, match="bore_mm: must be above zero"):
        squish.squish_area_share(0.0, 0.0)
