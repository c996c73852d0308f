"""Quantities of putting together and running in, each declared once with its bounds and words.

Bounds cover engines of 25 to 2500 cc; their standing is common practice unless physics. Refused
outside ``low`` and ``high``; answered with a warning outside ``warn_low`` and ``warn_high``.
"""

from ringland_service.core.declare import kinds
from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.tables.sources import cited

TORQUE = QuantityType(
    "torque",
    kinds.TORQUE,
    0.5,
    400,
    "tightening torque",
    24.0,
    1,
    instrument="torque wrench, 0.1 to 1 N.m",
)
WRENCH_LENGTH = QuantityType(
    "wrench_length",
    kinds.LENGTH,
    50,
    1500,
    "length of the wrench",
    300.0,
    0,
    instrument="rule, 1 mm",
)
ADAPTER_EXTENSION = QuantityType(
    "adapter_extension",
    kinds.LENGTH,
    0,
    500,
    "length that an adapter adds",
    50.0,
    0,
    instrument="rule, 1 mm",
)
ADAPTER_ANGLE = QuantityType(
    "adapter_angle",
    kinds.ANGLE,
    0,
    180,
    "angle between adapter and wrench",
    0.0,
    0,
    instrument="protractor, 5°",
)
TURN = QuantityType(
    "turn", kinds.ANGLE, 5, 360, "turn of a fastener", 90.0, 0, instrument="angle gauge, 2°"
)
THREAD_DIAMETER = QuantityType(
    "thread_diameter", kinds.LENGTH, 2, 60, "diameter of a thread", 8.0, 3, instrument="table"
)
THREAD_PITCH = QuantityType(
    "thread_pitch",
    kinds.LENGTH,
    0.2,
    6,
    "pitch of a thread",
    1.25,
    2,
    instrument="thread gauge, or table",
)
STRESS_AREA = QuantityType(
    "stress_area", kinds.AREA, 5, 200, "stress area of a thread", 36.6, 2, instrument="table"
)
PROOF_STRESS = QuantityType(
    "proof_stress",
    kinds.STRESS,
    200,
    1300,
    "proof stress of a fastener",
    580.0,
    0,
    instrument=cited(
        "table: 580 for class 8.8 up to 16 mm, 830 for 10.9, 970 for 12.9; {iso_898_1_proof_stress}"
    ),
)
THREAD_ENGAGEMENT = QuantityType(
    "thread_engagement",
    kinds.LENGTH,
    1,
    150,
    "length of thread engaged",
    16.0,
    1,
    instrument="depth gauge, 0.5 mm",
)
FASTENER_PLACE = QuantityType(
    "fastener_place",
    kinds.LENGTH,
    -1000,
    1000,
    "place of a fastener on the face",
    80.0,
    0,
    instrument="rule, 1 mm",
)
ROUND_THE_BORE = QuantityType(
    "round_the_bore",
    kinds.ANGLE,
    -720,
    720,
    "angle round the bore, whole turns leave it unchanged",
    45.0,
    0,
    instrument="protractor, 1°",
)
RING_END_HALF_WIDTH = QuantityType(
    "ring_end_half_width",
    kinds.LENGTH,
    0,
    4,
    "half-width of the ring ends about their pin",
    0.8,
    1,
    instrument="calliper, 0.1 mm",
)
FUEL = QuantityType(
    "fuel", kinds.FUEL, 0.05, 500, "fuel to be mixed", 9.0, 2, instrument="jug, 50 mL"
)
TANK_MIX = QuantityType(
    "tank_mix", kinds.FUEL, 0, 500, "mix in the tank", 2.5, 2, instrument="jug, 50 mL"
)
ENGINE_SPEED = QuantityType(
    "engine_speed",
    kinds.ROTATION,
    50,
    20000,
    "speed of the crankshaft",
    8500.0,
    0,
    instrument="maker's sheet, or rev counter",
)
LEAK_SHARE = QuantityType(
    "leak_share",
    kinds.PERCENT,
    0,
    100,
    "leak-down reading, share of the supply pressure",
    9.0,
    0,
    instrument="leak-down tester, 2 %",
)
