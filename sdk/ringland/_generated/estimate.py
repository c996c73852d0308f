"""Parts list and estimate.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Units


class EstimatePart(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    label : str
        what it is
    quantity : float
        how many (default 1.0)
    price : float
        price of one, without markup and tax
    """

    label: str
    quantity: NotRequired[float]
    price: float


class EstimateMachineShopItem(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    label : str
        what it is
    quantity : float
        how many (default 1.0)
    price : float
        price of one, without markup and tax
    """

    label: str
    quantity: NotRequired[float]
    price: float


class EstimateLimits(TypedDict, total=False):
    """Limits of your own, by check: estimate.

    Attributes
    ----------
    repair_over_replacement : RatioLimitAsked
        price of the job over a replacement
    """

    repair_over_replacement: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class EstimateResult:
    """None is what cannot be known.

    Attributes
    ----------
    parts_lines : tuple[str | float, ...] | None
        each line of parts, without markup and tax
    machine_lines : tuple[str | float, ...] | None
        each line of the machine shop, without markup and tax
    parts_cost : float
        parts, without markup and tax
    machine_cost : float
        machine shop, without markup and tax
    labour_cost : float
        labour, without tax
    subtotal : float
        all with markups, without contingency and tax
    with_contingency : float
        with contingency, without tax
    labour_tax_used : float
        tax on labour that was used
    total_with_tax : float
        with contingency and tax, not rounded
    to_quote : float
        amount to quote: the total rounded once, half up; lines and subtotals are not rounded
    repair_over_replacement : float | None
        total with contingency and tax over the price of a replacement
    usual_parts : tuple[str | float, ...] | None
        parts that usually go with this work
    always_new : tuple[str | float, ...]
        always new
    """

    parts_lines: tuple[str | float, ...] | None = None
    machine_lines: tuple[str | float, ...] | None = None
    parts_cost: float
    machine_cost: float
    labour_cost: float
    subtotal: float
    with_contingency: float
    labour_tax_used: float
    total_with_tax: float
    to_quote: float
    repair_over_replacement: float | None = None
    usual_parts: tuple[str | float, ...] | None = None
    always_new: tuple[str | float, ...]


class Estimate(Calculation[EstimateResult]):
    """Parts list and estimate.

    What a job costs with markups, contingency and tax, and whether it is worth its price against a
    replacement. Money is bare numbers in the currency named; only the amount to quote is rounded. A
    bore that does not clean up at the first size costs a second round.
    """

    NAME = "estimate"
    RESULT = EstimateResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {"measuring": MEASURING}

    def __call__(
        self,
        *,
        currency: str,
        tax: float,
        parts: Sequence[EstimatePart] | None = None,
        machine_shop: Sequence[EstimateMachineShopItem] | None = None,
        labour_hours: float | None = None,
        labour_rate: float | None = None,
        consumables: float | None = None,
        parts_markup: float | None = None,
        machine_markup: float | None = None,
        contingency: float | None = None,
        labour_tax: float | None = None,
        replacement_cost: float | None = None,
        money_decimals: int | None = None,
        of_way: Literal["re_ring", "overbore", "plated_cylinder", "head"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: EstimateLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[EstimateResult]:
        """Ask ``estimate`` one question.

        Needed: ``parts`` or ``machine_shop`` or ``labour_rate``.

        Parameters
        ----------
        currency : str
            currency of all prices and totals
        tax : float
            tax: 0.19 stands for 19 %
        parts : Sequence[EstimatePart], optional
            parts
        machine_shop : Sequence[EstimateMachineShopItem], optional
            work of the machine shop
        labour_hours : float, optional
            hours of labour (default 0.0)
        labour_rate : float, optional
            price of one hour, without tax
        consumables : float, optional
            consumables, without tax (default 0.0)
        parts_markup : float, optional
            markup on parts: 0.15 stands for 15 % (default 0.0)
        machine_markup : float, optional
            markup on the machine shop: 0.1 stands for 10 % (default 0.0)
        contingency : float, optional
            contingency on the subtotal: 0.1 stands for 10 % (default 0.0)
        labour_tax : float, optional
            tax on labour, where it differs
        replacement_cost : float, optional
            price of a replacement, with tax as the total has it
        money_decimals : int, optional
            decimals of the currency, to which the final total is rounded (default 2)
        of_way : str, optional
            kind of work, for the parts that usually go with it (re_ring: new rings in the bore as
            it is; overbore: bored to an oversize piston; plated_cylinder: plated cylinder with a
            piston of its grade; head: work on valves and head)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : EstimateLimits, optional
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
            "currency": currency,
            "tax": tax,
            "parts": parts,
            "machine_shop": machine_shop,
            "labour_hours": labour_hours,
            "labour_rate": labour_rate,
            "consumables": consumables,
            "parts_markup": parts_markup,
            "machine_markup": machine_markup,
            "contingency": contingency,
            "labour_tax": labour_tax,
            "replacement_cost": replacement_cost,
            "money_decimals": money_decimals,
            "of_way": of_way,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
