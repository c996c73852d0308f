"""The components of a composite's uncertainty, carried through the chain of its parts.

A component is a stated uncertainty, an error of an instrument, a temperature, or what a part adds
of itself (the weather). Each moves the fields and the results that rest on it, and what two of them
share stays shared: one bore reading that enters a part in two results moves both at once.

References
----------
JCGM 100:2008, 5.2: correlated inputs, here by the components that they share. A
part's result y moves by c = Σ (∂y/∂x_i)·c_i under a component that moves its inputs by c_i.
"""

import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from ringland_service.core.declare import Step, input_fields
from ringland_service.core.declare.fields import (
    AnyQuantityField,
    Field,
    NumberField,
    NumbersField,
    QuantityField,
    RecordsField,
    SectionField,
)
from ringland_service.core.metrology.candidates import Candidates
from ringland_service.core.metrology.extremes import Push, push
from ringland_service.core.metrology.propagation import Component, Effect, budget, value_at
from ringland_service.engine.intervals import Pushed
from ringland_service.engine.known import Carried, CarriedBy, Known, values
from ringland_service.engine.pushed import NOISE, is_push, pushes_of
from ringland_service.engine.request import Path, Request, fields_given, of_temperature
from ringland_service.engine.response import Response

# Digits that tell two directions apart: what rounding leaves between them is nothing.
ALIKE = 13
Extremes = Callable[[Mapping[str, Any]], Mapping[str, Candidates]]
Derive = Callable[[Mapping[str, Any]], Mapping[str, tuple[Any, str]]]


class _Read(dict[str, Any]):
    """Values by name, which note what of them was read."""

    def __init__(self, known: Mapping[str, Any]) -> None:
        super().__init__(known)
        self.names: dict[str, None] = {}

    def __getitem__(self, name: str) -> Any:
        self.names[name] = None
        return super().__getitem__(name)

    def get(self, name: str, default: Any = None) -> Any:
        """Return the value, or the default."""
        self.names[name] = None
        return super().get(name, default)


def components(components: Sequence[Component]) -> list[Component]:
    """Return the components on a composite's fields, each under a name of its own, in order."""
    return [replace(one, name=f"{n:05d} {one.name}") for n, one in enumerate(components)]


def on_fields(known: Mapping[str, Known], components: Iterable[Component]) -> dict[str, Known]:
    """Return the composite's own fields, each with what moves it or a reading inside it."""
    inside: dict[Path, dict[str, dict[Path, float]]] = {}
    for one in components:
        for effect in one.effects:
            for k in range(1, len(effect.path) + 1):
                of = inside.setdefault(effect.path[:k], {}).setdefault(one.name, {})
                of[effect.path[k:]] = of.get(effect.path[k:], 0.0) + float(
                    one.u * effect.sensitivity
                )
    return {name: replace(one, carried=inside.get(one.path, {})) for name, one in known.items()}


def of_results(step: Step, part: Response, components: Iterable[Component]) -> CarriedBy:
    """Return what moves each result of a part: the components carried to it, and its own.

    So too how far noise pushes it, which is no component of its uncertainty.
    """
    carried = {one.name for one in components}
    found: dict[str, dict[str, dict[Path, float]]] = {}
    for n, (component, share) in enumerate(part.shares):
        # Those of a part itself may be of one name, and are still apart.
        component = component if component in carried else f"{step.part} {n:03d}: {component}"
        for name, c in share.items():
            moved = {place: one for place, one in _places(c).items() if one}
            if moved:
                of = found.setdefault(name, {}).setdefault(component, {})
                of |= {place: of.get(place, 0.0) + one for place, one in moved.items()}
    for name, source, pushed in pushes_of(step, part):
        moved = {place: one for place, one in _places(pushed.shift).items() if one}
        found.setdefault(name, {}).setdefault(source, {}).update(moved)
    return found


@dataclass(frozen=True)
class ReadOut:
    """Values that a composite reads out of others; ``reliefs`` of those that noise pushes."""

    known: dict[str, Known]
    reliefs: dict[str, float]


def read_out(
    derive: Derive, known: Mapping[str, Known], extremes: Extremes | None = None
) -> ReadOut:
    """Return the values that a composite reads out of others, with what moves those."""
    bare = values(known)
    read = _Read(bare)
    found = derive(read)
    of = {n: known[n] for n in read.names if n in known}
    carried = dict(_read_out(derive, of, bare, found))
    reliefs: dict[str, float] = {}
    for name, pushed in _pushes_read(extremes, of, bare):
        carried[name] = {**carried.get(name, {}), f"{NOISE}{name}": {(): float(pushed.shift)}}
        reliefs[f"{NOISE}{name}"] = float(pushed.relief / pushed.shift**2)
    return ReadOut(
        {
            name: _as_read(known[of], value, carried.get(name, {}))
            for name, (value, of) in found.items()
        },
        reliefs,
    )


