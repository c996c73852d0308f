"""A batch says what its rows would say one by one."""

import dataclasses
import math
from typing import Any

import numpy as np
import pytest
from drawn_questions import Row, example_row
from rows_alone import as_columns, assert_row, single, told

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Calculation
from ringland_service.core.errors import OutOfBounds
from ringland_service.core.metrology.instruments import Instrument
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.answer import Answer
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.question import Measuring, Question, Stated
from ringland_service.engine.rows import Rows, groups


def calculation(name: str) -> Calculation:
    found = BY_NAME[name]
    assert isinstance(found, Calculation)
    return found


SMALL: Row = {"bore_mm": 68.0, "stroke_mm": 66.0, "cylinders": 1.0, "new_bore_mm": None}
DISPLACEMENT = calculation("displacement")


def test_bad_rows_and_gaps_keep_their_places() -> None:
    """Bore of 200 mm: outside the engines; row 3 could not be read; row 4 has a gap."""
    rows = [
        SMALL,
        SMALL | {"bore_mm": 200.0, "stroke_mm": 190.0},
        SMALL | {"new_bore_mm": 68.496},
        SMALL | {"bore_mm": None},
        SMALL | {"cylinders": None},
    ]
    fault = OutOfBounds("bore_mm", "not a number")
    found = answer_rows(DISPLACEMENT, as_columns(rows, faults={3: [fault]}))
    assert found.problems.keys() == {1, 3}
    assert "15 to 3000 cc" in found.problems[1][0].message
    assert found.problems[3] == [fault]
    volumes = found.results["displacement_cc"]
    assert volumes[1] is None
    assert volumes[3] is None
    assert [volumes[i] for i in (0, 2, 4)] == pytest.approx([239.691] * 3, rel=2e-5)
    assert found.results["new_displacement_cc"][:2] == [None, None]
    assert found.results["new_displacement_cc"][2] == pytest.approx(243.2, rel=2e-5)


def test_a_batch_of_bad_rows_alone() -> None:
    rows = [SMALL | {"bore_mm": 200.0, "stroke_mm": 190.0}] * 2
    found = answer_rows(DISPLACEMENT, as_columns(rows))
    assert found.problems.keys() == {0, 1}
    assert not found.results


def test_rows_are_taken_together_by_their_words_and_gaps() -> None:
    rows: list[Row] = [
        {"a": 1.0, "word": "iron", "flag": True},
        {"a": 2.0, "word": "iron", "flag": True},
        {"a": 3.0, "word": "steel", "flag": True},
        {"a": None, "word": "iron", "flag": True},
        {"a": 0.0, "word": "iron", "flag": False},
        {"a": 5.0, "word": "iron", "flag": None},
        {"a": 6.0, "word": "iron", "flag": True},
    ]
    assert groups(as_columns(rows)) == [[0, 1, 6], [2], [3], [4], [5]]
    assert groups(as_columns(rows, faults={0: [], 4: []})) == [[1, 6], [2], [3], [5]]


def test_limits_by_row() -> None:
    """Floors of 900 kPa for the row that states one; U = 48 by gauge, repeat and weather."""
    of = calculation("compression-level")
    row: Row = {"reading_kpa": 930.0, "gauge_error_pct": 4.0, "repeat_kpa_diff": 10.0}
    row |= {"decompressor": "none"}
    rows = [row, row, row | {"reading_kpa": 890.0}]
    limits = {("compression_reading", "low"): [900.0, None, 980.0]}
    found = answer_rows(of, as_columns(rows, limits=limits))
    verdicts = found.verdicts["compression_reading"].verdict
    assert verdicts == ["too_close_to_call", None, "fail"]
    for i, floor in ((0, 900.0), (2, 980.0)):
        alone = single(of, rows[i], {}, limits={"compression_reading": Limit(low=floor)})
        assert_row(found, i, alone)


def test_a_limit_that_the_arithmetic_uses_by_row() -> None:
    """A maker's least gap replaces the rule of thumb in the filing (by hand: 0.30 − 0.21)."""
    of = calculation("ring-gap")
    rows = [{"bore_mm": 68.0, "top_measured_mm": 0.21}] * 2
    found = answer_rows(of, as_columns(rows, limits={("top_ring_gap", "low"): [0.30, None]}))
    assert found.results["file_top_mm"] == pytest.approx([0.09, 0.004 * 68.0 - 0.21], rel=1e-9)


def test_common_practice_falls_away_in_a_batch_too() -> None:
    of = calculation("compression-level")
    row = example_row(of)
    with_it = answer_rows(of, as_columns([row, row]))
    question = Question(inputs=None, defaults=False)
    without = answer_rows(of, as_columns([row, row], question=question))
    assert "grade" in with_it.results
    assert "grade" not in without.results
    assert_row(without, 1, single(of, row, {}, defaults=False))


def test_one_uncertainty_for_all_rows() -> None:
    found = answer_rows(DISPLACEMENT, as_columns([SMALL, SMALL], uncertainty={"bore_mm": 0.0068}))
    alone = single(DISPLACEMENT, SMALL, {"bore_mm": 0.0068})
    assert isinstance(alone, Answer)
    assert found.u["displacement_cc"] == pytest.approx([alone.u["displacement_cc"]] * 2, rel=1e-9)


