"""The parts of a compression test, shared by the test itself and by the job card."""

from collections.abc import Mapping

from ringland_service.core.calculations.engine_tests import (
    compression_level,
    cranking_pressure,
    cylinder_spread,
    pressure_build_up,
    wet_gain,
)
from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.calculations.geometry import after_works as works
from ringland_service.core.calculations.geometry import (
    compression_ratio,
    dynamic_ratio,
    port_timing,
)
from ringland_service.core.declare import Known, Step
from ringland_service.core.metrology.candidates import Candidates, smallest

EXPECTED = ("expected_kpa", "cranking_pressure.mid_kpa")
PORTS_CLOSE = "a two-stroke has no intake valve that closes: its trapped ratio stands in its place"
NO_PORTS = "a four-stroke has no ports in its bore"
CLEARANCE = ("clearance_cc", "compression_ratio.clearance_cc")


def four_stroke(known: Known) -> bool:
    """Return whether the engine is, or may be, a four-stroke."""
    return bool(known.get("cycle") != "two_stroke")


def two_stroke(known: Known) -> bool:
    """Return whether the engine is known to be a two-stroke."""
    return not four_stroke(known)


def _four_stroke_with_ports(known: Known) -> bool:
    told = {"exhaust_port_top_below_deck_mm", "transfer_port_top_below_deck_mm"}
    return known.get("cycle") == "four_stroke" and bool(told & known.keys())


def several_cylinders(known: Known) -> bool:
    """Return whether there is another cylinder to compare with."""
    return bool(known.get("cylinder_count", 1) > 1 or "readings_kpa" in known)


def last_reading(known: Known) -> Mapping[str, tuple[float, str]]:
    """Return the reading graded, where it stands among others: the last stroke's, or the lowest."""
    if "reading_kpa" in known:
        return {}
    if "stroke_readings_kpa" in known:
        return {"reading_kpa": (known["stroke_readings_kpa"][-1], "stroke_readings_kpa")}
    if "readings_kpa" in known:
        return {"reading_kpa": (min(known["readings_kpa"]), "readings_kpa")}
    return {}


def lowest_of(known: Known) -> Mapping[str, Candidates]:
    """Return what the reading graded is the lowest of, where it is one of several cylinders'."""
    if "reading_kpa" in known or "stroke_readings_kpa" in known or "readings_kpa" not in known:
        return {}
    return {"reading_kpa": smallest(known["readings_kpa"])}


def ratio_wanted(known: Known) -> bool:
    """Return whether the clearance volume is still wanted, or its measurement has begun."""
    begun = {"chamber_cc", "burette_fill_cc"} & known.keys()
    return "clearance_cc" not in known or bool(begun)


RATIO = Step(
    part="compression_ratio",
    calculation=compression_ratio.CALCULATION,
    purpose="static compression ratio and clearance volume, on which the expected reading rests",
    when=ratio_wanted,
)

EXPECTATION = (
    Step(
        part="dynamic_ratio",
        calculation=dynamic_ratio.CALCULATION,
        purpose="compression ratio from the intake's closing, on which the expected reading rests",
        sources={"clearance_cc": CLEARANCE},
        when=lambda known: four_stroke(known) or "intake_closes_deg" in known,
        falls_out=lambda known: "" if four_stroke(known) else PORTS_CLOSE,
    ),
    Step(
        part="port_timing",
        calculation=port_timing.CALCULATION,
        purpose="trapped compression ratio, on which a two-stroke's expected reading rests",
        sources={"clearance_cc": CLEARANCE},
        when=lambda known: two_stroke(known) or _four_stroke_with_ports(known),
        falls_out=lambda known: "" if two_stroke(known) else NO_PORTS,
        gives_way={
            **works.CLEARANCE_AFTER,
            "geometric_ratio_after": works.RATIO_AFTER["ratio_after"],
            "trapped_ratio_after": f"{works.PORTS}.trapped_ratio",
            "trapped_volume_after_cc": f"{works.PORTS}.trapped_volume_cc",
            "exhaust_duration_after_deg": f"{works.PORTS}.exhaust_duration_deg",
            "transfer_duration_after_deg": f"{works.PORTS}.transfer_duration_deg",
            "blowdown_after_deg": f"{works.PORTS}.blowdown_deg",
        },
    ),
    Step(
        part="cranking_pressure",
        calculation=cranking_pressure.CALCULATION,
        purpose="the reading that this engine should give at this altitude",
        sources={
            "ratio": ("dynamic_ratio.dynamic_ratio", "port_timing.trapped_ratio"),
            "clearance_cc": CLEARANCE,
        },
    ),
)

GRADING = (
    Step(
        part="air_pressure",
        calculation=air_pressure.CALCULATION,
        purpose="air pressure on the spot and the reading brought to sea level",
    ),
    Step(
        part="compression_level",
        calculation=compression_level.CALCULATION,
        purpose="whether the reading is low for this engine, here",
        sources={"expected_kpa": EXPECTED},
    ),
    Step(
        part="cylinder_spread",
        calculation=cylinder_spread.CALCULATION,
        purpose="which cylinder differs from its neighbours",
        sources={"expected_kpa": EXPECTED},
        when=several_cylinders,
    ),
    Step(
        part="wet_gain",
        calculation=wet_gain.CALCULATION,
        purpose="rings or valves: what oil in the cylinder gains beyond its own volume",
        sources={
            "reading_kpa": ("reading_kpa",),
            "expected_kpa": EXPECTED,
            "clearance_cc": CLEARANCE,
            "effective_volume_cc": (
                "dynamic_ratio.effective_volume_cc",
                "port_timing.trapped_volume_cc",
            ),
        },
    ),
    Step(
        part="pressure_build_up",
        calculation=pressure_build_up.CALCULATION,
        purpose="how the pressure builds up stroke by stroke",
        sources={"expected_kpa": EXPECTED},
    ),
)
