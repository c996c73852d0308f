"""The order card to the machinist: everything that he must know, in words that cannot be misread.

Sizes stand on it as two limits with their unit, never as a mark, a middle with ±, or a bare inch.
"""

from ringland_service.core.calculations.machining import bore_order
from ringland_service.core.calculations.order_card import (
    _order_finish,
    _order_job,
    _order_return,
    _order_sizes,
)
from ringland_service.core.calculations.order_card._order_inputs import Inputs as Inputs
from ringland_service.core.calculations.order_card._order_rules import NOTICES, RULES
from ringland_service.core.calculations.order_card._order_sizes import sizes_of
from ringland_service.core.calculations.order_card._order_words import Point
from ringland_service.core.declare import Calculation, field_like, record, result
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE

COMPLETE = {"complete": "nothing is missing", "incomplete": "something must be written in first"}
TRADE = f"as given; {NO_SOURCE}, where the words say so"


@record
class CardLine:
    """One point of the card."""

    point: int = result("number of the point, 1 to 17", basis="in order", source=TRADE)
    heading: str = result("what the point is about", basis="in order", source=TRADE)
    stated: bool = result("nothing must be written in", basis="as given", source=TRADE)
    text: str = result("the point in words", basis="as given", source=TRADE)


@record
class Outputs:
    """The card, what it still lacks, and the sizes on it."""

    complete: str = result(
        "whether the card can go out",
        choices=COMPLETE,
        basis="complete where nothing is left to fill",
        source=TRADE,
    )
    finish_low_mm: Number | None = field_like(bore_order.Outputs, "finish_low_mm")
    finish_high_mm: Number | None = field_like(bore_order.Outputs, "finish_high_mm")
    bore_to_mm: Number | None = field_like(bore_order.Outputs, "bore_to_mm")
    zone_mm: Number | None = field_like(bore_order.Outputs, "zone_mm")
    still_to_fill: tuple[str, ...] | None = result(
        "what must be written in before the card goes out, by point",
        basis="fields that were not given",
        source=TRADE,
        default=None,
    )
    lines: tuple[CardLine, ...] = result(
        "the card, point by point",
        basis="figures of the request; finish limits are piston + clearance; a figure that shops "
        "use where none was given is marked (common practice), and none is used with defaults off",
        source=TRADE,
        record=CardLine,
    )


def compute(inputs: Inputs) -> Outputs:
    """Write the card."""
    points = _points(inputs)
    lines = tuple(_line(number, said) for number, said in enumerate(points, 1))
    lacking = tuple(
        f"{number} {said.heading}: {words}"
        for number, said in enumerate(points, 1)
        for words in said.missing
    )
    sizes = sizes_of(inputs)
    low, high = sizes.low_mm, sizes.high_mm
    return Outputs(
        lines=lines,
        still_to_fill=lacking or None,
        complete="incomplete" if lacking else "complete",
        finish_low_mm=low,
        finish_high_mm=high,
        bore_to_mm=sizes.bore_to_mm,
        zone_mm=None if low is None or high is None else high - low,
    )


def _points(i: Inputs) -> tuple[Point, ...]:
    sizes = sizes_of(i)
    return (
        _order_job.job(i),
        _order_job.kind_of_bore(i),
        _order_job.piston(i),
        _order_sizes.finish_bore(i, sizes),
        _order_sizes.clearance(i),
        _order_sizes.boring(i, sizes),
        _order_sizes.form(i),
        _order_sizes.centre(i),
        _order_finish.surface(i),
        _order_finish.torque_plate(i),
        _order_finish.ports(i),
        _order_finish.mouths(i),
        _order_return.wash(i),
        _order_return.hand_back(i),
        _order_return.stop_orders(i, sizes),
        _order_return.head(i),
        _order_job.price(i),
    )


def _line(number: int, said: Point) -> CardLine:
    return CardLine(point=number, heading=said.heading, stated=not said.missing, text=said.text)


CALCULATION = Calculation(
    name="order-card",
    number="the order",
    stage="decision",
    title="Order card to the machinist",
    summary="The seventeen points that the machinist must know, each in words with a unit on every "
    "number, and what is still to be written in. Finish bore as two limits, never ±; a plated, "
    "chromed or bare silicon bore is never ordered bored. One card for each cylinder.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    rules=RULES,
    notices=NOTICES,
    cautions=("measuring", "boring_and_honing", "sleeve_heating"),
)
