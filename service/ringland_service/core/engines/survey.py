"""A bore survey as it is written down: depths, and the bore on two axes at each."""

import itertools
from collections.abc import Sequence
from typing import TypeAlias, cast

import numpy as np
from numpy.typing import NDArray

from ringland_service.core.declare import readings, record
from ringland_service.core.numbers import Column, Number
from ringland_service.core.quantities import lengths

Gaps = tuple[float | None, ...]
# Of one survey; of one whose ends or depths are columns a column of counts.
Count: TypeAlias = np.int_ | NDArray[np.int_]
# Depths that differ by less are one depth: no gauge is held closer (common practice, no source).
SAME_DEPTH_MM = 0.05
# Less what a conversion of units may move a depth by.
ONE_DEPTH_MM = SAME_DEPTH_MM - 1e-6


@record
class Survey:
    """Bore readings by depth, the bore gauge rocked to its smallest value at each."""

    depth_mm: tuple[float, ...] = readings(
        lengths.DEPTH,
        "depths below the deck; on a two-stroke clear of the port windows",
        least=2,
        most=20,
        example=(8.0, 25.0, 45.0, 65.0, 85.0),
    )
    pin_axis_mm: Gaps = readings(
        lengths.BORE,
        "bore along the piston pin at each depth, as a diameter",
        least=2,
        most=20,
        gaps=True,
        example=(68.062, 68.048, 68.034, 68.022, 68.012),
    )
    thrust_axis_mm: Gaps = readings(
        lengths.BORE,
        "bore across the piston pin (thrust) at each depth, as a diameter",
        least=2,
        most=20,
        gaps=True,
        example=(68.094, 68.076, 68.052, 68.034, 68.016),
    )


def same_depth(one_mm: float, other_mm: float) -> bool:
    """Return whether two depths are one: less than 0.05 mm apart."""
    return abs(one_mm - other_mm) < ONE_DEPTH_MM


def uneven(survey: Survey) -> bool:
    """Return whether the three lists differ in length."""
    return not len(survey.depth_mm) == len(survey.pin_axis_mm) == len(survey.thrust_axis_mm)


def depth_repeated(survey: Survey) -> bool:
    """Return whether a depth stands in the list twice, told a little differently or not."""
    depths = sorted(survey.depth_mm)
    return any(same_depth(one, other) for one, other in itertools.pairwise(depths))


def depth_without_reading(survey: Survey) -> bool:
    """Return whether neither axis was read at some depth."""
    pairs = zip(survey.pin_axis_mm, survey.thrust_axis_mm, strict=False)
    return any(pin is None and thrust is None for pin, thrust in pairs)


def _within(depths_mm: Column, from_mm: Number | None, to_mm: Number | None) -> NDArray[np.bool_]:
    """Return which depths lie between two depths, both included; a row for each row of a column.

    A depth that is one with an end lies there: so a reading at the end stays in while the
    uncertainty of either moves it.
    """
    within: NDArray[np.bool_] = np.ones(depths_mm.shape, dtype=bool)
    if from_mm is not None:
        within = within & (depths_mm > np.asarray(from_mm)[..., np.newaxis] - ONE_DEPTH_MM)
    if to_mm is not None:
        within = within & (depths_mm < np.asarray(to_mm)[..., np.newaxis] + ONE_DEPTH_MM)
    return within


def depths_between(survey: Survey, from_mm: Number | None, to_mm: Number | None) -> Count:
    """Return how many surveyed depths lie between two depths, both included; None is open."""
    count: Count = np.sum(_within(np.array(survey.depth_mm), from_mm, to_mm), axis=-1)
    return count


def _read(survey: Survey) -> tuple[Column, Column]:
    """Return the depth of each reading of either axis, and the reading; gaps are left out.

    Where readings are columns themselves, a row for each of their rows.
    """
    axes = (survey.pin_axis_mm, survey.thrust_axis_mm)
    pairs = [pair for axis in axes for pair in zip(survey.depth_mm, axis, strict=False)]
    read = [(depth, bore) for depth, bore in pairs if bore is not None]
    return _side_by_side([depth for depth, _ in read]), _side_by_side([bore for _, bore in read])


def _side_by_side(values: Sequence[Number]) -> Column:
    """Return numbers as one array; of columns among them each row, readings along the last axis."""
    if np.ndarray in set(map(type, values)):
        # A column in one place makes rows of all: the other readings stay the same in each.
        return np.stack(np.broadcast_arrays(*values), axis=-1)
    return np.array(values)


def readings_between(
    survey: Survey, from_mm: Number | None, to_mm: Number | None
) -> tuple[list[float], NDArray[np.bool_]]:
    """Return the readings of both axes, and which of them lie between two depths.

    Parameters
    ----------
    survey : Survey
    from_mm, to_mm : float, array or None
        Depths below the deck; None leaves that end open [mm].

    Returns
    -------
    list of float or array, array of bool
        Diameters [mm]; a row for each row of a column.
    """
    axes = (survey.pin_axis_mm, survey.thrust_axis_mm)
    bores = [bore for axis in axes for bore in axis if bore is not None]
    return bores, _within(_read(survey)[0], from_mm, to_mm)


def largest_between_mm(survey: Survey, from_mm: Number | None, to_mm: Number | None) -> Number:
    """Return the largest bore of either axis between two depths, both included.

    Parameters
    ----------
    survey : Survey
    from_mm, to_mm : float, array or None
        Depths below the deck; None leaves that end open [mm].

    Returns
    -------
    float or array
        Diameter; -inf where no reading lies there [mm].
    """
    depths, bores = _read(survey)
    # Not by selection: in a column each row may have other depths within the ends.
    inside = np.where(_within(depths, from_mm, to_mm), bores, -np.inf)
    return cast(Number, np.max(inside, axis=-1, initial=-np.inf))


def smallest_between_mm(survey: Survey, from_mm: Number | None, to_mm: Number | None) -> Number:
    """Return the smallest bore of either axis between two depths; see ``largest_between_mm``."""
    depths, bores = _read(survey)
    inside = np.where(_within(depths, from_mm, to_mm), bores, np.inf)
    return cast(Number, np.min(inside, axis=-1, initial=np.inf))


def mean_between_mm(survey: Survey, from_mm: Number | None, to_mm: Number | None) -> Number:
    """Return the mean of the readings of both axes between two depths, at least one of them."""
    depths, bores = _read(survey)
    within = _within(depths, from_mm, to_mm)
    return cast(Number, np.sum(np.where(within, bores, 0.0), axis=-1) / np.sum(within, axis=-1))
