import numpy as np
import pytest
from formula_checks import number
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import fits

SKIRT_TRAVEL = np.array([68.048, 68.076, 68.034, 68.052, 68.022, 68.034, 68.012, 68.016])


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_clearance() -> None:
    # By hand: 68.076 - 67.935; 68.012 - 67.935; the eight readings sum to 544.294, mean 68.03675.
    assert fits.largest_clearance_mm(SKIRT_TRAVEL, 67.935) == near(0.141)
    assert fits.smallest_clearance_mm(SKIRT_TRAVEL, 67.935) == near(0.077)
    assert fits.mean_clearance_mm(SKIRT_TRAVEL, 67.935) == near(0.10175)
    assert fits.skirt_wear_mm(67.962, 67.935) == near(0.027)
    # By hand: 0.034 / 68 = 0.0005.
    assert fits.clearance_share(0.034, 68.0) == near(0.0005)


def test_clearance_of_a_standard_fit() -> None:
    # Source: ISO 286, fit 40 H7/f7 (from memory): hole 40.000 to 40.025, shaft 39.950 to 39.975,
    # clearance 0.025 to 0.075 mm.
    hole = np.array([40.000, 40.025])
    assert fits.smallest_clearance_mm(hole, 39.975) == near(0.025)
    assert fits.largest_clearance_mm(hole, 39.950) == near(0.075)
    # The same standard, 40 H7/p6 (from memory): shaft 40.026 to 40.042, an interference.
    assert fits.clearance_mm(40.025, 40.026) == near(-0.001)


@given(st.lists(number(20, 160), min_size=2, max_size=24), number(20, 160))
def test_mean_lies_between_the_extremes(bores: list[float], piston: float) -> None:
    column = np.array(bores)
    low = fits.smallest_clearance_mm(column, piston)
    high = fits.largest_clearance_mm(column, piston)
    assert low - 1e-12 <= fits.mean_clearance_mm(column, piston) <= high + 1e-12
    each = fits.clearance_mm(column, piston)
    assert (low, high) == (np.min(each), np.max(each))


@given(number(20, 160), number(0, 0.4), number(0, 0.2))
def test_wear_opens_the_clearance(bore: float, clearance: float, wear: float) -> None:
    new = bore - clearance
    worn = new - wear
    opened = fits.clearance_mm(bore, worn) - fits.clearance_mm(bore, new)
    assert opened == pytest.approx(fits.skirt_wear_mm(new, worn), abs=1e-12)


@given(number(20, 160), number(0.005, 0.4))
def test_share_undone(bore: float, clearance: float) -> None:
    assert fits.clearance_share(clearance, bore) * bore == pytest.approx(clearance, rel=1e-14)


def test_bores_of_many_engines() -> None:
    many = np.array([SKIRT_TRAVEL, SKIRT_TRAVEL + 0.1])
    found = fits.largest_clearance_mm(many, np.array([67.935, 68.0]))
    assert found == pytest.approx([0.141, 0.176])


def test_share_of_no_bore() -> None:
    with pytest.raises(OutOfBounds, match="bore_mm: must be above zero"):
        fits.clearance_share(0.05, np.array([68.0, 0.0]))
