"""A strict reader of the service's pages."""

from html.parser import HTMLParser
from typing import Any

from flask.testing import FlaskClient

# Elements without an end tag (HTML Living Standard, void elements, from memory).
VOID = {"br", "meta"}


class Reader(HTMLParser):
    """Reads a page strictly: every element is ended, in order; texts by element."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.elements: list[tuple[str, dict[str, str | None]]] = []
        self.texts: list[tuple[str, str]] = []
        self.feed(page)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        assert "svg" in self.open, f"<{tag}/> ends nothing outside a picture"
        self.elements.append((tag, dict(attrs)))

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if data.strip() and "style" not in self.open:
            self.texts.append((self.open[-1], " ".join(data.split())))

    def told(self, *tags: str) -> list[str]:
        return [words for tag, words in self.texts if not tags or tag in tags]


def read(client: FlaskClient, card: str, asked: Any, units: str = "metric") -> Reader:
    """Return a page as read."""
    answer = client.post(f"/v1/{card}.html?units={units}", json=asked)
    assert answer.status_code == 200, answer.text
    return Reader(answer.text)
