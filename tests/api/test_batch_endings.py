"""Batches end: what is done in time is answered, the rest says that it is not reached."""

import csv
import io
import json
from typing import Any

import pytest
from asking import PLAIN, STROKE, post, strict
from flask.testing import FlaskClient
from ticking import Clock, ending_after
from werkzeug.test import EnvironBuilder

from ringland_service.api.app import create_app
from ringland_service.api.reading.query import offers_get, text_fields
from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Calculation, Declared

LINES, CSV = "application/x-ndjson", "text/csv"
BY = pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
SINGLY = [c for c in PLAIN if offers_get(c) and not c.columns]


def lines(client: FlaskClient, name: str, body: str) -> list[Any]:
    answer = client.post(f"/v1/{name}/batch", data=body, content_type=LINES)
    assert answer.status_code == 200, answer.text
    return [json.loads(line) for line in answer.text.removesuffix("\n").split("\n")]


def a_column(of: Calculation, rows: int) -> tuple[dict[str, Any], str, dict[str, Any]]:
    """Return what is shared of a sound request, and one field of it as a column."""
    sound = example(of.inputs)
    name = next(name for name in sound if name in text_fields(of))
    value = sound.pop(name)
    if not isinstance(value, dict):
        return sound, name, {"values": [value] * rows}
    cell = value.get("value", value.get("values"))
    return sound, name, {"values": [cell] * rows, "unit": value["unit"]}


@BY
def test_lines_after_the_deadline_are_not_reached(calculation: Declared) -> None:
    line = json.dumps(example(calculation.inputs)) + "\n"
    with ending_after(2) as client:
        found = lines(client, calculation.name, line * 4)
    assert [(one["row"], one["status"]) for one in found] == [
        (1, "ok"), (2, "ok"), (3, "not_reached"), (4, "not_reached"),
    ]  # fmt: skip
    assert found[2] == {"row": 3, "status": "not_reached"}


@pytest.mark.parametrize("calculation", SINGLY, ids=lambda c: c.name)
def test_rows_that_go_singly_end_between_rows(calculation: Calculation) -> None:
    sound, name, column = a_column(calculation, 5)
    body = {"shared": sound, "columns": {name: column}}
    with ending_after(3) as client:
        found = post(client, f"{calculation.name}/batch", body)
    reached = found["status"].index("not_reached")
    # A group of rows looks at the clock once more than its rows do.
    assert reached in (2, 3)
    assert found["status"] == ["ok"] * reached + ["not_reached"] * (5 - reached)
    assert (found["answered"], found["not_reached"]) == (reached, 5 - reached)
    assert (found["refused"], found["problems"]) == (0, [])
    for shown in found["results"].values():
        assert shown["values"][reached:] == [None] * (5 - reached)


def test_rows_in_columns_end_between_groups() -> None:
    """Three groups by which fields are given; the last has no time left, a bad row is told."""
    new = [None, None, 68.5, 68.5, "x"]
    columns = {
        "bore": {"values": [68.0] * 5, "unit": "mm"},
        "new_bore": {"values": new, "unit": "mm"},
    }
    body = {"shared": {"stroke": STROKE}, "columns": columns}
    with ending_after(1) as client:
        found = post(client, "displacement/batch", body)
        assert found["status"] == ["ok", "ok", "not_reached", "not_reached", "refused"]
        counts = {name: found[name] for name in ("answered", "refused", "not_reached", "rows")}
        assert counts == {"answered": 2, "refused": 1, "not_reached": 2, "rows": 5}
        values = found["results"]["displacement"]["values"]
        assert [value is None for value in values] == [False, False, True, True, True]


def test_readings_by_instrument_end_between_rows() -> None:
    bore = {"value": 68, "unit": "mm", "instrument": "gauge"}
    gauge = {"id": "gauge", "kind": "bore_gauge"}
    shared = {"bore": bore, "measuring": {"instruments": [gauge]}}
    columns = {"stroke": {"values": [66.0] * 6, "unit": "mm"}}
    with ending_after(4) as client:
        found = post(client, "displacement/batch", {"shared": shared, "columns": columns})
    assert found["status"] == ["ok"] * 3 + ["not_reached"] * 3


