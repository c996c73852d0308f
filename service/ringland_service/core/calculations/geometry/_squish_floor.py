"""The floor that shops keep for squish clearance, by cycle and size of cylinder."""

from dataclasses import replace
from typing import Any

import numpy as np

from ringland_service.core.metrology.conformity import at_most, is_column
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number

# Largest swept volume of a cylinder, cc, up to which a row of the table holds.
SIZES: dict[str, tuple[tuple[float, str], ...]] = {
    "two_stroke": ((65.0, "to_65_cc"), (125.0, "to_125_cc"), (250.0, "to_250_cc")),
    "four_stroke": ((125.0, "to_125_cc"),),
}
LARGER = "larger"


def squish_floor(cycle: str | None, swept_cc: Number | None) -> Limit | None:
    """Return the floor for a cylinder, or None where cycle or size is not known."""
    if cycle is None or swept_cc is None:
        return None
    rows = [(most_cc, LIMITS[f"squish.{cycle}.{name}"]) for most_cc, name in SIZES[cycle]]
    last = LIMITS[f"squish.{cycle}.{LARGER}"]
    if not is_column(swept_cc):
        return next((row for most, row in rows if at_most(swept_cc, most)), last).limit()
    held: list[Any] = [at_most(swept_cc, most_cc) for most_cc, _ in rows]
    low = np.select(held, [row.low or 0.0 for _, row in rows], default=last.low or 0.0)
    return replace(last.limit(), low=low, source=f"by size of cylinder; {last.source}")


def floor_in_force(given: Limit | None, usual: Limit | None) -> Limit | None:
    """Return the lower side of the request's own floor, else the usual one."""
    if given is None or given.low is None:
        return usual
    return replace(given, high=None)
