"""Rows at the edge of what can be read say what each says alone."""

import pytest
from drawn_questions import example_row
from rows_alone import as_columns, assert_row, single

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Calculation
from ringland_service.engine.columnar import answer_rows

SLOW = {
    "reading_kpa": 704.0,
    "altitude_m": 0.0,
    "weather_kpa_diff": 0.03125,
    "cycle": "four_stroke",
    "valve_gear": "overhead_valves",
    "decompressor": "none",
    "battery_v": 9.0,
}
EDGES = {
    # Weather that moves nothing leaves no uncertainty of 0.
    "no weather": (
        "compression-level",
        {"reading_kpa": 880.0, "altitude_m": 600.0, "weather_kpa_diff": 1e-38},
        {},
    ),
    # Slow cranking: no verdict, and so nothing that the value would conform to.
    "not judged": ("compression-level", SLOW, {}),
    # A reading nearer to nothing than the step by which a slope is taken.
    "no pressure": (
        "wet-gain",
        {"reading_kpa": 2e-16, "wet_kpa": 930.0},
        {"wet_kpa": 0.025},
    ),
}


@pytest.mark.parametrize(("name", "given", "u"), EDGES.values(), ids=EDGES)
def test_a_row_at_an_edge_says_what_it_says_alone(
    name: str, given: dict[str, object], u: dict[str, float]
) -> None:
    calculation = BY_NAME[name]
    assert isinstance(calculation, Calculation)
    usual = example_row(calculation)
    row = {**dict.fromkeys(usual), **given}
    stated = {field: [value, value] for field, value in u.items()}
    found = answer_rows(calculation, as_columns([usual, row], uncertainty=stated))
    for place, one in enumerate((usual, row)):
        assert_row(found, place, single(calculation, one, u))
