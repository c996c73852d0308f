"""The interval of a largest, a smallest and a range of readings that tie.

By hand: order statistics of the normal distribution. Outside: scipy's studentized range with
infinite degrees of freedom, its normal distribution and its quadrature.
"""

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.stats import norm, studentized_range

from ringland_service.core.metrology.candidates import (
    Candidates,
    apart,
    largest,
    share_of_largest,
    smallest,
    spread,
)
from ringland_service.core.metrology.conformity import BY_INTERVAL, RULES
from ringland_service.core.metrology.extremes import ONE_SIDE, QUANTILES, Interval, interval, push

U = 0.001
# Largest and next, and smallest and next, within 2·√2·u.
READ = (68.004, 68.010, 68.001, 68.009, 68.003)


def contributed(make: Any, read: Any, us: Any, shared: float = 0.0) -> tuple[Candidates, Any]:
    """Return the candidates of readings, and what the error of each and a shared one contribute."""
    here = make(read)
    effects = [*np.diag(us), np.full(len(us), shared)]
    step = 1e-3
    rows = [make(np.asarray(read) + step * move).values - here.values for move in effects]
    return here, np.array(rows) / step


def worked(
    make: Any, read: Any, us: Any, value: float, u: float, shared: float = 0.0
) -> tuple[Interval, Any]:
    of, contributions = contributed(make, read, us, shared)
    found = push(of, contributions)
    assert found is not None
    return interval(value, u, [found], of.floor, of.ceiling), found


def test_the_range_of_five_readings_by_hand() -> None:
    """R = 0.009; q = 4.197 · 0.001; u(max − min) = √2 · 0.001."""
    found, pushed = worked(spread, READ, [U] * 5, 0.009, U * math.sqrt(2.0))
    assert found.low == pytest.approx(0.009 - 4.197 * U, rel=1e-4)
    assert found.high == pytest.approx(0.009 + 1.959964 * math.sqrt(2.0) * U, rel=1e-6)
    assert found.given
    assert pushed.open
    assert found.lean == 1.0


def test_a_range_below_its_noise_begins_at_none() -> None:
    found, _ = worked(spread, (68.0, 68.001, 68.002), [U] * 3, 0.002, U * math.sqrt(2.0))
    assert found.low == 0.0


@pytest.mark.parametrize(
    ("make", "value", "low", "high"),
    [(largest, 68.010, 2.5723, 1.959964), (smallest, 68.001, 1.959964, 2.5723)],
)
def test_the_largest_and_the_smallest_of_five_by_hand(
    make: Any, value: float, low: float, high: float
) -> None:
    """Φ(2.5723)^5 = 0.975; noise can only push a largest up, a smallest down."""
    found, _ = worked(make, READ, [U] * 5, value, U)
    assert value - found.low == pytest.approx(low * U, rel=1e-4)
    assert found.high - value == pytest.approx(high * U, rel=1e-4)


def test_what_readings_share_widens_and_does_not_bias() -> None:
    """By hand: m = 1.163, q = 2.5723 for five; u² = 0.001² + 0.003²."""
    u = math.hypot(U, 0.003)
    found, _ = worked(largest, READ, [U] * 5, 68.010, u, shared=0.003)
    strays = (ONE_SIDE * u) ** 2 - (ONE_SIDE**2 - (2.5723 - 1.163) ** 2) * U**2
    assert 68.010 - found.low == pytest.approx(1.163 * U + math.sqrt(strays), rel=1e-4)
    assert found.high - 68.010 == pytest.approx(ONE_SIDE * u, rel=1e-6)
    alike, _ = worked(spread, READ, [U] * 5, 0.009, U * math.sqrt(2.0), shared=0.003)
    alone, _ = worked(spread, READ, [U] * 5, 0.009, U * math.sqrt(2.0))
    assert (alike.low, alike.high) == pytest.approx((alone.low, alone.high), rel=1e-6)


def test_readings_that_move_alike_have_no_bias() -> None:
    found, pushed = worked(largest, READ, [0.0] * 5, 68.010, 0.003, shared=0.003)
    assert not pushed.open
    assert pushed.shift == 0.0
    assert not found.given


def test_out_of_round_is_the_largest_of_differences_without_sign() -> None:
    """Two axes at three depths, all alike: of six, three and their opposites, Φ(q)^6 = 0.975."""
    of = apart([0.0, 0.0, 0.0])
    contributions = [np.r_[row, -row] * U for row in np.eye(3)]
    found = push(of, contributions)
    assert found is not None
    told = interval(0.02, U, [found], of.floor)
    assert 0.02 - told.low == pytest.approx(2.6347 * U, rel=1e-4)
    assert of.floor == 0.0


def test_the_lowest_over_the_highest_is_a_range_of_ratios() -> None:
    """Three cylinders alike at 1000 kPa, u = 5 kPa each: 3.6823 · 0.005, at most 1."""
    read = (1000.0, 1000.0, 1000.0)
    found, _ = worked(share_of_largest, read, [5.0] * 3, 0.95, 0.005 * math.sqrt(2.0))
    assert found.high - 0.95 == pytest.approx(3.6823 * 0.005, rel=1e-4)
    assert worked(share_of_largest, read, [5.0] * 3, 1.0, 0.005)[0].high == 1.0


