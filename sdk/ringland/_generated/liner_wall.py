"""Remaining liner wall.

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


class LinerWallLimits(TypedDict, total=False):
    """Limits of your own, by check: liner-wall.

    Attributes
    ----------
    liner_wall : LimitAsked
        thinnest wall after boring
    """

    liner_wall: LimitAsked


@dataclass(frozen=True, kw_only=True)
class LinerWallResult:
    """None is what cannot be known.

    Attributes
    ----------
    wall_mean : Quantity
        mean wall, radial
    wall_thinnest : Quantity
        thinnest wall, radial
    floor_used : Quantity | None
        wall that must be left, as used: the limit of the request, else of the kind of wall
    largest_bore_at_floor : Quantity | None
        largest bore that leaves the floor at the thinnest place
    """

    wall_mean: Quantity
    wall_thinnest: Quantity
    floor_used: Quantity | None = None
    largest_bore_at_floor: Quantity | None = None


class LinerWall(Calculation[LinerWallResult]):
    """Remaining liner wall.

    Mean and thinnest wall after boring, and the largest bore that leaves the floor. Key ribs, ports
    and rust on the water side weaken a wall; at the spigot the outside is smaller, and the mouth of
    the crankcase must clear the new bore.
    """

    NAME = "liner-wall"
    RESULT = LinerWallResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "liner_od": "quantity",
        "finish_high": "quantity",
        "core_shift": "quantity",
        "limits": {"liner_wall": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        liner_od: QuantityLike,
        finish_high: QuantityLike,
        core_shift: QuantityLike | None = None,
        liner_kind: Literal["dry", "wet_or_air_cooled", "parent_iron"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: LinerWallLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[LinerWallResult]:
        """Ask ``liner-wall`` one question.

        Parameters
        ----------
        liner_od : QuantityLike
            outside diameter of the liner, or of the parent wall, where it is smallest
        finish_high : QuantityLike
            upper limit of the finish bore
        core_shift : QuantityLike, optional
            distance of the bore's centre from the centre of the outside; 0 takes it as true
            (default 0.0 mm)
        liner_kind : str, optional
            kind of wall, for the floor that shops keep (dry: dry liner, carried by its cylinder all
            along; wet_or_air_cooled: wet liner, or sleeve of an air-cooled cylinder; parent_iron:
            parent iron, no liner)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : LinerWallLimits, optional
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
            "liner_od": liner_od,
            "finish_high": finish_high,
            "core_shift": core_shift,
            "liner_kind": liner_kind,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
