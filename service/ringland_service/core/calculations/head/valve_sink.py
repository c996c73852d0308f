"""C33: what a valve that sits deeper does to lash, spring and chamber."""

from ringland_service.core.calculations.head import _sink_checks as judged
from ringland_service.core.declare import (
    Calculation,
    choice,
    count,
    kinds,
    number,
    quantity,
    record,
    result,
)
from ringland_service.core.formulas import geometry, lash, springs
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import valves as sizes
from ringland_service.core.tables.sources import cited

DIFFERENCE = "difference of two lengths"
RATIO = cited("{heywood_ratio}")


@record
class Inputs:
    """The sink, and what hangs on it."""

    sink_mm: Number = quantity(
        sizes.SINK,
        "rise of the stem by this work: seat cut and valve face together, same valve before and "
        "after",
    )
    earlier_sink_mm: Number | None = quantity(
        sizes.SINK, "sink that was there before this work", example=0.1, default=None
    )
    adjuster: str = choice(
        "how the lash is set", judged.ADJUSTER, example="shim_or_screw", default="shim_or_screw"
    )
    lash_before_mm: Number | None = quantity(
        sizes.LASH, "lash before the work, cold", example=0.25, default=None
    )
    ratio_lash_per_stem_rise: Number | None = number(
        "lash lost per rise of the stem: 1 where lash is measured at the stem",
        low=0.4,
        high=2.5,
        example=1.0,
        default=None,
    )
    lash_wanted_mm: Number | None = quantity(
        sizes.LASH, "lash wanted, for the shim that is needed now", example=0.25, default=None
    )
    old_shim_mm: Number | None = quantity(
        sizes.SHIM, "shim fitted, by micrometer", example=2.45, default=None
    )
    thinnest_shim_mm: Number | None = quantity(
        sizes.SHIM, "thinnest shim that the maker has", example=1.2, default=None
    )
    spring_rate_n_per_mm: Number | None = quantity(
        sizes.SPRING_RATE, "rate of the valve spring", default=None
    )
    seat_load_nominal_n: Number | None = quantity(
        sizes.SPRING_LOAD, "load of the spring before the sink", example=140.0, default=None
    )
    valve_head_dia_mm: Number | None = quantity(
        sizes.SEAT_DIAMETER, "diameter of the valve head", example=26.0, default=None
    )
    valves_cut: Number | None = count(
        "valves of one cylinder that sank by this much", low=1, high=5, example=1, default=None
    )
    clearance_cc: Number | None = quantity(
        quantities.CLEARANCE_VOLUME,
        "clearance volume before: above the piston at top dead centre",
        example=31.63,
        default=None,
    )
    swept_cc: Number | None = quantity(
        quantities.CYLINDER_VOLUME, "swept volume of one cylinder", example=316.66, default=None
    )


