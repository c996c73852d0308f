"""Propagation of uncertainty against published and library values, and a Monte Carlo."""

import dataclasses
import json
import math
from collections.abc import Callable
from pathlib import Path
from typing import Any

import GTC
import numpy as np
import pytest
import uncertainties
from hypothesis import given
from hypothesis import strategies as st
from uncertainties import umath

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Calculation
from ringland_service.core.engines.survey import Survey
from ringland_service.core.metrology.propagation import (
    Component,
    Effect,
    combined,
    contributions,
    propagate,
    value_at,
)
from ringland_service.engine.request import Path as FieldPath
from ringland_service.engine.request import Request, Stated
from ringland_service.engine.scalar import answer

DATA = Path(__file__).resolve().parents[1] / "reference" / "data" / "uncertainty_gum.json"
GUM: list[dict[str, Any]] = json.loads(DATA.read_text("utf-8"))["propagation_cases"]

FORMULAS: dict[str, Callable[..., Any]] = {
    "cylinder_volume_cm3": lambda b, s: math.pi / 4 * b**2 * s / 1000,
    "volume_ratio": lambda b, s, c: (math.pi / 4 * b**2 * s / 1000 + c) / c,
    "diametral_clearance_mm": lambda b, p: b - p,
    "taper_mm": lambda a, b: a - b,
    "expanded_clearance_mm": lambda b, p, ab, ap, tb, tp: (
        b * (1 + ab * (tb - 20)) - p * (1 + ap * (tp - 20))
    ),
    "gauge_to_absolute_ratio": lambda g, a: (g + a) / a,
}
FORMULAS["expanded_clearance_interference_mm"] = FORMULAS["expanded_clearance_mm"]


@dataclasses.dataclass(frozen=True)
class Values:
    """A few inputs without names."""

    x: tuple[float, ...]


@dataclasses.dataclass(frozen=True)
class Result:
    """One result."""

    y: Any


def of(function: Callable[..., Any]) -> Callable[[Values], Result]:
    return lambda values: Result(function(*values.x))


def single(i: int, u: float, scale: float) -> Component:
    return Component(f"x{i}", u, (Effect(("x", i), scale),))


@pytest.mark.parametrize("case", GUM, ids=[case["name"] for case in GUM])
def test_propagation_case(case: dict[str, Any]) -> None:
    """The values of the file: `uncertainties`, GTC, metrolopy, and its Monte Carlo."""
    compute = of(FORMULAS[case["name"]])
    pairs = list(case["inputs"].values())
    inputs = Values(tuple(value for value, _ in pairs))
    components = [single(i, u, abs(value)) for i, (value, u) in enumerate(pairs)]
    assert compute(inputs).y == pytest.approx(case["y"], rel=1e-12)
    u = propagate(compute, inputs, components)["y"]
    for library in ("u_uncertainties", "u_GTC", "u_metrolopy"):
        # A small difference of hot sizes is mostly rounding of 54 mm: 2e-9 is what a float holds.
        held = 5e-9 if case["name"].startswith("expanded") else 1e-9
        assert u == pytest.approx(case[library], rel=held)
    assert u == pytest.approx(case["mc_sd"], rel=5e-3)


# The same arithmetic for libraries whose numbers carry their own uncertainty. `lib` gives sin,
# cos and sqrt of its numbers.
def _displacement(lib: Any, v: dict[str, Any]) -> dict[str, Any]:
    now = math.pi / 4 * v["bore_mm"] ** 2 * v["stroke_mm"] * 2 / 1000
    after = math.pi / 4 * v["new_bore_mm"] ** 2 * v["stroke_mm"] * 2 / 1000
    return {"displacement_cc": now, "new_displacement_cc": after, "change_cc": after - now}


