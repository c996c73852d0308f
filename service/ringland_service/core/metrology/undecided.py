"""Whether uncertainty leaves open which reading a largest or a smallest rests on."""

import dataclasses
from collections.abc import Callable, Hashable, Iterable
from typing import Any

import numpy as np

from ringland_service.core.metrology.propagation import Influence, direction, moved, numeric_leaves


def merged(influences: Iterable[Influence]) -> list[Influence]:
    """Return the influences, those that move the same inputs alike as one: u = √Σ u²."""
    found: dict[Hashable, Influence] = {}
    for influence in influences:
        alike = direction(influence)
        if alike in found:
            influence = dataclasses.replace(
                found[alike], u=np.sqrt(found[alike].u ** 2 + influence.u**2)
            )
        found[alike] = influence
    return list(found.values())


def undecided(
    compute: Callable[[Any], Any],
    inputs: Any,
    influences: Iterable[Influence],
    names: Iterable[str],
    outputs: Any = None,
) -> dict[str, Any]:
    """Return, per named result, whether doubt leaves open which reading it rests on.

    ``outputs`` is what ``compute`` gives at the measured values, where it is known already.

    A largest or smallest of readings has a kink where another reading takes the lead. A kink
    within the doubt of a difference of two like readings (2·√2·u) shows as a move up that does
    not mirror the move down.
    """
    names = tuple(names)
    open_: dict[str, Any] = {}
    here = numeric_leaves(compute(inputs) if outputs is None else outputs)
    for influence in merged(influences):
        step = 2.0 * np.sqrt(2.0) * influence.u
        above = numeric_leaves(compute(moved(inputs, influence, step)))
        below = numeric_leaves(compute(moved(inputs, influence, -step)))
        for name in (n for n in names if n in here):
            bend = np.abs(above[name] + below[name] - 2.0 * here[name])
            found = bend > 0.05 * np.abs(above[name] - below[name]) + 1e-12
            open_[name] = open_.get(name, False) | found
    return open_
