"""The sizes on a written card: piston, finish limits, clearance, as far as they can be told."""

import itertools
import re
from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass

from ringland_service.core.calculations.order_card._card_numbers import WrittenNumber
from ringland_service.core.quantities.lengths import BORE, PISTON

Limits = tuple[float, float]
PISTON_WORD = re.compile(r"\bpistons?\b(?!\s+(?:clearance|pin|rings?))", re.IGNORECASE)
CLEARANCE_WORD = re.compile(r"\bclearance\b|\bfit\s+of\b", re.IGNORECASE)
# A clearance of something else.
OTHER_FIT = re.compile(
    r"\b(?:guide|stem|valve|side|ring|rod|pin|drop-?in|gasket|end)[\s-]$", re.IGNORECASE
)
LOWER = re.compile(r"\b(?:low(?:er)?|least|min(?:imum)?)\b[^0-9;\n]{0,20}$", re.IGNORECASE)
UPPER = re.compile(r"\b(?:upper?|largest|most|max(?:imum)?)\b[^0-9;\n]{0,20}$", re.IGNORECASE)
LAST_WORD = re.compile(r"[;\n]|\b(?:bore|clearance|hone|finish)\b", re.IGNORECASE)
BETWEEN_LIMITS = re.compile(r"\s*(?:to|and|-|\.\.\.?|…|/)\s*", re.IGNORECASE)
REACH = 90
MOST_ZONE_MM = 0.5
MOST_CLEARANCE_MM = 1.0


@dataclass(frozen=True)
class Sizes:
    """What the card says, in millimetres; None where it cannot be told."""

    piston_size_mm: float | None
    finish_mm: Limits | None
    clearance_mm: Limits | None


def sizes_of(text: str, figures: Sequence[WrittenNumber]) -> Sizes:
    """Return the sizes that a tidied text states."""
    piston = _piston(text, figures)
    return Sizes(
        piston.mm if piston else None,
        _finish(text, [one for one in figures if one is not piston]),
        _clearance(text, figures),
    )


def _piston(text: str, figures: Sequence[WrittenNumber]) -> WrittenNumber | None:
    for word in PISTON_WORD.finditer(text):
        for one in _near(figures, word.end()):
            if LAST_WORD.search(text, word.end(), one.start):
                break
            if one.decimal and one.mm is not None and PISTON.low <= one.mm <= PISTON.high:
                return one
    return None


def _finish(text: str, figures: Sequence[WrittenNumber]) -> Limits | None:
    for one, other in itertools.pairwise(figures):
        found = _ordered(one, other)
        if found and found[0] >= BORE.low and found[1] - found[0] <= MOST_ZONE_MM:
            joined = BETWEEN_LIMITS.fullmatch(text, one.end, other.start)
            named = LOWER.search(text[max(0, one.start - 40) : one.start]) and UPPER.search(
                text[one.end : other.start]
            )
            if joined or named:
                return found
    return None


def _clearance(text: str, figures: Sequence[WrittenNumber]) -> Limits | None:
    for word in CLEARANCE_WORD.finditer(text):
        if OTHER_FIT.search(text[max(0, word.start() - 20) : word.start()]):
            continue
        for one, other in itertools.pairwise(_near(figures, word.end())):
            found = _ordered(one, other)
            stop = re.search(r"[;\n]", text[word.end() : other.start])
            joined = BETWEEN_LIMITS.fullmatch(text, one.end, other.start)
            if found and joined and not stop and found[1] <= MOST_CLEARANCE_MM:
                return found
    return None


def _near(figures: Sequence[WrittenNumber], place: int) -> Sequence[WrittenNumber]:
    """Return the numbers that follow a place within reach; the numbers are in order."""
    first = bisect_left(figures, place, key=lambda one: one.start)
    return figures[first : bisect_left(figures, place + REACH, key=lambda one: one.start)]


def _ordered(one: WrittenNumber, other: WrittenNumber) -> Limits | None:
    """Return two lengths where the first lies under the second."""
    low, high = one.mm, other.mm
    if low is None or high is None or not low < high:
        return None
    return low, high
