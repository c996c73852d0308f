"""What a leak-down says by where its air is heard, and when its per cent can be graded."""

from collections.abc import Callable
from typing import TypeVar

from ringland_service.core.calculations.engine_tests._leak_shapes import LeakTest, Listened
from ringland_service.core.declare import RAISES, Rule, Unjudged
from ringland_service.core.engines.condition import ACTIVE
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import GRADES
from ringland_service.core.numbers import Number

USE = {"normal": "road, field and workshop engines", "racing": "racing engine"}
PISTON_AT = {
    "firing_tdc": "firing top dead centre, all valves or ports shut",
    "overlap_tdc": "the other top dead centre of a four-stroke, where both valves are open",
    "below_tdc": "part of the way down, the crank held, to try the bore lower down",
    UNKNOWN: "not known",
}
HEARD_AT = {
    "oil_filler_or_breather": "oil filler, dipstick hole or breather",
    "exhaust": "exhaust outlet",
    "intake": "carburettor or intake",
    "radiator": "bubbles in radiator or header tank",
    "neighbour_plug_hole": "plug hole of the neighbour",
    "head_joint": "foam at head joint, plug, adaptor or stud",
    "nowhere": "somebody listened and heard nothing",
}
LEAK_PATH = {
    "rings_or_piston": "past the rings into the crankcase, or through the piston",
    "exhaust_valve": "past the exhaust valve: its seat, tight lash, a lifter that holds it open",
    "intake_valve": "past the intake valve: its seat, tight lash",
    "past_rings_to_the_port": "past the rings, round the piston to the exhaust port",
    "rings_or_reeds": "past the rings into the crankcase and out by the intake; reeds leak too",
    "gasket_or_crack_to_coolant": "past the head gasket, or through a crack, into the coolant",
    "gasket_to_neighbour": "past the head gasket to the neighbour",
    "joint_or_adaptor": "to the outside, by the joint, a stud or the adaptor's own thread",
    "not_heard": "none heard: the joints soaped, the cap off, listen again",
}
_ANY_ENGINE: dict[str, str | None] = {
    "radiator": "gasket_or_crack_to_coolant",
    "neighbour_plug_hole": "gasket_to_neighbour",
    "head_joint": "joint_or_adaptor",
    "nowhere": "not_heard",
}
# None where the engine has no such place, or nobody said of which cycle it is.
PATH_OF: dict[str | None, dict[str, str | None]] = {
    "four_stroke": {
        "oil_filler_or_breather": "rings_or_piston",
        "exhaust": "exhaust_valve",
        "intake": "intake_valve",
        **_ANY_ENGINE,
    },
    "two_stroke": {
        "oil_filler_or_breather": None,
        "exhaust": "past_rings_to_the_port",
        "intake": "rings_or_reeds",
        **_ANY_ENGINE,
    },
    # A two-stroke's crankcase has neither oil filler nor breather.
    None: {
        "oil_filler_or_breather": "rings_or_piston",
        "exhaust": None,
        "intake": None,
        **_ANY_ENGINE,
    },
}

YES, UPPER_BOUND = "yes", "upper_bound"
# Where the common steps grade the reading.
GRADED = (YES, UPPER_BOUND)
GRADEABLE = {
    YES: "the common steps hold for this tester",
    "not_at_firing_tdc": "the piston is not at firing top dead centre",
    UPPER_BOUND: "a decompressor lets air out as well: the figure is an upper bound, and 10 % or "
    "less proves the cylinder tight",
    "decompressor_active": "a decompressor lets the air out",
    "restrictor_not_known": "the restrictor is not known",
    "restrictor_outside": "a restrictor outside 0.9 to 1.1 mm: other steps hold there",
    "supply_outside": "a supply outside 550 to 700 kPa: other steps hold there",
}
NOT_GRADEABLE = "not_gradeable"
OTHER_TESTER = ("restrictor_not_known", "restrictor_outside", "supply_outside")
GOOD = GRADES["leak_down"].otherwise
GRADE = {**GRADES["leak_down"].choices, NOT_GRADEABLE: "not gradeable by the common steps"}
# Largest error of a gauge over the supply that leaves a reading (as of any stated uncertainty).
COARSEST = 0.25
GRADED_RESTRICTOR_MM = (0.9, 1.1)
GRADED_SUPPLY_KPA = (550.0, 700.0)
MAKERS_STEPS = ("good_to_pct", "serviceable_to_pct", "worn_to_pct")


def leak_path(inputs: Listened) -> str | None:
    """Return where the air goes, or None where the place or the engine does not say."""
    if inputs.heard_at is None:
        return None
    return PATH_OF[inputs.cycle][inputs.heard_at]


def gradeable(inputs: LeakTest, leak_pct: float) -> str:
    """Return whether the common steps grade this reading, or the first thing that forbids it.

    A decompressor at work only adds to the leak, so a small one proves the cylinder tight.
    """
    if inputs.piston_at in ("overlap_tdc", "below_tdc"):
        return "not_at_firing_tdc"
    able = _by_tester(inputs)
    if able != YES or inputs.decompressor_state != ACTIVE:
        return able
    return UPPER_BOUND if tight(leak_pct) else "decompressor_active"


def tight(leak_pct: Number) -> bool:
    """Return whether the common steps call the cylinder tight: 10 % or less."""
    return bool(GRADES["leak_down"].word(leak_pct) == GOOD)


def _by_tester(inputs: LeakTest) -> str:
    if inputs.restrictor_mm is None:
        return "restrictor_not_known"
    if not _within(inputs.restrictor_mm, GRADED_RESTRICTOR_MM):
        return "restrictor_outside"
    return YES if _within(inputs.supply_pressure_kpa, GRADED_SUPPLY_KPA) else "supply_outside"


