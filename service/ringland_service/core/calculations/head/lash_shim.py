"""C35: lash shims, for one valve or several, from the shims at hand or as the maker makes them."""

from ringland_service.core.calculations.head import _shim_checks as judged
from ringland_service.core.calculations.head._shim_inputs import Inputs
from ringland_service.core.calculations.head._shim_jobs import Job, jobs
from ringland_service.core.calculations.head._shim_results import Outputs
from ringland_service.core.calculations.head._shim_rows import Tried, ValveShim, of_valve, tried
from ringland_service.core.calculations.head._shims import lash_with_mm, left_lying
from ringland_service.core.declare import Calculation


def compute(inputs: Inputs) -> Outputs:
    """Give each valve its shim, as held, and say what became of the others."""
    asked = jobs(inputs)
    rows = [of_valve(inputs, place) for place in range(len(asked))]
    table = tuple(row for place in range(len(asked)) for row in tried(inputs, place))
    if inputs.valves is None:
        return _of_one(asked[0], rows[0], table)
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


def _of_one(job: Job, row: ValveShim, table: tuple[Tried, ...]) -> Outputs:
    return Outputs(
        shims_tried=table,
        aimed_lash_mm=job.aim_mm,
        exact_shim_mm=row.exact_mm,
        thinnest_within_mm=row.thinnest_mm,
        thickest_within_mm=row.thickest_mm,
        found_in_range=row.found_within,
        outcome=row.outcome,
        shims_that_fit=row.fitting,
        shim_chosen_mm=row.shim_mm,
        lash_after_mm=row.lash_mm,
        runner_up_mm=row.next_best_mm,
        runner_up_lash_mm=row.next_best_lash_mm,
        nearest_thinner_mm=row.too_thin_mm,
        nearest_thicker_mm=row.too_thick_mm,
    )


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
    any_of=(
        (
            ("shim_mm", "found_mm", "lash_low_mm", "lash_high_mm"),
            ("valves",),
        ),
        (
            ("shim_step_mm", "shim_thinnest_mm", "shim_thickest_mm"),
            ("shims_mm",),
            ("use_shims_taken_out",),
        ),
    ),
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "first_start"),
)
