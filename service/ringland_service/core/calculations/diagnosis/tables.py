"""The tables of the diagnosis: suspects, evidence, what each counts, the rules, the next tests."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from ringland_service.core.tables import read_table
from ringland_service.core.tables.sources import NO_SOURCE

FOR, AGAINST = "for", "against"
WEIGHTS = ("decisive", "strong", "moderate", "weak")
# What an engine may lack that a suspect or a test of it needs.
VALVES, DECOMPRESSOR, CRANKCASE = "valves", "decompressor", "crankcase_scavenging"
SEVERAL_CYLINDERS, LIQUID_COOLING = "several_cylinders", "liquid_cooling"


@dataclass(frozen=True, kw_only=True)
class Row:
    """What every row of these tables has."""

    id: str
    words: str
    standing: str = "common_practice"
    source: str = NO_SOURCE


@dataclass(frozen=True, kw_only=True)
class Suspect(Row):
    """Whom the evidence may speak for or against.

    Attributes
    ----------
    needs : str
        What an engine must have, or it is left out.
    without : str
        Why it is left out where the engine has not.
    """

    needs: str = ""
    without: str = ""


@dataclass(frozen=True)
class Line:
    """What one piece of evidence says of one suspect: ``for`` or ``against``, and how much."""

    suspect: str
    direction: str
    weight: str
    reason: str


@dataclass(frozen=True, kw_only=True)
class Evidence(Row):
    """What may be seen of an engine.

    Attributes
    ----------
    family : str
        Of the lines of one family only the strongest count.
    lines : tuple of Line
    cycle : str
        The cycle that it is for; empty for both.
    needs : tuple of str
        What an engine must have for it to be seen.
    put_right : str
        What makes the test valid again, where it is not.
    derived : bool
        Follows from other evidence, and is never told.
    """

    family: str
    lines: tuple[Line, ...]
    cycle: str = ""
    needs: tuple[str, ...] = ()
    put_right: str = ""
    derived: bool = False


@dataclass(frozen=True, kw_only=True)
class Figure(Row):
    """What a weight counts, or a threshold."""

    value: float
    reason: str


@dataclass(frozen=True, kw_only=True)
class Rule(Row):
    """How evidence is added up: when it holds, and whose lines it touches.

    Attributes
    ----------
    all, any : tuple of str
        Evidence of which all, and of which some, must be at hand for the rule to hold.
    evidence, families, suspects, direction
        The lines that it touches.
    decompressors : tuple of str
        Kinds of decompressor that it is for.
    gives : str
        Evidence that follows.
    """

    kind: str = ""
    evidence: tuple[str, ...] = ()
    all: tuple[str, ...] = ()
    any: tuple[str, ...] = ()
    families: tuple[str, ...] = ()
    suspects: tuple[str, ...] = ()
    direction: str = ""
    decompressors: tuple[str, ...] = ()
    gives: str = ""


@dataclass(frozen=True, kw_only=True)
class NextTest(Row):
    """A test that parts two suspects, and how it reads.

    Attributes
    ----------
    between, others : tuple of str
        One leader is of the first, the other of the second.
    anybody : bool
        The other leader may be any.
    settled : bool
        For a first that is settled, not for two.
    begins : bool
        For when nobody is suspected yet.
    fills : tuple of str
        Families of evidence that the test gives: with some of all of them it has been done.
    after, seen : tuple of str
        Families, and evidence, of which some must be there.
    once : tuple of str
        Evidence that says that it has been done.
    needs : str
        What an engine must have.
    """

    reads_as: str
    between: tuple[str, ...] = ()
    others: tuple[str, ...] = ()
    anybody: bool = False
    settled: bool = False
    begins: bool = False
    fills: tuple[str, ...] = ()
    after: tuple[str, ...] = ()
    seen: tuple[str, ...] = ()
    once: tuple[str, ...] = ()
    needs: str = ""


@dataclass(frozen=True, kw_only=True)
class Complaint(Row):
    """What an owner says, and what to look at and to test first.

    Attributes
    ----------
    look_first, test_next : tuple of str
        From outside, and then by a test.
    stop_when : str
    cycle, valve_gear, cooling : str
        The engines that it is for; empty for all.
    least_cylinders : int
    decompressor : bool
        Whether only engines with one can have it.
    """

    look_first: tuple[str, ...]
    test_next: tuple[str, ...]
    stop_when: str
    cycle: str = ""
    valve_gear: str = ""
    cooling: str = ""
    least_cylinders: int = 1
    decompressor: bool = False


def _tuples(row: Mapping[str, Any]) -> dict[str, Any]:
    return {k: tuple(v) if isinstance(v, list) else v for k, v in row.items()}


def _evidence(row: dict[str, Any]) -> Evidence:
    lines = tuple(
        Line(suspect, direction, weight, reason)
        for direction in (FOR, AGAINST)
        for suspect, weight, reason in row.pop(f"speaks_{direction}", ())
    )
    return Evidence(lines=lines, **_tuples(row))


FAMILIES_OF = ("evidence_readings", "evidence_leak_down", "evidence_signs", "evidence_found")
SUSPECTS: dict[str, Suspect] = {row["id"]: Suspect(**row) for row in read_table("suspects")}
EVIDENCE: dict[str, Evidence] = {
    row["id"]: _evidence(row) for table in FAMILIES_OF for row in read_table(table)
}
FIGURES: dict[str, Figure] = {row["id"]: Figure(**row) for row in read_table("diagnosis_figures")}
RULES: dict[str, Rule] = {row["id"]: Rule(**_tuples(row)) for row in read_table("diagnosis_rules")}
NEXT_TESTS: tuple[NextTest, ...] = tuple(
    NextTest(**_tuples(row)) for row in read_table("next_tests")
)

COMPLAINTS: dict[str, Complaint] = {
    row["id"]: Complaint(**_tuples(row)) for row in read_table("complaints")
}

SUSPECT_WORDS: dict[str, str] = {one.id: one.words for one in SUSPECTS.values()}
EVIDENCE_WORDS: dict[str, str] = {one.id: one.words for one in EVIDENCE.values()}
COMPLAINT_WORDS: dict[str, str] = {one.id: one.words for one in COMPLAINTS.values()}
# What can be told; the derived is added.
TOLD_WORDS: dict[str, str] = {one.id: one.words for one in EVIDENCE.values() if not one.derived}


def of_kind(kind: str) -> tuple[Rule, ...]:
    """Return the rules of a kind, in order."""
    return tuple(rule for rule in RULES.values() if rule.kind == kind)
