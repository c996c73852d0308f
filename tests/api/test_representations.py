"""The forms of an answer: JSON, CSV, text, one number; headers, tags, decimals."""

import csv
import io
import re

import pytest
from asking import ENGINE, get, post, problem, strict
from flask.testing import FlaskClient

from ringland_service.api.reading.query import offers_get, text_fields
from ringland_service.api.shapes import figures
from ringland_service.api.shapes.examples import example
from ringland_service.api.writing import flat_table, text
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Operation

QUERY = {"bore": "68mm", "stroke": "66mm", "class_limit": "240cc"}
SWEPT = 239.69095309828688  # π/4·68²·66/1000 by hand: 239.690953
NUMBER = re.compile(r"-?[0-9]+(\.[0-9]+)?")


@pytest.mark.parametrize(
    ("accept", "kind"),
    [
        (None, "application/json"),
        ("*/*", "application/json"),
        ("application/json", "application/json"),
        ("text/plain", "text/plain; charset=utf-8"),
        ("text/csv", "text/csv; charset=utf-8"),
        ("text/csv;q=0.5, text/plain;q=0.9", "text/plain; charset=utf-8"),
        ("image/png, text/csv;q=0.1", "text/csv; charset=utf-8"),
        ("application/*", "application/json"),
    ],
)
def test_accept_chooses_the_form(client: FlaskClient, accept: str | None, kind: str) -> None:
    headers = {} if accept is None else {"Accept": accept}
    asked = client.get("/v1/displacement", query_string=QUERY, headers=headers)
    sent = client.post("/v1/displacement", json=ENGINE, headers=headers)
    for answer in (asked, sent):
        assert answer.status_code == 200
        assert answer.content_type == kind


def test_suffix_chooses_the_form_whatever_accept_says(client: FlaskClient) -> None:
    for suffix, kind in ((".txt", "text/plain"), (".csv", "text/csv")):
        headers = {"Accept": "application/json"}
        answer = client.get(f"/v1/displacement{suffix}", query_string=QUERY, headers=headers)
        assert answer.mimetype == kind
        by_accept = client.get("/v1/displacement", query_string=QUERY, headers={"Accept": kind})
        assert by_accept.data == answer.data


def test_get_and_post_answer_alike(client: FlaskClient) -> None:
    asked = {**ENGINE, "class_limit": {"value": 240, "unit": "cc"}}
    assert strict(get(client, "displacement", QUERY)) == post(client, "displacement", asked)


def test_json_carries_full_floats(client: FlaskClient) -> None:
    """repr of a float: 17 significant decimals, so that nothing is lost on the wire."""
    answer = get(client, "displacement", QUERY)
    assert repr(SWEPT) in answer.text
    assert strict(answer)["result"]["displacement"]["value"] == SWEPT


def test_csv_is_one_flat_table(client: FlaskClient) -> None:
    asked = {**QUERY, "bore": "68mm +/- 0.02"}
    rows = list(csv.DictReader(io.StringIO(get(client, "displacement.csv", asked).text)))
    assert tuple(rows[0]) == flat_table.COLUMNS
    found = {(row["part"], row["name"]): row for row in rows}
    swept = found["result", "displacement"]
    assert float(swept["value"]) == SWEPT
    assert swept["unit"] == "cc"
    # U = 2·V·u(bore)/bore·2 by hand: 239.691·2·0.02/68 = 0.140995
    assert float(swept["uncertainty"]) == pytest.approx(0.140995, rel=1e-4)
    judged = found["verdict", "class_limit"]
    assert (judged["verdict"], judged["high"], judged["standing"]) == ("pass", "240", "standard")
    assert all(None not in row and None not in row.values() for row in rows)


