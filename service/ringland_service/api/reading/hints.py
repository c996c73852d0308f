"""What a refusal adds: the form that is right, the slip that is likely, the kind that was meant."""

from ringland_service.api.reading.bounds import bounds
from ringland_service.core.declare.fields import QuantityType
from ringland_service.units import spoken
from ringland_service.vocabulary import OTHER_PRESSURE

MARKED = frozenset(symbol for marked in OTHER_PRESSURE.values() for symbol in marked)


def right_form(of: QuantityType | None, key: str = "value") -> str:
    """Return a quantity as it would be right, in JSON."""
    example = of.example if of else 68.0
    unit = of.kind.unit if of else "mm"
    shown = f"[{example:g}]" if key == "values" else f"{example:g}"
    return f'{{"{key}": {shown}, "unit": "{unit}"}}'


def hint(of: QuantityType, number: float, symbol: str) -> str:
    """Return what a refused number calls for: other units, or the kind that its unit has here."""
    return _inches(of, number, symbol) + taken_for(of, symbol)


def taken_for(of: QuantityType, symbol: str) -> str:
    """Say which pressure a unit was taken for that is used of gauge and absolute alike."""
    if of.kind.name not in OTHER_PRESSURE or symbol in MARKED:
        return ""
    return f"; {symbol} is taken as {spoken(of.kind)} here"


def _inches(of: QuantityType, number: float, symbol: str) -> str:
    """Say it where the number would fit if it were inches, or were millimetres."""
    other = {"mm": "in", "in": "mm"}.get(symbol)
    if of.kind.name != "length" or other is None:
        return ""
    within = bounds(of, other)
    fits = within.low <= number <= within.high
    return f"; off by a factor of 25.4? {number:.6g} {other} would fit" if fits else ""
