"""What the tests in a browser share: widths, and what a printed page is."""

from collections.abc import Callable
from io import BytesIO
from typing import Any

from playwright.sync_api import Page
from pypdf import PdfReader

DESK, PHONE, SMALLEST = 1000, 360, 320
Show = Callable[..., Page]


def printed(page: Page, **paper: Any) -> PdfReader:
    """Return the page as it is printed: on the paper and in the margins that it asks for."""
    return PdfReader(BytesIO(page.pdf(prefer_css_page_size=True, **paper)))
