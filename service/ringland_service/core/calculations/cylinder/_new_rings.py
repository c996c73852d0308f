"""A new ring's gap: the one wanted, and what is to be done about the one measured."""

from dataclasses import dataclass
from typing import Any, cast

import numpy as np

from ringland_service.core.calculations.cylinder.ring_checks import usual_range
from ringland_service.core.declare.usual import Usual
from ringland_service.core.formulas import rings
from ringland_service.core.metrology.conformity import beyond, is_column
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number

FILE, LEAVE, TOO_LARGE = "file", "leave", "too_large"
WHAT_TO_DO: dict[str, str] = {
    FILE: "too small: file it",
    LEAVE: "inside its range: nothing is filed",
    TOO_LARGE: "larger than its range: take another ring, since none can be put back",
}


def least_mm(row: str, factor: Number, bore_mm: Number, own: Limit) -> Number:
    """Return the gap under which a new ring is filed: as stated, as told by a factor, as usual."""
    if own.low is not None:
        return own.low
    least: Any = factor * bore_mm
    if isinstance(factor, Usual):
        least = LIMITS[row].limit(bore_mm).low
    return least if own.high is None else cast(Number, np.minimum(least, own.high))


def what_to_do(measured_mm: Number, least: Number, most: Number | None) -> Any:
    """Return what a measured gap calls for; a word, or a column of them."""
    small, large = beyond(least, measured_mm), False
    if most is not None:
        large = beyond(measured_mm, most)
    if is_column(small) or is_column(large):
        return np.where(small, FILE, np.where(large, TOO_LARGE, LEAVE))
    return FILE if small else TOO_LARGE if large else LEAVE


@dataclass(frozen=True)
class NewRing:
    """What a new ring's gap should be, and what is to be done about the one measured."""

    wanted_mm: Number
    file_mm: Number | None
    what_to_do: Any


def new_ring(
    row: str,
    measured_mm: Number | None,
    factor: Number,
    bore_mm: Number,
    own: Limit,
    not_under_mm: Number = 0.0,
) -> NewRing:
    """Return the gap wanted, and the filing where the one measured lies under its range.

    Inside the range nothing is filed, and nothing is ever filed past a stated largest gap. Where
    the maker states no least gap it is not under ``not_under_mm``, as far as the range lets it.
    """
    wanted: Any = own.low
    if own.low is None:
        by_factor: Any = rings.wanted_gap_mm(factor, bore_mm)
        top: Any = not_under_mm
        reach: Any = usual_range(row, factor, bore_mm).high
        wanted = np.maximum(by_factor, np.minimum(top, reach))
    if own.high is not None:
        wanted = np.minimum(wanted, own.high)
    if measured_mm is None:
        return NewRing(wanted, None, None)
    least = least_mm(row, factor, bore_mm, own)
    stated = own.low is not None or own.high is not None
    most = own.high if stated else usual_range(row, factor, bore_mm).high
    filing = rings.filing_mm(wanted, measured_mm)
    small = beyond(least, measured_mm)
    filed = np.where(small, filing, 0.0) if is_column(small) else filing if small else 0.0
    return NewRing(wanted, filed, what_to_do(measured_mm, least, most))
