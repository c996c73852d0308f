"""Units that mean two things, or nothing: refused fast, and with what would be right."""

import json
import math
import time
from typing import Any

import pint
import pytest
from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from ringland_service import units
from ringland_service.core.declare.kinds import KINDS
from ringland_service.units import TABLE, UnknownUnit, unit

BORE = {"value": 68, "unit": "mm"}


def body(answer: TestResponse) -> Any:
    """Return the JSON of a response."""
    return json.loads(answer.text)


def converted(client: FlaskClient, number: float, symbol: str, to: str, **more: Any) -> float:
    """Return a quantity converted by the service."""
    asked = {"value": {"value": number, "unit": symbol}, "to": to, **more}
    answer = client.post("/v1/convert", json=asked)
    assert answer.status_code == 200, body(answer)
    found: float = body(answer)["result"]["converted"]["value"]
    return found


def refused(client: FlaskClient, path: str, **asked: Any) -> dict[str, Any]:
    """Return the one fault that the service finds."""
    answer = client.post(path, json=asked)
    assert answer.status_code == 400, body(answer)
    (fault,) = body(answer)["errors"]
    assert fault["code"] == "unknown_unit"
    assert fault["pointer"].endswith("/unit")
    found: dict[str, Any] = fault
    return found


HOSTILE = [
    "9**9**9*mm",
    "mm**9**9**9",
    "a" * 100_000,
    "mm*" * 20_000,
    "(" * 5_000,
    '"',
    "__import__('os')",
    "mm.__class__",
    "1/0",
    "mm mm",
    " mm",
    "mm ",
    "mm\x00",
    "",
    "mm\n",
]


@pytest.mark.parametrize("text", HOSTILE, ids=lambda t: repr(t[:16]))
def test_hostile_unit_is_refused_at_once(client: FlaskClient, text: str) -> None:
    began = time.perf_counter()
    fault = refused(client, "/v1/displacement", bore={"value": 68, "unit": text}, stroke=BORE)
    assert time.perf_counter() - began < 0.5
    assert len(fault["detail"]) < 200
    assert "mm" in fault["allowed"]


