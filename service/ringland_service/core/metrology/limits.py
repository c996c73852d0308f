"""A limit with its standing, and the table of common-practice limits.

Standings: ``maker`` (the maker's figure for the part in hand; it always wins),
``common_practice`` (what shops use when no maker's figure is at hand), ``standard`` and
``computed`` (follows from the formula alone).
"""

from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from ringland_service.core.numbers import Number
from ringland_service.core.tables import read_table
from ringland_service.core.tables.sources import NO_SOURCE, cited

STANDINGS = {
    "maker": "the maker's figure for the part in hand; it always wins",
    "common_practice": "what shops use when no maker's figure is at hand; no published source",
    "standard": "a published standard or handbook, named as the source",
    "computed": "follows from the formula alone",
}


@dataclass(frozen=True)
class Limit:
    """The limits that a value is judged by, in the value's canonical unit; inclusive.

    ``with_decompressor`` says that it is stated for a reading with the decompressor at work.
    """

    low: Number | None = None
    high: Number | None = None
    standing: str = "maker"
    source: str = ""
    with_decompressor: bool = False


@dataclass(frozen=True)
class LimitRow:
    """A row of the table of common-practice limits.

    ``per`` names what ``low`` and ``high`` are multiplied by (``bore``), or is empty.
    """

    id: str
    check: str
    words: str
    kind: str
    low: float | None = None
    high: float | None = None
    per: str = ""
    standing: str = "common_practice"
    source: str = NO_SOURCE

    def limit(self, times: Number = 1.0) -> Limit:
        """Return the row as a limit, scaled where the row is a share of something."""
        scaled = [None if side is None else side * times for side in (self.low, self.high)]
        return Limit(scaled[0], scaled[1], self.standing, f"{self.words}; {self.source}")

    def only_high(self) -> "LimitRow":
        """Return the row without its lower side."""
        return replace(self, low=None)


LIMITS: dict[str, LimitRow] = {
    row["id"]: LimitRow(**{**row, "source": cited(row.get("source", NO_SOURCE))})
    for row in read_table("limits")
}


@dataclass(frozen=True)
class Grade:
    """A ladder of grading words; the first step that a value meets gives the word."""

    id: str
    words: str
    steps: tuple[dict[str, Any], ...]
    otherwise: str
    standing: str = "common_practice"
    source: str = NO_SOURCE

    def word(self, value: Number) -> Any:
        """Return the word for a value, or a column of words for a column."""
        met = [_meets(step, value) for step in self.steps]
        words = [step["word"] for step in self.steps]
        if isinstance(value, np.ndarray):
            return np.select(met, words, default=self.otherwise)
        return next((w for w, m in zip(words, met, strict=True) if m), self.otherwise)

    @property
    def choices(self) -> dict[str, str]:
        """The words that the ladder can give, as tokens with their text."""
        tokens = [step["word"] for step in self.steps] + [self.otherwise]
        return {token: token.replace("_", " ") for token in tokens}


def _meets(step: dict[str, Any], value: Number) -> Any:
    """Return whether a value meets a step; equality up to 1e-9 counts as equal."""
    if "above" in step:
        return value - step["above"] > 1e-9 * abs(step["above"])
    return step["at_least"] - value <= 1e-9 * abs(step["at_least"])


GRADES: dict[str, Grade] = {
    row["id"]: Grade(**{**row, "steps": tuple(row["steps"])}) for row in read_table("grades")
}
