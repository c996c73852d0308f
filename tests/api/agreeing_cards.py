"""Requests that tell one thing twice: ones that agree, ones that do not, and the places between.

Figures invented; the limits between agreeing and not are worked by hand beside each case.
"""

from typing import Any


def mm(value: float, **more: Any) -> dict[str, Any]:
    return {"value": value, "unit": "mm", **more}


def cc(value: float, **more: Any) -> dict[str, Any]:
    return {"value": value, "unit": "cc", **more}


def kpa(*values: float, **more: Any) -> dict[str, Any]:
    told: dict[str, Any] = {"value": values[0]} if len(values) == 1 else {"values": list(values)}
    return {**told, "unit": "kPa", **more}


FOUR, TWO = {"cycle": "four_stroke"}, {"cycle": "two_stroke"}
# bore 68, stroke 66; parts 27.6 + pi/4*69.5^2*0.5/1000 + pi/4*68^2*0.3/1000 = 30.5863 cc.
PARTS = {
    "bore": mm(68),
    "stroke": mm(66),
    "chamber": cc(27.6),
    "gasket_bore": mm(69.5),
    "gasket_thickness": mm(0.5),
    "deck": mm(0.3),
    "dome": cc(0),
    "dish": cc(0),
    "crevice": cc(0),
}
DEGREES = {"value": 90, "unit": "deg"}
COOLANT = {"complaint": "white_smoke_coolant_falls", "evidence": ["dust_past_filter"]}
SURVEY = {
    "depth": {"values": [8, 30, 60], "unit": "mm"},
    "pin_axis": {"values": [68.06, 68.05, 68.01], "unit": "mm"},
    "thrust_axis": {"values": [68.09, 68.07, 68.02], "unit": "mm"},
}
OVERBORE = {
    "engine": FOUR | {"bore_kind": "iron", "bore": mm(68)},
    "cylinder": {"bore_survey": SURVEY, "unworn": mm(68.01), "wear_side_share": 0.5},
}
PISTONS = {
    "pistons": [{"mark": "+0.50 mm", "size": mm(68.461)}],
    "hone_stock": mm(0.06),
}
RANGE = {"clearance_low": mm(0.03), "clearance_high": mm(0.04)}
SQUISH = {
    "solder": {"values": [1.16, 1.2], "unit": "mm"},
    "base_gasket_fitted": mm(0.5),
    "base_gaskets": {"values": [0.2, 0.3, 0.4, 0.5], "unit": "mm"},
    "squish_wanted": mm(0.9),
}
PORTED = TWO | {"bore": mm(52), "stroke": mm(44), "rod": mm(84)}


def plan(**more: Any) -> dict[str, Any]:
    return OVERBORE | {"plan": PISTONS | more}


