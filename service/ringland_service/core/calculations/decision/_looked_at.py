"""What was seen of a cylinder without a gauge, and what it means for each repair option."""

from ringland_service.core.calculations.decision._conditions import (
    Condition,
    broken,
    holds,
    missing,
    unknown,
)
from ringland_service.core.calculations.decision._decision_inputs import Inputs
from ringland_service.core.calculations.decision.damage import CATCHES, DAMAGE, FLAKED, NONE
from ringland_service.core.declare import Want
from ringland_service.core.engines.condition import CLEAN, CORRODED, SCORED, SMEARED, SURFACE


def structural(i: Inputs) -> bool:
    """Return whether the cylinder itself is broken, not its plating alone."""
    return i.damage not in (None, NONE, FLAKED)


def undamaged(i: Inputs) -> Condition:
    """Return whether nothing fatal was found; untold counts as none, and says so."""
    if i.damage is None:
        said = "cracks, holes and breakage: not told, taken as none"
        return holds(said, Want("whether the cylinder is cracked or broken", (("damage",),)))
    if i.damage == NONE:
        return holds("no crack, hole or breakage found")
    return broken(f"{DAMAGE[i.damage]}: past mending by hone or bore")


def unscored(i: Inputs) -> Condition:
    """Return whether no score, pit or smear stands against keeping the surface."""
    if i.surface is None and i.scores is None:
        return missing("the look of the bore's surface is not told", ("surface",))
    if i.surface == SMEARED:
        return unknown(
            "aluminium smeared on the bore: have it taken off by a specialist, then survey again"
        )
    if i.surface in (SCORED, CORRODED):
        return broken(f"the surface is {SURFACE[i.surface].split(':')[0]}")
    return holds(f"the surface is {SURFACE[i.surface or CLEAN].split(':')[0]}")


def unridged(i: Inputs) -> Condition:
    """Return whether no ridge would break new rings."""
    if i.ridge is None:
        return unknown("a ridge above the ring travel is not looked for", ("ridge",))
    if i.ridge == CATCHES:
        return unknown("a ridge that a finger nail catches breaks new rings: cut it first")
    return holds("no ridge left")
