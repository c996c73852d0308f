"""How a point of the order card is put into words: sizes, limits, and what is not stated."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace

MM_PER_INCH = 25.4
USUAL = "(common practice)"
NOT_STATED = "NOT STATED"


@dataclass(frozen=True)
class Missing:
    """Something that must be written in before the card goes out."""

    label: str


Phrase = str | Missing | None


@dataclass(frozen=True)
class Point:
    """One point of the card in words; ``missing`` is what it still lacks."""

    heading: str
    text: str
    missing: tuple[str, ...]


def point(heading: str, *parts: Phrase) -> Point:
    """Return a point of the card: what is said, then what is not stated."""
    said = "; ".join(part for part in parts if isinstance(part, str))
    missing = tuple(part.label for part in parts if isinstance(part, Missing))
    sentences = [_sentence(said)] if said else []
    if missing:
        sentences.append(f"{NOT_STATED}: {'; '.join(missing)}.")
    return Point(heading, " ".join(sentences), missing)


def _sentence(said: str) -> str:
    return f"{said[0].upper()}{said[1:]}."


def not_applicable(heading: str, why: str) -> Point:
    """Return a point that has nothing to say on this card."""
    return point(heading, f"not applicable: {why}")


def tidy(text: str | None) -> str:
    """Return a text of the request on one line; empty where nothing was written."""
    return " ".join((text or "").split()).rstrip(".;,: ")


def written(text: str | None, before: str, lacking: str) -> str | Missing:
    """Return a text of the request with its label, or what is lacking."""
    told = tidy(text)
    return f"{before}{told}" if told else Missing(lacking)


def mm(value: float, decimals: int = 3) -> str:
    """Return a length with its unit."""
    return f"{value:.{decimals}f} mm"


def limits(low: float, high: float) -> str:
    """Return two limits with their unit; one where they do not differ."""
    sides = [f"{side:.3f}" for side in (low, high)]
    return f"{sides[0]} to {sides[1]} mm" if sides[0] != sides[1] else f"{sides[0]} mm"


def in_inches(inches_too: bool, *sizes: float) -> str:
    """Return bore sizes in inches as well, in brackets, where the card is to give them."""
    if not inches_too:
        return ""
    return f" ({' to '.join(f'{size / MM_PER_INCH:.5f}' for size in sizes)} in)"


def degrees(value: float) -> str:
    """Return an angle with its unit, no more decimals than it needs."""
    return f"{value:.2f}".rstrip("0").rstrip(".") + "°"


def angles(low: float, high: float) -> str:
    """Return two limits of an angle; one where they do not differ."""
    sides = (degrees(low), degrees(high))
    return f"{sides[0]} to {sides[1]}" if sides[0] != sides[1] else sides[0]


def listed(texts: Iterable[str]) -> str:
    """Return texts with commas, an "and" before the last."""
    *first, last = texts
    return f"{', '.join(first)} and {last}" if first else last


@dataclass(frozen=True)
class Range:
    """Limits as the request gives them, one or both, or the usual ones with their standing."""

    low: float | None
    high: float | None
    standing: str = ""

    def mm(self) -> str:
        """Return the limits as lengths, with their standing."""
        return self._said(mm, limits)

    def degrees(self) -> str:
        """Return the limits as angles, with their standing."""
        return self._said(degrees, angles)

    def _said(self, one: Callable[[float], str], both: Callable[[float, float], str]) -> str:
        if self.low is None:
            return f"at most {one(self.high or 0.0)}{self.standing}"
        if self.high is None:
            return f"at least {one(self.low)}{self.standing}"
        return f"{both(self.low, self.high)}{self.standing}"


def given_or_usual(
    low: float | None, high: float | None, usual: Sequence[float] | None = None
) -> Range | None:
    """Return the limits of the request, else the usual ones."""
    if low is not None or high is not None:
        return Range(low, high)
    return None if usual is None else Range(usual[0], usual[-1], f" {USUAL}")


def chamfer(width: Range | None, angle: Range | None, where: str, lacking: str) -> str | Missing:
    """Return a chamfer in words; the standing is said once where both figures have it."""
    if width is None or angle is None:
        return Missing(lacking)
    both = width.standing and angle.standing
    if both:
        width, angle = replace(width, standing=""), replace(angle, standing="")
    return f"chamfer {where} {width.mm()} wide at {angle.degrees()} to the wall{both}"
