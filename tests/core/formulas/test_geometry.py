from math import pi

import numpy as np
import pytest
from formula_checks import number, rows
from hypothesis import given

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import geometry
from ringland_service.core.numbers import Number

CC_PER_CUBIC_INCH = 16.387064  # exact: 2.54 cm cubed


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_displacement() -> None:
    # By hand: 68² = 4624; pi/4 * 4624 = 3631.681 mm²; * 66 mm = 239 690.9 mm³.
    assert geometry.piston_area_mm2(68.0) == near(3631.68)
    assert geometry.swept_volume_cc(68.0, 66.0) == near(239.691)
    assert geometry.displacement_cc(68.0, 66.0, 1) == near(239.691)
    assert geometry.displacement_cc(68.496, 66.0, 1) == near(243.200)
    assert geometry.change_percent(239.691, 243.2) == pytest.approx(1.46414, rel=5e-4)
    assert geometry.change_percent(68.0**2, 68.496**2) == near(1.46414)
    # By hand: sqrt(4000 * 250 / (pi * 66)) = sqrt(4822.88).
    assert geometry.largest_bore_mm(250.0, 66.0, 1) == near(69.4469)


def test_worked_compression_ratio_from_its_parts() -> None:
    gasket = geometry.disc_volume_cc(69.5, 0.5)
    deck = geometry.disc_volume_cc(68.0, 0.3)
    clearance = geometry.clearance_volume_cc(27.6, gasket, deck, 0.0, 1.8, 0.4)
    swept = geometry.swept_volume_cc(68.0, 66.0)
    assert gasket == near(1.89683)
    assert deck == near(1.08950)
    # By hand: 27.6 + 1.89683 + 1.08950 - 1.8 + 0.4 = 29.18633.
    assert clearance == near(29.1863)
    assert geometry.compression_ratio(swept, clearance) == near(9.21244)
    assert geometry.compression_ratio(swept, clearance + 2 * 1.8) == near(8.3107)
    assert geometry.compression_ratio(swept, clearance - gasket) == near(9.78327)


def test_worked_clearance_by_burette() -> None:
    plug_hole = geometry.disc_volume_cc(13.35, 19.0)
    swept = geometry.swept_volume_cc(68.0, 66.0)
    assert plug_hole == near(2.65954)
    assert geometry.compression_ratio(swept, 31.9 - plug_hole) == near(9.19724)
    assert geometry.compression_ratio(swept, 31.9) == near(8.51382)


def test_worked_ratio_after_overbore() -> None:
    swept = geometry.swept_volume_cc(68.496, 66.0)
    gasket = geometry.disc_volume_cc(69.5, 0.5)
    deck = geometry.disc_volume_cc(68.496, 0.3)
    clearance = geometry.clearance_volume_cc(27.6, gasket, deck, 0.0, 1.8, 0.4)
    assert clearance == near(29.2023)
    assert geometry.compression_ratio(swept, clearance) == near(9.32813)
    assert geometry.gasket_overhang_mm(69.5, 68.496) == near(0.502)
    # By hand: 243.200 / (9.6 - 1) = 28.2791.
    assert geometry.clearance_for_ratio_cc(swept, 9.6) == near(28.2791)


def test_worked_crevice() -> None:
    # By hand: pi/4 * (68² - 67.4²) * 6 / 1000 = pi/4 * 81.24 * 0.006 = 0.382835.
    assert geometry.crevice_cc(68.0, 67.4, 6.0) == near(0.382835)


def test_displacement_meets_the_published_size_of_131_engines() -> None:
    # Source: 1985 Auto Imports Database (Schlimmer, 1987), UCI repository; see the file's header.
    # Bore and stroke are printed to 0.01 in, the size to 1 cu in: the intervals must meet.
    sound = [row for row in rows("engine_geometry_open.csv") if row["flag"] == "ok"]
    assert len(sound) == 131
    bore, stroke, cylinders, size = (
        np.array([float(row[name]) for row in sound])
        for name in ("bore_in", "stroke_in", "cylinders", "engine_size_cuin")
    )

    def cubic_inches(side: float) -> Number:
        bore_mm, stroke_mm = (bore + side * 0.005) * 25.4, (stroke + side * 0.005) * 25.4
        return geometry.displacement_cc(bore_mm, stroke_mm, cylinders) / CC_PER_CUBIC_INCH

    assert np.all(cubic_inches(-1) <= size + 0.5)
    assert np.all(cubic_inches(+1) >= size - 0.5)


def test_displacement_misses_the_engines_whose_row_contradicts_itself() -> None:
    # The same source; rows flagged "outlier" are more than 6 % apart and must not pass as well.
    wrong = [row for row in rows("engine_geometry_open.csv") if row["flag"] == "outlier"]
    assert wrong
    for row in wrong:
        bore_mm, stroke_mm = float(row["bore_in"]) * 25.4, float(row["stroke_in"]) * 25.4
        found = geometry.displacement_cc(bore_mm, stroke_mm, float(row["cylinders"]))
        assert np.abs(found / CC_PER_CUBIC_INCH / float(row["engine_size_cuin"]) - 1) > 0.06


