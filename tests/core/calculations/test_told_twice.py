"""Depths that are one, marks that are none: what is told twice must be one thing."""

from typing import Any

import pytest

from ringland_service.core.calculations.cylinder import bore_survey, piston_clearance
from ringland_service.core.calculations.machining import oversize_choice
from ringland_service.core.calculations.machining._marks import oversizes_mm
from ringland_service.core.calculations.machining.oversize_choice import Offered
from ringland_service.core.engines.survey import Survey
from ringland_service.engine.answer import Refused
from ringland_service.engine.question import Question
from ringland_service.engine.scalar import answer


def survey(*depths: float) -> dict[str, Any]:
    bores = tuple(68.0 + k / 1000 for k in range(len(depths)))
    return {"depth_mm": depths, "pin_axis_mm": bores, "thrust_axis_mm": bores}


@pytest.mark.parametrize("depths", [(10.0, 10.0, 40.0), (10.0, 40.0, 10.049), (40.0, 40.02)])
def test_depths_less_than_a_twentieth_apart_are_one_told_twice(depths: tuple[float, ...]) -> None:
    """Common practice, no source: no gauge is held closer than 0.05 mm."""
    alone = Question(bore_survey.Inputs(**survey(*depths)))
    inside = Question(piston_clearance.Inputs(piston_mm=67.9, survey=Survey(**survey(*depths))))
    with pytest.raises(Refused, match="twice"):
        answer(bore_survey.CALCULATION, alone)
    with pytest.raises(Refused, match="twice"):
        answer(piston_clearance.CALCULATION, inside)


def test_depths_a_twentieth_apart_are_two() -> None:
    found = answer(bore_survey.CALCULATION, Question(bore_survey.Inputs(**survey(10.0, 10.05))))
    assert found.outputs.max_at_depth_mm == 10.05


@pytest.mark.parametrize(
    ("mark", "meant"),
    [
        ("+0.50 mm", (0.5,)),
        ("+0.020 in", (0.508,)),
        ('+.020"', (0.508,)),
        ("+20 thou", (0.508,)),
        ("+0.50", (0.5, 12.7)),
        ("+0.020 B", (0.02, 0.508)),
        ("A", ()),
        ("68.46", ()),
    ],
)
def test_what_a_mark_may_mean(mark: str, meant: tuple[float, ...]) -> None:
    """By hand: an inch is 25.4 mm, a thou a thousandth of it."""
    assert oversizes_mm(mark) == pytest.approx(meant)


@pytest.mark.parametrize(
    ("mark", "piston", "warned"),
    [
        ("+0.50 mm", 68.465, False),
        ("+0.50 mm", 68.57, True),
        ("+0.50 mm", 68.212, True),
        ("+0.020 in", 68.461, False),
        ("+0.020", 68.461, False),
        ("+0.040", 68.461, True),
        ("B", 68.212, False),
    ],
)
def test_a_piston_that_is_not_what_it_is_marked(mark: str, piston: float, warned: bool) -> None:
    """By hand: 68 + 0.5 − 0.035 = 68.465, and 0.1 mm to either side of it."""
    inputs = oversize_choice.Inputs(
        bore_kind="iron",
        clean_up_mm=68.1,
        pistons=(Offered(mark=mark, piston_mm=piston),),
        wanted_clearance_mm=0.035,
        hone_stock_mm=0.06,
        nominal_bore_mm=68.0,
    )
    found = answer(oversize_choice.CALCULATION, Question(inputs))
    assert ("piston_not_as_marked" in {w.code for w in found.warnings}) == warned
