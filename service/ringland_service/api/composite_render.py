"""The answer of a composite as JSON: the single answer's shape, its results by part."""

from typing import Any

from ringland_service.api import render
from ringland_service.api.request import public_path
from ringland_service.api.text import words_of
from ringland_service.core.declare import asked, declared
from ringland_service.core.fields import QuantityField
from ringland_service.core.verdicts import CLOSE
from ringland_service.engine.composite import CompositeAnswer, Open
from ringland_service.engine.question import Path


def answer(found: CompositeAnswer, system: str) -> dict[str, Any]:
    """Return the answer of a composite as JSON."""
    calculation = found.calculation
    parts = {
        part: render.members(
            single.calculation.outputs,
            single.outputs,
            single.inputs,
            system,
            single.u,
        )
        for part, single in found.parts.items()
    }
    return {
        "calculation": calculation.name,
        "formulas": calculation.formulas,
        "inputs": render.members(calculation.inputs, found.inputs, found.inputs, system, {}),
        "result": {**parts, "measure_next": measure_next(found)},
        "verdicts": [render.verdict(v, system) for v in found.verdicts],
        "warnings": [vars(w) for w in found.warnings],
        "cautions": list(found.cautions),
        "basis": basis(found),
    }


def basis(found: CompositeAnswer) -> list[dict[str, str]]:
    """Return where each result of each part comes from."""
    rows = []
    for part, single in found.parts.items():
        for entry in render.basis(single.calculation, single.outputs):
            rows.append({**entry, "field": f"{part}.{entry['field']}"})
    return rows


def measure_next(found: CompositeAnswer) -> list[dict[str, Any]]:
    """Return what would open a part, or settle a verdict that is too close to call."""
    return [_opening(found, open_) for open_ in found.open] + [
        {
            "opens": v.check.name,
            "why": f"{v.check.words}: too close to call",
            "measure": [],
            "advice": v.advice,
        }
        for v in found.verdicts
        if v.judged.verdict == CLOSE
    ]


def _opening(found: CompositeAnswer, open_: Open) -> dict[str, Any]:
    record = found.calculation.inputs
    return {
        "opens": open_.step.part,
        "why": open_.step.purpose,
        "measure": [_need(record, alternatives) for alternatives in open_.missing],
        "advice": "",
    }


def _need(record: type, alternatives: tuple[Path, ...]) -> dict[str, Any]:
    """Return one need: the fields of which one will do, in words, and what measures them."""
    return {
        "fields": [".".join(map(str, public_path(record, path))) for path in alternatives],
        "words": " or ".join(dict.fromkeys(_words(record, path) for path in alternatives)),
    }


def _words(record: type, path: Path) -> str:
    for key in path[:-1]:
        record = asked(record)[key].record  # type: ignore[attr-defined]
    field = declared(record)[path[-1]]
    how = field.type.instrument if isinstance(field, QuantityField) else ""
    return f"{field.words or words_of(path[-1])}{f' ({how})' if how else ''}"
