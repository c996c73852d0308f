"""C27: end gaps of piston rings, wanted, to file, and how much of an old gap is the bore's."""

from ringland_service.core.calculations.cylinder import _ring_notices as notices
from ringland_service.core.calculations.cylinder._new_rings import WHAT_TO_DO, new_ring
from ringland_service.core.calculations.cylinder.ring_checks import CHECKS, FIGURES, SECOND, TOP
from ringland_service.core.declare import (
    Calculation,
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
from ringland_service.core.engines.materials import UNKNOWN, alpha_of_bore_per_k
from ringland_service.core.formulas import rings
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

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
    top_measured_mm: Number | None = quantity(
        lengths.RING_GAP, "new top ring's gap, squared with the piston", default=None
    )
    second_measured_mm: Number | None = quantity(
        lengths.RING_GAP,
        "new second ring's gap, squared with the piston",
        example=0.30,
        default=None,
    )
    oil_rail_measured_mm: Number | None = quantity(
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
    top_limit_low_mm: Number | None = limit_side("top_ring_gap", "low")
    top_limit_high_mm: Number | None = limit_side("top_ring_gap", "high")
    second_limit_low_mm: Number | None = limit_side("second_ring_gap", "low")
    second_limit_high_mm: Number | None = limit_side("second_ring_gap", "high")
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
    unworn_bore_mm: Number | None = quantity(
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
        digits=3,
        basis="low end of the maker's range where one is given, else factor times bore, never past "
        "a largest gap that is stated; the usual factor is 0.0035 to 0.0045, its middle 0.004 is "
        "used unless another is given",
        source=COMMON,
    )
    second_wanted_mm: Number = result(
        "least gap of the second ring, not smaller than the top ring's",
        kind=kinds.LENGTH,
        digits=3,
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
        digits=3,
        basis=FILED,
        source=COMMON,
        default=None,
    )
    file_second_mm: Number | None = result(
        "to file off the second ring: one end, towards its face, then deburr",
        kind=kinds.LENGTH,
        digits=3,
        basis=FILED,
        source=COMMON,
        default=None,
    )
    top_what_to_do: str | None = result(
        "what the new top ring's gap calls for",
        basis="the measured gap against the maker's range, else the usual one",
        source=COMMON,
        choices=WHAT_TO_DO,
        default=None,
    )
    second_what_to_do: str | None = result(
        "what the new second ring's gap calls for",
        basis="the measured gap against the maker's range, else the usual one",
        source=COMMON,
        choices=WHAT_TO_DO,
        default=None,
    )
    gap_growth_mm: Number | None = result(
        "what the worn bore adds to the used ring's gap",
        kind=kinds.LENGTH,
        digits=3,
        formula="pi * ((old_gap_pin_axis_mm + old_gap_thrust_axis_mm) / 2 - unworn_bore_mm)",
        source=PERIMETER,
        default=None,
    )
    own_gap_mm: Number | None = result(
        "the used ring's own gap, as in the unworn bore",
        kind=kinds.LENGTH,
        digits=3,
        formula="old_gap_mm - gap_growth_mm",
        source=PERIMETER,
        default=None,
    )
    ring_wear_mm: Number | None = result(
        "the ring's own share of the growth",
        kind=kinds.LENGTH,
        digits=3,
        formula="own_gap_mm - gap_when_new_mm",
        source=PERIMETER,
        default=None,
    )
    new_gap_in_worn_zone_mm: Number | None = result(
        "the new top ring's gap in the worn zone",
        kind=kinds.LENGTH,
        digits=3,
        formula="top_measured_mm + pi * ((worn_pin_axis_mm + worn_thrust_axis_mm) / 2 - bore_mm)",
        source=PERIMETER,
        default=None,
    )
    hot_gap_mm: Number | None = result(
        "the new top ring's gap when running, unfiled; for comparison only",
        kind=kinds.LENGTH,
        digits=3,
        basis="cold gap + π · bore · bore expansion · its rise − π · bore · ring expansion · its "
        "rise; the bore's expansion as given, else of its kind",
        source=EXPANSION,
        default=None,
    )
    hot_gap_after_filing_mm: Number | None = result(
        "the same after filing; for comparison only",
        kind=kinds.LENGTH,
        digits=3,
        formula="hot_gap_mm + file_top_mm",
        source=EXPANSION,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out wanted gaps and filing; take the bore's share off a used ring's gap."""
    top = new_ring(
        TOP,
        inputs.top_measured_mm,
        inputs.top_factor,
        inputs.bore_mm,
        Limit(inputs.top_limit_low_mm, inputs.top_limit_high_mm),
    )
    second = new_ring(
        SECOND,
        inputs.second_measured_mm,
        inputs.second_factor,
        inputs.bore_mm,
        Limit(inputs.second_limit_low_mm, inputs.second_limit_high_mm),
        top.wanted_mm,
    )
    growth = _growth_mm(
        inputs.old_gap_pin_axis_mm, inputs.old_gap_thrust_axis_mm, inputs.unworn_bore_mm
    )
    in_worn_zone = _growth_mm(inputs.worn_pin_axis_mm, inputs.worn_thrust_axis_mm, inputs.bore_mm)
    own = _less(inputs.old_gap_mm, growth)
    measured = inputs.top_measured_mm
    return Outputs(
        top_wanted_mm=top.wanted_mm,
        second_wanted_mm=second.wanted_mm,
        file_top_mm=top.file_mm,
        file_second_mm=second.file_mm,
        top_what_to_do=top.what_to_do,
        second_what_to_do=second.what_to_do,
        gap_growth_mm=growth,
        own_gap_mm=own,
        ring_wear_mm=_less(own, inputs.gap_when_new_mm),
        new_gap_in_worn_zone_mm=(
            None
            if measured is None or in_worn_zone is None
            else rings.gap_in_worn_bore_mm(measured, in_worn_zone)
        ),
        hot_gap_mm=_hot_mm(inputs, measured),
        hot_gap_after_filing_mm=_hot_mm(
            inputs, None if measured is None or top.file_mm is None else measured + top.file_mm
        ),
    )


def _growth_mm(
    pin_axis_mm: Number | None, thrust_axis_mm: Number | None, unworn_mm: Number | None
) -> Number | None:
    if pin_axis_mm is None or thrust_axis_mm is None or unworn_mm is None:
        return None
    return rings.gap_growth_mm(rings.mean_diameter_mm(pin_axis_mm, thrust_axis_mm), unworn_mm)


def _less(gap_mm: Number | None, share_mm: Number | None) -> Number | None:
    return None if gap_mm is None or share_mm is None else rings.own_gap_mm(gap_mm, share_mm)


def _hot_mm(inputs: Inputs, gap_mm: Number | None) -> Number | None:
    bore_rise, ring_rise = inputs.bore_rise_k, inputs.ring_rise_k
    ring_alpha, bore_alpha = inputs.ring_alpha_per_k, inputs.bore_alpha_per_k
    if bore_alpha is None:
        bore_alpha = alpha_of_bore_per_k(inputs.bore_kind)
    if gap_mm is None or bore_rise is None or ring_rise is None:
        return None
    if ring_alpha is None or bore_alpha is None:
        return None
    return rings.hot_gap_mm(gap_mm, inputs.bore_mm, bore_rise, bore_alpha, ring_rise, ring_alpha)


CALCULATION = Calculation(
    name="ring-gap",
    number="C27",
    stage="cylinder",
    title="Ring end gap",
    summary="End gaps of new rings, wanted and to file, and a used ring's own gap less what its "
    "worn bore adds. The maker's range wins: inside it nothing is filed. Pinned two-stroke rings "
    "are measured at the pin.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=CHECKS,
    rules=notices.RULES,
    notices=notices.NOTICES,
    cautions=("measuring", "ring_fitting"),
    figures=FIGURES,
)
