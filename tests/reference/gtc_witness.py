"""What GTC says of a result: the formula texts of the service, put through its uncertain numbers.

GTC is a general-purpose library whose numbers carry their own uncertainty, by automatic
differentiation. What the service says in prose is written out here by hand.
"""

import math
from typing import Any

import GTC

from ringland_service.core.declare import declared
from ringland_service.core.declare.expressions import names_in
from ringland_service.core.declare.fields import ResultField
from ringland_service.engine.request import Request, all_components, fields_given
from ringland_service.engine.response import Response


def degrees(function: Any) -> Any:
    return lambda x: function(x * (math.pi / 180.0))


def in_degrees(function: Any) -> Any:
    return lambda x: function(x) * (180.0 / math.pi)


FUNCTIONS: dict[str, Any] = {
    "__builtins__": {},
    "pi": math.pi,
    "sqrt": GTC.sqrt,
    "sind": degrees(GTC.sin),
    "cosd": degrees(GTC.cos),
    "asind": in_degrees(GTC.asin),
    "acosd": in_degrees(GTC.acos),
    "max": max,
    "min": min,
    "abs": lambda x: x if x >= 0 else -x,
}


def clearance(v: Any, bore: str, *names: str) -> Any:
    """Sum of the parts; a part that is not told counts as none."""
    chamber, gasket_mm, gasket_bore, gasket_area, deck, dome, dish, crevice = (
        v.told(name, 0.0) for name in names
    )
    opening = gasket_area or math.pi / 4 * gasket_bore**2
    face = math.pi / 4 * v[bore] ** 2
    return chamber + (opening * gasket_mm + face * deck) / 1000 - dome + dish + crevice


def clearance_now(v: Any) -> Any:
    """Chamber, gasket, deck, crown and crevice, or what the burette says."""
    opening = v.told("gasket_bore_mm") or v.told("gasket_area_mm2")
    if None in (opening, *map(v.told, ("chamber_cc", "gasket_thickness_mm", "deck_mm"))):
        return v["clearance_by_burette_cc"]
    land, height = v.told("land_mm"), v.told("land_height_mm")
    if land is not None and height is not None and v.told("crevice_cc") is None:
        v["crevice_cc"] = math.pi / 4 * (v["bore_mm"] ** 2 - land**2) * height / 1000
    return clearance(v, "bore_mm", *PARTS)


PARTS = (
    "chamber_cc",
    "gasket_thickness_mm",
    "gasket_bore_mm",
    "gasket_area_mm2",
    "deck_mm",
    "dome_cc",
    "dish_cc",
    "crevice_cc",
)
KEPT = ("chamber_cc", "crevice_cc")


def clearance_bored(v: Any) -> Any:
    """The same after boring: what the new piston and gasket bring, else what there was."""
    new = {n: n if n in KEPT or v.told(f"new_{n}") is None else f"new_{n}" for n in PARTS}
    if new["gasket_bore_mm"] != "gasket_bore_mm":
        new["gasket_area_mm2"] = "none: the new gasket is round"
    return clearance(v, "new_bore_mm", *new.values())


def of_profile(v: Any) -> tuple[Any, Any]:
    """Pitch and minor diameter of the metric profile, where not given (ISO 724, from memory)."""
    pitch, minor = v.told("thread_pitch_diameter_mm"), v.told("thread_minor_diameter_mm")
    height = math.sqrt(3.0) / 2.0 * v.told("pitch_mm", 0.0)
    pitch = v["thread_diameter_mm"] - 3 / 4 * height if pitch is None else pitch
    minor = v["thread_diameter_mm"] - 17 / 12 * height if minor is None else minor
    return pitch, minor


def torsion(v: Any) -> Any:
    """Torque in the shank over its section (VDI 2230, from memory)."""
    pitch, minor = of_profile(v)
    lever = v["pitch_mm"] / (2 * math.pi) + 0.58 * pitch * v["thread_friction"]
    return 16 * v["clamp_n"] * lever / (math.pi * ((pitch + minor) / 2) ** 3)


def stress_area(v: Any) -> Any:
    """As given, else of the metric profile (ISO 898-1, from memory)."""
    if v.told("stress_area_mm2") is not None:
        return v["stress_area_mm2"]
    pitch, minor = of_profile(v)
    return math.pi / 4 * ((pitch + minor) / 2) ** 2


def nut_factor(v: Any) -> Any:
    """K = (P/(2π) + µ·d2/(2·cos 30°) + µ·1.3·d/2)/d (textbooks, from memory)."""
    d, p = v["thread_diameter_mm"], v["pitch_mm"]
    thread = v["thread_friction"] * of_profile(v)[0] / (2 * math.cos(math.pi / 6))
    return (p / (2 * math.pi) + thread + v["head_friction"] * 1.3 * d / 2) / d


