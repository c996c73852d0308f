"""Quantities of faces, camshafts and valve-to-piston clearance, each with its bounds and words.

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
    instrument: str = "",
    digits: int = 2,
    warn: tuple[float | None, float | None] = (None, None),
) -> QuantityType:
    return QuantityType(
        name, kinds.LENGTH, low, high, words, example, digits, warn[0], warn[1], instrument
    )


STRAIGHTEDGE = _length(
    "straightedge_gap",
    0,
    2,
    0.07,
    "largest feeler that passes under a straightedge",
    "straightedge and feeler, 0.01 mm",
)
FACE_LENGTH = _length(
    "face_length", 20, 800, 150.0, "longest side of a face", "rule, 1 mm", digits=0
)
SKIM_ALLOWANCE = _length(
    "skim_allowance",
    0,
    0.2,
    0.02,
    "metal taken off beyond the hollow, for a clean cut all over",
    "machinist",
)
ROUGHNESS = _length(
    "roughness",
    0.00002,
    0.05,
    0.0012,
    "roughness Ra of a face",
    "roughness tester or comparison plates",
    digits=4,
)
LOBE_HEIGHT = _length(
    "lobe_height",
    10,
    80,
    33.42,
    "height of a cam lobe, nose to heel",
    "outside micrometer, 0.001 mm",
    digits=3,
)
BASE_CIRCLE = _length(
    "base_circle",
    8,
    79,
    26.05,
    "diameter of a cam's base circle",
    "outside micrometer, 0.001 mm",
    digits=3,
)
CHAIN_PITCH = _length(
    "chain_pitch", 4, 13, 6.35, "pitch of a timing chain or toothed belt", "maker's sheet", digits=3
)
STACK_LOWERED = _length(
    "stack_lowered",
    -3,
    3,
    0.25,
    "how much nearer the camshaft sits to the crankshaft",
    "sum of skims and changes of gaskets",
)
CLAY = _length(
    "valve_to_piston",
    0,
    10,
    1.9,
    "clearance of a valve from the piston",
    "calliper on cut clay, 0.05 mm, or plunger and dial indicator",
    warn=(1, 4),
)
CLAY_DOUBT = _length(
    "valve_to_piston_doubt",
    0.001,
    0.5,
    0.1,
    "doubt of a valve-to-piston clearance, expanded (k = 2)",
)
LOSS_PER_DEGREE = _length(
    "loss_per_degree",
    0,
    0.3,
    0.06,
    "valve-to-piston clearance lost for each crank degree",
    "cam sheet, or measured at two timings",
    digits=3,
    warn=(0.03, 0.1),
)
VALVE_EVENT = QuantityType(
    "valve_event",
    kinds.ANGLE,
    -60,
    120,
    "crank angle from a dead centre to a valve's opening or closing",
    16.0,
    1,
    instrument="degree wheel, 1°",
)
VALVE_TILT = QuantityType(
    "valve_tilt",
    kinds.ANGLE,
    0,
    45,
    "tilt of a valve from the cylinder axis",
    16.0,
    1,
    instrument="maker's sheet, or protractor, 0.5°",
)
