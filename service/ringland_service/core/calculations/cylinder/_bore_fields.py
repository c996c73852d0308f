"""What a bore survey takes, and what it answers."""

from ringland_service.core.calculations.cylinder import _bore_readings as read
from ringland_service.core.declare import choice, kinds, quantity, record, result
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.engines.survey import Survey
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

FRESH = "fresh"
USE: dict[str, str] = {
    "used": "a used bore, to stay as it is",
    "re_ring": "a used bore, to be honed and given new rings",
    FRESH: "a freshly bored and honed one",
}
DIAMETERS = cited("difference of two diameters, not the radial roundness of {iso_12181}")
WEAR_FROM = {
    "unworn": "the bore where no ring runs",
    "nominal_bore": "the nominal bore, as no unworn reference is given",
}


@record
class Inputs(Survey):
    """The readings by depth, in any order; what the bore was, and what it is for."""

    unworn_mm: Number | None = quantity(
        lengths.BORE,
        "bore where no ring runs, same gauge and temperature",
        example=68.012,
        default=None,
    )
    nominal_bore_mm: Number | None = quantity(
        lengths.BORE, "nominal bore, standard or the oversize it is at", default=None
    )
    bore_use: str = choice("what the bore is judged for", USE, example="used", default="used")
    bore_kind: str = choice(
        "kind of bore",
        condition.BORE_KIND,
        example="iron_sleeve_in_aluminium",
        default=UNKNOWN,
    )
    bore_temperature_c: Number = quantity(
        quantities.PART_TEMPERATURE, "temperature of the cylinder when measured", default=20.0
    )
    bore_alpha_per_k: Number | None = quantity(
        quantities.ALPHA, "expansion of the cylinder; wins over the kind of bore", default=None
    )
    surface: str | None = choice(
        "look of the bore's surface", condition.SURFACE, example="clean", default=None
    )


@record
class Outputs:
    """The bore at 20 °C; out-of-round and taper are differences of diameters."""

    largest_mm: Number = result(
        "largest bore",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest of all readings, at 20 °C",
        source=COMMON,
        extreme=True,
    )
    largest_at_depth_mm: Number = result(
        "depth of the largest bore; of equals the one nearer the deck",
        kind=kinds.LENGTH,
        decimals=1,
        basis="depth of that reading",
        source=COMMON,
        place=True,
    )
    largest_at_axis: str = result(
        "axis of the largest bore; of equals at one depth thrust",
        basis="axis of that reading",
        source=COMMON,
        choices=read.AXES,
    )
    smallest_mm: Number = result(
        "smallest bore",
        kind=kinds.LENGTH,
        decimals=3,
        basis="smallest of all readings, at 20 °C",
        source=COMMON,
        extreme=True,
    )
    smallest_at_depth_mm: Number = result(
        "depth of the smallest bore; of equals the one nearer the deck",
        kind=kinds.LENGTH,
        decimals=1,
        basis="depth of that reading",
        source=COMMON,
        place=True,
    )
    smallest_at_axis: str = result(
        "axis of the smallest bore; of equals at one depth thrust",
        basis="axis of that reading",
        source=COMMON,
        choices=read.AXES,
    )
    mean_mm: Number = result(
        "mean bore",
        kind=kinds.LENGTH,
        decimals=3,
        basis="mean of all readings, at 20 °C",
        source=COMMON,
    )
    worn_zone_mm: Number | None = result(
        "mean of the two axes at the depth where it is largest: what a ring sees of the wear, "
        "since it follows the perimeter",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest of the means of both axes at one depth, at 20 °C",
        source="the perimeter of a slightly oval bore is that of its mean diameter, plane geometry",
        extreme=True,
        default=None,
    )
    out_of_round_mm: Number | None = result(
        "largest out-of-round",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest difference of the two axes at one depth",
        source=DIAMETERS,
        extreme=True,
        default=None,
    )
    out_of_round_at_depth_mm: Number | None = result(
        "depth of the largest out-of-round",
        kind=kinds.LENGTH,
        decimals=1,
        basis="depth of those two readings",
        source=COMMON,
        place=True,
        default=None,
    )
    taper_pin_axis_mm: Number | None = result(
        "taper along the pin axis, the largest difference anywhere on it",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest less smallest bore of that axis",
        source=DIAMETERS,
        extreme=True,
        default=None,
    )
    taper_thrust_axis_mm: Number | None = result(
        "taper along the thrust axis, the largest difference anywhere on it",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest less smallest bore of that axis",
        source=DIAMETERS,
        extreme=True,
        default=None,
    )
    signed_taper_pin_axis_mm: Number | None = result(
        "pin axis, top less bottom: what some makers call taper",
        kind=kinds.LENGTH,
        decimals=3,
        basis="bore at the shallowest less bore at the deepest reading of that axis",
        source=DIAMETERS,
        default=None,
    )
    signed_taper_thrust_axis_mm: Number | None = result(
        "thrust axis, top less bottom: what some makers call taper",
        kind=kinds.LENGTH,
        decimals=3,
        basis="bore at the shallowest less bore at the deepest reading of that axis",
        source=DIAMETERS,
        default=None,
    )
    barrel_mm: Number | None = result(
        "middle less ends: above zero wider in the middle",
        kind=kinds.LENGTH,
        decimals=3,
        basis="mean of both axes at the depth nearest half-way (even count: of the two central "
        "depths) less the mean of the ends; depths read on one axis only are left out",
        source=DIAMETERS,
        default=None,
    )
    wear_mm: Number | None = result(
        "wear of the bore",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest bore less the unworn reference, else less the nominal bore",
        source=COMMON,
        extreme=True,
        default=None,
    )
    wear_from: str | None = result(
        "what the wear is counted from",
        basis="the unworn reference where given, else the nominal bore",
        source=COMMON,
        choices=WEAR_FROM,
        default=None,
    )
    shape: str | None = result(
        "shape of the bore lengthwise",
        basis="means of both axes by depth: bell-mouth where one end flares by more than all the "
        "rest differs; barrel or hourglass where the middle lies outside both ends by the barrel "
        "figure; else tapered; each only above 0.010 mm",
        source=COMMON,
        common_practice=True,
        choices=read.SHAPES,
        default=None,
    )
    cross_section: str | None = result(
        "shape of the bore across",
        basis="oval above an out-of-round of 0.010 mm",
        source=COMMON,
        common_practice=True,
        choices=read.SECTIONS,
        default=None,
    )
