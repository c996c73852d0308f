"""What a largest, a smallest or a range is taken from, as a calculation declares it.

Every extreme is the largest of its candidates: a smallest is turned round, and a range is the
largest of the differences of all pairs of readings. ``extremes.py`` says what noise does to it.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np

# Which way noise can only push a result.
UP, DOWN = 1.0, -1.0


@dataclass(frozen=True)
class Candidates:
    """What a result is the largest or the smallest of, along the last axis.

    Attributes
    ----------
    values : array
        Of a smallest turned round, so that the largest counts.
    side : float
        ``UP`` where noise can only push the result up, ``DOWN`` where only down.
    paired : bool
        Whether the candidates are pairs of readings, as in a range.
    among : array of bool or None
        Which of the values are candidates; all where None.
    floor, ceiling : float or None
        What the result is by definition at least, and at most.
    """

    values: Any
    side: float = UP
    paired: bool = False
    among: Any = None
    floor: float | None = None
    ceiling: float | None = None


def _side_by_side(values: Any) -> Any:
    """Return numbers as one array, candidates along the last axis; columns a row for each row."""
    if isinstance(values, np.ndarray):
        return np.asarray(values, dtype=float)
    return np.stack(np.broadcast_arrays(*(np.asarray(v, dtype=float) for v in values)), axis=-1)


def largest(
    values: Any, among: Any = None, floor: float | None = None, paired: bool = False
) -> Candidates:
    """Return the candidates of a largest: numbers or columns, or one array of them."""
    return Candidates(_side_by_side(values), UP, paired, among, floor=floor)


def smallest(values: Any, among: Any = None, ceiling: float | None = None) -> Candidates:
    """Return the candidates of a smallest."""
    return Candidates(-_side_by_side(values), DOWN, among=among, ceiling=ceiling)


def apart(values: Any) -> Candidates:
    """Return the candidates of the largest of differences without their sign."""
    signed = _side_by_side(values)
    return largest(np.concatenate([signed, -signed], axis=-1), floor=0.0)


def _pairs(count: int) -> Any:
    return np.nonzero(~np.eye(count, dtype=bool))


def spread(values: Any) -> Candidates:
    """Return the candidates of a range, largest less smallest: the differences of all pairs."""
    read = _side_by_side(values)
    one, other = _pairs(read.shape[-1])
    return Candidates(read[..., one] - read[..., other], UP, paired=True, floor=0.0)


def share_of_largest(values: Any) -> Candidates:
    """Return the candidates of the smallest over the largest: the ratios of all pairs, at most 1.

    A reading at or below zero divides nothing.
    """
    read = _side_by_side(values)
    one, other = _pairs(read.shape[-1])
    divides = read[..., other] > 0.0
    ratios = read[..., one] / np.where(divides, read[..., other], 1.0)
    return Candidates(-ratios, DOWN, paired=True, among=divides, ceiling=1.0)
