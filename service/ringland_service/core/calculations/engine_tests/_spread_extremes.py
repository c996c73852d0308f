"""What the spread of the cylinders, and each of them over the highest, is taken from."""

from typing import Any

import numpy as np

from ringland_service.core.metrology.candidates import (
    Candidates,
    largest,
    share_of_largest,
    smallest,
)


def extremes(inputs: Any) -> dict[str, Candidates | tuple[Candidates, ...]]:
    """Return what the lowest over the highest reading, and each over the highest, rest on."""
    taken = inputs.readings_kpa
    share = share_of_largest(taken)
    return {
        "lowest_over_highest": share,
        "spread_pct": largest(100.0 * (1.0 + share.values), share.among, 0.0, paired=True),
        "each_over_highest": tuple(_over_highest(taken, place) for place in range(len(taken))),
    }


def _over_highest(taken: tuple[float, ...], place: int) -> Candidates:
    """Return what a reading over the highest is the smallest of: over itself, or over another."""
    divides = [np.greater(other, 0.0) | (k == place) for k, other in enumerate(taken)]
    over = [
        1.0 if k == place else taken[place] / np.where(divides[k], other, 1.0)
        for k, other in enumerate(taken)
    ]
    return smallest(over, among=np.stack(np.broadcast_arrays(*divides), axis=-1), ceiling=1.0)
