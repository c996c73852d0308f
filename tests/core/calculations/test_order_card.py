"""The order card: every point, every refusal, and what no card may ever look like."""

import re
from typing import Any

import pytest
from hypothesis import given, settings
from order_cards import (
    BORED,
    HEAD,
    HONED,
    PISTON,
    REPLATED,
    SLEEVED,
    asked_for,
    cards,
    lines_of,
)

from ringland_service.core.calculations.order_card._order_heads import Heads
from ringland_service.engine.response import DomainError, Response

LIGHT = {**HONED, "work": "light_hone"}
TWO_STROKE = {**BORED, "cycle": "two_stroke"}
# Common practice, no source: what each point of an order to a machinist must say.
POINTS: list[tuple[int, dict[str, Any], str]] = [
    (1, {**BORED, "job": " 26-014 ", "parts_sent": 1}, "Job 26-014; 1 part sent. NOT STATED: date"),
    (1, {**BORED, "exhaust_side_marked": False}, "mark of the exhaust side"),
    (1, {**HEAD, "job": "7"}, "Job 7. NOT STATED: date; count of parts sent."),
    (2, BORED, "NOT plated: iron cylinder."),
    (2, REPLATED, "PLATED: do not bore, do not hone with common stones (plated aluminium)."),
    (2, {**REPLATED, "bore_kind": "chromed"}, "PLATED: do not bore, do not hone"),
    (
        2,
        {**REPLATED, "bore_kind": "bare_silicon_aluminium"},
        "Bare silicon aluminium: do not bore, do not hone with common stones.",
    ),
    (2, {**REPLATED, "bore_kind": "iron"}, "NOT plated: iron cylinder; to be plated."),
    (2, {**SLEEVED, "bore_kind": "plated_aluminium"}, "cut away for the sleeve"),
    (2, {**SLEEVED, "bore_kind": "bare_silicon_aluminium"}, "cut away for the sleeve"),
    (2, HEAD, "Not applicable: only the head is sent."),
    (
        3,
        {**BORED, "piston_mark": "2"},
        "Piston 2, sent with the cylinder, measured 68.461 mm at 20",
    ),
    (3, {**BORED, "inches_too": True}, "68.461 mm (2.69531 in) at 20 °C, 90° to the pin"),
    (3, HONED, "NOT STATED: piston sent with the cylinder, its mark and measured size."),
    (4, BORED, "Finish bore 68.491 to 68.501 mm at 20 °C."),
    (4, {**BORED, "inches_too": True}, "68.491 to 68.501 mm (2.69650 to 2.69689 in) at 20 °C"),
    (4, HONED, "NOT STATED: finish bore as two limits"),
    (4, {**REPLATED, **PISTON, "replate_to": "standard size"}, "plating to standard size"),
    (5, BORED, "Piston clearance must come out at 0.030 to 0.040 mm, on the diameter."),
    (5, HONED, "NOT STATED: clearance of the piston wanted"),
    (6, BORED, "Bore to 68.436 mm, then hone 0.060 mm on the diameter"),
    (6, {**BORED, "hone_stock_mm": None}, "shops leave 0.050 to 0.100 mm (common practice)"),
    (6, HONED, "No boring: hone to the limits of point 4."),
    (3, LIGHT, "Not applicable: the bore keeps its size."),
    (4, LIGHT, "take 0.010 mm off the diameter and no more (common practice)"),
    (4, {**LIGHT, "hone_removal_mm": 0.015}, "take 0.015 mm off the diameter and no more."),
    (5, LIGHT, "Not applicable: the bore keeps its size."),
    (6, LIGHT, "No boring: even strokes over the whole bore"),
    (7, LIGHT, "Left as it is: do not true the bore up with the hone."),
    (12, LIGHT, "Leave both mouths as they are; do not touch the deck face."),
    (15, LIGHT, "If glaze, a score or a ridge is left after that, stop and call."),
    (6, REPLATED, "plating maker's method, NO common stones"),
    (6, SLEEVED, "0.100 mm interference on the diameter at 20 °C; heat the cylinder to 110 °C"),
    (6, {**SLEEVED, **PISTON}, "only then bore the sleeve to 68.436 mm, then hone 0.060 mm"),
    (6, {**SLEEVED, "hone_stock_mm": 0.06}, "NOT STATED: diameter to bore to"),
    (6, {**SLEEVED, "drop_in_clearance_mm": 0.05}, "0.050 mm of room as it drops in"),
    (7, BORED, "Out-of-round at most 0.010 mm (common practice); taper at most 0.010 mm (common"),
    (7, {**BORED, "out_of_round_max_mm": 0.005}, "Out-of-round at most 0.005 mm; taper at most"),
    (7, BORED, "each as a difference of two diameters. NOT STATED: depths from the deck"),
    (7, {**BORED, "proof_depths_mm": (8.0, 85.0)}, "both axes at 8.0 mm and 85.0 mm from the deck"),
    (8, {**BORED, "boring_centre": "unworn_bottom"}, "Centred on the unworn bottom of the bore."),
    (8, {**BORED, "boring_centre": "true_up"}, "Centred true up"),
    (8, BORED, "NOT STATED: what boring is centred on."),
    (8, HONED, "Not applicable: no boring."),
    (9, {**BORED, "included_angle_deg": 45.0}, "angle 45°, each line 22.5° from horizontal;"),
    (
        9,
        {**BORED, "cycle": "four_stroke"},
        "30° to 60°, each line 15° to 30° from horizontal (common",
    ),
    (9, TWO_STROKE, "40° to 60°, each line 20° to 30° from horizontal (common practice)"),
    (9, BORED, "Write down how the stroke is driven"),
    (9, {**BORED, "stroke_drive": "crank"}, "Stroke: driven by a crank"),
    (
        9,
        {**BORED, "ring_kind": "coated"},
        "Rpk at most 0.3 µm, Rk 0.5 to 1.1 µm, Rvk 0.8 to 1.8 µm",
    ),
    (9, {**BORED, "finish": "Ra 0.3 µm"}, "surface Ra 0.3 µm. NOT STATED: included"),
    (9, REPLATED, "Surface finished by the plating maker's method."),
    (10, BORED, "NOT STATED: torque plate, yes or no; cold or hot while it is honed."),
    (10, {**BORED, "torque_plate": False, "honed": "cold"}, "Torque plate: NO; honed cold"),
    (10, {**BORED, "torque_plate": True, "torque_nm": 24.0}, "Torque plate: YES; torque 24.0 N·m"),
    (10, {**BORED, "torque_plate": True}, "kind of head gasket; torque of the studs; size of the"),
    (11, {**BORED, "cycle": "four_stroke"}, "Not applicable: four-stroke."),
    (11, BORED, "NOT STATED: four-stroke or two-stroke"),
    (11, TWO_STROKE, "0.300 to 0.500 mm wide at 30° to 45° to the wall (common practice)"),
    (11, TWO_STROKE, "bridge, if there is one, by 0.030 to 0.080 mm (common practice)"),
    (11, {**TWO_STROKE, "exhaust_bridge": False}, "no exhaust bridge; deburr the lands"),
    (11, {**TWO_STROKE, "exhaust_bridge": True}, "relieve the exhaust bridge by 0.030"),
    (
        11,
        {**TWO_STROKE, "port_chamfer_low_mm": 0.4, "port_chamfer_angle_deg": 45.0},
        "at least 0.400 mm wide at 45° to the wall;",
    ),
    (12, BORED, "0.500 to 1.000 mm wide at 30° to the wall (common practice); do not touch"),
    (12, {**BORED, "deck_height_mm": 92.4}, "the deck face, its height stays 92.400 mm."),
    (
        12,
        {**BORED, "deck_height_mm": 92.4, "deck_cut_mm": 0.1},
        "Take 0.100 mm off".lower()
        + " the deck face, no more: deck height 92.400 mm before, 92.300",
    ),
    (12, {**BORED, "mouth_chamfer_low_mm": 0.5}, "at least 0.500 mm wide at 30° (common practice)"),
    (13, BORED, "Hot water and soap, brush, oil, bag; no hone grit left."),
    (13, HEAD, "no grit left in guides and oil ways"),
    (14, {**BORED, "proof_depths_mm": (8.0,)}, "readings on both axes at 8.0 mm from the deck"),
    (14, BORED, "instrument, setting ring or micrometer used, and name. NOT STATED: depths"),
    (14, REPLATED, "proven by eddy-current probe or ball micrometer at the ports and mid-bore"),
    (14, HEAD, "Every figure of point 16 as measured"),
    (15, BORED, "If it does not clean up at 68.436 mm, stop and call. NOT STATED: wall"),
    (15, {**BORED, "wall_floor_mm": 2.0}, "if the wall is under 2.000 mm, stop and call."),
    (15, {**BORED, "liner_kind": "dry"}, "under 1.500 mm (common practice), stop and call"),
    (15, {**HONED, **PISTON}, "If it does not clean up at 68.501 mm, stop and call."),
    (15, HONED, "NOT STATED: size at which it must clean up."),
    (15, REPLATED, "if the plating does not hold, stop and call"),
    (15, SLEEVED, "If the cylinder is cracked or cannot hold the interference, stop and call"),
    (15, HEAD, "If a limit of point 16 cannot be kept, stop and call."),
    (16, BORED, "Not applicable: no head sent."),
    (16, HEAD, "NOT STATED: what is ordered of the head: give the section heads."),
    (16, {**HEAD, "heads": Heads(seat_angle_deg=45.0)}, "Valve seats 45°. NOT STATED: intake seat"),
    (16, {**HEAD, "heads": Heads(valve_to_piston_checked=True)}, "clearance checked: YES"),
    (17, {**BORED, "price_limit": 180.0, "currency": "EUR"}, "Price limit 180.00 EUR."),
    (17, {**BORED, "price_limit": 180.0}, "NOT STATED: price limit and its currency"),
    (17, {**BORED, "approver": "the foreman"}, "Changes approved by the foreman."),
]


