"""C29: fits of the piston pin in the piston and in the rod's small end."""

from ringland_service.core.calculations.cylinder import _pin_notices as notices
from ringland_service.core.calculations.cylinder._pin_fields import PLAIN, Outputs
from ringland_service.core.calculations.cylinder._pin_fields import Inputs as Inputs
from ringland_service.core.declare import Calculation, Check
from ringland_service.core.formulas import plays
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number


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


def _in_piston(inputs: Inputs, _: object) -> Limit:
    return LIMITS[f"pin_in_piston.{inputs.condition}"].limit()


def _in_small_end(inputs: Inputs, _: object) -> Limit | None:
    if inputs.small_end != PLAIN:
        return None
    return LIMITS[f"pin_in_small_end.{inputs.condition}"].limit()


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
    any_of=((("piston_pin_bore_mm",), ("small_end_bore_mm",), ("pin_worn_mm",)),),
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
