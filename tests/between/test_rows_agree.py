"""A batch against its rows asked one by one: JSON columns, CSV, a question a line."""

import csv
import io
import json
from typing import Any

import pytest
from asking import post, strict
from comparing import Json, difference, shown, without
from drawing import Drawn, drawn_batches
from flask.testing import FlaskClient
from questions import every

from between_tally import Tally
from ringland_service.api.reading.query import offers_get, text_fields
from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.figures import cell
from ringland_service.api.shapes.looks import AsQuantities, AsQuantity
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation, Operation

RELATION = "batch against single"
LINES, SHEET = "application/x-ndjson", "text/csv"
COLUMNS = [c for c in CALCULATIONS if isinstance(c, Calculation) and offers_get(c)]
each_with_columns = pytest.mark.parametrize("calculation", COLUMNS, ids=lambda c: c.name)


@pytest.fixture(scope="module")
def batches(pytestconfig: pytest.Config) -> Any:
    """Return what gives the random batches of a calculation."""
    count, seed = (pytestconfig.getoption(f"--between-{name}") for name in ("cases", "seed"))
    return lambda calculation: drawn_batches(calculation, max(count // 2, 1), seed)


def rows_of(body: Json) -> list[Json]:
    """Return the requests that the columns of a batch are made of."""
    count = max(len(column["values"]) for column in body["columns"].values())
    return [
        dict(body.get("shared", {}))
        | {
            name: _cell(column, row)
            for name, column in body["columns"].items()
            if column["values"][row] is not None
        }
        for row in range(count)
    ]


def _cell(column: Json, row: int) -> Any:
    value = column["values"][row]
    if "unit" not in column:
        return value
    key = "values" if isinstance(value, list) else "value"
    found = {key: value, "unit": column["unit"]}
    uncertainties = column.get("uncertainty")
    uncertainty = uncertainties[row] if isinstance(uncertainties, list) else uncertainties
    return found if uncertainty is None else found | {"uncertainty": uncertainty}


@each_with_columns
def test_columns(client: FlaskClient, calculation: Calculation, batches: Any, tally: Tally) -> None:
    for i, body in enumerate(batches(calculation)):
        found = post(client, f"{calculation.name}/batch", body)
        for row, one in enumerate(rows_of(body)):
            alone = client.post(f"/v1/{calculation.name}", json=one)
            refused = {entry["row"] for entry in found["problems"]}
            assert (alone.status_code != 200) == (row + 1 in refused), (one, alone.text)
            if alone.status_code == 200:
                try:
                    apart = row_difference(calculation, found, row, strict(alone))
                except AssertionError as error:
                    raise AssertionError(f"{error}\nrow {one}") from error
                tally.add(apart, f"{calculation.name}: batch {i}, row {row}")


def row_difference(calculation: Calculation, found: Json, row: int, alone: Json) -> float:
    """Return the worst difference of one row from the same question alone."""
    worst = 0.0
    for name, member in shapes.members(calculation.outputs).items():
        column, value = found["results"].get(name), alone["result"].get(name)
        here = None if column is None else column["values"][row]
        if isinstance(member.shape, (AsQuantity, AsQuantities)) and value is not None:
            uncertainties = (column or {}).get("uncertainties")
            several = isinstance(member.shape, AsQuantities)
            plural = "uncertainties" if several else "uncertainty"
            uncertainty = None if uncertainties is None else uncertainties[row]
            worst = max(worst, difference(uncertainty, value.get(plural), f"{name}.U", loose=True))
            between = (column or {}).get("intervals")
            told = value.get("intervals" if several else "interval")
            here_too = None if between is None else between[row]
            worst = max(worst, difference(here_too, told, f"{name}.interval", loose=True))
            assert unit_of(column or {}, row) == value["unit"], name
            value = value["values" if several else "value"]
        worst = max(worst, difference(here, value, name))
    return max(worst, verdict_difference(found, row, alone))


def unit_of(column: Json, row: int) -> Any:
    return column["units"][row] if "units" in column else column.get("unit")


def verdict_difference(found: Json, row: int, alone: Json) -> float:
    """Return the worst difference of the margins; the words are the same."""
    worst = 0.0
    judged = {verdict["check"]: verdict for verdict in alone["verdicts"]}
    for check, columns in found["verdicts"].items():
        verdict = judged.get(check)
        word = None if verdict is None else verdict["verdict"]
        assert columns["verdict"][row] == word, (check, columns["verdict"][row], word)
        if verdict is not None:
            margin = verdict["margin"]
            number = margin["value"] if isinstance(margin, dict) else margin
            here = columns["margin"]["values"][row]
            worst = max(worst, difference(here, number, f"{check}.margin"))
            between = columns["interval"][row], verdict["interval"]
            worst = max(worst, difference(*between, f"{check}.interval", loose=True))
    assert judged.keys() <= found["verdicts"].keys()
    return worst


def as_sheet(body: Json) -> str:
    """Return the columns of a batch as CSV with headers ``bore [mm]`` and ``bore U [mm]``."""
    heads: list[str] = []
    columns: list[list[Any]] = []
    count = max(len(column["values"]) for column in body["columns"].values())
    for name, column in body["columns"].items():
        unit = f" [{column['unit']}]" if "unit" in column else ""
        heads.append(name + unit)
        columns.append(column["values"])
        uncertainties = column.get("uncertainty")
        if uncertainties is not None:
            heads.append(f"{name} U{unit}")
            columns.append(
                uncertainties if isinstance(uncertainties, list) else [uncertainties] * count
            )
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(heads)
    cells = zip(*columns, strict=True)
    writer.writerows([_text(value) for value in row] for row in cells)
    return text.getvalue()


def _text(value: Any) -> str:
    """Return a value as a cell: a list parted by ``;``, a gap in it an empty place."""
    if value is None:
        return ""
    if isinstance(value, list):
        return ";".join(_text(one) for one in value)
    if isinstance(value, float):
        return repr(value)
    return str(value).lower() if isinstance(value, bool) else str(value)


@each_with_columns
def test_a_sheet_is_read_and_written_as_columns_are(
    client: FlaskClient, calculation: Calculation, batches: Any, tally: Tally
) -> None:
    path = f"/v1/{calculation.name}/batch"
    for i, body in enumerate(batches(calculation)):
        if not body.get("shared", {}).keys() <= text_fields(calculation).keys():
            continue
        if any([] in column["values"] for column in body["columns"].values()):
            # An empty cell says that nothing is given, not that the list is empty.
            continue
        by_columns = post(client, f"{calculation.name}/batch", body)
        sheet = as_sheet(body).encode("utf-8")
        headers = {"Accept": "application/json"}
        answer = client.post(path, data=sheet, content_type=SHEET, headers=headers)
        assert answer.status_code == 200, (answer.text, sheet)
        by_sheet = strict(answer)
        apart = max(difference(by_sheet[p], by_columns[p], p) for p in ("results", "verdicts"))
        tally.add(apart, f"{calculation.name}: sheet {i}")
        written = client.post(path, data=sheet, content_type=SHEET)
        rows = list(csv.DictReader(io.StringIO(written.text), strict=True))
        assert_written(rows, by_sheet)


def assert_written(rows: list[dict[str, str]], found: Json) -> None:
    """Assert that the sheet answered holds the numbers and words of the JSON."""
    assert len(rows) == found["rows"]
    for name, column in found["results"].items():
        head = f"{name} [{column['unit']}]" if "unit" in column else name
        for row, value in zip(rows, column["values"], strict=True):
            if not isinstance(value, list):
                assert row[head] == str(cell(value)), (head, shown(value))
    for check, columns in found["verdicts"].items():
        words = [row[f"{check} verdict"] or None for row in rows]
        assert words == columns["verdict"]


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_lines(client: FlaskClient, calculation: Operation, questions: Drawn, tally: Tally) -> None:
    known = [asked.body for asked in every() if asked.calculation == calculation.name]
    bodies = [*questions(calculation), *known[:10], {"no_such_field": 1}]
    text = "".join(json.dumps(body) + "\n" for body in bodies)
    answer = client.post(f"/v1/{calculation.name}/batch", data=text, content_type=LINES)
    assert answer.status_code == 200
    lines = answer.text.removesuffix("\n").split("\n")
    assert len(lines) == len(bodies)
    for i, (line, body) in enumerate(zip(lines, bodies, strict=True)):
        alone = client.post(f"/v1/{calculation.name}", json=body)
        here, single = json.loads(line), strict(alone)
        if alone.status_code == 200:
            # A line says more about itself, and shorter what to measure next.
            for part in ("inputs", "verdicts", "warnings"):
                assert here[part] == single[part], body
            told, alone_told = (without(one["result"], "measure_next") for one in (here, single))
            assert told == alone_told, body
        else:
            assert "result" not in here, body
        tally.add(0.0, f"{calculation.name}: line {i}")
