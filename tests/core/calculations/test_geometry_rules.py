"""What squish, ratio, piston position, faces and camshafts refuse."""

from typing import Any

import pytest

from ringland_service.core.calculations.geometry import (
    piston_position,
    port_timing,
    squish,
    wanted_ratio,
)
from ringland_service.core.calculations.head import cam_check, flatness
from ringland_service.core.declare import Calculation
from ringland_service.engine.request import Request, Stated
from ringland_service.engine.response import DomainError, Response
from ringland_service.engine.scalar import answer

POSITION = piston_position.CALCULATION
PORTS = port_timing.CALCULATION
SQUISH = squish.CALCULATION
RATIO = wanted_ratio.CALCULATION
FACE = flatness.CALCULATION
CAM = cam_check.CALCULATION

CRANK: dict[str, Any] = {"stroke_mm": 58.0, "rod_mm": 110.0}
TWO_STROKE: dict[str, Any] = {
    **CRANK,
    "exhaust_port_top_below_deck_mm": 31.0,
    "piston_edge_below_deck_at_tdc_mm": 0.0,
}
SOLDER: dict[str, Any] = {"solder_mm": (1.4, 1.5)}
VOLUMES: dict[str, Any] = {"swept_cc": 243.2, "clearance_cc": 29.2, "wanted_ratio": 9.6}
LINES: dict[str, Any] = {"lines_mm": (0.07, 0.02, 0.0, 0.01, 0.02, 0.03)}
LOBE: dict[str, Any] = {"lobe_height_mm": 33.42, "base_circle_mm": 26.05}

# What is asked for, and in what words it is refused. By hand, each from plain numbers.
REFUSED: list[tuple[Calculation, dict[str, Any], str]] = [
    (
        POSITION,
        {"stroke_mm": 60.0, "rod_mm": 31.0, "pin_offset_mm": 1.0, "crank_angle_deg": 10.0},
        "rod_mm: the crank cannot turn over",
    ),
    (POSITION, {**CRANK, "travel_asked_mm": 58.5}, "travel_asked_mm: the piston does not travel"),
    (
        PORTS,
        {**TWO_STROKE, "transfer_duration_wanted_deg": 143.0},
        "transfer_duration_wanted_deg: .*only from the transfer ports",
    ),
    (SQUISH, {**SOLDER, "solder_wire_mm": 1.5}, "the solder was not crushed"),
    (SQUISH, {**SOLDER, "base_gaskets_mm": (0.3,)}, "base_gaskets_mm: .*the one fitted"),
    (
        SQUISH,
        {"deck_mm": -1.0, "gasket_thickness_mm": 0.5, "head_step_mm": 0.4},
        "deck_mm: .*the piston would meet the head",
    ),
    (
        SQUISH,
        {**SOLDER, "bore_mm": 56.0, "bowl_diameter_mm": 56.0},
        "bowl_diameter_mm: .*no squish band",
    ),
    (
        SQUISH,
        {**SOLDER, **CRANK, "exhaust_port_top_below_deck_mm": 58.0},
        "exhaust_port_top_below_deck_mm: the crown edge does not pass",
    ),
    (SQUISH, {**SOLDER, "stroke_mm": 58.0, "rod_mm": 29.0}, "rod_mm: the crank cannot turn over"),
    (
        RATIO,
        {**VOLUMES, "chamber_area_mm2": 2900.0, "bore_mm": 40.0},
        "chamber_area_mm2: .*is not this cylinder's",
    ),
    (RATIO, {**VOLUMES, "swept_cc": 29.0, "clearance_cc": 243.0}, "are they swapped"),
    (
        RATIO,
        {**VOLUMES, "gasket_bore_mm": 60.0, "bore_mm": 68.0},
        "gasket_bore_mm: .*overhangs",
    ),
    (
        FACE,
        {
            "lines_mm": (2.0, 0.0, 0.0, 0.0),
            "chamber_area_mm2": 20000.0,
            "clearance_cc": 30.0,
        },
        "clearance_cc: .*leaves no volume above the piston",
    ),
    (CAM, {**LOBE, "base_circle_mm": 33.4}, "base_circle_mm: .*no lift of a camshaft"),
    (CAM, {**LOBE, "base_circle_mm": 12.0}, "base_circle_mm: .*no lift of a camshaft"),
    (CAM, {**LOBE, "lobe_height_new_mm": 33.2}, "lobe_height_new_mm: .*higher than a new one"),
    (
        CAM,
        {"lobe_height_new_mm": 33.2, "clay_intake_mm": 1.5},
        "lobe_height_new_mm: .*without that of this one",
    ),
    (
        CAM,
        {"intake_opens_btdc_deg": -40.0, "intake_closes_abdc_deg": -50.0},
        "intake_opens_btdc_deg: .*do not belong to one valve",
    ),
    (
        CAM,
        {"exhaust_opens_bbdc_deg": 119.0, "exhaust_closes_atdc_deg": 119.0},
        "exhaust_opens_bbdc_deg: .*do not belong to one valve",
    ),
]


def asked(calculation: Calculation, values: dict[str, Any], **more: Any) -> Response:
    return answer(calculation, Request(calculation.inputs(**values), **more))


@pytest.mark.parametrize(("calculation", "values", "words"), REFUSED)
def test_refused_in_words(calculation: Calculation, values: dict[str, Any], words: str) -> None:
    with pytest.raises(DomainError, match=words):
        asked(calculation, values)


# An uncertainty said on the reading and by the field that states it for all.
TWICE: list[tuple[Calculation, dict[str, Any], str]] = [
    (SQUISH, {**SOLDER, "solder_uncertainty_mm": 0.04}, "solder_mm"),
    (
        SQUISH,
        {
            "deck_mm": 0.2,
            "gasket_thickness_mm": 0.5,
            "head_step_mm": 0.4,
            "solder_uncertainty_mm": 0.04,
        },
        "head_step_mm",
    ),
    (CAM, {"clay_intake_mm": 1.5, "clay_uncertainty_mm": 0.1}, "clay_intake_mm"),
    (CAM, {"clay_exhaust_mm": 1.8, "clay_uncertainty_mm": 0.1}, "clay_exhaust_mm"),
]


@pytest.mark.parametrize(("calculation", "values", "field"), TWICE)
def test_uncertainty_is_said_once(
    calculation: Calculation, values: dict[str, Any], field: str
) -> None:
    with pytest.raises(DomainError, match=f"{field}: its uncertainty is stated twice"):
        asked(calculation, values, uncertainties={(field,): Stated(0.05)})


def test_a_face_that_rocks_and_is_told_to_be_flat() -> None:
    codes = {w.code for w in asked(FACE, {**LINES, "rocks": True}).warnings}
    assert "face_is_crowned" in codes
    assert "rock_test" not in codes


def test_without_common_practice_no_clearance_is_guessed() -> None:
    """Retard 0.83° of crank costs the exhaust valve room that nothing given tells."""
    values: dict[str, Any] = {
        "clay_intake_mm": 1.9,
        "clay_exhaust_mm": 2.1,
        "chain_pitch_mm": 6.35,
        "cam_sprocket_teeth": 34,
        "stack_lowered_mm": 0.25,
    }
    plain = asked(CAM, values, defaults=False)
    assert plain.outputs.exhaust_after_mm is None
    assert not plain.verdicts
    told = asked(CAM, {**values, "exhaust_loss_per_degree_mm": 0.0}, defaults=False).outputs
    assert told.exhaust_after_mm == pytest.approx(1.85, rel=1e-12)
