"""What every request may carry beside its fields: limits, rule, defaults, measuring."""

from functools import cache
from typing import Any

from marshmallow import fields as ma

from ringland_service.api.faults import Fault
from ringland_service.api.reading.fields import Choice, Count, Flag, Text
from ringland_service.api.reading.instrument_figures import (
    FIGURES,
    insist_on_an_error,
    of_one_kind,
)
from ringland_service.api.reading.quantity_fields import (
    LARGEST,
    any_number,
    check_exact,
    check_keys,
    fail,
    nested,
    read_unit,
    show,
)
from ringland_service.api.reading.schemas import messages
from ringland_service.core.declare import Check, Composite, Declared, asked, declared
from ringland_service.core.declare.fields import CountField, Field, kind_of
from ringland_service.core.declare.kinds import TEMPERATURE_DIFFERENCE, Kind
from ringland_service.core.metrology.conformity import RULES
from ringland_service.core.metrology.instruments import TYPICAL, Instrument
from ringland_service.core.metrology.limits import STANDINGS, Limit
from ringland_service.engine.question import Measuring
from ringland_service.units import unit

RIGHT_LIMIT = '{"high": {"value": 0.1, "unit": "mm"}, "standing": "maker"}'
LIMIT_KEYS = frozenset({"low", "high", "standing", "source"})
WITH_DECOMPRESSOR = "with_decompressor"
LONGEST_SOURCE = 200
LOW_ABOVE_HIGH = "low is above high"


def checks_of(calculation: Declared) -> tuple[Check, ...]:
    """Return the checks that a request may set limits for."""
    return getattr(calculation, "checks", ())


@cache
def kinds_judged(calculation: Declared) -> dict[str, Kind | None]:
    """Return the kind of the value that each check judges; None for a bare number."""
    if isinstance(calculation, Composite):
        return {n: k for s in calculation.steps for n, k in kinds_judged(s.calculation).items()}
    known: dict[str, Field] = dict(asked(calculation.inputs))
    known |= declared(calculation.outputs)  # type: ignore[attr-defined]
    return {check.name: kind_of(known[check.value]) for check in checks_of(calculation)}


def limit_members(check: Check) -> tuple[str, ...]:
    """Return what a limit of the check may say."""
    more = (WITH_DECOMPRESSOR,) if check.with_decompressor else ()
    return ("low", "high", "standing", "source", *more)


