"""What port timing is worked out from."""

from ringland_service.core.declare import quantity, record
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import geometry as sizes
from ringland_service.core.quantities import lengths


@record
class Inputs:
    """The crank, the port heights, and what the gasket change is to be worked out with."""

    stroke_mm: Number = quantity(lengths.STROKE, "stroke", example=58.0)
    rod_mm: Number = quantity(lengths.ROD, "rod length, centre to centre", example=110.0)
    exhaust_port_top_below_deck_mm: Number = quantity(
        lengths.PORT_TOP,
        "top edge of the exhaust port below the deck: the port's edge, not its chamfer; an "
        "exhaust valve in its low position",
    )
    piston_edge_below_deck_at_tdc_mm: Number = quantity(
        lengths.PISTON_EDGE,
        "crown edge, at the port, below (+) or proud of (−) the deck at top dead centre",
    )
    transfer_port_top_below_deck_mm: Number | None = quantity(
        lengths.PORT_TOP,
        "top edge of the transfer ports below the deck",
        example=41.4,
        default=None,
    )
    bore_mm: Number | None = quantity(lengths.BORE, "cylinder bore", example=56.0, default=None)
    clearance_cc: Number | None = quantity(
        quantities.CLEARANCE_VOLUME,
        "clearance volume: above the piston at top dead centre",
        example=11.9,
        default=None,
    )
    thinner_base_gasket_by_mm: Number | None = quantity(
        lengths.GASKET_CHANGE,
        "new base gasket thinner by; negative for a thicker one",
        default=None,
    )
    exhaust_duration_wanted_deg: Number | None = quantity(
        sizes.PORT_DURATION,
        "exhaust port open as wanted, crank degrees: asks for the base gasket that gives it",
        default=None,
    )
    transfer_duration_wanted_deg: Number | None = quantity(
        sizes.PORT_DURATION,
        "transfer ports open as wanted, crank degrees: asks for the base gasket that gives it",
        example=143.0,
        default=None,
    )
