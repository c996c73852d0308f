"""Expanded uncertainties (k = 2) and 95 % intervals, and those of what is shown without a unit.

A bare number stays a bare number on the wire; its uncertainty stands beside the results, by name.
So does its interval.
"""

from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from typing import Any

import numpy as np

from ringland_service.api.shapes.members import Shape, members
from ringland_service.core.declare import declared
from ringland_service.core.declare.fields import ResultField
from ringland_service.core.metrology.extremes import Interval
from ringland_service.engine.intervals import ends
from ringland_service.units import Unit

ONE = Fraction(1)


def expanded_in(u: Any, ratio: Fraction) -> float:
    """Return the expanded uncertainty of u in a unit; one stated comes back as stated."""
    if isinstance(u, Fraction):
        return float(2 * u / ratio)
    return float(2.0 * u / float(ratio))


def expanded(u: Any) -> Any:
    """Return the expanded uncertainty of one entry, or of each of a list; None without any."""
    if isinstance(u, (tuple, list, np.ndarray)):
        return [expanded(one) for one in u]
    return expanded_in(u, ONE) if u else None


@cache
def bare(record: type) -> Mapping[str, str]:
    """Return the public name of each result that is shown without a unit, by name."""
    known = members(record)
    return {
        name: field.public(name)
        for name, field in declared(record).items()
        if isinstance(field, ResultField)
        if known[field.public(name)].shape in (Shape.PLAIN, Shape.LIST)
    }


def told_interval(found: Any, unit: Unit | None) -> Any:
    """Return low and high as JSON in a unit; of a list those of each, None where there are none."""
    if isinstance(found, list):
        return [told_interval(one, unit) for one in found]
    if found is None:
        return None
    low, high = found if unit is None else map(unit.from_canonical, found)
    return {"low": float(low), "high": float(high)}


def intervals(outputs: Any, given: Mapping[str, Interval], prefix: str = "") -> dict[str, Any]:
    """Return the interval of each bare result that has one, by public name."""
    if not given:
        return {}
    record: type = type(outputs)
    return {
        prefix + public: told_interval(ends(given[name]), None)
        for name, public in bare(record).items()
        if name in given and getattr(outputs, name) is not None
    }


def uncertainties(outputs: Any, u: Mapping[str, Any], prefix: str = "") -> dict[str, Any]:
    """Return the expanded uncertainty of each bare result that has one, by public name."""
    if not u:
        return {}
    record: type = type(outputs)
    return {
        prefix + public: expanded(u[name])
        for name, public in bare(record).items()
        if name in u and getattr(outputs, name) is not None
    }
