"""A real browser without a window, which takes every page from the service in process."""

import shutil
from collections.abc import Iterator
from typing import Any

import pytest
from browsing import DESK, Show
from flask.testing import FlaskClient
from playwright.sync_api import Browser, Page, Route, sync_playwright

ADDRESS = "http://ringland.test/"


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium as the system has it."""
    path = shutil.which("chromium") or shutil.which("chromium-browser")
    if path is None:
        pytest.skip("needs chromium (Debian package chromium)")
    with sync_playwright() as playwright:
        # No sandbox of its own: in a container the tests may run as root.
        arguments = ["--no-sandbox", "--disable-dev-shm-usage"]
        launched = playwright.chromium.launch(executable_path=path, args=arguments)
        yield launched
        launched.close()


@pytest.fixture
def show(browser: Browser, client: FlaskClient) -> Iterator[Show]:
    """Return what opens the answer to a POST, headers and all; anything else asked for fails."""
    faults: list[str] = []
    opened: list[Page] = []

    def shown(path: str, asked: Any, width: int = DESK) -> Page:
        answer = client.post(path, json=asked)
        assert answer.status_code == 200, answer.text
        page = browser.new_page(viewport={"width": width, "height": 800})
        opened.append(page)

        def fulfil(route: Route) -> None:
            if route.request.url != ADDRESS:
                faults.append(f"asked for {route.request.url}")
                route.abort()
            else:
                route.fulfill(status=200, headers=dict(answer.headers), body=answer.text)

        page.route("**/*", fulfil)
        page.on("console", lambda message: faults.append(message.text))
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.goto(ADDRESS)
        return page

    yield shown
    for page in opened:
        page.close()
    assert faults == []
