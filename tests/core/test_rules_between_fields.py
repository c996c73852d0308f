"""Rules between two readings do not rest on the last digit: 3 in and 76.2 mm are one size."""

import dataclasses
import itertools
import math
from collections.abc import Iterator
from typing import Any

import numpy as np
import pytest

from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.calculations.assembly import _ring_pins as pins
from ringland_service.core.declare import Rule, asked, defaults
from ringland_service.core.declare.fields import AnyQuantityField, NumberField, QuantityField
from ringland_service.engine.answer import Refused
from ringland_service.engine.question import Question
from ringland_service.engine.scalar import answer

Pair = tuple[Any, Rule, str, str]


def pairs() -> Iterator[Pair]:
    """Yield every two quantities of one kind that a rule holds against each other."""
    for calculation in CALCULATIONS:
        known = asked(calculation.inputs)
        for rule in calculation.rules:
            single = [n for n in rule.fields if type(known[n]) is QuantityField]
            for one, other in itertools.combinations(dict.fromkeys(single), 2):
                if kind_of(known[one]) == kind_of(known[other]):
                    yield calculation, rule, one, other


def kind_of(field: Any) -> str:
    return str(field.type.kind.name)


PAIRS = list(pairs())


def by_example(calculation: Any, rule: Rule, **changed: Any) -> Any:
    """Return inputs of the single values of the examples, and of the lists that must be there."""
    values: dict[str, Any] = {}
    optional = defaults(calculation.inputs)
    for name, field in asked(calculation.inputs).items():
        plain = type(field) is QuantityField or isinstance(field, NumberField)
        if (plain and field.example is not None) or name not in optional or name in rule.fields:
            values[name] = field.example
    return calculation.inputs(**(values | changed))


def sizes(calculation: Any, one: str, other: str) -> list[float]:
    """Return sizes that both fields may have."""
    known: Any = asked(calculation.inputs)
    types = [known[name].type for name in (one, other)]
    low, high = max(t.low for t in types), min(t.high for t in types)
    within = [v for v in (0.0762, 3.0, 20.03, 76.2) if low <= v <= high]
    return [*within, (low + high) / 2.0] if low <= high else []


def dusty(size: float) -> list[tuple[float, float]]:
    """Return one size for both fields, and with a last digit to either side on one or the other."""
    above, below = math.nextafter(size, math.inf), math.nextafter(size, -math.inf)
    return [(size, size), (size, above), (size, below), (above, size), (below, size)]


def test_there_are_such_rules() -> None:
    named = {(calculation.name, one, other) for calculation, _, one, other in PAIRS}
    assert len(named) > 30
    assert ("compression-ratio", "gasket_bore_mm", "bore_mm") in named


@pytest.mark.parametrize(
    ("calculation", "rule", "one", "other"),
    PAIRS,
    ids=[f"{c.name}: {one} and {other}" for c, _, one, other in PAIRS],
)
def test_the_last_digit_breaks_no_rule_and_mends_none(
    calculation: Any, rule: Rule, one: str, other: str
) -> None:
    for size in sizes(calculation, one, other):
        cases = dusty(size)
        found = [
            bool(rule.broken(by_example(calculation, rule, **{one: a, other: b}))) for a, b in cases
        ]
        assert found == [found[0]] * len(cases), (size, found)
        columns = {one: np.array([a for a, _ in cases]), other: np.array([b for _, b in cases])}
        if getattr(calculation, "columns", False):
            column = rule.broken(by_example(calculation, rule, **columns))
            assert np.broadcast_to(column, len(cases)).tolist() == found


