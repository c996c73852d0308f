"""Guides, seats, sink, springs and screws: uncertainty of the bench, what is refused, columns."""

import dataclasses
from typing import Any

import numpy as np
import pytest

from ringland_service.core.calculations.head import (
    guide_clearance,
    lash_screw,
    lash_shim,
    valve_seat,
    valve_sink,
    valve_spring,
)
from ringland_service.core.declare import Calculation
from ringland_service.core.declare.notices import CAUTIONS
from ringland_service.core.metrology.instruments import TYPICAL, Instrument
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.request import Measuring, Request, Stated
from ringland_service.engine.response import DomainError, Response
from ringland_service.engine.scalar import answer

GUIDE, SEAT, SINK = guide_clearance.CALCULATION, valve_seat.CALCULATION, valve_sink.CALCULATION
SPRING, SHIM, SCREW = valve_spring.CALCULATION, lash_shim.CALCULATION, lash_screw.CALCULATION
SIX_DIGITS = 5e-6

PAIR = {"valve_kind": "intake", "guide_bore_mm": 4.546, "stem_size_mm": 4.468}
CONTACT = {
    "valve_kind": "exhaust",
    "seat_outer_diameter_mm": 25.6,
    "seat_inner_diameter_mm": 23.3,
    "seat_angle_deg": 45.0,
}
TURN = {
    "found_mm": 0.16,
    "target_mm": 0.1,
    "screw_pitch_mm": 0.5,
    "adjuster": "screw_at_valve",
}
LOADS = {"load_1_n": 150.0, "length_1_mm": 34.0, "load_2_n": 380.0, "length_2_mm": 25.0}
STEPS = {"shim_step_mm": 0.05, "shim_thinnest_mm": 1.2, "shim_thickest_mm": 3.5}
ONE = {"shim_mm": 2.648, "found_mm": 0.06, "lash_low_mm": 0.2, "lash_high_mm": 0.3}


def ask(calculation: Calculation, inputs: dict[str, Any], **about: Any) -> Response:
    return answer(calculation, Request(inputs=calculation.inputs(**inputs), **about))


def typical(kind: str) -> Instrument:
    return Instrument(
        kind, **{k: v for k, v in TYPICAL[kind].items() if k not in ("kind", "label")}
    )


def by_instruments(uncertainties: dict[str, str], readings_each: int) -> dict[str, Any]:
    bench = {kind: typical(kind) for kind in uncertainties.values()}
    stated = {(name,): Stated(instrument=kind) for name, kind in uncertainties.items()}
    return {"uncertainties": stated, "measuring": Measuring(bench, readings_each)}


def of_table(u: float, expanded: float) -> Any:
    assert 2.0 * u == pytest.approx(expanded, rel=SIX_DIGITS)
    return pytest.approx(u, rel=SIX_DIGITS)


def test_stem_to_guide_of_the_bench_table() -> None:
    """Hole gauge ± 0.003, micrometer ± 0.002, resolution 0.001, repeat 0.001/√3.

    Source: the trade brief's table of bench uncertainty, 6 digits (common practice, no source).
    """
    bench = by_instruments(
        {"guide_bore_mm": "small_hole_gauge", "stem_size_mm": "stem_micrometer"}, 3
    )
    found = ask(GUIDE, PAIR, **bench)
    assert found.u["clearance_direct_mm"] == of_table(0.00217945, 0.0043589)
    verdict = next(v for v in found.verdicts if v.check.name == "guide_clearance")
    assert verdict.word == "too_close_to_call"
    assert verdict.judged.without == "pass"


LASH_FIELDS: list[tuple[Calculation, dict[str, Any], str]] = [
    (SCREW, TURN, "found_mm"),
    (SHIM, ONE | STEPS, "found_mm"),
]


