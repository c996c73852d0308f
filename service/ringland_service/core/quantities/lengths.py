"""Lengths of the trade, each declared once with its bounds, instrument and words.

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
    warn: tuple[float, float] | None = None,
    instrument: str = "",
) -> QuantityType:
    warn_low, warn_high = warn or (None, None)
    return QuantityType(
        name, kinds.LENGTH, low, high, words, example, digits, warn_low, warn_high, instrument
    )


BORE = _length(
    "bore",
    20,
    160,
    68.0,
    "diameter of a cylinder bore",
    warn=(28, 120),
    instrument="bore gauge set in a ring or micrometer, 0.001 mm",
)
STROKE = _length(
    "stroke",
    15,
    150,
    66.0,
    "stroke",
    digits=2,
    warn=(20, 120),
    instrument="maker's sheet, or depth gauge, 0.02 mm",
)
ROD = _length(
    "rod",
    30,
    300,
    112.0,
    "rod length, centre to centre",
    digits=2,
    instrument="maker's sheet, or calliper between bores plus half diameters, 0.05 mm",
)
PIN_OFFSET = _length(
    "pin_offset",
    -5,
    5,
    1.0,
    "offset of the piston pin from the cylinder axis",
    digits=2,
    warn=(-2, 2),
    instrument="maker's sheet",
)
GASKET_BORE = _length(
    "gasket_bore",
    20,
    172,
    69.5,
    "bore of the head gasket",
    digits=2,
    instrument="calliper, 0.02 mm",
)
GASKET_THICKNESS = _length(
    "gasket_thickness",
    0,
    4,
    0.5,
    "thickness of the compressed head gasket",
    warn=(0.2, 1.6),
    instrument="micrometer on the used gasket, 0.005 mm",
)
DECK = _length(
    "deck",
    -6,
    10,
    0.3,
    "piston crown edge below (+) or proud of (−) the deck",
    warn=(-1, 2),
    instrument="depth micrometer or dial indicator, 0.005 mm",
)
PISTON = _length(
    "piston",
    17,
    165,
    67.935,
    "piston diameter across the thrust axis, at the maker's height",
    instrument="outside micrometer, 0.001 to 0.01 mm",
)
HEIGHT_ABOVE_SKIRT = _length(
    "height_above_skirt",
    0,
    80,
    12.0,
    "height above the skirt bottom",
    digits=1,
    warn=(3, 30),
    instrument="calliper, 0.5 mm",
)
DEPTH = _length(
    "depth", 0, 300, 25.0, "depth below the deck", digits=1, instrument="depth gauge, 1 mm"
)
CLEARANCE = _length("fit_clearance", -3, 5, 0.04, "diametral clearance")
RING_GAP = _length(
    "ring_gap", 0, 5, 0.21, "ring end gap", warn=(0.05, 1.5), digits=2, instrument="feeler, 0.01 mm"
)
PORT_TOP = _length(
    "port_top",
    3,
    120,
    31.0,
    "top edge of a port below the deck",
    digits=2,
    instrument="depth gauge on the port edge, 0.05 mm",
)
PISTON_EDGE = _length(
    "piston_edge",
    -6,
    10,
    0.0,
    "piston edge at the port below the deck at top dead centre",
    digits=2,
    instrument="depth gauge, 0.05 mm",
)
GASKET_CHANGE = _length("gasket_change", -3, 3, 0.3, "base gasket thinner by", digits=2)
DECK_TAKEN_OFF = _length("deck_taken_off", 0, 3, 0.1, "metal taken off the deck", digits=2)
LIFT = _length("closing_lift", 0, 1.5, 0.2, "valve lift at which an angle is stated", digits=2)
LAND = _length(
    "land",
    17,
    165,
    67.6,
    "diameter of the piston's top land",
    digits=2,
    instrument="outside micrometer, 0.01 mm",
)
LAND_HEIGHT = _length(
    "land_height",
    0.5,
    30,
    5.0,
    "height of the top land, crown edge to top ring",
    digits=2,
    warn=(1, 15),
    instrument="calliper, 0.05 mm",
)
PLUG_DIAMETER = _length(
    "plug_diameter",
    5,
    20,
    13.35,
    "mean of the plug thread's major and minor diameter",
    digits=2,
    instrument="calliper, 0.05 mm",
)
PLUG_REACH = _length("plug_reach", 3, 30, 19.0, "reach of the plug thread", digits=2)
LENGTH = _length("length", 0.001, 1000, 72.036, "length or diameter of a part")
GROOVE = _length(
    "groove",
    0.5,
    6,
    1.235,
    "width of a ring groove",
    instrument="gauge block or feeler with a new ring, 0.01 mm",
)
RING_WIDTH = _length(
    "ring_width",
    0.5,
    6,
    1.175,
    "width of a ring, along the cylinder",
    instrument="outside micrometer, 0.001 mm",
)
SIDE_CLEARANCE = _length(
    "ring_side",
    0,
    1,
    0.06,
    "side clearance of a ring in its groove",
    digits=2,
    warn=(0.02, 0.3),
    instrument="feeler, 0.01 mm",
)
GROOVE_ROOT = _length(
    "groove_root",
    15,
    160,
    61.7,
    "diameter of the piston at the root of a ring groove",
    digits=2,
    instrument="calliper, 0.02 mm",
)
RING_THICKNESS = _length(
    "ring_thickness",
    0.8,
    8,
    2.7,
    "radial thickness of a ring",
    digits=2,
    instrument="outside micrometer, 0.01 mm",
)
PIN = _length(
    "pin",
    6,
    40,
    15.994,
    "diameter of a piston pin",
    instrument="outside micrometer, 0.001 mm",
)
PIN_HOLE = _length(
    "pin_hole",
    6,
    40,
    16.009,
    "bore that a piston pin runs in",
    instrument="small-hole gauge, 0.003 mm",
)
BIG_END_SIDE = _length(
    "big_end_side",
    0,
    3,
    0.42,
    "side clearance of the big end between the crank's cheeks",
    digits=2,
    warn=(0.05, 1.5),
    instrument="feeler, 0.01 mm",
)
BIG_END_RADIAL = _length(
    "big_end_radial",
    0,
    2,
    0.018,
    "radial play of the big end, pulled and pushed along the cylinder",
    warn=(0, 0.3),
    instrument="dial indicator, 0.01 mm",
)
TIP_ROCK = _length(
    "tip_rock",
    0,
    10,
    1.35,
    "whole sideways rock at the small end",
    digits=2,
    warn=(0, 5),
    instrument="dial indicator, 0.01 mm",
)
BIG_END_WIDTH = _length(
    "big_end_width",
    5,
    60,
    17.0,
    "width of the rod's big end",
    digits=2,
    instrument="calliper, 0.02 mm",
)
RUN_OUT = _length(
    "run_out",
    0,
    2,
    0.024,
    "run-out over one turn between centres, total indicator reading",
    warn=(0, 0.3),
    instrument="dial indicator, 0.002 mm",
)
