"""What an engine is, and what it was tested under: the vocabularies that calculations share."""

from ringland_service.core.declare import Notice, Rule, Unjudged
from ringland_service.core.engines._shapes import Air
from ringland_service.core.engines.choices import OVERHEAD, PORTS, SIDE_VALVE
from ringland_service.core.engines.choices import VALVE_GEAR as VALVE_GEAR
from ringland_service.core.engines.materials import BORE_KINDS, UNKNOWN
from ringland_service.core.formulas import air
from ringland_service.core.formulas.elementary import absolute
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number, Truth

CYCLE: dict[str, str] = {"four_stroke": "four-stroke", "two_stroke": "two-stroke"}
STARTER: dict[str, str] = {"electric": "electric", "kick": "kick", "rope": "rope"}
LAYOUT: dict[str, str] = {
    "in_line": "all cylinders in one bank, read in order",
    "vee": "two banks, read bank by bank",
    "opposed": "two opposed banks, read bank by bank",
}
DECOMPRESSOR: dict[str, str] = {
    "none": "no decompressor",
    "automatic_exhaust_lifter": "automatic, lifts the exhaust valve by weights or the cam",
    "automatic_intake_side": "automatic, holds the intake valve or closes it late",
    "manual_lifter": "manual valve lifter",
    "manual_two_stroke_valve": "manual valve in the head or above the exhaust port, two-stroke",
    UNKNOWN: "not known",
}
DECOMPRESSOR_STATE: dict[str, str] = {
    "none": "no decompressor",
    "automatic_held_off": "automatic one held off during the test",
    "automatic_active": "automatic one at work during the test",
    "manual_not_used": "manual one not used during the test",
    UNKNOWN: "not known",
}
BORE_KIND: dict[str, str] = BORE_KINDS
# An engine of each cycle can have these; one whose valve gear is not known fits both.
VALVE_GEAR_OF: dict[str, tuple[str, ...]] = {
    "four_stroke": (OVERHEAD, SIDE_VALVE),
    "two_stroke": (PORTS,),
}
PISTON_KIND: dict[str, str] = {
    "cast_air_cooled": "cast, air-cooled four-stroke",
    "cast_liquid_cooled": "cast, liquid-cooled four-stroke",
    "forged": "forged",
    "two_stroke_iron": "two-stroke, for an iron bore",
    "two_stroke_plated": "two-stroke, for a plated bore",
}
CLEAN, GLAZED, SCORED, CORRODED, SMEARED = "clean", "glazed", "scored", "corroded", "smeared"
SURFACE: dict[str, str] = {
    CLEAN: "clean: hone marks to be seen, no score, no glaze",
    GLAZED: "glazed: bright and hard, hone marks gone",
    SCORED: "scored or seized",
    CORRODED: "pitted by rust or corrosion",
    SMEARED: "aluminium of the piston smeared on it",
}
# A bore with metal on it has no size of its own to be judged.
SMEARED_BORE = Unjudged(
    "surface_smeared",
    lambda i, *_: i.surface == SMEARED,
    "have the aluminium taken off by a specialist, then measure the bore again",
)
FIT: dict[str, str] = {
    "new": "new fit: piston and bore as they go together",
    "used": "used parts against their service limit",
}

# Which states a kind of decompressor can be in; an unknown kind or state fits any.
STATES_OF: dict[str, tuple[str, ...]] = {
    "none": ("none",),
    "automatic_exhaust_lifter": ("automatic_held_off", "automatic_active"),
    "automatic_intake_side": ("automatic_held_off", "automatic_active"),
    "manual_lifter": ("manual_not_used",),
    "manual_two_stroke_valve": ("manual_not_used",),
}
# The one cycle whose engines have such a kind, or None: all but the last lift a valve.
CYCLE_OF_DECOMPRESSOR: dict[str, str | None] = {
    "none": None,
    UNKNOWN: None,
    "automatic_exhaust_lifter": "four_stroke",
    "automatic_intake_side": "four_stroke",
    "manual_lifter": "four_stroke",
    "manual_two_stroke_valve": "two_stroke",
}
CERTAIN_STATES = ("none", "automatic_held_off", "manual_not_used")
ACTIVE = "automatic_active"

# Weather moves the air pressure at one place by no more than this (common practice, no source).
MOST_WEATHER_KPA = 6.0
# A report brought to sea level with the real temperature is off by less (common practice, no
# source).
REPORT_KPA = 2.0


def valve_gear_contradicts(cycle: str, valve_gear: str) -> bool:
    """Return whether engines of this cycle do not have this valve gear."""
    return valve_gear != UNKNOWN and valve_gear not in VALVE_GEAR_OF[cycle]


def decompressor_of_the_other_cycle(cycle: str, decompressor: str) -> bool:
    """Return whether engines of this cycle do not have this kind of decompressor."""
    only = CYCLE_OF_DECOMPRESSOR[decompressor]
    return only is not None and only != cycle


def decompressor_contradicts(kind: str, state: str) -> bool:
    """Return whether a decompressor of this kind cannot be in this state."""
    return UNKNOWN not in (kind, state) and state not in STATES_OF[kind]


