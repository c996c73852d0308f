"""Several calculations in one answer: each part runs as soon as its inputs are known.

A part's inputs come from the composite's own fields, found by name in any section, or from the
results of earlier parts, doubt and all. What is still missing says by itself what to measure next.
"""

import dataclasses
import itertools
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from ringland_service.core.declare import Composite, Step, Way, asked, declared, defaults
from ringland_service.core.errors import CoreError
from ringland_service.core.fields import FindingsField, SectionField
from ringland_service.core.findings import Finding
from ringland_service.core.materials import UNKNOWN
from ringland_service.core.notices import Warned
from ringland_service.engine.answer import Answer, Refused, Verdict
from ringland_service.engine.findings import findings_of
from ringland_service.engine.question import (
    Path,
    Question,
    Stated,
    as_stated,
    on_inputs,
    stated_influences,
)
from ringland_service.engine.single import answer, cautions_of, insist_on


@dataclass(frozen=True)
class Known:
    """A value that a part can take, with its doubt, what that leaves out, and its origin."""

    value: Any
    path: Path
    doubts: Mapping[Path, Stated] = field(default_factory=dict)
    left_out: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Open:
    """What is open in a part, or keeps it from being answered; any one of ``ways`` tells."""

    part: str
    why: str
    ways: tuple[tuple[Path, ...], ...]
    advice: str = ""


@dataclass(frozen=True)
class CompositeAnswer:
    """What a composite answers: the parts that could be worked out, and what is still open.

    ``taken`` says, per part, where the fields came from that are not the composite's own of the
    same name; ``moved`` is u of each input that doubt moves, by path.
    """

    calculation: Composite
    inputs: Any
    parts: Mapping[str, Answer]
    taken: Mapping[str, Mapping[str, Path]]
    open: tuple[Open, ...]
    warnings: tuple[Warned, ...]
    cautions: tuple[str, ...]
    moved: Mapping[Path, Any] = field(default_factory=dict)

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
    try:
        moved = on_inputs(stated_influences(question))
    except CoreError as fault:
        raise Refused([fault]) from fault
    known = known_values(question.inputs, question.doubts)
    known |= _derived(composite, known)
    where = paths(composite.inputs)
    parts: dict[str, Answer] = {}
    sources: dict[str, dict[str, Path]] = {}
    findings: list[Finding] = []
    open_: list[Open] = []
    faults: list[CoreError] = []
    for step in composite.steps:
        if not step.when({name: k.value for name, k in known.items()}):
            continue
        taken = {n: _source(step, n, known) for n in asked(step.calculation.inputs)}
        missing = _missing(step, taken, where)
        if missing:
            ways = least_ways([need for need in missing if need])
            open_ += [Open(step.part, step.purpose, ways)] if ways else []
            continue
        try:
            parts[step.part] = part = answer(
                step.calculation, _part_question(step, taken, question, findings)
            )
        except Refused as refused:
            faults += [_named_here(fault, taken) for fault in refused.faults]
            continue
        sources[step.part] = _elsewhere(taken)
        findings += findings_of(part)
        known |= _results(step, part)
        open_ += _wanted(step, part, known, where)
    if faults:
        raise Refused(faults)
    warnings = [w for step, part in _with_steps(composite, parts) for w in _warned(step, part)]
    return CompositeAnswer(
        composite,
        question.inputs,
        parts,
        sources,
        tuple(open_),
        tuple(dict.fromkeys(warnings)),
        _cautions(composite, parts),
        as_stated(question.doubts, moved),
    )


def _derived(composite: Composite, known: Mapping[str, Known]) -> dict[str, Known]:
    """Return the values that the composite reads out of others, doubt and all."""
    if composite.derive is None:
        return {}
    found = composite.derive({name: k.value for name, k in known.items()})
    return {n: dataclasses.replace(known[of], value=value) for n, (value, of) in found.items()}


MOST_WAYS = 3


