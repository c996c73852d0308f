"""Fuel and oil premix.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


@dataclass(frozen=True, kw_only=True)
class PremixResult:
    """None is what cannot be known.

    Attributes
    ----------
    oil : Quantity
        oil for this fuel
    oil_of_fuel : Quantity
        oil, share of the fuel
    oil_of_mix : Quantity
        oil, share of the mix
    oil_in_tank : Quantity | None
        oil already in the tank
    fuel_in_tank : Quantity | None
        fuel already in the tank, without its oil
    oil_to_bring_tank_to_ratio : Quantity | None
        oil that brings the tank's mix to the ratio; 0 where it holds enough
    fuel_to_bring_tank_to_ratio : Quantity | None
        fuel without oil that brings the tank's mix to the ratio; 0 where it holds enough
    """

    oil: Quantity
    oil_of_fuel: Quantity
    oil_of_mix: Quantity
    oil_in_tank: Quantity | None = None
    fuel_in_tank: Quantity | None = None
    oil_to_bring_tank_to_ratio: Quantity | None = None
    fuel_to_bring_tank_to_ratio: Quantity | None = None


class Premix(Calculation[PremixResult]):
    """Fuel and oil premix.

    Oil for a two-stroke's fuel at a ratio of fuel to oil, and what brings the mix in the tank to
    it. The makers of engine and oil say which ratio; more oil for running in only if they say so.
    """

    NAME = "premix"
    RESULT = PremixResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "fuel": "quantity",
        "tank_has": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        fuel: QuantityLike,
        ratio: float,
        tank_has: QuantityLike | None = None,
        tank_ratio: float | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[PremixResult]:
        """Ask ``premix`` one question.

        Parameters
        ----------
        fuel : QuantityLike
            fuel to be mixed, without oil
        ratio : float
            fuel to oil by volume: 32 stands for 32:1
        tank_has : QuantityLike, optional
            mix that the tank already holds, fuel and oil together
        tank_ratio : float, optional
            fuel to oil of the mix in the tank
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "fuel": fuel,
            "ratio": ratio,
            "tank_has": tank_has,
            "tank_ratio": tank_ratio,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
