"""What an answer on the static compression ratio warns of."""

from collections.abc import Callable
from typing import Any

from ringland_service.core.calculations.geometry import _ways
from ringland_service.core.calculations.geometry._parts import CROWN_FLAT, NO_CREVICE
from ringland_service.core.declare import Notice
from ringland_service.core.engines.choices import OVERHEAD, PORTS, SIDE_VALVE

MOST_APART_PCT = 5.0


def _outside(gear: str, low: float, high: float) -> Callable[[Any, Any], Any]:
    """Return whether the ratio of an engine of this valve gear is unusual."""

    def when(inputs: Any, outputs: Any) -> Any:
        ratio = outputs.compression_ratio
        return (inputs.valve_gear == gear) & ((ratio < low) | (ratio > high))

    return when


def _unusual(gear: str, low: float, high: float, usual: str) -> Notice:
    message = f"compression ratio outside the usual {usual} (common practice, no source)"
    outside = _outside(gear, low, high)
    return Notice("ratio_unusual", "compression_ratio", outside, message, common_practice=True)


def _apart(_: Any, outputs: Any) -> Any:
    apart = outputs.ways_apart_pct
    return False if apart is None else abs(apart) > MOST_APART_PCT


def _incomplete_parts(inputs: Any, outputs: Any) -> bool:
    return inputs.chamber_cc is not None and outputs.gasket_cc is None


def _parts_inside_fill(inputs: Any, _: Any) -> bool:
    given = (inputs.gasket_thickness_mm, inputs.deck_mm, inputs.dome_cc, inputs.dish_cc)
    return inputs.chamber_cc is None and any(part is not None for part in given)


def _flat_crown(inputs: Any, outputs: Any) -> bool:
    return outputs.gasket_cc is not None and inputs.dome_cc is None and inputs.dish_cc is None


def _no_crevice(inputs: Any, outputs: Any) -> bool:
    return outputs.gasket_cc is not None and _ways.crevice_cc(inputs) is None


def _wide_gasket(inputs: Any, _: Any) -> Any:
    if inputs.gasket_bore_mm is None:
        return False
    room = inputs.gasket_bore_mm - inputs.bore_mm
    return (room < 0.5) | (room > 3.0)


def _round_side_valve(inputs: Any, _: Any) -> bool:
    area_missing = inputs.gasket_area_mm2 is None and inputs.gasket_bore_mm is not None
    return bool(inputs.valve_gear == SIDE_VALVE and area_missing)


NOTICES = (
    _unusual(OVERHEAD, 6.0, 15.0, "6 to 15 of overhead valves"),
    _unusual(SIDE_VALVE, 5.0, 7.5, "5 to 7.5 of side valves"),
    _unusual(PORTS, 0.0, 15.0, "geometric ratio of a two-stroke, up to 15"),
    Notice(
        "ways_disagree",
        "ways_apart_pct",
        _apart,
        "burette and parts differ by more than 5 %: look for a bubble, a leak past the rings, a "
        "dome taken for a dish, a forgotten gasket or plug hole",
    ),
    Notice(
        "parts_incomplete",
        "chamber_cc",
        _incomplete_parts,
        "the parts are not all given, so the burette alone answers; the chamber is not counted",
    ),
    Notice(
        "parts_inside_fill",
        "burette_fill_cc",
        _parts_inside_fill,
        "the fill holds gasket, deck and crown already; those given beside it are not counted "
        "again",
    ),
    Notice(
        "crown_taken_flat",
        "dome_cc",
        _flat_crown,
        CROWN_FLAT,
    ),
    Notice(
        "crevice_not_counted",
        "crevice_cc",
        _no_crevice,
        NO_CREVICE,
    ),
    Notice(
        "gasket_bore_unusual",
        "gasket_bore_mm",
        _wide_gasket,
        "gasket bore outside the usual 0.5 to 3 mm above the cylinder bore: the gasket's own bore "
        "is meant, not the cylinder's",
    ),
    Notice(
        "gasket_not_round",
        "gasket_bore_mm",
        _round_side_valve,
        "the gasket of a side-valve engine opens over the valves too: give its area",
    ),
)
