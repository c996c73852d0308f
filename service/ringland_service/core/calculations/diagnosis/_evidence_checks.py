"""What cannot be: evidence that this engine cannot show, and evidence that excludes other."""

from collections.abc import Iterable, Iterator
from itertools import pairwise
from typing import Any

from ringland_service.core.calculations.diagnosis.diagnosis_inputs import AIR
from ringland_service.core.calculations.diagnosis.tables import (
    CRANKCASE,
    DECOMPRESSOR,
    EVIDENCE,
    LIQUID_COOLING,
    SEVERAL_CYLINDERS,
    SUSPECTS,
    VALVES,
    WEIGHTS,
    Rule,
    of_kind,
)
from ringland_service.core.errors import Contradiction

WITHOUT = {
    SEVERAL_CYLINDERS: "a single has no neighbour to compare with",
    LIQUID_COOLING: "an air-cooled engine has no coolant",
    DECOMPRESSOR: "this engine has no decompressor",
}
CYCLES = {"four_stroke": "a four-stroke", "two_stroke": "a two-stroke"}


def lacks(i: Any) -> frozenset[str]:
    """Return what the engine is known not to have."""
    known = {
        VALVES: i.cycle == "two_stroke",
        CRANKCASE: i.cycle == "four_stroke",
        DECOMPRESSOR: "none" in (i.decompressor, i.decompressor_state),
        SEVERAL_CYLINDERS: i.cylinders == 1,
        LIQUID_COOLING: i.cooling == AIR,
    }
    return frozenset(name for name, lacking in known.items() if lacking)


def left_out(i: Any) -> dict[str, str]:
    """Return the suspects that this engine cannot have, each with why."""
    missing = lacks(i)
    return {one.id: one.without for one in SUSPECTS.values() if one.needs in missing}


def insist(i: Any, evidence: Iterable[str], figures: dict[str, float]) -> None:
    """Refuse evidence that cannot be, and weights out of order.

    Raises
    ------
    Contradiction
        Naming every piece of evidence that this engine cannot show, or that excludes another.
    """
    at_hand = tuple(evidence)
    faults = [*_impossible(i, at_hand), *_exclusive(at_hand)]
    if faults:
        right = "take out what was not seen on this engine"
        raise Contradiction("evidence", "; ".join(faults), right)
    _insist_on_order(figures)
    _insist_on_own(i)


def _impossible(i: Any, evidence: Iterable[str]) -> Iterator[str]:
    missing = lacks(i)
    for row in (EVIDENCE[name] for name in evidence):
        if row.cycle and row.cycle != i.cycle:
            yield f"{row.id}, {row.words}: not on {CYCLES[i.cycle]}"
        for need in row.needs:
            if need in missing:
                yield f"{row.id}, {row.words}: {WITHOUT[need]}"


def _exclusive(evidence: tuple[str, ...]) -> Iterator[str]:
    for rule in of_kind("excludes"):
        together = _together(rule, evidence)
        if len(together) > 1:
            told = " and ".join(f"{name} ({EVIDENCE[name].words})" for name in together)
            yield f"{told} cannot both be: {rule.words}"


def _together(rule: Rule, evidence: tuple[str, ...]) -> list[str]:
    """Return the evidence at hand that the rule says cannot stand together."""
    if not set(rule.all) <= set(evidence):
        return []
    return [name for name in evidence if name in (*rule.all, *rule.any)]


def _insist_on_order(figures: dict[str, float]) -> None:
    given = [(name, figures[name]) for name in WEIGHTS if name in figures]
    for (above, more), (below, less) in pairwise(given):
        if less > more:
            raise Contradiction(
                f"{below}_weight",
                f"a {below} line would count more than a {above} one",
                "weights in order: decisive, strong, moderate, weak",
            )


def _insist_on_own(i: Any) -> None:
    pairs = [(own.evidence, own.suspect) for own in i.weights or ()]
    twice = sorted({f"{e} for {s}" for e, s in pairs if pairs.count((e, s)) > 1})
    if twice:
        raise Contradiction(
            "weights", f"weighed twice: {', '.join(twice)}", "one weight per evidence and suspect"
        )
