"""Invented worn engines: the figures of a whole job, by section of the card and core name.

Sizes fit one another as those of an engine do (common practice, no source), in canonical units.
"""

import math
from random import Random

from drawn_figures import PLATED, Drawn, Job, Section, Values
from worn_cylinders import CYLINDER

IRON = ("iron", "iron_sleeve_in_aluminium")


def worn_engine(chance: Random) -> Job:
    """Return the sections of a job, all of one engine; some of them are not known yet."""
    of = Drawn(chance)
    two_stroke = of.often(0.35)
    engine = _engine(of, two_stroke)
    found = {"engine": engine}
    for name, section in {**OF_ANY, **(OF_TWO_STROKES if two_stroke else OF_FOUR_STROKES)}.items():
        if of.often(0.9 if name in ("place", "cylinder", "piston", "plan") else 0.6):
            found[name] = section(of, found)
    if "altitude_m" not in found.get("place", {}):
        # An air pressure read on the spot has the weather in it.
        found.get("compression", {}).pop("weather_kpa_diff", None)
    return found


def _engine(of: Drawn, two_stroke: bool) -> Values:
    bore = of.real(42.0, 96.0, 1)
    stroke = of.real(0.8 * bore, 1.1 * bore, 1)
    values: Values = {
        "cycle": "two_stroke" if two_stroke else "four_stroke",
        "valve_gear": "ports" if two_stroke else "overhead_valves",
        "decompressor": "none",
        "cylinder_count": of.chance.choice([1, 2, 3]),
        "bore_kind": PLATED if two_stroke and of.often() else of.chance.choice(IRON),
        "bore_mm": bore,
        "stroke_mm": stroke,
        "rod_mm": of.real(1.6 * stroke, 2.0 * stroke, 1),
        **_volume(of, bore, math.pi / 4 * bore**2 * stroke / 1000 / of.real(5.5, 9.5)),
    }
    if not two_stroke:
        return values | {"intake_closes_deg": of.real(35.0, 70.0, 1), "closing_lift_mm": 0.2}
    exhaust = of.real(0.48 * stroke, 0.55 * stroke, 2)
    return values | {
        "piston_edge_below_deck_at_tdc_mm": of.real(0.0, 0.4, 2),
        "exhaust_port_top_below_deck_mm": exhaust,
        "transfer_port_top_below_deck_mm": exhaust + of.real(0.14, 0.2) * stroke,
    }


def _volume(of: Drawn, bore: float, clearance: float) -> Values:
    """Return the clearance volume as a whole, by its parts, or by a burette through the plug."""
    way = of.chance.choice(["whole", "parts", "burette"])
    if way == "whole":
        return {"clearance_cc": round(clearance, 2)}
    if way == "burette":
        plug, reach = 13.35, of.real(12.0, 19.0, 1)
        fill = clearance + math.pi / 4 * plug**2 * reach / 1000
        return {"burette_fill_cc": fill, "plug_diameter_mm": plug, "plug_reach_mm": reach}
    gasket, thick, deck = bore + of.real(0.8, 3.0), of.real(0.4, 1.0), of.real(0.1, 0.6, 2)
    parts = math.pi / 4 * (gasket**2 * thick + bore**2 * deck) / 1000
    return {
        "chamber_cc": max(clearance - parts, 0.4 * clearance),
        "gasket_bore_mm": gasket,
        "gasket_thickness_mm": thick,
        "deck_mm": deck,
        **of.some(dish_cc=of.real(0.2, 1.0, 2), crevice_cc=of.real(0.1, 0.4, 2)),
    }


def _place(of: Drawn, _: Job) -> Values:
    if of.often(0.3):
        return {"air_pressure_kpa_abs": of.real(80.0, 102.0, 1)}
    return {"altitude_m": of.real(50, 1800, 0)}


