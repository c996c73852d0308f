"""The order card as a page: what the machinist cuts, to which limits, and when to stop and call."""

from dataclasses import dataclass
from typing import cast

from ringland_service.api.json_types import AnswerJson
from ringland_service.api.shapes.figures import quantity, told_value
from ringland_service.api.writing import text
from ringland_service.api.writing.pages import blocks
from ringland_service.api.writing.pages.templates import filled
from ringland_service.api.writing.printed import printed
from ringland_service.core.declare import Calculation, Operation

# What stands at the head of the card or in its lines, and not again among the figures.
IN_PLACE = ("lines", "still_to_fill", "complete", "finish_low", "finish_high", "bore_to")


@dataclass(frozen=True)
class Line:
    """One point of the card."""

    point: int
    heading: str
    text: str
    stated: bool


@dataclass(frozen=True)
class Size:
    """One size to cut, to be read from across the bench."""

    name: str
    value: str
    label: str


@dataclass(frozen=True)
class Order:
    """The card itself: the sizes, the lines, and what is still to be filled in."""

    sizes: tuple[Size, ...]
    lines: tuple[Line, ...]
    still_to_fill: tuple[str, ...]

    def __bool__(self) -> bool:
        """Return whether there is anything on it."""
        return bool(self.sizes or self.lines)


def order(result: AnswerJson) -> Order:
    """Return the order that a result holds, whatever else it carries."""
    lines = [
        Line(line["point"], line["heading"], line["text"], line["stated"])
        for line in result.get("lines", ())
    ]
    return Order(_sizes(result), tuple(lines), tuple(result.get("still_to_fill", ())))


def _sizes(result: AnswerJson) -> tuple[Size, ...]:
    """Return the sizes to cut: the finish bore as two limits, and what to bore to."""
    low, high, bore_to = (result.get(name) for name in ("finish_low", "finish_high", "bore_to"))
    rows = []
    if low is not None and high is not None:
        limits = f"{_size(low)} to {_size(high)}"
        rows.append(Size("finish bore", limits, "both limits as diameters at 20 °C"))
    if bore_to is not None:
        rows.append(Size("bore to", _size(bore_to), "before honing, as a diameter"))
    return tuple(rows)


def _size(value: AnswerJson) -> str:
    """Return a size to work to: never with ±, which could be read as a tolerance."""
    return quantity({**told_value(value), "uncertainty": None, "interval": None})


def page(calculation: Operation, found: AnswerJson) -> str:
    """Return the answer of ``order-card`` as a page."""
    of = cast(Calculation, calculation)
    found = printed(of, found)
    return filled(
        "order_card.html",
        order=order(found["result"]),
        figures=blocks.results(of, found["result"], IN_PLACE),
        verdicts=blocks.verdicts(found["verdicts"]),
        warnings=text.warning_texts(found["warnings"]),
        cautions=found["cautions"],
    )
