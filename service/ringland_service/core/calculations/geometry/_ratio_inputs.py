"""What the static compression ratio is worked out from."""

from ringland_service.core.declare import choice, quantity, record
from ringland_service.core.engines.choices import UNKNOWN, VALVE_GEAR
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths


@record
class Inputs:
    """The cylinder, and the clearance volume by its parts, by burette, or both ways."""

    bore_mm: Number = quantity(lengths.BORE, "cylinder bore")
    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    valve_gear: str = choice("valve gear", VALVE_GEAR, example="overhead_valves", default=UNKNOWN)
    chamber_cc: Number | None = quantity(
        quantities.CHAMBER, "combustion chamber in the head, valves and plug fitted", default=None
    )
    gasket_bore_mm: Number | None = quantity(
        lengths.GASKET_BORE,
        "bore of the head gasket; without a gasket, of the joint",
        default=None,
    )
    gasket_area_mm2: Number | None = quantity(
        quantities.GASKET_AREA,
        "opening of a head gasket that is not round; wins over its bore",
        default=None,
    )
    gasket_thickness_mm: Number | None = quantity(
        lengths.GASKET_THICKNESS, "compressed head gasket; 0 without one", default=None
    )
    deck_mm: Number | None = quantity(
        lengths.DECK,
        "piston crown edge at top dead centre: below (+) or proud of (−) the deck",
        default=None,
    )
    dome_cc: Number | None = quantity(
        quantities.CROWN_VOLUME, "dome on the crown, never negative; 0 without one", default=None
    )
    dish_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dish and valve pockets in the crown, never negative; 0 for a flat crown",
        example=0.0,
        default=None,
    )
    crevice_cc: Number | None = quantity(
        quantities.CREVICE,
        "crevice above the top ring; wins over land diameter and height",
        default=None,
    )
    land_mm: Number | None = quantity(lengths.LAND, "diameter of the top land", default=None)
    land_height_mm: Number | None = quantity(
        lengths.LAND_HEIGHT, "height of the top land", default=None
    )
    burette_fill_cc: Number | None = quantity(
        quantities.BURETTE_FILL,
        "thin liquid filled in at top dead centre up to the top of the plug hole; rings sealed "
        "with grease, tilted so that no bubble stays",
        default=None,
    )
    plug_diameter_mm: Number | None = quantity(
        lengths.PLUG_DIAMETER, "plug thread: mean of major and minor diameter", default=None
    )
    plug_reach_mm: Number | None = quantity(
        lengths.PLUG_REACH, "depth of the plug hole that the fill covers", default=None
    )