@pytest.mark.parametrize("danger", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"])
def test_text_in_csv_is_no_formula(danger: str) -> None:
    """Text that a spreadsheet would take for a formula is quoted off; a number stays a number."""
    assert figures.cell(danger) == "'" + danger
    assert figures.cell(-1.5) == "-1.5"
    assert figures.cell("mm") == "mm"


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_text_is_for_people(client: FlaskClient, calculation: Operation) -> None:
    answer = client.post(
        f"/v1/{calculation.name}",
        json=example(calculation.inputs),
        headers={"Accept": "text/plain"},
    )
    assert answer.status_code == 200
    assert answer.text.endswith("\n")
    assert not answer.text.endswith("\n\n")
    assert not re.search(r"[0-9]e[+-]?[0-9]|nan|None|inf\b|\{|\}", answer.text)
    assert max(map(len, answer.text.splitlines())) <= text.WIDTH


def test_text_prints_words_for_tokens(client: FlaskClient) -> None:
    asked = {"bore": "68mm±0.02", "stroke": "66mm", "class_limit": "239.7cc"}
    shown = " ".join(get(client, "displacement.txt", asked).text.split())
    assert "TOO CLOSE TO CALL: 239.7 ± 0.1 cc (k = 2)" in shown
    assert "limit at most 239.7 cc (standard)" in shown
    assert "probability within 0.55" in shown
    assert "to settle: " in shown


PICKS = [
    ("displacement", {"bore": "68mm", "stroke": "66mm"}, "displacement", SWEPT),
    ("air-pressure", {"altitude": "1500m"}, "air_pressure_here", 84.556),
    ("convert", {"value": "0.001 thou", "to": "mm"}, "converted", 2.54e-5),
    ("convert", {"value": "1e8 mm", "to": "um"}, "converted", 1e11),
    ("convert", {"value": "25.4 mm", "to": "in"}, "converted", 1.0),
    ("convert", {"value": "-40 degC", "to": "degF"}, "converted", -40.0),
]


@pytest.mark.parametrize(("name", "asked", "pick", "expected"), PICKS)
def test_pick_is_one_bare_number(
    client: FlaskClient, name: str, asked: dict[str, str], pick: str, expected: float
) -> None:
    """No line end, exponent, unit or thousands separator: NUMBERVALUE(…; "."; ",") reads it."""
    answer = get(client, f"{name}.txt", {**asked, "pick": pick})
    assert NUMBER.fullmatch(answer.text)
    assert float(answer.text) == pytest.approx(expected, rel=5e-6)
    assert answer.mimetype == "text/plain"


def test_pick_gives_the_word_of_a_check(client: FlaskClient) -> None:
    assert get(client, "displacement.txt", {**QUERY, "pick": "class_limit"}).text == "pass"


def test_pick_gives_a_member_of_a_result(client: FlaskClient) -> None:
    """U = 2·u·2·V/bore by hand, u(bore) = 0.01 mm."""
    asked = {**QUERY, "bore": "68mm±0.02", "pick": "displacement.uncertainty"}
    uncertainty = float(get(client, "displacement.txt", asked).text)
    assert uncertainty == pytest.approx(4 * 0.01 * SWEPT / 68, rel=1e-6)


@pytest.mark.parametrize("pick", ["nothing", "", "bore", "displacement.x", "a.b.c"])
def test_pick_of_nothing_tells_what_there_is(client: FlaskClient, pick: str) -> None:
    answer = client.get("/v1/displacement.txt", query_string={**QUERY, "pick": pick})
    (fault,) = problem(answer, 422)["errors"]
    assert fault["pointer"] == "#/pick"
    assert {"displacement", "class_limit"} <= set(fault["allowed"])


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ({"bore": "68"}, "#ERR bore: a number alone has no unit: write 68 mm; "),
        ({"bore": "200 mm", "stroke": "66mm"}, "#ERR bore/value: "),
        ({"bore": "68 mm", "stroke": "66mm", "pick": "x"}, "#ERR pick: "),
    ],
)
def test_errors_as_text_reach_a_cell(client: FlaskClient, asked: dict[str, str], says: str) -> None:
    answer = get(client, "displacement.txt", {**asked, "errors": "text", "stroke2": "1"})
    assert answer.text.startswith("#ERR ")
    answer = get(client, "displacement.txt", {**asked, "errors": "text"})
    assert answer.text.startswith(says.rstrip("; "))
    assert "\n" not in answer.text
    assert answer.headers["Cache-Control"] == "no-store"
    assert "ETag" not in answer.headers


def test_errors_stay_errors_without_that_option(client: FlaskClient) -> None:
    for query in ("bore=68", "bore=68&errors=status"):
        problem(client.get(f"/v1/displacement.txt?{query}"), 400)
    problem(client.get("/v1/displacement?bore=68&errors=text"), 400)


@pytest.mark.parametrize(
    "uncertainty", ["±0.02", " ± 0.02", "+/-0.02", " +/- 0.02", " /- 0.02", "/-0.02"]
)
def test_uncertainty_in_its_three_forms(client: FlaskClient, uncertainty: str) -> None:
    found = strict(get(client, "displacement", {"bore": f"68mm{uncertainty}", "stroke": "66mm"}))
    assert found["inputs"]["bore"]["uncertainty"] == 0.02
    assert "uncertainty" not in found["inputs"]["stroke"]


