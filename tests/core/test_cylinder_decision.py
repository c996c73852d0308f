"""The decision for a cylinder: one case a branch, one an edge between branches, worked by hand.

The order of ways and their conditions: common practice, no source.
"""

import dataclasses
from typing import Any

import pytest
from cylinders import (
    HEALTHY,
    LIGHT,
    ON_THE_SHELF,
    OVERSIZES,
    PLATED,
    Score,
    asked,
    decided,
    wants,
    way,
)

from ringland_service.core.metrology.limits import Limit

OUT = {**HEALTHY, "pistons_stay_in": False}
WORN = dataclasses.replace(LIGHT, thrust_axis_mm=(60.060, 60.030, 60.012))
# Taper 0.048 against 0.030: new rings fall out. Clean-up 60.060 with even wear.
TO_BE_BORED = {**OUT, **ON_THE_SHELF, "survey": WORN}


def decision(base: dict[str, Any], **changed: Any) -> str:
    return str(decided(asked(base, **changed)).decision)


# --- branches ---------------------------------------------------------------------------------


def test_all_pass_and_pistons_stay_in_leaves_it_alone() -> None:
    found = asked(HEALTHY)
    assert decided(found).decision == "leave_alone"
    assert decided(found).work is None
    assert {row.standing for row in decided(found).ways} >= {"taken", "possible"}


def test_piston_out_and_all_pass_hones_and_rerings() -> None:
    found = asked(OUT)
    assert decided(found).decision == "hone_and_rering"
    assert decided(found).work == "light_hone"
    assert "rings that were out are not put back" in way(found, "leave_alone").reasons[0]


def test_too_much_taper_is_bored_to_the_smallest_oversize() -> None:
    found = asked(TO_BE_BORED)
    assert decided(found).decision == "overbore"
    assert decided(found).reason == "piston +0.25 mm is the smallest that cleans up 60.060 mm"
    assert decided(found).work == "bore_and_hone"
    order = found.parts["bore_order"].outputs
    assert (order.finish_low_mm, order.finish_high_mm) == pytest.approx((60.245, 60.255))
    taper = "thrust-axis taper of a bore to be kept, difference of two diameters: 0.048 mm"
    assert any(reason.startswith(taper) for reason in way(found, "hone_and_rering").reasons)


def test_no_oversize_left_is_sleeved() -> None:
    # A score of 0.30 on even wear at 60.060: 60.010 + 2 (0.5 x 0.050 + 0.30) = 60.660, over 60.440.
    deep = (Score(local_mm=60.060, depth_radial_mm=0.30),)
    found = asked(TO_BE_BORED, scores=deep, surface="scored")
    assert decided(found).decision == "sleeve"
    assert way(found, "overbore").reasons == ("no piston on offer cleans up 60.660 mm",)


@pytest.mark.parametrize(
    ("base", "damage", "expected"),
    [
        (HEALTHY, "crack", "replace"),
        (HEALTHY, "pulled_stud_boss", "replace"),
        (PLATED, "port_bridge_broken", "replace"),
        (PLATED, "plating_flaked", "replate"),
        ({**PLATED, "bore_kind": "bare_silicon_aluminium"}, "plating_flaked", "sleeve"),
    ],
)
def test_fatal_damage_stops_everything_else(
    base: dict[str, Any], damage: str, expected: str
) -> None:
    found = asked(base, damage=damage)
    assert decided(found).decision == expected
    for name in ("leave_alone", "overbore"):
        assert way(found, name).standing == "falls_out"


def test_fatal_damage_needs_no_survey() -> None:
    found = asked({"bore_kind": "iron", "damage": "hole"})
    assert decided(found).decision == "replace"


def test_unknown_bore_gets_no_machining_decision() -> None:
    found = asked({**TO_BE_BORED, "bore_kind": "unknown"})
    assert decided(found).decision == "find_out"
    assert decided(found).work is None
    assert "magnet" in decided(found).reason
    assert not {"clean_up", "oversize_choice", "bore_order"} & set(found.parts)
    assert {row.standing for row in decided(found).ways} == {"open"}
    assert wants(found) == {"bore_kind"}


def test_plated_bore_takes_the_piston_that_fits() -> None:
    # Bore 60.010 to 60.020: A 0.070 and 0.080, B 0.060 and 0.070, C 0.050 and 0.060; of B
    # (margins 0.012, 0.002) and C (0.002, 0.012) the first of equals; A is too loose.
    found = asked(PLATED)
    assert decided(found).decision == "select_piston"
    assert found.parts["piston_selection"].outputs.best == "B"
    assert decided(found).work is None


