"""The pages as a browser shows and prints them: for everyone, on a phone, on paper."""

import re
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from browsing import DESK, PHONE, SMALLEST, Show, printed

from cards import CLEARANCE, JOBS, ORDERS

SHOWN = ("orchard_pump", "example", "nothing", "hostile")
CASES = [
    *(("job-card", name, JOBS[name]) for name in SHOWN),
    *(("order-card", name, asked) for name, asked in ORDERS.items()),
]
each_page = pytest.mark.parametrize(
    ("card", "asked"), [(c, asked) for c, _, asked in CASES], ids=[f"{c}: {n}" for c, n, _ in CASES]
)
# ISO 216, A4: 210 x 297 mm, in points of 1/72 in.
A4 = (210 / 25.4 * 72, 297 / 25.4 * 72)


@pytest.mark.parametrize("width", [DESK, PHONE])
@each_page
def test_everyone_can_use_it(show: Show, card: str, asked: Any, width: int) -> None:
    """The rules of axe-core, WCAG 2 and best practice among them."""
    page = show(f"/v1/{card}.html", asked, width)
    found = Axe().run(page)
    assert found.violations_count == 0, found.generate_report()
    passed = {rule["id"] for rule in found.response["passes"]}
    assert {"color-contrast", "heading-order", "html-has-lang", "page-has-heading-one"} <= passed


OUTSIDE = """() => [...document.querySelectorAll('main *')]
    .filter(e => !e.closest('.scroll') && !e.closest('thead'))
    .filter(e => e.getBoundingClientRect().right > innerWidth + 1)
    .map(e => e.outerHTML.slice(0, 80))"""


@each_page
def test_the_page_never_scrolls_sideways(show: Show, card: str, asked: Any) -> None:
    page = show(f"/v1/{card}.html", asked)
    for width in (DESK, PHONE, SMALLEST):
        page.set_viewport_size({"width": width, "height": 800})
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        assert page.evaluate(OUTSIDE) == []


def test_the_style_holds_under_the_policy(show: Show) -> None:
    """Were the policy to refuse the style, the table's heads would not be drawn so."""
    page = show("/v1/job-card.html", JOBS["orchard_pump"])
    line = page.evaluate(
        "getComputedStyle(document.querySelector('.verdicts thead th')).borderBottomWidth"
    )
    assert line == "2px"
    assert page.evaluate("getComputedStyle(document.body).color") == "rgb(0, 0, 0)"


def test_text_of_the_request_runs_nothing(show: Show) -> None:
    page = show("/v1/job-card.html", JOBS["hostile"])
    assert page.evaluate("document.scripts.length") == 0
    assert "<script>alert('job')</script>" in page.inner_text("header")


@pytest.mark.parametrize("width", [DESK, PHONE])
def test_what_a_table_says_stays_with_its_head(show: Show, width: int) -> None:
    """On a phone each value carries the head of its column; at the desk the head stands above."""
    page = show("/v1/job-card.html", JOBS["orchard_pump"], width)
    told = page.evaluate(
        "getComputedStyle(document.querySelector('.verdicts td[data-head]'), '::before').content"
    )
    display = page.evaluate("getComputedStyle(document.querySelector('.verdicts td')).display")
    at_the_desk, on_a_phone = ("none", "table-cell"), ('"value: "', "block")
    assert (told, display) == (at_the_desk if width == DESK else on_a_phone)


# An order card has its one or two sheets; a job grows with what is known of it.
MOST_SHEETS = {"order-card": 2, "job-card": 18}


@each_page
def test_it_prints_on_a4(show: Show, card: str, asked: Any) -> None:
    sheets = printed(show(f"/v1/{card}.html", asked)).pages
    for sheet in sheets:
        assert (sheet.mediabox.width, sheet.mediabox.height) == pytest.approx(A4, abs=1.0)
    assert len(sheets) <= MOST_SHEETS[card]
    told = [" ".join(sheet.extract_text().split()) for sheet in sheets]
    assert f"{len(sheets)} / {len(sheets)}" in told[-1]
    assert sum("Signature" in sheet for sheet in told) == 1
    assert all(len(sheet) > 200 for sheet in told[:-1]), "a sheet is left all but blank"


def test_whole_order_stands_on_the_first_sheet(show: Show) -> None:
    (first, *_) = printed(show("/v1/order-card.html", ORDERS["full"])).pages
    told = first.extract_text()
    assert "68.491 mm to 68.501 mm" in told
    assert all(f"\n{point} " in told or f"\n{point}\n" in told for point in range(1, 18)), told


def test_a_small_job_prints_on_two_sheets(show: Show) -> None:
    assert len(printed(show("/v1/job-card.html", CLEARANCE)).pages) <= 2


def test_heads_of_a_long_table_repeat_on_each_sheet(show: Show) -> None:
    sheets = printed(show("/v1/job-card.html", JOBS["orchard_pump"])).pages
    heads = r"Check\s+Value\s+Limit\s+Verdict\s+Margin"
    assert len([sheet for sheet in sheets if re.search(heads, sheet.extract_text())]) > 1


def test_decision_and_head_stand_on_the_first_sheet(show: Show) -> None:
    (first, *_) = printed(show("/v1/job-card.html", JOBS["orchard_pump"])).pages
    told = first.extract_text()
    assert "Job card 26-031" in told
    assert "Decision for the cylinder" in told
