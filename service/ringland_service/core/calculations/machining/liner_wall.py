"""C41: wall that is left of a liner or a parent cylinder after boring."""

from ringland_service.core.declare import (
    Calculation,
    Check,
    Figure,
    Notice,
    Rule,
    choice,
    kinds,
    limit_side,
    quantity,
    record,
    result,
)
from ringland_service.core.formulas import machining
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE

PLANE = "plane geometry"
LINER_KIND = {
    "dry": "dry liner, carried by its cylinder all along",
    "wet_or_air_cooled": "wet liner, or sleeve of an air-cooled cylinder",
    "parent_iron": "parent iron, no liner",
}
THIN_FLOOR_MM = 1.5


@record
class Inputs:
    """The wall's outside, the bore wanted, and how far the bore sits out of the middle."""

    liner_od_mm: Number = quantity(
        sizes.LINER_OD, "outside diameter of the liner, or of the parent wall, where it is smallest"
    )
    finish_bore_max_mm: Number = quantity(
        lengths.BORE, "upper limit of the finish bore", example=68.501
    )
    core_shift_mm: Number = quantity(
        sizes.CORE_SHIFT,
        "distance of the bore's centre from the centre of the outside; 0 takes it as true",
        default=0.0,
    )
    liner_kind: str | None = choice(
        "kind of wall, for the floor that shops keep",
        LINER_KIND,
        example="wet_or_air_cooled",
        default=None,
    )
    floor_given_mm: Number | None = limit_side("liner_wall", "low")


@record
class Outputs:
    """The wall, radial, and the bore at which it reaches its floor."""

    wall_mean_mm: Number = result(
        "mean wall, radial",
        kind=kinds.LENGTH,
        digits=3,
        formula="(liner_od_mm - finish_bore_max_mm) / 2",
        source=PLANE,
    )
    wall_thinnest_mm: Number = result(
        "thinnest wall, radial",
        kind=kinds.LENGTH,
        digits=3,
        formula="wall_mean_mm - core_shift_mm",
        source=PLANE,
    )
    floor_used_mm: Number | None = result(
        "wall that must be left, as used: the limit of the request, else of the kind of wall",
        kind=kinds.LENGTH,
        digits=2,
        basis="lower limit of the check liner_wall, else common practice for the kind of wall",
        source=f"maker, else {NO_SOURCE}",
        default=None,
    )
    largest_bore_at_floor_mm: Number | None = result(
        "largest bore that leaves the floor at the thinnest place",
        kind=kinds.LENGTH,
        digits=3,
        formula="liner_od_mm - 2 * (floor_used_mm + core_shift_mm)",
        source=PLANE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the wall and the bore that would use it up."""
    outside, bore, shift = inputs.liner_od_mm, inputs.finish_bore_max_mm, inputs.core_shift_mm
    floor = _floor_mm(inputs)
    return Outputs(
        wall_mean_mm=machining.wall_mean_mm(outside, bore),
        wall_thinnest_mm=machining.wall_thinnest_mm(outside, bore, shift),
        floor_used_mm=floor,
        largest_bore_at_floor_mm=None
        if floor is None
        else machining.largest_bore_for_wall_mm(outside, floor, shift),
    )


def _floor_mm(inputs: Inputs) -> Number | None:
    if inputs.floor_given_mm is not None:
        return inputs.floor_given_mm
    return None if inputs.liner_kind is None else LIMITS[f"liner_wall.{inputs.liner_kind}"].low


def _floor(inputs: Inputs, _: Outputs) -> Limit | None:
    if inputs.liner_kind is None:
        return None
    return LIMITS[f"liner_wall.{inputs.liner_kind}"].limit()


CALCULATION = Calculation(
    name="liner-wall",
    number="C41",
    stage="decision",
    title="Remaining liner wall",
    summary="Mean and thinnest wall after boring, and the largest bore that leaves the floor. Key "
    "ribs, ports and rust on the water side weaken a wall; at the spigot the outside is smaller, "
    "and the mouth of the crankcase must clear the new bore.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    figures=(Figure("floor_given_mm", ("floor_used_mm",)),),
    checks=(
        Check(
            "liner_wall",
            "wall_thinnest_mm",
            "thinnest wall after boring",
            "measure the wall at eight places with an ultrasonic gauge; the thinnest counts",
            _floor,
        ),
    ),
    rules=(
        Rule(
            ("finish_bore_max_mm", "liner_od_mm"),
            lambda i: at_most(i.liner_od_mm, i.finish_bore_max_mm),
            "the bore is as large as the outside of the wall",
            "a finish bore under liner_od; both are diameters, in the same unit",
        ),
        Rule(
            ("core_shift_mm", "finish_bore_max_mm", "liner_od_mm"),
            lambda i: (
                beyond(i.liner_od_mm, i.finish_bore_max_mm)
                & at_most((i.liner_od_mm - i.finish_bore_max_mm) / 2, i.core_shift_mm)
            ),
            "the bore breaks out of the wall: the core shift uses all of it up",
            "a core shift under the mean wall, radial; else a smaller bore or a new liner",
        ),
    ),
    notices=(
        Notice(
            "core_shift_not_measured",
            "core_shift_mm",
            lambda i, _: i.core_shift_mm == 0.0,
            "the bore is taken as true to the outside: cast walls seldom are, measure the wall "
            "all round with an ultrasonic gauge",
        ),
        Notice(
            "no_floor_known",
            "liner_kind",
            lambda i, _: i.liner_kind is None and i.floor_given_mm is None,
            "without the kind of wall or the maker's least wall nothing judges it",
        ),
        Notice(
            "thin_floor",
            "floor_used_mm",
            lambda i, o: False if o.floor_used_mm is None else o.floor_used_mm < THIN_FLOOR_MM,
            "a floor under 1.5 mm is thinner than any that shops keep: radial, not a diameter?",
        ),
    ),
    cautions=("measuring", "boring_and_honing"),
)
