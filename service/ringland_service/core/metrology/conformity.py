"""The verdict and its rules, on one value or on a column of them.

A value y with standard uncertainty u, judged against low and high under a guard w:

- pass: y − w ≥ low and y + w ≤ high
- fail: y + w < low or y − w > high
- otherwise too close to call

A value that noise pushes one way has a 95 % interval instead (``extremes.py``): it passes where the
whole interval lies within the limits, fails where all of it lies outside, and has no probability.

Where the conditions of the test were not met the outcome is ``not_judged`` (``unjudged.py``).

Equality accepts, equality never rejects. ``a ≤ b`` holds when a − b ≤ 1e-9·max(|a|, |b|), so
that binary dust decides nothing (0.005 + 0.005 against 0.010).

References
----------
JCGM 106:2012 and ISO 14253-1: decision rules, guard band, conformance probability.
"""

import math
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from ringland_service.core.metrology.extremes import Interval
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.unjudged import NOT_JUDGED

PASS, FAIL, CLOSE = "pass", "fail", "too_close_to_call"
WORDS = {
    PASS: "pass",
    FAIL: "fail",
    CLOSE: "too close to call",
    NOT_JUDGED: "not judged",
}

ONE_SIDED_95 = 1.644853626951
GUARDS = {"simple": 0.0, "guard_2u": 2.0, "guard_1645u": ONE_SIDED_95}
RULES = {
    "guard_2u": "guard of U = 2u on each limit (default)",
    "guard_1645u": "guard of 1.645·u, 95 % one-sided",
    "simple": "no guard: the value alone decides",
}
DEFAULT_RULE = "guard_2u"
# No rule to ask for: it stands in place of a guard where a value has an interval.
BY_INTERVAL = "interval_95"
INTERVAL_RULE = "the whole 95 % interval decides, where noise pushes the value one way"
SIMPLE = "simple"
TOLERANCE = 1e-9
NEGLIGIBLE = 1e-9


@dataclass(frozen=True)
class Judged:
    """What a verdict says, each member a scalar or a column.

    ``needed`` is the expanded uncertainty (k = 2) at which the verdict would be settled;
    meaningful where the verdict is too close to call.
    """

    verdict: Any
    without: Any
    margin: Any
    probability: Any
    needed: Any


def at_most(a: Any, b: Any) -> Any:
    """Return whether a ≤ b; equality up to 1e-9 of the larger magnitude counts as equal."""
    apart = a - b
    if isinstance(apart, float) and apart <= 0.0:
        return True  # most comparisons end here, and every answer makes several
    return apart <= TOLERANCE * _larger(abs(a), abs(b))


def beyond(a: Any, b: Any) -> Any:
    """Return whether a > b, the complement of ``at_most``."""
    apart = a - b
    if isinstance(apart, float) and apart <= 0.0:
        return False
    return apart > TOLERANCE * _larger(abs(a), abs(b))


def is_column(value: Any) -> bool:
    """Return whether the value is a column rather than one number."""
    return isinstance(value, np.ndarray) and value.ndim > 0


def _larger(a: Any, b: Any) -> Any:
    return np.maximum(a, b) if is_column(a) or is_column(b) else max(a, b)


def _smaller(a: Any, b: Any) -> Any:
    return np.minimum(a, b) if is_column(a) or is_column(b) else min(a, b)


def _word(passes: Any, fails: Any) -> Any:
    if is_column(passes) or is_column(fails):
        return np.where(passes, PASS, np.where(fails, FAIL, CLOSE))
    return PASS if passes else FAIL if fails else CLOSE


def _decide(value: Any, guard: Any, limit: Limit) -> Any:
    passes: Any = True
    fails: Any = False
    if limit.low is not None:
        passes = passes & at_most(limit.low, value - guard)
        fails = fails | beyond(limit.low, value + guard)
    if limit.high is not None:
        passes = passes & at_most(value + guard, limit.high)
        fails = fails | beyond(value - guard, limit.high)
    return _word(passes, fails)


