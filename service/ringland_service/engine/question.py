"""A question as understood: canonical values, stated doubt, the request's own limits."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from ringland_service.core import quantities
from ringland_service.core.declare import asked
from ringland_service.core.errors import Contradiction
from ringland_service.core.fields import (
    AnyQuantityField,
    Field,
    NumberField,
    QuantityField,
    ReadingsField,
    RecordsField,
    SectionField,
)
from ringland_service.core.limits import Limit
from ringland_service.core.measuring import Instrument, Measured, influences
from ringland_service.core.uncertainty import Influence, Move
from ringland_service.core.verdicts import DEFAULT_RULE

# Leads to a field: by name, by place in a list of records.
Path = tuple[str | int, ...]


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
    left_out : mapping
        Path of a field to what its uncertainty leaves out, by the words of the inputs of an
        earlier part that state none (expanded, k = 2).
    told : bool or None
        Of a part: whether the whole question states any uncertainty.
    """

    inputs: Any
    doubts: Mapping[Path, Stated] = field(default_factory=dict)
    limits: Mapping[str, Limit] = field(default_factory=dict)
    defaults: bool = True
    rule: str = DEFAULT_RULE
    measuring: Measuring = field(default_factory=Measuring)
    left_out: Mapping[Path, Mapping[str, Any]] = field(default_factory=dict)
    told: bool | None = None

    @property
    def weigh(self) -> bool:
        """Whether the user states an uncertainty; of a part, in the whole question."""
        return bool(self.doubts) if self.told is None else self.told


def fields_given(inputs: Any, path: Path = ()) -> Iterator[tuple[Path, Field, Any]]:
    """Yield every field that is given, with its path and value, down to each record of a list."""
    record: type = type(inputs)
    for name, field_ in asked(record).items():
        value, here = getattr(inputs, name), (*path, name)
        if value is None:
            continue
        if isinstance(field_, SectionField):
            yield from fields_given(value, here)
        elif isinstance(field_, RecordsField):
            for place, one in enumerate(value):
                yield from fields_given(one, (*here, place))
        else:
            yield here, field_, value


def field_at(record: type, path: Path) -> Field:
    """Return the declared field that a path leads to, through sections and lists of records."""
    names = [key for key in path if isinstance(key, str)]
    for name in names[:-1]:
        inner = asked(record)[name]
        record = getattr(inner, "record", record)
    return asked(record)[names[-1]]


def places(path: Path, value: Any) -> list[tuple[Path, Any]]:
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
    for path, field_, value in fields_given(question.inputs):
        stated = question.doubts.get(path)
        if stated is None:
            found += _temperature(question, path, field_)
        elif stated.instrument is not None and isinstance(field_, QuantityField):
            scale = field_.type.scale
            measured += [
                Measured(stated.instrument, place, v, scale) for place, v in places(path, value)
            ]
        else:
            found += [
                Influence(".".join(map(str, move.path)), u / 2.0, (move,))
                for move, u in _moves(path, field_, value, stated.uncertainty)
            ]
    measuring = question.measuring
    return found + influences(measuring.instruments, measured, measuring.readings_each)


def _moves(path: Path, field_: Field, value: Any, uncertainty: Any) -> list[tuple[Move, Any]]:
    """Return how a stated uncertainty moves a field, reading by reading, each with its own."""
    if isinstance(field_, AnyQuantityField):
        return [(Move((*path, "value"), max(abs(value.value), 1e-3)), uncertainty)]
    if isinstance(field_, NumberField):
        return [(Move(path, field_.high - field_.low), uncertainty)]
    if not isinstance(field_, QuantityField):
        return []
    scale, each = field_.type.scale, isinstance(value, tuple) and np.ndim(uncertainty) > 0
    return [
        (Move(place, scale), uncertainty[place[-1]] if each else uncertainty)
        for place, _ in places(path, value)
    ]


def _temperature(question: Question, path: Path, field_: Field) -> list[Influence]:
    u = question.measuring.temperature_doubt_k
    if u is None or not isinstance(field_, QuantityField) or isinstance(field_, ReadingsField):
        return []
    if field_.type is not quantities.PART_TEMPERATURE:
        return []
    return [Influence(".".join(map(str, path)), u, (Move(path, field_.type.scale),))]


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
