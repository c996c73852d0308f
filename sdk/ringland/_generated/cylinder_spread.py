"""Spread between cylinders.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, ReadingsLike


class CylinderSpreadLimits(TypedDict, total=False):
    """Limits of your own, by check: cylinder-spread.

    Attributes
    ----------
    lowest_over_highest : RatioLimitAsked
        lowest cylinder over the highest
    """

    lowest_over_highest: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class CylinderSpreadResult:
    """None is what cannot be known.

    Attributes
    ----------
    spread : Quantity
        highest less lowest reading, share of the highest
    lowest_over_highest : float
        lowest reading over the highest
    each_over_highest : tuple[str | float, ...]
        each reading over the highest, in order
    grade : Literal['find_out', 'watch', 'good'] | None
        spread between the cylinders; absent where not all of them are read
    pair_mismatch : Quantity | None
        difference of the two neighbours in one bank that read lowest together, share of the higher;
        absent where no two cylinders share a bank, or not all are read
    adjacent_low_pair : tuple[str | float, ...] | None
        two low neighbours in one bank: a leak between them, a gasket bridge say
    """

    spread: Quantity
    lowest_over_highest: float
    each_over_highest: tuple[str | float, ...]
    grade: Literal["find_out", "watch", "good"] | None = None
    pair_mismatch: Quantity | None = None
    adjacent_low_pair: tuple[str | float, ...] | None = None


class CylinderSpread(Calculation[CylinderSpreadResult]):
    """Spread between cylinders.

    Spread of the compression readings of one engine, and a low pair of neighbours. A single has no
    spread. Peaks of the starter current may stand in for readings here. One cylinder's worn cam
    lobe, or a decompressor on one cylinder only, makes a spread too.
    """

    NAME = "cylinder-spread"
    RESULT = CylinderSpreadResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "readings": "readings",
        "expected": "quantity",
        "first_again": "quantity",
        "repeatability": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        readings: ReadingsLike,
        layout: Literal["in_line", "vee", "opposed"] | None = None,
        expected: QuantityLike | None = None,
        cylinder_count: int | None = None,
        first_again: QuantityLike | None = None,
        repeatability: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CylinderSpreadLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CylinderSpreadResult]:
        """Ask ``cylinder-spread`` one question.

        Parameters
        ----------
        readings : ReadingsLike
            reading of each cylinder, gauge; same gauge, one after another, bank by bank
        layout : str, optional
            how the cylinders stand; in two banks the first half of the readings is one bank
            (in_line: all cylinders in one bank, read in order; vee: two banks, read bank by bank;
            opposed: two opposed banks, read bank by bank) (default in_line)
        expected : QuantityLike, optional
            pressure expected of a sound cylinder here, gauge
        cylinder_count : int, optional
            number of cylinders; where fewer are read, the others are not told
        first_again : QuantityLike, optional
            the first cylinder read once more at the end, gauge
        repeatability : QuantityLike, optional
            how well each reading repeats, ±
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CylinderSpreadLimits, optional
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
            "readings": readings,
            "layout": layout,
            "expected": expected,
            "cylinder_count": cylinder_count,
            "first_again": first_again,
            "repeatability": repeatability,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
