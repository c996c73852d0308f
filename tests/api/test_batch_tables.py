"""Batches as lines of JSON and as CSV."""

import csv
import io
import json
from typing import Any

import pytest
from asking import PLAIN, post, problem, strict
from flask.testing import FlaskClient

from ringland_service.api.reading.query import offers_get
from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Composite, Operation

STROKE = {"value": 66, "unit": "mm"}
WITH_COLUMNS = [c for c in PLAIN if offers_get(c)]
LINES, CSV = "application/x-ndjson", "text/csv"


def column(*values: Any, unit: str = "mm", **more: Any) -> dict[str, Any]:
    return {"values": list(values), "unit": unit, **more}


def batch(client: FlaskClient, columns: dict[str, Any], **more: Any) -> Any:
    """Return the answer to a batch of bores, one stroke shared."""
    shared = more.pop("shared", {"stroke": STROKE})
    asked_ = {"shared": shared, "columns": columns}
    return post(client, "displacement/batch", asked_, **more)


def sent(client: FlaskClient, text: str, query: str = "?stroke=66mm", **headers: str) -> Any:
    """Return the response to a batch in CSV."""
    return client.post(
        f"/v1/displacement/batch{query}",
        data=text.encode(),
        content_type=CSV,
        headers={"Accept": "application/json", **headers},
    )


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_lines_are_answers_and_problems_in_order(
    client: FlaskClient, calculation: Operation
) -> None:
    sound = json.dumps(example(calculation.inputs))
    body = f'{sound}\n\n{{"x": 1}}\nnonsense\n{sound}'
    answer = client.post(f"/v1/{calculation.name}/batch", data=body, content_type=LINES)
    assert answer.status_code == 200
    assert answer.content_type == LINES
    found = [json.loads(line) for line in answer.text.splitlines()]
    single = post(client, calculation.name, example(calculation.inputs))
    assert [line.pop("row") for line in found] == [1, 2, 3, 4]
    assert [line.pop("status") for line in found] == ["ok", "refused", "refused", "ok"]
    assert found[0] == found[3] == shortened(calculation, single)
    assert [entry["problem"]["status"] for entry in found[1:3]] == [400, 400]
    assert "#/x" in {fault["pointer"] for fault in found[1]["problem"]["errors"]}
    assert found[2]["problem"]["errors"][0]["code"] == "not_json"


def shortened(calculation: Operation, single: Any) -> Any:
    """Return a single answer as a line has it, by its own description."""
    del single["basis"]
    if isinstance(calculation, Composite):
        purposes = {step.part: step.purpose for step in calculation.steps}
        for entry in single["result"]["measure_next"]:
            entry["ways"] = [[reading["field"] for reading in way] for way in entry["ways"]]
            if entry["why"] == purposes.get(entry["opens"]):
                del entry["why"]
            if not entry["advice"]:
                del entry["advice"]
    return single


def test_lines_take_units(client: FlaskClient) -> None:
    body = json.dumps({"bore": {"value": 68, "unit": "mm"}, "stroke": STROKE})
    answer = client.post("/v1/displacement/batch?units=us", data=body, content_type=LINES)
    assert json.loads(answer.text)["result"]["displacement"]["unit"] == "in3"


@pytest.mark.parametrize("body", [b"", b"\n \n"])
def test_no_lines_are_refused(client: FlaskClient, body: bytes) -> None:
    answer = client.post("/v1/displacement/batch", data=body, content_type=LINES)
    problem(answer, 422)


def test_lists_take_lines_alone(client: FlaskClient) -> None:
    for kind in (CSV, "application/json"):
        problem(client.post("/v1/job-card/batch", data=b"{}", content_type=kind), 415)


def test_csv_answers_as_the_same_columns_in_json(client: FlaskClient) -> None:
    text = (
        "bore [mm],bore U [mm],cylinder_count,limit.class_limit.high [cc]\n68,0.004,1,240\n2,,1,\n"
    )
    found = strict(sent(client, text))
    columns = {
        "bore": column(68, 2, uncertainty=[0.004, None]),
        "cylinder_count": {"values": [1, 1]},
        "limit.class_limit.high": column(240, None, unit="cc"),
    }
    assert found == batch(client, columns)
    assert found["refused"] == 1


