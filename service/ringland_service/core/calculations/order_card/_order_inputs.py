"""What the order card can state: every point of it, and the head in a section of its own."""

from ringland_service.core.calculations.machining import bore_order, crosshatch, liner_wall
from ringland_service.core.calculations.order_card import order_choices as choices
from ringland_service.core.calculations.order_card._order_heads import Heads
from ringland_service.core.declare import (
    NO_EXAMPLE,
    choice,
    count,
    field_like,
    flag,
    number,
    quantity,
    readings,
    record,
    section,
    text,
    usual_figures,
)
from ringland_service.core.engines import condition
from ringland_service.core.quantities import assembly as fasteners
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.quantities import order as ordered

SIZES, HATCH, WALL = bore_order.Inputs, crosshatch.Inputs, liner_wall.Inputs


@record
class Inputs:
    """The order: the work, and whatever is known of each point of the card."""

    work: str = choice("work ordered", choices.WORK, example=choices.BORE_AND_HONE)
    bore_kind: str = choice(
        "kind of bore as it is sent", condition.BORE_KIND, example="iron_sleeve_in_aluminium"
    )
    cycle: str | None = choice("cycle", condition.CYCLE, example="four_stroke", default=None)
    job: str | None = text("job number", example="26-014", longest=60, default=None)
    date: str | None = text("date of the order", example="12 March 2026", longest=40, default=None)
    cylinder_number: int | None = count(
        "number of the cylinder sent", low=1, high=24, example=1, default=None
    )
    end_up: str | None = text(
        "which end is up, as a mark on the cylinder says it",
        example="the end with the spigot is down",
        longest=120,
        default=None,
    )
    exhaust_side_marked: bool | None = flag(
        "the exhaust side is marked on the cylinder", default=None
    )
    parts_sent: int | None = count("parts sent, counted", low=1, high=500, example=4, default=None)
    piston_size_mm: float | None = field_like(
        SIZES,
        "piston_size_mm",
        description="the piston sent, as measured at 20 °C, 90° to the pin at the maker's height",
    )
    piston_mark: str | None = text(
        "number or mark on the piston, its own for each cylinder",
        example="1, marked +0.50 mm",
        longest=60,
        default=None,
    )
    measuring_height_mm: float | None = quantity(
        lengths.HEIGHT_ABOVE_SKIRT,
        "height above the skirt bottom at which the piston was measured",
        default=None,
    )
    piston_instrument: str | None = text(
        "what measured the piston",
        example="outside micrometer, 0.001 mm",
        longest=80,
        default=None,
    )
    clearance_low_mm: float | None = field_like(SIZES, "clearance_low_mm")
    clearance_high_mm: float | None = field_like(SIZES, "clearance_high_mm")
    inches_too: bool = flag("give bore sizes in inches as well", default=False, example=False)
    gasket_bore_mm: float | None = quantity(
        lengths.GASKET_BORE, "bore of the head gasket", default=None
    )
    hone_stock_mm: float | None = field_like(SIZES, "hone_stock_mm")
    hone_removal_mm: float | None = quantity(
        sizes.HONE_REMOVAL,
        "light hone: what comes off for new rings, on the diameter",
        example=NO_EXAMPLE,
        default=None,
    )
    interference_mm: float | None = quantity(
        ordered.INTERFERENCE,
        "interference of the sleeve at 20 °C, on the diameter",
        example=NO_EXAMPLE,
        default=None,
    )
    heat_c: float | None = quantity(
        ordered.SLEEVE_HEAT,
        "temperature to heat the cylinder to for the sleeve",
        example=NO_EXAMPLE,
        default=None,
    )
    drop_in_clearance_mm: float | None = quantity(
        sizes.DROP_IN,
        "room around the sleeve as it drops in, diametral",
        example=NO_EXAMPLE,
        default=None,
    )
    replate_to: str | None = text(
        "size that the plating goes to: standard, or the repair size with its unit",
        example="standard size",
        longest=120,
        default=None,
    )
    out_of_round_max_mm: float | None = quantity(
        ordered.FORM_LIMIT, "most out-of-round, difference of two diameters", default=None
    )
    taper_max_mm: float | None = quantity(
        ordered.FORM_LIMIT, "most taper, difference of two diameters", default=None
    )
    proof_depths_mm: tuple[float, ...] | None = readings(
        lengths.DEPTH,
        "depths from the deck at which size and form are to be proven",
        least=1,
        most=12,
        example=(8.0, 25.0, 45.0, 65.0, 85.0),
        default=None,
    )
    boring_centre: str | None = choice(
        "what boring is centred on", choices.BORING_CENTRE, example="unworn_bottom", default=None
    )
    included_angle_deg: float | None = quantity(
        sizes.HATCH_ANGLE,
        "included angle of the crosshatch; each line lies at half of it from horizontal",
        default=None,
    )
    stroke_drive: str | None = field_like(HATCH, "stroke_drive")
    ring_kind: str | None = field_like(HATCH, "ring_kind")
    finish: str | None = text(
        "surface wanted, each figure with its unit; the ring maker's comes first",
        example="Ra 0.4 to 0.8 µm",
        longest=160,
        default=None,
    )
    torque_plate: bool | None = flag("bored and honed with a torque plate", default=None)
    gasket: str | None = text(
        "kind of head gasket under the torque plate",
        example="the maker's, laminated steel",
        longest=80,
        default=None,
    )
    torque_nm: float | None = quantity(
        fasteners.TORQUE, "torque on the studs of the torque plate", default=None
    )
    studs: str | None = text(
        "studs or bolts of the torque plate", example="M8 × 1.25, oiled", longest=80, default=None
    )
    honed: str | None = choice(
        "cold or hot while it is honed", choices.HONED, example="cold", default=None
    )
    port_chamfer_low_mm: float | None = quantity(
        ordered.PORT_CHAMFER,
        "chamfer at the edges of all ports, least width",
        example=NO_EXAMPLE,
        default=None,
    )
    port_chamfer_high_mm: float | None = quantity(
        ordered.PORT_CHAMFER,
        "chamfer at the edges of all ports, largest width",
        example=NO_EXAMPLE,
        default=None,
    )
    port_chamfer_angle_deg: float | None = quantity(
        ordered.CHAMFER_ANGLE,
        "angle of the port chamfer to the bore's wall",
        example=NO_EXAMPLE,
        default=None,
    )
    exhaust_bridge: bool | None = flag("the exhaust port has a bridge", default=None, example=False)
    bridge_relief_low_mm: float | None = quantity(
        ordered.BRIDGE_RELIEF,
        "relief of the exhaust bridge, least, radial",
        example=NO_EXAMPLE,
        default=None,
    )
    bridge_relief_high_mm: float | None = quantity(
        ordered.BRIDGE_RELIEF,
        "relief of the exhaust bridge, largest, radial",
        example=NO_EXAMPLE,
        default=None,
    )
    mouth_chamfer_low_mm: float | None = quantity(
        ordered.MOUTH_CHAMFER,
        "chamfer at both mouths of the bore, least width",
        example=0.5,
        default=None,
    )
    mouth_chamfer_high_mm: float | None = quantity(
        ordered.MOUTH_CHAMFER,
        "chamfer at both mouths of the bore, largest width",
        example=1.0,
        default=None,
    )
    mouth_chamfer_angle_deg: float | None = quantity(
        ordered.CHAMFER_ANGLE, "angle of the mouth chamfer to the bore's wall", default=None
    )
    deck_height_mm: float | None = quantity(
        ordered.DECK_HEIGHT, "height of the cylinder as sent, base face to deck face", default=None
    )
    deck_cut_mm: float | None = quantity(
        ordered.DECK_CUT,
        "what is ordered off the deck face; left out, the deck is not touched",
        example=NO_EXAMPLE,
        default=None,
    )
    wall_floor_mm: float | None = quantity(
        ordered.WALL_FLOOR, "wall that must be left, radial", default=None
    )
    liner_kind: str | None = field_like(WALL, "liner_kind")
    heads: Heads | None = section(Heads, "the head, where it is sent too")
    price_limit: float | None = number(
        "price that the work must not pass without a call, in the currency named",
        low=0.0,
        high=1e8,
        example=180.0,
        default=None,
    )
    currency: str | None = text(
        "currency of the price limit", example="EUR", longest=12, default=None
    )
    wanted: str | None = text("date wanted", example="20 March 2026", longest=40, default=None)
    approver: str | None = text(
        "who may approve changes", example="the workshop foreman", longest=80, default=None
    )
    usual_figures: bool = usual_figures()
