"""What is wrong with a written card, and what would be right: the ones that refuse it."""

import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field

from ringland_service.core.calculations.machining.bored import KIND_NOT_KNOWN, NEVER_BORED
from ringland_service.core.calculations.order_card import _card_words as words
from ringland_service.core.calculations.order_card._card_numbers import (
    FIGURE,
    WrittenNumber,
    figures,
    tidied,
)
from ringland_service.core.calculations.order_card._card_sizes import Sizes, sizes_of

REFUSE, WARN = "refuse", "warn"
SHOWN = 4
AROUND = 16
LONGEST_WORD = 16


@dataclass(frozen=True)
class Wrong:
    """One objection to a card; ``found`` are the card's own words."""

    severity: str
    code: str
    found: str
    why: str
    right: str


@dataclass(frozen=True)
class KnownBesides:
    """What the reader of the card knows besides."""

    bore_kind: str | None = None
    piston_size_mm: float | None = None
    clearance_mm: tuple[float, float] | None = None


@dataclass(frozen=True)
class Card:
    """A card as written, and what was read on it."""

    written: str
    text: str
    figures: tuple[WrittenNumber, ...]
    sizes: Sizes
    known: KnownBesides
    boring: tuple[words.Span, ...] = field(default=())
    honing: tuple[words.Span, ...] = field(default=())
    sleeving: tuple[words.Span, ...] = field(default=())


def read(written: str, known: KnownBesides) -> Card:
    """Return a card with everything that can be read on it."""
    text = tidied(written)
    numbers = figures(text)
    return Card(
        written,
        text,
        numbers,
        sizes_of(text, numbers),
        known,
        words.boring(text),
        words.honing(text),
        words.sleeving(text),
    )


def quoted(card: Card, spans: Iterable[words.Span], around: int = AROUND) -> str:
    """Return the card's words at some places, each with a little of what stands about them."""
    windows = _apart([_window(card.written, span, around) for span in sorted(set(spans))])
    told = [" ".join(card.written[start:stop].split()) for start, stop in windows[:SHOWN]]
    more = len(windows) - SHOWN
    return " … ".join(told) + (f" … and {more} more" if more > 0 else "")


def _window(written: str, span: words.Span, around: int) -> words.Span:
    """Return a place widened by a little, to whole words where they are short."""
    start, stop = max(0, span[0] - around), min(len(written), span[1] + around)
    least, most = max(0, start - LONGEST_WORD), min(len(written), stop + LONGEST_WORD)
    while start > least and not written[start - 1].isspace():
        start -= 1
    while stop < most and not written[stop].isspace():
        stop += 1
    return start, stop


def _apart(windows: Sequence[words.Span]) -> list[words.Span]:
    """Return windows in order, those that run into one another as one."""
    found: list[words.Span] = []
    for start, stop in windows:
        if found and start <= found[-1][1] + 1:
            found[-1] = (found[-1][0], max(stop, found[-1][1]))
        else:
            found.append((start, stop))
    return found


def _plated_and_bored(card: Card) -> Wrong | None:
    kind = card.known.bore_kind
    told = words.never_bored(card.text)
    if card.sleeving or not (told or kind in NEVER_BORED):
        return None
    work = card.boring or (() if words.by_the_plater(card.text) else card.honing)
    if not work:
        return None
    why, right = NEVER_BORED[kind if kind in NEVER_BORED else words.kind_at(card.text, told[0])]
    return Wrong(REFUSE, "plated_and_bored", quoted(card, (*told, *work)), why, right)


def _kind_left_out(card: Card) -> Wrong | None:
    work = card.boring or card.honing
    known = card.known.bore_kind not in (None, "unknown")
    if not work or known or words.tells_the_kind(card.text):
        return None
    why = "work is ordered on the bore, and the card does not say what kind of bore it is"
    right = f'write the kind in words, such as "NOT plated: iron sleeve"; {KIND_NOT_KNOWN[1]}'
    return Wrong(REFUSE, "kind_of_bore_left_out", quoted(card, work), why, right)


def _unit_missing(card: Card) -> Wrong | None:
    bare = [(one.start, one.stop) for one in card.figures if not one.unit and one.decimal]
    bare += [found.span("size") for found in BARE_ORDER.finditer(card.text)]
    if not bare:
        return None
    why = "a number without its unit: mm and inch cannot be told apart"
    right = "mm behind every size, such as 68.436 mm"
    return Wrong(REFUSE, "unit_missing", quoted(card, bare), why, right)


