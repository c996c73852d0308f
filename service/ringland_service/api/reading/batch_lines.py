"""Batches of one JSON object a line: each answered in its turn and sent before the next.

A line has ``row`` (from 1; lines left blank do not count) and ``status``. One that is ``ok`` is the
answer of a single call, shortened by what is the same in every line: the formulas of the results
in words (``basis``), and under ``measure_next`` what the fields mean and what measures them. One
that is ``refused`` has its ``problem``; one that is ``not_reached`` has nothing more.
"""

import json
from collections.abc import Callable, Iterator
from logging import Logger
from typing import Any

from ringland_service.api import problems
from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading.batch_status import NOT_REACHED, OK, REFUSED
from ringland_service.api.reading.json_reader import read as read_json
from ringland_service.api.reading.row_budget import most_rows
from ringland_service.core.declare import Composite, Declared
from ringland_service.engine.deadline import Deadline

# Made once; lines are many, so they have no blanks between members.
ENCODE = json.JSONEncoder(ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode
Answering = Callable[[Any], dict[str, Any]]


def lines_of(calculation: Declared, body: bytes) -> list[bytes]:
    """Return the lines of a body that are not blank.

    Raises
    ------
    Faulty
        Where there are none, or too many.
    """
    lines = [line for line in body.split(b"\n") if line.strip()]
    most = most_rows(calculation)
    if not 1 <= len(lines) <= most:
        detail = f"1 to {most} lines are needed for {calculation.name}, {len(lines)} given"
        raise Faulty([Fault("wrong_count", detail, {"most": most}, 422)])
    return lines


def answered(
    calculation: Declared,
    lines: list[bytes],
    answer: Answering,
    deadline: Deadline,
    logger: Logger,
) -> Iterator[bytes]:
    """Yield the answers of the lines, one by one; after the deadline that they are not reached."""
    for row, line in enumerate(lines, start=1):
        if deadline.passed():
            text = ENCODE({"row": row, "status": NOT_REACHED})
        else:
            text = _line(calculation, row, line, answer, logger)
        yield text.encode("utf-8", "replace") + b"\n"


def _line(calculation: Declared, row: int, line: bytes, answer: Answering, logger: Logger) -> str:
    try:
        single = answer(read_json(line))
        return ENCODE({"row": row, "status": OK, **shortened(calculation, single)})
    except Faulty as error:
        problem = problems.of_faults(error.faults)
    except Exception:
        # The answer has begun, so its status can no longer say that the service failed.
        logger.exception("line %s of a batch failed", row)
        title, means, to_do = problems.PAGES[problems.BY_STATUS[500]]
        problem = {**problems.body(500, f"{means} {to_do}"), "title": title}
    # The same in every line, and told by the response itself.
    short = {k: v for k, v in problem.items() if k not in ("instance", "request_id")}
    return ENCODE({"row": row, "status": REFUSED, "problem": short})


def shortened(calculation: Declared, single: dict[str, Any]) -> dict[str, Any]:
    """Return the answer of a single call as a line has it."""
    found = {name: value for name, value in single.items() if name != "basis"}
    if isinstance(calculation, Composite):
        purposes = {(step.part, step.purpose) for step in calculation.steps}
        result = dict(found["result"])
        result["measure_next"] = [_opening(entry, purposes) for entry in result["measure_next"]]
        found["result"] = result
    return found


def _opening(entry: dict[str, Any], purposes: set[tuple[str, str]]) -> dict[str, Any]:
    """Return what would open a part: its fields by name; why, where it is not the part's purpose.

    ``GET /v1`` lists the purposes of the parts, and each field in words with its instrument.
    """
    found = {"opens": entry["opens"]}
    if (entry["opens"], entry["why"]) not in purposes:
        found["why"] = entry["why"]
    found["ways"] = [[reading["field"] for reading in way] for way in entry["ways"]]
    if entry["advice"]:
        found["advice"] = entry["advice"]
    return found
