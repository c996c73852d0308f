"""Parts of an uncertainty as the bench states them, each brought to a standard uncertainty."""

import math

from ringland_service.core.declare import (
    NO_EXAMPLE,
    any_quantity,
    choice,
    number,
    quantity,
    record,
    text,
)
from ringland_service.core.declare.fields import Quantified
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.errors import Contradiction
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths

ROOT3 = math.sqrt(3.0)


@record
class Part:
    """One part of the uncertainty: one of its members, as the bench states it, without doubt."""

    words: str = text("what this part is", example="bore gauge", longest=80, default="")
    max_error: Quantified | None = any_quantity(
        "maximum error of the instrument, ± (rectangular)",
        example=(0.005, "mm"),
        default=None,
        exact=True,
    )
    resolution: Quantified | None = any_quantity(
        "step of the instrument's scale", example=None, default=None, exact=True
    )
    standard_deviation: Quantified | None = any_quantity(
        "standard deviation of one reading, the shop's own over many",
        example=None,
        default=None,
        exact=True,
    )
    readings: float = number(
        "readings averaged, for a standard deviation", low=1, high=1000, example=3, default=1.0
    )
    of_a_difference: str = choice(
        "whether a resolution counts twice, as in a difference of two readings",
        {"yes": "a difference of two readings", "no": "one reading"},
        example="no",
        default="no",
    )
    temperature_doubt_k: float | None = quantity(
        quantities.TEMPERATURE_DOUBT,
        "standard uncertainty of the part's temperature",
        example=NO_EXAMPLE,
        default=None,
        exact=True,
    )
    alpha_per_k: float | None = quantity(
        quantities.ALPHA,
        "expansion of the part, with its temperature doubt",
        example=NO_EXAMPLE,
        default=None,
        exact=True,
    )
    size_mm: float | None = quantity(
        lengths.LENGTH,
        "measured size of the part, with its temperature doubt",
        example=NO_EXAMPLE,
        default=None,
        exact=True,
    )


TOGETHER = (
    {"pressure_gauge", "pressure_absolute", "pressure_difference"},
    {"temperature", "temperature_difference"},
)


def _size(stated: Quantified | None, kind: Kind) -> float:
    """Return a part's figure in the canonical unit of the value's kind; offsets do not apply."""
    if stated is None:
        return 0.0
    # A symbol of several kinds (mL, psi) is a unit of the value's wherever that kind knows it.
    ratio = stated.unit.ratios.get(kind.name)
    if ratio is None:
        names = {stated.kind.name, kind.name}
        if len(names) > 1 and not any(names <= family for family in TOGETHER):
            raise Contradiction(
                "parts", "a part is not of the value's kind", "parts in units of the value's kind"
            )
        ratio = stated.unit.ratio
    return stated.given * float(ratio)


def part_uncertainty(part: Part, kind: Kind) -> float:
    """Return the standard uncertainty of one part, in the canonical unit of ``kind``.

    Raises
    ------
    Contradiction
        Where the part states nothing, or more than one thing, or is of another kind.
    """
    times = math.sqrt(2.0) if part.of_a_difference == "yes" else 1.0
    stated = (
        _size(part.max_error, kind) / ROOT3,
        times * _size(part.resolution, kind) / (2.0 * ROOT3),
        _size(part.standard_deviation, kind) / math.sqrt(part.readings),
        _warmth(part),
    )
    found = [u for u in stated if u > 0.0]
    if len(found) != 1:
        raise Contradiction(
            "parts",
            "each part states one of max_error, resolution, standard_deviation, or"
            " temperature_doubt with alpha and size",
            "one member a part, above zero",
        )
    return found[0]


def _warmth(part: Part) -> float:
    """Return α·L·u(T), 0 where one of them is missing."""
    return (part.alpha_per_k or 0.0) * (part.size_mm or 0.0) * (part.temperature_doubt_k or 0.0)
