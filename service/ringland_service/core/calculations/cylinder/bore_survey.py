"""C24: survey of a bore: its extremes, out-of-round, taper, shape and wear."""

import dataclasses
from typing import cast

from ringland_service.core.calculations.cylinder import _bore_notices as notices
from ringland_service.core.calculations.cylinder import _bore_readings as read
from ringland_service.core.calculations.cylinder._bore_extremes import of_survey
from ringland_service.core.calculations.cylinder.bore_checks import CHECKS, USE
from ringland_service.core.calculations.cylinder.piston_fit import bore_alpha_per_k
from ringland_service.core.declare import Calculation, choice, kinds, quantity, record, result
from ringland_service.core.declare.usual import ALL
from ringland_service.core.engines import condition
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.engines.survey import Survey
from ringland_service.core.formulas import bore
from ringland_service.core.formulas.air import length_at_20c_mm
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

DIAMETERS = cited("difference of two diameters, not the radial roundness of {iso_12181}")
WEAR_FROM = {
    "unworn_reference": "the bore where no ring runs",
    "nominal_bore": "the nominal bore, as no unworn reference is given",
}


@record
class Inputs(Survey):
    """The readings by depth, in any order; what the bore was, and what it is for."""

    unworn_reference_mm: Number | None = quantity(
        lengths.BORE,
        "bore where no ring runs, same gauge and temperature",
        example=68.012,
        default=None,
    )
    nominal_bore_mm: Number | None = quantity(
        lengths.BORE, "nominal bore, standard or the oversize it is at", default=None
    )
    use: str = choice("what the bore is judged for", USE, example="used", default="used")
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

    max_mm: Number = result(
        "largest bore",
        kind=kinds.LENGTH,
        digits=3,
        basis="largest of all readings, at 20 °C",
        source=COMMON,
        extreme=True,
    )
    max_at_depth_mm: Number = result(
        "depth of the largest bore; of equals the one nearer the deck",
        kind=kinds.LENGTH,
        digits=1,
        basis="depth of that reading",
        source=COMMON,
        place=True,
    )
    max_at_axis: str = result(
        "axis of the largest bore; of equals at one depth thrust",
        basis="axis of that reading",
        source=COMMON,
        choices=read.AXES,
    )
    min_mm: Number = result(
        "smallest bore",
        kind=kinds.LENGTH,
        digits=3,
        basis="smallest of all readings, at 20 °C",
        source=COMMON,
        extreme=True,
    )
    min_at_depth_mm: Number = result(
        "depth of the smallest bore; of equals the one nearer the deck",
        kind=kinds.LENGTH,
        digits=1,
        basis="depth of that reading",
        source=COMMON,
        place=True,
    )
    min_at_axis: str = result(
        "axis of the smallest bore; of equals at one depth thrust",
        basis="axis of that reading",
        source=COMMON,
        choices=read.AXES,
    )
    mean_mm: Number = result(
        "mean bore",
        kind=kinds.LENGTH,
        digits=3,
        basis="mean of all readings, at 20 °C",
        source=COMMON,
    )
    worn_zone_mm: Number | None = result(
        "mean of the two axes at the depth where it is largest: what a ring sees of the wear, "
        "since it follows the perimeter",
        kind=kinds.LENGTH,
        digits=3,
        basis="largest of the means of both axes at one depth, at 20 °C",
        source="the perimeter of a slightly oval bore is that of its mean diameter, plane geometry",
        extreme=True,
        default=None,
    )
    out_of_round_mm: Number | None = result(
        "largest out-of-round",
        kind=kinds.LENGTH,
        digits=3,
        basis="largest difference of the two axes at one depth",
        source=DIAMETERS,
        extreme=True,
        default=None,
    )
    out_of_round_at_depth_mm: Number | None = result(
        "depth of the largest out-of-round",
        kind=kinds.LENGTH,
        digits=1,
        basis="depth of those two readings",
        source=COMMON,
        place=True,
        default=None,
    )
    taper_pin_axis_mm: Number | None = result(
        "taper along the pin axis, the largest difference anywhere on it",
        kind=kinds.LENGTH,
        digits=3,
        basis="largest less smallest bore of that axis",
        source=DIAMETERS,
        extreme=True,
        default=None,
    )
    taper_thrust_axis_mm: Number | None = result(
        "taper along the thrust axis, the largest difference anywhere on it",
        kind=kinds.LENGTH,
        digits=3,
        basis="largest less smallest bore of that axis",
        source=DIAMETERS,
        extreme=True,
        default=None,
    )
    signed_taper_pin_top_minus_bottom_mm: Number | None = result(
        "pin axis, top less bottom: what some makers call taper",
        kind=kinds.LENGTH,
        digits=3,
        basis="bore at the shallowest less bore at the deepest reading of that axis",
        source=DIAMETERS,
        default=None,
    )
    signed_taper_thrust_top_minus_bottom_mm: Number | None = result(
        "thrust axis, top less bottom: what some makers call taper",
        kind=kinds.LENGTH,
        digits=3,
        basis="bore at the shallowest less bore at the deepest reading of that axis",
        source=DIAMETERS,
        default=None,
    )
    barrel_mm: Number | None = result(
        "middle less ends: above zero wider in the middle",
        kind=kinds.LENGTH,
        digits=3,
        basis="mean of both axes at the depth nearest half-way (even count: of the two central "
        "depths) less the mean of the ends; depths read on one axis only are left out",
        source=DIAMETERS,
        default=None,
    )
    wear_mm: Number | None = result(
        "wear of the bore",
        kind=kinds.LENGTH,
        digits=3,
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


def compute(inputs: Inputs) -> Outputs:
    """Bring the readings to 20 °C, put them in order of depth, and find what stands out."""
    survey = _at_20c(inputs)
    everything = read.all_readings(survey)
    sizes = [reading.bore_mm for reading in everything]
    largest = read.leading(everything, lambda reading: reading.bore_mm)
    smallest = read.leading(everything, lambda reading: -reading.bore_mm)
    both = read.levels(survey)
    worst = read.leading(both, lambda level: level.out_of_round_mm) if both else None
    pin, thrust = read.on_axis(survey, read.PIN), read.on_axis(survey, read.THRUST)
    unworn, counted_from = _unworn_mm(inputs)
    return Outputs(
        max_mm=max(sizes),
        max_at_depth_mm=largest.depth_mm,
        max_at_axis=largest.axis,
        min_mm=min(sizes),
        min_at_depth_mm=smallest.depth_mm,
        min_at_axis=smallest.axis,
        mean_mm=sum(sizes) / len(sizes),
        worn_zone_mm=max((level.mean_mm for level in both), default=None),
        out_of_round_mm=max((level.out_of_round_mm for level in both), default=None),
        out_of_round_at_depth_mm=None if worst is None else worst.depth_mm,
        taper_pin_axis_mm=read.taper_mm(pin),
        taper_thrust_axis_mm=read.taper_mm(thrust),
        signed_taper_pin_top_minus_bottom_mm=read.signed_taper_mm(pin),
        signed_taper_thrust_top_minus_bottom_mm=read.signed_taper_mm(thrust),
        barrel_mm=read.barrel_mm(both),
        wear_mm=None if unworn is None else bore.wear_mm(max(sizes), unworn),
        wear_from=counted_from,
        shape=read.shape(both),
        cross_section=read.section_word(both),
    )


def _size_at_20c_mm(inputs: Inputs, as_read_mm: float) -> float:
    at_20c = length_at_20c_mm(as_read_mm, inputs.bore_temperature_c, bore_alpha_per_k(inputs))
    return cast(float, at_20c)


def _at_20c(inputs: Inputs) -> Survey:
    pin, thrust = (
        tuple(None if value is None else _size_at_20c_mm(inputs, value) for value in axis)
        for axis in (inputs.pin_axis_mm, inputs.thrust_axis_mm)
    )
    return dataclasses.replace(inputs, pin_axis_mm=pin, thrust_axis_mm=thrust)


def _unworn_mm(inputs: Inputs) -> tuple[Number | None, str | None]:
    """Return what wear is counted from, and which; a nominal size holds at 20 °C as it stands."""
    if inputs.unworn_reference_mm is not None:
        unworn = cast(float, inputs.unworn_reference_mm)
        return _size_at_20c_mm(inputs, unworn), "unworn_reference"
    nominal = inputs.nominal_bore_mm
    return nominal, None if nominal is None else "nominal_bore"


CALCULATION = Calculation(
    name="bore-survey",
    number="C24",
    stage="cylinder",
    title="Bore survey",
    summary="Largest and smallest bore, out-of-round, taper, shape and wear, from readings on two "
    "axes at several depths: top of the ring travel, 8 to 10 mm below the deck, middle and bottom, "
    "and one below it as the unworn reference. All figures are diametral. A cylinder off the "
    "engine reads otherwise than one under its torqued head.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=lambda i: of_survey(_at_20c(i), _unworn_mm(i)[0]),
    figures=(expansion_of_bore(ALL),),
    columns=False,
    checks=CHECKS,
    rules=notices.RULES,
    notices=notices.NOTICES,
    cautions=("measuring",),
)
