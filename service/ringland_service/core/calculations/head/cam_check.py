"""C38: cam lobe wear, timing after a change of height, and the room between valve and piston."""

from typing import Any

import numpy as np

from ringland_service.core.calculations.head._cam_inputs import Inputs, influences
from ringland_service.core.calculations.head._cam_notices import NOTICES, RULES
from ringland_service.core.calculations.head._cam_results import Outputs
from ringland_service.core.declare import Calculation, Check
from ringland_service.core.formulas import camshaft
from ringland_service.core.formulas.elementary import maximum
from ringland_service.core.metrology.conformity import is_column
from ringland_service.core.metrology.limits import LIMITS
from ringland_service.core.numbers import Number

# Clearance that a valve loses for each crank degree of its camshaft, near 10° from top dead
# centre (common practice, no source).
LOSS_PER_DEG_MM = 0.06
MEETS = "a valve that meets the piston breaks both: the floor holds less the doubt"
SETTLE = (
    "clay on both valves after the change, lash set, head torqued down with its gasket; or a "
    "plunger and dial indicator at 10° before and after top dead centre"
)


def compute(inputs: Inputs) -> Outputs:
    """Work out lobe, drive, events and clearances, each as far as its inputs are given."""
    retard = _retard_deg(inputs)
    timing = _events(inputs, None if retard is None else 2 * retard)
    return Outputs(
        lobe_lift_mm=_both(camshaft.lobe_lift_mm, inputs.lobe_height_mm, inputs.base_circle_mm),
        lobe_loss_mm=_both(lambda a, b: a - b, inputs.lobe_height_new_mm, inputs.lobe_height_mm),
        sprocket_pitch_dia_mm=_pitch_dia_mm(inputs),
        cam_retard_cam_deg=retard,
        cam_retard_crank_deg=None if retard is None else 2 * retard,
        timing_moves=None if retard is None else _word(retard),
        **timing,
        **_rooms(inputs, retard),
    )


def _both(formula: Any, first: Any, second: Any) -> Any:
    """Return a result of two inputs, or None where one of them is not known."""
    return None if first is None or second is None else formula(first, second)


def _pitch_dia_mm(i: Inputs) -> Number | None:
    found: Number | None = _both(
        camshaft.sprocket_pitch_dia_mm, i.chain_pitch_mm, i.cam_sprocket_teeth
    )
    return found


def _retard_deg(i: Inputs) -> Number | None:
    """Return the lag in cam degrees, or None where height or drive is not known."""
    if i.stack_lowered_mm is None:
        return None
    if i.cam_drive == "crankcase":
        return 0.0 * i.stack_lowered_mm
    diameter = _pitch_dia_mm(i)
    return None if diameter is None else camshaft.cam_retard_cam_deg(i.stack_lowered_mm, diameter)


def _word(retard_deg: Any) -> Any:
    if is_column(retard_deg):
        late, early = retard_deg > 0.0, retard_deg < 0.0
        return np.select([late, early], ["retarded", "advanced"], default="unchanged")
    if retard_deg == 0.0:
        return "unchanged"
    return "retarded" if retard_deg > 0.0 else "advanced"


def _events(i: Inputs, shift_deg: Number | None) -> dict[str, Any]:
    """Return durations and centres, and the centres after the shift."""
    intake = _both(camshaft.duration_deg, i.intake_opens_btdc_deg, i.intake_closes_abdc_deg)
    exhaust = _both(camshaft.duration_deg, i.exhaust_opens_bbdc_deg, i.exhaust_closes_atdc_deg)
    intake_centre = _both(camshaft.lobe_centre_deg, intake, i.intake_opens_btdc_deg)
    exhaust_centre = _both(camshaft.lobe_centre_deg, exhaust, i.exhaust_closes_atdc_deg)
    return {
        "intake_duration_deg": intake,
        "intake_centre_atdc_deg": intake_centre,
        "intake_centre_after_deg": _both(lambda a, b: a + b, intake_centre, shift_deg),
        "exhaust_duration_deg": exhaust,
        "exhaust_centre_btdc_deg": exhaust_centre,
        "exhaust_centre_after_deg": _both(lambda a, b: a - b, exhaust_centre, shift_deg),
        "lobe_separation_cam_deg": _both(
            camshaft.lobe_separation_cam_deg, intake_centre, exhaust_centre
        ),
    }


