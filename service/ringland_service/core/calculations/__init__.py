"""All calculations, in order: the one place to register."""

from ringland_service.core.calculations.general import air_pressure, convert, length_at_20c, verdict
from ringland_service.core.calculations.geometry import (
    compression_ratio,
    displacement,
    dynamic_ratio,
    overbore_ratio,
    port_timing,
)
from ringland_service.core.declare import Declared

CALCULATIONS: tuple[Declared, ...] = (
    convert.CALCULATION,
    air_pressure.CALCULATION,
    length_at_20c.CALCULATION,
    verdict.CALCULATION,
    displacement.CALCULATION,
    compression_ratio.CALCULATION,
    overbore_ratio.CALCULATION,
    dynamic_ratio.CALCULATION,
    port_timing.CALCULATION,
)
BY_NAME: dict[str, Declared] = {c.name: c for c in CALCULATIONS}
