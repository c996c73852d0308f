"""A question as understood: canonical values, stated doubt, the request's own limits."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from ringland_service.core import quantities
from ringland_service.core.declare import asked
from ringland_service.core.errors import Contradiction
from ringland_service.core.fields import (
    AnyQuantityField,
    NumberField,
    QuantityField,
    ReadingsField,
    SectionField,
)
from ringland_service.core.limits import Limit
from ringland_service.core.measuring import Instrument, Measured, influences
from ringland_service.core.uncertainty import Influence, Move, value_at
from ringland_service.core.verdicts import DEFAULT_RULE

Path = tuple[str, ...]


@dataclass(frozen=True)
class Stated:
    """The doubt of one field as stated: an expanded uncertainty (k = 2), or an instrument."""

    uncertainty: Any = None
    instrument: str | None = None


@dataclass(frozen=True)
class Measuring:
    """How the readings were taken."""

    instruments: Mapping[str, Instrument] = field(default_factory=dict)
    readings_each: int = 1
    temperature_doubt_k: float | None = None


@dataclass(frozen=True)
class Question:
    """Everything that one answer rests on.

    Attributes
    ----------
    inputs : record
        In canonical units; floats, or columns of one length.
    doubts : mapping
        Path of a field to its stated doubt.
    limits : mapping
        Name of a check to the request's own limit.
    defaults : bool
        Whether common-practice limits judge where the request gives none.
    rule : str
    measuring : Measuring
    """

    inputs: Any
    doubts: Mapping[Path, Stated] = field(default_factory=dict)
    limits: Mapping[str, Limit] = field(default_factory=dict)
    defaults: bool = True
    rule: str = DEFAULT_RULE
    measuring: Measuring = field(default_factory=Measuring)


def any_quantities(record: type) -> tuple[str, ...]:
    """Return the fields of a record that take a quantity of any kind."""
    return tuple(n for n, f in asked(record).items() if isinstance(f, AnyQuantityField))


def quantity_fields(record: type, path: Path = ()) -> Iterator[tuple[Path, QuantityField]]:
    """Yield every quantity of a record, and of its sections, with its path."""
    for name, declared_field in asked(record).items():
        if isinstance(declared_field, QuantityField):
            yield (*path, name), declared_field
        elif isinstance(declared_field, SectionField):
            yield from quantity_fields(declared_field.record, (*path, name))


def _value(inputs: Any, path: Path) -> Any:
    """Return the value at the path, or None where a section on the way is absent."""
    for depth in range(len(path)):
        if inputs is None:
            return None
        inputs = value_at(inputs, path[depth : depth + 1])
    return inputs


def _places(path: Path, value: Any) -> list[tuple[tuple[str | int, ...], Any]]:
    """Return where the field's readings stand: itself, or each reading of its list."""
    if isinstance(value, tuple):
        return [((*path, i), v) for i, v in enumerate(value) if v is not None]
    return [(path, value)]


def stated_influences(question: Question) -> list[Influence]:
    """Return the influences that the question states: uncertainties, instruments, temperature.

    Raises
    ------
    CoreError
        Where a reading names an instrument that is not described.
    """
    if not question.doubts and question.measuring.temperature_doubt_k is None:
        return []
    found: list[Influence] = []
    measured: list[Measured] = []
    record: type = type(question.inputs)
    found += _of_any_kind(question, record) + _of_numbers(question, record)
    for path, declared_field in quantity_fields(record):
        value = _value(question.inputs, path)
        stated = question.doubts.get(path)
        if value is None:
            continue
        scale = declared_field.type.scale
        if stated is None:
            found += _temperature(question, path, declared_field)
        elif stated.instrument is not None:
            measured += [
                Measured(stated.instrument, place, v, scale) for place, v in _places(path, value)
            ]
        else:
            u = stated.uncertainty / 2.0
            found += [
                Influence(".".join(map(str, place)), u, (Move(place, scale),))
                for place, _ in _places(path, value)
            ]
    measuring = question.measuring
    return found + influences(measuring.instruments, measured, measuring.readings_each)


def _of_any_kind(question: Question, record: type) -> list[Influence]:
    """Return the influences stated on quantities of any kind."""
    found = []
    for name in any_quantities(record):
        value, stated = getattr(question.inputs, name), question.doubts.get((name,))
        if value is not None and stated is not None:
            move = Move((name, "value"), max(abs(value.value), 1e-3))
            found.append(Influence(name, stated.uncertainty / 2.0, (move,)))
    return found


def _of_numbers(question: Question, record: type) -> list[Influence]:
    """Return the influences on bare numbers, such as a ratio that an earlier part worked out."""
    found = []
    for name, f in asked(record).items():
        stated = question.doubts.get((name,))
        if isinstance(f, NumberField) and stated is not None:
            move = Move((name,), f.high - f.low)
            found.append(Influence(name, stated.uncertainty / 2.0, (move,)))
    return found


def _temperature(question: Question, path: Path, declared_field: QuantityField) -> list[Influence]:
    u = question.measuring.temperature_doubt_k
    if u is None or declared_field.type is not quantities.PART_TEMPERATURE:
        return []
    if isinstance(declared_field, ReadingsField):
        return []
    return [Influence(".".join(path), u, (Move(path, declared_field.type.scale),))]


def all_influences(question: Question, calculation: Any) -> list[Influence]:
    """Return the stated influences and those that the calculation derives from its inputs.

    Raises
    ------
    Contradiction
        Where the doubt of one field is said twice.
    """
    stated = stated_influences(question)
    if calculation.influences is None:
        return stated
    derived: list[Influence] = calculation.influences(question.inputs)
    said = {move.path[0] for influence in stated for move in influence.moves}
    for influence in derived:
        name = str(influence.moves[0].path[0])
        if name in said:
            raise Contradiction(
                name,
                f"its doubt is stated twice: on the reading and by {influence.name}",
                "state it once",
            )
    return stated + derived