def _as_read(of: Known, value: Any, carried: Carried) -> Known:
    """Return a value read out, with the uncertainty as stated where it is still that of ``of``."""
    components = (places for name, places in carried.items() if not is_push(name))
    u = math.hypot(*(places.get((), 0.0) for places in components))
    uncertainties = {
        path: stated
        for path, stated in of.uncertainties.items()
        if stated.exact is None or math.isclose(float(stated.exact / 2), u)
    }
    return replace(of, value=value, uncertainties=uncertainties, carried=carried)


def _read_out(
    derive: Derive,
    read: Mapping[str, Known],
    bare: Mapping[str, Any],
    found: Mapping[str, tuple[Any, str]],
) -> CarriedBy:
    effects = _moves(read)
    if not found or not effects:
        return {}
    components = [
        _influence(component, [(path, c, _size(value_at(bare, path))) for path, c in on])
        for component, on in effects.items()
    ]
    outputs = {name: value for name, (value, _) in found.items()}

    def compute(moved: Mapping[str, Any]) -> dict[str, Any]:
        return {name: value for name, (value, _) in derive(moved).items()}

    carried: dict[str, dict[str, dict[Path, float]]] = {}
    shares = budget(compute, bare, components, outputs)
    for one, share in zip(components, shares, strict=True):
        for name, c in share.items():
            carried.setdefault(name, {})[one.name] = _places(c)
    return carried


def _pushes_read(
    extremes: Extremes | None, read: Mapping[str, Known], bare: Mapping[str, Any]
) -> Iterator[tuple[str, Push]]:
    """Yield the values read out that noise pushes, and how."""
    effects = _moves(read)
    if extremes is None or not effects:
        return
    candidates = extremes(bare)
    components = [
        _influence(component, [(path, c, _size(value_at(bare, path))) for path, c in on])
        for component, on in effects.items()
        if not is_push(component)
    ]

    def compute(moved: Mapping[str, Any]) -> dict[str, Any]:
        return {name: of.values for name, of in extremes(moved).items()}

    shares = budget(compute, bare, components)
    for name, of in candidates.items():
        found = push(of, np.array([share[name] for share in shares]))
        if found is not None and found.open:
            yield name, found


def _places(c: Any) -> dict[Path, float]:
    """Return a contribution by place: that of the value itself, or of each in a list."""
    if not np.ndim(c):
        return {(): float(c)}
    return {(place,): float(one) for place, one in enumerate(c)}


def _size(value: Any) -> float:
    return abs(value) or 1.0


def onto(inputs: Any, given: Mapping[str, Known], request: Request) -> tuple[Component, ...]:
    """Return how the components move a part's inputs, each all that it moves together."""
    found = [one for name, one in _onto(inputs, given).items() if not is_push(name)]
    for path, field, _ in fields_given(inputs):
        # A temperature that nobody gave is that of its part all the same, and as uncertain.
        if path[0] not in given:
            found += [
                replace(one, name=f"usual {one.name}")
                for one in of_temperature(request, path, field)
            ]
    return tuple(found)


def pushed_onto(
    inputs: Any, given: Mapping[str, Known], reliefs: Mapping[str, float]
) -> tuple[Pushed, ...]:
    """Return how what noise pushed in earlier parts moves a part's inputs.

    ``reliefs`` has the relief of each over the square of its shift.
    """
    found = _onto(inputs, given).items()
    return tuple(Pushed(name, reliefs[name], one) for name, one in found if is_push(name))


def _onto(inputs: Any, given: Mapping[str, Known]) -> dict[str, Component]:
    """Return how components and pushes move a part's inputs, by name."""
    return {
        component: _influence(component, [(path, c, _scale(inputs, path)) for path, c in on])
        for component, on in _moves(given).items()
    }


def _moves(given: Mapping[str, Known]) -> dict[str, list[tuple[Path, float]]]:
    """Return, by component in order, the places that it moves, and by how much."""
    effects: dict[str, list[tuple[Path, float]]] = {}
    for name, known in given.items():
        for component, places in known.carried.items():
            on = [((name, *place), c) for place, c in places.items() if c]
            if on:
                effects.setdefault(component, []).extend(on)
    return dict(sorted(effects.items()))


def _influence(name: str, on: Sequence[tuple[Path, float, float]]) -> Component:
    """Return the component of a component on places, given with contribution and scale.

    It is put so that the step of the derivative is small against the scale of each place.
    """
    largest = max(scale for *_, scale in on)
    u = max(abs(c) * (largest / scale) for _, c, scale in on)
    return Component(
        name,
        u,
        tuple(Effect(path, scale, float(f"{c / u:.{ALIKE}g}")) for path, c, scale in on),
    )


def _scale(inputs: Any, path: Path) -> float:
    """Return the typical magnitude of the input at a place."""
    record: type = type(inputs)
    field: Field | None = None
    for key in path:
        if isinstance(key, str):
            field = input_fields(record)[key]
            if not isinstance(field, (SectionField, RecordsField)):
                break
            record = field.record
    if isinstance(field, QuantityField):
        return field.type.scale
    if isinstance(field, (NumberField, NumbersField)):
        return field.high - field.low
    value = value_at(inputs, path)
    return max(abs(value), 1e-3) if isinstance(field, AnyQuantityField) else _size(value)
