"""Columns of draws in inputs and results: told, picked row by row, put together again."""

import dataclasses
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation


def members(record: Any) -> dict[str, Any]:
    """Return the fields of a record by name."""
    return {one.name: getattr(record, one.name) for one in dataclasses.fields(record)}


def holds_draws(value: Any) -> bool:
    """Return whether a value is a column of draws, or holds one."""
    if isinstance(value, tuple):
        return any(map(holds_draws, value))
    if dataclasses.is_dataclass(value):
        return any(map(holds_draws, members(value).values()))
    return isinstance(value, np.ndarray)


def count_of(value: Any) -> int:
    """Return how many draws a value holds."""
    if isinstance(value, np.ndarray):
        return len(value)
    held = value if isinstance(value, tuple) else members(value).values()
    return next(count_of(one) for one in held if holds_draws(one))


def at_draw(value: Any, draw: int) -> Any:
    """Return a value that holds draws as it is in one of them."""
    if isinstance(value, np.ndarray):
        return float(value[draw])
    if isinstance(value, tuple):
        return tuple(at_draw(one, draw) if holds_draws(one) else one for one in value)
    held = {name: at_draw(one, draw) for name, one in members(value).items() if holds_draws(one)}
    return dataclasses.replace(value, **held)


class Drawn(Mapping[str, Any]):
    """Values by name, as they are in one draw."""

    def __init__(self, known: Mapping[str, Any], draw: int) -> None:
        self.known, self.draw = known, draw

    def __getitem__(self, name: str) -> Any:
        value = self.known[name]
        return at_draw(value, self.draw) if holds_draws(value) else value

    def __iter__(self) -> Iterator[str]:
        return iter(self.known)

    def __len__(self) -> int:
        return len(self.known)


def worked(calculation: Calculation, inputs: Any, held: Mapping[str, Any]) -> dict[str, Any]:
    """Return the results of a calculation by name; for draws those that are numbers in all.

    The others are choices, as ``held``.
    """
    if not holds_draws(inputs):
        return members(calculation.compute(inputs))
    inside = {
        name
        for name, value in members(inputs).items()
        if holds_draws(value) and not isinstance(value, np.ndarray)
    }
    if calculation.columns and inside <= set(calculation.columns_in):
        found = members(calculation.compute(inputs))
        return {name: one if is_number(one) else held[name] for name, one in found.items()}
    rows = [members(calculation.compute(at_draw(inputs, draw))) for draw in range(count_of(inputs))]
    return {name: in_columns([row[name] for row in rows], one) for name, one in held.items()}


def read_out(
    derive: Callable[[Mapping[str, Any]], Mapping[str, tuple[Any, str]]],
    known: Mapping[str, Any],
) -> dict[str, Any]:
    """Return the values that a card reads out of others; draw by draw where it compares draws."""
    try:
        return {name: value for name, (value, _) in derive(known).items()}
    except ValueError:  # the truth of a column
        count = next(count_of(value) for value in known.values() if holds_draws(value))
    rows = [
        {name: value for name, (value, _) in derive(Drawn(known, draw)).items()}
        for draw in range(count)
    ]
    return {name: in_columns([row[name] for row in rows], one) for name, one in rows[0].items()}


def is_number(value: Any) -> bool:
    """Return whether a result is a number that can carry an uncertainty, or a list of them."""
    if isinstance(value, np.ndarray):
        return bool(value.dtype.kind == "f")
    if isinstance(value, tuple):
        return bool(value) and all(map(is_number, value))
    return isinstance(value, float)


def in_columns(rows: Sequence[Any], held: Any) -> Any:
    """Return one result of all draws: a column, a tuple of columns, or what is held."""
    if not is_number(held):
        return held
    if not isinstance(held, tuple):
        return np.array(rows, dtype=float)
    whole = all(row is not None and len(row) == len(held) for row in rows)
    return tuple(np.array(one) for one in zip(*rows, strict=True)) if whole else held
