"""The answer of one calculation for people: results, verdicts, trace, warnings, cautions."""

from collections.abc import Mapping, Sequence
from typing import Any

from ringland_service.api.writing.printed import printed
from ringland_service.api.writing.text import (
    block,
    bullets,
    plain,
    result_lines,
    verdict_lines,
    warning_lines,
    words_of,
)
from ringland_service.core.declare import Calculation


def single_text(calculation: Calculation, found: Mapping[str, Any]) -> str:
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
