"""Valves that want shims, and the shims on offer, as asked about."""

from dataclasses import dataclass
from typing import Any

from ringland_service.core.metrology.conformity import at_most

BUCKET, FINGER = "bucket", "finger_or_rocker"
GEAR: dict[str, str] = {
    BUCKET: "bucket: the shim moves as the lash does",
    FINGER: "finger or rocker between cam and valve",
}
ONE_VALVE = "valve"
# In the choice held: in range as found, the valve keeps its shim, which no other one gets.
LEFT = -2


@dataclass(frozen=True)
class Job:
    """One valve with the range that holds for it; ``movement`` is that of the shim per lash."""

    name: str
    old_mm: float
    lash_mm: float
    low_mm: float
    high_mm: float
    aim_mm: float
    movement: float
    last_mm: float | None


def jobs(i: Any) -> tuple[Job, ...]:
    """Return the valves as asked about; none while a range is missing."""
    if i.valves is not None:
        found = [_one_of_several(i, valve) for valve in i.valves]
        whole = tuple(job for job in found if job is not None)
        return whole if len(whole) == len(found) else ()
    needed = (i.old_shim_mm, i.measured_lash_mm, i.lash_low_mm, i.lash_high_mm)
    if any(value is None for value in needed):
        return ()
    aim = (i.lash_low_mm + i.lash_high_mm) / 2 if i.target_lash_mm is None else i.target_lash_mm
    return (Job(ONE_VALVE, *needed, aim, i.stem_movement_per_lash, i.last_lash_mm),)


def _one_of_several(i: Any, valve: Any) -> Job | None:
    low = i.lash_low_mm if valve.lash_low_mm is None else valve.lash_low_mm
    high = i.lash_high_mm if valve.lash_high_mm is None else valve.lash_high_mm
    if low is None or high is None:
        return None
    own_range = valve.lash_low_mm is not None or valve.lash_high_mm is not None
    aim = valve.target_lash_mm
    if aim is None:
        aim = (low + high) / 2 if own_range or i.target_lash_mm is None else i.target_lash_mm
    measured = (valve.old_shim_mm, valve.measured_lash_mm)
    return Job(valve.name, *measured, low, high, aim, i.stem_movement_per_lash, valve.last_lash_mm)


def in_range(job: Job, lash_mm: float) -> bool:
    """Return whether a lash is within the valve's range, ends included."""
    return bool(at_most(job.low_mm, lash_mm) and at_most(lash_mm, job.high_mm))


def stays(i: Any, job: Job) -> bool:
    """Return whether a valve, one of several, is in range as found and keeps its shim.

    A valve asked about alone gets the shim that brings it nearest its aim all the same.
    """
    return i.valves is not None and in_range(job, job.lash_mm)


def taken_out(i: Any) -> list[float]:
    """Return the shims of the valves that change; as held, while uncertainty moves the lash."""
    asked = jobs(i)
    if i.held is not None:
        changes = [chosen != LEFT for chosen, _ in i.held]
    else:
        changes = [not stays(i, job) for job in asked]
    return [job.old_mm for job, change in zip(asked, changes, strict=True) if change]


def pieces(i: Any) -> tuple[float, ...]:
    """Return the shims on offer: those at hand and taken out, or one of each that is made."""
    if i.shims_at_hand_mm is not None or i.use_shims_taken_out:
        return (
            *(i.shims_at_hand_mm or ()),
            *(taken_out(i) if i.use_shims_taken_out else ()),
        )
    if i.shim_step_mm is None or i.shim_least_mm is None or i.shim_most_mm is None:
        return ()
    count = int((i.shim_most_mm - i.shim_least_mm) / i.shim_step_mm + 1e-6) + 1
    return tuple(round(i.shim_least_mm + k * i.shim_step_mm, 9) for k in range(max(count, 0)))


def made_to_step(i: Any) -> bool:
    """Return whether the shims are as many as wanted of each size that the maker makes."""
    return i.shims_at_hand_mm is None and not i.use_shims_taken_out
