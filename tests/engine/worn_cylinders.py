"""Invented worn cylinders, their pistons and rings, and what is meant to be done with them.

Sizes fit one another as those of an engine do (common practice, no source), in canonical units.
"""

from drawn_figures import PLATED, Drawn, Job, Section, Values


def _cylinder(of: Drawn, job: Job) -> Values:
    """Return a survey of a bore worn towards the top, more across the pin than along it."""
    bore, count = job["engine"]["bore_mm"] + 0.008, of.chance.choice([3, 4, 5, 6])
    depth = [
        round(8.0 + 0.85 * job["engine"]["stroke_mm"] * k / (count - 1), 1) for k in range(count)
    ]
    most = of.real(0.01, 0.09)
    worn = [most * (1.0 - k / count) ** 1.5 + of.real(0.0, 0.003) for k in range(count)]
    thrust = [round(bore + one, 3) for one in worn]
    pin = [round(bore + 0.6 * one + of.real(0.0, 0.003), 3) for one in worn]
    found: Values = {
        "bore_survey": {"depth_mm": depth, "pin_axis_mm": pin, "thrust_axis_mm": thrust},
        "unworn_mm": round(bore - of.real(0.0, 0.006), 3),
        "damage": "none",
        "surface": "glazed",
        "ridge": "none",
        **of.some(wear_side_share=of.real(0.5, 1.0, 2)),
    }
    if of.often():
        found |= {"skirt_from_mm": depth[1], "skirt_to_mm": depth[-1]}
    if of.often():
        reached = [(thrust[k], of.real(0.02, 0.09)) for k in of.chance.sample(range(count), 2)]
        found["scores"] = [{"local_mm": at, "depth_radial_mm": deep} for at, deep in reached]
    else:
        found |= of.some(bore_temperature_c=of.real(12, 28, 1))
    if of.often():
        found |= {"liner_od_mm": bore + of.real(5.0, 9.0, 2), "liner_kind": "dry"}
    return found


def _piston(of: Drawn, job: Job) -> Values:
    piston, pin = job["engine"]["bore_mm"] - of.real(0.03, 0.09), of.real(12.0, 22.0)
    kind = of.chance.choice(["cast_air_cooled", "forged"])
    if job["engine"]["cycle"] == "two_stroke":
        kind = "two_stroke_plated" if job["engine"]["bore_kind"] == PLATED else "two_stroke_iron"
    fits = of.some(
        piston_pin_bore_mm=pin + of.real(0.005, 0.02),
        small_end_bore_mm=pin + of.real(0.01, 0.04),
        pin_worn_mm=pin - of.real(0.002, 0.012),
    )
    return {
        "piston_size_mm": piston,
        "piston_condition": "used",
        "piston_kind": kind,
        **of.some(
            piston_size_new_mm=piston + of.real(0.01, 0.03),
            piston_temperature_c=of.real(12, 28, 1),
            measuring_height_mm=of.real(8, 14, 1),
            new_rings_piston_mm=piston + of.real(0.01, 0.03),
        ),
        **({"pin_mm": pin, "small_end": "plain", **fits} if fits else {}),
    }


def _rings(of: Drawn, job: Job) -> Values:
    width, radial, bore = of.real(1.2, 2.5), of.real(2.0, 3.5), job["engine"]["bore_mm"]
    groove = {"top_width_mm": width, "top_groove_mm": width + of.real(0.03, 0.1)}
    root = bore - 2.0 * radial - of.real(0.2, 0.6)
    thickness = {"second_thickness_mm": radial, "second_groove_root_mm": root}
    return {
        **of.some(top_gap_mm=of.real(0.15, 0.45), second_gap_mm=of.real(0.2, 0.5)),
        **of.some(old_gap_mm=of.real(0.4, 0.9), gap_when_new_mm=of.real(0.2, 0.35)),
        **of.some(top_feeler_mm=of.real(0.03, 0.1), new_rings_gap_mm=of.real(0.2, 0.4)),
        "old_gap_pin_axis_mm": bore + of.real(0.02, 0.04),
        "old_gap_thrust_axis_mm": bore + of.real(0.02, 0.05),
        **(groove if of.often() else {}),
        **(thickness if of.often() else {}),
    }


def _plan(of: Drawn, job: Job) -> Values:
    """Return pistons on offer with the clearance wanted: oversizes, or those of a plated bore."""
    bore, low = job["engine"]["bore_mm"], of.real(0.03, 0.05)
    steps = (-0.02, -0.01, 0.0) if job["engine"]["bore_kind"] == PLATED else (0.25, 0.5, 1.0)
    sizes = [bore + step - of.real(0.035, 0.045) for step in steps]
    fit = {"clearance_low_mm": low, "clearance_high_mm": low + of.real(0.01, 0.02)}
    found: Values = {
        "pistons": [{"mark": chr(65 + k), "size_mm": one} for k, one in enumerate(sizes)],
        **fit,
        "hone_stock_mm": of.real(0.04, 0.08),
    }
    if job["engine"]["bore_kind"] == PLATED:
        return found
    if of.often(0.3):
        return {"new_bore_mm": bore + of.real(0.25, 0.5)}
    return found | of.some(largest_oversize_mm=1.0)


def _squish(of: Drawn, job: Job) -> Values:
    solder = of.reals(2, 0.9, 1.5, 2)
    gaskets = {"base_gasket_fitted_mm": 0.5, "base_gaskets_mm": [0.2, 0.3, 0.4, 0.5]}
    found = {"solder_mm": solder, **of.some(solder_uncertainty_mm=0.04)}
    return found | ({"squish_wanted_mm": 0.9, **gaskets} if of.often() else {})


def _sleeve(of: Drawn, _: Job) -> Values:
    bore = of.real(60.0, 90.0)
    sleeve = {"cylinder_bore_mm": bore, "sleeve_od_mm": bore + of.real(0.05, 0.12)}
    expansion = {"cylinder_alpha_per_k": 2.2e-5, "sleeve_alpha_per_k": 1.1e-5}
    return sleeve | expansion | {"drop_in_clearance_mm": 0.05, "running_temperature_c": 130.0}


CYLINDER: dict[str, Section] = {
    "cylinder": _cylinder,
    "piston": _piston,
    "rings": _rings,
    "plan": _plan,
    "squish": _squish,
    "sleeve": _sleeve,
}
