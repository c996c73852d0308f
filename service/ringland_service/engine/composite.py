"""Several calculations in one answer: each part runs as soon as its inputs are known.

A part's inputs come from the composite's own fields, found by name in any section, or from the
results of earlier parts, doubt and all. What is still missing says by itself what to measure next.
"""

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from ringland_service.core.declare import Composite, Step, asked, declared, defaults
from ringland_service.core.errors import CoreError
from ringland_service.core.fields import SectionField
from ringland_service.core.notices import Warned
from ringland_service.engine.answer import Answer, Refused, Verdict
from ringland_service.engine.question import Path, Question, Stated
from ringland_service.engine.single import answer, cautions_of, insist_on


@dataclass(frozen=True)
class Known:
    """A value that a part can take, with its doubt and where it came from."""

    value: Any
    path: Path
    doubts: Mapping[Path, Stated] = field(default_factory=dict)


@dataclass(frozen=True)
class Open:
    """A part that cannot be answered yet, and the fields that it waits for.

    ``missing`` is a list of alternatives-lists: one of each must be given.
    """

    step: Step
    missing: tuple[tuple[Path, ...], ...]


@dataclass(frozen=True)
class CompositeAnswer:
    """What a composite answers: the parts that could be worked out, and what is still open."""

    calculation: Composite
    inputs: Any
    parts: Mapping[str, Answer]
    open: tuple[Open, ...]
    warnings: tuple[Warned, ...]
    cautions: tuple[str, ...]

    @property
    def verdicts(self) -> tuple[Verdict, ...]:
        """The verdicts of all parts, in order."""
        return tuple(v for part in self.parts.values() for v in part.verdicts)


def answer_composite(composite: Composite, question: Question) -> CompositeAnswer:
    """Answer every part whose inputs are known.

    Raises
    ------
    Refused
        Where the inputs contradict each other; the fault names the composite's own field.
    """
    insist_on(composite.rules, question.inputs)
    known = known_values(question.inputs, question.doubts)
    known |= _derived(composite, known)
    where = paths(composite.inputs)
    parts: dict[str, Answer] = {}
    open_: list[Open] = []
    faults: list[CoreError] = []
    for step in composite.steps:
        if not step.when({name: k.value for name, k in known.items()}):
            continue
        taken = {n: _source(step, n, known) for n in asked(step.calculation.inputs)}
        missing = _missing(step, taken, where)
        if missing:
            if any(missing):
                open_.append(Open(step, tuple(filter(None, missing))))
            continue
        try:
            parts[step.part] = part = answer(
                step.calculation, _part_question(step, taken, question)
            )
        except Refused as refused:
            faults += [_named_here(fault, taken) for fault in refused.faults]
            continue
        known |= _results(step, part)
    if faults:
        raise Refused(faults)
    warnings = [w for step, part in _with_steps(composite, parts) for w in _warned(step, part)]
    return CompositeAnswer(
        composite,
        question.inputs,
        parts,
        tuple(open_),
        tuple(dict.fromkeys(warnings)),
        _cautions(composite, parts),
    )


def _derived(composite: Composite, known: Mapping[str, Known]) -> dict[str, Known]:
    """Return the values that the composite reads out of others, doubt and all."""
    if composite.derive is None:
        return {}
    found = composite.derive({name: k.value for name, k in known.items()})
    return {n: dataclasses.replace(known[of], value=value) for n, (value, of) in found.items()}


def _with_steps(composite: Composite, parts: Mapping[str, Answer]) -> list[tuple[Step, Answer]]:
    return [(step, parts[step.part]) for step in composite.steps if step.part in parts]


def _warned(step: Step, part: Answer) -> list[Warned]:
    return [dataclasses.replace(w, field=f"{step.part}.{w.field}") for w in part.warnings]


def _cautions(composite: Composite, parts: Mapping[str, Answer]) -> tuple[str, ...]:
    lines = list(cautions_of(composite))
    for part in parts.values():
        lines += part.cautions
    return tuple(dict.fromkeys(lines))


def known_values(inputs: Any, doubts: Mapping[Path, Stated], path: Path = ()) -> dict[str, Known]:
    """Return the values given, by field name; the fields of a section by their own names too."""
    found: dict[str, Known] = {}
    record: type = type(inputs)
    for name, f in asked(record).items():
        value = getattr(inputs, name)
        if value is None:
            continue
        here = (*path, name)
        stated = {p[len(path) :]: d for p, d in doubts.items() if p[: len(here)] == here}
        found[name] = Known(value, here, stated)
        if isinstance(f, SectionField):
            found |= known_values(value, doubts, here)
    return found


def paths(record: type, path: Path = ()) -> dict[str, Path]:
    """Return where each field of a record, or of its sections, stands."""
    found: dict[str, Path] = {}
    for name, f in asked(record).items():
        found[name] = (*path, name)
        if isinstance(f, SectionField):
            found |= paths(f.record, (*path, name))
    return found


def _sources(step: Step, name: str) -> tuple[str, ...]:
    return step.sources.get(name, (name,))


def _source(step: Step, name: str, known: Mapping[str, Known]) -> Known | None:
    """Return the best known source of a part's field."""
    return next((known[s] for s in _sources(step, name) if s in known), None)


def _missing(
    step: Step, taken: Mapping[str, Known | None], where: Mapping[str, Path]
) -> tuple[tuple[Path, ...], ...]:
    """Return what the part still waits for: per need, the fields of which one must be given."""
    optional = defaults(step.calculation.inputs)
    needs: list[tuple[str, ...]] = [
        (n,) for n in asked(step.calculation.inputs) if n not in optional
    ]
    needs += list(step.calculation.one_of)
    unmet = [need for need in needs if all(taken[name] is None for name in need)]
    return tuple(
        tuple(where[s] for name in need for s in _sources(step, name) if s in where)
        for need in unmet
    )


def _part_question(step: Step, taken: Mapping[str, Known | None], question: Question) -> Question:
    given = {name: k for name, k in taken.items() if k is not None}
    doubts: dict[Path, Stated] = {}
    for name, k in given.items():
        doubts |= {(name, *p[1:]): stated for p, stated in k.doubts.items()}
    inputs = step.calculation.inputs(**{name: k.value for name, k in given.items()})
    return dataclasses.replace(question, inputs=inputs, doubts=doubts)


def _results(step: Step, part: Answer) -> dict[str, Known]:
    """Return a part's results as sources for later parts, under ``part.result``."""
    found: dict[str, Known] = {}
    for name in declared(step.calculation.outputs):
        value = getattr(part.outputs, name)
        if value is not None:
            u = part.u.get(name)
            doubts: dict[Path, Stated] = {}
            if u is not None:
                doubts[(name,)] = Stated(uncertainty=2.0 * u)
            found[f"{step.part}.{name}"] = Known(value, (step.part, name), doubts)
    return found


def _named_here(fault: CoreError, taken: Mapping[str, Known | None]) -> CoreError:
    """Return the fault under the composite's own name of the field."""
    source = taken.get(fault.field)
    if source is not None:
        fault.field = ".".join(source.path)
    return fault
