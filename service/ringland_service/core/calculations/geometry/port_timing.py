"""C22: port timing of a two-stroke, trapped and geometric ratio, and what a base gasket does."""

import dataclasses

from ringland_service.core.calculations.geometry import _ports
from ringland_service.core.calculations.geometry._port_results import Outputs
from ringland_service.core.calculations.geometry.rod import ROD_NOTICE, ROD_RULES
from ringland_service.core.declare import Calculation, quantity, record
from ringland_service.core.formulas import ports
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


def compute(inputs: Inputs) -> Outputs:
    """Work out timing and ratios; with the other base gasket too where one is asked about."""
    exhaust = _ports.port(inputs, inputs.exhaust_port_top_below_deck_mm)
    charge = _ports.charge(inputs)
    found = Outputs(
        exhaust_travel_mm=exhaust.travel_mm,
        exhaust_opens_deg=exhaust.opens_deg,
        exhaust_duration_deg=exhaust.duration_deg,
        trapped_volume_cc=charge.trapped_cc,
        trapped_ratio=charge.trapped_ratio,
        geometric_ratio=charge.geometric_ratio,
    )
    if inputs.transfer_port_top_below_deck_mm is not None:
        transfer = _ports.port(inputs, inputs.transfer_port_top_below_deck_mm)
        found = dataclasses.replace(
            found,
            transfer_travel_mm=transfer.travel_mm,
            transfer_opens_deg=transfer.opens_deg,
            transfer_duration_deg=transfer.duration_deg,
            blowdown_deg=ports.blowdown_deg(exhaust.opens_deg, transfer.opens_deg),
        )
    found = dataclasses.replace(
        found,
        exhaust_thinner_by_mm=_thinner_mm(
            inputs, inputs.exhaust_duration_wanted_deg, found.exhaust_travel_mm
        ),
        transfer_thinner_by_mm=_thinner_mm(
            inputs, inputs.transfer_duration_wanted_deg, found.transfer_travel_mm
        ),
    )
    if inputs.thinner_base_gasket_by_mm is None:
        return found
    return _with_gasket(inputs, found, inputs.thinner_base_gasket_by_mm)


def _thinner_mm(
    inputs: Inputs, wanted_deg: Number | None, travel_mm: Number | None
) -> Number | None:
    """Return how much thinner a base gasket gives a duration, or None where it is not asked."""
    if wanted_deg is None or travel_mm is None:
        return None
    return ports.travel_for_duration_mm(inputs.stroke_mm, inputs.rod_mm, wanted_deg) - travel_mm


def _with_gasket(inputs: Inputs, found: Outputs, thinner_mm: Number) -> Outputs:
    """Return the results with those of the other base gasket added."""
    exhaust = _ports.port(inputs, inputs.exhaust_port_top_below_deck_mm, thinner_mm)
    charge = _ports.charge(inputs, thinner_mm)
    found = dataclasses.replace(
        found,
        exhaust_duration_after_deg=exhaust.duration_deg,
        trapped_volume_after_cc=charge.trapped_cc,
        clearance_after_cc=charge.clearance_cc,
        trapped_ratio_after=charge.trapped_ratio,
        geometric_ratio_after=charge.geometric_ratio,
    )
    if inputs.transfer_port_top_below_deck_mm is None:
        return found
    transfer = _ports.port(inputs, inputs.transfer_port_top_below_deck_mm, thinner_mm)
    return dataclasses.replace(
        found,
        transfer_duration_after_deg=transfer.duration_deg,
        blowdown_after_deg=ports.blowdown_deg(exhaust.opens_deg, transfer.opens_deg),
    )


CALCULATION = Calculation(
    name="port-timing",
    number="C22",
    stage="geometry",
    title="Port timing and trapped ratio",
    summary="Port timing of a two-stroke from port heights, its trapped and its geometric "
    "compression ratio, what another base gasket does to them, and which base gasket a wanted "
    "duration asks for. Take the heights at the port: a crown slopes, and its edge is rounded.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    rules=(*ROD_RULES, *_ports.RULES),
    notices=(ROD_NOTICE, *_ports.NOTICES),
)
