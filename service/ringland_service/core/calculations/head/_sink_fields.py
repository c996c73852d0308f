"""What a sunk valve is worked out from, and what is answered."""

from ringland_service.core.declare import choice, count, kinds, number, quantity, record, result
from ringland_service.core.engines.choices import ADJUSTER, SHIM_OVER_BUCKET
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import valves as sizes
from ringland_service.core.tables.sources import cited

DIFFERENCE = "difference of two lengths"
RATIO = cited("{heywood_ratio}")


@record
class Inputs:
    """The sink, and what hangs on it."""

    sink_cut_mm: Number = quantity(
        sizes.SINK,
        "rise of the stem by this work: seat cut and valve face together, same valve before and "
        "after",
    )
    sink_now_mm: Number | None = quantity(
        sizes.SINK, "sink that was there before this work", example=0.1, default=None
    )
    adjuster: str | None = choice(
        "how the lash is set", ADJUSTER, example=SHIM_OVER_BUCKET, default=None
    )
    lash_found_mm: Number | None = quantity(
        sizes.LASH, "lash before the work, cold", example=0.25, default=None
    )
    ratio_lash_per_stem_rise: Number | None = number(
        "lash lost per rise of the stem: 1 where lash is measured at the stem",
        low=0.4,
        high=2.5,
        example=1.0,
        default=None,
    )
    lash_target_mm: Number | None = quantity(
        sizes.LASH, "lash wanted, for the shim that is needed now", example=0.25, default=None
    )
    lash_shim_mm: Number | None = quantity(
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
    valve_head_diameter_mm: Number | None = quantity(
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
        decimals=2,
        basis="sink of this work and the earlier sink, where told",
        source="arithmetic",
    )
    lash_after_mm: Number | None = result(
        "lash after the work, with the shim or screw as it was; below zero the valve is held open",
        kind=kinds.LENGTH,
        decimals=2,
        formula="lash_found_mm - ratio_lash_per_stem_rise * sink_cut_mm",
        source=DIFFERENCE,
        default=None,
    )
    shim_needed_mm: Number | None = result(
        "shim that brings the lash wanted",
        kind=kinds.LENGTH,
        decimals=3,
        formula="lash_shim_mm + (lash_after_mm - lash_target_mm) / ratio_lash_per_stem_rise",
        source=DIFFERENCE,
        default=None,
    )
    shim_room_left_mm: Number | None = result(
        "how much thinner the shim can still go: what the valve may sink further",
        kind=kinds.LENGTH,
        decimals=2,
        formula="shim_needed_mm - thinnest_shim_mm",
        source=DIFFERENCE,
        default=None,
    )
    seat_load_after_n: Number | None = result(
        "load of the spring after the sink, valve shut",
        kind=kinds.FORCE,
        decimals=1,
        formula="seat_load_nominal_n - spring_rate_n_per_mm * sink_cut_mm",
        source="Hooke's law",
        default=None,
    )
    seat_load_loss_pct: Number | None = result(
        "load lost, share of the one before",
        kind=kinds.PERCENT,
        decimals=1,
        formula="100 * (seat_load_nominal_n - seat_load_after_n) / seat_load_nominal_n",
        source="Hooke's law",
        default=None,
    )
    spring_shim_to_restore_mm: Number | None = result(
        "shim under the spring that restores its installed height",
        kind=kinds.LENGTH,
        decimals=2,
        formula="sink_cut_mm",
        source=DIFFERENCE,
        default=None,
    )
    chamber_gain_cc: Number | None = result(
        "what the chamber gains",
        kind=kinds.VOLUME,
        decimals=2,
        formula="pi/4 * valve_head_diameter_mm**2 * sink_cut_mm * valves_cut / 1000",
        source="solid geometry",
        default=None,
    )
    ratio_before: Number | None = result(
        "compression ratio before",
        decimals=2,
        formula="(swept_cc + clearance_cc) / clearance_cc",
        source=RATIO,
        default=None,
    )
    ratio_after: Number | None = result(
        "compression ratio after",
        decimals=2,
        formula="(swept_cc + clearance_cc + chamber_gain_cc) / (clearance_cc + chamber_gain_cc)",
        source=RATIO,
        default=None,
    )
