"""What the end gaps of rings take, and what they answer."""

from ringland_service.core.declare import (
    choice,
    kinds,
    limit_side,
    number,
    quantity,
    record,
    result,
    usual,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.numbers import Number, Token
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

FILE, LEAVE, TOO_LARGE = "file", "leave", "too_large"
WHAT_TO_DO: dict[str, str] = {
    FILE: "too small: file it",
    LEAVE: "inside its range: nothing is filed",
    TOO_LARGE: "larger than its range: take another ring, since none can be put back",
}
PERIMETER = "a ring follows the perimeter: pi times the growth of the diameter"
FILED = "wanted gap less the measured one where that lies under its range, else nothing"
EXPANSION = cited("both perimeters: {machinerys_handbook_expansion}")


@record
class Inputs:
    """New rings in their bore, an old ring in its worn one, and temperatures to compare at."""

    bore_mm: Number = quantity(
        lengths.BORE,
        "bore where the new rings are measured: finished, or least worn",
        example=68.496,
    )
    top_gap_mm: Number | None = quantity(
        lengths.RING_GAP, "new top ring's gap, squared with the piston", default=None
    )
    second_gap_mm: Number | None = quantity(
        lengths.RING_GAP,
        "new second ring's gap, squared with the piston",
        example=0.30,
        default=None,
    )
    oil_rail_gap_mm: Number | None = quantity(
        lengths.RING_GAP,
        "oil rails' gap, the smaller; the expander is never filed",
        example=0.42,
        default=None,
    )
    top_factor: Number = number(
        "top ring's gap as a share of the bore, where the maker gives no range",
        low=0.002,
        high=0.012,
        warn=(0.0035, 0.006),
        example=0.004,
        default=usual(0.004),
    )
    second_factor: Number = number(
        "second ring's gap as a share of the bore, where the maker gives no range",
        low=0.002,
        high=0.012,
        warn=(0.0035, 0.006),
        example=0.005,
        default=usual(0.005),
    )
    top_limit_low_mm: Number | None = limit_side("top_ring_gap_new", "low")
    top_limit_high_mm: Number | None = limit_side("top_ring_gap_new", "high")
    second_limit_low_mm: Number | None = limit_side("second_ring_gap_new", "low")
    second_limit_high_mm: Number | None = limit_side("second_ring_gap_new", "high")
    old_gap_mm: Number | None = quantity(
        lengths.RING_GAP, "used ring's gap in its worn bore", example=0.62, default=None
    )
    old_gap_depth_mm: Number | None = quantity(
        lengths.DEPTH, "depth below the deck where it was taken", example=8.0, default=None
    )
    old_gap_pin_axis_mm: Number | None = quantity(
        lengths.BORE, "bore along the pin at that depth", example=68.062, default=None
    )
    old_gap_thrust_axis_mm: Number | None = quantity(
        lengths.BORE, "bore across the pin at that depth", example=68.094, default=None
    )
    unworn_mm: Number | None = quantity(
        lengths.BORE, "that bore where no ring runs", example=68.012, default=None
    )
    gap_when_new_mm: Number | None = quantity(
        lengths.RING_GAP, "the used ring's gap when new", default=None
    )
    worn_pin_axis_mm: Number | None = quantity(
        lengths.BORE,
        "worn zone where the new top ring will run, along the pin, after honing",
        example=68.520,
        default=None,
    )
    worn_thrust_axis_mm: Number | None = quantity(
        lengths.BORE,
        "worn zone where the new top ring will run, across the pin, after honing",
        example=68.530,
        default=None,
    )
    bore_kind: str = choice(
        "kind of bore",
        condition.BORE_KIND,
        example="iron_sleeve_in_aluminium",
        default=UNKNOWN,
    )
    bore_rise_k: Number | None = quantity(
        quantities.TEMPERATURE_RISE, "bore above 20 °C when running", default=None
    )
    ring_rise_k: Number | None = quantity(
        quantities.TEMPERATURE_RISE, "ring above 20 °C when running", example=180.0, default=None
    )
    ring_alpha_per_k: Number | None = quantity(
        quantities.ALPHA, "expansion of the ring", example=1.2e-5, default=None
    )
    bore_alpha_per_k: Number | None = quantity(
        quantities.ALPHA,
        "effective expansion of the bore; wins over its kind",
        example=1.5e-5,
        default=None,
    )


@record
class Outputs:
    """Gaps to file to, and the used ring's own gap."""

    top_wanted_mm: Number = result(
        "least gap of the top ring",
        kind=kinds.LENGTH,
        decimals=3,
        basis="low end of the maker's range where one is given, else factor times bore, never past "
        "a largest gap that is stated; the usual factor is 0.0035 to 0.0045, its middle 0.004 is "
        "used unless another is given",
        source=COMMON,
    )
    second_wanted_mm: Number = result(
        "least gap of the second ring, not smaller than the top ring's",
        kind=kinds.LENGTH,
        decimals=3,
        basis="low end of the maker's range where one is given, else factor times bore, not under "
        "the top ring's as far as the usual range reaches, never past a largest gap that is "
        "stated; the usual factor is 0.0045 to 0.0055, its middle 0.005 is used unless another is "
        "given",
        source=COMMON,
    )
    file_top_mm: Number | None = result(
        "to file off the top ring: one end, towards its face, then deburr; none can be put back, "
        "and plated and chromed faces chip",
        kind=kinds.LENGTH,
        decimals=3,
        basis=FILED,
        source=COMMON,
        default=None,
    )
    file_second_mm: Number | None = result(
        "to file off the second ring: one end, towards its face, then deburr",
        kind=kinds.LENGTH,
        decimals=3,
        basis=FILED,
        source=COMMON,
        default=None,
    )
    top_what_to_do: Token | None = result(
        "what the new top ring's gap calls for",
        basis="the measured gap against the maker's range, else the usual one",
        source=COMMON,
        choices=WHAT_TO_DO,
        default=None,
    )
    second_what_to_do: Token | None = result(
        "what the new second ring's gap calls for",
        basis="the measured gap against the maker's range, else the usual one",
        source=COMMON,
        choices=WHAT_TO_DO,
        default=None,
    )
    gap_growth_mm: Number | None = result(
        "what the worn bore adds to the used ring's gap",
        kind=kinds.LENGTH,
        decimals=3,
        formula="pi * ((old_gap_pin_axis_mm + old_gap_thrust_axis_mm) / 2 - unworn_mm)",
        source=PERIMETER,
        default=None,
    )
    own_gap_mm: Number | None = result(
        "the used ring's own gap, as in the unworn bore",
        kind=kinds.LENGTH,
        decimals=3,
        formula="old_gap_mm - gap_growth_mm",
        source=PERIMETER,
        default=None,
    )
    ring_wear_mm: Number | None = result(
        "the ring's own share of the growth",
        kind=kinds.LENGTH,
        decimals=3,
        formula="own_gap_mm - gap_when_new_mm",
        source=PERIMETER,
        default=None,
    )
    new_gap_in_worn_zone_mm: Number | None = result(
        "the new top ring's gap in the worn zone",
        kind=kinds.LENGTH,
        decimals=3,
        formula="top_gap_mm + pi * ((worn_pin_axis_mm + worn_thrust_axis_mm) / 2 - bore_mm)",
        source=PERIMETER,
        default=None,
    )
    hot_gap_mm: Number | None = result(
        "the new top ring's gap when running, unfiled; for comparison only",
        kind=kinds.LENGTH,
        decimals=3,
        basis="cold gap + π · bore · bore expansion · its rise − π · bore · ring expansion · its "
        "rise; the bore's expansion as given, else of its kind",
        source=EXPANSION,
        default=None,
    )
    hot_gap_after_filing_mm: Number | None = result(
        "the same after filing; for comparison only",
        kind=kinds.LENGTH,
        decimals=3,
        formula="hot_gap_mm + file_top_mm",
        source=EXPANSION,
        default=None,
    )
