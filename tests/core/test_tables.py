"""The bundled tables: every row says what it stands on, and none lies unused."""

import re
import tomllib
from importlib import resources
from itertools import takewhile
from pathlib import Path
from typing import Any

import pytest

from ringland_service.core import calculations, tables
from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation
from ringland_service.core.declare.notices import CAUTIONS
from ringland_service.core.metrology.limits import GRADES, LIMITS, STANDINGS, Grade, LimitRow

TABLES = sorted(
    (p for p in resources.files(tables).iterdir() if p.name.endswith(".toml")),
    key=lambda p: p.name,
)
# What a whole table stands on is said once, in its head.
COMMON = re.compile(r"common practice, no source", re.IGNORECASE)
SOURCE = "\n".join(
    path.read_text("utf-8") for path in sorted(Path(calculations.__file__).parent.rglob("*.py"))
)
KEYS = {key for c in EVERY for key in c.cautions}
PREFIXES = set(re.findall(r'(?:LIMITS|GRADES)\[f"([\w.]+)\{', SOURCE))


def head(text: str) -> str:
    """The comment that a table begins with, its lines joined to one."""
    lines = takewhile(lambda line: line.startswith("#"), text.splitlines())
    return " ".join(line.removeprefix("#").strip() for line in lines)


@pytest.mark.parametrize("table", TABLES, ids=lambda p: p.name)
def test_every_row_has_words_standing_and_source(table: Any) -> None:
    text = table.read_text("utf-8")
    rows = tomllib.loads(text)["row"]
    assert rows
    common = bool(COMMON.search(head(text)))
    for row in rows:
        name = row.get("id", row.get("kind", row.get("step")))
        if "caution" in row:
            assert row["caution"].endswith("."), name
            assert "come first" in head(text)
            continue
        if table.name == "sources.toml":
            continue  # what rows stand on, no rows that stand on something
        assert row["words"], name
        if common and "standing" not in row:
            assert "source" not in row, name
            continue
        assert row.get("standing") in STANDINGS, name
        assert row.get("source"), name


def test_rows_as_read_carry_their_standing_and_source() -> None:
    rows: list[LimitRow | Grade] = [*LIMITS.values(), *GRADES.values()]
    for row in rows:
        assert row.standing in STANDINGS, row.id
        assert row.source, row.id


def test_ids_are_unique() -> None:
    for table in TABLES:
        rows = tomllib.loads(table.read_text("utf-8"))["row"]
        names = [next(row[k] for k in ("id", "token", "step", "kind") if k in row) for row in rows]
        assert len(names) == len(set(names)), table.name


def test_limits_judge_checks_that_exist() -> None:
    checks = {k.name for c in EVERY if isinstance(c, Calculation) for k in c.checks}
    assert {row.check for row in LIMITS.values()} <= checks


def test_limits_have_a_side_and_sides_in_order() -> None:
    for row in LIMITS.values():
        sides = [side for side in (row.low, row.high) if side is not None]
        assert sides, row.id
        assert sides == sorted(sides), row.id


@pytest.mark.parametrize("name", [*LIMITS, *GRADES])
def test_every_limit_and_grade_is_used(name: str) -> None:
    assert f'"{name}"' in SOURCE or any(name.startswith(prefix) for prefix in PREFIXES)


def test_every_caution_rides_with_some_answer() -> None:
    assert set(CAUTIONS) == KEYS
