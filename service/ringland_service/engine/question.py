"""A question as understood: canonical values, stated doubt, the request's own limits."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

import numpy as np

from ringland_service.core.declare import asked
from ringland_service.core.declare.fields import (
    AnyQuantityField,
    Field,
    NumberField,
    QuantityField,
    ReadingsField,
    RecordsField,
    SectionField,
)
from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.metrology.conformity import DEFAULT_RULE, beyond
from ringland_service.core.metrology.instruments import Instrument, Measured, influences
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.propagation import Influence, Move
from ringland_service.core.quantities import common as quantities
from ringland_service.engine.intervals import Pushed

# Leads to a field: by name, by place in a list of records.
Path = tuple[str | int, ...]


@dataclass(frozen=True)
class Stated:
    """The doubt of one field as stated: an expanded uncertainty (k = 2), or an instrument.

    ``exact`` is the uncertainty in the canonical unit to the last digit, so that the answer can
    show it as it was stated.
    """

    uncertainty: Any = None
    instrument: str | None = None
    exact: Fraction | None = None


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
        Whether common-practice figures stand in where the request gives none.
    rule : str
    measuring : Measuring
    left_out : mapping
        Path of a field to what its uncertainty leaves out, by the words of the inputs of an
        earlier part that state none (expanded, k = 2).
    told : bool or None
        Of a part: whether the whole question states any uncertainty.
    carried : tuple of Influence or None
        Of a part: how the components of the whole question move the part's inputs. They stand in
        place of ``doubts``, which say what of it was stated with which input.
    pushed : tuple of Pushed
        Of a part: results of earlier parts that noise pushes, and how they move the part's inputs.
    """

    inputs: Any
    doubts: Mapping[Path, Stated] = field(default_factory=dict)
    limits: Mapping[str, Limit] = field(default_factory=dict)
    defaults: bool = True
    rule: str = DEFAULT_RULE
    measuring: Measuring = field(default_factory=Measuring)
    left_out: Mapping[Path, Mapping[str, Any]] = field(default_factory=dict)
    told: bool | None = None
    carried: tuple[Influence, ...] | None = None
    pushed: tuple[Pushed, ...] = ()

    @property
    def weigh(self) -> bool:
        """Whether the user states an uncertainty; of a part, in the whole question.

        Usual readings are common practice: where that is switched off, none is weighed.
        """
        told = bool(self.doubts) if self.told is None else self.told
        return told and self.defaults


def present(inputs: Any, names: Sequence[str]) -> bool:
    """Return whether all the named inputs are given."""
    return all(getattr(inputs, name) is not None for name in names)


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


def as_stated(doubts: Mapping[Path, Stated], moved: Mapping[Path, Any]) -> dict[Path, Any]:
    """Return u of the inputs moved, exact where the uncertainty was stated with the input.

    ``moved`` reaches into a quantity or a list of readings; the doubt is stated with the whole.
    """
    found = dict(moved)
    for path in moved:
        stated = doubts.get(path) or doubts.get(path[:-1])
        if stated is not None and stated.exact is not None:
            found[path] = stated.exact / 2
    return found


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
        Where a reading names an instrument that is not described, or one that leaves more
        uncertainty on it than can be meant.
    """
    if question.carried is not None:
        return list(question.carried)
    if not question.doubts and question.measuring.temperature_doubt_k is None:
        return []
    found: list[Influence] = []
    measured: list[Measured] = []
    for path, field_, value in fields_given(question.inputs):
        stated = question.doubts.get(path)
        if stated is None:
            found += of_temperature(question, path, field_)
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
    known = measuring.instruments
    if not question.defaults:
        known = {name: instrument.own() for name, instrument in known.items()}
    bench = influences(known, measured, measuring.readings_each)
    _insist_on_meant(question.inputs, measured, bench)
    return found + bench


def on_inputs(influences: Sequence[Influence]) -> dict[Path, Any]:
    """Return u of each input that influences move directly, by its path."""
    squares: dict[Path, Any] = {}
    for influence in influences:
        for move in influence.moves:
            share = influence.u * move.by
            squares[move.path] = squares.get(move.path, 0.0) + share * share
    return {path: np.sqrt(square) for path, square in squares.items()}


def _insist_on_meant(inputs: Any, measured: Sequence[Measured], bench: Sequence[Influence]) -> None:
    """Refuse instruments that leave on a reading more than could be stated as its uncertainty.

    Raises
    ------
    OutOfBounds
        Names the reading.
    """
    left = on_inputs(bench)
    for reading in measured:
        of = field_at(type(inputs), reading.path)
        expanded = 2.0 * float(left.get(reading.path, 0.0))
        if not isinstance(of, QuantityField):
            continue
        most = of.type.most_uncertainty(reading.value)
        if beyond(expanded, most):
            unit = of.type.kind.unit
            raise OutOfBounds(
                ".".join(map(str, reading.path)),
                f"the instrument {reading.instrument!r} leaves an expanded uncertainty (k = 2) of"
                f" {expanded:.6g} {unit} on this reading; at most {most:.6g} {unit} can be meant",
                "check the instrument's figures and their units",
            )


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


def of_temperature(question: Question, path: Path, field_: Field) -> list[Influence]:
    """Return what the stated uncertainty of temperatures does to a field: nothing to others."""
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
