"""What a rod must be for its stroke, for the calculations on the crank."""

from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import beyond

ROD_RULES = (
    Rule(
        ("rod_mm", "stroke_mm"),
        lambda i: beyond(i.stroke_mm / 2 + 1.0, i.rod_mm),
        "the crank cannot turn over with a rod that short",
        "a rod longer than half the stroke; usual are 1.3 to 2.6 times the stroke",
    ),
)


def unusual(i: Any, *_: Any) -> Any:
    """Return whether the rod is outside what is usual; a bound met exactly is met in any unit."""
    return beyond(1.3 * i.stroke_mm, i.rod_mm) | beyond(i.rod_mm, 2.6 * i.stroke_mm)


ROD_NOTICE = Notice(
    "rod_unusual",
    "rod_mm",
    unusual,
    "rod outside the usual 1.3 to 2.6 times the stroke: check both, centre to centre",
)
