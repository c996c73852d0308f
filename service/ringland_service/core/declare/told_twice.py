"""Figures that are told twice: how far apart they may lie before they contradict each other.

A figure told twice agrees within the expanded uncertainty of both together, or within the least
difference that its readings can show where none is stated (common practice, no source).
"""

import math
from collections.abc import Callable, Mapping
from typing import Any

from ringland_service.core.declare.calculation import Agreement, Known
from ringland_service.core.metrology.conformity import beyond

Uncertainties = Mapping[str, float]
# Volumes and pressures without an uncertainty; a bore at one place; a size that is only rounded; a
# base gasket. Common practice, no source.
SHARE = 0.01
BORE_MM, ROUNDED_MM, GASKET_MM = 0.01, 0.0005, 0.01


def together(uncertainties: Uncertainties, *names: str) -> float:
    """Return the expanded uncertainty of a difference (JCGM 100: the squares add up)."""
    return math.sqrt(sum(uncertainties.get(name, 0.0) ** 2 for name in names))


def apart(one: float, other: float, *allowed: float) -> bool:
    """Return whether two figures lie further apart than the largest that is allowed."""
    return bool(beyond(abs(one - other), max(allowed)))


def differ(known: Known, uncertainties: Uncertainties, one: str, other: str, least: float) -> bool:
    """Return whether two known figures lie further apart than their uncertainties allow."""
    return apart(known[one], known[other], together(uncertainties, one, other), least)


def same_figure(one: str, other: str, least: float, **about: Any) -> Agreement:
    """Return the agreement of a figure that is told, or follows, twice."""
    return Agreement(
        (one, other),
        lambda known, uncertainties: differ(known, uncertainties, one, other, least),
        **about,
    )


def of_one_engine(
    one: str, other: str, broken: Callable[[Any, Any], Any], message: str, right: str
) -> Agreement:
    """Return the agreement of two things told of one engine: it holds exactly."""
    return Agreement(
        (one, other), lambda known, _: bool(broken(known[one], known[other])), message, right
    )
