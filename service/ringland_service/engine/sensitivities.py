"""How the results of a calculation follow single readings, one moved at a time.

A calculation that takes columns is called once for all readings, each moved in a row of its own.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation
from ringland_service.core.declare.fields import Field, NumberField, Quantified, QuantityField
from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.propagation import FINER, STEP, Component, Effect, moved
from ringland_service.engine.request import Path

# The moves of a reading, as shares of the step of its derivative.
UP, DOWN = 1.0, -1.0
SHARES = (UP, DOWN, UP / FINER, DOWN / FINER)
# From so many moves on one call with columns takes less time than a call for each (measured).
WORTH_A_COLUMN = 8


@dataclass(frozen=True)
class Reading:
    """One reading; ``alike`` where it may equal another one, or is as good as 0."""

    place: Path
    field: Field
    alike: bool


def slopes(
    calculation: Calculation,
    inputs: Any,
    here: Mapping[str, Any],
    readings: Sequence[Reading],
) -> Iterator[dict[str, Any]]:
    """Yield, for each reading, by how much each result of ``here`` follows it, without sign.

    ``here`` holds the results at the readings themselves, as ``leaf_of`` returns them. A slope is
    in units of the result per unit of the reading, both canonical.

    One side tells, but where the reading equals another one: there a largest of them has a kink,
    and the side that moves it counts; a reading let in or out makes a jump, which is no slope.
    """
    together = _changes_together(calculation, inputs, here, readings)
    for reading in readings:
        if together is None:
            yield _slope(reading, partial(_changes, calculation, inputs, here, reading))
        else:
            yield _slope(reading, together[reading.place].__getitem__)


def _slope(reading: Reading, changes: Callable[[float], Mapping[str, Any]]) -> dict[str, Any]:
    """Return how the results follow one reading; ``changes`` takes a share of its step."""
    step = step_of(reading.field)
    rise = changes(UP)
    if rise and not reading.alike:
        return {name: change / step for name, change in rise.items()}
    found: dict[str, Any] = {}
    for side, share in ((rise, UP), (changes(DOWN), DOWN)):
        finer = changes(share / FINER) if side else {}
        for name, change in side.items():
            # Of a slope a FINER-th of the change is left; of a jump all of it.
            is_slope = finer.get(name, 0.0) * 2.0 < change
            slope = np.where(is_slope, change / step, 0.0)
            found[name] = np.maximum(found.get(name, 0.0), slope)
    return found


def _changes(
    calculation: Calculation, inputs: Any, here: Mapping[str, Any], reading: Reading, share: float
) -> dict[str, Any]:
    """Return by how much the results change where the reading moves by a share of its step."""
    step = step_of(reading.field)
    alone = Component("", 1.0, (Effect(reading.place, 1.0),))
    try:
        there = calculation.compute(moved(inputs, alone, share * step))
    except (CoreError, ArithmeticError):
        return {}  # the reading stands at the edge of what can be: the other side tells
    leaves = ((n, leaf_of(there, n), value) for n, value in here.items())
    return {n: abs(leaf - value) for n, leaf, value in leaves if _like(leaf, value)}


def _changes_together(
    calculation: Calculation,
    inputs: Any,
    here: Mapping[str, Any],
    readings: Sequence[Reading],
) -> dict[Path, dict[float, dict[str, float]]] | None:
    """Return the changes of every reading, by place and share of its step, worked out in one call.

    A row of the column moves one reading. None where the calculation takes no such column, where
    there are too few moves to be worth one, or where a reading stands at an edge.
    """
    rows = [(one, s) for one in readings for s in (SHARES if one.alike else (UP,))]
    if len(rows) < WORTH_A_COLUMN or not _take_columns(calculation, here, readings):
        return None
    effects = []
    for reading in readings:
        step = step_of(reading.field)
        by = np.array([share * step if one is reading else 0.0 for one, share in rows])
        effects.append(Effect(reading.place, 1.0, by))
    try:
        there = calculation.compute(moved(inputs, Component("", 1.0, tuple(effects)), 1.0))
    except (CoreError, ArithmeticError):
        return None
    leaves = {name: leaf_of(there, name) for name in here}
    if any(leaf is None for leaf in leaves.values()):
        return None
    changes = {
        name: np.broadcast_to(np.abs(leaves[name] - value), len(rows)).tolist()
        for name, value in here.items()
    }
    found: dict[Path, dict[float, dict[str, float]]] = {one.place: {} for one in readings}
    for row, (reading, share) in enumerate(rows):
        found[reading.place][share] = {name: of[row] for name, of in changes.items()}
    return found


def _take_columns(
    calculation: Calculation, here: Mapping[str, Any], readings: Sequence[Reading]
) -> bool:
    """Return whether the calculation can take a column for each of the readings."""
    lists = calculation.columns_in
    return (
        calculation.columns
        and all(isinstance(value, float) for value in here.values())
        and all(len(one.place) == 1 or one.place[0] in lists for one in readings)
    )


def _like(leaf: Any, value: Any) -> bool:
    """Return whether a result is there as it was: one may fall away as its reading moves."""
    if isinstance(value, float):
        return isinstance(leaf, float)
    return leaf is not None and np.shape(leaf) == np.shape(value)


def leaf_of(outputs: Any, name: str) -> Any:
    """Return a result; a list of numbers as one array."""
    value = getattr(outputs, name)
    if isinstance(value, Quantified):
        value = value.value
    return np.asarray(value) if isinstance(value, tuple) else value


def step_of(field: Field) -> float:
    """Return the step by which a reading is moved to see how the results follow it."""
    if isinstance(field, NumberField):
        return STEP * (field.high - field.low)
    return STEP * (field.type.scale if isinstance(field, QuantityField) else 1.0)