def _ratio(lib: Any, v: dict[str, Any]) -> dict[str, Any]:
    area = math.pi / 4 * v["bore_mm"] ** 2
    gasket = math.pi / 4 * v["gasket_bore_mm"] ** 2 * v["gasket_thickness_mm"] / 1000
    clearance = v["chamber_cc"] + gasket + area * v["deck_mm"] / 1000
    clearance = clearance - v["dome_cc"] + v["dish_cc"] + v["crevice_cc"]
    return {
        "clearance_cc": clearance,
        "compression_ratio": 1 + area * v["stroke_mm"] / 1000 / clearance,
    }


def _dynamic(lib: Any, v: dict[str, Any]) -> dict[str, Any]:
    r, rod = v["stroke_mm"] / 2, v["rod_mm"]
    angle = v["intake_closes_deg"] * (math.pi / 180)
    stroke = r * (1 + lib.cos(angle)) + rod - lib.sqrt(rod**2 - (r * lib.sin(angle)) ** 2)
    volume = math.pi / 4 * v["bore_mm"] ** 2 * stroke / 1000
    return {"effective_stroke_mm": stroke, "dynamic_ratio": 1 + volume / v["clearance_cc"]}


def _cranking(lib: Any, v: dict[str, Any]) -> dict[str, Any]:
    air = v["air_pressure_kpa_abs"]
    return {
        "mid_kpa": air * (v["ratio"] ** v["n_mid"] - 1),
        "throttle_closed_mid_kpa": v["throttle_closed_manifold_kpa_abs"] * v["ratio"] ** v["n_mid"]
        - air,
    }


def _at_20c(lib: Any, v: dict[str, Any]) -> dict[str, Any]:
    bore = v["bore_mm"] / (1 + v["bore_alpha_per_k"] * (v["bore_temperature_c"] - 20))
    piston = v["piston_size_mm"] / (1 + v["piston_alpha_per_k"] * (v["piston_temperature_c"] - 20))
    return {"bore_at_20c_mm": bore, "corrected_clearance_mm": bore - piston}


WithUncertainty = dict[str, tuple[float, float]]
SMOOTH: list[tuple[str, Callable[[Any, dict[str, Any]], dict[str, Any]], WithUncertainty]] = [
    (
        "displacement",
        _displacement,
        {"bore_mm": (68.0, 0.0034), "stroke_mm": (66.0, 0.02), "new_bore_mm": (68.496, 0.004)},
    ),
    (
        "compression-ratio",
        _ratio,
        {
            "bore_mm": (68.0, 0.0034),
            "stroke_mm": (66.0, 0.02),
            "chamber_cc": (27.6, 0.1155),
            "gasket_bore_mm": (69.5, 0.05),
            "gasket_thickness_mm": (0.5, 0.01155),
            "deck_mm": (0.3, 0.01155),
            "dome_cc": (1.8, 0.1),
            "dish_cc": (0.0, 0.05),
            "crevice_cc": (0.4, 0.05),
        },
    ),
    (
        "dynamic-ratio",
        _dynamic,
        {
            "bore_mm": (68.0, 0.0034),
            "stroke_mm": (66.0, 0.02),
            "rod_mm": (112.0, 0.1),
            "clearance_cc": (29.1863, 0.15),
            "intake_closes_deg": (62.0, 1.0),
        },
    ),
    (
        "cranking-pressure",
        _cranking,
        {
            "ratio": (7.51384, 0.05),
            "air_pressure_kpa_abs": (94.3217, 0.4),
            "throttle_closed_manifold_kpa_abs": (45.0, 1.0),
        },
    ),
    (
        "length-at-20c",
        _at_20c,
        {
            "bore_mm": (72.036, 0.0034),
            "bore_temperature_c": (18.0, 0.5),
            "bore_alpha_per_k": (1.1e-5, 3e-7),
            "piston_size_mm": (71.982, 0.0024),
            "piston_temperature_c": (31.0, 1.0),
            "piston_alpha_per_k": (2.05e-5, 5e-7),
        },
    ),
]
EXACT = {"displacement": {"cylinder_count": 2.0}, "cranking-pressure": {"n_mid": 1.25}}