def test_a_dead_cylinder_leaves_no_uncertainty_which_is_lowest() -> None:
    """0 kPa over any of three that tie: which of those is the highest moves nothing."""
    read, us = (0.0, 1000.0, 1001.0, 999.0), [0.5, 5.0, 5.0, 5.0]
    found, _ = worked(share_of_largest, read, us, 0.0, 0.0005)
    assert found.high - 0.0 == pytest.approx(ONE_SIDE * 0.0005, rel=0.02)


@pytest.mark.parametrize("row", QUANTILES, ids=lambda row: str(row[0]))
def test_the_table_against_scipy(row: tuple[int, float, float, float]) -> None:
    k, mean, of_largest, of_range = row
    assert of_range == pytest.approx(studentized_range.ppf(0.975, k, np.inf), abs=6e-5)
    assert of_largest == pytest.approx(norm.ppf(0.975 ** (1 / k)), abs=6e-5)
    expected, _ = quad(lambda x: x * k * norm.pdf(x) * norm.cdf(x) ** (k - 1), -9.0, 12.0)
    assert mean == pytest.approx(expected, abs=6e-5)


@pytest.mark.parametrize("k", [11, 13, 17, 22, 35, 39])
def test_between_the_rows_of_the_table(k: int) -> None:
    read = [68.0] * k
    found, _ = worked(largest, read, [1.0] * k, 68.0, 1.0)
    assert 68.0 - found.low == pytest.approx(norm.ppf(0.975 ** (1 / k)), abs=1e-3)
    found, _ = worked(spread, read, [1.0] * k, 9.0, math.sqrt(2.0))
    assert 9.0 - found.low == pytest.approx(studentized_range.ppf(0.975, k, np.inf), abs=1e-3)


def test_the_bias_goes_smoothly_as_two_readings_part() -> None:
    """In full to 2·u of the difference, none from 2.5; never a step of 1 % of u for 1 % of u."""
    gaps = np.arange(0.0, 5.0, 0.01)
    told = [worked(largest, (68.0, 68.0 + g), [1.0, 1.0], 68.0 + g, 1.0)[0] for g in gaps]
    below = np.array([68.0 + g - one.low for g, one in zip(gaps, told, strict=True)])
    root = math.sqrt(2.0)
    assert below[gaps <= 2.0 * root] == pytest.approx(2.2390, rel=1e-4)
    assert below[gaps >= 2.5 * root] == pytest.approx(ONE_SIDE, rel=1e-6)
    assert np.all(np.diff(below) < 1e-9)
    assert np.max(np.abs(np.diff(below))) < 0.01
    given = np.array([bool(one.given) for one in told])
    assert given[gaps <= 2.0 * root].all()
    assert not given[gaps >= 2.5 * root].any()


def test_a_column_gives_what_its_rows_give() -> None:
    chance = np.random.default_rng(7)
    read = 68.0 + 0.002 * chance.standard_normal((12, 5))
    us = 0.0005 + 0.001 * chance.random(5)
    for make in (largest, smallest, spread):
        one, contributions = contributed(make, read[0], us, shared=0.002)
        column = make(read)
        many = push(column, contributions[:, np.newaxis])
        assert many is not None
        assert one.side == column.side
        told = interval(read.max(axis=-1), 0.001, [many])
        for row in range(12):
            single, alone = worked(make, read[row], us, read[row].max(), 0.001, shared=0.002)
            assert many.shift[row] == pytest.approx(alone.shift, rel=1e-9)
            assert told.low[row] == pytest.approx(single.low, rel=1e-12)
            assert told.high[row] == pytest.approx(single.high, rel=1e-12)
            assert told.given[row] == single.given


sizes = st.lists(st.floats(-0.01, 0.01), min_size=2, max_size=12)
errors = st.floats(1e-4, 5e-3)


@given(sizes, errors, st.floats(0.0, 5e-3), st.randoms(use_true_random=False))
def test_what_holds_of_any_readings(
    read: list[float], u: float, shared: float, chance: Any
) -> None:
    """The result lies inside; a side is never narrower than 1.96·u; order and a shift are none."""
    us, low, high = [u] * len(read), min(read), max(read)
    both = math.hypot(u, shared)
    for make, value, own in (
        (largest, high, both),
        (smallest, low, both),
        (spread, high - low, u * math.sqrt(2.0)),
    ):
        found, pushed = worked(make, read, us, value, own, shared)
        assert value >= found.low
        assert found.high - value >= ONE_SIDE * own * (1 - 1e-4)
        assert found.low == 0.0 or value - found.low >= ONE_SIDE * own * (1 - 1e-4)
        # No wider than if all of the error were each reading's own, and all of them tied.
        assert value - found.low <= studentized_range.ppf(0.975, 12, np.inf) * own
        other = chance.sample(read, len(read))
        again, _ = worked(make, [v + 0.5 for v in other], us, value, own, shared)
        assert (again.low, again.high) == pytest.approx((found.low, found.high), abs=1e-8)
        if high - low <= 2.0 * math.sqrt(2.0) * u:
            assert pushed.open
            assert found.given or shared > 2.0 * u


def test_one_candidate_or_no_uncertainty_is_no_extreme() -> None:
    assert push(largest([68.0]), np.ones((1, 1))) is None
    assert push(largest([68.0, 68.0]), np.ones((0, 2))) is None
    assert push(spread([68.0]), np.ones((1, 0))) is None


def test_the_interval_is_no_rule_to_ask_for() -> None:
    assert BY_INTERVAL not in RULES
