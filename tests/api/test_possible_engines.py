"""What can be is answered: 200 for every possible engine, in every unit and every form.

Together with the tests of bad input this fences the service in from both sides: one that refuses
everything passes those, and fails here.
"""

import json
from typing import Any

import pytest
from asking import strict
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from possible_questions import STRATEGIES
from possible_requests import batches, columns_of, requests, text_of

from ringland_service.api.reading.query import offers_get, text_fields
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation, Declared

BY_NAME = pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
WITH_GET = pytest.mark.parametrize(
    "calculation", [c for c in CALCULATIONS if offers_get(c)], ids=lambda c: c.name
)
pytestmark = pytest.mark.long
LINES = "application/x-ndjson"
EXAMPLES = settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])


def says_something(found: Any) -> bool:
    """Return whether there is a result, a verdict on a reading, or a word on why there is none."""
    return bool(found["result"] or found["verdicts"] or found["warnings"])


@BY_NAME
def test_post(client: FlaskClient, calculation: Declared) -> None:
    @given(requests(calculation))
    @EXAMPLES
    def answers(body: Any) -> None:
        answer = client.post(f"/v1/{calculation.name}", json=body)
        assert answer.status_code == 200, answer.text
        found = strict(answer)
        assert says_something(found)
        assert found["inputs"].keys() >= body.keys() - {"kind"}

    answers()


@WITH_GET
def test_get(client: FlaskClient, calculation: Declared) -> None:
    """Sections and records have no text form; what is left must still be a whole question."""
    scalar = text_fields(calculation)

    @given(requests(calculation).filter(lambda body: body.keys() <= scalar.keys()))
    @EXAMPLES
    def answers(body: Any) -> None:
        query = {name: text_of(value) for name, value in body.items()}
        answer = client.get(f"/v1/{calculation.name}", query_string=query)
        assert answer.status_code == 200, (query, answer.text)
        assert says_something(strict(answer))

    answers()


def takes_columns(calculation: Declared) -> bool:
    return isinstance(calculation, Calculation) and offers_get(calculation)


@pytest.mark.parametrize(
    "calculation", [c for c in CALCULATIONS if takes_columns(c)], ids=lambda c: c.name
)
def test_columns(client: FlaskClient, calculation: Declared) -> None:
    @given(batches(calculation))
    @EXAMPLES
    def answers(body: Any) -> None:
        answer = client.post(f"/v1/{calculation.name}/batch", json=body)
        assert answer.status_code == 200, answer.text
        found = strict(answer)
        assert found["problems"] == []
        assert found["answered"] == found["rows"] == 3

    answers()


@BY_NAME
def test_lines(client: FlaskClient, calculation: Declared) -> None:
    @given(requests(calculation))
    @EXAMPLES
    def answers(body: Any) -> None:
        line = json.dumps(body) + "\n"
        answer = client.post(f"/v1/{calculation.name}/batch", data=line * 2, content_type=LINES)
        assert answer.status_code == 200
        # Only a newline ends a line: a text may hold other line breaks.
        for one in answer.text.removesuffix("\n").split("\n"):
            assert "result" in json.loads(one), one

    answers()


def test_strategies_are_of_calculations_that_there_are() -> None:
    assert STRATEGIES.keys() <= {c.name for c in CALCULATIONS}


def test_columns_of_rows() -> None:
    rows = [
        {"a": {"value": 1.0, "unit": "mm"}, "b": 1},
        {"a": {"value": 2.0, "unit": "mm", "uncertainty": 0.1}},
    ]
    assert columns_of(rows) == {
        "a": {"values": [1.0, 2.0], "unit": "mm", "uncertainty": [None, 0.1]},
        "b": {"values": [1, None]},
    }


def test_columns_of_rows_with_lists() -> None:
    rows = [
        {"a": {"values": [1.0, None], "unit": "mm"}, "b": ["x", "y"]},
        {"a": {"values": [2.0, 3.0], "unit": "mm", "uncertainty": 0.1}},
    ]
    assert columns_of(rows) == {
        "a": {
            "values": [[1.0, None], [2.0, 3.0]],
            "unit": "mm",
            "uncertainty": [None, 0.1],
        },
        "b": {"values": [["x", "y"], None]},
    }
    assert text_of(rows[0]["a"]) == "1; mm"
    assert text_of(rows[1]["a"]) == "2;3 mm +/- 0.1"
    assert text_of(rows[0]["b"]) == "x;y"
