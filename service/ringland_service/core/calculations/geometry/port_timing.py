"""C22: port timing of a two-stroke, trapped and geometric ratio, and what a base gasket does."""

import dataclasses

from ringland_service.core.calculations.geometry import _ports
from ringland_service.core.calculations.geometry._port_inputs import Inputs as Inputs
from ringland_service.core.calculations.geometry._port_results import Outputs
from ringland_service.core.calculations.geometry.rod import ROD_NOTICE, ROD_RULES
from ringland_service.core.declare import Calculation
from ringland_service.core.formulas import ports
from ringland_service.core.numbers import Number


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
