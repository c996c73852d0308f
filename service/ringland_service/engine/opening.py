"""What would open a part of a composite, or change it: the least sets of fields."""

import itertools
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from ringland_service.core.declare import Step, Way, asked, defaults
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.engine.answer import Answer
from ringland_service.engine.known import Known, sources_of
from ringland_service.engine.question import Path


@dataclass(frozen=True)
class Open:
    """What is open in a part, or keeps it from being answered; any one of ``ways`` tells."""

    part: str
    why: str
    ways: tuple[tuple[Path, ...], ...]
    advice: str = ""


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


def missing(
    step: Step,
    taken: Mapping[str, Known | None],
    where: Mapping[str, Path],
    besides: Sequence[tuple[Way, ...]],
    opened: Mapping[str, Sequence[Open]],
) -> list[list[frozenset[Path]]]:
    """Return what the part still waits for: per need, the sets of fields of which one will do."""
    calculation = step.calculation
    optional = defaults(calculation.inputs)
    needs: list[tuple[Way, ...]] = [((n,),) for n in asked(calculation.inputs) if n not in optional]
    needs += [*calculation.one_of, *besides]
    found, through = [], []
    for ways in needs:
        lacking = [[name for name in way if taken[name] is None] for way in ways]
        if all(lacking):
            found.append([s for names in lacking for s in _field_sets(step, names, where)])
            through.append([s for names in lacking for s in _through_parts(step, names, opened)])
    if not any(found):
        return found
    # A need that no field fills is filled through the part that gives it, where that is open too.
    whole = [direct or by_part for direct, by_part in zip(found, through, strict=True)]
    return whole if all(whole) else [[] for _ in whole]


def _through_parts(
    step: Step, names: Sequence[str], opened: Mapping[str, Sequence[Open]]
) -> list[frozenset[Path]]:
    """Return the sets of fields that would open a part which gives the one name lacking."""
    if len(names) != 1:
        return []
    parts = [source.split(".")[0] for source in sources_of(step, names[0]) if "." in source]
    return [frozenset(way) for p in parts for one in opened.get(p, ()) for way in one.ways]


def _field_sets(
    step: Step, names: Sequence[str], where: Mapping[str, Path]
) -> list[frozenset[Path]]:
    """Return the sets of the composite's fields that would fill the names, by every source."""
    choices = [[where[s] for s in sources_of(step, name) if s in where] for name in names]
    return [frozenset(paths_) for paths_ in itertools.product(*choices)]


def wanted(
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
