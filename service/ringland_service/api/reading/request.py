"""From a request's data to a question as the engine understands it."""

from dataclasses import replace
from functools import cache
from typing import Any

from marshmallow import Schema

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading.envelope import envelope_fields
from ringland_service.api.reading.schemas import load, schema, understand, understand_some
from ringland_service.core.declare import Declared, Way, asked
from ringland_service.core.declare.fields import kind_of
from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.conformity import DEFAULT_RULE
from ringland_service.engine.question import (
    Measuring,
    Path,
    Question,
    Stated,
    field_at,
)


@cache
def request_schema(calculation: Declared) -> Schema:
    """Return the schema of a request's JSON: the calculation's fields and the envelope's."""
    return schema(calculation.inputs, tuple(envelope_fields(calculation).items()))


def partly_understood(calculation: Declared, data: Any) -> tuple[Question, dict[str, Any]]:
    """Return what the rows of a batch share: a question without inputs, and the values given.

    Raises
    ------
    Faulty
        With every fault found in reading it.
    """
    loaded = load(request_schema(calculation), data, partial=True)
    values, doubts = understand_some(calculation.inputs, loaded)
    question = _question(loaded, None, doubts)
    check_instruments(calculation, question)
    return question, values


def _question(loaded: dict[str, Any], inputs: Any, doubts: dict[Path, Stated]) -> Question:
    return Question(
        inputs=inputs,
        doubts=doubts,
        limits=loaded.get("limits", {}),
        defaults=loaded.get("defaults", "on") == "on",
        rule=loaded.get("rule", DEFAULT_RULE),
        measuring=loaded.get("measuring") or Measuring(),
    )


def understood(calculation: Declared, data: Any) -> Question:
    """Return the question that a JSON object asks.

    Raises
    ------
    Faulty
        With every fault found in reading it.
    """
    loaded = load(request_schema(calculation), data)
    insist_one_of(calculation, loaded.keys())
    inputs, doubts = understand(calculation.inputs, loaded)
    question = _question(loaded, inputs, doubts)
    if doubts:
        check_instruments(calculation, question)
    return question


def insist_one_of(calculation: Declared, given: Any) -> None:
    """Raise ``Faulty`` where none of several ways is given."""
    faults = [
        Fault(
            "missing_field",
            f"one of these is needed: {spoken_ways(calculation, ways)}",
            [[public_names(calculation)[name] for name in way] for way in ways],
            status=422,
            pointer=f"/{public_names(calculation)[ways[0][0]]}",
        )
        for ways in calculation.one_of
        if not any(all(name in given for name in way) for way in ways)
    ]
    if faults:
        raise Faulty(faults)


def spoken_ways(calculation: Declared, ways: tuple[Way, ...]) -> str:
    """Return ways in words: fields that go together joined by plus, ways by or."""
    public = public_names(calculation)
    return " or ".join(" + ".join(public[name] for name in way) for way in ways)


@cache
def public_names(calculation: Declared) -> dict[str, str]:
    """Return the public name of each input."""
    return {name: field.public(name) for name, field in asked(calculation.inputs).items()}


def check_instruments(calculation: Declared, question: Question) -> None:
    """Raise ``Faulty`` where a reading's instrument is unknown or reads another kind."""
    known = question.measuring.instruments
    faults = []
    for path, stated in question.doubts.items():
        if stated.instrument is None:
            continue
        instrument = known.get(stated.instrument)
        if instrument is None:
            detail = f"no instrument {stated.instrument!r} is described in measuring"
            fault = Fault("unknown_instrument", detail, sorted(known), 422, given=stated.instrument)
            faults.append(_on(path, calculation, fault))
            continue
        kind = kind_of(field_at(calculation.inputs, path))
        if instrument.reads and kind is not None and instrument.reads != kind.name:
            detail = f"{stated.instrument!r} reads {instrument.reads}, not {kind.name}"
            faults.append(_on(path, calculation, Fault("wrong_instrument", detail, None, 422)))
    if faults:
        raise Faulty(faults)


def _on(path: Path, calculation: Declared, fault: Fault) -> Fault:
    fault = fault.under("instrument")
    for name in reversed(public_path(calculation.inputs, path)):
        fault = fault.under(name)
    return fault


def public_path(record: type, path: tuple[str | int, ...]) -> list[str | int]:
    """Return the public names along a path of core names."""
    if not path:
        return []
    key, *rest = path
    if isinstance(key, int):
        return [key, *public_path(record, tuple(rest))]
    field = asked(record).get(key)
    if field is None:
        return [*path]
    inner = getattr(field, "record", record)
    return [field.public(key), *public_path(inner, tuple(rest))]


def core_fault(calculation: Declared, error: CoreError) -> Fault:
    """Return an error of the core as a fault with its pointer, and those of the other fields."""
    detail = error.message + (f"; {error.right}" if error.right else "")

    def at(dotted: str) -> Fault:
        path = tuple(int(key) if key.isdecimal() else key for key in dotted.split("."))
        fault = Fault(error.code, detail, error.right or None, 422)
        for name in reversed(public_path(calculation.inputs, path)):
            fault = fault.under(name)
        return fault

    return replace(at(error.field), also=tuple(at(field).pointer for field in error.also))