@pytest.mark.parametrize(("name", "formula", "given"), SMOOTH, ids=[row[0] for row in SMOOTH])
def test_agreement_with_uncertainties_and_gtc(
    name: str, formula: Any, given: WithUncertainty
) -> None:
    """Two general-purpose libraries, by automatic differentiation, on the same arithmetic.

    They differ from central differences by the square of the step, 6e-6 of a field's span.
    """
    calculation = BY_NAME[name]
    assert isinstance(calculation, Calculation)
    exact = EXACT.get(name, {})
    inputs = calculation.inputs(**{n: value for n, (value, _) in given.items()}, **exact)
    stated: dict[FieldPath, Stated] = {
        (n,): Stated(uncertainty=2.0 * u) for n, (_, u) in given.items()
    }
    found = answer(calculation, Request(inputs=inputs, uncertainties=stated))
    theirs = formula(umath, {n: uncertainties.ufloat(*pair) for n, pair in given.items()} | exact)
    gtc = formula(GTC, {n: GTC.ureal(*pair) for n, pair in given.items()} | exact)
    # A clearance is a small difference of two sizes: the rounding of 72 mm leaves it 3e-9.
    held = 5e-9 if "length" in found.calculation.name else 1e-9
    for result, value in theirs.items():
        assert getattr(found.outputs, result) == pytest.approx(value.n, rel=1e-12)
        assert found.u[result] == pytest.approx(value.s, rel=held)
        assert found.u[result] == pytest.approx(GTC.uncertainty(gtc[result]), rel=held)


def test_an_influence_on_both_cancels_in_the_difference() -> None:
    compute, inputs = of(lambda a, b: a - b), Values((68.05, 68.0))
    own = [single(0, 0.003, 68.0), single(1, 0.004, 68.0)]
    shared = Component("setting", 0.010, (Effect(("x", 0), 68.0), Effect(("x", 1), 68.0)))
    assert propagate(compute, inputs, own)["y"] == pytest.approx(0.005, rel=1e-9)
    assert propagate(compute, inputs, [*own, shared])["y"] == pytest.approx(0.005, rel=1e-9)
    against = Component("against", 0.010, (Effect(("x", 0), 68.0), Effect(("x", 1), 68.0, -1.0)))
    assert propagate(compute, inputs, [against])["y"] == pytest.approx(0.020, rel=1e-9)


@given(
    st.lists(st.tuples(st.floats(-100, 100), st.floats(1e-3, 10)), min_size=1, max_size=5),
)
def test_a_linear_sum_is_exact(parts: list[tuple[float, float]]) -> None:
    """u of a weighted sum: the root of the sum of squares (JCGM 100, 5.1, from memory)."""

    def weighted(*x: float) -> float:
        return sum(weight * value for (weight, _), value in zip(parts, x, strict=True))

    inputs = Values(tuple(1.0 for _ in parts))
    components = [single(i, u, 1.0) for i, (_, u) in enumerate(parts)]
    u = propagate(of(weighted), inputs, components).get("y", 0.0)
    assert u == pytest.approx(math.hypot(*(w * u for w, u in parts)), rel=1e-9, abs=1e-9)


def test_shares_keep_their_sign_and_combine() -> None:
    compute, inputs = of(lambda a, b: 2.0 * a - b), Values((1.0, 1.0))
    shares = contributions(compute, inputs, [single(0, 0.1, 1.0), single(1, 0.3, 1.0)])
    assert [share["y"] for share in shares] == pytest.approx([0.2, -0.3], rel=1e-9)
    assert combined(shares)["y"] == pytest.approx(math.hypot(0.2, 0.3), rel=1e-9)
    assert combined([]) == {}


def test_results_without_uncertainty_are_left_out() -> None:
    found = propagate(of(lambda a, b: a), Values((1.0, 2.0)), [single(1, 0.1, 1.0)])
    assert found == {}


