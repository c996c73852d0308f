"""An answer for people: aligned lines, a unit on every number, verdicts in words."""

import textwrap
from collections.abc import Mapping, Sequence
from decimal import Decimal
from functools import cache
from typing import Any

from ringland_service.api.printed import REMARK, printed
from ringland_service.api.text_table import table
from ringland_service.core.declare import Calculation, declared
from ringland_service.core.fields import Field, ResultField
from ringland_service.core.notices import UNSTATED
from ringland_service.core.unjudged import WHY
from ringland_service.core.verdicts import WORDS

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


def shown(value: Any, digits: int | None = None) -> str:
    """Return a JSON value of an answer as text; ``digits`` are the decimals of a bare number."""
    if isinstance(value, Mapping):
        return _quantity(value, digits)
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return plain(value, 4 if digits is None else digits)
    if isinstance(value, list) and not value:
        return "none"
    if isinstance(value, list) and isinstance(value[0], Mapping):
        return "; ".join(f"({i + 1}) {shown(row)}" for i, row in enumerate(value))
    if isinstance(value, list):
        between = "; " if any("," in str(item) for item in value) else ", "
        return between.join(shown(item, digits) for item in value)
    return str(value).replace("_", " ") if isinstance(value, str) else str(value)


def _quantity(value: Mapping[str, Any], bare_digits: int | None) -> str:
    """Return a quantity as text, or a bare number with its uncertainty; a remark stands for ±."""
    if "values" not in value and "value" not in value:
        return "; ".join(f"{name.replace('_', ' ')} {shown(v)}" for name, v in value.items())
    numbers = value["values"] if "values" in value else [value["value"]]
    doubts = value.get("uncertainties", [value.get("uncertainty")])
    if doubts is None or len(doubts) != len(numbers) or REMARK in value:
        doubts = [None] * len(numbers)
    digits = value.get("digits", 4 if bare_digits is None else bare_digits)
    each = ", ".join(_with_doubt(v, u, digits) for v, u in zip(numbers, doubts, strict=True))
    remark = f" ({value[REMARK]})" if REMARK in value else ""
    return f"{each} {value.get('unit', '')}".rstrip() + remark


def _with_doubt(value: float | None, doubt: float | None, digits: int) -> str:
    """Return a number with its expanded uncertainty, where it has one."""
    if value is None:
        return "–"
    text = plain(value, digits)
    return text if doubt is None else f"{text} ± {plain(doubt, doubt_digits(doubt, digits))}"


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
        return f"{shown(low)} to {shown(high)}"
    return f"at least {shown(low)}" if high is None else f"at most {shown(high)}"


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
    if verdict["probability_within"] is not None:
        parts.append(f"probability within {_probability(verdict['probability_within'])}")
    if verdict["to_settle"] is not None:
        parts.append(f"to settle: {verdict['to_settle']['advice']}")
    if verdict["to_judge"] is not None:
        parts.append(f"to judge it: {verdict['to_judge']}")
    return "; ".join(parts)


def value_text(verdict: Mapping[str, Any]) -> str:
    """Return the value judged, with its expanded uncertainty (k = 2) where there is one."""
    value, doubt = verdict["value"], verdict["uncertainty"]
    if REMARK in verdict:
        return f"{shown(value)} ({verdict[REMARK]})"
    if doubt is None:
        return shown(value)
    if isinstance(value, Mapping):
        return shown({**value, "uncertainty": doubt["value"]})
    return f"{shown(value)} ± {plain(doubt, doubt_digits(doubt, 4))}"


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


@cache
def _digits(calculation: Calculation) -> Mapping[str, int | None]:
    """Return the suggested decimals of each result, by public name."""
    fields = declared(calculation.outputs)
    return {f.public(n): f.digits for n, f in fields.items() if isinstance(f, ResultField)}


def results(calculation: Calculation, result: Mapping[str, Any]) -> list[tuple[str, str]]:
    """Return results as rows of label and text."""
    digits = _digits(calculation)
    return [(words_of(name), shown(value, digits[name])) for name, value in result.items()]


def result_lines(calculation: Calculation, result: Mapping[str, Any]) -> list[str]:
    """Return results as lines: aligned rows, then long lists of texts, then tables of records."""
    tables = {name: value for name, value in result.items() if _is_table(value)}
    lists = {name: value for name, value in result.items() if _is_long_list(value)}
    rest = {name: v for name, v in result.items() if name not in tables and name not in lists}
    lines = aligned(results(calculation, rest))
    for name, texts in lists.items():
        lines += ["", f"  {words_of(name).upper()}", *bullets(texts)]
    fields = {f.public(n): f for n, f in declared(calculation.outputs).items()}
    for name, rows in tables.items():
        record = getattr(fields[name], "record", None)
        known = {f.public(n): f for n, f in declared(record).items()} if record else {}
        cells = [{words_of(n): cell(v, known.get(n)) for n, v in row.items()} for row in rows]
        lines += ["", f"  {words_of(name).upper()}", *table(cells, WIDTH)]
    return lines


def _is_long_list(value: Any) -> bool:
    texts = isinstance(value, list) and all(isinstance(one, str) for one in value)
    return texts and sum(map(len, value)) > WIDTH


def _is_table(value: Any) -> bool:
    return isinstance(value, list) and bool(value) and isinstance(value[0], Mapping)


def cell(value: Any, field: Field | None) -> str:
    """Return a member of a record as text; a text of one's own stays as it was written."""
    if isinstance(value, str) and getattr(field, "choices", None) is None:
        return value
    return shown(value, getattr(field, "digits", None))


def answer(calculation: Calculation, found: Mapping[str, Any]) -> str:
    """Return the answer of one calculation as text."""
    found = printed(calculation, found)
    lines = block(calculation.title, result_lines(calculation, found["result"]))
    lines += block("Verdicts", verdict_lines(found["verdicts"]))
    lines += block("How it was worked out", _trace(found.get("trace", ())))
    lines += block("Warnings", warning_lines(found["warnings"]))
    lines += block("Cautions", bullets(found["cautions"]))
    return "\n".join(lines).rstrip() + "\n"


def _trace(steps: Sequence[Mapping[str, Any]]) -> list[str]:
    lines = []
    for step in steps:
        number = f"{plain(step['value'])} {step['unit']}".rstrip()
        lines.append(f"  {words_of(step['field'])} = {step['formula']}")
        lines.append(f"    = {step['substituted']} = {number}")
    return lines
