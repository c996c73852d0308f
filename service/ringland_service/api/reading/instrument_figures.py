"""The figures of an instrument: bounded like the uncertainties that they stand for.

Described, no figure is above a tenth of the widest span of its kind of quantity, which is the most
that a stated uncertainty could be anywhere. Used, all figures together leave on each reading no
more than an uncertainty stated there could be; that the engine judges.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any

from ringland_service.api.faults import Fault
from ringland_service.api.reading.bounds import apart
from ringland_service.api.reading.quantity_fields import (
    SMALLEST_DOUBT,
    any_unit,
    check_exact,
    check_keys,
    fail,
    is_number,
    nested,
    show,
)
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import asked
from ringland_service.core.declare.fields import QuantityField, QuantityType
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.declare.significant import as_written
from ringland_service.units import symbols, unit

FIGURES = ("max_error", "setting_error", "repeat", "resolution", "short_range_error")
# Each of these leaves an uncertainty by itself; a short-range error only divides the maximum error.
ERRORS = ("max_error", "relative_error", "setting_error", "repeat", "resolution")
# Kind of an instrument's figure to the kind of what it reads.
FIGURE_KINDS = {
    "length": "length",
    "volume": "volume",
    "pressure_gauge": "pressure_gauge",
    "angle": "angle",
    "temperature_difference": "temperature",
}
# A maximum error as a share of the reading: a quarter of it, as a stated uncertainty.
MOST_PERCENT = 25.0
PERCENT = "%"


@dataclass(frozen=True)
class Figure:
    """A unit that figures of an instrument may have, and the most that one may be in it."""

    symbol: str
    most: float
    figure_kind: str
    reads: str


def quantities_of(record: type) -> Iterator[QuantityType]:
    """Yield the quantities of a record's fields, down to its sections and lists of records."""
    for field in asked(record).values():
        if isinstance(field, QuantityField):
            yield field.type
        elif getattr(field, "record", None) is not None:
            yield from quantities_of(field.record)  # type: ignore[attr-defined]


@cache
def widest(reads: str) -> Fraction:
    """Return a tenth of the widest span of all quantities of a kind that anything asks for."""
    types = {of for c in CALCULATIONS for of in quantities_of(c.inputs) if of.kind.name == reads}
    return max(as_written(of.high) - as_written(of.low) for of in types) / 10


@cache
def figures() -> dict[str, Figure]:
    """Return every unit of a figure, by its symbol."""
    found: dict[str, Figure] = {}
    for kind, reads in FIGURE_KINDS.items():
        for symbol in symbols(KINDS[kind]):
            most = float(widest(reads) / unit(KINDS[kind], symbol).ratio)
            found.setdefault(symbol, Figure(symbol, most, kind, reads))
    return found


def of_one_kind(reads: str | None, name: str, given: Any) -> dict[str, Any]:
    """Return one figure; all figures of an instrument are of the kind that it reads."""
    found = figure(name, given)
    if reads and found.get("reads", reads) != reads:
        detail = f"this instrument reads {reads}, not {found['reads']}"
        raise fail(Fault("wrong_instrument", detail, None, 422).under("unit"))
    return found


def figure(name: str, given: Any) -> dict[str, Any]:
    """Return one figure of an instrument in canonical units."""
    check_exact(True, given, "an instrument's figure")
    check_keys(given, frozenset({"value", "unit"}), '{"value": 0.005, "unit": "mm"}')
    symbol, _ = nested("unit", any_unit, given.get("unit"))
    if symbol == PERCENT:
        if name != "max_error":
            raise fail(Fault("unknown_unit", "only a maximum error is a share of the reading"))
        return {"relative_error": nested("value", _bounded, given, symbol, MOST_PERCENT) / 100.0}
    of = figures().get(symbol)
    if of is None:
        raise fail(Fault("unknown_unit", f"no instrument here reads {symbol}").under("unit"))
    number = nested("value", _bounded, given, symbol, of.most)
    return {name: number * unit(KINDS[of.figure_kind], symbol).factor, "reads": of.reads}


def _bounded(given: dict[str, Any], symbol: str, most: float) -> float:
    number: Any = given.get("value")
    if not is_number(number):
        raise fail(Fault("wrong_type", f"not a number: {show(number)}", "a number"))
    if not 0 <= number <= most:
        shown, limit = apart(number, most) if number > most else (f"{number:.6g}", f"{most:.6g}")
        detail = f"{shown} {symbol} cannot be meant of an instrument: 0 to {limit} {symbol}"
        allowed = {"low": 0.0, "high": most, "unit": symbol}
        raise fail(Fault("out_of_bounds", detail, allowed, 422))
    return float(number)


def insist_on_an_error(typical: Mapping[str, Any], given: Mapping[str, Any]) -> None:
    """Refuse an instrument that is described with nothing, or with zeros alone.

    ``typical`` are the figures of its kind, in whose place those given stand.
    """
    sizes = dict(typical) | {name: given[name]["value"] for name in ERRORS if name in given}
    right = "give a kind, or a figure such as max_error"
    if not typical and not given.keys() & set(FIGURES):
        raise fail(Fault("missing_field", right))
    if max((sizes.get(name, 0.0) for name in ERRORS), default=0.0) < SMALLEST_DOUBT:
        detail = f"no figure of this instrument is above zero: {right}, above zero"
        raise fail(Fault("out_of_bounds", detail, {"low": SMALLEST_DOUBT}, 422))
