"""C14: pressure and vacuum test of a two-stroke's crankcase."""

import dataclasses

from ringland_service.core.calculations.engine_tests import crankcase_checks as judged
from ringland_service.core.calculations.engine_tests._crankcase_fields import Inputs as Inputs
from ringland_service.core.calculations.engine_tests._crankcase_fields import Outputs as Outputs
from ringland_service.core.declare import Calculation
from ringland_service.core.engines import condition
from ringland_service.core.formulas import crankcase
from ringland_service.core.numbers import Number


def compute(inputs: Inputs) -> Outputs:
    """Work out the losses of the tests that were made, and what they say together."""
    air = condition.air_here_kpa(inputs)
    found = Outputs(air_pressure_here_kpa_abs=air)
    found = _under_vacuum(inputs, _under_pressure(inputs, found, air), air)
    return dataclasses.replace(found, finding=judged.finding(inputs, found))


def _under_pressure(inputs: Inputs, found: Outputs, air: Number) -> Outputs:
    start, end, minutes = inputs.start_kpa, inputs.end_kpa, inputs.minutes
    if start is None or end is None or minutes is None:
        return found
    kept = _at_start(end, air, inputs.start_temperature_c, inputs.end_temperature_c)
    loss = crankcase.loss_per_minute_kpa(start, kept, minutes)
    return dataclasses.replace(
        found,
        raw_loss_per_minute_kpa_diff=crankcase.loss_per_minute_kpa(start, end, minutes),
        end_corrected_kpa=kept,
        temperature_effect_kpa_diff=kept - end,
        loss_per_minute_kpa_diff=loss,
        leak_per_minute_cc=_leak_cc(inputs, loss, air),
    )


def _under_vacuum(inputs: Inputs, found: Outputs, air: Number) -> Outputs:
    start, end, minutes = inputs.vacuum_start_kpa, inputs.vacuum_end_kpa, inputs.vacuum_minutes
    if start is None or end is None or minutes is None:
        return found
    kept = _at_start(end, air, inputs.vacuum_start_temperature_c, inputs.vacuum_end_temperature_c)
    loss = crankcase.loss_per_minute_kpa(kept, start, minutes)
    return dataclasses.replace(
        found,
        vacuum_raw_loss_per_minute_kpa_diff=crankcase.loss_per_minute_kpa(end, start, minutes),
        vacuum_end_corrected_kpa=kept,
        vacuum_temperature_effect_kpa_diff=kept - end,
        vacuum_loss_per_minute_kpa_diff=loss,
        vacuum_leak_per_minute_cc=_leak_cc(inputs, loss, air),
    )


def _at_start(end: Number, air: Number, start_c: Number | None, end_c: Number | None) -> Number:
    if start_c is None or end_c is None:
        return end
    return crankcase.at_start_temperature_kpa(end, air, start_c, end_c)


def _leak_cc(inputs: Inputs, loss: Number, air: Number) -> Number | None:
    volume = inputs.trapped_volume_cc
    return None if volume is None else crankcase.leak_per_minute_cc(volume, loss, air)


CALCULATION = Calculation(
    name="crankcase-leak",
    number="C14",
    stage="engine_tests",
    title="Crankcase leak of a two-stroke",
    summary="Pressure and vacuum that a two-stroke's crankcase loses a minute, cooling taken out. "
    "Exhaust and intake blanked, plug fitted; the plates leak first, so soap them. A seal can hold "
    "pressure and leak under vacuum: to hold takes both tests, at two positions of the crank.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    any_of=((("start_kpa",), ("vacuum_start_kpa",)),),
    checks=judged.CHECKS,
    rules=(*judged.RULES, *condition.AIR_PRESSURE_RULES),
    notices=(*judged.NOTICES, *condition.AIR_PRESSURE_NOTICES),
    cautions=("crankcase_test",),
)
