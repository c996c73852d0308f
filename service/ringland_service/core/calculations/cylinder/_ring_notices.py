"""What measured end gaps must agree with, and what an answer on them warns of."""

from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas import rings
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.metrology.limits import LIMITS

OLD_AXES = ("old_gap_pin_axis_mm", "old_gap_thrust_axis_mm")
WORN_AXES = ("worn_pin_axis_mm", "worn_thrust_axis_mm")
HOT = ("bore_rise_k", "ring_rise_k", "ring_alpha_per_k")
# A ring does not close up with use: more than the doubt of a feeler below new is a mistake.
FEELER_MM = 0.013


def given(i: Any, names: tuple[str, ...]) -> bool:
    """Return whether all the named inputs are given."""
    return all(getattr(i, name) is not None for name in names)


def _mean_mm(i: Any, axes: tuple[str, ...]) -> Any:
    return rings.mean_diameter_mm(*(getattr(i, name) for name in axes))


def _far(here_mm: Any, unworn_mm: Any) -> Any:
    return beyond(unworn_mm, here_mm + 0.5) | beyond(here_mm, unworn_mm + 3.0)


def _far_rule(axes: tuple[str, ...], unworn: str) -> Rule:
    return Rule(
        (*axes, unworn),
        lambda i: _far(_mean_mm(i, axes), getattr(i, unworn)),
        "the worn zone is not a zone of that bore",
        "from 0.5 mm under to 3 mm over the unworn bore; check the readings and their units",
    )


RULES = (_far_rule(OLD_AXES, "unworn_bore_mm"), _far_rule(WORN_AXES, "bore_mm"))


def _after_filing(measured: Any, wanted: Any, filed: Any) -> Any:
    return wanted if measured is None else measured + (0.0 if filed is None else filed)


def _second_smaller(i: Any, o: Any) -> Any:
    if i.top_measured_mm is None and i.second_measured_mm is None:
        return o.second_wanted_mm < o.top_wanted_mm
    top = _after_filing(i.top_measured_mm, o.top_wanted_mm, o.file_top_mm)
    second = _after_filing(i.second_measured_mm, o.second_wanted_mm, o.file_second_mm)
    return second < top


def _no_verdict(i: Any, o: Any) -> bool:
    return i.old_gap_mm is not None and o.own_gap_mm is None


def _watch(i: Any, o: Any) -> Any:
    if o.own_gap_mm is None:
        return False
    return o.own_gap_mm > LIMITS["ring_gap.watch"].limit(i.unworn_bore_mm).high


def _bell(i: Any, _: Any) -> Any:
    if not given(i, (*OLD_AXES, "unworn_bore_mm")):
        return False
    return _mean_mm(i, OLD_AXES) < i.unworn_bore_mm - 0.005


def _hot_incomplete(i: Any, o: Any) -> bool:
    some = any(getattr(i, name) is not None for name in HOT)
    return some and o.hot_gap_mm is None


NOTICES = (
    Notice(
        "second_gap_smaller",
        "second_wanted_mm",
        _second_smaller,
        "the second ring's gap is smaller than the top ring's: trapped pressure lifts the top ring",
    ),
    Notice(
        "old_gap_without_its_bore",
        "old_gap_mm",
        _no_verdict,
        "a gap without its depth is no gap: the worn top of the bore overstates it; give the bore "
        "on both axes at that depth, and the unworn bore, for a verdict on the ring alone",
    ),
    Notice(
        "old_gap_to_watch",
        "own_gap_mm",
        _watch,
        "the ring's own gap is above 0.008 of the bore: watch (common practice, no source; the "
        "maker's limit wins)",
        common_practice=True,
    ),
    Notice(
        "ring_smaller_than_new",
        "ring_wear_mm",
        lambda _, o: False if o.ring_wear_mm is None else o.ring_wear_mm < -FEELER_MM,
        "the ring comes out with a smaller gap than new: gap, depth and bore readings do not "
        "belong together, or it is another ring",
    ),
    Notice(
        "worn_zone_smaller_than_unworn",
        "unworn_bore_mm",
        _bell,
        "the worn zone reads smaller than the unworn bore: check which is which",
    ),
    Notice(
        "hot_gap_for_comparison_only",
        "hot_gap_mm",
        lambda _, o: o.hot_gap_mm is not None,
        "hot gaps compare bores of different kinds; they are never a verdict, since the "
        "temperatures are guesses",
    ),
    Notice(
        "hot_gap_incomplete",
        "hot_gap_mm",
        _hot_incomplete,
        "a hot gap needs the top ring's gap, both rises of temperature, the expansion of the ring, "
        "and that of the bore or its kind",
    ),
    Notice(
        "no_chrome_on_chrome",
        "bore_kind",
        lambda i, _: i.bore_kind == "chromed",
        "never chrome-faced rings in a chromed bore",
    ),
)
