"""What port timing answers: openings, durations and ratios, now and with another base gasket."""

from ringland_service.core.declare import kinds, record, result
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import cited

BLAIR = cited("{blair}")
RATIO = cited("{heywood_ratio}")
GEOMETRY = "solid geometry"


def _angle_at(travel: str) -> str:
    """Return the formula of the crank angle at a travel, by the law of cosines."""
    reach = f"(rod_mm + stroke_mm / 2 - {travel})"
    return f"acosd(({reach}**2 + (stroke_mm / 2)**2 - rod_mm**2) / (stroke_mm * {reach}))"


def _travel_at(duration: str) -> str:
    """Return the formula of the travel at which a port of that duration opens."""
    angle = f"(180 - {duration} / 2)"
    return (
        f"stroke_mm / 2 * (1 - cosd{angle}) + rod_mm"
        f" - sqrt(rod_mm**2 - (stroke_mm / 2 * sind{angle})**2)"
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
    exhaust_thinner_by_mm: Number | None = result(
        "base gasket thinner by this gives the exhaust duration wanted; negative: thicker",
        kind=kinds.LENGTH,
        digits=2,
        formula=f"{_travel_at('exhaust_duration_wanted_deg')} - exhaust_travel_mm",
        source=BLAIR,
        default=None,
    )
    transfer_thinner_by_mm: Number | None = result(
        "base gasket thinner by this gives the transfer duration wanted; negative: thicker",
        kind=kinds.LENGTH,
        digits=2,
        formula=f"{_travel_at('transfer_duration_wanted_deg')} - transfer_travel_mm",
        source=BLAIR,
        default=None,
    )
