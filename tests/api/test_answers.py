"""The answer as JSON: its shape, units, digits and trace."""

import re
from typing import Any

import pytest
from asking import COMPOSITES, ENGINE, PLAIN, get, post, strict
from flask.testing import FlaskClient

from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Operation

QUERY = {"bore": "68mm", "stroke": "66mm", "class_limit": "240cc"}
SWEPT = 239.69095309828688  # π/4·68²·66/1000 by hand: 239.690953
MEMBERS = [
    "calculation",
    "formulas",
    "inputs",
    "result",
    "uncertainties",
    "intervals",
    "verdicts",
    "warnings",
    "cautions",
    "basis",
]
VERDICT = {
    "check", "label", "of", "value", "uncertainty", "interval", "bias", "limit", "verdict", "why",
    "to_judge", "without_uncertainty", "conformance_probability", "margin", "rule",
    "inconclusive_fails", "to_settle",
}  # fmt: skip


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_shape_is_the_same_everywhere(client: FlaskClient, calculation: Operation) -> None:
    found = post(client, calculation.name, example(calculation.inputs))
    assert list(found) == MEMBERS + ["taken"] * (calculation in COMPOSITES)
    assert found["calculation"] == calculation.name
    assert found["formulas"] == calculation.formulas
    for verdict in found["verdicts"]:
        assert verdict.keys() == VERDICT
        assert verdict["limit"].keys() == {"low", "high", "standing", "source"}
        assert verdict["verdict"] in ("pass", "fail", "too_close_to_call", "not_judged")
        assert (verdict["why"] is None) == (verdict["verdict"] != "not_judged")
        assert (verdict["to_judge"] is None) == (verdict["why"] is None)
        assert verdict["rule"] in ("simple", "guard_2u", "guard_1645u", "interval_95")
        assert (verdict["rule"] == "interval_95") == (verdict["interval"] is not None)
        assert (verdict["bias"] is None) == (verdict["interval"] is None)
        assert verdict["limit"]["standing"] in (
            "maker", "common_practice", "standard", "computed",
        )  # fmt: skip
        assert (verdict["to_settle"] is None) == (verdict["verdict"] != "too_close_to_call")
    for warned in found["warnings"]:
        assert warned.keys() == {"code", "field", "message"}
    for entry in found["basis"]:
        assert entry.keys() == {"field", "formula", "source"}
    assert all(isinstance(line, str) for line in found["cautions"])


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_every_result_has_its_basis(client: FlaskClient, calculation: Operation) -> None:
    found = post(client, calculation.name, example(calculation.inputs))
    assert [entry["field"] for entry in found["basis"]] == list(found["result"])


def shown_alike(asked: Any, echoed: Any) -> None:
    """Check that what was asked is what is echoed, in canonical units."""
    if isinstance(asked, dict):
        for name, value in asked.items():
            shown_alike(value, echoed[name])
    elif isinstance(asked, list):
        assert len(asked) == len(echoed)
        for one, other in zip(asked, echoed, strict=True):
            shown_alike(one, other)
    elif isinstance(asked, float):
        assert echoed == pytest.approx(asked, rel=1e-15)
    else:
        assert echoed == asked


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_inputs_are_echoed_as_understood(client: FlaskClient, calculation: Operation) -> None:
    asked = example(calculation.inputs)
    shown_alike(asked, post(client, calculation.name, asked)["inputs"])


def test_inputs_are_echoed_in_canonical_units(client: FlaskClient) -> None:
    asked = {"bore": "2.677 in +/- 0.001", "stroke": "6.6 cm"}
    found = strict(get(client, "displacement", asked))["inputs"]
    assert found["bore"]["value"] == pytest.approx(2.677 * 25.4, rel=1e-15)
    assert found["bore"]["uncertainty"] == pytest.approx(0.0254, rel=1e-14)
    assert found["stroke"] == {"value": 66.0, "unit": "mm", "decimals": 2}
    assert found["cylinder_count"] == 1


def test_what_is_not_known_is_left_out(client: FlaskClient) -> None:
    found = post(client, "displacement", ENGINE)
    assert list(found["result"]) == ["displacement", "piston_area"]
    assert None not in found["result"].values()


