"""What a bore survey must be, and what an answer on it warns of."""

from typing import Any

from ringland_service.core.calculations.cylinder import piston_fit as parts
from ringland_service.core.calculations.cylinder.bore_checks import FRESH
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.engines import survey
from ringland_service.core.metrology.conformity import beyond

# common practice, no source
MOST_UNDER_MM, MOST_OVER_MM = 0.5, 3.0
MOST_SPREAD_MM = 0.5
ENOUGH_DEPTHS = 3
GAUGE_MM = 0.005
LOOKS_ROUND_MM = 0.010
RING_TRAVEL_FROM_MM = 15.0
OVERSIZE_STEP_MM = 0.2


def _uneven(i: Any) -> bool:
    return survey.uneven(i)


def _hardly_read(i: Any) -> bool:
    return survey.depth_repeated(i) or survey.depth_without_reading(i)


def _off(i: Any, size_mm: Any) -> bool:
    """Return whether a reading lies where no bore of that size can be."""
    read = [v for v in (*i.pin_axis_mm, *i.thrust_axis_mm) if v is not None]
    return any(
        beyond(size_mm, v + MOST_UNDER_MM) or beyond(v, size_mm + MOST_OVER_MM) for v in read
    )


RULES = (
    Rule(
        ("depth_mm",),
        _uneven,
        "depths and axes are lists of different length",
        "one reading or gap per depth on each axis",
    ),
    Rule(
        ("depth_mm",),
        _hardly_read,
        "a depth stands there twice (two less than 0.05 mm apart are one), or has no reading on "
        "either axis",
        "each depth once, with the bore on at least one axis",
    ),
    Rule(
        ("nominal_bore_mm",),
        lambda i: _off(i, i.nominal_bore_mm),
        "a reading lies more than 0.5 mm under or 3 mm over the nominal bore",
        "readings as whole diameters, not as the dial's deviation; check nominal bore and units",
    ),
    Rule(
        ("unworn_reference_mm",),
        lambda i: _off(i, i.unworn_reference_mm),
        "a reading lies more than 0.5 mm under or 3 mm over the unworn reference",
        "the unworn bore of this cylinder, as a whole diameter; check the units",
    ),
    *(rule for rule in parts.RULES if rule.fields == ("bore_temperature_c",)),
)


def _wider_at_bottom(i: Any, o: Any) -> bool:
    signed = (o.signed_taper_pin_top_minus_bottom_mm, o.signed_taper_thrust_top_minus_bottom_mm)
    return i.use != FRESH and any(t is not None and t < -GAUGE_MM for t in signed)


def _misses_the_top(i: Any, _: Any) -> bool:
    return bool(i.use != FRESH and min(i.depth_mm) > RING_TRAVEL_FROM_MM)


def _gaps(i: Any, _: Any) -> bool:
    return None in (*i.pin_axis_mm, *i.thrust_axis_mm)


def _looks_round(_: Any, o: Any) -> bool:
    return bool(o.out_of_round_mm is not None and o.out_of_round_mm <= LOOKS_ROUND_MM)


def _under_reference(_: Any, o: Any) -> bool:
    return o.wear_from == "unworn_reference" and bool(o.wear_mm < o.max_mm - o.min_mm - GAUGE_MM)


def _perhaps_oversize(_: Any, o: Any) -> bool:
    return o.wear_from == "nominal_bore" and bool(o.wear_mm > OVERSIZE_STEP_MM)


NOTICES = (
    Notice(
        "bottom_wider_than_top",
        "depth_mm",
        _wider_at_bottom,
        "the bottom is wider than the top by more than 0.005 mm: wear leaves it the other way; "
        "were the depths counted from the deck, were lists or ends mixed up?",
    ),
    Notice(
        "few_depths",
        "depth_mm",
        lambda i, _: len(i.depth_mm) < ENOUGH_DEPTHS,
        "gauge the bore at three depths or more: top, middle and bottom of the ring travel",
    ),
    Notice(
        "top_of_ring_travel_not_gauged",
        "depth_mm",
        _misses_the_top,
        "no reading nearer the deck than 15 mm: the bore wears most where the top ring turns, "
        "some 8 to 10 mm below the deck",
    ),
    Notice(
        "bore_readings_far_apart",
        "max_mm",
        lambda _, o: o.max_mm - o.min_mm > MOST_SPREAD_MM,
        "bore readings more than 0.5 mm apart: check them, or give it up as a bore to keep",
    ),
    Notice(
        "readings_missing",
        "pin_axis_mm",
        _gaps,
        "some readings are missing: out-of-round and shape rest on the depths read on both axes",
    ),
    Notice(
        "three_lobes_look_round",
        "out_of_round_mm",
        _looks_round,
        "it looks round to a two-point gauge, and so does a bore of three lobes: sweep a "
        "three-point gauge, or look at the rings' bright bands",
    ),
    Notice(
        "smaller_than_unworn_reference",
        "unworn_reference_mm",
        _under_reference,
        "a reading lies more than 0.005 mm under the unworn reference: carbon, a flake of plating, "
        "a ridge, or a reference that is worn too",
    ),
    Notice(
        "wear_counted_from_nominal",
        "wear_mm",
        lambda _, o: o.wear_from == "nominal_bore",
        "no unworn reference: wear is counted from the nominal bore, so the new bore's own "
        "tolerance is in it",
    ),
    Notice(
        "perhaps_oversize_already",
        "nominal_bore_mm",
        _perhaps_oversize,
        "more than 0.2 mm over nominal: is it bored to an oversize already? Then that is nominal",
    ),
    Notice(
        "wear_not_known",
        "wear_mm",
        lambda _, o: o.wear_from is None,
        "neither unworn reference nor nominal bore: no wear, and no limit for the largest bore "
        "but the maker's",
    ),
)
