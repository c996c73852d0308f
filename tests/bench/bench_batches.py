"""The largest batch of each calculation against the server's timeout, on one worker.

``python tests/bench/bench_batches.py [--rows 50] [name ...]`` answers as many of the costliest rows
as one request may have (fewer where its body would be larger than the service reads), each a line
of JSON, and prints seconds. It fails where a batch takes longer than the server's timeout, or does
not end before its own deadline. With ``--rows`` so many are answered and the time is scaled up.

Seconds are those of the processor, and so is the deadline here: a worker that shares its core with
others takes longer, and its deadline then leaves rows unanswered. All calculations in full take
about eight minutes on one core.
"""

import argparse
import json
import platform
import time

from flask import Flask
from large_rows import large_row

from ringland_service.api.app import MOST_BYTES, create_app
from ringland_service.api.reading.row_budget import (
    COST_MS,
    DEFAULT_TIMEOUT_S,
    OTHERS_MS,
    batch_seconds,
    most_rows,
)
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Declared

LINES = "application/x-ndjson"


def largest_batch(app: Flask, of: Declared, sample: int | None) -> tuple[int, float, int]:
    """Return rows of the largest batch, its seconds, and how many rows were not reached."""
    client = app.test_client()
    line = json.dumps(large_row(client, of)) + "\n"
    most = min(most_rows(of), MOST_BYTES // len(line.encode()))
    rows = min(sample or most, most)
    client.post(f"/v1/{of.name}/batch", data=line, content_type=LINES)
    started = time.process_time()
    answer = client.post(f"/v1/{of.name}/batch", data=line * rows, content_type=LINES)
    words = [json.loads(one)["status"] for one in answer.data.split(b"\n") if one]
    seconds = time.process_time() - started
    assert len(words) == rows, (of.name, len(words), rows)
    assert "refused" not in words, of.name
    return most, seconds * most / rows, words.count("not_reached")


def main() -> int:
    """Print the table; return how many batches do not end in time."""
    parser = argparse.ArgumentParser(description="largest batches against the server's timeout")
    parser.add_argument("names", nargs="*", help="calculations; all without")
    parser.add_argument("--rows", type=int, help="answer so many and scale the time up")
    chosen = parser.parse_args()
    app, over = create_app({"CLOCK": time.process_time}), 0
    head = f"timeout {DEFAULT_TIMEOUT_S} s, deadline {batch_seconds():g} s"
    print(f"Python {platform.python_version()}; {head}")  # noqa: T201
    for of in CALCULATIONS:
        if chosen.names and of.name not in chosen.names:
            continue
        rows, seconds, late = largest_batch(app, of, chosen.rows)
        over += late > 0 or seconds > batch_seconds()
        cost = COST_MS.get(of.name, OTHERS_MS)
        each = f"{seconds / rows * 1e3:7.2f} ms a row, {cost:5.1f} declared"
        said = f", {late} rows not reached" if late else ""
        print(f"{of.name:<20}{rows:>7} rows {seconds:5.1f} s {each}{said}", flush=True)  # noqa: T201
    return over


if __name__ == "__main__":
    raise SystemExit(main())