UNITS = {
    "mm": "in", "cc": "in3", "mm2": "in2", "kPa": "psi", "N.m": "lbf.ft", "N": "lbf",
    "degC": "degF", "K": "degF", "m": "ft", "mL": "floz_us", "L": "gal_us", "g": "oz",
    "N/mm": "lbf/in", "MPa": "psi", "m/s": "ft/s", "1/K": "1/degF",
    "%": "%", "deg": "deg", "rpm": "rpm", "V": "V",
}  # fmt: skip


def units_in(value: Any) -> list[str]:
    """Return the unit of every quantity in an answer, in order."""
    if isinstance(value, dict):
        own = [value["unit"]] if "decimals" in value else []
        return own + [unit for inner in value.values() for unit in units_in(inner)]
    return [u for inner in value for u in units_in(inner)] if isinstance(value, list) else []


# Quantities of any kind stay in the unit that they were given in.
TURNED = [c for c in CALCULATIONS if c.name not in ("convert", "verdict")]


@pytest.mark.parametrize("calculation", TURNED, ids=lambda c: c.name)
def test_units_us_turns_the_whole_answer(client: FlaskClient, calculation: Operation) -> None:
    asked = example(calculation.inputs)
    metric = post(client, calculation.name, asked)
    assert post(client, f"{calculation.name}?units=metric", asked) == metric
    us = post(client, f"{calculation.name}?units=us", asked)
    assert units_in(us) == [UNITS[unit] for unit in units_in(metric)]
    assert [v["verdict"] for v in us["verdicts"]] == [v["verdict"] for v in metric["verdicts"]]


def test_units_us_turns_values_and_uncertainties(client: FlaskClient) -> None:
    asked = {"bore": "68 mm ± 0.0254", "stroke": "66 mm", "class_limit": "240cc", "units": "us"}
    found = strict(get(client, "displacement", asked))
    assert found["inputs"]["bore"]["value"] == pytest.approx(68 / 25.4)
    assert found["inputs"]["bore"]["uncertainty"] == pytest.approx(0.001)
    assert found["result"]["displacement"]["value"] == pytest.approx(SWEPT / 16.387064)
    (verdict,) = found["verdicts"]
    assert verdict["limit"]["high"]["value"] == pytest.approx(240 / 16.387064)
    assert verdict["margin"]["value"] == pytest.approx((240 - SWEPT) / 16.387064)


def test_units_us_of_a_temperature_and_of_its_uncertainty(client: FlaskClient) -> None:
    """36 °F of difference are 20 K, 68 °F is 20 °C: an uncertainty takes no offset."""
    part = {"value": 20, "unit": "degC", "uncertainty": 0.5}
    asked = {"bore": {"value": 72, "unit": "mm"}, "bore_temperature": part, "bore_kind": "iron"}
    found = post(client, "length-at-20c?units=us", asked)["inputs"]["bore_temperature"]
    assert found["value"] == pytest.approx(68.0)
    assert found["uncertainty"] == pytest.approx(0.9)


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_trace_shows_each_formula_with_its_numbers(
    client: FlaskClient, calculation: Operation
) -> None:
    asked = example(calculation.inputs)
    plain = post(client, calculation.name, asked)
    assert post(client, f"{calculation.name}?trace=false", asked) == plain
    traced = post(client, f"{calculation.name}?trace=true", asked)
    steps = traced.pop("trace")
    assert traced == plain
    formulas = {entry["field"]: entry["formula"] for entry in plain["basis"]}
    for step in steps:
        assert step.keys() == {"field", "formula", "substituted", "value", "unit"}
        assert step["formula"] == formulas[step["field"]]
        assert not re.search(r"[a-z]{2}_[a-z]|bore|stroke", step["substituted"])


def test_trace_by_hand(client: FlaskClient) -> None:
    found = strict(get(client, "displacement", {**QUERY, "trace": "true"}))
    step = next(step for step in found["trace"] if step["field"] == "displacement")
    assert step["substituted"] == "π / 4 · 68² · 66 · 1 / 1000"
    assert (step["value"], step["unit"]) == (SWEPT, "cc")


def test_digits_suggest_what_to_show(client: FlaskClient) -> None:
    """An inch is 25.4 mm: as many significant figures take one decimal more, thou two fewer."""
    metric = post(client, "displacement", ENGINE)
    us = post(client, "displacement?units=us", ENGINE)
    assert metric["inputs"]["bore"]["decimals"] == 3
    assert us["inputs"]["bore"]["decimals"] == 4
    assert metric["result"]["displacement"]["decimals"] == 1
    assert us["result"]["displacement"]["decimals"] == 2
