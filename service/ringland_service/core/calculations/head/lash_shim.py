"""C35: lash shims, for one valve or several, from the shims at hand or as the maker makes them."""

from typing import Any

from ringland_service.core.calculations.head import _shim_checks as judged
from ringland_service.core.calculations.head._shim_inputs import Inputs
from ringland_service.core.calculations.head._shim_jobs import Job, jobs
from ringland_service.core.calculations.head._shim_rows import (
    AIMED,
    FOUND,
    GIVES,
    MAKER,
    NEAREST,
    VALVE_OUTCOMES,
    Tried,
    ValveShim,
    length,
    of_valve,
    tried,
)
from ringland_service.core.calculations.head._shims import lash_with_mm, left_lying
from ringland_service.core.declare import Calculation, kinds, record, result

GEOMETRY = "plane geometry"


@record
class Outputs:
    """For one valve single figures, for several a row each; and what became of every shim."""

    aimed_lash_mm: float | None = length("lash aimed at", AIMED, MAKER, digits=2)
    exact_shim_mm: float | None = result(
        "shim that would give just that lash",
        kind=kinds.LENGTH,
        digits=3,
        formula="old_shim_mm + stem_movement_per_lash * (measured_lash_mm - aimed_lash_mm)",
        source=GEOMETRY,
        default=None,
    )
    thinnest_within_mm: float | None = result(
        "thinnest shim that keeps the lash within the range",
        kind=kinds.LENGTH,
        digits=3,
        formula="old_shim_mm + stem_movement_per_lash * (measured_lash_mm - lash_high_mm)",
        source=GEOMETRY,
        default=None,
    )
    thickest_within_mm: float | None = result(
        "thickest shim that keeps the lash within the range",
        kind=kinds.LENGTH,
        digits=3,
        formula="old_shim_mm + stem_movement_per_lash * (measured_lash_mm - lash_low_mm)",
        source=GEOMETRY,
        default=None,
    )
    found_in_range: bool | None = result(
        "whether the lash as found is within the range, by the figures alone",
        basis=FOUND,
        source=MAKER,
        default=None,
    )
    outcome: str | None = result(
        "whether a shim on offer fits",
        basis="the lash of each shim against the range",
        source=MAKER,
        choices=VALVE_OUTCOMES,
        default=None,
    )
    shims_that_fit: int | None = result(
        "how many shims on offer fit",
        basis="count of shims whose lash is within the range",
        source=MAKER,
        default=None,
    )
    shim_chosen_mm: float | None = length(
        "shim to fit", "the shim whose lash is nearest the aim, within the range", MAKER
    )
    lash_after_mm: float | None = result(
        "lash that it gives",
        kind=kinds.LENGTH,
        digits=3,
        formula="measured_lash_mm + (old_shim_mm - shim_chosen_mm) / stem_movement_per_lash",
        source=GEOMETRY,
        default=None,
    )
    runner_up_mm: float | None = length(
        "next best shim", "the shim whose lash is next nearest the aim, within the range", MAKER
    )
    runner_up_lash_mm: float | None = length("lash that the next best gives", GIVES, GEOMETRY)
    nearest_thinner_mm: float | None = length(
        "where none fits: thickest shim on offer that is too thin", NEAREST, MAKER
    )
    nearest_thicker_mm: float | None = length(
        "where none fits: thinnest shim on offer that is too thick", NEAREST, MAKER
    )
    valve_shims: tuple[ValveShim, ...] | None = result(
        "each of several valves, in the order given",
        basis="as for one valve; a piece at hand goes under one valve only, so that as many valves "
        "as can be come into range",
        source=GEOMETRY,
        record=ValveShim,
        default=None,
    )
    valves_measured: tuple[str, ...] | None = result(
        "the valves, in the order given", basis="as given", source="as given", default=None
    )
    lash_found_mm: tuple[float, ...] | None = result(
        "lash of each valve as found",
        kind=kinds.LENGTH,
        digits=3,
        basis="as given",
        source="as given",
        default=None,
    )
    valves_shimmed: tuple[str, ...] | None = result(
        "valves that a shim was found for", basis="as given", source="as given", default=None
    )
    lash_after_each_mm: tuple[float, ...] | None = result(
        "lash that each of those valves comes to",
        kind=kinds.LENGTH,
        digits=3,
        basis=GIVES,
        source=GEOMETRY,
        default=None,
    )
    lash_margins_mm: tuple[float, ...] | None = result(
        "how far inside its range each of those valves' lash comes",
        kind=kinds.LENGTH,
        digits=3,
        basis="the smaller of lash − least lash and largest lash − lash",
        source=GEOMETRY,
        default=None,
    )
    shims_tried: tuple[Tried, ...] = result(
        "what became of each shim; of those made to a step, those that fit and the nearest two "
        "that do not",
        basis="lash that each shim gives against the range and the aim",
        source=GEOMETRY,
        record=Tried,
    )


def compute(inputs: Inputs) -> Outputs:
    """Give each valve its shim, as held, and say what became of the others."""
    asked = jobs(inputs)
    rows = [of_valve(inputs, place) for place in range(len(asked))]
    table = tuple(row for place in range(len(asked)) for row in tried(inputs, place))
    if inputs.valves is None:
        return Outputs(shims_tried=table, **_of_one(inputs, asked[0], rows[0]))
    shimmed = [(job, row.shim_mm) for job, row in zip(asked, rows, strict=True)]
    gives = {job.name: lash_with_mm(job, shim) for job, shim in shimmed if shim is not None}
    return Outputs(
        shims_tried=table,
        valve_shims=tuple(rows),
        valves_measured=tuple(job.name for job in asked),
        lash_found_mm=tuple(job.lash_mm for job in asked),
        valves_shimmed=tuple(gives),
        lash_after_each_mm=tuple(gives.values()),
        lash_margins_mm=tuple(
            min(gives[job.name] - job.low_mm, job.high_mm - gives[job.name])
            for job in asked
            if job.name in gives
        ),
    )


def _of_one(inputs: Inputs, job: Job, row: ValveShim) -> dict[str, Any]:
    return {
        "aimed_lash_mm": job.aim_mm,
        "exact_shim_mm": row.exact_mm,
        "thinnest_within_mm": row.thinnest_mm,
        "thickest_within_mm": row.thickest_mm,
        "found_in_range": row.found_within,
        "outcome": row.outcome,
        "shims_that_fit": row.fitting,
        "shim_chosen_mm": row.shim_mm,
        "lash_after_mm": row.lash_mm,
        "runner_up_mm": row.next_best_mm,
        "runner_up_lash_mm": row.next_best_lash_mm,
        "nearest_thinner_mm": row.too_thin_mm,
        "nearest_thicker_mm": row.too_thick_mm,
    }


CALCULATION = Calculation(
    name="lash-shim",
    number="C35",
    stage="head",
    title="Valve-lash shim",
    summary="Which shim brings the lash into the maker's range, nearest the aim: from the shims at "
    "hand or from those that the maker makes, for one valve or for several that share one lot; "
    "with the runner-up, and why the others fall out. A thicker shim takes lash away.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    left_out=left_lying,
    one_of=(
        (
            ("old_shim_mm", "measured_lash_mm", "lash_low_mm", "lash_high_mm"),
            ("valves",),
        ),
        (
            ("shim_step_mm", "shim_least_mm", "shim_most_mm"),
            ("shims_at_hand_mm",),
            ("use_shims_taken_out",),
        ),
    ),
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "first_start"),
)
