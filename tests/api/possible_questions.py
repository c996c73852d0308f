"""For each calculation, questions about possible engines: canonical values by core name."""

import math
from collections.abc import Callable

from hypothesis import strategies as st
from possible_assembly import ASSEMBLY
from possible_cylinders import CYLINDERS
from possible_engines import (
    Draw,
    Values,
    bottom_end,
    cranking,
    cylinder_readings,
    piston_fit,
    place,
    ports,
    readings_of,
    real,
    ring_gaps,
    rising,
    some,
    survey,
    swept_cc,
    taken,
    top_end,
    wet_oil_ml,
)
from possible_geometry import GEOMETRY
from possible_leaks import LEAKS


def air_pressure(draw: Draw) -> Values:
    known = draw(st.sampled_from(["altitude", "spot", "report"]))
    values: Values = {}
    if known != "spot":
        values["altitude_m"] = draw(real(-400.0, 5400.0))
    if known == "spot":
        values["air_pressure_kpa_abs"] = draw(real(49, 109))
    if known == "report":
        values["weather_report_kpa_abs"] = draw(real(95, 105))
    return values | some(draw, {"reading_kpa": draw(real(0, 2400))})


def warm_parts(draw: Draw) -> Values:
    """Return a bore and a piston in it, warm, and what they are made of."""
    bore = draw(real(30.0, 150.0))
    alpha = {"bore_alpha_per_k": draw(st.floats(9e-6, 25e-6))}
    return {
        "bore_mm": bore,
        "bore_temperature_c": draw(real(1, 49)),
        **(alpha if draw(st.booleans()) else {"bore_kind": "iron"}),
        "piston_size_mm": bore - draw(real(-0.04, 0.4)),
        "piston_temperature_c": draw(real(1, 49)),
        "piston_material": draw(st.sampled_from(["piston_cast_eutectic", "steel"])),
    }


def compression_level(draw: Draw) -> Values:
    where = place(draw)
    weather = {}
    if "altitude_m" in where and "air_pressure_kpa_abs" not in where:
        weather = {"weather_kpa_diff": draw(real(0.1, 5.0))}
    return {
        "reading_kpa": draw(real(0, 2400)),
        **where,
        **some(draw, weather),
        **cranking(draw),
        **some(
            draw,
            {
                "expected_kpa": draw(real(200, 2900)),
                "expected_altitude_m": draw(real(0, 3000)),
                "gauge_error_pct": draw(real(0.5, 10)),
                "repeatability_kpa_diff": draw(real(0.5, 40)),
            },
        ),
    }


def cylinder_spread(draw: Draw) -> Values:
    values = cylinder_readings(draw)
    more = {"expected_kpa": draw(real(300, 1600)), "repeatability_kpa_diff": draw(real(1, 40))}
    again = {"first_again_kpa": values["readings_kpa"][0]}
    return {**values, **some(draw, {**more, **again})}


def wet_gain(draw: Draw) -> Values:
    engine = bottom_end(draw)
    dry = draw(real(100, 1500))
    values = {"reading_kpa": dry, "wet_kpa": dry * draw(real(1.0, 1.6))}
    doses = {
        "wet_oil_ml": wet_oil_ml(draw, engine),
        "clearance_cc": engine["clearance_cc"],
        "effective_volume_cc": swept_cc(engine) * draw(real(0.6, 1.0)),
    }
    return {**values, **(doses if draw(st.booleans()) else {})}


def pressure_build_up(draw: Draw) -> Values:
    return {
        "stroke_readings_kpa": rising(draw),
        "expected_kpa": draw(real(300, 2000)),
        **some(draw, {"baseline_first_over_last": draw(real(0.2, 0.9))}),
    }


def gauge_hose_loss(draw: Draw) -> Values:
    engine = bottom_end(draw)
    hose = {"hose_volume_cc": draw(real(0.1, 8.0))}
    volume = {"effective_volume_cc": swept_cc(engine) * draw(real(0.6, 1.0))}
    return {**volume, **taken(engine, "clearance_cc"), **hose, **place(draw)}


def cranking_pressure(draw: Draw) -> Values:
    exponents = sorted(draw(st.lists(real(1.05, 1.38), min_size=3, max_size=3)))
    values = {"ratio": draw(real(3, 15)), **place(draw)}
    values |= dict(zip(("n_low", "n_mid", "n_high"), exponents, strict=True))
    engine = taken(bottom_end(draw), "bore_mm", "stroke_mm", "rod_mm", "clearance_cc")
    if draw(st.booleans()):
        values |= engine | {"decompressor_closes_deg": draw(real(25, 170))}
    return values | some(draw, {"throttle_closed_manifold_kpa_abs": draw(real(20, 45))})


