"""C28: side clearance of rings in their grooves, and the room behind them."""

from collections.abc import Callable
from typing import Any

from ringland_service.core.calculations.cylinder import _ring_side_notices as notices
from ringland_service.core.declare import (
    Calculation,
    Check,
    choice,
    flag,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.engines.choices import FIT
from ringland_service.core.formulas import plays
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths

SIDE = "difference of two lengths"
GEOMETRY = "plane geometry"


@record
class Inputs:
    """Grooves cleaned of carbon, new rings tried all round."""

    top_feeler_mm: Number | None = quantity(
        lengths.SIDE_CLEARANCE,
        "side clearance of the top ring by feeler, the tightest place all round",
        default=None,
    )
    top_groove_width_mm: Number | None = quantity(
        lengths.GROOVE, "width of the top ring's groove, the narrowest place", default=None
    )
    top_ring_width_mm: Number | None = quantity(
        lengths.RING_WIDTH, "width of the top ring, along the cylinder", default=None
    )
    top_ring_shape: str = choice(
        "sides of the top ring", notices.SHAPE, example="plain", default="plain"
    )
    second_feeler_mm: Number | None = quantity(
        lengths.SIDE_CLEARANCE,
        "side clearance of the second ring by feeler, the tightest place all round",
        example=0.05,
        default=None,
    )
    second_groove_width_mm: Number | None = quantity(
        lengths.GROOVE, "width of the second ring's groove, the narrowest place", default=None
    )
    second_ring_width_mm: Number | None = quantity(
        lengths.RING_WIDTH,
        "width of the second ring, along the cylinder",
        example=1.185,
        default=None,
    )
    bore_mm: Number | None = quantity(lengths.BORE, "bore", example=68.016, default=None)
    top_groove_root_mm: Number | None = quantity(
        lengths.GROOVE_ROOT, "piston at the root of the top ring's groove", default=None
    )
    top_ring_thickness_mm: Number | None = quantity(
        lengths.RING_THICKNESS, "radial thickness of the top ring", default=None
    )
    second_groove_root_mm: Number | None = quantity(
        lengths.GROOVE_ROOT, "piston at the root of the second ring's groove", default=None
    )
    second_ring_thickness_mm: Number | None = quantity(
        lengths.RING_THICKNESS, "radial thickness of the second ring", default=None
    )
    measured_with_new_ring: bool = flag("measured with a new ring", default=True)
    fit: str = choice("which limits apply", FIT, example="used", default="used")


@record
class Outputs:
    """Side clearance is both sides together; back clearance is radial."""

    top_side_clearance_mm: Number | None = result(
        "side clearance of the top ring",
        kind=kinds.LENGTH,
        digits=3,
        basis="by feeler, else width of the groove less width of the ring",
        source=SIDE,
        default=None,
    )
    second_side_clearance_mm: Number | None = result(
        "side clearance of the second ring",
        kind=kinds.LENGTH,
        digits=3,
        basis="by feeler, else width of the groove less width of the ring",
        source=SIDE,
        default=None,
    )
    top_back_clearance_mm: Number | None = result(
        "room behind the top ring, radial",
        kind=kinds.LENGTH,
        digits=3,
        formula="(bore_mm - top_groove_root_mm) / 2 - top_ring_thickness_mm",
        source=GEOMETRY,
        default=None,
    )
    second_back_clearance_mm: Number | None = result(
        "room behind the second ring, radial",
        kind=kinds.LENGTH,
        digits=3,
        formula="(bore_mm - second_groove_root_mm) / 2 - second_ring_thickness_mm",
        source=GEOMETRY,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Take widths from each other, and the ring from the room beside the groove's root."""
    i = inputs
    return Outputs(
        top_side_clearance_mm=_side_mm(i.top_feeler_mm, i.top_groove_width_mm, i.top_ring_width_mm),
        second_side_clearance_mm=_side_mm(
            i.second_feeler_mm, i.second_groove_width_mm, i.second_ring_width_mm
        ),
        top_back_clearance_mm=_back_mm(i.bore_mm, i.top_groove_root_mm, i.top_ring_thickness_mm),
        second_back_clearance_mm=_back_mm(
            i.bore_mm, i.second_groove_root_mm, i.second_ring_thickness_mm
        ),
    )


def _side_mm(
    feeler_mm: Number | None, groove_mm: Number | None, ring_mm: Number | None
) -> Number | None:
    if feeler_mm is not None:
        return feeler_mm
    if groove_mm is None or ring_mm is None:
        return None
    return plays.side_clearance_mm(groove_mm, ring_mm)


def _back_mm(
    bore_mm: Number | None, root_mm: Number | None, thickness_mm: Number | None
) -> Number | None:
    if bore_mm is None or root_mm is None or thickness_mm is None:
        return None
    return plays.back_clearance_mm(bore_mm, root_mm, thickness_mm)


def _side(ring: str) -> Callable[[Any, Any], Limit]:
    return lambda i, _: LIMITS[f"ring_side.{i.fit}.{ring}"].limit()


def _back(_: Any, __: Any) -> Limit:
    return LIMITS["ring_back"].limit()


SETTLE_SIDE = "try the next leaf up and down, 0.01 mm apart, with a new ring, all round the groove"
SETTLE_BACK = "measure the groove's root and the ring's thickness with a micrometer"

CALCULATION = Calculation(
    name="ring-side-clearance",
    number="C28",
    stage="cylinder",
    title="Side and back clearance of rings",
    summary="Side clearance of the rings in their grooves, by feeler or from two widths, and the "
    "room behind them. Clean the carbon out of the groove and measure with a new ring all round: "
    "grooves wear bell-mouthed.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=(
        (
            ("top_feeler_mm",),
            ("top_groove_width_mm", "top_ring_width_mm"),
            ("second_feeler_mm",),
            ("second_groove_width_mm", "second_ring_width_mm"),
            ("bore_mm", "top_groove_root_mm", "top_ring_thickness_mm"),
            ("bore_mm", "second_groove_root_mm", "second_ring_thickness_mm"),
        ),
    ),
    checks=(
        Check(
            "top_ring_side",
            "top_side_clearance_mm",
            "side clearance of the top ring",
            SETTLE_SIDE,
            _side("top"),
        ),
        Check(
            "second_ring_side",
            "second_side_clearance_mm",
            "side clearance of the second ring",
            SETTLE_SIDE,
            _side("second"),
        ),
        Check(
            "top_ring_back",
            "top_back_clearance_mm",
            "room behind the top ring",
            SETTLE_BACK,
            _back,
        ),
        Check(
            "second_ring_back",
            "second_back_clearance_mm",
            "room behind the second ring",
            SETTLE_BACK,
            _back,
        ),
    ),
    rules=notices.RULES,
    notices=notices.NOTICES,
    cautions=("measuring", "ring_fitting"),
)
