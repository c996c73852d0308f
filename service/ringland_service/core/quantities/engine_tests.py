"""Quantities of the tests on an assembled engine, each declared once with its bounds and words.

Bounds cover engines of 25 to 2500 cc; their standing is common practice unless physics. Refused
outside ``low`` and ``high``; answered with a warning outside ``warn_low`` and ``warn_high``.
"""

from ringland_service.core.declare import kinds
from ringland_service.core.declare.fields import QuantityType

HOSE_ERROR = QuantityType(
    "hose_error",
    kinds.PERCENT,
    -60,
    0,
    "error of a compression reading by the room in the gauge's hose; negative: it reads low",
    -4.0,
    1,
    instrument="worked out from the hose's volume",
)
LEAK_SUPPLY = QuantityType(
    "leak_supply",
    kinds.PRESSURE_GAUGE,
    50,
    1000,
    "pressure before the tester's restrictor, gauge, read while the air flows",
    690.0,
    0,
    instrument="regulated tester gauge, 5 kPa",
)
LEAK_CYLINDER = QuantityType(
    "leak_cylinder",
    kinds.PRESSURE_GAUGE,
    0,
    1000,
    "pressure after the tester's restrictor: what the cylinder holds, gauge",
    612.0,
    0,
    instrument="tester gauge, 5 kPa",
)
LEAK_GAUGE_DIFFERENCE = QuantityType(
    "leak_gauge_difference",
    kinds.PRESSURE_DIFFERENCE,
    -50,
    50,
    "difference of the tester's two gauges on one pressure",
    0.0,
    1,
    warn_low=-20,
    warn_high=20,
    instrument="both gauges read with the hose plugged",
)
LEAK_GAUGE_RESIDUAL = QuantityType(
    "leak_gauge_residual",
    kinds.PRESSURE_DIFFERENCE,
    0.1,
    50,
    "what may be left of a gauge's error once the difference is taken out, ±",
    3.0,
    1,
)
LEAK_GAUGE_SPAN = QuantityType(
    "leak_gauge_span",
    kinds.PRESSURE_GAUGE,
    100,
    2500,
    "full scale of the tester's gauges",
    1000.0,
    0,
    instrument="dial",
)
LEAK_GAUGE_CLASS = QuantityType(
    "leak_gauge_class",
    kinds.PERCENT,
    0.1,
    10,
    "maximum error of a gauge, ± share of its full scale",
    1.6,
    1,
    instrument="dial, or maker",
)
RESTRICTOR = QuantityType(
    "restrictor",
    kinds.LENGTH,
    0.3,
    3,
    "bore of the tester's restrictor",
    1.0,
    2,
    instrument="maker of the tester, or drill shank",
)
LEAK_STEP = QuantityType(
    "leak_step",
    kinds.PERCENT,
    0.5,
    90,
    "step of the tester maker's own scale",
    20.0,
    0,
    instrument="tester maker's sheet",
)
FLOW_COEFFICIENT_DOUBT = QuantityType(
    "flow_coefficient_doubt",
    kinds.PERCENT,
    0,
    50,
    "how far the flow coefficients of two testers may differ, ±",
    15.0,
    0,
)
HELD_ANGLE = QuantityType(
    "held_angle",
    kinds.ANGLE,
    0,
    180,
    "crank angle from top dead centre at which a charged cylinder is held",
    3.0,
    1,
    instrument="degree wheel, 1°",
)
OPENING_ANGLE = QuantityType(
    "opening_angle",
    kinds.ANGLE,
    20,
    180,
    "crank angle after top dead centre at which a valve or port first opens",
    110.0,
    1,
    warn_low=75,
    instrument="degree wheel, 1°",
)
HOLDING_BAR = QuantityType(
    "holding_bar",
    kinds.LENGTH,
    50,
    1500,
    "length of a bar on the crank nut, nut to hand",
    300.0,
    0,
    instrument="rule, 10 mm",
)
CRANKCASE_START = QuantityType(
    "crankcase_start",
    kinds.PRESSURE_GAUGE,
    5,
    60,
    "crankcase pressure at the start, gauge; above 60 kPa seals pop out",
    45.0,
    1,
    warn_low=35,
    warn_high=50,
    instrument="gauge, 0.2 kPa",
)
CRANKCASE_END = QuantityType(
    "crankcase_end",
    kinds.PRESSURE_GAUGE,
    0,
    60,
    "crankcase pressure at the end, gauge",
    44.2,
    1,
    instrument="gauge, 0.2 kPa",
)
CRANKCASE_VACUUM_START = QuantityType(
    "crankcase_vacuum_start",
    kinds.PRESSURE_GAUGE,
    -60,
    -5,
    "crankcase vacuum at the start, gauge, below zero",
    -40.0,
    1,
    warn_low=-50,
    warn_high=-30,
    instrument="gauge, 0.2 kPa",
)
CRANKCASE_VACUUM_END = QuantityType(
    "crankcase_vacuum_end",
    kinds.PRESSURE_GAUGE,
    -60,
    0,
    "crankcase vacuum at the end, gauge, below zero",
    -39.4,
    1,
    instrument="gauge, 0.2 kPa",
)
CRANKCASE_TEMPERATURE = QuantityType(
    "crankcase_temperature",
    kinds.TEMPERATURE,
    -20,
    90,
    "temperature of the air in the crankcase, taken as that of its wall",
    22.0,
    1,
    warn_low=5,
    warn_high=40,
    instrument="surface thermometer, 0.1 °C",
)
TRAPPED_VOLUME = QuantityType(
    "trapped_volume",
    kinds.VOLUME,
    20,
    20000,
    "air shut in by the test: crankcase, ducts and hose",
    420.0,
    0,
)
OIL_ADDED = QuantityType(
    "oil_added",
    kinds.LIQUID,
    1,
    20000,
    "oil added to bring the level back",
    420.0,
    0,
    instrument="jug, 10 mL",
)
FUEL_USED = QuantityType(
    "fuel_used", kinds.FUEL, 0.1, 20000, "fuel used meanwhile", 41.0, 1, instrument="pump, 0.1 L"
)
