"""The parts of the clearance volume, and what one head gasket cannot be, for the ratios."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from ringland_service.core.declare import Rule
from ringland_service.core.formulas import geometry
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number

LARGEST_OVERSIZE_MM = 12.0
LEAST_CLEARANCE_CC = 0.3

CROWN_FLAT = "neither dome nor dish is given: the crown counts as flat, without valve pockets"
NO_CREVICE = (
    "the crevice above the top ring is not given and counts as none; the ratio comes out a little "
    "high"
)
PARTS = "chamber + gasket + deck + dish − dome + crevice; what is not given counts as none"


@dataclass(frozen=True)
class Parts:
    """The parts of a clearance volume that are worked out, and their sum with the others."""

    gasket_cc: Number
    deck_cc: Number
    clearance_cc: Number


def opening_mm2(bore_mm: Number | None, area_mm2: Number | None) -> Number | None:
    """Return the gasket's opening: the area where it is given, else that of its bore [mm²]."""
    if area_mm2 is not None:
        return area_mm2
    return None if bore_mm is None else geometry.piston_area_mm2(bore_mm)


def counted(part: Number | None) -> Number:
    """Return a part of the volume; one that is not given counts as none."""
    return 0.0 if part is None else part


def summed(
    *,
    bore_mm: Number,
    chamber_cc: Number,
    opening_mm2: Number,
    thickness_mm: Number,
    deck_mm: Number,
    dome_cc: Number | None,
    dish_cc: Number | None,
    crevice_cc: Number | None,
) -> Parts:
    """Return the parts of a clearance volume and their sum."""
    gasket_cc = opening_mm2 * thickness_mm / geometry.MM3_PER_CC
    deck_cc = geometry.disc_volume_cc(bore_mm, deck_mm)
    total_cc = geometry.clearance_volume_cc(
        chamber_cc, gasket_cc, deck_cc, counted(dish_cc), counted(dome_cc), counted(crevice_cc)
    )
    return Parts(gasket_cc, deck_cc, total_cc)


def gasket_rules(gasket: str, bore: str, area: str) -> tuple[Rule, ...]:
    """Return the rules between a round gasket, or an area, and the cylinder under it."""
    return (
        Rule(
            (gasket, bore),
            lambda i: beyond(getattr(i, bore), getattr(i, gasket)),
            "a gasket bore smaller than the cylinder overhangs it",
            "a gasket bore from the cylinder bore up to 12 mm above it",
        ),
        Rule(
            (gasket, bore),
            lambda i: beyond(getattr(i, gasket), getattr(i, bore) + LARGEST_OVERSIZE_MM),
            "a gasket bore more than 12 mm above the cylinder is not this cylinder's gasket",
            "a gasket bore from the cylinder bore up to 12 mm above it; for a gasket that is not "
            "round, its area",
        ),
        Rule(
            (area, bore),
            lambda i: beyond(geometry.piston_area_mm2(getattr(i, bore)), getattr(i, area)),
            "a gasket opening smaller than the cylinder overhangs it",
            "an area of at least that of the cylinder bore",
        ),
    )


def no_room(field: str, clearance_cc: Callable[[Any], Number | None]) -> Rule:
    """Return the rule that some volume is left above the piston."""

    def broken(inputs: Any) -> Any:
        left_cc = clearance_cc(inputs)
        return False if left_cc is None else beyond(LEAST_CLEARANCE_CC, left_cc)

    return Rule(
        (field,),
        broken,
        "the parts leave no volume above the piston at top dead centre (less than 0.3 cc)",
        "deck positive where the piston stops below it; dome and dish each in its own field",
    )
