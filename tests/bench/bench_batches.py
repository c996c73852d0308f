"""The largest batch of each calculation against the server's timeout, on one worker.

``python tests/bench/bench_batches.py [name ...]`` answers as many of the costliest rows as one
request may have (fewer where its body would be larger than the service reads), each a line of JSON,
and prints seconds. It fails where a batch takes longer than the server's timeout, or does not end
before its own deadline. All of them take about five minutes on one core.
"""

import json
import platform
import sys
import time

from flask.testing import FlaskClient
from large_rows import large_row

from ringland_service.api.app import MOST_BYTES, create_app
from ringland_service.api.row_budget import (
    COST_MS,
    DEFAULT_TIMEOUT_S,
    OTHERS_MS,
    batch_seconds,
    most_rows,
)
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Declared


def largest_batch(client: FlaskClient, of: Declared) -> tuple[int, float, int]:
    """Return rows, seconds and rows not reached of the largest batch."""
    line = json.dumps(large_row(client, of)) + "\n"
    rows = min(most_rows(of), MOST_BYTES // len(line.encode()))
    started = time.perf_counter()
    answer = client.post(
        f"/v1/{of.name}/batch", data=line * rows, content_type="application/x-ndjson"
    )
    late = answered = 0
    for chunk in answer.response:
        late += b'"not_reached"' in chunk[:60]  # type: ignore[operator, index]
        answered += b'"ok"' in chunk[:60]  # type: ignore[operator, index]
    assert answered + late == rows, (of.name, answered, late, rows)
    return rows, time.perf_counter() - started, late


def main(names: list[str]) -> int:
    """Print the table; return how many batches do not end in time."""
    client, over = create_app().test_client(), 0
    print(f"Python {platform.python_version()}; timeout {DEFAULT_TIMEOUT_S} s, deadline"  # noqa: T201
          f" {batch_seconds():g} s")  # fmt: skip
    for of in CALCULATIONS:
        if names and of.name not in names:
            continue
        rows, seconds, late = largest_batch(client, of)
        over += late > 0 or seconds > DEFAULT_TIMEOUT_S
        cost = COST_MS.get(of.name, OTHERS_MS)
        said = f"{late} rows not reached" if late else ""
        print(f"{of.name:<20}{rows:>7} rows {seconds:6.1f} s {seconds / rows * 1e3:8.2f} ms a row,"  # noqa: T201
              f" {cost:5.1f} declared {said}", flush=True)  # fmt: skip
    return over


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
