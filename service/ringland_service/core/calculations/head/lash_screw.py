"""C36: turn of an adjusting screw, and lash at the cam's end of a rocker."""

from typing import Any

import numpy as np

from ringland_service.core.declare import (
    Calculation,
    Check,
    Notice,
    Rule,
    choice,
    flag,
    kinds,
    number,
    quantity,
    record,
    result,
)
from ringland_service.core.formulas import lash
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import valves as sizes

AT_VALVE, AT_CAM = "valve_end", "cam_end"
SCREW_AT: dict[str, str] = {
    AT_VALVE: "at the valve's end of the rocker",
    AT_CAM: "at the cam's or pushrod's end of the rocker",
}
IN, OUT, NONE = "in", "out", "none"
SENSE: dict[str, str] = {
    IN: "in: clockwise on a right-hand screw; it takes lash away",
    OUT: "out: anticlockwise on a right-hand screw; it gives lash",
    NONE: "none: the lash is as wanted",
}
# Lash that differs by less is lash as wanted: rounding of units.
SAME_MM = 1e-6
THREAD = "lead of a single-start thread"


@record
class Inputs:
    """Lash at the valve, cold, at the top dead centre of compression; and the screw."""

    lash_measured_mm: Number = quantity(
        sizes.LASH, "lash at the valve as measured, cold, cam on its base circle"
    )
    lash_wanted_mm: Number = quantity(sizes.LASH, "lash wanted at the valve, cold", example=0.08)
    screw_pitch_mm: Number = quantity(sizes.SCREW_PITCH, "pitch of the adjusting screw")
    screw_at: str = choice("which end of the rocker the screw is on", SCREW_AT, example=AT_VALVE)
    rocker_ratio: Number | None = number(
        "ratio of the rocker, valve : cam",
        low=0.7,
        high=2.5,
        warn=(1.0, 1.8),
        example=1.3,
        default=None,
    )
    pad_worn_hollow: bool = flag("the pad or stem end is worn hollow", default=False, example=False)


@record
class Outputs:
    """How far to turn, and which way."""

    turn_deg: Number = result(
        "turn of the screw",
        kind=kinds.ANGLE,
        digits=0,
        formula="360 * turn_fraction",
        source=THREAD,
    )
    turn_fraction: Number = result(
        "turn of the screw in turns",
        digits=2,
        basis="lash_measured − lash_wanted, without sign, over screw_pitch; over rocker_ratio too "
        "where the screw is at the cam's or pushrod's end",
        source=THREAD,
    )
    turn_sense: str = result(
        "which way, a right-hand screw",
        basis="in where lash_measured is above lash_wanted, out where it is below",
        source=THREAD,
        choices=SENSE,
    )
    lash_at_cam_end_mm: Number | None = result(
        "wanted lash as it is at the cam or pushrod",
        kind=kinds.LENGTH,
        digits=3,
        formula="lash_wanted_mm / rocker_ratio",
        source="law of the lever",
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Turn the screw by what the lash is off."""
    i = inputs
    ratio: Number = 1.0
    if i.screw_at == AT_CAM and i.rocker_ratio is not None:
        ratio = i.rocker_ratio
    turns = lash.screw_turn_fraction(i.lash_measured_mm, i.lash_wanted_mm, i.screw_pitch_mm, ratio)
    cam = None
    if i.rocker_ratio is not None:
        cam = lash.lash_at_cam_mm(i.lash_wanted_mm, i.rocker_ratio)
    return Outputs(
        turn_deg=360 * turns,
        turn_fraction=turns,
        turn_sense=_sense(i.lash_measured_mm - i.lash_wanted_mm),
        lash_at_cam_end_mm=cam,
    )


def _sense(excess_mm: Number) -> Any:
    if isinstance(excess_mm, np.ndarray):
        return np.select([excess_mm > SAME_MM, excess_mm < -SAME_MM], [IN, OUT], default=NONE)
    return IN if excess_mm > SAME_MM else OUT if excess_mm < -SAME_MM else NONE


def _above_a_turn(_: Any, o: Any) -> Any:
    return o.turn_fraction > 1


CALCULATION = Calculation(
    name="lash-screw",
    number="C36",
    stage="head",
    title="Adjusting screw of the valve lash",
    summary="How far to turn an adjusting screw and which way, and what the lash is at the cam's "
    "end of the rocker. Lash hot and cold differs, by 0.05 mm and more on air-cooled pushrod "
    "engines: set it in the state that the maker states it for.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=(
        Check(
            "lash_as_found",
            "lash_measured_mm",
            "lash as found; only the maker's range judges it",
            "cam on its base circle, the next leaf up must not go in, the next down goes in loose; "
            "five times",
        ),
    ),
    rules=(
        Rule(
            ("screw_at",),
            lambda i: i.screw_at == AT_CAM and i.rocker_ratio is None,
            "a screw at the cam's end moves the valve by the rocker's ratio",
            "give rocker_ratio, valve : cam",
        ),
    ),
    notices=(
        Notice(
            "recheck_after_locknut",
            "turn_deg",
            lambda i, o: True,
            "the locknut pulls the screw along: tighten it, turn the crank twice, measure again",
        ),
        Notice(
            "over_a_turn",
            "turn_deg",
            _above_a_turn,
            "more than a whole turn: check for the wrong top dead centre, a decompressor that "
            "lifts, or a wrong pitch",
        ),
        Notice(
            "pad_bridges_feeler",
            "pad_worn_hollow",
            lambda i, _: i.pad_worn_hollow,
            "the feeler bridges a hollow: the real lash is larger than the feeler reads; dress or "
            "renew the pad, or measure by dial indicator",
        ),
        Notice(
            "lash_reads_zero",
            "lash_measured_mm",
            lambda i, _: i.lash_measured_mm <= 0,
            "no lash is measured: the valve may be held open by more than this turn gives; back "
            "the screw off first, then measure again",
        ),
    ),
    cautions=("measuring", "first_start"),
)
