"""C17: static compression ratio, from the parts of the clearance volume or by burette."""

from ringland_service.core.calculations.geometry import _parts, _ways
from ringland_service.core.calculations.geometry._ratio_notices import NOTICES
from ringland_service.core.declare import (
    Calculation,
    Check,
    choice,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.engines.choices import UNKNOWN, VALVE_GEAR
from ringland_service.core.errors import Contradiction
from ringland_service.core.formulas import geometry
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE, cited

GEOMETRY = "solid geometry"
RATIO = cited("{heywood_ratio}")


@record
class Inputs:
    """The cylinder, and the clearance volume by its parts, by burette, or both ways."""

    bore_mm: Number = quantity(lengths.BORE, "cylinder bore")
    stroke_mm: Number = quantity(lengths.STROKE, "stroke")
    valve_gear: str = choice("valve gear", VALVE_GEAR, example="overhead_valves", default=UNKNOWN)
    chamber_cc: Number | None = quantity(
        quantities.CHAMBER, "combustion chamber in the head, valves and plug fitted", default=None
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
    gasket_thickness_mm: Number | None = quantity(
        lengths.GASKET_THICKNESS, "compressed head gasket; 0 without one", default=None
    )
    deck_mm: Number | None = quantity(
        lengths.DECK,
        "piston crown edge at top dead centre: below (+) or proud of (−) the deck",
        default=None,
    )
    dome_cc: Number | None = quantity(
        quantities.CROWN_VOLUME, "dome on the crown, never negative; 0 without one", default=None
    )
    dish_cc: Number | None = quantity(
        quantities.CROWN_VOLUME,
        "dish and valve pockets in the crown, never negative; 0 for a flat crown",
        example=0.0,
        default=None,
    )
    crevice_cc: Number | None = quantity(
        quantities.CREVICE,
        "crevice above the top ring; wins over land diameter and height",
        default=None,
    )
    land_mm: Number | None = quantity(lengths.LAND, "diameter of the top land", default=None)
    land_height_mm: Number | None = quantity(
        lengths.LAND_HEIGHT, "height of the top land", default=None
    )
    burette_fill_cc: Number | None = quantity(
        quantities.BURETTE_FILL,
        "thin liquid filled in at top dead centre up to the top of the plug hole; rings sealed "
        "with grease, tilted so that no bubble stays",
        default=None,
    )
    plug_diameter_mm: Number | None = quantity(
        lengths.PLUG_DIAMETER, "plug thread: mean of major and minor diameter", default=None
    )
    plug_reach_mm: Number | None = quantity(
        lengths.PLUG_REACH, "depth of the plug hole that the fill covers", default=None
    )


@record
class Outputs:
    """The parts, their sum, the ratio, and how far each part moves it."""

    swept_cc: Number = result(
        "swept volume of one cylinder",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * bore_mm**2 * stroke_mm / 1000",
        source=GEOMETRY,
    )
    gasket_opening_mm2: Number | None = result(
        "opening of the head gasket",
        kind=kinds.AREA,
        digits=0,
        basis="the area given, else pi/4 × gasket bore²",
        source=GEOMETRY,
        default=None,
    )
    gasket_cc: Number | None = result(
        "volume in the head gasket",
        kind=kinds.VOLUME,
        digits=2,
        formula="gasket_opening_mm2 * gasket_thickness_mm / 1000",
        source=GEOMETRY,
        default=None,
    )
    deck_cc: Number | None = result(
        "volume between crown edge and deck; negative for a piston proud of it",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * bore_mm**2 * deck_mm / 1000",
        source=GEOMETRY,
        default=None,
    )
    crevice_counted_cc: Number | None = result(
        "crevice above the top ring, as counted",
        kind=kinds.VOLUME,
        digits=2,
        basis="the crevice given, else pi/4 × (bore² − land²) × height of the top land",
        source=GEOMETRY,
        default=None,
    )
    clearance_cc: Number = result(
        "clearance volume: what is left above the piston at top dead centre",
        kind=kinds.VOLUME,
        digits=2,
        basis=f"{_parts.PARTS}; by burette where the parts are not all given",
        source=f"sum of the parts; {NO_SOURCE}",
    )
    compression_ratio: Number = result(
        "static (geometric) compression ratio",
        digits=2,
        formula="(swept_cc + clearance_cc) / clearance_cc",
        source=RATIO,
    )
    plug_hole_cc: Number | None = result(
        "volume of the plug hole; the plug's own nose is not counted",
        kind=kinds.VOLUME,
        digits=2,
        formula="pi/4 * plug_diameter_mm**2 * plug_reach_mm / 1000",
        source=GEOMETRY,
        default=None,
    )
    clearance_by_burette_cc: Number | None = result(
        "clearance volume by burette; gasket, deck, crown and crevice are inside it",
        kind=kinds.VOLUME,
        digits=2,
        formula="burette_fill_cc - plug_hole_cc",
        source=NO_SOURCE,
        default=None,
    )
    ratio_by_burette: Number | None = result(
        "static compression ratio by burette",
        digits=2,
        formula="(swept_cc + clearance_by_burette_cc) / clearance_by_burette_cc",
        source=RATIO,
        default=None,
    )
    ways_apart_pct: Number | None = result(
        "clearance volume by burette against the one from the parts",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * (clearance_by_burette_cc / clearance_cc - 1)",
        source="definition of a relative change",
        default=None,
    )
    ratio_change_by_volume: Number = result(
        "change of the ratio for each cc more in chamber, dish or any other part",
        digits=3,
        formula="-swept_cc / clearance_cc**2",
        source="derivative of the ratio",
    )
    ratio_change_by_gasket: Number | None = result(
        "change of the ratio for each mm more of gasket",
        digits=3,
        formula="ratio_change_by_volume * gasket_opening_mm2 / 1000",
        source="derivative of the ratio",
        default=None,
    )
    ratio_change_by_deck: Number = result(
        "change of the ratio for each mm that the piston stops lower",
        digits=3,
        formula="ratio_change_by_volume * pi/4 * bore_mm**2 / 1000",
        source="derivative of the ratio",
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the ratio from the parts, by burette, or both ways.

    Raises
    ------
    Contradiction
        Where neither way is complete.
    """
    swept_cc = geometry.swept_volume_cc(inputs.bore_mm, inputs.stroke_mm)
    parts, burette_cc = _ways.by_parts(inputs), _ways.by_burette_cc(inputs)
    if parts is not None:
        clearance_cc = parts.clearance_cc
    elif burette_cc is not None:
        clearance_cc = burette_cc
    else:
        raise Contradiction("chamber_cc", _ways.NEITHER, _ways.BOTH)
    slope = -swept_cc / (clearance_cc * clearance_cc)
    opening_mm2 = _parts.opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    per_mm2 = slope / geometry.MM3_PER_CC
    return Outputs(
        swept_cc=swept_cc,
        gasket_opening_mm2=opening_mm2,
        gasket_cc=None if parts is None else parts.gasket_cc,
        deck_cc=None if parts is None else parts.deck_cc,
        crevice_counted_cc=None if parts is None else _ways.crevice_cc(inputs),
        clearance_cc=clearance_cc,
        compression_ratio=geometry.compression_ratio(swept_cc, clearance_cc),
        plug_hole_cc=_ways.plug_hole_cc(inputs),
        clearance_by_burette_cc=burette_cc,
        ratio_by_burette=(
            None if burette_cc is None else geometry.compression_ratio(swept_cc, burette_cc)
        ),
        ways_apart_pct=(
            None
            if parts is None or burette_cc is None
            else geometry.change_percent(clearance_cc, burette_cc)
        ),
        ratio_change_by_volume=slope,
        ratio_change_by_gasket=None if opening_mm2 is None else per_mm2 * opening_mm2,
        ratio_change_by_deck=per_mm2 * geometry.piston_area_mm2(inputs.bore_mm),
    )


CALCULATION = Calculation(
    name="compression-ratio",
    number="C17",
    stage="geometry",
    title="Static compression ratio",
    summary="Static compression ratio from the parts of the clearance volume, by burette, or "
    "both ways against each other.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=_ways.ONE_OF,
    rules=_ways.RULES,
    notices=NOTICES,
    cautions=("burette_fill",),
    checks=(
        Check(
            "compression_ratio",
            "compression_ratio",
            "static compression ratio within the maker's",
            "measure the largest parts again, chamber and dome by burette; or fill the whole "
            "through the plug hole",
        ),
    ),
)
