"""An answer as one flat CSV table, for spreadsheets."""

import csv
import io
from collections.abc import Iterator, Sequence
from typing import cast

from ringland_service.api.json_types import AnswerJson, VerdictJson
from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.base import Row
from ringland_service.api.shapes.figures import REMARK, cell
from ringland_service.api.shapes.looks import interval_ends, rows_of
from ringland_service.api.writing.text import quantity_or_number, reading_text
from ringland_service.core.declare import Calculation, Composite, Operation
from ringland_service.core.declare.notices import UNSTATED

COLUMNS = (
    "part",
    "name",
    "value",
    "unit",
    "uncertainty",
    "verdict",
    "low",
    "high",
    "standing",
    UNSTATED,
    "of",
    "why",
    "interval_low",
    "interval_high",
)


def table(calculation: Operation, found: AnswerJson) -> str:
    """Return an answer, as it is to be printed, as one flat CSV table.

    Results, what to measure next, verdicts, warnings.
    """
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for row in _rows(calculation, found):
        writer.writerow([cell(row.get(name)) for name in COLUMNS])
    return text.getvalue()


def _rows(calculation: Operation, found: AnswerJson) -> Iterator[Row]:
    result = found["result"]
    if isinstance(calculation, Composite):
        for part, single in shapes.parts(calculation).items():
            if part in result:
                yield from rows_of(part, shapes.given(single.outputs, result[part]))
        apart = {*shapes.parts(calculation), "measure_next"}
        for name in (name for name in result if name not in apart):
            yield from _plain_records(name, result[name])
        yield from _needs(result["measure_next"])
    else:
        outputs = cast(Calculation, calculation).outputs
        yield from rows_of("result", shapes.given(outputs, result))
    for verdict in found["verdicts"]:
        yield _verdict(verdict)
    for warning in found["warnings"]:
        yield {"part": "warning", "name": warning["field"], "value": warning["message"]}


def _verdict(verdict: VerdictJson) -> Row:
    limit = verdict["limit"]
    value, unit = quantity_or_number(verdict["value"])
    return {
        "part": "verdict",
        "name": verdict["check"],
        "value": value,
        "unit": unit,
        "uncertainty": quantity_or_number(verdict["uncertainty"])[0],
        "verdict": verdict["verdict"],
        "low": quantity_or_number(limit["low"])[0],
        "high": quantity_or_number(limit["high"])[0],
        "standing": limit["standing"],
        UNSTATED: verdict.get(REMARK),
        "of": verdict.get("of"),
        "why": verdict.get("why"),
        **interval_ends(verdict["interval"]),
    }


def _plain_records(name: str, rows: Sequence[AnswerJson]) -> Iterator[Row]:
    """Yield what a composite says of itself, such as the parts that fall out: records of texts."""
    for i, row in enumerate(rows, 1):
        for key, value in row.items():
            yield {"part": f"{name} {i}", "name": key, "value": value}


def _needs(items: Sequence[AnswerJson]) -> Iterator[Row]:
    """Yield what to measure next; each reading of each way by its field, in words."""
    for i, item in enumerate(items, 1):
        part = f"measure_next {i}"
        for name in ("opens", "why", "advice"):
            yield {"part": part, "name": name, "value": item[name]}
        for k, way in enumerate(item["ways"], 1):
            for reading in way:
                told = reading_text(reading)
                yield {"part": f"{part}.ways {k}", "name": reading["field"], "value": told}
