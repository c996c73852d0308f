"""The parts of a card as plain arithmetic: one chain of calls, run again with readings moved.

Nothing here carries an uncertainty from part to part. What the card chose is held: which parts are
worked out, where each input comes from, which piston is taken, verdicts and limits.
"""

import dataclasses
from collections.abc import Callable, Container, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property, partial
from typing import Any
from unittest import mock

import draws

from ringland_service.core.declare import Calculation, Composite, Step, input_fields
from ringland_service.core.declare.fields import SectionField
from ringland_service.core.metrology.propagation import Component, moved
from ringland_service.engine import composite
from ringland_service.engine.composite import CompositeResponse, answer_composite
from ringland_service.engine.known import Known, source_key
from ringland_service.engine.request import Request
from ringland_service.engine.response import Response
from ringland_service.engine.scalar import answer, with_limit_sides

ON_CARD = -1


@dataclass(frozen=True)
class CardComponent:
    """A component of a job's uncertainty: its u, and what it moves.

    ``on`` is keyed by the place of a working in the chain, or ``ON_CARD``: a component there moves
    inputs by ``by``·u.
    """

    name: str
    u: float
    on: Mapping[int, Component]


ReadOut = Mapping[str, tuple[Any, str]]
Derive = Callable[[Mapping[str, Any], Mapping[str, str]], ReadOut]
# Components, and by how many standard uncertainties each moves: a number, or one a draw.
Moved = Sequence[tuple[CardComponent, Any]]


@dataclass
class Working:
    """One part as it was worked out: its inputs, and the names of where they come from.

    ``known`` are the names of all that was known then.
    """

    step: Step
    known: frozenset[str]
    takes: dict[str, str] = field(default_factory=dict)
    inputs: Any = None
    answer: Response | None = None

    @cached_property
    def results(self) -> dict[str, Any]:
        """The results on the card's own readings, by name."""
        return draws.members(self.step.calculation.compute(self.inputs))


@dataclass
class Chain:
    """A card's parts in the order of their working, also those taken back or worked out again."""

    card: Composite
    request: Request
    found: CompositeResponse
    workings: list[Working]

    @property
    def last(self) -> dict[str, Working]:
        """The working of each part of the card; of one worked out again, the last."""
        return {one.step.part: one for one in self.workings if one.step.part in self.found.parts}

    def run(self, by: Moved = (), parts: Container[str] | None = None) -> dict[str, Any]:
        """Return every result, by ``part.result``, with components moved.

        Parts that are not among ``parts`` stay as they were; None are all of them.
        """
        words = {verdict.check.name: verdict.word for verdict in self.found.verdicts}
        known = fields_of(shifted(self.request.inputs, by, ON_CARD))
        if self.card.derive is not None:
            known |= draws.read_out(self.card.derive, known)
        found: dict[str, Any] = {}
        for place, one in enumerate(self.workings):
            derive = one.step.derive
            if derive is not None:
                # What the decision ruled out before, no part read any more.
                left = {name: value for name, value in known.items() if name in one.known}
                known |= draws.read_out(partial(_with, derive, words), left)
            given = {name: known[key] for name, key in one.takes.items()}
            left_alone = parts is not None and one.step.part not in parts
            own = any(place in component.on for component, _ in by)
            if left_alone or (unmoved(one, given) and not own):
                results = one.results
            else:
                inputs = shifted(dataclasses.replace(one.inputs, **given), by, place)
                results = draws.worked(one.step.calculation, inputs, one.results)
            named = {f"{one.step.part}.{name}": value for name, value in results.items()}
            found |= named
            known |= {name: value for name, value in named.items() if value is not None}
        return found


def _with(derive: Derive, words: Mapping[str, str], known: Mapping[str, Any]) -> ReadOut:
    return derive(known, words)


def fields_of(inputs: Any) -> dict[str, Any]:
    """Return what a card is told, by the name of the field in any section."""
    found: dict[str, Any] = {}
    record: type = type(inputs)
    for name, of in input_fields(record).items():
        value = getattr(inputs, name)
        if value is not None:
            found[name] = value
            if isinstance(of, SectionField):
                found |= fields_of(value)
    return found


def shifted(inputs: Any, by: Moved, place: int) -> Any:
    """Return inputs with all that the components move there."""
    for component, times in by:
        if place in component.on:
            inputs = moved(inputs, component.on[place], times * component.u)
    return inputs


def unmoved(one: Working, given: Mapping[str, Any]) -> bool:
    """Return whether what a part takes is as it was when it was worked out."""
    pairs = [(value, getattr(one.inputs, name)) for name, value in given.items()]
    return all(
        value is before or (not draws.holds_draws(value) and bool(value == before))
        for value, before in pairs
    )


def chain_of(card: Composite, request: Request) -> Chain:
    """Response a card, and note in which order its parts were worked out, and from what."""
    begun: list[Working] = []
    done: list[Working] = []

    def chosen(step: Step, name: str, known: Mapping[str, Known]) -> str | None:
        if name == next(iter(input_fields(step.calculation.inputs))):
            begun.append(Working(step, frozenset(known)))
        key = source_key(step, name, known)
        if key is not None and name not in step.fixed:
            begun[-1].takes[name] = key
        return key

    def answered(calculation: Calculation, part: Request) -> Response:
        one = begun[-1]
        one.inputs = with_limit_sides(calculation, part)
        # A part may do without what is known.
        one.takes = {n: k for n, k in one.takes.items() if getattr(one.inputs, n) is not None}
        one.answer = answer(calculation, part)
        done.append(one)
        return one.answer

    with (
        mock.patch.object(composite, "source_key", chosen),
        mock.patch.object(composite, "answer", answered),
    ):
        found = answer_composite(card, request)
    return Chain(card, request, found, done)