@pytest.mark.parametrize(("point", "inputs", "words"), POINTS)
def test_a_point_says(point: int, inputs: dict[str, Any], words: str) -> None:
    assert words in lines_of(inputs)[point].text


def test_each_point_is_met() -> None:
    assert {point for point, _, _ in POINTS} == set(range(1, 18))


PAIR = {"low_mm": 0.05, "high_mm": 0.04}
REFUSED: list[tuple[dict[str, Any], str]] = [
    ({**BORED, "bore_kind": "plated_aluminium"}, "never sent for boring, nor honed with ordinary"),
    ({**BORED, "bore_kind": "chromed"}, "a chromed bore is never sent for boring"),
    ({**BORED, "bore_kind": "bare_silicon_aluminium"}, "bare silicon bore is never sent for plain"),
    ({**HONED, "bore_kind": "plated_aluminium"}, "the surface that runs would be cut away"),
    ({**BORED, "bore_kind": "unknown"}, "while the kind of bore is not known.*magnet"),
    ({**REPLATED, "bore_kind": "unknown"}, "while the kind of bore is not known"),
    ({**BORED, "piston_size_mm": None}, "boring is ordered without the piston as measured"),
    ({**BORED, "clearance_low_mm": None}, "boring is ordered without the clearance"),
    ({**BORED, "clearance_high_mm": None}, "boring is ordered without the clearance"),
    ({**SLEEVED, "interference_mm": None}, "a sleeve is ordered without its interference"),
    ({**SLEEVED, "heat_c": None}, "a sleeve is ordered without the heat"),
    ({**HONED, "piston_mark": "+0.50 mm"}, "the mark of a piston is given without its size"),
    ({**BORED, "clearance_low_mm": 0.05}, "the clearance is no two limits"),
    ({**BORED, "clearance_low_mm": 0.0395}, "the clearance is no two limits"),
    ({**BORED, "gasket_bore_mm": 68.5}, "gasket's bore is not larger than the finish bore"),
    *(
        ({**BORED, **{f"{name}_{side}": mm for side, mm in PAIR.items()}}, "lower limit is above")
        for name in ("port_chamfer", "bridge_relief", "mouth_chamfer")
    ),
    *(
        (
            {**HEAD, "heads": Heads(**{f"{name}_{side}": mm for side, mm in PAIR.items()})},
            f"{name.replace('_guide', ' guide').replace('_', ' ')}.*lower limit is above",
        )
        for name in ("intake_guide", "exhaust_guide", "intake_seat_width", "exhaust_seat_width")
    ),
]