@record
class Outputs:
    """Before the lash is set again and the spring is shimmed."""

    total_sink_mm: Number = result(
        "sink in all",
        kind=kinds.LENGTH,
        digits=2,
        basis="sink of this work and the earlier sink, where told",
        source="arithmetic",
    )
    lash_after_mm: Number | None = result(
        "lash after the work, with the shim or screw as it was; below zero the valve is held open",
        kind=kinds.LENGTH,
        digits=2,
        formula="lash_before_mm - ratio_lash_per_stem_rise * sink_mm",
        source=DIFFERENCE,
        default=None,
    )
    shim_needed_mm: Number | None = result(
        "shim that brings the lash wanted",
        kind=kinds.LENGTH,
        digits=3,
        formula="old_shim_mm + (lash_after_mm - lash_wanted_mm) / ratio_lash_per_stem_rise",
        source=DIFFERENCE,
        default=None,
    )
    shim_room_left_mm: Number | None = result(
        "how much thinner the shim can still go: what the valve may sink further",
        kind=kinds.LENGTH,
        digits=2,
        formula="shim_needed_mm - thinnest_shim_mm",
        source=DIFFERENCE,
        default=None,
    )
    seat_load_after_n: Number | None = result(
        "load of the spring after the sink, valve shut",
        kind=kinds.FORCE,
        digits=1,
        formula="seat_load_nominal_n - spring_rate_n_per_mm * sink_mm",
        source="Hooke's law",
        default=None,
    )
    seat_load_loss_pct: Number | None = result(
        "load lost, share of the one before",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * (seat_load_nominal_n - seat_load_after_n) / seat_load_nominal_n",
        source="Hooke's law",
        default=None,
    )
    spring_shim_to_restore_mm: Number | None = result(
        "shim under the spring that restores its installed height",
        kind=kinds.LENGTH,
        digits=2,
        formula="sink_mm",
        source=DIFFERENCE,
        default=None,
    )
    chamber_gain_cc: Number | None = result(
        "what the chamber gains",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * valve_head_dia_mm**2 * sink_mm * valves_cut / 1000",
        source="solid geometry",
        default=None,
    )
    cr_before: Number | None = result(
        "compression ratio before",
        digits=2,
        formula="(swept_cc + clearance_cc) / clearance_cc",
        source=RATIO,
        default=None,
    )
    cr_after: Number | None = result(
        "compression ratio after",
        digits=2,
        formula="(swept_cc + clearance_cc + chamber_gain_cc) / (clearance_cc + chamber_gain_cc)",
        source=RATIO,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out what the sink does to lash, spring and chamber."""
    earlier = inputs.earlier_sink_mm
    return Outputs(
        total_sink_mm=inputs.sink_mm if earlier is None else inputs.sink_mm + earlier,
        **_of_lash(inputs),
        **_of_spring(inputs),
        **_of_chamber(inputs),
    )


def _of_lash(i: Inputs) -> dict[str, Number]:
    before, ratio, wanted = i.lash_before_mm, i.ratio_lash_per_stem_rise, i.lash_wanted_mm
    if before is None or ratio is None:
        return {}
    after = lash.lash_after_sink_mm(before, i.sink_mm, ratio)
    found = {"lash_after_mm": after}
    if i.old_shim_mm is not None and wanted is not None:
        shim = lash.shim_for_lash_mm(i.old_shim_mm, after, wanted, 1 / ratio)
        found["shim_needed_mm"] = shim
        if i.thinnest_shim_mm is not None:
            found["shim_room_left_mm"] = shim - i.thinnest_shim_mm
    return found


def _of_spring(i: Inputs) -> dict[str, Number]:
    load, rate = i.seat_load_nominal_n, i.spring_rate_n_per_mm
    if load is None or rate is None:
        return {}
    after = springs.load_n(load, 0.0, rate, i.sink_mm)
    return {
        "seat_load_after_n": after,
        "seat_load_loss_pct": springs.loss_percent(load, after),
        "spring_shim_to_restore_mm": i.sink_mm,
    }


def _of_chamber(i: Inputs) -> dict[str, Number]:
    found: dict[str, Number] = {}
    clearance, swept = i.clearance_cc, i.swept_cc
    if clearance is not None and swept is not None:
        found["cr_before"] = geometry.compression_ratio(swept, clearance)
    if i.valve_head_dia_mm is None or i.valves_cut is None:
        return found
    gain = geometry.disc_volume_cc(i.valve_head_dia_mm, i.sink_mm) * i.valves_cut
    found["chamber_gain_cc"] = gain
    if clearance is not None and swept is not None:
        found["cr_after"] = geometry.compression_ratio(swept, clearance + gain)
    return found


CALCULATION = Calculation(
    name="valve-sink",
    number="C33",
    stage="head",
    title="Valve sink: lash, spring and chamber",
    summary="What a valve that sits deeper after its seat was cut does to lash, spring load and "
    "chamber. An old shim put back over a sunk valve holds it open. Grinding the stem end only "
    "where the maker allows it.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "seat_cutting", "valve_springs", "exhaust_valves"),
)
