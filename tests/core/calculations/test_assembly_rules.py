"""What putting together, running in and the estimate refuse and warn of; order and clocking."""

import math
from decimal import Decimal
from importlib import import_module
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.calculations.assembly import _criss_cross, _ring_gaps, _ring_pins
from ringland_service.core.calculations.assembly.estimate import Line, rounded
from ringland_service.core.calculations.assembly.fastener_order import Fastener
from ringland_service.core.calculations.assembly.run_in import RunInStep
from ringland_service.core.declare import Calculation
from ringland_service.engine.request import Request
from ringland_service.engine.response import DomainError
from ringland_service.engine.scalar import answer


def calculation(name: str) -> Calculation:
    found = import_module(f"ringland_service.core.calculations.assembly.{name}").CALCULATION
    assert isinstance(found, Calculation)
    return found


TORQUE, ORDER, CLOCKING = map(calculation, ("torque_steps", "fastener_order", "ring_clocking"))
PREMIX, RUN_IN, ESTIMATE = map(calculation, ("premix", "run_in", "estimate"))


def bolts(*places: tuple[str, float, float]) -> tuple[Fastener, ...]:
    return tuple(Fastener(id=name, x_mm=x, y_mm=y) for name, x, y in places)


def gaps(*given: tuple[str, str, float]) -> tuple[_ring_gaps.Gap, ...]:
    return tuple(_ring_gaps.gap(*one) for one in given)


PINS = (_ring_pins.pin("top", 20.0), _ring_pins.pin("second", 340.0))
WINDOWS = (_ring_pins.window(28.0, 62.0), _ring_pins.window(-12.0, 12.0))
TWO_STROKE = {
    "bore_mm": 56.0,
    "ring_pins": PINS,
    "port_windows": WINDOWS,
    "ring_end_half_width_mm": 0.8,
}
BASE: dict[str, dict[str, Any]] = {
    TORQUE.name: {"final_torque_nm": 24.0},
    ORDER.name: {"fasteners": bolts(("1", 0, 0), ("2", 80, 0), ("3", 80, 84))},
    CLOCKING.name: TWO_STROKE,
    PREMIX.name: {"fuel_l": 9.0, "ratio": 32.0},
    RUN_IN.name: {"stroke_mm": 66.0, "rated_speed_rpm": 8500.0},
    ESTIMATE.name: {"currency": "EUR", "tax": 0.19, "labour_rate": 70.0},
}
ALL = (TORQUE, ORDER, CLOCKING, PREMIX, RUN_IN, ESTIMATE)


def asked(of: Calculation, **changes: Any) -> Request:
    given = {n: v for n, v in (BASE[of.name] | changes).items() if v is not None}
    return Request(inputs=of.inputs(**given))


@pytest.mark.parametrize("of", ALL, ids=lambda of: of.name)
def test_the_sound_question_is_answered(of: Calculation) -> None:
    assert answer(of, asked(of)).outputs


REFUSED: list[tuple[Calculation, dict[str, Any], str]] = [
    (TORQUE, {"stage_fractions": (0.7, 0.4, 1.0)}, "do not rise to the final torque"),
    (TORQUE, {"stage_fractions": (0.4, 0.4, 1.0)}, "do not rise to the final torque"),
    (TORQUE, {"stage_fractions": (0.4, 0.9)}, "do not rise to the final torque"),
    (TORQUE, {"adapter_extension_mm": 50.0}, "without the length of the wrench"),
    (
        TORQUE,
        {"wrench_length_mm": 100.0, "adapter_extension_mm": 60.0, "adapter_angle_deg": 180.0},
        "reaches back over more than half",
    ),
    (TORQUE, {"thread_diameter_mm": 8.0, "pitch_mm": 2.5}, "too coarse"),
    (
        TORQUE,
        {"thread_diameter_mm": 8.0, "thread_pitch_diameter_mm": 8.0},
        "pitch diameter is not smaller",
    ),
    (
        TORQUE,
        {"thread_diameter_mm": 8.0, "thread_minor_diameter_mm": 8.1},
        "not smaller than the thread's",
    ),
    (
        TORQUE,
        {"thread_pitch_diameter_mm": 7.0, "thread_minor_diameter_mm": 7.2},
        "than the pitch diameter",
    ),
    (TORQUE, {"thread_diameter_mm": 8.0, "stress_area_mm2": 51.0}, "larger than the whole section"),
    (ORDER, {"fasteners": bolts(("1", 0, 0), ("1 ", 80, 0))}, "have one name"),
    (ORDER, {"fasteners": bolts(("1", 0, 0), (" ", 80, 0))}, "has no name"),
    (ORDER, {"fasteners": bolts(("1", 0, 0), ("2", 2, 2))}, "within 3 mm"),
    (CLOCKING, {"ring_pins": (_ring_pins.pin("top", 372.0),)}, "stands in a port window"),
    (CLOCKING, {"ring_pins": (_ring_pins.pin("top", 28.0),)}, "stands in a port window"),
    (CLOCKING, {"ring_count": 3}, "not one pin a ring"),
    (CLOCKING, {"ring_pins": (PINS[0], PINS[0])}, "two rings have one name"),
    (CLOCKING, {"port_windows": (_ring_pins.window(62.0, 28.0),)}, "more than half the bore"),
    (CLOCKING, {"port_windows": (_ring_pins.window(90.0, 90.0),)}, "is nothing or more than"),
    (
        CLOCKING,
        {"gaps": gaps(("a", "expander", 0.0), ("b", "expander", 90.0))},
        "more than one expander",
    ),
    (
        CLOCKING,
        {"gaps": gaps(("top", "compression", 0.0), ("top", "compression", 180.0))},
        "two rings have one name",
    ),
    (PREMIX, {"tank_has_l": 2.0}, "ratio of the mix in the tank is missing"),
    (PREMIX, {"tank_ratio": 40.0}, "how much mix the tank holds"),
    (
        RUN_IN,
        {"steps": (RunInStep(fraction=0.6, minutes=20), RunInStep(fraction=0.5, minutes=20))},
        "steps of running in fall",
    ),
    (
        RUN_IN,
        {"compression_before_kpa": 0.0, "compression_after_kpa": 900.0},
        "nothing to run in",
    ),
    (
        ESTIMATE,
        {
            "labour_rate": None,
            "labour_hours": 2.0,
            "parts": (Line(label="gasket", price=9.0),),
        },
        "without the price of an hour",
    ),
]