def test_text_from_outside_never_reaches_pint(
    client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    def reached(*args: Any, **kwargs: Any) -> None:
        raise AssertionError(f"pint was asked: {args[1:]}")

    registry = type(units._REGISTRY)
    for name in ("parse_expression", "parse_units", "parse_unit_name", "get_name", "convert"):
        monkeypatch.setattr(registry, name, reached)
    monkeypatch.setattr(pint.Quantity, "__new__", reached)
    with pytest.raises(AssertionError, match="pint was asked"):
        units._REGISTRY.parse_expression("mm")
    assert converted(client, 1, "in", "mm") == 25.4
    assert converted(client, 68, "degF", "degC") == pytest.approx(20.0, abs=1e-12)
    for text in HOSTILE:
        refused(client, "/v1/displacement", bore={"value": 68, "unit": text}, stroke=BORE)
        cell = {"bore": f"68{text}", "stroke": "66 mm"}
        assert client.get("/v1/displacement", query_string=cell).status_code in (200, 400)


# Kind, what was written, what the message says. Common practice, no source: words of the shop.
UNCLEAR = [
    ("length", "tenth", "write in or mm"),
    ("length", "tenths", "write in or mm"),
    ("length", "mil", "write thou or mm"),
    ("length", "mils", "write thou or mm"),
    ("length", "th", "thou"),
    ("length", "MM", "millimetres are mm"),
    ("length", "Mm", "millimetres are mm"),
    ("length", '"', "write in"),
    ("length", "IN", "did you mean in?"),
    ("length", "Thou", "did you mean thou?"),
    ("volume", "ML", "millilitres are mL"),
    ("volume", "CC", "did you mean cc?"),
    ("liquid", "oz", "floz_us or floz_imp"),
    ("liquid", "floz", "floz_us or floz_imp"),
    ("liquid", "fl oz", "floz_us or floz_imp"),
    ("fuel", "gal", "gal_us or gal_imp"),
    ("fuel", "gallon", "gal_us or gal_imp"),
    ("pressure_gauge", "mpa", "megapascals are MPa"),
    ("pressure_gauge", "mPa", "megapascals are MPa"),
    ("pressure_gauge", "lb", "psi"),
    ("pressure_gauge", "lbs", "psi"),
    ("pressure_gauge", "kg", "kgf/cm2"),
    ("pressure_gauge", "PSI", "did you mean psi?"),
    ("pressure_gauge", "Bar", "did you mean bar?"),
    ("pressure_gauge", "KPA", "did you mean kPa?"),
    ("pressure_absolute", "mb", "write mbar"),
    ("torque", "J", "write N.m"),
    ("torque", "lb", "lbf.ft or lbf.in"),
    ("torque", "nm", "did you mean Nm?"),
    ("force", "kg", "a force in kgf"),
    ("force", "PS", "a power"),
]


@pytest.mark.parametrize(("kind", "symbol", "words"), UNCLEAR)
def test_unclear_word_is_refused_with_what_would_be_right(
    kind: str, symbol: str, words: str
) -> None:
    with pytest.raises(UnknownUnit) as caught:
        unit(KINDS[kind], symbol)
    assert words in str(caught.value)
    assert caught.value.allowed == tuple(TABLE[kind])


@pytest.mark.parametrize("symbol", ["MM", "Mm", "mil", "tenth", "oz", "J", "PS", "mb", "psi"])
def test_unclear_word_on_a_length_over_the_wire(client: FlaskClient, symbol: str) -> None:
    fault = refused(client, "/v1/displacement", bore={"value": 68, "unit": symbol}, stroke=BORE)
    assert symbol in fault["detail"]
    assert fault["allowed"] == list(TABLE["length"])


@pytest.mark.parametrize("symbol", ["MM", "ML", "mpa", "tenth", "mil", "gal", "PS", "mb", "J"])
def test_unclear_word_where_any_kind_may_stand(client: FlaskClient, symbol: str) -> None:
    refused(client, "/v1/convert", value={"value": 1, "unit": symbol}, to="mm")


def test_newton_metre_in_its_spellings(client: FlaskClient) -> None:
    for symbol in ("Nm", "N.m", "N·m"):
        assert converted(client, 42, symbol, "lbf.in") == converted(client, 42, "N.m", "lbf.in")
    assert unit(KINDS["torque"], "Nm") is unit(KINDS["torque"], "N.m")


def test_torque_is_not_energy_nor_force_times_anything_else(client: FlaskClient) -> None:
    answer = client.post("/v1/convert", json={"value": {"value": 1, "unit": "N.m"}, "to": "N"})
    assert answer.status_code == 422
    assert body(answer)["errors"][0]["code"] == "kinds_differ"


def test_foot_pounds_are_twelve_inch_pounds(client: FlaskClient) -> None:
    """The mistake pulls studs: a factor of 12."""
    assert converted(client, 1, "lbf.ft", "lbf.in") == pytest.approx(12.0, rel=1e-15)
    assert TABLE["torque"]["lbf.ft"].ratio == 12 * TABLE["torque"]["lbf.in"].ratio


def test_revolutions_carry_no_two_pi(client: FlaskClient) -> None:
    assert converted(client, 3000, "rpm", "1/s") == 50.0
    assert converted(client, 50, "1/s", "rpm") == 3000.0
    # pint alone would count radians: why the vocabulary spells rpm as 1/minute.
    naive = pint.UnitRegistry().Quantity(3000.0, "rpm").to_base_units().magnitude
    assert naive == pytest.approx(3000.0 / 60.0 * 2.0 * math.pi)


def test_temperature_is_not_a_temperature_difference(client: FlaskClient) -> None:
    assert converted(client, 36, "degF", "degC") == pytest.approx(20 / 9, abs=1e-12)
    apart = converted(client, 36, "degF", "degC", kind="temperature_difference")
    assert apart == pytest.approx(20.0, abs=1e-12)
    assert converted(client, 0, "degC", "K") == 273.15
    assert converted(client, 0, "degC", "K", kind="temperature_difference") == 0.0


def test_a_field_says_whether_it_is_a_difference(client: FlaskClient) -> None:
    """36 degF of expanded uncertainty is 20 K, not -7.8 degC."""
    part = {"value": 68, "unit": "degF"}
    asked = {
        "bore": {"value": 72.036, "unit": "mm"},
        "bore_temperature": part,
        "bore_alpha": {"value": 11, "unit": "um/m/K"},
        "measuring": {"temperature_uncertainty": {"value": 36, "unit": "degF"}},
    }
    answer = body(client.post("/v1/length-at-20c", json=asked))
    assert answer["inputs"]["bore_temperature"]["value"] == pytest.approx(20.0)
    # U = 2·α·L·u(T): by hand, 11e-6·72.036·20
    uncertainty = answer["result"]["bore_at_20c"]["uncertainty"]
    assert uncertainty == pytest.approx(11e-6 * 72.036 * 20, rel=1e-6)


@pytest.mark.parametrize("symbol", ["psia", "kPa(a)", "bar(a)"])
def test_absolute_unit_on_a_gauge_field(client: FlaskClient, symbol: str) -> None:
    fault = refused(client, "/v1/compression-level", reading={"value": 100, "unit": symbol})
    assert "gauge and absolute are told apart" in fault["detail"]
    assert "psig" in fault["allowed"]


@pytest.mark.parametrize("symbol", ["psig", "kPa(g)", "bar(g)"])
def test_gauge_unit_on_an_absolute_field(client: FlaskClient, symbol: str) -> None:
    fault = refused(client, "/v1/air-pressure", air_pressure={"value": 14, "unit": symbol})
    assert "gauge and absolute are told apart" in fault["detail"]
    assert "psia" in fault["allowed"]


def test_gauge_to_absolute_takes_the_air_pressure(client: FlaskClient) -> None:
    asked = {"value": {"value": 165, "unit": "psig"}, "to": "kPa(a)"}
    answer = client.post("/v1/convert", json=asked)
    assert answer.status_code == 422
    assert body(answer)["errors"][0]["pointer"] == "#/air_pressure"
    air = {"value": 94.3217, "unit": "kPa"}
    found = converted(client, 165, "psig", "kPa(a)", air_pressure=air)
    assert found == pytest.approx(165 * 6.894757293168361 + 94.3217, rel=1e-14)
    assert converted(client, found, "kPa(a)", "psig", air_pressure=air) == pytest.approx(165)


# C01's worked numbers of the trade brief, and its traps, at the six digits printed.
WORKED = [
    (0.0035, "in", "mm", 0.0889),
    (165, "psi", "kPa", 1137.63),
    (42, "lbf.ft", "N.m", 56.9444),
    (11.5, "kgf/cm2", "kPa", 1127.76),
    (15, "in3", "cc", 245.806),
    (2.4, "kgf.m", "N.m", 23.536),
    (120, "lbf/in", "N/mm", 21.0152),
    (6, "floz_us", "mL", 177.441),
    (0.02, "in", "mm", 0.508),
    (20, "thou", "mm", 0.508),
    (1, "thou", "mm", 0.0254),
    (1, "gal_imp", "gal_us", 1.20095),
]


@pytest.mark.parametrize(("number", "symbol", "to", "expected"), WORKED)
def test_worked_conversion(
    client: FlaskClient, number: float, symbol: str, to: str, expected: float
) -> None:
    assert converted(client, number, symbol, to) == pytest.approx(expected, rel=5e-6)


def test_twenty_thou_is_not_half_a_millimetre(client: FlaskClient) -> None:
    assert converted(client, 0.020, "in", "mm") == 0.508
    assert (converted(client, 0.020, "in", "mm") - 0.5) * 1000 == pytest.approx(8.0)


def test_ounces_of_two_countries_are_four_per_cent_apart(client: FlaskClient) -> None:
    """29.5735295625 mL against 28.4130625 mL: a premix error of 4 %."""
    assert converted(client, 1, "floz_us", "floz_imp") == pytest.approx(1.0408427, rel=1e-7)
