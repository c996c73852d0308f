"""marshmallow fields for quantities: thin, strict, one a shape.

A quantity is one field, not a nested schema: that keeps a request within a fraction of bare
Flask. Each raises ``Fault`` objects, which carry code, words and what is allowed.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from marshmallow import ValidationError, fields

from ringland_service.api.faults import Fault
from ringland_service.api.reading.bounds import apart, bounds, outside
from ringland_service.api.reading.hints import hint, right_form
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.significant import as_written
from ringland_service.engine.question import Stated
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
    """A quantity as read: canonical value, and its doubt as stated."""

    value: Any
    stated: Stated | None = None


def fail(*faults: Fault) -> ValidationError:
    """Return the marshmallow error that carries the faults."""
    return ValidationError(list(faults))


def is_number(value: Any) -> bool:
    """Return whether a JSON value is a number (a yes or no is not)."""
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def show(value: Any) -> str:
    """Return a value as a message may repeat it, cut to a sensible length."""
    # The end of a long text is never shown, so it is not escaped either.
    text = repr(value[:61] if isinstance(value, str) else value)
    return text if len(text) <= 60 else text[:60] + "…"


def check_keys(value: Any, keys: frozenset[str], right: str) -> None:
    """Refuse anything but an object with known keys."""
    if not isinstance(value, dict):
        detail = "a number alone has no unit" if is_number(value) else "not a quantity"
        raise fail(Fault("not_a_quantity", f"{detail}: write {right}", right))
    unknown = [name for name in value if name not in keys]
    if unknown:
        known = sorted(keys)
        raise fail(
            *(
                Fault("unknown_field", f"unknown field {show(name)}", known, given=name).under(name)
                for name in unknown
            )
        )


def read_unit(value: dict[str, Any], kind: Kind) -> str:
    """Return the unit symbol of a quantity, known to its kind."""
    symbol = value.get("unit")
    if symbol is None:
        raise fail(Fault("missing_unit", f"a unit is missing, such as {kind.unit}", kind.unit))
    if not isinstance(symbol, str):
        raise fail(Fault("wrong_type", "a unit is a text", kind.unit).under("unit"))
    try:
        unit(kind, symbol)
    except UnknownUnit as error:
        raise fail(_unknown_unit(symbol, str(error), error.allowed).under("unit")) from error
    return symbol


def _unknown_unit(symbol: str, why: str, known: Sequence[str]) -> Fault:
    """Return the fault of a unit; a near one is suggested where ``why`` says nothing better."""
    plain = f"{symbol!r} is not a"
    given = symbol if why.startswith(plain) and "did you mean" not in why else None
    return Fault("unknown_unit", why, list(known), given=given)


def check_value(of: QuantityType, number: Any, symbol: str) -> float:
    """Return the canonical value of a number within its bounds."""
    if not is_number(number):
        raise fail(Fault("wrong_type", f"not a number: {show(number)}", "a number"))
    within = bounds(of, symbol)
    if not within.low <= number <= within.high:
        allowed = {"low": within.low, "high": within.high, "unit": symbol}
        raise fail(
            Fault(
                "out_of_bounds",
                f"{of.words}: {outside(number, within.low, within.high, symbol)}"
                f"{hint(of, number, symbol)}",
                allowed,
                422,
            )
        )
    return unit(of.kind, symbol).to_canonical(float(number))


NO_UNCERTAINTY = "takes no uncertainty of its own: leave it out"


def check_exact(exact: bool, value: Any, what: str = "this figure") -> None:
    """Refuse the uncertainty of a figure that takes none."""
    if not exact or not isinstance(value, dict):
        return
    doubt = next((key for key in ("uncertainty", "instrument") if key in value), None)
    if doubt:
        raise fail(Fault("exact", f"{what} {NO_UNCERTAINTY}", None, 422).under(doubt))


def check_doubt(of: QuantityType, value: dict[str, Any], symbol: str) -> Stated | None:
    """Return the stated doubt of a quantity: an expanded uncertainty or an instrument."""
    if "uncertainty" in value and "instrument" in value:
        raise fail(
            Fault(
                "doubt_twice", "state an uncertainty or name an instrument, not both", None, 422
            ).under("uncertainty")
        )
    if "instrument" in value:
        name = value["instrument"]
        if not isinstance(name, str) or not 1 <= len(name) <= 40:
            raise fail(
                Fault("wrong_type", "an instrument is named by a text of 1 to 40 characters").under(
                    "instrument"
                )
            )
        return Stated(instrument=name)
    if "uncertainty" in value:
        doubt = check_uncertainty(of, value["uncertainty"], value, symbol)
        exact = as_written(value["uncertainty"]) * unit(of.kind, symbol).ratio
        return Stated(uncertainty=doubt, exact=exact)
    return None


def check_uncertainty(of: QuantityType, doubt: Any, value: dict[str, Any], symbol: str) -> float:
    """Return an expanded uncertainty in the canonical unit, within what can be meant."""
    if not is_number(doubt):
        raise fail(Fault("wrong_type", f"not a number: {show(doubt)}").under("uncertainty"))
    within = bounds(of, symbol)
    most = within.most_uncertainty
    numbers = [v for v in (value.get("value"), *value.get("values", ())) if is_number(v)]
    if of.excludes_zero:
        # A quarter of 392 degF is not a quarter of 200 degC: the declared unit's zero counts.
        shift = unit(of.kind, symbol).offset / unit(of.kind, symbol).factor
        most = min([most, *(abs(number + shift) / 4.0 for number in numbers)])
    if not within.least_uncertainty <= doubt <= most:
        shown, at_most = apart(doubt, most) if doubt > most else (f"{doubt:g}", f"{most:g}")
        raise fail(
            Fault(
                "out_of_bounds",
                f"an expanded uncertainty (k = 2) of {shown} {symbol} cannot be meant here:"
                f" above 0 and at most {at_most} {symbol}; leave it out when none is known",
                {"low": within.least_uncertainty, "high": most, "unit": symbol},
                422,
            ).under("uncertainty")
        )
    return float(doubt) * unit(of.kind, symbol).factor


class Quantity(fields.Field[Read]):
    """``{"value": 68.0, "unit": "mm", "uncertainty": 0.004}``."""

    def __init__(self, field: declared.QuantityField, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.of = field.type
        self.exact = field.exact

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> Read:
        of = self.of
        check_keys(value, QUANTITY_KEYS, right_form(of))
        check_exact(self.exact, value)
        if "value" not in value:
            raise fail(Fault("missing_field", "a value is missing", right_form(of)).under("value"))
        symbol = read_unit(value, of.kind)
        number = nested("value", check_value, of, value["value"], symbol)
        return Read(number, check_doubt(of, value, symbol))


def nested(key: str | int, function: Any, *args: Any) -> Any:
    """Call a check, its faults placed under a key."""
    try:
        return function(*args)
    except ValidationError as error:
        raise fail(*(fault.under(key) for fault in faults_of(error))) from error


def faults_of(error: ValidationError) -> list[Fault]:
    """Return the faults that a marshmallow error carries."""
    return [message for message in error.messages if isinstance(message, Fault)]


class Readings(fields.Field[Read]):
    """``{"unit": "mm", "values": [68.062, 68.048]}``; null where a reading is missing."""

    def __init__(self, field: declared.ReadingsField, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.field = field

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> Read:
        field = self.field
        check_keys(value, READINGS_KEYS, right_form(field.type, "values"))
        values = value.get("values")
        if not isinstance(values, list):
            raise fail(
                Fault("missing_field", "a list of values is missing", "values").under("values")
            )
        if not field.least <= len(values) <= field.most:
            needed = f"{field.least} to {field.most} readings are needed, {len(values)} given"
            detail = f"{field.words}: {needed}"
            allowed = {"least": field.least, "most": field.most}
            raise fail(Fault("wrong_count", detail, allowed, 422).under("values"))
        symbol = read_unit(value, field.type.kind)
        numbers = nested("values", self._numbers, values, symbol)
        return Read(numbers, check_doubt(field.type, value, symbol))

    def _numbers(self, values: list[Any], symbol: str) -> tuple[float | None, ...]:
        numbers = [
            None
            if number is None and self.field.gaps
            else nested(i, check_value, self.field.type, number, symbol)
            for i, number in enumerate(values)
        ]
        if all(number is None for number in numbers):
            raise fail(Fault("wrong_count", "at least one reading is needed", None, 422))
        return tuple(numbers)


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
SMALLEST_DOUBT = 1e-9


class AnyQuantity(fields.Field[AnyRead]):
    """A number with a unit of any kind; every kind that knows the unit is kept."""

    def __init__(self, field: declared.AnyQuantityField, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.exact = field.exact

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> AnyRead:
        check_keys(value, QUANTITY_KEYS - {"instrument"}, right_form(None))
        check_exact(self.exact, value)
        if "value" not in value:
            raise fail(Fault("missing_field", "a value is missing").under("value"))
        if "unit" not in value:
            raise fail(Fault("missing_unit", "a unit is missing, such as mm").under("unit"))
        number = nested("value", any_number, value["value"], -LARGEST)
        doubt = None
        if "uncertainty" in value:
            doubt = nested("uncertainty", any_number, value["uncertainty"], SMALLEST_DOUBT)
        symbol, found = nested("unit", any_unit, value["unit"])
        return AnyRead(number, symbol, found, doubt)


def any_number(number: Any, low: float) -> float:
    """Return a number of any quantity, within what a float can carry safely."""
    if not is_number(number):
        raise fail(Fault("wrong_type", f"not a number: {show(number)}", "a number"))
    if not low <= number <= LARGEST:
        detail = f"{number:.6g} is outside {low:g} to {LARGEST:g}"
        raise fail(Fault("out_of_bounds", detail, {"low": low, "high": LARGEST}, 422))
    return float(number)


def any_unit(symbol: Any) -> tuple[str, tuple[Kind, ...]]:
    """Return a unit symbol and the kinds that know it."""
    if not isinstance(symbol, str):
        raise fail(Fault("wrong_type", "a unit is a text", "mm"))
    found = kinds_of(symbol)
    if not found:
        known = every_symbol()
        raise fail(_unknown_unit(symbol, why_unknown(symbol, "a known unit", known), known))
    return symbol, found


class UnitSymbol(fields.Field[UnitRead]):
    """A unit symbol of any kind."""

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> UnitRead:
        return UnitRead(*any_unit(value))
