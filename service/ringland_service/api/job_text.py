"""A composite's answer for people: parts, verdicts, what to measure next, cautions."""

from collections.abc import Mapping
from typing import Any

from ringland_service.api.text import aligned, block, shown, verdict_text, words_of
from ringland_service.core.declare import Composite


def job_text(calculation: Composite, found: Mapping[str, Any]) -> str:
    """Return the answer of a composite as text."""
    lines: list[str] = []
    for step in calculation.steps:
        result = found["result"].get(step.part)
        if result:
            rows = [(words_of(name), shown(value)) for name, value in result.items()]
            lines += block(step.calculation.title, aligned(rows))
    verdicts = [(v["words"], verdict_text(v)) for v in found["verdicts"]]
    lines += block("Verdicts", aligned(verdicts))
    lines += block("Measure next", [f"  {need(item)}" for item in found["result"]["measure_next"]])
    warnings = [f"  {words_of(w['field'])}: {w['message']}" for w in found["warnings"]]
    lines += block("Warnings", warnings)
    lines += block("Cautions", [f"  {line}" for line in found["cautions"]])
    return "\n".join(lines).rstrip() + "\n"


def need(item: Mapping[str, Any]) -> str:
    """Return one entry of what to measure next as a line."""
    if not item["measure"]:
        return f"{item['why']}: {item['advice']}"
    return f"{item['why']}: " + "; ".join(one["words"] for one in item["measure"])