@pytest.mark.parametrize(("of", "changes", "words"), REFUSED)
def test_refused_in_words_of_the_trade(
    of: Calculation, changes: dict[str, Any], words: str
) -> None:
    with pytest.raises(DomainError, match=words):
        answer(of, asked(of, **changes))


WARNED: list[tuple[Calculation, dict[str, Any], str]] = [
    (TORQUE, {"wrench_top_nm": 20.0}, "wrench_too_small"),
    (TORQUE, {"wrench_top_nm": 50.0}, "wrench_too_large"),
    (TORQUE, {"lubricant": "moly_paste"}, "moly_paste"),
    (CLOCKING, {}, "pins_not_counted"),
    (RUN_IN, {}, "usual_steps"),
    (ESTIMATE, {}, "no_contingency"),
]


@pytest.mark.parametrize(("of", "changes", "code"), WARNED)
def test_warned(of: Calculation, changes: dict[str, Any], code: str) -> None:
    assert code in {warned.code for warned in answer(of, asked(of, **changes)).warnings}


@pytest.mark.parametrize(
    ("of", "changes", "code"),
    [
        (TORQUE, {"wrench_top_nm": 30.0}, "wrench_too_small"),
        (TORQUE, {"wrench_top_nm": 30.0}, "wrench_too_large"),
        (CLOCKING, {"ring_count": 2}, "pins_not_counted"),
        (ESTIMATE, {"contingency": 0.1}, "no_contingency"),
    ],
)
def test_not_warned(of: Calculation, changes: dict[str, Any], code: str) -> None:
    assert code not in {warned.code for warned in answer(of, asked(of, **changes)).warnings}


@pytest.mark.parametrize(
    ("lubricant", "expected"), [("dry", 0.20), ("oiled", 0.165), ("moly_paste", 0.115)]
)
def test_nut_factor_of_the_lubricant(lubricant: str, expected: float) -> None:
    # Source: machine-design textbooks (from memory): 0.20 dry, 0.15 to 0.18 oiled, 0.10 to 0.13.
    found = answer(TORQUE, asked(TORQUE, lubricant=lubricant, thread_diameter_mm=8.0)).outputs
    assert found.nut_factor_used == expected
    assert found.clamp_n == pytest.approx(24000.0 / (expected * 8.0))


PLACES = st.lists(
    st.tuples(st.integers(-200, 200), st.integers(-200, 200)), min_size=2, max_size=14, unique=True
)


@given(PLACES, st.integers(-300, 300), st.integers(-300, 300))
def test_order_is_of_the_pattern_alone(places: list[tuple[int, int]], dx: int, dy: int) -> None:
    here = {str(n): (float(x), float(y)) for n, (x, y) in enumerate(places)}
    there = {name: (x + dx, y + dy) for name, (x, y) in here.items()}
    found = _criss_cross.order(here)
    assert sorted(found) == sorted(here)
    assert _criss_cross.order(there) == found


@given(st.integers(2, 12), st.floats(30, 200))
def test_even_circle_goes_across(half: int, radius: float) -> None:
    # Common practice, no source: every second fastener of an even circle stands opposite.
    count = 2 * half
    places = {
        str(n): (radius * math.cos(math.tau * n / count), radius * math.sin(math.tau * n / count))
        for n in range(count)
    }
    found = [int(name) for name in _criss_cross.order(places)]
    assert found[0] == 0
    assert all((b - a) % count == half for a, b in zip(found[::2], found[1::2], strict=True))


@given(st.floats(28, 120), st.floats(-360, 360), st.integers(1, 3))
def test_proposed_places_break_no_limit(bore: float, thrust: float, count: int) -> None:
    rings = [(f"ring {n}", "compression", 0.0) for n in range(count)]
    rings += [("expander", "expander", 0.0), ("upper", "rail", 0.0), ("lower", "rail", 0.0)]
    request = asked(
        CLOCKING,
        bore_mm=bore,
        thrust_axis_angle_deg=thrust,
        gaps=gaps(*rings),
        **dict.fromkeys(("ring_pins", "port_windows", "ring_end_half_width_mm")),
    )
    proposed = answer(CLOCKING, request).outputs.proposed_gaps_deg
    assert proposed is not None
    placed = gaps(*((name, kind, a) for (name, kind, _), a in zip(rings, proposed, strict=True)))
    again = Request(inputs=CLOCKING.inputs(bore_mm=bore, thrust_axis_angle_deg=thrust, gaps=placed))
    found = answer(CLOCKING, again)
    assert found.outputs.clocked_well
    assert {v.word for v in found.verdicts} == {"pass"}


@given(st.decimals(0, 100_000, places=4, allow_nan=False), st.integers(0, 3))
def test_rounding_is_to_the_nearest_coin(amount: Decimal, decimals: int) -> None:
    found = Decimal(repr(rounded(float(amount), decimals)))
    assert abs(found - amount) <= Decimal(5).scaleb(-decimals - 1)
    assert found == found.quantize(Decimal(1).scaleb(-decimals))
