"""The check of a written card: each objection, what must not be taken for one, any text at all."""

from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from order_cards import cards

from ringland_service.core.calculations.order_card import order_card_check
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.question import Question
from ringland_service.engine.scalar import answer

CHECK = order_card_check.CALCULATION
SOUND = (
    "Iron sleeve, NOT plated. Piston 68.461 mm. Bore to 68.436 mm, finish bore 68.491 to 68.501 mm,"
    " clearance 0.030 to 0.040 mm. If it does not clean up at 68.436 mm, stop and call."
)


def read(written: str, **known: Any) -> Answer:
    return answer(CHECK, Question(inputs=CHECK.inputs(written=written, **known)))


def objected(written: str, **known: Any) -> dict[str, Any]:
    """Return the objections to a card by code."""
    return {one.code: one for one in read(written, **known).outputs.objections}


# Common practice, no source: what a machinist would ask back about.
REFUSED = [
    ("Plated. Rebore to 56.25 mm", "plated_and_bored"),
    ("PLATED CYLINDER - BORE TO 56.25 MM", "plated_and_bored"),
    ("Plated bore: bore and hone", "plated_and_bored"),
    ("The plating is worn, please bore it out", "plated_and_bored"),
    ("Hard-chromed barrel, overbore 0.25 mm", "plated_and_bored"),
    ("Bare silicon aluminium. Boring and honing", "plated_and_bored"),
    ("Plated? Yes. Finish bore to 56.25 mm", "plated_and_bored"),
    ("Plated. Hone 0.02 mm", "plated_and_bored"),
    ("Not chromed but plated; bore it", "plated_and_bored"),
    ("Bore to 68.436 mm", "kind_of_bore_left_out"),
    ("Kind of bore: unknown. Rebore", "kind_of_bore_left_out"),
    ("Plated: ? Rebore please", "kind_of_bore_left_out"),
    ("For plain iron rings. Hone at 45° included", "kind_of_bore_left_out"),
    ("Iron. Bore to 68.436", "unit_missing"),
    ("Iron. Bore to 68", "unit_missing"),
    ("Iron. Finish 68.491 to 68.501", "unit_missing"),
    ("Iron. Hone 0.06 on the diameter", "unit_missing"),
    ("Iron. .020 over", "unit_missing"),
    ("Iron. Finish 68.496 ± 0.005 mm", "plus_minus"),
    ("Iron. Finish 68.496 +/- 0.005 mm", "plus_minus"),
    ("Iron. Finish 68.496 +- .005 mm", "plus_minus"),
    ("Iron. Finish 68.491 +0.010/-0 mm", "plus_minus"),
    ("Iron. Bore to +0.50 mm", "oversize_without_piston"),
    ("Iron. Bore 0.020 in over", "oversize_without_piston"),
    ("Iron. Bore to first oversize", "oversize_without_piston"),
    ("Iron. Rebore, 2nd oversize", "oversize_without_piston"),
    ("Iron. Rebore +20", "oversize_without_piston"),
    ("Iron. Rebore to 0.5mm o/s", "oversize_without_piston"),
    ("Iron. Fit a new sleeve and bore it", "sleeve_without_fit"),
    ("Press in a sleeve, interference 0.1 mm", "sleeve_without_fit"),
    ("Re-sleeve the cylinder, heat to 110 °C", "sleeve_without_fit"),
]
WARNED = [
    (SOUND.replace("68.491 to 68.501", "68.511 to 68.521"), "clearance_does_not_follow"),
    (SOUND.replace("0.030 to 0.040", "0.040 to 0.050"), "clearance_does_not_follow"),
    ("Iron. Rebore to suit piston", "finish_limits_missing"),
    ("Iron. Finish bore 2.6965 to 2.6969 in", "inch_without_mm"),
    ("Iron. Leave 2 thou", "inch_without_mm"),
    ('Iron. Finish bore 2.6965" (68.2 mm)', "inch_without_mm"),
    ("Iron. Piston 68,461 mm", "decimal_comma"),
    ("Iron. Crosshatch 45°", "angle_not_told"),
    ("Iron. Hone at 45 degrees", "angle_not_told"),
    ("Iron. Rebore. Piston 68.461 mm", "no_stop_order"),
    ("NOT STATED: date.", "not_stated"),
]


@pytest.mark.parametrize(("written", "code"), REFUSED)
def test_refused(written: str, code: str) -> None:
    found = objected(written)
    assert found[code].severity == "refuse"
    assert found[code].found.split(" … ")[0] in " ".join(written.split())
    assert found[code].why
    assert found[code].right
    assert read(written).outputs.usable == "must_not_go_out"


