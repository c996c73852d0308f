"""Digits worth showing: as many as the number given carries, or as the field suggests."""

import math
from fractions import Fraction
from typing import Any

from ringland_service.core.declare.fields import (
    Field,
    Quantified,
    QuantityField,
    ResultField,
    kind_of,
)
from ringland_service.core.declare.kinds import Kind


def as_written(number: float) -> Fraction:
    """Return a number exactly as its shortest decimal text has it: 0.1 is a tenth."""
    return Fraction(repr(float(number)))


def significant_digits(number: float) -> int:
    """Return the digits that a number carries as written, trailing zeros of a whole one aside."""
    mantissa = f"{abs(number):.15g}".partition("e")[0].replace(".", "").strip("0")
    return max(len(mantissa), 1)


def decimals(number: float, digits: int) -> int:
    """Return the decimals that show a number with so many significant digits."""
    if number == 0.0:
        return 0
    return max(digits - 1 - math.floor(math.log10(abs(number))), 0)


def kind_and_digits(field: Field, inputs: Any) -> tuple[Kind | None, int | None]:
    """Return the kind of a field's value and its suggested decimals in the canonical unit.

    A result that takes its kind from an input of any kind takes the digits from there too.
    """
    if isinstance(field, ResultField):
        if field.kind_of:
            of: Quantified = getattr(inputs, field.kind_of)
            return of.kind, decimals(of.value, significant_digits(of.given) + 1)
        return field.kind, field.digits
    return kind_of(field), field.type.digits if isinstance(field, QuantityField) else None
