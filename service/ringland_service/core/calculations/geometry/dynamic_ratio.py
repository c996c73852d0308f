"""C21: dynamic compression ratio, from the closing of the intake valve."""

from typing import Any

from ringland_service.core.calculations.geometry.rod import ROD_NOTICE, ROD_RULES
from ringland_service.core.declare import Calculation, Notice, kinds, quantity, record, result
from ringland_service.core.formulas import crank, geometry
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import cited

CRANK = cited("{heywood_crank}")
RATIO = cited("{heywood_ratio}")
# Above this lift the charge still flows back at cranking speed: common practice, no source.
HIGHEST_CRANKING_LIFT_MM = 0.3


@record
class Inputs:
    """The cylinder, and where its intake valve closes."""

    bore_mm: Number = quantity(lengths.BORE, "cylinder bore")
    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    rod_mm: Number = quantity(lengths.ROD, "rod length, centre to centre")
    clearance_cc: Number = quantity(
        quantities.CLEARANCE_VOLUME, "clearance volume: above the piston at top dead centre"
    )
    intake_closes_deg: Number = quantity(
        quantities.CLOSING_ANGLE, "intake closes after bottom dead centre, crank degrees"
    )
    closing_lift_mm: Number | None = quantity(
        lengths.LIFT, "valve lift at which that closing angle is stated", default=None
    )


@record
class Outputs:
    """What is left of the stroke once the valve has closed, and the ratio that it makes."""

    effective_stroke_mm: Number = result(
        "stroke left for compression once the intake valve has closed",
        kind=kinds.LENGTH,
        digits=2,
        formula="stroke_mm / 2 * (1 - cosd(180 - intake_closes_deg)) + rod_mm "
        "- sqrt(rod_mm**2 - (stroke_mm / 2 * sind(180 - intake_closes_deg))**2)",
        source=CRANK,
    )
    effective_volume_cc: Number = result(
        "volume swept once the intake valve has closed",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * bore_mm**2 * effective_stroke_mm / 1000",
        source="solid geometry",
    )
    dynamic_ratio: Number = result(
        "dynamic (effective) compression ratio, at the lift stated",
        digits=2,
        formula="(effective_volume_cc + clearance_cc) / clearance_cc",
        source=RATIO,
    )
    static_ratio: Number = result(
        "static (geometric) compression ratio",
        digits=2,
        formula="(pi/4 * bore_mm**2 * stroke_mm / 1000 + clearance_cc) / clearance_cc",
        source=RATIO,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the dynamic ratio, beside the static one."""
    stroke_mm = crank.effective_stroke_mm(inputs.stroke_mm, inputs.rod_mm, inputs.intake_closes_deg)
    volume_cc = geometry.swept_volume_cc(inputs.bore_mm, stroke_mm)
    swept_cc = geometry.swept_volume_cc(inputs.bore_mm, inputs.stroke_mm)
    return Outputs(
        effective_stroke_mm=stroke_mm,
        effective_volume_cc=volume_cc,
        dynamic_ratio=geometry.compression_ratio(volume_cc, inputs.clearance_cc),
        static_ratio=geometry.compression_ratio(swept_cc, inputs.clearance_cc),
    )


def _high_lift(inputs: Any, _: Any) -> Any:
    lift_mm = inputs.closing_lift_mm
    return False if lift_mm is None else lift_mm > HIGHEST_CRANKING_LIFT_MM


CALCULATION = Calculation(
    name="dynamic-ratio",
    number="C21",
    stage="geometry",
    title="Dynamic compression ratio",
    summary="Compression ratio of what is left in the cylinder once the intake valve has closed.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    rules=ROD_RULES,
    notices=(
        ROD_NOTICE,
        Notice(
            "closing_lift_absent",
            "closing_lift_mm",
            lambda i, _: i.closing_lift_mm is None,
            "a closing angle means little without the lift at which it is stated: one camshaft "
            "gives two ratios at 1 mm and near the seat; at cranking speed use the angle at 0.1 "
            "to 0.3 mm",
        ),
        Notice(
            "closing_lift_high",
            "closing_lift_mm",
            _high_lift,
            "at cranking speed the charge flows back through a barely open valve: for a "
            "compression test use the closing angle at 0.1 to 0.3 mm of lift",
        ),
    ),
)
