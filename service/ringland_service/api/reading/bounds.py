"""Bounds of a quantity in each unit: the figures that the schema states and the reader compares.

Bounds are compared in the caller's own unit. Each is the declared bound, converted exactly and
rounded once to the nearest float: what the OpenAPI document allows is exactly what the service
takes, and one size or pressure is taken, or refused, alike in every unit.
"""

from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.declare.significant import as_written
from ringland_service.units import unit

# Digits that a message shows at least, and at most: as many as tell any two floats apart.
FEWEST_DIGITS, MOST_DIGITS = 6, 17
LEAST_SHARE = Fraction(1, 10**8)


@dataclass(frozen=True)
class Bounds:
    """Bounds in one unit: of the value, and of its expanded uncertainty."""

    low: float
    high: float
    least_uncertainty: float
    most_uncertainty: float


@cache
def bounds(of: QuantityType, symbol: str) -> Bounds:
    """Return the bounds of a quantity in one of its units."""
    measure = unit(of.kind, symbol)
    low, high = as_written(of.low), as_written(of.high)
    tenth = (high - low) / 10 / measure.ratio
    return Bounds(
        low=float((low - measure.origin) / measure.ratio),
        high=float((high - measure.origin) / measure.ratio),
        least_uncertainty=float(tenth * LEAST_SHARE),
        most_uncertainty=float(tenth),
    )


def apart(number: float, bound: float) -> tuple[str, str]:
    """Return a number and the bound that it breaks as text, in as few digits as tell them apart."""
    for digits in range(FEWEST_DIGITS, MOST_DIGITS):
        shown, limit = f"{number:.{digits}g}", f"{bound:.{digits}g}"
        if (float(shown) < float(limit)) == (number < bound) and shown != limit:
            return shown, limit
    return repr(float(number)), repr(float(bound))


def outside(number: float, low: float, high: float, symbol: str) -> str:
    """Return in words how a number lies outside its bounds."""
    if number < low:
        (shown, least), most = apart(number, low), f"{high:.{FEWEST_DIGITS}g}"
    else:
        (shown, most), least = apart(number, high), f"{low:.{FEWEST_DIGITS}g}"
    return f"{shown} {symbol} is outside {least} to {most} {symbol}"
