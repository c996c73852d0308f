"""What a rod must be for its stroke, for the calculations on the crank."""

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number, Truth

ROD_RULES = (
    Rule(
        ("rod_mm", "stroke_mm"),
        lambda i: beyond(i.stroke_mm / 2 + 1.0, i.rod_mm),
        "the crank cannot turn over with a rod that short",
        "a rod longer than half the stroke; usual are 1.3 to 2.6 times the stroke",
    ),
)


def unusual(stroke_mm: Number, rod_mm: Number) -> Truth:
    """Return whether the rod is outside what is usual; a bound met exactly is met in any unit."""
    short: Truth = beyond(1.3 * stroke_mm, rod_mm)
    long: Truth = beyond(rod_mm, 2.6 * stroke_mm)
    return short | long


ROD_NOTICE = Notice(
    "rod_unusual",
    "rod_mm",
    lambda i, _: unusual(i.stroke_mm, i.rod_mm),
    "rod outside the usual 1.3 to 2.6 times the stroke: check both, centre to centre",
)
