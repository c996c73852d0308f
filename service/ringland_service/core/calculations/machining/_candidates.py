"""The pistons on offer for a larger bore: what each would need, and which is the one to take."""

from dataclasses import dataclass
from typing import Any

from ringland_service.core.formulas import machining
from ringland_service.core.metrology.conformity import at_most

CLEANS_UP, AT_THE_HONE, DOES_NOT = "cleans_up", "at_the_hone_only", "does_not"
TOO_LARGE = "beyond_makers_largest"
OUTCOMES = {
    CLEANS_UP: "cleans up at boring",
    AT_THE_HONE: "may clean up at the hone: ask the machinist",
    DOES_NOT: "does not clean up, not even at the finish bore",
    TOO_LARGE: "larger than the maker's largest oversize",
}
# A piston may carry its clearance or not, so sizes of one oversize differ by about this
# (common practice, no source).
OVERSIZE_SLACK_MM = 0.05


@dataclass(frozen=True)
class Candidate:
    """One piston, the bores that it needs, and what they do to the damage."""

    mark: str
    piston_mm: float
    finish_mm: float
    bore_to_mm: float
    margin_mm: float
    outcome: str


def candidates(i: Any) -> tuple[Candidate, ...]:
    """Return the pistons as offered, each with its bores, its margin and its outcome."""
    return tuple(_candidate(i, offered.mark, offered.piston_mm) for offered in i.pistons)


def _candidate(i: Any, mark: str, piston_mm: float) -> Candidate:
    finish = float(machining.finish_bore_mm(piston_mm, i.wanted_clearance_mm))
    bore_to = float(machining.bore_to_mm(finish, i.hone_stock_mm))
    margin = _margin_mm(bore_to, i.clean_up_mm)
    return Candidate(mark, piston_mm, finish, bore_to, margin, _outcome(i, finish, bore_to))


def _margin_mm(bore_to_mm: float, clean_up_mm: float) -> float:
    """Return what is left over; nothing, where the two are one size but for the last digits."""
    margin = bore_to_mm - clean_up_mm
    return max(margin, 0.0) if at_most(clean_up_mm, bore_to_mm) else margin


def _outcome(i: Any, finish_mm: float, bore_to_mm: float) -> str:
    if _beyond_makers_largest(i, finish_mm):
        return TOO_LARGE
    if at_most(i.clean_up_mm, bore_to_mm):
        return CLEANS_UP
    return AT_THE_HONE if at_most(i.clean_up_mm, finish_mm) else DOES_NOT


def _beyond_makers_largest(i: Any, finish_mm: float) -> bool:
    if i.nominal_bore_mm is None or i.makers_largest_oversize_mm is None:
        return False
    largest = i.nominal_bore_mm + i.makers_largest_oversize_mm + OVERSIZE_SLACK_MM
    return not at_most(finish_mm, largest)


def that_clean_up(among: tuple[Candidate, ...]) -> list[int]:
    """Return the places of the pistons that clean up, the smallest first, counted from 0."""
    fit = (place for place, one in enumerate(among) if one.outcome == CLEANS_UP)
    return sorted(fit, key=lambda place: among[place].finish_mm)
