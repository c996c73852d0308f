"""C37: flatness of a head's or a cylinder's face, and what a skim takes from the chamber."""

from dataclasses import replace

from ringland_service.core.calculations.head._flatness_notices import NOTICES, RULES
from ringland_service.core.declare import (
    Calculation,
    Check,
    choice,
    flag,
    kinds,
    quantity,
    readings,
    record,
    result,
)
from ringland_service.core.formulas import facing, geometry
from ringland_service.core.metrology.candidates import Candidates, largest, smallest
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import geometry as faces
from ringland_service.core.quantities import head as sizes
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

RATIO = cited("{heywood_ratio}")
GASKET_KIND = {
    "composite": "composite or fibre gasket",
    "multi_layer_steel": "multi-layer steel gasket",
}
# Up to this length the plain limit holds, and for each such length beyond it a little more.
LENGTH_MM = 100.0


@record
class Inputs:
    """The straightedge's readings, the skim, and the chamber that it takes from."""

    lines_mm: tuple[float, ...] = readings(
        sizes.STRAIGHTEDGE,
        "largest feeler that passes under the straightedge on each line: four edges and two "
        "diagonals; 0 where none passes",
        least=4,
        most=12,
        example=(0.04, 0.06, 0.03, 0.05, 0.07, 0.04),
    )
    face_length_mm: float | None = quantity(
        sizes.FACE_LENGTH, "longest side of the face, for the limit that shops keep", default=None
    )
    rocks: bool | None = flag(
        "whether the face rocks on a surface plate: then it is crowned, not hollow",
        example=False,
        default=None,
    )
    skim_allowance_mm: float = quantity(
        sizes.SKIM_ALLOWANCE,
        "metal to take off beyond the hollow, for a clean cut all over",
        default=0.0,
    )
    skim_done_mm: float | None = quantity(
        faces.SKIM_DONE, "metal already taken off this face, in all", default=None
    )
    chamber_area_mm2: float | None = quantity(
        faces.CHAMBER_FACE,
        "area of the combustion chamber at the face, as measured: it shrinks with depth",
        default=None,
    )
    swept_cc: float | None = quantity(
        quantities.CYLINDER_VOLUME,
        "swept volume of one cylinder",
        example=239.691,
        default=None,
    )
    clearance_cc: float | None = quantity(
        quantities.CLEARANCE_VOLUME,
        "clearance volume before the skim: above the piston at top dead centre",
        default=None,
    )
    gasket_kind: str | None = choice(
        "kind of gasket that the face seals",
        GASKET_KIND,
        example="multi_layer_steel",
        default=None,
    )
    roughness_mm: float | None = quantity(
        sizes.ROUGHNESS, "roughness Ra of the face as it goes back", default=None
    )


