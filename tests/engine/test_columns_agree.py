"""A column of rows says what each row says alone: numbers, words, uncertainty and refusals."""

from typing import Any

import pytest
from drawn_questions import bounds_of, example_row, quantities_of, rows_of, uncertainties_of
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from rows_alone import as_columns, assert_row, single

from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.request import Request
from ringland_service.engine.response import Response
from ringland_service.engine.rows import Rows

IN_COLUMNS = [c for c in CALCULATIONS if isinstance(c, Calculation) and c.columns]
ROWS = 4


@pytest.mark.parametrize("calculation", IN_COLUMNS, ids=lambda c: c.name)
@pytest.mark.parametrize("uncertainty", [False, True], ids=["plain", "with_uncertainty"])
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


@pytest.mark.parametrize("rows", [2, 3])
@pytest.mark.parametrize("calculation", IN_COLUMNS, ids=lambda c: c.name)
def test_one_quantity_alone_may_be_a_column(calculation: Calculation, rows: int) -> None:
    """All the others are shared by the rows, and stay single numbers."""
    shared = {name: value for name, value in example_row(calculation).items() if value is not None}
    for name, field in quantities_of(calculation).items():
        low, high = bounds_of(field)
        if name not in shared:
            continue
        step = 0.01 * (high - low) * (1.0 if shared[name] < (low + high) / 2.0 else -1.0)
        column = [shared[name] + k * step for k in range(rows)]
        others = {other: value for other, value in shared.items() if other != name}
        asked = Rows(rows, {name: column}, others, Request(inputs=None))
        found = answer_rows(calculation, asked)
        for i, value in enumerate(column):
            assert_row(found, i, single(calculation, {**others, name: value}, {}))
