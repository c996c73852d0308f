"""What the ratios, the ports, air pressure and length at 20 °C refuse, and what they still take."""

from importlib import import_module
from typing import Any

import pytest

from ringland_service.core.declare import Calculation
from ringland_service.engine.answer import Refused
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.question import Question
from ringland_service.engine.rows import Rows
from ringland_service.engine.scalar import answer


def calculation(place: str) -> Calculation:
    found = import_module(f"ringland_service.core.calculations.{place}").CALCULATION
    assert isinstance(found, Calculation)
    return found


RATIO = calculation("geometry.compression_ratio")
OVERBORE = calculation("geometry.overbore_ratio")
DYNAMIC = calculation("geometry.dynamic_ratio")
PORTS = calculation("geometry.port_timing")
AIR = calculation("general.air_pressure")
LENGTH = calculation("general.length_at_20c")

HEAD = {
    "bore_mm": 68.0,
    "stroke_mm": 66.0,
    "chamber_cc": 27.6,
    "gasket_bore_mm": 69.5,
    "gasket_thickness_mm": 0.5,
    "deck_mm": 0.3,
    "dome_cc": 1.8,
    "crevice_cc": 0.4,
}
BASE: dict[str, dict[str, Any]] = {
    RATIO.name: HEAD,
    OVERBORE.name: HEAD | {"new_bore_mm": 68.496},
    DYNAMIC.name: {
        "bore_mm": 68.0,
        "stroke_mm": 66.0,
        "rod_mm": 112.0,
        "clearance_cc": 29.1863,
        "intake_closes_deg": 62.0,
    },
    PORTS.name: {
        "bore_mm": 56.0,
        "stroke_mm": 58.0,
        "rod_mm": 110.0,
        "exhaust_port_top_below_deck_mm": 31.0,
        "transfer_port_top_below_deck_mm": 41.4,
        "piston_edge_below_deck_at_tdc_mm": 0.0,
        "clearance_cc": 11.9,
        "thinner_base_gasket_by_mm": 0.3,
    },
    AIR.name: {"altitude_m": 1500.0},
    LENGTH.name: {
        "bore_mm": 72.036,
        "bore_temperature_c": 18.0,
        "bore_kind": "iron",
        "piston_mm": 71.982,
        "piston_temperature_c": 31.0,
        "piston_material": "steel",
    },
}
PLUG = {"plug_diameter_mm": 13.35, "plug_reach_mm": 19.0}


def question(of: Calculation, changes: dict[str, Any]) -> dict[str, Any]:
    """Return the sound question with some fields changed; None leaves a field out."""
    asked = BASE[of.name] | changes
    return {name: value for name, value in asked.items() if value is not None}


@pytest.mark.parametrize("of", [RATIO, OVERBORE, DYNAMIC, PORTS, AIR, LENGTH])
def test_the_sound_question_is_answered(of: Calculation) -> None:
    assert answer(of, Question(inputs=of.inputs(**question(of, {})))).outputs