@pytest.mark.parametrize(("written", "code"), WARNED)
def test_warned_of(written: str, code: str) -> None:
    found = objected(written)
    assert found[code].severity == "warn"
    assert all(one.severity == "warn" for one in found.values()) == (
        read(written).outputs.usable == "may_go_out"
    )


def test_a_sound_card_meets_no_objection() -> None:
    assert objected(SOUND) == {}
    assert read(SOUND).outputs.usable == "may_go_out"


ALL_CODES = {code for _, code in (*REFUSED, *WARNED)}
# Words that say the contrary, and numbers that are no sizes.
NOT_TAKEN = [
    ("NOT plated, iron. Bore to 68.436 mm", "plated_and_bored"),
    ("Plated: no. Iron. Bore to 68.436 mm", "plated_and_bored"),
    ("Plated yes/no: no. Bore to 68.436 mm", "plated_and_bored"),
    ("Unplated. Rebore", "plated_and_bored"),
    ("Non-plated iron bore. Rebore", "plated_and_bored"),
    ("Iron, no chromed rings. Rebore", "plated_and_bored"),
    ("Iron, chrome rings. Rebore", "plated_and_bored"),
    ("PLATED: do not bore, do not hone with common stones", "plated_and_bored"),
    ("Plated, never to be bored or honed", "plated_and_bored"),
    ("Plated. Boring: no", "plated_and_bored"),
    ("Plated: replate, finish by the plating maker's method, hone by them", "plated_and_bored"),
    ("Plated; fit an iron sleeve, then bore it", "plated_and_bored"),
    ("Plated. Send the bore readings back, mid-bore too", "plated_and_bored"),
    ("Plated. Finish bore 56.008 to 56.026 mm", "plated_and_bored"),
    ("Not plated. Bore to 68.436 mm", "kind_of_bore_left_out"),
    ("Cast iron. Rebore", "kind_of_bore_left_out"),
    ("Depths 8.0, 25.0 and 85.0 mm", "unit_missing"),
    ("Finish 68.491–68.501 mm, date 12.03.2026, M8 × 1.25, premix 32:1", "unit_missing"),
    ("Price limit 180.00 EUR, €95.50, budget 99.90", "unit_missing"),
    ("Job no. 26.014; 24.0 N·m; 45.5°; 20.5 °C; 1.5 h; 2.5 %", "unit_missing"),
    ('68.491mm, 2.6965", 0.5\N{NO-BREAK SPACE}mm', "unit_missing"),
    ("1. Iron\n2. Rebore", "unit_missing"),
    ("At 20 ± 1 °C, 45° ± 5°", "plus_minus"),
    ("Piston 68.461 mm, marked +0.50 mm, second oversize", "oversize_without_piston"),
    ("Phone +49 30 1234 or +1 555 0100", "oversize_without_piston"),
    ("Never an oversize", "oversize_without_piston"),
    (
        "Fit an iron sleeve with 0.100 mm interference, heat the cylinder to 110 °C",
        "sleeve_without_fit",
    ),
    ("Iron sleeve in an aluminium cylinder. Rebore", "sleeve_without_fit"),
    ("No new sleeve. Rebore", "sleeve_without_fit"),
    (SOUND.replace("68.491 to", "68.492 to"), "clearance_does_not_follow"),
    ("Rebore. Intake guide clearance 0.010 to 0.037 mm", "clearance_does_not_follow"),
    ("Rebore. Lower limit 68.491 mm, upper limit 68.501 mm", "finish_limits_missing"),
    ("Finish 68.491 mm (2.69650 in)", "inch_without_mm"),
    ("0.5 mm in the middle", "inch_without_mm"),
    ("Depths 8, 25, 45 mm; 8,25,45 mm", "decimal_comma"),
    ("Crosshatch, included angle 45°", "angle_not_told"),
    ("Crosshatch 22.5° from horizontal", "angle_not_told"),
    ("Chamfer at 30°, heat to 110 °C, crosshatch as usual", "angle_not_told"),
    ("Rebore. Call us before the next cut", "no_stop_order"),
    ("Clean it", "no_stop_order"),
]


@pytest.mark.parametrize(("written", "code"), NOT_TAKEN)
def test_not_taken_for_one(written: str, code: str) -> None:
    assert code in ALL_CODES
    assert code not in objected(written)


