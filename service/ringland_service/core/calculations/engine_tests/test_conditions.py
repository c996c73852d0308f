"""Under what a compression reading was taken, and what its answer warns of."""

from typing import Protocol, cast

from ringland_service.core.calculations.engine_tests._compression_level_inputs import Inputs
from ringland_service.core.declare import LOWERS, Notice, Rule, Unjudged
from ringland_service.core.engines import condition
from ringland_service.core.engines.choices import OVERHEAD, PORTS, SIDE_VALVE
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.metrology.limits import GRADES, LIMITS
from ringland_service.core.numbers import Number, Truth

# A 12 V battery under the load of the starter (common practice, no source).
LEAST_CRANKING_V = 9.6
# Readings that repeat no better than this share of themselves tell nothing (the same).
LEAST_REPEATABLE = 0.05

# Each condition of the test, with what its breach does to the reading.
CONDITIONS: dict[str, str] = {
    "throttle_open": "throttle closed: the cylinder fills short and reads far too low; hold it "
    "open, a vacuum slide lifted too, and read again",
    "choke_off": "choke on: the cylinder fills short and reads low; take it off and read again",
    "engine_warm": "cold engine: rings and oil seal otherwise than warm; read again warm, or "
    "compare with cold figures alone",
    "plugs_out": "the other plugs in: the starter turns slowly and the cylinder reads low",
}


def unmet(i: Inputs) -> Number:
    """Return how many of the stated conditions are not met."""
    count = sum(getattr(i, name) is False for name in CONDITIONS)
    weak = 0 if i.battery_v is None else i.battery_v < LEAST_CRANKING_V
    return cast(Number, count + weak)


def slow(i: Inputs, *_: object) -> Truth:
    """Return whether the starter turned too slowly: a weak battery, or the other plugs in."""
    weak = False if i.battery_v is None else i.battery_v < LEAST_CRANKING_V
    return True if i.plugs_out is False else weak


def _not_repeating(i: Inputs, *_: object) -> Truth:
    if i.repeatability_kpa_diff is None:
        return False
    far: Truth = beyond(i.repeatability_kpa_diff, LEAST_REPEATABLE * i.reading_kpa)
    return far


def _gauge_unfit(i: Inputs, *_: object) -> Truth:
    if i.hose_error_pct is None:
        return False
    low: Truth = beyond(LIMITS["gauge_hose.unfit"].low, i.hose_error_pct)
    return low


def only_lowered(i: Inputs) -> Truth:
    """Return whether a condition was not met that can do nothing but lower the reading."""
    return slow(i) | (False in (i.throttle_open, i.choke_off, i.engine_warm))


def unfit(i: Inputs) -> Truth:
    """Return whether the reading itself cannot be trusted, high or low."""
    return _not_repeating(i) | _gauge_unfit(i)


UNJUDGED = (
    Unjudged(
        "readings_not_repeating",
        _not_repeating,
        "read until two readings agree within 5 %: gauge, adaptor and battery first",
    ),
    Unjudged(
        "gauge_unfit",
        _gauge_unfit,
        "a gauge with its check valve at the plug end, or a shorter hose",
    ),
    Unjudged(
        "limit_with_decompressor",
        lambda i, _, limit: limit.with_decompressor and i.decompressor_state != condition.ACTIVE,
        "read with the decompressor at work, as the limit is stated, or give the limit for a "
        "reading without it",
    ),
    Unjudged(
        "decompressor_at_work",
        lambda i, _, limit: (
            i.decompressor_state == condition.ACTIVE and not limit.with_decompressor
        ),
        "hold the decompressor off and read again, or do a leak-down; where the maker states the "
        "limit with it at work, say so in the limit: with_decompressor true",
        LOWERS,
    ),
    Unjudged(
        "decompressor_unknown",
        lambda i, _, limit: (
            condition.decompressor_uncertain(i.decompressor, i.decompressor_state)
            and not limit.with_decompressor
        ),
        "find out whether the engine has a decompressor and whether it was at work",
        LOWERS,
    ),
    Unjudged(
        "throttle_not_open",
        lambda i, *_: i.throttle_open is False or i.choke_off is False,
        "hold the throttle fully open, a vacuum slide too, take the choke off, and read again",
        LOWERS,
    ),
    Unjudged(
        "engine_cold",
        lambda i, *_: i.engine_warm is False,
        "run the engine warm and read again",
        LOWERS,
    ),
    Unjudged(
        "cranking_slow",
        slow,
        "charge the battery, take all plugs out, and read again",
        LOWERS,
    ),
)


def banded(i: Inputs) -> bool:
    """Return whether the rough bands hold for this engine as it was tested."""
    gear = i.valve_gear in (OVERHEAD, PORTS)
    open_ = i.throttle_open is not False
    return i.cycle is not None and gear and i.decompressor == "none" and open_


def _uncertain(i: Inputs, _: object) -> bool:
    return condition.decompressor_uncertain(i.decompressor, i.decompressor_state)


def _stated_so(i: Inputs) -> bool:
    """Return whether the limit in force is stated with the decompressor at work."""
    return i.limit_given is not None and i.limit_given.with_decompressor


