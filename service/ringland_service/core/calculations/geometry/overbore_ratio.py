"""C18: static compression ratio before and after an overbore."""

from ringland_service.core.calculations.geometry import _overbore, _parts
from ringland_service.core.declare import (
    NO_EXAMPLE,
    Calculation,
    Check,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.errors import Contradiction
from ringland_service.core.formulas import geometry
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import cited

GEOMETRY = "solid geometry"
RATIO = cited("{heywood_ratio}")


@record
class Inputs:
    """The cylinder with its clearance volume, and what the overbore changes."""

    bore_mm: Number = quantity(lengths.BORE, "cylinder bore before machining")
    new_bore_mm: Number = quantity(lengths.BORE, "bore after machining", example=68.496)
    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    chamber_cc: Number | None = quantity(
        quantities.CHAMBER,
        "combustion chamber in the head before; kept but for what head work is told",
        default=None,
    )
    gasket_thickness_mm: Number | None = quantity(
        lengths.GASKET_THICKNESS, "compressed head gasket; 0 without one", default=None
    )
    deck_mm: Number | None = quantity(
        lengths.DECK,
        "piston crown edge at top dead centre: below (+) or proud of (−) the deck",
        default=None,
    )
    gasket_bore_mm: Number | None = quantity(
        lengths.GASKET_BORE,
        "bore of the head gasket; without a gasket, of the joint",
        default=None,
    )
    gasket_area_mm2: Number | None = quantity(
        quantities.GASKET_AREA,
        "opening of a head gasket that is not round; wins over its bore",
        default=None,
    )
    dome_cc: Number | None = quantity(
        quantities.CROWN_VOLUME, "dome of the old piston, never negative", default=None
    )
    dish_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dish and valve pockets of the old piston, never negative",
        example=0.0,
        default=None,
    )
    crevice_cc: Number | None = quantity(
        quantities.CREVICE, "crevice above the top ring; kept", default=None
    )
    new_dome_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dome of the new piston; like the old one's where not given",
        default=None,
    )
    new_dish_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dish and valve pockets of the new piston; like the old one's where not given",
        example=0.0,
        default=None,
    )
    new_deck_mm: Number | None = quantity(
        lengths.DECK,
        "crown edge of the new piston below (+) or proud of (−) the deck; like the old one's "
        "where not given",
        default=None,
    )
    new_gasket_bore_mm: Number | None = quantity(
        lengths.GASKET_BORE, "bore of the new head gasket; kept where not given", default=None
    )
    new_gasket_thickness_mm: Number | None = quantity(
        lengths.GASKET_THICKNESS,
        "compressed new head gasket; kept where not given",
        default=None,
    )
    clearance_cc: Number | None = quantity(
        quantities.CLEARANCE_VOLUME,
        "clearance volume before, measured whole; counts before the sum of its parts",
        example=NO_EXAMPLE,
        default=None,
    )
    base_gasket_thinner_by_mm: Number | None = quantity(
        lengths.GASKET_CHANGE,
        "new base gasket thinner by; negative for a thicker one",
        example=NO_EXAMPLE,
        default=None,
    )
    deck_cut_mm: Number | None = quantity(
        lengths.DECK_TAKEN_OFF,
        "metal taken off the cylinder's deck",
        example=NO_EXAMPLE,
        default=None,
    )
    skim_loss_cc: Number | None = quantity(
        quantities.CHAMBER_CHANGE,
        "what a skim of the head takes from the chamber",
        example=NO_EXAMPLE,
        default=None,
    )
    sink_gain_cc: Number | None = quantity(
        quantities.CHAMBER_CHANGE,
        "what the chamber gains by valves that sit deeper",
        example=NO_EXAMPLE,
        default=None,
    )


