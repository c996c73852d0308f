"""The verdicts on a surveyed bore, by what the bore is for."""

from dataclasses import replace
from typing import Any

from ringland_service.core.declare import Check
from ringland_service.core.engines.condition import SMEARED_BORE
from ringland_service.core.metrology.limits import LIMITS, Limit

FRESH = "fresh"
USE: dict[str, str] = {
    "used": "a used bore, to stay as it is",
    "rering": "a used bore, to be honed and given new rings",
    FRESH: "a freshly bored and honed one",
}

SETTLE_SIZE = "set the gauge in a ring near the size, five readings each, cylinder at 20 °C"
SETTLE_DIFFERENCE = (
    "five readings each at one setting of one gauge, whose error cancels in a difference"
)


def _most_bore(inputs: Any, _: Any) -> Limit | None:
    if inputs.use == FRESH or inputs.nominal_bore_mm is None:
        return None
    row = LIMITS["bore_wear.used"]
    limit = row.limit()
    return replace(limit, high=inputs.nominal_bore_mm + row.high)


def _most_wear(inputs: Any, _: Any) -> Limit | None:
    return None if inputs.use == FRESH else LIMITS["bore_wear.used"].limit()


def _most_out_of_round(inputs: Any, _: Any) -> Limit:
    return LIMITS[f"out_of_round.{inputs.use}"].limit()


def _most_taper(inputs: Any, _: Any) -> Limit:
    return LIMITS[f"bore_taper.{inputs.use}"].limit()


SMEARED = (SMEARED_BORE,)
CHECKS = (
    Check("bore_max", "max_mm", "largest bore", SETTLE_SIZE, _most_bore, unjudged=SMEARED),
    Check(
        "out_of_round",
        "out_of_round_mm",
        "largest out-of-round, difference of two diameters",
        SETTLE_DIFFERENCE,
        _most_out_of_round,
        unjudged=SMEARED,
    ),
    Check(
        "taper_pin_axis",
        "taper_pin_axis_mm",
        "taper on the pin axis, difference of diameters",
        SETTLE_DIFFERENCE,
        _most_taper,
        unjudged=SMEARED,
    ),
    Check(
        "taper_thrust_axis",
        "taper_thrust_axis_mm",
        "taper on the thrust axis, difference of diameters",
        SETTLE_DIFFERENCE,
        _most_taper,
        unjudged=SMEARED,
    ),
    Check(
        "bore_wear",
        "wear_mm",
        "wear of the bore",
        SETTLE_DIFFERENCE,
        _most_wear,
        unjudged=SMEARED,
    ),
)