def _compression(of: Drawn, job: Job) -> Values:
    """Return one reading a cylinder, or the strokes of one, or its last reading."""
    told: Values = {"decompressor_state": "none", "throttle_open": True, "engine_warm": True}
    dry = of.real(550, 1100, 0)
    if job["engine"]["cylinder_count"] > 1:
        read = of.reals(job["engine"]["cylinder_count"], 0.8 * dry, dry, 0)
        told |= {"readings_kpa": read, "layout": "in_line"}
        dry = min(read)
    elif of.often():
        told |= {"stroke_readings_kpa": [round(dry * s, 1) for s in (0.5, 0.7, 0.86, 0.95, 1.0)]}
    else:
        told |= {"reading_kpa": dry}
    if of.often():
        told |= {"gauge_error_pct": of.real(1, 5, 1), "repeatability_kpa_diff": of.real(4, 12, 1)}
    wet = {"wet_kpa": round(1.15 * dry), "wet_oil_ml": 1.0}
    return told | of.some(weather_kpa_diff=2.0) | (wet if of.often() else {})


def _leak_down(of: Drawn, _: Job) -> Values:
    supply = of.real(500, 700, 0)
    dial = {"leak_gauge_error_pct": 1.6, "gauge_full_scale_kpa": 1000.0}
    return {
        "supply_pressure_kpa": supply,
        "cylinder_pressure_kpa": round(supply * of.real(0.6, 0.95)),
        "restrictor_mm": 1.0,
        "piston_at": "firing_tdc",
        **of.some(other_restrictor_mm=1.5, other_supply_pressure_kpa=of.real(400, 700, 0)),
        **of.some(bar_mm=300.0, held_at_deg=3.0, second_deg=of.real(6, 12, 0)),
        **(dial if of.often(0.4) else {}),
    }


def _head_face(of: Drawn, job: Job) -> Values:
    return {
        "lines_mm": of.reals(6, 0.01, 0.08),
        "face_length_mm": of.real(80, 160, 1),
        "chamber_area_mm2": math.pi / 4 * job["engine"]["bore_mm"] ** 2 * 0.85,
        **of.some(wanted_ratio=of.real(7.0, 10.5, 1), skim_allowance_mm=0.02),
    }


def _valve(of: Drawn, _: Job) -> Values:
    stem, outer, width = of.real(4.4, 6.9), of.real(22.0, 34.0, 2), of.real(1.0, 1.9, 2)
    sunk = {"sink_cut_mm": of.real(0.05, 0.4), "spring_rate_n_per_mm": of.real(15, 30, 1)}
    sunk |= {"seat_load_nominal_n": 140.0, "lash_found_mm": of.real(0.1, 0.3, 2)}
    sunk |= {"ratio_lash_per_stem_rise": of.real(0.8, 1.4, 2), "valves_cut": 1}
    return {
        "valve_kind": of.chance.choice(["intake", "exhaust"]),
        "valve_condition": "used",
        "stem_size_mm": stem,
        "guide_bore_mm": stem + of.real(0.02, 0.09),
        "seat_outer_diameter_mm": outer,
        "seat_inner_diameter_mm": outer - 2.0 * width,
        "cut_seat_angle_deg": 45.0,
        **(sunk if of.often() else {}),
    }


def _spring(of: Drawn, _: Job) -> Values:
    free, rate = of.real(36.0, 44.0, 2), of.real(18.0, 30.0, 1)
    one, two = free - of.real(4.0, 6.0, 2), free - of.real(12.0, 15.0, 2)
    loads = {"load_1_n": rate * (free - one), "load_2_n": rate * (free - two)}
    lengths = {"length_1_mm": one, "length_2_mm": two, "installed_height_mm": one}
    more = of.some(free_length_new_mm=free + 0.2, lean_mm=of.real(0.2, 1.5, 2))
    return {"free_length_mm": free, "valve_lift_mm": 7.0, **loads, **lengths, **more}


