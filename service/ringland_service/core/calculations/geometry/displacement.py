"""C16: displacement, before and after a change of bore."""

from ringland_service.core.declare import (
    Calculation,
    Check,
    Rule,
    count,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.formulas import geometry
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths

GEOMETRY = "plane geometry"


@record
class Inputs:
    """What displacement is worked out from."""

    bore_mm: Number = quantity(lengths.BORE, "cylinder bore")
    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    cylinders: Number = count(
        "number of cylinders of this size", low=1, high=8, example=1, default=1
    )
    new_bore_mm: Number | None = quantity(
        lengths.BORE, "bore after machining", example=68.496, default=None
    )
    new_bore_max_mm: Number | None = quantity(
        lengths.BORE,
        "upper limit of the finish bore: the class is judged there",
        example=68.501,
        default=None,
    )
    class_limit_cc: Number | None = quantity(
        quantities.CLASS_LIMIT,
        "largest displacement that the class or licence allows",
        default=None,
        exact=True,
    )


@record
class Outputs:
    """Displacement, and what a change of bore does to it."""

    displacement_cc: Number = result(
        "displacement",
        kind=kinds.VOLUME,
        digits=1,
        formula="pi/4 * bore_mm**2 * stroke_mm * cylinders / 1000",
        source=GEOMETRY,
    )
    piston_area_mm2: Number = result(
        "area of one bore",
        kind=kinds.AREA,
        digits=0,
        formula="pi/4 * bore_mm**2",
        source=GEOMETRY,
    )
    new_displacement_cc: Number | None = result(
        "displacement after machining",
        kind=kinds.VOLUME,
        digits=1,
        formula="pi/4 * new_bore_mm**2 * stroke_mm * cylinders / 1000",
        source=GEOMETRY,
        default=None,
    )
    largest_new_displacement_cc: Number | None = result(
        "largest displacement that the finish bore may come to; the class is judged by it",
        kind=kinds.VOLUME,
        digits=1,
        basis="displacement at the upper limit of the finish bore; that after machining where no "
        "such limit is given",
        source=GEOMETRY,
        default=None,
    )
    change_cc: Number | None = result(
        "change of displacement",
        kind=kinds.VOLUME,
        digits=2,
        formula="new_displacement_cc - displacement_cc",
        source=GEOMETRY,
        default=None,
    )
    change_percent_pct: Number | None = result(
        "change of displacement",
        kind=kinds.PERCENT,
        digits=2,
        formula="100 * (new_displacement_cc / displacement_cc - 1)",
        source=GEOMETRY,
        default=None,
    )
    largest_bore_for_class_mm: Number | None = result(
        "largest bore within the class",
        kind=kinds.LENGTH,
        digits=3,
        formula="(4000 * class_limit_cc / (pi * stroke_mm * cylinders))**0.5",
        source=GEOMETRY,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out displacement; the change and the largest bore where they are asked for."""
    now = geometry.displacement_cc(inputs.bore_mm, inputs.stroke_mm, inputs.cylinders)
    after = most = change = percent = largest = None
    if inputs.new_bore_mm is not None:
        bore_max = inputs.new_bore_mm if inputs.new_bore_max_mm is None else inputs.new_bore_max_mm
        after = geometry.displacement_cc(inputs.new_bore_mm, inputs.stroke_mm, inputs.cylinders)
        most = geometry.displacement_cc(bore_max, inputs.stroke_mm, inputs.cylinders)
        change = after - now
        percent = geometry.change_percent(now, after)
    if inputs.class_limit_cc is not None:
        largest = geometry.largest_bore_mm(
            inputs.class_limit_cc, inputs.stroke_mm, inputs.cylinders
        )
    return Outputs(
        displacement_cc=now,
        piston_area_mm2=geometry.piston_area_mm2(inputs.bore_mm),
        new_displacement_cc=after,
        largest_new_displacement_cc=most,
        change_cc=change,
        change_percent_pct=percent,
        largest_bore_for_class_mm=largest,
    )


def _class(inputs: Inputs, _: Outputs) -> Limit | None:
    if inputs.class_limit_cc is None:
        return None
    return Limit(
        high=inputs.class_limit_cc, standing="standard", source="class or licence limit as given"
    )


SETTLE = (
    "measure the bore again with a gauge set in a ring near its size, and ask whether the class "
    "counts the nominal or the actual bore"
)

CALCULATION = Calculation(
    name="displacement",
    number="C16",
    stage="geometry",
    title="Displacement",
    summary="Displacement of an engine, what boring does to it, and the largest bore of a class.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=(
        Check("class_limit", "displacement_cc", "displacement within its class", SETTLE, _class),
        Check(
            "class_limit_after",
            "largest_new_displacement_cc",
            "displacement after machining within its class, at the largest finish bore",
            SETTLE,
            _class,
        ),
    ),
    rules=(
        Rule(
            ("bore_mm", "stroke_mm", "cylinders"),
            lambda i: outside_engines(
                geometry.displacement_cc(i.bore_mm, i.stroke_mm, i.cylinders)
            ),
            "bore, stroke and cylinders make an engine outside 15 to 3000 cc",
            "check bore, stroke and cylinders: sizes in mm, one engine of 15 to 3000 cc",
        ),
        Rule(
            ("new_bore_max_mm",),
            lambda i: i.new_bore_mm is None,
            "an upper limit of the finish bore means nothing without the bore after machining",
            "give new_bore too",
        ),
        Rule(
            ("new_bore_mm", "new_bore_max_mm"),
            lambda i: beyond(i.new_bore_mm, i.new_bore_max_mm),
            "the bore after machining is above its upper limit",
            "new_bore between the limits of the finish bore",
        ),
    ),
)


def outside_engines(displacement_cc: Number) -> object:
    """Return whether a displacement lies outside the engines that the service speaks of."""
    return (displacement_cc < 15.0) | (displacement_cc > 3000.0)
