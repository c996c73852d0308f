"""C05: the level of a cranking compression reading."""

import math

import numpy as np

from ringland_service.core.calculations.engine_tests import test_conditions as conditions
from ringland_service.core.calculations.engine_tests._compression_level_inputs import (
    Inputs as Inputs,
)
from ringland_service.core.declare import Calculation, Check, kinds, record, result
from ringland_service.core.engines import condition
from ringland_service.core.formulas import air, readings
from ringland_service.core.formulas.elementary import sqrt
from ringland_service.core.metrology.conformity import is_column
from ringland_service.core.metrology.limits import GRADES, LIMITS, Limit
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.core.metrology.unjudged import NOT_JUDGED
from ringland_service.core.numbers import Number, Token
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import NO_SOURCE, cited

ATMOSPHERE = cited("{iso_2533}")
GUM = cited("{jcgm_100_rectangular}: rectangular parts, k = 2")
# A maximum error ± a stands for a rectangle of standard uncertainty a / √3.
ROOT3 = math.sqrt(3.0)
GRADEABLE = {
    "yes": "the level can be graded",
    "decompressor_unknown": "gradeable only where it is good: a decompressor may have let "
    "pressure off",
    "decompressor_active": "not gradeable by level: do a leak-down",
    "conditions_not_met": "gradeable only where it is good: a condition of the test was not met",
    "reading_unfit": "not gradeable: the reading does not repeat, or the gauge is unfit",
}
ONLY_LOWERED = ("decompressor_unknown", "decompressor_active", "conditions_not_met")
GRADE = {
    **GRADES["compression_level"].choices,
    NOT_JUDGED: "not judged: see what can be graded, and why",
}
# What is good although something may have lowered it.
GOOD = ("good", "high")


