"""C42: the sizes ordered from the machinist, and the check of the work that comes back."""

from typing import Any

from ringland_service.core.calculations.machining._returned import CHECKS, NOTICES, RULES
from ringland_service.core.calculations.machining.bored import BORED_RULES
from ringland_service.core.declare import (
    Calculation,
    choice,
    kinds,
    quantity,
    readings,
    record,
    result,
)
from ringland_service.core.engines import condition
from ringland_service.core.formulas import machining
from ringland_service.core.metrology.candidates import Candidates, largest, smallest
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import cited

DIFFERENCE = "difference of two diameters"


@record
class Inputs:
    """The piston, what it needs around it, and the readings of the work returned."""

    bore_kind: str = choice("kind of bore", condition.BORE_KIND, example="iron_sleeve_in_aluminium")
    piston_size_mm: Number = quantity(
        lengths.PISTON,
        "the piston that goes in, as measured across the thrust axis at the maker's height",
        example=68.461,
    )
    clearance_low_mm: Number = quantity(
        sizes.WANTED_CLEARANCE, "least clearance wanted, diametral", example=0.03
    )
    clearance_high_mm: Number = quantity(
        sizes.WANTED_CLEARANCE, "largest clearance wanted, diametral", example=0.04
    )
    hone_stock_mm: Number = quantity(
        sizes.HONE_STOCK, "stock left for the hone after boring, on the diameter"
    )
    size_uncertainty_mm: Number | None = quantity(
        sizes.SIZE_UNCERTAINTY,
        "expanded uncertainty (k = 2) of one bore diameter, by the gauge that proves the work; "
        "instead of one stated with the readings",
        default=None,
    )
    returned_readings_mm: tuple[float, ...] | None = readings(
        lengths.BORE,
        "readings of the finished bore, both axes at each depth",
        least=1,
        most=40,
        example=(68.492, 68.494, 68.497, 68.499),
        default=None,
    )
    returned_out_of_round_mm: Number | None = quantity(
        sizes.FORM_ERROR,
        "out-of-round of the finished bore, difference of two diameters at one depth",
        default=None,
    )
    returned_taper_mm: Number | None = quantity(
        sizes.FORM_ERROR,
        "taper of the finished bore, difference of two diameters on one axis",
        example=0.005,
        default=None,
    )


@record
class Outputs:
    """The sizes for the order, and the extremes of the work returned."""

    finish_low_mm: Number = result(
        "finish bore, lower limit at 20 °C",
        kind=kinds.LENGTH,
        decimals=3,
        formula="piston_size_mm + clearance_low_mm",
        source=DIFFERENCE,
    )
    finish_high_mm: Number = result(
        "finish bore, upper limit at 20 °C",
        kind=kinds.LENGTH,
        decimals=3,
        formula="piston_size_mm + clearance_high_mm",
        source=DIFFERENCE,
    )
    bore_to_mm: Number = result(
        "diameter to bore to; the rest is the hone's",
        kind=kinds.LENGTH,
        decimals=3,
        formula="piston_size_mm + (clearance_low_mm + clearance_high_mm) / 2 - hone_stock_mm",
        source=DIFFERENCE,
    )
    zone_mm: Number = result(
        "upper less lower limit of the finish bore",
        kind=kinds.LENGTH,
        decimals=3,
        formula="clearance_high_mm - clearance_low_mm",
        source=DIFFERENCE,
    )
    zone_over_2u: Number | None = result(
        "zone over twice the expanded uncertainty: what the measurement can prove",
        decimals=2,
        formula="zone_mm / (2 * size_uncertainty_mm)",
        source=cited("{jcgm_106_capability}"),
        default=None,
    )
    returned_smallest_mm: Number | None = result(
        "smallest reading of the work returned",
        kind=kinds.LENGTH,
        decimals=3,
        basis="smallest of returned_readings",
        source="as given",
        extreme=True,
        default=None,
    )
    returned_largest_mm: Number | None = result(
        "largest reading of the work returned",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest of returned_readings",
        source="as given",
        extreme=True,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out limits and bore-to, and take the extremes of the readings."""
    low, high = inputs.clearance_low_mm, inputs.clearance_high_mm
    finish = machining.finish_bore_mm(inputs.piston_size_mm, (low + high) / 2.0)
    zone, uncertainty = high - low, inputs.size_uncertainty_mm
    returned = inputs.returned_readings_mm
    return Outputs(
        finish_low_mm=machining.finish_bore_mm(inputs.piston_size_mm, low),
        finish_high_mm=machining.finish_bore_mm(inputs.piston_size_mm, high),
        bore_to_mm=machining.bore_to_mm(finish, inputs.hone_stock_mm),
        zone_mm=zone,
        zone_over_2u=None
        if uncertainty is None
        else machining.zone_over_uncertainty(zone, uncertainty),
        returned_smallest_mm=None if returned is None else min(returned),
        returned_largest_mm=None if returned is None else max(returned),
    )


def extremes(inputs: Inputs) -> dict[str, Candidates]:
    """Return what the extremes of the work returned are taken from."""
    returned = inputs.returned_readings_mm
    if returned is None:
        return {}
    return {"returned_smallest_mm": smallest(returned), "returned_largest_mm": largest(returned)}


def components(inputs: Inputs) -> list[Component]:
    """Return the uncertainty of a size, by one gauge and setting, on all returned readings."""
    returned, uncertainty = inputs.returned_readings_mm, inputs.size_uncertainty_mm
    if returned is None or uncertainty is None:
        return []
    span = lengths.BORE.span
    effects = tuple(Effect(("returned_readings_mm", k), span) for k in range(len(returned)))
    u: Any = uncertainty / 2.0
    return [Component("the uncertainty of a size", u, effects)]


CALCULATION = Calculation(
    name="bore-order",
    number="C42",
    stage="decision",
    title="Sizes for the machinist, and the work returned",
    summary="Finish bore as two limits (never ±), bore-to, and whether the work returned lies in "
    "them. Measure with the setting ring that the shop used, torque plate on or off as ordered, "
    "the bore washed and at 20 °C: it is warm after machining.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    components=components,
    columns=False,
    checks=CHECKS,
    rules=(*BORED_RULES, *RULES),
    notices=NOTICES,
    cautions=("measuring", "boring_and_honing"),
)
