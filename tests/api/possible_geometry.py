"""Squish, ratios wanted, piston positions, faces and camshafts that can be."""

import math
from collections.abc import Callable

from hypothesis import strategies as st
from possible_engines import Draw, Values, bottom_end, ports, real, some, swept_cc, taken


def wanted_ratio(draw: Draw) -> Values:
    engine = bottom_end(draw)
    area = math.pi / 4 * engine["bore_mm"] ** 2
    more = {
        "chamber_area_mm2": min(max(101.0, area * draw(real(0.5, 1.2))), 1.25 * area),
        "gasket_bore_mm": engine["bore_mm"] + draw(real(0.6, 8.0)),
        "gasket_thickness_mm": draw(real(0.1, 2.0)),
        "bore_mm": engine["bore_mm"],
        "squish_mm": draw(real(0.3, 3.0)),
        "skim_done_mm": draw(real(0.001, 0.5)),
        "cycle": draw(st.sampled_from(["two_stroke", "four_stroke"])),
    }
    volumes = {"swept_cc": swept_cc(engine), "clearance_cc": engine["clearance_cc"]}
    return {**volumes, "wanted_ratio": draw(real(5.0, 14.0)), **some(draw, more)}


def piston_position(draw: Draw) -> Values:
    values = taken(bottom_end(draw), "stroke_mm", "rod_mm")
    asked = {
        "crank_angle_deg": draw(real(-360.0, 360.0)),
        "travel_asked_mm": values["stroke_mm"] * draw(real(0.05, 0.95)),
    }
    more = {
        "pin_offset_mm": draw(real(-2.0, 2.0)),
        "counted_from": draw(st.sampled_from(["top_dead_centre", "crank_upright"])),
    }
    return {**values, **(some(draw, asked) or asked), **some(draw, more)}


def squish(draw: Draw) -> Values:
    """Return a squish by the stack, or by solder with gaskets to choose among."""
    engine = bottom_end(draw)
    known = taken(engine, "bore_mm", "stroke_mm", "clearance_cc")
    known |= {"cycle": draw(st.sampled_from(["two_stroke", "four_stroke"]))}
    known |= {"bowl_diameter_mm": engine["bore_mm"] * draw(real(0.3, 0.95))}
    known |= {"squish_wanted_mm": draw(real(0.5, 2.0))}
    # Lists alone have no columns, so one single value is always there.
    values = {**some(draw, known), "solder_uncertainty_mm": draw(real(0.01, 0.1))}
    if draw(st.booleans()):
        values |= {
            "deck_mm": draw(real(-0.1, 1.0)),
            "gasket_thickness_mm": draw(real(0.3, 1.5)),
            "head_step_mm": draw(real(0.0, 1.0)),
        }
        return values | some(draw, {"base_gasket_fitted_mm": draw(real(0.1, 0.9))})
    values["solder_mm"] = draw(st.lists(real(0.6, 2.0), min_size=2, max_size=4))
    if draw(st.booleans()):
        gaskets = draw(st.lists(real(0.1, 1.0), min_size=1, max_size=6))
        values |= {"base_gasket_fitted_mm": 0.5, "base_gaskets_mm": gaskets}
    if draw(st.booleans()):
        values |= taken(engine, "stroke_mm", "rod_mm") | ports(draw, engine["stroke_mm"])
    return values


def flatness(draw: Draw) -> Values:
    engine = bottom_end(draw)
    gaps = draw(st.lists(real(0.0, 0.2), min_size=4, max_size=8))
    more = {
        "face_length_mm": draw(real(50.0, 400.0)),
        "rocks": draw(st.booleans()),
        "skim_allowance_mm": draw(real(0.001, 0.1)),
        "skim_done_mm": draw(real(0.001, 0.3)),
        "chamber_area_mm2": max(101.0, math.pi / 4 * engine["bore_mm"] ** 2 * 0.8),
        "swept_cc": swept_cc(engine),
        "clearance_cc": engine["clearance_cc"],
        "gasket_kind": draw(st.sampled_from(["composite", "multi_layer_steel"])),
        "roughness_mm": draw(real(0.0004, 0.006)),
    }
    return {"lines_mm": gaps, **some(draw, more)}


def cam_check(draw: Draw) -> Values:
    base = draw(real(15.0, 40.0))
    height = base + draw(real(2.0, 12.0))
    lobe = {"lobe_height_mm": height, "base_circle_mm": base}
    drive = {
        "chain_pitch_mm": draw(real(5.0, 9.5)),
        "cam_sprocket_teeth": draw(st.integers(14, 50)),
    }
    events = {
        "intake_opens_btdc_deg": draw(real(-5, 40)),
        "intake_closes_abdc_deg": draw(real(20, 80)),
        "exhaust_opens_bbdc_deg": draw(real(20, 80)),
        "exhaust_closes_atdc_deg": draw(real(-5, 40)),
    }
    clay = {"clay_intake_mm": draw(real(0.6, 4.0)), "clay_exhaust_mm": draw(real(0.8, 4.0))}
    more = {
        "stack_lowered_mm": draw(real(-0.5, 0.5)),
        "cam_drive": draw(st.sampled_from(["chain", "crankcase"])),
        "event_lift_mm": 1.0,
        "clay_uncertainty_mm": draw(real(0.02, 0.2)),
        "valve_tilt_deg": draw(real(0.5, 30.0)),
        "pocket_square": draw(st.booleans()),
        "intake_sink_mm": draw(real(0.01, 0.5)),
        "exhaust_sink_mm": draw(real(0.01, 0.5)),
        "lash_reset": draw(st.booleans()),
        "exhaust_loss_per_degree_mm": draw(real(0.02, 0.1)),
        "intake_loss_per_degree_mm": draw(real(0.02, 0.1)),
    }
    groups = [group for group in (lobe, drive, events, clay) if draw(st.booleans())] or [lobe]
    found = {name: value for group in groups for name, value in group.items()}
    worn = {"lobe_height_new_mm": height + draw(real(0.001, 0.15))} if lobe in groups else {}
    return {**found, **some(draw, {**more, **worn})}


GEOMETRY: dict[str, Callable[[Draw], Values]] = {
    "wanted-ratio": wanted_ratio,
    "piston-position": piston_position,
    "squish": squish,
    "flatness": flatness,
    "cam-check": cam_check,
}
