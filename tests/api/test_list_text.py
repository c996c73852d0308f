"""Lists in an address, a cell and a column: entries parted by ``;``, each with its place."""

import json
import re
from typing import Any
from urllib.parse import urlencode

import pytest
from asking import post, strict
from flask.testing import FlaskClient

from ringland_service.api.reading.list_text import ListField, list_example, list_pattern, list_text
from ringland_service.api.reading.query import offers_get, parameter_example, text_fields
from ringland_service.api.reading.request import request_schema
from ringland_service.api.writing import forms
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import asked, defaults
from ringland_service.core.declare.fields import ChoicesField, Field, ReadingsField

# The longest address that a spreadsheet asks (common practice, no source).
LONGEST_ADDRESS = 2048
LISTS = [
    (c, name, field)
    for c in CALCULATIONS
    for name, field in text_fields(c).items()
    if isinstance(field, ListField)
]
each_list = pytest.mark.parametrize(
    ("calculation", "name", "field"), LISTS, ids=lambda v: getattr(v, "name", str(v)[:30])
)
SPREAD = "/v1/cylinder-spread"


def test_the_calculations_of_lists_have_an_address() -> None:
    for name in ("cylinder-spread", "pressure-build-up", "bore-survey", "flatness"):
        assert offers_get(BY_NAME[name])


@each_list
def test_the_form_shown_as_right_is_read(calculation: Any, name: str, field: Field) -> None:
    assert isinstance(field, ListField)
    text = list_example(field)
    assert re.fullmatch(list_pattern(field), text)
    core = next(n for n, f in asked(calculation.inputs).items() if f.public(n) == name)
    assert request_schema(calculation).fields[core].deserialize(list_text(field, text))


@each_list
def test_a_comma_is_refused_with_the_right_form(
    client: FlaskClient, calculation: Any, name: str, field: Field
) -> None:
    assert isinstance(field, ListField)
    if not offers_get(calculation):
        return
    right = list_example(field)
    given = "1,2 mm" if ";" not in right else right.replace(";", ",")
    answer = client.get(f"/v1/{calculation.name}", query_string={name: given})
    assert answer.status_code == 400
    (fault,) = [one for one in answer.json["errors"] if one["pointer"] == f"#/{name}"]
    assert "comma" in fault["detail"]
    assert fault["allowed"] == right


@pytest.mark.parametrize(
    ("text", "status", "pointer", "says"),
    [
        ("120;x;95 psi", 400, "#/readings/1", "not a number"),
        ("120;;95 psi", 400, "#/readings/1", "an empty place"),
        ("120;118;95", 400, "#/readings", "no unit"),
        ("120 psi;118 psi", 400, "#/readings/0", "one unit and one"),
        ("120;118;9500 psi", 422, "#/readings/2", "outside 0 to"),
        ("120 psi", 422, "#/readings", "2 to 8 readings"),
        ("120;118 psi +/- x", 400, "#/readings", "not a list of readings"),
        ("120;118 psi +/- 900", 422, "#/readings/uncertainty", "cannot be meant"),
        ("", 400, "#/readings", "not a list of readings"),
        ("120;118 mm", 400, "#/readings/unit", "not a unit of"),
        ("1;" * 1001 + "1 psi", 422, "#/readings", "2000 fit"),
    ],
)
def test_what_is_no_list_names_its_place(
    client: FlaskClient, text: str, status: int, pointer: str, says: str
) -> None:
    answer = client.get(SPREAD, query_string={"readings": text})
    assert answer.status_code == status
    (fault,) = answer.json["errors"]
    assert fault["pointer"] == pointer
    assert says in fault["detail"]


def test_given_twice_shows_one_list(client: FlaskClient) -> None:
    answer = client.get(f"{SPREAD}?readings=120psi&readings=118psi")
    (fault,) = answer.json["errors"]
    assert fault["code"] == "given_twice"
    assert "1180;760;790;1165 kPa" in fault["detail"]