@record
class Outputs:
    """How flat the face is, and what a skim does."""

    flatness_mm: float = result(
        "largest gap under the straightedge",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest of the readings",
        source=COMMON,
        extreme=True,
    )
    worst_line: int = result(
        "line with the largest gap, counted from 1 in the order given",
        basis="place of the largest reading",
        source="as given",
        place=True,
    )
    skim_mm: float = result(
        "metal to take off, if the face is to be skimmed",
        kind=kinds.LENGTH,
        decimals=3,
        formula="flatness_mm + skim_allowance_mm",
        source=COMMON,
    )
    skim_in_all_mm: float = result(
        "metal off this face in all after the skim",
        kind=kinds.LENGTH,
        decimals=3,
        basis="skim + skim_done; skim_done counts as none where it is not given",
        source=COMMON,
    )
    chamber_loss_cc: float | None = result(
        "volume that the skim takes from the chamber",
        kind=kinds.VOLUME,
        decimals=3,
        formula="chamber_area_mm2 * skim_mm / 1000",
        source="solid geometry: volume of a prism",
        default=None,
    )
    clearance_after_cc: float | None = result(
        "clearance volume after the skim",
        kind=kinds.VOLUME,
        decimals=2,
        formula="clearance_cc - chamber_loss_cc",
        source="solid geometry",
        default=None,
    )
    ratio_before: float | None = result(
        "compression ratio before the skim",
        decimals=2,
        formula="(swept_cc + clearance_cc) / clearance_cc",
        source=RATIO,
        default=None,
    )
    ratio_after: float | None = result(
        "compression ratio after the skim",
        decimals=2,
        formula="(swept_cc + clearance_after_cc) / clearance_after_cc",
        source=RATIO,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the flatness, the skim that it takes, and the ratio after."""
    gaps = inputs.lines_mm
    flatness = max(gaps)
    skim = float(facing.skim_mm(flatness, inputs.skim_allowance_mm))
    return Outputs(
        flatness_mm=flatness,
        worst_line=gaps.index(flatness) + 1,
        skim_mm=skim,
        skim_in_all_mm=skim + (inputs.skim_done_mm or 0.0),
        **_chamber(inputs, skim),
    )


def _chamber(i: Inputs, skim_mm: float) -> dict[str, float]:
    """Return what the skim does to volume and ratio, as far as they are given."""
    found: dict[str, float] = {}
    if i.swept_cc is not None and i.clearance_cc is not None:
        found["ratio_before"] = float(geometry.compression_ratio(i.swept_cc, i.clearance_cc))
    if i.chamber_area_mm2 is None:
        return found
    loss = float(facing.volume_of_cut_cc(skim_mm, i.chamber_area_mm2))
    found["chamber_loss_cc"] = loss
    if i.clearance_cc is None:
        return found
    after = i.clearance_cc - loss
    found["clearance_after_cc"] = after
    if i.swept_cc is not None:
        found["ratio_after"] = float(geometry.compression_ratio(i.swept_cc, after))
    return found


def extremes(inputs: Inputs) -> dict[str, Candidates]:
    """Return what the flatness, and all that the skim does with it, is taken from."""
    gaps = inputs.lines_mm
    skims = [facing.skim_mm(gap, inputs.skim_allowance_mm) for gap in gaps]
    done = 0.0 if inputs.skim_done_mm is None else inputs.skim_done_mm
    found = {
        "flatness_mm": largest(gaps, floor=0.0),
        "skim_mm": largest(skims),
        "skim_in_all_mm": largest([skim + done for skim in skims]),
    }
    area, clearance, swept = inputs.chamber_area_mm2, inputs.clearance_cc, inputs.swept_cc
    if area is None:
        return found
    losses = [facing.volume_of_cut_cc(skim, area) for skim in skims]
    found["chamber_loss_cc"] = largest(losses)
    if clearance is not None:
        afters = [clearance - loss for loss in losses]
        found["clearance_after_cc"] = smallest(afters)
        if swept is not None:
            found["ratio_after"] = largest([geometry.compression_ratio(swept, a) for a in afters])
    return found


def _flat_enough(inputs: Inputs, _: Outputs) -> Limit:
    """Return the limit for the face's length; the plain one where it is not given."""
    plain, more = LIMITS["flatness.to_100_mm"].limit(), LIMITS["flatness.each_further_100_mm"]
    if inputs.face_length_mm is None or inputs.face_length_mm <= LENGTH_MM:
        return plain
    extra = (more.high or 0.0) * (inputs.face_length_mm - LENGTH_MM) / LENGTH_MM
    return replace(
        plain, high=(plain.high or 0.0) + extra, source=f"{plain.source}; {more.label} more"
    )


def _finish(inputs: Inputs, _: Outputs) -> Limit | None:
    kind = inputs.gasket_kind
    return None if kind is None else LIMITS[f"face_finish.{kind}"].limit()


CALCULATION = Calculation(
    name="flatness",
    number="C37",
    stage="head",
    title="Flatness and resurfacing",
    summary="Flatness of a face from a straightedge, the skim that it takes, and the chamber "
    "volume and ratio after. Head and cylinder both; studs pull the face up around their holes: "
    "repair threads by insert, square to the face, before the skim. On the bench too: crack test "
    "by dye between seats and plug hole, leak test of the valves, and a liquid-cooled head "
    "pressure-tested warm under water.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    columns=False,
    checks=(
        Check(
            "flatness",
            "flatness_mm",
            "flatness of the face",
            "clean the face, lay a straightedge of known truth on each line again, feelers in "
            "0.01 mm steps",
            _flat_enough,
        ),
        Check(
            "skim_in_all",
            "skim_in_all_mm",
            "metal off the face in all",
            "measure the head's height against the maker's",
            lambda i, o: LIMITS["head_skim"].limit(),
        ),
        Check(
            "face_roughness",
            "roughness_mm",
            "roughness Ra of the face",
            "measure it across the lay at three places",
            _finish,
        ),
    ),
    rules=RULES,
    notices=NOTICES,
    cautions=("measuring", "head_pressure_test", "cleaning"),
)