BARE_ORDER = re.compile(
    r"\b(?:bore|hone|rebore|overbore)\s+(?:it\s+|out\s+)?to\s+(?P<size>[0-9]{2,3})"
    r"(?![0-9]|[.,][0-9]|\s?(?:mm|cm|in\b|inch|\"|thou|deg|°|%))",
    re.IGNORECASE,
)
PLUS_MINUS = re.compile(
    rf"(?:±|\+\s?/\s?-|\+-|-\s?/\s?\+)\s?(?P<size>{FIGURE})"
    rf"|\+\s?{FIGURE}\s?(?:mm)?\s?(?:/\s?|,\s?|\s)?-\s?(?P<last>{FIGURE})",
    re.IGNORECASE,
)


def _plus_minus(card: Card) -> Wrong | None:
    by_place = {one.start: one for one in card.figures}
    spans = []
    for found in PLUS_MINUS.finditer(card.text):
        place = found.start("size") if found.group("size") else found.start("last")
        one = by_place.get(place)
        if one is None or one.unit != "other":
            spans.append(found.span())
    if not spans:
        return None
    why = "a size with ± leaves the middle to be read as the order, and half the zone to be lost"
    right = "two limits, such as 68.491 to 68.501 mm"
    return Wrong(REFUSE, "plus_minus", quoted(card, spans), why, right)


OVERSIZE = re.compile(
    rf"(?<![\w/±+])\+\s?(?P<plus>{FIGURE})(?![0-9])(?!\s?[0-9])"
    rf"|(?<![\w.,]){FIGURE}\s?(?:mm|in\b|inch|\"|thou)?\s?(?:over(?:-?size)?\b|o/s\b)"
    r"|\b(?:first|second|third|fourth|1st|2nd|3rd|4th|next|last)\s+over(?:-?size)?\b"
    r"|\boversize\b",
    re.IGNORECASE,
)
# In each unit that a number may carry; a bare one may be hundredths of a millimetre.
MOST_OVERSIZE = {"mm": 3.0, "in": 0.12, "thou": 120.0, "cm": 60.0, "µm": 60.0, "": 60.0}


def _oversize(card: Card) -> Wrong | None:
    if card.sizes.piston_size_mm is not None:
        return None
    by_place = {one.start: one for one in card.figures}
    meant = words.said(card.text, OVERSIZE).meant
    spans = [span for span in meant if _is_oversize(card.text, span, by_place)]
    if not spans:
        return None
    why = "an oversize is a mark, not a size, and the piston's measured size is not on the card"
    right = "the piston as measured, such as piston 68.461 mm, and the finish bore as two limits"
    if card.known.piston_size_mm is not None:
        right = f"{right}; the piston known here is {card.known.piston_size_mm:.3f} mm"
    return Wrong(REFUSE, "oversize_without_piston", quoted(card, spans), why, right)


def _is_oversize(text: str, span: words.Span, by_place: dict[int, WrittenNumber]) -> bool:
    found = OVERSIZE.match(text, span[0])
    if found is None or found.group("plus") is None:
        return True
    one = by_place.get(found.start("plus"))
    if one is None or one.unit == "other":
        return False
    return one.value <= MOST_OVERSIZE[one.unit]


INTERFERENCE = re.compile(r"\binterference\b", re.IGNORECASE)
HEAT = re.compile(
    r"\b(?:heat(?:ed)?|oven|warm(?:ed)?)\b[^\n]{0,60}?[0-9]\s?°?\s?[CF]\b", re.IGNORECASE
)
REACH = 50


def _sleeve(card: Card) -> Wrong | None:
    if not card.sleeving:
        return None
    lacking = []
    if not _has_interference(card):
        lacking.append("its interference")
    if not HEAT.search(card.text):
        lacking.append("the heat that it goes in by")
    if not lacking:
        return None
    why = f"a sleeve is ordered without {' and '.join(lacking)}"
    right = "such as: 0.110 mm interference on the diameter at 20 °C, cylinder heated to 115 °C"
    return Wrong(REFUSE, "sleeve_without_fit", quoted(card, card.sleeving), why, right)


def _has_interference(card: Card) -> bool:
    lengths = [one for one in card.figures if one.mm is not None]
    return any(
        found.start() - REACH <= one.start <= found.end() + REACH
        for found in INTERFERENCE.finditer(card.text)
        for one in lengths
    )


REFUSALS: Sequence[Callable[[Card], Wrong | None]] = (
    _plated_and_bored,
    _kind_left_out,
    _unit_missing,
    _plus_minus,
    _oversize,
    _sleeve,
)
