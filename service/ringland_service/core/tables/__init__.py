"""The bundled tables: limits, grades, materials, instruments, evidence and cautions as data."""

import tomllib
from importlib import resources
from typing import Any


def read_table(name: str) -> list[dict[str, Any]]:
    """Return the rows of a bundled table."""
    text = resources.files(__name__).joinpath(f"{name}.toml")
    rows: list[dict[str, Any]] = tomllib.loads(text.read_text("utf-8"))["row"]
    return rows
