"""Ratios to bare Flask, in one process and one run: ``python tests/bench/bench_ratios.py``.

Each row times the same WSGI call path. The baseline is a Flask route that reads the JSON body,
does the arithmetic of displacement on bare numbers and answers one number.
"""

import io
import json
import platform
import timeit
from collections.abc import Callable
from typing import Any

from flask import Flask, request

from ringland_service.wsgi import app

Wsgi = Callable[..., Any]
NUMBER, REPEAT = 500, 7


def bare() -> Flask:
    """Return the baseline: displacement on bare numbers, nothing checked."""
    flask_app = Flask("bare")

    @flask_app.post("/displacement")
    def displacement() -> dict[str, float]:
        data = request.get_json()
        return {"displacement": 0.785398163 * data["bore"] ** 2 * data["stroke"] / 1000}

    return flask_app


def quantity(value: float, unit: str = "mm", **more: Any) -> dict[str, Any]:
    """Return a quantity in JSON form."""
    return {"value": value, "unit": unit, **more}


def call(wsgi: Wsgi, path: str, body: bytes) -> bytes:
    """Make one POST through the WSGI interface and return the body of a 200."""
    environ = {
        "REQUEST_METHOD": "POST",
        "SCRIPT_NAME": "",
        "PATH_INFO": path,
        "QUERY_STRING": "",
        "SERVER_NAME": "bench",
        "SERVER_PORT": "80",
        "SERVER_PROTOCOL": "HTTP/1.1",
        "HTTP_HOST": "bench",
        "CONTENT_TYPE": "application/json",
        "CONTENT_LENGTH": str(len(body)),
        "wsgi.input": io.BytesIO(body),
        "wsgi.errors": io.StringIO(),
        "wsgi.url_scheme": "http",
        "wsgi.version": (1, 0),
        "wsgi.multithread": False,
        "wsgi.multiprocess": False,
        "wsgi.run_once": False,
    }
    status: list[str] = []
    answer = b"".join(wsgi(environ, lambda line, headers, exc_info=None: status.append(line)))
    assert status[0].startswith("200"), (status, answer)
    return answer


def best_us(function: Callable[[], Any]) -> float:
    """Return the best time of a call, in microseconds."""
    return min(timeit.repeat(function, number=NUMBER, repeat=REPEAT)) / NUMBER * 1e6


BORE = quantity(68.0)
UNCERTAINTYED = quantity(68.05, uncertainty=0.007)
PISTON = quantity(68.0, uncertainty=0.005)
CASES: dict[str, tuple[str, dict[str, Any]]] = {
    "displacement": ("/v1/displacement", {"bore": BORE, "stroke": quantity(66.0)}),
    "displacement, uncertainty and class limit": (
        "/v1/displacement",
        {
            "bore": quantity(68.0, uncertainty=0.01),
            "stroke": quantity(66.0),
            "class_limit": quantity(250.0, "cc"),
        },
    ),
    "piston clearance": (
        "/v1/piston-clearance",
        {"bore_largest": quantity(68.05), "piston": quantity(68.0), "cycle": "four_stroke"},
    ),
    "piston clearance, uncertainty on both": (
        "/v1/piston-clearance",
        {"bore_largest": UNCERTAINTYED, "piston_size": PISTON, "cycle": "four_stroke"},
    ),
}
ROWS = 10_000


def batch_us() -> float:
    """Return the time of one row of a batch of 10,000, in microseconds."""
    bores = {"unit": "mm", "values": [60.0 + row / 1000 for row in range(ROWS)]}
    body = json.dumps({"shared": {"stroke": quantity(66.0)}, "columns": {"bore": bores}}).encode()
    path = "/v1/displacement/batch"
    return min(timeit.repeat(lambda: call(app, path, body), number=1, repeat=5)) / ROWS * 1e6


def main() -> None:
    """Print the table of ratios."""
    small = json.dumps({"bore": 68.0, "stroke": 66.0}).encode()
    baseline_app = bare()
    base = best_us(lambda: call(baseline_app, "/displacement", small))
    print(f"Python {platform.python_version()}; bare Flask {base:.0f} µs a call = 1.0")  # noqa: T201
    for name, (path, data) in CASES.items():
        body = json.dumps(data).encode()
        time_us = best_us(lambda path=path, body=body: call(app, path, body))  # type: ignore[misc]
        print(f"{name:<38} {time_us:6.0f} µs  {time_us / base:5.2f}")  # noqa: T201
    row = batch_us()
    print(f"{'displacement, a row of a batch':<38} {row:6.2f} µs  {row / base:5.3f}")  # noqa: T201


if __name__ == "__main__":
    main()
