"""C14: pressure and vacuum test of a two-stroke's crankcase."""

import dataclasses
from typing import Any

from ringland_service.core.calculations.engine_tests import crankcase_checks as judged
from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.declare import (
    Calculation,
    flag,
    kinds,
    limit_side,
    number,
    quantity,
    record,
    result,
    same,
    usual_figures,
)
from ringland_service.core.engines import condition
from ringland_service.core.formulas import crankcase
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import engine_tests as tests
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

GAS_LAW = "gas law at constant volume"
AS_AT_START = (
    "(end + air pressure) · temperature at the start / temperature at the end − air pressure, in "
    "kelvin; the end itself where no temperatures are given"
)


def _minutes(words: str) -> Any:
    return number(words, low=0.5, high=60.0, example=5.0, default=None)


@record
class Inputs:
    """One test under pressure, one under vacuum, or both; exhaust and intake blanked, plug in."""

    start_kpa: Number | None = quantity(
        tests.CRANKCASE_START,
        "pressure test: pressure at the start, gauge; never above the maker's, 60 kPa at most",
        default=None,
    )
    end_kpa: Number | None = quantity(
        tests.CRANKCASE_END, "pressure test: pressure at the end, gauge", default=None
    )
    minutes: Number | None = _minutes("pressure test: minutes from start to end")
    start_temperature_c: Number | None = quantity(
        tests.CRANKCASE_TEMPERATURE, "pressure test: temperature at the start", default=None
    )
    end_temperature_c: Number | None = quantity(
        tests.CRANKCASE_TEMPERATURE,
        "pressure test: temperature at the end",
        example=21.5,
        default=None,
    )
    vacuum_start_kpa: Number | None = quantity(
        tests.CRANKCASE_VACUUM_START,
        "vacuum test: pressure at the start, gauge, below zero",
        default=None,
    )
    vacuum_end_kpa: Number | None = quantity(
        tests.CRANKCASE_VACUUM_END,
        "vacuum test: pressure at the end, gauge, below zero",
        default=None,
    )
    vacuum_minutes: Number | None = _minutes("vacuum test: minutes from start to end")
    vacuum_start_temperature_c: Number | None = quantity(
        tests.CRANKCASE_TEMPERATURE,
        "vacuum test: temperature at the start",
        example=21.5,
        default=None,
    )
    vacuum_end_temperature_c: Number | None = quantity(
        tests.CRANKCASE_TEMPERATURE,
        "vacuum test: temperature at the end",
        example=21.0,
        default=None,
    )
    altitude_m: Number | None = quantity(
        quantities.ALTITUDE, "altitude of the place (geopotential)", default=None
    )
    air_pressure_kpa_abs: Number | None = quantity(
        quantities.AIR_PRESSURE, "air pressure on the spot, absolute", default=None
    )
    weather_report_kpa_abs: Number | None = same(air_pressure.Inputs, "weather_report_kpa_abs")
    trapped_volume_cc: Number | None = quantity(
        tests.TRAPPED_VOLUME, "air shut in: crankcase, ducts and hose", default=None
    )
    plates_soaped: bool | None = flag(
        "blanking plates, plug and hose soaped and found tight", default=None
    )
    second_crank_position: bool | None = flag(
        "repeated with the crank turned to another position", default=None
    )
    most_under_pressure_kpa_diff: Number | None = limit_side("crankcase_pressure_loss", "high")
    most_under_vacuum_kpa_diff: Number | None = limit_side("crankcase_vacuum_loss", "high")
    usual: bool = usual_figures()


def _loss(words: str, formula: str) -> Any:
    return result(
        words,
        kind=kinds.PRESSURE_DIFFERENCE,
        digits=2,
        formula=formula,
        source=COMMON,
        default=None,
    )


def _end_corrected(words: str) -> Any:
    return result(
        words,
        kind=kinds.PRESSURE_GAUGE,
        digits=1,
        basis=AS_AT_START,
        source=GAS_LAW,
        default=None,
    )


def _flow(words: str, loss: str) -> Any:
    return result(
        words,
        kind=kinds.VOLUME,
        digits=2,
        formula=f"trapped_volume_cc * {loss} / air_pressure_here_kpa_abs",
        source="Boyle's law",
        default=None,
    )


@record
class Outputs:
    """Losses a minute, positive where it leaks, as read and at one temperature."""

    air_pressure_here_kpa_abs: Number = result(
        "air pressure that was used, absolute",
        kind=kinds.PRESSURE_ABSOLUTE,
        digits=2,
        basis="as read on the spot, else the weather report or the standard atmosphere at the "
        "altitude, else 101.325",
        source=cited("{iso_2533}"),
    )
    raw_loss_per_minute_kpa_diff: Number | None = _loss(
        "pressure lost a minute, as read", "(start_kpa - end_kpa) / minutes"
    )
    end_corrected_kpa: Number | None = _end_corrected(
        "end pressure at the temperature of the start, gauge"
    )
    temperature_effect_kpa_diff: Number | None = _loss(
        "pressure that cooling took away, and warming gave: not a leak",
        "end_corrected_kpa - end_kpa",
    )
    loss_per_minute_kpa_diff: Number | None = _loss(
        "pressure lost a minute at one temperature: what judges",
        "(start_kpa - end_corrected_kpa) / minutes",
    )
    leak_per_minute_cc: Number | None = _flow(
        "air that leaks out a minute, at the pressure outside", "loss_per_minute_kpa_diff"
    )
    vacuum_raw_loss_per_minute_kpa_diff: Number | None = _loss(
        "vacuum lost a minute, as read", "(vacuum_end_kpa - vacuum_start_kpa) / vacuum_minutes"
    )
    vacuum_end_corrected_kpa: Number | None = _end_corrected(
        "end of the vacuum test at the temperature of its start, gauge"
    )
    vacuum_temperature_effect_kpa_diff: Number | None = _loss(
        "pressure that cooling took away: it hides a leak under vacuum",
        "vacuum_end_corrected_kpa - vacuum_end_kpa",
    )
    vacuum_loss_per_minute_kpa_diff: Number | None = _loss(
        "vacuum lost a minute at one temperature: what judges",
        "(vacuum_end_corrected_kpa - vacuum_start_kpa) / vacuum_minutes",
    )
    vacuum_leak_per_minute_cc: Number | None = _flow(
        "air that leaks in a minute, at the pressure outside", "vacuum_loss_per_minute_kpa_diff"
    )
    finding: str | None = result(
        "what both tests say by their values; to hold takes both",
        basis="each loss against its limit: seals may pass the one test and fail the other",
        source=COMMON,
        choices=judged.FINDING,
        default=None,
    )


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
    one_of=((("start_kpa",), ("vacuum_start_kpa",)),),
    checks=judged.CHECKS,
    rules=(*judged.RULES, *condition.AIR_PRESSURE_RULES),
    notices=(*judged.NOTICES, *condition.AIR_PRESSURE_NOTICES),
    cautions=("crankcase_test",),
)