def _lash(of: Drawn, job: Job) -> Values:
    screw = {
        "screw_pitch_mm": 0.75,
        "adjuster": "screw_at_cam",
        "rocker_ratio": of.real(1.0, 1.5, 2),
    }
    # A valve cut deeper says itself what its lash will be.
    if of.often() and "sink_cut_mm" not in job.get("valve", {}):
        return {"found_mm": of.real(0.04, 0.2, 2), "target_mm": 0.12, **screw}
    valves = [
        {"name": name, "shim_mm": of.real(2.3, 2.9), "found_mm": of.real(0.05, 0.3, 2)}
        for name in ("intake", "exhaust")
    ]
    steps = {"shim_step_mm": 0.05, "shim_thinnest_mm": 1.2, "shim_thickest_mm": 3.5}
    return {"valves": valves, "lash_low_mm": 0.1, "lash_high_mm": 0.2, **steps}


def _cam(of: Drawn, _: Job) -> Values:
    base = of.real(22.0, 30.0, 2)
    height = base + of.real(5.0, 8.0, 2)
    found = {"lobe_height_mm": height, "base_circle_mm": base, "lobe_height_new_mm": height + 0.05}
    clay = {"clay_intake_mm": of.real(1.2, 2.5, 2), "clay_exhaust_mm": of.real(1.4, 2.8, 2)}
    return found | (clay | of.some(clay_uncertainty_mm=0.1) if of.often() else {})


def _bottom(of: Drawn, _: Job) -> Values:
    return {
        "big_end_side_mm": of.real(0.2, 0.6, 2),
        "small_end_tip_rock_mm": of.real(0.5, 1.5, 2),
        "big_end_width_mm": of.real(14, 20, 1),
        "rod_condition": "used",
    }


def _hone(of: Drawn, _: Job) -> Values:
    travel, strokes = of.real(60, 110, 1), of.real(60, 110, 0)
    return {
        "spindle_speed_rpm": of.real(140, 220, 0),
        "travel_mm": travel,
        "strokes_per_minute_rpm": strokes,
    }


def _torque(of: Drawn, _: Job) -> Values:
    wrench = {"wrench_length_mm": of.real(250, 320, 0), "adapter_extension_mm": 45.0}
    thread = {
        "thread_diameter_mm": 8.0,
        "pitch_mm": 1.25,
        "nut_factor": 0.17,
        "proof_stress_mpa": 640.0,
    }
    return {"final_torque_nm": of.real(18, 26, 1), **wrench, **thread}


def _running_in(of: Drawn, _: Job) -> Values:
    before = {"compression_before_kpa": of.real(600, 800, 0), "leak_before_pct": of.real(6, 20, 1)}
    after = {"compression_after_kpa": of.real(800, 1100, 0), "leak_after_pct": of.real(2, 6, 1)}
    return {"rated_speed_rpm": 3600.0, **before, **after}


OF_ANY: dict[str, Section] = {
    "place": _place,
    "compression": _compression,
    "leak_down": _leak_down,
    **CYLINDER,
    "bottom": _bottom,
    "hone": _hone,
    "torque": _torque,
    "running_in": _running_in,
    "oil": lambda of, _: {"added_ml": of.real(100, 600, 0), "hours": of.real(5, 40, 1)},
    "hot": lambda of, _: {"bore_hot_c": of.real(90, 130, 0), "piston_hot_c": of.real(110, 180, 0)},
}
OF_TWO_STROKES: dict[str, Section] = {
    "fuel": lambda of, _: {"fuel_l": of.real(2, 9, 1), "ratio": 40.0},
    "crankcase": lambda of, _: {"start_kpa": 45.0, "end_kpa": of.real(40, 45, 1), "minutes": 5.0},
}
OF_FOUR_STROKES: dict[str, Section] = {
    "head_face": _head_face,
    "valve": _valve,
    "spring": _spring,
    "lash": _lash,
    "cam": _cam,
}