def test_each_reading_of_a_list_has_its_own_uncertainty() -> None:
    compute, inputs = of(lambda a, b: (a, a + b)), Values((1.0, 2.0))
    u = propagate(compute, inputs, [single(0, 0.3, 1.0), single(1, 0.4, 1.0)])["y"]
    assert u.tolist() == pytest.approx([0.3, 0.5], rel=1e-9)


def test_the_step_is_sized_by_the_scale_where_the_value_is_zero() -> None:
    found = propagate(of(lambda a: a * a + 3.0 * a), Values((0.0,)), [single(0, 0.1, 10.0)])
    assert found["y"] == pytest.approx(0.3, rel=1e-9)


def test_a_path_leads_into_a_section() -> None:
    inputs = BY_NAME["piston-clearance"].inputs(piston_size_mm=67.9, bore_survey=SURVEY)
    assert value_at(inputs, ("bore_survey", "pin_axis_mm", 1)) == 68.012


# Readings of the skirt travel; the first leads by 4·√2·u or more, so that the sum of two
# uncertainties does not reach it.
U_BORE, U_PISTON = 0.002, 0.0024
SURVEY = Survey(
    depth_mm=(25.0, 45.0, 65.0),
    pin_axis_mm=(68.030, 68.012, 68.004),
    thrust_axis_mm=(68.062, 68.050, 68.020),
)
CLOSE_SURVEY = dataclasses.replace(SURVEY, thrust_axis_mm=(68.062, 68.060, 68.020))
FIT = BY_NAME["piston-clearance"]


def clearance(survey: Survey) -> Any:
    assert isinstance(FIT, Calculation)
    uncertainties = {
        ("bore_survey", "pin_axis_mm"): Stated(uncertainty=2.0 * U_BORE),
        ("bore_survey", "thrust_axis_mm"): Stated(uncertainty=2.0 * U_BORE),
        ("piston_size_mm",): Stated(uncertainty=2.0 * U_PISTON),
    }
    inputs = FIT.inputs(piston_size_mm=67.962, bore_survey=survey, measuring_height_mm=15.0)
    return answer(FIT, Request(inputs=inputs, uncertainties=uncertainties))


def test_the_largest_of_clear_readings_against_monte_carlo() -> None:
    """2·10⁵ draws, seeded, through numpy's own maximum."""
    found = clearance(SURVEY)
    draw = np.random.default_rng(20240601).normal
    bores = np.array([SURVEY.pin_axis_mm, SURVEY.thrust_axis_mm], dtype=float).ravel()
    drawn = draw(bores, U_BORE, (200_000, bores.size)).max(axis=1)
    drawn -= draw(67.962, U_PISTON, 200_000)
    assert found.u["clearance_max_mm"] == pytest.approx(float(drawn.std()), rel=0.02)
    assert found.outputs.clearance_max_mm == pytest.approx(float(drawn.mean()), abs=1e-4)


def test_readings_within_uncertainty_are_told() -> None:
    told = [
        w.field for w in clearance(CLOSE_SURVEY).warnings if w.code == "readings_within_uncertainty"
    ]
    assert told == ["clearance_max"]
    assert "readings_within_uncertainty" not in {w.code for w in clearance(SURVEY).warnings}


def test_smallest_readings_within_uncertainty_are_told_too() -> None:
    low = dataclasses.replace(SURVEY, pin_axis_mm=(68.030, 68.006, 68.004))
    told = [w.field for w in clearance(low).warnings if w.code == "readings_within_uncertainty"]
    assert told == ["clearance_min"]


def test_two_cylinders_that_read_alike_are_told() -> None:
    spread = BY_NAME["cylinder-spread"]
    assert isinstance(spread, Calculation)
    for readings, told in (((1180.0, 1178.0, 900.0), True), ((1180.0, 1100.0, 900.0), False)):
        inputs = spread.inputs(readings_kpa=readings, repeatability_kpa_diff=10.0)
        codes = {w.code for w in answer(spread, Request(inputs=inputs)).warnings}
        assert ("readings_within_uncertainty" in codes) == told