def test_csv_says_what_is_not_reached() -> None:
    with ending_after(0) as client:
        answer = client.post(
            "/v1/displacement/batch?stroke=66mm", data="bore [mm]\n68\n2\n", content_type=CSV
        )
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    assert [(row["row"], row["status"]) for row in rows] == [("1", "not_reached"), ("2", "refused")]
    assert rows[0]["problem"] == ""


def test_in_time_every_row_is_answered(client: FlaskClient) -> None:
    body = {"shared": {"stroke": STROKE}, "columns": {"bore": {"values": [68.0], "unit": "mm"}}}
    found = post(client, "displacement/batch", body)
    assert (found["status"], found["not_reached"]) == (["ok"], 0)


@pytest.mark.parametrize("name", ["displacement", "job-card"])
def test_a_line_leaves_before_the_next_is_worked_out(name: str) -> None:
    """Time runs out once the first line is in hand: the second was not begun before that."""
    clock = Clock()
    app = create_app({"BATCH_SECONDS": 10.0, "CLOCK": clock})
    line = json.dumps(example(BY_NAME[name].inputs)) + "\n"
    environ = EnvironBuilder(
        path=f"/v1/{name}/batch", method="POST", data=line * 3, content_type=LINES
    ).get_environ()
    began: list[tuple[str, Any]] = []

    def start(status: str, headers: Any, *more: Any) -> Any:
        began.append((status, dict(headers)))
        return lambda data: None

    body = iter(app.wsgi_app(environ, start))
    first = json.loads(next(body))
    assert (began[0][0], first["status"]) == ("200 OK", "ok")
    assert "Content-Length" not in began[0][1]
    clock.now = 11.0
    assert [json.loads(one)["status"] for one in body] == ["not_reached"] * 2


@pytest.mark.parametrize("how", ["raises", "has no finite number"])
def test_a_failure_within_a_line_is_the_problem_of_that_line(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture, how: str
) -> None:
    """The answer has begun, so it cannot turn into a 500; the other lines stand."""
    from ringland_service.api.routes import answering

    whole = answering.answered

    def failing(calculation: Declared, data: Any, options: dict[str, str]) -> dict[str, Any]:
        if data["bore"]["value"] == 69:
            if how == "raises":
                raise ZeroDivisionError("made for this test")
            return {**whole(calculation, data, options), "made_for_this_test": float("nan")}
        return whole(calculation, data, options)

    monkeypatch.setattr(answering, "answered", failing)
    client = create_app().test_client()
    rows = [{"bore": {"value": bore, "unit": "mm"}, "stroke": STROKE} for bore in (68, 69, 70)]
    found = lines(client, "displacement", "\n".join(map(json.dumps, rows)))
    assert [one["status"] for one in found] == ["ok", "refused", "ok"]
    assert found[1]["problem"]["status"] == 500
    assert found[1]["problem"]["type"] == "/problems/server-fault"
    assert "line 2 of a batch failed" in caplog.text


@pytest.mark.parametrize("text", ["0", "x", "1.5", ""])
def test_a_timeout_that_is_none_stops_the_start(monkeypatch: pytest.MonkeyPatch, text: str) -> None:
    monkeypatch.setenv("RINGLAND_TIMEOUT_S", text)
    with pytest.raises(ValueError, match="RINGLAND_TIMEOUT_S"):
        create_app()


def test_the_deadline_follows_the_servers_timeout(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("RINGLAND_TIMEOUT_S", raising=False)
    assert create_app().config["BATCH_SECONDS"] == 18.0
    monkeypatch.setenv("RINGLAND_TIMEOUT_S", "10")
    assert create_app().config["BATCH_SECONDS"] == 6.0


def test_a_refusal_of_the_whole_comes_before_any_line(client: FlaskClient) -> None:
    answer = client.post("/v1/job-card/batch", data=b"\n", content_type=LINES)
    assert (answer.status_code, strict(answer)["status"]) == (422, 422)
