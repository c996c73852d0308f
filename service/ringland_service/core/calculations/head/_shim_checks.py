"""The verdicts on lash and shims, what the question must agree with, and what is warned of."""

from typing import Any

from ringland_service.core.calculations.head._shim_jobs import (
    BUCKET,
    FINGER,
    in_range,
    jobs,
    pieces,
)
from ringland_service.core.calculations.head._shim_rows import ALL_TAKEN, NONE_FITS
from ringland_service.core.declare import Check, Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import Limit

# common practice, no source
MOVED_MM = 0.03
MARK_OFF_MM = 0.02
ROUNDING_MM = 1e-9

SETTLE_FOUND = (
    "cam on its base circle, the next leaf up must not go in, the next down goes in loose; "
    "five times"
)
SETTLE = (
    "measure old and new shim with one micrometer, and the lash again after turning the crank twice"
)


def _range(inputs: Any, _: Any) -> Limit | None:
    if inputs.lash_low_mm is None or inputs.lash_high_mm is None:
        return None
    return Limit(inputs.lash_low_mm, inputs.lash_high_mm, "maker", "lash range as given")


def _ranges(names: str) -> Any:
    """Return the range of each of several valves, those named in a result."""

    def limits(inputs: Any, outputs: Any) -> tuple[Limit, ...]:
        named = getattr(outputs, names) or ()
        return tuple(
            Limit(job.low_mm, job.high_mm, "maker", "lash range as given")
            for job in jobs(inputs)
            if job.name in named
        )

    return limits


CHECKS = (
    Check("lash_found_with_shim", "measured_lash_mm", "lash as found", SETTLE_FOUND, _range),
    Check("lash_with_new_shim", "lash_after_mm", "lash with the chosen shim", SETTLE, _range),
    Check(
        "lash_found_each",
        "lash_found_mm",
        "lash as found",
        SETTLE_FOUND,
        _ranges("valves_measured"),
        each="valves_measured",
    ),
    Check(
        "lash_after_each",
        "lash_after_each_mm",
        "lash with the chosen shim",
        SETTLE,
        _ranges("valves_shimmed"),
        each="valves_shimmed",
    ),
)


def _both_ways(i: Any) -> bool:
    one = (i.old_shim_mm, i.measured_lash_mm, i.old_shim_mark_mm, i.last_lash_mm)
    return any(value is not None for value in one)


def _same_name(i: Any) -> bool:
    names = [valve.name.strip() for valve in i.valves]
    return "" in names or len(set(names)) < len(names)


def _two_lots(i: Any) -> bool:
    return i.shims_at_hand_mm is not None or i.use_shims_taken_out


def _not_under(low_mm: float, high_mm: float) -> bool:
    return bool(beyond(low_mm, high_mm - ROUNDING_MM))


def _low_over_high(i: Any) -> bool:
    return _not_under(i.lash_low_mm, i.lash_high_mm)


def _own_low_over_high(i: Any) -> bool:
    """Return whether a valve's own range is none; what all valves share is judged by itself."""
    shared = (i.lash_low_mm, i.lash_high_mm)
    own = [(job.low_mm, job.high_mm) for job in jobs(i)]
    return any(sides != shared and _not_under(*sides) for sides in own)


def _aim_outside(i: Any) -> bool:
    return not _low_over_high(i) and not (
        at_most(i.lash_low_mm, i.target_lash_mm) and at_most(i.target_lash_mm, i.lash_high_mm)
    )


def _own_aim_outside(i: Any) -> bool:
    asked = [job for job in jobs(i) if not _not_under(job.low_mm, job.high_mm)]
    return any(job.aim_mm != i.target_lash_mm and not in_range(job, job.aim_mm) for job in asked)


