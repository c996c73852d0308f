"""How each result was worked out: the formula in words, and with its numbers."""

from typing import Any

from ringland_service.core.declare import Calculation, asked, declared
from ringland_service.core.declare.expressions import shown
from ringland_service.core.declare.fields import Field, ResultField, kind_of
from ringland_service.engine.answer import Answer

FIGURES = 10


def _fields(calculation: Calculation) -> dict[str, Field]:
    return {**asked(calculation.inputs), **declared(calculation.outputs)}


def in_words(calculation: Calculation, formula: str) -> str:
    """Return a formula with its names as users know them, in canonical units."""
    fields = _fields(calculation)
    return shown(formula, lambda name: fields[name].public(name) if name in fields else name)


def trace(answer: Answer) -> list[dict[str, Any]]:
    """Return the steps of an answer, each with the numbers put in, in canonical units."""
    calculation = answer.calculation
    fields = _fields(calculation)
    steps = []
    for name, field in declared(calculation.outputs).items():
        value = getattr(answer.outputs, name)
        if not isinstance(field, ResultField) or not field.formula or value is None:
            continue
        kind = kind_of(field)
        steps.append(
            {
                "field": fields[name].public(name),
                "formula": in_words(calculation, field.formula),
                "substituted": shown(field.formula, lambda n: _number(answer, n)),
                "value": float(value),
                "unit": kind.unit if kind else "",
            }
        )
    return steps


def _number(answer: Answer, name: str) -> str:
    holder = answer.outputs if hasattr(answer.outputs, name) else answer.inputs
    return f"{getattr(holder, name):.{FIGURES}g}"
