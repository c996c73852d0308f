"""Quantities of squish, ratio and ports, each declared once with its bounds and words.

Bounds cover engines of 25 to 2500 cc; their standing is common practice unless physics.
"""

from ringland_service.core.declare import kinds
from ringland_service.core.declare.fields import QuantityType


def _length(
    name: str,
    low: float,
    high: float,
    example: float,
    words: str,
    instrument: str = "",
    *,
    digits: int = 2,
    warn: tuple[float | None, float | None] = (None, None),
) -> QuantityType:
    return QuantityType(
        name, kinds.LENGTH, low, high, words, example, digits, warn[0], warn[1], instrument
    )


SQUISH = _length(
    "squish",
    0.1,
    6,
    0.95,
    "squish clearance",
    "micrometer on crushed solder, 0.01 mm",
)
SQUISH_WANTED = _length("squish_wanted", 0.3, 4, 1.0, "squish clearance wanted")
SQUISH_DOUBT = _length(
    "squish_doubt", 0.001, 0.3, 0.04, "doubt of a squish reading, expanded (k = 2)", digits=3
)
SOLDER_WIRE = _length(
    "solder_wire", 0.3, 8, 2.0, "solder before it was crushed", "calliper, 0.02 mm"
)
BOWL = _length(
    "bowl", 2, 159, 34.0, "diameter of the bowl inside the squish band", "calliper, 0.1 mm"
)
HEAD_STEP = _length(
    "head_step",
    -6,
    6,
    0.84,
    "squish band recessed in (+) or standing out of (−) the head's gasket face",
    "depth gauge, 0.02 mm",
)
BASE_GASKET = _length(
    "base_gasket", 0, 3, 0.5, "thickness of a base gasket, compressed", "micrometer, 0.01 mm"
)
TRAVEL = _length("piston_travel", 0, 150, 33.0, "piston travel from top dead centre")
SKIM_DONE = _length(
    "skim_done", 0, 2, 0.05, "metal already taken off the face, in all", "maker's sheet, new height"
)
CHAMBER_FACE = QuantityType(
    "chamber_face",
    kinds.AREA,
    100,
    20000,
    "area of the combustion chamber at the face",
    2900.0,
    0,
    instrument="planimeter or squared paper, 10 mm²",
)
PORT_DURATION = QuantityType(
    "port_duration",
    kinds.ANGLE,
    30,
    330,
    "crank angle for which a port is open",
    186.0,
    1,
    warn_low=100,
    warn_high=210,
)
