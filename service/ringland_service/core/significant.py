"""Digits worth showing: as many as the number given carries."""

import math


def significant_digits(number: float) -> int:
    """Return the digits that a number carries as written, trailing zeros of a whole one aside."""
    mantissa = f"{abs(number):.15g}".partition("e")[0].replace(".", "").strip("0")
    return max(len(mantissa), 1)


def decimals(number: float, digits: int) -> int:
    """Return the decimals that show a number with so many significant digits."""
    if number == 0.0:
        return 0
    return max(digits - 1 - math.floor(math.log10(abs(number))), 0)
