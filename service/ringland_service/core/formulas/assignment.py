"""Giving pieces out so that the sum of costs is least."""

import math
from collections.abc import Sequence


def least_total_cost(costs: Sequence[Sequence[float]]) -> list[int]:
    """Return for each row the column that it gets, no column twice.

    Parameters
    ----------
    costs : sequence of sequence of float
        A row for each taker, a column for each piece; finite, and no more rows than columns.

    Returns
    -------
    list of int
        Columns, counted from 0.

    References
    ----------
    Assignment by shortest augmenting paths with potentials: Kuhn, The Hungarian method for the
    assignment problem, 1955.
    """
    columns = len(costs[0])
    row_price, price = [0.0] * len(costs), [0.0] * (columns + 1)
    # Column ``columns`` stands for none yet: each new row starts from there.
    taker: list[int | None] = [None] * (columns + 1)
    for row in range(len(costs)):
        taker[columns] = row
        before = _augment(costs, row_price, price, taker)
        column = before.pop()
        while column != columns:
            taker[column] = taker[before[column]]
            column = before[column]
    found = [0] * len(costs)
    for column, row_of in enumerate(taker[:columns]):
        if row_of is not None:
            found[row_of] = column
    return found


def _augment(
    costs: Sequence[Sequence[float]],
    row_price: list[float],
    price: list[float],
    taker: list[int | None],
) -> list[int]:
    """Find the cheapest path from the new row to a free column, and move the prices along.

    Returns the column before each on its path, and last the free column.
    """
    columns = len(price) - 1
    least, before = [math.inf] * columns, [columns] * columns
    done = [False] * (columns + 1)
    here = columns
    while (row := taker[here]) is not None:
        done[here] = True
        open_ = [column for column in range(columns) if not done[column]]
        for column in open_:
            slack = costs[row][column] - row_price[row] - price[column]
            if slack < least[column]:
                least[column], before[column] = slack, here
        nearest = min(open_, key=lambda column: least[column])
        step = least[nearest]
        _move_prices(step, done, row_price, price, taker)
        for column in open_:
            least[column] -= step
        here = nearest
    return [*before, here]


def _move_prices(
    step: float,
    done: list[bool],
    row_price: list[float],
    price: list[float],
    taker: list[int | None],
) -> None:
    """Move the prices of rows and columns on the path so that the nearest column costs nothing."""
    for column, on_path in enumerate(done):
        row = taker[column]
        if on_path and row is not None:
            row_price[row] += step
            price[column] -= step
