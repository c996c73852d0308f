"""The job card and the order card as pages: what stands on them, in which order, all escaped."""

import re
import tomllib
from base64 import b64encode
from fnmatch import fnmatchcase
from hashlib import sha256
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
from asking import post
from flask.testing import FlaskClient

import ringland_service
from cards import CLEARANCE, HOSTILE, JOBS, ORDER, ORDERS
from page_reader import Reader, read
from ringland_service.api.shapes.looks import AsQuantities, AsQuantity
from ringland_service.api.shapes.members import given, members
from ringland_service.api.writing import text
from ringland_service.api.writing.pages import blocks, job_page
from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Composite, record, result
from ringland_service.core.declare.kinds import LENGTH

PAGES = [
    *(("job-card", name, asked) for name, asked in JOBS.items()),
    *(("order-card", name, asked) for name, asked in ORDERS.items()),
]
each_page = pytest.mark.parametrize(
    ("card", "asked"),
    [(card, asked) for card, _, asked in PAGES],
    ids=[f"{c}: {n}" for c, n, _ in PAGES],
)


@each_page
def test_page_is_sound(client: FlaskClient, card: str, asked: Any) -> None:
    page = read(client, card, asked)
    tags = [tag for tag, _ in page.elements]
    attributes = dict(page.elements)
    assert attributes["html"]["lang"] == "en"
    assert [tags.count(tag) for tag in ("h1", "main", "style")] == [1, 1, 1]
    assert tags.count("title") == 1 + tags.count("svg")
    levels = [int(tag[1]) for tag in tags if re.fullmatch("h[1-6]", tag)]
    assert levels[0] == 1
    assert all(later <= level + 1 for level, later in pairwise(levels))
    assert tags.count("caption") == tags.count("table") == tags.count("thead")
    for tag, attrs in page.elements:
        assert tag not in ("script", "link", "img", "iframe", "form", "input")
        assert tag != "th" or attrs["scope"] in ("row", "col")
        assert not [
            name for name in attrs if name.startswith("on") or name in ("href", "src", "style")
        ]


@each_page
def test_page_shows_nothing_raw(client: FlaskClient, card: str, asked: Any) -> None:
    """No token of the wire, no float to its last digit, no word of Python."""
    told = [words for words in read(client, card, asked).told() if HOSTILE[:8] not in words]
    assert [words for words in told if re.fullmatch(r"[a-z0-9]+(_[a-z0-9]+)+", words)] == []
    raw = r"[0-9]\.[0-9]{8}|[0-9]e-[0-9]|\b(None|True|False|nan|inf)\b|\[\]|\{\}"
    assert [words for words in told if re.search(raw, words)] == []


@each_page
def test_text_of_the_request_is_escaped(client: FlaskClient, card: str, asked: Any) -> None:
    answer = client.post(f"/v1/{card}.html", json=asked)
    assert "<script" not in answer.text
    assert "\x00" not in answer.text
    assert "\x0b" not in answer.text


def test_hostile_text_is_shown_as_it_was_written(client: FlaskClient) -> None:
    """All but control characters; a template's own signs are text like any other."""
    page = read(client, "job-card", JOBS["hostile"])
    (complaint,) = [words for words in page.told("dd") if words.startswith("<script>")][1:2]
    assert complaint == " ".join(re.sub("[\x00\x0b]", "", HOSTILE).split())
    assert "{{ 7 * 7 }}" in complaint
    order = read(client, "order-card", ORDERS["hostile"])
    assert any("<script>alert('job')</script>" in words for words in order.told("span"))


def test_nothing_known_leaves_nothing_standing(client: FlaskClient) -> None:
    headings = read(client, "job-card", {}).told("h1", "h2", "h3")
    assert headings[0] == "Job card"
    assert not set(IN_ORDER) - {"What to measure next", "Cautions"} & set(headings)
    assert "What to measure next" in headings


IN_ORDER = [
    "Decision for the cylinder",
    "Order card",
    "Verdicts",
    "The bore",
    "What to measure next",
    "Not worked out",
    "On the bench",
    "Warnings",
    "Cautions",
    "All other figures",
    "Readings as understood",
]


@pytest.mark.parametrize("name", JOBS)
def test_order_of_a_job_card(client: FlaskClient, name: str) -> None:
    headings = read(client, "job-card", JOBS[name]).told("h2")
    assert headings == [heading for heading in IN_ORDER if heading in headings]


def test_head_of_a_job_card(client: FlaskClient) -> None:
    page = read(client, "job-card", CLEARANCE)
    assert page.told("h1") == ["Job card 26-099"]
    assert page.told("title") == ["Job card 26-099"]
    assert (page.told("dt"), page.told("dd")) == (["owner says"], ["knocks when cold"])
    full = read(client, "job-card", JOBS["orchard_pump"])
    assert {"Decision for the cylinder", "The bore", "On the bench", "All other figures"} <= set(
        full.told("h2")
    )


