"""Rod and crank play.

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


class RodPlayLimits(TypedDict, total=False):
    """Limits of your own, by check: rod-play.

    Attributes
    ----------
    big_end_side : LimitAsked
        side clearance of the big end
    big_end_radial : LimitAsked
        radial play of the big end
    small_end_tip_rock : LimitAsked
        rock at the small end; only the maker's limit judges it
    crank_runout_left : LimitAsked
        run-out of the left journal
    crank_runout_right : LimitAsked
        run-out of the right journal
    """

    big_end_side: LimitAsked
    big_end_radial: LimitAsked
    small_end_tip_rock: LimitAsked
    crank_runout_left: LimitAsked
    crank_runout_right: LimitAsked


@dataclass(frozen=True, kw_only=True)
class RodPlayResult:
    """None is what cannot be known.

    Attributes
    ----------
    bend_or_offset_left : Quantity | None
        bend or offset of the left journal, radial
    bend_or_offset_right : Quantity | None
        bend or offset of the right journal, radial
    runout_grade : Literal['true_up', 'serviceable', 'good'] | None
        run-out of the crank, by the larger of the journals
    radial_play_implied_by_rock : Quantity | None
        radial play that the rock would take, were the big end to touch at both edges
    """

    bend_or_offset_left: Quantity | None = None
    bend_or_offset_right: Quantity | None = None
    runout_grade: Literal["true_up", "serviceable", "good"] | None = None
    radial_play_implied_by_rock: Quantity | None = None


class RodPlay(Calculation[RodPlayResult]):
    """Rod and crank play.

    Side and radial play of the big end, rock at the small end, and run-out of the crank between
    centres. A top end put on a worn big end comes back.
    """

    NAME = "rod-play"
    RESULT = RodPlayResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "big_end_side": "quantity",
        "big_end_radial": "quantity",
        "small_end_tip_rock": "quantity",
        "rod": "quantity",
        "big_end_width": "quantity",
        "runout_left": "quantity",
        "runout_right": "quantity",
        "limits": {
            "big_end_side": {"low": "quantity", "high": "quantity"},
            "big_end_radial": {"low": "quantity", "high": "quantity"},
            "small_end_tip_rock": {"low": "quantity", "high": "quantity"},
            "crank_runout_left": {"low": "quantity", "high": "quantity"},
            "crank_runout_right": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        big_end_side: QuantityLike | None = None,
        big_end_radial: QuantityLike | None = None,
        big_end: Literal["rollers", "plain"] | None = None,
        small_end_tip_rock: QuantityLike | None = None,
        rod: QuantityLike | None = None,
        big_end_width: QuantityLike | None = None,
        runout_left: QuantityLike | None = None,
        runout_right: QuantityLike | None = None,
        condition: Literal["new", "used"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: RodPlayLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[RodPlayResult]:
        """Ask ``rod-play`` one question.

        Needed: ``big_end_side`` or ``big_end_radial`` or ``small_end_tip_rock`` or ``runout_left``
        or ``runout_right``.

        Parameters
        ----------
        big_end_side : QuantityLike, optional
            side clearance of the big end, feeler
        big_end_radial : QuantityLike, optional
            radial play of the big end, pulled and pushed along the cylinder axis, not sideways
        big_end : str, optional
            kind of big end (rollers: rollers or needles on a built-up crank; plain: plain shell
            bearings) (default rollers)
        small_end_tip_rock : QuantityLike, optional
            whole sideways rock at the small end
        rod : QuantityLike, optional
            rod length, centre to centre
        big_end_width : QuantityLike, optional
            width of the big end
        runout_left : QuantityLike, optional
            run-out of the left journal between centres, total indicator reading
        runout_right : QuantityLike, optional
            run-out of the right journal between centres, total indicator reading
        condition : str, optional
            which limits apply (new: new parts, as they go together; used: used parts against their
            service limit) (default used)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : RodPlayLimits, optional
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
            "big_end_side": big_end_side,
            "big_end_radial": big_end_radial,
            "big_end": big_end,
            "small_end_tip_rock": small_end_tip_rock,
            "rod": rod,
            "big_end_width": big_end_width,
            "runout_left": runout_left,
            "runout_right": runout_right,
            "condition": condition,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
