"""C20: where the piston stands at a crank angle, and at which angle it reaches a travel."""

import dataclasses
from typing import Any

from ringland_service.core.calculations.geometry.rod import ROD_NOTICE
from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    choice,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.formulas import crank, position
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import geometry as sizes
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import cited

HEYWOOD = cited("{heywood_crank}")
TRIANGLE = "plane geometry: crank, rod and bore axis"
COUNTED_FROM = {
    "top_dead_centre": "from the piston's own top dead centre",
    "crank_upright": "from the crank standing straight up, along the bore axis",
}
# Close to a dead centre a dial indicator hardly moves (common practice, no source).
FLAT_DEG = 5.0


@record
class Inputs:
    """The crank, and the angle or the travel that is asked about."""

    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    rod_mm: Number = quantity(lengths.ROD, "rod length, centre to centre")
    pin_offset_mm: Number = quantity(
        lengths.PIN_OFFSET,
        "offset of pin or bore axis from the crank axis, positive to the side to which the crank "
        "turns first after top dead centre",
        example=0.0,
        default=0.0,
    )
    crank_angle_deg: Number | None = quantity(
        quantities.CRANK_ANGLE, "crank angle, negative before", default=None
    )
    counted_from: str = choice(
        "what crank_angle counts from; one and the same without an offset",
        COUNTED_FROM,
        example="top_dead_centre",
        default="top_dead_centre",
    )
    travel_asked_mm: Number | None = quantity(
        sizes.TRAVEL, "travel from top dead centre whose crank angle is asked", default=None
    )


@record
class Outputs:
    """Travel at the angle, angles at the travel, and what the offset does to the crank."""

    crank_radius_mm: Number = result(
        "crank radius that gives this stroke; half of it without an offset",
        kind=kinds.LENGTH,
        digits=3,
        formula="stroke_mm * sqrt((rod_mm**2 - pin_offset_mm**2 - stroke_mm**2 / 4)"
        " / (4 * rod_mm**2 - stroke_mm**2))",
        source=TRIANGLE,
    )
    top_dead_centre_deg: Number = result(
        "top dead centre after the crank has stood straight up, crank degrees",
        kind=kinds.ANGLE,
        digits=2,
        formula="asind(pin_offset_mm / (rod_mm + crank_radius_mm))",
        source=TRIANGLE,
    )
    upright_angle_deg: Number | None = result(
        "crank angle asked about, from the crank standing straight up",
        kind=kinds.ANGLE,
        digits=2,
        basis="crank_angle, and the angle of top dead centre where it counts from there",
        source=TRIANGLE,
        default=None,
    )
    travel_mm: Number | None = result(
        "piston travel from top dead centre at that angle",
        kind=kinds.LENGTH,
        digits=3,
        formula="sqrt((rod_mm + crank_radius_mm)**2 - pin_offset_mm**2)"
        " - crank_radius_mm * cosd(upright_angle_deg)"
        " - sqrt(rod_mm**2 - (crank_radius_mm * sind(upright_angle_deg) - pin_offset_mm)**2)",
        source=HEYWOOD,
        default=None,
    )
    travel_share_pct: Number | None = result(
        "piston travel over the stroke",
        kind=kinds.PERCENT,
        digits=2,
        formula="100 * travel_mm / stroke_mm",
        source=HEYWOOD,
        default=None,
    )
    angle_after_deg: Number | None = result(
        "crank angle after top dead centre at which the piston, going down, has the travel asked",
        kind=kinds.ANGLE,
        digits=2,
        basis="crank, rod and offset as a triangle solved for the crank angle",
        source=TRIANGLE,
        default=None,
    )
    angle_before_deg: Number | None = result(
        "crank angle before top dead centre at which the piston, coming up, has the travel asked",
        kind=kinds.ANGLE,
        digits=2,
        basis="crank, rod and offset as a triangle solved for the crank angle",
        source=TRIANGLE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the crank, then whichever way is asked."""
    rod_mm, offset_mm = inputs.rod_mm, inputs.pin_offset_mm
    radius_mm = crank.crank_radius_with_offset_mm(inputs.stroke_mm, rod_mm, offset_mm)
    top_deg = crank.top_dead_centre_offset_deg(radius_mm, rod_mm, offset_mm)
    found = Outputs(crank_radius_mm=radius_mm, top_dead_centre_deg=top_deg)
    if inputs.crank_angle_deg is not None:
        from_top = inputs.counted_from == "top_dead_centre"
        angle_deg = inputs.crank_angle_deg + (top_deg if from_top else 0.0)
        travel_mm = crank.travel_with_offset_mm(radius_mm, rod_mm, offset_mm, angle_deg)
        found = dataclasses.replace(
            found,
            upright_angle_deg=angle_deg,
            travel_mm=travel_mm,
            travel_share_pct=100 * travel_mm / inputs.stroke_mm,
        )
    if inputs.travel_asked_mm is None:
        return found
    triangle = (radius_mm, rod_mm, offset_mm, inputs.travel_asked_mm)
    return dataclasses.replace(
        found,
        angle_after_deg=position.angle_going_down_deg(*triangle) - top_deg,
        angle_before_deg=top_deg - position.angle_coming_up_deg(*triangle),
    )


def _flat(inputs: Any, _: Any) -> Any:
    angle_deg = inputs.crank_angle_deg
    return False if angle_deg is None else abs(angle_deg) < FLAT_DEG


CALCULATION = Calculation(
    name="piston-position",
    number="C20",
    stage="geometry",
    title="Piston position against crank angle",
    summary="Piston travel at a crank angle, in mm and as a share of the stroke, and the crank "
    "angle at a travel, with the pin's or the bore's offset. At 90° the piston is past half its "
    "stroke. Find top dead centre with a positive stop from both sides and halve the reading: a "
    "dial indicator on the flat top is good for ±2° only (common practice, no source).",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=((("crank_angle_deg",), ("travel_asked_mm",)),),
    rules=(
        Rule(
            ("rod_mm", "stroke_mm", "pin_offset_mm"),
            lambda i: beyond(i.stroke_mm / 2 + abs(i.pin_offset_mm) + 1.0, i.rod_mm),
            "the crank cannot turn over with a rod that short",
            "a rod longer than half the stroke and the offset together; usual are 1.3 to 2.6 "
            "times the stroke",
        ),
        Rule(
            ("travel_asked_mm", "stroke_mm"),
            lambda i: beyond(i.travel_asked_mm, i.stroke_mm),
            "the piston does not travel that far",
            "a travel from 0 to the stroke",
        ),
    ),
    notices=(
        ROD_NOTICE,
        Notice(
            "top_is_flat",
            "crank_angle_deg",
            _flat,
            "near top dead centre the piston hardly moves: find top dead centre with a positive "
            "stop from both sides and halve the reading, not with a dial indicator on the flat top",
        ),
    ),
)
