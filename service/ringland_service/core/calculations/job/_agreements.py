"""What a whole job may be told twice, besides what its decision may."""

from ringland_service.core.calculations.decision import agreements as decision
from ringland_service.core.declare import Agreement
from ringland_service.core.declare.told_twice import of_one_engine


def _without_valves(section: str) -> Agreement:
    return of_one_engine(
        "cycle",
        section,
        lambda cycle, _: cycle == "two_stroke",
        "a two-stroke has no valves, springs, lash or cam to measure",
        "the cycle as it is, or these readings left out",
    )


AGREEMENTS = (
    *decision.AGREEMENTS,
    *(_without_valves(section) for section in ("valve", "spring", "lash", "cam")),
    of_one_engine(
        "cylinder_number",
        "cylinders",
        lambda number, cylinders: number > cylinders,
        "the order is for a cylinder that the engine does not have",
        "a cylinder from 1 to the number of cylinders",
    ),
)
