"""What the checks of earlier parts found, as a later part may read it."""

from collections.abc import Iterable
from dataclasses import dataclass

from ringland_service.core.metrology.conformity import PASS


@dataclass(frozen=True)
class Finding:
    """A verdict passed so far: its check, the three-way word, and the sentence that says it.

    ``of`` says of which, where the check passes a verdict on each of several; ``settle`` how to
    settle one that is too close to call, whatever it counts as, or to judge one that is not judged.
    ``close`` says whether it is too close to call, ``probability`` how likely the value lies within
    its limits (None where no uncertainty is known), ``hurts`` why it counts as a fail then, where
    it does; ``by_interval`` whether it was judged from an interval, which knows no probability.
    """

    check: str
    verdict: str
    said: str
    of: str = ""
    settle: str = ""
    close: bool = False
    probability: float | None = None
    hurts: str = ""
    by_interval: bool = False


def found(findings: Iterable[Finding], *checks: str) -> list[Finding]:
    """Return the findings of the named checks, in the order asked for."""
    findings = list(findings)
    return [one for check in checks for one in findings if one.check == check]


def all_pass(findings: Iterable[Finding]) -> bool:
    """Return whether every finding is a pass: too close to call is none."""
    return all(finding.verdict == PASS for finding in findings)
