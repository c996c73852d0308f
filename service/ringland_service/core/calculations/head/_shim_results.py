"""What is answered on lash shims, for one valve and for several."""

from ringland_service.core.calculations.head._shim_rows import (
    AIMED,
    FOUND,
    GEOMETRY,
    GIVES,
    MAKER,
    NEAREST,
    VALVE_OUTCOMES,
    Tried,
    ValveShim,
    length,
)
from ringland_service.core.declare import kinds, record, result


@record
class Outputs:
    """For one valve single figures, for several a row each; and what became of every shim."""

    aimed_lash_mm: float | None = length("lash aimed at", AIMED, MAKER, decimals=2)
    exact_shim_mm: float | None = result(
        "shim that would give just that lash",
        kind=kinds.LENGTH,
        decimals=3,
        formula="shim_mm + stem_movement_per_lash * (found_mm - aimed_lash_mm)",
        source=GEOMETRY,
        default=None,
    )
    thinnest_within_mm: float | None = result(
        "thinnest shim that keeps the lash within the range",
        kind=kinds.LENGTH,
        decimals=3,
        formula="shim_mm + stem_movement_per_lash * (found_mm - lash_high_mm)",
        source=GEOMETRY,
        default=None,
    )
    thickest_within_mm: float | None = result(
        "thickest shim that keeps the lash within the range",
        kind=kinds.LENGTH,
        decimals=3,
        formula="shim_mm + stem_movement_per_lash * (found_mm - lash_low_mm)",
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
        decimals=3,
        formula="found_mm + (shim_mm - shim_chosen_mm) / stem_movement_per_lash",
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
        decimals=3,
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
        decimals=3,
        basis=GIVES,
        source=GEOMETRY,
        default=None,
    )
    lash_margins_mm: tuple[float, ...] | None = result(
        "how far inside its range each of those valves' lash comes",
        kind=kinds.LENGTH,
        decimals=3,
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