# name: request that agrees, request that does not, places that the refusal names at least.
CASES: dict[str, tuple[dict[str, Any], dict[str, Any], set[str]]] = {
    # 1 % of 30.89 is 0.309: 30.88 is 0.294 off, 30.91 is 0.324 off.
    "clearance beside its parts": (
        {"engine": PARTS | {"clearance": cc(30.88)}},
        {"engine": PARTS | {"clearance": cc(30.91)}},
        {"/engine/clearance", "/engine/chamber"},
    ),
    # 0.8 cc stated on the whole, 0.6 on the chamber: together 1.0; 31.5 is 0.914 off, 31.7 1.114.
    "clearance beside its parts, within their uncertainty": (
        {
            "engine": PARTS
            | {"clearance": cc(31.5, uncertainty=0.8), "chamber": cc(27.6, uncertainty=0.6)}
        },
        {
            "engine": PARTS
            | {"clearance": cc(31.7, uncertainty=0.8), "chamber": cc(27.6, uncertainty=0.6)}
        },
        {"/engine/clearance", "/engine/chamber"},
    ),
    # Piston 68.461 and 0.03 to 0.04 around it: finish 68.491 to 68.501.
    "new bore beside the finish size": (
        plan(**RANGE, new_bore=mm(68.5)),
        plan(**RANGE, new_bore=mm(68.52)),
        {"/plan/new_bore", "/plan/pistons"},
    ),
    "new bore beside the finish size, within its uncertainty": (
        plan(**RANGE, new_bore=mm(68.505, uncertainty=0.006)),
        plan(**RANGE, new_bore=mm(68.505, uncertainty=0.002)),
        {"/plan/new_bore", "/plan/pistons"},
    ),
    "new bore beside piston and one clearance": (
        plan(clearance_target=mm(0.035), new_bore=mm(68.496)),
        plan(clearance_target=mm(0.035), new_bore=mm(68.5)),
        {"/plan/new_bore", "/plan/pistons", "/plan/clearance_target"},
    ),
    "clearance wanted beside its range": (
        {"plan": RANGE | {"clearance_target": mm(0.04)}},
        {"plan": RANGE | {"clearance_target": mm(0.045)}},
        {"/plan/clearance_target", "/plan/clearance_low", "/plan/clearance_high"},
    ),
    "piston of the order beside the one chosen": (
        plan(**RANGE) | {"order": {"piston_mark": "+0.50 mm"}},
        OVERBORE
        | {
            "plan": RANGE
            | PISTONS
            | {"pistons": [*PISTONS["pistons"], {"mark": "+0.75 mm", "size": mm(68.711)}]},
            "order": {"piston_mark": "+0.75 mm"},
        },
        {"/order/piston_mark", "/plan/pistons"},
    ),
    # 1 % of 600 is 6.
    "reading beside its last stroke": (
        {"compression": {"reading": kpa(600), "stroke_readings": kpa(400, 520, 580, 605)}},
        {"compression": {"reading": kpa(600), "stroke_readings": kpa(400, 520, 580, 610)}},
        {"/compression/reading", "/compression/stroke_readings"},
    ),
    "reading beside those of all cylinders": (
        {"compression": {"reading": kpa(600), "readings": kpa(900, 603)}},
        {"compression": {"reading": kpa(700), "readings": kpa(900, 603)}},
        {"/compression/reading", "/compression/readings"},
    ),
    "readings beside the number of cylinders": (
        {"engine": FOUR | {"cylinder_count": 3}, "compression": {"readings": kpa(900, 880)}},
        {"engine": FOUR | {"cylinder_count": 2}, "compression": {"readings": kpa(900, 880, 870)}},
        {"/compression/readings", "/engine/cylinder_count"},
    ),
    "two-stroke beside overhead valves": (
        {"engine": TWO | {"valve_gear": "ports"}},
        {"engine": TWO | {"valve_gear": "overhead_valves"}},
        {"/engine/valve_gear", "/engine/cycle"},
    ),
    "two-stroke beside a valve lifter": (
        {"engine": TWO | {"decompressor": "manual_two_stroke_valve"}},
        {"engine": TWO | {"decompressor": "automatic_exhaust_lifter"}},
        {"/engine/decompressor", "/engine/cycle"},
    ),
    "decompressor beside its state": (
        {
            "engine": {"decompressor": "manual_lifter"},
            "compression": {"decompressor_state": "manual_not_used"},
        },
        {
            "engine": {"decompressor": "none"},
            "compression": {"decompressor_state": "automatic_active"},
        },
        {"/engine/decompressor", "/compression/decompressor_state"},
    ),
    "no decompressor beside its closing angle": (
        {
            "engine": {
                "decompressor": "unknown",
                "decompressor_closes": {"value": 90, "unit": "deg"},
            }
        },
        {"engine": {"decompressor": "none", "decompressor_closes": {"value": 90, "unit": "deg"}}},
        {"/engine/decompressor", "/engine/decompressor_closes"},
    ),
    **{
        f"two-stroke beside {section}": (
            {"engine": FOUR, section: told},
            {"engine": TWO, section: told},
            {"/engine/cycle", f"/{section}"},
        )
        for section, told in {
            "valve": {"sink_cut": mm(0.3)},
            "spring": {"free_length": mm(40)},
            "lash": {"found": mm(0.1)},
            "cam": {"lobe_height": mm(30)},
        }.items()
    },
    **{
        f"complaint {complaint} of another engine, {name}": (
            {"engine": fits, "signs": {"complaint": complaint}},
            {"engine": other, "signs": {"complaint": complaint, **signs}},
            {"/signs/complaint", f"/{'signs' if signs else 'engine'}/{name}"},
        )
        for complaint, name, fits, other, signs in (
            ("lean_hot_surging", "cycle", TWO, FOUR, {}),
            ("side_valve_weak", "cycle", FOUR, TWO, {}),
            (
                "side_valve_weak",
                "valve_gear",
                {"valve_gear": "side_valve"},
                {"valve_gear": "overhead_valves"},
                {},
            ),
            (
                "uneven_one_cylinder_weak",
                "cylinder_count",
                {"cylinder_count": 2},
                {"cylinder_count": 1},
                {},
            ),
            ("decompressor_suspected", "decompressor", {}, {"decompressor": "none"}, {}),
            ("white_smoke_coolant_falls", "cooling", FOUR, FOUR, {"cooling": "air"}),
        )
    },
    "largest bore beside its survey": (
        {"cylinder": {"bore_survey": SURVEY, "bore_largest": mm(68.092)}},
        {"cylinder": {"bore_survey": SURVEY, "bore_largest": mm(68.12)}},
        {"/cylinder/bore_largest", "/cylinder/bore_survey"},
    ),
    "smallest bore beside its survey": (
        {
            "cylinder": {
                "bore_survey": SURVEY,
                "bore_largest": mm(68.09),
                "bore_smallest": mm(68.01),
            }
        },
        {
            "cylinder": {
                "bore_survey": SURVEY,
                "bore_largest": mm(68.09),
                "bore_smallest": mm(67.98),
            }
        },
        {"/cylinder/bore_smallest", "/cylinder/bore_survey"},
    ),
    "bore at the old gap beside the survey there": (
        {
            "cylinder": {"bore_survey": SURVEY},
            "rings": {"old_gap_depth": mm(8), "old_gap_pin_axis": mm(68.061)},
        },
        {
            "cylinder": {"bore_survey": SURVEY},
            "rings": {"old_gap_depth": mm(8), "old_gap_pin_axis": mm(68.1)},
        },
        {"/rings/old_gap_pin_axis", "/cylinder/bore_survey"},
    ),
    # Squish 1.18 less 0.9 wanted asks for 0.22; 0.2 leaves 0.82 less U, under the floor:
    # 0.3 is chosen, 0.2 thinner.
    "base gasket told beside the one chosen": (
        {"engine": PORTED | {"thinner_base_gasket_by": mm(0.2)}, "squish": SQUISH},
        {"engine": PORTED | {"thinner_base_gasket_by": mm(0.1)}, "squish": SQUISH},
        {"/engine/thinner_base_gasket_by", "/squish/base_gaskets"},
    ),
    "order beside the number of cylinders": (
        {"engine": {"cylinder_count": 2}, "order": {"cylinder_number": 2}},
        {"engine": {"cylinder_count": 2}, "order": {"cylinder_number": 3}},
        {"/order/cylinder_number", "/engine/cylinder_count"},
    ),
}

