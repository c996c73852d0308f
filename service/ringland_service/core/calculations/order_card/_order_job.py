"""Points 1 to 3 and 17 of the order card: the job, the kind of bore, the piston, the price."""

from ringland_service.core.calculations.order_card._order_inputs import Inputs
from ringland_service.core.calculations.order_card._order_words import (
    Missing,
    Phrase,
    Point,
    in_inches,
    mm,
    not_applicable,
    point,
    tidy,
    written,
)
from ringland_service.core.calculations.order_card.order_choices import (
    HEADS_ONLY,
    LIGHT_HONE,
    PLATED,
    REPLATE,
    SLEEVE,
)
from ringland_service.core.engines.materials import BORE_KINDS, UNKNOWN

KEEPS_ITS_SIZE = "the bore keeps its size"
ONLY_HEADS = "only the head is sent"
UNTOUCHED = "do not bore, do not hone with common stones"


def job(i: Inputs) -> Point:
    """Return point 1: job, date, cylinder, which end is up, count of parts."""
    about: tuple[Phrase, ...] = (
        written(i.job, "job ", "job number"),
        written(i.date, "date ", "date"),
    )
    if i.work != HEADS_ONLY:
        about += (
            Missing("number of the cylinder")
            if i.cylinder_number is None
            else f"cylinder {int(i.cylinder_number)}",
            written(i.end_up, "which end is up: ", "which end is up"),
            "exhaust side marked" if i.exhaust_side_marked else Missing("mark of the exhaust side"),
        )
    return point("job", *about, _parts(i.parts_sent))


def _parts(sent: int | None) -> Phrase:
    if sent is None:
        return Missing("count of parts sent")
    return f"{int(sent)} parts sent" if sent > 1 else "1 part sent"


def kind_of_bore(i: Inputs) -> Point:
    """Return point 2: the kind of bore in words, plated or not."""
    if i.bore_kind == UNKNOWN:
        return not_applicable("kind of bore", ONLY_HEADS)
    return point("kind of bore", _kind(i))


def _kind(i: Inputs) -> str:
    words = BORE_KINDS[i.bore_kind]
    if i.bore_kind in PLATED and i.work == SLEEVE:
        return f"PLATED as it comes ({words}); cut away for the sleeve: the new bore is iron"
    if i.bore_kind in PLATED:
        return f"PLATED: {UNTOUCHED} ({words})"
    if i.bore_kind == "bare_silicon_aluminium" and i.work == SLEEVE:
        return "bare silicon aluminium as it comes; cut away for the sleeve: the new bore is iron"
    if i.bore_kind == "bare_silicon_aluminium":
        return f"bare silicon aluminium: {UNTOUCHED}"
    return f"NOT plated: {words}" + ("; to be plated" if i.work == REPLATE else "")


def piston(i: Inputs) -> Point:
    """Return point 3: the piston sent, its mark, its measured size and how it was measured."""
    if i.work == HEADS_ONLY:
        return not_applicable("piston", ONLY_HEADS)
    if i.work == LIGHT_HONE and i.piston_size_mm is None:
        return not_applicable("piston", KEEPS_ITS_SIZE)
    if i.piston_size_mm is None:
        return point("piston", Missing("piston sent with the cylinder, its mark and measured size"))
    mark = tidy(i.piston_mark)
    name = f"piston {mark}, sent with the cylinder" if mark else "piston sent with the cylinder"
    size = mm(i.piston_size_mm) + in_inches(i.inches_too, i.piston_size_mm)
    return point(
        "piston",
        f"{name}, measured {size} at 20 °C, 90° to the pin",
        None if mark else Missing("number or mark of the piston"),
        Missing("height above the skirt bottom where it was measured")
        if i.measuring_height_mm is None
        else f"at {mm(i.measuring_height_mm, 1)} above the skirt bottom",
        written(i.piston_instrument, "instrument: ", "instrument that measured it"),
    )


def price(i: Inputs) -> Point:
    """Return point 17: price limit, date wanted, who may approve changes."""
    return point(
        "price and date",
        _price(i.price_limit, tidy(i.currency)),
        written(i.wanted, "wanted by ", "date wanted"),
        written(i.approver, "changes approved by ", "who may approve changes"),
    )


def _price(limit: float | None, currency: str) -> Phrase:
    if limit is None or not currency:
        return Missing("price limit and its currency")
    return f"price limit {limit:.2f} {currency}"