def air(v: Any) -> Any:
    """ISO 2533 (from memory)."""
    if v.told("air_pressure_kpa_abs") is not None:
        return v["air_pressure_kpa_abs"]
    sea = v.told("weather_report_kpa_abs", 101.325)
    exponent = 9.80665 / (287.05287 * 0.0065)
    return sea * (1 - 0.0065 * v.told("altitude_m", 0.0) / 288.15) ** exponent


def turns(v: Any) -> Any:
    """The screw's turns: the law of the lever where it sits at the cam's end."""
    at_cam = v["adjuster"] == "screw_at_cam" and v.told("rocker_ratio") is not None
    ratio = v["rocker_ratio"] if at_cam else 1.0
    off = FUNCTIONS["abs"](v["found_mm"] - v["target_mm"])
    return off / (ratio * v["screw_pitch_mm"])


# What the service says in prose, written out by hand from the words of its basis.
IN_PROSE: dict[str, Any] = {
    "lowest_over_highest": lambda v: min(v["readings_kpa"]) / max(v["readings_kpa"]),
    "each_over_highest": lambda v: [p / max(v["readings_kpa"]) for p in v["readings_kpa"]],
    "first_over_expected": lambda v: v["stroke_readings_kpa"][0] / v["expected_kpa"],
    "last_over_expected": lambda v: v["stroke_readings_kpa"][-1] / v["expected_kpa"],
    "air_pressure_here_kpa_abs": air,
    "clearance_cc": clearance_now,
    "clearance_before_cc": lambda v: clearance(v, "bore_mm", *PARTS),
    "clearance_after_cc": clearance_bored,
    "gasket_opening_mm2": lambda v: (
        v.told("gasket_area_mm2") or math.pi / 4 * v["gasket_bore_mm"] ** 2
    ),
    "bore_largest_at_20c_mm": lambda v: (
        v["bore_largest_mm"] / (1 + v["bore_alpha_used_per_k"] * (v["bore_temperature_c"] - 20))
    ),
    "flatness_mm": lambda v: max(v["lines_mm"]),
    "stress_area_used_mm2": stress_area,
    "torsion_stress_mpa": torsion,
    "bore_alpha_used_per_k": lambda v: v["bore_alpha_per_k"],
    "chosen_gasket_mm": lambda v: next(
        g for g in v["base_gaskets_mm"] if GTC.value(g) == v.found.outputs.chosen_gasket_mm
    ),
    "piston_proud_after_mm": lambda v: v["thinner_by_mm"] - v["piston_edge_below_deck_at_tdc_mm"],
    "nut_factor_used": nut_factor,
    "turn_fraction": turns,
}


class Witness(dict[str, Any]):
    """Inputs and results by name as GTC's uncertain numbers, the results by their formula texts.

    Each component is one uncertain number, and moves each input that it moves.
    """

    def __init__(self, request: Request, found: Response) -> None:
        super().__init__(FUNCTIONS)
        self.found = found
        effects: dict[Any, Any] = {}
        for component in all_components(request, found.calculation):
            error = GTC.ureal(0.0, float(component.u))
            for move in component.effects:
                effects[move.path] = effects.get(move.path, 0.0) + error * float(move.sensitivity)
        for path, _, value in fields_given(request.inputs):
            if isinstance(value, tuple):
                each = [v + effects.get((*path, i), 0.0) for i, v in enumerate(value) if number(v)]
                self[str(path[-1])] = each
            else:
                self[str(path[-1])] = value + effects[path] if path in effects else value

    def told(self, name: str, absent: Any = None) -> Any:
        """An input as told."""
        value = self.get(name)
        return absent if value is None else value

    def __missing__(self, name: str) -> Any:
        field = declared(type(self.found.outputs)).get(name)
        if isinstance(field, ResultField) and field.formula:
            for needed in names_in(field.formula):
                self[needed]  # looked up, so that it is there for the evaluation
            self[name] = eval(field.formula, dict(self))  # noqa: S307 - text of the service
        elif field is not None and name not in self.found.u:
            self[name] = getattr(self.found.outputs, name)
        elif name in IN_PROSE:
            self[name] = IN_PROSE[name](self)
        else:
            raise KeyError(name)
        return self[name]


def number(value: Any) -> bool:
    """Whether a reading is there."""
    return isinstance(value, float)


def witnessed(request: Request, found: Response, name: str) -> Any:
    """GTC's expanded uncertainty of a result, or of each of a list; None where it has none."""
    said = Witness(request, found)[name]
    return [expanded(y) for y in said] if isinstance(said, list) else expanded(said)


def expanded(said: Any) -> float | None:
    """GTC's expanded uncertainty (k = 2) of a number."""
    u = 0.0 if isinstance(said, (int, float)) else GTC.uncertainty(said)
    return 2.0 * u if u else None
