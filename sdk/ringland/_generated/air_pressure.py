"""Air pressure and altitude correction.

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
class AirPressureResult:
    """None is what cannot be known.

    Attributes
    ----------
    air_pressure_here : Quantity
        air pressure on the spot, absolute
    pressure_ratio : float
        air pressure on the spot over that at sea level, 101.325 kPa
    reading_at_sea_level : Quantity | None
        reading brought to sea level, gauge, throttle open
    density_ratio : float | None
        air density over that at sea level in the standard atmosphere; for comparison only, a
        compression reading does not go with it
    """

    air_pressure_here: Quantity
    pressure_ratio: float
    reading_at_sea_level: Quantity | None = None
    density_ratio: float | None = None


class AirPressure(Calculation[AirPressureResult]):
    """Air pressure and altitude correction.

    Air pressure on the spot from altitude, barometer or weather report, and a compression reading
    brought to sea level.
    """

    NAME = "air-pressure"
    RESULT = AirPressureResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "altitude": "quantity",
        "air_pressure": "quantity",
        "weather_report": "quantity",
        "reading": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        altitude: QuantityLike | None = None,
        air_pressure: QuantityLike | None = None,
        weather_report: QuantityLike | None = None,
        reading: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[AirPressureResult]:
        """Ask ``air-pressure`` one question.

        Needed: ``altitude`` or ``air_pressure``.

        Parameters
        ----------
        altitude : QuantityLike, optional
            altitude of the place
        air_pressure : QuantityLike, optional
            air pressure read on the spot, absolute, not brought to sea level; wins over altitude
        weather_report : QuantityLike, optional
            air pressure of the weather report, absolute, brought to sea level; needs the altitude
        reading : QuantityLike, optional
            cranking compression as read, gauge
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
            "altitude": altitude,
            "air_pressure": air_pressure,
            "weather_report": weather_report,
            "reading": reading,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
