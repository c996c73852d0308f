"""An answer as JSON: full floats, a unit on every quantity, suggested digits beside it."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from ringland_service.api.writing.expanded import (
    expanded_in,
    intervals,
    told_interval,
    uncertainties,
)
from ringland_service.core.declare import Calculation, asked, declared
from ringland_service.core.declare.fields import (
    AnyQuantityField,
    Field,
    Quantified,
    RecordsField,
    ResultField,
    SectionField,
    UnitField,
)
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.significant import decimals, kind_and_digits, significant_digits
from ringland_service.core.metrology.conformity import BY_INTERVAL, CLOSE
from ringland_service.core.metrology.extremes import Interval
from ringland_service.engine.answer import Answer, Verdict
from ringland_service.engine.intervals import ends
from ringland_service.units import Unit, canonical_unit, us_unit


@cache
def shown_unit(kind: Kind, system: str) -> Unit:
    """Return the unit that a kind is shown in."""
    return us_unit(kind) if system == "us" else canonical_unit(kind)


@cache
def shown_digits(kind: Kind, digits: int | None, system: str) -> int:
    """Return the suggested decimals in the unit shown."""
    return max((3 if digits is None else digits) + shown_unit(kind, system).decimals, 0)


def quantity(
    value: Any,
    kind: Kind,
    digits: int | None,
    system: str,
    u: Any = None,
    interval: Interval | None = None,
) -> dict[str, Any]:
    """Return a quantity as JSON; ``u`` is its standard uncertainty, ``interval`` that of 95 %."""
    unit = shown_unit(kind, system)
    found: dict[str, Any] = {
        "value": float(unit.from_canonical(value)),
        "unit": unit.symbol,
        "digits": shown_digits(kind, digits, system),
    }
    if u is not None:
        found["uncertainty"] = expanded_in(u, unit.ratio)
    if interval is not None:
        found["interval"] = told_interval(ends(interval), unit)
    return found


def listed(
    values: tuple[Any, ...],
    kind: Kind,
    digits: int | None,
    system: str,
    u: Any = None,
    interval: Interval | None = None,
) -> dict[str, Any]:
    """Return a list of quantities as JSON; None where a reading is missing."""
    unit = shown_unit(kind, system)
    found: dict[str, Any] = {
        "values": [None if v is None else float(unit.from_canonical(v)) for v in values],
        "unit": unit.symbol,
        "digits": shown_digits(kind, digits, system),
    }
    if u is not None:
        # A member that nothing uncertain moves has none, as a single value has.
        found["uncertainties"] = [expanded_in(v, unit.ratio) if v else None for v in u]
    if interval is not None:
        found["intervals"] = told_interval(ends(interval), unit)
    return found


def by_member(moved: Mapping[tuple[str | int, ...], Any]) -> dict[str, Any]:
    """Return u by path as a tree: by name, and under a section, list or record by what it holds."""
    tree: dict[Any, Any] = {}
    for path, u in moved.items():
        branch = tree
        for key in path[:-1]:
            branch = branch.setdefault(key, {})
        branch[path[-1]] = u
    return tree


def any_quantity(value: Quantified, u: Any = None, as_given: bool = False) -> dict[str, Any]:
    """Return a quantity of any kind in its own unit; an input as it was given."""
    unit = value.unit
    number = float((value.value - unit.offset) / float(unit.ratio))
    number = value.given if as_given else number
    found: dict[str, Any] = {
        "value": number,
        "unit": unit.symbol,
        "digits": decimals(number, significant_digits(value.given) + 1),
    }
    if u is not None:
        found["uncertainty"] = expanded_in(u, unit.ratio)
    return found


def shown(
    field: Field,
    value: Any,
    inputs: Any,
    system: str,
    u: Any = None,
    interval: Interval | None = None,
) -> Any:
    """Return a field's value as JSON; ``u`` is its doubt, of an input with parts by part."""
    if isinstance(value, Quantified):
        of_value = u["value"] if isinstance(u, dict) else u
        return any_quantity(value, of_value, isinstance(field, AnyQuantityField))
    if isinstance(field, SectionField):
        return members(field.record, value, value, system, u or {})
    if isinstance(field, RecordsField):
        by_place = u or {}
        return [
            members(field.record, one, one, system, by_place.get(place, {}))
            for place, one in enumerate(value)
        ]
    if isinstance(field, ResultField) and field.record is not None:
        return [members(field.record, row, inputs, system, {}) for row in value]
    kind, digits = kind_and_digits(field, inputs)
    if kind is None:
        return _plain(field, value)
    if isinstance(value, tuple):
        each = [u.get(place) for place in range(len(value))] if isinstance(u, dict) else u
        return listed(value, kind, digits, system, each, interval)
    return quantity(value, kind, digits, system, u, interval)


