"""The head on the order card: valve seats, guides, face and springs."""

from ringland_service.core.calculations.order_card._order_words import (
    Missing,
    Phrase,
    degrees,
    given_or_usual,
    mm,
    written,
)
from ringland_service.core.declare import flag, quantity, record, text
from ringland_service.core.quantities import order as ordered

VALVES = ("intake", "exhaust")


@record
class Heads:
    """What is ordered of the head."""

    seat_angle_deg: float | None = quantity(
        ordered.SEAT_ANGLE, "angle of the valve seats", default=None
    )
    intake_seat_width_low_mm: float | None = quantity(
        ordered.SEAT_WIDTH, "intake seat, least width", example=1.0, default=None
    )
    intake_seat_width_high_mm: float | None = quantity(
        ordered.SEAT_WIDTH, "intake seat, largest width", default=None
    )
    exhaust_seat_width_low_mm: float | None = quantity(
        ordered.SEAT_WIDTH, "exhaust seat, least width", example=1.3, default=None
    )
    exhaust_seat_width_high_mm: float | None = quantity(
        ordered.SEAT_WIDTH, "exhaust seat, largest width", example=1.5, default=None
    )
    contact: str | None = text(
        "where the seat is to touch the valve's face",
        example="in the middle of the valve's face",
        longest=120,
        default=None,
    )
    sink_max_mm: float | None = quantity(
        ordered.VALVE_SINK, "most sink of a valve below its new place", default=None
    )
    intake_guide_low_mm: float | None = quantity(
        ordered.GUIDE_FIT, "intake guide, least clearance", example=0.01, default=None
    )
    intake_guide_high_mm: float | None = quantity(
        ordered.GUIDE_FIT, "intake guide, largest clearance", example=0.037, default=None
    )
    exhaust_guide_low_mm: float | None = quantity(
        ordered.GUIDE_FIT, "exhaust guide, least clearance", example=0.03, default=None
    )
    exhaust_guide_high_mm: float | None = quantity(
        ordered.GUIDE_FIT, "exhaust guide, largest clearance", example=0.057, default=None
    )
    flatness_max_mm: float | None = quantity(
        ordered.FLATNESS, "how flat the head's face must be", default=None
    )
    skim_max_mm: float | None = quantity(
        ordered.SKIM, "most that may be taken off the head's face", default=None
    )
    valve_to_piston_checked: bool | None = flag(
        "valve-to-piston clearance is checked for this work", default=None
    )
    spring_installed_height_mm: float | None = quantity(
        ordered.SPRING_HEIGHT, "installed height of the valve springs", default=None
    )


def said(heads: Heads) -> tuple[Phrase, ...]:
    """Return what the card says of the head."""
    return (
        _seat_angle(heads),
        *(_pair(heads, f"{valve}_seat_width", f"{valve} seat width") for valve in VALVES),
        written(heads.contact, "contact ", "where the seat touches the valve's face"),
        _most(heads.sink_max_mm, "valve sink"),
        *(_pair(heads, f"{valve}_guide", f"{valve} guide clearance") for valve in VALVES),
        _most(heads.flatness_max_mm, "face flat to within", ""),
        _most(heads.skim_max_mm, "skim of the face"),
        _valve_to_piston(heads.valve_to_piston_checked),
        _spring(heads.spring_installed_height_mm),
    )


def _seat_angle(heads: Heads) -> Phrase:
    if heads.seat_angle_deg is None:
        return Missing("angle of the valve seats")
    return f"valve seats {degrees(heads.seat_angle_deg)}"


def _pair(heads: Heads, name: str, words: str) -> Phrase:
    low: float | None = getattr(heads, f"{name}_low_mm")
    high: float | None = getattr(heads, f"{name}_high_mm")
    found = given_or_usual(low, high)
    return Missing(words) if found is None else f"{words} {found.mm()}"


def _most(value: float | None, words: str, most: str = "at most ") -> Phrase:
    return Missing(words) if value is None else f"{words} {most}{mm(value)}"


def _valve_to_piston(checked: bool | None) -> Phrase:
    if checked is None:
        return Missing("valve-to-piston clearance checked, yes or no")
    return f"valve-to-piston clearance checked: {'YES' if checked else 'NO'}"


def _spring(height_mm: float | None) -> Phrase:
    if height_mm is None:
        return Missing("installed height of the springs")
    return f"springs installed at {mm(height_mm)}"
