"""Every answer in every form: 200, readable, the numbers of the JSON, nothing of Python in it.

The JSON is walked here without the declarations, so that the service's way of walking it by them
has a witness of another kind.
"""

import csv
import io
import re
from collections import Counter
from collections.abc import Iterator
from typing import Any
from xml.etree import ElementTree

import pytest
from asking import post, strict
from drawing import Drawn
from flask.testing import FlaskClient
from questions import Asked, demo_files, every, examples

from between_tally import Tally
from page_reader import Reader
from ringland_service.api.routes.calculation_routes import as_text
from ringland_service.api.shapes import figures, looks
from ringland_service.api.shapes import members as shapes
from ringland_service.api.writing import flat_table, forms, text
from ringland_service.core.calculations import BY_NAME, CALCULATIONS, EVERY
from ringland_service.core.declare import Calculation, Operation
from ringland_service.core.declare.notices import UNSTATED
from ringland_service.core.metrology.conformity import WORDS
from ringland_service.core.metrology.unjudged import WHY

RELATION = "every representation"
# What a value looks like where it was printed instead of shown.
OF_PYTHON = re.compile(
    r"\bNone\b|\bNaN\b|\bnan\b|\binf\b|\bInfinity\b|\bTrue\b|\bFalse\b"
    r"|(?<!\w)[\[({]'|\{\"|<class|object at 0x|Quantified\(|Decimal\(|array\(|dict_|mappingproxy"
)
WITH_FORM = pytest.mark.parametrize("asked", every(), ids=str)


def form(client: FlaskClient, asked: Asked, media_type: str) -> str:
    """Return the answer in a form, its status and type checked."""
    answer = client.post(asked.path, json=asked.body, headers={"Accept": media_type})
    assert answer.status_code == 200, answer.text
    assert answer.mimetype == media_type
    return answer.text


def leaves(value: Any) -> Iterator[str]:
    """Yield the cells that a JSON value must become, without units and suggested digits."""
    if isinstance(value, dict):
        measured = value.keys() >= {"unit", "decimals"}
        for name, inner in value.items():
            if not (measured and name in ("unit", "decimals")):
                yield from leaves(inner)
    elif isinstance(value, list):
        for one in value:
            yield from leaves(one)
    elif value is not None:
        yield str(figures.cell(value))


def results_of(answer: Any) -> Any:
    """Return the results of an answer, less what to measure next, which is told in words."""
    return {name: value for name, value in answer["result"].items() if name != "measure_next"}


def cells(rows: list[dict[str, str]]) -> Counter[str]:
    """Return the values, uncertainties and ends of intervals of rows of results."""
    names = ("value", "uncertainty", "interval_low", "interval_high")
    told = (row[name] for row in rows for name in names)
    return Counter(one for one in told if one)


def own_rows(rows: list[dict[str, str]]) -> list[dict[str, str]]:
    """Return the rows of results."""
    apart = ("verdict", "warning")
    kept = [row for row in rows if row["part"] not in apart]
    return [row for row in kept if not row["part"].startswith("measure_next ")]


@WITH_FORM
def test_csv_says_what_the_json_says(client: FlaskClient, asked: Asked, tally: Tally) -> None:
    tally.add(0.0, str(asked))
    answer = post(client, asked.calculation, asked.body)
    sheet = form(client, asked, forms.CSV)
    rows = list(csv.DictReader(io.StringIO(sheet), strict=True))
    assert all(None not in row and None not in row.values() for row in rows)
    # A bare number has its uncertainty and its interval beside the results.
    told = [results_of(answer), answer["uncertainties"], answer["intervals"]]
    assert cells(own_rows(rows)) == Counter(filter(None, leaves(told)))
    assert_verdicts(rows, answer["verdicts"])
    warned = [(row["name"], row["value"]) for row in rows if row["part"] == "warning"]
    told = [(w["field"], str(figures.cell(w["message"]))) for w in answer["warnings"]]
    assert warned == told
    assert not OF_PYTHON.search(sheet)


