"""An answer as one flat CSV table, for spreadsheets."""

import csv
import io
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, cast

from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.members import Member, Shape
from ringland_service.api.writing.printed import REMARK
from ringland_service.api.writing.text import (
    plain,
    quantity_or_number,
    reading_text,
    told_list,
    told_value,
)
from ringland_service.core.declare import Calculation, Composite, Declared
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
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")

Row = dict[str, Any]


def table(calculation: Declared, found: Mapping[str, Any]) -> str:
    """Return an answer, as it is to be printed, as one flat CSV table.

    Results, what to measure next, verdicts, warnings.
    """
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for row in _rows(calculation, found):
        writer.writerow([cell(row.get(name)) for name in COLUMNS])
    return text.getvalue()


def cell(value: Any) -> Any:
    """Return a bare value, or a list of them, as a cell.

    A text that a spreadsheet would take for a formula is quoted off.
    """
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, float):
        return plain(value)
    if isinstance(value, (tuple, list)):
        return "; ".join(str(cell(one)) for one in value)
    if isinstance(value, str) and value.startswith(FORMULA_STARTS):
        return "'" + value
    return value


def column_cell(member: Member, value: Any) -> Any:
    """Return an entry of the column of a result as a cell: a list of records, or bare values."""
    if member.shape is Shape.RECORDS and value is not None:
        return _in_text(member, value)
    return cell(value)


def _record(member: Member, values: Mapping[str, Any]) -> str:
    return "; ".join(f"{m.name}: {_in_text(m, value)}" for m, value in member.given(values))


def _in_text(member: Member, value: Any) -> str:
    """Return a member of a record within the text of a cell."""
    if member.shape is Shape.QUANTITY:
        return f"{plain(value['value'])} {value['unit']}"
    if member.shape is Shape.QUANTITIES:
        return f"{cell(value['values'])} {value['unit']}"
    if member.shape is Shape.SECTION:
        return _record(member, value)
    if member.shape is Shape.RECORDS:
        return " | ".join(_record(member, row) for row in value)
    return str(cell(value))


def _rows(calculation: Declared, found: Mapping[str, Any]) -> Iterator[Row]:
    result = found["result"]
    if isinstance(calculation, Composite):
        for part, single in shapes.parts(calculation).items():
            if part in result:
                yield from _rows_of(part, shapes.given(single.outputs, result[part]))
        apart = {*shapes.parts(calculation), "measure_next"}
        for name in (name for name in result if name not in apart):
            yield from _plain_records(name, result[name])
        yield from _needs(result["measure_next"])
    else:
        outputs = cast(Calculation, calculation).outputs
        yield from _rows_of("result", shapes.given(outputs, result))
    for verdict in found["verdicts"]:
        yield _verdict(verdict)
    for warning in found["warnings"]:
        yield {"part": "warning", "name": warning["field"], "value": warning["message"]}


def _verdict(verdict: Mapping[str, Any]) -> Row:
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
        **_ends(verdict["interval"]),
    }


def _ends(interval: Mapping[str, float] | None) -> Row:
    """Return both ends of a 95 % interval, where there is one."""
    return {f"interval_{end}": one for end, one in (interval or {}).items()}


def _plain_records(name: str, rows: Any) -> Iterator[Row]:
    """Yield what a composite says of itself, such as the parts that fall out: records of texts."""
    for i, row in enumerate(rows, 1):
        for key, value in row.items():
            yield {"part": f"{name} {i}", "name": key, "value": value}


def _needs(items: Any) -> Iterator[Row]:
    """Yield what to measure next; each reading of each way by its field, in words."""
    for i, item in enumerate(items, 1):
        part = f"measure_next {i}"
        for name in ("opens", "why", "advice"):
            yield {"part": part, "name": name, "value": item[name]}
        for k, way in enumerate(item["ways"], 1):
            for reading in way:
                told = reading_text(reading)
                yield {"part": f"{part}.ways {k}", "name": reading["field"], "value": told}


def _rows_of(part: str, given: Iterable[tuple[Member, Any]]) -> Iterator[Row]:
    for member, value in given:
        yield from _member_rows(part, member, value)


def _member_rows(part: str, member: Member, value: Any) -> Iterator[Row]:
    name, shape = member.name, member.shape
    if shape is Shape.RECORDS:
        for i, row in enumerate(value, 1):
            yield from _rows_of(_within(part, f"{name} {i}"), member.given(row))
    elif shape is Shape.SECTION:
        yield from _rows_of(_within(part, name), member.given(value))
    elif shape in (Shape.QUANTITIES, Shape.LIST):
        told = told_list(value)
        none = [None] * len(told["values"])
        doubts, between = told.get("uncertainties") or none, told.get("intervals") or none
        each = zip(told["values"], doubts, between, strict=True)
        for i, (one, doubt, interval) in enumerate(each, 1):
            row = {"part": part, "name": f"{name} {i}", "value": one, "uncertainty": doubt}
            yield row | {"unit": told.get("unit"), UNSTATED: told.get(REMARK)} | _ends(interval)
    else:
        told = told_value(value)
        row = {"part": part, "name": name, "value": told["value"], "unit": told.get("unit")}
        row |= {"uncertainty": told.get("uncertainty"), UNSTATED: told.get(REMARK)}
        yield row | _ends(told.get("interval"))


def _within(part: str, name: str) -> str:
    """Return the name of a part of a part; the one part of a single answer goes unsaid."""
    return name if part == "result" else f"{part}.{name}"
