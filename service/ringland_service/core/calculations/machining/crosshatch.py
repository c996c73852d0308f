"""C43: the angle of the lines that a hone leaves."""

from ringland_service.core.calculations.machining.bored import NEVER_BORED_RULES
from ringland_service.core.declare import (
    Calculation,
    Check,
    Notice,
    choice,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.formulas import machining
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE

KINEMATICS = "kinematics"
STROKE_DRIVE = {
    "constant": "constant speed, turned round at the ends (hydraulic, or by hand)",
    "crank": "driven by a crank, fastest at mid-stroke",
    "unknown": "not known",
}
RING_KIND = {"plain_iron": "plain iron ring", "coated": "coated or nitrided ring"}
FINISH = {
    "plain_iron": "Ra 0.4 to 0.8 µm",
    "coated": "Ra 0.2 to 0.5 µm; plateau: Rpk at most 0.3 µm, Rk 0.5 to 1.1 µm, Rvk 0.8 to 1.8 µm",
}
STEEPEST_DEG = 60.0


@record
class Inputs:
    """How the hone turns and strokes, and what is wanted."""

    bore_mm: Number = quantity(lengths.BORE, "bore being honed", example=68.496)
    spindle_speed_rpm: Number = quantity(sizes.SPINDLE, "spindle speed of the hone")
    travel_mm: Number = quantity(
        sizes.HONE_TRAVEL, "travel of the hone, end to end, overtravel at both ends counted"
    )
    strokes_per_minute_rpm: Number = quantity(
        sizes.HONE_CYCLES, "full strokes, down and up, a minute; not single strokes"
    )
    included_angle_deg: Number | None = quantity(
        sizes.HATCH_ANGLE,
        "wanted included angle, between the two families of lines; twice what each line makes "
        "with horizontal",
        default=None,
    )
    stroke_drive: str = choice(
        "how the stroke is driven", STROKE_DRIVE, example="constant", default="unknown"
    )
    cycle: str | None = choice("cycle", condition.CYCLE, example="four_stroke", default=None)
    ring_kind: str | None = choice(
        "kind of rings that will run on it", RING_KIND, example="plain_iron", default=None
    )
    bore_kind: str = choice(
        "kind of bore", condition.BORE_KIND, example="iron_sleeve_in_aluminium", default=UNKNOWN
    )


@record
class Outputs:
    """Speeds of the stones, the angle they leave, and the stroke for the wanted one."""

    circumferential_speed_m_s: Number = result(
        "speed of the stones around the bore",
        kind=kinds.VELOCITY,
        decimals=3,
        formula="pi * bore_mm * spindle_speed_rpm / 60000",
        source=KINEMATICS,
    )
    axial_speed_m_s: Number = result(
        "mean speed of the stones along the bore",
        kind=kinds.VELOCITY,
        decimals=3,
        formula="2 * travel_mm * strokes_per_minute_rpm / 60000",
        source=KINEMATICS,
    )
    included_angle_reached_deg: Number = result(
        "included angle of the crosshatch at the mean stroke speed",
        kind=kinds.ANGLE,
        decimals=1,
        formula="2 * asind(axial_speed_m_s"
        " / sqrt(axial_speed_m_s**2 + circumferential_speed_m_s**2))",
        source=KINEMATICS,
    )
    each_line_deg: Number = result(
        "angle of each line from horizontal",
        kind=kinds.ANGLE,
        decimals=1,
        formula="included_angle_reached_deg / 2",
        source=KINEMATICS,
    )
    included_angle_at_mid_stroke_deg: Number | None = result(
        "included angle at mid-stroke where a crank drives the stroke",
        kind=kinds.ANGLE,
        decimals=1,
        formula="2 * asind(pi / 2 * axial_speed_m_s"
        " / sqrt((pi / 2 * axial_speed_m_s)**2 + circumferential_speed_m_s**2))",
        source=KINEMATICS,
        default=None,
    )
    strokes_for_angle_rpm: Number | None = result(
        "full strokes a minute for the wanted included angle, at constant stroke speed",
        kind=kinds.ROTATION,
        decimals=0,
        formula="30000 * circumferential_speed_m_s * sind(included_angle_deg / 2)"
        " / cosd(included_angle_deg / 2) / travel_mm",
        source=KINEMATICS,
        default=None,
    )
    finish: str | None = result(
        "surface that shops order for these rings; the ring maker's figure comes first",
        basis="by the kind of ring",
        source=NO_SOURCE,
        common_practice=True,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out both speeds and the angle between the lines."""
    around = machining.circumferential_speed_m_s(inputs.bore_mm, inputs.spindle_speed_rpm)
    along = machining.axial_speed_m_s(inputs.travel_mm, inputs.strokes_per_minute_rpm)
    included = machining.included_angle_deg(along, around)
    wanted, rings = inputs.included_angle_deg, inputs.ring_kind
    return Outputs(
        circumferential_speed_m_s=around,
        axial_speed_m_s=along,
        included_angle_reached_deg=included,
        each_line_deg=included / 2.0,
        included_angle_at_mid_stroke_deg=_at_mid_stroke_deg(inputs, along, around),
        strokes_for_angle_rpm=None
        if wanted is None
        else machining.cycles_for_angle_rpm(around, inputs.travel_mm, wanted),
        finish=None if rings is None else FINISH[rings],
    )


def _at_mid_stroke_deg(inputs: Inputs, along: Number, around: Number) -> Number | None:
    if inputs.stroke_drive == "constant":
        return None
    return machining.included_angle_deg(machining.MID_STROKE_OVER_MEAN * along, around)


def _window(inputs: Inputs, _: Outputs) -> Limit | None:
    return None if inputs.cycle is None else LIMITS[f"crosshatch.{inputs.cycle}"].limit()


def _steep(_: object, o: Outputs) -> object:
    at_mid = o.included_angle_at_mid_stroke_deg
    return False if at_mid is None else at_mid > STEEPEST_DEG


CALCULATION = Calculation(
    name="crosshatch",
    number="C43",
    stage="decision",
    title="Crosshatch angle",
    summary="Included angle of the lines that a hone leaves, and the strokes for a wanted one. "
    "45° may mean the included angle or each line: the order says both (included 45°, each line "
    "22.5° from horizontal). Overtravel about a third of the stones' length; the turning zones at "
    "the ends of the stroke come out flat.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=(
        Check(
            "included_angle",
            "included_angle_reached_deg",
            "included angle of the crosshatch",
            "count the strokes against a watch and measure the angle on a rubbing",
            _window,
        ),
    ),
    rules=NEVER_BORED_RULES,
    notices=(
        Notice(
            "stroke_drive_unknown",
            "stroke_drive",
            lambda i, _: i.stroke_drive == "unknown",
            "ask how the stroke is driven: a crank gives the steeper angle at mid-stroke",
        ),
        Notice(
            "steep_at_mid_stroke",
            "included_angle_at_mid_stroke_deg",
            _steep,
            "a crank-driven stroke would cut steeper than 60° at mid-stroke: steep lines carry "
            "oil past the rings; stroke slower or turn faster",
        ),
        Notice(
            "bore_kind_unknown",
            "bore_kind",
            lambda i, _: i.bore_kind == UNKNOWN,
            "find out the kind of bore first: plated, chromed and bare silicon bores are not honed "
            "with ordinary stones",
        ),
        Notice(
            "no_angle_window",
            "cycle",
            lambda i, _: i.cycle is None,
            "without the cycle no common-practice window judges the angle; the ring maker's wins "
            "anyway",
        ),
    ),
    cautions=("boring_and_honing",),
)
