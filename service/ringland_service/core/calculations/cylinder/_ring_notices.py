"""What measured end gaps must agree with, and what an answer on them warns of."""

from ringland_service.core.calculations.cylinder._ring_gap_fields import Inputs, Outputs
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas import rings
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.metrology.limits import LIMITS
from ringland_service.core.numbers import Number, Truth

OLD_AXES = ("old_gap_pin_axis_mm", "old_gap_thrust_axis_mm")
WORN_AXES = ("worn_pin_axis_mm", "worn_thrust_axis_mm")
HOT = ("bore_rise_k", "ring_rise_k", "ring_alpha_per_k")
# A ring does not close up with use: more than the uncertainty of a feeler below new is a mistake.
FEELER_MM = 0.013


def given(i: object, names: tuple[str, ...]) -> bool:
    """Return whether all the named inputs are given."""
    return all(getattr(i, name) is not None for name in names)


def _mean_mm(i: object, axes: tuple[str, str]) -> Number:
    pin, thrust = axes
    return rings.mean_diameter_mm(getattr(i, pin), getattr(i, thrust))


def _far(here_mm: Number, unworn_mm: Number) -> Truth:
    under: Truth = beyond(unworn_mm, here_mm + 0.5)
    over: Truth = beyond(here_mm, unworn_mm + 3.0)
    return under | over


def _far_rule(axes: tuple[str, str], unworn: str) -> Rule:
    return Rule(
        (*axes, unworn),
        lambda i: _far(_mean_mm(i, axes), getattr(i, unworn)),
        "the worn zone is not a zone of that bore",
        "from 0.5 mm under to 3 mm over the unworn bore; check the readings and their units",
    )


RULES = (_far_rule(OLD_AXES, "unworn_mm"), _far_rule(WORN_AXES, "bore_mm"))


def _after_filing(measured: Number | None, wanted: Number, filed: Number | None) -> Number:
    return wanted if measured is None else measured + (0.0 if filed is None else filed)


def _second_smaller(i: Inputs, o: Outputs) -> Truth:
    if i.top_gap_mm is None and i.second_gap_mm is None:
        return o.second_wanted_mm < o.top_wanted_mm
    top = _after_filing(i.top_gap_mm, o.top_wanted_mm, o.file_top_mm)
    second = _after_filing(i.second_gap_mm, o.second_wanted_mm, o.file_second_mm)
    return second < top


def _no_verdict(i: Inputs, o: Outputs) -> bool:
    return i.old_gap_mm is not None and o.own_gap_mm is None


def _watch(i: Inputs, o: Outputs) -> Truth:
    if o.own_gap_mm is None or i.unworn_mm is None:
        return False
    watched = LIMITS["ring_gap.watch"].limit(i.unworn_mm).high
    return False if watched is None else o.own_gap_mm > watched


def _bell(i: Inputs, _: object) -> Truth:
    if i.unworn_mm is None or not given(i, OLD_AXES):
        return False
    return _mean_mm(i, OLD_AXES) < i.unworn_mm - 0.005


def _hot_incomplete(i: Inputs, o: Outputs) -> bool:
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
        "unworn_mm",
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