def assert_verdicts(rows: list[dict[str, str]], verdicts: list[dict[str, Any]]) -> None:
    """Assert that each verdict has its row, in order, with the numbers of the JSON."""
    judged = [row for row in rows if row["part"] == "verdict"]
    assert len(judged) == len(verdicts)
    for row, verdict in zip(judged, verdicts, strict=True):
        limit, interval = verdict["limit"], verdict["interval"] or {"low": None, "high": None}
        assert (row["name"], row["of"]) == (verdict["check"], verdict["of"] or "")
        assert (row["verdict"], row["standing"]) == (verdict["verdict"], limit["standing"])
        assert row["why"] == (verdict["why"] or "")
        for column, value in (
            ("value", verdict["value"]),
            ("uncertainty", verdict["uncertainty"]),
            ("low", limit["low"]),
            ("high", limit["high"]),
            ("interval_low", interval["low"]),
            ("interval_high", interval["high"]),
        ):
            number = value["value"] if isinstance(value, dict) else value
            assert (float(row[column]) if row[column] else None) == number


@WITH_FORM
def test_text_tells_verdicts_and_warnings(client: FlaskClient, asked: Asked, tally: Tally) -> None:
    tally.add(0.0, str(asked))
    answer = post(client, asked.calculation, asked.body)
    printed = form(client, asked, forms.TEXT)
    assert not OF_PYTHON.search(printed)
    told = " ".join(printed.split())
    for verdict in answer["verdicts"]:
        assert " ".join(text.judged_on(verdict).split()) in told
        assert WORDS[verdict["verdict"]].upper() in told
    for warning in answer["warnings"]:
        where = figures.words_of(warning["field"])
        said = {
            text.NOT_STATED: where,
            # Stands beside its number.
            UNSTATED: warning["message"],
        }.get(warning["code"], f"{where}: {warning['message']}")
        assert " ".join(said.split()) in told
    for quantity in quantities(results_of(answer)):
        assert figures.plain(quantity["value"], quantity["decimals"]) in told


def quantities(value: Any) -> Iterator[dict[str, Any]]:
    """Yield the quantities within a JSON value."""
    if isinstance(value, dict):
        if value.keys() >= {"value", "unit", "decimals"}:
            yield value
        else:
            for inner in value.values():
                yield from quantities(inner)
    elif isinstance(value, list):
        for one in value:
            yield from quantities(one)


FURTHER = [asked for asked in every() if asked.calculation in forms.FURTHER]


@pytest.mark.parametrize("asked", FURTHER, ids=str)
def test_pages_and_pictures_are_whole(client: FlaskClient, asked: Asked, tally: Tally) -> None:
    tally.add(0.0, str(asked))
    (further,) = forms.further(asked.declaration)
    shown = form(client, asked, further.media_type)
    answer = post(client, asked.calculation, asked.body)
    if further.media_type == "image/svg+xml":
        told = " ".join(ElementTree.fromstring(shown).itertext())  # noqa: S314 - our own
    else:
        told = " ".join(Reader(shown).told())
        for warning in answer["warnings"]:
            if warning["code"] != text.NOT_STATED:
                assert " ".join(warning["message"].split()) in told
    assert not OF_PYTHON.search(told)
    for verdict in answer["verdicts"]:
        assert WORDS[verdict["verdict"]] in told


def test_there_is_something_to_show() -> None:
    """No file, example or case falls out of the loops above unseen."""
    assert len(demo_files()) == 16
    assert {asked.calculation for asked in examples()} == {c.name for c in CALCULATIONS}
    assert {asked.calculation for asked in every()} == {c.name for c in CALCULATIONS}
    assert len(every()) > 400
    assert {asked.calculation for asked in FURTHER} == set(forms.FURTHER)


@pytest.mark.parametrize("asked", examples(), ids=str)
def test_the_declared_shapes_are_those_of_the_json(client: FlaskClient, asked: Asked) -> None:
    """``shapes`` says of every value of inputs and results what JSON it has."""
    answer = post(client, asked.calculation, asked.body)
    declaration = asked.declaration
    assert_shapes(shapes.given(declaration.inputs, answer["inputs"]), answer["inputs"])
    parts = shapes.parts(declaration)
    if isinstance(declaration, Calculation):
        parts = {"": declaration}
        answer = {"result": {"": answer["result"]}}
    for part, calculation in parts.items():
        values = answer["result"].get(part, {})
        assert_shapes(shapes.given(calculation.outputs, values), values)


LOOKS = {
    looks.AsQuantity: lambda value: value.keys() >= {"value", "unit"},
    looks.AsQuantities: lambda value: value.keys() >= {"values", "unit"},
    looks.AsSection: lambda value: isinstance(value, dict),
    looks.AsTable: lambda value: all(isinstance(one, dict) for one in value),
    looks.AsBareList: lambda value: not any(isinstance(one, (dict, list)) for one in value),
    looks.AsBare: lambda value: not isinstance(value, (dict, list)),
}


