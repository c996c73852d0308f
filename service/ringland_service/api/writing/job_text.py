"""A composite's answer for people: parts, verdicts, what to measure next, cautions."""

from collections.abc import Mapping, Sequence
from typing import Any

from ringland_service.api.writing.printed import printed
from ringland_service.api.writing.text import (
    aligned,
    block,
    bullets,
    reading_text,
    result_lines,
    verdict_lines,
    warning_lines,
    words_of,
)
from ringland_service.core.declare import Composite, Step

# What a reader looks for first; the other parts follow in the order of work.
FIRST = ("cylinder_decision",)


def job_text(calculation: Composite, found: Mapping[str, Any]) -> str:
    """Return the answer of a composite as text."""
    found = printed(calculation, found)
    lines = _about(calculation, found["inputs"].get("about", {}))
    lines += _parts([s for s in calculation.steps if s.part in FIRST], found)
    lines += block("Verdicts", verdict_lines(found["verdicts"]))
    needs = [line for item in found["result"]["measure_next"] for line in need(item)]
    lines += block("What to measure next", needs)
    gone = [f"{item['words']}: {item['why']}" for item in found["result"].get("not_worked_out", ())]
    lines += block("Not worked out", bullets(gone))
    lines += _parts([s for s in calculation.steps if s.part not in FIRST], found)
    sources = [(t["field"].replace("_", " "), f"from {t['from']}") for t in found["taken"]]
    lines += block("Taken over", aligned(sources))
    lines += block("Warnings", warning_lines(found["warnings"]))
    lines += block("Cautions", bullets(found["cautions"]))
    return "\n".join(lines).rstrip() + "\n"


def _parts(steps: Sequence[Step], found: Mapping[str, Any]) -> list[str]:
    """Return the results of the parts that are worked out."""
    lines: list[str] = []
    for step in steps:
        result = found["result"].get(step.part)
        if result:
            lines += block(step.heading, result_lines(step.calculation, result))
    return lines


def _about(calculation: Composite, about: Mapping[str, Any]) -> list[str]:
    """Return the head: what the job is about."""
    title = calculation.title.upper()
    return [title, *aligned([(words_of(name), text) for name, text in about.items()]), ""]


def need(item: Mapping[str, Any]) -> list[str]:
    """Return one entry of what to measure next: what it tells, and each way to it."""
    lines = bullets([item["why"]])
    for text in need_texts(item):
        lines += bullets([text], indent=4)
    return lines


def need_texts(item: Mapping[str, Any]) -> list[str]:
    """Return the ways to one entry of what to measure next, of which any one will do."""
    ways = ["; ".join(reading_text(reading) for reading in way) for way in item["ways"]]
    if not ways:
        return [item["advice"]]
    return [("or " if i else "measure ") + text for i, text in enumerate(ways)]
