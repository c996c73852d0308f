"""C40: the smallest oversize that cleans up, and the bores that its piston needs."""

from typing import Any

from ringland_service.core.calculations.machining._candidates import (
    AT_THE_HONE,
    OUTCOMES,
    Candidate,
    candidates,
    that_clean_up,
)
from ringland_service.core.calculations.machining._choice_rules import NOTICES, RULES
from ringland_service.core.declare import (
    Calculation,
    Check,
    choice,
    held,
    kinds,
    quantity,
    record,
    records,
    result,
    text,
)
from ringland_service.core.engines import condition
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE

DIFFERENCE = "difference of two diameters"
SMALLEST = "the smallest piston whose bore-to is at least the clean-up diameter"
REASONS = {
    "smallest_cleans_up": "the smallest piston offered cleans up",
    "smaller_do_not_clean_up": "smaller pistons do not clean up, not even at the hone",
    "smaller_only_at_the_hone": "a smaller piston may clean up at the hone: ask the machinist",
    "only_at_the_hone": "no piston cleans up at boring; one may at the hone: ask the machinist",
    "none_cleans_up": "no piston offered cleans up",
}


@record
class Offered:
    """A piston in hand, or one that can be had with its size known."""

    mark: str = text(
        "what the piston is marked or sold as; carried along, never taken for a size",
        example="+0.50 mm",
        longest=40,
    )
    piston_mm: float = quantity(
        lengths.PISTON,
        "the piston as measured across the thrust axis, at the maker's height",
        example=68.461,
    )


@record
class Inputs:
    """What must be cut out, the pistons on offer, and what each needs around it."""

    bore_kind: str = choice("kind of bore", condition.BORE_KIND, example="iron_sleeve_in_aluminium")
    clean_up_mm: float = quantity(sizes.CLEAN_UP, "clean-up diameter")
    pistons: tuple[Offered, ...] = records(
        Offered, "pistons on offer, each with its measured size, in any order", most=12
    )
    wanted_clearance_mm: float = quantity(
        sizes.WANTED_CLEARANCE, "clearance wanted, diametral; the middle of the maker's range"
    )
    hone_stock_mm: float = quantity(
        sizes.HONE_STOCK, "stock that the machinist leaves for the hone, on the diameter"
    )
    nominal_bore_mm: float | None = quantity(
        lengths.BORE, "nominal bore of a standard piston", default=None
    )
    makers_largest_oversize_mm: float | None = quantity(
        sizes.LARGEST_OVERSIZE,
        "largest oversize that the maker allows, on the diameter, with nominal_bore",
        default=None,
    )
    held: int | None = held()

    def __post_init__(self) -> None:
        """Hold the choice: copies with one value moved by its doubt keep it."""
        if self.held is None:
            fit = that_clean_up(candidates(self))
            object.__setattr__(self, "held", fit[0] if fit else -1)