def displacement(draw: Draw) -> Values:
    engine = taken(bottom_end(draw), "bore_mm", "stroke_mm", "cylinder_count")
    wider = {"new_bore_mm": engine["bore_mm"] + draw(real(0.001, 1.0))}
    return engine | some(draw, wider | {"class_limit_cc": draw(real(20, 2900))})


def compression_ratio(draw: Draw) -> Values:
    engine = bottom_end(draw)
    values = taken(engine, "bore_mm", "stroke_mm")
    plug, reach = draw(real(8, 14)), draw(real(8, 20))
    hole = math.pi / 4 * plug**2 * reach / 1000
    burette = {
        "burette_fill_cc": engine["clearance_cc"] + hole,
        "plug_diameter_mm": plug,
        "plug_reach_mm": reach,
    }
    land = engine["bore_mm"] - draw(real(0.2, 2.5))
    way = draw(st.sampled_from(["parts", "burette", "both"]))
    if way != "burette":
        values |= top_end(draw, engine) | some(draw, {"land_mm": land, "land_height_mm": 4.0})
    return values if way == "parts" else values | burette


def overbore_ratio(draw: Draw) -> Values:
    engine = bottom_end(draw)
    values = taken(engine, "bore_mm", "stroke_mm") | top_end(draw, engine)
    values["new_bore_mm"] = engine["bore_mm"] + draw(real(0.001, 0.55))
    piston = {"new_dome_cc": 0.1 * values["chamber_cc"], "new_dish_cc": 0.0}
    gasket = {"new_gasket_bore_mm": values["new_bore_mm"] + draw(real(0.1, 9.0))}
    parts = {"new_deck_mm": draw(real(0.0, 1.0)), "new_gasket_thickness_mm": draw(real(0.2, 1.6))}
    return {**values, **(piston if draw(st.booleans()) else {}), **some(draw, gasket | parts)}


def dynamic_ratio(draw: Draw) -> Values:
    engine = taken(bottom_end(draw), "bore_mm", "stroke_mm", "rod_mm", "clearance_cc")
    angle = {"intake_closes_deg": draw(real(0, 109))}
    return engine | angle | some(draw, {"closing_lift_mm": draw(real(0, 1.4))})


def port_timing(draw: Draw) -> Values:
    engine = bottom_end(draw)
    values = taken(engine, "stroke_mm", "rod_mm") | ports(draw, engine["stroke_mm"])
    charge = taken(engine, "bore_mm", "clearance_cc") if draw(st.booleans()) else {}
    wanted = {"exhaust_duration_wanted_deg": draw(real(120.0, 210.0))}
    wanted |= {"transfer_duration_wanted_deg": draw(real(80.0, 150.0))}
    thinner = {"thinner_base_gasket_by_mm": draw(real(-0.3, 0.1))}
    return values | charge | some(draw, thinner | wanted)


def piston_clearance(draw: Draw) -> Values:
    bore = draw(real(30.0, 150.0))
    values = piston_fit(draw, bore)
    if draw(st.booleans()):
        return values | {"bore_survey": survey(draw, bore)}
    sizes = {"bore_largest_mm": bore + draw(real(0.001, 0.1)), "bore_smallest_mm": bore}
    return values | sizes


def ring_gap(draw: Draw) -> Values:
    bore = draw(real(30.0, 150.0))
    hot = {"bore_rise_k": draw(real(0, 200)), "ring_rise_k": draw(real(0, 300))}
    alphas = {"ring_alpha_per_k": 1.2e-5, "bore_alpha_per_k": draw(st.floats(9e-6, 25e-6))}
    return {"bore_mm": bore, **ring_gaps(draw, bore), **some(draw, hot | alphas)}


def compression_test(draw: Draw) -> Values:
    """Return a test of an engine of which more or less is known."""
    return tested(draw, bottom_end(draw))