@pytest.mark.parametrize(("calculation", "inputs", "name"), LASH_FIELDS)
def test_lash_of_the_bench_table(
    calculation: Calculation, inputs: dict[str, Any], name: str
) -> None:
    """Feel ± 0.01, leaf ± 0.005, cam off its base circle ± 0.005; same source as above."""
    found = ask(calculation, inputs, **by_instruments({name: "lash_feeler"}, 1))
    assert found.u[name] == of_table(0.00707107, 0.0141421)


def test_lash_with_a_new_shim_carries_the_feelers_uncertainty() -> None:
    """Under a bucket the lash moves one for one with the shim, so U is the feeler's."""
    found = ask(SHIM, ONE | STEPS, **by_instruments({"found_mm": "lash_feeler"}, 1))
    assert found.u["lash_after_mm"] == pytest.approx(0.00707107, rel=SIX_DIGITS)
    assert found.u["exact_shim_mm"] == pytest.approx(0.00707107, rel=SIX_DIGITS)


def test_one_micrometer_on_both_shims_cancels_in_the_lash() -> None:
    """A shared error of the micrometer drops out of old − new."""
    one = Instrument("micrometer", max_permissible_error=0.004, short_range_error=0.0)
    inputs = ONE | {"shims_mm": (2.4, 2.452, 2.5)}
    uncertainties = {(n,): Stated(instrument="micrometer") for n in ("shim_mm", "shims_mm")}
    found = ask(SHIM, inputs, uncertainties=uncertainties, measuring=Measuring({"micrometer": one}))
    assert found.u.get("lash_after_mm", 0.0) < 1e-9
    assert found.u["exact_shim_mm"] == pytest.approx(0.004 / 3**0.5, rel=1e-6)


REFUSED: list[tuple[Calculation, dict[str, Any], str]] = [
    (GUIDE, PAIR | {"stem_size_mm": 4.0}, "more than 0.5 mm apart"),
    (GUIDE, PAIR | {"guide_along_mm": (4.5, 4.5, 4.5)}, "guide is given twice"),
    (GUIDE, PAIR | {"stem_heights_mm": (4.46, 4.47)}, "stem is given twice"),
    (
        GUIDE,
        {
            "valve_kind": "intake",
            "guide_along_mm": (4.5, 4.5, 4.5),
            "guide_across_mm": (4.5, 4.5, 4.5, 4.5),
            "stem_size_mm": 4.468,
        },
        "not read at the same heights",
    ),
    (
        GUIDE,
        {
            "valve_kind": "intake",
            "guide_along_mm": (4.5, 4.46, 4.5),
            "stem_heights_mm": (4.51, 4.52),
        },
        "not smaller than its guide",
    ),
    (SEAT, CONTACT | {"seat_inner_diameter_mm": 25.6}, "not under its outer one"),
    (SEAT, CONTACT | {"seat_outer_diameter_mm": 45.0}, "more than 10 mm wide"),
    (SEAT, CONTACT | {"valve_head_diameter_mm": 25.5}, "beyond the valve head"),
    (SEAT, CONTACT | {"top_cutter_deg": 44.0}, "top cutter is not flatter"),
    (SEAT, CONTACT | {"bottom_cutter_deg": 45.0}, "bottom cutter is not steeper"),
    (SEAT, CONTACT | {"feed_mm": 0.05}, "without a cutter cuts nothing"),
    (SEAT, CONTACT | {"wanted_outer_diameter_mm": 25.0}, "takes a top cutter"),
    (SEAT, CONTACT | {"wanted_width_mm": 1.2}, "takes a bottom cutter"),
    (
        SEAT,
        CONTACT | {"wanted_outer_diameter_mm": 26.0, "top_cutter_deg": 30.0},
        "lowers the outer diameter",
    ),
    (
        SEAT,
        CONTACT | {"wanted_outer_diameter_mm": 23.2, "top_cutter_deg": 30.0},
        "leaves no contact",
    ),
    (SINK, {"sink_cut_mm": 0.1, "lash_found_mm": 0.2}, "how the lash follows the stem"),
    (
        SINK,
        {"sink_cut_mm": 0.1, "lash_target_mm": 0.2, "lash_shim_mm": 2.0},
        "the lash before the work",
    ),
    (SINK, {"sink_cut_mm": 0.1, "lash_target_mm": 0.2}, "the shim fitted"),
    (SINK, {"sink_cut_mm": 0.1, "valve_head_diameter_mm": 26.0}, "the count of valves cut"),
    (SPRING, LOADS | {"load_2_n": 150.0}, "second load is not the larger"),
    (SPRING, LOADS | {"free_length_mm": 33.9}, "not under the free length"),
    (SPRING, LOADS | {"coil_bind_length_mm": 25.1}, "with all coils shut"),
    (SPRING, {"installed_height_mm": 10.0, "valve_lift_mm": 12.0}, "lift is not under"),
    (
        SPRING,
        {"installed_height_mm": 30.0, "valve_lift_mm": 8.0, "coil_bind_length_mm": 30.0},
        "coil-bound with the valve shut",
    ),
    (SPRING, {"installed_height_mm": 34.0, "free_length_mm": 33.0}, "the spring is loose"),
    (SPRING, {"wire_mm": 6.0, "mean_coil_diameter_mm": 5.0}, "not larger than their wire"),
    (SCREW, TURN | {"adjuster": "hydraulic"}, "not set by a screw"),
    (SCREW, TURN | {"adjuster": "screw_at_cam"}, "moves the valve by the rocker's ratio"),
]


