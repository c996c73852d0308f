"""An answer for people: aligned lines, a unit on every number, verdicts in words."""

import textwrap
from collections.abc import Mapping, Sequence
from decimal import Decimal
from typing import Any

from ringland_service.api.shapes.members import Member, Shape, given
from ringland_service.api.writing.printed import REMARK
from ringland_service.api.writing.text_table import table
from ringland_service.core.declare import Calculation
from ringland_service.core.declare.notices import UNSTATED
from ringland_service.core.metrology.conformity import WORDS
from ringland_service.core.metrology.unjudged import WHY

STANDING_WORDS = {
    "maker": "maker",
    "common_practice": "common practice",
    "standard": "standard",
    "computed": "computed",
}


def plain(value: float, digits: int | None = None) -> str:
    """Return a number as text: decimal point, no exponent, no thousands separator."""
    if digits is not None:
        text = f"{value:.{digits}f}"
        return text[1:] if text.startswith("-") and not float(text) else text
    text = repr(float(value))
    if "e" in text:
        text = f"{Decimal(text):f}"
    text = text.removesuffix(".0")
    return "0" if text == "-0" else text


def shown(member: Member, value: Any) -> str:
    """Return the JSON value of a declared field as text."""
    shape = member.shape
    if shape is Shape.QUANTITY:
        return quantity(value)
    if shape is Shape.QUANTITIES:
        return quantities(value)
    if shape is Shape.SECTION:
        return _members(member, value)
    if shape is Shape.RECORDS:
        rows = (f"({i}) {_members(member, row)}" for i, row in enumerate(value, 1))
        return "; ".join(rows) or NOTHING
    if shape is Shape.LIST:
        told = told_list(value)
        known = told.keys() > {"values"}
        return quantities(told, member.digits) if known else _list(told["values"], member.digits)
    told = told_value(value)
    return quantity(told, member.digits) if told.keys() > {"value"} else bare(value, member.digits)


def told_value(value: Any) -> Mapping[str, Any]:
    """Return a quantity, or a bare value as one without a unit; see ``printed``."""
    return value if isinstance(value, Mapping) else {"value": value}


def told_list(value: Any) -> Mapping[str, Any]:
    """Return a list of quantities, or of bare values as one without a unit; see ``printed``."""
    return value if isinstance(value, Mapping) else {"values": value}


NOTHING = "none"


def _members(member: Member, values: Mapping[str, Any]) -> str:
    return "; ".join(f"{words_of(m.name)} {shown(m, v)}" for m, v in member.given(values))


def _list(values: Sequence[Any], digits: int | None) -> str:
    between = "; " if any("," in str(item) for item in values) else ", "
    return between.join(bare(item, digits) for item in values) or NOTHING


