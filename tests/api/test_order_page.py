"""The order card as a page: line by line, sizes without ±, room for what is missing."""

from typing import Any

import pytest
from asking import post, strict
from flask.testing import FlaskClient

from cards import ORDER, ORDERS
from page_reader import Reader, read
from ringland_service.api.writing.pages import order_page
from ringland_service.core.calculations import BY_NAME


def test_order_card_line_by_line(client: FlaskClient) -> None:
    answer = post(client, "order-card", ORDER)
    page = read(client, "order-card", ORDER)
    lines = answer["result"]["lines"]
    told = page.told("span")
    assert told == [
        part for one in lines for part in (str(one["point"]), one["heading"], one["text"])
    ]
    # By hand: piston 68.461 + clearance 0.030 and 0.040; less 0.060 of hone stock, and clearances.
    # A size to work to carries no ±, which could be read as a tolerance.
    assert "68.491 mm to 68.501 mm" in page.told("dd")
    assert "blank" not in [attrs.get("class") for _, attrs in page.elements]


def test_order_card_leaves_room_for_what_is_missing(client: FlaskClient) -> None:
    answer = post(client, "order-card", ORDERS["least"])
    page = read(client, "order-card", ORDERS["least"])
    missing = [one for one in answer["result"]["lines"] if not one["stated"]]
    blanks = [attrs for _, attrs in page.elements if attrs.get("class") == "blank"]
    assert len(blanks) == len(missing) > 0
    assert any("Not complete" in words for words in page.told("strong"))
    assert [one for one in page.told("li") if one in answer["result"]["still_to_fill"]] == answer[
        "result"
    ]["still_to_fill"]


def test_sizes_to_work_to_carry_no_uncertainty(client: FlaskClient) -> None:
    asked = {**ORDER, "piston_size": {**ORDER["piston_size"], "uncertainty": 0.004}}
    assert post(client, "order-card", asked)["result"]["finish_low"]["uncertainty"] > 0
    assert "68.491 mm to 68.501 mm" in read(client, "order-card", asked).told("dd")


LINE = {"point": 4, "heading": "finish bore", "text": "Finish bore.", "stated": True}


@pytest.mark.parametrize(
    "result",
    [
        {},
        {"lines": [LINE]},
        {"lines": [], "still_to_fill": ["4 finish bore: the piston"], "bore_to": None},
        {"lines": [LINE], "bore_to": {"value": 68.4361, "unit": "mm", "decimals": 3}},
    ],
)
def test_an_order_is_shown_whatever_it_lacks(result: Any) -> None:
    calculation = BY_NAME["order-card"]
    found = {"result": result, "verdicts": [], "warnings": [], "cautions": []}
    page = Reader(order_page.page(calculation, found))
    assert ("Finish bore." in page.told("span")) == bool(result.get("lines"))
    assert ("68.436 mm" in page.told("dd")) == bool(result.get("bore_to"))


def test_get_of_an_order_card_is_a_page(client: FlaskClient) -> None:
    query = {"work": "bore_and_hone", "bore_kind": "iron", "cycle": "two_stroke"}
    query |= {"piston_size": "68.461 mm", "clearance_low": "0.030 mm", "clearance_high": "0.040 mm"}
    answer = client.get("/v1/order-card.html", query_string=query)
    assert answer.status_code == 200, answer.text
    assert answer.headers["ETag"]
    assert "68.491 mm to 68.501 mm" in Reader(answer.text).told("dd")
    assert strict(client.get("/v1/order-card", query_string=query))["result"]["finish_low"]
