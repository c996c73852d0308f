"""Bounds of a quantity in each unit: the figures that the schema states and the reader compares.

Bounds are compared in the caller's own unit, rounded inward to six digits, so that what the
OpenAPI document allows is exactly what the service takes.
"""

import math
from dataclasses import dataclass
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal
from functools import cache

from ringland_service.core.fields import QuantityType
from ringland_service.units import unit

DIGITS = 6


@dataclass(frozen=True)
class Bounds:
    """Bounds in one unit: of the value, and of its expanded uncertainty."""

    low: float
    high: float
    least_uncertainty: float
    most_uncertainty: float


def rounded(value: float, direction: str) -> float:
    """Return the value rounded to six digits, toward ``direction`` (a decimal rounding mode)."""
    if value == 0:
        return 0.0
    exponent = math.floor(math.log10(abs(value))) - DIGITS + 1
    step = Decimal(1).scaleb(exponent)
    return float((Decimal(value) / step).to_integral_value(direction) * step)


@cache
def bounds(of: QuantityType, symbol: str) -> Bounds:
    """Return the bounds of a quantity in one of its units."""
    measure = unit(of.kind, symbol)
    low, high = measure.from_canonical(of.low), measure.from_canonical(of.high)
    tenth = of.span / 10.0 / measure.factor
    return Bounds(
        low=_kept(low, ROUND_CEILING),
        high=_kept(high, ROUND_FLOOR),
        least_uncertainty=rounded(tenth * 1e-8, ROUND_CEILING),
        most_uncertainty=_kept(tenth, ROUND_FLOOR),
    )


def _kept(value: float, direction: str) -> float:
    """Return the value itself where six digits say it, else rounded inward."""
    plain = float(f"{value:.{DIGITS}g}")
    return plain if abs(plain - value) <= 1e-12 * abs(value) else rounded(value, direction)
