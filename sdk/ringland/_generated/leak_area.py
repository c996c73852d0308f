"""Leak area.

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
class LeakAreaResult:
    """None is what cannot be known.

    Attributes
    ----------
    air_pressure_here : Quantity
        air pressure that was used, absolute
    leak : Quantity
        leak-down as read
    restrictor_ratio : float
        absolute pressure after over before the restrictor, not below 0.528, where flow is choked
    hole_ratio : float
        absolute pressure after over before the leak, not below 0.528, where flow is choked
    leak_area : Quantity
        area of one hole that leaks as much, flow coefficients taken as equal; about ± 30 %
    leak_hole_dia : Quantity
        diameter of that hole, were it round
    leak_area_per_100_mm_bore : Quantity | None
        leak area for each 100 mm of bore: fairer than per cent between engines; no limit is
        commonly known
    other_leak : Quantity | None
        what the same hole reads on the other tester
    other_leak_low : Quantity | None
        the same with the coefficient of the hole less by its doubt
    other_leak_high : Quantity | None
        the same with the coefficient of the hole more by its doubt
    """

    air_pressure_here: Quantity
    leak: Quantity
    restrictor_ratio: float
    hole_ratio: float
    leak_area: Quantity
    leak_hole_dia: Quantity
    leak_area_per_100_mm_bore: Quantity | None = None
    other_leak: Quantity | None = None
    other_leak_low: Quantity | None = None
    other_leak_high: Quantity | None = None


class LeakArea(Calculation[LeakAreaResult]):
    """Leak area.

    The hole behind a leak-down reading, and what it reads on a tester with another restrictor or
    supply. For comparison, never a verdict: ring gaps are not nozzles. Aviation practice fixes the
    restrictor instead, about 1.0 mm for bores up to about 127 mm: FAA Advisory Circular 43.13-1,
    differential compression test (from memory).
    """

    NAME = "leak-area"
    RESULT = LeakAreaResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "supply": "quantity",
        "cylinder": "quantity",
        "restrictor": "quantity",
        "altitude": "quantity",
        "air_pressure": "quantity",
        "weather_report": "quantity",
        "other_restrictor": "quantity",
        "other_supply": "quantity",
        "coefficient_doubt": "quantity",
        "bore": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        supply: QuantityLike,
        cylinder: QuantityLike,
        restrictor: QuantityLike,
        altitude: QuantityLike | None = None,
        air_pressure: QuantityLike | None = None,
        weather_report: QuantityLike | None = None,
        other_restrictor: QuantityLike | None = None,
        other_supply: QuantityLike | None = None,
        coefficient_doubt: QuantityLike | None = None,
        bore: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[LeakAreaResult]:
        """Ask ``leak-area`` one question.

        Parameters
        ----------
        supply : QuantityLike
            pressure before the restrictor, gauge, read while the air flows
        cylinder : QuantityLike
            pressure that the cylinder holds, gauge, of the same zero
        restrictor : QuantityLike
            bore of the tester's restrictor, clean of oil and dirt
        altitude : QuantityLike, optional
            altitude of the place (geopotential)
        air_pressure : QuantityLike, optional
            air pressure on the spot, absolute
        weather_report : QuantityLike, optional
            air pressure of the weather report, absolute, brought to sea level; needs the altitude
        other_restrictor : QuantityLike, optional
            bore of the other tester's restrictor; absent, the same
        other_supply : QuantityLike, optional
            supply of the other tester, gauge; absent, the same
        coefficient_doubt : QuantityLike, optional
            how far the flow coefficients of hole and restrictors may be apart, ± (default 15.0 %)
        bore : QuantityLike, optional
            cylinder bore, to compare engines of different size
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
            "supply": supply,
            "cylinder": cylinder,
            "restrictor": restrictor,
            "altitude": altitude,
            "air_pressure": air_pressure,
            "weather_report": weather_report,
            "other_restrictor": other_restrictor,
            "other_supply": other_supply,
            "coefficient_doubt": coefficient_doubt,
            "bore": bore,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
