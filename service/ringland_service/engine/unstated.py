"""False precision: which inputs of weight state no uncertainty, though others do.

The one place of the rule. An input weighs on a result where a usual reading of it (what the
instrument named in its quantity reads to, ``core/typical.py``) would widen the uncertainty of the
result by a tenth or more. A count, a choice, a size asked for and a maker's figure are no
readings; an input left at its default was not read. Standing: common practice, no source.
"""

import math
from collections import Counter
from collections.abc import Iterator, Mapping
from typing import Any

import numpy as np

from ringland_service.core.declare import Calculation, declared, defaults
from ringland_service.core.declare.fields import Field, QuantityField, ResultField
from ringland_service.core.declare.notices import UNSTATED, Warned
from ringland_service.core.metrology.propagation import value_at
from ringland_service.core.quantities.typical import typical_uncertainty
from ringland_service.engine.request import Path, Request, fields_given, places
from ringland_service.engine.sensitivities import Reading, leaf_of, slopes, step_of

# √(U² + share²) reaches 1.1·U where the share reaches this times U.
WEIGHT = math.sqrt(1.1**2 - 1.0)
# An uncertainty below this share of its result is rounding.
ROUNDING = 1e-9
# Sizes asked for, nominal sizes and the maker's figures: told, not read off an instrument.
FIGURES = frozenset(
    {
        "new_bore_mm",
        "nominal_bore_mm",
        "finish_high_mm",
        "finish_low_mm",
        "included_angle_deg",
        "wanted_outer_diameter_mm",
        "wanted_width_mm",
        "target_mm",
        "lash_target_mm",
        "gap_when_new_mm",
        "piston_size_new_mm",
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


def left_out(
    calculation: Calculation,
    request: Request,
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
    if not u or not request.weigh:
        return {}
    fields = declared(calculation.outputs).items()
    here = {n: leaf_of(outputs, n) for n, f in fields if n in u and isinstance(f, ResultField)}
    here = {n: value for n, value in here.items() if isinstance(value, (float, np.ndarray))}
    if not here:
        return {}
    squares: dict[str, dict[str, Any]] = {name: {} for name in here}
    unstated = list(_unstated(request, stated))
    followed = slopes(calculation, request.inputs, here, [reading for reading, _ in unstated])
    for (_, out), by_result in zip(unstated, followed, strict=True):
        for name, slope in by_result.items():
            if isinstance(slope, float) and not slope:
                continue
            of = squares[name]
            for words, uncertainty in out.items():
                of[words] = of.get(words, 0.0) + (slope * uncertainty) ** 2
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
        has_any = stated > ROUNDING * abs(leaf_of(outputs, name))
        weighs = {w: has_any & (out > WEIGHT * stated) for w, out in by_words.items()}
        public = declared(calculation.outputs)[name].public(name)
        for words, where in _sets(weighs, isinstance(getattr(outputs, name), tuple)):
            message = f"uncertainty not stated: {', '.join(words)}"
            yield Warned(UNSTATED, public, message), where


def _unstated(request: Request, stated: Mapping[Path, Any]) -> Iterator[tuple[Reading, LeftOut]]:
    """Yield each reading that states no uncertainty, or leaves something out, with how much."""
    readings: list[Any] = []
    found: list[tuple[Path, Field, Any, LeftOut]] = []
    for path, field, value in fields_given(request.inputs):
        for place, reading in places(path, value):
            readings.append(reading)
            if place in request.left_out:
                out = request.left_out[place]
            else:
                usual = None if place in stated else _typical(request.inputs, path, field, reading)
                out = {} if usual is None else {short(field.description): usual}
            if out:
                found.append((place, field, reading, out))
    numbers = Counter(_told(r) for r in readings if isinstance(r, float)) if found else Counter()
    for place, field, reading, out in found:
        # Nearer to 0 than a step of it, a reading stands at an edge: a step is no slope there.
        alike = (
            not isinstance(reading, float)
            or numbers[_told(reading)] > 1
            or abs(reading) < step_of(field)
        )
        yield Reading(place, field, alike), out


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
    usual = typical_uncertainty(field.type, reading)
    if usual is None:
        return None
    record: type = type(value_at(inputs, path[:-1]))
    default = defaults(record).get(str(path[-1]))
    if default is None:
        return usual
    if isinstance(reading, float):
        return None if _told(reading) == _told(default) else usual
    return np.where(reading == default, 0.0, usual)


def short(words: str) -> str:
    """Return a field's words without their explanations."""
    for mark in (",", ";", ":", " ("):
        words = words.split(mark, 1)[0]
    return words
