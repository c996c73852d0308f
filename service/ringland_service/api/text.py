"""An answer for people: aligned lines, a unit on every number, verdicts in words; and as CSV."""

import csv
import io
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from ringland_service.core.verdicts import WORDS

STANDING_WORDS = {
    "maker": "maker",
    "common_practice": "common practice",
    "standard": "standard",
    "computed": "computed",
}
LONGEST_NUMBER = 24


def plain(value: float, digits: int | None = None) -> str:
    """Return a number as text: decimal point, no exponent, no thousands separator."""
    if digits is not None:
        text = f"{value:.{digits}f}"
        return text[1:] if text.startswith("-") and not float(text) else text
    text = repr(float(value))
    if "e" in text:
        text = f"{value:.20f}".rstrip("0")
    return text.removesuffix(".0") or "0"


def shown(value: Any) -> str:
    """Return a JSON value of an answer as text."""
    if isinstance(value, Mapping):
        return _quantity(value)
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return plain(value, 4)
    if isinstance(value, list):
        return ", ".join(shown(item) for item in value)
    return str(value).replace("_", " ") if isinstance(value, str) else str(value)


def _quantity(value: Mapping[str, Any]) -> str:
    if "values" in value:
        numbers = ("–" if v is None else plain(v, value["digits"]) for v in value["values"])
        return f"{', '.join(numbers)} {value['unit']}"
    if "value" not in value:
        return "; ".join(f"{name.replace('_', ' ')} {shown(v)}" for name, v in value.items())
    doubt = ""
    if value.get("uncertainty") is not None:
        doubt = f" ± {plain(value['uncertainty'], _doubt_digits(value))}"
    return f"{plain(value['value'], value.get('digits'))}{doubt} {value['unit']}"


def _doubt_digits(value: Mapping[str, Any]) -> int:
    """Return decimals enough for one figure of the doubt."""
    digits = int(value.get("digits", 3))
    while digits < 9 and round(value["uncertainty"], digits) == 0:
        digits += 1
    return digits


def aligned(rows: Sequence[tuple[str, str]], indent: int = 2) -> list[str]:
    """Return rows of label and text, the texts in one column."""
    width = max((len(label) for label, _ in rows), default=0)
    return [f"{' ' * indent}{label:<{width}}  {text}".rstrip() for label, text in rows]


def limit_text(limit: Mapping[str, Any]) -> str:
    """Return a limit in words, with its standing."""
    low, high = limit["low"], limit["high"]
    if low is not None and high is not None:
        sides = f"{shown(low)} to {shown(high)}"
    else:
        sides = f"at least {shown(low)}" if high is None else f"at most {shown(high)}"
    return f"{sides} ({STANDING_WORDS[limit['standing']]})"


def verdict_text(verdict: Mapping[str, Any]) -> str:
    """Return a verdict in words: value, doubt, limit, standing, word, probability."""
    value = dict(verdict["value"]) if isinstance(verdict["value"], Mapping) else verdict["value"]
    doubt = verdict["uncertainty"]
    if doubt is not None and isinstance(value, dict):
        value["uncertainty"] = doubt["value"]
    parts = [f"{WORDS[verdict['verdict']].upper()}: {shown(value)}", limit_text(verdict["limit"])]
    if verdict["probability_within"] is not None:
        parts.append(f"probability within {plain(verdict['probability_within'], 3)}")
    if verdict["to_settle"] is not None:
        parts.append(f"to settle: {verdict['to_settle']['advice']}")
    return "; ".join(parts)


def words_of(name: str) -> str:
    """Return a name of the wire as words."""
    return name.replace("_", " ")


def block(title: str, lines: Sequence[str]) -> list[str]:
    """Return a titled block, or nothing where it has no lines."""
    return [title, *lines, ""] if lines else []


def answer(found: Mapping[str, Any], title: str) -> str:
    """Return the answer of one calculation as text."""
    results = [(words_of(n), shown(v)) for n, v in found["result"].items()]
    verdicts = [(v["words"], verdict_text(v)) for v in found["verdicts"]]
    warnings = [f"  {w['message']}" for w in found["warnings"]]
    cautions = [f"  {line}" for line in found["cautions"]]
    lines = block(title, aligned(results))
    lines += block("Verdicts", aligned(verdicts))
    lines += block("Warnings", warnings)
    lines += block("Cautions", cautions)
    for step in found.get("trace", ()):
        lines.append(f"  {step['field']} = {step['formula']}")
        lines.append(f"  = {step['substituted']} = {plain(step['value'])} {step['unit']}".rstrip())
    return "\n".join(lines).rstrip()


COLUMNS = ("part", "name", "value", "unit", "uncertainty", "verdict", "low", "high", "standing")


def table(found: Mapping[str, Any]) -> str:
    """Return an answer as one flat CSV table."""
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for row in _rows(found):
        writer.writerow([_cell(row.get(name)) for name in COLUMNS])
    return text.getvalue()


def _cell(value: Any) -> Any:
    """Return a cell; a text that a spreadsheet would take for a formula is quoted off."""
    if value is None:
        return ""
    if isinstance(value, float):
        return plain(value)
    if isinstance(value, str) and value[:1] in ("=", "+", "-", "@"):
        return "'" + value
    return value


def _rows(found: Mapping[str, Any]) -> Iterator[dict[str, Any]]:
    for name, value in found["result"].items():
        yield from _result_rows("result", name, value)
    for verdict in found["verdicts"]:
        unit, value = _number(verdict["value"])
        yield {
            "part": "verdict",
            "name": verdict["check"],
            "value": value,
            "unit": unit,
            "uncertainty": _number(verdict["uncertainty"])[1],
            "verdict": verdict["verdict"],
            "low": _number(verdict["limit"]["low"])[1],
            "high": _number(verdict["limit"]["high"])[1],
            "standing": verdict["limit"]["standing"],
        }


def _number(value: Any) -> tuple[str, Any]:
    return (value["unit"], value["value"]) if isinstance(value, Mapping) else ("", value)


def _result_rows(part: str, name: str, value: Any) -> Iterator[dict[str, Any]]:
    if isinstance(value, Mapping) and "values" in value:
        for i, one in enumerate(value["values"]):
            yield {"part": part, "name": f"{name} {i + 1}", "value": one, "unit": value["unit"]}
    elif isinstance(value, Mapping) and "value" not in value:
        for inner, one in value.items():
            yield from _result_rows(name, inner, one)
    elif isinstance(value, list):
        for i, one in enumerate(value):
            yield from _result_rows(part, f"{name} {i + 1}", one)
    else:
        unit, number = _number(value)
        doubt = value.get("uncertainty") if isinstance(value, Mapping) else None
        yield {"part": part, "name": name, "value": number, "unit": unit, "uncertainty": doubt}
