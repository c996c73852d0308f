"""What a squish clearance is worked out from, and what a gasket is chosen among."""

import dataclasses

from ringland_service.core.calculations.geometry import _squish_gaskets as gaskets
from ringland_service.core.declare import (
    choice,
    limit_of,
    memoised,
    quantity,
    readings,
    record,
    usual_figures,
)
from ringland_service.core.engines import condition
from ringland_service.core.metrology.conformity import is_column
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import geometry as sizes
from ringland_service.core.quantities import lengths


@record
class Inputs:
    """The squish as measured, the cylinder, the gaskets at hand, and what they would move."""

    solder_mm: tuple[float, ...] | None = readings(
        sizes.SQUISH,
        "crushed solder at the pin axis, one reading a side, head torqued down with its gasket; on "
        "the thrust axis the piston rocks",
        least=2,
        most=4,
        example=(1.32, 1.36),
        default=None,
    )
    solder_wire_mm: float | None = quantity(
        sizes.SOLDER_WIRE, "solder before it was crushed", example=2.2, default=None
    )
    deck_mm: float | None = quantity(
        lengths.DECK,
        "crown edge at the squish band below (+) or proud of (−) the deck at top dead centre",
        example=0.0,
        default=None,
    )
    gasket_thickness_mm: float | None = quantity(
        lengths.GASKET_THICKNESS, "head gasket, compressed", default=None
    )
    head_step_mm: float | None = quantity(
        sizes.HEAD_STEP,
        "squish band of the head recessed in (+) or standing out of (−) its gasket face",
        default=None,
    )
    solder_uncertainty_mm: float | None = quantity(
        sizes.SQUISH_UNCERTAINTY,
        "uncertainty of the smallest point, expanded (k = 2); where not given, 0.04 mm of crushed "
        "solder (common practice, no source)",
        default=None,
        exact=True,
    )
    cycle: str | None = choice(
        "cycle, for the floor that shops keep", condition.CYCLE, example="two_stroke", default=None
    )
    bore_mm: float | None = quantity(lengths.BORE, "cylinder bore", example=56.0, default=None)
    stroke_mm: float | None = quantity(lengths.STROKE, "stroke", example=58.0, default=None)
    bowl_diameter_mm: float | None = quantity(
        sizes.BOWL, "diameter of the bowl inside the squish band", default=None
    )
    base_gasket_fitted_mm: float | None = quantity(
        sizes.BASE_GASKET, "base gasket fitted when the squish was measured", default=None
    )
    base_gaskets_mm: tuple[float, ...] | None = readings(
        sizes.BASE_GASKET,
        "base gaskets at hand, in any order",
        least=1,
        most=20,
        example=(0.2, 0.3, 0.4, 0.5, 0.8),
        default=None,
    )
    squish_wanted_mm: float | None = quantity(
        sizes.SQUISH_WANTED,
        "squish wanted; where not given, 0.2 mm over the floor (common practice, no source)",
        default=None,
    )
    piston_edge_below_deck_at_tdc_mm: float | None = quantity(
        lengths.PISTON_EDGE,
        "crown edge, at the ports, below (+) or proud of (−) the deck at top dead centre; where "
        "not given, deck",
        default=None,
    )
    clearance_cc: float | None = quantity(
        quantities.CLEARANCE_VOLUME,
        "clearance volume now: above the piston at top dead centre",
        example=11.9,
        default=None,
    )
    rod_mm: float | None = quantity(
        lengths.ROD, "rod length, centre to centre", example=110.0, default=None
    )
    exhaust_port_top_below_deck_mm: float | None = quantity(
        lengths.PORT_TOP, "top edge of a two-stroke's exhaust port below the deck", default=None
    )
    transfer_port_top_below_deck_mm: float | None = quantity(
        lengths.PORT_TOP,
        "top edge of a two-stroke's transfer ports below the deck",
        example=41.4,
        default=None,
    )
    floor_given: Limit | None = limit_of("smallest_squish")
    usual: bool = usual_figures()
    held: tuple[tuple[float | None, bool], int, int] | None = memoised()

    @property
    def chosen(self) -> int:
        """Place of the gasket to take among those at hand, or -1."""
        return gaskets.chosen_place(self) if self.held is None else self.held[1]

    @property
    def nearest(self) -> int:
        """Place of the gasket that comes nearest among those at hand, or -1."""
        return gaskets.nearest_place(self) if self.held is None else self.held[2]

    def __post_init__(self) -> None:
        """Hold the choice and the nearest gasket: copies with one value moved keep them.

        The engine fills in the request's own floor last; the choice is then made anew. A column
        is answered row by row, so it needs none.
        """
        if any(is_column(getattr(self, field.name)) for field in dataclasses.fields(self)):
            return
        floor = gaskets.floor_mm(self)
        if self.held is None or self.held[0] != (floor, self.usual):
            places = gaskets.chosen_place(self), gaskets.nearest_place(self)
            made = ((floor, self.usual), *places)
            object.__setattr__(self, "held", made)


def components(i: Inputs) -> list[Component]:
    """Return the stated uncertainty of the squish: it moves all its points together."""
    if i.solder_uncertainty_mm is None:
        return []
    if i.solder_mm is None:
        effects: tuple[Effect, ...] = (Effect(("head_step_mm",), sizes.HEAD_STEP.scale),)
    else:
        places = range(len(i.solder_mm))
        effects = tuple(Effect(("solder_mm", n), sizes.SQUISH.scale) for n in places)
    return [Component("solder_uncertainty", i.solder_uncertainty_mm / 2.0, effects)]
