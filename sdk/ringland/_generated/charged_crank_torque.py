"""Crank torque of a charged cylinder.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class ChargedCrankTorqueLimits(TypedDict, total=False):
    """Limits of your own, by check: charged-crank-torque.

    Attributes
    ----------
    charged_peak_torque : LimitAsked
        peak torque on the charged crank
    """

    charged_peak_torque: LimitAsked


@dataclass(frozen=True, kw_only=True)
class ChargedCrankTorqueResult:
    """None is what cannot be known.

    Attributes
    ----------
    piston_force : Quantity
        force of the air on the piston
    free_peak_at : Quantity
        crank angle of the largest torque while nothing opens
    peak_at : Quantity
        crank angle of the largest torque from top dead centre on
    peak_torque : Quantity
        largest torque on the crank from top dead centre on: what judges
    torque_held : Quantity | None
        torque at the angle at which the crank is held; judges nothing, a slip away is the peak
    torque_at_second : Quantity | None
        torque at the second angle
    force_on_bar_at_peak : Quantity | None
        force at the end of the bar at the peak
    limit_used : Quantity | None
        largest torque that a holding tool may meet: the request's limit, else the usual one
    supply_for_limit : Quantity | None
        supply that keeps the peak at that torque, gauge
    """

    piston_force: Quantity
    free_peak_at: Quantity
    peak_at: Quantity
    peak_torque: Quantity
    torque_held: Quantity | None = None
    torque_at_second: Quantity | None = None
    force_on_bar_at_peak: Quantity | None = None
    limit_used: Quantity | None = None
    supply_for_limit: Quantity | None = None


class ChargedCrankTorque(Calculation[ChargedCrankTorqueResult]):
    """Crank torque of a charged cylinder.

    Force on the piston and torque on the crank while a cylinder is charged for a leak-down, without
    friction. The peak judges, wherever the crank is held: the crank runs away further as it turns,
    and a spanner left on its nut becomes a flail. Nobody's hand holds the crank by a bar alone, nor
    a gearbox with its chain in line with anybody.
    """

    NAME = "charged-crank-torque"
    RESULT = ChargedCrankTorqueResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "supply_pressure": "quantity",
        "bore": "quantity",
        "stroke": "quantity",
        "rod": "quantity",
        "held_at": "quantity",
        "second": "quantity",
        "opens": "quantity",
        "bar": "quantity",
        "limits": {"charged_peak_torque": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        supply_pressure: QuantityLike,
        bore: QuantityLike,
        stroke: QuantityLike,
        rod: QuantityLike,
        held_at: QuantityLike | None = None,
        second: QuantityLike | None = None,
        opens: QuantityLike | None = None,
        bar: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: ChargedCrankTorqueLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[ChargedCrankTorqueResult]:
        """Ask ``charged-crank-torque`` one question.

        Parameters
        ----------
        supply_pressure : QuantityLike
            pressure that the cylinder is charged with, gauge
        bore : QuantityLike
            cylinder bore
        stroke : QuantityLike
            stroke
        rod : QuantityLike
            rod length, centre to centre
        held_at : QuantityLike, optional
            crank angle from top dead centre at which it is held
        second : QuantityLike, optional
            a second crank angle, to compare
        opens : QuantityLike, optional
            crank angle after top dead centre at which a valve or port first lets the air out
        bar : QuantityLike, optional
            bar on the crank nut, nut to hand (default 300.0 mm)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : ChargedCrankTorqueLimits, optional
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
            "bore": bore,
            "stroke": stroke,
            "rod": rod,
            "held_at": held_at,
            "second": second,
            "opens": opens,
            "bar": bar,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
