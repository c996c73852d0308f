"""Units at the door: from what users write to canonical floats, and back.

The factors come from one pint registry, in exact fractions, once at import; no request parses or
converts through pint. Gauge and absolute, torque and energy, temperature and temperature
difference are told apart by the kind of the field, never by the dimension.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

import pint

from ringland_service.core.declare.kinds import KINDS, Kind
from ringland_service.vocabulary import ALIASES, AMBIGUOUS, OTHER_PRESSURE, UNITS


class UnknownUnit(ValueError):
    """A unit that the kind of quantity does not have; the text says what would be right."""

    def __init__(self, message: str, allowed: tuple[str, ...]) -> None:
        super().__init__(message)
        self.allowed = allowed


@dataclass(frozen=True)
class Unit:
    """A unit of one kind: canonical = value·factor + offset.

    Attributes
    ----------
    symbol : str
    factor, offset : float
    decimals : int
        Decimals to add to a quantity's suggested digits when shown in this unit.
    ratio, origin : Fraction
        Factor and offset, exact.
    """

    symbol: str
    factor: float
    offset: float
    decimals: int
    ratio: Fraction
    origin: Fraction

    def to_canonical(self, value: float) -> float:
        """Return the value in the kind's canonical unit."""
        return value * self.factor + self.offset

    def from_canonical(self, value: float) -> float:
        """Return the canonical value in this unit."""
        return (value - self.offset) / self.factor


# pint's own figures are decimal text; fractions keep them exact until one rounding at the end.
_REGISTRY: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)


def _unit(symbol: str, spelling: str, canonical: str, kind: str) -> Unit:
    one, zero = Fraction(1), Fraction(0)
    if kind == "temperature":
        at_zero = _REGISTRY.Quantity(zero, spelling).to(canonical).magnitude
        step = _REGISTRY.Quantity(one, f"delta_{spelling}" if "degree" in spelling else spelling)
        factor = step.to("kelvin").magnitude
    else:
        factor = _REGISTRY.Quantity(one, "").magnitude * _factor(spelling, canonical)
        at_zero = zero
    decimals = round(math.log10(float(factor)))
    origin = Fraction(at_zero)
    return Unit(symbol, float(factor), float(origin), decimals, Fraction(factor), origin)


def _factor(spelling: str, canonical: str) -> Fraction:
    ratio = _REGISTRY.parse_expression(spelling) / _REGISTRY.parse_expression(canonical)
    magnitude = ratio.to("dimensionless").magnitude
    return Fraction(magnitude)


def _vocabulary() -> dict[str, dict[str, Unit]]:
    table: dict[str, dict[str, Unit]] = {}
    for kind, symbols in UNITS.items():
        canonical = next(iter(symbols.values()))
        units = {symbol: _unit(symbol, s, canonical, kind) for symbol, s in symbols.items()}
        aliases = {alias: units[symbol] for alias, symbol in ALIASES.items() if symbol in units}
        table[kind] = units | aliases
    return table


TABLE: dict[str, dict[str, Unit]] = _vocabulary()


def symbols(kind: Kind) -> tuple[str, ...]:
    """Return every symbol that the kind accepts, aliases last."""
    return tuple(TABLE[kind.name])


def canonical_symbols(kind: Kind) -> tuple[str, ...]:
    """Return the symbols that the kind accepts, each unit in one spelling."""
    return tuple(UNITS[kind.name])


def unit(kind: Kind, symbol: str) -> Unit:
    """Return the unit of the kind.

    Raises
    ------
    UnknownUnit
        Where the kind has no such symbol; the message says why and what would be right.
    """
    found = TABLE[kind.name].get(symbol)
    if found is not None:
        return found
    if symbol in OTHER_PRESSURE.get(kind.name, ()):
        told = (
            f"{symbol} is not a unit of {spoken(kind)}: gauge and absolute are told apart;"
            f" {kind.unit} is taken as {spoken(kind)} here"
        )
        raise UnknownUnit(told, symbols(kind))
    raise UnknownUnit(
        why_unknown(symbol, f"a unit of {spoken(kind)}", symbols(kind)), symbols(kind)
    )


def spoken(kind: Kind) -> str:
    """Return the kind in words: a pressure gauge is an instrument, a gauge pressure is not."""
    first, _, rest = kind.name.partition("_")
    return f"{rest} {first}" if rest in ("gauge", "absolute") else kind.name.replace("_", " ")


def why_unknown(symbol: str, wanted: str, known: Sequence[str]) -> str:
    """Return why a symbol is refused, and what would be right."""
    shown = symbol if len(symbol) <= 20 else symbol[:20] + "…"
    if symbol in AMBIGUOUS:
        return f"{shown!r} is not clear: {AMBIGUOUS[symbol]}"
    alike = [candidate for candidate in known if candidate.lower() == symbol.lower()]
    hint = f"; did you mean {alike[0]}?" if alike else ""
    return f"{shown!r} is not {wanted}{hint}"


def every_symbol() -> tuple[str, ...]:
    """Return every symbol of every kind, each once."""
    return tuple(dict.fromkeys(s for table in TABLE.values() for s in table))


def us_unit(kind: Kind) -> Unit:
    """Return the unit that ``units=us`` turns the kind into."""
    return TABLE[kind.name][kind.us]


def canonical_unit(kind: Kind) -> Unit:
    """Return the kind's canonical unit."""
    return TABLE[kind.name][kind.unit]


def kinds_of(symbol: str) -> tuple[Kind, ...]:
    """Return the kinds that have the symbol, in order."""
    return tuple(KINDS[name] for name, table in TABLE.items() if symbol in table)
