"""Quantities of valves, guides, seats, springs and lash, each declared once with its bounds.

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
    instrument: str,
    digits: int = 2,
    warn: tuple[float | None, float | None] = (None, None),
) -> QuantityType:
    return QuantityType(
        name, kinds.LENGTH, low, high, words, example, digits, warn[0], warn[1], instrument
    )


def _angle(
    name: str, example: float, words: str, warn: tuple[float | None, float | None] = (None, None)
) -> QuantityType:
    by = "maker's sheet, or protractor, 0.5°"
    return QuantityType(name, kinds.ANGLE, 10, 80, words, example, 1, warn[0], warn[1], by)


GUIDE = _length(
    "guide",
    3,
    12,
    4.532,
    "bore of a valve guide",
    "small-hole gauge read by micrometer, 0.003 mm",
    3,
)
STEM = _length("stem", 3, 12, 4.468, "diameter of a valve stem", "outside micrometer, 0.001 mm", 3)
ROCK = _length(
    "rock",
    0,
    3,
    0.118,
    "whole sideways rock of a valve, total indicator reading",
    "dial indicator, 0.01 mm",
    3,
    (None, 1.0),
)
GUIDE_LENGTH = _length(
    "guide_length", 10, 120, 38.0, "length of a valve guide", "calliper, 0.1 mm", 1
)
BEYOND_GUIDE = _length(
    "beyond_guide", 0, 120, 10.0, "distance beyond the end of a guide", "rule, 1 mm", 1
)
SEAT_DIAMETER = _length(
    "seat_diameter",
    8,
    80,
    25.6,
    "diameter of a valve head, or of its contact with the seat",
    "marking blue and calliper, 0.05 mm",
)
SEAT_WIDTH = _length(
    "seat_width",
    0.1,
    6,
    1.2,
    "width along the face of a seat or a valve",
    "marking blue and calliper, 0.05 mm",
    2,
    (0.5, 3),
)
RIM = _length(
    "rim",
    0,
    6,
    1.0,
    "thickness of a valve's rim, along the valve",
    "calliper, 0.05 mm",
    2,
)
FEED = _length(
    "feed",
    0.005,
    2,
    0.05,
    "feed of a seat cutter, along the valve",
    "dial of the cutter, 0.01 mm",
    3,
    (None, 0.1),
)
SEAT_ANGLE = _angle(
    "seat_angle", 45.0, "angle of a seat, from the plane across the valve", (30, 45)
)
CUTTER_ANGLE = _angle("cutter_angle", 30.0, "angle of a cutter, from the plane across the valve")
SINK = _length(
    "sink",
    0,
    4,
    0.18,
    "how much deeper a valve sits",
    "dial indicator on the stem end, 0.01 mm",
    2,
    (None, 0.5),
)
LASH = _length(
    "lash",
    0,
    1.5,
    0.16,
    "valve lash, cold",
    "feeler, 0.01 mm",
    2,
    (0.02, 0.5),
)
SHIM = _length(
    "shim",
    0.5,
    6,
    2.648,
    "thickness of a lash shim",
    "micrometer, 0.001 mm, not the mark",
    3,
)
SHIM_STEP = _length(
    "shim_step", 0.005, 0.5, 0.05, "step of the shims that are made", "maker's sheet", 3
)
SCREW_PITCH = _length(
    "screw_pitch",
    0.3,
    2,
    0.5,
    "pitch of an adjusting screw",
    "thread gauge",
    2,
    (0.5, 1),
)
SPRING_LENGTH = _length(
    "spring_length", 8, 100, 34.0, "length of a valve spring", "calliper, 0.05 mm"
)
VALVE_LIFT = _length(
    "valve_lift", 1, 20, 8.6, "lift of a valve", "dial indicator, 0.01 mm", 2, (3, 14)
)
SPRING_LEAN = _length(
    "spring_lean",
    0,
    10,
    1.1,
    "lean of a standing spring, top coil off a square",
    "square and feeler, 0.05 mm",
)
WIRE = _length("wire", 0.8, 8, 3.3, "wire of a spring", "micrometer, 0.01 mm")
COIL_DIAMETER = _length(
    "coil_diameter", 5, 60, 21.0, "mean diameter of a spring's coils", "calliper, 0.1 mm"
)
SPRING_LOAD = QuantityType(
    "spring_load",
    kinds.FORCE,
    3,
    2500,
    "load of a valve spring",
    150.0,
    0,
    instrument="spring tester, 1 N or 1 %",
)
SPRING_RATE = QuantityType(
    "spring_rate",
    kinds.SPRING_RATE,
    0.3,
    300,
    "rate of a valve spring",
    22.0,
    2,
    instrument="worked out from two loads",
)
SHEAR_MODULUS = QuantityType(
    "shear_modulus",
    kinds.STRESS,
    70000,
    85000,
    "shear modulus of spring wire",
    79500.0,
    0,
    instrument="table",
)
