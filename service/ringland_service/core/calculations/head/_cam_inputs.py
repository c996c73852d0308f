"""What a camshaft, its drive and the room between valve and piston are worked out from."""

from ringland_service.core.declare import (
    choice,
    count,
    flag,
    quantity,
    record,
    usual_figures,
)
from ringland_service.core.metrology.propagation import Influence, Move
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import head as sizes
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import valves as valve_quantities

CAM_DRIVE = {
    "chain": "camshaft in the head, chain or toothed belt from the crankshaft, slack run on a "
    "tensioner",
    "crankcase": "camshaft in the crankcase: its timing does not move with the head",
}


@record
class Inputs:
    """Lobe, drive, events, and clearances with the lash set; whatever is known of them."""

    lobe_height_mm: Number | None = quantity(
        sizes.LOBE_HEIGHT, "height of the lobe, nose to heel", default=None
    )
    base_circle_mm: Number | None = quantity(
        sizes.BASE_CIRCLE, "diameter of the base circle", default=None
    )
    lobe_height_new_mm: Number | None = quantity(
        sizes.LOBE_HEIGHT, "height of a new lobe", example=33.48, default=None
    )
    cam_drive: str | None = choice(
        "where the camshaft sits and what drives it", CAM_DRIVE, example="chain", default=None
    )
    chain_pitch_mm: Number | None = quantity(
        sizes.CHAIN_PITCH, "pitch of the timing chain or toothed belt", default=None
    )
    cam_sprocket_teeth: int | None = count(
        "teeth of the cam sprocket", low=12, high=60, example=34, default=None
    )
    stack_lowered_mm: Number | None = quantity(
        sizes.STACK_LOWERED,
        "how much nearer head and crankshaft come: skims, thinner gaskets (a thinner gasket counts "
        "as a skim); negative: farther",
        default=None,
    )
    intake_opens_btdc_deg: Number | None = quantity(
        sizes.VALVE_EVENT, "intake opens before top dead centre, crank", default=None
    )
    intake_closes_abdc_deg: Number | None = quantity(
        sizes.VALVE_EVENT,
        "intake closes after bottom dead centre, crank",
        example=44.0,
        default=None,
    )
    exhaust_opens_bbdc_deg: Number | None = quantity(
        sizes.VALVE_EVENT,
        "exhaust opens before bottom dead centre, crank",
        example=46.0,
        default=None,
    )
    exhaust_closes_atdc_deg: Number | None = quantity(
        sizes.VALVE_EVENT, "exhaust closes after top dead centre, crank", example=12.0, default=None
    )
    event_lift_mm: Number | None = quantity(
        lengths.LIFT, "valve lift at which the events are stated", example=1.0, default=None
    )
    clay_intake_mm: Number | None = quantity(
        sizes.CLAY, "clearance of the intake valve before the change, lash set", default=None
    )
    clay_exhaust_mm: Number | None = quantity(
        sizes.CLAY,
        "clearance of the exhaust valve before the change, lash set",
        example=2.1,
        default=None,
    )
    clay_doubt_mm: Number | None = quantity(
        sizes.CLAY_DOUBT,
        "doubt of either clearance, expanded (k = 2)",
        default=None,
        exact=True,
    )
    valve_tilt_deg: Number | None = quantity(
        sizes.VALVE_TILT,
        "tilt of the valves from the cylinder axis; where not given, the whole height counts",
        default=None,
    )
    pocket_square: bool = flag(
        "whether the valve pocket's floor is square to the valve; else the whole height counts",
        default=True,
    )
    intake_sink_mm: Number | None = quantity(
        valve_quantities.SINK,
        "how much deeper the intake valve sits than when the clearance was taken",
        default=None,
    )
    exhaust_sink_mm: Number | None = quantity(
        valve_quantities.SINK,
        "how much deeper the exhaust valve sits than when the clearance was taken",
        example=0.0,
        default=None,
    )
    lash_reset: bool | None = flag(
        "whether the lash is set again after the seats were cut: only then sink gives room",
        default=None,
    )
    exhaust_loss_per_deg_mm: Number | None = quantity(
        sizes.LOSS_PER_DEGREE,
        "clearance that the exhaust valve loses for each crank degree of retard; where not given, "
        "0.06 mm near 10° before top dead centre (common practice, no source)",
        default=None,
    )
    intake_loss_per_deg_mm: Number | None = quantity(
        sizes.LOSS_PER_DEGREE,
        "clearance that the intake valve loses for each crank degree of advance; where not given, "
        "0.06 mm (common practice, no source)",
        default=None,
    )
    usual: bool = usual_figures()


def influences(i: Inputs) -> list[Influence]:
    """Return the stated doubt of the clearances: each reading has its own."""
    if i.clay_doubt_mm is None:
        return []
    return [
        Influence("clay_doubt", i.clay_doubt_mm / 2.0, (Move((name,), sizes.CLAY.scale),))
        for name in ("clay_intake_mm", "clay_exhaust_mm")
        if getattr(i, name) is not None
    ]