def test_a_plus_half_decoded_by_the_address_is_understood(client: FlaskClient) -> None:
    """``+`` in an address arrives as a space: ``+/-`` as `` /-``."""
    answer = client.get("/v1/displacement?bore=68+mm+/-+0.02&stroke=66mm")
    assert strict(answer)["inputs"]["bore"]["uncertainty"] == 0.02
    answer = client.get("/v1/displacement?bore=68+mm+%C2%B1+0.02&stroke=66mm")
    assert strict(answer)["inputs"]["bore"]["uncertainty"] == 0.02


@pytest.mark.parametrize("written", ["68.0 mm", "68mm", "+68 mm", "6.8e1mm", " 68  mm ", "68.mm"])
def test_quantity_texts(client: FlaskClient, written: str) -> None:
    found = strict(get(client, "displacement", {"bore": written, "stroke": "66mm"}))
    assert found["result"]["displacement"]["value"] == SWEPT


WITH_GET = [c for c in CALCULATIONS if offers_get(c)]


@pytest.mark.parametrize("calculation", WITH_GET, ids=lambda c: c.name)
def test_tag_tells_an_answer_that_has_not_changed(
    client: FlaskClient, calculation: Operation
) -> None:
    asked = {
        name: str(one.parameter_example()).replace("True", "true").replace("False", "false")
        for name, one in text_fields(calculation).items()
        if one.field.example is not None
    }
    first = get(client, calculation.name, asked)
    tag = first.headers["ETag"]
    assert tag.startswith(f'"{calculation.formulas}-')
    assert first.headers["Cache-Control"] == "public, max-age=3600"
    assert first.headers["Vary"] == "Accept"
    again = client.get(
        f"/v1/{calculation.name}", query_string=asked, headers={"If-None-Match": tag}
    )
    assert again.status_code == 304
    assert again.data == b""
    assert again.headers["ETag"] == tag
    other = client.get(
        f"/v1/{calculation.name}",
        query_string=asked,
        headers={"If-None-Match": tag, "Accept": "text/plain"},
    )
    assert other.status_code == 200
    assert other.headers["ETag"] != tag


def test_tag_changes_with_the_answer(client: FlaskClient) -> None:
    tags = {
        get(client, "displacement", {**QUERY, "bore": b}).headers["ETag"] for b in ("68mm", "69mm")
    }
    tags.add(get(client, "displacement", {**QUERY, "units": "us"}).headers["ETag"])
    assert len(tags) == 3


def test_head_is_get_without_a_body(client: FlaskClient) -> None:
    """A spreadsheet asks OPTIONS and HEAD before it gets."""
    for path in ("displacement", "displacement.txt", "displacement.csv"):
        full = get(client, path, QUERY)
        head = client.head(f"/v1/{path}", query_string=QUERY)
        assert head.status_code == 200
        assert head.data == b""
        assert head.headers["Content-Length"] == str(len(full.data))
        assert head.headers["ETag"] == full.headers["ETag"]
        options = client.options(f"/v1/{path}", query_string=QUERY)
        assert options.status_code == 200
        assert {"GET", "HEAD", "OPTIONS"} <= set(options.headers["Allow"].split(", "))


@pytest.mark.parametrize("path", ["/v1", "/v1/displacement", "/nothing", "/health/live", "/docs"])
def test_security_headers(client: FlaskClient, path: str) -> None:
    headers = client.get(path).headers
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["Content-Security-Policy"].startswith("default-src '")
    assert "unsafe-eval" not in headers["Content-Security-Policy"]
    assert headers["Cache-Control"]
    assert "Access-Control-Allow-Origin" not in headers
    assert "Set-Cookie" not in headers


def test_post_is_not_stored(client: FlaskClient) -> None:
    answer = client.post("/v1/displacement", json=ENGINE)
    assert answer.headers["Cache-Control"] == "no-store"


@pytest.mark.parametrize(
    ("value", "decimals", "shown"),
    [
        (239.69, 1, "239.7"),
        (-0.0004, 3, "0.000"),
        (1e-5, None, "0.00001"),
        (1.1e-5, None, "0.000011"),
        (1e16, None, "10000000000000000"),
        (68.0, None, "68"),
        (0.0, None, "0"),
        (-0.0, None, "0"),
        (0.1 + 0.2, None, "0.30000000000000004"),
        (1.234567890123456e-9, None, "0.000000001234567890123456"),
    ],
)
def test_plain_numbers(value: float, decimals: int | None, shown: str) -> None:
    assert figures.plain(value, decimals) == shown
