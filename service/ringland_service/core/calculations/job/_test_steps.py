"""The parts of a job that test the engine further, and what all tests together suggest."""

from ringland_service.core.calculations.decision.cylinder_steps import begun
from ringland_service.core.calculations.diagnosis import diagnosis
from ringland_service.core.calculations.engine_tests import (
    charged_crank_torque,
    crankcase_leak,
    leak_area,
    leak_down,
    oil_use,
)
from ringland_service.core.calculations.engine_tests.compression_steps import two_stroke
from ringland_service.core.declare import Step

OPEN_CRANKCASE = (
    "the crankcase of a four-stroke breathes and is not tested under pressure and vacuum"
)
LEAK = begun("supply_kpa", "cylinder_kpa")

TESTS = (
    Step(
        part="leak_down",
        calculation=leak_down.CALCULATION,
        purpose="how much leaks, and where it is heard",
        sources={"gauge_error_pct": ("leak_gauge_error_pct",), "use": ("leak_use",)},
        when=LEAK,
    ),
    Step(
        part="leak_area",
        calculation=leak_area.CALCULATION,
        purpose="the leak as a hole, to compare with another tester",
        when=begun("other_restrictor_mm", "other_supply_kpa"),
    ),
    Step(
        part="charged_crank_torque",
        calculation=charged_crank_torque.CALCULATION,
        purpose="what the crank does when it is let go while the cylinder is charged",
        when=LEAK,
    ),
    Step(
        part="crankcase_leak",
        calculation=crankcase_leak.CALCULATION,
        purpose="whether the crankcase holds pressure and vacuum",
        sources={"trapped_volume_cc": ("crankcase_trapped_volume_cc",)},
        when=lambda known: "cycle" in known and begun("start_kpa", "vacuum_start_kpa")(known),
        falls_out=lambda known: "" if two_stroke(known) else OPEN_CRANKCASE,
    ),
    Step(
        part="oil_use",
        calculation=oil_use.CALCULATION,
        purpose="whether the engine uses more oil than it should",
        sources={"fuel_l": ("fuel_used_l",), "running_in": ("still_running_in",)},
        when=begun("oil_added_ml"),
    ),
)
DIAGNOSIS = Step(
    part="diagnosis",
    calculation=diagnosis.CALCULATION,
    purpose="what the tests and the signs together suggest",
    sources={
        "level_ratio": ("compression_level.ratio",),
        "level_gradeable": ("compression_level.gradeable",),
        "each_over_highest": ("cylinder_spread.each_over_highest",),
        "spread_pct": ("cylinder_spread.spread_pct",),
        "adjacent_low_pair": ("cylinder_spread.adjacent_low_pair",),
        "excess_gain_pct": ("wet_gain.excess_gain_pct",),
        "wet_over_expected": ("wet_gain.wet_over_expected",),
        "build_up_pattern": ("pressure_build_up.pattern",),
        "strokes_to_95": ("pressure_build_up.strokes_to_95",),
        "last_over_expected": ("pressure_build_up.last_over_expected",),
        "leak_pct": ("leak_down.leak_pct",),
        "leak_gradeable": ("leak_down.gradeable",),
        "leak_grade": ("leak_down.grade_on_makers_scale",),
        "crankcase_finding": ("crankcase_leak.finding",),
        "oil_use_grade": ("oil_use.grade",),
    },
)