def assert_shapes(given: Iterator[tuple[shapes.Member, Any]], values: Any) -> None:
    """Assert that every member of the JSON is declared and has the shape declared."""
    found = list(given)
    assert [member.name for member, _ in found] == list(values)
    for member, value in found:
        right = next(test for look, test in LOOKS.items() if isinstance(member.shape, look))
        assert right(value), (member.name, member.shape, value)
        if member.shape.is_section:
            assert_shapes(member.given(value), value)
        if member.shape.is_table:
            for one in value:
                assert_shapes(member.given(one), one)


def test_every_result_has_a_shape() -> None:
    """Also of the parts that no route of their own asks for."""
    for calculation in EVERY:
        if isinstance(calculation, Calculation):
            assert shapes.members(calculation.outputs), calculation.name


# A verdict that could not be passed says why; the forms carry it.
NOT_PASSED = {
    "check": "compression_least",
    "label": "reading, against the limit",
    "of": None,
    "value": {"value": 448.2, "unit": "kPa", "decimals": 0},
    "uncertainty": None,
    "interval": None,
    "bias": None,
    "limit": {
        "low": {"value": 620.5, "unit": "kPa", "decimals": 0},
        "high": None,
        "standing": "maker",
        "source": "",
    },
    "verdict": "not_judged",
    "without_uncertainty": None,
    "conformance_probability": None,
    "margin": {"value": -172.3, "unit": "kPa", "decimals": 0},
    "rule": "simple",
    "inconclusive_fails": None,
    "to_settle": None,
    "why": "decompressor_at_work",
    "to_judge": "read again with the decompressor off",
}


def test_a_verdict_says_why_in_every_form(client: FlaskClient) -> None:
    for name in ("compression-level", "compression-test", "job-card"):
        (asked,) = [one for one in examples() if one.calculation == name]
        found = post(client, name, asked.body)
        found = {**found, "verdicts": [NOT_PASSED]}
        declaration = BY_NAME[name]
        rows = list(csv.DictReader(io.StringIO(flat_table.table(declaration, found))))
        (judged,) = [row for row in rows if row["part"] == "verdict"]
        assert judged["why"] == "decompressor_at_work"
        answer = as_text(declaration, found)
        printed = " ".join(answer.split())
        assert f"NOT JUDGED ({WHY['decompressor_at_work']})" in printed
        assert "to judge it: read again with the decompressor off" in printed
        for further in forms.further(declaration):
            told = " ".join(Reader(further.render(declaration, found)).told())
            assert WHY["decompressor_at_work"] in told


@pytest.mark.parametrize(
    ("accept", "pick", "shown"),
    [
        (".txt", "gradeable", "decompressor_unknown"),
        (".txt", "reading_at_sea_level.unit", "kPa"),
    ],
)
def test_pick_walks_the_declaration(
    client: FlaskClient, accept: str, pick: str, shown: str
) -> None:
    query = {"reading": "880 kPa", "pick": pick}
    answer = client.get(f"/v1/compression-level{accept}", query_string=query)
    assert answer.text == shown


def test_pick_of_a_part_reads_on_into_its_results(client: FlaskClient) -> None:
    query = {"reading": "880 kPa", "altitude": "1500 m"}
    whole = strict(client.get("/v1/compression-test", query_string=query))["result"]
    part = next(name for name, value in whole.items() if "air_pressure_here" in value)
    pick = f"{part}.air_pressure_here"
    answer = client.get("/v1/compression-test.txt", query_string={**query, "pick": pick})
    assert float(answer.text) == whole[part]["air_pressure_here"]["value"]
    for nothing in (part, f"{part}.nothing", f"{pick}.value.more", "measure_next"):
        refused = client.get("/v1/compression-test.txt", query_string={**query, "pick": nothing})
        assert refused.status_code == 422


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_random_questions_in_every_form(
    client: FlaskClient, calculation: Operation, questions: Drawn, tally: Tally
) -> None:
    for i, body in enumerate(questions(calculation)):
        asked = Asked(calculation.name, f"drawn {i}", body)
        test_csv_says_what_the_json_says(client, asked, tally)
        test_text_tells_verdicts_and_warnings(client, asked, tally)
        if calculation.name in forms.FURTHER:
            test_pages_and_pictures_are_whole(client, asked, tally)
