"""C50: parts list and estimate of a job, against a replacement."""

import math
from decimal import ROUND_HALF_UP, Decimal

from ringland_service.core.calculations.assembly import parts_of_work as _work
from ringland_service.core.declare import (
    Calculation,
    Check,
    Notice,
    Rule,
    choice,
    count,
    number,
    record,
    records,
    result,
    text,
)
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE

SUMS = "arithmetic"
MOST_MONEY = 1e8
# Figures past these are noise of the floats, not money.
KEPT_FIGURES = 12


@record
class Line:
    """One line of a list."""

    label: str = text("what it is", example="piston kit +0.50", longest=120)
    quantity: float = number("how many", low=0.0, high=10000.0, example=1.0, default=1.0)
    price: float = number(
        "price of one, without markup and tax", low=0.0, high=MOST_MONEY, example=118.0
    )


def _line(label: str, quantity: float, price: float) -> Line:
    return Line(label=label, quantity=quantity, price=price)


@record
class Inputs:
    """Parts, machine shop, labour and rates; money in one currency, shares as fractions."""

    currency: str = text("currency of all prices and totals", example="EUR", longest=12)
    parts: tuple[Line, ...] | None = records(
        Line,
        "parts",
        most=100,
        example=(
            _line("piston kit +0.50", 1.0, 118.0),
            _line("top-end gasket set", 1.0, 42.5),
            _line("circlips, new", 2.0, 1.9),
            _line("stem seals", 2.0, 3.4),
        ),
        default=None,
    )
    machine_shop: tuple[Line, ...] | None = records(
        Line,
        "work of the machine shop",
        most=100,
        example=(_line("bore and hone", 1.0, 85.0), _line("seat cut", 2.0, 22.0)),
        default=None,
    )
    labour_hours: Number = number("hours of labour", low=0.0, high=1000.0, example=5.5, default=0.0)
    labour_rate: Number | None = number(
        "price of one hour, without tax", low=0.0, high=MOST_MONEY, example=72.0, default=None
    )
    consumables: Number = number(
        "consumables, without tax", low=0.0, high=MOST_MONEY, example=18.0, default=0.0
    )
    parts_markup: Number = number(
        "markup on parts: 0.15 stands for 15 %", low=0.0, high=5.0, example=0.15, default=0.0
    )
    machine_markup: Number = number(
        "markup on the machine shop: 0.1 stands for 10 %",
        low=0.0,
        high=5.0,
        example=0.1,
        default=0.0,
    )
    contingency: Number = number(
        "contingency on the subtotal: 0.1 stands for 10 %",
        low=0.0,
        high=1.0,
        example=0.1,
        default=0.0,
    )
    tax: Number = number("tax: 0.19 stands for 19 %", low=0.0, high=1.0, example=0.19)
    labour_tax: Number | None = number(
        "tax on labour, where it differs", low=0.0, high=1.0, example=0.19, default=None
    )
    replacement_cost: Number | None = number(
        "price of a replacement, with tax as the total has it",
        low=0.01,
        high=MOST_MONEY,
        example=1150.0,
        default=None,
    )
    money_decimals: int = count(
        "decimals of the currency, to which the final total is rounded",
        low=0,
        high=3,
        example=2,
        default=2,
    )
    of_way: str | None = choice(
        "kind of work, for the parts that usually go with it",
        _work.WORK,
        example=_work.OVERBORE,
        default=None,
    )


