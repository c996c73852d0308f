"""First-order propagation of uncertainty through any calculation.

Uncertainty is a list of *components*: each a standard uncertainty and the readings that it moves
together. A component that moves two readings alike cancels in their difference; that is how
"same instrument" narrows a clearance, an out-of-round or a taper.

References
----------
JCGM 100:2008, 5.1: u²(y) = Σ (∂y/∂x_i)² u²(x_i). The partial derivatives are
taken by central differences with a step of the cube root of the machine precision. Where two
readings tie under a largest, a smallest or a difference without sign, the slope up and the slope
down cancel or halve; there the derivatives are taken beside the kink, where one of them leads.
"""

import dataclasses
from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

# A component, and the results that bend under it: where, and by how much.
Bends = tuple["Component", Mapping[str, tuple[Any, Any]]]

STEP: float = float(np.finfo(float).eps) ** (1.0 / 3.0)
# A bend below this share of the slope changes u by no more.
BENT = 0.05
# A bend below this share of the result is rounding.
NOISE = 1e-11
# A bend counts as smooth where a step of one part in this many leaves about its square of it.
FINER = 8.0
# Significant digits that u is known to: differences over the step above lose the others.
DIGITS = 10
# Beside a kink: half a step away at most, and with a step that is small against that.
ASIDE, SMALL = 0.5, 1e-3
GOLDEN = (5.0**0.5 - 1.0) / 2.0


@dataclass(frozen=True)
class Effect:
    """How a component of one standard uncertainty moves one input: by ``sensitivity``·u.

    ``path`` leads to the input: a field, or on into a section and to one reading of a list
    (``("survey", "pin_axis_mm", 3)``). ``scale`` is a typical magnitude of the input, in its
    unit; it sets the step of the numeric derivative.
    """

    path: tuple[str | int, ...]
    scale: float
    sensitivity: Any = 1.0


@dataclass(frozen=True)
class Component:
    """A standard uncertainty u (scalar or column) and the inputs that it moves together."""

    name: str
    u: Any
    effects: tuple[Effect, ...]


def value_at(inputs: Any, path: Sequence[str | int]) -> Any:
    """Return the input that the path leads to."""
    for key in path:
        held = isinstance(key, int) or isinstance(inputs, Mapping)
        inputs = inputs[key] if held else getattr(inputs, str(key))
    return inputs


def _shifted(inputs: Any, path: Sequence[str | int], change: Any) -> Any:
    """Return the inputs with the one at the path changed by ``change``."""
    if not path:
        return inputs + change
    key, *rest = path
    if isinstance(key, int):
        return (*inputs[:key], _shifted(inputs[key], rest, change), *inputs[key + 1 :])
    if isinstance(inputs, Mapping):
        return {**inputs, key: _shifted(inputs[key], rest, change)}
    return dataclasses.replace(inputs, **{key: _shifted(getattr(inputs, key), rest, change)})


def moved(inputs: Any, component: Component, step: Any) -> Any:
    """Return the inputs with every reading of the component moved by ``step``·``sensitivity``."""
    for effect in component.effects:
        inputs = _shifted(inputs, effect.path, step * effect.sensitivity)
    return inputs


def step_of(component: Component) -> float:
    """Return the step of the derivative: the same for one value and for a column of them."""
    return STEP * max(effect.scale for effect in component.effects)


def numeric_leaves(outputs: Any) -> dict[str, Any]:
    """Return the results that can carry uncertainty, by name: floats, columns, lists of floats.

    Where an extreme stands is no such result: it jumps from one reading to the next.
    """
    leaves: dict[str, Any] = {}
    for name, value in _members(outputs):
        if isinstance(value, float) or (isinstance(value, np.ndarray) and value.dtype.kind == "f"):
            leaves[name] = value
        elif isinstance(value, tuple) and value and all(isinstance(v, float) for v in value):
            leaves[name] = np.asarray(value)
    return leaves


