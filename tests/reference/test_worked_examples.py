"""Every figure of the trade's worked examples is met by some case of its calculation.

Source: worked examples of the trade brief (data/worked_examples.json), 6 digits: 2e-5 relative.
"""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from reference_cases import cases

from ringland_service.core.calculations import EVERY

DATA = Path(__file__).parent / "data" / "worked_examples.json"
EXAMPLES = json.loads(DATA.read_text("utf-8"))["examples"]

# Figures that are no result of one question, and why.
ELSEWHERE = {
    ("C01", "oversize_minus_half_mm_um"): "difference of two answers, 0.508 less 0.5 mm",
    ("C02", "reading_if_density_ratio_used_kpa"): "the mistake that the answer warns of",
    ("C17", "cr_by_burette_if_plug_hole_not_deducted"): "a mistake; the plug hole is always asked",
    ("C27", "own_gap_U_mm"): "uncertainty of one gauge on both axes: tests of uncertainty",
    ("C35", "lash_if_arithmetic_reversed_mm"): "a mistake that cannot be asked for",
    ("C40", "candidates"): "the pistons as given stand among the results",
    ("C40", "clearance_if_so_mm"): "boring to the mark: a piston-clearance of its own",
    ("C43", "circumferential_m_per_min"): "answered in m/s: a sixtieth",
    ("C43", "axial_m_per_min"): "answered in m/s: a sixtieth",
}


def numbers(value: Any) -> Iterator[float]:
    """Yield every number of nested values."""
    if isinstance(value, dict):
        value = list(value.values())
    if isinstance(value, list):
        for one in value:
            yield from numbers(one)
    elif isinstance(value, (int, float)) and not isinstance(value, bool):
        yield float(value)


def met_by(number: str) -> list[float]:
    """Return the numbers that the cases of a calculation expect."""
    names = {c.name for c in EVERY if number in c.number.split()}
    own = [case for case in cases() if case.calculation in names]
    return [n for case in own for n in numbers([case.expect, case.uncertainty, case.probability])]


@pytest.mark.parametrize("number", EXAMPLES)
def test_every_figure_is_met(number: str) -> None:
    met = met_by(number)
    for name, value in EXAMPLES[number]["outputs"].items():
        if (number, name) not in ELSEWHERE:
            for figure in numbers(value):
                near = pytest.approx(figure, rel=2e-5, abs=1e-9)
                assert any(one == near for one in met), (name, figure)


def test_all_fifty_are_there() -> None:
    assert list(EXAMPLES) == [f"C{number:02d}" for number in range(1, 51)]
