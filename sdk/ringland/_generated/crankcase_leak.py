"""Crankcase leak of a two-stroke.

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


class CrankcaseLeakLimits(TypedDict, total=False):
    """Limits of your own, by check: crankcase-leak.

    Attributes
    ----------
    crankcase_pressure_loss : LimitAsked
        pressure that the crankcase loses a minute
    crankcase_vacuum_loss : LimitAsked
        vacuum that the crankcase loses a minute
    """

    crankcase_pressure_loss: LimitAsked
    crankcase_vacuum_loss: LimitAsked


@dataclass(frozen=True, kw_only=True)
class CrankcaseLeakResult:
    """None is what cannot be known.

    Attributes
    ----------
    air_pressure_here : Quantity
        air pressure that was used, absolute
    raw_loss_per_minute : Quantity | None
        pressure lost a minute, as read
    end_corrected : Quantity | None
        end pressure at the temperature of the start, gauge
    temperature_effect : Quantity | None
        pressure that cooling took away, and warming gave: not a leak
    loss_per_minute : Quantity | None
        pressure lost a minute at one temperature: what judges
    leak_per_minute : Quantity | None
        air that leaks out a minute, at the pressure outside
    vacuum_raw_loss_per_minute : Quantity | None
        vacuum lost a minute, as read
    vacuum_end_corrected : Quantity | None
        end of the vacuum test at the temperature of its start, gauge
    vacuum_temperature_effect : Quantity | None
        pressure that cooling took away: it hides a leak under vacuum
    vacuum_loss_per_minute : Quantity | None
        vacuum lost a minute at one temperature: what judges
    vacuum_leak_per_minute : Quantity | None
        air that leaks in a minute, at the pressure outside
    finding : str
        what both tests say by their values; to hold takes both
    """

    air_pressure_here: Quantity
    raw_loss_per_minute: Quantity | None = None
    end_corrected: Quantity | None = None
    temperature_effect: Quantity | None = None
    loss_per_minute: Quantity | None = None
    leak_per_minute: Quantity | None = None
    vacuum_raw_loss_per_minute: Quantity | None = None
    vacuum_end_corrected: Quantity | None = None
    vacuum_temperature_effect: Quantity | None = None
    vacuum_loss_per_minute: Quantity | None = None
    vacuum_leak_per_minute: Quantity | None = None
    finding: (
        Literal[
            "holds",
            "vacuum_not_tested",
            "pressure_not_tested",
            "leaks_under_pressure",
            "leaks_under_vacuum",
            "leaks_under_both",
            "repeat_the_test",
        ]
        | None
    ) = None


class CrankcaseLeak(Calculation[CrankcaseLeakResult]):
    """Crankcase leak of a two-stroke.

    Pressure and vacuum that a two-stroke's crankcase loses a minute, cooling taken out. Exhaust and
    intake blanked, plug fitted; the plates leak first, so soap them. A seal can hold pressure and
    leak under vacuum: to hold takes both tests, at two positions of the crank.
    """

    NAME = "crankcase-leak"
    RESULT = CrankcaseLeakResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "start": "quantity",
        "end": "quantity",
        "start_temperature": "quantity",
        "end_temperature": "quantity",
        "vacuum_start": "quantity",
        "vacuum_end": "quantity",
        "vacuum_start_temperature": "quantity",
        "vacuum_end_temperature": "quantity",
        "altitude": "quantity",
        "air_pressure": "quantity",
        "weather_report": "quantity",
        "trapped_volume": "quantity",
        "limits": {
            "crankcase_pressure_loss": {"low": "quantity", "high": "quantity"},
            "crankcase_vacuum_loss": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        start: QuantityLike | None = None,
        end: QuantityLike | None = None,
        minutes: float | None = None,
        start_temperature: QuantityLike | None = None,
        end_temperature: QuantityLike | None = None,
        vacuum_start: QuantityLike | None = None,
        vacuum_end: QuantityLike | None = None,
        vacuum_minutes: float | None = None,
        vacuum_start_temperature: QuantityLike | None = None,
        vacuum_end_temperature: QuantityLike | None = None,
        altitude: QuantityLike | None = None,
        air_pressure: QuantityLike | None = None,
        weather_report: QuantityLike | None = None,
        trapped_volume: QuantityLike | None = None,
        plates_soaped: bool | None = None,
        second_crank_position: bool | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CrankcaseLeakLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CrankcaseLeakResult]:
        """Ask ``crankcase-leak`` one question.

        Needed: ``start`` or ``vacuum_start``.

        Parameters
        ----------
        start : QuantityLike, optional
            pressure test: pressure at the start, gauge; never above the maker's, 60 kPa at most
        end : QuantityLike, optional
            pressure test: pressure at the end, gauge
        minutes : float, optional
            pressure test: minutes from start to end
        start_temperature : QuantityLike, optional
            pressure test: temperature at the start
        end_temperature : QuantityLike, optional
            pressure test: temperature at the end
        vacuum_start : QuantityLike, optional
            vacuum test: pressure at the start, gauge, below zero
        vacuum_end : QuantityLike, optional
            vacuum test: pressure at the end, gauge, below zero
        vacuum_minutes : float, optional
            vacuum test: minutes from start to end
        vacuum_start_temperature : QuantityLike, optional
            vacuum test: temperature at the start
        vacuum_end_temperature : QuantityLike, optional
            vacuum test: temperature at the end
        altitude : QuantityLike, optional
            altitude of the place (geopotential)
        air_pressure : QuantityLike, optional
            air pressure on the spot, absolute
        weather_report : QuantityLike, optional
            air pressure of the weather report, absolute, brought to sea level; needs the altitude
        trapped_volume : QuantityLike, optional
            air shut in: crankcase, ducts and hose
        plates_soaped : bool, optional
            blanking plates, plug and hose soaped and found tight
        second_crank_position : bool, optional
            repeated with the crank turned to another position
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CrankcaseLeakLimits, optional
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
            "start": start,
            "end": end,
            "minutes": minutes,
            "start_temperature": start_temperature,
            "end_temperature": end_temperature,
            "vacuum_start": vacuum_start,
            "vacuum_end": vacuum_end,
            "vacuum_minutes": vacuum_minutes,
            "vacuum_start_temperature": vacuum_start_temperature,
            "vacuum_end_temperature": vacuum_end_temperature,
            "altitude": altitude,
            "air_pressure": air_pressure,
            "weather_report": weather_report,
            "trapped_volume": trapped_volume,
            "plates_soaped": plates_soaped,
            "second_crank_position": second_crank_position,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
