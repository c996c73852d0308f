"""What every request may carry beside its fields: limits, rule, defaults, measuring."""

from functools import cache
from typing import Any, TypedDict, Unpack

from marshmallow import ValidationError
from marshmallow import fields as ma

from ringland_service.api.faults import FieldError
from ringland_service.api.reading.instrument_figures import (
    FIGURES,
    insist_on_an_error,
    of_one_kind,
)
from ringland_service.api.shapes.json_checks import (
    About,
    Reader,
    check_keys,
    fail,
    faults_of,
    nested,
    read_at,
    show,
)
from ringland_service.api.shapes.numbers import Count
from ringland_service.api.shapes.quantity_checks import LARGEST, any_number, check_exact, read_unit
from ringland_service.api.shapes.schema import about
from ringland_service.api.shapes.tokens import Choice, Flag, Text
from ringland_service.core.declare import Check, Composite, Operation, declared, input_fields
from ringland_service.core.declare.fields import Field, kind_of
from ringland_service.core.declare.kinds import TEMPERATURE_DIFFERENCE, Kind
from ringland_service.core.metrology.conformity import RULES
from ringland_service.core.metrology.instruments import TYPICAL, Instrument
from ringland_service.core.metrology.limits import STANDINGS, Limit
from ringland_service.engine.request import Measuring
from ringland_service.units import unit

RIGHT_LIMIT = '{"high": {"value": 0.1, "unit": "mm"}, "standing": "maker"}'
LIMIT_KEYS = frozenset({"low", "high", "standing", "source"})
WITH_DECOMPRESSOR = "with_decompressor"
LONGEST_SOURCE = 200
LOW_ABOVE_HIGH = "low is above high"


class Common(TypedDict, total=False):
    """What was read of these, where the request has it."""

    limits: dict[str, Limit]
    defaults: str
    rule: str
    measuring: Measuring


def checks_of(calculation: Operation) -> tuple[Check, ...]:
    """Return the checks that a request may set limits for."""
    return getattr(calculation, "checks", ())


@cache
def kinds_judged(calculation: Operation) -> dict[str, Kind | None]:
    """Return the kind of the value that each check judges; None for a bare number."""
    if isinstance(calculation, Composite):
        return {n: k for s in calculation.steps for n, k in kinds_judged(s.calculation).items()}
    known: dict[str, Field] = dict(input_fields(calculation.inputs))
    known |= declared(calculation.outputs)  # type: ignore[attr-defined]
    return {check.name: kind_of(known[check.value]) for check in checks_of(calculation)}


def limit_members(check: Check) -> tuple[str, ...]:
    """Return what a limit of the check may say."""
    more = (WITH_DECOMPRESSOR,) if check.with_decompressor else ()
    return ("low", "high", "standing", "source", *more)


