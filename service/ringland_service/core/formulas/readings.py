"""Compression readings in numbers: level, spread of cylinders, build-up over strokes.

Lists of readings lie along the last axis, so a column of engines is a two-dimensional array.
"""

from typing import cast

import numpy as np
from numpy.typing import NDArray

from ringland_service.core.formulas.elementary import absolute, insist_positive, maximum
from ringland_service.core.numbers import Column, Number

FULL_SHARE = 0.95
# Readings converted from another unit carry rounding in their last digits.
ROUNDING = 1e-9


def level_ratio(reading_kpa: Number, expected_kpa: Number) -> Number:
    """Compare a reading with the expected pressure.

    Parameters
    ----------
    reading_kpa : float or array
        Compression reading, gauge [kPa].
    expected_kpa : float or array
        Pressure expected of a sound cylinder on the spot, gauge [kPa].

    Returns
    -------
    float or array
        Level ratio [1].

    Raises
    ------
    OutOfBounds
        When the expected pressure is not above zero.

    References
    ----------
    Common practice.
    """
    insist_positive("expected_kpa", expected_kpa)
    return reading_kpa / expected_kpa


def spread_percent(readings_kpa: Column) -> Number:
    """Spread between the cylinders of one engine.

    Parameters
    ----------
    readings_kpa : array
        One reading per cylinder along the last axis, gauge [kPa].

    Returns
    -------
    float or array
        Highest less lowest, as a share of the highest [%].

    Raises
    ------
    OutOfBounds
        When the highest reading is not above zero.

    References
    ----------
    Common practice.
    """
    return 100 * (1 - lowest_over_highest(readings_kpa))


def lowest_over_highest(readings_kpa: Column) -> Number:
    """Lowest reading as a share of the highest.

    Parameters
    ----------
    readings_kpa : array
        One reading per cylinder along the last axis, gauge [kPa].

    Returns
    -------
    float or array
        Ratio [1].

    Raises
    ------
    OutOfBounds
        When the highest reading is not above zero.

    References
    ----------
    Common practice.
    """
    return cast(Number, np.min(each_over_highest(readings_kpa), axis=-1))


def each_over_highest(readings_kpa: Column) -> Column:
    """Every reading as a share of the highest of its engine.

    Parameters
    ----------
    readings_kpa : array
        One reading per cylinder along the last axis, gauge [kPa].

    Returns
    -------
    array
        Ratios, in the order of the readings [1].

    Raises
    ------
    OutOfBounds
        When the highest reading is not above zero.

    References
    ----------
    Common practice.
    """
    highest_kpa = np.max(readings_kpa, axis=-1, keepdims=True)
    insist_positive("readings_kpa", highest_kpa)
    return np.asarray(readings_kpa / highest_kpa)


def mismatch_percent(first_kpa: Number, second_kpa: Number) -> Number:
    """Difference of two neighbouring cylinders.

    Parameters
    ----------
    first_kpa, second_kpa : float or array
        Readings of two cylinders, gauge [kPa].

    Returns
    -------
    float or array
        Difference as a share of the higher one [%].

    Raises
    ------
    OutOfBounds
        When neither reading is above zero.

    References
    ----------
    Common practice.
    """
    higher_kpa = maximum(first_kpa, second_kpa)
    insist_positive("readings_kpa", higher_kpa)
    return 100 * absolute(first_kpa - second_kpa) / higher_kpa


def first_over_expected(readings_kpa: Column, expected_kpa: Number) -> Number:
    """Compare the reading after the first compression stroke with the expected pressure.

    Parameters
    ----------
    readings_kpa : array
        One reading per compression stroke along the last axis, gauge [kPa].
    expected_kpa : float or array
        Pressure expected of a sound cylinder on the spot, gauge [kPa].

    Returns
    -------
    float or array
        Ratio [1].

    Raises
    ------
    OutOfBounds
        When the expected pressure is not above zero.

    References
    ----------
    Common practice, old workshop teaching.
    """
    return level_ratio(readings_kpa[..., 0], expected_kpa)


def last_over_expected(readings_kpa: Column, expected_kpa: Number) -> Number:
    """Compare the reading after the last compression stroke with the expected pressure.

    Parameters
    ----------
    readings_kpa : array
        One reading per compression stroke along the last axis, gauge [kPa].
    expected_kpa : float or array
        Pressure expected of a sound cylinder on the spot, gauge [kPa].

    Returns
    -------
    float or array
        Ratio [1].

    Raises
    ------
    OutOfBounds
        When the expected pressure is not above zero.

    References
    ----------
    Common practice, old workshop teaching.
    """
    return level_ratio(readings_kpa[..., -1], expected_kpa)


def first_over_last(readings_kpa: Column) -> Number:
    """First reading as a share of the last.

    Parameters
    ----------
    readings_kpa : array
        One reading per compression stroke along the last axis, gauge [kPa].

    Returns
    -------
    float or array
        Ratio [1].

    Raises
    ------
    OutOfBounds
        When the last reading is not above zero.

    References
    ----------
    Common practice, old workshop teaching.
    """
    insist_positive("readings_kpa", readings_kpa[..., -1])
    return cast(Number, readings_kpa[..., 0] / readings_kpa[..., -1])


def build_up_quotient(readings_kpa: Column, baseline_first_over_last: Number) -> Number:
    """First over last, against the same gauge and hose on a sound cylinder of like size.

    Parameters
    ----------
    readings_kpa : array
        One reading per compression stroke along the last axis, gauge [kPa].
    baseline_first_over_last : float or array
        First over last of the sound cylinder [1].

    Returns
    -------
    float or array
        Quotient q [1].

    Raises
    ------
    OutOfBounds
        When the last reading or the baseline is not above zero.

    References
    ----------
    Common practice, low confidence.
    """
    insist_positive("baseline_first_over_last", baseline_first_over_last)
    return first_over_last(readings_kpa) / baseline_first_over_last


def strokes_to_95_percent(readings_kpa: Column) -> int | NDArray[np.int64]:
    """Count the strokes until a reading comes to 95 % of the last one.

    Parameters
    ----------
    readings_kpa : array
        One reading per compression stroke along the last axis, gauge [kPa].

    Returns
    -------
    int or array of int
        Strokes.

    Raises
    ------
    OutOfBounds
        When the last reading is not above zero.

    References
    ----------
    Common practice.
    """
    last_kpa = readings_kpa[..., -1:]
    insist_positive("readings_kpa", last_kpa)
    reached = readings_kpa >= FULL_SHARE * (1 - ROUNDING) * last_kpa
    stroke = np.asarray(np.argmax(reached, axis=-1) + 1)
    return int(stroke) if stroke.ndim == 0 else stroke