def _plain(field: Field, value: Any) -> Any:
    """Return a bare number, a count, a word, a yes or no, or a list of those."""
    if isinstance(field, UnitField):
        return value.symbol
    if isinstance(value, tuple):
        return [_plain(field, item) for item in value]
    if isinstance(value, float):
        return float(value)
    return value


NONE: Mapping[str, Interval] = {}


def members(
    record: type,
    values: Any,
    inputs: Any,
    system: str,
    u: Mapping[str, Any],
    given: Mapping[str, Interval] = NONE,
) -> dict[str, Any]:
    """Return the given fields of a record as JSON, by public name; ``given`` has intervals."""
    found: dict[str, Any] = {}
    for name, public, field in _public_fields(record):
        value = getattr(values, name)
        if value is not None:
            found[public] = shown(field, value, inputs, system, u.get(name), given.get(name))
    return found


@cache
def _public_fields(record: type) -> tuple[tuple[str, str, Field], ...]:
    return tuple((name, field.public(name), field) for name, field in asked(record).items())


def verdict(found: Verdict, system: str) -> dict[str, Any]:
    """Return a verdict as JSON: value, limit with its standing, word, how to settle or to judge."""

    def side(value: Any) -> Any:
        if value is None:
            return None
        if found.kind is None:
            return float(value)
        return quantity(value, found.kind, found.digits, system)

    def difference(value: Any) -> Any:
        if value is None:
            return None
        if found.kind is None:
            return float(value)
        unit = shown_unit(found.kind, system)
        digits = shown_digits(found.kind, found.digits, system)
        return {"value": float(value / unit.factor), "unit": unit.symbol, "digits": digits}

    def interval(value: Interval) -> Any:
        return told_interval(ends(value), shown_unit(found.kind, system) if found.kind else None)

    judged, due = found.judged, found.why is None
    return {
        "check": found.check.name,
        "words": found.check.words,
        "of": found.of or None,
        "value": side(found.value),
        "uncertainty": None if found.u is None else difference(2.0 * found.u),
        "interval": None if found.interval is None else interval(found.interval),
        "bias": found.bias or None,
        "limit": {
            "low": side(found.limit.low),
            "high": side(found.limit.high),
            "standing": found.limit.standing,
            "source": found.limit.source,
            **({"with_decompressor": True} if found.limit.with_decompressor else {}),
        },
        "verdict": found.word,
        "why": found.why,
        "to_judge": found.to_judge or None,
        "without_uncertainty": judged.without if due else None,
        "probability_within": None if judged.probability is None else float(judged.probability),
        "margin": difference(judged.margin),
        "rule": found.rule if found.interval is None else BY_INTERVAL,
        "doubt_fails": found.check.doubt_fails or None,
        "to_settle": {
            "needed_uncertainty": difference(judged.needed) if judged.margin else None,
            "advice": found.advice,
        }
        if due and judged.verdict == CLOSE
        else None,
    }


def basis(calculation: Calculation, outputs: Any) -> list[dict[str, str]]:
    """Return where each result comes from: formula in words, and source."""
    return [entry for name, entry in _basis(calculation) if getattr(outputs, name) is not None]


@cache
def _basis(calculation: Calculation) -> tuple[tuple[str, dict[str, str]], ...]:
    from ringland_service.api.writing.trace import in_words

    rows = []
    for name, field in declared(calculation.outputs).items():
        if isinstance(field, ResultField):
            words = field.basis or in_words(calculation, field.formula)
            entry = {"field": field.public(name), "formula": words, "source": field.source}
            rows.append((name, entry))
    return tuple(rows)


def answer(found: Answer, system: str = "metric") -> dict[str, Any]:
    """Return the answer of one calculation as JSON."""
    calculation = found.calculation
    return {
        "calculation": calculation.name,
        "formulas": calculation.formulas,
        "inputs": members(
            calculation.inputs, found.inputs, found.inputs, system, by_member(found.moved)
        ),
        "result": members(
            calculation.outputs, found.outputs, found.inputs, system, found.u, found.intervals
        ),
        "uncertainties": uncertainties(found.outputs, found.u),
        "intervals": intervals(found.outputs, found.intervals),
        "verdicts": [verdict(v, system) for v in found.verdicts],
        "warnings": [vars(w) for w in found.warnings],
        "cautions": list(found.cautions),
        "basis": basis(calculation, found.outputs),
    }