@record
class Outputs:
    """Lines and totals in the given currency; nothing is rounded but the amount to quote."""

    parts_lines: tuple[float, ...] | None = result(
        "each line of parts, without markup and tax",
        decimals=2,
        basis="quantity times price",
        source=SUMS,
        default=None,
    )
    machine_lines: tuple[float, ...] | None = result(
        "each line of the machine shop, without markup and tax",
        decimals=2,
        basis="quantity times price",
        source=SUMS,
        default=None,
    )
    parts_cost: Number = result(
        "parts, without markup and tax", decimals=2, basis="sum of the lines", source=SUMS
    )
    machine_cost: Number = result(
        "machine shop, without markup and tax", decimals=2, basis="sum of the lines", source=SUMS
    )
    labour_cost: Number = result(
        "labour, without tax", decimals=2, basis="hours times the rate", source=SUMS
    )
    subtotal: Number = result(
        "all with markups, without contingency and tax",
        decimals=2,
        formula="parts_cost * (1 + parts_markup) + machine_cost * (1 + machine_markup)"
        " + labour_cost + consumables",
        source=SUMS,
    )
    with_contingency: Number = result(
        "with contingency, without tax",
        decimals=2,
        formula="subtotal * (1 + contingency)",
        source=SUMS,
    )
    labour_tax_used: Number = result(
        "tax on labour that was used", decimals=4, basis="as given, else the tax", source=SUMS
    )
    total_with_tax: Number = result(
        "with contingency and tax, not rounded",
        decimals=2,
        formula="(1 + contingency) * ((subtotal - labour_cost) * (1 + tax)"
        " + labour_cost * (1 + labour_tax_used))",
        source=SUMS,
    )
    to_quote: Number = result(
        "amount to quote: the total rounded once, half up; lines and subtotals are not rounded",
        decimals=2,
        basis="total with tax, rounded half up to the decimals of the currency",
        source=SUMS,
    )
    repair_over_replacement: Number | None = result(
        "total with contingency and tax over the price of a replacement",
        decimals=3,
        formula="total_with_tax / replacement_cost",
        source=NO_SOURCE,
        default=None,
    )
    usual_parts: tuple[str, ...] | None = result(
        "parts that usually go with this work",
        basis="list of the trade",
        source=NO_SOURCE,
        default=None,
    )
    always_new: tuple[str, ...] = result("always new", basis="list of the trade", source=NO_SOURCE)


def compute(inputs: Inputs) -> Outputs:
    """Add up lines, markups, contingency and tax; rounding waits for the last amount."""
    parts, machine = _lines(inputs.parts), _lines(inputs.machine_shop)
    labour = inputs.labour_hours * (inputs.labour_rate or 0.0)
    marked_up = math.fsum(parts) * (1 + inputs.parts_markup)
    marked_up += math.fsum(machine) * (1 + inputs.machine_markup)
    other = marked_up + inputs.consumables
    labour_tax = inputs.tax if inputs.labour_tax is None else inputs.labour_tax
    more = 1 + inputs.contingency
    total = more * (other * (1 + inputs.tax) + labour * (1 + labour_tax))
    replacement = inputs.replacement_cost
    return Outputs(
        parts_lines=parts or None,
        machine_lines=machine or None,
        parts_cost=math.fsum(parts),
        machine_cost=math.fsum(machine),
        labour_cost=labour,
        subtotal=other + labour,
        with_contingency=(other + labour) * more,
        labour_tax_used=labour_tax,
        total_with_tax=total,
        to_quote=rounded(float(total), int(inputs.money_decimals)),
        repair_over_replacement=None if replacement is None else total / replacement,
        usual_parts=None if inputs.of_way is None else _work.PARTS_OF[inputs.of_way],
        always_new=_work.ALWAYS_NEW,
    )


def _lines(lines: tuple[Line, ...] | None) -> tuple[float, ...]:
    return tuple(line.quantity * line.price for line in lines or ())


def rounded(amount: float, decimals: int) -> float:
    """Return an amount of money rounded half up; 0.125 to two decimals is 0.13."""
    exact = Decimal(f"{amount:.{KEPT_FIGURES}g}")
    return float(exact.quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_UP))


def _most(_: Inputs, outputs: Outputs) -> Limit:
    return LIMITS["repair_over_replacement"].limit()


CALCULATION = Calculation(
    name="estimate",
    number="C50",
    stage="assembly",
    title="Parts list and estimate",
    summary="What a job costs with markups, contingency and tax, and whether it is worth its price "
    "against a replacement. Money is bare numbers in the currency named; only the amount to quote "
    "is rounded. A bore that does not clean up at the first size costs a second round.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    any_of=((("parts",), ("machine_shop",), ("labour_rate",)),),
    checks=(
        Check(
            "repair_over_replacement",
            "repair_over_replacement",
            "price of the job over a replacement",
            "talk to the customer before the work goes on",
            _most,
        ),
    ),
    rules=(
        Rule(
            ("labour_hours",),
            lambda i: i.labour_hours > 0 and i.labour_rate is None,
            "hours are given without the price of an hour",
            "give labour_rate",
        ),
    ),
    notices=(
        Notice(
            "talk_to_the_customer",
            "repair_over_replacement",
            lambda _, o: (
                o.repair_over_replacement is not None
                and bool(
                    o.repair_over_replacement > (LIMITS["repair_over_replacement"].high or 0.0)
                )
            ),
            "the job comes to more than 0.7 of a replacement (common practice, no source): talk to "
            "the customer first",
            common_practice=True,
        ),
        Notice(
            "no_contingency",
            "contingency",
            lambda i, _: not i.contingency,
            "no contingency: a bore that does not clean up, or a pulled thread, is not priced",
        ),
    ),
)