def tested(draw: Draw, engine: Values) -> Values:
    how = cranking(draw)
    two_stroke = how["cycle"] == "two_stroke"
    values = {"reading_kpa": draw(real(100, 1500)), **how, **place(draw)}
    if draw(st.booleans()):
        strokes = rising(draw)
        values |= {"stroke_readings_kpa": strokes, "reading_kpa": strokes[-1]}
    if draw(st.booleans()):
        values |= readings_of(draw, engine, values["reading_kpa"])
    if draw(st.booleans()):
        values |= taken(engine, "bore_mm", "stroke_mm", "rod_mm", "clearance_cc")
        values |= ports(draw, engine["stroke_mm"]) if two_stroke else {"intake_closes_deg": 62.0}
        values |= {"wet_kpa": 1.2 * values["reading_kpa"], "wet_oil_ml": wet_oil_ml(draw, engine)}
    gauge = {"gauge_error_pct": draw(real(0.5, 8)), "repeatability_kpa_diff": draw(real(1, 30))}
    manifold = {"throttle_closed_manifold_kpa_abs": draw(real(20, 45))}
    return values | some(draw, {**gauge, **manifold, "expected_kpa": draw(real(300, 1500))})


def job_card(draw: Draw) -> Values:
    """Return a job at any stage: some of its sections, some of their fields."""
    engine = bottom_end(draw)
    test = tested(draw, engine)
    of_engine = {"cycle", "valve_gear", "decompressor"}
    of_place = {"altitude_m", "air_pressure_kpa_abs"}
    sizes = {"bore_mm", "stroke_mm", "rod_mm", "clearance_cc", "intake_closes_deg"}
    ports_of = {name for name in test if name.endswith(("_deck_mm", "_tdc_mm"))}
    moved = of_engine | of_place | sizes | ports_of
    bore = engine["bore_mm"]
    engine |= {name: test[name] for name in test if name in moved - of_place}
    if "readings_kpa" in test:
        # One reading a cylinder: of fewer cylinders they would be of another engine.
        engine["cylinder_count"] = len(test["readings_kpa"])
    fit = piston_fit(draw, bore)
    warm = {"bore_temperature_c": fit.pop("bore_temperature_c", 20.0)}
    engine |= {"bore_kind": fit.pop("bore_kind"), "cycle": fit.pop("cycle")}
    engine["valve_gear"] = "ports" if engine["cycle"] == "two_stroke" else "overhead_valves"
    known = {
        "about": {"job": "26-014", "notes": draw(st.text(max_size=20))},
        "engine": engine,
        "place": {name: test[name] for name in test if name in of_place},
        "compression": {name: test[name] for name in test if name not in moved},
        "cylinder": {"bore_largest_mm": bore + 0.05, "bore_smallest_mm": bore, **warm},
        "piston": fit,
        "rings": {"gap_bore_mm": bore, **ring_gaps(draw, bore)},
        "plan": {"new_bore_mm": bore + draw(real(0.25, 0.55))},
    }
    if draw(st.booleans()):
        known["cylinder"] = {"bore_survey": survey(draw, bore), **warm}
    known["rings"].pop("unworn_mm", None)
    if "old_gap_depth_mm" in known["rings"]:
        # Between two depths of the survey, so that its axes are readings of their own.
        known["rings"]["old_gap_depth_mm"] = 12.0
    if engine["cycle"] == "two_stroke":
        engine["decompressor"] = "none" if engine["decompressor"] == "none" else "unknown"
        # An automatic one, held off or at work, is a four-stroke's.
        for section in known.values():
            if str(section.get("decompressor_state", "")).startswith("automatic"):
                section["decompressor_state"] = "unknown"
    found = some(draw, known)
    if "engine" not in found:
        # Nothing says what the bore is made of, so it is measured at 20 °C.
        found.get("cylinder", {}).pop("bore_temperature_c", None)
    return found


STRATEGIES: dict[str, Callable[[Draw], Values]] = {
    "air-pressure": air_pressure,
    "length-at-20c": warm_parts,
    "compression-test": compression_test,
    "compression-level": compression_level,
    "cylinder-spread": cylinder_spread,
    "wet-gain": wet_gain,
    "pressure-build-up": pressure_build_up,
    "gauge-hose-loss": gauge_hose_loss,
    "cranking-pressure": cranking_pressure,
    "displacement": displacement,
    "compression-ratio": compression_ratio,
    "overbore-ratio": overbore_ratio,
    "dynamic-ratio": dynamic_ratio,
    "port-timing": port_timing,
    "piston-clearance": piston_clearance,
    "ring-gap": ring_gap,
    "job-card": job_card,
    **GEOMETRY,
    **CYLINDERS,
    **ASSEMBLY,
    **LEAKS,
}