@pytest.mark.parametrize(
    "text",
    [
        "\ufeffbore [mm]\r\n68\r\n",
        "bore [mm]\n68",
        'bore [mm]\n"68"\n',
        "bore [mm]\n\n68\n\n",
        " bore  [mm] \n 68 \n",
        "bore[mm]\n+6.8e1\n",
        "bore [in]\n2.677165354330709\n",
    ],
)
def test_csv_as_spreadsheets_write_it(client: FlaskClient, text: str) -> None:
    found = strict(sent(client, text))
    assert found["rows"] == 1
    assert found["results"]["displacement"]["values"][0] == pytest.approx(239.690953, rel=1e-8)


@pytest.mark.parametrize(
    ("text", "status", "says"),
    [
        ("", 422, "a header and at least one row"),
        ("bore [mm]\n", 422, "a header and at least one row"),
        ("bore [mm],cylinder_count\n68\n", 422, "row 1 has 1 cells, the header 2"),
        ("bore [mm],cylinder_count\n68,1\n68,1,1\n", 422, "row 2 has 3 cells"),
        ("bore [mm],bore [mm]\n68,68\n", 400, "stands twice"),
        ("Bore [mm]\n68\n", 400, "not of the form 'bore [mm]'"),
        ("bore mm\n68\n", 400, "not of the form 'bore [mm]'"),
        ("boar [mm]\n68\n", 400, "no such column"),
        ("bore\n68\n", 400, "unit is missing"),
        ("bore [cc]\n68\n", 400, "not a unit of length"),
        ("bore U [mm]\n0.1\n", 400, "stands without bore"),
        ('bore [mm]\n"68\n', 400, "not CSV"),
    ],
)
def test_csv_refused(client: FlaskClient, text: str, status: int, says: str) -> None:
    found = problem(sent(client, text), status)
    assert says in found["detail"]


def test_csv_in_latin_1_is_refused(client: FlaskClient) -> None:
    body = "bore [mm]\n6é\n".encode("latin-1")
    answer = client.post("/v1/displacement/batch", data=body, content_type=CSV)
    assert problem(answer, 400)["errors"][0]["code"] == "not_utf8"


def test_csv_column_and_address_clash(client: FlaskClient) -> None:
    answer = sent(client, "bore [mm],stroke [mm]\n68,66\n")
    (fault,) = problem(answer, 422)["errors"]
    assert fault["code"] == "given_twice"


def test_csv_bad_cells_are_problems_of_their_rows(client: FlaskClient) -> None:
    found = strict(sent(client, "bore [mm],cylinder_count\n68,1\nabc,1\n68,x\nNaN,1\n1_0,1\n"))
    assert [entry["row"] for entry in found["problems"]] == [2, 3, 4, 5]
    assert "'abc'" in found["problems"][0]["detail"]
    assert found["answered"] == 1


def test_csv_out_is_one_flat_table(client: FlaskClient) -> None:
    answer = sent(client, "bore [mm]\n68\n2\n", Accept="text/csv")
    assert answer.content_type == "text/csv; charset=utf-8"
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    assert [row["row"] for row in rows] == ["1", "2"]
    assert float(rows[0]["displacement [cc]"]) == pytest.approx(239.690953, rel=1e-8)
    assert rows[0]["problem"] == ""
    assert rows[1]["displacement [cc]"] == ""
    assert "20 to 160 mm" in rows[1]["problem"]


def test_json_in_csv_out(client: FlaskClient) -> None:
    body = {"columns": {"bore": column(68)}, "shared": {"stroke": STROKE}}
    answer = client.post("/v1/displacement/batch", json=body, headers={"Accept": CSV})
    assert answer.mimetype == CSV
    image = client.post("/v1/displacement/batch", json=body, headers={"Accept": "image/png"})
    problem(image, 406)


def test_a_name_from_outside_is_no_formula_in_csv(client: FlaskClient) -> None:
    body = {"columns": {"value": column(1), "=1+1": {"values": [1]}}, "shared": {"to": "mm"}}
    answer = client.post("/v1/convert/batch", json=body, headers={"Accept": CSV})
    assert all(
        not cell.startswith(("=", "+", "-", "@"))
        for row in csv.reader(io.StringIO(answer.text))
        for cell in row
    )
