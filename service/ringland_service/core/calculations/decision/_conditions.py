"""What a repair option asks for, and how it stands after that.

An option falls out by any condition that does not hold; it is open while one is not known.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from ringland_service.core.declare import Want
from ringland_service.core.metrology.conformity import CLOSE, FAIL, PASS
from ringland_service.core.metrology.findings import Finding, found
from ringland_service.core.metrology.unjudged import NOT_JUDGED

TAKEN, POSSIBLE, OPEN, FALLS_OUT = "taken", "possible", "open", "falls_out"
STANDINGS = {
    TAKEN: "the way to go",
    POSSIBLE: "would do too, after the way to go",
    OPEN: "cannot be told yet",
    FALLS_OUT: "falls out",
}
HOLDS, NOT_KNOWN, BROKEN = "holds", "unknown", "broken"
# What a verdict makes of a condition, but for one that is too close to call.
STATE_OF = {PASS: HOLDS, FAIL: BROKEN, NOT_JUDGED: NOT_KNOWN}


@dataclass(frozen=True)
class Condition:
    """One thing that an option asks for: whether it holds, in words, and what would tell more.

    ``missing`` where it is only not known because nothing was measured or looked at.
    """

    state: str
    said: str
    want: Want | None = None
    settle: str = ""
    missing: bool = False


@dataclass(frozen=True)
class Assessment:
    """How an option stands: all its conditions, and why it is taken when it is."""

    conditions: tuple[Condition, ...]
    headline: str = ""

    @property
    def standing(self) -> str:
        """Whether it falls out, is open, or is possible."""
        states = {condition.state for condition in self.conditions}
        if BROKEN in states:
            return FALLS_OUT
        return OPEN if NOT_KNOWN in states else POSSIBLE

    @property
    def reasons(self) -> tuple[str, ...]:
        """Why it stands so: what breaks it, else what is open, else what holds."""
        deciding = {FALLS_OUT: BROKEN, OPEN: NOT_KNOWN, POSSIBLE: HOLDS}[self.standing]
        return tuple(c.said for c in self.conditions if c.state == deciding)

    @property
    def wants(self) -> tuple[Want, ...]:
        """What would tell more; one that falls out wants it only where uncertainty breaks it."""
        if self.standing == FALLS_OUT:
            uncertainties = [c for c in self.conditions if c.state == BROKEN]
            if not all(c.settle for c in uncertainties):
                return ()
            return tuple(Want(f"re-measure: {c.said}", advice=c.settle) for c in uncertainties)
        return tuple(c.want for c in self.conditions if c.want is not None)


def holds(said: str, want: Want | None = None) -> Condition:
    """Return a condition that holds; with ``want`` where more may still be told."""
    return Condition(HOLDS, said, want)


def broken(said: str) -> Condition:
    """Return a condition that does not hold."""
    return Condition(BROKEN, said)


def unknown(said: str, *ways: tuple[str, ...]) -> Condition:
    """Return a condition that is not known, and what would tell."""
    return Condition(NOT_KNOWN, said, Want(said, ways) if ways else None)


def missing(said: str, *ways: tuple[str, ...]) -> Condition:
    """Return a condition of which nothing was measured or looked at, and what would tell."""
    return Condition(NOT_KNOWN, said, Want(said, ways) if ways else None, missing=True)


def judged(
    findings: Iterable[Finding],
    check: str,
    untold: Condition | None,
    *,
    close: str = NOT_KNOWN,
    of: str | None = None,
) -> list[Condition]:
    """Return the conditions that a check's findings make; ``untold`` where there is none.

    ``close`` is the state of a verdict that is too close to call. What could not be judged at all
    counts neither for an option nor against it.
    """
    states = {**STATE_OF, CLOSE: close}
    verdicts = [f for f in found(findings, check) if of is None or f.of == of]
    if not verdicts:
        return [] if untold is None else [untold]
    return [Condition(states[f.verdict], f.said, None, f.settle) for f in verdicts]
