"""Complaints that an engine cannot have: those of another cycle, valve gear, cooling or kind."""

from ringland_service.core.calculations.diagnosis.tables import COMPLAINTS
from ringland_service.core.declare import Known, Rule
from ringland_service.core.engines.condition import VALVE_GEAR_OF
from ringland_service.core.engines.materials import UNKNOWN

# What an engine may be told as, and whether a complaint is of engines told otherwise.
TOLD = ("cycle", "valve_gear", "cooling", "cylinder_count", "decompressor")
MESSAGE = "this complaint is of another kind of engine"
RIGHT = "a complaint that an engine of this cycle, valve gear, cooling and size can have"


def of_another_engine(token: str, name: str, told: str | float | None) -> bool:
    """Return whether the complaint is one that an engine told like this cannot have."""
    complaint = COMPLAINTS[token]
    if told is None or told == UNKNOWN:
        return False
    if not isinstance(told, str):  # of all that is told, the number of cylinders alone
        return bool(told < complaint.least_cylinders)
    if name == "decompressor":
        return complaint.decompressor and told == "none"
    if name == "cycle" and complaint.valve_gear:
        return complaint.valve_gear not in VALVE_GEAR_OF[told]
    only = getattr(complaint, name)
    return bool(only) and only != told


def rule(name: str) -> Rule:
    """Return the rule between the complaint and what the engine is told as."""
    return Rule(
        ("complaint", name),
        lambda i: of_another_engine(i.complaint, name, getattr(i, name)),
        MESSAGE,
        RIGHT,
    )


def known(values: Known, name: str) -> bool:
    """Return whether the values known contradict each other in that."""
    return of_another_engine(values["complaint"], name, values[name])