RULES = (
    Rule(
        ("valves",),
        _both_ways,
        "one valve and several are asked about at once",
        "put each valve into valves, or leave valves out",
    ),
    Rule(
        ("valves",),
        _same_name,
        "two valves carry one name, or a name is empty",
        "a name of its own for each valve, such as intake 1 and exhaust 1",
    ),
    Rule(
        ("valves",),
        lambda i: not jobs(i),
        "a valve has no range of lash",
        "lash_low and lash_high for all valves, or in each valve",
    ),
    Rule(
        ("shim_step_mm",),
        _two_lots,
        "shims at hand and shims made to a step are offered at once",
        "shims_at_hand for the box; shim_step, shim_least and shim_most for what can be ordered",
    ),
    Rule(
        ("use_shims_taken_out",),
        lambda i: i.use_shims_taken_out and i.valves is None,
        "shims taken out go from valve to valve, and only one valve is asked about",
        "put each valve into valves",
    ),
    Rule(
        ("use_shims_taken_out",),
        lambda i: not i.use_shims_taken_out and i.shim_step_mm is None and not pieces(i),
        "no shims are on offer",
        "shims_at_hand, or shim_step with shim_least and shim_most",
    ),
    Rule(
        ("shim_least_mm", "shim_most_mm"),
        lambda i: beyond(i.shim_least_mm, i.shim_most_mm),
        "the thinnest shim that is made is thicker than the thickest",
        "shim_least under shim_most",
    ),
    Rule(
        ("lash_low_mm", "lash_high_mm"),
        _low_over_high,
        "the least lash is not under the largest",
        "lash_low under lash_high",
    ),
    Rule(
        ("valves",),
        _own_low_over_high,
        "the least lash of a valve is not under its largest",
        "lash_low under lash_high, of all valves or of that valve",
    ),
    Rule(
        ("target_lash_mm", "lash_low_mm", "lash_high_mm"),
        _aim_outside,
        "the lash aimed at is outside the range",
        "a target_lash within the range, or none for its middle",
    ),
    Rule(
        ("valves",),
        _own_aim_outside,
        "the lash aimed at for a valve is outside its range",
        "a target_lash within the range, or none for its middle",
    ),
    Rule(
        ("stem_movement_per_lash",),
        lambda i: i.gear == BUCKET and abs(i.stem_movement_per_lash - 1.0) > ROUNDING_MM,
        "under a bucket the shim moves as the lash does: 1",
        "1, or gear finger_or_rocker",
    ),
)


def _moved(i: Any, _: Any) -> bool:
    tighter = [job for job in jobs(i) if job.last_mm is not None]
    return any(
        in_range(job, job.lash_mm) and job.last_mm - job.lash_mm >= MOVED_MM - ROUNDING_MM
        for job in tighter
        if job.last_mm is not None
    )


def _mark_off(i: Any, _: Any) -> bool:
    if i.old_shim_mark_mm is None or i.old_shim_mm is None:
        return False
    return bool(abs(i.old_shim_mark_mm - i.old_shim_mm) > MARK_OFF_MM)


def _outcomes(o: Any) -> list[str]:
    return [o.outcome] if o.valve_shims is None else [row.outcome for row in o.valve_shims]


NOTICES = (
    Notice(
        "recheck_after_turning",
        "shims_tried",
        lambda i, o: True,
        "oil the shim in, turn the crank twice by hand and measure again, both valves of a rocker",
    ),
    Notice(
        "no_shim_fits",
        "shims_tried",
        lambda _, o: NONE_FITS in _outcomes(o),
        "no shim on offer brings the lash into the range: see the nearest on each side, and order "
        "the exact one",
    ),
    Notice(
        "shims_all_taken",
        "valve_shims",
        lambda _, o: ALL_TAKEN in _outcomes(o),
        "a valve goes without: the shims that fit it go under other valves; one more is needed",
    ),
    Notice(
        "lash_zero",
        "measured_lash_mm",
        lambda i, _: any(job.lash_mm <= 0 for job in jobs(i)),
        "no lash is measured: the valve may be held open by an unknown amount, so the shim worked "
        "out is the thickest that it can be; fit a thinner one and measure again",
    ),
    Notice(
        "valve_moved",
        "last_lash_mm",
        _moved,
        "still within its range, but over 0.03 mm tighter than it was left: the valve sinks into "
        "its seat (recession); look again soon",
    ),
    Notice(
        "shim_not_as_marked",
        "old_shim_mark_mm",
        _mark_off,
        "the shim measures over 0.02 mm off its mark: worn, or another one; the micrometer counts",
    ),
    Notice(
        "finger_moves_otherwise",
        "stem_movement_per_lash",
        lambda i, _: i.gear == FINGER and abs(i.stem_movement_per_lash - 1.0) <= ROUNDING_MM,
        "under a finger or rocker the shim seldom moves as the measured lash does: the maker's "
        "sheet gives the movement",
    ),
)
