"""Questions about leaks of an assembled engine: of its cylinder, its crankcase and its oil."""

from collections.abc import Callable

from hypothesis import strategies as st
from possible_cylinders import any_of
from possible_engines import Draw, Values, bottom_end, place, real, some, taken


def tester(draw: Draw) -> Values:
    """Return a tester as it reads: the cylinder below its supply, and not at nothing."""
    supply = draw(real(60, 990))
    cylinder = supply * draw(real(0.1, 0.97))
    restrictor = {"restrictor_mm": draw(real(0.4, 2.8))}
    return {"supply_pressure_kpa": supply, "cylinder_pressure_kpa": cylinder, **restrictor}


def leak_down(draw: Draw) -> Values:
    """Return a leak-down on a tester of any kind, its gauges and conditions told or not."""
    found = tester(draw)
    rocked = {
        "rocked_forward_pressure_kpa": found["cylinder_pressure_kpa"] * draw(real(0.9, 1.01)),
        "rocked_back_pressure_kpa": found["cylinder_pressure_kpa"] * draw(real(0.9, 1.01)),
    }
    span = {"gauge_full_scale_kpa": max(101.0, 1.1 * found["supply_pressure_kpa"])}
    dial = span | {"gauge_error_pct": draw(real(0.5, 9.0))}
    compared = {"gauge_difference_kpa_diff": draw(real(0.0, 4.0))}
    residual = compared | {"gauge_residual_kpa_diff": draw(real(0.5, 10.0))}
    good = draw(real(2.0, 15.0))
    scale = {
        "good_to_pct": good,
        "serviceable_to_pct": 2.0 * good,
        "worn_to_pct": 3.0 * good,
    }
    cycle = draw(st.sampled_from(["four_stroke", "two_stroke"]))
    more = {
        **rocked,
        "duty": draw(st.sampled_from(["normal", "racing"])),
        "piston_at": draw(st.sampled_from(["firing_tdc", "below_tdc", "unknown"])),
        "decompressor_state": draw(st.sampled_from(["none", "automatic_active", "unknown"])),
        "engine_warm": draw(st.booleans()),
        "heard_at": draw(st.sampled_from(["exhaust", "intake", "radiator", "nowhere"])),
        "cycle": cycle,
    }
    gauges = draw(st.sampled_from([dial, compared, residual, {}]))
    return found | some(draw, more) | gauges | (scale if draw(st.booleans()) else {})


def leak_area(draw: Draw) -> Values:
    """Return a reading, wanted on another tester or not."""
    other = {
        "other_restrictor_mm": draw(real(0.4, 2.8)),
        "other_supply_pressure_kpa": draw(real(60, 990)),
        "coefficient_uncertainty_pct": draw(real(0, 40)),
        "bore_mm": draw(real(30, 120)),
    }
    return tester(draw) | place(draw) | some(draw, other)


def charged_crank_torque(draw: Draw) -> Values:
    """Return an engine, the supply, and angles at which its cylinder is still shut."""
    engine = taken(bottom_end(draw), "bore_mm", "stroke_mm", "rod_mm")
    opens = draw(real(60, 170))
    more = {
        "held_at_deg": draw(real(0, 50)),
        "second_deg": draw(real(0, 50)),
        "opens_deg": opens,
        "bar_mm": draw(real(100, 900)),
    }
    return {"supply_pressure_kpa": draw(real(60, 990)), **engine, **some(draw, more)}


def crankcase_leak(draw: Draw) -> Values:
    """Return a pressure test, a vacuum test, or both."""
    start, vacuum = draw(real(10, 58)), draw(real(-58, -10))
    pressure = {
        "start_kpa": start,
        "end_kpa": start * draw(real(0.3, 1.0)),
        "minutes": draw(real(1, 50)),
    }
    warm = {"start_temperature_c": draw(real(5, 60)), "end_temperature_c": draw(real(5, 60))}
    under = {
        "vacuum_start_kpa": vacuum,
        "vacuum_end_kpa": vacuum * draw(real(0.3, 1.0)),
        "vacuum_minutes": draw(real(1, 50)),
    }
    seen = {
        "trapped_volume_cc": draw(real(100, 3000)),
        "plates_soaped": draw(st.booleans()),
        "second_crank_position": draw(st.booleans()),
    }
    tests = any_of(draw, pressure, under)
    if "start_kpa" in tests and draw(st.booleans()):
        tests |= warm
    return tests | place(draw) | some(draw, seen)


def oil_use(draw: Draw) -> Values:
    """Return oil used over a distance, some hours, an amount of fuel, or all of them."""
    flags = ("leaks_seen", "level_read_alike", "overfilled", "fuel_in_oil", "not_run_in_yet")
    return {
        "added_ml": draw(real(10, 5000)),
        **any_of(
            draw,
            {"distance_km": draw(real(50, 20000))},
            {"hours": draw(real(1, 1000))},
            {"fuel_l": draw(real(1, 2000))},
        ),
        **some(draw, {name: draw(st.booleans()) for name in flags}),
    }


LEAKS: dict[str, Callable[[Draw], Values]] = {
    "leak-down": leak_down,
    "leak-area": leak_area,
    "charged-crank-torque": charged_crank_torque,
    "crankcase-leak": crankcase_leak,
    "oil-use": oil_use,
}
