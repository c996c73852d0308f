"""An answer as JSON: full floats, a unit on every quantity, suggested decimals beside it."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from ringland_service.api.json_types import AnswerJson, Json
from ringland_service.api.shapes import members
from ringland_service.api.shapes.answer_json import (
    quantity,
    shown_decimals,
    shown_unit,
    told_interval,
)
from ringland_service.api.writing.expanded import intervals, uncertainties
from ringland_service.api.writing.trace import in_words
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.conformity import BY_INTERVAL, CLOSE
from ringland_service.core.metrology.extremes import Interval
from ringland_service.engine.intervals import ends
from ringland_service.engine.response import Response, Verdict


def by_member(moved: Mapping[tuple[str | int, ...], Any]) -> AnswerJson:
    """Return u by path as a tree: by name, and under a section, list or record by what it holds."""
    tree: dict[Any, Any] = {}
    for path, u in moved.items():
        branch = tree
        for key in path[:-1]:
            branch = branch.setdefault(key, {})
        branch[path[-1]] = u
    return tree


def verdict(found: Verdict, system: str) -> AnswerJson:
    """Return a verdict as JSON: value, limit with its standing, word, how to settle or to judge."""

    def side(value: Any) -> Any:
        if value is None:
            return None
        if found.kind is None:
            return float(value)
        return quantity(value, found.kind, found.decimals, system)

    def difference(value: Any) -> Any:
        if value is None:
            return None
        if found.kind is None:
            return float(value)
        unit = shown_unit(found.kind, system)
        decimals = shown_decimals(found.kind, found.decimals, system)
        return {"value": float(value / unit.factor), "unit": unit.symbol, "decimals": decimals}

    def interval(value: Interval) -> Json:
        return told_interval(ends(value), shown_unit(found.kind, system) if found.kind else None)

    judged, due = found.judged, found.why is None
    return {
        "check": found.check.name,
        "label": found.check.label,
        "of": found.of or None,
        "value": side(found.value),
        "uncertainty": None if found.u is None else difference(2.0 * found.u),
        "interval": None if found.interval is None else interval(found.interval),
        "bias": found.bias or None,
        "limit": {
            "low": side(found.limit.low),
            "high": side(found.limit.high),
            "standing": found.limit.standing,
            "source": found.limit.source,
            **({"with_decompressor": True} if found.limit.with_decompressor else {}),
        },
        "verdict": found.word,
        "why": found.why,
        "to_judge": found.to_judge or None,
        "without_uncertainty": judged.without if due else None,
        "conformance_probability": None
        if judged.probability is None
        else float(judged.probability),
        "margin": difference(judged.margin),
        "rule": found.rule if found.interval is None else BY_INTERVAL,
        "inconclusive_fails": found.check.inconclusive_fails or None,
        "to_settle": {
            "target_uncertainty": difference(judged.needed) if judged.margin else None,
            "advice": found.advice,
        }
        if due and judged.verdict == CLOSE
        else None,
    }


def basis(calculation: Calculation, outputs: object) -> list[dict[str, str]]:
    """Return where each result comes from: formula in words, and source."""
    return [entry for name, entry in _basis(calculation) if getattr(outputs, name) is not None]


@cache
def _basis(calculation: Calculation) -> tuple[tuple[str, dict[str, str]], ...]:
    rows = []
    for name, (field, _) in members.results(calculation.outputs).items():
        words = field.basis or in_words(calculation, field.formula)
        entry = {"field": field.public(name), "formula": words, "source": field.source}
        rows.append((name, entry))
    return tuple(rows)


def answer(found: Response, system: str = "metric") -> AnswerJson:
    """Return the answer of one calculation as JSON."""
    calculation = found.calculation
    return {
        "calculation": calculation.name,
        "formulas": calculation.formulas,
        "inputs": members.answer(
            calculation.inputs, found.inputs, found.inputs, system, by_member(found.moved)
        ),
        "result": members.answer(
            calculation.outputs, found.outputs, found.inputs, system, found.u, found.intervals
        ),
        "uncertainties": uncertainties(found.outputs, found.u),
        "intervals": intervals(found.outputs, found.intervals),
        "verdicts": [verdict(v, system) for v in found.verdicts],
        "warnings": [vars(w) for w in found.warnings],
        "cautions": list(found.cautions),
        "basis": basis(calculation, found.outputs),
    }