def bare(value: Any, digits: int | None = None) -> str:
    """Return a number, a yes or no, or a text; ``digits`` are the decimals of a number."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return plain(value, 4 if digits is None else digits)
    return value.replace("_", " ") if isinstance(value, str) else str(value)


def quantity(value: Mapping[str, Any], bare_digits: int | None = None) -> str:
    """Return a quantity, or a bare number, with its uncertainty; a remark stands for ±."""
    doubt, between = value.get("uncertainty"), value.get("interval")
    return _measured(value, [value["value"]], [doubt], [between], bare_digits)


def quantities(value: Mapping[str, Any], bare_digits: int | None = None) -> str:
    """Return a list of quantities, or of bare numbers, each with its uncertainty."""
    none = [None] * len(value["values"])
    beside = value.get("uncertainties") or none, value.get("intervals") or none
    return _measured(value, value["values"], *beside, bare_digits)


def _measured(
    value: Mapping[str, Any],
    numbers: Sequence[Any],
    doubts: Sequence[Any],
    intervals: Sequence[Any],
    bare_digits: int | None,
) -> str:
    digits = value.get("digits", 4 if bare_digits is None else bare_digits)
    if REMARK in value:
        doubts = intervals = [None] * len(numbers)
    found = zip(numbers, doubts, intervals, strict=True)
    each = ", ".join(_with_doubt(v, u, between, digits) for v, u, between in found)
    remark = f" ({value[REMARK]})" if REMARK in value else ""
    return f"{each} {value.get('unit', '')}".rstrip() + remark


def _with_doubt(value: Any, doubt: float | None, between: Any, digits: int) -> str:
    """Return a number with its expanded uncertainty and its 95 % interval, where it has them."""
    if not isinstance(value, float):
        return "–" if value is None else bare(value)
    text = plain(value, digits)
    if doubt is not None:
        text += f" ± {plain(doubt, doubt_digits(doubt, digits))}"
    return text if between is None else f"{text} ({interval(between, digits)})"


def interval(ends: Mapping[str, float], digits: int) -> str:
    """Return a 95 % interval, to the digits that its width bears."""
    enough = doubt_digits(ends["high"] - ends["low"], digits)
    return f"95 %: {plain(ends['low'], enough)} to {plain(ends['high'], enough)}"


def quantity_or_number(value: Any) -> tuple[Any, str]:
    """Return number and unit of a value, limit or margin of a verdict; None where there is none.

    A verdict has quantities, or bare numbers where what it judges has no unit.
    """
    return (value["value"], value["unit"]) if isinstance(value, Mapping) else (value, "")


def judged_number(value: Any) -> str:
    """Return a value, limit or margin of a verdict as text."""
    return quantity(value) if isinstance(value, Mapping) else bare(value)


def doubt_digits(doubt: float, digits: int) -> int:
    """Return decimals enough for one figure of an uncertainty."""
    while digits < 9 and round(doubt, digits) == 0:
        digits += 1
    return digits


WIDTH = 100


def aligned(rows: Sequence[tuple[str, str]], indent: int = 2) -> list[str]:
    """Return rows of label and text, the texts in one column, long ones wrapped."""
    width = min(max((len(label) for label, _ in rows), default=0), 50)
    lines: list[str] = []
    for label, words in rows:
        head = f"{' ' * indent}{label:<{width}}  "
        lines += textwrap.wrap(
            head + words,
            WIDTH,
            subsequent_indent=" " * (indent + width + 2),
            break_long_words=False,
            break_on_hyphens=False,
            drop_whitespace=True,
        )
    return lines


def bullets(texts: Sequence[str], indent: int = 2) -> list[str]:
    """Return texts as wrapped lines, each begun by a dash."""
    lines: list[str] = []
    for words in texts:
        first, rest = " " * indent + "- ", " " * (indent + 2)
        lines += textwrap.wrap(
            words, WIDTH, initial_indent=first, subsequent_indent=rest, break_on_hyphens=False
        )
    return lines


def limit_sides(limit: Mapping[str, Any]) -> str:
    """Return what a limit allows, in words."""
    low, high = limit["low"], limit["high"]
    if low is not None and high is not None:
        return f"{judged_number(low)} to {judged_number(high)}"
    if high is None:
        return f"at least {judged_number(low)}"
    return f"at most {judged_number(high)}"


def limit_text(limit: Mapping[str, Any]) -> str:
    """Return a limit in words, with its standing."""
    standing = STANDING_WORDS[limit["standing"]]
    if limit.get("with_decompressor"):
        standing += ", decompressor at work"
    return f"limit {limit_sides(limit)} ({standing})"


def verdict_text(verdict: Mapping[str, Any]) -> str:
    """Return a verdict in words: value, doubt, limit, standing, word, probability."""
    word = WORDS[verdict["verdict"]].upper()
    if verdict["why"] is not None:
        word = f"{word} ({WHY[verdict['why']]})"
    coverage = "" if verdict["uncertainty"] is None or REMARK in verdict else " (k = 2)"
    parts = [f"{word}: {value_text(verdict)}{coverage}", limit_text(verdict["limit"])]
    if verdict["bias"] is not None:
        parts.append(verdict["bias"])
    if verdict["probability_within"] is not None:
        parts.append(f"probability within {_probability(verdict['probability_within'])}")
    if verdict["to_settle"] is not None:
        parts.append(f"to settle: {verdict['to_settle']['advice']}")
    if verdict["to_judge"] is not None:
        parts.append(f"to judge it: {verdict['to_judge']}")
    return "; ".join(parts)


def value_text(verdict: Mapping[str, Any]) -> str:
    """Return the value judged, with its uncertainty (k = 2) and its interval, where it has them."""
    value, doubt = verdict["value"], verdict["uncertainty"]
    if REMARK in verdict:
        return f"{judged_number(value)} ({verdict[REMARK]})"
    if doubt is None:
        return judged_number(value)
    told = value if isinstance(value, Mapping) else {"value": value}
    beside = {"uncertainty": quantity_or_number(doubt)[0], "interval": verdict["interval"]}
    return quantity({**told, **beside})


def _probability(value: float) -> str:
    """Return a probability with three decimals, never as a false certainty."""
    if value < 0.0005:
        return "below 0.001"
    return "above 0.999" if value > 0.9995 else plain(value, 3)


def verdict_lines(verdicts: Sequence[Mapping[str, Any]]) -> list[str]:
    """Return verdicts as aligned lines."""
    return aligned([(judged_on(v), verdict_text(v)) for v in verdicts])


def judged_on(verdict: Mapping[str, Any]) -> str:
    """Return what a verdict is on, and of which where several are judged."""
    of = verdict.get("of")
    return f"{verdict['words']}, {of}" if of else str(verdict["words"])


NOT_STATED = "no_uncertainty_stated"
# Said at the number itself.
SAID_THERE = (NOT_STATED, UNSTATED)


def warning_texts(warnings: Sequence[Mapping[str, Any]]) -> list[str]:
    """Return warnings as texts; the values without a stated doubt are named in one."""
    texts = [
        f"{words_of(w['field'])}: {w['message']}" for w in warnings if w["code"] not in SAID_THERE
    ]
    bare = [words_of(w["field"]) for w in warnings if w["code"] == NOT_STATED]
    if bare:
        texts.append(f"no uncertainty was stated, so the value alone decides: {', '.join(bare)}")
    return texts


def warning_lines(warnings: Sequence[Mapping[str, Any]]) -> list[str]:
    """Return warnings as lines."""
    return bullets(warning_texts(warnings))


def words_of(name: str) -> str:
    """Return a name of the wire as words."""
    return name.replace("_", " ").replace(".", ", ")


def block(title: str, lines: Sequence[str]) -> list[str]:
    """Return a titled block, or nothing where it has no lines."""
    return [title, *lines, ""] if lines else []


def results(record: type, result: Mapping[str, Any]) -> list[tuple[str, str]]:
    """Return results as rows of label and text."""
    return [
        (words_of(member.name), shown(member, value)) for member, value in given(record, result)
    ]


def result_lines(calculation: Calculation, result: Mapping[str, Any]) -> list[str]:
    """Return results as lines: aligned rows, then long lists of texts, then tables of records."""
    found = list(given(calculation.outputs, result))
    tables = [(member, value) for member, value in found if is_table(member, value)]
    lists = [(member, value) for member, value in found if is_long_list(member, value, WIDTH)]
    apart = {member.name for member, _ in (*tables, *lists)}
    rest = {name: value for name, value in result.items() if name not in apart}
    lines = aligned(results(calculation.outputs, rest))
    for member, texts in lists:
        lines += ["", f"  {words_of(member.name).upper()}", *bullets(texts)]
    for member, rows in tables:
        cells = [{words_of(m.name): cell(m, v) for m, v in member.given(row)} for row in rows]
        lines += ["", f"  {words_of(member.name).upper()}", *table(cells, WIDTH)]
    return lines


def is_long_list(member: Member, value: Any, width: int) -> bool:
    """Return whether a value is a list of texts, together longer than ``width``."""
    return is_texts(member, value) and sum(map(len, value)) > width


def is_texts(member: Member, value: Any) -> bool:
    """Return whether a value is a list of texts, with any in it."""
    if member.shape is not Shape.LIST or not isinstance(value, list):
        return False
    return bool(value) and all(isinstance(one, str) for one in value)


def is_table(member: Member, value: Any) -> bool:
    """Return whether a value is a list of records, with any in it."""
    return member.shape is Shape.RECORDS and bool(value)


def cell(member: Member, value: Any) -> str:
    """Return a member of a record as text; a text of one's own stays as it was written."""
    if isinstance(value, str) and member.choices is None:
        return value
    return shown(member, value)


def reading_text(reading: Mapping[str, str]) -> str:
    """Return a reading to take: what it is, and what measures it."""
    how = reading["instrument"]
    return f"{reading['words']} ({how})" if how else reading["words"]
