"""A question as understood: canonical values, stated uncertainty, the request's own limits."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

import numpy as np

from ringland_service.core.declare import input_fields
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
from ringland_service.core.metrology.instruments import Instrument, Measured, components
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.core.quantities import common as quantities
from ringland_service.engine.intervals import Pushed

# Leads to a field: by name, by place in a list of records.
Path = tuple[str | int, ...]


@dataclass(frozen=True)
class Stated:
    """The uncertainty of one field as stated: an expanded uncertainty (k = 2), or an instrument.

    ``exact`` is the uncertainty in the canonical unit to the last digit, so that the answer can
    show it as it was stated.
    """

    uncertainty: Any = None
    instrument: str | None = None
    exact: Fraction | None = None


@dataclass(frozen=True)
class Measuring:
    """How the readings were taken; the uncertainty of temperatures is expanded (k = 2)."""

    instruments: Mapping[str, Instrument] = field(default_factory=dict)
    readings_each: int = 1
    temperature_uncertainty_k: float | None = None


@dataclass(frozen=True)
class Request:
    """Everything that one answer rests on.

    Attributes
    ----------
    inputs : record
        In canonical units; floats, or columns of one length.
    uncertainties : mapping
        Path of a field to its stated uncertainty.
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
    carried : tuple of Component or None
        Of a part: how the components of the whole question move the part's inputs. They stand in
        place of ``uncertainties``, which say what of it was stated with which input.
    pushed : tuple of Pushed
        Of a part: results of earlier parts that noise pushes, and how they move the part's inputs.
    """

    inputs: Any
    uncertainties: Mapping[Path, Stated] = field(default_factory=dict)
    limits: Mapping[str, Limit] = field(default_factory=dict)
    defaults: bool = True
    rule: str = DEFAULT_RULE
    measuring: Measuring = field(default_factory=Measuring)
    left_out: Mapping[Path, Mapping[str, Any]] = field(default_factory=dict)
    told: bool | None = None
    carried: tuple[Component, ...] | None = None
    pushed: tuple[Pushed, ...] = ()

    @property
    def weigh(self) -> bool:
        """Whether the user states an uncertainty; of a part, in the whole question.

        Usual readings are common practice: where that is switched off, none is weighed.
        """
        told = bool(self.uncertainties) if self.told is None else self.told
        return told and self.defaults


def present(inputs: Any, names: Sequence[str]) -> bool:
    """Return whether all the named inputs are given."""
    return all(getattr(inputs, name) is not None for name in names)


def fields_given(inputs: Any, path: Path = ()) -> Iterator[tuple[Path, Field, Any]]:
    """Yield every field that is given, with its path and value, down to each record of a list."""
    record: type = type(inputs)
    for name, field_ in input_fields(record).items():
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


def as_stated(uncertainties: Mapping[Path, Stated], moved: Mapping[Path, Any]) -> dict[Path, Any]:
    """Return u of the inputs moved, exact where the uncertainty was stated with the input.

    ``moved`` reaches into a quantity or a list of readings; uncertainty is stated with the whole.
    """
    found = dict(moved)
    for path in moved:
        stated = uncertainties.get(path) or uncertainties.get(path[:-1])
        if stated is not None and stated.exact is not None:
            found[path] = stated.exact / 2
    return found


def field_at(record: type, path: Path) -> Field:
    """Return the declared field that a path leads to, through sections and lists of records."""
    names = [key for key in path if isinstance(key, str)]
    for name in names[:-1]:
        inner = input_fields(record)[name]
        record = getattr(inner, "record", record)
    return input_fields(record)[names[-1]]


def places(path: Path, value: Any) -> list[tuple[Path, Any]]:
    """Return where the field's readings stand: itself, or each reading of its list."""
    if isinstance(value, tuple):
        return [((*path, i), v) for i, v in enumerate(value) if v is not None]
    return [(path, value)]


def stated_components(request: Request) -> list[Component]:
    """Return the components that the question states: uncertainties, instruments, temperature.

    Raises
    ------
    CoreError
        Where a reading names an instrument that is not described, or one that leaves more
        uncertainty on it than can be meant.
    """
    if request.carried is not None:
        return list(request.carried)
    if not request.uncertainties and request.measuring.temperature_uncertainty_k is None:
        return []
    found: list[Component] = []
    measured: list[Measured] = []
    for path, field_, value in fields_given(request.inputs):
        stated = request.uncertainties.get(path)
        if stated is None:
            found += of_temperature(request, path, field_)
        elif stated.instrument is not None and isinstance(field_, QuantityField):
            scale = field_.type.scale
            measured += [
                Measured(stated.instrument, place, v, scale) for place, v in places(path, value)
            ]
        else:
            found += [
                Component(".".join(map(str, effect.path)), u / 2.0, (effect,))
                for effect, u in _moves(path, field_, value, stated.uncertainty)
            ]
    measuring = request.measuring
    known = measuring.instruments
    if not request.defaults:
        known = {name: instrument.own() for name, instrument in known.items()}
    bench = components(known, measured, measuring.readings_each)
    _insist_on_meant(request.inputs, measured, bench)
    return found + bench


def on_inputs(components: Sequence[Component]) -> dict[Path, Any]:
    """Return u of each input that components move directly, by its path."""
    squares: dict[Path, Any] = {}
    for component in components:
        for effect in component.effects:
            share = component.u * effect.sensitivity
            squares[effect.path] = squares.get(effect.path, 0.0) + share * share
    return {path: np.sqrt(square) for path, square in squares.items()}


def _insist_on_meant(inputs: Any, measured: Sequence[Measured], bench: Sequence[Component]) -> None:
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


def _moves(path: Path, field_: Field, value: Any, uncertainty: Any) -> list[tuple[Effect, Any]]:
    """Return how a stated uncertainty moves a field, reading by reading, each with its own."""
    if isinstance(field_, AnyQuantityField):
        return [(Effect((*path, "value"), max(abs(value.value), 1e-3)), uncertainty)]
    if isinstance(field_, NumberField):
        return [(Effect(path, field_.high - field_.low), uncertainty)]
    if not isinstance(field_, QuantityField):
        return []
    scale, each = field_.type.scale, isinstance(value, tuple) and np.ndim(uncertainty) > 0
    return [
        (Effect(place, scale), uncertainty[place[-1]] if each else uncertainty)
        for place, _ in places(path, value)
    ]


def of_temperature(request: Request, path: Path, field_: Field) -> list[Component]:
    """Return what the stated uncertainty of temperatures does to a field: nothing to others."""
    expanded = request.measuring.temperature_uncertainty_k
    if expanded is None or isinstance(field_, ReadingsField):
        return []
    if not isinstance(field_, QuantityField) or field_.type is not quantities.PART_TEMPERATURE:
        return []
    return [Component(".".join(map(str, path)), expanded / 2.0, (Effect(path, field_.type.scale),))]


def all_components(request: Request, calculation: Any) -> list[Component]:
    """Return the stated components and those that the calculation derives from its inputs.

    Raises
    ------
    Contradiction
        Where the uncertainty of one field is said twice.
    """
    stated = stated_components(request)
    if calculation.components is None:
        return stated
    derived: list[Component] = calculation.components(request.inputs)
    said = {effect.path[0] for component in stated for effect in component.effects}
    for component in derived:
        name = str(component.effects[0].path[0])
        if name in said:
            raise Contradiction(
                name,
                f"its uncertainty is stated twice: on the reading and by {component.name}",
                "state it once",
            )
    return stated + derived
