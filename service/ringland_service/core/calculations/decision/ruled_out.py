"""What a decision for the cylinder rules out: sizes of a bore that is not cut, and why.

A part of a job falls out, with its reason, where the work that it tells of is not done on this
engine. Readings that cannot be true of one engine are no such case: they are refused.
"""

from collections.abc import Mapping
from typing import Any

from ringland_service.core.calculations.decision import ways_cut as cut
from ringland_service.core.calculations.decision import ways_kept as kept
from ringland_service.core.calculations.decision.cylinder_ways import DECISIONS
from ringland_service.core.calculations.machining.bored import NEVER_BORED

Known = Mapping[str, Any]
# Nothing after the decision rests on these where no new bore is cut.
OF_A_NEW_BORE = (
    "new_bore_mm",
    "oversize_choice.chosen",
    "oversize_choice.chosen_piston_mm",
    "oversize_choice.chosen_finish_mm",
)
# A bore of another metal or plating is cut to a new size after these.
NEW_BORE_AFTER = (cut.REPLATE, cut.SLEEVE)
NO_NEW_BORE = (kept.LEAVE_ALONE, kept.HONE, kept.DEGLAZE, kept.SELECT, cut.REPLACE)


def never_bored(known: Known) -> str:
    """Return why this bore is not bored or honed, where it is of such a kind."""
    return NEVER_BORED.get(known.get("bore_kind", ""), ("",))[0]


def of_the_decision(known: Known) -> Mapping[str, str]:
    """Return the names that no part rests on once the cylinder is decided on, each with why."""
    decision = known.get("cylinder_decision.decision")
    if decision in NEW_BORE_AFTER or "returned_readings_mm" in known:
        return {}
    why = never_bored(known)
    if decision in NO_NEW_BORE:
        why = why or f"no new bore is cut; the decision is: {DECISIONS[decision]}"
    return dict.fromkeys(OF_A_NEW_BORE, why) if why else {}