@pytest.mark.parametrize("kind", ["plated_aluminium", "chromed", "bare_silicon_aluminium"])
def test_hard_bores_are_never_sent_for_boring(kind: str) -> None:
    found = asked({**TO_BE_BORED, "bore_kind": kind, "cycle": "two_stroke"})
    assert way(found, "overbore").standing == "falls_out"
    assert "never sent" in way(found, "overbore").reasons[0]
    assert "ways on" in way(found, "overbore").reasons[0]
    assert not {"clean_up", "oversize_choice", "bore_order"} & set(found.parts)
    assert decided(found).work != "bore_and_hone"
    assert any("hone it" in text for text in decided(found).must_not)


def test_plated_bore_with_worn_rings_is_deglazed_without_stones() -> None:
    # The old piston at 59.950 leaves 0.070, well under 0.100: only rings are to be changed.
    found = asked({**PLATED, "piston_mm": 59.950, "pistons_stay_in": False})
    assert decided(found).decision == "deglaze_and_rering"
    assert decided(found).work is None
    assert found.parts["hone_and_rering"].outputs.hone_removal_used_mm == 0.0


def test_plated_bore_without_a_fitting_piston_is_plated_again() -> None:
    found = asked(PLATED, clearance_low_mm=0.090, clearance_high_mm=0.100)
    assert decided(found).decision == "replate"
    assert decided(found).work == "replate"
    assert way(found, "sleeve").standing == "possible"


# --- edges ------------------------------------------------------------------------------------


def test_edge_bore_exactly_on_its_limit_stays() -> None:
    on = dataclasses.replace(LIGHT, thrust_axis_mm=(60.020, 60.016, 60.012))
    assert decision(HEALTHY, survey=on, limits={"bore_max": Limit(None, 60.020)}) == "leave_alone"
    over = {"bore_max": Limit(None, 60.0199)}
    assert decision({**HEALTHY, **ON_THE_SHELF}, limits=over) == "overbore"


def test_edge_hone_takes_the_bore_over_its_limit() -> None:
    # 60.020 passes 60.030 as it is, and 60.020 + 0.010 stands exactly on it: equality accepts.
    at = {"bore_max": Limit(None, 60.030)}
    assert decision(OUT, limits=at) == "hone_and_rering"
    assert decision({**OUT, **ON_THE_SHELF}, limits=at, hone_removal_mm=0.0101) == "overbore"


def test_edge_too_close_to_call_is_open_for_leaving_and_falls_out_for_new_rings() -> None:
    # 60.020 ± 0.007 against 60.025 is too close; 60.030 after the hone is over it.
    doubt = {"survey.pin_axis_mm": 0.007, "survey.thrust_axis_mm": 0.007}
    found = asked(HEALTHY, doubts=doubt, limits={"bore_max": Limit(None, 60.025)})
    assert decided(found).decision == "not_settled"
    assert way(found, "leave_alone").standing == "open"
    assert "too close to call" in way(found, "leave_alone").reasons[0]
    out = asked(OUT, doubts=doubt, limits={"bore_max": Limit(None, 60.036)})
    row = way(out, "hone_and_rering")
    assert row.standing == "falls_out"
    assert "too close to call, counts as fail" in row.reasons[0]


def test_re_measuring_is_asked_for_where_doubt_alone_breaks_new_rings() -> None:
    doubt = {"survey.pin_axis_mm": 0.007, "survey.thrust_axis_mm": 0.007}
    found = asked(OUT, doubts=doubt, limits={"bore_max": Limit(None, 60.036)})
    advice = [one.advice for one in found.open if one.why.startswith("re-measure")]
    assert advice
    assert "five readings" in advice[0]


@pytest.mark.parametrize(
    ("changed", "expected"),
    [
        ({"surface": "glazed"}, "hone_and_rering"),
        ({"old_gap_mm": 0.60}, "hone_and_rering"),
        ({"surface": "scored", "scores": (Score(local_mm=60.016, depth_radial_mm=0.005),)}, None),
        ({"surface": "scored", "scores": (Score(local_mm=60.016, depth_radial_mm=0.006),)}, 0),
    ],
)
def test_edge_from_leaving_to_new_rings(changed: dict[str, Any], expected: Any) -> None:
    # A score may be half of the hone's 0.010 deep on the radius, 0.005, and no deeper.
    wanted = {None: "hone_and_rering", 0: "overbore"}.get(expected, expected)
    assert decision({**HEALTHY, **ON_THE_SHELF}, **changed) == wanted


@pytest.mark.parametrize(
    "changed",
    [
        {"top_feeler_mm": 0.11},
        {"piston_pin_bore_mm": 15.050},
        {"rering_gap_mm": 0.45},
        {"piston_mm": 59.905},
    ],
    ids=["groove", "pin", "ring gap", "clearance"],
)
def test_edge_from_new_rings_to_boring(changed: dict[str, Any]) -> None:
    # Ring: 0.45 + pi (60.017 + 0.010 - 60) = 0.535 over 0.500; clearance 60.020 + 0.010 - 59.905 =
    # 0.125 over 0.100; pin 0.050 over 0.040; groove 0.11 over 0.10.
    assert decision({**OUT, **ON_THE_SHELF}, **changed) == "overbore"


