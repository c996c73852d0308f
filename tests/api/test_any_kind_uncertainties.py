"""The uncertainty of a quantity of any kind: whoever states it, and once, in its own unit.

Sums of uncertainties by hand: JCGM 100:2008, 5.1.2 (from memory).
"""

import copy
from collections.abc import Iterator
from typing import Any

import pytest
from asking import post
from flask.testing import FlaskClient

from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Calculation, asked
from ringland_service.core.declare.fields import AnyQuantityField, QuantityField, ReadingsField

GAUGE = {"value": 165.0, "unit": "psig"}
AIR = {"value": 100.0, "unit": "kPa"}
# Questions beside the examples, so that every input is at work.
FURTHER = {
    "convert": [
        {"value": GAUGE, "to": "psig"},
        {"value": GAUGE, "to": "psia", "air_pressure": AIR},
        {"value": {"value": 250.0, "unit": "kPa(a)"}, "to": "psig", "air_pressure": AIR},
        {"value": {"value": 68.1, "unit": "mm"}, "to": "thou"},
        {"value": {"value": 20.0, "unit": "degC"}, "to": "degF"},
    ],
    "verdict": [
        {"value": GAUGE, "high": {"value": 180.0, "unit": "psia"}, "air_pressure": AIR},
        {"value": {"value": 68.1, "unit": "mm"}, "high": {"value": 2.7, "unit": "in"}},
    ],
}
OF_ANY_KIND = [
    c.name
    for c in CALCULATIONS
    if isinstance(c, Calculation)
    if any(isinstance(field, AnyQuantityField) for field in asked(c.inputs).values())
]


def readings(name: str) -> list[str]:
    """The inputs of a calculation that may state an uncertainty, by public name."""
    return [
        field.public(own)
        for own, field in asked(BY_NAME[name].inputs).items()
        if isinstance(field, (QuantityField, AnyQuantityField))
        if not isinstance(field, ReadingsField) and not field.exact
    ]


def stated_alone(name: str) -> Iterator[dict[str, Any]]:
    """Each question with one quantity after the other stating an uncertainty, then with all."""
    # Less the list of what makes up the uncertainty of the value, which would state it twice.
    plain = {n: v for n, v in example(BY_NAME[name].inputs).items() if not isinstance(v, list)}
    for data in (plain, *FURTHER.get(name, [])):
        known = [one for one in readings(name) if one in data]
        for told in (*([one] for one in known), known):
            found = copy.deepcopy(data)
            for one in told:
                found[one]["uncertainty"] = abs(found[one]["value"]) / 500.0
            yield found


QUESTIONS = [(name, data) for name in OF_ANY_KIND for data in stated_alone(name)]


def test_there_are_calculations_of_any_kind() -> None:
    assert {"convert", "verdict"} <= set(OF_ANY_KIND)
    assert len(QUESTIONS) >= 15


@pytest.mark.parametrize(("name", "data"), QUESTIONS)
def test_whichever_input_states_one(client: FlaskClient, name: str, data: dict[str, Any]) -> None:
    """A quantity carries its uncertainty; beside the results stand those of bare numbers alone."""
    found = post(client, name, data)
    for result in found["uncertainties"]:
        assert not isinstance(found["result"][result], dict), result


@pytest.mark.parametrize(
    "data", [data for name, data in QUESTIONS if name == "convert"], ids=lambda x: str(x["to"])
)
def test_a_column_has_the_uncertainty_of_the_single_call(
    client: FlaskClient, data: dict[str, Any]
) -> None:
    single = post(client, "convert", data)["result"]["converted"]
    value = data["value"]
    column = {"values": [value["value"]] * 2, "unit": value["unit"]}
    if "uncertainty" in value:
        column["uncertainty"] = value["uncertainty"]
    shared = {name: given for name, given in data.items() if name != "value"}
    batch = {"shared": shared, "columns": {"value": column}}
    rows = post(client, "convert/batch", batch)["results"]["converted"]
    assert rows["unit"] == single["unit"]
    assert rows["values"] == [single["value"]] * 2
    assert rows.get("uncertainties") == (
        [single["uncertainty"]] * 2 if "uncertainty" in single else None
    )


def test_gauge_to_absolute_adds_the_air_pressures_own(client: FlaskClient) -> None:
    data = {
        "value": {**GAUGE, "uncertainty": 0.3},
        "to": "psia",
        "air_pressure": {**AIR, "uncertainty": 0.4 * 6.894757293168361},
    }
    converted = post(client, "convert", data)["result"]["converted"]
    assert converted["uncertainty"] == pytest.approx(0.5, rel=1e-12)