def least_ways(needs: Sequence[Sequence[frozenset[Path]]]) -> tuple[tuple[Path, ...], ...]:
    """Return the least sets of fields that meet every need, each need listing ways.

    The smallest come first; at most three.
    """
    found: set[frozenset[Path]] = {frozenset()} if needs else set()
    for ways in needs:
        grown = {have | way for have in found for way in ways}
        found = {one for one in grown if not any(other < one for other in grown)}
    order = list(dict.fromkeys(path for ways in needs for way in ways for path in sorted(way)))
    listed = [tuple(path for path in order if path in way) for way in found]
    listed.sort(key=lambda way: (len(way), [order.index(path) for path in way]))
    return tuple(listed[:MOST_WAYS])


def _elsewhere(taken: Mapping[str, Known | None]) -> dict[str, Path]:
    """Return where fields came from that are not of the same name."""
    return {n: k.path for n, k in taken.items() if k is not None and k.path[-1] != n}


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
) -> list[list[frozenset[Path]]]:
    """Return what the part still waits for: per need, the sets of fields of which one will do."""
    calculation = step.calculation
    optional = defaults(calculation.inputs)
    needs: list[tuple[Way, ...]] = [((n,),) for n in asked(calculation.inputs) if n not in optional]
    needs += list(calculation.one_of)
    found = []
    for ways in needs:
        lacking = [[name for name in way if taken[name] is None] for way in ways]
        if all(lacking):
            found.append([s for names in lacking for s in _field_sets(step, names, where)])
    return found


def _field_sets(
    step: Step, names: Sequence[str], where: Mapping[str, Path]
) -> list[frozenset[Path]]:
    """Return the sets of the composite's fields that would fill the names, by every source."""
    choices = [[where[s] for s in _sources(step, name) if s in where] for name in names]
    return [frozenset(paths_) for paths_ in itertools.product(*choices)]


def _wanted(
    step: Step, part: Answer, known: Mapping[str, Known], where: Mapping[str, Path]
) -> list[Open]:
    """Return what the part itself asks for besides, less what is known already."""
    found = []
    for want in step.wants(part.inputs, part.outputs):
        ways = [
            tuple(where[name] for name in way if not _told(known.get(name)))
            for way in want.ways
            if where.keys() >= set(way)
        ]
        # A way that is all told did not help: no measurement settles this one.
        if want.advice or (ways and all(ways)):
            found.append(Open(step.part, want.why, tuple(ways), want.advice))
    return found


def _told(known: Known | None) -> bool:
    return known is not None and known.value != UNKNOWN


def _part_question(
    step: Step,
    taken: Mapping[str, Known | None],
    question: Question,
    findings: Sequence[Finding],
) -> Question:
    given = {name: k for name, k in taken.items() if k is not None}
    doubts: dict[Path, Stated] = {}
    for name, k in given.items():
        doubts |= {(name, *p[1:]): stated for p, stated in k.doubts.items()}
    values = {name: k.value for name, k in given.items()}
    for name, field_ in declared(step.calculation.inputs).items():
        if isinstance(field_, FindingsField):
            values[name] = tuple(findings)
    inputs = step.calculation.inputs(**values)
    left: dict[Path, Mapping[str, Any]] = {
        (name,): k.left_out for name, k in given.items() if k.left_out and _is_one(k.value)
    }
    told = question.weigh
    return dataclasses.replace(question, inputs=inputs, doubts=doubts, left_out=left, told=told)


def _is_one(value: Any) -> bool:
    return isinstance(value, float)


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
            found[f"{step.part}.{name}"] = Known(
                value, (step.part, name), doubts, part.left_out.get(name, {})
            )
    return found


def _named_here(fault: CoreError, taken: Mapping[str, Known | None]) -> CoreError:
    """Return the fault under the composite's own name of the field."""
    source = taken.get(fault.field)
    if source is not None:
        fault.field = ".".join(map(str, source.path))
    return fault
