"""C15: oil that an engine uses, by distance, by time and as a share of its fuel."""

from ringland_service.core.declare import (
    Calculation,
    Check,
    Notice,
    flag,
    kinds,
    number,
    quantity,
    record,
    result,
)
from ringland_service.core.formulas import oil_use
from ringland_service.core.metrology.limits import GRADES, LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import engine_tests as tests
from ringland_service.core.tables.sources import NO_SOURCE as COMMON


@record
class Inputs:
    """Oil added, what it was used over, and how the level was read."""

    oil_added_ml: Number = quantity(
        tests.OIL_ADDED, "oil added to bring the level back to where it stood"
    )
    distance_km: Number | None = number(
        "distance covered meanwhile, km", low=1.0, high=1e6, example=900.0, default=None
    )
    hours: Number | None = number(
        "hours run meanwhile, h", low=0.1, high=1e5, example=14.0, default=None
    )
    fuel_l: Number | None = quantity(tests.FUEL_USED, "fuel used meanwhile", default=None)
    leaks_seen: bool | None = flag(
        "oil seen outside: joints, seals, breather", default=None, example=False
    )
    level_read_alike: bool | None = flag(
        "level read alike both times: hot or cold, level ground, stick screwed in or resting",
        default=None,
    )
    overfilled: bool | None = flag(
        "filled above the upper mark at the start", default=None, example=False
    )
    fuel_in_oil: bool | None = flag(
        "oil smells of fuel or has gone thin", default=None, example=False
    )
    running_in: bool | None = flag("engine still running in", default=None, example=False)


@record
class Outputs:
    """Oil used by each measure that is given."""

    oil_per_1000_km_ml: Number | None = result(
        "oil for each 1000 km",
        kind=kinds.LIQUID,
        digits=0,
        formula="1000 * oil_added_ml / distance_km",
        source=COMMON,
        default=None,
    )
    oil_per_hour_ml: Number | None = result(
        "oil for each hour",
        kind=kinds.LIQUID,
        digits=1,
        formula="oil_added_ml / hours",
        source=COMMON,
        default=None,
    )
    oil_of_fuel_pct: Number | None = result(
        "oil as a share of the fuel, by volume",
        kind=kinds.PERCENT,
        digits=2,
        formula="100 * oil_added_ml / (1000 * fuel_l)",
        source=COMMON,
        default=None,
    )
    grade: str | None = result(
        "oil use by its share of the fuel",
        basis="under 0.3 % usual, to 1.0 % worn, above: find out",
        source=COMMON,
        common_practice=True,
        choices=GRADES["oil_use"].choices,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Relate the oil to whatever is known of distance, hours and fuel."""
    oil, distance, hours = inputs.oil_added_ml, inputs.distance_km, inputs.hours
    share = None
    if inputs.fuel_l is not None:
        share = oil_use.oil_of_fuel_percent(oil, inputs.fuel_l)
    return Outputs(
        oil_per_1000_km_ml=None if distance is None else oil_use.oil_per_ml(oil, distance, 1000.0),
        oil_per_hour_ml=None if hours is None else oil_use.oil_per_ml(oil, hours),
        oil_of_fuel_pct=share,
        grade=None if share is None else GRADES["oil_use"].word(share),
    )


def _find_out(_: Inputs, __: Outputs) -> Limit:
    return LIMITS["oil_use.find_out"].limit()


def _stated(code: str, name: str, as_said: bool, message: str) -> Notice:
    return Notice(code, name, lambda i, _: getattr(i, name) is as_said, message)


MEASURE_LONGER = "measure over a longer run, the level read the same way at both ends"

CALCULATION = Calculation(
    name="oil-use",
    number="C15",
    stage="engine_tests",
    title="Oil consumption",
    summary="Oil that a four-stroke uses by distance, by hours and as a share of its fuel. What "
    "leaks out is not used; the level counts only where it is read the same way each time. The "
    "maker's figure, mostly for 1000 km, wins.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=((("distance_km",), ("hours",), ("fuel_l",)),),
    checks=(
        Check(
            "oil_per_1000_km",
            "oil_per_1000_km_ml",
            "oil used for each 1000 km",
            MEASURE_LONGER,
        ),
        Check("oil_per_hour", "oil_per_hour_ml", "oil used for each hour", MEASURE_LONGER),
        Check(
            "oil_of_fuel",
            "oil_of_fuel_pct",
            "oil used as a share of the fuel",
            MEASURE_LONGER,
            _find_out,
        ),
    ),
    notices=(
        _stated(
            "oil_leaks_outside",
            "leaks_seen",
            True,
            "oil that leaks out is not used: cure the leaks and measure again before rings or "
            "guides are blamed",
        ),
        _stated(
            "level_not_read_alike",
            "level_read_alike",
            False,
            "hot or cold, level or leaning, stick screwed in or resting: the level moves by more "
            "than was used; read it the same way and measure again",
        ),
        _stated(
            "overfilled",
            "overfilled",
            True,
            "an overfilled crankcase throws its oil out of the breather: that is no wear; fill to "
            "the mark and measure again",
        ),
        _stated(
            "fuel_in_oil",
            "fuel_in_oil",
            True,
            "fuel in the oil keeps the level up and hides use: cure that, change the oil and "
            "measure again",
        ),
        _stated(
            "still_running_in",
            "running_in",
            True,
            "an engine that is running in uses more oil: judge it once it is run in",
        ),
        Notice(
            "fuel_not_given",
            "fuel_l",
            lambda i, _: i.fuel_l is None,
            "no common step grades oil by distance or hours: give the fuel used too, or the "
            "maker's figure as a limit",
        ),
    ),
)
