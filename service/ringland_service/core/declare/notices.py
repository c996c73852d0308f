"""Warnings and cautions as data."""

from dataclasses import dataclass

from ringland_service.core.tables import read_table


@dataclass(frozen=True)
class Warned:
    """A warning in an answer: a stable code, the field it concerns, and the message."""

    code: str
    field: str
    message: str


# Warns of a result whose uncertainty leaves out inputs of weight that state none.
UNSTATED = "uncertainty_not_stated"

CAUTIONS: dict[str, str] = {row["step"]: row["caution"] for row in read_table("cautions")}
FIRST = "The maker's manual, local codes and licensed practice come first."
