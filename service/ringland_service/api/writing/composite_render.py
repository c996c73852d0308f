"""The answer of a composite as JSON: the single answer's shape, its results by part."""

from ringland_service.api.json_types import AnswerJson
from ringland_service.api.reading.request import public_path
from ringland_service.api.shapes import members
from ringland_service.api.shapes.registry import adapter
from ringland_service.api.writing import render
from ringland_service.api.writing.expanded import intervals, uncertainties
from ringland_service.core.declare import declared, input_fields
from ringland_service.core.metrology.conformity import CLOSE
from ringland_service.engine.composite import CompositeResponse
from ringland_service.engine.opening import Open
from ringland_service.engine.request import Path, field_at


def answer(found: CompositeResponse, system: str) -> AnswerJson:
    """Return the answer of a composite as JSON."""
    calculation = found.calculation
    parts = {
        part: members.answer(
            single.calculation.outputs,
            single.outputs,
            single.inputs,
            system,
            single.u,
            single.intervals,
        )
        for part, single in found.parts.items()
    }
    return {
        "calculation": calculation.name,
        "formulas": calculation.formulas,
        "inputs": members.answer(
            calculation.inputs, found.inputs, found.inputs, system, render.by_member(found.moved)
        ),
        "result": {**parts, **_fallen_out(found), "measure_next": measure_next(found)},
        "uncertainties": {
            name: uncertainty
            for part, single in found.parts.items()
            for name, uncertainty in uncertainties(single.outputs, single.u, f"{part}.").items()
        },
        "intervals": {
            name: one
            for part, single in found.parts.items()
            for name, one in intervals(single.outputs, single.intervals, f"{part}.").items()
        },
        "verdicts": [render.verdict(v, system) for v in found.verdicts],
        "warnings": [vars(w) for w in found.warnings],
        "cautions": list(found.cautions),
        "basis": basis(found),
        "taken": taken(found),
    }


def basis(found: CompositeResponse) -> list[dict[str, str]]:
    """Return where each result of each part comes from."""
    rows = []
    for part, single in found.parts.items():
        joint = _joint(found, part)
        for entry in render.basis(single.calculation, single.outputs):
            if entry["field"] in joint:
                formula = f"as {joint[entry['field']]}: all works together"
                entry = {**entry, "formula": formula}
            rows.append({**entry, "field": f"{part}.{entry['field']}"})
    return rows


def _joint(found: CompositeResponse, part: str) -> dict[str, str]:
    """Return the part's results that stand for those of several works together, and whose."""
    outputs = declared(found.parts[part].calculation.outputs)
    of = found.joint.get(part, {}).items()
    return {outputs[n].public(n): ".".join(map(str, _source(found, path))) for n, path in of}


def _fallen_out(found: CompositeResponse) -> AnswerJson:
    """Return the parts that are not worked out for this engine, each with why; where any."""
    headings = {step.part: step.heading for step in found.calculation.steps}
    rows = [
        {"part": part, "label": headings[part], "why": why}
        for part, why in found.fallen_out.items()
    ]
    return {"not_worked_out": rows} if rows else {}


def measure_next(found: CompositeResponse) -> list[AnswerJson]:
    """Return what would open a part, or settle a verdict that is too close to call."""
    return [_opening(found, open_) for open_ in found.open] + [
        {
            "opens": v.check.name,
            "why": f"{v.check.label}{f', {v.of}' if v.of else ''}: too close to call",
            "ways": [],
            "advice": v.advice,
        }
        for v in found.verdicts
        if v.word == CLOSE
    ]


def _opening(found: CompositeResponse, open_: Open) -> AnswerJson:
    record = found.calculation.inputs
    return {
        "opens": open_.part,
        "why": open_.why,
        "ways": [[_reading(record, path) for path in way] for way in open_.ways],
        "advice": open_.advice,
    }


def _reading(record: type, path: Path) -> dict[str, str]:
    """Return one reading to take: its field, in words, and what measures it."""
    field = field_at(record, path)
    return {
        "field": ".".join(map(str, public_path(record, path))),
        "description": field.description,
        "instrument": adapter(field).instrument,
    }


def taken(found: CompositeResponse) -> list[dict[str, str]]:
    """Return which field of which part was taken from where, where the names differ."""
    rows = []
    for part, fields in found.taken.items():
        inputs = found.parts[part].calculation.inputs
        for name, path in fields.items():
            source = ".".join(map(str, _source(found, path)))
            rows.append(
                {"field": f"{part}.{input_fields(inputs)[name].public(name)}", "from": source}
            )
        rows += [{"field": f"{part}.{n}", "from": of} for n, of in _joint(found, part).items()]
    return rows


def _source(found: CompositeResponse, path: Path) -> list[str | int]:
    """Return the public path of a field, or of a part's result.

    A section may bear the name of a part; their fields never bear one name.
    """
    part, name = str(path[0]), str(path[-1])
    answered = found.parts.get(part)
    outputs = declared(answered.calculation.outputs) if answered else {}
    if name not in outputs:
        return public_path(found.calculation.inputs, path)
    return [part, outputs[name].public(name)]
