"""C23: squish clearance and area, and the base gasket that gives the squish wanted."""

import dataclasses

from ringland_service.core.calculations.geometry import _squish_gaskets as gaskets
from ringland_service.core.calculations.geometry import _squish_rules
from ringland_service.core.calculations.geometry._squish_after import after
from ringland_service.core.calculations.geometry._squish_inputs import Inputs, components
from ringland_service.core.calculations.geometry._squish_results import Outputs
from ringland_service.core.declare import Calculation, Check
from ringland_service.core.formulas import geometry, squish
from ringland_service.core.metrology.candidates import Candidates, smallest, spread
from ringland_service.core.metrology.limits import LIMITS, Limit

SETTLE = (
    "two fresh solders at the pin axis, 1.5 times as thick as the squish, glued to the crown; "
    "head torqued down with its gasket, carbon off; measure each with a micrometer"
)


def compute(inputs: Inputs) -> Outputs:
    """Work out the squish, each gasket's, and what the chosen one does."""
    smallest, uncertainty = gaskets.smallest_mm(inputs) or 0.0, gaskets.uncertainty_mm(inputs)
    among = gaskets.candidates(inputs)
    nearest = gaskets.nearest_first(inputs)
    found = Outputs(
        squish_mm=gaskets.squish_mm(inputs) or 0.0,
        smallest_squish_mm=smallest,
        uncertainty_used_mm=uncertainty,
        smallest_less_uncertainty_mm=smallest - uncertainty,
        side_difference_mm=_side_difference_mm(inputs),
        squish_by_stack_mm=gaskets.by_stack_mm(inputs),
        floor_used_mm=gaskets.floor_mm(inputs),
        wanted_used_mm=gaskets.wanted_mm(inputs),
        gasket_wanted_mm=gaskets.gasket_wanted_mm(inputs),
        gaskets_mm=tuple(one.gasket_mm for one in among) or None,
        squish_afters_mm=tuple(one.squish_mm for one in among) or None,
        less_uncertainty_afters_mm=tuple(one.less_uncertainty_mm for one in among) or None,
        outcomes=tuple(one.outcome for one in among) or None,
        reason=gaskets.reason(inputs, inputs.chosen),
        nearest_gasket_mm=among[nearest[0]].gasket_mm if nearest else None,
        nearest_less_uncertainty_mm=among[nearest[0]].less_uncertainty_mm if nearest else None,
    )
    return _with_chosen(inputs, _with_band(inputs, found))


def _side_difference_mm(i: Inputs) -> float | None:
    solder = i.solder_mm
    return max(solder) - min(solder) if solder else None


def _with_band(i: Inputs, found: Outputs) -> Outputs:
    """Return the results with the squish band added, where bowl and bore are given."""
    if i.bowl_diameter_mm is None or i.bore_mm is None:
        return found
    share = float(squish.squish_area_share(i.bore_mm, i.bowl_diameter_mm))
    area = float(geometry.piston_area_mm2(i.bore_mm))
    return dataclasses.replace(found, squish_area_share=share, squish_area_mm2=area * share)


def _with_chosen(i: Inputs, found: Outputs) -> Outputs:
    """Return the results with those of the gasket chosen added, where there is one."""
    if i.chosen < 0 or i.base_gasket_fitted_mm is None:
        return found
    among = gaskets.candidates(i)
    chosen = among[i.chosen]
    thinner = i.base_gasket_fitted_mm - chosen.gasket_mm
    others = [among[n].gasket_mm for n in gaskets.that_keep(i)]
    runners = [gasket for gasket in others if gasket != chosen.gasket_mm]
    return dataclasses.replace(
        found,
        chosen_gasket_mm=chosen.gasket_mm,
        runner_up_gasket_mm=runners[0] if runners else None,
        thinner_by_mm=thinner,
        squish_after_mm=chosen.squish_mm,
        smallest_after_mm=found.smallest_squish_mm - thinner,
        after_less_uncertainty_mm=chosen.less_uncertainty_mm,
        **dataclasses.asdict(after(i, thinner)),
    )


def extremes(i: Inputs) -> dict[str, Candidates | tuple[Candidates, ...]]:
    """Return what the smallest point, now and with each gasket, and the side difference rest on."""
    solder, fitted = i.solder_mm, i.base_gasket_fitted_mm
    if not solder:
        return {}
    uncertainty = (
        gaskets.uncertainty_mm(i) if i.solder_uncertainty_mm is None else i.solder_uncertainty_mm
    )
    found: dict[str, Candidates | tuple[Candidates, ...]] = {
        "smallest_squish_mm": smallest(solder),
        "smallest_less_uncertainty_mm": smallest([point - uncertainty for point in solder]),
        "side_difference_mm": spread(solder),
    }
    if fitted is None or not i.base_gaskets_mm:
        return found
    afters = [
        [squish.squish_with_gasket_mm(point, fitted, one) for point in solder]
        for one in i.base_gaskets_mm
    ]
    less = tuple(smallest([point - uncertainty for point in after]) for after in afters)
    found["less_uncertainty_afters_mm"] = less
    chosen, nearest = i.chosen, i.nearest
    if nearest != gaskets.NONE:
        found["nearest_less_uncertainty_mm"] = less[nearest]
    if chosen != gaskets.NONE:
        found["smallest_after_mm"] = smallest(afters[chosen])
        found["after_less_uncertainty_mm"] = less[chosen]
    return found


def _floor(inputs: Inputs, _: Outputs) -> Limit | None:
    return gaskets.floor(inputs)


CALCULATION = Calculation(
    name="squish",
    number="C23",
    stage="geometry",
    title="Squish clearance and base gasket",
    summary="Squish clearance from crushed solder or from the stack, the area of the squish band, "
    "and which of the base gaskets at hand comes nearest to the squish wanted while its smallest "
    "point less the uncertainty keeps the floor; with what it does to piston height, ratio and "
    "port "
    "timing. Bearings and the stretch of the rod take 0.1 to 0.3 mm at speed (common practice, no "
    "source). A maker's floor is given as the limit of smallest_squish; it holds for the gasket "
    "chosen too.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    columns=False,
    any_of=((("solder_mm",), ("deck_mm", "gasket_thickness_mm", "head_step_mm")),),
    checks=(
        Check(
            "smallest_squish",
            "smallest_squish_mm",
            "squish at its smallest point",
            SETTLE,
            lambda i, o: gaskets.usual_floor(i),
        ),
        Check(
            "squish_side_difference",
            "side_difference_mm",
            "squish from side to side",
            SETTLE,
            lambda i, o: LIMITS["squish.side_difference"].limit(),
        ),
        Check(
            "smallest_squish_after",
            "smallest_after_mm",
            "smallest point with the chosen gasket",
            SETTLE,
            _floor,
            inconclusive_fails="a piston that meets the head breaks: the floor holds less the "
            "uncertainty",
        ),
    ),
    rules=_squish_rules.RULES,
    notices=_squish_rules.NOTICES,
    components=components,
    cautions=("measuring", "torque"),
)
