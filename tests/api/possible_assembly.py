"""Questions about putting an engine together: fasteners, rings, fuel, running in, what it costs."""

from collections.abc import Callable

from hypothesis import strategies as st
from possible_cylinders import any_of
from possible_engines import Draw, Values, real, some

# Threads of the metric coarse series, from memory (ISO 261): diameter to pitch [mm].
THREADS = {6.0: 1.0, 8.0: 1.25, 10.0: 1.5, 12.0: 1.75}


def torque_steps(draw: Draw) -> Values:
    """Return a tightening with or without an adapter, its thread known or not."""
    torque = draw(real(5, 120))
    size = draw(st.sampled_from(sorted(THREADS)))
    pitch = THREADS[size]
    fractions = draw(st.lists(st.sampled_from([0.3, 0.5, 0.6, 0.8]), max_size=3, unique=True))
    adapter = {
        "wrench_length_mm": draw(real(200, 700)),
        "adapter_extension_mm": draw(real(20, 80)),
        "adapter_angle_deg": draw(real(0, 180)),
    }
    # Pitch and minor diameter of the basic profile, from memory (ISO 68-1).
    thread = {
        "thread_diameter_mm": size,
        "pitch_mm": pitch,
        "thread_pitch_diameter_mm": size - 0.6495 * pitch,
        "thread_minor_diameter_mm": size - 1.0825 * pitch,
    }
    friction = {"thread_friction": draw(real(0.08, 0.2)), "head_friction": draw(real(0.08, 0.2))}
    more = {
        "wrench_top_nm": draw(real(130, 390)),
        "nut_factor_band": draw(real(0.0, 0.4)),
        "lubricant": draw(st.sampled_from(["dry", "oiled", "moly_paste", "unknown"])),
        "fastener_use": draw(st.sampled_from(["reusable", "single_use"])),
        "turns_deg": draw(st.lists(real(10, 180), min_size=1, max_size=3)),
        "stage_fractions": [*sorted(fractions), 1.0],
    }
    of_thread = {
        "proof_stress_mpa": draw(real(400, 1000)),
        "nut_factor": draw(real(0.1, 0.25)),
        "thread_engagement_mm": size * draw(real(1.0, 2.5)),
        "threads_in_aluminium": draw(st.booleans()),
    }
    values = {"final_torque_nm": torque, **some(draw, more)}
    values |= adapter if draw(st.booleans()) else {}
    if draw(st.booleans()):
        values |= thread | some(draw, of_thread) | draw(st.sampled_from([friction, {}]))
    return values


def fastener_order(draw: Draw) -> Values:
    """Return fasteners on a grid wide enough for their heads."""
    places = st.tuples(st.integers(-4, 4), st.integers(-4, 4))
    found = draw(st.lists(places, min_size=2, max_size=14, unique=True))
    fasteners = [
        {
            "id": str(i + 1),
            "x_mm": 40.0 * x + draw(real(-5, 5)),
            "y_mm": 40.0 * y + draw(real(-5, 5)),
            **some(draw, {"group": draw(st.integers(1, 3))}),
        }
        for i, (x, y) in enumerate(found)
    ]
    more = {
        "tighten_stages": draw(st.integers(1, 5)),
        "relief_steps": draw(st.integers(1, 5)),
        "relief_step_turn_deg": draw(real(30, 180)),
    }
    return {"fasteners": fasteners, **some(draw, more)}


RINGS = {"top": "compression", "second": "compression", "expander": "expander", "rail": "rail"}


