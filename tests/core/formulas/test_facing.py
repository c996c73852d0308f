import pytest
from formula_checks import number
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import facing, geometry


def test_worked_examples() -> None:
    # By hand: 1000 * 0.92323 / 2900 = 0.318355; 2900 * 0.09 / 1000 = 0.261; 0.07 + 0.02 = 0.09.
    assert facing.cut_for_volume_mm(0.92323, 2900.0) == pytest.approx(0.318355, rel=2e-6)
    assert facing.volume_of_cut_cc(0.09, 2900.0) == pytest.approx(0.261, rel=1e-12)
    assert facing.skim_mm(0.07, 0.02) == pytest.approx(0.09, rel=1e-12)


@given(number(-20, 20), number(100, 20000))
def test_the_cut_takes_the_volume(volume: float, area: float) -> None:
    cut = facing.cut_for_volume_mm(volume, area)
    assert facing.volume_of_cut_cc(cut, area) == pytest.approx(volume, rel=1e-12, abs=1e-300)


@given(number(0.01, 3), number(20, 160))
def test_round_chamber_is_a_disc(cut: float, bore: float) -> None:
    # Outside: the volume of a round disc, that of the swept volume of a piston.
    area = geometry.piston_area_mm2(bore)
    assert facing.volume_of_cut_cc(cut, area) == pytest.approx(
        geometry.swept_volume_cc(bore, cut), rel=1e-12
    )


def test_open_data() -> None:
    # Table of prisms by hand: 10 x 20 mm by 5 mm is 1 cm³.
    assert facing.volume_of_cut_cc(5.0, 200.0) == 1.0
    assert facing.cut_for_volume_mm(1.0, 200.0) == 5.0


def test_no_area() -> None:
    with pytest.raises(OutOfBounds, match="area_mm2: must be above zero"):
        facing.cut_for_volume_mm(1.0, 0.0)
