"""C13: what the air of a leak-down does to the crank, and what has to hold it."""

from ringland_service.core.calculations.geometry.rod import ROD_NOTICE, ROD_RULES
from ringland_service.core.declare import (
    Calculation,
    Check,
    Figure,
    Notice,
    Rule,
    kinds,
    limit_side,
    quantity,
    record,
    result,
    usual,
    usual_figures,
)
from ringland_service.core.formulas import charged
from ringland_service.core.formulas.elementary import minimum
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import engine_tests as tests
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE as SAFE
from ringland_service.core.tables.sources import cited

CRANK = cited("{heywood_crank}")


def _torque(angle: str) -> str:
    """Return the formula of the torque at a crank angle."""
    aside = f"stroke_mm / 2 * sind({angle})"
    upright = f"sqrt(rod_mm**2 - (stroke_mm / 2 * sind({angle}))**2)"
    return f"piston_force_n * {aside} * (1 + stroke_mm / 2 * cosd({angle}) / {upright}) / 1000"


@record
class Inputs:
    """The air, the crank, and the angles that are asked about."""

    supply_kpa: Number = quantity(
        tests.LEAK_SUPPLY, "pressure that the cylinder is charged with, gauge"
    )
    bore_mm: Number = quantity(lengths.BORE, "cylinder bore", example=90.0)
    stroke_mm: Number = quantity(lengths.STROKE, "stroke", example=62.0)
    rod_mm: Number = quantity(lengths.ROD, "rod length, centre to centre", example=106.0)
    held_at_deg: Number | None = quantity(
        tests.HELD_ANGLE, "crank angle from top dead centre at which it is held", default=None
    )
    second_deg: Number | None = quantity(
        tests.HELD_ANGLE, "a second crank angle, to compare", example=10.0, default=None
    )
    opens_deg: Number | None = quantity(
        tests.OPENING_ANGLE,
        "crank angle after top dead centre at which a valve or port first lets the air out",
        default=None,
    )
    bar_mm: Number = quantity(
        tests.HOLDING_BAR, "bar on the crank nut, nut to hand", default=usual(300.0)
    )
    most_nm: Number | None = limit_side("charged_peak_torque", "high")
    usual: bool = usual_figures()


