"""What weighing a part too close to its limit by its consequences comes to.

The costs are the user's own. Nothing here is a limit, and nothing speaks of a part whose failure
hurts: there uncertainty counts as a fail.
"""

from dataclasses import dataclass
from typing import Protocol

from ringland_service.core.declare import REQUIRED, number
from ringland_service.core.metrology.conformity import at_most
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import cited

SOURCE = cited("{decision_theory}")
MOST_MONEY = 1e8
REUSE, REPAIR, EITHER = "reuse", "repair", "either"
CHEAPER = {
    REUSE: "using the part again is the cheaper in the long run",
    REPAIR: "the repair is the cheaper in the long run",
    EITHER: "both cost the same in the long run",
}
OWN_COSTS = (
    "the costs are the user's own figures: tell the customer both costs and how likely the part is "
    "within its limit; the customer decides"
)
NOT_BY_COST = (
    "parts whose failure hurts (rod bolts, the rim of a valve, anything cracked) are not judged by "
    "cost: in uncertainty they are not used again"
)


def cost(words: str, example: float, *, low: float = 0.0, default: object = REQUIRED) -> Number:
    """Declare a price, with tax, in the currency named."""
    found: Number = number(words, low=low, high=MOST_MONEY, example=example, default=default)
    return found


def expected_cost(reuse: Number, beyond: Number, comeback: Number) -> Number:
    """Return what using a part again costs on average.

    Parameters
    ----------
    reuse, comeback : float or array
        Cost of using the part again, and of a comeback when it fails, in one currency.
    beyond : float or array
        Probability that the part lies beyond its limit [1].

    References
    ----------
    Expected value over two outcomes: textbooks of decision theory.
    """
    return reuse + beyond * comeback


def break_even(reuse: Number, repair: Number, comeback: Number) -> Number:
    """Return the probability beyond the limit above which the repair is the cheaper [1].

    Below zero the repair is never the dearer; above one, never the cheaper. ``comeback`` is above
    zero. The expected cost of using the part again is set equal to the cost of the repair.
    """
    return (repair - reuse) / comeback


def cheaper(expected: float, repair: float) -> str:
    """Return the token of the cheaper choice; equal to nine digits counts as equal."""
    if at_most(expected, repair):
        return EITHER if at_most(repair, expected) else REUSE
    return REPAIR


class Costs(Protocol):
    """The three costs, and whether the part's failure hurts."""

    @property
    def cost_of_reuse(self) -> Number:
        """Cost of using the part again."""

    @property
    def cost_of_repair(self) -> Number:
        """Cost of the repair or of a new part."""

    @property
    def cost_of_comeback(self) -> Number:
        """Cost of a comeback when the part fails."""

    @property
    def failure_hurts(self) -> bool:
        """Whether its failure can hurt someone."""


@dataclass(frozen=True)
class Weighed:
    """One part weighed: how likely it is beyond its limit, what reuse costs, which is cheaper."""

    beyond: Number
    expected: Number
    cheaper: str | None


def weighed(costs: Costs, within: Number) -> Weighed:
    """Weigh a part that is within its limit with that probability.

    Where the part's failure hurts no choice is named.
    """
    lost = 1.0 - within
    expected = expected_cost(costs.cost_of_reuse, lost, costs.cost_of_comeback)
    by_cost = None if costs.failure_hurts else cheaper(float(expected), float(costs.cost_of_repair))
    return Weighed(lost, expected, by_cost)
