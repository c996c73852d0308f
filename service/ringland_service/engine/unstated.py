"""False precision: which inputs of weight state no uncertainty, though others do.

The one place of the rule. An input weighs on a result where a usual reading of it (what the
instrument named in its quantity reads to, ``core/typical.py``) would widen the uncertainty of the
result by a tenth or more. A count, a choice, a size asked for and a maker's figure are no
readings; an input left at its default was not read. Standing: common practice, no source.
"""

import math
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, declared, defaults
from ringland_service.core.errors import CoreError
from ringland_service.core.fields import (
    Field,
    NumberField,
    Quantified,
    QuantityField,
    ResultField,
)
from ringland_service.core.notices import UNSTATED, Warned
from ringland_service.core.typical import typical_uncertainty
from ringland_service.core.uncertainty import FINER, STEP, Influence, Move, moved, value_at
from ringland_service.engine.question import Path, Question, fields_given, places

# √(U² + share²) reaches 1.1·U where the share reaches this times U.
WEIGHT = math.sqrt(1.1**2 - 1.0)
# An uncertainty below this share of its result is rounding.
ROUNDING = 1e-9
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
# What is left out of U, by the words of the input that states none: as much as it would add.
LeftOut = Mapping[str, Any]


@dataclass(frozen=True)
class Reading:
    """One reading and what it leaves out; ``alike`` where it may equal another one, or is 0."""

    place: Path
    field: Field
    doubts: LeftOut
    alike: bool


def left_out(
    calculation: Calculation,
    question: Question,
    outputs: Any,
    u: Mapping[str, Any],
    stated: Mapping[Path, Any],
) -> dict[str, LeftOut]:
    """Return, per result that has an uncertainty, what each unstated input would add to it.

    Parameters
    ----------
    u, stated : mapping
        Standard uncertainty of the results by name, and of the inputs that are moved by path.
    """
    if not u or not question.weigh:
        return {}
    fields = declared(calculation.outputs).items()
    names = tuple(n for n, f in fields if n in u and isinstance(f, ResultField))
    if not names:
        return {}
    here = {name: _leaf(outputs, name) for name in names}
    squares: dict[str, dict[str, Any]] = {name: {} for name in names}
    for reading in _unstated(question, stated):
        for name, slope in _slopes(calculation, question.inputs, here, reading).items():
            if isinstance(slope, float) and not slope:
                continue
            for words, doubt in reading.doubts.items():
                of = squares[name]
                of[words] = of.get(words, 0.0) + (slope * doubt) ** 2
    return {
        name: {words: square**0.5 for words, square in of.items()}
        for name, of in squares.items()
        if of
    }


def false_precision(
    calculation: Calculation, outputs: Any, u: Mapping[str, Any], left: Mapping[str, LeftOut]
) -> Iterator[tuple[Warned, Any]]:
    """Yield each warning of false precision, with the rows of a column that it holds for."""
    for name, by_words in left.items():
        stated = 2.0 * u[name]
        if not isinstance(stated, np.ndarray):
            stated = float(stated)
        doubted = stated > ROUNDING * abs(_leaf(outputs, name))
        weighs = {w: doubted & (out > WEIGHT * stated) for w, out in by_words.items()}
        public = declared(calculation.outputs)[name].public(name)
        for words, where in _sets(weighs, isinstance(getattr(outputs, name), tuple)):
            message = f"uncertainty not stated: {', '.join(words)}"
            yield Warned(UNSTATED, public, message), where


def _unstated(question: Question, stated: Mapping[Path, Any]) -> Iterator[Reading]:
    """Yield each reading that states no uncertainty, or one that leaves something out."""
    given = [
        (path, field, place, reading)
        for path, field, value in fields_given(question.inputs)
        for place, reading in places(path, value)
    ]
    numbers = Counter(_told(reading) for *_, reading in given if isinstance(reading, float))
    for path, field, place, reading in given:
        if place in question.left_out:
            doubts = question.left_out[place]
        else:
            doubt = None if place in stated else _typical(question.inputs, path, field, reading)
            doubts = {} if doubt is None else {short(field.words): doubt}
        if doubts:
            alike = not isinstance(reading, float) or numbers[_told(reading)] > 1 or reading == 0.0
            yield Reading(place, field, doubts, alike)


def _told(reading: float) -> str:
    """Return a reading as it was told: what a conversion of units leaves apart is equal."""
    return f"{reading:.10g}"


def _sets(weighs: Mapping[str, Any], is_list: bool) -> Iterator[tuple[tuple[str, ...], Any]]:
    """Yield each set of inputs that weigh together, with where they do."""
    if is_list or not any(isinstance(where, np.ndarray) for where in weighs.values()):
        words = tuple(word for word, where in weighs.items() if _somewhere(where))
        if words:
            yield words, True
        return
    rows = np.broadcast_arrays(*weighs.values())
    for pattern in np.unique(np.stack(rows, axis=1), axis=0):
        if pattern.any():
            words = tuple(word for word, holds in zip(weighs, pattern, strict=True) if holds)
            yield words, np.all(np.stack(rows, axis=1) == pattern, axis=1)


def _somewhere(where: Any) -> bool:
    return bool(where.any()) if isinstance(where, np.ndarray) else bool(where)


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
    if isinstance(reading, float):
        return None if _told(reading) == _told(default) else doubt
    return np.where(reading == default, 0.0, doubt)


def _slopes(
    calculation: Calculation, inputs: Any, here: Mapping[str, Any], reading: Reading
) -> dict[str, Any]:
    """Return how each result follows one reading, without sign.

    One side tells, but where the reading equals another one: there a largest of them has a kink,
    and the side that moves it counts; a reading let in or out makes a jump, which is no slope.
    """
    step = STEP * scale_of(reading.field)

    def slopes(by: float) -> dict[str, Any]:
        alone = Influence("", 1.0, (Move(reading.place, 1.0),))
        try:
            there = calculation.compute(moved(inputs, alone, by))
        except (CoreError, ArithmeticError):
            return {}  # the reading stands at the edge of what can be: the other side tells
        leaves = ((n, _leaf(there, n), value) for n, value in here.items())
        return {n: abs(leaf - value) / step for n, leaf, value in leaves if _like(leaf, value)}

    rise = slopes(step)
    if rise and not reading.alike:
        return rise
    found: dict[str, Any] = {}
    for side, by in ((rise, step), (slopes(-step), -step)):
        finer = slopes(by / FINER) if side else {}
        for name, slope in side.items():
            # Of a slope a FINER-th of the change is left; of a jump all of it.
            is_slope = finer.get(name, 0.0) * 2.0 < slope
            found[name] = np.maximum(found.get(name, 0.0), np.where(is_slope, slope, 0.0))
    return found


def _like(leaf: Any, value: Any) -> bool:
    """Return whether a result is there as it was: one may fall away as its reading moves."""
    if isinstance(value, float):
        return isinstance(leaf, float)
    return leaf is not None and np.shape(leaf) == np.shape(value)


def _leaf(outputs: Any, name: str) -> Any:
    value = getattr(outputs, name)
    if isinstance(value, Quantified):
        value = value.value
    return np.asarray(value) if isinstance(value, tuple) else value


def scale_of(field: Field) -> float:
    """Return the typical magnitude of an input."""
    if isinstance(field, NumberField):
        return field.high - field.low
    return field.type.scale if isinstance(field, QuantityField) else 1.0


def short(words: str) -> str:
    """Return a field's words without their explanations."""
    for mark in (",", ";", ":", " ("):
        words = words.split(mark, 1)[0]
    return words
