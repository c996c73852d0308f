"""C23: squish clearance and area, and the base gasket that gives the squish wanted."""

import dataclasses
from typing import Any

from ringland_service.core.calculations.geometry import _squish_gaskets as gaskets
from ringland_service.core.calculations.geometry import _squish_rules
from ringland_service.core.calculations.geometry._squish_after import after
from ringland_service.core.calculations.geometry._squish_inputs import Inputs, influences
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
    smallest, doubt = gaskets.smallest_mm(inputs) or 0.0, gaskets.doubt_mm(inputs)
    among = gaskets.candidates(inputs)
    nearest = gaskets.nearest_first(inputs)
    _, place, _ = inputs.held
    return Outputs(
        squish_mm=gaskets.squish_mm(inputs) or 0.0,
        smallest_squish_mm=smallest,
        doubt_used_mm=doubt,
        smallest_less_doubt_mm=smallest - doubt,
        side_difference_mm=_side_difference_mm(inputs),
        squish_by_stack_mm=gaskets.by_stack_mm(inputs),
        floor_used_mm=gaskets.floor_mm(inputs),
        wanted_used_mm=gaskets.wanted_mm(inputs),
        gasket_wanted_mm=gaskets.gasket_wanted_mm(inputs),
        gaskets_mm=tuple(one.gasket_mm for one in among) or None,
        squish_afters_mm=tuple(one.squish_mm for one in among) or None,
        less_doubt_afters_mm=tuple(one.less_doubt_mm for one in among) or None,
        outcomes=tuple(one.outcome for one in among) or None,
        reason=gaskets.reason(inputs, place),
        nearest_gasket_mm=among[nearest[0]].gasket_mm if nearest else None,
        nearest_less_doubt_mm=among[nearest[0]].less_doubt_mm if nearest else None,
        **_band(inputs),
        **_of_chosen(inputs, smallest, place),
    )


def _side_difference_mm(i: Inputs) -> float | None:
    solder = i.solder_at_pin_axis_mm
    return max(solder) - min(solder) if solder else None


def _band(i: Inputs) -> dict[str, Any]:
    if i.bowl_dia_mm is None or i.bore_mm is None:
        return {}
    share = float(squish.squish_area_share(i.bore_mm, i.bowl_dia_mm))
    area = float(geometry.piston_area_mm2(i.bore_mm))
    return {"squish_area_share": share, "squish_area_mm2": area * share}


def _of_chosen(i: Inputs, smallest_mm: float, place: int) -> dict[str, Any]:
    if place < 0 or i.base_gasket_fitted_mm is None:
        return {}
    among = gaskets.candidates(i)
    chosen = among[place]
    thinner = i.base_gasket_fitted_mm - chosen.gasket_mm
    others = [among[n].gasket_mm for n in gaskets.that_keep(i)]
    runners = [gasket for gasket in others if gasket != chosen.gasket_mm]
    return {
        "chosen_gasket_mm": chosen.gasket_mm,
        "runner_up_gasket_mm": runners[0] if runners else None,
        "thinner_by_mm": thinner,
        "squish_after_mm": chosen.squish_mm,
        "smallest_after_mm": smallest_mm - thinner,
        "after_less_doubt_mm": chosen.less_doubt_mm,
        **dataclasses.asdict(after(i, thinner)),
    }


def extremes(i: Inputs) -> dict[str, Candidates | tuple[Candidates, ...]]:
    """Return what the smallest point, now and with each gasket, and the side difference rest on."""
    solder, fitted = i.solder_at_pin_axis_mm, i.base_gasket_fitted_mm
    if not solder:
        return {}
    doubt = gaskets.doubt_mm(i) if i.squish_doubt_mm is None else i.squish_doubt_mm
    found: dict[str, Candidates | tuple[Candidates, ...]] = {
        "smallest_squish_mm": smallest(solder),
        "smallest_less_doubt_mm": smallest([point - doubt for point in solder]),
        "side_difference_mm": spread(solder),
    }
    if fitted is None or not i.base_gaskets_mm:
        return found
    afters = [
        [squish.squish_with_gasket_mm(point, fitted, one) for point in solder]
        for one in i.base_gaskets_mm
    ]
    less = tuple(smallest([point - doubt for point in after]) for after in afters)
    found["less_doubt_afters_mm"] = less
    _, chosen, nearest = i.held
    if nearest != gaskets.NONE:
        found["nearest_less_doubt_mm"] = less[nearest]
    if chosen != gaskets.NONE:
        found["smallest_after_mm"] = smallest(afters[chosen])
        found["after_less_doubt_mm"] = less[chosen]
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
    "point less the doubt keeps the floor; with what it does to piston height, ratio and port "
    "timing. Bearings and the stretch of the rod take 0.1 to 0.3 mm at speed (common practice, no "
    "source). A maker's floor is given as the limit of smallest_squish; it holds for the gasket "
    "chosen too.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    columns=False,
    one_of=((("solder_at_pin_axis_mm",), ("deck_mm", "gasket_thickness_mm", "head_step_mm")),),
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
            doubt_fails="a piston that meets the head breaks: the floor holds less the doubt",
        ),
    ),
    rules=_squish_rules.RULES,
    notices=_squish_rules.NOTICES,
    influences=influences,
    cautions=("measuring", "torque"),
)
