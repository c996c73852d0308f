import numpy as np
import pytest
from formula_checks import number
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import readings

FOUR = np.array([1180.0, 760.0, 790.0, 1165.0])
SIX_STROKES = np.array([310.0, 520.0, 660.0, 740.0, 775.0, 780.0])

lists = st.lists(number(1, 2500), min_size=2, max_size=12)
rising = lists.map(sorted)


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_level() -> None:
    # By hand: 905 / 1072.
    assert readings.level_ratio(905.0, 1072.0) == near(0.844216)


def test_worked_spread() -> None:
    # By hand: (1180 - 760) / 1180 = 0.355932; 760/1180; 30/790.
    assert readings.spread_percent(FOUR) == near(35.5932)
    assert readings.lowest_over_highest(FOUR) == near(0.644068)
    expected = [1, 0.644068, 0.669492, 0.987288]
    assert readings.each_over_highest(FOUR) == pytest.approx(expected, rel=2e-5)
    assert readings.mismatch_percent(760.0, 790.0) == near(3.79747)


def test_worked_build_up() -> None:
    # By hand: 310/1080, 780/1080, 310/780, and that over 0.56; 95 % of 780 is 741.
    first = readings.first_over_expected(SIX_STROKES, 1080.0)
    last = readings.last_over_expected(SIX_STROKES, 1080.0)
    assert first == near(0.287037)
    assert last == near(0.722222)
    assert last - first == near(0.435185)
    assert readings.first_over_last(SIX_STROKES) == near(0.397436)
    assert readings.build_up_quotient(SIX_STROKES, 0.56) == near(0.709707)
    strokes = readings.strokes_to_95_percent(SIX_STROKES)
    assert strokes == 5
    assert isinstance(strokes, int)  # one engine gets a count, no array


def test_engines_lie_along_the_first_axis() -> None:
    both = np.array([SIX_STROKES, SIX_STROKES[::-1] + np.arange(6) * 200])
    assert np.shape(readings.spread_percent(both)) == (2,)
    assert readings.each_over_highest(both).shape == (2, 6)
    # By hand: 95 % of 780 is 741; of 1310 it is 1244.5, and the second engine reads 780, 975,
    # 1140, 1260, 1320, 1310.
    assert np.array_equal(readings.strokes_to_95_percent(both), [5, 4])
    assert readings.first_over_expected(both, np.array([1080.0, 780.0])) == pytest.approx(
        [310 / 1080, 1.0]
    )
    assert np.shape(readings.build_up_quotient(both, 0.5)) == (2,)


@given(lists)
def test_spread_against_numpy_statistics(values: list[float]) -> None:
    # Outside check: numpy's peak-to-peak; the rule itself is common practice, no source.
    column = np.array(values)
    expected = 100 * np.ptp(column) / np.max(column)
    assert readings.spread_percent(column) == pytest.approx(expected, abs=1e-11)


@given(lists, number(0.5, 2))
def test_a_gauge_error_in_proportion_cancels(values: list[float], factor: float) -> None:
    column = np.array(values)
    scaled = readings.spread_percent(factor * column)
    assert scaled == pytest.approx(readings.spread_percent(column), abs=1e-11)
    shares = readings.each_over_highest(factor * column)
    assert shares == pytest.approx(readings.each_over_highest(column), rel=1e-14)
    assert np.max(shares) == 1
    assert np.min(shares) == readings.lowest_over_highest(factor * column)


@given(number(1, 2500), number(1, 2500))
def test_mismatch_is_the_spread_of_two(first: float, second: float) -> None:
    found = readings.mismatch_percent(first, second)
    assert found == readings.mismatch_percent(second, first)
    spread = readings.spread_percent(np.array([first, second]))
    assert found == pytest.approx(spread, abs=1e-11)


@given(rising)
def test_strokes_against_a_search(values: list[float]) -> None:
    full = 0.95 * values[-1] * (1 - 1e-9)
    expected = next(n for n, reading in enumerate(values, start=1) if reading >= full)
    assert readings.strokes_to_95_percent(np.array(values)) == expected


@given(rising, number(100, 2000), number(0.1, 1))
def test_build_up_numbers_agree(values: list[float], expected: float, baseline: float) -> None:
    column = np.array(values)
    first = readings.first_over_expected(column, expected)
    last = readings.last_over_expected(column, expected)
    share = readings.first_over_last(column)
    assert share == pytest.approx(first / last, rel=1e-14)
    assert 0 < share <= 1
    quotient = readings.build_up_quotient(column, baseline)
    assert quotient * baseline == pytest.approx(share, rel=1e-14)


@given(number(1, 2500), number(1, 2500))
def test_level_undone(reading: float, expected: float) -> None:
    level = readings.level_ratio(reading, expected)
    assert level * expected == pytest.approx(reading, rel=1e-14)


def test_a_reading_exactly_at_95_percent_counts() -> None:
    # The same readings in another unit and back carry rounding; the stroke must not change.
    psi = 6.894757293168361
    column = np.array([300.0, 703.0, 720.0, 740.0])
    assert readings.strokes_to_95_percent(column) == 2
    there_and_back = column / psi * psi * np.array([1, 1 - 1e-12, 1, 1])
    assert readings.strokes_to_95_percent(there_and_back) == 2
    # Rounding is taken as one part in 1e9; what lies lower by more is lower.
    assert readings.strokes_to_95_percent(column * np.array([1, 1 - 0.9e-9, 1, 1])) == 2
    assert readings.strokes_to_95_percent(column * np.array([1, 1 - 1.5e-9, 1, 1])) == 3


def test_nothing_read() -> None:
    empty = np.array([[900.0, 950.0], [0.0, 0.0]])
    for ask in (
        readings.spread_percent,
        readings.lowest_over_highest,
        readings.each_over_highest,
        readings.first_over_last,
        readings.strokes_to_95_percent,
    ):
        with pytest.raises(OutOfBounds, match="readings_kpa: must be above zero"):
            ask(empty)
    # The last reading is the one that divides, wherever the others stand.
    with pytest.raises(OutOfBounds, match="readings_kpa: must be above zero"):
        readings.first_over_last(np.array([310.0, 520.0, 660.0, 0.0]))
    with pytest.raises(OutOfBounds, match="readings_kpa: must be above zero"):
        readings.mismatch_percent(0.0, 0.0)
    with pytest.raises(OutOfBounds, match="expected_kpa: must be above zero"):
        readings.level_ratio(905.0, 0.0)
    with pytest.raises(OutOfBounds, match="baseline_first_over_last: must be above zero"):
        readings.build_up_quotient(SIX_STROKES, 0.0)
