"""Batches of quantities of any kind: each row in the unit that it asks for, doubts with it."""

import csv
import io
from typing import Any

import pytest
from asking import post, problem
from flask.testing import FlaskClient


def converted(client: FlaskClient, columns: dict[str, Any], **shared: Any) -> Any:
    """Return the column of converted values."""
    body = {"columns": columns, "shared": shared}
    return post(client, "convert/batch", body)["results"]["converted"]


def test_one_unit_for_all_rows(client: FlaskClient) -> None:
    found = converted(client, {"value": {"values": [1, None, 2], "unit": "in"}}, to="mm")
    assert found == {"values": [25.4, None, 50.8], "unit": "mm", "digits": 6}


def test_a_unit_a_row(client: FlaskClient) -> None:
    columns = {"value": {"values": [1, 1, 1], "unit": "in"}, "to": {"values": ["mm", "cm", "x"]}}
    found = converted(client, columns)
    assert found["values"] == [25.4, 2.54, None]
    assert found["units"] == ["mm", "cm", None]
    assert "unit" not in found


def test_a_kind_a_row(client: FlaskClient) -> None:
    """36 °F of temperature is 2.2 °C, of a difference 20 K: one must not be read as the other."""
    kinds = {"values": ["temperature", "temperature_difference"]}
    value = {"values": [36, 36], "unit": "degF"}
    found = converted(client, {"value": value, "kind": kinds}, to="degC")
    assert found["values"] == pytest.approx([20 / 9, 20.0])
    there = converted(client, {"value": value, "kind": kinds}, to="degF")
    assert there["values"] == pytest.approx([36.0, 36.0])
    assert there["units"] == ["degF", "degF"]


def test_gauge_and_absolute_rows_keep_their_names(client: FlaskClient) -> None:
    columns = {
        "value": {"values": [100, 100], "unit": "kPa(g)"},
        "to": {"values": ["kPa(g)", "kPa(a)"]},
    }
    found = converted(client, columns, air_pressure={"value": 94, "unit": "kPa"})
    assert found["values"] == [100.0, 194.0]
    assert found["units"] == ["kPa(g)", "kPa(a)"]


def test_units_of_the_rows_in_csv(client: FlaskClient) -> None:
    body = {"columns": {"value": {"values": [1, 1], "unit": "in"}, "to": {"values": ["mm", "cm"]}}}
    answer = client.post("/v1/convert/batch", json=body, headers={"Accept": "text/csv"})
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    shown = [(row["converted"], row["converted unit"]) for row in rows]
    assert shown == [("25.4", "mm"), ("2.54", "cm")]


def test_doubt_of_a_row_decides_its_verdict(client: FlaskClient) -> None:
    """0.0745 against 0.080 by hand: margin 0.0055, under U = 0.0084 but above U = 0.005."""
    value = {"values": [0.0745] * 3, "unit": "mm", "uncertainty": [0.0084, 0.005, None]}
    body = {"columns": {"value": value}, "shared": {"high": {"value": 0.08, "unit": "mm"}}}
    found = post(client, "verdict/batch", body)["verdicts"]["value_within"]
    assert found["verdict"] == ["too_close_to_call", "pass", "pass"]
    assert found["uncertainty"]["values"] == [
        pytest.approx(0.0084),
        pytest.approx(0.005),
        None,
    ]
    assert found["probability_within"][2] is None


@pytest.mark.parametrize("name", ["value", "air_pressure"])
def test_uncertainties_of_another_length_are_refused(client: FlaskClient, name: str) -> None:
    columns: dict[str, Any] = {
        "value": {"values": [1, 2], "unit": "psig"},
        "air_pressure": {"values": [94, 94], "unit": "kPa"},
        "to": {"values": ["kPa(a)", "kPa(a)"]},
    }
    columns[name]["uncertainty"] = [0.1]
    answer = client.post("/v1/convert/batch", json={"columns": columns})
    (fault,) = problem(answer, 422)["errors"]
    assert fault["pointer"] == f"#/columns/{name}"
    assert "one uncertainty a row" in fault["detail"]
