"""Canonical values as JSON: full floats, a unit on every quantity, suggested decimals beside it."""

from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import cache
from typing import Any

import numpy as np

from ringland_service.api.json_types import Json, JsonObject
from ringland_service.core.declare.fields import Quantified
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.significant import decimals_for, significant_digits
from ringland_service.units import Unit, canonical_unit, us_unit

ONE = Fraction(1)


@cache
def shown_unit(kind: Kind, system: str) -> Unit:
    """Return the unit that a kind is shown in."""
    return us_unit(kind) if system == "us" else canonical_unit(kind)


@cache
def shown_decimals(kind: Kind, decimals: int | None, system: str) -> int:
    """Return the suggested decimals in the unit shown."""
    return max((3 if decimals is None else decimals) + shown_unit(kind, system).decimals, 0)


def expanded_in(u: Any, ratio: Fraction) -> float:
    """Return the expanded uncertainty of u in a unit; one stated comes back as stated."""
    if isinstance(u, Fraction):
        return float(2 * u / ratio)
    return float(2.0 * u / float(ratio))


def expanded(u: Any) -> Json:
    """Return the expanded uncertainty of one entry, or of each of a list; None without any."""
    if isinstance(u, (tuple, list, np.ndarray)):
        return [expanded(one) for one in u]
    return expanded_in(u, ONE) if u else None


def told_interval(found: Any, unit: Unit | None) -> Json:
    """Return low and high as JSON in a unit; of a list those of each, None where there are none."""
    if isinstance(found, list):
        return [told_interval(one, unit) for one in found]
    if found is None:
        return None
    low, high = found if unit is None else map(unit.from_canonical, found)
    return {"low": float(low), "high": float(high)}


def quantity(
    value: float, kind: Kind, decimals: int | None, system: str, u: Any = None
) -> JsonObject:
    """Return a quantity as JSON; ``u`` is its standard uncertainty."""
    unit = shown_unit(kind, system)
    found: JsonObject = {
        "value": float(unit.from_canonical(value)),
        "unit": unit.symbol,
        "decimals": shown_decimals(kind, decimals, system),
    }
    if u is not None:
        found["uncertainty"] = expanded_in(u, unit.ratio)
    return found


def listed(
    values: Sequence[float | None], kind: Kind, decimals: int | None, system: str, u: Any = None
) -> JsonObject:
    """Return a list of quantities as JSON; None where a reading is missing.

    ``u`` is the standard uncertainty of each, or of some by place.
    """
    unit = shown_unit(kind, system)
    found: JsonObject = {
        "values": [None if v is None else float(unit.from_canonical(v)) for v in values],
        "unit": unit.symbol,
        "decimals": shown_decimals(kind, decimals, system),
    }
    each = [u.get(place) for place in range(len(values))] if isinstance(u, Mapping) else u
    if each is not None:
        # A member that nothing uncertain moves has none, as a single value has.
        found["uncertainties"] = [expanded_in(v, unit.ratio) if v else None for v in each]
    return found


def any_quantity(value: Quantified, u: Any = None, as_given: bool = False) -> JsonObject:
    """Return a quantity of any kind in its own unit; an input as it was given."""
    unit = value.unit
    number = float((value.value - unit.offset) / float(unit.ratio))
    number = value.given if as_given else number
    found: JsonObject = {
        "value": number,
        "unit": unit.symbol,
        "decimals": decimals_for(number, significant_digits(value.given) + 1),
    }
    # The uncertainty is that of the number within, where parts are told apart.
    of_value = u["value"] if isinstance(u, Mapping) else u
    if of_value is not None:
        found["uncertainty"] = expanded_in(of_value, unit.ratio)
    return found


def column(
    values: list[Any],
    kind: Kind | None,
    decimals: int | None,
    system: str,
    difference: bool = False,
) -> JsonObject:
    """Return a column as JSON; a ``difference`` (margin, uncertainty) takes no offset."""
    if kind is None:
        return {"values": values}
    unit = shown_unit(kind, system)
    offset = 0.0 if difference else unit.offset
    return {
        "values": [_in_unit(v, offset, unit.factor) for v in values],
        "unit": unit.symbol,
        "decimals": shown_decimals(kind, decimals, system),
    }


def _in_unit(value: Any, offset: float, factor: float) -> Json:
    """Return one entry of a column in the unit shown; a list where the result is one."""
    if isinstance(value, (tuple, list, np.ndarray)):
        return [_in_unit(one, offset, factor) for one in value]
    return None if value is None else float((value - offset) / factor)