# Sizes that stand exactly as far apart as a rule allows; in binary some of them a little farther.
AT_THE_BOUND: list[tuple[str, dict[str, Any]]] = [
    ("pin-fits", {"pin_mm": 20.03, "piston_pin_bore_mm": 20.0}),
    ("pin-fits", {"pin_mm": 18.4, "piston_pin_bore_mm": 18.9}),
    ("hot-clearance", {"piston_mm": 68.05, "bore_mm": 68.0}),
    ("hot-clearance", {"piston_mm": 65.1, "bore_mm": 68.1}),
    ("piston-clearance", {"piston_mm": 68.05, "bore_max_mm": 68.0}),
    ("piston-clearance", {"piston_mm": 65.1, "bore_max_mm": 68.1}),
    ("piston-clearance", {"piston_mm": 67.9, "piston_new_mm": 67.89, "bore_max_mm": 68.0}),
    ("piston-clearance", {"piston_mm": 67.1, "piston_new_mm": 68.1, "bore_max_mm": 68.1}),
    ("length-at-20c", {"bore_mm": 68.1, "piston_mm": 65.1, "piston_temperature_c": 20.0}),
    ("length-at-20c", {"bore_mm": 68.0, "piston_mm": 68.3, "piston_temperature_c": 20.0}),
    ("overbore-ratio", {"bore_mm": 68.0, "new_bore_mm": 68.4, "new_gasket_bore_mm": 80.4}),
    ("compression-ratio", {"bore_mm": 68.4, "gasket_bore_mm": 80.4}),
    ("clean-up", {"unworn_reference_mm": 68.1, "bore_max_mm": 71.1}),
    ("sleeve-fit", {"sleeve_od_mm": 76.3, "cylinder_bore_mm": 76.0}),
    ("sleeve-fit", {"sleeve_od_mm": 68.4, "cylinder_bore_mm": 68.1}),
    ("ring-side-clearance", {"top_ring_width_mm": 1.52, "top_groove_width_mm": 1.5}),
    ("ring-side-clearance", {"top_ring_width_mm": 1.2, "top_groove_width_mm": 2.2}),
    ("bore-survey", {"pin_axis_mm": (71.1, 68.2), "thrust_axis_mm": (68.1, 67.6),
                     "depth_mm": (10.0, 60.0), "nominal_bore_mm": 68.1}),
]  # fmt: skip


@pytest.mark.parametrize(("name", "given"), AT_THE_BOUND)
def test_as_far_apart_as_may_be_is_not_too_far(name: str, given: dict[str, Any]) -> None:
    calculation = BY_NAME[name]
    required = asked(calculation.inputs).keys() - defaults(calculation.inputs).keys()
    examples = {n: asked(calculation.inputs)[n].example for n in required}
    inputs = calculation.inputs(**(examples | given))
    judged = [rule for rule in calculation.rules if set(rule.fields) <= given.keys()]
    assert judged
    assert not [rule.message for rule in judged if bool(rule.broken(inputs))]


def test_a_limit_above_itself_by_a_last_digit() -> None:
    calculation = BY_NAME["verdict"]
    sides = [asked(calculation.inputs)[n] for n in ("low", "high")]
    assert all(isinstance(side, AnyQuantityField) for side in sides)
    rule = calculation.rules[0]

    @dataclasses.dataclass
    class Side:
        value: float
        kind: str = "length"

    @dataclasses.dataclass
    class Sides:
        low: Side
        high: Side

    assert not rule.broken(Sides(Side(76.2), Side(3 * 25.4)))
    assert rule.broken(Sides(Side(76.2), Side(76.2 - 1e-6)))


def test_scores_as_large_as_the_largest_bore() -> None:
    calculation: Any = BY_NAME["clean-up"]
    score = asked(calculation.inputs)["scores"].record  # type: ignore[attr-defined]
    for local, largest, unworn in ((76.2, 3 * 25.4, 76.1), (3 * 25.4, 76.3, 76.2)):
        scores = (score(local_mm=local, depth_radial_mm=0.05),)
        inputs = calculation.inputs(unworn_reference_mm=unworn, bore_max_mm=largest, scores=scores)
        assert answer(calculation, Question(inputs=inputs)).outputs.score_mm > 76.1


# 0.5 rad and its degrees, as conversions of either leave them.
EDGE_DEG = math.degrees(0.5)


@pytest.mark.parametrize("dust", [0.0, 4e-15, -4e-15])
def test_a_pin_on_the_edge_of_a_window_stands_in_it(dust: float) -> None:
    for edge in (pins.window(EDGE_DEG, 60.0), pins.window(5.0, EDGE_DEG)):
        assert pins.inside(EDGE_DEG + dust, edge)
        assert not pins.inside(
            EDGE_DEG + math.copysign(1e-3, edge.from_angle_deg - 10.0) * -1, edge
        )


@pytest.mark.parametrize("dust", [0.0, 4e-15, -4e-15])
def test_a_window_of_no_width_in_any_unit(dust: float) -> None:
    calculation: Any = BY_NAME["ring-clocking"]
    inputs = calculation.inputs(
        bore_mm=68.0,
        ring_pins=(pins.pin("top", 100.0),),
        port_windows=(pins.window(EDGE_DEG, EDGE_DEG + dust),),
        ring_end_half_width_mm=0.8,
    )
    with pytest.raises(Refused, match="nothing or more than half"):
        answer(calculation, Question(inputs=inputs))
