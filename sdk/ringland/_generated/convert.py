"""Unit conversion.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


@dataclass(frozen=True, kw_only=True)
class ConvertResult:
    """None is what cannot be known.

    Attributes
    ----------
    converted : Quantity
        the quantity in the unit wanted
    factor : float | None
        units wanted in one unit given, where a factor alone converts
    exactness : Literal['exact', 'rounded']
        whether the factor is exact or rounded
    significant_digits : int
        digits that the number given carries; as many are worth keeping
    """

    converted: Quantity
    factor: float | None = None
    exactness: Literal["exact", "rounded"]
    significant_digits: int


class Convert(Calculation[ConvertResult]):
    """Unit conversion.

    A quantity in another unit of its kind; torque is not energy, gauge not absolute.
    """

    NAME = "convert"
    RESULT = ConvertResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "value": "quantity",
        "air_pressure": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        value: QuantityLike,
        to: str,
        kind: Literal[
            "length",
            "altitude",
            "area",
            "volume",
            "liquid",
            "fuel",
            "pressure_gauge",
            "pressure_absolute",
            "pressure_difference",
            "stress",
            "torque",
            "force",
            "temperature",
            "temperature_difference",
            "mass",
            "spring_rate",
            "rotation",
            "velocity",
            "angle",
            "expansion",
            "voltage",
            "percent",
        ]
        | None = None,
        air_pressure: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[ConvertResult]:
        """Ask ``convert`` one question.

        Parameters
        ----------
        value : QuantityLike
            the quantity to convert
        to : str
            the unit wanted
        kind : str, optional
            kind of quantity, where the units leave it open (degC as a difference, say) (length:
            length; altitude: altitude; area: area; volume: volume; liquid: liquid; fuel: fuel;
            pressure_gauge: pressure gauge; pressure_absolute: pressure absolute;
            pressure_difference: pressure difference; stress: stress; torque: torque; force: force;
            temperature: temperature; temperature_difference: temperature difference; mass: mass;
            spring_rate: spring rate; rotation: rotation; velocity: velocity; angle: angle;
            expansion: expansion; voltage: voltage; percent: percent)
        air_pressure : QuantityLike, optional
            air pressure on the spot, between gauge and absolute pressure
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
            "value": value,
            "to": to,
            "kind": kind,
            "air_pressure": air_pressure,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