def test_ratio_against_the_tabled_volumes() -> None:
    # Source: crank_slider.csv, bore 54 mm, clearance 15.2 cm³, 30-digit sympy evaluation.
    for row in rows("crank_slider.csv"):
        swept = geometry.swept_volume_cc(54.0, float(row["x_sympy_mm"]))
        assert swept == pytest.approx(float(row["swept_cm3"]), abs=6e-7)
        ratio = geometry.compression_ratio(swept, 15.2)
        assert ratio == pytest.approx(float(row["volume_ratio"]), abs=6e-7)


@given(number(20, 160), number(15, 150), number(1, 8))
def test_largest_bore_undoes_displacement(bore: float, stroke: float, cylinders: float) -> None:
    limit = geometry.displacement_cc(bore, stroke, cylinders)
    assert geometry.largest_bore_mm(limit, stroke, cylinders) == pytest.approx(bore, rel=1e-14)


@given(number(3, 900), number(0.3, 300))
def test_clearance_for_ratio_undoes_ratio(swept: float, clearance: float) -> None:
    ratio = geometry.compression_ratio(swept, clearance)
    back = geometry.clearance_for_ratio_cc(swept, ratio)
    # The ratio less one loses as many digits as the ratio is near one.
    assert back == pytest.approx(clearance, rel=1e-14 * float(ratio / (ratio - 1)))


@given(number(3, 900), number(0.3, 300), number(0.001, 10))
def test_ratio_falls_with_clearance(swept: float, clearance: float, more: float) -> None:
    wider = geometry.compression_ratio(swept, clearance + more)
    assert 1 < wider < geometry.compression_ratio(swept, clearance)


@given(number(20, 160), number(0.05, 1), number(1, 10))
def test_crevice_is_bore_disc_less_land_disc(bore: float, gap: float, height: float) -> None:
    land = bore - gap
    discs = geometry.disc_volume_cc(bore, height) - geometry.disc_volume_cc(land, height)
    assert geometry.crevice_cc(bore, land, height) == pytest.approx(discs, rel=1e-9)


@given(number(20, 160), number(15, 150))
def test_swept_volume_is_area_times_stroke(bore: float, stroke: float) -> None:
    volume_mm3 = pi * (bore / 2) ** 2 * stroke
    assert geometry.swept_volume_cc(bore, stroke) * 1000 == pytest.approx(volume_mm3, rel=1e-14)


@given(number(0.3, 300), number(0, 30), number(-9, 9), number(0, 80), number(0, 80))
def test_dome_takes_what_dish_gives(
    chamber: float, gasket: float, deck: float, dish: float, dome: float
) -> None:
    flat = geometry.clearance_volume_cc(chamber, gasket, deck, 0.0, 0.0, 0.4)
    dished = geometry.clearance_volume_cc(chamber, gasket, deck, dish, dome, 0.4)
    assert dished - flat == pytest.approx(dish - dome, abs=1e-12)


@given(number(1, 1000), number(-0.9, 5))
def test_change_undone(old: float, share: float) -> None:
    percent = geometry.change_percent(old, old * (1 + share))
    assert percent == pytest.approx(100 * share, abs=1e-12)


@pytest.mark.parametrize("clearance", [0.0, -0.1, float("nan"), np.array([20.0, 0.0])])
def test_no_room_above_the_piston(clearance: float) -> None:
    with pytest.raises(OutOfBounds, match="clearance_cc: the parts leave no volume"):
        geometry.compression_ratio(240.0, clearance)


@pytest.mark.parametrize(
    ("limit", "stroke", "cylinders", "field"),
    [(0.0, 66.0, 1, "limit_cc"), (250.0, 0.0, 1, "stroke_mm"), (250.0, 66.0, 0, "cylinders")],
)
def test_largest_bore_of_nothing(limit: float, stroke: float, cylinders: int, field: str) -> None:
    with pytest.raises(OutOfBounds, match=f"{field}: must be above zero"):
        geometry.largest_bore_mm(limit, stroke, cylinders)


def test_change_from_nothing_and_ratio_of_one() -> None:
    with pytest.raises(OutOfBounds, match="old: must be above zero"):
        geometry.change_percent(0.0, 1.0)
    # By hand: 240 / (1.5 - 1).
    assert geometry.clearance_for_ratio_cc(240.0, 1.5) == near(480.0)
    with pytest.raises(OutOfBounds, match=r"^ratio: must be above one \(a compression ratio above"):
        geometry.clearance_for_ratio_cc(240.0, 1.0)
