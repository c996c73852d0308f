"""Batches in CSV: headers ``bore [mm]`` and ``bore U [mm]``, what rows share in the address.

A cell of a list holds its entries, parted by ``;``.

Rows count from 1, without the header and without lines left empty.
"""

import csv
import io
import re
from typing import Any

from werkzeug.datastructures import MultiDict

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading import query
from ringland_service.api.reading.batch import too_many
from ringland_service.api.reading.json_reader import MOST_MEMBERS
from ringland_service.api.reading.list_text import ListField
from ringland_service.api.reading.number_text import is_number_text
from ringland_service.core.declare import Calculation
from ringland_service.core.declare import fields as declared

# No two parts of it take the same characters side by side: that would be tried in every split.
_HEADER = re.compile(r"(?P<name>[a-z0-9_.]+)(?P<doubt>\s+U)?(?:\s*\[(?P<unit>[^\]]+)\])?")
LONGEST_HEADER = 200


def read(
    calculation: Calculation, body: bytes, parameters: MultiDict[str, str]
) -> tuple[dict[str, Any], dict[str, str]]:
    """Return a batch in CSV as the JSON form, and the options that shape the answer.

    Raises
    ------
    Faulty
        Where the table cannot be read.
    """
    shared, options = query.as_json(calculation, parameters.items(multi=True), "batch")
    rows = list(_rows(body))
    if len(rows) < 2:
        detail = "a header and at least one row are needed"
        raise Faulty([Fault("wrong_count", detail, None, 422)])
    if faults := too_many(calculation, len(rows) - 1):
        raise Faulty(faults)
    header, *cells = rows
    if len(header) > MOST_MEMBERS:
        detail = f"{len(header)} columns; at most {MOST_MEMBERS} in one table"
        raise Faulty([Fault("too_many", detail, {"most": MOST_MEMBERS})])
    ragged = [i + 1 for i, row in enumerate(cells) if len(row) != len(header)]
    if ragged:
        detail = f"row {ragged[0]} has {len(cells[ragged[0] - 1])} cells, the header {len(header)}"
        raise Faulty([Fault("wrong_count", detail, None, 422)])
    return {"shared": shared, "columns": _columns(calculation, header, cells)}, options


def _rows(body: bytes) -> list[list[str]]:
    try:
        text = body.decode("utf-8-sig")
        return [row for row in csv.reader(io.StringIO(text), strict=True) if row]
    except UnicodeDecodeError as error:
        raise Faulty([Fault("not_utf8", "the body is not UTF-8 text")]) from error
    except csv.Error as error:
        raise Faulty([Fault("not_csv", f"not CSV: {error}")]) from error


def _columns(calculation: Calculation, header: list[str], cells: list[list[str]]) -> dict[str, Any]:
    columns: dict[str, Any] = {}
    doubts: dict[str, list[Any]] = {}
    faults = []
    for i, title in enumerate(header):
        short = title.strip()
        match = _HEADER.fullmatch(short) if len(short) <= LONGEST_HEADER else None
        texts = [row[i].strip() for row in cells]
        if match is None or match["name"] in (doubts if match["doubt"] else columns):
            detail = f"the header {title[:40]!r} is not of the form 'bore [mm]', or stands twice"
            faults.append(Fault("wrong_header", detail, "bore [mm]"))
        elif match["doubt"]:
            doubts[match["name"]] = [_number(text) for text in texts]
        else:
            columns[match["name"]] = _column(calculation, match["name"], match["unit"], texts)
    for name, values in doubts.items():
        if name in columns:
            columns[name]["uncertainty"] = values
        else:
            faults.append(Fault("wrong_header", f"{name} U stands without {name}"))
    if faults:
        raise Faulty(faults)
    return columns


def _column(
    calculation: Calculation, name: str, unit: str | None, texts: list[str]
) -> dict[str, Any]:
    field = query.text_fields(calculation).get(name)
    if isinstance(field, (declared.ChoiceField, declared.TextField, declared.UnitField)):
        return {"values": [_text(text) for text in texts]}
    if isinstance(field, declared.FlagField):
        return {"values": [{"true": True, "false": False, "": None}.get(t, t) for t in texts]}
    # The text of a list is parted where its column is read.
    read = _text if isinstance(field, ListField) else _number
    column: dict[str, Any] = {"values": [read(text) for text in texts]}
    return column | {"unit": unit} if unit else column


def _text(text: str) -> Any:
    return text or None


def _number(text: str) -> Any:
    """Return a cell as a number, None where it is empty, or its text for the reader to refuse."""
    if not text:
        return None
    whole = re.fullmatch(r"[+-]?[0-9]{1,12}", text)
    if whole:
        return int(text)
    return float(text) if is_number_text(text) else text