def test_verdict_stands_with_uncertainty_limit_and_standing(client: FlaskClient) -> None:
    """By hand: 73.052 - 72.931 = 0.121 mm, U = sqrt(0.006^2 + 0.004^2) = 0.0072 mm."""
    told = read(client, "job-card", CLEARANCE).told()
    at = told.index("largest clearance")
    assert told[at + 1 : at + 5] == [
        "0.121 ± 0.007 mm",
        "at most 0.120 mm (maker)",
        "workshop manual of the pump",
        "too close to call",
    ]
    assert told[at + 5].startswith("To settle: set the bore gauge")
    assert told[at + 6] == "-0.001 mm"


@pytest.mark.parametrize("name", JOBS)
def test_every_verdict_stands_on_the_card(client: FlaskClient, name: str) -> None:
    verdicts = post(client, "job-card", JOBS[name])["verdicts"]
    heads = read(client, "job-card", JOBS[name]).told("th")
    words = [text.judged_on(verdict) for verdict in verdicts]
    first = heads.index("margin") + 1 if words else 0
    assert heads[first : first + len(words)] == words


def test_every_figure_of_every_part_is_shown(client: FlaskClient) -> None:
    asked = JOBS["example"]
    answer = post(client, "job-card", asked)
    told = set(read(client, "job-card", asked).told())
    composite = BY_NAME["job-card"]
    assert isinstance(composite, Composite)
    for step in composite.steps:
        result = answer["result"].get(step.part)
        if result:
            assert step.heading in told
        for member, value in given(step.calculation.outputs, result or {}):
            if isinstance(member.shape, (AsQuantity, AsQuantities)):
                assert member.shape.text(value) in told


def test_readings_are_shown_as_understood(client: FlaskClient) -> None:
    """The request says 118 psi, so the card says 118·6.894757 = 814 kPa; in US units 118 psi."""
    assert "814 kPa" in read(client, "job-card", CLEARANCE).told("td")
    assert "118.0 psi" in read(client, "job-card", CLEARANCE, "us").told("td")


def test_a_job_card_carries_its_order(client: FlaskClient) -> None:
    """The part of that name, when the job has one, stands above the verdicts."""
    found = post(client, "job-card", CLEARANCE)
    order = post(client, "order-card", ORDER)["result"]
    found["result"]["order_card"] = order
    page = Reader(job_page.page(BY_NAME["job-card"], found))
    assert page.told("h2")[0] == "Order card"
    assert "Finish bore 68.491 to 68.501 mm at 20 °C." in page.told("span")


def test_tables_of_records() -> None:
    """A column for each field that any row has; several texts in one cell; a dash for none."""

    @record
    class Way:
        way: str = result("way")
        reasons: tuple[str, ...] | None = result("reasons", default=None)
        size_mm: float | None = result("size", kind=LENGTH, decimals=2, default=None)

    @record
    class Found:
        ways: tuple[Way, ...] = result("ways", record=Way)

    rows = [
        {"way": "hone", "reasons": ["a", "b"]},
        {"way": "bore", "size": {"value": 1.0, "unit": "mm", "decimals": 2}},
    ]
    found = blocks.table("ways", members(Found)["ways"], rows)
    assert found.heads == ("way", "reasons", "size")
    cells = [[cell.texts for cell in row] for row in found.rows]
    assert cells == [[("hone",), ("a", "b"), ("–",)], [("bore",), ("–",), ("1.00 mm",)]]


def test_the_style_is_the_one_that_the_policy_lets_in(client: FlaskClient) -> None:
    """sha256 of the style's text, as Content Security Policy Level 3 has it (from memory)."""
    answer = client.post("/v1/job-card.html", json={})
    (style,) = re.findall(r"<style>(.*?)</style>", answer.text, flags=re.DOTALL)
    digest = b64encode(sha256(style.encode()).digest()).decode()
    policy = answer.headers["Content-Security-Policy"]
    assert policy.startswith("default-src 'none'; style-src 'sha256-")
    assert f"'sha256-{digest}'" in policy
    assert not re.search(r"url\(|@import|https?:", style)


def test_everything_beside_the_code_is_shipped() -> None:
    """A file that the package reads and the wheel lacks fails at the user's alone."""
    package = Path(ringland_service.__file__).parent
    project = tomllib.loads((package.parents[1] / "pyproject.toml").read_text("utf-8"))
    globs = project["tool"]["setuptools"]["package-data"]["ringland_service"]
    beside = [
        str(path.relative_to(package))
        for path in package.rglob("*")
        if path.is_file() and path.suffix not in (".py", ".pyc")
    ]
    assert "api/writing/templates/page.css" in beside
    assert [name for name in beside if not any(fnmatchcase(name, one) for one in globs)] == []


@pytest.mark.parametrize("name", JOBS)
def test_no_two_parts_have_one_title(client: FlaskClient, name: str) -> None:
    told = read(client, "job-card", JOBS[name]).told("h2", "h3")
    titles = told[: told.index("Cautions")]
    assert len(set(titles)) == len(titles)