def _members(outputs: Any) -> Iterator[tuple[str, Any]]:
    """Yield the results by name, of a record or a mapping, less where an extreme stands."""
    if isinstance(outputs, Mapping):
        yield from outputs.items()
        return
    for field in dataclasses.fields(outputs):
        if not any(getattr(about, "place", False) for about in field.metadata.values()):
            yield field.name, getattr(outputs, field.name)


def _either_side(
    compute: Callable[[Any], Any], inputs: Any, component: Component, step: float
) -> tuple[dict[str, Any], dict[str, Any]]:
    """Return the results with the component moved up and moved down by a step."""
    above = numeric_leaves(compute(moved(inputs, component, step)))
    below = numeric_leaves(compute(moved(inputs, component, -step)))
    return above, below


def contributions(
    compute: Callable[[Any], Any],
    inputs: Any,
    components: Iterable[Component],
    finer: float = 1.0,
) -> list[dict[str, Any]]:
    """Return, per component, its contribution to each result: (∂y/∂x)·u, with its sign."""
    shares: list[dict[str, Any]] = []
    rises: dict[Hashable, dict[str, Any]] = {}
    for component in components:
        step, alike = step_of(component) * finer, direction(component)
        if alike not in rises:
            above, below = _either_side(compute, inputs, component, step)
            rises[alike] = {name: above[name] - below[name] for name in above if name in below}
        shares.append(_share(component, rises[alike], step))
    return shares


def direction(component: Component) -> Hashable:
    """Return what components have in common that move the same inputs by the same shares."""
    return tuple(
        (
            effect.path,
            effect.scale,
            id(effect.sensitivity)
            if isinstance(effect.sensitivity, np.ndarray)
            else effect.sensitivity,
        )
        for effect in component.effects
    )


def _share(component: Component, rises: Mapping[str, Any], step: float) -> dict[str, Any]:
    """Return the share of a component, from the rise of each result over twice the step."""
    factor = component.u / (2.0 * step)
    return {name: rise * factor for name, rise in rises.items()}


def as_known(u: Any) -> Any:
    """Return u to the digits that a slope over two close points has; the others are noise."""
    sizes = np.asarray(u, dtype=float)
    places = DIGITS - 1 - np.floor(np.log10(np.where(sizes > 0.0, sizes, 1.0)))
    # Powers of ten are exact up to 22, so that what is left is the nearest number to the decimal.
    scale = 10.0 ** np.minimum(places, 22.0)
    rounded = np.where(sizes > 0.0, np.rint(sizes * scale) / scale, sizes)
    return rounded if isinstance(u, np.ndarray) else float(rounded)


def combined(shares: Sequence[Mapping[str, Any]]) -> dict[str, Any]:
    """Return the standard uncertainty of each result that has any: u = √Σ share²."""
    total: dict[str, Any] = {}
    for share in shares:
        for name, value in share.items():
            total[name] = total.get(name, 0.0) + value * value
    moving = ((name, square) for name, square in total.items() if np.any(square))
    known = {name: as_known(np.sqrt(square)) for name, square in moving}
    # What rounds to nothing is none, in a single answer as in a row of a column.
    return {name: u for name, u in known.items() if np.any(u)}


def propagate(
    compute: Callable[[Any], Any],
    inputs: Any,
    components: Sequence[Component],
    outputs: Any = None,
) -> dict[str, Any]:
    """Return the standard uncertainty of each numeric result, by name.

    Parameters
    ----------
    compute : callable
        Pure; inputs record to results record.
    inputs : record
        At the measured values.
    components : sequence of Component
    outputs : record or None
        What ``compute`` gives at the measured values, where it is known already.

    Returns
    -------
    dict
        Name of the result to u, scalar or column or one per reading; empty without components.
    """
    return combined(budget(compute, inputs, components, outputs))


