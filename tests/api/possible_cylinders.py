"""Questions about measuring and machining a cylinder and the parts that run in it."""

from collections.abc import Callable

from hypothesis import strategies as st
from possible_engines import Draw, Values, real, some, survey

PLAIN_BORES = ["iron", "iron_sleeve_in_aluminium"]
FITS = ["new", "used"]


def any_of(draw: Draw, *parts: Values) -> Values:
    """Return some of the parts together, at least one."""
    chosen = draw(st.lists(st.sampled_from(range(len(parts))), min_size=1, unique=True))
    return {name: value for i in sorted(chosen) for name, value in parts[i].items()}


def bore_survey(draw: Draw) -> Values:
    bore = draw(real(30.0, 150.0))
    sizes = {
        "unworn_mm": bore + draw(real(-0.01, 0.02)),
        "nominal_bore_mm": bore - draw(real(0.0, 0.3)),
    }
    warm = {
        "bore_temperature_c": draw(real(1, 49)),
        "bore_kind": draw(st.sampled_from(PLAIN_BORES)),
    }
    use = {"bore_use": draw(st.sampled_from(["used", "re_ring", "fresh"]))}
    return survey(draw, bore) | some(draw, sizes | use) | (warm if draw(st.booleans()) else {})


def hot_clearance(draw: Draw) -> Values:
    bore = draw(real(30.0, 150.0))
    kinds = {
        "piston_material": draw(st.sampled_from(["piston_cast_eutectic", "grey_iron"])),
        "bore_kind": draw(st.sampled_from([*PLAIN_BORES, "plated_aluminium"])),
    }
    alphas = {"piston_alpha_per_k": 1.95e-5, "bore_alpha_per_k": draw(st.floats(9e-6, 25e-6))}
    return {
        "bore_mm": bore,
        "piston_size_mm": bore - draw(real(0.0, 0.4)),
        "bore_hot_c": draw(real(20, 250)),
        "piston_hot_c": draw(real(20, 250)),
        **draw(st.sampled_from([kinds, alphas, kinds | alphas])),
    }


def ring_side_clearance(draw: Draw) -> Values:
    bore = draw(real(30.0, 150.0))
    ways: list[Values] = []
    for ring in ("top", "second"):
        width, radial = draw(real(0.8, 4.0)), draw(real(1.0, 0.05 * bore + 0.5))
        wider, deeper = draw(real(0.0, 0.3)), draw(real(0.0, 0.5))
        ways += [
            {f"{ring}_feeler_mm": draw(real(0.01, 0.3))},
            {f"{ring}_width_mm": width, f"{ring}_groove_mm": width + wider},
            {
                "bore_mm": bore,
                f"{ring}_thickness_mm": radial,
                f"{ring}_groove_root_mm": bore - 2.0 * radial - deeper,
            },
        ]
    more = {"measured_with_new_ring": draw(st.booleans()), "condition": draw(st.sampled_from(FITS))}
    return any_of(draw, *ways) | some(draw, more)


def pin_fits(draw: Draw) -> Values:
    pin = draw(real(8.0, 38.0))
    press = draw(st.booleans())
    small_end = pin - draw(real(0.01, 0.05)) if press else pin + draw(real(0.0, 0.1))
    measured = any_of(
        draw,
        {"piston_pin_bore_mm": pin + draw(real(-0.005, 0.05))},
        {"small_end": "press_fit" if press else "plain", "small_end_bore_mm": small_end},
        {"pin_worn_mm": pin - draw(real(0.001, 0.05))},
    )
    more = {"heat_marks": draw(st.booleans()), "condition": draw(st.sampled_from(FITS))}
    return {"pin_mm": pin, **measured, **some(draw, more)}


def rod_play(draw: Draw) -> Values:
    rod = {"rod_mm": draw(real(60, 250)), "big_end_width_mm": draw(real(8, 40))}
    measured = any_of(
        draw,
        {"big_end_side_mm": draw(real(0.02, 1.0))},
        {"big_end_radial_mm": draw(real(0.0, 0.2)), "big_end": "plain"},
        {"small_end_tip_rock_mm": draw(real(0.0, 3.0)), **rod},
        {"runout_left_mm": draw(real(0.0, 0.2))},
        {"runout_right_mm": draw(real(0.0, 0.2))},
    )
    return measured | some(draw, {"condition": draw(st.sampled_from(FITS))})


