"""Lists of bare numbers and of records: read strictly, described, and shown in a batch."""

import json
from typing import Any

import pytest
from flask.testing import FlaskClient

from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import BY_NAME

TORQUE = {"value": 24.0, "unit": "N.m"}


def body(answer: Any) -> Any:
    return json.loads(answer.text)


def asked(client: FlaskClient, fractions: Any) -> Any:
    request = {"final_torque": TORQUE, "stage_fractions": fractions}
    return client.post("/v1/torque-steps", json=request)


def test_list_of_numbers_is_taken_and_shown(client: FlaskClient) -> None:
    answer = asked(client, [0.5, 1])
    assert answer.status_code == 200
    assert body(answer)["inputs"]["stage_fractions"] == [0.5, 1.0]
    assert body(answer)["result"]["stages"]["values"] == [12.0, 24.0]


@pytest.mark.parametrize(
    ("fractions", "status", "code", "pointer"),
    [
        (0.5, 400, "wrong_type", "#/stage_fractions"),
        ("0.5", 400, "wrong_type", "#/stage_fractions"),
        ([0.5, "1"], 400, "wrong_type", "#/stage_fractions/1"),
        ([0.5, True], 400, "wrong_type", "#/stage_fractions/1"),
        ([None, 1], 400, "null", "#/stage_fractions/0"),
        ([0.5, 1.5], 422, "out_of_bounds", "#/stage_fractions/1"),
        ([], 422, "wrong_count", "#/stage_fractions"),
        ([1] * 9, 422, "wrong_count", "#/stage_fractions"),
    ],
)
def test_what_is_no_list_of_numbers(
    client: FlaskClient, fractions: Any, status: int, code: str, pointer: str
) -> None:
    answer = asked(client, fractions)
    assert answer.status_code == status
    (fault,) = body(answer)["errors"]
    assert (fault["code"], fault["pointer"]) == (code, pointer)


def test_list_of_numbers_is_described(client: FlaskClient) -> None:
    listed = body(client.get("/v1"))["calculations"]
    fields = next(c["fields"] for c in listed if c["name"] == "torque-steps")
    field = next(f for f in fields if f["name"] == "stage_fractions")
    assert field["shape"] == "numbers"
    assert (field["low"], field["high"], field["least"], field["most"]) == (0.05, 1.0, 1, 8)
    assert field["default"] == [0.4, 0.7, 1.0]


NAMES = ["torque-steps", "fastener-order", "ring-clocking", "premix", "run-in", "estimate"]


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("accept", ["application/json", "text/plain", "text/csv"])
def test_the_example_is_answered(client: FlaskClient, name: str, accept: str) -> None:
    request = example(BY_NAME[name].inputs)
    answer = client.post(f"/v1/{name}", json=request, headers={"Accept": accept})
    assert answer.status_code == 200, answer.text


def test_batch_shows_lists_row_by_row(client: FlaskClient) -> None:
    torques = {"unit": "N.m", "values": [24, 900, 30], "uncertainty": 1}
    request = {"shared": {"stage_fractions": [0.5, 1]}, "columns": {"final_torque": torques}}
    found = body(client.post("/v1/torque-steps/batch", json=request))
    stages = found["results"]["stages"]
    assert stages["values"] == [[12.0, 24.0], None, [15.0, 30.0]]
    assert stages["uncertainties"][0] == pytest.approx([0.5, 1.0])
    assert stages["uncertainties"][1] is None
    answer = client.post("/v1/torque-steps/batch", json=request, headers={"Accept": "text/csv"})
    assert answer.text.splitlines()[1].startswith("1,ok,12; 24,")


def test_list_of_numbers_is_a_column(client: FlaskClient) -> None:
    fractions = {"values": [[0.5, 1], "0.5;1", None, "0.5;x", [0.5, 1.5]]}
    request = {"shared": {"final_torque": TORQUE}, "columns": {"stage_fractions": fractions}}
    found = body(client.post("/v1/torque-steps/batch", json=request))
    stages = found["results"]["stages"]["values"]
    assert stages[:2] == [[12.0, 24.0]] * 2
    assert stages[3:] == [None, None]
    assert found["status"] == ["ok", "ok", "ok", "refused", "refused"]
    told = [(one["row"], one["code"], one["detail"][:8]) for one in found["problems"]]
    assert told == [(4, "wrong_type", "entry 2:"), (5, "out_of_bounds", "entry 2:")]


def test_sentences_with_commas_are_kept_apart(client: FlaskClient) -> None:
    request = example(BY_NAME["fastener-order"].inputs)
    answer = client.post("/v1/fastener-order", json=request, headers={"Accept": "text/plain"})
    assert "stage 1 of 3: 3, 1, 4, 2; stage 2 of 3" in answer.text


def test_limits_as_columns_of_a_calculation_with_lists(client: FlaskClient) -> None:
    shared = {
        "thread_dia": {"value": 8, "unit": "mm"},
        "stress_area": {"value": 36.6, "unit": "mm2"},
        "proof_stress": {"value": 580, "unit": "MPa"},
        "nut_factor": 0.17,
    }
    columns = {
        "final_torque": {"unit": "N.m", "values": [24, 24]},
        "limit.clamp_over_proof.high": {"values": [0.9, 0.8]},
    }
    request = {"shared": shared, "columns": columns}
    found = body(client.post("/v1/torque-steps/batch", json=request))
    assert found["verdicts"]["clamp_over_proof"]["verdict"] == ["pass", "fail"]
