"""A verdict over every pair of units: converted with what is said, or refused; never compared raw.

The oracle converts by pint's own float registry, kind by kind; gauge and absolute pressure differ
by the air pressure, 101.325 kPa in the standard atmosphere (ISO 2533, from memory).
"""

import itertools
import math
from typing import Any

import pint
import pytest
from asking import post
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from ringland_service.core.declare.kinds import KINDS
from ringland_service.vocabulary import UNITS

STANDARD_KPA = 101.325
REGISTRY = pint.UnitRegistry()
SYMBOLS = tuple(dict.fromkeys(s for symbols in UNITS.values() for s in symbols))
GAUGE, ABSOLUTE = "pressure_gauge", "pressure_absolute"
PRESSURES = (GAUGE, ABSOLUTE)
VALUE, LIMIT = 300.0, 200.0
SAME_CLIENT = settings(
    max_examples=200, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


def of(value: float, unit: str, **more: Any) -> dict[str, Any]:
    return {"value": value, "unit": unit, **more}


def kinds_of(symbol: str) -> list[str]:
    return [kind for kind, symbols in UNITS.items() if symbol in symbols]


def canonical(kind: str, symbol: str, value: float) -> float:
    """Return a value in the canonical unit of a kind, by pint."""
    spelling = UNITS[kind][symbol]
    if kind == "rotation":
        return value * {"rpm": 1.0, "1/min": 1.0, "1/s": 60.0}[symbol]
    first = next(iter(UNITS[kind].values()))
    found = REGISTRY.Quantity(value, REGISTRY.parse_units(spelling.replace("inch / 1000", "thou")))
    return float(found.to(first).magnitude)


def codes(found: Any, field: str) -> set[str]:
    return {w["code"] for w in found["warnings"] if w["field"] == field}


def judged(found: Any) -> Any:
    (verdict,) = found["verdicts"]
    return verdict


@pytest.mark.parametrize("symbol", SYMBOLS)
def test_every_pair_of_units(client: FlaskClient, symbol: str) -> None:
    for other in SYMBOLS:
        body = {"value": of(VALUE, symbol), "high": of(LIMIT, other)}
        here, there = kinds_of(symbol), kinds_of(other)
        shared = [kind for kind in KINDS if kind in here and kind in there]
        pressures = [[k for k in PRESSURES if k in kinds] for kinds in (here, there)]
        if shared:
            pair, air = (shared[0], shared[0]), 0.0
        elif all(pressures):
            pair = (pressures[0][0], pressures[1][0])
            air = STANDARD_KPA if pair == (GAUGE, ABSOLUTE) else -STANDARD_KPA
        else:
            (fault,) = post(client, "verdict", body, 422)["errors"]
            assert fault["code"] == "kinds_differ"
            assert fault["pointer"] == "#/value"
            assert f"{symbol} is " in fault["detail"]
            assert f"{other} is " in fault["detail"]
            assert "write all in units of" in fault["detail"]
            continue
        value = canonical(pair[0], symbol, VALUE) + air
        limit = canonical(pair[1], other, LIMIT)
        found = post(client, "verdict", body)
        verdict = judged(found)
        near = 1e-9 * max(abs(value), abs(limit), 1.0)
        assert verdict["value"]["value"] == pytest.approx(value, rel=1e-9), other
        assert verdict["margin"]["value"] == pytest.approx(limit - value, rel=1e-9, abs=near)
        if abs(limit - value) > near:
            assert verdict["verdict"] == ("pass" if value < limit else "fail"), other
        assert ("standard_air_pressure" in codes(found, "air_pressure")) == bool(air)


MARKED = {"kPa(g)": "gauge", "bar(g)": "gauge", "psig": "gauge"} | {
    "kPa(a)": "absolute",
    "bar(a)": "absolute",
    "psia": "absolute",
}
BARE = ("kPa", "bar", "psi")


@pytest.mark.parametrize("name", ["verdict", "convert"])
@pytest.mark.parametrize(("bare", "marked"), list(itertools.product(BARE, MARKED)))
def test_a_bare_pressure_is_answered_with_which_was_meant(
    client: FlaskClient, name: str, bare: str, marked: str
) -> None:
    for value, other in ((bare, marked), (marked, bare)):
        beside = {"to": other} if name == "convert" else {"high": of(1.0, other)}
        found = post(client, name, {"value": of(1.0, value), **beside})
        field = "value" if value == bare else next(iter(beside))
        said = {w["field"]: w["code"] for w in found["warnings"] if w["code"].startswith("taken")}
        assert said == {field: f"taken_as_{MARKED[marked]}"}
    alone = {"to": bare} if name == "convert" else {"high": of(1.0, bare)}
    both = post(client, name, {"value": of(1.0, bare), **alone})
    assert not [w for w in both["warnings"] if w["code"].startswith("taken")]


@pytest.mark.parametrize(
    ("value", "limit", "said"),
    [
        ("psi", "inHg", {"value": "taken_as_absolute", "high": "taken_as_absolute"}),
        ("kgf/cm2", "bar(a)", {"value": "taken_as_gauge"}),
        ("kPa(g)", "mbar", {"high": "taken_as_absolute"}),
        ("bar(g)", "psig", {}),
        ("bar(g)", "bar(a)", {}),
        ("degC", "degF", {"value": "taken_as_temperature", "high": "taken_as_temperature"}),
        ("degC", "K", {"value": "taken_as_temperature", "high": "taken_as_temperature"}),
        ("degC", "degC", {}),
        ("mm", "in", {}),
    ],
)
def test_what_is_said_of_a_pair(
    client: FlaskClient, value: str, limit: str, said: dict[str, str]
) -> None:
    found = post(client, "verdict", {"value": of(1.0, value), "high": of(2.0, limit)})
    told = {w["field"]: w["code"] for w in found["warnings"] if w["code"].startswith("taken")}
    assert told == said


def test_a_kind_that_is_told_is_not_taken_for_another(client: FlaskClient) -> None:
    """20 K of difference is over a limit of 30 degF of difference: 30/1.8 = 16.7 K (by hand)."""
    body = {"value": of(20, "K"), "high": of(30, "degF"), "kind": "temperature_difference"}
    found = post(client, "verdict", body)
    assert found["warnings"][0]["code"] == "no_uncertainty_stated"
    assert judged(found)["verdict"] == "fail"
    assert judged(found)["margin"]["value"] == pytest.approx(30 / 1.8 - 20)


def test_gauge_against_absolute_by_hand(client: FlaskClient) -> None:
    """1 bar(g) is 201.325 kPa absolute in standard air, 148 kPa in air of 48 kPa; limit 150."""
    body = {"value": of(1, "bar(g)"), "high": of(1.5, "bar(a)")}
    standard = post(client, "verdict", body)
    assert judged(standard)["verdict"] == "fail"
    assert judged(standard)["value"]["value"] == pytest.approx(201.325, rel=1e-12)
    (notice,) = [w for w in standard["warnings"] if w["code"] == "standard_air_pressure"]
    assert "101.325 kPa" in notice["message"]
    thin = post(client, "verdict", {**body, "air_pressure": of(480, "hPa")})
    assert judged(thin)["verdict"] == "pass"
    assert judged(thin)["value"]["value"] == pytest.approx(148.0, rel=1e-12)
    assert "air_pressure_used" in codes(thin, "air_pressure")


def test_an_air_pressure_that_nothing_takes_is_said(client: FlaskClient) -> None:
    body = {"value": of(1, "bar(g)"), "high": of(1.5, "bar(g)"), "air_pressure": of(94, "kPa")}
    assert codes(post(client, "verdict", body), "air_pressure") == {"air_pressure_unused"}


def test_limits_of_unlike_kinds_are_refused(client: FlaskClient) -> None:
    body = {"value": of(1, "bar(g)"), "low": of(1, "bar(g)"), "high": of(3, "bar(a)")}
    (fault,) = post(client, "verdict", body, 422)["errors"]
    assert fault["code"] == "contradiction"
    assert "both limits" in fault["detail"]


@SAME_CLIENT
@given(
    gauge=st.sampled_from(["kPa(g)", "bar(g)", "psig"]),
    absolute=st.sampled_from(["kPa(a)", "bar(a)", "psia", "inHg", "mmHg", "atm", "hPa"]),
    value=st.floats(-40.0, 2000.0),
    limit=st.floats(1.0, 2000.0),
    air=st.floats(48.0, 110.0),
    turned=st.booleans(),
)
def test_gauge_and_absolute_of_one_pressure_have_one_verdict(
    client: FlaskClient,
    gauge: str,
    absolute: str,
    value: float,
    limit: float,
    air: float,
    turned: bool,
) -> None:
    """Value in kPa gauge, limit in kPa absolute, or the other way: judged as both absolute."""
    g = canonical(GAUGE, gauge, 1.0)
    a = canonical(ABSOLUTE, absolute, 1.0)
    value = max(value, 1.0) if turned else value
    limit = max(limit - air, 1.0 - air) if turned else limit
    units = (absolute, gauge) if turned else (gauge, absolute)
    scale = (a, g) if turned else (g, a)
    body = {
        "value": of(value / scale[0], units[0]),
        "high": of(limit / scale[1], units[1]),
        "air_pressure": of(air, "kPa"),
    }
    margin = limit + air - value if turned else limit - (value + air)
    verdict = judged(post(client, "verdict", body))
    assert verdict["margin"]["value"] == pytest.approx(margin, rel=1e-9, abs=1e-9)
    if abs(margin) > 1e-5:
        assert verdict["verdict"] == ("pass" if margin > 0 else "fail")


def test_a_field_s_own_kind_is_said_in_the_refusal(client: FlaskClient) -> None:
    """A bare unit in a field of one kind: the refusal says which it was taken for."""
    body = {"reading": of(9000, "kPa"), "altitude": of(0, "m")}
    (fault,) = post(client, "air-pressure", body, 422)["errors"]
    assert "kPa is taken as gauge pressure here" in fault["detail"]
    body = {"air_pressure": of(1, "bar(g)")}
    (fault,) = post(client, "air-pressure", body, 400)["errors"]
    assert "kPa is taken as absolute pressure here" in fault["detail"]


@pytest.mark.parametrize(("kind", "symbol"), [(k, s) for k, t in UNITS.items() for s in t])
def test_a_part_in_every_unit_of_the_value_s_kind(
    client: FlaskClient, kind: str, symbol: str
) -> None:
    """A part of ± 1 in a unit is u = 1/√3 of it, whatever else the symbol may mean."""
    told = {"value": of(500.0, symbol), "high": of(900.0, symbol), "kind": kind}
    found = post(client, "verdict", {**told, "parts": [{"max_error": of(1.0, symbol)}]})
    step = canonical(kind, symbol, 1.0) - canonical(kind, symbol, 0.0)
    u = found["result"]["combined_uncertainty"]["value"]
    assert u == pytest.approx(step / math.sqrt(3.0), rel=1e-9)
    american = client.post("/v1/verdict?units=us", json={
        **told, "parts": [{"max_error": of(1.0, symbol)}]
    }).json  # fmt: skip
    shown = american["result"]["combined_uncertainty"]
    assert 2.0 * shown["value"] == pytest.approx(
        american["result"]["judged_value"]["uncertainty"], rel=1e-9
    )
