"""What the fits of a piston pin take, and what they answer."""

from ringland_service.core.declare import choice, flag, kinds, quantity, record, result
from ringland_service.core.engines.choices import FIT
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths

PLAIN, PRESSED, NEEDLE = "plain", "press_fit", "needle"
SMALL_END: dict[str, str] = {
    PLAIN: "plain or bushed: the pin turns in it",
    PRESSED: "press fit: the pin is held by the rod",
    NEEDLE: "needle bearing",
}
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
    small_end: str = choice("kind of small end", SMALL_END, example=PLAIN, default=PLAIN)
    heat_marks: bool | None = flag("the pin shows blue heat marks", default=None, example=False)
    condition: str = choice("which limits apply", FIT, example="used", default="used")


@record
class Outputs:
    """Clearances on the diameter; the worst pair takes the smallest diameter of the pin."""

    pin_piston_mm: Number | None = result(
        "clearance of the unworn pin in the piston",
        kind=kinds.LENGTH,
        decimals=3,
        formula="piston_pin_bore_mm - pin_mm",
        source=DIFFERENCE,
        default=None,
    )
    worst_piston_mm: Number | None = result(
        "clearance of the pin's smallest diameter in the piston",
        kind=kinds.LENGTH,
        decimals=3,
        basis="pin bore of the piston less the smallest diameter of the pin",
        source=DIFFERENCE,
        default=None,
    )
    pin_small_end_mm: Number | None = result(
        "clearance of the unworn pin in the small end; below zero for a press fit",
        kind=kinds.LENGTH,
        decimals=3,
        formula="small_end_bore_mm - pin_mm",
        source=DIFFERENCE,
        default=None,
    )
    worst_small_end_mm: Number | None = result(
        "clearance of the pin's smallest diameter in the small end",
        kind=kinds.LENGTH,
        decimals=3,
        basis="bore of the small end less the smallest diameter of the pin",
        source=DIFFERENCE,
        default=None,
    )
    pin_wear_step_mm: Number | None = result(
        "step worn into the pin",
        kind=kinds.LENGTH,
        decimals=3,
        formula="pin_mm - pin_worn_mm",
        source=DIFFERENCE,
        default=None,
    )
