"""What the gasket chosen does to piston, ratio and port timing."""

from dataclasses import dataclass

from ringland_service.core.calculations.geometry import _ports
from ringland_service.core.calculations.geometry._squish_gaskets import swept_cc
from ringland_service.core.calculations.geometry._squish_inputs import Inputs
from ringland_service.core.formulas import geometry, ports
from ringland_service.core.metrology.conformity import at_most


@dataclass(frozen=True)
class After:
    """Results with another base gasket, as far as their inputs are given."""

    piston_proud_after_mm: float | None = None
    clearance_after_cc: float | None = None
    ratio_before: float | None = None
    ratio_after: float | None = None
    trapped_ratio_after: float | None = None
    exhaust_duration_after_deg: float | None = None
    transfer_duration_after_deg: float | None = None


def edge_mm(i: Inputs) -> float | None:
    """Return the crown edge below the deck now: at the ports, else at the squish band."""
    edge = i.piston_edge_below_deck_at_tdc_mm
    return i.deck_mm if edge is None else edge


def after(i: Inputs, thinner_mm: float) -> After:
    """Return what a base gasket thinner by so much does."""
    edge = edge_mm(i)
    left_cc = _clearance_cc(i, thinner_mm)
    exhaust = _passing_mm(i, i.exhaust_port_top_below_deck_mm, thinner_mm)
    transfer = _passing_mm(i, i.transfer_port_top_below_deck_mm, thinner_mm)
    return After(
        piston_proud_after_mm=None if edge is None else thinner_mm - edge,
        clearance_after_cc=left_cc,
        ratio_before=_ratio(i, i.clearance_cc),
        ratio_after=_ratio(i, left_cc),
        trapped_ratio_after=_trapped(i, exhaust, left_cc),
        exhaust_duration_after_deg=_open_deg(i, exhaust),
        transfer_duration_after_deg=_open_deg(i, transfer),
    )


def _clearance_cc(i: Inputs, thinner_mm: float) -> float | None:
    found = _ports.clearance_cc(i, thinner_mm)
    return None if found is None else float(found)


def _ratio(i: Inputs, clearance_cc: float | None) -> float | None:
    swept = swept_cc(i)
    if swept is None or clearance_cc is None:
        return None
    return float(geometry.compression_ratio(swept, clearance_cc))


# Top of a port, and the crown edge, both below the deck.
Passing = tuple[float, float]


def _passing_mm(i: Inputs, top_mm: float | None, thinner_mm: float) -> Passing | None:
    """Return a port's top and the crown edge after; None where the edge does not pass the top."""
    edge = edge_mm(i)
    if top_mm is None or edge is None or i.stroke_mm is None:
        return None
    travel_mm = top_mm - edge + thinner_mm
    passes = at_most(0.0, travel_mm) and at_most(travel_mm, i.stroke_mm)
    return (top_mm, edge - thinner_mm) if passes else None


def _trapped(i: Inputs, exhaust: Passing | None, left_cc: float | None) -> float | None:
    if left_cc is None or exhaust is None or i.bore_mm is None:
        return None
    trapped_cc = ports.trapped_volume_cc(i.bore_mm, *exhaust)
    return float(geometry.compression_ratio(trapped_cc, left_cc))


def _open_deg(i: Inputs, port: Passing | None) -> float | None:
    if port is None or i.rod_mm is None or i.stroke_mm is None:
        return None
    return float(_ports.timed(i.stroke_mm, i.rod_mm, *port).duration_deg)
