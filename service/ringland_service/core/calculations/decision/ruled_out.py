"""What a decision for the cylinder rules out: sizes of a bore that is not cut, and why.

A part of a job falls out, with its reason, where the work that it tells of is not done on this
engine. Readings that cannot be true of one engine are no such case: they are refused.
"""

from collections.abc import Mapping

from ringland_service.core.calculations.decision.repair_options import DECISIONS, TAKEN_BY, Cut
from ringland_service.core.calculations.machining.bored import NEVER_BORED
from ringland_service.core.declare import Known

# Nothing after the decision rests on these where no new bore is cut.
OF_A_NEW_BORE = (
    "new_bore_mm",
    "oversize_choice.chosen",
    "oversize_choice.chosen_piston_mm",
    "oversize_choice.chosen_finish_mm",
)


def never_bored(known: Known) -> str:
    """Return why this bore is not bored or honed, where it is of such a kind."""
    kind = known.get("bore_kind")
    return NEVER_BORED[kind][0] if kind in NEVER_BORED else ""


def of_the_decision(known: Known) -> Mapping[str, str]:
    """Return the names that no part rests on once the cylinder is decided on, each with why.

    New metal or plating is cut to a new size whatever the bore was.
    """
    decision = known.get("cylinder_decision.way")
    option = None if decision is None else TAKEN_BY[decision]
    cuts = None if option is None else option.cuts
    if cuts is Cut.NEW_SURFACE or "returned_readings_mm" in known:
        return {}
    why = never_bored(known)
    if decision is not None and cuts is Cut.NOTHING:
        why = why or f"{cuts.value}; the decision is: {DECISIONS[decision]}"
    return dict.fromkeys(OF_A_NEW_BORE, why) if why else {}
