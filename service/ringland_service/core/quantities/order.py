"""Quantities that stand only on the order to the machinist, each declared once.

Bounds cover engines of 25 to 2500 cc; their standing is common practice unless physics. Refused
outside ``low`` and ``high``; answered with a warning outside ``warn_low`` and ``warn_high``.
"""

from ringland_service.core.declare import kinds
from ringland_service.core.declare.fields import QuantityType


def _length(
    name: str,
    low: float,
    high: float,
    example: float,
    words: str,
    digits: int = 3,
    warn: tuple[float | None, float | None] = (None, None),
    instrument: str = "",
) -> QuantityType:
    return QuantityType(
        name, kinds.LENGTH, low, high, words, example, digits, warn[0], warn[1], instrument
    )


FORM_LIMIT = _length(
    "form_limit",
    0.001,
    0.2,
    0.01,
    "most out-of-round or taper allowed, difference of two diameters",
    warn=(0.003, 0.05),
)
WALL_FLOOR = _length(
    "wall_floor", 0.5, 20, 2.0, "wall that must be left, radial", 2, warn=(1.5, None)
)
PORT_CHAMFER = _length(
    "port_chamfer", 0.05, 3, 0.4, "width of the chamfer at a port's edges", 2, warn=(0.2, 1.0)
)
BRIDGE_RELIEF = _length(
    "bridge_relief", 0.005, 0.5, 0.05, "what is taken off an exhaust bridge, radial", warn=(0.02, 1)
)
MOUTH_CHAMFER = _length(
    "mouth_chamfer", 0.1, 6, 0.8, "width of the chamfer at the mouths of a bore", 2, warn=(0.3, 3)
)
CHAMFER_ANGLE = QuantityType(
    "chamfer_angle", kinds.ANGLE, 5, 75, "angle of a chamfer to the bore's wall", 30.0, 0
)
DECK_HEIGHT = _length(
    "deck_height",
    10,
    500,
    92.4,
    "height of a cylinder, base face to deck face",
    instrument="micrometer or height gauge, 0.01 mm",
)
DECK_CUT = _length("deck_cut", 0.01, 3, 0.1, "what is ordered off the deck face", warn=(None, 0.5))
INTERFERENCE = _length(
    "ordered_interference",
    0.01,
    0.3,
    0.11,
    "interference of a sleeve at 20 °C, on the diameter",
    warn=(0.03, 0.2),
)
SLEEVE_HEAT = QuantityType(
    "sleeve_heat",
    kinds.TEMPERATURE,
    40,
    260,
    "temperature of the cylinder as it takes the sleeve",
    115.0,
    0,
    warn_high=200,
    instrument="surface thermometer, 2 °C",
)
SEAT_ANGLE = QuantityType(
    "seat_angle", kinds.ANGLE, 20, 60, "angle of a valve seat", 45.0, 1, warn_low=29, warn_high=47
)
SEAT_WIDTH = _length("seat_width", 0.3, 4, 1.2, "width of a valve seat", 2, warn=(0.6, 2.5))
VALVE_SINK = _length("valve_sink", 0, 5, 0.5, "sink of a valve below its new place", 2)
GUIDE_FIT = _length(
    "guide_fit", 0.002, 0.3, 0.03, "clearance of a valve stem in its guide", warn=(0.01, 0.15)
)
FLATNESS = _length("flatness", 0.002, 0.5, 0.05, "how flat a face must be", warn=(0.01, 0.1))
SKIM = _length("skim", 0, 3, 0.2, "most that may be taken off a face", 2, warn=(None, 0.5))
SPRING_HEIGHT = _length(
    "spring_height", 10, 90, 32.5, "installed height of a valve spring", 2, instrument="calliper"
)