@pytest.mark.parametrize(("calculation", "inputs", "why"), REFUSED)
def test_refused(calculation: Calculation, inputs: dict[str, Any], why: str) -> None:
    with pytest.raises(DomainError, match=why):
        ask(calculation, inputs)


CUT = {"top_cutter_deg": 30.0, "bottom_cutter_deg": 60.0, "feed_mm": 0.05}
RIM = {"valve_head_diameter_mm": 29.5, "face_width_mm": 2.6, "rim_mm": 0.8}
FREE = {"free_length_mm": 39.87, "free_length_new_mm": 40.0, "lean_mm": 1.1}
LIFTED = {"installed_height_mm": 34.0, "valve_lift_mm": 8.6, "coil_bind_length_mm": 23.1}
WIRE = {
    "wire_mm": 3.3,
    "mean_coil_diameter_mm": 21.0,
    "active_coils": 5.0,
    "shear_modulus_mpa": 79500.0,
}
CHAMBER = {
    "valve_head_diameter_mm": 26.0,
    "valves_cut": 2.0,
    "clearance_cc": 31.63,
    "swept_cc": 316.66,
}
LASH = {"lash_found_mm": 0.25, "ratio_lash_per_stem_rise": 1.0, "lash_target_mm": 0.25}
SHIMMED = {"lash_shim_mm": 2.4, "thinnest_shim_mm": 1.2}
ROCK = {
    "rock_mm": 0.118,
    "guide_length_mm": 38.0,
    "rock_distance_mm": 10.0,
}
COLUMNS: list[tuple[Calculation, dict[str, Any]]] = [
    (GUIDE, PAIR | ROCK | {"stem_size_mm": 4.4}),
    (SEAT, CONTACT | CUT | RIM),
    (SEAT, CONTACT | CUT | {"wanted_outer_diameter_mm": 25.3, "wanted_width_mm": 1.2}),
    (SINK, {"sink_cut_mm": 0.18} | LASH | SHIMMED | CHAMBER),
    (SINK, {"sink_cut_mm": 0.18, "spring_rate_n_per_mm": 22.0, "seat_load_nominal_n": 140.0}),
    (SPRING, LOADS | LIFTED | FREE | WIRE | {"nominal_seat_load_n": 155.0}),
    (SCREW, TURN | {"rocker_ratio": 1.3}),
]


