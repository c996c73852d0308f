"""Many whole requests, one a line: cut to what one request may hold, and their short answers."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from ringland._batch import MOST_BYTES, MOST_ROWS
from ringland._caller import dumps

NOT_REACHED, REFUSED = "not_reached", "refused"


def line_chunks(rows: Sequence[Any], most: int = MOST_ROWS) -> Iterator[bytes]:
    """Yield rows as JSON, one a line, cut to what one request may hold."""
    lines: list[bytes] = []
    size = 0
    for row in rows:
        line = dumps(row) + b"\n"
        if lines and (len(lines) == most or size + len(line) > MOST_BYTES):
            yield b"".join(lines)
            lines, size = [], 0
        lines.append(line)
        size += len(line)
    if lines:
        yield b"".join(lines)


def reached(lines: Sequence[Any]) -> list[Any]:
    """Return the lines that the service had time for; those after them are asked for again."""
    count = 0
    for line in lines:
        if isinstance(line, Mapping) and line.get("status") == NOT_REACHED:
            break
        count += 1
    return list(lines[:count])


def in_full(line: Any) -> Any:
    """Return the answer in a line in the form of a single one; what a line leaves out is empty."""
    if not isinstance(line, Mapping):
        return line
    found = {"basis": [], **line}
    result = line.get("result")
    if isinstance(result, Mapping) and "measure_next" in result:
        opened = [_opening(entry) for entry in result["measure_next"]]
        found["result"] = {**result, "measure_next": opened}
    return found


def _opening(entry: Mapping[str, Any]) -> dict[str, Any]:
    empty = {"description": "", "instrument": ""}
    ways = [[{"field": name, **empty} for name in way] for way in entry["ways"]]
    return {"why": "", "advice": "", **entry, "ways": ways}
