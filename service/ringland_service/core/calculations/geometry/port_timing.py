"""C22: port timing of a two-stroke, trapped and geometric ratio, and what a base gasket does."""

import dataclasses

from ringland_service.core import kinds, lengths, quantities
from ringland_service.core.calculations.geometry import _ports
from ringland_service.core.calculations.geometry._rod import ROD_NOTICE, ROD_RULES
from ringland_service.core.declare import Calculation, quantity, record, result
from ringland_service.core.formulas import ports
from ringland_service.core.numbers import Number

BLAIR = "Blair, Design and Simulation of Two-Stroke Engines (from memory)"
RATIO = "Heywood, Internal Combustion Engine Fundamentals (from memory)"
GEOMETRY = "solid geometry"


def _angle_at(travel: str) -> str:
    """Return the formula of the crank angle at a travel, by the law of cosines."""
    reach = f"(rod_mm + stroke_mm / 2 - {travel})"
    return f"acosd(({reach}**2 + (stroke_mm / 2)**2 - rod_mm**2) / (stroke_mm * {reach}))"


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


@record
class Outputs:
    """Openings, durations and ratios, now and with the other base gasket."""

    exhaust_travel_mm: Number = result(
        "piston travel from top dead centre to the exhaust port",
        kind=kinds.LENGTH,
        digits=2,
        formula="exhaust_port_top_below_deck_mm - piston_edge_below_deck_at_tdc_mm",
        source=GEOMETRY,
    )
    exhaust_opens_deg: Number = result(
        "exhaust opens after top dead centre, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula=_angle_at("exhaust_travel_mm"),
        source=BLAIR,
    )
    exhaust_duration_deg: Number = result(
        "exhaust port open, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula="360 - 2 * exhaust_opens_deg",
        source=BLAIR,
    )
    transfer_travel_mm: Number | None = result(
        "piston travel from top dead centre to the transfer ports",
        kind=kinds.LENGTH,
        digits=2,
        formula="transfer_port_top_below_deck_mm - piston_edge_below_deck_at_tdc_mm",
        source=GEOMETRY,
        default=None,
    )
    transfer_opens_deg: Number | None = result(
        "transfer ports open after top dead centre, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula=_angle_at("transfer_travel_mm"),
        source=BLAIR,
        default=None,
    )
    transfer_duration_deg: Number | None = result(
        "transfer ports open, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula="360 - 2 * transfer_opens_deg",
        source=BLAIR,
        default=None,
    )
    blowdown_deg: Number | None = result(
        "blowdown: exhaust opening to transfer opening, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula="transfer_opens_deg - exhaust_opens_deg",
        source=BLAIR,
        default=None,
    )
    trapped_volume_cc: Number | None = result(
        "volume swept once the exhaust port is shut",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * bore_mm**2 * exhaust_travel_mm / 1000",
        source=GEOMETRY,
        default=None,
    )
    trapped_ratio: Number | None = result(
        "trapped compression ratio: from the shutting of the exhaust port",
        digits=2,
        formula="(trapped_volume_cc + clearance_cc) / clearance_cc",
        source=BLAIR,
        default=None,
    )
    geometric_ratio: Number | None = result(
        "geometric compression ratio: from bottom dead centre",
        digits=2,
        formula="(pi/4 * bore_mm**2 * stroke_mm / 1000 + clearance_cc) / clearance_cc",
        source=RATIO,
        default=None,
    )
    exhaust_duration_after_deg: Number | None = result(
        "exhaust port open with the other base gasket, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula=f"360 - 2 * {_angle_at('(exhaust_travel_mm + thinner_base_gasket_by_mm)')}",
        source=BLAIR,
        default=None,
    )
    transfer_duration_after_deg: Number | None = result(
        "transfer ports open with the other base gasket, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula=f"360 - 2 * {_angle_at('(transfer_travel_mm + thinner_base_gasket_by_mm)')}",
        source=BLAIR,
        default=None,
    )
    blowdown_after_deg: Number | None = result(
        "blowdown with the other base gasket, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        formula="(exhaust_duration_after_deg - transfer_duration_after_deg) / 2",
        source=BLAIR,
        default=None,
    )
    trapped_volume_after_cc: Number | None = result(
        "volume swept once the exhaust port is shut, with the other base gasket",
        kind=kinds.VOLUME,
        digits=2,
        formula="trapped_volume_cc + pi/4 * bore_mm**2 * thinner_base_gasket_by_mm / 1000",
        source=GEOMETRY,
        default=None,
    )
    clearance_after_cc: Number | None = result(
        "clearance volume with the other base gasket",
        kind=kinds.VOLUME,
        digits=2,
        formula="clearance_cc - pi/4 * bore_mm**2 * thinner_base_gasket_by_mm / 1000",
        source=GEOMETRY,
        default=None,
    )
    trapped_ratio_after: Number | None = result(
        "trapped compression ratio with the other base gasket",
        digits=2,
        formula="(trapped_volume_after_cc + clearance_after_cc) / clearance_after_cc",
        source=BLAIR,
        default=None,
    )
    geometric_ratio_after: Number | None = result(
        "geometric compression ratio with the other base gasket",
        digits=2,
        formula="(pi/4 * bore_mm**2 * stroke_mm / 1000 + clearance_after_cc) / clearance_after_cc",
        source=RATIO,
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
    if inputs.thinner_base_gasket_by_mm is None:
        return found
    return _with_gasket(inputs, found, inputs.thinner_base_gasket_by_mm)


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
    "compression ratio, and what another base gasket does to them.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    rules=(*ROD_RULES, *_ports.RULES),
    notices=(ROD_NOTICE, *_ports.NOTICES),
)
