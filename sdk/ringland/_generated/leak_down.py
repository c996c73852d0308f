"""Leak-down.

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


class LeakDownLimits(TypedDict, total=False):
    """Limits of your own, by check: leak-down.

    Attributes
    ----------
    leak_down : LimitAsked
        leak-down
    """

    leak_down: LimitAsked


@dataclass(frozen=True, kw_only=True)
class LeakDownResult:
    """None is what cannot be known.

    Attributes
    ----------
    kept : Quantity
        pressure that the cylinder holds at best, gauge, difference of the gauges taken out
    leak : Quantity
        leak-down: share of the supply that the cylinder does not hold, the lowest reading
    leak_spread : Quantity | None
        spread of the leak as the crank is rocked, in points
    gradeable : str
        whether the common steps grade this reading
    grade : str
        leak by the common steps: 10, 20 and 30 %
    grade_on_makers_scale : Literal['tear_down', 'worn', 'serviceable', 'good'] | None
        leak by the tester maker's own steps
    leak_path : str
        where the air goes
    gauge_error_pressure : Quantity | None
        maximum error of each gauge, ±
    leak_uncertainty : Quantity | None
        expanded uncertainty of the leak from both gauges, k = 2, in points
    """

    kept: Quantity
    leak: Quantity
    leak_spread: Quantity | None = None
    gradeable: Literal[
        "yes",
        "not_at_firing_tdc",
        "upper_bound",
        "decompressor_active",
        "restrictor_not_known",
        "restrictor_outside",
        "supply_outside",
    ]
    grade: Literal["tear_down", "worn", "serviceable", "good", "not_gradeable"] | None = None
    grade_on_makers_scale: Literal["tear_down", "worn", "serviceable", "good"] | None = None
    leak_path: (
        Literal[
            "rings_or_piston",
            "exhaust_valve",
            "intake_valve",
            "past_rings_to_the_port",
            "rings_or_reeds",
            "gasket_or_crack_to_coolant",
            "gasket_to_neighbour",
            "joint_or_adaptor",
            "not_heard",
        ]
        | None
    ) = None
    gauge_error_pressure: Quantity | None = None
    leak_uncertainty: Quantity | None = None


class LeakDown(Calculation[LeakDownResult]):
    """Leak-down.

    The share of its supply that a cylinder loses, its uncertainty, its grade and where the air
    goes. A little ring leak is always there; the same hole weighs more in a small bore. Per cent of
    testers with other restrictors or supplies do not compare: turn them into a leak area.
    """

    NAME = "leak-down"
    RESULT = LeakDownResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "supply_pressure": "quantity",
        "cylinder_pressure": "quantity",
        "rocked_forward_pressure": "quantity",
        "rocked_back_pressure": "quantity",
        "restrictor": "quantity",
        "gauge_difference": "quantity",
        "gauge_residual": "quantity",
        "gauge_full_scale": "quantity",
        "gauge_error": "quantity",
        "good_to": "quantity",
        "serviceable_to": "quantity",
        "worn_to": "quantity",
        "limits": {"leak_down": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        supply_pressure: QuantityLike,
        cylinder_pressure: QuantityLike,
        rocked_forward_pressure: QuantityLike | None = None,
        rocked_back_pressure: QuantityLike | None = None,
        restrictor: QuantityLike | None = None,
        gauge_difference: QuantityLike | None = None,
        gauge_residual: QuantityLike | None = None,
        gauge_full_scale: QuantityLike | None = None,
        gauge_error: QuantityLike | None = None,
        good_to: QuantityLike | None = None,
        serviceable_to: QuantityLike | None = None,
        worn_to: QuantityLike | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        duty: Literal["normal", "racing"] | None = None,
        piston_at: Literal["firing_tdc", "overlap_tdc", "below_tdc", "unknown"] | None = None,
        engine_warm: bool | None = None,
        decompressor_state: Literal[
            "none", "automatic_held_off", "automatic_active", "manual_not_used", "unknown"
        ]
        | None = None,
        heard_at: Literal[
            "oil_filler_or_breather",
            "exhaust",
            "intake",
            "radiator",
            "neighbour_plug_hole",
            "head_joint",
            "nowhere",
        ]
        | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: LeakDownLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[LeakDownResult]:
        """Ask ``leak-down`` one question.

        Parameters
        ----------
        supply_pressure : QuantityLike
            pressure before the restrictor, gauge, read while the air flows
        cylinder_pressure : QuantityLike
            pressure that the cylinder holds, gauge, the crank locked
        rocked_forward_pressure : QuantityLike, optional
            the same with the crank rocked a little forward, gauge
        rocked_back_pressure : QuantityLike, optional
            the same with the crank rocked a little back, gauge
        restrictor : QuantityLike, optional
            bore of the tester's restrictor
        gauge_difference : QuantityLike, optional
            cylinder gauge over supply gauge on one pressure (hose plugged); 0 for one differential
            gauge
        gauge_residual : QuantityLike, optional
            what may be left of each gauge's error once the difference is taken out, ±
        gauge_full_scale : QuantityLike, optional
            full scale of both gauges
        gauge_error : QuantityLike, optional
            maximum error of each gauge, ± share of full scale
        good_to : QuantityLike, optional
            tester maker's own scale: good up to
        serviceable_to : QuantityLike, optional
            tester maker's own scale: serviceable up to
        worn_to : QuantityLike, optional
            tester maker's own scale: worn up to
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        duty : str, optional
            what the engine is for (normal: road, field and workshop engines; racing: racing engine)
            (default normal)
        piston_at : str, optional
            where the piston stood (firing_tdc: firing top dead centre, all valves or ports shut;
            overlap_tdc: the other top dead centre of a four-stroke, where both valves are open;
            below_tdc: part of the way down, the crank held, to try the bore lower down; unknown:
            not known) (default unknown)
        engine_warm : bool, optional
            engine warm
        decompressor_state : str, optional
            decompressor during the test (none: no decompressor; automatic_held_off: automatic one
            held off during the test; automatic_active: automatic one at work during the test;
            manual_not_used: manual one not used during the test; unknown: not known) (default
            unknown)
        heard_at : str, optional
            where the air is heard, the loudest place (oil_filler_or_breather: oil filler, dipstick
            hole or breather; exhaust: exhaust outlet; intake: carburettor or intake; radiator:
            bubbles in radiator or header tank; neighbour_plug_hole: plug hole of the neighbour;
            head_joint: foam at head joint, plug, adaptor or stud; nowhere: somebody listened and
            heard nothing)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : LeakDownLimits, optional
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
            "supply_pressure": supply_pressure,
            "cylinder_pressure": cylinder_pressure,
            "rocked_forward_pressure": rocked_forward_pressure,
            "rocked_back_pressure": rocked_back_pressure,
            "restrictor": restrictor,
            "gauge_difference": gauge_difference,
            "gauge_residual": gauge_residual,
            "gauge_full_scale": gauge_full_scale,
            "gauge_error": gauge_error,
            "good_to": good_to,
            "serviceable_to": serviceable_to,
            "worn_to": worn_to,
            "cycle": cycle,
            "duty": duty,
            "piston_at": piston_at,
            "engine_warm": engine_warm,
            "decompressor_state": decompressor_state,
            "heard_at": heard_at,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
