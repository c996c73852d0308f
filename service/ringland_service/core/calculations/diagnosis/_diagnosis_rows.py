"""The tables of a diagnosis: suspects, lines, evidence, what is left out."""

from collections.abc import Mapping, Sequence

from ringland_service.core.calculations.diagnosis import evidence_read as read
from ringland_service.core.calculations.diagnosis._evidence_weighed import Weighed
from ringland_service.core.calculations.diagnosis._evidence_weighed import (
    contradictory as pairs_of,
)
from ringland_service.core.calculations.diagnosis.tables import EVIDENCE, SUSPECT_WORDS
from ringland_service.core.declare import record, result
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

TABLE = f"the table of evidence; {COMMON}"


@record
class SuspectRow:
    """One suspect and its score."""

    suspect: str = result("code", basis="as listed", source=COMMON, choices=SUSPECT_WORDS)
    score: Number = result("sum of what counts", digits=2, basis="its lines", source=TABLE)
    words: str = result("what it is", basis="as listed", source=COMMON)


@record
class LineRow:
    """What one piece of evidence says of one suspect."""

    suspect: str = result("of whom", basis="as listed", source=TABLE, choices=SUSPECT_WORDS)
    evidence: str = result("by what", basis="as listed", source=TABLE)
    weight: Number = result(
        "above 0 for, below 0 against", digits=2, basis="table or request", source=TABLE
    )
    counts: Number = result(
        "what of it counts", digits=2, basis="the rules of addition", source=TABLE
    )
    why: str = result("the reason, and why it counts less", basis="as listed", source=TABLE)


@record
class EvidenceRow:
    """One piece of evidence at hand."""

    evidence: str = result("id", basis="as listed", source=TABLE)
    known_from: str = result(
        "whether told, measured or derived", basis="inputs", source=TABLE, choices=read.KNOWN_FROM
    )
    words: str = result("what it is", basis="as listed", source=TABLE)


@record
class LeftOut:
    """A suspect or a piece of evidence that is left out, and why."""

    id: str = result("code or id", basis="as listed", source=TABLE)
    why: str = result("why", basis="the engine, or how it was tested", source=TABLE)


@record
class Contradictory:
    """Strong evidence for and against one suspect."""

    suspect: str = result("of whom", basis="as listed", source=TABLE, choices=SUSPECT_WORDS)
    speaks_for: str = result("for", basis="as listed", source=TABLE)
    speaks_against: str = result("against", basis="as listed", source=TABLE)


def line_rows(found: Sequence[Weighed], scores: Mapping[str, float]) -> tuple[LineRow, ...]:
    """Return the lines by suspect, best first; of each what counts most for it first."""
    rank = {name: place for place, name in enumerate(scores)}
    ordered = sorted(found, key=lambda line: (rank[line.suspect], -line.counts, -line.weight))
    return tuple(
        LineRow(
            suspect=line.suspect,
            evidence=line.evidence,
            weight=line.weight,
            counts=line.counts,
            why=f"{line.reason} ({line.note})" if line.note else line.reason,
        )
        for line in ordered
    )


def evidence_rows(known: Mapping[str, str]) -> tuple[EvidenceRow, ...]:
    return tuple(
        EvidenceRow(evidence=name, known_from=how, words=EVIDENCE[name].words)
        for name, how in known.items()
    )


def contradictory(
    found: Sequence[Weighed], figures: Mapping[str, float]
) -> tuple[Contradictory, ...] | None:
    pairs = pairs_of(found, figures.get("strong"))
    rows = [Contradictory(suspect=s, speaks_for=f, speaks_against=a) for s, f, a in pairs]
    return tuple(rows) or None


def left_out(why: Mapping[str, str]) -> tuple[LeftOut, ...] | None:
    return tuple(LeftOut(id=name, why=words) for name, words in why.items()) or None