def _rooms(i: Inputs, retard_deg: Number | None) -> dict[str, Any]:
    """Return the clearances after the change, and less their doubt."""
    shift = 0.0 if i.stack_lowered_mm is None else _both(lambda a, b: a * b, 2, retard_deg)
    early = None if shift is None else maximum(-1.0 * shift, 0.0)
    late = None if shift is None else maximum(shift, 0.0)
    intake = _room_mm(i, i.clay_intake_mm, i.intake_sink_mm, i.intake_loss_per_deg_mm, early)
    exhaust = _room_mm(i, i.clay_exhaust_mm, i.exhaust_sink_mm, i.exhaust_loss_per_deg_mm, late)
    return {
        "intake_after_mm": intake,
        "intake_less_doubt_mm": _both(lambda a, b: a - b, intake, i.clay_doubt_mm),
        "exhaust_after_mm": exhaust,
        "exhaust_less_doubt_mm": _both(lambda a, b: a - b, exhaust, i.clay_doubt_mm),
    }


def _room_mm(
    i: Inputs,
    clay_mm: Number | None,
    sink_mm: Number | None,
    loss_per_deg_mm: Number | None,
    shift_deg: Number | None,
) -> Number | None:
    """Return the clearance after, or None where the shift or what it costs is not known."""
    if clay_mm is None or shift_deg is None:
        return None
    usual_mm = LOSS_PER_DEG_MM if i.usual else None
    loss = usual_mm if loss_per_deg_mm is None else loss_per_deg_mm
    if i.stack_lowered_mm is None:
        loss = 0.0
    if loss is None:
        return None
    credit = sink_mm if i.lash_reset is True and sink_mm is not None else 0.0
    return clay_mm - _height_lost_mm(i) + credit - loss * shift_deg


def _height_lost_mm(i: Inputs) -> Number:
    """Return the height lost along the valve; the larger where the pocket is not square."""
    if i.stack_lowered_mm is None:
        return 0.0
    whole = i.stack_lowered_mm
    if i.valve_tilt_deg is None:
        return whole
    along = camshaft.height_lost_mm(whole, i.valve_tilt_deg)
    return along if i.pocket_square else maximum(along, whole)


CALCULATION = Calculation(
    name="cam-check",
    number="C38",
    stage="head",
    title="Cam lobe, cam timing and valve-to-piston clearance",
    summary="Lift and wear of a lobe; durations, lobe centres and separation from the events; how "
    "far a skim or a thinner gasket shifts a camshaft driven by chain; and the clearance of both "
    "valves after. The centres hold for lobes alike on both sides. Valves float at speed: a larger "
    "or faster engine needs more room than the floor.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=(
        (
            ("lobe_height_mm",),
            ("chain_pitch_mm", "cam_sprocket_teeth"),
            ("intake_opens_btdc_deg", "intake_closes_abdc_deg"),
            ("exhaust_opens_bbdc_deg", "exhaust_closes_atdc_deg"),
            ("clay_intake_mm",),
            ("clay_exhaust_mm",),
        ),
    ),
    checks=(
        Check(
            "lobe_height",
            "lobe_height_mm",
            "height of the lobe",
            "measure each lobe at its nose with a micrometer, three times",
        ),
        Check(
            "lobe_wear",
            "lobe_loss_mm",
            "height that the lobe has lost",
            "measure lobe and a new one with the same micrometer",
            lambda i, o: LIMITS["lobe_wear"].limit(),
        ),
        Check(
            "intake_valve_to_piston",
            "intake_after_mm",
            "room between intake valve and piston",
            SETTLE,
            lambda i, o: LIMITS["valve_to_piston.intake"].limit(),
            doubt_fails=MEETS,
        ),
        Check(
            "exhaust_valve_to_piston",
            "exhaust_after_mm",
            "room between exhaust valve and piston",
            SETTLE,
            lambda i, o: LIMITS["valve_to_piston.exhaust"].limit(),
            doubt_fails=MEETS,
        ),
    ),
    rules=RULES,
    notices=NOTICES,
    influences=influences,
    cautions=("measuring", "first_start"),
)