class LimitsField(ma.Field[dict[str, Limit]]):
    """``{"<check>": {"low": …, "high": …, "standing": "maker", "source": "…"}}``."""

    def __init__(self, calculation: Declared, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.kinds = kinds_judged(calculation)
        self.members = {c.name: frozenset(limit_members(c)) for c in checks_of(calculation)}

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> dict[str, Limit]:
        if not isinstance(value, dict):
            raise fail(Fault("wrong_type", f"an object of checks is needed: {RIGHT_LIMIT}"))
        for name in value:
            if name not in self.kinds:
                detail = f"no check {show(name)} here"
                fault = Fault("unknown_field", detail, sorted(self.kinds), given=name)
                raise fail(fault.under(name))
        return {n: nested(n, self._read, n, given) for n, given in value.items()}

    def _read(self, name: str, given: Any) -> Limit:
        return read_limit(self.kinds[name], given, self.members[name])


def read_limit(kind: Kind | None, given: Any, members: frozenset[str] = LIMIT_KEYS) -> Limit:
    """Return one limit as read."""
    check_keys(given, members, RIGHT_LIMIT)
    low, high = (
        nested(side, limit_side, kind, given[side]) if side in given else None
        for side in ("low", "high")
    )
    if low is None and high is None:
        raise fail(Fault("missing_field", "a limit needs a low or a high side", RIGHT_LIMIT, 422))
    if low is not None and high is not None and low > high:
        raise fail(Fault("contradiction", LOW_ABOVE_HIGH, None, 422))
    standing = nested("standing", STANDING.deserialize, given.get("standing", "maker"))
    source = nested("source", SOURCE.deserialize, given.get("source", ""))
    working = nested(WITH_DECOMPRESSOR, FLAG.deserialize, given.get(WITH_DECOMPRESSOR, False))
    return Limit(low, high, standing, source, working)


STANDING = Choice(tuple(STANDINGS))
SOURCE = Text(LONGEST_SOURCE)
FLAG = Flag()


def limit_side(kind: Kind | None, given: Any) -> float:
    """Return one side of a limit in the canonical unit of the value that it judges."""
    check_exact(True, given, "a limit")
    if kind is None:
        return any_number(given, -LARGEST)
    check_keys(given, frozenset({"value", "unit"}), f'{{"value": 0.1, "unit": "{kind.unit}"}}')
    symbol = read_unit(given, kind)
    return unit(kind, symbol).to_canonical(
        nested("value", any_number, given.get("value"), -LARGEST)
    )


class InstrumentField(ma.Field[Instrument]):
    """An instrument: its kind alone takes the typical figures; figures given win."""

    FIGURES = FIGURES
    KEYS = frozenset({"id", "kind", "set_in", *FIGURES})
    RIGHT = '{"id": "gauge", "kind": "bore_gauge"}'

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> Instrument:
        check_keys(value, self.KEYS, self.RIGHT)
        if "id" not in value:
            raise fail(Fault("missing_field", "an instrument needs an id", self.RIGHT).under("id"))
        typical: dict[str, Any] = {}
        if "kind" in value:
            row = TYPICAL[nested("kind", KIND.deserialize, value["kind"])]
            typical = {k: v for k, v in row.items() if k not in {"kind", "words"}}
        figures, stands_in = dict(typical), set(typical) - {"reads"}
        for name in self.FIGURES:
            if name in value:
                own = nested(name, of_one_kind, figures.get("reads"), name, value[name])
                figures |= own
                stands_in -= own.keys()
        insist_on_an_error(typical, value)
        if "set_in" in value:
            figures["set_in"] = nested("set_in", NAME.deserialize, value["set_in"])
        named = nested("id", NAME.deserialize, value["id"])
        return Instrument(id=named, typical=frozenset(stands_in), **figures)


KIND = Choice(tuple(TYPICAL))
NAME = Text(40, shortest=1)


class MeasuringField(ma.Field[Measuring]):
    """How the readings were taken: instruments, readings each, doubt of part temperatures."""

    KEYS = frozenset({"instruments", "readings_each", "temperature_doubt"})
    MOST = 20
    EACH = Count(CountField(words="readings each", low=1, high=50, example=3))

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> Measuring:
        check_keys(value, self.KEYS, '{"instruments": [{"id": "gauge", "kind": "bore_gauge"}]}')
        listed = value.get("instruments", [])
        if not isinstance(listed, list) or len(listed) > self.MOST:
            detail = f"a list of at most {self.MOST} instruments is needed"
            raise fail(Fault("wrong_type", detail).under("instruments"))
        instruments = [
            nested("instruments", nested, i, InstrumentField().deserialize, given)
            for i, given in enumerate(listed)
        ]
        by_id = {instrument.id: instrument for instrument in instruments}
        if len(by_id) < len(instruments):
            raise fail(Fault("contradiction", "two instruments have one id", None, 422))
        for i, instrument in enumerate(instruments):
            nested("instruments", nested, i, nested, "set_in", check_setting, instrument, by_id)
        each = nested("readings_each", self.EACH.deserialize, value.get("readings_each", 1))
        doubt = None
        if "temperature_doubt" in value:
            doubt = nested("temperature_doubt", temperature_doubt, value["temperature_doubt"])
        return Measuring(by_id, each, doubt)


def check_setting(instrument: Instrument, by_id: dict[str, Instrument]) -> None:
    """Refuse a setting in an instrument that is unknown, itself set in another, or this one."""
    if instrument.set_in is None:
        return
    other = by_id.get(instrument.set_in)
    if other is None or other.set_in is not None:
        detail = f"{instrument.set_in!r} is no instrument here that stands on its own"
        allowed = sorted(name for name, i in by_id.items() if i.set_in is None)
        raise fail(Fault("unknown_instrument", detail, allowed, 422, given=instrument.set_in))


def temperature_doubt(given: Any) -> float:
    """Return the standard uncertainty of a part's temperature in kelvin."""
    check_keys(given, frozenset({"value", "unit"}), '{"value": 1.0, "unit": "K"}')
    kind = TEMPERATURE_DIFFERENCE
    symbol = read_unit(given, kind)
    number = float(nested("value", any_number, given.get("value"), 0.001))
    number *= unit(kind, symbol).factor
    if number > 20.0:
        raise fail(Fault("out_of_bounds", "above 20 K it is no measurement", None, 422))
    return number


def envelope_fields(calculation: Declared) -> dict[str, ma.Field[Any]]:
    """Return the fields that a request of the calculation may carry beside its own."""
    found: dict[str, ma.Field[Any]] = {
        "rule": Choice(tuple(RULES), error_messages=messages()),
        "defaults": Choice(("on", "off"), error_messages=messages()),
        "measuring": MeasuringField(error_messages=messages()),
    }
    if checks_of(calculation):
        found["limits"] = LimitsField(calculation, error_messages=messages())
    return found