@record
class Outputs:
    """The reading against the expected one, its uncertainty, and what it would be elsewhere."""

    reading_at_sea_level_kpa: Number = result(
        "the reading brought to sea level, gauge",
        kind=kinds.PRESSURE_GAUGE,
        decimals=0,
        formula="reading_kpa * 101.325 / air_pressure_here_kpa_abs",
        source=ATMOSPHERE,
    )
    reading_at_expected_altitude_kpa: Number = result(
        "the reading brought to the altitude that the limit is stated for, gauge",
        kind=kinds.PRESSURE_GAUGE,
        decimals=0,
        formula="reading_kpa * air_pressure_at_expected_altitude_kpa_abs"
        " / air_pressure_here_kpa_abs",
        source=ATMOSPHERE,
    )
    air_pressure_here_kpa_abs: Number = result(
        "air pressure where the test was made, absolute",
        kind=kinds.PRESSURE_ABSOLUTE,
        decimals=2,
        basis="as read on the spot, else the weather report or the standard atmosphere at the "
        "altitude, else 101.325",
        source=ATMOSPHERE,
    )
    air_pressure_at_expected_altitude_kpa_abs: Number = result(
        "air pressure at the altitude that the limit is stated for, absolute",
        kind=kinds.PRESSURE_ABSOLUTE,
        decimals=2,
        basis="the standard atmosphere at that altitude, else 101.325",
        source=ATMOSPHERE,
    )
    gradeable: Token = result(
        "whether the level can be graded",
        basis="the kind of decompressor and its state during the test",
        source=NO_SOURCE,
        choices=GRADEABLE,
    )
    unmet_conditions: Number = result(
        "stated conditions of the test that were not met; each is named in the warnings",
        decimals=0,
        basis="throttle, choke, warmth, plugs and battery as stated; what is not stated is not "
        "counted",
        source=NO_SOURCE,
    )
    ratio: Number | None = result(
        "reading over the expected reading",
        decimals=3,
        formula="reading_kpa / expected_kpa",
        source=NO_SOURCE,
        default=None,
    )
    grade: Token | None = result(
        "level of the reading",
        basis="steps of the reading over the expected one",
        source=NO_SOURCE,
        common_practice=True,
        choices=GRADE,
        default=None,
    )
    gauge_uncertainty_kpa_diff: Number | None = result(
        "expanded uncertainty of the reading from the gauge alone, k = 2",
        kind=kinds.PRESSURE_DIFFERENCE,
        decimals=1,
        formula="2 * reading_kpa * gauge_error_pct / 100 / sqrt(3)",
        source=GUM,
        default=None,
    )
    reading_uncertainty_kpa_diff: Number | None = result(
        "expanded uncertainty of the reading from gauge, repeat and weather, k = 2",
        kind=kinds.PRESSURE_DIFFERENCE,
        decimals=1,
        basis="2 · √((reading · gauge error / √3)² + (repeat / √3)² + (reading · weather / (√3 · "
        "air pressure))²), the parts that are given",
        source=GUM,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Compare the reading with the expected one and bring it to other air pressures."""
    reading, expected = inputs.reading_kpa, inputs.expected_kpa
    here = condition.air_here_kpa(inputs)
    there = condition.air_pressure_here_kpa(inputs.expected_altitude_m, None)
    ratio = None if expected is None else readings.level_ratio(reading, expected)
    gradeable = _gradeable(inputs)
    gauge = _gauge_u_kpa(inputs)
    parts = [
        u for u in (gauge, _repeat_u_kpa(inputs), _weather_u_kpa(inputs, here)) if u is not None
    ]
    return Outputs(
        reading_at_sea_level_kpa=air.reading_at_pressure_kpa(reading, here, air.SEA_LEVEL_KPA),
        reading_at_expected_altitude_kpa=air.reading_at_pressure_kpa(reading, here, there),
        air_pressure_here_kpa_abs=here,
        air_pressure_at_expected_altitude_kpa_abs=there,
        gradeable=gradeable,
        unmet_conditions=conditions.unmet(inputs),
        ratio=ratio,
        grade=None if ratio is None else _grade(ratio, gradeable),
        gauge_uncertainty_kpa_diff=None if gauge is None else 2.0 * gauge,
        reading_uncertainty_kpa_diff=2.0 * sqrt(sum(u * u for u in parts)) if parts else None,
    )


def _gradeable(inputs: Inputs) -> Token:
    """Return what keeps the level from being graded, the gravest where several do."""
    kind, state = inputs.decompressor, inputs.decompressor_state
    word: Token = "yes"
    if state == condition.ACTIVE:
        word = "decompressor_active"
    elif condition.decompressor_uncertain(kind, state):
        word = "decompressor_unknown"
    elif is_column(lowered := conditions.only_lowered(inputs)):
        word = np.where(lowered, "conditions_not_met", word)
    elif lowered:
        word = "conditions_not_met"
    unfit = conditions.unfit(inputs)
    if is_column(unfit):
        return np.where(unfit, "reading_unfit", word)
    return "reading_unfit" if unfit else word


def _grade(ratio: Number, gradeable: Token) -> Token:
    """Return the level's word where one is due; a good one stands if it could only be lowered."""
    word = GRADES["compression_level"].word(ratio)
    good, lowered = np.isin(word, GOOD), np.isin(gradeable, (*ONLY_LOWERED,))
    due = np.equal(gradeable, "yes") | (good & lowered)
    if is_column(ratio) or is_column(gradeable):
        return np.where(due, word, NOT_JUDGED)
    return word if due else NOT_JUDGED


def _gauge_u_kpa(inputs: Inputs) -> Number | None:
    error = inputs.gauge_error_pct
    return None if error is None else inputs.reading_kpa * error / 100 / ROOT3


def _repeat_u_kpa(inputs: Inputs) -> Number | None:
    return None if inputs.repeatability_kpa_diff is None else inputs.repeatability_kpa_diff / ROOT3


def _weather_u_kpa(inputs: Inputs, air_kpa: Number) -> Number | None:
    """Return what the weather's part of the air pressure leaves open in the reading."""
    weather = inputs.weather_kpa_diff
    if weather is None or inputs.air_pressure_kpa_abs is not None:
        return None
    return inputs.reading_kpa * weather / (ROOT3 * air_kpa)


def components(inputs: Inputs) -> list[Component]:
    """Return the uncertainty that gauge, repeat and weather bring into the inputs."""
    on_reading = (Effect(("reading_kpa",), quantities.SETTLED_COMPRESSION.span),)
    found = [
        Component(name, u, on_reading)
        for name, u in (("gauge", _gauge_u_kpa(inputs)), ("repeatability", _repeat_u_kpa(inputs)))
        if u is not None and np.any(u)
    ]
    return found + _weather_influence(inputs)


def _weather_influence(inputs: Inputs) -> list[Component]:
    """Return the weather as an uncertainty of altitude, which moves the expected pressure."""
    altitude, weather = inputs.altitude_m, inputs.weather_kpa_diff
    if altitude is None or weather is None or not np.any(weather):
        return []
    pressure = air.altitude_pressure_kpa(altitude)
    # Hydrostatics of the standard atmosphere: dp/dh = -p g / (R T).
    kelvin = air.SEA_LEVEL_K - air.LAPSE_K_PER_M * altitude
    per_m = -air.GRAVITY_M_PER_S2 / (air.GAS_CONSTANT_J_PER_KG_K * kelvin)
    effects = [Effect(("altitude_m",), quantities.ALTITUDE.span)]
    if inputs.expected_kpa is not None:
        by = inputs.expected_kpa * per_m
        effects.append(Effect(("expected_kpa",), quantities.EXPECTED.span, by))
    return [Component("weather", weather / ROOT3 / (-per_m * pressure), tuple(effects))]


def _band(inputs: Inputs, outputs: Outputs) -> Limit | None:
    if inputs.expected_kpa is not None or not conditions.banded(inputs):
        return None
    there = outputs.air_pressure_at_expected_altitude_kpa_abs
    return LIMITS[f"compression.{inputs.cycle}"].limit(there / air.SEA_LEVEL_KPA)


CALCULATION = Calculation(
    name="compression-level",
    number="C05",
    stage="engine_tests",
    title="Cranking compression: grading the level",
    summary="A compression reading against the pressure expected here, and against a limit at the "
    "altitude that it is stated for. The maker's minimum wins. Peaks of the starter current say "
    "nothing of the level.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    components=components,
    checks=(
        Check(
            "compression_least",
            "reading_at_expected_altitude_kpa",
            "compression, brought to the altitude of its limit",
            "read the air pressure on the spot, use a gauge of known error, and repeat the "
            "reading; a leak-down does not depend on the level",
            _band,
            unjudged=conditions.UNJUDGED,
            with_decompressor=True,
        ),
    ),
    rules=conditions.RULES,
    notices=conditions.NOTICES,
    cautions=("compression_test", "fuel"),
)
