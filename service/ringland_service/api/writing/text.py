"""An answer for people: aligned lines, a unit on every number, verdicts in words."""

import textwrap
from collections.abc import Mapping, Sequence
from typing import Any

from ringland_service.api.json_types import AnswerJson, JudgedJson, LimitJson, VerdictJson
from ringland_service.api.shapes.figures import (
    REMARK,
    bare,
    is_texts,
    plain,
    quantity,
    told_value,
    words_of,
)
from ringland_service.api.shapes.members import Member, given
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


def quantity_or_number(value: JudgedJson | None) -> tuple[Any, str]:
    """Return number and unit of a value, limit or margin of a verdict; None where there is none.

    A verdict has quantities, or bare numbers where what it judges has no unit.
    """
    return (value["value"], value["unit"]) if isinstance(value, Mapping) else (value, "")


def judged_number(value: JudgedJson | None) -> str:
    """Return a value, limit or margin of a verdict as text."""
    return quantity(told_value(value)) if isinstance(value, Mapping) else bare(value)


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


def limit_sides(limit: LimitJson) -> str:
    """Return what a limit allows, in words."""
    low, high = limit["low"], limit["high"]
    if low is not None and high is not None:
        return f"{judged_number(low)} to {judged_number(high)}"
    if high is None:
        return f"at least {judged_number(low)}"
    return f"at most {judged_number(high)}"


def limit_text(limit: LimitJson) -> str:
    """Return a limit in words, with its standing."""
    standing = STANDING_WORDS[limit["standing"]]
    if limit.get("with_decompressor"):
        standing += ", decompressor at work"
    return f"limit {limit_sides(limit)} ({standing})"


def verdict_text(verdict: VerdictJson) -> str:
    """Return a verdict in words: value, uncertainty, limit, standing, word, probability."""
    word = WORDS[verdict["verdict"]].upper()
    if verdict["why"] is not None:
        word = f"{word} ({WHY[verdict['why']]})"
    coverage = "" if verdict["uncertainty"] is None or REMARK in verdict else " (k = 2)"
    parts = [f"{word}: {value_text(verdict)}{coverage}", limit_text(verdict["limit"])]
    if verdict["bias"] is not None:
        parts.append(verdict["bias"])
    if verdict["conformance_probability"] is not None:
        parts.append(f"probability within {_probability(verdict['conformance_probability'])}")
    if verdict["to_settle"] is not None:
        parts.append(f"to settle: {verdict['to_settle']['advice']}")
    if verdict["to_judge"] is not None:
        parts.append(f"to judge it: {verdict['to_judge']}")
    return "; ".join(parts)


def value_text(verdict: VerdictJson) -> str:
    """Return the value judged, with its uncertainty (k = 2) and its interval, where it has them."""
    value, uncertainty = verdict["value"], verdict["uncertainty"]
    if REMARK in verdict:
        return f"{judged_number(value)} ({verdict[REMARK]})"
    if uncertainty is None:
        return judged_number(value)
    told = told_value(value)
    expanded = quantity_or_number(uncertainty)[0]
    return quantity({**told, "uncertainty": expanded, "interval": verdict["interval"]})


def _probability(value: float) -> str:
    """Return a probability with three decimals, never as a false certainty."""
    if value < 0.0005:
        return "below 0.001"
    return "above 0.999" if value > 0.9995 else plain(value, 3)


def verdict_lines(verdicts: Sequence[VerdictJson]) -> list[str]:
    """Return verdicts as aligned lines."""
    return aligned([(judged_on(v), verdict_text(v)) for v in verdicts])


def judged_on(verdict: VerdictJson) -> str:
    """Return what a verdict is on, and of which where several are judged."""
    of = verdict.get("of")
    return f"{verdict['label']}, {of}" if of else str(verdict["label"])


NOT_STATED = "no_uncertainty_stated"
# Said at the number itself.
SAID_THERE = (NOT_STATED, UNSTATED)


def warning_texts(warnings: Sequence[AnswerJson]) -> list[str]:
    """Return warnings as texts; the values without a stated uncertainty are named in one."""
    texts = [
        f"{words_of(w['field'])}: {w['message']}" for w in warnings if w["code"] not in SAID_THERE
    ]
    bare = [words_of(w["field"]) for w in warnings if w["code"] == NOT_STATED]
    if bare:
        texts.append(f"no uncertainty was stated, so the value alone decides: {', '.join(bare)}")
    return texts


def warning_lines(warnings: Sequence[AnswerJson]) -> list[str]:
    """Return warnings as lines."""
    return bullets(warning_texts(warnings))


def block(title: str, lines: Sequence[str]) -> list[str]:
    """Return a titled block, or nothing where it has no lines."""
    return [title, *lines, ""] if lines else []


def results(record: type, result: AnswerJson) -> list[tuple[str, str]]:
    """Return results as rows of label and text."""
    return [(words_of(m.name), m.shape.text(value)) for m, value in given(record, result)]


def result_lines(calculation: Calculation, result: AnswerJson) -> list[str]:
    """Return results as lines: aligned rows, then long lists of texts, then tables of records."""
    found = list(given(calculation.outputs, result))
    tables = [(member, value) for member, value in found if member.shape.is_table and value]
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


def is_long_list(member: Member, value: object, width: int) -> bool:
    """Return whether a value is a list of texts, together longer than ``width``."""
    return member.shape.is_bare_list and is_texts(value) and sum(map(len, value)) > width


def cell(member: Member, value: object) -> str:
    """Return a member of a record as text; a text of one's own stays as it was written."""
    if isinstance(value, str) and member.shape.choices is None:
        return value
    return member.shape.text(value)


def reading_text(reading: Mapping[str, str]) -> str:
    """Return a reading to take: what it is, and what measures it."""
    how = reading["instrument"]
    return f"{reading['description']} ({how})" if how else reading["description"]
