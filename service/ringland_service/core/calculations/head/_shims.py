"""Which shim goes under which valve: the one whose lash is nearest the aim, within the range.

Shims at hand are pieces: each goes under one valve. As many valves as can be are brought into
range, and among such ways the one with the least sum of distances from the aims is taken. Of two
shims that miss the aim by the same (to 1e-6 mm) the thinner, which leaves more lash, is taken.
"""

from collections.abc import Collection, Sequence
from typing import Any

from ringland_service.core.calculations.head._shim_jobs import (
    LEFT,
    Job,
    in_range,
    jobs,
    made_to_step,
    pieces,
    stays,
)
from ringland_service.core.formulas import lash
from ringland_service.core.formulas.assignment import least_total_cost

NO_SHIM = -1
SAME_MM = 1e-6
# Far more than any step of a derivative.
NEAR_MM = 1e-3
# Without a shim, and outside the range: dearer than all distances together.
WITHOUT, NEVER = 1e3, 1e6
# What a looser lash is cheaper by; far below a difference that counts, far above rounding.
LOOSER = 1e-7

CHOSEN, RUNNER_UP, FITS, TAKEN = "chosen", "runner_up", "fits", "taken"
TOO_THICK, TOO_THIN = "too_thick", "too_thin"
OUTCOMES: dict[str, str] = {
    CHOSEN: "chosen: within the range and nearest the aim",
    RUNNER_UP: "runner-up: within the range, next nearest the aim",
    FITS: "within the range, further from the aim",
    TAKEN: "within the range, but goes under another valve",
    TOO_THICK: "falls out: too thick, the lash would be under the range",
    TOO_THIN: "falls out: too thin, the lash would be over the range",
}


def lash_with_mm(job: Job, shim_mm: float) -> float:
    """Return the lash that a shim gives a valve."""
    return float(lash.lash_with_shim_mm(job.old_mm, job.lash_mm, shim_mm, job.movement))


def _cost(job: Job, shim_mm: float) -> float:
    gives = lash_with_mm(job, shim_mm)
    if not in_range(job, gives):
        return NEVER
    return round(abs(gives - job.aim_mm) / SAME_MM) * SAME_MM - LOOSER * gives


def picks(i: Any) -> tuple[tuple[int, int], ...]:
    """Return for each valve the places of its shim and of the runner-up among the pieces.

    ``NO_SHIM`` stands for none, ``LEFT`` for a valve that is left as it is.
    """
    asked, offered = jobs(i), pieces(i)
    left = [stays(i, job) for job in asked]
    changing = [job for job, leave in zip(asked, left, strict=True) if not leave]
    costs = [[_cost(job, shim) for shim in offered] for job in changing]
    if not changing or not offered:
        found = [(NO_SHIM, NO_SHIM)] * len(changing)
    elif made_to_step(i):
        chosen = [_cheapest(row, ()) for row in costs]
        found = [(p, _next(row, offered, p, ())) for row, p in zip(costs, chosen, strict=True)]
    else:
        chosen = _shared_out(costs)
        taken = [c for c in chosen if c != NO_SHIM]
        found = [(p, _next(row, offered, p, taken)) for row, p in zip(costs, chosen, strict=True)]
    rest = iter(found)
    return tuple((LEFT, NO_SHIM) if leave else next(rest) for leave in left)


def _shared_out(costs: Sequence[Sequence[float]]) -> list[int]:
    count = len(costs[0])
    with_none = [[*row, *[WITHOUT] * len(costs)] for row in costs]
    return [place if place < count else NO_SHIM for place in least_total_cost(with_none)]


def _cheapest(row: Sequence[float], left_out: Collection[int]) -> int:
    open_ = [place for place, cost in enumerate(row) if cost < NEVER and place not in left_out]
    return min(open_, key=lambda place: row[place], default=NO_SHIM)


def _next(
    row: Sequence[float], offered: Sequence[float], chosen: int, taken: Collection[int]
) -> int:
    """Return the next best place, of another thickness than the chosen one."""
    if chosen < 0:
        return NO_SHIM
    alike = [p for p, shim in enumerate(offered) if abs(shim - offered[chosen]) <= SAME_MM]
    return _cheapest(row, {*alike, *taken})


def outcome(job: Job, shim_mm: float, place: int, pick: tuple[int, int], taken: set[int]) -> str:
    """Return what becomes of a shim for one valve."""
    if place == pick[0]:
        return CHOSEN
    if place == pick[1]:
        return RUNNER_UP
    gives = lash_with_mm(job, shim_mm)
    if in_range(job, gives):
        return TAKEN if place in taken else FITS
    return TOO_THICK if gives < job.low_mm else TOO_THIN


def nearest_outside(job: Job, offered: Sequence[float]) -> tuple[float | None, float | None]:
    """Return the thickest shim that is too thin, and the thinnest that is too thick."""
    outside = [shim for shim in offered if not in_range(job, lash_with_mm(job, shim))]
    thin = [shim for shim in outside if lash_with_mm(job, shim) > job.high_mm]
    thick = [shim for shim in outside if lash_with_mm(job, shim) < job.low_mm]
    return max(thin, default=None), min(thick, default=None)


def left_lying(i: Any) -> frozenset[tuple[str | int, ...]]:
    """Return the paths of the shims at hand that no lash and no nearest shim rests on.

    Where no shim fits, those near the nearest ones stay: doubt may change which of them leads.
    """
    if i.shims_at_hand_mm is None:
        return frozenset()
    resting = {place for pick in i.held or () for place in pick}
    if i.valves is None and NO_SHIM in resting:
        nearest = [shim for shim in nearest_outside(jobs(i)[0], pieces(i)) if shim is not None]
        resting |= {
            place
            for place, shim in enumerate(i.shims_at_hand_mm)
            if any(abs(shim - other) <= NEAR_MM for other in nearest)
        }
    count = len(i.shims_at_hand_mm)
    return frozenset(("shims_at_hand_mm", k) for k in range(count) if k not in resting)