def clean_up(draw: Draw) -> Values:
    unworn = draw(real(30.0, 150.0))
    worn = unworn + draw(real(0.001, 0.5))
    sides = st.sampled_from(["worn_side", "opposite", "unknown"])
    scores = [
        {
            "local_mm": unworn + draw(real(0.1, 0.9)) * (worn - unworn),
            "depth_radial_mm": draw(real(0.0, 0.3)),
            **some(draw, {"depth_from_deck_mm": draw(real(0, 100)), "side": draw(sides)}),
        }
        for _ in range(draw(st.integers(1, 4)))
    ]
    more = {
        "wear_side_share": draw(real(0.5, 1.0)),
        "scores": scores,
    }
    return {"unworn_mm": unworn, "bore_largest_mm": worn, **some(draw, more)}


def oversize_choice(draw: Draw) -> Values:
    """Return a choice of pistons; the largest may or may not clean the bore up."""
    nominal = draw(real(30.0, 150.0))
    steps = sorted(draw(st.sets(st.sampled_from([0.25, 0.5, 0.75, 1.0]), min_size=1)))
    clearance = draw(real(0.02, 0.1))
    more: Values = {}
    if draw(st.booleans()):
        more |= {"nominal_bore_mm": nominal, "largest_oversize_mm": 1.0}
    return {
        "bore_kind": draw(st.sampled_from(PLAIN_BORES)),
        "clean_up_mm": nominal + draw(real(0.0, 1.2)),
        "pistons": [
            {"mark": f"+{step:.2f}", "size_mm": nominal + step - clearance} for step in steps
        ],
        "clearance_target_mm": clearance,
        "hone_stock_mm": draw(real(0.02, 0.15)),
        **more,
    }


def liner_wall(draw: Draw) -> Values:
    bore = draw(real(30.0, 150.0))
    wall = draw(real(1.0, 6.0))
    kinds = st.sampled_from(["dry", "wet_or_air_cooled", "parent_iron"])
    more = {"core_shift_mm": draw(real(0.0, 0.8)), "liner_kind": draw(kinds)}
    return {"finish_high_mm": bore, "liner_od_mm": bore + 2.0 * wall, **some(draw, more)}


def bore_order(draw: Draw) -> Values:
    piston = draw(real(30.0, 150.0))
    low = draw(real(0.01, 0.1))
    finish = piston + low
    readings = draw(st.lists(real(-0.02, 0.04), min_size=1, max_size=12))
    returned = {
        "returned_readings_mm": [finish + more for more in readings],
        "returned_out_of_round_mm": draw(real(0.0, 0.03)),
        "returned_taper_mm": draw(real(0.0, 0.03)),
        "size_uncertainty_mm": draw(real(0.001, 0.01)),
    }
    return {
        "bore_kind": draw(st.sampled_from(PLAIN_BORES)),
        "piston_size_mm": piston,
        "clearance_low_mm": low,
        "clearance_high_mm": low + draw(real(0.002, 0.03)),
        "hone_stock_mm": draw(real(0.0, 0.15)),
        **some(draw, returned),
    }


def crosshatch(draw: Draw) -> Values:
    more = {
        "included_angle_deg": draw(real(15, 70)),
        "stroke_drive": draw(st.sampled_from(["constant", "crank", "unknown"])),
        "cycle": draw(st.sampled_from(["four_stroke", "two_stroke"])),
        "ring_kind": draw(st.sampled_from(["plain_iron", "coated"])),
        "bore_kind": draw(st.sampled_from(PLAIN_BORES)),
    }
    return {
        "bore_mm": draw(real(30, 150)),
        "spindle_speed_rpm": draw(real(60, 600)),
        "travel_mm": draw(real(40, 250)),
        "strokes_per_minute_rpm": draw(real(20, 200)),
        **some(draw, more),
    }


def sleeve_fit(draw: Draw) -> Values:
    cylinder = draw(real(30.0, 150.0))
    more = {
        "drop_in_clearance_mm": draw(real(0.01, 0.1)),
        "held_by": draw(st.sampled_from(["fit_alone", "flange_or_head"])),
        "sleeve_temperature_c": draw(real(-79, 30)),
        "running_temperature_c": draw(real(80, 200)),
        "cylinder_alpha_per_k": draw(st.floats(1.8e-5, 2.5e-5)),
        "sleeve_alpha_per_k": draw(st.floats(9e-6, 1.3e-5)),
    }
    interference = draw(real(0.02, 0.2))
    sleeve = {"cylinder_bore_mm": cylinder, "sleeve_od_mm": cylinder + interference}
    return sleeve | some(draw, more)


CYLINDERS: dict[str, Callable[[Draw], Values]] = {
    "bore-survey": bore_survey,
    "hot-clearance": hot_clearance,
    "ring-side-clearance": ring_side_clearance,
    "pin-fits": pin_fits,
    "rod-play": rod_play,
    "clean-up": clean_up,
    "oversize-choice": oversize_choice,
    "liner-wall": liner_wall,
    "bore-order": bore_order,
    "crosshatch": crosshatch,
    "sleeve-fit": sleeve_fit,
}
