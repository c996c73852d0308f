"""Base gaskets at hand: the squish that each leaves, and which of them to take."""

from dataclasses import dataclass

from ringland_service.core.calculations.geometry._squish_floor import floor_in_force, squish_floor
from ringland_service.core.calculations.geometry._squish_shapes import Cylinder, Gaskets, Stack
from ringland_service.core.formulas import geometry, squish
from ringland_service.core.metrology.conformity import at_most
from ringland_service.core.metrology.limits import Limit

KEEPS, UNDER, NOT_JUDGED = "keeps_floor", "under_floor", "not_judged"
OUTCOMES = {
    KEEPS: "its smallest point less the uncertainty keeps the floor",
    UNDER: "falls out: its smallest point less the uncertainty is under the floor",
    NOT_JUDGED: "not judged: no floor is known",
}
REASONS = {
    "nearest_keeps_floor": "the gasket nearest to the one wanted keeps the floor",
    "nearer_under_floor": "nearer gaskets fall out: smallest point less U under the floor",
    "none_keeps_floor": "no gasket at hand keeps the floor",
    "no_floor": "no floor is known, so none is chosen",
}
# What a crushed solder amounts to, expanded: spring-back, play and two points (common practice,
# no source).
SOLDER_UNCERTAINTY_MM = 0.04
# The place of a gasket where there is none.
NONE = -1
# Squish to aim for over the floor (common practice, no source).
OVER_FLOOR_MM = 0.2


@dataclass(frozen=True)
class Candidate:
    """One gasket, and what it leaves between piston and head."""

    gasket_mm: float
    squish_mm: float
    less_uncertainty_mm: float
    outcome: str


def by_stack_mm(i: Stack) -> float | None:
    """Return the squish clearance of the stack, or None where a part is not given."""
    if i.deck_mm is None or i.gasket_thickness_mm is None or i.head_step_mm is None:
        return None
    return float(squish.squish_of_stack_mm(i.deck_mm, i.gasket_thickness_mm, i.head_step_mm))


def squish_mm(i: Stack) -> float | None:
    """Return the mean of the solder readings, else the stack."""
    solder = i.solder_mm
    return sum(solder) / len(solder) if solder else by_stack_mm(i)


def smallest_mm(i: Stack) -> float | None:
    """Return the smallest solder reading, else the stack."""
    solder = i.solder_mm
    return float(min(solder)) if solder else by_stack_mm(i)


def swept_cc(i: Cylinder) -> float | None:
    """Return the swept volume of the cylinder, or None without bore and stroke."""
    if i.bore_mm is None or i.stroke_mm is None:
        return None
    return float(geometry.swept_volume_cc(i.bore_mm, i.stroke_mm))


def usual_floor(i: Cylinder) -> Limit | None:
    """Return the floor that shops keep for this cylinder."""
    return squish_floor(i.cycle, swept_cc(i)) if i.usual else None


def floor(i: Cylinder) -> Limit | None:
    """Return the request's own floor, else the usual one."""
    return floor_in_force(i.floor_given, usual_floor(i))


def floor_mm(i: Cylinder) -> float | None:
    """Return the floor as a number."""
    found = floor(i)
    return None if found is None or found.low is None else float(found.low)


def wanted_mm(i: Gaskets) -> float | None:
    """Return the squish wanted, else a little over the floor."""
    least = floor_mm(i)
    if i.squish_wanted_mm is not None:
        return float(i.squish_wanted_mm)
    return None if least is None or not i.usual else least + OVER_FLOOR_MM


def uncertainty_mm(i: Stack) -> float:
    """Return the uncertainty of the reading as given, else what solder amounts to."""
    if i.solder_uncertainty_mm is not None:
        return float(i.solder_uncertainty_mm)
    return SOLDER_UNCERTAINTY_MM if i.usual else 0.0


def gasket_wanted_mm(i: Gaskets) -> float | None:
    """Return the gasket that gives the squish wanted; negative where none is thin enough."""
    found, wanted = squish_mm(i), wanted_mm(i)
    if i.base_gasket_fitted_mm is None or wanted is None or found is None:
        return None
    return float(squish.gasket_for_squish_mm(found, i.base_gasket_fitted_mm, wanted))


def candidates(i: Gaskets) -> tuple[Candidate, ...]:
    """Return the gaskets at hand in the order given, each with what it leaves."""
    fitted = i.base_gasket_fitted_mm
    if not i.base_gaskets_mm or fitted is None or squish_mm(i) is None:
        return ()
    return tuple(_candidate(i, fitted, gasket) for gasket in i.base_gaskets_mm)


def _candidate(i: Gaskets, fitted: float, gasket_mm: float) -> Candidate:
    least = floor_mm(i)
    # The smallest point keeps the floor or not; the mean says how near it comes to the one wanted.
    smallest = float(squish.squish_with_gasket_mm(smallest_mm(i) or 0.0, fitted, gasket_mm))
    less = smallest - uncertainty_mm(i)
    outcome = NOT_JUDGED if least is None else KEEPS if at_most(least, less) else UNDER
    after = float(squish.squish_with_gasket_mm(squish_mm(i) or 0.0, fitted, gasket_mm))
    return Candidate(gasket_mm, after, less, outcome)


def nearest_first(i: Gaskets) -> list[int]:
    """Return the places of the gaskets, nearest to the one wanted first; on a tie the thicker."""
    wanted = gasket_wanted_mm(i)
    if wanted is None:
        return []
    among = candidates(i)

    def distance(place: int) -> tuple[float, float]:
        gasket = among[place].gasket_mm
        return round(abs(gasket - wanted), 9), -gasket

    return sorted(range(len(among)), key=distance)


def that_keep(i: Gaskets) -> list[int]:
    """Return the places of the gaskets that keep the floor, nearest to the one wanted first."""
    among = candidates(i)
    return [place for place in nearest_first(i) if among[place].outcome == KEEPS]


def chosen_place(i: Gaskets) -> int:
    """Return the place of the gasket to take, or -1."""
    return next(iter(that_keep(i)), NONE)


def nearest_place(i: Gaskets) -> int:
    """Return the place of the gasket nearest to the one wanted, or -1."""
    return next(iter(nearest_first(i)), NONE)


def reason(i: Gaskets, chosen: int) -> str | None:
    """Return why this gasket, or why none."""
    if not candidates(i):
        return None
    if floor_mm(i) is None or gasket_wanted_mm(i) is None:
        return "no_floor"
    if chosen < 0:
        return "none_keeps_floor"
    return "nearest_keeps_floor" if nearest_first(i)[0] == chosen else "nearer_under_floor"
