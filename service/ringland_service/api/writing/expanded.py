"""Expanded uncertainties (k = 2) of what an answer shows without a unit.

A bare number stays a bare number on the wire; its uncertainty stands beside the results, by name.
"""

from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from typing import Any

import numpy as np

from ringland_service.api.shapes.members import Shape, members
from ringland_service.core.declare import declared
from ringland_service.core.declare.fields import ResultField

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