REFUSED: list[tuple[Calculation, dict[str, Any], str, str]] = [
    (RATIO, {"gasket_bore_mm": 67.9}, "gasket_bore_mm", "smaller than the cylinder overhangs"),
    (RATIO, {"gasket_bore_mm": 80.1}, "gasket_bore_mm", "more than 12 mm above"),
    (RATIO, {"gasket_area_mm2": 3600.0}, "gasket_area_mm2", "smaller than the cylinder"),
    # 27.6 + 1.897 + 1.090 + 0.4 = 30.986 less a dome of 30.7 leaves 0.286 cc.
    (RATIO, {"dome_cc": 30.7}, "chamber_cc", "no volume above the piston"),
    (RATIO, PLUG | {"burette_fill_cc": 2.9}, "burette_fill_cc", "no more than the plug hole"),
    (RATIO, {"land_mm": 68.0}, "land_mm", "does not belong to this bore"),
    (RATIO, {"land_mm": 64.9}, "land_mm", "does not belong to this bore"),
    (RATIO, {"deck_mm": None, "burette_fill_cc": 30.0}, "chamber_cc", "neither way"),
    (OVERBORE, {"new_bore_mm": 69.6}, "new_bore_mm", "exceeds the gasket bore"),
    (OVERBORE, {"new_bore_mm": 67.9}, "new_bore_mm", "smaller than before"),
    (OVERBORE, {"new_gasket_bore_mm": 68.4}, "new_bore_mm", "exceeds the gasket bore"),
    (OVERBORE, {"new_gasket_bore_mm": 80.6}, "new_gasket_bore_mm", "more than 12 mm"),
    # The new bore's area is 3684.85 mm².
    (OVERBORE, {"gasket_area_mm2": 3684.0}, "new_bore_mm", "exceeds the gasket bore"),
    (OVERBORE, {"new_dish_cc": 1.0}, "new_dish_cc", "told but not its dome"),
    (OVERBORE, {"dish_cc": 1.0, "new_dome_cc": 1.0}, "new_dome_cc", "told but not its dish"),
    (OVERBORE, {"new_dome_cc": 30.8}, "new_bore_mm", "no volume above the piston"),
    (OVERBORE, {"gasket_bore_mm": None}, "gasket_bore_mm", "made of is not given"),
    (DYNAMIC, {"rod_mm": 33.0}, "rod_mm", "cannot turn over"),
    (PORTS, {"rod_mm": 29.9}, "rod_mm", "cannot turn over"),
    (
        PORTS,
        {"exhaust_port_top_below_deck_mm": 5.0, "piston_edge_below_deck_at_tdc_mm": 4.8},
        "exhaust_port_top_below_deck_mm",
        "does not pass the top of this port",
    ),
    (
        PORTS,
        {"transfer_port_top_below_deck_mm": 57.6},
        "transfer_port_top_below_deck_mm",
        "does not pass the top of this port",
    ),
    (
        PORTS,
        {"transfer_port_top_below_deck_mm": 57.4},
        "thinner_base_gasket_by_mm",
        "does not pass the top of a port",
    ),
    (
        PORTS,
        {"transfer_port_top_below_deck_mm": 30.9},
        "transfer_port_top_below_deck_mm",
        "swapped",
    ),
    # 0.3 mm under the bore of 56 mm is 0.739 cc.
    (PORTS, {"clearance_cc": 1.0}, "thinner_base_gasket_by_mm", "leaves no volume"),
    (
        AIR,
        {"weather_report_kpa_abs": 102.1, "air_pressure_kpa_abs": 101.0},
        "weather_report_kpa_abs",
        "do not agree",
    ),
    (
        AIR,
        {"altitude_m": None, "weather_report_kpa_abs": 101.0, "air_pressure_kpa_abs": 101.0},
        "weather_report_kpa_abs",
        "do not agree",
    ),
    (AIR, {"altitude_m": None}, "altitude_m", "no source"),
    (LENGTH, {"bore_kind": "unknown"}, "bore_temperature_c", "nothing says how it expands"),
    (LENGTH, {"piston_material": None}, "piston_temperature_c", "nothing says how it expands"),
    (LENGTH, {"piston_temperature_c": None}, "piston_mm", "without its temperature"),
    (LENGTH, {"piston_mm": 72.35}, "piston_mm", "does not fit this bore"),
    (LENGTH, {"piston_mm": 69.0}, "piston_mm", "does not fit this bore"),
]


@pytest.mark.parametrize(("of", "changes", "field", "text"), REFUSED)
def test_refused_singly_and_in_a_column(
    of: Calculation, changes: dict[str, Any], field: str, text: str
) -> None:
    asked = question(of, changes)
    with pytest.raises(Refused) as refused:
        answer(of, Question(inputs=of.inputs(**asked)))
    assert [text in f.message for f in refused.value.faults if f.field == field].count(True) == 1

    words = {name: value for name, value in asked.items() if isinstance(value, str)}
    columns = {name: [value, value] for name, value in asked.items() if name not in words}
    rows = Rows(count=2, columns=columns, shared=words, question=Question(inputs=None))
    problems = answer_rows(of, rows).problems
    told = [(f.field, f.message) for f in refused.value.faults]
    assert [[(f.field, f.message) for f in problems[row]] for row in (0, 1)] == [told, told]


TAKEN: list[tuple[Calculation, dict[str, Any]]] = [
    (RATIO, {"gasket_bore_mm": 68.0}),
    (RATIO, {"dome_cc": 30.6}),
    (OVERBORE, {"new_bore_mm": 69.5}),
    (OVERBORE, {"new_bore_mm": 69.6, "new_gasket_bore_mm": 70.5}),
    (OVERBORE, {"new_dome_cc": 1.0}),
    (PORTS, {"clearance_cc": 1.1}),
    (AIR, {"weather_report_kpa_abs": 102.1, "air_pressure_kpa_abs": 85.0}),
    # 68 °F turned into °C.
    (LENGTH, {"bore_kind": None, "bore_temperature_c": 20.000000000000004}),
]


@pytest.mark.parametrize(("of", "changes"), TAKEN)
def test_taken_just_inside(of: Calculation, changes: dict[str, Any]) -> None:
    assert answer(of, Question(inputs=of.inputs(**question(of, changes)))).outputs
