"""What an engine is, and what it was tested under: the vocabularies that calculations share."""

from typing import Any

import numpy as np

from ringland_service.core.choices import OVERHEAD, PORTS, SIDE_VALVE
from ringland_service.core.choices import VALVE_GEAR as VALVE_GEAR  # all vocabularies in one place
from ringland_service.core.declare import Notice, Unjudged
from ringland_service.core.formulas import air
from ringland_service.core.materials import BORE_KINDS, UNKNOWN
from ringland_service.core.numbers import Number

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
CERTAIN_STATES = ("none", "automatic_held_off", "manual_not_used")
ACTIVE = "automatic_active"

# Weather moves the air pressure at one place by no more than this (common practice, no source).
MOST_WEATHER_KPA = 6.0


def valve_gear_contradicts(cycle: str, valve_gear: str) -> bool:
    """Return whether engines of this cycle do not have this valve gear."""
    return valve_gear != UNKNOWN and valve_gear not in VALVE_GEAR_OF[cycle]


def decompressor_contradicts(kind: str, state: str) -> bool:
    """Return whether a decompressor of this kind cannot be in this state."""
    return UNKNOWN not in (kind, state) and state not in STATES_OF[kind]


def decompressor_uncertain(kind: str | None, state: str | None) -> bool:
    """Return whether a decompressor may have let pressure off without anybody knowing."""
    return kind != "none" and state not in (*CERTAIN_STATES, ACTIVE)


def air_pressure_here_kpa(altitude_m: Number | None, air_pressure_kpa_abs: Number | None) -> Number:
    """Absolute air pressure where the test was made.

    Parameters
    ----------
    altitude_m : float, array or None
        Geopotential altitude [m].
    air_pressure_kpa_abs : float, array or None
        Air pressure read on the spot; where given, it is taken before the altitude [kPa].

    Returns
    -------
    float or array
        Air pressure, that of standard sea level where neither is given [kPa].

    References
    ----------
    ISO 2533, Standard atmosphere (from memory).
    """
    if air_pressure_kpa_abs is not None:
        return air_pressure_kpa_abs
    return air.SEA_LEVEL_KPA if altitude_m is None else air.altitude_pressure_kpa(altitude_m)


def _neither(i: Any, _: Any) -> bool:
    return i.altitude_m is None and i.air_pressure_kpa_abs is None


def _both(i: Any, _: Any) -> bool:
    return i.altitude_m is not None and i.air_pressure_kpa_abs is not None


def _apart(i: Any, outputs: Any) -> Any:
    if not _both(i, outputs):
        return False
    apart = np.abs(i.air_pressure_kpa_abs - air.altitude_pressure_kpa(i.altitude_m))
    return apart > MOST_WEATHER_KPA


AIR_PRESSURE_NOTICES: tuple[Notice, ...] = (
    Notice(
        "sea_level_assumed",
        "altitude_m",
        _neither,
        "neither altitude nor air pressure given: worked out for sea level, 101.325 kPa absolute",
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
