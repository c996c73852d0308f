"""What conversion and verdict refuse, and how a stated part is taken."""

import math
from fractions import Fraction
from typing import Any

import pytest
from reference_cases import quantified, unit_given

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.calculations.general.convert import ends
from ringland_service.core.calculations.general.verdict import Part
from ringland_service.core.declare import Calculation
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.question import Path, Question, Stated
from ringland_service.engine.scalar import answer


def asked(name: str, doubts: dict[str, float] | None = None, **inputs: Any) -> Answer:
    calculation = BY_NAME[name]
    assert isinstance(calculation, Calculation)
    stated: dict[Path, Stated] = {
        (field,): Stated(uncertainty=u) for field, u in (doubts or {}).items()
    }
    return answer(calculation, Question(inputs=calculation.inputs(**inputs), doubts=stated))


def part(**stated: Any) -> Part:
    return Part(**stated)


def mm(value: float) -> Any:
    return quantified(value, "mm", "length")


CLEARANCE = {"value": mm(0.0745), "high": mm(0.08)}


def test_gauge_to_absolute_takes_the_air_pressure() -> None:
    gauge = quantified(900.0, "kPa(g)", "pressure_gauge")
    with pytest.raises(Refused, match="takes the air pressure on the spot"):
        asked("convert", value=gauge, to=unit_given("kPa(a)", "pressure_absolute"))


def test_a_doubt_is_converted_as_a_difference() -> None:
    """1 psi of doubt is 6.894757 kPa, at gauge and absolute alike; no offset (by hand)."""
    gauge = quantified(100.0, "psi", "pressure_gauge")
    limit = quantified(1e3, "kPa", "pressure_gauge")
    found = asked("verdict", {"value": 6.894757293168361}, value=gauge, high=limit)
    assert found.u["judged_value"] == pytest.approx(6.894757293168361 / 2.0, rel=1e-9)


@pytest.mark.parametrize(
    ("denominator_of", "finite"),
    [((1, 8), True), ((1, 3), False), ((7, 50), True), ((5, 9), False)],
)
def test_a_decimal_ends_where_two_and_five_alone_divide(
    denominator_of: tuple[int, int], finite: bool
) -> None:
    assert ends(Fraction(*denominator_of)) == finite


BAD_PARTS = [
    {},
    {"max_error": mm(0.005), "resolution": mm(0.001)},
    {"temperature_doubt_k": 1.0, "alpha_per_k": 1.1e-5},
    {"max_error": mm(0.0)},
]


@pytest.mark.parametrize("stated", BAD_PARTS, ids=["nothing", "two", "no_size", "zero"])
def test_a_part_states_one_thing(stated: dict[str, Any]) -> None:
    with pytest.raises(Refused, match="each part states one of"):
        asked("verdict", **CLEARANCE, parts=(part(**stated),))


def test_a_part_of_another_kind() -> None:
    wrong = part(max_error=quantified(5.0, "kPa", "pressure_gauge"))
    with pytest.raises(Refused, match="not of the value's kind"):
        asked("verdict", **CLEARANCE, parts=(wrong,))


def test_a_part_in_degrees_of_difference_judges_a_temperature() -> None:
    """± 1.8 degF are ± 1 K: u = 1/√3; the zero point of a scale has no part in it (by hand)."""
    found = asked(
        "verdict",
        value=quantified(20.0, "degC", "temperature"),
        high=quantified(22.0, "degC", "temperature"),
        parts=(part(max_error=quantified(1.8, "degF", "temperature_difference")),),
    )
    assert found.outputs.combined_uncertainty == pytest.approx(1.0 / math.sqrt(3.0), rel=1e-12)
    assert found.u["judged_value"] == pytest.approx(1.0 / math.sqrt(3.0), rel=1e-9)


def test_a_pressure_part_in_any_pressure_of_a_difference() -> None:
    found = asked(
        "verdict",
        value=quantified(700.0, "kPa", "pressure_gauge"),
        low=quantified(600.0, "kPa", "pressure_gauge"),
        parts=(part(max_error=quantified(0.1, "bar", "pressure_difference")),),
    )
    assert found.outputs.expanded_uncertainty == pytest.approx(20.0 / math.sqrt(3.0), rel=1e-12)


def test_doubt_is_stated_once() -> None:
    with pytest.raises(Refused, match="stated twice"):
        asked("verdict", {"value": 0.008}, **CLEARANCE, parts=(part(max_error=mm(0.005)),))


def test_a_low_limit_above_the_high_one() -> None:
    with pytest.raises(Refused, match="the lower limit is above the upper one"):
        asked("verdict", value=mm(0.05), low=mm(0.08), high=mm(0.03))
