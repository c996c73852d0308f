"""The two ways to the clearance volume: its parts, or a burette through the plug hole."""

from typing import Any

from ringland_service.core.calculations.geometry._parts import (
    LEAST_CLEARANCE_CC,
    Parts,
    gasket_rules,
    no_room,
    opening_mm2,
    summed,
)
from ringland_service.core.declare import Rule
from ringland_service.core.formulas import geometry
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.numbers import Number

NEITHER = "neither way to the clearance volume is complete"
BOTH = (
    "chamber, gasket bore or area, gasket thickness and deck; or burette fill, plug thread "
    "diameter and reach"
)

ONE_OF = (
    (
        ("chamber_cc", "gasket_bore_mm", "gasket_thickness_mm", "deck_mm"),
        ("chamber_cc", "gasket_area_mm2", "gasket_thickness_mm", "deck_mm"),
        ("burette_fill_cc", "plug_diameter_mm", "plug_reach_mm"),
    ),
)


def crevice_cc(inputs: Any) -> Number | None:
    """Return the crevice given, else from the land, else None."""
    given_cc: Number | None = inputs.crevice_cc
    if given_cc is not None:
        return given_cc
    if inputs.land_mm is None or inputs.land_height_mm is None:
        return None
    return geometry.crevice_cc(inputs.bore_mm, inputs.land_mm, inputs.land_height_mm)


def by_parts(inputs: Any) -> Parts | None:
    """Return the parts and their sum, or None where one is not given that must be."""
    opening = opening_mm2(inputs.gasket_bore_mm, inputs.gasket_area_mm2)
    if (
        inputs.chamber_cc is None
        or opening is None
        or inputs.gasket_thickness_mm is None
        or inputs.deck_mm is None
    ):
        return None
    return summed(
        bore_mm=inputs.bore_mm,
        chamber_cc=inputs.chamber_cc,
        opening_mm2=opening,
        thickness_mm=inputs.gasket_thickness_mm,
        deck_mm=inputs.deck_mm,
        dome_cc=inputs.dome_cc,
        dish_cc=inputs.dish_cc,
        crevice_cc=crevice_cc(inputs),
    )


def plug_hole_cc(inputs: Any) -> Number | None:
    """Return the volume of the plug hole, or None where its size is not given."""
    if inputs.plug_diameter_mm is None or inputs.plug_reach_mm is None:
        return None
    return geometry.disc_volume_cc(inputs.plug_diameter_mm, inputs.plug_reach_mm)


def by_burette_cc(inputs: Any) -> Number | None:
    """Return the clearance volume by burette, or None where that way is not complete."""
    fill_cc: Number | None = inputs.burette_fill_cc
    hole_cc = plug_hole_cc(inputs)
    return None if fill_cc is None or hole_cc is None else fill_cc - hole_cc


def _parts_cc(inputs: Any) -> Number | None:
    parts = by_parts(inputs)
    return None if parts is None else parts.clearance_cc


def _hole_exceeds_fill(inputs: Any) -> Any:
    left_cc = by_burette_cc(inputs)
    return False if left_cc is None else beyond(LEAST_CLEARANCE_CC, left_cc)


RULES = (
    *gasket_rules("gasket_bore_mm", "bore_mm", "gasket_area_mm2"),
    no_room("chamber_cc", _parts_cc),
    Rule(
        ("burette_fill_cc", "plug_diameter_mm", "plug_reach_mm"),
        _hole_exceeds_fill,
        "the fill is no more than the plug hole holds",
        "the whole fill, from the piston crown to the top of the plug hole",
    ),
    Rule(
        ("land_mm", "bore_mm"),
        lambda i: at_most(i.bore_mm, i.land_mm) | beyond(i.bore_mm, i.land_mm + 3.0),
        "a top land of that diameter does not belong to this bore",
        "a top land smaller than the bore, by 3 mm at most",
    ),
)
