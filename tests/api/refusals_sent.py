"""Many different refused requests; run as a script, prints what each is answered with.

``python tests/api/refusals_sent.py`` is what the test of the hash seeds runs, once a seed.
"""

import json
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).parent))

from asking import ENGINE
from bad_requests import FORMS, QUERIES, UNREADABLE
from bad_values import BOUNDS

from ringland_service.api.reading.query import offers_get
from ringland_service.api.shapes.examples import example as example_of
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Operation
from ringland_service.wsgi import app

JSON, CSV, LINES = "application/json", "text/csv", "application/x-ndjson"
WORDS = ["boar", "strok", "zeta", "alpha", "rul", "limit", "a/2", "a/10", "2", "10", "é", "~"]


@dataclass(frozen=True)
class Sent:
    """A request that is refused, or whose answer holds refusals."""

    name: str
    path: str
    body: bytes | None = None
    kind: str = JSON

    def __str__(self) -> str:
        return self.name


def sent() -> Iterator[Sent]:
    """Yield every request of the tables, and those made from each calculation's own fields."""
    for bad in (*UNREADABLE, *FORMS, *BOUNDS):
        yield Sent(bad.name, f"/v1/{bad.path}", bad.data)
    for path, query, *_ in QUERIES:
        yield Sent(query, f"/v1/{path}?{query}")
    for calculation in CALCULATIONS:
        for name, body in spoilt(calculation).items():
            text = json.dumps(body).encode()
            path = f"/v1/{calculation.name}"
            yield Sent(f"{calculation.name}: {name}", path, text)
            yield Sent(f"{calculation.name}: {name}, a line", f"{path}/batch", text, LINES)
        if offers_get(calculation):
            yield from by_address(calculation)
    yield from batches()
    for address in ("/v1/displacment", "/v1/piston_clearance", "/opnapi.json", "/v1/", "/x"):
        yield Sent(address, address)
        yield Sent(f"{address} in CSV", address, b"bore\n1\n", CSV)


def spoilt(calculation: Operation) -> dict[str, Any]:
    """Return bodies with several faults each, made from a sound one."""
    sound = example_of(calculation.inputs)
    return {
        "nothing": {},
        "unknown": {**sound, **dict.fromkeys(WORDS, 1)},
        "null": dict.fromkeys(sound),
        "texts": dict.fromkeys(sound, "x"),
        "lists": {name: [{"a": 1, "b": 2}, 3] for name in sound},
        "objects": dict.fromkeys(sound, dict.fromkeys(WORDS, 1)),
        "huge": {name: huge(value) for name, value in sound.items()},
        "no units": {name: without_unit(value) for name, value in sound.items()},
        "envelope": {**sound, "rule": 1, "defaults": 2, "limits": {"x": 1}, "measuring": {"y": 1}},
    }


def huge(value: Any) -> Any:
    """Return a value with every number in it far out of bounds."""
    if isinstance(value, dict):
        return {key: huge(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [huge(inner) for inner in value]
    return 1e30 if isinstance(value, (int, float)) else value


def without_unit(value: Any) -> Any:
    """Return a value without any unit in it."""
    if isinstance(value, dict):
        return {key: without_unit(inner) for key, inner in value.items() if key != "unit"}
    return [without_unit(inner) for inner in value] if isinstance(value, list) else value


def by_address(calculation: Operation) -> Iterator[Sent]:
    """Yield questions in the address and in tables, with several faults each."""
    path = f"/v1/{calculation.name}"
    query = "&".join(
        f"{word}=1" for word in ("boar", "strok", "zeta", "alpha", "rul", "limit.x.low")
    )
    yield Sent(f"{path} unknown parameters", f"{path}?{query}")
    yield Sent(f"{path}.txt unknown parameters", f"{path}.txt?{query}&errors=text")
    names = example_of(calculation.inputs)
    yield Sent(f"{path} texts", f"{path}?" + "&".join(f"{name}=x" for name in names))
    table = ",".join(WORDS) + "\n" + ",".join("1" * len(WORDS)) + "\n"
    yield Sent(f"{path} table", f"{path}/batch", table.encode(), CSV)
    columns = {"shared": dict.fromkeys(WORDS, 1), "columns": {"x": {"values": [1]}}}
    yield Sent(f"{path} columns", f"{path}/batch", json.dumps(columns).encode())


def batches() -> Iterator[Sent]:
    """Yield batches that cannot be read as a whole."""
    column = {"values": [68, 69], "unit": "mm"}
    for name, body in {
        "no columns": {},
        "unknown members": {"columns": {"bore": column}, "shared": {}, "boar": 1, "strok": 2},
        "unknown columns": {"columns": dict.fromkeys(WORDS, column)},
        "none": {"columns": dict.fromkeys(WORDS, 1)},
        "unlike": {"columns": {"bore": column, "stroke": {"values": [66], "unit": "mm"}}},
        "twice": {"columns": {"bore": column, "stroke": column}, "shared": ENGINE},
        "unit": {"columns": {"bore": {**column, "unit": "millimeter"}, "stroke": column}},
        "rows": {"columns": {"bore": {**column, "values": ["x", None, {}]}}},
    }.items():  # fmt: skip
        yield Sent(f"batch: {name}", "/v1/displacement/batch", json.dumps(body).encode())


def answers() -> Iterator[tuple[Sent, int, bytes]]:
    """Yield each request with the status and the bytes of its answer; the request's id is told."""
    client = app.test_client()
    for one in sent():
        headers = {"X-Request-ID": "same"}
        if one.body is None:
            answer = client.get(one.path, headers=headers)
        else:
            answer = client.post(one.path, data=one.body, content_type=one.kind, headers=headers)
        yield one, answer.status_code, answer.get_data()


if __name__ == "__main__":
    for request, status, data in answers():
        print(json.dumps([request.name, status, data.decode()]))  # noqa: T201
