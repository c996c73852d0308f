"""The tables of a choice of shims: a row for each valve, and one for each shim tried under it."""

from collections.abc import Iterator
from typing import Any

from ringland_service.core.calculations.head._shim_jobs import (
    LEFT,
    Job,
    in_range,
    jobs,
    made_to_step,
    pieces,
)
from ringland_service.core.calculations.head._shims import (
    NO_SHIM,
    OUTCOMES,
    lash_with_mm,
    nearest_outside,
    outcome,
)
from ringland_service.core.declare import kinds, record, result
from ringland_service.core.formulas import lash

MAKER = "the maker's range as given"
GEOMETRY = "plane geometry"
GIVES = "lash as found + (old shim − shim) / movement of the shim per lash"
EXACT = "old shim + movement of the shim per lash · (lash as found − lash)"
AIMED = "as given, else the middle of the range"
FOUND = "lash as found against the range"
NEAREST = "the nearest shim on that side of the range"
LEAVE, FOUND_ONE, NONE_FITS, ALL_TAKEN = "leave", "fits", "none_fits", "all_taken"
VALVE_OUTCOMES: dict[str, str] = {
    LEAVE: "in range as found: leave it, with the shim that it has",
    FOUND_ONE: "a shim fits",
    NONE_FITS: "no shim on offer brings the lash into the range",
    ALL_TAKEN: "the shims that fit go under other valves",
}


def length(words: str, basis: str, source: str, digits: int = 3, default: Any = None) -> Any:
    """Declare a length that may be absent."""
    return result(
        words, kind=kinds.LENGTH, digits=digits, basis=basis, source=source, default=default
    )


@record
class ValveShim:
    """One valve and the shim that it gets."""

    valve: str = result("which valve", basis="as given", source="as given")
    outcome: str = result(
        "whether a shim on offer fits",
        basis="the lash of each shim against the range",
        source=MAKER,
        choices=VALVE_OUTCOMES,
    )
    found_mm: float = length("lash as found", "as given", "as given")
    found_within: bool = result(
        "whether the lash as found is within the range", basis=FOUND, source=MAKER
    )
    exact_mm: float = length("shim that would give just the lash aimed at", EXACT, GEOMETRY)
    thinnest_mm: float = length("thinnest shim that keeps the lash in the range", EXACT, GEOMETRY)
    thickest_mm: float = length("thickest shim that keeps the lash in the range", EXACT, GEOMETRY)
    fitting: int = result(
        "how many shims on offer fit",
        basis="count of shims whose lash is within the range",
        source=MAKER,
    )
    shim_mm: float | None = length("shim to fit", "nearest the aim, within the range", MAKER)
    lash_mm: float | None = length("lash that it gives", GIVES, GEOMETRY)
    next_best_mm: float | None = length(
        "next best shim that is left", "next nearest the aim, within the range", MAKER
    )
    next_best_lash_mm: float | None = length("lash that the next best gives", GIVES, GEOMETRY)
    too_thin_mm: float | None = length(
        "where none fits: thickest shim on offer that is too thin", NEAREST, MAKER
    )
    too_thick_mm: float | None = length(
        "where none fits: thinnest shim on offer that is too thick", NEAREST, MAKER
    )


@record
class Tried:
    """One shim under one valve."""

    valve: str = result("which valve", basis="as given", source="as given")
    shim_mm: float = length("shim", "as given, or a step of those that are made", "as given")
    lash_mm: float = length("lash that it would give", GIVES, GEOMETRY)
    outcome: str = result(
        "what becomes of it",
        basis="its lash against the range and the aim, and the other valves' shims",
        source=MAKER,
        choices=OUTCOMES,
    )


def of_valve(i: Any, place: int) -> ValveShim:
    """Return the row of one valve."""
    job, offered = jobs(i)[place], pieces(i)
    chosen, runner = (i.held or ())[place]
    fitting = sum(in_range(job, lash_with_mm(job, shim)) for shim in offered)
    thin, thick = nearest_outside(job, offered) if chosen == NO_SHIM else (None, None)
    return ValveShim(
        valve=job.name,
        outcome=_becomes(chosen, fitting),
        found_within=in_range(job, job.lash_mm),
        found_mm=job.lash_mm,
        exact_mm=_shim_mm(job, job.aim_mm),
        thinnest_mm=_shim_mm(job, job.high_mm),
        thickest_mm=_shim_mm(job, job.low_mm),
        fitting=fitting,
        shim_mm=_at(offered, chosen),
        lash_mm=_lash_at(job, offered, chosen),
        next_best_mm=_at(offered, runner),
        next_best_lash_mm=_lash_at(job, offered, runner),
        too_thin_mm=thin,
        too_thick_mm=thick,
    )


def _becomes(chosen: int, fitting: int) -> str:
    if chosen >= 0:
        return FOUND_ONE
    if chosen == LEFT:
        return LEAVE
    return ALL_TAKEN if fitting else NONE_FITS


def _shim_mm(job: Job, lash_mm: float) -> float:
    return float(lash.shim_for_lash_mm(job.old_mm, job.lash_mm, lash_mm, job.movement))


def _at(offered: tuple[float, ...], place: int) -> float | None:
    return None if place < 0 else offered[place]


def _lash_at(job: Job, offered: tuple[float, ...], place: int) -> float | None:
    return None if place < 0 else lash_with_mm(job, offered[place])


def tried(i: Any, place: int) -> Iterator[Tried]:
    """Yield what became of each shim under one valve, the thinnest first."""
    job, offered, picked = jobs(i)[place], pieces(i), i.held or ()
    taken = {chosen for chosen, _ in picked} if not made_to_step(i) else set()
    near = set(nearest_outside(job, offered)) if made_to_step(i) else set(offered)
    for at in sorted(range(len(offered)), key=lambda at: offered[at]):
        gives = lash_with_mm(job, offered[at])
        if offered[at] in near or in_range(job, gives):
            becomes = outcome(job, offered[at], at, picked[place], taken)
            yield Tried(valve=job.name, shim_mm=offered[at], lash_mm=gives, outcome=becomes)