@pytest.mark.parametrize(("inputs", "why"), REFUSED)
def test_refused(inputs: dict[str, Any], why: str) -> None:
    with pytest.raises(DomainError, match=why):
        asked_for(inputs)


def test_of_a_plated_bore_no_piston_is_asked_for() -> None:
    with pytest.raises(DomainError) as refused:
        asked_for({"work": "bore_and_hone", "bore_kind": "plated_aluminium"})
    assert len(refused.value.faults) == 1


NOTICED: list[tuple[dict[str, Any], str]] = [
    (BORED, "card_not_complete"),
    ({**BORED, "gasket_bore_mm": 69.0}, "gasket_room_small"),
    ({**BORED, "interference_mm": 0.1}, "sleeve_figures_not_used"),
    ({**BORED, "heat_c": 110.0}, "sleeve_figures_not_used"),
    ({**BORED, "replate_to": "standard"}, "plating_size_not_used"),
    ({**BORED, "torque_nm": 24.0}, "torque_figures_not_used"),
    ({**BORED, "torque_nm": 24.0, "torque_plate": False}, "torque_figures_not_used"),
    ({**BORED, "cycle": "four_stroke", "port_chamfer_low_mm": 0.3}, "port_figures_not_used"),
]


@pytest.mark.parametrize(("inputs", "code"), NOTICED)
def test_warned_of(inputs: dict[str, Any], code: str) -> None:
    assert code in {warned.code for warned in asked_for(inputs).warnings}