def _within(value: float, sides: tuple[float, float]) -> bool:
    return bool(at_most(sides[0], value) and at_most(value, sides[1]))


UNJUDGED = (
    Unjudged(
        "not_at_firing_dead_centre",
        lambda i, *_: i.piston_at in ("overlap_tdc", "below_tdc"),
        "bring the piston to firing top dead centre, lock the crank, and read again",
    ),
    Unjudged(
        "tester_outside_the_scale",
        lambda _, o, limit: limit.standing == "common_practice" and o.gradeable in OTHER_TESTER,
        "give the scale of the tester's maker, or the bore of its restrictor (0.9 to 1.1 mm) and "
        "a supply of 550 to 700 kPa; otherwise turn the reading into a leak area",
    ),
    Unjudged(
        "place_of_piston_unknown",
        lambda i, *_: i.piston_at == UNKNOWN,
        "say where the piston stood: at firing top dead centre all valves are shut",
        RAISES,
    ),
    Unjudged(
        "decompressor_lets_air_out",
        lambda i, *_: i.decompressor_state == ACTIVE,
        "hold the decompressor off and read again; what is left then is the cylinder's own leak",
        RAISES,
    ),
)


def makers_grade(inputs: LeakTest, leak_pct: float) -> str | None:
    """Return the grade by the tester maker's own steps, where they are given.

    With a decompressor at work the figure is an upper bound: it proves a cylinder good, never worn.
    """
    grade = _on_makers_steps(inputs, leak_pct)
    return grade if grade == GOOD or inputs.decompressor_state != ACTIVE else None


def _on_makers_steps(inputs: LeakTest, leak_pct: float) -> str | None:
    words = list(GRADES["leak_down"].choices)[::-1]
    # One word more than steps: beyond the last step stands the worst word.
    for word, most in zip(words, _makers_steps(inputs), strict=False):
        if most is None:
            return None
        if at_most(leak_pct, most):
            return word
    return words[-1]


def _steps_missing(inputs: LeakTest) -> bool:
    return any(step is None for step in _makers_steps(inputs))


def _makers_steps(inputs: LeakTest) -> tuple[float | None, float | None, float | None]:
    """Return the tester maker's own steps, as in ``MAKERS_STEPS``."""
    return inputs.good_to_pct, inputs.serviceable_to_pct, inputs.worn_to_pct


def _scale_rule(step: str) -> Rule:
    return Rule(
        (step,),
        _steps_missing,
        "a part of the tester maker's scale is missing",
        "give all three steps of it: good to, serviceable to, worn to",
    )


RULES = (
    *map(_scale_rule, MAKERS_STEPS),
    Rule(
        MAKERS_STEPS,
        lambda i: (
            at_most(i.serviceable_to_pct, i.good_to_pct)
            | at_most(i.worn_to_pct, i.serviceable_to_pct)
        ),
        "the steps of the tester maker's scale do not rise",
        "good to, serviceable to, worn to: each above the one before",
    ),
    Rule(
        ("piston_at", "cycle"),
        lambda i: (i.piston_at == "overlap_tdc") & (i.cycle == "two_stroke"),
        "a two-stroke fires at every top dead centre: it has no overlap there",
        "firing_tdc for a two-stroke",
    ),
    Rule(
        ("heard_at", "cycle"),
        lambda i: (i.heard_at == "oil_filler_or_breather") & (i.cycle == "two_stroke"),
        "a two-stroke's crankcase has neither oil filler nor breather",
        "intake: there the air that passes the rings of a two-stroke is heard",
    ),
    Rule(
        ("gauge_full_scale_kpa",),
        lambda i: i.gauge_error_pct is None,
        "the full scale of the gauges says nothing without their error",
        "give gauge_error too, the share of full scale that stands on the dial",
    ),
    Rule(
        ("gauge_error_pct",),
        lambda i: i.gauge_full_scale_kpa is None,
        "a gauge's error is a share of its full scale, which is missing",
        "give gauge_full_scale too",
    ),
    Rule(
        ("gauge_residual_kpa_diff", "gauge_full_scale_kpa"),
        lambda i: i.gauge_residual_kpa_diff > 0,
        "the uncertainty of the gauges is stated twice",
        "their residual where their difference was taken out, else full scale and error",
    ),
    Rule(
        ("gauge_residual_kpa_diff",),
        lambda i: i.gauge_difference_kpa_diff is None,
        "a residual is what is left once the difference of the gauges is taken out",
        "give gauge_difference: both gauges read with the hose plugged (0 kPa where they agree)",
    ),
)


TestT = TypeVar("TestT", bound=LeakTest)


def readings_rules(
    held: Callable[[TestT], list[float]], error: Callable[[TestT], float | None]
) -> tuple[Rule, ...]:
    """Return the rules of the pressures that a cylinder holds, and of the gauges' error."""
    return (
        Rule(
            ("supply_pressure_kpa",),
            lambda i: beyond(error(i) or 0.0, COARSEST * i.supply_pressure_kpa),
            "gauges of that error tell no leak at this supply",
            "a higher supply or finer gauges: an error up to a quarter of the supply",
        ),
        Rule(
            ("cylinder_pressure_kpa", "supply_pressure_kpa"),
            lambda i: beyond(max(held(i)), i.supply_pressure_kpa),
            "the cylinder cannot hold more than its supply: the two gauges do not agree, or are "
            "swapped",
            "gauge pressures of one zero; read both with the hose plugged, give the difference",
        ),
        Rule(
            ("gauge_difference_kpa_diff",),
            lambda i: beyond(0.0, min(held(i))),
            "the gauges differ by more than the cylinder reads",
            "cylinder gauge over supply gauge on one pressure: a few kPa",
        ),
    )
