"""A card already written, read as the machinist would: what must not go out, what to say better."""

from ringland_service.core.calculations.machining import bore_order
from ringland_service.core.calculations.order_card._card_objections import (
    REFUSALS,
    REFUSE,
    WARN,
    Card,
    KnownBesides,
    Wrong,
    read,
)
from ringland_service.core.calculations.order_card._card_warnings import WARNINGS
from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    choice,
    field_like,
    kinds,
    quantity,
    record,
    result,
    text,
)
from ringland_service.core.engines import condition
from ringland_service.core.metrology.conformity import at_most
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE as TRADE

READ = "read off the card"
MAY, MUST_NOT = "may_go_out", "must_not_go_out"
USABLE = {
    MAY: "nothing on the card must be put right before it goes out",
    MUST_NOT: "an objection refuses the card",
}
SEVERITY = {REFUSE: "the card must not go out so", WARN: "the card should say it better"}
EXAMPLE = (
    "Cyl 1, iron sleeve, NOT plated. Rebore to second oversize, finish 68.496 ± 0.005 mm, "
    "piston clearance 0.030 to 0.040 mm. Hone at 45°."
)


@record
class Inputs:
    """The card, and what is known of the job besides."""

    written: str = text("the card as it is written", example=EXAMPLE, longest=4000)
    bore_kind: str | None = choice(
        "kind of bore, where it is known besides the card",
        condition.BORE_KIND,
        example="iron_sleeve_in_aluminium",
        default=None,
    )
    piston_size_mm: Number | None = field_like(
        bore_order.Inputs,
        "piston_size_mm",
        description="the piston as measured, where it is known besides",
    )
    clearance_low_mm: Number | None = quantity(
        sizes.WANTED_CLEARANCE, "least clearance wanted, diametral", example=0.03, default=None
    )
    clearance_high_mm: Number | None = quantity(
        sizes.WANTED_CLEARANCE, "largest clearance wanted, diametral", example=0.04, default=None
    )


@record
class Objection:
    """One thing that is wrong with the card."""

    severity: str = result(
        "whether it refuses the card", choices=SEVERITY, basis="list of the trade", source=TRADE
    )
    code: str = result("stable name of the objection", basis="list of the trade", source=TRADE)
    found: str = result("the card's own words", basis=READ, source="the card")
    why: str = result("what is wrong with them", basis="list of the trade", source=TRADE)
    right: str = result("what would be right", basis="list of the trade", source=TRADE)


def _read(words: str) -> Number | None:
    found: Number | None = result(
        words, kind=kinds.LENGTH, decimals=3, basis=READ, source="the card", default=None
    )
    return found


@record
class Outputs:
    """Whether the card may go out, what was read on it, and the objections."""

    usable: str = result(
        "whether the card may go out",
        choices=USABLE,
        basis="may go out where no objection refuses it",
        source=TRADE,
    )
    piston_read_mm: Number | None = _read("measured piston, as read off the card")
    finish_low_read_mm: Number | None = _read("lower limit of the finish bore, as read")
    finish_high_read_mm: Number | None = _read("upper limit of the finish bore, as read")
    clearance_low_read_mm: Number | None = _read("least clearance, as read")
    clearance_high_read_mm: Number | None = _read("largest clearance, as read")
    objections: tuple[Objection, ...] = result(
        "what is wrong with the card, refusals first",
        basis="words and numbers of the card against the list of the trade",
        source=TRADE,
        record=Objection,
    )


def compute(inputs: Inputs) -> Outputs:
    """Read the card and object."""
    card = read(inputs.written, _known(inputs))
    found = [wrong for look in (*REFUSALS, *WARNINGS) if (wrong := look(card)) is not None]
    finish = card.sizes.finish_mm or (None, None)
    clearance = card.sizes.clearance_mm or (None, None)
    return Outputs(
        usable=MUST_NOT if any(wrong.severity == REFUSE for wrong in found) else MAY,
        piston_read_mm=card.sizes.piston_size_mm,
        finish_low_read_mm=finish[0],
        finish_high_read_mm=finish[1],
        clearance_low_read_mm=clearance[0],
        clearance_high_read_mm=clearance[1],
        objections=tuple(map(_objection, found)),
    )


def _known(i: Inputs) -> KnownBesides:
    low, high = i.clearance_low_mm, i.clearance_high_mm
    both = None if low is None or high is None else (float(low), float(high))
    return KnownBesides(
        i.bore_kind, None if i.piston_size_mm is None else float(i.piston_size_mm), both
    )


def _objection(wrong: Wrong) -> Objection:
    return Objection(
        severity=wrong.severity,
        code=wrong.code,
        found=wrong.found,
        why=wrong.why,
        right=wrong.right,
    )


def _orders_nothing(i: Inputs, _: Outputs) -> bool:
    card: Card = read(i.written, _known(i))
    return not (card.boring or card.honing or card.sleeving)


CALCULATION = Calculation(
    name="order-card-check",
    number="the order, read back",
    stage="decision",
    title="Check of a written order card",
    summary="Reads a card as it is written and says what must not go out so: a plated bore ordered "
    "bored, a kind of bore left out, a size without its unit, ± in place of limits, an oversize "
    "without the measured piston, a sleeve without interference and heat. What it does not object "
    "to is not thereby right: it reads words and numbers, not the cylinder.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    rules=(
        Rule(
            ("written",),
            lambda i: not i.written.strip(),
            "nothing is written on the card",
            "the words of the card",
        ),
        Rule(
            ("clearance_low_mm", "clearance_high_mm"),
            lambda i: at_most(i.clearance_high_mm, i.clearance_low_mm),
            "the least clearance is not under the largest",
            "clearance_low under clearance_high",
        ),
    ),
    notices=(
        Notice(
            "no_work_read",
            "written",
            _orders_nothing,
            "no boring, honing or sleeve could be read on the card: what cannot be read is not "
            "judged",
        ),
    ),
    cautions=("boring_and_honing",),
)
