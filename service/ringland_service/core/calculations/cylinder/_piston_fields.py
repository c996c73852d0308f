"""What the clearance of a piston takes, and what it answers."""

from ringland_service.core.declare import choice, flag, kinds, quantity, record, result, section
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import MATERIAL_CHOICES, UNKNOWN
from ringland_service.core.engines.survey import Survey
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

    piston_size_mm: Number = quantity(
        lengths.PISTON,
        "piston across the thrust axis (90° to the pin), at the maker's height on the skirt",
    )
    bore_largest_mm: Number | None = quantity(
        lengths.BORE, "largest bore in the skirt travel", example=68.076, default=None
    )
    bore_smallest_mm: Number | None = quantity(
        lengths.BORE, "smallest bore in the skirt travel", example=68.012, default=None
    )
    bore_survey: Survey | None = section(
        Survey, "bore survey, in place of largest and smallest bore"
    )
    skirt_from_mm: Number | None = quantity(
        lengths.DEPTH, "skirt travel starts at this depth below the deck", default=None
    )
    skirt_to_mm: Number | None = quantity(
        lengths.DEPTH, "skirt travel ends at this depth below the deck", example=85.0, default=None
    )
    piston_size_new_mm: Number | None = quantity(
        lengths.PISTON, "the piston's size when new", example=67.962, default=None
    )
    measuring_height_mm: Number | None = quantity(
        lengths.HEIGHT_ABOVE_SKIRT,
        "height above the skirt bottom where the piston was measured",
        default=None,
    )
    skirt_coated: bool | None = flag("the skirt carries a coating", default=None, example=False)
    piston_condition: str = choice(
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
        decimals=3,
        formula="bore_largest_at_20c_mm - piston_at_20c_mm",
        source=DIFFERENCE,
        extreme=True,
    )
    bore_largest_at_20c_mm: Number = result(
        "largest bore of the skirt travel at 20 °C",
        kind=kinds.LENGTH,
        decimals=4,
        basis=AT_20C,
        source=EXPANSION,
    )
    piston_at_20c_mm: Number = result(
        "piston at 20 °C",
        kind=kinds.LENGTH,
        decimals=4,
        formula="piston_size_mm / (1 + piston_alpha_used_per_k * (piston_temperature_c - 20))",
        source=EXPANSION,
    )
    temperature_error_mm: Number = result(
        "clearance as read less the clearance at 20 °C: the error that was avoided",
        kind=kinds.LENGTH,
        decimals=4,
        basis="largest bore less piston, both as read, less the largest clearance at 20 °C",
        source=EXPANSION,
    )
    clearance_max_share: Number = result(
        "largest clearance as a share of the bore",
        decimals=5,
        formula="clearance_max_mm / bore_largest_at_20c_mm",
        source=NO_SOURCE,
    )
    bore_alpha_used_per_k: Number = result(
        "expansion of the bore that was used",
        kind=kinds.EXPANSION,
        decimals=7,
        basis="as given, else of the kind of bore, else of grey iron; at 20 °C it matters only "
        "through uncertainty of the temperature",
        source=TABLE,
    )
    piston_alpha_used_per_k: Number = result(
        "expansion of the piston that was used",
        kind=kinds.EXPANSION,
        decimals=7,
        basis="as given, else of the material, else of the kind of piston: low-silicon alloy where "
        "forged, else eutectic cast alloy; at 20 °C it matters only through uncertainty of the "
        "temperature",
        source=TABLE,
    )
    clearance_min_mm: Number | None = result(
        "clearance in the smallest bore of the skirt travel, either axis, diametral, at 20 °C; an "
        "oval piston leaves more on the pin axis, so it is on the safe side",
        kind=kinds.LENGTH,
        decimals=3,
        formula="bore_smallest_at_20c_mm - piston_at_20c_mm",
        source=DIFFERENCE,
        extreme=True,
        default=None,
    )
    bore_smallest_at_20c_mm: Number | None = result(
        "smallest bore of the skirt travel at 20 °C",
        kind=kinds.LENGTH,
        decimals=4,
        basis=AT_20C,
        source=EXPANSION,
        default=None,
    )
    clearance_mean_mm: Number | None = result(
        "clearance in the mean of the readings in the skirt travel, diametral, at 20 °C",
        kind=kinds.LENGTH,
        decimals=3,
        basis="mean of the surveyed bores of the skirt travel at 20 °C less the piston at 20 °C",
        source=DIFFERENCE,
        default=None,
    )
    skirt_wear_mm: Number | None = result(
        "wear of the skirt on the diameter, at the piston's temperature",
        kind=kinds.LENGTH,
        decimals=3,
        formula="piston_size_new_mm - piston_size_mm",
        source=DIFFERENCE,
        default=None,
    )
