"""C27: end gaps of piston rings, wanted, to file, and how much of an old gap is the bore's."""

from ringland_service.core.calculations.cylinder import _ring_notices as notices
from ringland_service.core.calculations.cylinder._new_rings import new_ring
from ringland_service.core.calculations.cylinder._ring_gap_fields import Inputs as Inputs
from ringland_service.core.calculations.cylinder._ring_gap_fields import Outputs
from ringland_service.core.calculations.cylinder.ring_checks import CHECKS, FIGURES, SECOND, TOP
from ringland_service.core.declare import Calculation
from ringland_service.core.engines.materials import alpha_of_bore_per_k
from ringland_service.core.formulas import rings
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.numbers import Number


def compute(inputs: Inputs) -> Outputs:
    """Work out wanted gaps and filing; take the bore's share off a used ring's gap."""
    top = new_ring(
        TOP,
        inputs.top_gap_mm,
        inputs.top_factor,
        inputs.bore_mm,
        Limit(inputs.top_limit_low_mm, inputs.top_limit_high_mm),
    )
    second = new_ring(
        SECOND,
        inputs.second_gap_mm,
        inputs.second_factor,
        inputs.bore_mm,
        Limit(inputs.second_limit_low_mm, inputs.second_limit_high_mm),
        top.wanted_mm,
    )
    growth = _growth_mm(inputs.old_gap_pin_axis_mm, inputs.old_gap_thrust_axis_mm, inputs.unworn_mm)
    in_worn_zone = _growth_mm(inputs.worn_pin_axis_mm, inputs.worn_thrust_axis_mm, inputs.bore_mm)
    own = _less(inputs.old_gap_mm, growth)
    measured = inputs.top_gap_mm
    return Outputs(
        top_wanted_mm=top.wanted_mm,
        second_wanted_mm=second.wanted_mm,
        file_top_mm=top.file_mm,
        file_second_mm=second.file_mm,
        top_what_to_do=top.what_to_do,
        second_what_to_do=second.what_to_do,
        gap_growth_mm=growth,
        own_gap_mm=own,
        ring_wear_mm=_less(own, inputs.gap_when_new_mm),
        new_gap_in_worn_zone_mm=(
            None
            if measured is None or in_worn_zone is None
            else rings.gap_in_worn_bore_mm(measured, in_worn_zone)
        ),
        hot_gap_mm=_hot_mm(inputs, measured),
        hot_gap_after_filing_mm=_hot_mm(
            inputs, None if measured is None or top.file_mm is None else measured + top.file_mm
        ),
    )


def _growth_mm(
    pin_axis_mm: Number | None, thrust_axis_mm: Number | None, unworn_mm: Number | None
) -> Number | None:
    if pin_axis_mm is None or thrust_axis_mm is None or unworn_mm is None:
        return None
    return rings.gap_growth_mm(rings.mean_diameter_mm(pin_axis_mm, thrust_axis_mm), unworn_mm)


def _less(gap_mm: Number | None, share_mm: Number | None) -> Number | None:
    return None if gap_mm is None or share_mm is None else rings.own_gap_mm(gap_mm, share_mm)


def _hot_mm(inputs: Inputs, gap_mm: Number | None) -> Number | None:
    bore_rise, ring_rise = inputs.bore_rise_k, inputs.ring_rise_k
    ring_alpha, bore_alpha = inputs.ring_alpha_per_k, inputs.bore_alpha_per_k
    if bore_alpha is None:
        bore_alpha = alpha_of_bore_per_k(inputs.bore_kind)
    if gap_mm is None or bore_rise is None or ring_rise is None:
        return None
    if ring_alpha is None or bore_alpha is None:
        return None
    return rings.hot_gap_mm(gap_mm, inputs.bore_mm, bore_rise, bore_alpha, ring_rise, ring_alpha)


CALCULATION = Calculation(
    name="ring-gap",
    number="C27",
    stage="cylinder",
    title="Ring end gap",
    summary="End gaps of new rings, wanted and to file, and a used ring's own gap less what its "
    "worn bore adds. The maker's range wins: inside it nothing is filed. Pinned two-stroke rings "
    "are measured at the pin.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=CHECKS,
    rules=notices.RULES,
    notices=notices.NOTICES,
    cautions=("measuring", "ring_fitting"),
    figures=FIGURES,
)
