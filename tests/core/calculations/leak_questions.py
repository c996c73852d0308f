"""Asking a calculation in a test of its rules, and what its answer says in short."""

from typing import Any

from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.answer import Answer
from ringland_service.engine.question import Question, Stated
from ringland_service.engine.scalar import answer


def ask(
    calculation: Calculation,
    inputs: dict[str, Any],
    limits: dict[str, Limit] | None = None,
    defaults: bool = True,
    **doubts: float,
) -> Answer:
    stated = {(name,): Stated(uncertainty=u) for name, u in doubts.items()}
    given = calculation.inputs(**inputs)
    return answer(
        calculation, Question(inputs=given, doubts=stated, limits=limits or {}, defaults=defaults)
    )


def codes(found: Answer) -> set[str]:
    return {warned.code for warned in found.warnings}


def words(found: Answer) -> dict[str, str]:
    return {verdict.check.name: verdict.word for verdict in found.verdicts}
