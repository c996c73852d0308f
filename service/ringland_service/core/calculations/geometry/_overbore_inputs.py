"""What the compression ratio after an overbore is worked out from."""

from ringland_service.core.declare import NO_EXAMPLE, quantity, record
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths


@record
class Inputs:
    """The cylinder with its clearance volume, and what the overbore changes."""

    bore_mm: Number = quantity(lengths.BORE, "cylinder bore before machining")
    new_bore_mm: Number = quantity(lengths.BORE, "bore after machining", example=68.496)
    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    chamber_cc: Number | None = quantity(
        quantities.CHAMBER,
        "combustion chamber in the head before; kept but for what head work is told",
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
    dome_cc: Number | None = quantity(
        quantities.CROWN_VOLUME, "dome of the old piston, never negative", default=None
    )
    dish_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dish and valve pockets of the old piston, never negative",
        example=0.0,
        default=None,
    )
    crevice_cc: Number | None = quantity(
        quantities.CREVICE, "crevice above the top ring; kept", default=None
    )
    new_dome_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dome of the new piston; like the old one's where not given",
        default=None,
    )
    new_dish_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dish and valve pockets of the new piston; like the old one's where not given",
        example=0.0,
        default=None,
    )
    new_deck_mm: Number | None = quantity(
        lengths.DECK,
        "crown edge of the new piston below (+) or proud of (−) the deck; like the old one's "
        "where not given",
        default=None,
    )
    new_gasket_bore_mm: Number | None = quantity(
        lengths.GASKET_BORE, "bore of the new head gasket; kept where not given", default=None
    )
    new_gasket_thickness_mm: Number | None = quantity(
        lengths.GASKET_THICKNESS,
        "compressed new head gasket; kept where not given",
        default=None,
    )
    clearance_cc: Number | None = quantity(
        quantities.CLEARANCE_VOLUME,
        "clearance volume before, measured whole; counts before the sum of its parts",
        example=NO_EXAMPLE,
        default=None,
    )
    base_gasket_thinner_by_mm: Number | None = quantity(
        lengths.GASKET_CHANGE,
        "new base gasket thinner by; negative for a thicker one",
        example=NO_EXAMPLE,
        default=None,
    )
    deck_cut_mm: Number | None = quantity(
        lengths.DECK_TAKEN_OFF,
        "metal taken off the cylinder's deck",
        example=NO_EXAMPLE,
        default=None,
    )
    skim_loss_cc: Number | None = quantity(
        quantities.CHAMBER_CHANGE,
        "what a skim of the head takes from the chamber",
        example=NO_EXAMPLE,
        default=None,
    )
    sink_gain_cc: Number | None = quantity(
        quantities.CHAMBER_CHANGE,
        "what the chamber gains by valves that sit deeper",
        example=NO_EXAMPLE,
        default=None,
    )
