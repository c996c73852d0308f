"""C02: air pressure on the spot, and a compression reading brought to sea level."""

from typing import Any

from ringland_service.core.declare import Calculation, Notice, kinds, quantity, record, result
from ringland_service.core.engines import condition
from ringland_service.core.errors import Contradiction
from ringland_service.core.formulas import air
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import cited

ATMOSPHERE = cited("{iso_2533}")
# Weather moves the air pressure by so much at most (common practice, no source).
WEATHER_KPA = 6.0
# Above this altitude a report reduced with the real temperature is off by 0.2 kPa or more.
REPORT_ALTITUDE_M = 400.0


@record
class Inputs:
    """Where the air pressure comes from, and the reading to be brought to sea level."""

    altitude_m: Number | None = quantity(quantities.ALTITUDE, "altitude of the place", default=None)
    air_pressure_kpa_abs: Number | None = quantity(
        quantities.AIR_PRESSURE,
        "air pressure read on the spot, absolute, not brought to sea level; wins over altitude",
        default=None,
    )
    weather_report_kpa_abs: Number | None = quantity(
        quantities.WEATHER_REPORT,
        "air pressure of the weather report, absolute, brought to sea level; needs the altitude",
        example=101.325,
        default=None,
    )
    reading_kpa: Number | None = quantity(
        quantities.COMPRESSION, "cranking compression as read, gauge", default=None
    )


@record
class Outputs:
    """The air pressure here, and the reading as it would be at sea level."""

    air_pressure_here_kpa_abs: Number = result(
        "air pressure on the spot, absolute",
        kind=kinds.PRESSURE_ABSOLUTE,
        digits=1,
        basis="as read on the spot; else q × (1 − 0.0065 × altitude / 288.15)^5.25588, q being "
        "the weather report or 101.325 kPa",
        source=ATMOSPHERE,
    )
    pressure_ratio: Number = result(
        "air pressure on the spot over that at sea level, 101.325 kPa",
        digits=4,
        formula="air_pressure_here_kpa_abs / 101.325",
        source=ATMOSPHERE,
    )
    reading_at_sea_level_kpa: Number | None = result(
        "reading brought to sea level, gauge, throttle open",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="reading_kpa * 101.325 / air_pressure_here_kpa_abs",
        source="gauge reading = air pressure × (ratio^n − 1): it goes with the air pressure",
        default=None,
    )
    density_ratio: Number | None = result(
        "air density over that at sea level in the standard atmosphere; for comparison only, a "
        "compression reading does not go with it",
        digits=4,
        formula="(1 - 0.0065 * altitude_m / 288.15)**(9.80665 / (287.05287 * 0.0065) - 1)",
        source=ATMOSPHERE,
        default=None,
    )


def here_kpa(inputs: Inputs) -> Number:
    """Return the absolute air pressure on the spot [kPa].

    Raises
    ------
    Contradiction
        Where neither altitude nor air pressure is given.
    """
    if inputs.air_pressure_kpa_abs is None and inputs.altitude_m is None:
        raise Contradiction(
            "altitude_m", "the air pressure has no source", "altitude, or air pressure on the spot"
        )
    return condition.air_here_kpa(inputs)


def compute(inputs: Inputs) -> Outputs:
    """Work out the air pressure here, and the reading at sea level where one is given."""
    pressure_kpa = here_kpa(inputs)
    return Outputs(
        air_pressure_here_kpa_abs=pressure_kpa,
        pressure_ratio=pressure_kpa / air.SEA_LEVEL_KPA,
        reading_at_sea_level_kpa=(
            None
            if inputs.reading_kpa is None
            else air.reading_at_pressure_kpa(inputs.reading_kpa, pressure_kpa, air.SEA_LEVEL_KPA)
        ),
        density_ratio=None if inputs.altitude_m is None else air.density_ratio(inputs.altitude_m),
    )


def _not_of_this_altitude(inputs: Any, _: Any) -> Any:
    if inputs.altitude_m is None or inputs.air_pressure_kpa_abs is None:
        return False
    usual_kpa = air.altitude_pressure_kpa(inputs.altitude_m)
    return abs(inputs.air_pressure_kpa_abs - usual_kpa) > WEATHER_KPA


def _report_high_up(inputs: Any, _: Any) -> Any:
    if inputs.weather_report_kpa_abs is None or inputs.air_pressure_kpa_abs is not None:
        return False
    return abs(inputs.altitude_m) > REPORT_ALTITUDE_M


def _density_tables(inputs: Any, outputs: Any) -> Any:
    return False if inputs.reading_kpa is None else outputs.pressure_ratio < 0.97


CALCULATION = Calculation(
    name="air-pressure",
    number="C02",
    stage="general",
    title="Air pressure and altitude correction",
    summary="Air pressure on the spot from altitude, barometer or weather report, and a "
    "compression reading brought to sea level.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=((("altitude_m",), ("air_pressure_kpa_abs",)),),
    rules=condition.AIR_PRESSURE_RULES,
    notices=(
        Notice(
            "pressure_not_of_this_altitude",
            "air_pressure_kpa_abs",
            _not_of_this_altitude,
            "air pressure and altitude differ by more than weather can do (6 kPa): a value "
            "brought to sea level is not the one on the spot",
        ),
        Notice(
            "report_reduced_with_temperature",
            "weather_report_kpa_abs",
            _report_high_up,
            "weather reports brought to sea level with the real temperature differ: by about "
            "0.8 kPa at 1500 m for 15 K; a barometer on the spot is better",
        ),
        Notice(
            "density_tables",
            "reading_at_sea_level_kpa",
            _density_tables,
            "tables that go by air density correct less; a compression reading goes with the air "
            "pressure, and the temperature of the charge does not enter",
        ),
        Notice(
            "correct_once",
            "reading_at_sea_level_kpa",
            lambda i, _: i.reading_kpa is not None,
            "compare this reading with a figure for sea level only: one worked out for this "
            "altitude is corrected already",
        ),
    ),
)
