"""Quantities of the diagnosis, each declared once with its bounds and words."""

from ringland_service.core.declare import kinds
from ringland_service.core.declare.fields import QuantityType

EXCESS_GAIN = QuantityType(
    "excess_gain",
    kinds.PERCENT,
    -60,
    400,
    "gain of the wet test beyond the oil's own volume",
    24.0,
    1,
    warn_low=-10,
    warn_high=100,
)
CYLINDER_SPREAD = QuantityType(
    "cylinder_spread",
    kinds.PERCENT,
    0,
    100,
    "highest less lowest reading of the cylinders, share of the highest",
    8.0,
    1,
)