def budget(
    compute: Callable[[Any], Any],
    inputs: Any,
    components: Sequence[Component],
    outputs: Any = None,
) -> list[dict[str, Any]]:
    """Return, per component, its contribution to each numeric result: (∂y/∂x)·u, with its sign.

    As ``contributions``, but beside a kink where one stands at the readings. Parameters are those
    of ``propagate``.
    """
    here = numeric_leaves(compute(inputs) if outputs is None else outputs)
    shares: list[dict[str, Any]] = []
    bends: list[Bends] = []
    rises: dict[Hashable, dict[str, Any]] = {}
    for component in components:
        step, alike = step_of(component), direction(component)
        if alike not in rises:
            above, below = _either_side(compute, inputs, component, step)
            both = [name for name in here if name in above and name in below]
            rises[alike] = {name: above[name] - below[name] for name in both}
            bent = _bent(here, above, below, rises[alike])
            if bent:
                bends.append((component, bent))
        shares.append(_share(component, rises[alike], step))
    if bends:
        # Where a result jumps and is level to either side, nothing is left: a jump is no slope.
        _at_kinks(compute, inputs, components, _kinks(compute, inputs, here, bends), shares)
    return shares


def _bent(
    here: Mapping[str, Any],
    above: Mapping[str, Any],
    below: Mapping[str, Any],
    rises: Mapping[str, Any],
) -> dict[str, tuple[Any, Any]]:
    """Return the results that bend under a move up and down: where, and by how much."""
    bent: dict[str, tuple[Any, Any]] = {}
    for name, rise in rises.items():
        middle = here[name]
        bend = above[name] + below[name] - 2.0 * middle
        found = bend * bend > BENT * BENT * rise * rise
        if found.any() if isinstance(found, np.ndarray) else found:
            found = found & (np.abs(bend) > NOISE * np.abs(middle))
            bent[name] = (found, np.where(found, bend, 1.0))
    return bent


def _kinks(
    compute: Callable[[Any], Any], inputs: Any, here: Mapping[str, Any], bends: Sequence[Bends]
) -> dict[str, Any]:
    """Return which bent results have a kink, and no smooth turn, at the readings or near them.

    The bend of a smooth curve falls with the square of the step.
    """
    kinks: dict[str, Any] = {}
    for component, bent in bends:
        above, below = _either_side(compute, inputs, component, step_of(component) / FINER)
        for name, (found, bend) in bent.items():
            left = (above[name] + below[name] - 2.0 * here[name]) * FINER * FINER / bend
            kinks[name] = kinks.get(name, False) | (found & (np.abs(left - 1.0) > 0.5))
    return {name: kink for name, kink in kinks.items() if np.any(kink)}


def _at_kinks(
    compute: Callable[[Any], Any],
    inputs: Any,
    components: Sequence[Component],
    kinks: Mapping[str, Any],
    shares: Sequence[dict[str, Any]],
) -> None:
    """Put in the shares beside the kink, of results that have one: of the side with the larger u.

    Changes ``shares``.
    """
    if not kinks:
        return
    up, down = (
        contributions(compute, _aside(inputs, components, way), components, SMALL)
        for way in (1.0, -1.0)
    )
    u_up, u_down = combined(up), combined(down)
    for name, kink in kinks.items():
        higher = u_up.get(name, 0.0) >= u_down.get(name, 0.0)
        for share, above, below in zip(shares, up, down, strict=True):
            beside = np.where(higher, above.get(name, 0.0), below.get(name, 0.0))
            share[name] = np.where(kink, beside, share.get(name, 0.0))[()]


def _aside(inputs: Any, components: Sequence[Component], way: float) -> Any:
    """Return the inputs with each reading moved by a part of a step of its own, to undo ties.

    The parts are those of the squares times the golden ratio: no two are alike, and no two pairs
    of readings differ alike.
    """
    scales = {effect.path: effect.scale for component in components for effect in component.effects}
    for place, (path, scale) in enumerate(scales.items(), start=1):
        part = (place * place * GOLDEN) % 1.0
        inputs = _shifted(inputs, path, way * ASIDE * STEP * scale * part)
    return inputs
