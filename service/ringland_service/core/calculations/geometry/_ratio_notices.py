"""What an answer on the static compression ratio warns of."""

from collections.abc import Callable
from typing import Protocol

from ringland_service.core.calculations.geometry import _ways
from ringland_service.core.calculations.geometry._parts import CROWN_FLAT, NO_CREVICE
from ringland_service.core.calculations.geometry._ratio_inputs import Inputs
from ringland_service.core.declare import Notice
from ringland_service.core.engines.choices import OVERHEAD, PORTS, SIDE_VALVE
from ringland_service.core.formulas.elementary import absolute
from ringland_service.core.numbers import Number, Truth

MOST_APART_PCT = 5.0


class Ratio(Protocol):
    """What the notices read of the results."""

    @property
    def compression_ratio(self) -> Number: ...
    @property
    def gasket_volume_cc(self) -> Number | None: ...
    @property
    def ways_apart_pct(self) -> Number | None: ...


def _outside(gear: str, low: float, high: float) -> Callable[[Inputs, Ratio], Truth]:
    """Return whether the ratio of an engine of this valve gear is unusual."""

    def when(inputs: Inputs, outputs: Ratio) -> Truth:
        ratio = outputs.compression_ratio
        return (inputs.valve_gear == gear) & ((ratio < low) | (ratio > high))

    return when


def _unusual(gear: str, low: float, high: float, usual: str) -> Notice:
    message = f"compression ratio outside the usual {usual} (common practice, no source)"
    outside = _outside(gear, low, high)
    return Notice("ratio_unusual", "compression_ratio", outside, message, common_practice=True)


def _apart(_: object, outputs: Ratio) -> Truth:
    apart = outputs.ways_apart_pct
    return False if apart is None else absolute(apart) > MOST_APART_PCT


def _incomplete_parts(inputs: Inputs, outputs: Ratio) -> bool:
    return inputs.chamber_cc is not None and outputs.gasket_volume_cc is None


def _parts_inside_fill(inputs: Inputs, _: object) -> bool:
    given = (inputs.gasket_thickness_mm, inputs.deck_mm, inputs.dome_cc, inputs.dish_cc)
    return inputs.chamber_cc is None and any(part is not None for part in given)


def _flat_crown(inputs: Inputs, outputs: Ratio) -> bool:
    return (
        outputs.gasket_volume_cc is not None and inputs.dome_cc is None and inputs.dish_cc is None
    )


def _no_crevice(inputs: Inputs, outputs: Ratio) -> bool:
    return outputs.gasket_volume_cc is not None and _ways.crevice_cc(inputs) is None


def _wide_gasket(inputs: Inputs, _: object) -> Truth:
    if inputs.gasket_bore_mm is None:
        return False
    room = inputs.gasket_bore_mm - inputs.bore_mm
    return (room < 0.5) | (room > 3.0)


def _round_side_valve(inputs: Inputs, _: object) -> bool:
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
