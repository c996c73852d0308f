"""A composite's answer for people: parts, verdicts, what to measure next, cautions."""

from collections.abc import Mapping
from typing import Any

from ringland_service.api.text import (
    aligned,
    block,
    bullets,
    results,
    shown,
    verdict_lines,
    warning_lines,
)
from ringland_service.core.declare import Composite


def job_text(calculation: Composite, found: Mapping[str, Any]) -> str:
    """Return the answer of a composite as text."""
    lines = _about(calculation, found["inputs"].get("about", {}))
    lines += block("Verdicts", verdict_lines(found["verdicts"]))
    needs = [line for item in found["result"]["measure_next"] for line in need(item)]
    lines += block("What to measure next", needs)
    for step in calculation.steps:
        result = found["result"].get(step.part)
        if result:
            lines += block(step.calculation.title, aligned(results(step.calculation, result)))
    sources = [(t["field"].replace("_", " "), f"from {t['from']}") for t in found["taken"]]
    lines += block("Taken over", aligned(sources))
    lines += block("Warnings", warning_lines(found["warnings"]))
    lines += block("Cautions", bullets(found["cautions"]))
    return "\n".join(lines).rstrip() + "\n"


def _about(calculation: Composite, about: Mapping[str, Any]) -> list[str]:
    """Return the head: what the job is about."""
    title = calculation.title.upper()
    return [title, *aligned([(name, shown(text)) for name, text in about.items()]), ""]


def need(item: Mapping[str, Any]) -> list[str]:
    """Return one entry of what to measure next: what it tells, and each way to it."""
    lines = bullets([item["why"]])
    ways = ["; ".join(_reading(reading) for reading in way) for way in item["ways"]]
    texts = ways or [item["advice"]]
    for i, text in enumerate(texts):
        lines += bullets([("or " if i else "measure ") + text if ways else text], indent=4)
    return lines


def _reading(reading: Mapping[str, str]) -> str:
    how = reading["instrument"]
    return f"{reading['words']} ({how})" if how else reading["words"]