@pytest.mark.parametrize(
    ("depth", "expected"),
    [(0.065, "+0.25 mm"), (0.0651, "+0.50 mm"), (0.190, "+0.50 mm"), (0.1901, None)],
)
def test_edge_the_clean_up_diameter_meets_bore_to(depth: float, expected: str | None) -> None:
    # Even wear: 60.010 + 2 (0.5 x 0.050 + depth) = 60.190 at 0.065, and 60.440 at 0.190.
    scores = (Score(local_mm=60.060, depth_radial_mm=depth),)
    found = asked(TO_BE_BORED, scores=scores, surface="scored")
    assert found.parts["oversize_choice"].outputs.chosen == expected
    if expected is None:
        # Within the hone's stock of 60.500: the machinist is asked, nothing is decided.
        assert decided(found).decision == "not_settled"
        assert "at the hone" in decided(found).reason
    else:
        assert decided(found).decision == "overbore"


def test_edge_from_boring_to_a_sleeve_by_the_wall() -> None:
    # (OD - 60.255) / 2 = 2.000 at 64.255.
    assert decision(TO_BE_BORED, liner_od_mm=64.255) == "overbore"
    assert decision(TO_BE_BORED, liner_od_mm=64.254) == "sleeve"


def test_edge_from_boring_to_a_sleeve_by_the_class() -> None:
    # The bore may come out at 60.255: pi/4 60.255² x 50 = 142.57588 cc. In the middle of the finish
    # zone, at 60.250, it would be 142.55222 cc, which 142.56 cc would let pass.
    assert decision(TO_BE_BORED, class_limit_cc=142.576) == "overbore"
    assert decision(TO_BE_BORED, class_limit_cc=142.56) == "sleeve"


def test_edge_from_boring_to_a_sleeve_by_the_gasket() -> None:
    # The upper finish limit is 60.255.
    assert decision(TO_BE_BORED, gasket_bore_mm=60.256) == "overbore"
    found = asked(TO_BE_BORED, gasket_bore_mm=60.255)
    assert decided(found).decision == "sleeve"
    assert "larger bore" in way(found, "overbore").reasons[0]


def test_edge_between_pistons_of_a_plated_bore_in_doubt() -> None:
    # B: 0.070 + U over 0.072 with U 0.003: too close to call, and C alike: not settled.
    doubt = {"survey.pin_axis_mm": 0.003, "survey.thrust_axis_mm": 0.003}
    found = asked(PLATED, doubts=doubt)
    assert decided(found).decision == "not_settled"
    of = {v.of: v.word for v in found.verdicts if v.check.name == "selected_piston_max"}
    assert of == {"A": "fail", "B": "too_close_to_call", "C": "pass"}


def test_oversizes_in_one_engine_leave_room_for_the_next() -> None:
    found = asked(TO_BE_BORED, pistons=OVERSIZES[:1])
    codes = {warned.code for warned in found.warnings}
    assert "no_larger_size" in codes


# --- what is asked for ------------------------------------------------------------------------


def test_what_is_missing_is_asked_for_and_settles_it() -> None:
    found = asked(HEALTHY, surface=None, pistons_stay_in=None)
    assert decided(found).decision == "not_settled"
    assert wants(found) == {"surface", "pistons_stay_in"}
    assert decision(HEALTHY) == "leave_alone"


def test_nothing_is_asked_for_ways_that_fall_out() -> None:
    found = asked(TO_BE_BORED, ridge=None, top_feeler_mm=None, pin_mm=None, rering_gap_mm=None)
    assert decided(found).decision == "overbore"
    assert wants(found) == set()


def test_boring_without_pistons_is_open_and_asks_for_them() -> None:
    found = asked({**OUT, "survey": WORN})
    assert decided(found).decision == "not_settled"
    assert "may be: bore to an oversize piston" in decided(found).reason
    assert wants(found) == {"pistons", "clearance_low_mm", "clearance_high_mm", "hone_stock_mm"}


def test_an_unknown_wall_does_not_stop_the_order_and_is_asked_for() -> None:
    found = asked(TO_BE_BORED, liner_od_mm=None)
    assert decided(found).decision == "overbore"
    assert wants(found) == {"liner_od_mm", "liner_kind"}


def test_damage_not_told_is_taken_as_none_and_says_so() -> None:
    found = asked(TO_BE_BORED, damage=None)
    assert decided(found).decision == "overbore"
    assert "damage_not_told" in {warned.code for warned in found.warnings}
    assert "damage" in wants(found)
