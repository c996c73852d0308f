"""Kinds that look alike: what a bare unit was taken for, absolute zero and vacuum."""

from collections.abc import Callable
from fractions import Fraction
from typing import Any

from ringland_service.core.declare import Notice, kinds
from ringland_service.core.declare.fields import Quantified, UnitGiven
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.significant import as_written
from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.air import SEA_LEVEL_KPA

# Exact by definition of the scale: 0 K is -273.15 degC (SI brochure, 9th edition).
ABSOLUTE_ZERO_C = Fraction("-273.15")

TAKEN = {
    "gauge": (
        kinds.PRESSURE_GAUGE,
        "its unit does not say gauge or absolute: taken as gauge pressure here;"
        " write kPa(g), bar(g) or psig, or kPa(a), bar(a) or psia",
    ),
    "absolute": (
        kinds.PRESSURE_ABSOLUTE,
        "its unit does not say gauge or absolute: taken as absolute pressure here;"
        " write kPa(a), bar(a) or psia, or kPa(g), bar(g) or psig",
    ),
    "temperature": (
        kinds.TEMPERATURE,
        "its unit is one of a temperature and of a difference of temperatures: taken as a"
        " temperature, with the zero of its scale; for a difference say kind"
        " temperature_difference",
    ),
}


def _was_taken(name: str, kind: Kind) -> Callable[[Any, Any], bool]:
    def when(inputs: Any, _: Any) -> bool:
        given = getattr(inputs, name)
        told: UnitGiven | None = getattr(given, "unit", given)
        return told is not None and told.taken and told.kind is kind

    return when


def taken_notices(*names: str) -> tuple[Notice, ...]:
    """Return the notices that say, of each input, which kind a bare unit was taken for."""
    return tuple(
        Notice(f"taken_as_{word}", name, _was_taken(name, kind), message)
        for name in names
        for word, (kind, message) in TAKEN.items()
    )


def insist_on_possible(name: str, given: Quantified | None, air_kpa: float | None) -> None:
    """Refuse a temperature below absolute zero, and a pressure below vacuum.

    Raises
    ------
    OutOfBounds
        Names the input; the message says the lowest value there is, in the unit given.
    """
    if given is None:
        return
    lowest, words, right = _lowest(given.kind, air_kpa)
    if lowest is None:
        return
    unit = given.unit
    # As given, to the digit: a step of a numeric derivative below a value at the floor is none.
    if as_written(given.given) * unit.ratio + unit.origin < lowest:
        floor = float((lowest - unit.origin) / unit.ratio)
        message = f"{given.given:.12g} {unit.symbol} is below {words}, {floor:.9g} {unit.symbol}"
        raise OutOfBounds(name, message, right)


def _lowest(kind: Kind, air_kpa: float | None) -> tuple[Fraction | None, str, str]:
    """Return the lowest value of a kind in its canonical unit, in words, and what is right."""
    if kind is kinds.TEMPERATURE:
        right = "a temperature above it; or kind temperature_difference for a difference"
        return ABSOLUTE_ZERO_C, "absolute zero", right
    if kind is kinds.PRESSURE_ABSOLUTE:
        return (
            Fraction(0),
            "vacuum",
            "an absolute pressure of 0 or more; a gauge pressure in kPa(g)",
        )
    if kind is kinds.PRESSURE_GAUGE:
        whose = "the standard one" if air_kpa is None else "the one given"
        air = SEA_LEVEL_KPA if air_kpa is None else air_kpa
        words = f"vacuum (as gauge pressure, with an air pressure of {air:g} kPa, {whose})"
        right = (
            "a gauge pressure above it; or an absolute pressure in kPa(a), or kind"
            " pressure_difference for a difference"
        )
        return -as_written(air), words, right
    return None, "", ""