def ring_clocking(draw: Draw) -> Values:
    """Return gaps anywhere, or pins on the side of the bore away from the port windows."""
    gaps = [
        {"name": name, "kind": kind, "angle_deg": draw(real(-360, 700))}
        for name, kind in some(draw, RINGS).items()
    ]
    windows = []
    for start in draw(st.lists(st.sampled_from([20, 80, 130]), min_size=1, unique=True)):
        windows.append({"from_angle_deg": start, "to_angle_deg": start + draw(real(15, 40))})
    pins = [
        {"name": name, "pin_angle_deg": draw(real(200, 330))}
        for name in ("top", "second")[: draw(st.integers(1, 2))]
    ]
    ports = {
        "ring_pins": pins,
        "ring_count": len(pins),
        "port_windows": windows,
        "ring_end_half_width_mm": draw(real(0.0, 2.0)),
    }
    known = any_of(draw, {"gaps": gaps}, ports) if gaps else ports
    more = {
        "zero_and_sense": "clockwise from the exhaust",
        "thrust_axis_angle_deg": draw(real(-90, 360)),
    }
    return {"bore_mm": draw(real(35, 120)), **known, **some(draw, more)}


def premix(draw: Draw) -> Values:
    tank = {"tank_has_l": draw(real(0.0, 20.0)), "tank_ratio": draw(real(15, 100))}
    values = {"fuel_l": draw(real(0.1, 60)), "ratio": draw(real(15, 100))}
    return values | (tank if draw(st.booleans()) else {})


def run_in(draw: Draw) -> Values:
    fractions = sorted(draw(st.lists(real(0.3, 1.0), min_size=1, max_size=6)))
    steps = [{"fraction": f, "minutes": draw(real(1, 600))} for f in fractions]
    more = {
        "steps": steps,
        "compression_before_kpa": draw(real(300, 1500)),
        "compression_after_kpa": draw(real(300, 1500)),
        "leak_before_pct": draw(real(0, 60)),
        "leak_after_pct": draw(real(0, 60)),
    }
    speed = {"stroke_mm": draw(real(30, 130)), "rated_speed_rpm": draw(real(1500, 15000))}
    return speed | some(draw, more)


def lines(draw: Draw) -> list[Values]:
    """Return lines of an estimate; the same thing may stand there twice."""
    return [
        {
            "label": draw(st.text(max_size=20)),
            "price": draw(real(0.0, 5000.0)),
            **some(draw, {"quantity": draw(real(0.0, 50.0))}),
        }
        for _ in range(draw(st.integers(1, 4)))
    ]


def estimate(draw: Draw) -> Values:
    labour = {"labour_rate": draw(real(20, 200)), "labour_hours": draw(real(0, 80))}
    priced = any_of(draw, {"parts": lines(draw)}, {"machine_shop": lines(draw)}, labour)
    share = real(0.0, 0.4)
    more = {
        "consumables": draw(real(0, 300)),
        "parts_markup": draw(share),
        "machine_markup": draw(share),
        "contingency": draw(share),
        "labour_tax": draw(share),
        "replacement_cost": draw(real(50, 9000)),
        "money_decimals": draw(st.integers(0, 3)),
        "of_way": draw(st.sampled_from(["re_ring", "overbore", "plated_cylinder", "head"])),
    }
    return {"currency": "EUR", "tax": draw(share), **priced, **some(draw, more)}


def choice_by_consequence(draw: Draw) -> Values:
    """Return three costs, and a probability or a value with its uncertainty and its limit."""
    costs = {
        "currency": "EUR",
        "cost_of_reuse": draw(real(0, 500)),
        "cost_of_repair": draw(real(0, 2000)),
        "cost_of_comeback": draw(real(0.01, 5000)),
    }
    value = draw(real(0.01, 0.2))
    measured = {
        "value": {"value": value, "unit": "mm", "uncertainty": draw(real(0.001, 0.05))},
        "high": {"value": value + draw(real(-0.02, 0.02)), "unit": "mm"},
    }
    likely = measured if draw(st.booleans()) else {"known_within": draw(real(0.0, 1.0))}
    return {**costs, **likely, **some(draw, {"failure_hurts": draw(st.booleans())})}


ASSEMBLY: dict[str, Callable[[Draw], Values]] = {
    "torque-steps": torque_steps,
    "fastener-order": fastener_order,
    "ring-clocking": ring_clocking,
    "premix": premix,
    "run-in": run_in,
    "estimate": estimate,
    "choice-by-consequence": choice_by_consequence,
}
