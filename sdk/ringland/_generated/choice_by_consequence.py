"""Choice by consequence.

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
from ringland._types import QuantityLike


@dataclass(frozen=True, kw_only=True)
class ChoiceByConsequenceResult:
    """None is what cannot be known.

    Attributes
    ----------
    conformance_probability : float
        probability that the part is within its limit
    probability_beyond : float
        probability that the part is beyond its limit
    expected_cost_of_reuse : float
        cost of using the part again, on average over many such parts
    break_even_probability : float
        probability beyond the limit above which the repair is the cheaper
    cheaper : Literal['reuse', 'repair', 'either'] | None
        cheaper choice on average; absent where the part's failure hurts
    """

    conformance_probability: float
    probability_beyond: float
    expected_cost_of_reuse: float
    break_even_probability: float
    cheaper: Literal["reuse", "repair", "either"] | None = None


class ChoiceByConsequence(Calculation[ChoiceByConsequenceResult]):
    """Choice by consequence.

    A part too close to its limit to call: what using it again costs on average, what the repair
    costs, and from which probability on the repair is the cheaper. Costs are the user's own, bare
    numbers in the currency named; the customer is told both and decides. Parts whose failure hurts
    are not judged by cost.
    """

    NAME = "choice-by-consequence"
    RESULT = ChoiceByConsequenceResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "value": "quantity",
        "low": "quantity",
        "high": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        currency: str,
        cost_of_reuse: float,
        cost_of_repair: float,
        cost_of_comeback: float,
        known_within: float | None = None,
        value: QuantityLike | None = None,
        low: QuantityLike | None = None,
        high: QuantityLike | None = None,
        failure_hurts: bool | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[ChoiceByConsequenceResult]:
        """Ask ``choice-by-consequence`` one question.

        Needed: ``known_within`` or ``value`` or ``value``.

        Parameters
        ----------
        currency : str
            currency of all costs
        cost_of_reuse : float
            cost of using the part again, with tax
        cost_of_repair : float
            cost of the repair or of a new part, with tax
        cost_of_comeback : float
            cost of a comeback: taking it apart again, and what breaks with the part, with tax
        known_within : float, optional
            probability that the part is within its limit, as a verdict gives it
        value : QuantityLike, optional
            the value in uncertainty, with its uncertainty
        low : QuantityLike, optional
            lower limit
        high : QuantityLike, optional
            upper limit
        failure_hurts : bool, optional
            the part's failure can hurt someone: then no choice is named by cost (default no)
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
            "currency": currency,
            "cost_of_reuse": cost_of_reuse,
            "cost_of_repair": cost_of_repair,
            "cost_of_comeback": cost_of_comeback,
            "known_within": known_within,
            "value": value,
            "low": low,
            "high": high,
            "failure_hurts": failure_hurts,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
