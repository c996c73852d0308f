"""First-order propagation of doubt through any calculation.

Doubt is a list of *influences*: each a standard uncertainty and the readings that it moves
together. An influence that moves two readings alike cancels in their difference; that is how
"same instrument" narrows a clearance, an out-of-round or a taper.

References
----------
JCGM 100:2008 (from memory), 5.1: u²(y) = Σ (∂y/∂x_i)² u²(x_i). The partial derivatives are
taken by central differences with a step of the cube root of the machine precision.
"""

import dataclasses
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

STEP: float = float(np.finfo(float).eps) ** (1.0 / 3.0)


@dataclass(frozen=True)
class Move:
    """How an influence of one standard uncertainty moves one input: by ``by``·u.

    ``path`` leads to the input: a field, or on into a section and to one reading of a list
    (``("survey", "pin_axis_mm", 3)``). ``scale`` is a typical magnitude of the input, in its
    unit; it sets the step of the numeric derivative where the value itself is near zero.
    """

    path: tuple[str | int, ...]
    scale: float
    by: Any = 1.0


@dataclass(frozen=True)
class Influence:
    """A standard uncertainty u (scalar or column) and the inputs that it moves together."""

    name: str
    u: Any
    moves: tuple[Move, ...]


def value_at(inputs: Any, path: Sequence[str | int]) -> Any:
    """Return the input that the path leads to."""
    for key in path:
        inputs = inputs[key] if isinstance(key, int) else getattr(inputs, key)
    return inputs


def _shifted(inputs: Any, path: Sequence[str | int], change: Any) -> Any:
    """Return the inputs with the one at the path changed by ``change``."""
    if not path:
        return inputs + change
    key, *rest = path
    if isinstance(key, int):
        return (*inputs[:key], _shifted(inputs[key], rest, change), *inputs[key + 1 :])
    return dataclasses.replace(inputs, **{key: _shifted(getattr(inputs, key), rest, change)})


def moved(inputs: Any, influence: Influence, step: Any) -> Any:
    """Return the inputs with every reading of the influence moved by ``step``·``by``."""
    for move in influence.moves:
        inputs = _shifted(inputs, move.path, step * move.by)
    return inputs


def _step(inputs: Any, influence: Influence) -> float:
    sizes: list[float] = [move.scale for move in influence.moves]
    values = (value_at(inputs, move.path) for move in influence.moves)
    sizes += [abs(value) for value in values if isinstance(value, float)]
    return STEP * max(sizes)


def numeric_leaves(outputs: Any) -> dict[str, Any]:
    """Return the results that can carry doubt, by name: floats, columns, lists of floats.

    Where an extreme stands is no such result: it jumps from one reading to the next.
    """
    leaves: dict[str, Any] = {}
    for field in dataclasses.fields(outputs):
        value = getattr(outputs, field.name)
        if any(getattr(about, "place", False) for about in field.metadata.values()):
            continue
        if isinstance(value, float) or (isinstance(value, np.ndarray) and value.dtype.kind == "f"):
            leaves[field.name] = value
        elif isinstance(value, tuple) and value and all(isinstance(v, float) for v in value):
            leaves[field.name] = np.asarray(value)
    return leaves


def contributions(
    compute: Callable[[Any], Any], inputs: Any, influences: Iterable[Influence]
) -> list[dict[str, Any]]:
    """Return, per influence, its share of the doubt of each result: (∂y/∂x)·u, with its sign."""
    shares: list[dict[str, Any]] = []
    for influence in influences:
        step = _step(inputs, influence)
        above = numeric_leaves(compute(moved(inputs, influence, step)))
        below = numeric_leaves(compute(moved(inputs, influence, -step)))
        factor = influence.u / (2.0 * step)
        shares.append({name: (above[name] - below[name]) * factor for name in above})
    return shares


def combined(shares: Sequence[Mapping[str, Any]]) -> dict[str, Any]:
    """Return the standard uncertainty of each result that has any: u = √Σ share²."""
    total: dict[str, Any] = {}
    for share in shares:
        for name, value in share.items():
            total[name] = total.get(name, 0.0) + value * value
    return {name: np.sqrt(square) for name, square in total.items() if np.any(square)}


def undecided(
    compute: Callable[[Any], Any],
    inputs: Any,
    influences: Iterable[Influence],
    names: Iterable[str],
) -> dict[str, Any]:
    """Return, per named result, whether doubt leaves open which reading it rests on.

    A largest or smallest of readings has a kink where another reading takes the lead. A kink
    within the doubt of a difference of two like readings (2·√2·u) shows as a move up that does
    not mirror the move down.
    """
    names = tuple(names)
    open_: dict[str, Any] = {}
    here = numeric_leaves(compute(inputs))
    for influence in influences:
        step = 2.0 * np.sqrt(2.0) * influence.u
        above = numeric_leaves(compute(moved(inputs, influence, step)))
        below = numeric_leaves(compute(moved(inputs, influence, -step)))
        for name in (n for n in names if n in here):
            bend = np.abs(above[name] + below[name] - 2.0 * here[name])
            found = bend > 0.05 * np.abs(above[name] - below[name]) + 1e-12
            open_[name] = open_.get(name, False) | found
    return open_


def propagate(
    compute: Callable[[Any], Any], inputs: Any, influences: Sequence[Influence]
) -> dict[str, Any]:
    """Return the standard uncertainty of each numeric result, by name.

    Parameters
    ----------
    compute : callable
        Pure; inputs record to results record.
    inputs : record
        At the measured values.
    influences : sequence of Influence

    Returns
    -------
    dict
        Name of the result to u, scalar or column or one per reading; empty without influences.
    """
    return combined(contributions(compute, inputs, influences))
