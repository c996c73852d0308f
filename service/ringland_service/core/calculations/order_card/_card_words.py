"""What a written card says of the kind of bore and of the work; denied words are told apart."""

import re
from dataclasses import dataclass

Span = tuple[int, int]
FLAGS = re.IGNORECASE
# Where a thought ends: a denial before it says nothing of what follows.
BREAK = re.compile(r"[,;:()\n]|[.!?](?=\s|$)")
NO_WORD = (
    r"(?:not|no|never|nor|neither|without|don't|dont|doesn't|isn't|won't|cannot|can't|mustn't"
    r"|refuse|instead\s+of)"
)
# "do not bore", "must not be bored", "no boring", "not a plated one"; an "and" ends the denial.
DENIED_BEFORE = re.compile(
    rf"\b{NO_WORD}\s+(?:(?!(?:and|but|then|only)\b)[^\W\d][\w'-]*\s+){{0,4}}$|\b(?:non|un)[- ]?$",
    FLAGS,
)
# "plated: no", "boring? none"; the denial is all that stands there.
DENIED_AFTER = re.compile(
    r"\s?(?:\(?\s?yes\s?/\s?no\s?\)?\s?)?[?:=]\s?(?:no|none|n|not\s+applicable|n/a|-)\s?"
    r"(?=[,.;)\n]|$)",
    FLAGS,
)
UNKNOWN_AFTER = re.compile(
    r"\s?(?:\(?\s?yes\s?/\s?no\s?\)?\s?)?[?:=]\s?(?:not\s+(?:known|stated|sure)|unknown|\?|_|$|\n)",
    FLAGS,
)
LOOK_BACK = 80

PLATED = re.compile(
    r"\b(?:chrome-?\s?)?plated\b|\bplating\b(?!\s+(?:maker|shop|firm))"
    r"|\b(?:hard[- ]?)?chrom(?:ed|e)\b(?!\s+(?:rings?|piston\s+rings?|top\s+rings?|faces?))",
    FLAGS,
)
SILICON = re.compile(r"\bbare\s+silicon\b|\bsilicon\s+alumini?um\b|\bsilicon\s+bore\b", FLAGS)
IRON = re.compile(
    r"\biron\b(?!\s+(?:rings?|piston|oil)\b)|\bsteel\s+(?:liner|sleeve)\b|\bunplated\b", FLAGS
)

BORE = re.compile(
    r"\b(?P<again>re-?|over-?)bor(?:e|ed|ing)\b"
    r"|\bbored\b(?!-)"
    r"|\bboring\b(?!\s*(?:cent(?:re|er)|bar|machine|shop|operator|oil))"
    r"|\bbore\s+(?P<verb>(?:it|them|this\s+one|out|up|oversize|and\s+(?:then\s+)?hone|&\s*hone"
    r"|(?:the\s+)?(?:cylinder|sleeve|liner|barrel)s?\s+(?:to|out|oversize)|to)\b)"
    r"|\bbore\s+(?P<size>\+\s?)?(?=\.?[0-9])",
    FLAGS,
)
# "finish bore 68.491", "hone the bore to": here bore is a thing, not an order.
THING = r"the|this|its|his|of|each|every|cylinder|gasket|mid|pin|in|a|an|per|whole|same"
SIZED = (
    r"finish(?:ed)?|final|nominal|unworn|worn|new|old|largest|smallest|mean|measured|standard"
    r"|upper|lower|iron|plated|chromed|sound|existing|max(?:imum)?|min(?:imum)?"
)
A_THING = re.compile(rf"\b(?:{THING})[\s-]$", FLAGS)
A_SIZED_THING = re.compile(rf"\b(?:{THING}|{SIZED})[\s-]$", FLAGS)
HONE = re.compile(
    r"\b(?:re-?)?hon(?:e\b(?!\s+(?:stock|grit|marks?|stones?|lines?|shop|stroke|removal))|ed\b"
    r"|ing\b(?!\s+(?:stones?|oil|angle|lines?|stock|machine)))",
    FLAGS,
)
SLEEVE = re.compile(
    r"\b(?:fit|fitted|press|pressed|shrink|install|insert|drop|put)\b[^.;\n]{0,40}?\b(?:sleeve|liner)\b"
    r"|\bre-?(?:sleev(?:e|ed|ing)|lin(?:e|ed|ing))\b"
    r"|\bsleev(?:ing\b|e\s+(?:it|the\s+(?:cylinder|bore)|with|to\s+standard)\b)"
    r"|\bnew\s+(?:iron\s+)?(?:sleeve|liner)\b",
    FLAGS,
)
BY_THE_PLATER = re.compile(
    r"\bplat(?:ing\s+maker|er)'?s?\b|\bre-?plat(?:e|ed|ing)\b|\bdiamond\b", FLAGS
)


@dataclass(frozen=True)
class Said:
    """Where words stand that the card means, and where it denies them."""

    meant: tuple[Span, ...]
    denied: tuple[Span, ...]
    unknown: tuple[Span, ...] = ()


def said(text: str, words: re.Pattern[str]) -> Said:
    """Return where a tidied text means some words, denies them, or leaves them open."""
    meant, denied, unknown = [], [], []
    for found in words.finditer(text):
        span = found.span()
        if _denied(text, span):
            denied.append(span)
        elif UNKNOWN_AFTER.match(text, span[1]):
            unknown.append(span)
        else:
            meant.append(span)
    return Said(tuple(meant), tuple(denied), tuple(unknown))


def _denied(text: str, span: Span) -> bool:
    before = text[max(0, span[0] - LOOK_BACK) : span[0]]
    thought = list(BREAK.finditer(before))
    start = thought[-1].end() if thought else 0
    return bool(DENIED_BEFORE.search(before, start) or DENIED_AFTER.match(text, span[1]))


def boring(text: str) -> tuple[Span, ...]:
    """Return where the card orders boring."""
    return tuple(span for span in said(text, BORE).meant if _is_order(text, span))


def _is_order(text: str, span: Span) -> bool:
    found = BORE.match(text, span[0])
    if found is None or not found.group().lower().startswith("bore "):
        return True
    before = text[max(0, span[0] - 20) : span[0]]
    verb = found.group("verb")
    if verb is None:
        return not A_SIZED_THING.search(before)
    return not (verb.lower() == "to" and A_THING.search(before))


def honing(text: str) -> tuple[Span, ...]:
    """Return where the card orders honing."""
    return said(text, HONE).meant


def sleeving(text: str) -> tuple[Span, ...]:
    """Return where the card orders a sleeve to be fitted."""
    return said(text, SLEEVE).meant


def never_bored(text: str) -> tuple[Span, ...]:
    """Return where the card says that the bore is plated, chromed or bare silicon."""
    return tuple(sorted(said(text, PLATED).meant + said(text, SILICON).meant))


def kind_at(text: str, span: Span) -> str:
    """Return which of the kinds that are never bored stands at a place."""
    if SILICON.match(text, span[0]):
        return "bare_silicon_aluminium"
    return (
        "chromed" if text[span[0] :].lower().startswith(("chrom", "hard")) else "plated_aluminium"
    )


def tells_the_kind(text: str) -> bool:
    """Return whether the card says what kind of bore it is, or that it is not plated."""
    plated = said(text, PLATED)
    return bool(
        plated.meant or plated.denied or said(text, IRON).meant or said(text, SILICON).meant
    )


def by_the_plater(text: str) -> bool:
    """Return whether the card leaves the surface to the plating maker's method."""
    return bool(said(text, BY_THE_PLATER).meant)
