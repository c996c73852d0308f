"""Ports and ratios of a two-stroke with the cylinder at one height; rules and warnings."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from ringland_service.core.calculations.geometry._parts import LEAST_CLEARANCE_CC
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas import geometry, ports
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number

LEAST_OPENING_MM = 0.5
HIGHEST_GEOMETRIC_RATIO = 15.0
# What base gaskets give, and the step that they come in (common practice, no source).
MOST_GASKET_CHANGE_MM = 1.0
GASKET_STEP_MM = 0.1


@dataclass(frozen=True)
class Port:
    """Where the crown edge uncovers a port, and for how long the port stays open."""

    travel_mm: Number
    opens_deg: Number
    duration_deg: Number


@dataclass(frozen=True)
class Charge:
    """Volumes above the piston and their ratios, as far as bore and clearance are given."""

    trapped_cc: Number | None = None
    clearance_cc: Number | None = None
    trapped_ratio: Number | None = None
    geometric_ratio: Number | None = None


def edge_mm(inputs: Any, thinner_mm: Number = 0.0) -> Number:
    """Return the crown edge below the deck; a thinner base gasket lets the deck down."""
    edge: Number = inputs.piston_edge_below_deck_at_tdc_mm - thinner_mm
    return edge


def port(inputs: Any, top_mm: Number, thinner_mm: Number = 0.0) -> Port:
    """Return the timing of a port, with the base gasket thinner by so much."""
    edge = edge_mm(inputs, thinner_mm)
    opens_deg = ports.port_opening_deg(inputs.stroke_mm, inputs.rod_mm, top_mm, edge)
    return Port(ports.port_travel_mm(top_mm, edge), opens_deg, ports.port_duration_deg(opens_deg))


def clearance_cc(inputs: Any, thinner_mm: Number = 0.0) -> Number | None:
    """Return the clearance volume, with the base gasket thinner by so much."""
    if inputs.clearance_cc is None or inputs.bore_mm is None:
        return None
    left_cc: Number = inputs.clearance_cc - geometry.disc_volume_cc(inputs.bore_mm, thinner_mm)
    return left_cc


def charge(inputs: Any, thinner_mm: Number = 0.0) -> Charge:
    """Return trapped volume and ratios, with the base gasket thinner by so much."""
    if inputs.bore_mm is None:
        return Charge()
    trapped_cc = ports.trapped_volume_cc(
        inputs.bore_mm, inputs.exhaust_port_top_below_deck_mm, edge_mm(inputs, thinner_mm)
    )
    left_cc = clearance_cc(inputs, thinner_mm)
    if left_cc is None:
        return Charge(trapped_cc)
    swept_cc = geometry.swept_volume_cc(inputs.bore_mm, inputs.stroke_mm)
    return Charge(
        trapped_cc,
        left_cc,
        geometry.compression_ratio(trapped_cc, left_cc),
        geometry.compression_ratio(swept_cc, left_cc),
    )


def _closed(top: str, thinner_mm: Callable[[Any], Number]) -> Callable[[Any], Any]:
    """Return whether the crown edge does not pass the top of a port."""

    def broken(inputs: Any) -> Any:
        travel_mm = getattr(inputs, top) - edge_mm(inputs, thinner_mm(inputs))
        most_mm = inputs.stroke_mm - LEAST_OPENING_MM
        return beyond(LEAST_OPENING_MM, travel_mm) | beyond(travel_mm, most_mm)

    return broken


def _port_rules(top: str) -> tuple[Rule, Rule]:
    edge, gasket = "piston_edge_below_deck_at_tdc_mm", "thinner_base_gasket_by_mm"
    right = "a port top between the crown edge at top and at bottom dead centre, 0.5 mm inside"
    return (
        Rule(
            (top, edge, "stroke_mm"),
            _closed(top, lambda _: 0.0),
            "the crown edge does not pass the top of this port",
            right,
        ),
        Rule(
            (gasket, top, edge, "stroke_mm"),
            _closed(top, lambda i: i.thinner_base_gasket_by_mm),
            "with that base gasket the crown edge does not pass the top of a port",
            right,
        ),
    )


def _no_room_after(inputs: Any) -> Any:
    left_cc = clearance_cc(inputs, inputs.thinner_base_gasket_by_mm)
    return False if left_cc is None else beyond(LEAST_CLEARANCE_CC, left_cc)


RULES = (
    *_port_rules("exhaust_port_top_below_deck_mm"),
    *_port_rules("transfer_port_top_below_deck_mm"),
    Rule(
        ("transfer_port_top_below_deck_mm", "exhaust_port_top_below_deck_mm"),
        lambda i: beyond(i.exhaust_port_top_below_deck_mm, i.transfer_port_top_below_deck_mm),
        "the transfer port would open before the exhaust port: are the readings swapped?",
        "a transfer port top further below the deck than the exhaust port top",
    ),
    Rule(
        ("transfer_duration_wanted_deg",),
        lambda i: i.transfer_port_top_below_deck_mm is None,
        "a transfer duration can be reached only from the transfer ports as they are",
        "give transfer_port_top_below_deck",
    ),
    Rule(
        ("thinner_base_gasket_by_mm",),
        _no_room_after,
        "a base gasket thinner by that much leaves no volume above the piston",
        "a change that the squish clearance allows",
    ),
)


def _gasket(holds: Callable[[Any], Any]) -> Callable[[Any, Any], Any]:
    def when(inputs: Any, _: Any) -> Any:
        thinner_mm = inputs.thinner_base_gasket_by_mm
        return False if thinner_mm is None else holds(thinner_mm)

    return when


def _proud(inputs: Any, _: Any) -> Any:
    thinner_mm = inputs.thinner_base_gasket_by_mm
    return False if thinner_mm is None else edge_mm(inputs, thinner_mm) < 0.0


def _out_of_reach(name: str) -> Notice:
    def when(_: Any, outputs: Any) -> Any:
        thinner_mm = getattr(outputs, name)
        return False if thinner_mm is None else abs(thinner_mm) > MOST_GASKET_CHANGE_MM

    return Notice(
        "gasket_out_of_reach",
        name,
        when,
        "more than 1 mm is beyond what base gaskets give (common practice, no source): the port "
        "or the cylinder's base would have to be worked",
        common_practice=True,
    )


def _unlike_wishes(_: Any, outputs: Any) -> Any:
    exhaust_mm, transfer_mm = outputs.exhaust_thinner_by_mm, outputs.transfer_thinner_by_mm
    if exhaust_mm is None or transfer_mm is None:
        return False
    return abs(exhaust_mm - transfer_mm) > GASKET_STEP_MM


def _high(name: str) -> Notice:
    def when(_: Any, outputs: Any) -> Any:
        ratio = getattr(outputs, name)
        return False if ratio is None else ratio > HIGHEST_GEOMETRIC_RATIO

    return Notice(
        "ratio_unusual",
        name,
        when,
        "geometric ratio above the usual 15 of a two-stroke (common practice, no source)",
        common_practice=True,
    )


NOTICES = (
    _high("geometric_ratio"),
    _high("geometric_ratio_after"),
    _out_of_reach("exhaust_thinner_by_mm"),
    _out_of_reach("transfer_thinner_by_mm"),
    Notice(
        "one_gasket_moves_both",
        "transfer_thinner_by_mm",
        _unlike_wishes,
        "exhaust and transfer durations ask for base gaskets that differ by more than 0.1 mm: one "
        "gasket moves both",
    ),
    Notice(
        "thinner_base_gasket",
        "thinner_base_gasket_by_mm",
        _gasket(lambda thinner_mm: thinner_mm > 0.0),
        "squish clearance falls by the same amount: check it, that the ring stays in the bore at "
        "top dead centre, skirt and ports, and look at fuel octane, ignition timing and jetting",
    ),
    Notice(
        "thicker_base_gasket",
        "thinner_base_gasket_by_mm",
        _gasket(lambda thinner_mm: thinner_mm < 0.0),
        "a thicker base gasket lowers the ratios, widens the squish clearance and lengthens the "
        "port timing",
    ),
    Notice(
        "piston_proud",
        "thinner_base_gasket_by_mm",
        _proud,
        "with that base gasket the crown edge stands proud of the deck: check the head's recess "
        "and the squish clearance",
    ),
)