class LimitsField(ma.Field[dict[str, Limit]]):
    """``{"<check>": {"low": …, "high": …, "standing": "maker", "source": "…"}}``."""

    def __init__(self, calculation: Operation, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.kinds = kinds_judged(calculation)
        self.members = {c.name: frozenset(limit_members(c)) for c in checks_of(calculation)}

    def _deserialize(
        self, value: object, attr: object, data: object, **kwargs: object
    ) -> dict[str, Limit]:
        if not isinstance(value, dict):
            raise fail(FieldError("wrong_type", f"an object of checks is needed: {RIGHT_LIMIT}"))
        for name in value:
            if name not in self.kinds:
                detail = f"no check {show(name)} here"
                fault = FieldError("unknown_field", detail, sorted(self.kinds), given=name)
                raise fail(fault.under(name))
        return {n: nested(n, self._read, n, given) for n, given in value.items()}

    def _read(self, name: str, given: object) -> Limit:
        return read_limit(self.kinds[name], given, self.members[name])


def read_limit(kind: Kind | None, value: object, members: frozenset[str] = LIMIT_KEYS) -> Limit:
    """Return one limit as read."""
    given = check_keys(value, members, RIGHT_LIMIT)
    low, high = (
        nested(side, limit_side, kind, given[side]) if side in given else None
        for side in ("low", "high")
    )
    if low is None and high is None:
        raise fail(
            FieldError("missing_field", "a limit needs a low or a high side", RIGHT_LIMIT, 422)
        )
    if low is not None and high is not None and low > high:
        raise fail(FieldError("contradiction", LOW_ABOVE_HIGH, None, 422))
    standing = read_at("standing", STANDING, given.get("standing", "maker"))
    source = read_at("source", SOURCE, given.get("source", ""))
    working = read_at(WITH_DECOMPRESSOR, FLAG, given.get(WITH_DECOMPRESSOR, False))
    return Limit(low, high, standing, source, working)


STANDING = Choice(tuple(STANDINGS))
SOURCE = Text(LONGEST_SOURCE)
FLAG = Flag()


def limit_side(kind: Kind | None, value: object) -> float:
    """Return one side of a limit in the canonical unit of the value that it judges."""
    check_exact(True, value, "a limit")
    if kind is None:
        return any_number(value, -LARGEST)
    given = check_keys(
        value, frozenset({"value", "unit"}), f'{{"value": 0.1, "unit": "{kind.unit}"}}'
    )
    symbol = read_unit(given, kind)
    return unit(kind, symbol).to_canonical(
        nested("value", any_number, given.get("value"), -LARGEST)
    )


class InstrumentField(ma.Field[Instrument]):
    """An instrument: its kind alone takes the typical figures; figures given win."""

    FIGURES = FIGURES
    KEYS = frozenset({"id", "kind", "zero_set_in", *FIGURES})
    RIGHT = '{"id": "gauge", "kind": "bore_gauge"}'

    def _deserialize(
        self, value: object, attr: object, data: object, **kwargs: object
    ) -> Instrument:
        given = check_keys(value, self.KEYS, self.RIGHT)
        if "id" not in given:
            raise fail(
                FieldError("missing_field", "an instrument needs an id", self.RIGHT).under("id")
            )
        typical: dict[str, Any] = {}
        if "kind" in given:
            row = TYPICAL[read_at("kind", KIND, given["kind"])]
            typical = {k: v for k, v in row.items() if k not in {"kind", "label"}}
        figures, stands_in = dict(typical), set(typical) - {"reads"}
        for name in self.FIGURES:
            if name in given:
                own = nested(name, of_one_kind, figures.get("reads"), name, given[name])
                figures |= own
                stands_in -= own.keys()
        insist_on_an_error(typical, given)
        if "zero_set_in" in given:
            figures["zero_set_in"] = read_at("zero_set_in", NAME, given["zero_set_in"])
        named = read_at("id", NAME, given["id"])
        return Instrument(id=named, typical=frozenset(stands_in), **figures)


KIND = Choice(tuple(TYPICAL))
NAME = Text(40, shortest=1)


INSTRUMENT = InstrumentField()


class MeasuringField(ma.Field[Measuring]):
    """How the readings were taken: instruments, readings each, uncertainty of part temperatures."""

    KEYS = frozenset({"instruments", "readings_each", "temperature_uncertainty"})
    MOST = 20
    EACH = Count("readings each", 1, 50)

    def _deserialize(
        self, value: object, attr: object, data: object, **kwargs: object
    ) -> Measuring:
        given = check_keys(
            value, self.KEYS, '{"instruments": [{"id": "gauge", "kind": "bore_gauge"}]}'
        )
        listed = given.get("instruments", [])
        if not isinstance(listed, list) or len(listed) > self.MOST:
            detail = f"a list of at most {self.MOST} instruments is needed"
            raise fail(FieldError("wrong_type", detail).under("instruments"))
        instruments = [
            nested("instruments", read_at, i, INSTRUMENT, one) for i, one in enumerate(listed)
        ]
        by_id = {instrument.id: instrument for instrument in instruments}
        if len(by_id) < len(instruments):
            raise fail(FieldError("contradiction", "two instruments have one id", None, 422))
        for i, instrument in enumerate(instruments):
            try:
                check_setting(instrument, by_id)
            except ValidationError as error:
                faults = (fault.under("zero_set_in").under(i) for fault in faults_of(error))
                raise fail(*(fault.under("instruments") for fault in faults)) from error
        each = read_at("readings_each", self.EACH, given.get("readings_each", 1))
        uncertainty = None
        if "temperature_uncertainty" in given:
            uncertainty = nested(
                "temperature_uncertainty", temperature_uncertainty, given["temperature_uncertainty"]
            )
        return Measuring(by_id, each, uncertainty)


def check_setting(instrument: Instrument, by_id: dict[str, Instrument]) -> None:
    """Refuse a setting in an instrument that is unknown, itself set in another, or this one."""
    if instrument.zero_set_in is None:
        return
    other = by_id.get(instrument.zero_set_in)
    if other is None or other.zero_set_in is not None:
        detail = f"{instrument.zero_set_in!r} is no instrument here that stands on its own"
        allowed = sorted(name for name, i in by_id.items() if i.zero_set_in is None)
        raise fail(
            FieldError("unknown_instrument", detail, allowed, 422, given=instrument.zero_set_in)
        )


def temperature_uncertainty(value: object) -> float:
    """Return the expanded uncertainty (k = 2) of a part's temperature in kelvin."""
    given = check_keys(value, frozenset({"value", "unit"}), '{"value": 2.0, "unit": "K"}')
    kind = TEMPERATURE_DIFFERENCE
    symbol = read_unit(given, kind)
    number = nested("value", any_number, given.get("value"), 0.001)
    number *= unit(kind, symbol).factor
    if number > 40.0:
        raise fail(FieldError("out_of_bounds", "above 40 K it is no measurement", None, 422))
    return number


def envelope_fields(calculation: Operation) -> dict[str, Reader]:
    """Return the fields that a request of the calculation may carry beside its own."""
    found: dict[str, Reader] = {
        "rule": Choice(tuple(RULES), **about()),
        "defaults": Choice(("on", "off"), **about()),
        "measuring": MeasuringField(**about()),
    }
    if checks_of(calculation):
        found["limits"] = LimitsField(calculation, **about())
    return found
