"""What the gasket chosen does to piston, ratio and port timing."""

from dataclasses import dataclass, replace
from typing import Any

from ringland_service.core.calculations.geometry import _ports
from ringland_service.core.calculations.geometry._squish_gaskets import swept_cc
from ringland_service.core.formulas import geometry
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


def edge_mm(i: Any) -> float | None:
    """Return the crown edge below the deck now: at the ports, else at the squish band."""
    edge: float | None = i.piston_edge_below_deck_at_tdc_mm
    return i.deck_mm if edge is None else edge


def after(inputs: Any, thinner_mm: float) -> After:
    """Return what a base gasket thinner by so much does."""
    edge = edge_mm(inputs)
    i = replace(inputs, piston_edge_below_deck_at_tdc_mm=edge)
    left_cc = _clearance_cc(i, thinner_mm)
    return After(
        piston_proud_after_mm=None if edge is None else thinner_mm - edge,
        clearance_after_cc=left_cc,
        ratio_before=_ratio(i, i.clearance_cc),
        ratio_after=_ratio(i, left_cc),
        trapped_ratio_after=_trapped(i, thinner_mm, left_cc),
        exhaust_duration_after_deg=_open_deg(i, i.exhaust_port_top_below_deck_mm, thinner_mm),
        transfer_duration_after_deg=_open_deg(i, i.transfer_port_top_below_deck_mm, thinner_mm),
    )


def _clearance_cc(i: Any, thinner_mm: float) -> float | None:
    found = _ports.clearance_cc(i, thinner_mm)
    return None if found is None else float(found)


def _ratio(i: Any, clearance_cc: float | None) -> float | None:
    swept = swept_cc(i)
    if swept is None or clearance_cc is None:
        return None
    return float(geometry.compression_ratio(swept, clearance_cc))


def _passed(i: Any, top_mm: float | None, thinner_mm: float) -> bool:
    """Return whether all is given for a port's timing, and the crown edge passes its top."""
    edge = i.piston_edge_below_deck_at_tdc_mm
    if top_mm is None or edge is None or i.stroke_mm is None:
        return False
    travel_mm = top_mm - edge + thinner_mm
    return bool(at_most(0.0, travel_mm) and at_most(travel_mm, i.stroke_mm))


def _trapped(i: Any, thinner_mm: float, left_cc: float | None) -> float | None:
    top = i.exhaust_port_top_below_deck_mm
    if left_cc is None or not _passed(i, top, thinner_mm):
        return None
    found = _ports.charge(i, thinner_mm).trapped_ratio
    return None if found is None else float(found)


def _open_deg(i: Any, top_mm: float | None, thinner_mm: float) -> float | None:
    if i.rod_mm is None or top_mm is None or not _passed(i, top_mm, thinner_mm):
        return None
    return float(_ports.port(i, top_mm, thinner_mm).duration_deg)
