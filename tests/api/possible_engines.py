"""Engines and readings that can be: sizes that fit one another, readings that rise, and so on.

Each function draws canonical values by core name. Ranges are common practice, no source.
"""

import math
from collections.abc import Callable
from typing import Any

from hypothesis import strategies as st

Draw = Callable[..., Any]
Values = dict[str, Any]


def real(low: float, high: float) -> st.SearchStrategy[float]:
    """Return a strategy of numbers, with as many digits as an instrument shows."""
    return st.floats(low, high).map(lambda v: min(max(round(v, 6), low), high))


def some(draw: Draw, values: Values) -> Values:
    """Return the values, each left out as often as not."""
    return {name: value for name, value in values.items() if draw(st.booleans())}


def bottom_end(draw: Draw) -> Values:
    """Return bore, stroke, rod, cylinders and clearance volume of one engine."""
    bore = draw(real(32.0, 110.0))
    stroke = draw(real(max(18.0, 0.7 * bore), min(145.0, 1.35 * bore)))
    swept = math.pi / 4 * bore**2 * stroke / 1000
    return {
        "bore_mm": bore,
        "stroke_mm": stroke,
        "rod_mm": draw(real(max(31.0, 1.3 * stroke), min(295.0, 2.4 * stroke))),
        "cylinder_count": draw(st.integers(1, min(8, int(2900 / swept)))),
        "clearance_cc": swept / (draw(real(5.5, 13.0)) - 1),
    }


def taken(values: Values, *names: str) -> Values:
    return {name: values[name] for name in names}


def swept_cc(engine: Values) -> float:
    """Return the swept volume of one cylinder."""
    return float(math.pi / 4 * engine["bore_mm"] ** 2 * engine["stroke_mm"] / 1000)


def wet_oil_ml(draw: Draw, engine: Values) -> float:
    """Return a dose of oil that does not lock the engine."""
    return float(min(max(0.06, engine["clearance_cc"] * draw(real(0.03, 0.2))), 75.0))


def top_end(draw: Draw, engine: Values) -> Values:
    """Return the parts of the clearance volume that sum up to about that of the engine."""
    chamber = 0.75 * engine["clearance_cc"]
    area = math.pi / 4 * engine["bore_mm"] ** 2
    gasket = {"gasket_bore_mm": engine["bore_mm"] + draw(real(0.6, 8.0))}
    if draw(st.booleans()):
        gasket = {"gasket_area_mm2": area * draw(real(1.05, 1.6))}
    crown = draw(st.sampled_from(["dome_cc", "dish_cc"]))
    return {
        "chamber_cc": chamber,
        "gasket_thickness_mm": draw(real(0.1, 2.0)),
        "deck_mm": draw(real(-0.1, 1.5)),
        **gasket,
        **some(draw, {crown: draw(real(0.0, 0.2)) * chamber, "crevice_cc": draw(real(0.0, 2.0))}),
    }


def place(draw: Draw) -> Values:
    """Return altitude, or the air pressure on the spot, or both, or neither."""
    return some(
        draw,
        {"altitude_m": draw(real(-400.0, 5400.0)), "air_pressure_kpa_abs": draw(real(49, 109))},
    )


# A decompressor, and a state that it can be in; those that lift a valve are of four-strokes.
DECOMPRESSORS = [
    ("none", "none"),
    ("automatic_exhaust_lifter", "automatic_held_off"),
    ("automatic_intake_side", "automatic_active"),
    ("manual_lifter", "manual_not_used"),
    ("unknown", "unknown"),
]
GEARS = [
    ("four_stroke", "overhead_valves"),
    ("four_stroke", "side_valve"),
    ("two_stroke", "ports"),
]
FLAGS = ("throttle_open", "choke_off", "engine_warm", "plugs_out", "air_filter_fitted")


def cranking(draw: Draw) -> Values:
    """Return how the test was cranked."""
    cycle, gear = draw(st.sampled_from(GEARS))
    kind, state = draw(st.sampled_from(DECOMPRESSORS[:1] + DECOMPRESSORS[-1:]))
    if cycle == "four_stroke":
        kind, state = draw(st.sampled_from(DECOMPRESSORS))
    flags = some(draw, {name: draw(st.booleans()) for name in FLAGS})
    starter = draw(st.sampled_from(["electric", "kick", "rope"]))
    more = some(draw, {"battery_v": draw(real(6.0, 14.0)), "starter": starter})
    told = {"decompressor": kind, "decompressor_state": state}
    return {"cycle": cycle, "valve_gear": gear, **told, **flags, **more}


