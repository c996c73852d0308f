"""C25: clearance of a piston in its bore, and the wear of its skirt."""

from dataclasses import replace

from ringland_service.core.calculations.cylinder import bore_told_twice as told_twice
from ringland_service.core.calculations.cylinder import piston_fit as parts
from ringland_service.core.calculations.cylinder._piston_fields import Inputs as Inputs
from ringland_service.core.calculations.cylinder._piston_fields import Outputs as Outputs
from ringland_service.core.calculations.cylinder._piston_notices import NOTICES, RULES
from ringland_service.core.calculations.cylinder.piston_extremes import of_fit
from ringland_service.core.declare import Calculation, Check
from ringland_service.core.engines import condition
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.formulas import fits
from ringland_service.core.formulas.air import length_at_20c_mm
from ringland_service.core.metrology.limits import LIMITS, Limit, LimitRow
from ringland_service.core.numbers import Number


def compute(inputs: Inputs) -> Outputs:
    """Bring bore and piston to 20 °C and take their difference."""
    piston = length_at_20c_mm(
        inputs.piston_size_mm, inputs.piston_temperature_c, parts.piston_alpha_per_k(inputs)
    )
    as_read = parts.largest_bore_mm(inputs)
    largest = _at_20c_mm(inputs, as_read)
    smallest = _maybe_at_20c_mm(inputs, parts.smallest_bore_mm(inputs))
    mean = _maybe_at_20c_mm(inputs, parts.mean_bore_mm(inputs))
    clearance = fits.clearance_mm(largest, piston)
    new = inputs.piston_size_new_mm
    return Outputs(
        clearance_max_mm=clearance,
        bore_largest_at_20c_mm=largest,
        piston_at_20c_mm=piston,
        temperature_error_mm=fits.clearance_mm(as_read, inputs.piston_size_mm) - clearance,
        clearance_max_share=fits.clearance_share(clearance, largest),
        bore_alpha_used_per_k=parts.bore_alpha_per_k(inputs),
        piston_alpha_used_per_k=parts.piston_alpha_per_k(inputs),
        clearance_min_mm=None if smallest is None else fits.clearance_mm(smallest, piston),
        bore_smallest_at_20c_mm=smallest,
        clearance_mean_mm=None if mean is None else fits.clearance_mm(mean, piston),
        skirt_wear_mm=None if new is None else fits.skirt_wear_mm(new, inputs.piston_size_mm),
    )


def _at_20c_mm(inputs: Inputs, bore_mm: Number) -> Number:
    return length_at_20c_mm(bore_mm, inputs.bore_temperature_c, parts.bore_alpha_per_k(inputs))


def _maybe_at_20c_mm(inputs: Inputs, bore_mm: Number | None) -> Number | None:
    return None if bore_mm is None else _at_20c_mm(inputs, bore_mm)


def _window(inputs: Inputs) -> LimitRow | None:
    if inputs.piston_condition != "new" or inputs.piston_kind is None:
        return None
    return LIMITS[f"piston_clearance.new.{inputs.piston_kind}"]


def _most(inputs: Inputs, outputs: Outputs) -> Limit | None:
    window = _window(inputs)
    if window is not None:
        return window.only_high().limit(outputs.bore_largest_at_20c_mm)
    cycle = parts.cycle_of(inputs)
    if inputs.piston_condition == "new" or cycle is None:
        return None
    return LIMITS[f"piston_clearance.service.{cycle}"].limit()


def _least(inputs: Inputs, outputs: Outputs) -> Limit | None:
    window = _window(inputs)
    if window is None:
        return None
    return replace(window, high=None).limit(outputs.bore_largest_at_20c_mm)


SETTLE = (
    "set the bore gauge in the micrometer that measures the piston, five readings each, both "
    "parts at 20 °C"
)
# What hangs on the expansion of the bore where it was not measured at 20 °C.
AWAY_FROM_20C = (
    "bore_largest_at_20c_mm",
    "bore_smallest_at_20c_mm",
    "clearance_mean_mm",
    "temperature_error_mm",
)

# A new fit is judged in the finished bore.
SMEARED = (
    replace(
        condition.SMEARED_BORE,
        when=lambda i, *_: i.piston_condition == "used" and i.surface == condition.SMEARED,
    ),
)

CALCULATION = Calculation(
    name="piston-clearance",
    number="C25",
    stage="cylinder",
    title="Piston clearance",
    summary="Clearance of a piston in its bore at 20 °C, from largest and smallest bore or from a "
    "survey, against the new fit or the service limit. A maker's limit goes with the maker's way "
    "of sizing: largest bore anywhere, in the skirt travel, or at one depth.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=of_fit,
    figures=(
        expansion_of_bore(("bore_alpha_used_per_k",), when=lambda i: True),
        expansion_of_bore(AWAY_FROM_20C),
    ),
    any_of=((("bore_largest_mm",), ("bore_survey",)),),
    checks=(
        Check(
            "piston_clearance_max",
            "clearance_max_mm",
            "largest clearance",
            SETTLE,
            _most,
            unjudged=SMEARED,
        ),
        Check(
            "piston_clearance_min",
            "clearance_min_mm",
            "smallest clearance",
            SETTLE,
            _least,
            unjudged=SMEARED,
        ),
    ),
    rules=RULES,
    agreements=told_twice.AGREEMENTS,
    columns_in=("bore_survey",),
    notices=NOTICES,
    cautions=("measuring",),
)
