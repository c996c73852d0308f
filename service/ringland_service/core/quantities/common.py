"""Quantities of the trade other than lengths, each declared once with its bounds and words.

Bounds cover engines of 25 to 2500 cc; their standing is common practice unless physics. Refused
outside ``low`` and ``high``; answered with a warning outside ``warn_low`` and ``warn_high``.
"""

from ringland_service.core.declare import kinds
from ringland_service.core.declare.fields import QuantityType

CHAMBER = QuantityType(
    "chamber",
    kinds.VOLUME,
    0.3,
    300,
    "combustion chamber in the head",
    27.6,
    1,
    instrument="burette and clear plate, 0.1 cc",
)
CLEARANCE_VOLUME = QuantityType(
    "clearance_volume",
    kinds.VOLUME,
    0.3,
    400,
    "volume above the piston at top dead centre",
    29.1863,
    2,
)
CROWN_VOLUME = QuantityType(
    "crown_volume",
    kinds.VOLUME,
    0,
    80,
    "volume of a dome or a dish of the crown",
    1.8,
    1,
    instrument="burette, or maker, 0.1 cc",
)
CREVICE = QuantityType(
    "crevice", kinds.VOLUME, 0, 5, "crevice above the top ring", 0.4, 2, warn_high=1.5
)
CHAMBER_CHANGE = QuantityType(
    "chamber_change",
    kinds.VOLUME,
    0,
    20,
    "what head work takes from the chamber or gives to it",
    0.3,
    2,
)
BURETTE_FILL = QuantityType(
    "burette_fill",
    kinds.VOLUME,
    0.3,
    350,
    "burette fill through the plug hole",
    31.9,
    1,
    instrument="burette, 0.1 cc",
)
CYLINDER_VOLUME = QuantityType(
    "cylinder_volume",
    kinds.VOLUME,
    1,
    3000,
    "volume swept or compressed in one cylinder",
    190.115,
    2,
)
CLASS_LIMIT = QuantityType(
    "class_limit", kinds.VOLUME, 15, 3000, "displacement limit of a class or licence", 250.0, 1
)
GASKET_AREA = QuantityType(
    "gasket_area",
    kinds.AREA,
    300,
    25000,
    "area of a gasket opening that is not round",
    3790.0,
    0,
    instrument="planimeter or squared paper, 10 mm²",
)
OIL_DOSE = QuantityType(
    "oil_dose",
    kinds.LIQUID,
    0.05,
    80,
    "oil put into the cylinder",
    3.0,
    1,
    instrument="syringe, 0.1 mL",
)
ALTITUDE = QuantityType(
    "altitude",
    kinds.ALTITUDE,
    -430,
    5500,
    "altitude of the place (geopotential)",
    600.0,
    0,
    warn_low=0,
    warn_high=3500,
    instrument="map",
)
AIR_PRESSURE = QuantityType(
    "air_pressure",
    kinds.PRESSURE_ABSOLUTE,
    48,
    110,
    "air pressure on the spot, absolute",
    94.3217,
    1,
    warn_low=70,
    warn_high=104,
    instrument="barometer, 0.1 kPa",
)
WEATHER_REPORT = QuantityType(
    "weather_report",
    kinds.PRESSURE_ABSOLUTE,
    90,
    110,
    "air pressure as weather reports give it: brought to sea level",
    102.1,
    1,
)
MANIFOLD = QuantityType(
    "manifold",
    kinds.PRESSURE_ABSOLUTE,
    10,
    110,
    "intake pressure with the throttle closed, absolute",
    60.0,
    0,
    warn_low=20,
    warn_high=80,
    instrument="vacuum gauge, 1 kPa",
)
COMPRESSION = QuantityType(
    "compression",
    kinds.PRESSURE_GAUGE,
    0,
    2500,
    "cranking compression, gauge",
    880.0,
    0,
    instrument="compression gauge, 10 kPa",
)
SETTLED_COMPRESSION = QuantityType(
    "settled_compression",
    kinds.PRESSURE_GAUGE,
    0,
    2500,
    "cranking compression once the gauge rises no more, gauge",
    880.0,
    0,
    warn_low=300,
    warn_high=1600,
    instrument="compression gauge, 10 kPa",
)
EXPECTED = QuantityType(
    "expected_compression",
    kinds.PRESSURE_GAUGE,
    100,
    3000,
    "expected cranking compression, gauge",
    1072.0,
    0,
)
REPEAT = QuantityType(
    "repeat",
    kinds.PRESSURE_DIFFERENCE,
    0,
    50,
    "repeat of a reading, ±",
    10.0,
    0,
    warn_high=20,
    instrument="two readings",
)
WEATHER = QuantityType(
    "weather",
    kinds.PRESSURE_DIFFERENCE,
    0,
    6,
    "weather's part of the air pressure, ±",
    2.0,
    1,
    instrument="weather chart",
)
GAUGE_ERROR = QuantityType(
    "gauge_error",
    kinds.PERCENT,
    0.1,
    20,
    "maximum error of the gauge, ± share of the reading",
    4.0,
    1,
)
BATTERY = QuantityType(
    "battery",
    kinds.VOLTAGE,
    3,
    60,
    "battery while cranking",
    10.8,
    1,
    instrument="voltmeter, 0.1 V",
)
CLOSING_ANGLE = QuantityType(
    "closing_angle",
    kinds.ANGLE,
    0,
    110,
    "intake closing after bottom dead centre, crank",
    62.0,
    1,
    warn_low=30,
    warn_high=85,
    instrument="degree wheel, 1°",
)
DECOMPRESSOR_ANGLE = QuantityType(
    "decompressor_angle",
    kinds.ANGLE,
    20,
    175,
    "decompressor closing after bottom dead centre, crank",
    95.0,
    1,
    warn_low=60,
    warn_high=140,
    instrument="degree wheel, 1°",
)
CRANK_ANGLE = QuantityType(
    "crank_angle",
    kinds.ANGLE,
    -720,
    720,
    "crank angle from top dead centre",
    90.0,
    1,
    instrument="degree wheel, 1°",
)
PART_TEMPERATURE = QuantityType(
    "part_temperature",
    kinds.TEMPERATURE,
    0,
    50,
    "temperature of the part",
    20.0,
    1,
    warn_low=18,
    warn_high=22,
    instrument="surface thermometer, 0.5 °C",
)
TEMPERATURE_RISE = QuantityType(
    "temperature_rise",
    kinds.TEMPERATURE_DIFFERENCE,
    0,
    400,
    "rise above 20 °C when running",
    100.0,
    0,
)
RUNNING_TEMPERATURE = QuantityType(
    "running_temperature",
    kinds.TEMPERATURE,
    -80,
    260,
    "temperature of a part when heated or running",
    105.0,
    0,
    warn_high=200,
    instrument="surface thermometer, 2 °C",
)
ALPHA = QuantityType(
    "expansion",
    kinds.EXPANSION,
    8e-6,
    26e-6,
    "linear expansion coefficient",
    1.1e-5,
    7,
    instrument="table",
)
TEMPERATURE_DOUBT = QuantityType(
    "temperature_doubt",
    kinds.TEMPERATURE_DIFFERENCE,
    0.001,
    20,
    "standard uncertainty of a part's temperature",
    1.0,
    1,
)
HOSE_VOLUME = QuantityType(
    "hose_volume",
    kinds.VOLUME,
    0,
    100,
    "room in a gauge's hose and adaptor up to the check valve",
    2.4,
    1,
    instrument="rule, 1 mm: π/4·d²·L",
)
