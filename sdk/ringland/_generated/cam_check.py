"""Cam lobe, cam timing and valve-to-piston clearance.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class CamCheckLimits(TypedDict, total=False):
    """Limits of your own, by check: cam-check.

    Attributes
    ----------
    lobe_height : LimitAsked
        height of the lobe
    lobe_wear : LimitAsked
        height that the lobe has lost
    intake_valve_to_piston : LimitAsked
        room between intake valve and piston
    exhaust_valve_to_piston : LimitAsked
        room between exhaust valve and piston
    """

    lobe_height: LimitAsked
    lobe_wear: LimitAsked
    intake_valve_to_piston: LimitAsked
    exhaust_valve_to_piston: LimitAsked


@dataclass(frozen=True, kw_only=True)
class CamCheckResult:
    """None is what cannot be known.

    Attributes
    ----------
    lobe_lift : Quantity | None
        lift of the lobe at the cam
    lobe_loss : Quantity | None
        height that the lobe has lost
    sprocket_pitch_diameter : Quantity | None
        pitch diameter of the cam sprocket
    cam_retard_cam : Quantity | None
        lag of the camshaft after the change of height, cam degrees; negative: it runs early
    cam_retard_crank : Quantity | None
        lag of the camshaft, crank degrees
    timing_moves : Literal['retarded', 'advanced', 'unchanged'] | None
        which way the timing moves
    intake_duration : Quantity | None
        intake open at the lift stated, crank degrees
    intake_centre_atdc : Quantity | None
        intake lobe centre after top dead centre, crank degrees; for lobes alike on both sides
    intake_centre_after : Quantity | None
        intake lobe centre after top dead centre, after the change of height
    exhaust_duration : Quantity | None
        exhaust open at the lift stated, crank degrees
    exhaust_centre_btdc : Quantity | None
        exhaust lobe centre before top dead centre, crank degrees; for lobes alike on both sides
    exhaust_centre_after : Quantity | None
        exhaust lobe centre before top dead centre, after the change of height
    lobe_separation_cam : Quantity | None
        lobe separation, cam degrees
    intake_after : Quantity | None
        clearance of the intake valve after the change
    intake_less_uncertainty : Quantity | None
        clearance of the intake valve after the change, less its uncertainty
    exhaust_after : Quantity | None
        clearance of the exhaust valve after the change
    exhaust_less_uncertainty : Quantity | None
        clearance of the exhaust valve after the change, less its uncertainty
    """

    lobe_lift: Quantity | None = None
    lobe_loss: Quantity | None = None
    sprocket_pitch_diameter: Quantity | None = None
    cam_retard_cam: Quantity | None = None
    cam_retard_crank: Quantity | None = None
    timing_moves: Literal["retarded", "advanced", "unchanged"] | None = None
    intake_duration: Quantity | None = None
    intake_centre_atdc: Quantity | None = None
    intake_centre_after: Quantity | None = None
    exhaust_duration: Quantity | None = None
    exhaust_centre_btdc: Quantity | None = None
    exhaust_centre_after: Quantity | None = None
    lobe_separation_cam: Quantity | None = None
    intake_after: Quantity | None = None
    intake_less_uncertainty: Quantity | None = None
    exhaust_after: Quantity | None = None
    exhaust_less_uncertainty: Quantity | None = None


class CamCheck(Calculation[CamCheckResult]):
    """Cam lobe, cam timing and valve-to-piston clearance.

    Lift and wear of a lobe; durations, lobe centres and separation from the events; how far a skim
    or a thinner gasket shifts a camshaft driven by chain; and the clearance of both valves after.
    The centres hold for lobes alike on both sides. Valves float at speed: a larger or faster engine
    needs more room than the floor.
    """

    NAME = "cam-check"
    RESULT = CamCheckResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "lobe_height": "quantity",
        "base_circle": "quantity",
        "lobe_height_new": "quantity",
        "chain_pitch": "quantity",
        "stack_lowered": "quantity",
        "intake_opens_btdc": "quantity",
        "intake_closes_abdc": "quantity",
        "exhaust_opens_bbdc": "quantity",
        "exhaust_closes_atdc": "quantity",
        "event_lift": "quantity",
        "clay_intake": "quantity",
        "clay_exhaust": "quantity",
        "clay_uncertainty": "quantity",
        "valve_tilt": "quantity",
        "intake_sink": "quantity",
        "exhaust_sink": "quantity",
        "exhaust_loss_per_degree": "quantity",
        "intake_loss_per_degree": "quantity",
        "limits": {
            "lobe_height": {"low": "quantity", "high": "quantity"},
            "lobe_wear": {"low": "quantity", "high": "quantity"},
            "intake_valve_to_piston": {"low": "quantity", "high": "quantity"},
            "exhaust_valve_to_piston": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        lobe_height: QuantityLike | None = None,
        base_circle: QuantityLike | None = None,
        lobe_height_new: QuantityLike | None = None,
        cam_drive: Literal["chain", "crankcase"] | None = None,
        chain_pitch: QuantityLike | None = None,
        cam_sprocket_teeth: int | None = None,
        stack_lowered: QuantityLike | None = None,
        intake_opens_btdc: QuantityLike | None = None,
        intake_closes_abdc: QuantityLike | None = None,
        exhaust_opens_bbdc: QuantityLike | None = None,
        exhaust_closes_atdc: QuantityLike | None = None,
        event_lift: QuantityLike | None = None,
        clay_intake: QuantityLike | None = None,
        clay_exhaust: QuantityLike | None = None,
        clay_uncertainty: QuantityLike | None = None,
        valve_tilt: QuantityLike | None = None,
        pocket_square: bool | None = None,
        intake_sink: QuantityLike | None = None,
        exhaust_sink: QuantityLike | None = None,
        lash_reset: bool | None = None,
        exhaust_loss_per_degree: QuantityLike | None = None,
        intake_loss_per_degree: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CamCheckLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CamCheckResult]:
        """Ask ``cam-check`` one question.

        Needed: ``lobe_height`` or ``chain_pitch`` or ``intake_opens_btdc`` or
        ``exhaust_opens_bbdc`` or ``clay_intake`` or ``clay_exhaust``.

        Parameters
        ----------
        lobe_height : QuantityLike, optional
            height of the lobe, nose to heel
        base_circle : QuantityLike, optional
            diameter of the base circle
        lobe_height_new : QuantityLike, optional
            height of a new lobe
        cam_drive : str, optional
            where the camshaft sits and what drives it (chain: camshaft in the head, chain or
            toothed belt from the crankshaft, slack run on a tensioner; crankcase: camshaft in the
            crankcase: its timing does not move with the head)
        chain_pitch : QuantityLike, optional
            pitch of the timing chain or toothed belt
        cam_sprocket_teeth : int, optional
            teeth of the cam sprocket
        stack_lowered : QuantityLike, optional
            how much nearer head and crankshaft come: skims, thinner gaskets (a thinner gasket
            counts as a skim); negative: farther
        intake_opens_btdc : QuantityLike, optional
            intake opens before top dead centre, crank
        intake_closes_abdc : QuantityLike, optional
            intake closes after bottom dead centre, crank
        exhaust_opens_bbdc : QuantityLike, optional
            exhaust opens before bottom dead centre, crank
        exhaust_closes_atdc : QuantityLike, optional
            exhaust closes after top dead centre, crank
        event_lift : QuantityLike, optional
            valve lift at which the events are stated
        clay_intake : QuantityLike, optional
            clearance of the intake valve before the change, lash set
        clay_exhaust : QuantityLike, optional
            clearance of the exhaust valve before the change, lash set
        clay_uncertainty : QuantityLike, optional
            uncertainty of either clearance, expanded (k = 2)
        valve_tilt : QuantityLike, optional
            tilt of the valves from the cylinder axis; where not given, the whole height counts
        pocket_square : bool, optional
            whether the valve pocket's floor is square to the valve; else the whole height counts
            (default yes)
        intake_sink : QuantityLike, optional
            how much deeper the intake valve sits than when the clearance was taken
        exhaust_sink : QuantityLike, optional
            how much deeper the exhaust valve sits than when the clearance was taken
        lash_reset : bool, optional
            whether the lash is set again after the seats were cut: only then sink gives room
        exhaust_loss_per_degree : QuantityLike, optional
            clearance that the exhaust valve loses for each crank degree of retard; where not given,
            0.06 mm near 10° before top dead centre (common practice, no source)
        intake_loss_per_degree : QuantityLike, optional
            clearance that the intake valve loses for each crank degree of advance; where not given,
            0.06 mm (common practice, no source)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CamCheckLimits, optional
            limits by check; these win over the common-practice ones
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "lobe_height": lobe_height,
            "base_circle": base_circle,
            "lobe_height_new": lobe_height_new,
            "cam_drive": cam_drive,
            "chain_pitch": chain_pitch,
            "cam_sprocket_teeth": cam_sprocket_teeth,
            "stack_lowered": stack_lowered,
            "intake_opens_btdc": intake_opens_btdc,
            "intake_closes_abdc": intake_closes_abdc,
            "exhaust_opens_bbdc": exhaust_opens_bbdc,
            "exhaust_closes_atdc": exhaust_closes_atdc,
            "event_lift": event_lift,
            "clay_intake": clay_intake,
            "clay_exhaust": clay_exhaust,
            "clay_uncertainty": clay_uncertainty,
            "valve_tilt": valve_tilt,
            "pocket_square": pocket_square,
            "intake_sink": intake_sink,
            "exhaust_sink": exhaust_sink,
            "lash_reset": lash_reset,
            "exhaust_loss_per_degree": exhaust_loss_per_degree,
            "intake_loss_per_degree": intake_loss_per_degree,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
