"""The costliest row that is asked of a calculation: every reading given, each with uncertainty."""

import copy
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from flask.testing import FlaskClient

from ringland_service.api.shapes.examples import example
from ringland_service.core.declare import Declared

# The largest job that comes with the project.
JOB = Path(__file__).parents[2] / "demo_data" / "orchard_pump.json"
SHIMS = {"values": [round(1.2 + 0.04 * place, 3) for place in range(60)], "unit": "mm"}


def large_row(client: FlaskClient, of: Declared) -> dict[str, Any]:
    """Return the row: each reading that takes an uncertainty has one."""
    row = _sound(of)
    for path in list(_quantities(row)):
        reading = _at(row, path)
        if "uncertainty" in reading or "instrument" in reading:
            continue
        doubted = copy.deepcopy(row)
        values = reading.get("values", [reading.get("value")])
        largest = max(abs(value) for value in values if value is not None)
        _at(doubted, path)["uncertainty"] = max(largest * 1e-3, 1e-3)
        if client.post(f"/v1/{of.name}", json=doubted).status_code == 200:
            row = doubted
    return row


def _sound(of: Declared) -> dict[str, Any]:
    if of.name == "job-card":
        found: dict[str, Any] = json.loads(JOB.read_text("utf-8"))
        return found
    row = example(of.inputs)
    if of.name == "lash-shim":
        kept = ("old_shim", "measured_lash", "lash_low", "lash_high")
        return {**{name: row[name] for name in kept}, "shims_at_hand": copy.deepcopy(SHIMS)}
    return row


def _quantities(data: Any, path: tuple[str | int, ...] = ()) -> Iterator[tuple[str | int, ...]]:
    """Yield the path of every quantity and list of readings."""
    if isinstance(data, dict) and "unit" in data and ("value" in data or "values" in data):
        yield path
    elif isinstance(data, dict):
        for name, inner in data.items():
            yield from _quantities(inner, (*path, name))
    elif isinstance(data, list):
        for place, inner in enumerate(data):
            yield from _quantities(inner, (*path, place))


def _at(data: Any, path: tuple[str | int, ...]) -> Any:
    for key in path:
        data = data[key]
    return data
