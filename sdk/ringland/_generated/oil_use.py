"""Oil consumption.

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


class OilUseLimits(TypedDict, total=False):
    """Limits of your own, by check: oil-use.

    Attributes
    ----------
    oil_per_1000_km : LimitAsked
        oil used for each 1000 km
    oil_per_hour : LimitAsked
        oil used for each hour
    oil_of_fuel : LimitAsked
        oil used as a share of the fuel
    """

    oil_per_1000_km: LimitAsked
    oil_per_hour: LimitAsked
    oil_of_fuel: LimitAsked


@dataclass(frozen=True, kw_only=True)
class OilUseResult:
    """None is what cannot be known.

    Attributes
    ----------
    oil_per_1000_km : Quantity | None
        oil for each 1000 km
    oil_per_hour : Quantity | None
        oil for each hour
    oil_of_fuel : Quantity | None
        oil as a share of the fuel, by volume
    grade : Literal['find_out', 'worn', 'usual'] | None
        oil use by its share of the fuel
    """

    oil_per_1000_km: Quantity | None = None
    oil_per_hour: Quantity | None = None
    oil_of_fuel: Quantity | None = None
    grade: Literal["find_out", "worn", "usual"] | None = None


class OilUse(Calculation[OilUseResult]):
    """Oil consumption.

    Oil that a four-stroke uses by distance, by hours and as a share of its fuel. What leaks out is
    not used; the level counts only where it is read the same way each time. The maker's figure,
    mostly for 1000 km, wins.
    """

    NAME = "oil-use"
    RESULT = OilUseResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "added": "quantity",
        "fuel": "quantity",
        "limits": {
            "oil_per_1000_km": {"low": "quantity", "high": "quantity"},
            "oil_per_hour": {"low": "quantity", "high": "quantity"},
            "oil_of_fuel": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        added: QuantityLike,
        distance_km: float | None = None,
        hours: float | None = None,
        fuel: QuantityLike | None = None,
        leaks_seen: bool | None = None,
        level_read_alike: bool | None = None,
        overfilled: bool | None = None,
        fuel_in_oil: bool | None = None,
        not_run_in_yet: bool | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: OilUseLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[OilUseResult]:
        """Ask ``oil-use`` one question.

        Needed: ``distance_km`` or ``hours`` or ``fuel``.

        Parameters
        ----------
        added : QuantityLike
            oil added to bring the level back to where it stood
        distance_km : float, optional
            distance covered meanwhile, km
        hours : float, optional
            hours run meanwhile, h
        fuel : QuantityLike, optional
            fuel used meanwhile
        leaks_seen : bool, optional
            oil seen outside: joints, seals, breather
        level_read_alike : bool, optional
            level read alike both times: hot or cold, level ground, stick screwed in or resting
        overfilled : bool, optional
            filled above the upper mark at the start
        fuel_in_oil : bool, optional
            oil smells of fuel or has gone thin
        not_run_in_yet : bool, optional
            engine still running in
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : OilUseLimits, optional
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
            "added": added,
            "distance_km": distance_km,
            "hours": hours,
            "fuel": fuel,
            "leaks_seen": leaks_seen,
            "level_read_alike": level_read_alike,
            "overfilled": overfilled,
            "fuel_in_oil": fuel_in_oil,
            "not_run_in_yet": not_run_in_yet,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
