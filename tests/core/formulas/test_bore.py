import json
from math import cos, hypot, pi, sin
from typing import Any

import numpy as np
import pytest
from formula_checks import DATA, number, rows
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.formulas import bore

# Source: circle_fit.json, roundness of point sets by scipy, scikit-image and circle-fit.
SETS: dict[str, Any] = json.loads((DATA / "circle_fit.json").read_text("utf-8"))["sets"]
OF_EIGHT = {name: found for name, found in SETS.items() if len(found["points"]) == 8}


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def diameters(points: list[list[float]]) -> list[float]:
    """Diameters of eight points an eighth of a turn apart, each with the one opposite."""
    half = len(points) // 2
    pairs = zip(points[:half], points[half:], strict=True)
    return [hypot(a[0] - b[0], a[1] - b[1]) for a, b in pairs]


def test_worked_survey() -> None:
    # By hand: 68.094 - 68.062; 68.062 - 68.012; 68.043 - (68.078 + 68.014) / 2; 68.094 - 68.012.
    assert bore.out_of_round_mm(68.062, 68.094) == near(0.032)
    assert bore.taper_mm(np.array([68.062, 68.048, 68.034, 68.022, 68.012])) == near(0.05)
    assert bore.signed_taper_mm(68.012, 68.062) == near(-0.05)
    assert bore.barrel_mm(68.078, 68.043, 68.014) == near(-0.003)
    assert bore.wear_mm(68.094, 68.012) == near(0.082)


def test_worked_hot_clearance() -> None:
    # By hand: 68.496 * 1.001275 - 68.461 * 1.001755.
    hot = bore.hot_clearance_mm(68.496, 105.0, 1.5e-5, 68.461, 110.0, 1.95e-5)
    assert hot == near(0.00218335)


@pytest.mark.parametrize("name", OF_EIGHT)
def test_two_point_figures_of_round_and_unround_sets(name: str) -> None:
    found = diameters(OF_EIGHT[name]["points"])
    assert found == pytest.approx(OF_EIGHT[name]["opposite_diameters"], abs=1e-9)
    assert bore.taper_mm(np.array(found)) == pytest.approx(
        OF_EIGHT[name]["two_point_out_of_round"], abs=1e-9
    )


def test_an_oval_is_out_of_round_by_twice_its_radial_roundness() -> None:
    # The two axes of the oval are its first and third diameter. MZC: minimum zone of ISO 12181.
    oval = SETS["B_oval"]
    along, _, across, _ = diameters(oval["points"])
    two_point = bore.out_of_round_mm(along, across)
    assert two_point == pytest.approx(oval["two_point_out_of_round"], abs=1e-9)
    assert two_point == pytest.approx(2 * oval["MZC"]["zone"], abs=1e-9)


def test_two_axes_see_less_than_all_diameters_of_an_irregular_bore() -> None:
    irregular = SETS["C_irregular"]
    found = diameters(irregular["points"])
    seen = [bore.out_of_round_mm(found[k], found[k + 2]) for k in (0, 1)]
    assert max(seen) <= irregular["two_point_out_of_round"] + 1e-9
    assert min(seen) < irregular["two_point_out_of_round"] - 0.001


@given(number(20, 160), number(0.005, 0.05), number(0, 2 * pi))
def test_three_lobes_look_round(diameter: float, lobe: float, turn: float) -> None:
    # r = R + a cos 3t: opposite radii add to 2R, though the radial roundness is 2a.
    def radius(angle: float) -> float:
        return diameter / 2 + lobe * cos(3 * (angle - turn))

    def across(angle: float) -> float:
        a, b = radius(angle), radius(angle + pi)
        return hypot(a * cos(angle) - b * cos(angle + pi), a * sin(angle) - b * sin(angle + pi))

    assert bore.out_of_round_mm(across(0.0), across(pi / 2)) == pytest.approx(0, abs=1e-10)
    around = [radius(k * pi / 180) for k in range(360)]
    assert max(around) - min(around) == pytest.approx(2 * lobe, rel=1e-3)


@given(st.lists(number(20, 160), min_size=2, max_size=20))
def test_taper_is_no_less_than_top_less_bottom(bores: list[float]) -> None:
    taper = bore.taper_mm(np.array(bores))
    assert taper >= abs(float(bore.signed_taper_mm(bores[0], bores[-1])))
    assert taper == bore.taper_mm(np.array(bores[::-1]))


@given(number(20, 160), number(-0.5, 0.5), number(-0.5, 0.5))
def test_a_straight_cone_has_no_barrel(top: float, slope: float, bulge: float) -> None:
    assert bore.barrel_mm(top, top + slope, top + 2 * slope) == pytest.approx(0, abs=1e-12)
    barrel = bore.barrel_mm(top, top + slope + bulge, top + 2 * slope)
    assert barrel == pytest.approx(bulge, abs=1e-12)


@given(number(20, 160), number(20, 160), number(0, 0.5))
def test_wear_undone(first: float, second: float, wear: float) -> None:
    assert bore.wear_mm(first + wear, first) == pytest.approx(wear, abs=1e-12)
    assert bore.out_of_round_mm(first, second) == bore.out_of_round_mm(second, first)


@pytest.mark.parametrize(
    "row",
    [row for row in rows("thermal_expansion.csv") if row["origin"].startswith("(b)")],
    ids=lambda row: row["material"],
)
def test_hot_size_against_a_handbook_growth(row: dict[str, str]) -> None:
    # Source: thermal_expansion.csv, rows read in Callister, Appendix B, Table B.6. The textbook's
    # own rule: growth = length * alpha * rise; 100 mm over 100 K grow by 0.01 mm per 1e-6.
    micro = float(row["alpha_1e-6_per_K"])
    assert bore.hot_size_mm(100.0, 120.0, micro * 1e-6) - 100.0 == pytest.approx(micro * 0.01)


@given(number(20, 160), number(0.01, 0.2), number(-80, 260), number(8e-6, 26e-6))
def test_parts_that_grow_alike_keep_their_clearance(
    size: float, clearance: float, hot: float, alpha: float
) -> None:
    found = bore.hot_clearance_mm(size, hot, alpha, size - clearance, hot, alpha)
    assert found == pytest.approx(clearance * (1 + alpha * (hot - 20)), abs=1e-11)
