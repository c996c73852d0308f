"""C24: survey of a bore: its extremes, out-of-round, taper, shape and wear."""

import dataclasses
from typing import cast

from ringland_service.core.calculations.cylinder import _bore_notices as notices
from ringland_service.core.calculations.cylinder import _bore_readings as read
from ringland_service.core.calculations.cylinder._bore_extremes import of_survey
from ringland_service.core.calculations.cylinder._bore_fields import Inputs as Inputs
from ringland_service.core.calculations.cylinder._bore_fields import Outputs
from ringland_service.core.calculations.cylinder.bore_checks import CHECKS
from ringland_service.core.calculations.cylinder.piston_fit import bore_alpha_per_k
from ringland_service.core.declare import Calculation
from ringland_service.core.declare.usual import ALL
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.engines.survey import Survey
from ringland_service.core.formulas import bore
from ringland_service.core.formulas.air import length_at_20c_mm
from ringland_service.core.numbers import Number


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
        largest_mm=max(sizes),
        largest_at_depth_mm=largest.depth_mm,
        largest_at_axis=largest.axis,
        smallest_mm=min(sizes),
        smallest_at_depth_mm=smallest.depth_mm,
        smallest_at_axis=smallest.axis,
        mean_mm=sum(sizes) / len(sizes),
        worn_zone_mm=max((level.mean_mm for level in both), default=None),
        out_of_round_mm=max((level.out_of_round_mm for level in both), default=None),
        out_of_round_at_depth_mm=None if worst is None else worst.depth_mm,
        taper_pin_axis_mm=read.taper_mm(pin),
        taper_thrust_axis_mm=read.taper_mm(thrust),
        signed_taper_pin_axis_mm=read.signed_taper_mm(pin),
        signed_taper_thrust_axis_mm=read.signed_taper_mm(thrust),
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
    if inputs.unworn_mm is not None:
        unworn = cast(float, inputs.unworn_mm)
        return _size_at_20c_mm(inputs, unworn), "unworn"
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