def cylinder_readings(draw: Draw) -> Values:
    """Return one reading a cylinder; banks have an even number."""
    layout = draw(st.sampled_from(["in_line", "vee", "opposed"]))
    half = draw(st.integers(1, 4))
    count = 2 * half if layout != "in_line" else draw(st.integers(2, 8))
    readings = draw(st.lists(real(200, 1600), min_size=count, max_size=count))
    return {"readings_kpa": readings, "layout": layout}


def readings_of(draw: Draw, engine: Values, reading: float) -> Values:
    """Return readings of an engine's cylinders, one of them the reading; of a single, none."""
    values = cylinder_readings(draw)
    count = min(len(values["readings_kpa"]), engine["cylinder_count"])
    count -= count % 2 if values["layout"] != "in_line" else 0
    if count < 2:
        return {}
    return values | {"readings_kpa": [reading, *values["readings_kpa"][1:count]]}


def rising(draw: Draw) -> list[float]:
    """Return readings of successive strokes: they never fall, and the last is above zero."""
    steps = draw(st.lists(real(0, 180), min_size=1, max_size=11))
    first = draw(real(50, 400))
    found = [first]
    for step in steps:
        found.append(found[-1] + step)
    return found


def ports(draw: Draw, stroke: float) -> Values:
    """Return port tops that the crown edge passes, the exhaust first."""
    edge = draw(real(-2.0, 2.0))
    exhaust = max(3.1, edge + stroke * draw(real(0.35, 0.6)))
    return {
        "piston_edge_below_deck_at_tdc_mm": edge,
        "exhaust_port_top_below_deck_mm": exhaust,
        "transfer_port_top_below_deck_mm": exhaust + 0.2 * stroke,
    }


def survey(draw: Draw, bore: float) -> Values:
    """Return readings of both axes at three depths or more, wider towards the top."""
    count = draw(st.integers(3, 8))
    wear = sorted(draw(st.lists(real(0.0, 0.12), min_size=2 * count, max_size=2 * count)))[::-1]
    readings: list[Any] = [bore + w for w in wear]
    gaps = draw(st.booleans())
    return {
        "depth_mm": [8.0 + 9.0 * i for i in range(count)],
        "pin_axis_mm": [*readings[1::2][:-1], None if gaps else readings[-1]],
        "thrust_axis_mm": readings[::2],
    }


FITS = [
    ("cast_air_cooled", "iron", "four_stroke"),
    ("cast_liquid_cooled", "iron_sleeve_in_aluminium", "four_stroke"),
    ("forged", "plated_aluminium", "two_stroke"),
    ("two_stroke_iron", "iron", "two_stroke"),
    ("two_stroke_plated", "plated_aluminium", "two_stroke"),
]


def piston_fit(draw: Draw, bore: float) -> Values:
    """Return a piston that goes into the bore, new or worn."""
    piston = bore - draw(real(0.01, 0.25))
    kind, of_bore, cycle = draw(st.sampled_from(FITS))
    more = {
        "piston_size_new_mm": piston + draw(real(0.001, 0.1)),
        "measuring_height_mm": draw(real(3, 30)),
        "skirt_coated": draw(st.booleans()),
        "bore_temperature_c": draw(real(5, 40)),
        "piston_temperature_c": draw(real(5, 40)),
    }
    kinds = {"piston_kind": kind, "bore_kind": of_bore, "cycle": cycle}
    fit = {"piston_condition": draw(st.sampled_from(["new", "used"]))}
    return {"piston_size_mm": piston, **kinds, **fit, **some(draw, more)}


def ring_gaps(draw: Draw, bore: float) -> Values:
    """Return gaps of new rings in a bore, and those of an old one in its worn and unworn parts."""
    worn = {"pin": bore + draw(real(0.0, 0.1)), "thrust": bore + draw(real(0.0, 0.15))}
    new = {
        "top_gap_mm": draw(real(0.05, 1.0)),
        "second_gap_mm": draw(real(0.05, 1.0)),
        "oil_rail_gap_mm": draw(real(0.1, 1.2)),
        "top_factor": draw(real(0.003, 0.006)),
        "second_factor": draw(real(0.003, 0.006)),
    }
    old = {
        "old_gap_mm": draw(real(0.7, 2.0)),
        "old_gap_depth_mm": draw(real(5, 60)),
        "old_gap_pin_axis_mm": worn["pin"],
        "old_gap_thrust_axis_mm": worn["thrust"],
        "unworn_mm": bore,
        "gap_when_new_mm": draw(real(0.1, 0.6)),
    }
    return some(draw, new) | (old if draw(st.booleans()) else {})
