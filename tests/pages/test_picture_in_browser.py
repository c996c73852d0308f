"""The picture of a bore as a browser draws it: nothing cut off, nothing on top of other text."""

import xml.etree.ElementTree as ET
from typing import Any

import pytest
from browsing import Show, printed
from flask.testing import FlaskClient
from playwright.sync_api import Page

from surveys import SURVEYS, UNCERTAINTYED

each_survey = pytest.mark.parametrize("asked", SURVEYS.values(), ids=SURVEYS.keys())
both_units = pytest.mark.parametrize("units", ["metric", "us"])
BOXES = """() => [...document.querySelectorAll('text')].map(e => {
    const box = e.getBoundingClientRect();
    return {text: e.textContent, size: parseFloat(getComputedStyle(e).fontSize),
            left: box.left, right: box.right, top: box.top, bottom: box.bottom};
})"""


@both_units
@each_survey
def test_texts_are_whole_apart_and_large_enough(show: Show, asked: Any, units: str) -> None:
    page = show(f"/v1/bore-survey.svg?units={units}", asked)
    size = page.evaluate("document.documentElement.getBoundingClientRect().toJSON()")
    boxes = page.evaluate(BOXES)
    assert len(boxes) > 20
    for box in boxes:
        assert box["size"] >= 11
        assert size["left"] <= box["left"] < box["right"] <= size["right"], box
        assert size["top"] <= box["top"] < box["bottom"] <= size["bottom"], box
    for i, one in enumerate(boxes):
        for other in boxes[:i]:
            assert not overlap(one, other), (one["text"], other["text"])


def overlap(one: dict[str, Any], other: dict[str, Any]) -> bool:
    """Return whether two texts lie on each other; line boxes may touch by their leading."""
    across = min(one["right"], other["right"]) - max(one["left"], other["left"])
    down = min(one["bottom"], other["bottom"]) - max(one["top"], other["top"])
    return across > 0.5 and down > 3.0


DARK = """async svg => {
    const image = new Image();
    image.src = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(svg);
    await image.decode();
    const canvas = Object.assign(document.createElement('canvas'),
                                 {width: image.width, height: image.height});
    const pen = canvas.getContext('2d');
    pen.drawImage(image, 0, 0);
    const {data} = pen.getImageData(0, 0, image.width, image.height);
    const dark = [], coloured = [];
    for (let i = 0; i < data.length; i += 4) {
        if (data[i + 3] !== 255 || data[i] !== data[i + 1] || data[i] !== data[i + 2])
            coloured.push(i / 4);
        if (data[i] < 64) dark.push(i / 4);
    }
    return {width: image.width, height: image.height, dark, coloured: coloured.length};
}"""


@pytest.fixture
def blank(browser: Any) -> Any:
    page = browser.new_page()
    yield page
    page.close()


@each_survey
def test_it_is_drawn_in_black_where_the_readings_lie(
    client: FlaskClient, blank: Page, asked: Any
) -> None:
    """As an image, so outside its page: each filled marker is black in its middle."""
    svg = client.post("/v1/bore-survey.svg", json=asked).text
    pixels = blank.evaluate(DARK, svg)
    width, dark = pixels["width"], set(pixels["dark"])
    assert width == 760
    assert 0.005 < len(dark) / (width * pixels["height"]) < 0.2
    assert pixels["coloured"] == 0
    squares = [
        (float(e.get("x", "")) + 4.5, float(e.get("y", "")) + 4.5)
        for e in ET.fromstring(svg).iter("{http://www.w3.org/2000/svg}rect")  # noqa: S314
        if e.get("class") == "thrust"
    ]
    read = [size for size in asked["thrust_axis"]["values"] if size is not None]
    assert len(squares) == len(read) + 1  # and one in the legend
    assert all(int(y) * width + int(x) in dark for x, y in squares)


def test_it_prints_on_one_sheet(show: Show) -> None:
    assert len(printed(show("/v1/bore-survey.svg", UNCERTAINTYED), format="A4").pages) == 1
