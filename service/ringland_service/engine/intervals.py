"""The 95 % intervals of results that rest on a largest or a smallest of readings that tie.

What noise pushes in one part of a composite it pushes in the parts that rest on it as well.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields, replace
from functools import cache
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, declared, input_fields
from ringland_service.core.declare.fields import QuantityField
from ringland_service.core.errors import OutOfBounds
from ringland_service.core.metrology.candidates import Candidates
from ringland_service.core.metrology.extremes import Interval, Push, interval, push
from ringland_service.core.metrology.propagation import (
    Component,
    Effect,
    budget,
    direction,
    moved,
    step_of,
)

# By result, by what is pushed: the result itself, or a result of an earlier part.
Pushes = Mapping[str, Mapping[str, Push]]


@dataclass(frozen=True)
class Pushed:
    """A result of an earlier part that noise pushes, and how its shift moves the inputs.

    ``relief`` is that of its push over the square of its shift.
    """

    source: str
    relief: float
    effects: Component


def candidates(calculation: Calculation, inputs: Any) -> dict[str, tuple[Candidates, ...]]:
    """Return, by result, what it is the largest or smallest of; of a list each of its members."""
    if calculation.extremes is None:
        return {}
    found = calculation.extremes(inputs).items()
    return {name: of if isinstance(of, tuple) else (of,) for name, of in found}


def own_pushes(
    calculation: Calculation, inputs: Any, outputs: Any, components: Sequence[Component]
) -> dict[str, dict[str, Push]]:
    """Return how noise pushes each extreme among the results."""
    known = candidates(calculation, inputs)
    if not known:
        return {}
    effects = contributions(calculation, inputs, components)
    found: dict[str, dict[str, Push]] = {}
    for name, each in known.items():
        pairs = zip(each, effects[name], strict=True)
        pushes = [push(of, c if _is_column(of, c) else c[:, 0]) for of, c in pairs]
        given = [one for one in pushes if one is not None]
        if given:
            is_list = isinstance(getattr(outputs, name), tuple)
            found[name] = {name: _in_a_row(pushes) if is_list else given[0]}
    return found


def contributions(
    calculation: Calculation, inputs: Any, components: Sequence[Component]
) -> dict[str, list[Any]]:
    """Return what components contribute to the candidates, by result and place in a list.

    An array has the components along its first axis, then rows, then candidates. All moves are
    worked out in one call, each beside the rows of a column.
    """
    merged = _merged(components)
    steps = [step_of(one) for one in merged]
    there = candidates(calculation, moved(inputs, _all_moves(merged, steps), 1.0))
    weights = _rows([one.u / (2.0 * step) for one, step in zip(merged, steps, strict=True)])
    found: dict[str, list[Any]] = {}
    for name, each in there.items():
        shape = (2 * len(merged), 1, 1)
        values = [
            np.broadcast_to(of.values, np.broadcast_shapes(of.values.shape, shape)) for of in each
        ]
        rises = [v[: len(merged)] - v[len(merged) :] for v in values]
        found[name] = [rise * weights[..., np.newaxis] for rise in rises]
    return found


def _is_column(of: Candidates, effects: Any) -> bool:
    return bool(of.values.ndim > 1 or effects.shape[1] > 1)


def _rows(cells: Sequence[Any]) -> Any:
    """Return numbers, or columns, as the rows of one array of two axes."""
    found = np.stack(np.broadcast_arrays(*cells))
    return found if found.ndim > 1 else found[:, np.newaxis]


def _all_moves(merged: Sequence[Component], steps: Sequence[float]) -> Component:
    """Return one component that moves the inputs as each does, a row each up, then a row down."""
    by_path: dict[Any, list[Any]] = {}
    for row, (one, step) in enumerate(zip(merged, steps, strict=True)):
        for effect in one.effects:
            by_path.setdefault(effect.path, [0.0] * len(merged))[row] += step * effect.sensitivity
    effects = []
    for path, cells in by_path.items():
        up = _rows(cells)
        effects.append(Effect(path, 1.0, np.concatenate([up, -up])))
    return Component("every move", 1.0, tuple(effects))


def _merged(components: Sequence[Component]) -> list[Component]:
    """Return the components, those that move the same inputs alike as one: u = √Σ u²."""
    found: dict[Any, Component] = {}
    for one in components:
        alike = direction(one)
        if alike in found:
            one = replace(found[alike], u=np.sqrt(found[alike].u ** 2 + one.u**2))
        found[alike] = one
    return list(found.values())


def _in_a_row(pushes: Sequence[Push | None]) -> Push:
    """Return the pushes of the members of a list as one, an entry a member; open where any is."""
    each = [Push(0.0, 0.0) if one is None else one for one in pushes]
    found = Push(*(np.array([getattr(one, f.name) for one in each]) for f in fields(Push)))
    return replace(found, open=bool(np.any(found.open)))


def carried_pushes(
    calculation: Calculation, inputs: Any, outputs: Any, pushed: Sequence[Pushed]
) -> dict[str, dict[str, Push]]:
    """Return how what noise pushed in earlier parts pushes each result of this one.

    So too each input that is judged itself.
    """
    if not pushed:
        return {}
    found: dict[str, dict[str, Push]] = {}
    shares = budget(calculation.compute, inputs, [one.effects for one in pushed], outputs)
    for one, share in zip(pushed, shares, strict=True):
        for name, shift in share.items():
            if np.any(shift):
                found.setdefault(name, {})[one.source] = Push(shift, one.relief * shift**2)
        for effect in one.effects.effects:
            if effect.path in _inputs_judged(calculation):
                shift = one.effects.u * effect.sensitivity
                found.setdefault(str(effect.path[0]), {})[one.source] = Push(
                    shift, one.relief * shift**2
                )
    return found


@cache
def _inputs_judged(calculation: Calculation) -> frozenset[tuple[str, ...]]:
    """Return the paths of the inputs that a check judges as they stand."""
    outputs = declared(calculation.outputs)
    return frozenset((c.value,) for c in calculation.checks if c.value not in outputs)


def _floor(calculation: Calculation, name: str) -> float | None:
    """Return none, where an input cannot lie below it."""
    of = input_fields(calculation.inputs).get(name)
    return 0.0 if isinstance(of, QuantityField) and of.type.low >= 0.0 else None


def together(own: Pushes, carried: Pushes) -> Pushes:
    """Return all that pushes each result."""
    return {name: {**own.get(name, {}), **carried.get(name, {})} for name in {**own, **carried}}


def intervals(
    calculation: Calculation, inputs: Any, outputs: Any, u: Mapping[str, Any], pushes: Pushes
) -> dict[str, Interval]:
    """Return the interval of each result where it says more than its expanded uncertainty.

    And of each input that noise pushed in an earlier part.

    Raises
    ------
    OutOfBounds
        Where an interval is not finite.
    """
    if not pushes:
        return {}
    known = candidates(calculation, inputs)
    found: dict[str, Interval] = {}
    for name, by_source in pushes.items():
        of_result = hasattr(outputs, name)
        value = getattr(outputs if of_result else inputs, name)
        if value is None:
            continue
        of = known[name][0] if name in known else Candidates(None)
        floor = of.floor if of_result else _floor(calculation, name)
        one = interval(
            np.asarray(value) if isinstance(value, tuple) else value,
            u.get(name, 0.0),
            list(by_source.values()),
            floor,
            of.ceiling,
        )
        if not (np.all(np.isfinite(one.low)) and np.all(np.isfinite(one.high))):
            raise OutOfBounds(name, "has no finite interval for these inputs", "check the inputs")
        if np.any(one.given):
            found[name] = one
    return found


def ends(of: Interval) -> Any:
    """Return low and high; of a column, or of a list, those of each entry, None where none are."""
    if not np.ndim(of.low):
        return float(of.low), float(of.high)
    rows = zip(of.low.tolist(), of.high.tolist(), of.given.tolist(), strict=True)
    return [(low, high) if given else None for low, high, given in rows]


def open_leads(own: Pushes) -> dict[str, Any]:
    """Return, by result, whether uncertainty leaves open which reading it rests on, row by row.

    Of a list of results, whether it does of any.
    """
    return {name: by_source[name].open for name, by_source in own.items()}