@record
class Outputs:
    """Each piston in the order given, and the one to take."""

    marks: tuple[str, ...] = result(
        "pistons offered, in the order given", basis="as given", source="as given"
    )
    finish_bores_mm: tuple[float, ...] = result(
        "finish bore that each piston needs",
        kind=kinds.LENGTH,
        digits=3,
        basis="piston as measured + wanted_clearance",
        source=DIFFERENCE,
    )
    bore_tos_mm: tuple[float, ...] = result(
        "diameter to bore to for each piston, before the hone",
        kind=kinds.LENGTH,
        digits=3,
        basis="finish bore − hone_stock",
        source=DIFFERENCE,
    )
    margins_mm: tuple[float, ...] = result(
        "what each piston's bore-to leaves over the clean-up diameter; negative: damage stays",
        kind=kinds.LENGTH,
        digits=3,
        basis="bore-to − clean_up",
        source=DIFFERENCE,
    )
    outcomes: tuple[str, ...] = result(
        "what each piston's bores do to the damage",
        basis="clean_up against bore-to, else against finish bore; the maker's largest oversize "
        "first",
        source=DIFFERENCE,
        choices=OUTCOMES,
    )
    reason: str = result(
        "why this choice, or why none",
        basis="the outcomes of the pistons smaller than the chosen one, else of all",
        source=DIFFERENCE,
        choices=REASONS,
    )
    chosen: str | None = result(
        "piston to take: the smallest that cleans up at boring; it leaves room for the next "
        "rebuild",
        basis=SMALLEST,
        source=NO_SOURCE,
        default=None,
    )
    chosen_piston_mm: float | None = result(
        "size of the chosen piston, as measured",
        kind=kinds.LENGTH,
        digits=3,
        basis=SMALLEST,
        source="as given",
        default=None,
    )
    chosen_finish_mm: float | None = result(
        "finish bore of the chosen piston",
        kind=kinds.LENGTH,
        digits=3,
        formula="chosen_piston_mm + wanted_clearance_mm",
        source=DIFFERENCE,
        default=None,
    )
    chosen_bore_to_mm: float | None = result(
        "diameter to bore to for the chosen piston",
        kind=kinds.LENGTH,
        digits=3,
        formula="chosen_finish_mm - hone_stock_mm",
        source=DIFFERENCE,
        default=None,
    )
    chosen_margin_mm: float | None = result(
        "margin of the chosen piston's bore-to over the clean-up diameter",
        kind=kinds.LENGTH,
        digits=3,
        formula="chosen_bore_to_mm - clean_up_mm",
        source=DIFFERENCE,
        default=None,
    )
    runner_up: str | None = result(
        "next larger piston that cleans up, should the chosen one not",
        basis="the second smallest piston whose bore-to is at least the clean-up diameter",
        source=NO_SOURCE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out each piston's bores and take the smallest that cleans up."""
    among = candidates(inputs)
    chosen = among[inputs.held] if inputs.held is not None and inputs.held >= 0 else None
    larger = [
        place
        for place in that_clean_up(among)
        if chosen is not None and place != inputs.held and among[place].finish_mm > chosen.finish_mm
    ]
    return Outputs(
        marks=tuple(one.mark for one in among),
        finish_bores_mm=tuple(one.finish_mm for one in among),
        bore_tos_mm=tuple(one.bore_to_mm for one in among),
        margins_mm=tuple(one.margin_mm for one in among),
        outcomes=tuple(one.outcome for one in among),
        reason=_reason(among, chosen),
        runner_up=among[larger[0]].mark if larger else None,
        **_of_chosen(chosen),
    )


def _of_chosen(chosen: Candidate | None) -> dict[str, Any]:
    if chosen is None:
        return {}
    return {
        "chosen": chosen.mark,
        "chosen_piston_mm": chosen.piston_mm,
        "chosen_finish_mm": chosen.finish_mm,
        "chosen_bore_to_mm": chosen.bore_to_mm,
        "chosen_margin_mm": chosen.margin_mm,
    }


def _reason(among: tuple[Candidate, ...], chosen: Candidate | None) -> str:
    at_the_hone = [one for one in among if one.outcome == AT_THE_HONE]
    if chosen is None:
        return "only_at_the_hone" if at_the_hone else "none_cleans_up"
    if any(one.finish_mm < chosen.finish_mm for one in at_the_hone):
        return "smaller_only_at_the_hone"
    smaller = any(one.finish_mm < chosen.finish_mm for one in among)
    return "smaller_do_not_clean_up" if smaller else "smallest_cleans_up"


CALCULATION = Calculation(
    name="oversize-choice",
    number="C40",
    stage="decision",
    title="Smallest oversize that cleans up",
    summary="Which piston to take: finish bore, bore-to and margin of each one offered, from its "
    "measured size. The mark is not the size: 0.50 mm is not 0.020 in (0.508 mm), and a piston may "
    "carry its clearance or not. Rings must match the oversize; all cylinders of one engine go to "
    "one oversize unless the maker allows others.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    checks=(
        Check(
            "oversize_margin",
            "chosen_margin_mm",
            "margin of the chosen piston at boring",
            "have the next size (runner_up) at hand; take score depth with a pin gauge or replica, "
            "or order a measuring cut first: cut, measure, tell us before the next cut",
            lambda i, o: Limit(0.0, None, "computed", "bore-to at least the clean-up diameter"),
        ),
    ),
    rules=RULES,
    notices=NOTICES,
    cautions=("measuring", "boring_and_honing"),
)