def test_what_stands_on_a_line_is_not_warned_of() -> None:
    # 69.001 - 68.501 = 0.500, twice 0.25 to the thousandth.
    sound = {**TWO_STROKE, "gasket_bore_mm": 69.001, "port_chamfer_low_mm": 0.3}
    sound |= {"torque_plate": True, "torque_nm": 24.0}
    assert {w.code for w in asked_for(sound).warnings} == {"card_not_complete"}


def test_without_common_practice_no_line_has_any() -> None:
    inputs = {**TWO_STROKE, "ring_kind": "coated", "liner_kind": "dry", "gasket_bore_mm": 68.9}
    assert any("common practice" in line.text for line in lines_of(inputs).values())
    bare = asked_for(inputs, defaults=False)
    assert not any("common practice" in line.text for line in bare.outputs.lines)
    assert "gasket_room_small" not in {w.code for w in bare.warnings}
    unstated = {line.point for line in bare.outputs.lines if not line.stated}
    assert {7, 9, 11, 12, 15} <= unstated


@settings(max_examples=150, deadline=None)
@given(cards())
def test_every_card_keeps_the_rules_of_the_trade(card: tuple[dict[str, Any], Response]) -> None:
    inputs, found = card
    outputs = found.outputs
    assert [line.point for line in outputs.lines] == list(range(1, 18))
    assert all(line.text.endswith(".") for line in outputs.lines)
    assert not any("±" in line.text for line in outputs.lines)
    assert all(line.stated == ("NOT STATED" not in line.text) for line in outputs.lines)
    assert (outputs.complete == "complete") == (outputs.still_to_fill is None)
    if outputs.finish_low_mm is not None:
        assert outputs.finish_low_mm - inputs["piston_size_mm"] == pytest.approx(
            inputs["clearance_low_mm"], abs=1e-9
        )
        limits = f"{outputs.finish_low_mm:.3f} to {outputs.finish_high_mm:.3f} mm"
        assert limits in outputs.lines[3].text
    if outputs.bore_to_mm is not None:
        assert outputs.bore_to_mm < outputs.finish_high_mm
        assert f"{outputs.bore_to_mm:.3f} mm" in outputs.lines[5].text


@settings(max_examples=100, deadline=None)
@given(cards())
def test_no_bore_that_must_not_be_bored_is_ordered_bored(
    card: tuple[dict[str, Any], Response],
) -> None:
    inputs, found = card
    if inputs["bore_kind"] in ("plated_aluminium", "chromed", "bare_silicon_aluminium"):
        boring = found.outputs.lines[5].text.lower()
        ordered = re.search(r"\bbore to\b|\bhone\b", boring)
        assert inputs["work"] in ("sleeve", "replate", "heads_only")
        assert ordered is None or inputs["work"] == "sleeve"
