"""An answer as one flat CSV table, for spreadsheets."""

import csv
import io
from collections.abc import Iterator, Mapping
from typing import Any

from ringland_service.api.printed import REMARK
from ringland_service.api.text import plain
from ringland_service.core.notices import UNSTATED

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
)


FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")


def table(found: Mapping[str, Any]) -> str:
    """Return an answer, as it is to be printed, as one flat CSV table."""
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for row in _rows(found):
        writer.writerow([cell(row.get(name)) for name in COLUMNS])
    return text.getvalue()


def cell(value: Any) -> Any:
    """Return a cell; a text that a spreadsheet would take for a formula is quoted off."""
    if value is None:
        return ""
    if isinstance(value, float):
        return plain(value)
    if isinstance(value, Mapping):
        return _record(value)
    if isinstance(value, (tuple, list)):
        between = " | " if value and isinstance(value[0], Mapping) else "; "
        return between.join(str(cell(one)) for one in value)
    if isinstance(value, str) and value.startswith(FORMULA_STARTS):
        return "'" + value
    return value


def _record(value: Mapping[str, Any]) -> str:
    """Return a record, or a quantity, as the text of one cell."""
    if "value" in value and "unit" in value:
        return f"{plain(value['value'])} {value['unit']}"
    return "; ".join(f"{name}: {cell(one)}" for name, one in value.items())


def _rows(found: Mapping[str, Any]) -> Iterator[dict[str, Any]]:
    for name, value in found["result"].items():
        yield from _result_rows("result", name, value)
    for verdict in found["verdicts"]:
        unit, value = _number(verdict["value"])
        yield {
            "part": "verdict",
            "name": verdict["check"],
            "value": value,
            "unit": unit,
            "uncertainty": _number(verdict["uncertainty"])[1],
            "verdict": verdict["verdict"],
            "low": _number(verdict["limit"]["low"])[1],
            "high": _number(verdict["limit"]["high"])[1],
            "standing": verdict["limit"]["standing"],
            UNSTATED: verdict.get(REMARK),
        }


def _number(value: Any) -> tuple[str, Any]:
    return (value.get("unit", ""), value["value"]) if isinstance(value, Mapping) else ("", value)


def _result_rows(part: str, name: str, value: Any) -> Iterator[dict[str, Any]]:
    if isinstance(value, Mapping) and "values" in value:
        doubts = value.get("uncertainties") or [None] * len(value["values"])
        for i, (one, doubt) in enumerate(zip(value["values"], doubts, strict=True), start=1):
            yield {
                "part": part,
                "name": f"{name} {i}",
                "value": one,
                "unit": value.get("unit", ""),
                "uncertainty": doubt,
                UNSTATED: value.get(REMARK),
            }
    elif isinstance(value, Mapping) and "value" not in value:
        for inner, one in value.items():
            yield from _result_rows(name, inner, one)
    elif isinstance(value, list):
        for i, one in enumerate(value):
            yield from _result_rows(part, f"{name} {i + 1}", one)
    else:
        unit, number = _number(value)
        more = value if isinstance(value, Mapping) else {}
        yield {
            "part": part,
            "name": name,
            "value": number,
            "unit": unit,
            "uncertainty": more.get("uncertainty"),
            UNSTATED: more.get(REMARK),
        }
