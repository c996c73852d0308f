"""The answer to one question: results, their uncertainty, verdicts, warnings, cautions."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from ringland_service.core.declare import Calculation, Check
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.notices import Warned
from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.conformity import Judged, narrower_than_guard, wider_than_zone
from ringland_service.core.metrology.extremes import READS, Interval, Push
from ringland_service.core.metrology.limits import Limit

# By the name of a component: its contribution to each result, for one standard uncertainty.
Shares = tuple[tuple[str, Mapping[str, Any]], ...]


class DomainError(Exception):
    """A question that cannot be answered; carries every fault found."""

    def __init__(self, faults: Sequence[CoreError]) -> None:
        super().__init__("; ".join(map(str, faults)))
        self.faults = tuple(faults)


@dataclass(frozen=True)
class Verdict:
    """A verdict with all that stands behind it; numbers in the canonical unit of ``kind``.

    ``of`` says of which, where the check passes a verdict on each of several; ``why`` names the
    condition under which no verdict is due, None where one is (in a column: empty); ``interval``
    is what the verdict is judged from, in place of the rule asked for (in a column: where given).
    """

    check: Check
    kind: Kind | None
    decimals: int | None
    value: Any
    u: Any
    limit: Limit
    rule: str
    judged: Judged
    word: Any
    of: str = ""
    why: Any = None
    interval: Interval | None = None

    @property
    def to_judge(self) -> str:
        """What would make a value that is not judged one that can be."""
        return next((u.to_judge for u in self.check.unjudged if u.why == self.why), "")

    @property
    def bias(self) -> str:
        """What the verdict is judged from, and which way noise pushes it; empty where by the rule.

        Of a single question.
        """
        if self.interval is None:
            return ""
        return (
            "judged from its 95 % interval: it rests on the largest or smallest of readings that"
            f" lie within their uncertainty, so noise makes it read {READS[self.interval.lean]}"
        )

    @property
    def advice(self) -> str:
        """What would settle a verdict that is too close to call."""
        if self.interval is not None:
            too_wide = wider_than_zone(self.interval, self.limit)
            why = "the limits are closer together than its interval reaches: " if too_wide else ""
            return f"{why}{self.check.settle}"
        if narrower_than_guard(self.u or 0.0, self.limit, self.rule):
            return f"the limits are closer together than twice the uncertainty: {self.check.settle}"
        if self.judged.margin == 0:
            return "the value stands on its limit: no measurement will settle it alone"
        return self.check.settle


@dataclass(frozen=True)
class Response:
    """What one calculation answers.

    ``moved`` is u of each input that uncertainty moves, by path; ``left_out``, per result, what its
    uncertainty leaves out: by the words of each input that states none, what it would add to U.
    ``shares`` is the budget of the results: what each component contributes to each, with its sign.
    ``intervals`` has the results that noise pushes one way, and ``pushes`` how it pushes each.
    """

    calculation: Calculation
    inputs: Any
    outputs: Any
    u: Mapping[str, Any] = field(default_factory=dict)
    verdicts: tuple[Verdict, ...] = ()
    warnings: tuple[Warned, ...] = ()
    cautions: tuple[str, ...] = ()
    moved: Mapping[tuple[str | int, ...], Any] = field(default_factory=dict)
    left_out: Mapping[str, Mapping[str, Any]] = field(default_factory=dict)
    shares: Shares = ()
    intervals: Mapping[str, Interval] = field(default_factory=dict)
    pushes: Mapping[str, Mapping[str, Push]] = field(default_factory=dict)
