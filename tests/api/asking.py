"""Asking the service in process, and reading what it says with a reader stricter than its own."""

import json
from collections.abc import Iterator
from typing import Any, NoReturn

from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation, Composite

PROBLEM = "application/problem+json"
PLAIN = [c for c in CALCULATIONS if isinstance(c, Calculation)]
COMPOSITES = [c for c in CALCULATIONS if isinstance(c, Composite)]
BORE = {"value": 68.0, "unit": "mm"}
STROKE = {"value": 66.0, "unit": "mm"}
ENGINE = {"bore": BORE, "stroke": STROKE}


def _no_constant(text: str) -> NoReturn:
    raise AssertionError(f"{text} in an answer is not JSON")


def strict(answer: TestResponse) -> Any:
    """Return the JSON of a response; NaN or Infinity in it fails."""
    return json.loads(answer.get_data().decode("utf-8"), parse_constant=_no_constant)


def post(client: FlaskClient, name: str, asked: Any, status: int = 200, **more: Any) -> Any:
    """Return the JSON of the answer to a POST, its status as told."""
    answer = client.post(f"/v1/{name}", json=asked, **more)
    assert answer.status_code == status, answer.text
    return strict(answer)


def get(client: FlaskClient, name: str, asked: dict[str, str], status: int = 200) -> TestResponse:
    """Return the answer to a GET, its status as told."""
    answer = client.get(f"/v1/{name}", query_string=asked)
    assert answer.status_code == status, answer.text
    return answer


def problem(answer: TestResponse, status: int) -> Any:
    """Return the members of a problem; what every problem has is checked here."""
    assert answer.status_code == status, answer.text
    assert answer.content_type == PROBLEM
    found = strict(answer)
    assert found["status"] == status
    assert found["title"]
    assert found["detail"]
    assert found["request_id"] == answer.headers["X-Request-ID"]
    assert answer.headers["Cache-Control"] == "no-store"
    return found


def operations(document: Any) -> Iterator[tuple[str, str, Any]]:
    """Yield path, method and operation of an OpenAPI document."""
    for path, item in document["paths"].items():
        for method, operation in item.items():
            if method in ("get", "post"):
                yield path, method, operation
