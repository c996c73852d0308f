"""A column of rows says what each row says alone: numbers, words, uncertainty and refusals."""

from typing import Any

import pytest
from drawn_questions import example_row, rows_of, uncertainties_of
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from rows_alone import as_columns, assert_row, single

from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.response import Response

IN_COLUMNS = [c for c in CALCULATIONS if isinstance(c, Calculation) and c.columns]
ROWS = 4


@pytest.mark.parametrize("calculation", IN_COLUMNS, ids=lambda c: c.name)
@pytest.mark.parametrize("doubt", [False, True], ids=["plain", "with_doubt"])
@settings(max_examples=50, suppress_health_check=[HealthCheck.too_slow])
@given(data=st.data())
def test_columns_agree_with_single_answers(
    calculation: Calculation, uncertainty: bool, data: st.DataObject
) -> None:
    """The single answer, itself held to outside values, is the witness."""
    drawn = data.draw(st.lists(rows_of(calculation), min_size=ROWS, max_size=ROWS))
    rows = [example_row(calculation), *drawn]
    uncertainty: dict[str, Any] = (
        data.draw(uncertainties_of(calculation, rows)) if uncertainty else {}
    )
    found = answer_rows(calculation, as_columns(rows, uncertainty=uncertainty))
    for i, row in enumerate(rows):
        uncertainties = {name: us[i] for name, us in uncertainty.items() if us[i] is not None}
        assert_row(found, i, single(calculation, row, uncertainties))


@pytest.mark.parametrize("calculation", IN_COLUMNS, ids=lambda c: c.name)
def test_the_declared_examples_are_answered(calculation: Calculation) -> None:
    """Else the agreement above could be one of refusals alone."""
    alone = single(calculation, example_row(calculation), {})
    assert isinstance(alone, Response), alone
