"""Asking the diagnosis in the core's own terms."""

import tomllib
from pathlib import Path
from typing import Any

from reference_cases import filled

from ringland_service.core.calculations.diagnosis import diagnosis
from ringland_service.engine.question import Question
from ringland_service.engine.scalar import answer

DESCRIBED = Path(__file__).parents[2] / "reference" / "data" / "described_engines.toml"
ENGINES: list[dict[str, Any]] = tomllib.loads(DESCRIBED.read_text("utf-8"))["engine"]


def diagnosed(*evidence: str, defaults: bool = True, **more: Any) -> Any:
    """Return the outputs for a four-stroke without decompressor, unless told otherwise."""
    known = {"cycle": "four_stroke", "decompressor": "none", "evidence": list(evidence), **more}
    question = Question(filled(diagnosis.Inputs, known), defaults=defaults)
    return answer(diagnosis.CALCULATION, question).outputs


def scores(found: Any) -> dict[str, float]:
    """Return the score of each suspect spoken of."""
    return {row.suspect: row.score for row in found.suspects}


def counted(found: Any, suspect: str) -> dict[str, float]:
    """Return what each piece of evidence counts for a suspect."""
    return {row.evidence: row.counts for row in found.lines if row.suspect == suspect}


def at_hand(found: Any) -> dict[str, str]:
    """Return the evidence at hand, each with what it is known from."""
    return {row.evidence: row.known_from for row in found.at_hand}
