"""A bore survey read: depths in order, where the extremes stand, and the shape they make."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TypeVar

import numpy as np

from ringland_service.core.engines.survey import Gaps, Survey
from ringland_service.core.formulas import bore

Found = TypeVar("Found")
PIN, THRUST = "pin", "thrust"
AXES: dict[str, str] = {PIN: "along the piston pin", THRUST: "across the piston pin"}

# Below this a bore counts as straight and round: what a fresh one may have.
# common practice, no source
SHAPE_FROM_MM = 0.010
DUST_MM = 1e-9
SHAPES: dict[str, str] = {
    "straight": "straight: no more taper than a fresh bore may have",
    "tapered": "tapered from one end to the other",
    "barrel": "barrel: wider in the middle than at both ends",
    "hourglass": "hourglass: narrower in the middle than at both ends",
    "bell_mouth": "bell-mouth: one end flares by more than all the rest differs",
}
SECTIONS: dict[str, str] = {
    "round": "round between the two axes; a two-point gauge does not see three lobes",
    "oval": "oval: the two axes differ by more than in a fresh bore",
}


@dataclass(frozen=True)
class Reading:
    """One reading of the survey."""

    depth_mm: float
    axis: str
    bore_mm: float


@dataclass(frozen=True)
class Level:
    """Both readings of one depth."""

    depth_mm: float
    pin_mm: float
    thrust_mm: float

    @property
    def mean_mm(self) -> float:
        """Mean of the two axes."""
        return (self.pin_mm + self.thrust_mm) / 2

    @property
    def out_of_round_mm(self) -> float:
        """Difference of the two axes."""
        return float(bore.out_of_round_mm(self.pin_mm, self.thrust_mm))


def on_axis(survey: Survey, axis: str) -> list[Reading]:
    """Return the readings of one axis from the top down; gaps are left out."""
    values: Gaps = survey.pin_axis_mm if axis == PIN else survey.thrust_axis_mm
    pairs = zip(survey.depth_mm, values, strict=True)
    found = [Reading(depth, axis, value) for depth, value in pairs if value is not None]
    return sorted(found, key=lambda reading: reading.depth_mm)


def all_readings(survey: Survey) -> list[Reading]:
    """Return all readings, the thrust axis first: of equals, it and the top one are named."""
    found = on_axis(survey, THRUST) + on_axis(survey, PIN)
    return sorted(found, key=lambda reading: reading.depth_mm)


def leading(found: Sequence[Found], size: Callable[[Found], float]) -> Found:
    """Return the first of the largest; what a conversion of units leaves apart counts as equal."""
    most = max(map(size, found))
    return next(one for one in found if size(one) >= most - DUST_MM)


def levels(survey: Survey) -> list[Level]:
    """Return the depths where both axes were read, from the top down."""
    rows = zip(survey.depth_mm, survey.pin_axis_mm, survey.thrust_axis_mm, strict=True)
    both = [Level(d, p, t) for d, p, t in rows if p is not None and t is not None]
    return sorted(both, key=lambda level: level.depth_mm)


def taper_mm(readings: list[Reading]) -> float | None:
    """Return the taper of one axis; None with fewer than two readings on it."""
    if len(readings) < 2:
        return None
    return float(bore.taper_mm(np.array([reading.bore_mm for reading in readings])))


def signed_taper_mm(readings: list[Reading]) -> float | None:
    """Return top less bottom of one axis; None with fewer than two readings on it."""
    if len(readings) < 2:
        return None
    return float(bore.signed_taper_mm(readings[0].bore_mm, readings[-1].bore_mm))


def _middle_mm(found: list[Level]) -> float:
    """Return the mean bore half-way down: of two depths where their number is even."""
    half = len(found) // 2
    if len(found) % 2 == 0:
        return (found[half - 1].mean_mm + found[half].mean_mm) / 2
    centre = (found[0].depth_mm + found[-1].depth_mm) / 2
    nearest: Level = min(found[1:-1], key=lambda level: abs(level.depth_mm - centre))
    return nearest.mean_mm


def barrel_mm(found: list[Level]) -> float | None:
    """Return middle less ends; None with fewer than three depths read on both axes."""
    if len(found) < 3:
        return None
    return float(bore.barrel_mm(found[0].mean_mm, _middle_mm(found), found[-1].mean_mm))


def shape(found: list[Level]) -> str | None:
    """Return the word for the bore lengthwise; None with fewer than two depths on both axes."""
    if len(found) < 2:
        return None
    means = [level.mean_mm for level in found]
    if _flares(means) or _flares(means[::-1]):
        return "bell_mouth"
    if len(found) > 2:
        middle = _middle_mm(found)
        barrel = float(bore.barrel_mm(means[0], middle, means[-1]))
        if abs(barrel) > SHAPE_FROM_MM + DUST_MM and not _between(means[0], middle, means[-1]):
            return "barrel" if barrel > 0 else "hourglass"
    return "tapered" if max(means) - min(means) > SHAPE_FROM_MM + DUST_MM else "straight"


def _between(top_mm: float, middle_mm: float, bottom_mm: float) -> bool:
    return min(top_mm, bottom_mm) <= middle_mm <= max(top_mm, bottom_mm)


def _flares(means_mm: list[float]) -> bool:
    """Return whether the first mean stands out by more than all the others differ."""
    if len(means_mm) < 3:
        return False
    rest = means_mm[1:]
    flare = means_mm[0] - rest[0]
    return flare > max(SHAPE_FROM_MM, max(rest) - min(rest)) + DUST_MM


def section_word(found: list[Level]) -> str | None:
    """Return whether the bore is oval; None where no depth was read on both axes."""
    if not found:
        return None
    worst = max(level.out_of_round_mm for level in found)
    return "oval" if worst > SHAPE_FROM_MM + DUST_MM else "round"
