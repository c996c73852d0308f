"""From a request's data to a question as the engine understands it."""

from dataclasses import replace
from functools import cache
from typing import Any

from marshmallow import Schema

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.reading.common_fields import envelope_fields
from ringland_service.api.reading.schemas import load, schema, understand, understand_some
from ringland_service.core.declare import Operation, Way, input_fields
from ringland_service.core.declare.fields import kind_of
from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.conformity import DEFAULT_RULE
from ringland_service.engine.request import (
    Measuring,
    Path,
    Request,
    Stated,
    field_at,
)


@cache
def request_schema(calculation: Operation) -> Schema:
    """Return the schema of a request's JSON: the calculation's fields and the envelope's."""
    return schema(calculation.inputs, tuple(envelope_fields(calculation).items()))


def partly_understood(calculation: Operation, data: Any) -> tuple[Request, dict[str, Any]]:
    """Return what the rows of a batch share: a question without inputs, and the values given.

    Raises
    ------
    Faulty
        With every fault found in reading it.
    """
    loaded = load(request_schema(calculation), data, partial=True)
    values, uncertainties = understand_some(calculation.inputs, loaded)
    request = _question(loaded, None, uncertainties)
    check_instruments(calculation, request)
    return request, values


def _question(loaded: dict[str, Any], inputs: Any, uncertainties: dict[Path, Stated]) -> Request:
    return Request(
        inputs=inputs,
        uncertainties=uncertainties,
        limits=loaded.get("limits", {}),
        defaults=loaded.get("defaults", "on") == "on",
        rule=loaded.get("rule", DEFAULT_RULE),
        measuring=loaded.get("measuring") or Measuring(),
    )


def parsed(calculation: Operation, data: Any) -> Request:
    """Return the question that a JSON object asks.

    Raises
    ------
    Faulty
        With every fault found in reading it.
    """
    loaded = load(request_schema(calculation), data)
    insist_one_of(calculation, loaded.keys())
    inputs, uncertainties = understand(calculation.inputs, loaded)
    request = _question(loaded, inputs, uncertainties)
    if uncertainties:
        check_instruments(calculation, request)
    return request


def insist_one_of(calculation: Operation, given: Any) -> None:
    """Raise ``Faulty`` where none of several ways is given."""
    faults = [
        FieldError(
            "missing_field",
            f"one of these is needed: {spoken_ways(calculation, ways)}",
            [[public_names(calculation)[name] for name in way] for way in ways],
            status=422,
            pointer=f"/{public_names(calculation)[ways[0][0]]}",
        )
        for ways in calculation.any_of
        if not any(all(name in given for name in way) for way in ways)
    ]
    if faults:
        raise FieldErrors(faults)


def spoken_ways(calculation: Operation, ways: tuple[Way, ...]) -> str:
    """Return ways in words: fields that go together joined by plus, ways by or."""
    public = public_names(calculation)
    return " or ".join(" + ".join(public[name] for name in way) for way in ways)


@cache
def public_names(calculation: Operation) -> dict[str, str]:
    """Return the public name of each input."""
    return {name: field.public(name) for name, field in input_fields(calculation.inputs).items()}


def check_instruments(calculation: Operation, request: Request) -> None:
    """Raise ``Faulty`` where a reading's instrument is unknown or reads another kind."""
    known = request.measuring.instruments
    faults = []
    for path, stated in request.uncertainties.items():
        if stated.instrument is None:
            continue
        instrument = known.get(stated.instrument)
        if instrument is None:
            detail = f"no instrument {stated.instrument!r} is described in measuring"
            fault = FieldError(
                "unknown_instrument", detail, sorted(known), 422, given=stated.instrument
            )
            faults.append(_on(path, calculation, fault))
            continue
        kind = kind_of(field_at(calculation.inputs, path))
        if instrument.reads and kind is not None and instrument.reads != kind.name:
            detail = f"{stated.instrument!r} reads {instrument.reads}, not {kind.name}"
            faults.append(_on(path, calculation, FieldError("wrong_instrument", detail, None, 422)))
    if faults:
        raise FieldErrors(faults)


def _on(path: Path, calculation: Operation, fault: FieldError) -> FieldError:
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
    field = input_fields(record).get(key)
    if field is None:
        return [*path]
    inner = getattr(field, "record", record)
    return [field.public(key), *public_path(inner, tuple(rest))]


def core_fault(calculation: Operation, error: CoreError) -> FieldError:
    """Return an error of the core as a fault with its pointer, and those of the other fields."""
    detail = error.message + (f"; {error.right}" if error.right else "")

    def at(dotted: str) -> FieldError:
        path = tuple(int(key) if key.isdecimal() else key for key in dotted.split("."))
        fault = FieldError(error.code, detail, error.right or None, 422)
        for name in reversed(public_path(calculation.inputs, path)):
            fault = fault.under(name)
        return fault

    return replace(at(error.field), also=tuple(at(field).pointer for field in error.also))