def _active(i: Inputs, _: object) -> bool:
    return bool(i.decompressor_state == condition.ACTIVE)


def _fitted(i: Inputs, _: object) -> bool:
    fitted = i.decompressor not in ("none", "unknown") or _active(i, _)
    return fitted and not _stated_so(i)


def _no_band(i: Inputs, _: object) -> bool:
    return i.expected_kpa is None and not banded(i)


class _Level(Protocol):
    """What the answer says of the level."""

    @property
    def ratio(self) -> Number | None: ...


def _high(_: object, o: _Level) -> Truth:
    return False if o.ratio is None else GRADES["compression_level"].word(o.ratio) == "high"


def _broken(name: str, message: str) -> Notice:
    return Notice("condition_not_met", name, lambda i, _: getattr(i, name) is False, message)


RULES = (
    *condition.ENGINE_RULES,
    Rule(
        ("weather_kpa_diff", "air_pressure_kpa_abs"),
        lambda i: i.weather_kpa_diff > 0,
        "an air pressure read on the spot has the weather in it",
        "leave the weather's part out, or give the altitude alone",
    ),
    Rule(
        ("weather_kpa_diff", "weather_report_kpa_abs"),
        lambda i: i.weather_kpa_diff > 0,
        "a weather report has the weather in it",
        "leave the weather's part out and state the report's own uncertainty; or give the altitude "
        "alone",
    ),
    *condition.AIR_PRESSURE_RULES,
    Rule(
        ("weather_kpa_diff",),
        lambda i: (i.altitude_m is None) & (i.weather_kpa_diff > 0),
        "the weather's part belongs to an air pressure worked out from altitude",
        "give the altitude (0 m at sea level)",
    ),
)

NOTICES = (
    *condition.AIR_PRESSURE_NOTICES,
    Notice(
        "decompressor_unknown",
        "decompressor",
        _uncertain,
        "whether a decompressor let pressure off is not known: a sound cylinder then reads low; "
        "find out before anything is judged",
    ),
    Notice(
        "decompressor_active",
        "decompressor_state",
        lambda i, _: _active(i, _) and not _stated_so(i),
        "not gradeable by level while a decompressor works: do a leak-down, or hold it off",
    ),
    Notice(
        "judged_with_decompressor",
        "decompressor_state",
        lambda i, _: _active(i, _) and _stated_so(i),
        "a decompressor was at work, as it is for the limit stated: the limit judges this reading; "
        "compared with any other pressure its level says nothing",
    ),
    Notice(
        "maker_figure_with_decompressor",
        "decompressor",
        _fitted,
        "the maker's figure may be one with the decompressor at work: ask",
    ),
    Notice(
        "higher_than_expected",
        "ratio",
        _high,
        "a high reading is a finding too: carbon, oil or fuel in the cylinder, or a wrong gasket",
        common_practice=True,
    ),
    *(_broken(name, message) for name, message in CONDITIONS.items()),
    Notice(
        "condition_not_met",
        "battery_v",
        lambda i, _: False if i.battery_v is None else i.battery_v < LEAST_CRANKING_V,
        "under 9.6 V while cranking a 12 V starter turns too slowly and the cylinder reads low",
    ),
    Notice(
        "throttle_not_stated",
        "throttle_open",
        lambda i, _: i.throttle_open is None,
        "was the throttle held open? Closed, a sound cylinder reads about a third too low",
    ),
    Notice(
        "slow_starter",
        "starter",
        lambda i, _: i.starter in ("kick", "rope"),
        "kick and rope starters are slow: the reading comes out low; pull until it rises no more",
    ),
    Notice(
        "air_filter_fitted",
        "air_filter_fitted",
        lambda i, _: i.air_filter_fitted is True,
        "with the air filter fitted a dirty one lowers the reading: read again without it",
    ),
    Notice(
        "weather_not_counted",
        "weather_kpa_diff",
        lambda i, _: (
            i.altitude_m is not None
            and i.air_pressure_kpa_abs is None
            and i.weather_report_kpa_abs is None
            and i.weather_kpa_diff is None
            and i.gauge_error_pct is not None
        ),
        "the air pressure comes from altitude alone and the weather's part (usually ± 2 kPa) is "
        "not given: the uncertainty is a little too small",
    ),
    Notice(
        "side_valve_has_no_bands",
        "valve_gear",
        lambda i, _: _no_band(i, _) and i.valve_gear == SIDE_VALVE,
        "the rough bands are not for side-valve engines, where ratios of 5 to 6.5 give a sound "
        "400 to 700 kPa: work the expected pressure out from the engine's own ratio",
    ),
    Notice(
        "no_expected_pressure",
        "expected_kpa",
        lambda i, _: _no_band(i, _) and i.valve_gear != SIDE_VALVE,
        "neither an expected pressure nor the rough bands grade this reading: give the maker's "
        "figure, or work the expected pressure out from the ratio",
    ),
    Notice(
        "limit_at_sea_level",
        "expected_altitude_m",
        lambda i, _: i.expected_altitude_m is None,
        "a limit is taken to be stated for sea level, as no other altitude is given for it",
    ),
)
