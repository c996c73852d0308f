"""Clean-up diameter.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings


class CleanUpScore(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    local : QuantityLike
        bore at the depth of the score, beside it
    depth_radial : QuantityLike
        depth of the score below the wall beside it, radial
    depth_from_deck : QuantityLike
        where the score lies, below the deck
    side : Literal['worn_side', 'opposite', 'unknown']
        side of the bore that the score is on (worn_side: on the side that wore most; opposite:
        opposite the side that wore most; unknown: not known: the larger share of the wear is used)
        (default unknown)
    """

    local: QuantityLike
    depth_radial: QuantityLike
    depth_from_deck: NotRequired[QuantityLike]
    side: NotRequired[Literal["worn_side", "opposite", "unknown"]]


@dataclass(frozen=True, kw_only=True)
class CleanUpResult:
    """None is what cannot be known.

    Attributes
    ----------
    clean_up : Quantity
        clean-up diameter: the smallest bore that leaves no wear and no score
    governed_by : Literal['largest_bore', 'one_sided_wear', 'score']
        what the clean-up diameter comes from
    symmetric : Quantity
        diameter that cleans up wear that is even all round
    one_sided : Quantity
        diameter that cleans up the wear as it lies, centred on the unworn part
    wear_side_share_used : float
        share of the wear on the side that wore most, as used
    score_diameter : Quantity | None
        diameter that cleans up the score that reaches farthest
    score_diameters : Readings | None
        diameter that cleans up each score, in order
    """

    clean_up: Quantity
    governed_by: Literal["largest_bore", "one_sided_wear", "score"]
    symmetric: Quantity
    one_sided: Quantity
    wear_side_share_used: float
    score_diameter: Quantity | None = None
    score_diameters: Readings | None = None


class CleanUp(Calculation[CleanUpResult]):
    """Clean-up diameter.

    Smallest diameter that cuts wear and scores out of a bore. A two-point gauge cannot see which
    side wore, and boring is centred on the unworn part: wear on one side costs twice. Corrosion
    pits and broken port edges count as scores.
    """

    NAME = "clean-up"
    RESULT = CleanUpResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "unworn": "quantity",
        "bore_largest": "quantity",
        "scores": [
            {"local": "quantity", "depth_radial": "quantity", "depth_from_deck": "quantity"}
        ],
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        unworn: QuantityLike,
        bore_largest: QuantityLike,
        wear_side_share: float | None = None,
        scores: Sequence[CleanUpScore] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CleanUpResult]:
        """Ask ``clean-up`` one question.

        Parameters
        ----------
        unworn : QuantityLike
            bore where it has not worn, at the bottom or above the ring travel: what the machinist
            centres on
        bore_largest : QuantityLike
            largest bore of the survey
        wear_side_share : float, optional
            share of the wear on the side that wore most: 0.5 even, or boring centred on the worn
            bore; 1.0 all on one side; ask how the machinist centres
        scores : Sequence[CleanUpScore], optional
            scores, pits and seizure marks to be cut out
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
            "unworn": unworn,
            "bore_largest": bore_largest,
            "wear_side_share": wear_side_share,
            "scores": scores,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