def test_what_is_known_besides_the_card_counts() -> None:
    plated = objected("Iron. Rebore", bore_kind="plated_aluminium")
    assert plated["plated_and_bored"].severity == "refuse"
    assert "kind_of_bore_left_out" not in objected("Rebore", bore_kind="iron")
    assert "kind_of_bore_left_out" in objected("Rebore", bore_kind="unknown")
    assert "not_the_known_piston" in objected("Iron. Piston 68.461 mm", piston_mm=68.451)
    assert "not_the_known_piston" not in objected("Iron. Piston 68.461 mm", piston_mm=68.461)
    assert (
        "68.461 mm"
        in objected("Rebore +0.50 mm", piston_mm=68.461)["oversize_without_piston"].right
    )


def test_limits_are_compared_with_what_is_known() -> None:
    # 68.491 - 68.461 = 0.030, and 0.050 is wanted.
    known = {"piston_mm": 68.461, "clearance_low_mm": 0.05, "clearance_high_mm": 0.06}
    wrong = objected("Iron. Finish bore 68.491 to 68.501 mm", **known)["clearance_does_not_follow"]
    assert wrong.why.startswith("they give a clearance of 0.030 to 0.040 mm")
    assert "68.511 to 68.521 mm" in wrong.right
    known |= {"clearance_low_mm": 0.03, "clearance_high_mm": 0.04}
    assert "clearance_does_not_follow" not in objected("Finish 68.491 to 68.501 mm", **known)


def test_each_kind_has_its_own_way_out() -> None:
    right = {
        words: objected(f"{words}. Rebore")["plated_and_bored"].right
        for words in ("Plated", "Chromed bore", "Bare silicon")
    }
    assert "no chromed rings" in right["Chromed bore"]
    assert "special lapping" in right["Bare silicon"]
    assert len(set(right.values())) == 3


@pytest.mark.parametrize("written", ["", "   ", "\n\t\n"])
def test_an_empty_card_is_refused(written: str) -> None:
    with pytest.raises(Refused, match="nothing is written"):
        read(written)


def test_a_clearance_the_wrong_way_round_is_refused() -> None:
    with pytest.raises(Refused, match="least clearance is not under"):
        read(SOUND, clearance_low_mm=0.04, clearance_high_mm=0.03)


def test_a_card_without_work_says_so() -> None:
    assert {w.code for w in read("Clean it").warnings} == {"no_work_read"}
    assert not read(SOUND).warnings


WORDS = st.sampled_from(
    [
        "bore", "hone", "plated", "NOT", "no", "do not", "sleeve", "interference", "piston", "±",
        "+", "68.491", "68,501", ".020", "mm", "in", '"', "°", "to", "–", "over", "oversize",
        "clearance", "finish", "stop and call", "crosshatch", "included", ":", ";", ".", "\n", "Ø",
    ]
)  # fmt: skip
SOUP = st.lists(WORDS, max_size=120).map(" ".join)


@settings(max_examples=300, deadline=None)
@given((SOUP | st.text(max_size=4000)).filter(str.strip))
@example("+" * 4000)
@example("1,1" * 1300)
@example("piston 68.461 mm " * 230)
@example("not " * 1000)
@example("0.1in " * 660)
@example("İ½①٣" * 900)
def test_any_text_is_read_and_read_alike(written: str) -> None:
    found = read(written).outputs
    assert found == read(written).outputs
    codes = [one.code for one in found.objections]
    assert len(codes) == len(set(codes))
    refusals = [one.severity == "refuse" for one in found.objections]
    assert refusals == sorted(refusals, reverse=True)
    assert (found.usable == "must_not_go_out") == any(refusals)


@settings(max_examples=200, deadline=None)
@given(cards(), st.sampled_from(["\n", " "]))
def test_a_card_of_our_own_passes_its_check(
    card: tuple[dict[str, Any], Answer], between: str
) -> None:
    inputs, printed = card
    written = between.join(line.text for line in printed.outputs.lines)
    for known in ({}, {"bore_kind": inputs["bore_kind"]}):
        objections = read(written, **known).outputs.objections
        assert not [one for one in objections if one.severity == "refuse"]
        assert "clearance_does_not_follow" not in {one.code for one in objections}


@settings(max_examples=60, deadline=None)
@given(cards())
def test_what_our_own_card_orders_is_read_off_it(card: tuple[dict[str, Any], Answer]) -> None:
    inputs, printed = card
    if printed.outputs.finish_low_mm is None:
        return
    found = read("\n".join(line.text for line in printed.outputs.lines)).outputs
    assert found.piston_read_mm == pytest.approx(inputs["piston_mm"], abs=6e-4)
    assert found.finish_low_read_mm == pytest.approx(printed.outputs.finish_low_mm, abs=6e-4)
    assert found.finish_high_read_mm == pytest.approx(printed.outputs.finish_high_mm, abs=6e-4)
    assert found.clearance_high_read_mm == pytest.approx(inputs["clearance_high_mm"], abs=6e-4)
