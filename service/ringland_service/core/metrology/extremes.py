"""The bias of a largest, a smallest or a range of readings, and the interval that allows for it.

Where the true values of k readings tie, the largest reading is the one that noise pushed up most:
it lies above the largest true value by the largest of k errors, and a range of readings lies above
the true range by the range of k errors. Uncertainty of the first order, that of the leading
reading alone, knows nothing of that.

A result is the largest of *candidates* (a smallest is turned round; a range is the largest of all
differences of two readings). With the true values t and the errors e of the candidates,

- largest t ≥ result − largest of the errors: noise can only push the result up;
- largest t ≤ largest of (candidate + 1.96·u of the candidate).

So the interval reaches, on the side that noise can only push, to the 97.5 % quantile of the largest
(or the range) of k errors, and on the other to 1.96·u. Together it covers the true value in at
least 95 %.

What moves all candidates alike cannot part them: errors are compared with that of the leading
candidate, and only the part that is left, s² = u²(leading − candidate)/2, makes the bias. Beside it
the shared part widens the interval as ever: of normal errors with mean m and quantile q of the
largest of k the side reaches to m·s + √((1.96·u)² − (1.96² − (q − m)²)·s²), which is q·u where
nothing is shared.

All candidates count where the nearest of them lies behind the leading one by no more than
2·u(leading − candidate), the expanded uncertainty of their difference: then which of them leads is
open. Farther behind, k falls to 1 as k^w, w from 1 to 0 at 2.5·u(leading − candidate). So the bias
goes smoothly to none as the leading reading parts from the next. An interval is given where it
says more than U = 2·u does.

References
----------
Order statistics of the normal distribution: F(x) = Φ(x)^k of the largest; of the range F(w) =
k ∫ φ(x) [Φ(x + w) − Φ(x)]^(k − 1) dx; integrated numerically. Pearson and Hartley, Biometrika
Tables for Statisticians. Correlated errors by the inequality of Slepian, The one-sided barrier
problem for Gaussian noise.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from ringland_service.core.metrology.candidates import DOWN, UP, Candidates
from ringland_service.core.metrology.propagation import as_known
from ringland_service.core.numbers import Number

# 97.5 % of one normal error lie below this many standard deviations.
ONE_SIDE = 1.959963984540
# k, mean of the largest of k errors (of the range twice that), 97.5 % quantile of the largest and
# of the range. Between the rows interpolated over the logarithm of what is compared, to 0.001.
QUANTILES: tuple[tuple[int, float, float, float], ...] = (
    (2, 0.5642, 2.2390, 3.1698),
    (3, 0.8463, 2.3909, 3.6823),
    (4, 1.0294, 2.4943, 3.9840),
    (5, 1.1630, 2.5723, 4.1970),
    (6, 1.2672, 2.6347, 4.3609),
    (7, 1.3522, 2.6865, 4.4936),
    (8, 1.4236, 2.7307, 4.6049),
    (9, 1.4850, 2.7693, 4.7004),
    (10, 1.5388, 2.8034, 4.7840),
    (12, 1.6292, 2.8616, 4.9250),
    (14, 1.7034, 2.9101, 5.0408),
    (16, 1.7660, 2.9515, 5.1389),
    (18, 1.8200, 2.9877, 5.2238),
    (20, 1.8675, 3.0197, 5.2986),
    (25, 1.9653, 3.0866, 5.4535),
    (30, 2.0428, 3.1404, 5.5768),
    (40, 2.1608, 3.2237, 5.7661),
)
_K, _MEAN, _LARGEST, _RANGE = np.array(QUANTILES).T
ROOT2 = float(np.sqrt(2.0))
# Of a range the differences compared are counted: of one alone, its sign settled, none is pushed.
_COUNTS = {
    False: (np.log([1.0, *_K]), np.array([0.0, *_MEAN]), np.array([ONE_SIDE, *_LARGEST])),
    True: (
        np.log([1.0, *(_K * (_K - 1.0))]),
        np.array([0.0, *(2.0 * _MEAN)]) / ROOT2,
        np.array([ONE_SIDE * ROOT2, *_RANGE]) / ROOT2,
    ),
}

# A lead is open up to so many u of the difference, and settled from so many.
OPEN, SETTLED = 2.0, 2.5
# Below this share of u a difference is rounding: the two move alike.
ALIKE = 1e-6


@dataclass(frozen=True)
class Push:
    """How noise pushes a result; each member a number or a column.

    Attributes
    ----------
    shift : float or array
        How far the true value lies from the result on average, with its sign.
    relief : float or array
        By how much the square of 1.96·u is too large on that side, since the largest of several
        errors strays less than one error does.
    u : float or array
        Standard uncertainty of the candidates that count, the largest.
    other : float or array
        How far the interval reaches on the side that noise does not push.
    open : bool or array
        Whether another candidate counts: which of them leads is not settled.
    """

    shift: Any
    relief: Any
    u: Any = 0.0
    other: Any = 0.0
    open: Any = False


def push(of: Candidates, contributions: Any) -> Push | None:
    """Return how noise pushes an extreme.

    Parameters
    ----------
    of : Candidates
        At the measured values.
    contributions : array
        What each component of the uncertainty contributes to each candidate, with its sign; the
        components along a first axis, the others those of the values, of length 1 where alike.

    Returns
    -------
    Push or None
        None without uncertainty, and of fewer than two candidates.
    """
    if not len(contributions) or of.values.shape[-1] < 2:
        return None
    moved = np.asarray(contributions)
    square = np.einsum("c...k,c...k->...k", moved, moved)
    values, square = np.broadcast_arrays(of.values, square)
    among = np.ones(values.shape, dtype=bool) if of.among is None else of.among
    most = np.max(values, axis=-1, where=among, initial=-np.inf)[..., None]
    behind = np.where(among, np.where(among, most, 0.0) - values, np.inf)
    u = np.sqrt(square)
    lead = _leading(behind, u)
    moved = np.broadcast_to(moved, (len(moved), *values.shape))
    together = np.einsum("c...k,c...->...k", moved, _at(moved, lead)[..., 0])
    difference = np.sqrt(np.maximum(square + _at(square, lead) - 2.0 * together, 0.0))
    largest_u = np.maximum(u, _at(u, lead))
    own = np.minimum(difference / ROOT2, largest_u)
    is_lead = np.arange(values.shape[-1]) == lead
    parted = among & (own > ALIKE * largest_u)
    weights = _weights(behind, difference, parted)
    open_ = np.max(weights, axis=-1)
    s, widest = _spread_of(own, weights), np.max(np.where(is_lead, u, weights * u), axis=-1)
    if of.paired:
        # A difference has the errors of two readings.
        s = np.minimum(ROOT2 * s, widest)
    count = 1.0 + np.sum(parted, axis=-1)
    known, *rows = _COUNTS[of.paired]
    mean, quantile = (np.interp(open_ * np.log(count), known, row) for row in rows)
    return Push(
        -of.side * mean * s,
        (ONE_SIDE**2 - (quantile - mean) ** 2) * s**2,
        widest,
        np.max(np.where(among, ONE_SIDE * u - behind, -np.inf), axis=-1),
        open_ >= 1.0,
    )


def _weights(behind: Any, difference: Any, parted: Any) -> Any:
    """Return how open it is that each candidate leads: 1 where it ties, 0 where it is settled."""
    reach = np.where(parted, difference, 1.0)
    far = np.where(parted, behind / reach, SETTLED)
    return np.clip((SETTLED - far) / (SETTLED - OPEN), 0.0, 1.0)


def _spread_of(own: Any, weights: Any) -> Any:
    """Return the root of the mean square of what each candidate that may lead has of its own."""
    total = np.sum(weights, axis=-1)
    return np.sqrt(np.sum(weights * own**2, axis=-1) / np.where(total > 0.0, total, 1.0))


def _leading(behind: Any, u: Any) -> Any:
    """Return the place of the leading candidate; of equals that of the most uncertain one."""
    equal = behind <= ALIKE * u
    equal |= behind == 0.0
    return np.argmax(np.where(equal, u, -1.0), axis=-1)[..., None]


def _at(values: Any, place: Any) -> Any:
    """Return the value of each row at its place, with an axis of its own."""
    place = np.broadcast_to(place, (*values.shape[:-1], 1))
    return np.take_along_axis(values, place, axis=-1)


@dataclass(frozen=True)
class Interval:
    """A 95 % interval, each member a number or a column.

    Attributes
    ----------
    low, high : float or array
        In the unit of the result.
    given : bool or array
        Whether the interval says more than the expanded uncertainty U = 2u does.
    lean : float or array
        ``UP`` where noise makes the result read too high, ``DOWN`` too low, 0 where both.
    """

    low: Any
    high: Any
    given: Any
    lean: Any


# What a result reads, by the way that noise pushes it.
READS = {UP: "too high", DOWN: "too low", 0.0: "too high or too low"}


def member(of: Interval, place: int) -> Interval | None:
    """Return the interval of one member of a list; None where it has none."""
    if not of.given[place]:
        return None
    return Interval(float(of.low[place]), float(of.high[place]), True, of.lean)


def interval(
    value: Number,
    u: Number,
    pushes: Sequence[Push],
    floor: float | None = None,
    ceiling: float | None = None,
) -> Interval:
    """Return the 95 % interval of a result that noise pushes.

    Parameters
    ----------
    value, u : float or array
        The result, and its standard uncertainty of the first order.
    pushes : sequence of Push
        At least one.
    floor, ceiling : float or None
        What the result is by definition at least, and at most.

    Returns
    -------
    Interval
    """
    below, above = (_reach(u, pushes, side) for side in (DOWN, UP))
    wide = np.maximum(below, above) > 2.0 * u * (1.0 + ALIKE)
    low, high, wide = np.broadcast_arrays(value - as_known(below), value + as_known(above), wide)
    down, up = (any(np.any(p.shift * side > 0.0) for p in pushes) for side in (DOWN, UP))
    return Interval(
        (low if floor is None else np.maximum(low, floor))[()],
        (high if ceiling is None else np.minimum(high, ceiling))[()],
        wide[()],
        0.0 if down and up else UP if down else DOWN,
    )


def _reach(u: Any, pushes: Sequence[Push], side: float) -> Any:
    """Return how far the interval reaches to a side."""
    reach: Any = 0.0
    relief: Any = 0.0
    widest, other = u, reach
    for one in pushes:
        this_way = one.shift * side > 0.0
        reach = reach + np.where(this_way, abs(one.shift), 0.0)
        relief = relief + np.where(this_way, one.relief, 0.0)
        widest = np.where(this_way, np.maximum(widest, one.u), widest)
        other = np.where(this_way, other, np.maximum(other, one.other))
    normal = np.sqrt(np.maximum((ONE_SIDE * widest) ** 2 - relief, 0.0))
    return np.maximum(reach + normal, other)[()]
