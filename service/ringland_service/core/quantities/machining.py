"""Quantities of boring, honing and sleeving, each declared once with its bounds and words.

Bounds cover engines of 25 to 2500 cc; their standing is common practice unless physics. Refused
outside ``low`` and ``high``; answered with a warning outside ``warn_low`` and ``warn_high``.
"""

from ringland_service.core.declare import kinds
from ringland_service.core.declare.fields import QuantityType

CLEAN_UP = QuantityType(
    "clean_up",
    kinds.LENGTH,
    20,
    165,
    "smallest diameter that cuts all wear and scores out of a bore",
    68.26,
    3,
    instrument="worked out from bore gauge and score depth",
)
SCORE_DEPTH = QuantityType(
    "score_depth",
    kinds.LENGTH,
    0,
    1,
    "depth of a score, radial",
    0.06,
    3,
    warn_high=0.3,
    instrument="pin gauge or replica, 0.01 mm",
)
WANTED_CLEARANCE = QuantityType(
    "wanted_clearance",
    kinds.LENGTH,
    0.005,
    0.40,
    "wanted clearance of the piston, diametral",
    0.035,
    3,
    instrument="maker's sheet",
)
HONE_STOCK = QuantityType(
    "hone_stock",
    kinds.LENGTH,
    0,
    0.30,
    "stock left for the hone, on the diameter",
    0.06,
    3,
    warn_low=0.04,
    warn_high=0.12,
    instrument="machinist",
)
HONE_REMOVAL = QuantityType(
    "hone_removal",
    kinds.LENGTH,
    0,
    0.05,
    "what a light hone takes off for new rings, on the diameter",
    0.01,
    3,
    warn_low=0.005,
    warn_high=0.02,
    instrument="machinist",
)
LARGEST_OVERSIZE = QuantityType(
    "largest_oversize",
    kinds.LENGTH,
    0.1,
    3,
    "largest oversize that the maker allows, on the diameter",
    1.0,
    2,
    instrument="maker's sheet",
)
LINER_OD = QuantityType(
    "liner_od",
    kinds.LENGTH,
    20,
    220,
    "outside diameter of the liner, or of the parent wall",
    75.0,
    2,
    instrument="calliper, 0.02 mm",
)
CORE_SHIFT = QuantityType(
    "core_shift",
    kinds.LENGTH,
    0,
    1.5,
    "shift of the bore against the outside of its wall, radial",
    0.2,
    2,
    instrument="ultrasonic thickness gauge, 0.05 mm",
)
SIZE_DOUBT = QuantityType(
    "size_doubt",
    kinds.LENGTH,
    0.0005,
    0.05,
    "expanded uncertainty (k = 2) of one bore diameter",
    0.005,
    4,
    instrument="table of bench uncertainty, or the gauge's certificate",
)
FORM_ERROR = QuantityType(
    "form_error",
    kinds.LENGTH,
    0,
    2,
    "out-of-round or taper, difference of two diameters",
    0.004,
    3,
    instrument="bore gauge, 0.001 mm",
)
SLEEVE_FIT = QuantityType(
    "sleeve_fit",
    kinds.LENGTH,
    20,
    180,
    "outside of a sleeve, or the bore of the cylinder that it goes into",
    76.09,
    3,
    instrument="micrometer, 0.003 mm; bore gauge, 0.005 mm",
)
DROP_IN = QuantityType(
    "drop_in_clearance",
    kinds.LENGTH,
    0,
    0.5,
    "room that the hot cylinder must give the sleeve, diametral",
    0.05,
    3,
    warn_low=0.02,
    warn_high=0.15,
)
SLEEVE_TEMPERATURE = QuantityType(
    "sleeve_temperature",
    kinds.TEMPERATURE,
    -80,
    260,
    "temperature of a sleeve as it goes in",
    20.0,
    0,
    instrument="surface thermometer, 2 °C",
)
RUNNING_TEMPERATURE = QuantityType(
    "running_temperature",
    kinds.TEMPERATURE,
    20,
    260,
    "temperature of sleeve and jacket when running",
    130.0,
    0,
    warn_high=200,
    instrument="surface thermometer, 2 °C",
)
SPINDLE = QuantityType(
    "spindle",
    kinds.ROTATION,
    20,
    1000,
    "spindle speed of the hone",
    200.0,
    0,
    instrument="hone setting",
)
HONE_CYCLES = QuantityType(
    "hone_cycles",
    kinds.ROTATION,
    5,
    300,
    "full strokes of the hone, down and up, a minute",
    100.0,
    0,
    instrument="counted against a watch",
)
HONE_TRAVEL = QuantityType(
    "hone_travel",
    kinds.LENGTH,
    20,
    300,
    "travel of the hone, end to end",
    92.0,
    0,
    instrument="rule, 1 mm",
)
HATCH_ANGLE = QuantityType(
    "hatch_angle",
    kinds.ANGLE,
    5,
    120,
    "included angle of the crosshatch",
    45.0,
    0,
    warn_low=30,
    warn_high=60,
    instrument="protractor on a rubbing, 1°",
)