FLAT: dict[str, tuple[str, dict[str, Any], dict[str, Any], set[str]]] = {
    "reading and strokes": (
        "compression-test",
        {"reading": kpa(600), "stroke_readings": kpa(400, 520, 580, 600)},
        {"reading": kpa(600), "stroke_readings": kpa(400, 520, 580, 640)},
        {"/reading", "/stroke_readings"},
    ),
    "readings and cylinders": (
        "cylinder-spread",
        {"readings": kpa(900, 880), "cylinder_count": 3},
        {"readings": kpa(900, 880, 860), "cylinder_count": 2},
        {"/readings", "/cylinder_count"},
    ),
    "clearance and range": (
        "cylinder-decision",
        RANGE | {"clearance_target": mm(0.035)},
        RANGE | {"clearance_target": mm(0.02)},
        {"/clearance_target", "/clearance_low", "/clearance_high"},
    ),
    "bore and survey": (
        "piston-clearance",
        {
            "piston_size": mm(67.95),
            "bore_survey": SURVEY,
            "bore_largest": mm(68.12, uncertainty=0.04),
        },
        {
            "piston_size": mm(67.95),
            "bore_survey": SURVEY,
            "bore_largest": mm(68.12, uncertainty=0.02),
        },
        {"/bore_largest", "/bore_survey"},
    ),
    "complaint and cooling": (
        "diagnosis",
        FOUR
        | {
            "complaint": "white_smoke_coolant_falls",
            "cooling": "liquid",
            "evidence": ["dust_past_filter"],
        },
        FOUR
        | {
            "complaint": "white_smoke_coolant_falls",
            "cooling": "air",
            "evidence": ["dust_past_filter"],
        },
        {"/complaint", "/cooling"},
    ),
}
