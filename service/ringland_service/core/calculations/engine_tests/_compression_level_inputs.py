"""What the level of a compression reading is asked with: the reading and how it was taken."""

from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.declare import choice, field_like, flag, limit_of, quantity, record
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import engine_tests as tests


@record
class Inputs:
    """The reading, what it is compared with, its uncertainty, and the conditions of the test."""

    reading_kpa: Number = quantity(
        quantities.SETTLED_COMPRESSION, "compression reading once it rises no more, gauge"
    )
    expected_kpa: Number | None = quantity(
        quantities.EXPECTED, "pressure expected of a sound cylinder here, gauge", default=None
    )
    altitude_m: Number | None = quantity(
        quantities.ALTITUDE, "altitude of the place (geopotential)", default=None
    )
    air_pressure_kpa_abs: Number | None = quantity(
        quantities.AIR_PRESSURE, "air pressure on the spot, absolute", default=None
    )
    weather_report_kpa_abs: Number | None = field_like(
        air_pressure.Inputs, "weather_report_kpa_abs"
    )
    expected_altitude_m: Number | None = quantity(
        quantities.ALTITUDE,
        "altitude that the limit is stated for; absent, sea level",
        example=0.0,
        default=None,
    )
    gauge_error_pct: Number | None = quantity(
        quantities.GAUGE_ERROR, "maximum error of the gauge, ± share of the reading", default=None
    )
    repeatability_kpa_diff: Number | None = quantity(
        quantities.REPEAT, "how well the reading repeats, ±", default=None
    )
    hose_error_pct: Number | None = quantity(
        tests.HOSE_ERROR,
        "error of the reading by the room in the gauge's hose; negative: it reads low",
        default=None,
    )
    weather_kpa_diff: Number | None = quantity(
        quantities.WEATHER,
        "weather's part of an air pressure worked out from altitude, ±",
        example=0.0,
        default=None,
    )
    cycle: str | None = choice("cycle", condition.CYCLE, example="four_stroke", default=None)
    valve_gear: str = choice(
        "valve gear", condition.VALVE_GEAR, example="overhead_valves", default=UNKNOWN
    )
    decompressor: str = choice(
        "kind of decompressor", condition.DECOMPRESSOR, example="none", default=UNKNOWN
    )
    decompressor_state: str = choice(
        "decompressor during the test",
        condition.DECOMPRESSOR_STATE,
        example="none",
        default=UNKNOWN,
    )
    starter: str | None = choice(
        "what turns the engine", condition.STARTER, example="electric", default=None
    )
    throttle_open: bool | None = flag("throttle held open, a vacuum slide lifted too", default=None)
    choke_off: bool | None = flag("choke off", default=None)
    engine_warm: bool | None = flag("engine warm", default=None)
    plugs_out: bool | None = flag("all plugs out", default=None)
    air_filter_fitted: bool | None = flag("air filter fitted", default=None, example=False)
    battery_v: Number | None = quantity(quantities.BATTERY, "battery while cranking", default=None)
    limit_given: Limit | None = limit_of("compression_least")
