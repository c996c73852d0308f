"""Several calculations in one answer: each part runs as soon as its inputs are known.

A part's inputs come from the composite's own fields, found by name in any section, or from the
results of earlier parts, with every component of their uncertainty. What is still missing says by
itself what to measure next.
A part whose work is not done on this engine falls out with its reason; the others stand.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from ringland_service.core.declare import Composite, Step, declared, input_fields
from ringland_service.core.declare.fields import FindingsField
from ringland_service.core.declare.notices import Warned
from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.findings import Finding
from ringland_service.engine.agreeing import as_told, faults
from ringland_service.engine.carried import (
    components,
    of_results,
    on_fields,
    onto,
    pushed_onto,
    read_out,
)
from ringland_service.engine.findings import findings_of
from ringland_service.engine.joint import joint, joint_results
from ringland_service.engine.known import (
    Known,
    known_values,
    paths,
    results_of,
    source_key,
    values,
)
from ringland_service.engine.opening import Open, least_ways, missing, wanted
from ringland_service.engine.pushed import reliefs_of
from ringland_service.engine.request import (
    Path,
    Request,
    Stated,
    as_stated,
    on_inputs,
    stated_components,
)
from ringland_service.engine.response import DomainError, Response, Verdict
from ringland_service.engine.scalar import answer, cautions_of, insist_on


@dataclass(frozen=True)
class CompositeResponse:
    """What a composite answers: the parts that could be worked out, and what is still open.

    ``taken`` says, per part, where the fields came from that are not the composite's own of the
    same name; ``joint`` which of its results stand for those of several works together;
    ``fallen_out`` says of each part that is not worked out for this engine why; ``moved`` is u of
    each input that uncertainty moves, by path.
    """

    calculation: Composite
    inputs: Any
    parts: Mapping[str, Response]
    taken: Mapping[str, Mapping[str, Path]]
    open: tuple[Open, ...]
    warnings: tuple[Warned, ...]
    cautions: tuple[str, ...]
    moved: Mapping[Path, Any] = field(default_factory=dict)
    fallen_out: Mapping[str, str] = field(default_factory=dict)
    joint: Mapping[str, Mapping[str, Path]] = field(default_factory=dict)

    @property
    def verdicts(self) -> tuple[Verdict, ...]:
        """The verdicts of all parts, in order."""
        return tuple(v for part in self.parts.values() for v in part.verdicts)


def answer_composite(composite: Composite, request: Request) -> CompositeResponse:
    """Answer every part whose inputs are known.

    Raises
    ------
    Refused
        Where the inputs contradict each other; the fault names the composite's own field.
    """
    insist_on(composite.rules, request.inputs)
    card = _Card(composite, request)
    card.agree()
    for step in composite.steps:
        card.work_out(step)
        card.rule_out(step.rules_out(values(card.known)))
    if card.faults:
        raise DomainError(_once(as_told(card.faults, card.rests_on, card.known)))
    answered = [step for step in composite.steps if step.part in card.parts]
    replaced = {step.part: joint_results(step, card.parts, card.known) for step in answered}
    parts = {step.part: joint(card.parts, step.part, replaced[step.part]) for step in answered}
    warnings = [w for step, part in _with_steps(composite, parts) for w in _warned(step, part)]
    return CompositeResponse(
        composite,
        request.inputs,
        parts,
        {part: _elsewhere(taken) for part, taken in card.taken.items()},
        tuple(o for opened in card.open.values() for o in opened),
        tuple(dict.fromkeys(warnings)),
        _cautions(composite, parts),
        as_stated(request.uncertainties, card.moved),
        card.fallen_out,
        {part: {n: one.path for n, (one, _) in of.items()} for part, of in replaced.items() if of},
    )


class _Card:
    """What is known and worked out so far, step by step."""

    def __init__(self, composite: Composite, request: Request) -> None:
        self.composite, self.request = composite, request
        try:
            stated = components(stated_components(request))
        except CoreError as fault:
            raise DomainError([fault]) from fault
        self.moved = on_inputs(stated)
        # Of what noise pushes: ``pushed.reliefs_of``.
        self.reliefs: dict[str, float] = {}
        self.known = on_fields(known_values(request.inputs, request.uncertainties), stated)
        if composite.derive is not None:
            read = read_out(composite.derive, self.known, composite.derived_extremes)
            self.known |= read.known
            self.reliefs |= read.reliefs
        self.where = paths(composite.inputs)
        self.parts: dict[str, Response] = {}
        self.taken: dict[str, dict[str, Known | None]] = {}
        # Names that each part rests on: fields, and results of earlier parts.
        self.rests_on: dict[str, set[str]] = {}
        self.findings: list[Finding] = []
        self.open: dict[str, list[Open]] = {}
        self.faults: list[CoreError] = []
        self.fallen_out: dict[str, str] = {}
        self.ruled_out: dict[str, str] = {}
        self.agreed: set[int] = set()

    def agree(self) -> None:
        """Look at each agreement whose fields are all known now, once."""
        for place, agreement in enumerate(self.composite.agreements):
            if place in self.agreed or not all(name in self.known for name in agreement.of):
                continue
            self.agreed.add(place)
            self.faults += faults(agreement, self.known, self.moved)

    def work_out(self, step: Step) -> None:
        """Answer the step where its inputs are known; else say what opens it, or why it is out."""
        self.open.pop(step.part, None)
        derive = step.derive
        if derive is not None:
            words = self._words()
            self.known |= read_out(lambda known: derive(known, words), self.known).known
        known = values(self.known)
        if not step.when(known):
            return
        why = step.falls_out(known)
        if why:
            self.fallen_out[step.part] = why
            return
        keys = {n: source_key(step, n, self.known) for n in input_fields(step.calculation.inputs)}
        keys |= dict.fromkeys(step.without(known), None)
        taken = {n: None if key is None else self.known[key] for n, key in keys.items()}
        taken |= {name: Known(value, (name,)) for name, value in step.fixed.items()}
        needs = missing(step, taken, self.where, step.needs(known), self.open)
        if needs:
            ways = least_ways([need for need in needs if need])
            self.open[step.part] = [Open(step.part, step.purpose, ways)] if ways else []
            return
        request = _part_question(step, taken, self)
        try:
            part = answer(step.calculation, request)
        except DomainError as refused:
            self.faults += [_named_here(fault, taken) for fault in refused.faults]
            return
        self.parts[step.part], self.taken[step.part] = part, taken
        self.rests_on[step.part] = {key for key in keys.values() if key is not None}
        self.findings += findings_of(part)
        carried = of_results(step, part, request.carried or ())
        self.reliefs |= reliefs_of(step, part)
        self.known |= results_of(step, part, carried)
        self.open[step.part] = wanted(step, part, self.known, self.where)
        self.agree()

    def rule_out(self, names: Mapping[str, str]) -> None:
        """Let no part rest on these any more: one worked out before goes without, or falls out."""
        new = {name: why for name, why in names.items() if name not in self.ruled_out}
        self.ruled_out |= new
        self._ask_no_more({self.where.pop(name) for name in new if name in self.where})
        gone = {name: why for name, why in new.items() if self.known.pop(name, None) is not None}
        for step in self.composite.steps:
            resting = self.rests_on.get(step.part, set()) & gone.keys()
            waiting = bool(self.open.get(step.part)) and step.part not in self.parts
            if not step.after_work or not gone or not (resting or waiting):
                continue
            why = gone[min(resting or gone)]
            if resting:
                gone |= dict.fromkeys(self._forget(step), why)
            elif step.when(values(self.known)):
                continue
            self.work_out(step)
            if step.part not in self.parts:
                self.open.pop(step.part, None)
                self.fallen_out[step.part] = why

    def _ask_no_more(self, gone: set[Path]) -> None:
        """Take the fields out of what would open a part."""
        for part, opened in self.open.items():
            left = [replace(o, ways=tuple(w for w in o.ways if not gone & set(w))) for o in opened]
            self.open[part] = [
                o for o, was in zip(left, opened, strict=True) if o.ways or not was.ways
            ]

    def _forget(self, step: Step) -> list[str]:
        """Take a part's answer back; return the names of its results."""
        del self.parts[step.part], self.taken[step.part], self.rests_on[step.part]
        names = [f"{step.part}.{name}" for name in declared(step.calculation.outputs)]
        return [name for name in names if self.known.pop(name, None) is not None]

    def _words(self) -> dict[str, str]:
        return {v.check.name: v.word for part in self.parts.values() for v in part.verdicts}


