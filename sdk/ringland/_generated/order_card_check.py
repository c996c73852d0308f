"""Check of a written order card.

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
class OrderCardCheckResultObjection:
    """None is what cannot be known.

    Attributes
    ----------
    severity : Literal['refuse', 'warn'] | None
        whether it refuses the card
    code : str | None
        stable name of the objection
    found : str | None
        the card's own words
    why : str | None
        what is wrong with them
    right : str | None
        what would be right
    """

    severity: Literal["refuse", "warn"] | None = None
    code: str | None = None
    found: str | None = None
    why: str | None = None
    right: str | None = None


@dataclass(frozen=True, kw_only=True)
class OrderCardCheckResult:
    """None is what cannot be known.

    Attributes
    ----------
    usable : Literal['may_go_out', 'must_not_go_out']
        whether the card may go out
    piston_read : Quantity | None
        measured piston, as read off the card
    finish_low_read : Quantity | None
        lower limit of the finish bore, as read
    finish_high_read : Quantity | None
        upper limit of the finish bore, as read
    clearance_low_read : Quantity | None
        least clearance, as read
    clearance_high_read : Quantity | None
        largest clearance, as read
    objections : tuple[OrderCardCheckResultObjection, ...]
        what is wrong with the card, refusals first
    """

    usable: Literal["may_go_out", "must_not_go_out"]
    piston_read: Quantity | None = None
    finish_low_read: Quantity | None = None
    finish_high_read: Quantity | None = None
    clearance_low_read: Quantity | None = None
    clearance_high_read: Quantity | None = None
    objections: tuple[OrderCardCheckResultObjection, ...]


class OrderCardCheck(Calculation[OrderCardCheckResult]):
    """Check of a written order card.

    Reads a card as it is written and says what must not go out so: a plated bore ordered bored, a
    kind of bore left out, a size without its unit, ± in place of limits, an oversize without the
    measured piston, a sleeve without interference and heat. What it does not object to is not
    thereby right: it reads words and numbers, not the cylinder.
    """

    NAME = "order-card-check"
    RESULT = OrderCardCheckResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "piston_size": "quantity",
        "clearance_low": "quantity",
        "clearance_high": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        written: str,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
        | None = None,
        piston_size: QuantityLike | None = None,
        clearance_low: QuantityLike | None = None,
        clearance_high: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[OrderCardCheckResult]:
        """Ask ``order-card-check`` one question.

        Parameters
        ----------
        written : str
            the card as it is written
        bore_kind : str, optional
            kind of bore, where it is known besides the card (iron: iron cylinder;
            iron_sleeve_in_aluminium: iron sleeve in an aluminium cylinder; plated_aluminium: plated
            aluminium; bare_silicon_aluminium: bare silicon aluminium, no plating; chromed:
            aluminium, bore hard-chromed; unknown: not known)
        piston_size : QuantityLike, optional
            the piston as measured, where it is known besides
        clearance_low : QuantityLike, optional
            least clearance wanted, diametral
        clearance_high : QuantityLike, optional
            largest clearance wanted, diametral
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
            "written": written,
            "bore_kind": bore_kind,
            "piston_size": piston_size,
            "clearance_low": clearance_low,
            "clearance_high": clearance_high,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
