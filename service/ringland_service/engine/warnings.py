"""What an answer warns of: unusual readings, the calculation's own notices, uncertainty."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from functools import cache
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, declared, input_fields
from ringland_service.core.declare.fields import (
    Field,
    NumberField,
    QuantityField,
    ResultField,
    SectionField,
)
from ringland_service.core.declare.notices import Warned
from ringland_service.core.declare.usual import Usual
from ringland_service.core.metrology.conformity import beyond
from ringland_service.engine.request import Path, fields_given
from ringland_service.engine.response import Verdict

NOT_STATED = "no uncertainty was stated, so the value alone decides (rule simple)"
WITHIN_UNCERTAINTY = (
    "the leading readings lie within their uncertainty: which of them leads is not settled"
)


@cache
def public_field(calculation: Calculation, name: str) -> str:
    """Return the public name of an input or a result."""
    known = {**declared(calculation.outputs), **input_fields(calculation.inputs)}
    return known[name].public(name) if name in known else name


@cache
def _watched(record: type) -> tuple[tuple[str, Field], ...]:
    """Return the fields that have usual bounds, and the sections that may hold some."""
    return tuple(
        (name, f)
        for name, f in input_fields(record).items()
        if isinstance(f, SectionField)
        or (isinstance(f, (QuantityField, NumberField)) and any(_bounds(f)[:2]))
    )


def _usual(inputs: Any, prefix: str = "") -> Iterator[tuple[Warned, Any]]:
    """Yield each possible warning of the usual bounds, with whether it holds (or where)."""
    record: type = type(inputs)
    for name, f in _watched(record):
        value = getattr(inputs, name)
        if value is None or isinstance(value, Usual):
            continue
        if isinstance(f, SectionField):
            yield from _usual(value, f"{prefix}{name}.")
        elif isinstance(f, (QuantityField, NumberField)):
            yield from _against_bounds(prefix + f.public(name), f, value)


def _bounds(f: QuantityField | NumberField) -> tuple[float | None, float | None, str]:
    if isinstance(f, QuantityField):
        return f.type.warn_low, f.type.warn_high, " " + f.type.kind.unit
    return f.warn_low, f.warn_high, ""


def _against_bounds(
    name: str, f: QuantityField | NumberField, value: Any
) -> Iterator[tuple[Warned, Any]]:
    low, high, unit = _bounds(f)
    least, most = value, value
    if isinstance(value, tuple):
        given = [v for v in value if v is not None]
        least, most = min(given), max(given)
    for bound, word in ((low, "below"), (high, "above")):
        if bound is None:
            continue
        # As limits are: a bound met exactly is met in every unit.
        outside = beyond(bound, least) if word == "below" else beyond(most, bound)
        if outside is not False:
            message = (
                f"{f.description}: {word} the usual {bound:g}{unit}; check the reading and its unit"
            )
            yield Warned("outside_usual", name, message), outside


def _noticed(
    calculation: Calculation,
    inputs: Any,
    outputs: Any,
    moved: Collection[Path],
    gone: Collection[str] | None,
) -> Iterator[tuple[Warned, Any]]:
    for notice in calculation.notices:
        if notice.unless_uncertainty and _all_uncertain(inputs, notice.unless_uncertainty, moved):
            continue
        if gone is not None and (notice.common_practice or notice.field in gone):
            continue
        holds = notice.when(inputs, outputs)
        if holds is not False:
            name = public_field(calculation, notice.field)
            yield Warned(notice.code, name, notice.message), holds


def _all_uncertain(inputs: Any, name: str, moved: Collection[Path]) -> bool:
    """Return whether uncertainty moves every quantity of that name."""
    return all(path in moved for path, _, _ in fields_given(inputs) if path[-1] == name)


def noticed(
    calculation: Calculation,
    inputs: Any,
    outputs: Any,
    moved: Collection[Path],
    gone: Collection[str] | None = None,
) -> list[Warned]:
    """Return the warnings of one answer, of bounds and of the calculation itself.

    ``gone`` names what rests on common practice where that is switched off, None where it is on.
    """
    possible = (*_usual(inputs), *_noticed(calculation, inputs, outputs, moved, gone))
    return [warned for warned, holds in possible if holds]


def noticed_rows(
    calculation: Calculation,
    inputs: Any,
    outputs: Any,
    moved: Collection[Path],
    count: int,
    gone: Collection[str] | None = None,
) -> Iterator[tuple[Warned, list[int]]]:
    """Yield the same warnings for a column, each with the rows that it holds for."""
    for warned, where in (*_usual(inputs), *_noticed(calculation, inputs, outputs, moved, gone)):
        rows = np.flatnonzero(np.broadcast_to(np.asarray(where), count)).tolist()
        if rows:
            yield warned, rows


@cache
def _extremes(calculation: Calculation) -> tuple[str, ...]:
    return tuple(
        name
        for name, f in declared(calculation.outputs).items()
        if isinstance(f, ResultField) and f.extreme
    )


def value_alone(verdict: Verdict) -> Any:
    """Return whether the value alone decides, of a column in which rows: none where none is due."""
    if verdict.u is not None:
        return False
    return verdict.why == "" if isinstance(verdict.why, np.ndarray) else verdict.why is None


def uncertainty_notices(
    calculation: Calculation, passed: Sequence[Verdict], open_leads: Mapping[str, Any]
) -> Iterator[Warned]:
    """Yield what uncertainty calls for: none stated, or readings that lie within it."""
    for name in dict.fromkeys(v.check.value for v in passed if value_alone(v)):
        yield Warned("no_uncertainty_stated", public_field(calculation, name), NOT_STATED)
    for warned, _ in within_uncertainty(calculation, open_leads, 1):
        yield warned


def within_uncertainty(
    calculation: Calculation, open_leads: Mapping[str, Any], count: int
) -> Iterator[tuple[Warned, list[int]]]:
    """Yield each warning that which reading leads is not settled, with the rows it holds for.

    What merely follows from an extreme does not say so again.
    """
    for name in (name for name in _extremes(calculation) if name in open_leads):
        rows = np.flatnonzero(np.broadcast_to(open_leads[name], count)).tolist()
        if rows:
            name = public_field(calculation, name)
            yield Warned("readings_within_uncertainty", name, WITHIN_UNCERTAINTY), rows