def test_tokens(client: FlaskClient) -> None:
    known = {"cycle": "four_stroke"}
    got = client.get("/v1/diagnosis", query_string={**known, "evidence": "E71; E141"})
    assert strict(got) == post(client, "diagnosis", {**known, "evidence": ["E71", "E141"]})
    for text, status, place in (
        ("E71;E7x", 400, "/1"),
        ("E71;;E141", 400, "/1"),
        ("E71;E71", 422, ""),
    ):
        answer = client.get("/v1/diagnosis", query_string={**known, "evidence": text})
        assert answer.status_code == status
        assert [one["pointer"] for one in answer.json["errors"]] == [f"#/evidence{place}"]


SURVEY = {
    "depth": "8;25;45 mm",
    "pin_axis": "68.062;;68.034 mm +/- 0.004",
    "thrust_axis": "68.094;68.076;68.052 mm +/- 0.004",
}


def test_a_survey_in_every_form(client: FlaskClient) -> None:
    stated = {"unit": "mm", "uncertainty": 0.004}
    body = {
        "depth": {"values": [8, 25, 45], "unit": "mm"},
        "pin_axis": {"values": [68.062, None, 68.034], **stated},
        "thrust_axis": {"values": [68.094, 68.076, 68.052], **stated},
    }
    for suffix, media_type in forms.suffixes(BY_NAME["bore-survey"]).items():
        got = client.get(f"/v1/bore-survey{suffix}", query_string=SURVEY)
        posted = client.post("/v1/bore-survey", json=body, headers={"Accept": media_type})
        assert got.status_code == 200
        assert got.data == posted.data


def test_a_column_of_lists_keeps_each_rows_uncertainty(client: FlaskClient) -> None:
    """Rows alike in their readings, apart in their uncertainty, are not taken together."""
    cells = [[120, 118, 95], "120;118;95", "120;118;95", None, "120;;95", [120, 9500]]
    doubts = [1, 2, None, 1, 1, 1]
    column = {"unit": "psi", "values": cells, "uncertainty": doubts}
    found = post(client, "cylinder-spread/batch", {"columns": {"readings": column}})
    assert found["status"] == ["ok"] * 3 + ["refused"] * 3
    told = [(one["row"], one["code"]) for one in found["problems"]]
    assert told == [(4, "missing_field"), (5, "wrong_type"), (6, "out_of_bounds")]
    assert [one["detail"][:8] for one in found["problems"]][1:] == ["entry 2:"] * 2
    for row, doubt in enumerate(doubts[:3]):
        stated = {} if doubt is None else {"uncertainty": doubt}
        body = {"readings": {"values": [120, 118, 95], "unit": "psi", **stated}}
        alone = post(client, "cylinder-spread", body)["result"]["spread"]
        assert found["results"]["spread"]["values"][row] == alone["value"]
        shown = found["results"]["spread"].get("uncertainties", [None] * 3)[row]
        assert shown == alone.get("uncertainty")


def test_a_sheet_holds_lists(client: FlaskClient) -> None:
    sheet = "readings [psi],readings U [psi]\n120;118;95,1\n120;118;95;121,\n120,1\n"
    answer = client.post(
        f"{SPREAD}/batch",
        data=sheet,
        content_type="text/csv",
        headers={"Accept": "application/json"},
    )
    assert json.loads(answer.data)["status"] == ["ok", "ok", "refused"]


@pytest.mark.parametrize(
    "calculation", [c for c in CALCULATIONS if offers_get(c)], ids=lambda c: c.name
)
def test_full_lists_fit_the_address_of_a_cell(calculation: Any) -> None:
    optional = defaults(calculation.inputs)
    needed = {f.public(n) for n, f in asked(calculation.inputs).items() if n not in optional}
    query = {n: filled(f) for n, f in text_fields(calculation).items() if n in needed}
    assert (
        len(f"http://127.0.0.1:8000/v1/{calculation.name}.txt?{urlencode(query)}")
        <= LONGEST_ADDRESS
    )


def filled(field: Field) -> str:
    """Return the text of a field, a list with as many readings as it may have."""
    if not isinstance(field, ReadingsField):
        return "" if isinstance(field, ChoicesField) else str(parameter_example(field))
    one = f"{field.type.example:.{field.type.digits}f}"
    return f"{';'.join([one] * field.most)} {field.type.kind.unit} +/- {one}"
