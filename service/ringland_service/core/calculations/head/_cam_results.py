"""What is answered on a camshaft: lobe, timing, and clearances after a change of height."""

from typing import Any

from ringland_service.core.declare import kinds, record, result
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE, cited

LOBE = "nose radius less base radius"
SPROCKET = cited("regular polygon; {iso_606}")
DRIVE = f"plane geometry of the tight run; {NO_SOURCE}"
EVENTS = "half a turn lies between the dead centres"
ROOM = f"plane geometry along the valve; {NO_SOURCE}"
TIMING = {"retarded": "later", "advanced": "earlier", "unchanged": "as before"}


def _mm(words: str, *, digits: int = 2, **about: Any) -> Any:
    return result(words, **{"kind": kinds.LENGTH, "digits": digits, "default": None, **about})


def _deg(words: str, **about: Any) -> Any:
    return result(words, **{"kind": kinds.ANGLE, "digits": 1, "default": None, **about})


@record
class Outputs:
    """Each as far as its inputs are given."""

    lobe_lift_mm: Number | None = _mm(
        "lift of the lobe at the cam",
        digits=3,
        formula="lobe_height_mm - base_circle_mm",
        source=LOBE,
    )
    lobe_loss_mm: Number | None = _mm(
        "height that the lobe has lost",
        digits=3,
        formula="lobe_height_new_mm - lobe_height_mm",
        source=LOBE,
    )
    sprocket_pitch_dia_mm: Number | None = _mm(
        "pitch diameter of the cam sprocket",
        formula="chain_pitch_mm / sind(180 / cam_sprocket_teeth)",
        source=SPROCKET,
    )
    cam_retard_cam_deg: Number | None = _deg(
        "lag of the camshaft after the change of height, cam degrees; negative: it runs early",
        digits=2,
        basis="stack_lowered over the sprocket's pitch radius, as an angle; 0 for a camshaft in "
        "the crankcase",
        source=DRIVE,
    )
    cam_retard_crank_deg: Number | None = _deg(
        "lag of the camshaft, crank degrees",
        digits=2,
        formula="2 * cam_retard_cam_deg",
        source=DRIVE,
    )
    timing_moves: str | None = result(
        "which way the timing moves",
        basis="sign of cam_retard_crank",
        source=DRIVE,
        choices=TIMING,
        default=None,
    )
    intake_duration_deg: Number | None = _deg(
        "intake open at the lift stated, crank degrees",
        formula="intake_opens_btdc_deg + 180 + intake_closes_abdc_deg",
        source=EVENTS,
    )
    intake_centre_atdc_deg: Number | None = _deg(
        "intake lobe centre after top dead centre, crank degrees; for lobes alike on both sides",
        formula="intake_duration_deg / 2 - intake_opens_btdc_deg",
        source=EVENTS,
    )
    intake_centre_after_deg: Number | None = _deg(
        "intake lobe centre after top dead centre, after the change of height",
        formula="intake_centre_atdc_deg + cam_retard_crank_deg",
        source=DRIVE,
    )
    exhaust_duration_deg: Number | None = _deg(
        "exhaust open at the lift stated, crank degrees",
        formula="exhaust_opens_bbdc_deg + 180 + exhaust_closes_atdc_deg",
        source=EVENTS,
    )
    exhaust_centre_btdc_deg: Number | None = _deg(
        "exhaust lobe centre before top dead centre, crank degrees; for lobes alike on both sides",
        formula="exhaust_duration_deg / 2 - exhaust_closes_atdc_deg",
        source=EVENTS,
    )
    exhaust_centre_after_deg: Number | None = _deg(
        "exhaust lobe centre before top dead centre, after the change of height",
        formula="exhaust_centre_btdc_deg - cam_retard_crank_deg",
        source=DRIVE,
    )
    lobe_separation_cam_deg: Number | None = _deg(
        "lobe separation, cam degrees",
        formula="(intake_centre_atdc_deg + exhaust_centre_btdc_deg) / 2",
        source="the camshaft turns at half the speed of the crank",
    )
    intake_after_mm: Number | None = _mm(
        "clearance of the intake valve after the change",
        basis="clay_intake − stack_lowered · cos(valve_tilt) + intake_sink where the lash is set "
        "again − loss per degree · advance; the whole stack_lowered where the pocket is not square",
        source=ROOM,
    )
    intake_less_doubt_mm: Number | None = _mm(
        "clearance of the intake valve after the change, less its doubt",
        formula="intake_after_mm - clay_doubt_mm",
        source=ROOM,
    )
    exhaust_after_mm: Number | None = _mm(
        "clearance of the exhaust valve after the change",
        basis="clay_exhaust − stack_lowered · cos(valve_tilt) + exhaust_sink where the lash is set "
        "again − loss per degree · retard; the whole stack_lowered where the pocket is not square",
        source=ROOM,
    )
    exhaust_less_doubt_mm: Number | None = _mm(
        "clearance of the exhaust valve after the change, less its doubt",
        formula="exhaust_after_mm - clay_doubt_mm",
        source=ROOM,
    )