def _decide_interval(of: Interval, limit: Limit) -> Any:
    """Return the word of the interval, whole."""
    passes: Any = True
    fails: Any = False
    if limit.low is not None:
        passes = passes & at_most(limit.low, of.low)
        fails = fails | beyond(limit.low, of.high)
    if limit.high is not None:
        passes = passes & at_most(of.high, limit.high)
        fails = fails | beyond(of.low, limit.high)
    return _word(passes, fails)


def margin_to(value: Any, limit: Limit) -> Any:
    """Return min(high − value, value − low): positive inside, 0 on the limit.

    Equality is that of ``at_most``: what the units leave in the last digits is no margin.
    """
    sides = [] if limit.high is None else [_apart(limit.high, value)]
    sides += [] if limit.low is None else [_apart(value, limit.low)]
    return sides[0] if len(sides) == 1 else _smaller(*sides)


def _apart(a: Any, b: Any) -> Any:
    """Return a − b; 0 where the two are equal up to the tolerance."""
    equal = at_most(a, b) & at_most(b, a)
    return np.where(equal, 0.0, a - b) if is_column(equal) else 0.0 if equal else a - b


def normal_cdf(x: Any) -> Any:
    """Return Φ(x), the standard normal distribution function."""
    if is_column(x):
        return np.fromiter((normal_cdf(v) for v in x.tolist()), dtype=float, count=x.size)
    return 0.5 * math.erfc(-x / math.sqrt(2.0))


def conformance_probability(value: Any, u: Any, limit: Limit) -> Any:
    """Return the probability that the true value conforms; below 1e-9 given as 0.

    ``u`` is the standard uncertainty; 0 in a column gives a meaningless figure for that row,
    which the caller leaves out.
    """
    safe_u = np.where(u > 0, u, 1.0) if is_column(u) else u
    above = 1.0 if limit.high is None else normal_cdf((limit.high - value) / safe_u)
    below = 0.0 if limit.low is None else normal_cdf((limit.low - value) / safe_u)
    inside = above - below
    if is_column(inside):
        return np.where(inside < NEGLIGIBLE, 0.0, inside)
    return 0.0 if inside < NEGLIGIBLE else inside


def judge(
    value: Any,
    u: Any,
    limit: Limit,
    rule: str = DEFAULT_RULE,
    interval: Interval | None = None,
) -> Judged:
    """Pass the verdict on a value.

    Parameters
    ----------
    value : float or array
        In the unit of the limit.
    u : float, array or None
        Standard uncertainty; None or 0 means that none was stated, and rule ``simple`` holds.
    limit : Limit
        With at least one side.
    rule : str
        One of ``GUARDS``.
    interval : Interval or None
        What decides in place of the guard, where it is given; in a column by row.

    Returns
    -------
    Judged
    """
    stated = 0.0 if u is None else u
    factor = GUARDS[rule]
    margin = margin_to(value, limit)
    judged = Judged(
        verdict=_decide(value, factor * stated, limit),
        without=_decide(value, 0.0, limit),
        margin=margin,
        probability=conformance_probability(value, u, limit) if is_column(u) or u else None,
        needed=abs(margin) * 2.0 / factor if factor else None,
    )
    return judged if interval is None else _by_interval(judged, interval, limit)


def _by_interval(judged: Judged, interval: Interval, limit: Limit) -> Judged:
    """Return what the interval says where it is given, which knows no probability."""
    word = _decide_interval(interval, limit)
    if not is_column(interval.low):
        return replace(judged, verdict=word, probability=None, needed=None)
    return replace(judged, verdict=np.where(interval.given, word, judged.verdict))


def wider_than_zone(interval: Interval, limit: Limit) -> bool:
    """Return whether no reading can pass because the interval is wider than the zone."""
    if limit.low is None or limit.high is None:
        return False
    return bool(beyond(interval.high - interval.low, limit.high - limit.low))


def narrower_than_guard(u: float, limit: Limit, rule: str) -> bool:
    """Return whether no reading can pass because the zone is narrower than twice the guard."""
    if limit.low is None or limit.high is None:
        return False
    return bool(beyond(2.0 * GUARDS[rule] * u, limit.high - limit.low))
