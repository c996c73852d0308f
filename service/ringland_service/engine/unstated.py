"""False precision: which inputs of weight state no uncertainty, though others do.

The one place of the rule. An input weighs on a result where a usual reading of it (what the
instrument named in its quantity reads to, ``core/typical.py``) would widen the uncertainty of the
result by a tenth or more. A count, a choice, a size asked for and a maker's figure are no
readings; an input left at its default was not read. Standing: common practice, no source.
"""

from collections.abc import Iterator, Mapping
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, declared, defaults
from ringland_service.core.errors import CoreError
from ringland_service.core.fields import Field, QuantityField, ResultField
from ringland_service.core.notices import UNSTATED, Warned
from ringland_service.core.typical import typical_uncertainty
from ringland_service.core.uncertainty import STEP, Influence, Move, moved, numeric_leaves, value_at
from ringland_service.engine.question import Path, fields_given, places

# √(U² + share²) reaches 1.1·U where share² reaches this times U².
WEIGHT = 1.1**2 - 1.0
# Sizes asked for, nominal sizes and the maker's figures: told, not read off an instrument.
FIGURES = frozenset(
    {
        "new_bore_mm",
        "nominal_bore_mm",
        "finish_bore_max_mm",
        "finish_mm",
        "finish_low_mm",
        "finish_high_mm",
        "wanted_included_deg",
        "included_angle_deg",
        "wanted_outer_dia_mm",
        "wanted_width_mm",
        "lash_wanted_mm",
        "top_wanted_mm",
        "second_wanted_mm",
        "gap_when_new_mm",
        "piston_new_mm",
        "seat_load_nominal_n",
        "nominal_seat_load_n",
        "free_length_new_mm",
        "lobe_height_new_mm",
        "thinnest_shim_mm",
        "final_torque_nm",
        "torque_nm",
        "wrench_top_nm",
        "heat_c",
    }
)
# Results by name, each with the square of what every input without a statement would add to U.
Shares = dict[str, dict[str, Any]]


def unstated(
    calculation: Calculation,
    inputs: Any,
    outputs: Any,
    u: Mapping[str, Any],
    stated: Mapping[Path, Any],
) -> Iterator[tuple[Warned, Any]]:
    """Yield each possible warning of false precision, with where it holds.

    Parameters
    ----------
    u, stated : mapping
        Standard uncertainty of the results by name, and of the inputs that are moved by path.

    Yields
    ------
    tuple
        Of a column one warning for each set of inputs, with True in the rows that it holds for;
        else the warning with True.
    """
    results = {
        name: 4.0 * np.square(u[name])
        for name, field in declared(calculation.outputs).items()
        if name in u and isinstance(field, ResultField)
    }
    if not results:
        return
    shares = _shares(calculation, inputs, outputs, results, stated)
    for name, by_words in shares.items():
        weighs = {w: square > WEIGHT * results[name] for w, square in by_words.items()}
        public = declared(calculation.outputs)[name].public(name)
        is_list = isinstance(getattr(outputs, name), tuple)
        for words, where in _sets(weighs, is_list):
            message = f"uncertainty not stated: {', '.join(words)}"
            yield Warned(UNSTATED, public, message), where


def _sets(weighs: Mapping[str, Any], is_list: bool) -> Iterator[tuple[tuple[str, ...], Any]]:
    """Yield each set of inputs that weigh together, with where they do."""
    if is_list or all(np.ndim(where) == 0 for where in weighs.values()):
        words = tuple(word for word, where in weighs.items() if np.any(where))
        if words:
            yield words, True
        return
    rows = np.broadcast_arrays(*weighs.values())
    for pattern in np.unique(np.stack(rows, axis=1), axis=0):
        if pattern.any():
            words = tuple(word for word, holds in zip(weighs, pattern, strict=True) if holds)
            yield words, np.all(np.stack(rows, axis=1) == pattern, axis=1)


def _shares(
    calculation: Calculation,
    inputs: Any,
    outputs: Any,
    results: Mapping[str, Any],
    stated: Mapping[Path, Any],
) -> Shares:
    """Return the squared share of each unstated input in U of each result, by the input's words."""
    here = numeric_leaves(outputs)
    shares: Shares = {name: {} for name in results}
    for path, field, value in fields_given(inputs):
        for place, reading in places(path, value):
            if place in stated:
                continue
            doubt = _typical(inputs, path, field, reading)
            if doubt is None:
                continue
            for name, change in _changes(calculation, inputs, place, field, here).items():
                if name in shares:
                    by_words, words = shares[name], short(field.words)
                    by_words[words] = by_words.get(words, 0.0) + np.square(change * doubt)
    return {name: by_words for name, by_words in shares.items() if by_words}


def _typical(inputs: Any, path: Path, field: Field, reading: Any) -> Any:
    """Return U of a usual reading of an input, None where it is no reading."""
    if not isinstance(field, QuantityField) or field.exact or path[-1] in FIGURES:
        return None
    doubt = typical_uncertainty(field.type, reading)
    if doubt is None:
        return None
    record: type = type(value_at(inputs, path[:-1]))
    default = defaults(record).get(str(path[-1]))
    if default is None:
        return doubt
    found = np.where(reading == default, 0.0, doubt)
    return found if np.any(found) else None


def _changes(
    calculation: Calculation, inputs: Any, place: Path, field: Any, here: Mapping[str, Any]
) -> dict[str, Any]:
    """Return the slope of each result against one reading, to one side: a weight needs no more."""
    scale = field.type.scale
    for step in (STEP * scale, -STEP * scale):
        try:
            there = numeric_leaves(
                calculation.compute(moved(inputs, Influence("", 1.0, (Move(place, scale),)), step))
            )
        except (CoreError, ArithmeticError):
            # The reading stands at the edge of what can be: the other side tells.
            continue
        return {
            name: (value - here[name]) / step
            for name, value in there.items()
            if name in here and np.shape(value) == np.shape(here[name])
        }
    return {}


def short(words: str) -> str:
    """Return a field's words without their explanations."""
    for mark in (",", ";", ":", " ("):
        words = words.split(mark, 1)[0]
    return words
