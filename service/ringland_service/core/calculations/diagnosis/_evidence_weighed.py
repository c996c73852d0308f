"""What the evidence counts: its lines, which of them count, and the score of each suspect."""

import dataclasses
import math
from collections.abc import Iterable, Mapping
from typing import Any

from ringland_service.core.calculations.diagnosis.tables import (
    AGAINST,
    EVIDENCE,
    FIGURES,
    FOR,
    RULES,
    SUSPECTS,
    Evidence,
    Rule,
    of_kind,
)
from ringland_service.core.metrology.conformity import at_most

OWN = "weight of the request"
DUST = 9
NO_SHARE = "not counted: the test is not valid, and no share is given"


@dataclasses.dataclass(frozen=True)
class Weighed:
    """One line as it counts: signed, above 0 for the suspect.

    ``note`` says why it counts less than its weight, where it does.
    """

    suspect: str
    evidence: str
    family: str
    weight: float
    reason: str
    counts: float
    note: str = ""

    @property
    def direction(self) -> str:
        """Whether it speaks for or against."""
        return FOR if self.weight > 0 else AGAINST

    def less(self, counts: float, note: str) -> "Weighed":
        """Return the line counting less, with why."""
        return dataclasses.replace(self, counts=counts, note=note)


def figures_of(i: Any) -> dict[str, float]:
    """Return the figures that hold: the request's own, else the table's unless switched off."""
    found = {}
    for name, figure in FIGURES.items():
        own = getattr(i, name if hasattr(i, name) else f"{name}_weight")
        if own is not None or i.usual:
            found[name] = figure.value if own is None else own
    return found


def lines(
    i: Any, evidence: Iterable[str], out: Iterable[str], figures: Mapping[str, float]
) -> list[Weighed]:
    """Return the lines of the evidence on the suspects that the engine can have."""
    out = set(out)
    found = []
    for row in (EVIDENCE[name] for name in evidence):
        of_row = _of_table(row, figures) if i.usual else {}
        of_row |= _of_request(i, row, of_row)
        found += [line for suspect, line in of_row.items() if suspect not in out]
    return [line for line in found if line.weight]


def _of_table(row: Evidence, figures: Mapping[str, float]) -> dict[str, Weighed]:
    found = {}
    for line in row.lines:
        weight = figures[line.weight] * (1.0 if line.direction == FOR else -1.0)
        found[line.suspect] = Weighed(
            line.suspect, row.id, row.family, weight, line.reason, counts=weight
        )
    return found


def _of_request(i: Any, row: Evidence, known: Mapping[str, Weighed]) -> dict[str, Weighed]:
    found = {}
    for own in i.weights or ():
        if own.evidence == row.id:
            weight, of_table = float(own.weight), known.get(own.suspect)
            same = of_table is not None and of_table.weight * weight > 0
            reason = own.reason or (of_table.reason if of_table is not None and same else OWN)
            found[own.suspect] = Weighed(own.suspect, row.id, row.family, weight, reason, weight)
    return found


def weighed(
    i: Any, evidence: Iterable[str], out: Iterable[str], figures: Mapping[str, float]
) -> list[Weighed]:
    """Return the lines as they count: set aside, one of a family, in part where not valid."""
    at_hand = set(evidence)
    kept = [_set_aside(i, at_hand, line) for line in lines(i, evidence, out, figures)]
    kept = _strongest_of_family(kept)
    if not_valid(at_hand):
        kept = [_in_part(line, figures.get("unsound_test_share")) for line in kept]
    return kept


def not_valid(evidence: Iterable[str]) -> bool:
    """Return whether the test must be repeated before its readings say anything."""
    return not set(evidence).isdisjoint(RULES["test_not_valid"].any)


def _set_aside(i: Any, evidence: set[str], line: Weighed) -> Weighed:
    for rule in of_kind("sets_aside"):
        if _holds(rule, i, evidence) and _touches(rule, line):
            return line.less(0.0, f"not counted: {rule.words}")
    return line


def _holds(rule: Rule, i: Any, evidence: set[str]) -> bool:
    if rule.decompressors and i.decompressor not in rule.decompressors:
        return False
    return not rule.any or not evidence.isdisjoint(rule.any)


def _touches(rule: Rule, line: Weighed) -> bool:
    return (
        line.suspect in rule.suspects
        and line.family in rule.families
        and line.direction == rule.direction
        and (not rule.evidence or line.evidence in rule.evidence)
    )


def _strongest_of_family(found: list[Weighed]) -> list[Weighed]:
    """Return the lines, those of a family with a stronger one of the same direction at 0."""
    strongest: dict[tuple[str, str, str], Weighed] = {}
    for line in found:
        key = (line.suspect, line.family, line.direction)
        if line.counts and abs(line.counts) > abs(_counts(strongest.get(key))):
            strongest[key] = line
    return [
        line
        if line.counts == 0.0 or line is (best := strongest[_key(line)])
        else line.less(0.0, f"not counted: {best.evidence} of the same family counts")
        for line in found
    ]


def _key(line: Weighed) -> tuple[str, str, str]:
    return line.suspect, line.family, line.direction


def _counts(line: Weighed | None) -> float:
    return 0.0 if line is None else line.counts


def _in_part(line: Weighed, share: float | None) -> Weighed:
    if line.family not in RULES["test_not_valid"].families or line.counts == 0.0:
        return line
    if share is None:
        return line.less(0.0, NO_SHARE)
    return line.less(line.counts * share, f"counts at {share:g} until the test is repeated")


def scores(found: Iterable[Weighed]) -> dict[str, float]:
    """Return the score of each suspect spoken of, best first; ties in the order of the table."""
    found = list(found)
    spoken = [name for name in SUSPECTS if any(line.suspect == name for line in found)]
    total = {
        # fsum rounds once, so that the order of the evidence cannot matter; dust is taken off.
        name: round(math.fsum(line.counts for line in found if line.suspect == name), DUST) + 0.0
        for name in spoken
    }
    return {name: total[name] for name in sorted(spoken, key=lambda name: -total[name])}


def contradictory(found: Iterable[Weighed], strong: float | None) -> list[tuple[str, str, str]]:
    """Return the suspect and the two ids where strong evidence speaks both for and against."""
    if strong is None:
        return []
    heavy = [line for line in found if line.counts and at_most(strong, abs(line.weight))]
    return [
        (one.suspect, one.evidence, other.evidence)
        for one in heavy
        for other in heavy
        if one.suspect == other.suspect and one.direction == FOR and other.direction == AGAINST
    ]
