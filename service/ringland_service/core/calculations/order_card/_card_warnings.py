"""What a written card should say better, though it may go out as it is."""

import re
from collections.abc import Callable, Sequence

from ringland_service.core.calculations.order_card import _card_words as words
from ringland_service.core.calculations.order_card._card_numbers import masked
from ringland_service.core.calculations.order_card._card_objections import (
    WARN,
    Card,
    Wrong,
    quoted,
)
from ringland_service.core.calculations.order_card._order_words import NOT_STATED

# Piston, limits and clearance are each printed in thousandths of a millimetre.
AGREE_MM = 0.0021
SAME_PISTON_MM = 0.0011
SAME_SIZE_MM = 0.03


def _wrong(code: str, found: str, why: str, right: str) -> Wrong:
    return Wrong(WARN, code, found, why, right)


def _pair(limits: tuple[float, float]) -> str:
    return f"{limits[0]:.3f} to {limits[1]:.3f} mm"


def _clearance(card: Card) -> Wrong | None:
    piston = card.sizes.piston_mm or card.known.piston_mm
    wanted = card.sizes.clearance_mm or card.known.clearance_mm
    finish = card.sizes.finish_mm
    if piston is None or wanted is None or finish is None:
        return None
    given = (finish[0] - piston, finish[1] - piston)
    if all(abs(is_ - was) <= AGREE_MM for is_, was in zip(given, wanted, strict=True)):
        return None
    return _wrong(
        "clearance_does_not_follow",
        f"finish bore {_pair(finish)}, piston {piston:.3f} mm",
        f"they give a clearance of {_pair(given)}, and {_pair(wanted)} is wanted",
        f"finish bore {_pair((piston + wanted[0], piston + wanted[1]))}, or another piston",
    )


def _other_piston(card: Card) -> Wrong | None:
    on_card, known = card.sizes.piston_mm, card.known.piston_mm
    if on_card is None or known is None or abs(on_card - known) <= SAME_PISTON_MM:
        return None
    return _wrong(
        "not_the_known_piston",
        f"piston {on_card:.3f} mm",
        f"the piston known here measures {known:.3f} mm",
        "measure again, and send that piston with the cylinder",
    )


def _no_limits(card: Card) -> Wrong | None:
    work = card.boring or card.honing
    if not work or card.sizes.finish_mm is not None:
        return None
    return _wrong(
        "finish_limits_missing",
        quoted(card, work),
        "no finish bore can be read on the card as two limits with their unit",
        "such as: finish bore 68.491 to 68.501 mm at 20 °C",
    )


def _inch_alone(card: Card) -> Wrong | None:
    inches = [one for one in card.figures if one.unit in ("in", "thou") and one.mm is not None]
    sizes = [one.mm for one in card.figures if one.unit in ("mm", "cm") and one.mm is not None]
    alone = [
        (one.start, one.end)
        for one in inches
        if not any(abs((one.mm or 0.0) - size) <= SAME_SIZE_MM for size in sizes)
    ]
    if not alone:
        return None
    return _wrong(
        "inch_without_mm",
        quoted(card, alone, 2),
        "a size in inches has no size in mm beside it that agrees with it",
        "the same size in mm as well, such as 68.501 mm (2.69689 in)",
    )


COMMA = re.compile(r"(?<![\w.,])[0-9]{1,6},[0-9]{1,4}(?![0-9]|[.,][0-9])")


def _decimal_comma(card: Card) -> Wrong | None:
    spans = [found.span() for found in COMMA.finditer(masked(card.text))]
    if not spans:
        return None
    return _wrong(
        "decimal_comma",
        quoted(card, spans, 2),
        "a comma can be read as a decimal, a thousands mark, or a list",
        "a decimal point throughout, such as 68.491 mm",
    )


HATCH = re.compile(
    r"\b(?:cross-?\s?hatch\w*|hatch\s+angle|hon(?:e|ing)\s+angle)\b"
    r"|\bhon(?:e|ed|ing)\s+(?:it\s+)?at\s+(?=[0-9.,]+\s?(?:°|deg))",
    re.IGNORECASE,
)
WHICH_ANGLE = re.compile(r"\bincluded\b|\bhorizontal\b|\beach\s+line\b", re.IGNORECASE)
DEGREES = re.compile(r"[0-9]\s?(?:°(?!\s?[CF]\b)|deg)", re.IGNORECASE)
REACH = 70


def _angle(card: Card) -> Wrong | None:
    spans = []
    for found in HATCH.finditer(card.text):
        near = card.text[found.start() : found.end() + REACH].split("\n")[0]
        about = card.text[max(0, found.start() - REACH) : found.end() + 2 * REACH]
        if DEGREES.search(near) and not WHICH_ANGLE.search(about):
            spans.append(found.span())
    if not spans:
        return None
    return _wrong(
        "angle_not_told",
        quoted(card, spans, REACH // 3),
        "45° is said of the included angle by some, of each line from horizontal by others",
        "such as: included angle 45°, each line 22.5° from horizontal",
    )


STOP = re.compile(
    r"\b(?:stop|call|phone|ring|ask)\b(?=\s+(?:and|us|me|first|before|here|if|the\s+workshop|\+?[0-9]))"
    r"|\bstop\b|\bbefore\s+(?:the|any)\s+next\s+cut\b|\bmeasuring\s+cut\b",
    re.IGNORECASE,
)


def _no_stop(card: Card) -> Wrong | None:
    work = card.boring or card.sleeving
    if not work or words.said(card.text, STOP).meant:
        return None
    return _wrong(
        "no_stop_order",
        quoted(card, work),
        "the card does not say when to stop and call",
        "such as: if it does not clean up at 68.436 mm, stop and call",
    )


def _not_stated(card: Card) -> Wrong | None:
    spans = [found.span() for found in re.finditer(re.escape(NOT_STATED), card.text)]
    if not spans:
        return None
    return _wrong(
        "not_stated",
        quoted(card, spans, 30),
        "the card itself says that something is not stated",
        "write it in",
    )


WARNINGS: Sequence[Callable[[Card], Wrong | None]] = (
    _clearance,
    _other_piston,
    _no_limits,
    _inch_alone,
    _decimal_comma,
    _angle,
    _no_stop,
    _not_stated,
)
