"""The forms of an answer: what every calculation has, and the picture or page that some have more.

Routes, the Accept header, the OpenAPI document and the listing all follow from these tables.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from ringland_service.api.writing.pages import job_page, order_page
from ringland_service.api.writing.pages.templates import STYLE_POLICY
from ringland_service.api.writing.pictures import bore_picture
from ringland_service.core.declare import Declared

JSON, TEXT, CSV = "application/json", "text/plain", "text/csv"
SUFFIXES = {".txt": TEXT, ".csv": CSV}


@dataclass(frozen=True)
class Form:
    """A form of the answer of one calculation.

    Attributes
    ----------
    media_type : str
        What the Accept header asks for.
    suffix : str
        What the path may end in, for a client that cannot set a header.
    words : str
        What the form is, for the document.
    render : callable
        Takes the calculation and its answer as JSON; returns the text.
    headers : mapping
        What the response carries besides.
    """

    media_type: str
    suffix: str
    words: str
    render: Callable[[Declared, Mapping[str, Any]], str]
    headers: Mapping[str, str] = field(default_factory=dict)


STYLED = {"Content-Security-Policy": STYLE_POLICY}
# The one place to give a calculation a form of its own.
FURTHER: Mapping[str, Form] = {
    "bore-survey": Form(
        "image/svg+xml",
        ".svg",
        "a picture of the bore: both axes by depth, new size, limit and doubt",
        bore_picture.picture,
    ),
    "job-card": Form(
        "text/html", ".html", "the job card as a page to read or print", job_page.page, STYLED
    ),
    "order-card": Form(
        "text/html", ".html", "the order card as a page to print", order_page.page, STYLED
    ),
}


def further(calculation: Declared) -> tuple[Form, ...]:
    """Return the forms that a calculation has beyond those that all have."""
    own = FURTHER.get(calculation.name)
    return () if own is None else (own,)


def media_types(calculation: Declared) -> tuple[str, ...]:
    """Return the media types of a single answer, the default first."""
    return (JSON, TEXT, CSV, *(form.media_type for form in further(calculation)))


def suffixes(calculation: Declared) -> dict[str, str]:
    """Return the suffixes of a path that is asked by GET, each with its media type."""
    return SUFFIXES | {form.suffix: form.media_type for form in further(calculation)}
