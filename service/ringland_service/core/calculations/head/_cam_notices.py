"""What contradicts the figures of a camshaft, and what its answer warns of."""

from collections.abc import Callable
from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas.camshaft import duration_deg
from ringland_service.core.metrology.conformity import at_most, beyond

LIFT_MM, USUAL_LIFT_MM = (1.0, 20.0), (3.0, 14.0)
OPEN_DEG = (120.0, 400.0)
EVENTS = (
    "intake_opens_btdc_deg",
    "intake_closes_abdc_deg",
    "exhaust_opens_bbdc_deg",
    "exhaust_closes_atdc_deg",
)


def _lift(i: Any) -> Any:
    return i.lobe_height_mm - i.base_circle_mm


def _duration_rule(opens: str, closes: str) -> Rule:
    def broken(i: Any) -> Any:
        open_deg = duration_deg(getattr(i, opens), getattr(i, closes))
        return beyond(OPEN_DEG[0], open_deg) | beyond(open_deg, OPEN_DEG[1])

    return Rule(
        (opens, closes),
        broken,
        "these events do not belong to one valve: it would be open for less than 120° or more "
        "than 400° of crank",
        "opening before and closing after the dead centres, in crank degrees",
    )


RULES = (
    Rule(
        ("base_circle_mm", "lobe_height_mm"),
        lambda i: beyond(LIFT_MM[0], _lift(i)) | beyond(_lift(i), LIFT_MM[1]),
        "lobe height less base circle is no lift of a camshaft (1 to 20 mm)",
        "height nose to heel, and the diameter across the base circle",
    ),
    Rule(
        ("lobe_height_new_mm", "lobe_height_mm"),
        lambda i: beyond(i.lobe_height_mm, i.lobe_height_new_mm + 0.1),
        "the worn lobe is higher than a new one",
        "the height of this lobe, and that of a new one of the same camshaft",
    ),
    Rule(
        ("lobe_height_new_mm",),
        lambda i: i.lobe_height_mm is None,
        "the height of a new lobe tells nothing without that of this one",
        "give lobe_height",
    ),
    _duration_rule("intake_opens_btdc_deg", "intake_closes_abdc_deg"),
    _duration_rule("exhaust_opens_bbdc_deg", "exhaust_closes_atdc_deg"),
)


def _given(inputs: Any, *names: str) -> bool:
    return any(getattr(inputs, name) is not None for name in names)


def _unusual_lift(_: Any, o: Any) -> Any:
    if o.lobe_lift_mm is None:
        return False
    return (o.lobe_lift_mm < USUAL_LIFT_MM[0]) | (o.lobe_lift_mm > USUAL_LIFT_MM[1])


def _one_valve(i: Any, _: Any) -> bool:
    return (i.clay_intake_mm is None) != (i.clay_exhaust_mm is None)


def _shift_not_known(i: Any, o: Any) -> Any:
    if i.stack_lowered_mm is None or o.cam_retard_cam_deg is not None:
        return False
    return abs(i.stack_lowered_mm) > 0.0


def _sink_without_lash(i: Any, _: Any) -> Any:
    if i.lash_reset is True:
        return False
    sinks = [s for s in (i.intake_sink_mm, i.exhaust_sink_mm) if s is not None]
    return any_positive(sinks)


def any_positive(values: list[Any]) -> Any:
    """Return whether one of the values is above zero, row by row for columns."""
    found: Any = False
    for value in values:
        found = found | (value > 0.0)
    return found


def _moved(o: Any, holds: Callable[[Any], Any]) -> Any:
    shift = o.cam_retard_crank_deg
    return False if shift is None else holds(shift)


def _figure_taken(i: Any, o: Any) -> Any:
    exhaust = (
        i.exhaust_loss_per_deg_mm is None
        and o.exhaust_after_mm is not None
        and _moved(o, lambda shift: shift > 0.0)
    )
    intake = (
        i.intake_loss_per_deg_mm is None
        and o.intake_after_mm is not None
        and _moved(o, lambda shift: shift < 0.0)
    )
    return exhaust | intake


def _none_left(left_mm: Any) -> Any:
    return False if left_mm is None else at_most(left_mm, 0.0)


NOTICES = (
    Notice(
        "lift_unusual",
        "lobe_lift_mm",
        _unusual_lift,
        "lobe lift outside the usual 3 to 14 mm: check both readings",
    ),
    Notice(
        "event_lift_absent",
        "event_lift_mm",
        lambda i, _: i.event_lift_mm is None and _given(i, *EVENTS),
        "events mean little without the lift at which they are stated",
    ),
    Notice(
        "clay_on_both_valves",
        "clay_intake_mm",
        _one_valve,
        "take the clearance of BOTH valves: a late camshaft takes room from the exhaust valve, an "
        "early one from the intake valve",
    ),
    Notice(
        "camshaft_runs_late",
        "cam_retard_crank_deg",
        lambda _, o: _moved(o, lambda shift: shift > 0.0),
        "lowering the head with a tight driving run retards the camshaft: the exhaust valve loses "
        "room; repeat the clay on both valves after the change",
    ),
    Notice(
        "camshaft_runs_early",
        "cam_retard_crank_deg",
        lambda _, o: _moved(o, lambda shift: shift < 0.0),
        "raising the head advances the camshaft: the intake valve loses room; repeat the clay on "
        "both valves after the change",
    ),
    Notice(
        "loss_per_degree_taken",
        "exhaust_loss_per_deg_mm",
        _figure_taken,
        "0.06 mm of clearance is taken as lost for each crank degree (common practice, no "
        "source): measure it at two timings, or take it from the cam sheet",
        common_practice=True,
    ),
    Notice(
        "timing_shift_not_known",
        "chain_pitch_mm",
        _shift_not_known,
        "the height changes and nothing tells what drives the camshaft: give chain pitch and "
        "teeth of its sprocket, or that it sits in the crankcase",
    ),
    Notice(
        "sink_without_lash_set",
        "lash_reset",
        _sink_without_lash,
        "a valve that sits deeper gains room only where the lash is set again after the cut: no "
        "room is counted for it",
    ),
    Notice(
        "pocket_not_square",
        "pocket_square",
        lambda i, _: i.pocket_square is False,
        "the pocket's floor is not square to the valve: the whole change of height is taken off",
    ),
    Notice(
        "valve_meets_piston",
        "intake_after_mm",
        lambda _, o: _none_left(o.intake_after_mm),
        "the intake valve would meet the piston",
    ),
    Notice(
        "valve_meets_piston",
        "exhaust_after_mm",
        lambda _, o: _none_left(o.exhaust_after_mm),
        "the exhaust valve would meet the piston",
    ),
)
