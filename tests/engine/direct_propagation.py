"""The uncertainty of a card's results by direct propagation: the whole chain, moved and run again.

Each component of the job moves all that it moves at once, up and down by two steps of its own u;
the squares of the slopes are summed (JCGM 100:2008, from memory, 5.1 and 5.2). The steps of the
engine are other ones: shares of the scale of a field, part by part.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, is_dataclass, replace
from typing import Any

import numpy as np
from draws import is_number, members
from whole_chain import ON_CARD, CardComponent, Chain

from ringland_service.core.declare import declared, input_fields
from ringland_service.core.declare.fields import QuantityField, ResultField
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.core.quantities import common as quantities
from ringland_service.engine.known import sources_of
from ringland_service.engine.request import stated_components

# Standard uncertainties: small against any curve, large against rounding.
STEP = 1.0 / 256.0
# A bend below this share of u is no kink, and one below this share of the readings is rounding.
BENT, ROUNDED = 1e-5, 3e-12


@dataclass(frozen=True)
class Direct:
    """What direct propagation finds of one result; lists are arrays.

    ``slopes`` are its changes under one standard uncertainty of each component, a row each.
    ``bent`` says that it has no slope at the readings: two of them tie, or something jumps there.
    A difference up to ``dust`` is rounding of what the part takes.
    """

    value: Any
    slopes: Any
    u: Any
    bent: bool
    dust: float


def components(chain: Chain) -> list[CardComponent]:
    """Return all that moves a job, each once; what moves the same inputs alike as one."""
    found: dict[Any, CardComponent] = {}
    for one in (*_of_the_card(chain), *_usual_temperatures(chain), *_of_parts(chain)):
        moves = tuple((place, of.effects) for place, of in one.on.items())
        before = found.get(moves)
        found[moves] = replace(one, u=float(np.hypot(one.u, before.u))) if before else one
    return [one for one in found.values() if one.u > 0.0]


def _of_the_card(chain: Chain) -> Iterator[CardComponent]:
    """Yield what is stated: uncertainties, instruments, temperatures."""
    for one in stated_components(chain.request):
        yield CardComponent(one.name, float(one.u), {ON_CARD: one})


def _usual_temperatures(chain: Chain) -> Iterator[CardComponent]:
    """Yield temperatures that nobody gave: one field of the card stands for all its parts."""
    u = chain.request.measuring.temperature_uncertainty_k
    usual: dict[str, dict[int, Component]] = {}
    for place, one in enumerate(chain.workings):
        for name, of in input_fields(one.step.calculation.inputs).items():
            is_one = isinstance(of, QuantityField) and of.type is quantities.PART_TEMPERATURE
            if is_one and name not in one.takes and getattr(one.inputs, name) is not None:
                move = Component(name, 1.0, (Effect((name,), 1.0),))
                usual.setdefault(sources_of(one.step, name)[0], {})[place] = move
    for name, on in usual.items():
        yield CardComponent(f"usual {name}", (u or 0.0) / 2.0, on)


def _of_parts(chain: Chain) -> Iterator[CardComponent]:
    """Yield what parts add of themselves, such as the repeat of a gauge."""
    for place, one in enumerate(chain.workings):
        own = one.step.calculation.components
        for n, component in enumerate(own(one.inputs) if own else ()):
            name = f"{one.step.part} {n}: {component.name}"
            yield CardComponent(name, float(component.u), {place: component})


def carries(chain: Chain) -> Iterator[tuple[str, float]]:
    """Yield the results that can carry an uncertainty, and their dust.

    Where an extreme stands is no such result.
    """
    for one in chain.last.values():
        dust = ROUNDED * max(sizes(one.inputs), default=0.0)
        for name, of in declared(one.step.calculation.outputs).items():
            placed = isinstance(of, ResultField) and of.place
            if is_number(one.results[name]) and not placed:
                yield f"{one.step.part}.{name}", dust


def sizes(value: Any) -> Iterator[float]:
    """Yield the magnitude of each number in a value."""
    if isinstance(value, float):
        yield abs(value)
    elif isinstance(value, tuple):
        for one in value:
            yield from sizes(one)
    elif is_dataclass(value):
        yield from sizes(tuple(members(value).values()))


def direct(chain: Chain) -> dict[str, Direct]:
    """Return the uncertainty of every result that can carry one, by ``part.result``."""
    middles, dust = chain.run(), dict(carries(chain))
    here = {name: np.asarray(middles[name]) for name in dust}
    slopes: dict[str, list[Any]] = {name: [] for name in here}
    bends = {name: np.zeros_like(value) for name, value in here.items()}
    for one in components(chain):
        runs = [chain.run([(one, step)]) for step in (STEP, -STEP, 2.0 * STEP, -2.0 * STEP)]
        for name, middle in here.items():
            slope, bend = slope_and_bend(middle, [run[name] for run in runs])
            slopes[name].append(slope)
            bends[name] = np.maximum(bends[name], bend)
    found = {}
    for name, value in here.items():
        each = np.array(slopes[name]).reshape(-1, *value.shape)
        u = np.sqrt(np.sum(each**2, axis=0))
        bent = bool(np.any(bends[name] > BENT * u + dust[name]))
        found[name] = Direct(value, each, u, bent, dust[name])
    return found


def slope_and_bend(middle: Any, moved: Sequence[Any]) -> tuple[Any, Any]:
    """Return the slope for one standard uncertainty, and the bend where it is no smooth curve's.

    ``moved`` are the results a step up and down, and twice the step. The bend of a smooth curve
    doubles with the step, that of a kink stays, that of a jump halves.
    """
    if any(one is None or np.shape(one) != middle.shape for one in moved):
        return np.zeros_like(middle), np.full_like(
            middle, np.inf
        )  # one that falls away, a list of another length
    up, down, far_up, far_down = (np.asarray(one) - middle for one in moved)
    slope = (4.0 * (up - down) / (2.0 * STEP) - (far_up - far_down) / (4.0 * STEP)) / 3.0
    bend, far_bend = (up + down) / STEP, (far_up + far_down) / (2.0 * STEP)
    smooth = np.abs(far_bend - 2.0 * bend) <= 0.5 * np.abs(bend)
    return slope, np.where(smooth, 0.0, np.maximum(np.abs(bend), np.abs(far_bend)))
