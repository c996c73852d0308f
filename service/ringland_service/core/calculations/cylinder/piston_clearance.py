"""C25: clearance of a piston in its bore, and the wear of its skirt."""

from dataclasses import replace

from ringland_service.core.calculations.cylinder import bore_told_twice as told_twice
from ringland_service.core.calculations.cylinder import piston_fit as parts
from ringland_service.core.calculations.cylinder.piston_extremes import of_fit
from ringland_service.core.declare import (
    Calculation,
    Check,
    choice,
    flag,
    kinds,
    quantity,
    record,
    result,
    section,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.engines.materials import MATERIAL_CHOICES, UNKNOWN
from ringland_service.core.engines.survey import Survey
from ringland_service.core.formulas import fits
from ringland_service.core.formulas.air import length_at_20c_mm
from ringland_service.core.metrology.limits import LIMITS, Limit, LimitRow
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE, cited

DIFFERENCE = "difference of two diameters"
EXPANSION = cited("{iso_1}; {machinerys_handbook_expansion}")
TABLE = cited("table of materials: {machinerys_handbook_coefficients}; {material_tables}")
AT_20C = "the reading over 1 + bore expansion times its temperature above 20 °C"


@record
class Inputs:
    """The bore in the skirt travel, the piston, and what they are made of."""

    piston_mm: Number = quantity(
        lengths.PISTON,
        "piston across the thrust axis (90° to the pin), at the maker's height on the skirt",
    )
    bore_max_mm: Number | None = quantity(
        lengths.BORE, "largest bore in the skirt travel", example=68.076, default=None
    )
    bore_min_mm: Number | None = quantity(
        lengths.BORE, "smallest bore in the skirt travel", example=68.012, default=None
    )
    survey: Survey | None = section(Survey, "bore survey, in place of largest and smallest bore")
    skirt_from_mm: Number | None = quantity(
        lengths.DEPTH, "skirt travel starts at this depth below the deck", default=None
    )
    skirt_to_mm: Number | None = quantity(
        lengths.DEPTH, "skirt travel ends at this depth below the deck", example=85.0, default=None
    )
    piston_new_mm: Number | None = quantity(
        lengths.PISTON, "the piston's size when new", example=67.962, default=None
    )
    height_above_skirt_bottom_mm: Number | None = quantity(
        lengths.HEIGHT_ABOVE_SKIRT,
        "height above the skirt bottom where the piston was measured",
        default=None,
    )
    skirt_coated: bool | None = flag("the skirt carries a coating", default=None, example=False)
    fit: str = choice(
        "which limits apply: new fit or used parts", condition.FIT, example="used", default="used"
    )
    piston_kind: str | None = choice(
        "kind of piston", condition.PISTON_KIND, example="cast_air_cooled", default=None
    )
    cycle: str | None = choice("cycle", condition.CYCLE, example="four_stroke", default=None)
    piston_material: str | None = choice(
        "alloy of the piston, for its expansion",
        MATERIAL_CHOICES,
        example="piston_cast_eutectic",
        default=None,
    )
    bore_kind: str = choice(
        "kind of bore",
        condition.BORE_KIND,
        example="iron_sleeve_in_aluminium",
        default=UNKNOWN,
    )
    bore_temperature_c: Number = quantity(
        quantities.PART_TEMPERATURE, "temperature of the cylinder when measured", default=20.0
    )
    piston_temperature_c: Number = quantity(
        quantities.PART_TEMPERATURE, "temperature of the piston when measured", default=20.0
    )
    bore_alpha_per_k: Number | None = quantity(
        quantities.ALPHA, "expansion of the cylinder; wins over the kind of bore", default=None
    )
    piston_alpha_per_k: Number | None = quantity(
        quantities.ALPHA,
        "expansion of the piston; wins over its material and kind",
        example=2.05e-5,
        default=None,
    )
    surface: str | None = choice(
        "look of the bore's surface", condition.SURFACE, example="clean", default=None
    )


@record
class Outputs:
    """Clearance at 20 °C, the sizes that it is the difference of, and the wear of the skirt."""

    clearance_max_mm: Number = result(
        "clearance in the largest bore of the skirt travel, diametral, at 20 °C",
        kind=kinds.LENGTH,
        digits=3,
        formula="bore_largest_at_20c_mm - piston_at_20c_mm",
        source=DIFFERENCE,
        extreme=True,
    )
    bore_largest_at_20c_mm: Number = result(
        "largest bore of the skirt travel at 20 °C",
        kind=kinds.LENGTH,
        digits=4,
        basis=AT_20C,
        source=EXPANSION,
    )
    piston_at_20c_mm: Number = result(
        "piston at 20 °C",
        kind=kinds.LENGTH,
        digits=4,
        formula="piston_mm / (1 + piston_alpha_used_per_k * (piston_temperature_c - 20))",
        source=EXPANSION,
    )
    temperature_error_mm: Number = result(
        "clearance as read less the clearance at 20 °C: the error that was avoided",
        kind=kinds.LENGTH,
        digits=4,
        basis="largest bore less piston, both as read, less the largest clearance at 20 °C",
        source=EXPANSION,
    )
    clearance_max_share: Number = result(
        "largest clearance as a share of the bore",
        digits=5,
        formula="clearance_max_mm / bore_largest_at_20c_mm",
        source=NO_SOURCE,
    )
    bore_alpha_used_per_k: Number = result(
        "expansion of the bore that was used",
        kind=kinds.EXPANSION,
        digits=7,
        basis="as given, else of the kind of bore, else of grey iron; at 20 °C it matters only "
        "through doubt of the temperature",
        source=TABLE,
    )
    piston_alpha_used_per_k: Number = result(
        "expansion of the piston that was used",
        kind=kinds.EXPANSION,
        digits=7,
        basis="as given, else of the material, else of the kind of piston: low-silicon alloy where "
        "forged, else eutectic cast alloy; at 20 °C it matters only through doubt of the "
        "temperature",
        source=TABLE,
    )
    clearance_min_mm: Number | None = result(
        "clearance in the smallest bore of the skirt travel, either axis, diametral, at 20 °C; an "
        "oval piston leaves more on the pin axis, so it is on the safe side",
        kind=kinds.LENGTH,
        digits=3,
        formula="bore_smallest_at_20c_mm - piston_at_20c_mm",
        source=DIFFERENCE,
        extreme=True,
        default=None,
    )
    bore_smallest_at_20c_mm: Number | None = result(
        "smallest bore of the skirt travel at 20 °C",
        kind=kinds.LENGTH,
        digits=4,
        basis=AT_20C,
        source=EXPANSION,
        default=None,
    )
    clearance_mean_mm: Number | None = result(
        "clearance in the mean of the readings in the skirt travel, diametral, at 20 °C",
        kind=kinds.LENGTH,
        digits=3,
        basis="mean of the surveyed bores of the skirt travel at 20 °C less the piston at 20 °C",
        source=DIFFERENCE,
        default=None,
    )
    skirt_wear_mm: Number | None = result(
        "wear of the skirt on the diameter, at the piston's temperature",
        kind=kinds.LENGTH,
        digits=3,
        formula="piston_new_mm - piston_mm",
        source=DIFFERENCE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Bring bore and piston to 20 °C and take their difference."""
    piston = length_at_20c_mm(
        inputs.piston_mm, inputs.piston_temperature_c, parts.piston_alpha_per_k(inputs)
    )
    as_read = parts.largest_bore_mm(inputs)
    largest = _at_20c_mm(inputs, as_read)
    smallest = _maybe_at_20c_mm(inputs, parts.smallest_bore_mm(inputs))
    mean = _maybe_at_20c_mm(inputs, parts.mean_bore_mm(inputs))
    clearance = fits.clearance_mm(largest, piston)
    new = inputs.piston_new_mm
    return Outputs(
        clearance_max_mm=clearance,
        bore_largest_at_20c_mm=largest,
        piston_at_20c_mm=piston,
        temperature_error_mm=fits.clearance_mm(as_read, inputs.piston_mm) - clearance,
        clearance_max_share=fits.clearance_share(clearance, largest),
        bore_alpha_used_per_k=parts.bore_alpha_per_k(inputs),
        piston_alpha_used_per_k=parts.piston_alpha_per_k(inputs),
        clearance_min_mm=None if smallest is None else fits.clearance_mm(smallest, piston),
        bore_smallest_at_20c_mm=smallest,
        clearance_mean_mm=None if mean is None else fits.clearance_mm(mean, piston),
        skirt_wear_mm=None if new is None else fits.skirt_wear_mm(new, inputs.piston_mm),
    )


def _at_20c_mm(inputs: Inputs, bore_mm: Number) -> Number:
    return length_at_20c_mm(bore_mm, inputs.bore_temperature_c, parts.bore_alpha_per_k(inputs))


def _maybe_at_20c_mm(inputs: Inputs, bore_mm: Number | None) -> Number | None:
    return None if bore_mm is None else _at_20c_mm(inputs, bore_mm)


def _window(inputs: Inputs) -> LimitRow | None:
    if inputs.fit != "new" or inputs.piston_kind is None:
        return None
    return LIMITS[f"piston_clearance.new.{inputs.piston_kind}"]


def _most(inputs: Inputs, outputs: Outputs) -> Limit | None:
    window = _window(inputs)
    if window is not None:
        return window.only_high().limit(outputs.bore_largest_at_20c_mm)
    cycle = parts.cycle_of(inputs)
    if inputs.fit == "new" or cycle is None:
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
        when=lambda i, *_: i.fit == "used" and i.surface == condition.SMEARED,
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
    one_of=((("bore_max_mm",), ("survey",)),),
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
    rules=parts.RULES,
    agreements=told_twice.AGREEMENTS,
    columns_in=("survey",),
    notices=parts.NOTICES,
    cautions=("measuring",),
)
