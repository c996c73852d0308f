"""The numbers on a written card, each with the unit that it has, or shares with its neighbour."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from ringland_service.core.calculations.order_card._order_words import MM_PER_INCH

# One character for one, so that a place in the tidied text is the place on the card.
SAME = str.maketrans(
    {
        "−": "-",
        "–": "-",
        "—": "-",
        "‐": "-",
        "‑": "-",
        "∓": "±",
        "º": "°",
        "˚": "°",
        "μ": "µ",
        "″": '"',
        "”": '"',
        "“": '"',
        "’": "'",
        "×": "x",
        "⋅": "·",
        "•": "·",
        "Ø": " ",
        "ø": " ",
        "⌀": " ",
        "\N{NO-BREAK SPACE}": " ",
        "\N{NARROW NO-BREAK SPACE}": " ",
        "\N{THIN SPACE}": " ",
        "\t": " ",
        "\r": "\n",
    }
)
FIGURE = r"(?:[0-9]{1,9}(?:[.,][0-9]{1,9})?|[.,][0-9]{1,9})"
NUMBER = re.compile(rf"(?<![\w.,]){FIGURE}(?![0-9])(?![.,][0-9])")
# What looks like a size and is none: dates, threads, ratios, times, references, lists like 8,25,45.
NO_SIZE = re.compile(
    r"\b[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}\b"
    r"|\b[0-9]{1,2}[./][0-9]{1,2}[./][0-9]{2,4}\b"
    r"|\b(?:date|dated|by|on|until|wanted|due|before)\s*:?\s*(?:0?[1-9]|[12][0-9]|3[01])"
    r"\.(?:0?[1-9]|1[0-2])(?![0-9])\.?(?!\s?(?:mm|cm|µm|in|\"|thou|to|-))"
    r"|\bM[0-9]{1,2}(?:[.,][0-9]{1,2})?\s?[x*]\s?[0-9]{1,2}(?:[.,][0-9]{1,3})?\b"
    r"|\b[0-9]{1,3}(?:[.,][0-9]{1,3})?:[0-9]{1,3}\b(?![.,][0-9])"
    r"|\b(?:(?:job|ref|reference|tel|phone)\b(?:\s?(?:no|nr|number)\b)?"
    r"|(?:order|part|serial|engine)\s(?:no|nr|number)\b)\s?\.?\s?[:#]?\s?[\w./-]{0,40}"
    r"|(?<![\w.,])[0-9]{1,3}(?:,[0-9]{1,3}){2,}(?![\w.,])"
    r"|^\s{0,8}[0-9]{1,2}[.)](?=\s)",
    re.IGNORECASE | re.MULTILINE,
)
LENGTH_UNITS = {
    "mm": r"mm\b|millimet(?:er|re)s?\b",
    "cm": r"cm\b|centimet(?:er|re)s?\b",
    "µm": r"µm\b|um\b|microns?\b",
    "thou": r"thou(?:sandths?)?\b",
    "in": r"inch(?:es)?\b|in\b\.?(?!\s+(?:the|a|an|this|that|each|all|its|every|both|place|order"
    r"|our|your|one|two|to)\b)|\"|''",
}
MM = {"mm": 1.0, "cm": 10.0, "µm": 0.001, "thou": MM_PER_INCH / 1000.0, "in": MM_PER_INCH}
MONEY = (
    r"€|\$|£|(?:EUR|USD|GBP|CHF|SEK|NOK|DKK|PLN|CZK|HUF|RON|JPY|CNY|INR|AUD|CAD|NZD|ZAR|BRL|MXN|TRY"
    r"|euros?|dollars?|pounds?)\b"
)
OTHER_UNITS = (
    rf"°\s?[CFK]?\b|°|deg(?:rees?)?\b|C\b|N\s?[·.*-]?\s?m\b|lbf?[·.\s-]?ft\b|ft[·.\s-]?lbf?\b"
    rf"|kgf?[·.\s-]?c?m\b|kPa\b|MPa\b|bar\b|psi\b|kg\b|g\b|oz\b|ml\b|l\b|lit(?:er|re)s?\b|cc\b"
    rf"|cm3\b|cm³|%|per\s?cent\b|K\b|rpm\b|/min\b|m/s\b|m/min\b|h\b|hrs?\b|hours?\b|min(?:utes?)?\b"
    rf"|days?\b|weeks?\b|km\b|V\b|x\b|times\b|{MONEY}"
)
UNIT = re.compile(
    r"\s?-?(?:"
    + "|".join(f"(?P<u{k}>{words})" for k, words in enumerate(LENGTH_UNITS.values()))
    + rf"|(?P<other>{OTHER_UNITS}))",
    re.IGNORECASE,
)
UNIT_OF_GROUP = {**{f"u{k}": name for k, name in enumerate(LENGTH_UNITS)}, "other": "other"}
LINK = re.compile(
    r"\s*(?:,\s*(?:and|or)?|to|and|or|through|up\s+to|-|±|\+/-|\+-|/|x|\.\.\.?|…)\s*", re.IGNORECASE
)
PRICED = re.compile(
    rf"(?:{MONEY}|\b(?:price|cost|quote|budget)(?:\s+limit)?\s?[:=]?\s?(?:is|of|at|max)?)\s?$",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class WrittenNumber:
    """A number on the card. ``end`` is behind its own unit, where it has one.

    ``unit`` is a key of ``MM``, ``other``, or empty; ``linked`` says that the next number belongs
    to it, as in 68.491 to 68.501.
    """

    start: int
    stop: int
    end: int
    written: str
    value: float
    unit: str
    linked: bool = False

    @property
    def mm(self) -> float | None:
        """The number as a length, where it is one."""
        return self.value * MM[self.unit] if self.unit in MM else None

    @property
    def decimal(self) -> bool:
        """Whether it is written with a fraction, as sizes are."""
        return "." in self.written or "," in self.written


def tidied(written: str) -> str:
    """Return the text with one form of each sign; every place stays where it is."""
    return written.translate(SAME)


def masked(text: str) -> str:
    """Return the text with everything blanked out that looks like a size and is none."""
    return NO_SIZE.sub(lambda found: " " * len(found.group()), text)


def figures(text: str) -> tuple[WrittenNumber, ...]:
    """Return the numbers of a tidied text in order, without dates, threads and references."""
    seen = list(_seen(masked(text)))
    found: list[WrittenNumber] = []
    after = ""
    for k in range(len(seen) - 1, -1, -1):
        one = seen[k]
        linked = k + 1 < len(seen) and _linked(text, one, seen[k + 1])
        unit = one.unit or (after if linked else "")
        after = unit
        found.append(replace(one, unit=unit, linked=linked))
    return tuple(reversed(found))


def _seen(text: str) -> Iterator[WrittenNumber]:
    for number in NUMBER.finditer(text):
        unit = UNIT.match(text, number.end())
        end = unit.end() if unit else number.end()
        written = number.group()
        value = float(written.replace(",", "."))
        own = _unit(text, number, unit)
        yield WrittenNumber(number.start(), number.end(), end, written, value, own)


def _unit(text: str, number: re.Match[str], unit: re.Match[str] | None) -> str:
    if unit is not None:
        return UNIT_OF_GROUP[str(unit.lastgroup)]
    return "other" if PRICED.search(text, max(0, number.start() - 40), number.start()) else ""


def _linked(text: str, one: WrittenNumber, other: WrittenNumber) -> bool:
    return LINK.fullmatch(text, one.end, other.start) is not None
