"""Results that are tables: as text for people, in a batch, in CSV; no number without its unit."""

import csv
import io
import json

from asking import get, post
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.api.shapes.examples import example
from ringland_service.api.shapes.members import members
from ringland_service.api.writing.flat_table import column_cell
from ringland_service.api.writing.text_table import table
from ringland_service.core.calculations.job import re_check
from ringland_service.core.calculations.order_card import order_card

BAD_CARD = "Plated. Bore .020 over"
WORD = st.text("abcdefgh0123456789", min_size=1, max_size=12)
CELL = st.lists(WORD, min_size=1, max_size=30).map(" ".join)
ROWS = st.lists(
    st.fixed_dictionaries({"a": WORD, "b": CELL, "c": WORD | CELL}), min_size=1, max_size=5
)


@given(ROWS)
def test_a_table_keeps_every_word_and_its_width(rows: list[dict[str, str]]) -> None:
    lines = table(rows, 100)
    assert max(map(len, lines)) <= 100
    assert all(line == line.rstrip() for line in lines)
    printed = sorted(" ".join(lines).split())
    words = [word for row in rows for text in row.values() for word in text.split()]
    for word in words:
        printed.remove(word)


def test_columns_are_headed_and_numbers_stand_right() -> None:
    lines = table([{"no": "9", "what": "wash"}, {"no": "10", "what": "return"}], 40)
    assert lines == ["  no  what", "   9  wash", "  10  return"]


def test_a_number_and_its_unit_stay_on_one_line() -> None:
    long = "finish bore 68.491 to 68.501 mm at 20 °C, " * 6
    for width in range(60, 90):
        lines = table([{"point": "4", "text": long}], width)
        assert not any(line.endswith(("68.501", " 20")) for line in lines)


def test_several_long_columns_stand_one_below_another() -> None:
    row = {"severity": "refuse", "code": "plus_minus", "found": "x " * 30, "right": "y " * 30}
    lines = table([row], 60)
    assert lines[0] == "  1. refuse, plus_minus"
    assert lines[1].startswith("     found  x x")
    assert any(line.startswith("     right  y y") for line in lines)


def test_the_card_is_printed_point_by_point(client: FlaskClient) -> None:
    asked = example(order_card.CALCULATION.inputs)
    headers = {"Accept": "text/plain"}
    lines = client.post("/v1/order-card", json=asked, headers=headers).text.splitlines()
    assert "      4  finish bore       yes     Finish bore 68.491 to 68.501 mm at 20 °C." in lines
    assert not any("Line(" in line for line in lines)


def test_free_text_is_printed_as_it_was_written(client: FlaskClient) -> None:
    asked = {"work": "heads_only", "bore_kind": "iron", "job": "26_014"}
    printed = client.post("/v1/order-card", json=asked, headers={"Accept": "text/plain"}).text
    assert "Job 26_014" in printed


def test_a_batch_carries_tables(client: FlaskClient) -> None:
    asked = {"columns": {"written": {"values": [BAD_CARD, " ", "Clean it"]}}}
    found = post(client, "order-card-check/batch", asked)
    alone = post(client, "order-card-check", {"written": BAD_CARD})
    tables = found["results"]["objections"]["values"]
    assert tables == [alone["result"]["objections"], None, []]
    assert found["refused"] == 1
    answer = client.post("/v1/order-card-check/batch", json=asked, headers={"Accept": "text/csv"})
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    assert "severity: refuse; code: plated_and_bored" in rows[0]["objections"]
    assert rows[2]["objections"] == ""


def test_a_record_in_a_cell_has_its_units() -> None:
    rows = [{"what": "bore", "low": {"value": 68.491, "unit": "mm", "digits": 3}}, {"what": "gap"}]
    values = members(re_check.Outputs)["values"]
    assert column_cell(values, rows) == "what: bore; low: 68.491 mm | what: gap"
    assert (column_cell(values, []), column_cell(values, None)) == ("", "")


def test_get_picks_the_word(client: FlaskClient) -> None:
    asked = {"written": BAD_CARD, "pick": "usable"}
    assert get(client, "order-card-check.txt", asked).text == "must_not_go_out"


def test_common_practice_is_left_off_the_card_on_demand(client: FlaskClient) -> None:
    asked = example(order_card.CALCULATION.inputs)
    del asked["out_of_round_max"]
    usual = post(client, "order-card", asked)["result"]
    bare = post(client, "order-card", {**asked, "defaults": "off"})["result"]
    assert "common practice" in json.dumps(usual)
    assert "common practice" not in json.dumps(bare)
    assert "7 form: most out-of-round allowed" in bare["still_to_fill"]
