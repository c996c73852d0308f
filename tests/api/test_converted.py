"""Conversion knows absolute zero and vacuum, and carries uncertainty; every kind, every unit.

Absolute zero is -273.15 degC exactly (SI brochure, 9th edition; from memory), -459.67 degF by
hand: -273.15 · 1.8 + 32. Factors are checked elsewhere; here pint's float registry is the oracle.
"""

import math
from fractions import Fraction
from typing import Any

import pytest
from asking import get, post, strict
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from ringland_service.core.declare.kinds import KINDS
from ringland_service.units import unit
from ringland_service.vocabulary import UNITS

SAME_CLIENT = settings(
    max_examples=300, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
WITHIN = [(k, a, b) for k, symbols in UNITS.items() for a in symbols for b in symbols]
PRESSURES = ("pressure_gauge", "pressure_absolute")
ACROSS = [
    (a, b)
    for a, b in [("kPa(g)", "kPa(a)"), ("bar(g)", "psia"), ("psig", "bar(a)"), ("kPa(g)", "inHg")]
] + [("kPa(a)", "kPa(g)"), ("psia", "bar(g)"), ("bar(a)", "psig"), ("mmHg", "psig")]
ZEROS = {"degC": -273.15, "degF": -459.67, "K": 0.0}


def of(value: float, symbol: str, **more: Any) -> dict[str, Any]:
    return {"value": value, "unit": symbol, **more}


def refused(client: FlaskClient, words: str, **asked: Any) -> None:
    (fault,) = post(client, "convert", asked, 422)["errors"]
    assert fault["code"] == "out_of_bounds"
    assert fault["pointer"] == "#/value"
    assert words in fault["detail"]


@pytest.mark.parametrize("symbol", ZEROS)
@pytest.mark.parametrize("to", ZEROS)
def test_absolute_zero_is_a_temperature_and_nothing_below_is(
    client: FlaskClient, symbol: str, to: str
) -> None:
    zero = ZEROS[symbol]
    found = post(client, "convert", {"value": of(zero, symbol), "to": to})
    assert found["result"]["converted"]["value"] == pytest.approx(ZEROS[to], abs=1e-10)
    for below in (math.nextafter(zero, -math.inf), zero - 1e-9, zero - 1.0, -1e9):
        refused(client, "below absolute zero", value=of(below, symbol), to=to)
    kind = {"kind": "temperature_difference"}
    post(client, "convert", {"value": of(zero - 1.0, symbol), "to": to, **kind})


def exact_floor(kind: str, symbol: str, air: str) -> Fraction:
    """Return vacuum in a unit, exactly."""
    lowest = Fraction(0) if kind == "pressure_absolute" else -Fraction(air)
    return lowest / unit(KINDS[kind], symbol).ratio


@pytest.mark.parametrize("air", ["101.325", "84.556", "110"])
@pytest.mark.parametrize(("kind", "symbol"), [(k, s) for k in PRESSURES for s in UNITS[k]])
def test_nothing_is_below_vacuum(client: FlaskClient, kind: str, symbol: str, air: str) -> None:
    floor = exact_floor(kind, symbol, air)
    told = {"to": symbol, "kind": kind}
    if air != "101.325":
        told["air_pressure"] = of(float(air), "kPa")
    inside, outside = (
        float(floor * (1 - Fraction(1, 10**12))),
        float(floor * (1 + Fraction(1, 10**12)) if floor else Fraction(-1, 10**9)),
    )
    post(client, "convert", {"value": of(inside, symbol), **told})
    refused(client, "below vacuum", value=of(outside, symbol), **told)


def test_vacuum_in_the_units_that_say_it_to_the_digit(client: FlaskClient) -> None:
    for value, symbol in ((-101.325, "kPa(g)"), (-1.01325, "bar(g)"), (0, "bar(a)"), (0, "atm")):
        post(client, "convert", {"value": of(value, symbol), "to": symbol})
        below = math.nextafter(value, -math.inf)
        refused(client, "below vacuum", value=of(below, symbol), to=symbol)
    difference = {"value": of(-200, "kPa"), "to": "psi", "kind": "pressure_difference"}
    post(client, "convert", difference)


@SAME_CLIENT
@given(
    pair=st.sampled_from(ACROSS),
    value=st.floats(-2000.0, 2000.0),
    air=st.floats(48.0, 110.0),
)
def test_no_result_is_below_vacuum(
    client: FlaskClient, pair: tuple[str, str], value: float, air: float
) -> None:
    body = {"value": of(value, pair[0]), "to": pair[1], "air_pressure": of(air, "kPa")}
    answer = client.post("/v1/convert", json=body)
    kinds = [next(k for k in PRESSURES if s in UNITS[k]) for s in pair]
    lowest = exact_floor(kinds[0], pair[0], repr(air))
    assert answer.status_code == (200 if Fraction(repr(value)) >= lowest else 422)
    if answer.status_code == 200:
        result = answer.json["result"]["converted"]["value"]
        assert result >= float(exact_floor(kinds[1], pair[1], repr(air))) - 1e-9


@pytest.mark.parametrize("name", ["value", "low", "high"])
def test_a_verdict_knows_them_too(client: FlaskClient, name: str) -> None:
    body = {"value": of(20, "degC"), "high": of(90, "degC"), name: of(-300, "degC")}
    (fault,) = post(client, "verdict", body, 422)["errors"]
    assert fault["pointer"] == f"#/{name}"
    assert "below absolute zero" in fault["detail"]
    body = {"value": of(1, "bar(g)"), "high": of(2, "bar(g)"), name: of(-1.02, "bar(g)")}
    (fault,) = post(client, "verdict", body, 422)["errors"]
    assert "below vacuum" in fault["detail"]


@pytest.mark.parametrize(("kind", "symbol", "to"), WITHIN)
def test_uncertainty_is_converted_by_the_factor(
    client: FlaskClient, kind: str, symbol: str, to: str
) -> None:
    """The zero of a scale has no part in it: 0.7 K are 1.26 degF."""
    value = of(50.0, symbol, uncertainty=0.007)
    found = post(client, "convert", {"value": value, "to": to, "kind": kind})
    ratio = unit(KINDS[kind], symbol).ratio / unit(KINDS[kind], to).ratio
    assert "converted" not in found["uncertainties"]
    shown = found["result"]["converted"]["uncertainty"]
    assert shown == pytest.approx(float(Fraction("0.007") * ratio), rel=1e-15)
    assert found["inputs"]["value"]["uncertainty"] == 0.007
    assert found["inputs"]["value"]["value"] == 50.0
    exact = post(client, "convert", {"value": of(50.0, symbol), "to": to, "kind": kind})
    assert "uncertainty" not in exact["result"]["converted"]


@pytest.mark.parametrize(("symbol", "to"), ACROSS)
def test_uncertainty_of_the_air_pressure_comes_in(
    client: FlaskClient, symbol: str, to: str
) -> None:
    """0.3 and 0.4 kPa of independent parts are 0.5 kPa."""
    kinds = [next(k for k in PRESSURES if s in UNITS[k]) for s in (symbol, to)]
    here, there = (unit(KINDS[k], s).factor for k, s in zip(kinds, (symbol, to), strict=True))
    value = of(900.0 / here, symbol, uncertainty=0.3 / here)
    air = of(94.0, "kPa", uncertainty=0.4)
    found = post(client, "convert", {"value": value, "to": to, "air_pressure": air})
    shown = found["result"]["converted"]["uncertainty"]
    assert shown == pytest.approx(0.5 / there, rel=1e-12)


def test_a_verdict_takes_in_the_air_pressure_s_uncertainty(client: FlaskClient) -> None:
    body = {
        "value": of(900.0, "kPa(g)", uncertainty=0.3),
        "high": of(1000.0, "kPa(a)"),
        "air_pressure": of(94.0, "kPa", uncertainty=0.4),
    }
    (verdict,) = post(client, "verdict", body)["verdicts"]
    assert verdict["uncertainty"]["value"] == pytest.approx(0.5, rel=1e-12)
    assert verdict["margin"]["value"] == pytest.approx(6.0, rel=1e-12)


@pytest.mark.parametrize(("kind", "symbol"), [(k, s) for k, t in UNITS.items() for s in t])
def test_a_verdict_carries_and_echoes_its_uncertainty(
    client: FlaskClient, kind: str, symbol: str
) -> None:
    value = of(50.0, symbol, uncertainty=0.007)
    body = {"value": value, "high": of(60.0, symbol), "kind": kind}
    found = post(client, "verdict", body)
    assert found["inputs"]["value"]["uncertainty"] == 0.007
    expected = float(Fraction("0.007") * unit(KINDS[kind], symbol).ratio)
    assert found["result"]["judged_value"]["uncertainty"] == pytest.approx(expected, rel=1e-15)
    (verdict,) = found["verdicts"]
    assert verdict["uncertainty"]["value"] == pytest.approx(expected, rel=1e-15)
    parts = [{"max_error": of(0.003, symbol)}, {"resolution": of(0.001, symbol)}]
    by_parts = post(client, "verdict", {**body, "value": of(50.0, symbol), "parts": parts})
    whole = 2.0 * math.sqrt(0.003**2 / 3 + 0.001**2 / 12)
    assert by_parts["inputs"]["value"]["uncertainty"] == pytest.approx(whole, rel=1e-12)
    error, step = by_parts["inputs"]["parts"]
    assert (error["max_error"]["value"], error["max_error"]["unit"]) == (0.003, symbol)
    assert (step["resolution"]["value"], step["resolution"]["unit"]) == (0.001, symbol)


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize(
    ("name", "result", "shared"),
    [
        ("convert", "converted", {"to": "bar(a)"}),
        ("verdict", "judged_value", {"high": of(9, "bar(a)")}),
        ("verdict", "judged_value", {"high": of(9, "bar(g)")}),
    ],
)
def test_a_batch_carries_what_a_single_answer_does(
    client: FlaskClient, name: str, result: str, shared: dict[str, Any], system: str
) -> None:
    numbers, doubts = [100.0, 120.0, 130.0, 140.0], [1.0, 0.07, None, 2.0]
    columns = {"value": {"values": numbers, "unit": "psig", "uncertainty": doubts}}
    shared = {**shared, "air_pressure": of(94, "kPa")}
    body = {"columns": columns, "shared": shared}
    batch = client.post(f"/v1/{name}/batch?units={system}", json=body).json["results"][result]
    for row, (number, doubt) in enumerate(zip(numbers, doubts, strict=True)):
        more = {} if doubt is None else {"uncertainty": doubt}
        asked = {"value": of(number, "psig", **more), **shared}
        single = client.post(f"/v1/{name}?units={system}", json=asked).json["result"][result]
        assert batch["values"][row] == pytest.approx(single["value"], rel=1e-12)
        assert batch["uncertainties"][row] == (
            None if doubt is None else pytest.approx(single["uncertainty"], rel=1e-12)
        )


def test_in_an_address(client: FlaskClient) -> None:
    found = strict(get(client, "convert", {"value": "100psi +/- 0.7", "to": "psig"}))
    assert found["result"]["converted"]["uncertainty"] == pytest.approx(0.7, rel=1e-15)
    assert found["inputs"]["value"]["uncertainty"] == 0.7
    get(client, "convert", {"value": "-300degC", "to": "K"}, 422)
