"""Smallest oversize that cleans up.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings


class OversizeChoicePiston(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    mark : str
        what the piston is marked or sold as; carried along, never taken for a size
    size : QuantityLike
        the piston as measured across the thrust axis, at the maker's height
    """

    mark: str
    size: QuantityLike


class OversizeChoiceLimits(TypedDict, total=False):
    """Limits of your own, by check: oversize-choice.

    Attributes
    ----------
    oversize_margin : LimitAsked
        margin of the chosen piston at boring
    """

    oversize_margin: LimitAsked


@dataclass(frozen=True, kw_only=True)
class OversizeChoiceResult:
    """None is what cannot be known.

    Attributes
    ----------
    marks : tuple[str | float, ...]
        pistons offered, in the order given
    finish_bores : Readings
        finish bore that each piston needs
    bore_tos : Readings
        diameter to bore to for each piston, before the hone
    margins : Readings
        what each piston's bore-to leaves over the clean-up diameter; negative: damage stays
    outcomes : tuple[str | float, ...]
        what each piston's bores do to the damage
    reason : str
        why this choice, or why none
    chosen : str | None
        piston to take: the smallest that cleans up at boring; it leaves room for the next rebuild
    chosen_piston : Quantity | None
        size of the chosen piston, as measured
    chosen_finish : Quantity | None
        finish bore of the chosen piston
    chosen_bore_to : Quantity | None
        diameter to bore to for the chosen piston
    chosen_margin : Quantity | None
        margin of the chosen piston's bore-to over the clean-up diameter
    runner_up : str | None
        next larger piston that cleans up, should the chosen one not
    """

    marks: tuple[str | float, ...]
    finish_bores: Readings
    bore_tos: Readings
    margins: Readings
    outcomes: tuple[str | float, ...]
    reason: Literal[
        "smallest_cleans_up",
        "smaller_do_not_clean_up",
        "smaller_only_at_the_hone",
        "only_at_the_hone",
        "none_cleans_up",
    ]
    chosen: str | None = None
    chosen_piston: Quantity | None = None
    chosen_finish: Quantity | None = None
    chosen_bore_to: Quantity | None = None
    chosen_margin: Quantity | None = None
    runner_up: str | None = None


class OversizeChoice(Calculation[OversizeChoiceResult]):
    """Smallest oversize that cleans up.

    Which piston to take: finish bore, bore-to and margin of each one offered, from its measured
    size. The mark is not the size: 0.50 mm is not 0.020 in (0.508 mm), and a piston may carry its
    clearance or not. Rings must match the oversize; all cylinders of one engine go to one oversize
    unless the maker allows others.
    """

    NAME = "oversize-choice"
    RESULT = OversizeChoiceResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "clean_up": "quantity",
        "pistons": [{"size": "quantity"}],
        "clearance_target": "quantity",
        "hone_stock": "quantity",
        "nominal_bore": "quantity",
        "largest_oversize": "quantity",
        "limits": {"oversize_margin": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ],
        clean_up: QuantityLike,
        pistons: Sequence[OversizeChoicePiston],
        clearance_target: QuantityLike,
        hone_stock: QuantityLike,
        nominal_bore: QuantityLike | None = None,
        largest_oversize: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: OversizeChoiceLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[OversizeChoiceResult]:
        """Ask ``oversize-choice`` one question.

        Parameters
        ----------
        bore_kind : str
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
        clean_up : QuantityLike
            clean-up diameter
        pistons : Sequence[OversizeChoicePiston]
            pistons on offer, each with its measured size, in any order
        clearance_target : QuantityLike
            clearance wanted, diametral; the middle of the maker's range
        hone_stock : QuantityLike
            stock that the machinist leaves for the hone, on the diameter
        nominal_bore : QuantityLike, optional
            nominal bore of a standard piston
        largest_oversize : QuantityLike, optional
            largest oversize that the maker allows, on the diameter, with nominal_bore
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : OversizeChoiceLimits, optional
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
            "bore_kind": bore_kind,
            "clean_up": clean_up,
            "pistons": pistons,
            "clearance_target": clearance_target,
            "hone_stock": hone_stock,
            "nominal_bore": nominal_bore,
            "largest_oversize": largest_oversize,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
