"""Which piston on offer fits a sound bore as it stands: graded pistons in a plated bore.

A part of the cylinder's decision.
"""

from dataclasses import dataclass
from typing import cast

from ringland_service.core.calculations.cylinder.piston_fit import FIT_RULES
from ringland_service.core.calculations.decision import _fitted as fitted
from ringland_service.core.calculations.decision._fitted import Fitted, clearance
from ringland_service.core.calculations.machining.oversize_choice import Offered
from ringland_service.core.declare import (
    Calculation,
    Check,
    Rule,
    kinds,
    memoised,
    quantity,
    record,
    records,
    result,
)
from ringland_service.core.declare.usual import ALL
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.metrology.candidates import Candidates
from ringland_service.core.metrology.conformity import at_most
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE

DIFFERENCE = "difference of two diameters"
OUTCOMES = {
    "fits": "fits: smallest and largest clearance within the new fit",
    "too_tight": "too tight: its smallest clearance is under the new fit",
    "too_loose": "too loose: its largest clearance is over the new fit",
    "neither": "too tight and too loose: the bore differs by more than the new fit allows",
}
SETTLE = (
    "set the bore gauge in the micrometer that measures the pistons, five readings each, all "
    "parts at 20 °C"
)


@record
class Inputs(Fitted):
    """The bore, the pistons that can be had for it, and the fit wanted."""

    pistons: tuple[Offered, ...] = records(
        Offered, "pistons on offer, each with its measured size", most=12
    )
    clearance_low_mm: float = quantity(
        sizes.WANTED_CLEARANCE, "least clearance of a new fit, diametral", example=0.03
    )
    clearance_high_mm: float = quantity(
        sizes.WANTED_CLEARANCE, "largest clearance of a new fit, diametral", example=0.04
    )
    held: int | None = memoised()

    def __post_init__(self) -> None:
        """Hold the choice: copies with one reading moved by its uncertainty keep it."""
        if self.held is None:
            object.__setattr__(self, "held", _most_central(self))


@record
class Outputs:
    """Each piston's clearances in the order given, and the piston that fits best."""

    marks: tuple[str, ...] = result(
        "pistons offered, in the order given", basis="as given", source="as given"
    )
    clearance_mins_mm: tuple[float, ...] = result(
        "clearance of each piston in the smallest bore of the skirt travel, diametral",
        kind=kinds.LENGTH,
        decimals=3,
        basis="smallest bore of the skirt travel − piston, both at 20 °C",
        source=DIFFERENCE,
    )
    clearance_maxs_mm: tuple[float, ...] = result(
        "clearance of each piston in the largest bore of the skirt travel, diametral",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest bore of the skirt travel − piston, both at 20 °C",
        source=DIFFERENCE,
    )
    outcomes: tuple[str, ...] = result(
        "how each piston fits, by the figures alone",
        basis="both clearances against clearance_low and clearance_high",
        source="the maker's new fit as given",
        choices=OUTCOMES,
    )
    best: str = result(
        "the piston that sits most central in the new fit",
        basis="the largest distance of both clearances from the ends of the new fit",
        source=NO_SOURCE,
    )
    best_piston_mm: float = result(
        "size of that piston",
        kind=kinds.LENGTH,
        decimals=3,
        basis="as given",
        source="as given",
    )
    best_fits: bool = result(
        "whether it lies within the new fit, by the figures alone",
        basis="its outcome",
        source="the maker's new fit as given",
    )


@dataclass(frozen=True)
class Fit:
    """One piston in the bore."""

    mark: str
    piston_size_mm: float
    least_mm: float
    most_mm: float

    def margin_mm(self, low_mm: float, high_mm: float) -> float:
        """Return how far inside the new fit both clearances lie; negative outside."""
        return min(self.least_mm - low_mm, high_mm - self.most_mm)


def _fit(inputs: Inputs, one: Offered) -> Fit:
    found = clearance(inputs, one.size_mm)
    least, most = found.clearance_min_mm, found.clearance_max_mm
    return Fit(one.mark, one.size_mm, cast(float, least), cast(float, most))


def _fits(inputs: Inputs) -> list[Fit]:
    return [_fit(inputs, one) for one in inputs.pistons]


def _most_central(inputs: Inputs) -> int:
    low, high = inputs.clearance_low_mm, inputs.clearance_high_mm
    margins = [fit.margin_mm(low, high) for fit in _fits(inputs)]
    return max(range(len(margins)), key=lambda place: round(margins[place], 9))


def _outcome(fit: Fit, inputs: Inputs) -> str:
    tight = not at_most(inputs.clearance_low_mm, fit.least_mm)
    loose = not at_most(fit.most_mm, inputs.clearance_high_mm)
    if tight and loose:
        return "neither"
    if tight:
        return "too_tight"
    return "too_loose" if loose else "fits"


def compute(inputs: Inputs) -> Outputs:
    """Work out each piston's clearances and take the one most central in the fit."""
    each = _fits(inputs)
    outcomes = tuple(_outcome(fit, inputs) for fit in each)
    place = cast(int, inputs.held)
    return Outputs(
        marks=tuple(fit.mark for fit in each),
        clearance_mins_mm=tuple(fit.least_mm for fit in each),
        clearance_maxs_mm=tuple(fit.most_mm for fit in each),
        outcomes=outcomes,
        best=each[place].mark,
        best_piston_mm=each[place].piston_size_mm,
        best_fits=outcomes[place] == "fits",
    )


def extremes(inputs: Inputs) -> dict[str, tuple[Candidates, ...]]:
    """Return what the clearances of each piston are the largest and the smallest of."""
    if inputs.bore_survey is None:
        return {}
    each = [fitted.extremes(inputs, one.size_mm) for one in inputs.pistons]
    return {
        "clearance_mins_mm": tuple(of["clearance_min_mm"] for of in each),
        "clearance_maxs_mm": tuple(of["clearance_max_mm"] for of in each),
    }


def _least(inputs: Inputs, _: Outputs) -> Limit:
    return Limit(inputs.clearance_low_mm, None, "maker", "least clearance of the new fit as given")


def _most(inputs: Inputs, _: Outputs) -> Limit:
    return Limit(
        None, inputs.clearance_high_mm, "maker", "largest clearance of the new fit as given"
    )


CALCULATION = Calculation(
    name="piston-selection",
    number="D.4",
    stage="decision",
    title="Piston for the sound bore",
    summary="Each piston on offer in the bore as it stands, against the new fit.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    figures=(expansion_of_bore(ALL),),
    columns=False,
    any_of=((("bore_survey",), ("bore_largest_mm", "bore_smallest_mm")),),
    checks=(
        Check(
            "selected_piston_min",
            "clearance_mins_mm",
            "smallest clearance of each piston on offer",
            SETTLE,
            _least,
            each="marks",
        ),
        Check(
            "selected_piston_max",
            "clearance_maxs_mm",
            "largest clearance of each piston on offer",
            SETTLE,
            _most,
            each="marks",
        ),
    ),
    rules=(
        Rule(
            ("clearance_low_mm", "clearance_high_mm"),
            lambda i: at_most(i.clearance_high_mm, i.clearance_low_mm),
            "the least clearance is not under the largest",
            "clearance_low under clearance_high",
        ),
        *FIT_RULES,
    ),
    cautions=("measuring",),
)