def decompressor_uncertain(kind: str | None, state: str | None) -> bool:
    """Return whether a decompressor may have let pressure off without anybody knowing."""
    return kind != "none" and state not in (*CERTAIN_STATES, ACTIVE)


def air_here_kpa(inputs: Air) -> Number:
    """Return the absolute air pressure where the test was made [kPa]: the one truth of a record."""
    return air_pressure_here_kpa(
        inputs.altitude_m, inputs.air_pressure_kpa_abs, inputs.weather_report_kpa_abs
    )


def air_pressure_here_kpa(
    altitude_m: Number | None,
    air_pressure_kpa_abs: Number | None,
    weather_report_kpa_abs: Number | None = None,
) -> Number:
    """Absolute air pressure where the test was made.

    Parameters
    ----------
    altitude_m : float, array or None
        Geopotential altitude [m].
    air_pressure_kpa_abs : float, array or None
        Air pressure read on the spot; where given, it is taken before the altitude [kPa].
    weather_report_kpa_abs : float, array or None
        Air pressure of the weather report, brought to sea level; counts with the altitude [kPa].

    Returns
    -------
    float or array
        Air pressure, that of standard sea level where neither is given [kPa].

    References
    ----------
    ISO 2533, Standard atmosphere.
    """
    if air_pressure_kpa_abs is not None:
        return air_pressure_kpa_abs
    if altitude_m is None:
        return air.SEA_LEVEL_KPA
    if weather_report_kpa_abs is None:
        return air.altitude_pressure_kpa(altitude_m)
    return air.altitude_pressure_kpa(altitude_m, weather_report_kpa_abs)


ENGINE_RULES: tuple[Rule, ...] = (
    Rule(
        ("decompressor", "decompressor_state"),
        lambda i: decompressor_contradicts(i.decompressor, i.decompressor_state),
        "a decompressor of this kind cannot be in that state",
        "automatic: held off or active; manual: not used; no decompressor: none",
    ),
    Rule(
        ("valve_gear", "cycle"),
        lambda i: valve_gear_contradicts(i.cycle, i.valve_gear),
        "engines of this cycle do not have this valve gear",
        "four-stroke: overhead_valves or side_valve; two-stroke: ports",
    ),
    Rule(
        ("decompressor", "cycle"),
        lambda i: decompressor_of_the_other_cycle(i.cycle, i.decompressor),
        "engines of this cycle do not have this kind of decompressor",
        "four-stroke: one that lifts a valve; two-stroke: manual_two_stroke_valve; or none",
    ),
)


def _neither(i: Air, _: object) -> bool:
    return i.altitude_m is None and i.air_pressure_kpa_abs is None


def _both(i: Air, _: object) -> bool:
    return i.altitude_m is not None and i.air_pressure_kpa_abs is not None


def _apart(i: Air, _: object) -> Truth:
    if i.altitude_m is None or i.air_pressure_kpa_abs is None:
        return False
    apart = absolute(i.air_pressure_kpa_abs - air.altitude_pressure_kpa(i.altitude_m))
    return apart > MOST_WEATHER_KPA


def _report_alone(i: Air, _: object) -> bool:
    return i.weather_report_kpa_abs is not None and _neither(i, _)


def _two_pressures(i: Air) -> Truth:
    """Return whether report and spot reading do not agree, or cannot be compared."""
    spot_kpa, at_sea_level_kpa = i.air_pressure_kpa_abs, i.weather_report_kpa_abs
    if i.altitude_m is None or spot_kpa is None or at_sea_level_kpa is None:
        return True
    report_kpa = air.altitude_pressure_kpa(i.altitude_m, at_sea_level_kpa)
    apart: Truth = beyond(absolute(spot_kpa - report_kpa), REPORT_KPA)
    return apart


AIR_PRESSURE_RULES: tuple[Rule, ...] = (
    Rule(
        ("weather_report_kpa_abs", "air_pressure_kpa_abs"),
        _two_pressures,
        "a weather report is brought to sea level, the air pressure on the spot is not: "
        "given together they do not agree",
        "the air pressure on the spot alone; or the weather report with the altitude",
    ),
)
AIR_PRESSURE_NOTICES: tuple[Notice, ...] = (
    Notice(
        "sea_level_assumed",
        "altitude_m",
        _neither,
        "neither altitude nor air pressure given: worked out for sea level, 101.325 kPa absolute",
    ),
    Notice(
        "weather_report_needs_altitude",
        "weather_report_kpa_abs",
        _report_alone,
        "a weather report is brought to sea level and says nothing of this place without its "
        "altitude: it is not used",
    ),
    Notice(
        "air_pressure_on_the_spot_used",
        "air_pressure_kpa_abs",
        _both,
        "altitude and air pressure both given: the air pressure on the spot is used",
    ),
    Notice(
        "pressure_not_of_this_altitude",
        "air_pressure_kpa_abs",
        _apart,
        "more than 6 kPa from the pressure of that altitude: weather reports give the pressure "
        "brought to sea level, not the one on the spot",
    ),
)
