"""Asking a calculation in a test of its rules, and what its answer says in short."""

from typing import Any

from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.request import Request, Stated
from ringland_service.engine.response import Response
from ringland_service.engine.scalar import answer


def ask(
    calculation: Calculation,
    inputs: dict[str, Any],
    limits: dict[str, Limit] | None = None,
    defaults: bool = True,
    **uncertainties: float,
) -> Response:
    stated = {(name,): Stated(uncertainty=u) for name, u in uncertainties.items()}
    given = calculation.inputs(**inputs)
    return answer(
        calculation,
        Request(inputs=given, uncertainties=stated, limits=limits or {}, defaults=defaults),
    )


def codes(found: Response) -> set[str]:
    return {warned.code for warned in found.warnings}


def words(found: Response) -> dict[str, str]:
    return {verdict.check.name: verdict.word for verdict in found.verdicts}
