"""Which limit judges, what doubt means for a check, and what would settle it."""

import dataclasses
from typing import Any

import numpy as np
import pytest

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.calculations.cylinder import piston_clearance
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.answer import Answer, Verdict
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.question import Question, Stated
from ringland_service.engine.rows import Rows
from ringland_service.engine.scalar import answer

FIT = piston_clearance.CALCULATION
USED = {"bore_max_mm": 68.05, "piston_mm": 67.9505, "cycle": "four_stroke"}
U = {("bore_max_mm",): Stated(uncertainty=0.0068), ("piston_mm",): Stated(uncertainty=0.0048)}


def judged(of: Calculation, inputs: dict[str, Any], **about: Any) -> dict[str, Verdict]:
    found = answer(of, Question(inputs=of.inputs(**inputs), **about))
    assert isinstance(found, Answer)
    return {verdict.check.name: verdict for verdict in found.verdicts}


def strict(of: Calculation) -> Calculation:
    """The calculation with doubt counted as fail in every check."""
    checks = tuple(dataclasses.replace(c, doubt_fails="failure hurts") for c in of.checks)
    return dataclasses.replace(of, checks=checks)


def test_the_makers_limit_wins_over_common_practice() -> None:
    """0.0995 passes the 0.10 mm of common practice and fails a maker's 0.09 (by hand)."""
    name = "piston_clearance_max"
    common = judged(FIT, USED)[name]
    assert (common.word, common.limit.standing, common.limit.high) == (
        "pass",
        "common_practice",
        0.1,
    )
    maker = judged(FIT, USED, limits={name: Limit(high=0.09)})[name]
    assert (maker.word, maker.limit.standing) == ("fail", "maker")


def test_common_practice_switched_off_judges_nothing() -> None:
    assert judged(FIT, USED, defaults=False) == {}
    kept = judged(FIT, USED, defaults=False, limits={"piston_clearance_max": Limit(high=0.09)})
    assert kept["piston_clearance_max"].word == "fail"


def test_a_limit_of_a_law_stays_with_common_practice_off() -> None:
    of = BY_NAME["displacement"]
    assert isinstance(of, Calculation)
    inputs = {"bore_mm": 68.0, "stroke_mm": 66.0, "class_limit_cc": 250.0}
    assert judged(of, inputs, defaults=False)["class_limit"].limit.standing == "standard"


def test_a_limit_without_sides_judges_nothing() -> None:
    assert judged(FIT, USED, limits={"piston_clearance_max": Limit()}) == {}


def test_doubt_means_fail_where_the_check_says_so() -> None:
    name = "piston_clearance_max"
    assert judged(FIT, USED, doubts=U)[name].word == "too_close_to_call"
    failed = judged(strict(FIT), USED, doubts=U)[name]
    assert failed.word == "fail"
    assert failed.judged.verdict == "too_close_to_call"
    clear = {**USED, "piston_mm": 67.99}
    assert judged(strict(FIT), clear, doubts=U)[name].word == "pass"


def test_doubt_means_fail_in_a_column_too() -> None:
    rows = Rows(
        count=3,
        columns={"bore_max_mm": [68.05, 68.05, 68.05], "piston_mm": [67.9505, 67.99, 67.90]},
        shared={"cycle": "four_stroke"},
        question=Question(inputs=None),
        uncertainty={"bore_max_mm": 0.0068, "piston_mm": 0.0048},
    )
    found = answer_rows(strict(FIT), rows).verdicts["piston_clearance_max"]
    assert found.verdict == ["fail", "pass", "fail"]


def test_without_doubt_the_value_alone_decides() -> None:
    verdict = judged(FIT, USED, rule="guard_1645u")["piston_clearance_max"]
    assert (verdict.rule, verdict.u, verdict.judged.probability) == ("simple", None, None)
    assert (
        judged(FIT, USED, doubts=U, rule="guard_1645u")["piston_clearance_max"].rule
        == "guard_1645u"
    )


@pytest.mark.parametrize(
    ("limit", "advice"),
    [
        (Limit(high=0.1), "set the bore gauge in the micrometer"),
        (Limit(0.097, 0.103), "closer together than twice the doubt"),
        (Limit(high=68.05 - 67.9505), "no measurement will settle it alone"),
    ],
)
def test_advice_says_what_would_settle(limit: Limit, advice: str) -> None:
    verdict = judged(FIT, USED, doubts=U, limits={"piston_clearance_max": limit})
    assert verdict["piston_clearance_max"].word == "too_close_to_call"
    assert advice in verdict["piston_clearance_max"].advice


def test_a_check_judges_an_input_too() -> None:
    of = BY_NAME["ring-gap"]
    assert isinstance(of, Calculation)
    verdict = judged(of, {"bore_mm": 68.0, "top_measured_mm": 0.20})["top_ring_gap"]
    assert (verdict.value, verdict.word) == (0.20, "fail")
    assert np.isclose(verdict.limit.low or 0.0, 0.0035 * 68.0)
