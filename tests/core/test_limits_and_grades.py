"""Rows of the tables against the declarations they serve, and the ladders of grading words."""

import math
import tomllib
from importlib import resources
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, Check, asked, declared
from ringland_service.core.declare.fields import QuantityField, ResultField
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.engines.materials import MATERIALS
from ringland_service.core.metrology.instruments import TYPICAL
from ringland_service.core.metrology.limits import GRADES, LIMITS, Grade, LimitRow
from ringland_service.core.tables.sources import NO_SOURCE

PLAIN = [c for c in EVERY if isinstance(c, Calculation)]


def kind_judged(calculation: Calculation, check: Check) -> str:
    """Name of the kind that a check judges; a bare number is a ratio."""
    field: Any = {**asked(calculation.inputs), **declared(calculation.outputs)}[check.value]
    if isinstance(field, QuantityField):
        return field.type.kind.name
    assert isinstance(field, ResultField)
    return field.kind.name if field.kind else "ratio"


JUDGED = {check.name: kind_judged(c, check) for c in PLAIN for check in c.checks}


@pytest.mark.parametrize("row", LIMITS.values(), ids=lambda row: row.id)
def test_a_limit_is_of_the_kind_that_it_judges(row: LimitRow) -> None:
    assert row.kind == JUDGED[row.check]
    assert row.kind == "ratio" or row.kind in KINDS


def test_a_row_as_a_limit() -> None:
    """A share of a 68 mm bore, by hand: 0.0005 and 0.0008 of it."""
    row = LIMITS["piston_clearance.new.cast_air_cooled"]
    limit = row.limit(68.0)
    assert (limit.low, limit.high) == pytest.approx((0.034, 0.0544), rel=1e-12)
    assert limit.standing == "common_practice"
    assert limit.source == f"{row.words}; {NO_SOURCE}"
    assert row.only_high().limit(68.0).low is None
    column = row.limit(np.array([68.0, 100.0]))
    assert column.high == pytest.approx([0.0544, 0.08], rel=1e-12)
    # A row in plain units stands as it is: 0.25 mm of gasket per side.
    assert LIMITS["gasket_overlap"].limit().low == 0.25


@pytest.mark.parametrize("kind", TYPICAL)
def test_an_instrument_reads_a_kind(kind: str) -> None:
    assert TYPICAL[kind]["reads"] in KINDS


def test_materials_lie_in_their_range() -> None:
    for name, material in MATERIALS.items():
        text = resources.files("ringland_service.core").joinpath("tables", "materials.toml")
        row = next(r for r in tomllib.loads(text.read_text("utf-8"))["row"] if r["id"] == name)
        assert row["low"] <= material.alpha <= row["high"], name


def threshold(step: dict[str, Any]) -> float:
    return float(step["above"] if "above" in step else step["at_least"])


@pytest.mark.parametrize("grade", GRADES.values(), ids=lambda grade: grade.id)
def test_a_ladder_descends_and_names_each_step_once(grade: Grade) -> None:
    steps = [threshold(step) for step in grade.steps]
    assert steps == sorted(steps, reverse=True)
    assert all(len({"above", "at_least"} & step.keys()) == 1 for step in grade.steps)
    words = [step["word"] for step in grade.steps] + [grade.otherwise]
    assert len(set(words)) == len(words)
    assert list(grade.choices) == words


@pytest.mark.parametrize("grade", GRADES.values(), ids=lambda grade: grade.id)
def test_a_threshold_belongs_where_its_step_says(grade: Grade) -> None:
    """At least: the value itself meets it; above: it does not. Dust of 1e-12 decides nothing."""
    words = [step["word"] for step in grade.steps] + [grade.otherwise]
    for i, step in enumerate(grade.steps):
        at = threshold(step)
        expected = words[i] if "at_least" in step else words[i + 1]
        for value in (at, at * (1 + 1e-12), at * (1 - 1e-12)):
            assert grade.word(value) == expected
        assert grade.word(at * 1.001) == words[i]
        assert grade.word(at * 0.999) == words[i + 1]


def test_a_threshold_of_nothing_and_a_large_one() -> None:
    """By hand: zero is not above zero but meets it; one in 1e9 of 1e6 is 0.001."""
    above = Grade("", "", ({"above": 0.0, "word": "some"},), "none")
    assert [above.word(value) for value in (0.0, 5e-324)] == ["none", "some"]
    reached = Grade("", "", ({"at_least": 0.0, "word": "met"},), "short")
    assert [reached.word(value) for value in (0.0, -5e-324)] == ["met", "short"]
    for threshold, words in (("above", ["no", "no", "yes"]), ("at_least", ["no", "yes", "yes"])):
        grade = Grade("", "", ({threshold: 1e6, "word": "yes"},), "no")
        assert [grade.word(1e6 + aside) for aside in (-0.0011, -0.0009, 0.0011)] == words
        assert grade.word(1e6 + 0.0009) == words[1]


@pytest.mark.parametrize("grade", GRADES.values(), ids=lambda grade: grade.id)
@given(values=st.lists(st.floats(-1e3, 1e3), min_size=1, max_size=8))
def test_every_number_has_a_word_alone_and_in_a_column(grade: Grade, values: list[float]) -> None:
    column = grade.word(np.array(values))
    assert column.tolist() == [grade.word(value) for value in values]
    assert set(column.tolist()) <= grade.choices.keys()


def test_the_level_by_hand() -> None:
    """0.65, 0.80, 0.90 and 1.10 of the expected reading (common practice, no source)."""
    grade = GRADES["compression_level"]
    ratios = [0.5, 0.65, 0.80, 0.844, 0.90, 1.10, 1.11]
    words = ["very_low", "low", "watch", "watch", "good", "good", "high"]
    assert [grade.word(ratio) for ratio in ratios] == words
    assert grade.word(math.nextafter(0.90, 0.0)) == "good"