def test_a_row_without_doubt_has_none() -> None:
    """Below 5 cc the dose is 0.5 mL whatever the clearance volume's doubt (by hand)."""
    of = calculation("wet-gain")
    row = {"dry_kpa": 660.0, "wet_kpa": 930.0, "oil_ml": 1.0, "clearance_cc": 29.0}
    rows = [row, row | {"clearance_cc": 4.0}]
    found = answer_rows(of, as_columns(rows, uncertainty={"clearance_cc": 0.2}))
    assert found.u["recommended_oil_ml"] == [pytest.approx(0.01, rel=1e-7), None]


def test_a_verdict_without_doubt_has_no_probability() -> None:
    """The floor of a ratio that rests on one row's doubt alone."""
    check = DISPLACEMENT.checks[0]

    def compute(inputs: Any) -> Any:
        outputs = DISPLACEMENT.compute(inputs)
        flat = np.asarray(outputs.displacement_cc)
        return dataclasses.replace(outputs, displacement_cc=np.maximum(flat, 200.0))

    of = dataclasses.replace(DISPLACEMENT, compute=compute, checks=(check,))
    rows = [SMALL | {"class_limit_cc": 250.0}, SMALL | {"bore_mm": 50.0, "class_limit_cc": 250.0}]
    judged = answer_rows(of, as_columns(rows, uncertainty={"bore_mm": 0.0068})).verdicts[check.name]
    assert judged.verdict == ["pass", "pass"]
    assert judged.u[1] is None
    assert judged.probability == [pytest.approx(1.0, rel=1e-9), None]


def test_instruments_are_answered_row_by_row() -> None:
    gauge = Instrument("gauge", max_error=0.005)
    question = Question(
        inputs=None,
        doubts={("bore_mm",): Stated(instrument="gauge")},
        measuring=Measuring(instruments={"gauge": gauge}),
    )
    found = answer_rows(DISPLACEMENT, as_columns([SMALL, SMALL], question=question))
    # By hand: 2 · 239.691 · (0.005 / √3) / 68.
    expected = 2.0 * 239.69095309828688 * 0.005 / math.sqrt(3.0) / 68.0
    assert found.u["displacement_cc"] == pytest.approx([expected] * 2, rel=1e-8)


def test_one_value_shared_by_all_rows() -> None:
    rows = Rows(
        count=2,
        columns={"bore_mm": [68.0, 68.496]},
        shared={"stroke_mm": 66.0, "cylinders": 1.0},
        question=Question(inputs=None),
    )
    found = answer_rows(DISPLACEMENT, rows)
    assert found.results["displacement_cc"] == pytest.approx([239.691, 243.2], rel=2e-5)


def test_a_calculation_without_columns_goes_row_by_row() -> None:
    of = calculation("cylinder-spread")
    rows: list[Row] = [
        {"readings_kpa": (1180.0, 760.0, 790.0, 1165.0), "layout": "in_line"},
        {"readings_kpa": (0.0, 0.0), "layout": "in_line"},
        {"readings_kpa": (1180.0, 1165.0), "layout": None},
    ]
    found = answer_rows(of, as_columns(rows))
    assert found.problems.keys() == {1}
    ratios = found.results["lowest_over_highest"]
    assert [ratios[0], ratios[2]] == pytest.approx([760 / 1180, 1165 / 1180], rel=1e-12)
    for i in (0, 2):
        assert_row(found, i, single(of, rows[i], {}))


def test_a_column_that_the_arithmetic_refuses_goes_row_by_row() -> None:
    import dataclasses

    def compute(inputs: Any) -> Any:
        if np.any(inputs.bore_mm > 100.0):
            raise OutOfBounds("bore_mm", "too wide")
        return DISPLACEMENT.compute(inputs)

    of = dataclasses.replace(DISPLACEMENT, compute=compute)
    rows = [SMALL, SMALL | {"bore_mm": 101.0}, SMALL]
    found = answer_rows(of, as_columns(rows))
    assert told(found.problems[1]) == [("bore_mm", "too wide", "")]
    assert found.results["displacement_cc"][0] == pytest.approx(239.691, rel=2e-5)
    assert found.results["displacement_cc"][1] is None


def test_a_result_without_end_is_a_problem_of_its_row() -> None:
    import dataclasses

    def compute(inputs: Any) -> Any:
        endless = np.where(np.asarray(inputs.bore_mm) > 100.0, np.inf, 1.0)
        value = endless if endless.ndim else float(endless)
        return dataclasses.replace(DISPLACEMENT.compute(inputs), displacement_cc=value)

    of = dataclasses.replace(DISPLACEMENT, compute=compute, checks=())
    found = answer_rows(of, as_columns([SMALL, SMALL | {"bore_mm": 101.0}]))
    assert "no finite value" in found.problems[1][0].message
    assert found.results["displacement_cc"] == [1.0, None]
