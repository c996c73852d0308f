"""Checks of a quantity in JSON: its unit, its bounds, the uncertainty stated of it.

Each raises ``FieldError`` objects, which carry code, words and what is allowed.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from ringland_service.api.faults import FieldError
from ringland_service.api.shapes.bounds import apart, bounds, outside
from ringland_service.api.shapes.hints import hint
from ringland_service.api.shapes.json_checks import fail, is_number, show
from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.significant import as_written
from ringland_service.engine.request import Stated
from ringland_service.units import (
    UnknownUnit,
    every_symbol,
    kinds_of,
    unit,
    why_unknown,
)

QUANTITY_KEYS = frozenset({"value", "unit", "uncertainty", "instrument"})
READINGS_KEYS = frozenset({"values", "unit", "uncertainty", "instrument"})


@dataclass(frozen=True)
class Read:
    """A quantity as read: canonical value, and its uncertainty as stated."""

    value: object
    stated: Stated | None = None


def read_unit(value: Mapping[str, object], kind: Kind) -> str:
    """Return the unit symbol of a quantity, known to its kind."""
    symbol = value.get("unit")
    if symbol is None:
        raise fail(FieldError("missing_unit", f"a unit is missing, such as {kind.unit}", kind.unit))
    if not isinstance(symbol, str):
        raise fail(FieldError("wrong_type", "a unit is a text", kind.unit).under("unit"))
    try:
        unit(kind, symbol)
    except UnknownUnit as error:
        raise fail(_unknown_unit(symbol, str(error), error.allowed).under("unit")) from error
    return symbol


def _unknown_unit(symbol: str, why: str, known: Sequence[str]) -> FieldError:
    """Return the fault of a unit; a near one is suggested where ``why`` says nothing better."""
    plain = f"{symbol!r} is not a"
    given = symbol if why.startswith(plain) and "did you mean" not in why else None
    return FieldError("unknown_unit", why, list(known), given=given)


def check_value(of: QuantityType, number: object, symbol: str) -> float:
    """Return the canonical value of a number within its bounds."""
    if not is_number(number):
        raise fail(FieldError("wrong_type", f"not a number: {show(number)}", "a number"))
    within = bounds(of, symbol)
    if not within.low <= number <= within.high:
        allowed = {"low": within.low, "high": within.high, "unit": symbol}
        raise fail(
            FieldError(
                "out_of_bounds",
                f"{of.description}: {outside(number, within.low, within.high, symbol)}"
                f"{hint(of, number, symbol)}",
                allowed,
                422,
            )
        )
    return unit(of.kind, symbol).to_canonical(float(number))


NO_UNCERTAINTY = "takes no uncertainty of its own: leave it out"


def check_exact(exact: bool, value: object, what: str = "this figure") -> None:
    """Refuse the uncertainty of a figure that takes none."""
    if not exact or not isinstance(value, dict):
        return
    uncertainty = next((key for key in ("uncertainty", "instrument") if key in value), None)
    if uncertainty:
        raise fail(FieldError("exact", f"{what} {NO_UNCERTAINTY}", None, 422).under(uncertainty))


def check_stated_uncertainty(
    of: QuantityType, value: Mapping[str, object], symbol: str
) -> Stated | None:
    """Return the stated uncertainty of a quantity: an expanded uncertainty or an instrument."""
    if "uncertainty" in value and "instrument" in value:
        raise fail(
            FieldError(
                "uncertainty_twice",
                "state an uncertainty or name an instrument, not both",
                None,
                422,
            ).under("uncertainty")
        )
    if "instrument" in value:
        name = value["instrument"]
        if not isinstance(name, str) or not 1 <= len(name) <= 40:
            raise fail(
                FieldError(
                    "wrong_type", "an instrument is named by a text of 1 to 40 characters"
                ).under("instrument")
            )
        return Stated(instrument=name)
    if "uncertainty" in value:
        stated = value["uncertainty"]
        uncertainty = check_uncertainty(of, stated, value, symbol)
        exact = as_written(stated) * unit(of.kind, symbol).ratio if is_number(stated) else None
        return Stated(uncertainty=uncertainty, exact=exact)
    return None


def check_uncertainty(
    of: QuantityType, uncertainty: object, value: Mapping[str, object], symbol: str
) -> float:
    """Return an expanded uncertainty in the canonical unit, within what can be meant."""
    if not is_number(uncertainty):
        raise fail(
            FieldError("wrong_type", f"not a number: {show(uncertainty)}").under("uncertainty")
        )
    within = bounds(of, symbol)
    most = within.most_uncertainty
    if of.excludes_zero:
        numbers = [v for v in _given(value) if is_number(v)]
        # A quarter of 392 degF is not a quarter of 200 degC: the declared unit's zero counts.
        shift = unit(of.kind, symbol).offset / unit(of.kind, symbol).factor
        most = min([most, *(abs(number + shift) / 4.0 for number in numbers)])
    if not within.least_uncertainty <= uncertainty <= most:
        shown, at_most = (
            apart(uncertainty, most) if uncertainty > most else (f"{uncertainty:g}", f"{most:g}")
        )
        raise fail(
            FieldError(
                "out_of_bounds",
                f"an expanded uncertainty (k = 2) of {shown} {symbol} cannot be meant here:"
                f" above 0 and at most {at_most} {symbol}; leave it out when none is known",
                {"low": within.least_uncertainty, "high": most, "unit": symbol},
                422,
            ).under("uncertainty")
        )
    return float(uncertainty) * unit(of.kind, symbol).factor


def _given(value: Mapping[str, object]) -> Sequence[object]:
    """Return the number of a quantity, or the numbers of a list of readings."""
    listed = value.get("values")
    return listed if isinstance(listed, list) else [value.get("value")]


@dataclass(frozen=True)
class AnyRead:
    """A number with a unit whose kind is not settled yet."""

    number: float
    symbol: str
    kinds: tuple[Kind, ...]
    uncertainty: float | None


@dataclass(frozen=True)
class UnitRead:
    """A unit whose kind is not settled yet."""

    symbol: str
    kinds: tuple[Kind, ...]


LARGEST = 1e9
SMALLEST_UNCERTAINTY = 1e-9


def any_number(number: object, low: float) -> float:
    """Return a number of any quantity, within what a float can carry safely."""
    if not is_number(number):
        raise fail(FieldError("wrong_type", f"not a number: {show(number)}", "a number"))
    if not low <= number <= LARGEST:
        detail = f"{number:.6g} is outside {low:g} to {LARGEST:g}"
        raise fail(FieldError("out_of_bounds", detail, {"low": low, "high": LARGEST}, 422))
    return float(number)


def any_unit(symbol: object) -> tuple[str, tuple[Kind, ...]]:
    """Return a unit symbol and the kinds that know it."""
    if not isinstance(symbol, str):
        raise fail(FieldError("wrong_type", "a unit is a text", "mm"))
    found = kinds_of(symbol)
    if not found:
        known = every_symbol()
        raise fail(_unknown_unit(symbol, why_unknown(symbol, "a known unit", known), known))
    return symbol, found
