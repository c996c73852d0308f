"""Elementary functions, typed for one number and for a column, and the guard of their domain."""

from typing import cast

import numpy as np
from numpy.typing import NDArray

from ringland_service.core.errors import CoreError, OutOfBounds
from ringland_service.core.numbers import Number


def sqrt(value: Number) -> Number:
    """Square root of each element."""
    return cast(Number, np.sqrt(value))


def power(base: Number, exponent: Number) -> Number:
    """Raise ``base`` to the power ``exponent``, element by element."""
    return cast(Number, np.power(base, exponent))


def absolute(value: Number) -> Number:
    """Value without its sign, of each element."""
    return cast(Number, np.abs(value))


def sine_deg(angle_deg: Number) -> Number:
    """Sine of an angle [deg]."""
    return cast(Number, np.sin(np.radians(angle_deg)))


def cosine_deg(angle_deg: Number) -> Number:
    """Cosine of an angle [deg]."""
    return cast(Number, np.cos(np.radians(angle_deg)))


def arcsine_deg(sine: Number) -> Number:
    """Angle [deg] that has this sine."""
    return cast(Number, np.degrees(np.arcsin(sine)))


def direction_deg(opposite: Number, adjacent: Number) -> Number:
    """Angle [deg] whose tangent is ``opposite / adjacent``; safe where ``adjacent`` is zero."""
    return cast(Number, np.degrees(np.arctan2(opposite, adjacent)))


def maximum(value: Number, floor: Number) -> Number:
    """Return the larger of the two, element by element."""
    return cast(Number, np.maximum(value, floor))


def minimum(value: Number, ceiling: Number) -> Number:
    """Return the smaller of the two, element by element."""
    return cast(Number, np.minimum(value, ceiling))


def insist(
    holds: bool | np.bool_ | NDArray[np.bool_],
    broken: type[CoreError],
    field: str,
    message: str,
    right: str,
) -> None:
    """Raise ``broken`` unless the condition holds for every element.

    State the condition so that it is false for NaN: then no NaN passes.
    """
    # A plain bool needs no reduction: one engine is asked far more often than a column.
    if not (holds if isinstance(holds, bool) else np.all(holds)):
        raise broken(field, message, right)


def insist_positive(field: str, value: Number) -> None:
    """Raise OutOfBounds unless every element is above zero."""
    insist(value > 0, OutOfBounds, field, "must be above zero", "give a number above zero")
