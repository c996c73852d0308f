"""Giving pieces out, against scipy's solver of the same problem."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linear_sum_assignment

from ringland_service.core.formulas.assignment import least_total_cost


def test_by_hand() -> None:
    """Both want the first piece; the second row can do without it more cheaply."""
    assert least_total_cost([[0.0, 5.0], [1.0, 2.0]]) == [0, 1]
    assert least_total_cost([[1.0, 2.0], [0.0, 5.0]]) == [1, 0]
    assert least_total_cost([[3.0, 1.0, 2.0]]) == [1]


@st.composite
def tables(draw: st.DrawFn) -> list[list[float]]:
    rows = draw(st.integers(1, 6))
    columns = rows + draw(st.integers(0, 5))
    cost = st.sampled_from([0.0, 1.0, 2.0, 1e3, 1e6]) | st.floats(0.0, 10.0)
    row = st.lists(cost, min_size=columns, max_size=columns)
    return draw(st.lists(row, min_size=rows, max_size=rows))


@given(tables())
def test_no_cheaper_way_is_known(costs: list[list[float]]) -> None:
    found = least_total_cost(costs)
    assert len(set(found)) == len(costs)
    total = sum(costs[row][column] for row, column in enumerate(found))
    rows, columns = linear_sum_assignment(np.array(costs))
    best = sum(costs[row][column] for row, column in zip(rows, columns, strict=True))
    assert total == pytest.approx(best, rel=1e-12, abs=1e-9)