@record
class Outputs:
    """Force and torques, without friction; the peak is what counts, wherever the crank stands."""

    piston_force_n: Number = result(
        "force of the air on the piston",
        kind=kinds.FORCE,
        digits=0,
        formula="supply_kpa * pi / 4 * bore_mm**2 / 1000",
        source="pressure times area",
    )
    free_peak_at_deg: Number = result(
        "crank angle of the largest torque while nothing opens",
        kind=kinds.ANGLE,
        digits=1,
        formula="asind(sqrt(1 + 4 * cosd((acosd((11 - 27 * (stroke_mm / 2 / rod_mm)**2) / 16)"
        " - 360) / 3)) / sqrt(3) / (stroke_mm / 2 / rod_mm))",
        source=cited("{heywood_crank}, differentiated"),
    )
    peak_at_deg: Number = result(
        "crank angle of the largest torque from top dead centre on",
        kind=kinds.ANGLE,
        digits=1,
        basis="the angle of the largest torque, or the one at which a valve or port opens before",
        source=CRANK,
    )
    peak_torque_nm: Number = result(
        "largest torque on the crank from top dead centre on: what judges",
        kind=kinds.TORQUE,
        digits=1,
        formula=_torque("peak_at_deg"),
        source=CRANK,
    )
    torque_held_nm: Number | None = result(
        "torque at the angle at which the crank is held; judges nothing, a slip away is the peak",
        kind=kinds.TORQUE,
        digits=1,
        formula=_torque("held_at_deg"),
        source=CRANK,
        default=None,
    )
    torque_at_second_nm: Number | None = result(
        "torque at the second angle",
        kind=kinds.TORQUE,
        digits=1,
        formula=_torque("second_deg"),
        source=CRANK,
        default=None,
    )
    force_on_bar_at_peak_n: Number = result(
        "force at the end of the bar at the peak",
        kind=kinds.FORCE,
        digits=0,
        formula="peak_torque_nm * 1000 / bar_mm",
        source="law of the lever",
    )
    limit_used_nm: Number | None = result(
        "largest torque that a holding tool may meet: the request's limit, else the usual one",
        kind=kinds.TORQUE,
        digits=1,
        basis="the limit of the request, else common practice",
        source=SAFE,
        default=None,
    )
    supply_for_limit_kpa: Number | None = result(
        "supply that keeps the peak at that torque, gauge",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="supply_kpa * limit_used_nm / peak_torque_nm",
        source=CRANK,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the force, the torque where asked, and the peak on the way down."""
    force = charged.piston_force_n(inputs.supply_kpa, inputs.bore_mm)
    # Of one kilopascal: no doubt of the supply enters the supply for the limit.
    unit_force = charged.piston_force_n(1.0, inputs.bore_mm)
    free = charged.peak_angle_deg(inputs.stroke_mm, inputs.rod_mm)
    peak_at = free if inputs.opens_deg is None else minimum(free, inputs.opens_deg)
    peak = charged.crank_torque_nm(force, inputs.stroke_mm, inputs.rod_mm, peak_at)
    each = charged.crank_torque_nm(unit_force, inputs.stroke_mm, inputs.rod_mm, peak_at)
    most = _limit_nm(inputs)
    return Outputs(
        piston_force_n=force,
        free_peak_at_deg=free,
        peak_at_deg=peak_at,
        peak_torque_nm=peak,
        torque_held_nm=_torque_nm(inputs, force, inputs.held_at_deg),
        torque_at_second_nm=_torque_nm(inputs, force, inputs.second_deg),
        force_on_bar_at_peak_n=peak * 1000 / inputs.bar_mm,
        limit_used_nm=most,
        supply_for_limit_kpa=None if most is None else most / each,
    )


def _torque_nm(inputs: Inputs, force: Number, angle: Number | None) -> Number | None:
    if angle is None:
        return None
    return charged.crank_torque_nm(force, inputs.stroke_mm, inputs.rod_mm, angle)


def _limit_nm(inputs: Inputs) -> Number | None:
    if inputs.most_nm is not None:
        return inputs.most_nm
    return LIMITS["charged_crank.tool"].high if inputs.usual else None


def _tool(_: Inputs, __: Outputs) -> Limit:
    return LIMITS["charged_crank.tool"].limit()


def _above(_: Inputs, o: Outputs) -> object:
    return False if o.limit_used_nm is None else beyond(o.peak_torque_nm, o.limit_used_nm)


def _within(_: Inputs, o: Outputs) -> object:
    return False if o.limit_used_nm is None else at_most(o.peak_torque_nm, o.limit_used_nm)


def _harmless_only_here(_: Inputs, o: Outputs) -> object:
    if o.torque_held_nm is None or o.limit_used_nm is None:
        return False
    slips = beyond(o.peak_torque_nm, o.limit_used_nm)
    return slips & at_most(o.torque_held_nm, o.limit_used_nm)


def _opening_rule(angle: str) -> Rule:
    return Rule(
        (angle, "opens_deg"),
        lambda i: beyond(getattr(i, angle), i.opens_deg),
        "at that angle a valve or port is open: the cylinder is not charged there",
        "an angle before the one at which a valve or port opens",
    )


CALCULATION = Calculation(
    name="charged-crank-torque",
    number="C13",
    stage="engine_tests",
    title="Crank torque of a charged cylinder",
    summary="Force on the piston and torque on the crank while a cylinder is charged for a "
    "leak-down, without friction. The peak judges, wherever the crank is held: the crank runs away "
    "further as it turns, and a spanner left on its nut becomes a flail. Nobody's hand holds the "
    "crank by a bar alone, nor a gearbox with its chain in line with anybody.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=(
        Check(
            "charged_peak_torque",
            "peak_torque_nm",
            "peak torque on the charged crank",
            "a mechanical crank lock; measure bore, stroke and supply for the low supply",
            _tool,
            doubt_fails="a crank that turns can hurt: unless the peak is surely within the limit, "
            "lock it",
        ),
    ),
    rules=(*ROD_RULES, _opening_rule("held_at_deg"), _opening_rule("second_deg")),
    notices=(
        Notice(
            "crank_lock_or_low_supply",
            "peak_torque_nm",
            _above,
            "no holding tool and no hand holds this: a mechanical crank lock; else 100 to 200 kPa "
            "at most to find top dead centre, and no more than the supply for the limit, then "
            "lock, then raise; bleed to zero before bar or adaptor comes off",
        ),
        Notice(
            "holding_tool",
            "peak_torque_nm",
            _within,
            "a holding tool made for it, fixed, and everybody out of its plane; only where the "
            "verdict passes, else a crank lock; bleed to zero before tool or adaptor comes off",
        ),
        Notice(
            "no_limit_for_the_peak",
            "peak_torque_nm",
            lambda _, o: o.limit_used_nm is None,
            "no limit judges the peak torque: lock the crank mechanically",
        ),
        Notice(
            "harmless_only_here",
            "torque_held_nm",
            _harmless_only_here,
            "the torque at this angle looks harmless; a slip away the same air turns the crank "
            "with the peak torque",
        ),
        ROD_NOTICE,
    ),
    cautions=("leak_down",),
    figures=(Figure("bar_mm"),),
)
