"""What contradicts a squish clearance, and what its answer warns of."""

from collections.abc import Callable
from typing import Any

from ringland_service.core.calculations.geometry import _squish_gaskets as gaskets
from ringland_service.core.calculations.geometry._ports import HIGHEST_GEOMETRIC_RATIO
from ringland_service.core.calculations.geometry._squish_after import edge_mm
from ringland_service.core.calculations.geometry.rod import ROD_RULES, unusual
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond

# Solder is to be thicker than what it measures, by this (common practice, no source).
SOLDER_OVER = 1.5
# Solder and stack that differ by more than this do not belong together (common practice, no
# source: it is twice what each amounts to).
APART_MM = 0.1


def _port_shut(top: str) -> Rule:
    def broken(i: Any) -> bool:
        edge = edge_mm(i)
        travel_mm = getattr(i, top) - (0.0 if edge is None else edge)
        return bool(beyond(0.5, travel_mm) or beyond(travel_mm, i.stroke_mm - 0.5))

    return Rule(
        (top, "stroke_mm"),
        broken,
        "the crown edge does not pass the top of this port",
        "a port top between the crown edge at top and at bottom dead centre, 0.5 mm inside",
    )


RULES = (
    *ROD_RULES,
    Rule(
        ("solder_at_pin_axis_mm", "solder_wire_mm"),
        lambda i: at_most(i.solder_wire_mm, max(i.solder_at_pin_axis_mm)),
        "the solder was not crushed: it measures as thick as it was",
        "thicker solder, about 1.5 times the squish expected",
    ),
    Rule(
        ("deck_mm", "gasket_thickness_mm", "head_step_mm"),
        lambda i: (gaskets.by_stack_mm(i) or 0.0) <= 0.0,
        "deck, gasket and head step leave no squish: the piston would meet the head",
        "deck positive below the deck, head step positive where the band is recessed",
    ),
    Rule(
        ("bowl_dia_mm", "bore_mm"),
        lambda i: at_most(i.bore_mm, i.bowl_dia_mm),
        "a bowl as wide as the bore leaves no squish band",
        "a bowl smaller than the bore; both are diameters",
    ),
    Rule(
        ("base_gaskets_mm",),
        lambda i: i.base_gasket_fitted_mm is None,
        "a gasket can be chosen only when the one fitted at the measurement is known",
        "give base_gasket_fitted",
    ),
    _port_shut("exhaust_port_top_below_deck_mm"),
    _port_shut("transfer_port_top_below_deck_mm"),
)


# Gaskets that differ by less are equal: a conversion of units leaves them that far apart.
SAME_MM = 1e-9


def _given(name: str, holds: Callable[[Any], bool]) -> Callable[[Any, Any], bool]:
    """Return a condition on a result that is there."""

    def when(_: Any, outputs: Any) -> bool:
        value = getattr(outputs, name)
        return value is not None and holds(value)

    return when


def _thin_solder(i: Any, _: Any) -> bool:
    if i.solder_wire_mm is None or i.solder_at_pin_axis_mm is None:
        return False
    return bool(beyond(SOLDER_OVER * max(i.solder_at_pin_axis_mm), i.solder_wire_mm))


def _apart(i: Any, o: Any) -> bool:
    if i.solder_at_pin_axis_mm is None or o.squish_by_stack_mm is None:
        return False
    return bool(beyond(abs(o.squish_mm - o.squish_by_stack_mm), APART_MM))


def _rod_unusual(i: Any, _: Any) -> bool:
    if i.rod_mm is None or i.stroke_mm is None:
        return False
    return bool(unusual(i))


def _wanted_low(i: Any, o: Any) -> bool:
    if i.squish_wanted_mm is None or o.floor_used_mm is None:
        return False
    return bool(beyond(o.floor_used_mm, i.squish_wanted_mm))


NOTICES = (
    Notice(
        "rod_unusual",
        "rod_mm",
        _rod_unusual,
        "rod outside the usual 1.3 to 2.6 times the stroke: check both, centre to centre",
    ),
    Notice(
        "squish_doubt_taken",
        "squish_doubt_mm",
        lambda i, o: i.squish_doubt_mm is None and o.doubt_used_mm > 0.0,
        "no doubt of the squish is given: 0.04 mm of crushed solder is taken off the smallest "
        "point (common practice, no source)",
        common_practice=True,
    ),
    Notice(
        "solder_thin",
        "solder_wire_mm",
        _thin_solder,
        "solder under 1.5 times what it measures may not have been crushed all over",
    ),
    Notice(
        "stack_differs",
        "squish_by_stack_mm",
        _apart,
        "solder and stack differ by more than 0.1 mm: measure both again, carbon off, head "
        "torqued down with its gasket; the solder counts here",
    ),
    Notice(
        "wanted_under_floor",
        "squish_wanted_mm",
        _wanted_low,
        "the squish wanted is under the floor: the floor rules the choice",
    ),
    Notice(
        "no_gasket_that_thin",
        "gasket_wanted_mm",
        _given("gasket_wanted_mm", lambda value: value < 0.0),
        "no base gasket gives the squish wanted: it would be thinner than nothing",
    ),
    Notice(
        "nearest_falls_out",
        "nearest_gasket_mm",
        lambda _, o: o.reason == "nearer_under_floor",
        "the gasket nearest to the one wanted falls out: its smallest point less the doubt is "
        "under the floor, though its mean may pass",
    ),
    Notice(
        "none_keeps_floor",
        "reason",
        lambda _, o: o.reason == "none_keeps_floor",
        "no gasket at hand keeps the floor: look for a thicker one",
    ),
    Notice(
        "no_floor_known",
        "floor_used_mm",
        lambda _, o: o.floor_used_mm is None,
        "no floor is known: give the maker's as the limit of smallest_squish, or cycle, bore and "
        "stroke",
    ),
    Notice(
        "thinner_base_gasket",
        "chosen_gasket_mm",
        _given("thinner_by_mm", lambda value: value > SAME_MM),
        "a thinner base gasket: check that the ring stays in the bore at top dead centre, skirt "
        "and ports, detonation and fuel, jetting and timing; the ratio rises, so look again "
        "before the machine comes down from altitude",
    ),
    Notice(
        "thicker_base_gasket",
        "chosen_gasket_mm",
        _given("thinner_by_mm", lambda value: value < -SAME_MM),
        "a thicker base gasket lowers the ratio and lengthens the port timing",
    ),
    Notice(
        "piston_proud",
        "piston_proud_after_mm",
        _given("piston_proud_after_mm", lambda value: value > SAME_MM),
        "with that base gasket the crown edge stands proud of the deck: check the head's recess, "
        "and that the ring stays in the bore at top dead centre",
    ),
    Notice(
        "ratio_unusual",
        "ratio_after",
        _given("ratio_after", lambda value: value > HIGHEST_GEOMETRIC_RATIO),
        "compression ratio above the usual 15 (common practice, no source)",
        common_practice=True,
    ),
)