@pytest.mark.parametrize(("calculation", "inputs"), COLUMNS)
def test_a_column_gives_what_each_engine_gives(
    calculation: Calculation, inputs: dict[str, Any]
) -> None:
    """Verdicts and notices take a column too."""
    words = {n: v for n, v in inputs.items() if isinstance(v, str)}
    numbers = {n: v for n, v in inputs.items() if n not in words}
    rows = [{n: v * (1 + k / 500) for n, v in numbers.items()} for k in range(4)]
    columns: dict[str, Any] = {n: np.array([row[n] for row in rows]) for n in numbers}
    together = calculation.inputs(**columns, **words)
    results = calculation.compute(together)
    for k, row in enumerate(rows):
        given = calculation.inputs(**row, **words)
        alone = calculation.compute(given)
        for field in dataclasses.fields(alone):
            one, many = getattr(alone, field.name), getattr(results, field.name)
            if one is None:
                assert many is None, field.name
            elif isinstance(one, str):
                assert many[k] == one, field.name
            else:
                assert many[k] == pytest.approx(one, rel=1e-12, abs=1e-12), field.name
        for notice in calculation.notices:
            held = np.broadcast_to(notice.when(together, results), 4)[k]
            assert bool(held) == bool(notice.when(given, alone)), notice.code


def test_the_rim_of_a_column_is_judged_by_each_head() -> None:
    heads = np.array([26.0, 30.0, 34.0])
    inputs = CONTACT | {"valve_head_diameter_mm": heads, "rim_mm": np.array([0.6] * 3)}
    check = next(c for c in SEAT.checks if c.name == "valve_rim")
    assert check.default is not None
    limit = check.default(SEAT.inputs(**inputs), None)
    assert limit is not None
    assert list(np.asarray(limit.low)) == [0.5, 1.0, 1.0]
    for head, low in zip(heads, (0.5, 1.0, 1.0), strict=True):
        one = check.default(SEAT.inputs(**CONTACT, valve_head_diameter_mm=float(head)), None)
        assert one is not None
        assert one.low == low


def test_where_readings_tie_their_uncertainty_is_told() -> None:
    readings = {"guide_along_mm": (4.53, 4.51, 4.53), "stem_size_mm": 4.468, "valve_kind": "intake"}
    found = ask(GUIDE, readings, **by_instruments({"guide_along_mm": "small_hole_gauge"}, 3))
    assert "readings_within_uncertainty" in {w.code for w in found.warnings}


def test_the_makers_limit_wins() -> None:
    maker = {"guide_clearance": Limit(high=0.06)}
    assert [v.word for v in ask(GUIDE, PAIR).verdicts] == ["pass"]
    assert [v.word for v in ask(GUIDE, PAIR, limits=maker).verdicts] == ["fail"]
    assert ask(GUIDE, PAIR, defaults=False).verdicts == ()


@pytest.mark.parametrize(
    ("calculation", "steps"),
    [
        (GUIDE, {"valve_springs", "exhaust_valves"}),
        (SEAT, {"seat_cutting", "exhaust_valves"}),
        (SINK, {"seat_cutting", "valve_springs", "exhaust_valves"}),
        (SPRING, {"valve_springs"}),
    ],
)
def test_cautions_ride_along(calculation: Calculation, steps: set[str]) -> None:
    inputs = {
        GUIDE.name: PAIR,
        SEAT.name: CONTACT,
        SINK.name: {"sink_cut_mm": 0.1},
        SPRING.name: LOADS,
    }[calculation.name]
    told = ask(calculation, inputs).cautions
    assert told[0].startswith("The maker's manual")
    assert {CAUTIONS[step] for step in steps} <= set(told)


@pytest.mark.parametrize(("u", "word"), [(0.01, "pass"), (0.1, "fail")])
def test_a_rim_in_uncertainty_fails(u: float, word: str) -> None:
    rim = CONTACT | {"valve_head_diameter_mm": 26.5, "rim_mm": 0.52}
    found = ask(SEAT, rim, uncertainties={("rim_mm",): Stated(uncertainty=u)})
    verdict = next(v for v in found.verdicts if v.check.name == "valve_rim")
    assert verdict.judged.verdict == ("pass" if word == "pass" else "too_close_to_call")
    assert verdict.word == word