def _once(faults: Sequence[CoreError]) -> list[CoreError]:
    """Return the faults, each once: two parts may meet the same one."""
    return list({(f.field, f.also, f.message): f for f in faults}.values())


def _elsewhere(taken: Mapping[str, Known | None]) -> dict[str, Path]:
    """Return where fields came from that are not of the same name."""
    return {n: k.path for n, k in taken.items() if k is not None and k.path[-1] != n}


def _with_steps(composite: Composite, parts: Mapping[str, Response]) -> list[tuple[Step, Response]]:
    return [(step, parts[step.part]) for step in composite.steps if step.part in parts]


def _warned(step: Step, part: Response) -> list[Warned]:
    return [replace(w, field=f"{step.part}.{w.field}") for w in part.warnings]


def _cautions(composite: Composite, parts: Mapping[str, Response]) -> tuple[str, ...]:
    lines = list(cautions_of(composite))
    for part in parts.values():
        lines += part.cautions
    return tuple(dict.fromkeys(lines))


def _part_question(step: Step, taken: Mapping[str, Known | None], card: _Card) -> Request:
    request = card.request
    given = {name: k for name, k in taken.items() if k is not None}
    uncertainties: dict[Path, Stated] = {}
    for name, k in given.items():
        uncertainties |= {(name, *p[1:]): stated for p, stated in k.uncertainties.items()}
    values = {name: k.value for name, k in given.items()}
    for name, field_ in declared(step.calculation.inputs).items():
        if isinstance(field_, FindingsField):
            values[name] = tuple(card.findings)
    inputs = step.calculation.inputs(**values)
    left: dict[Path, Mapping[str, Any]] = {
        (name,): k.left_out for name, k in given.items() if k.left_out and _is_one(k.value)
    }
    return replace(
        request,
        inputs=inputs,
        uncertainties=uncertainties,
        left_out=left,
        told=request.weigh,
        carried=onto(inputs, given, request),
        pushed=pushed_onto(inputs, given, card.reliefs),
    )


def _is_one(value: Any) -> bool:
    return isinstance(value, float)


def _named_here(fault: CoreError, taken: Mapping[str, Known | None]) -> CoreError:
    """Return the fault under the composite's own names of its fields."""

    def here(name: str) -> str:
        source = taken.get(name)
        return name if source is None else ".".join(map(str, source.path))

    fault.field, fault.also = here(fault.field), tuple(map(here, fault.also))
    return fault
