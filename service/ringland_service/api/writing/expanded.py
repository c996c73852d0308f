"""Expanded uncertainties (k = 2) and 95 % intervals, and those of what is shown without a unit.

A bare number stays a bare number on the wire; its uncertainty stands beside the results, by name.
So does its interval.
"""

from collections.abc import Mapping
from functools import cache

from ringland_service.api.json_types import AnswerJson, JsonObject
from ringland_service.api.shapes.answer_json import expanded, told_interval
from ringland_service.api.shapes.members import results
from ringland_service.core.metrology.extremes import Interval
from ringland_service.engine.intervals import ends


@cache
def bare(record: type) -> Mapping[str, str]:
    """Return the public name of each result that is shown without a unit, by name."""
    found = results(record).items()
    return {name: field.public(name) for name, (field, shape) in found if shape.is_bare}


def intervals(outputs: object, given: Mapping[str, Interval], prefix: str = "") -> JsonObject:
    """Return the interval of each bare result that has one, by public name."""
    if not given:
        return {}
    record: type = type(outputs)
    return {
        prefix + public: told_interval(ends(given[name]), None)
        for name, public in bare(record).items()
        if name in given and getattr(outputs, name) is not None
    }


def uncertainties(outputs: object, u: AnswerJson, prefix: str = "") -> JsonObject:
    """Return the expanded uncertainty of each bare result that has one, by public name."""
    if not u:
        return {}
    record: type = type(outputs)
    return {
        prefix + public: expanded(u[name])
        for name, public in bare(record).items()
        if name in u and getattr(outputs, name) is not None
    }