@record
class Outputs:
    """The ratio before and after, and the room between gasket and cylinder."""

    swept_before_cc: Number = result(
        "swept volume before",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * bore_mm**2 * stroke_mm / 1000",
        source=GEOMETRY,
    )
    clearance_before_cc: Number = result(
        "clearance volume before",
        kind=kinds.VOLUME,
        digits=2,
        basis=f"as measured whole; else {_parts.PARTS}",
        source=GEOMETRY,
    )
    ratio_before: Number = result(
        "static compression ratio before",
        digits=2,
        formula="(swept_before_cc + clearance_before_cc) / clearance_before_cc",
        source=RATIO,
    )
    swept_after_cc: Number = result(
        "swept volume after",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * new_bore_mm**2 * stroke_mm / 1000",
        source=GEOMETRY,
    )
    clearance_after_cc: Number = result(
        "clearance volume after",
        kind=kinds.VOLUME,
        digits=2,
        basis=f"{_parts.PARTS}; chamber and crevice kept but for skim and valve sink, the deck "
        "part grows with the bore and falls with base gasket and deck cut, gasket and crown are "
        "those fitted after; from a clearance measured whole, that with the same changes",
        source=GEOMETRY,
    )
    ratio_after: Number = result(
        "static compression ratio after",
        digits=2,
        formula="(swept_after_cc + clearance_after_cc) / clearance_after_cc",
        source=RATIO,
    )
    ratio_change: Number = result(
        "change of the static compression ratio",
        digits=3,
        formula="ratio_after - ratio_before",
        source="difference of the two ratios",
    )
    ratio_after_clearance_held: Number = result(
        "static compression ratio after, by the shortcut that holds the clearance volume",
        digits=2,
        formula="(swept_after_cc + clearance_before_cc) / clearance_before_cc",
        source=RATIO,
    )
    gasket_clearance_per_side_mm: Number | None = result(
        "room between the new bore and the gasket in place, on each side (radial)",
        kind=kinds.LENGTH,
        digits=3,
        basis="half of gasket bore less new bore; the new gasket's bore where one is given",
        source=GEOMETRY,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the ratio before and after, and by the shortcut.

    Raises
    ------
    Contradiction
        Where the clearance volume before is not known, or not that after.
    """
    before_cc, after_cc = _overbore.before_cc(inputs), _overbore.after_cc(inputs)
    if before_cc is None or after_cc is None:
        lacking = "chamber_cc" if inputs.chamber_cc is None else "gasket_bore_mm"
        raise Contradiction(lacking, _overbore.NOT_TOLD, _overbore.TELL)
    swept_cc = geometry.swept_volume_cc(inputs.bore_mm, inputs.stroke_mm)
    swept_after_cc = geometry.swept_volume_cc(inputs.new_bore_mm, inputs.stroke_mm)
    ratio = geometry.compression_ratio(swept_cc, before_cc)
    ratio_after = geometry.compression_ratio(swept_after_cc, after_cc)
    gasket_mm = _overbore.gasket_after_mm(inputs)
    return Outputs(
        swept_before_cc=swept_cc,
        clearance_before_cc=before_cc,
        ratio_before=ratio,
        swept_after_cc=swept_after_cc,
        clearance_after_cc=after_cc,
        ratio_after=ratio_after,
        ratio_change=ratio_after - ratio,
        ratio_after_clearance_held=geometry.compression_ratio(swept_after_cc, before_cc),
        gasket_clearance_per_side_mm=(
            None
            if gasket_mm is None
            else geometry.gasket_overhang_mm(gasket_mm, inputs.new_bore_mm)
        ),
    )


def _overlap(_inputs: Inputs, _outputs: Outputs) -> Limit:
    return LIMITS["gasket_overlap"].limit()


CALCULATION = Calculation(
    name="overbore-ratio",
    number="C18",
    stage="geometry",
    title="Compression ratio after an overbore",
    summary="Static compression ratio before and after an overbore, with the gasket kept or "
    "changed and the new piston's own crown, and the room between gasket and cylinder. What other "
    "works change at the same time counts in: base gasket, deck, skim, valves that sit deeper.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=_overbore.ONE_OF,
    rules=_overbore.RULES,
    notices=_overbore.NOTICES,
    checks=(
        Check(
            "gasket_clearance_per_side",
            "gasket_clearance_per_side_mm",
            "gasket clear of the new bore on each side",
            "measure the gasket bore across several diameters, or ask for a gasket of the oversize",
            _overlap,
        ),
        Check(
            "compression_ratio_after",
            "ratio_after",
            "static compression ratio after the overbore within the maker's",
            "measure chamber and new crown by burette, and the deck with the new piston",
        ),
    ),
)
