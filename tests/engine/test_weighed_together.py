"""Readings without an uncertainty weigh the same, moved in one call or one by one."""

import copy
from collections.abc import Iterator, Mapping
from typing import Any

import pytest

from ringland_service.api.faults import FieldErrors
from ringland_service.api.reading.request import parsed
from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.propagation import moved
from ringland_service.engine import sensitivities
from ringland_service.engine.request import Request
from ringland_service.engine.response import DomainError
from ringland_service.engine.scalar import answer

COLUMNAR = [c for c in CALCULATIONS if isinstance(c, Calculation) and c.columns]
ALWAYS, NEVER = 0, 10**6


def one_stated(calculation: Calculation, data: Mapping[str, Any]) -> Iterator[Request]:
    """Yield the question with the uncertainty of one quantity stated, each in its turn."""
    for name, value in data.items():
        if isinstance(value, dict) and "value" in value:
            found = copy.deepcopy(dict(data))
            found[name]["uncertainty"] = abs(value["value"]) * 1e-5
            try:
                yield parsed(calculation, found)
            except FieldErrors:
                continue  # a size that is exact


def weighed(calculation: Calculation, data: Mapping[str, Any]) -> list[Any]:
    found = []
    for request in one_stated(calculation, data):
        try:
            found.append(answer(calculation, request).left_out)
        except DomainError:
            found.append(None)
    return found


def both_ways(
    calculation: Calculation, data: Mapping[str, Any], monkeypatch: pytest.MonkeyPatch
) -> Iterator[tuple[Any, Any]]:
    monkeypatch.setattr(sensitivities, "WORTH_A_COLUMN", ALWAYS)
    together = weighed(calculation, data)
    monkeypatch.setattr(sensitivities, "WORTH_A_COLUMN", NEVER)
    return zip(together, weighed(calculation, data), strict=True)


def insist_alike(one: Any, other: Any) -> None:
    assert one.keys() == other.keys()
    for result, by_words in one.items():
        assert dict(by_words) == pytest.approx(dict(other[result]), rel=1e-6, abs=1e-12), result


@pytest.mark.parametrize("calculation", COLUMNAR, ids=lambda c: c.name)
def test_together_as_one_by_one(calculation: Calculation, monkeypatch: pytest.MonkeyPatch) -> None:
    for one, other in both_ways(calculation, example(calculation.inputs), monkeypatch):
        assert (one is None) == (other is None)
        if one is not None:
            insist_alike(one, other)


SURVEYS = {
    "all apart": [68.061, 68.049, 68.034, 68.094, 68.076, 68.052],
    "largest twice": [68.094, 68.049, 68.034, 68.094, 68.076, 68.052],
    "all alike": [68.05] * 6,
    "a gap": [68.061, None, 68.034, 68.094, 68.076, 68.052],
}


@pytest.mark.parametrize("bores", SURVEYS.values(), ids=SURVEYS)
@pytest.mark.parametrize("skirt_from", [None, 25.0], ids=["whole bore", "from a depth read"])
def test_a_survey_weighs_alike(
    bores: list[Any], skirt_from: float | None, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Ties make kinks, and a depth at the end of the skirt travel makes a jump."""
    fit = BY_NAME["piston-clearance"]
    survey = {
        "depth": {"values": [8.0, 25.0, 45.0], "unit": "mm"},
        "pin_axis": {"values": bores[:3], "unit": "mm"},
        "thrust_axis": {"values": bores[3:], "unit": "mm"},
    }
    data = {
        "bore_survey": survey,
        "piston_size": {"value": 68.0, "unit": "mm"},
        "cycle": "four_stroke",
    }
    if skirt_from is not None:
        data["skirt_from"] = {"value": skirt_from, "unit": "mm"}
    found = list(both_ways(fit, data, monkeypatch))
    assert any("clearance_max_mm" in other for _, other in found)
    for one, other in found:
        insist_alike(one, other)


def test_a_survey_takes_no_call_a_reading(monkeypatch: pytest.MonkeyPatch) -> None:
    """One call moves them all, each in a row of its own."""
    fit = BY_NAME["piston-clearance"]
    calls: list[Any] = []

    def counted(*given: Any) -> Any:
        calls.append(given)
        return moved(*given)

    monkeypatch.setattr(sensitivities, "moved", counted)
    survey = {
        "depth": {"values": [8.0, 25.0, 45.0], "unit": "mm"},
        "pin_axis": {"values": [68.061, 68.049, 68.034], "unit": "mm"},
        "thrust_axis": {"values": [68.094, 68.076, 68.052], "unit": "mm"},
    }
    piston = {"value": 68.0, "unit": "mm", "uncertainty": 0.005}
    request = parsed(fit, {"bore_survey": survey, "piston_size": piston, "cycle": "four_stroke"})
    answer(fit, request)
    assert len(calls) == 1
