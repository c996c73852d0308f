"""C29: fits of the piston pin in the piston and in the rod's small end."""

from typing import Any

from ringland_service.core.calculations.cylinder import _pin_notices as notices
from ringland_service.core.declare import (
    Calculation,
    Check,
    choice,
    flag,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.engines.choices import FIT
from ringland_service.core.formulas import plays
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths

DIFFERENCE = "difference of two diameters"


@record
class Inputs:
    """The pin, and the bores that it runs in, measured cold."""

    pin_mm: Number = quantity(lengths.PIN, "piston pin where nothing rubs")
    pin_worn_mm: Number | None = quantity(
        lengths.PIN,
        "smallest diameter of the pin: centre and both ends, two axes",
        example=15.982,
        default=None,
    )
    piston_pin_bore_mm: Number | None = quantity(
        lengths.PIN_HOLE, "pin bore of the piston, the larger of two axes", default=None
    )
    small_end_bore_mm: Number | None = quantity(
        lengths.PIN_HOLE,
        "bore of the small end, the larger of two axes",
        example=16.027,
        default=None,
    )
    small_end: str = choice(
        "kind of small end", notices.SMALL_END, example=notices.PLAIN, default=notices.PLAIN
    )
    heat_marks: bool | None = flag("the pin shows blue heat marks", default=None, example=False)
    fit: str = choice("which limits apply", FIT, example="used", default="used")


@record
class Outputs:
    """Clearances on the diameter; the worst pair takes the smallest diameter of the pin."""

    pin_piston_mm: Number | None = result(
        "clearance of the unworn pin in the piston",
        kind=kinds.LENGTH,
        digits=3,
        formula="piston_pin_bore_mm - pin_mm",
        source=DIFFERENCE,
        default=None,
    )
    worst_piston_mm: Number | None = result(
        "clearance of the pin's smallest diameter in the piston",
        kind=kinds.LENGTH,
        digits=3,
        basis="pin bore of the piston less the smallest diameter of the pin",
        source=DIFFERENCE,
        default=None,
    )
    pin_small_end_mm: Number | None = result(
        "clearance of the unworn pin in the small end; below zero for a press fit",
        kind=kinds.LENGTH,
        digits=3,
        formula="small_end_bore_mm - pin_mm",
        source=DIFFERENCE,
        default=None,
    )
    worst_small_end_mm: Number | None = result(
        "clearance of the pin's smallest diameter in the small end",
        kind=kinds.LENGTH,
        digits=3,
        basis="bore of the small end less the smallest diameter of the pin",
        source=DIFFERENCE,
        default=None,
    )
    pin_wear_step_mm: Number | None = result(
        "step worn into the pin",
        kind=kinds.LENGTH,
        digits=3,
        formula="pin_mm - pin_worn_mm",
        source=DIFFERENCE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Take the pin, unworn and at its smallest, from both bores."""
    worn = inputs.pin_worn_mm
    smallest = inputs.pin_mm if worn is None else worn
    return Outputs(
        pin_piston_mm=_clearance_mm(inputs.piston_pin_bore_mm, inputs.pin_mm),
        worst_piston_mm=_clearance_mm(inputs.piston_pin_bore_mm, smallest),
        pin_small_end_mm=_clearance_mm(inputs.small_end_bore_mm, inputs.pin_mm),
        worst_small_end_mm=_clearance_mm(inputs.small_end_bore_mm, smallest),
        pin_wear_step_mm=None if worn is None else plays.wear_step_mm(inputs.pin_mm, worn),
    )


def _clearance_mm(hole_mm: Number | None, pin_mm: Number) -> Number | None:
    return None if hole_mm is None else plays.pin_clearance_mm(hole_mm, pin_mm)


def _in_piston(inputs: Inputs, _: Any) -> Limit:
    return LIMITS[f"pin_in_piston.{inputs.fit}"].limit()


def _in_small_end(inputs: Inputs, _: Any) -> Limit | None:
    if inputs.small_end != notices.PLAIN:
        return None
    return LIMITS[f"pin_in_small_end.{inputs.fit}"].limit()


SETTLE = "set the small-hole gauge in the micrometer that measures the pin, five readings each"

CALCULATION = Calculation(
    name="pin-fits",
    number="C29",
    stage="cylinder",
    title="Piston-pin fits",
    summary="Clearance of the piston pin in the piston and in the small end, and the step worn "
    "into it. All parts cold, on two axes. Pin clips are never used twice.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=((("piston_pin_bore_mm",), ("small_end_bore_mm",), ("pin_worn_mm",)),),
    checks=(
        Check("pin_in_piston", "worst_piston_mm", "pin in the piston", SETTLE, _in_piston),
        Check(
            "pin_in_small_end",
            "worst_small_end_mm",
            "pin in the small end",
            SETTLE,
            _in_small_end,
        ),
    ),
    rules=notices.RULES,
    notices=notices.NOTICES,
    cautions=("measuring", "circlips"),
)
