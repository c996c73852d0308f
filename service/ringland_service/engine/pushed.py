"""What noise pushes in one part of a composite, as the parts that rest on it hear of it.

It goes the way of the components of the uncertainty (``carried.py``) under names of its own, so
that what reaches a result along two ways is one push. It is no component: it has a sign.
"""

from collections.abc import Iterator
from dataclasses import replace

import numpy as np

from ringland_service.core.declare import Step
from ringland_service.core.metrology.extremes import Push
from ringland_service.engine.response import Response

NOISE = "noise in "


def is_push(component: str) -> bool:
    """Return whether a component's name is that of a push."""
    return component.startswith(NOISE)


def pushes_of(step: Step, part: Response) -> Iterator[tuple[str, str, Push]]:
    """Yield each result that noise pushes, what it pushes first, and how it pushes the result."""
    for name, by_source in part.pushes.items():
        for source, push in by_source.items():
            if source != name:
                yield name, source, push
            elif np.any(push.shift):
                yield from _own(name, f"{NOISE}{step.part}.{name}", push)


def _own(name: str, source: str, push: Push) -> Iterator[tuple[str, str, Push]]:
    """Yield the push of a result; each member of a list is pushed by itself."""
    if not np.ndim(push.shift):
        yield name, source, push
        return
    for place in np.flatnonzero(push.shift).tolist():
        alone = np.zeros(len(push.shift))
        alone[place] = push.shift[place]
        yield name, f"{source}.{place}", replace(push, shift=alone)


def reliefs_of(step: Step, part: Response) -> dict[str, float]:
    """Return, by what this part is the first to have pushed, its relief over its shift squared."""
    found: dict[str, float] = {}
    for name, source, push in pushes_of(step, part):
        if source.startswith(f"{NOISE}{step.part}.{name}"):
            place = int(np.argmax(np.abs(push.shift)))
            shift, relief = np.ravel(push.shift)[place], np.ravel(push.relief)[place]
            found[source] = float(relief / shift**2)
    return found
