"""All calculations, in order: the one place to register."""

from ringland_service.core.calculations.geometry import displacement
from ringland_service.core.declare import Calculation

CALCULATIONS: tuple[Calculation, ...] = (displacement.CALCULATION,)
BY_NAME: dict[str, Calculation] = {c.name: c for c in CALCULATIONS}
