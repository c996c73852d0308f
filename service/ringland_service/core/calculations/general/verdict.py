"""C04: combined uncertainty from its parts, and the three-way verdict of a value."""

import math

from ringland_service.core import lengths, quantities
from ringland_service.core.declare import (
    NO_EXAMPLE,
    Calculation,
    Check,
    Rule,
    any_quantity,
    choice,
    number,
    quantity,
    record,
    records,
    result,
    text,
)
from ringland_service.core.errors import Contradiction
from ringland_service.core.fields import Quantified
from ringland_service.core.kinds import Kind
from ringland_service.core.limits import STANDINGS, Limit
from ringland_service.core.uncertainty import Influence, Move
from ringland_service.core.verdicts import beyond

SOURCE = "JCGM 100:2008, 4.3 and 5.1 (from memory)"
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


@record
class Inputs:
    """A value, its limits, and the parts of its uncertainty."""

    value: Quantified = any_quantity("the value judged", example=(0.0745, "mm"))
    low: Quantified | None = any_quantity("lower limit", example=(0.03, "mm"), default=None)
    high: Quantified | None = any_quantity("upper limit", example=(0.08, "mm"), default=None)
    standing: str = choice("standing of the limits", STANDINGS, example="maker", default="maker")
    source: str = text("source of the limits", example="workshop manual", longest=200, default="")
    parts: tuple[Part, ...] | None = records(
        Part,
        "parts of the uncertainty, instead of one stated with the value",
        most=30,
        default=None,
    )


@record
class Outputs:
    """The value with its uncertainty."""

    judged_value: float = result(
        "the value judged",
        kind_of="value",
        basis="the value as given",
        source="as given",
    )
    combined_uncertainty: float | None = result(
        "combined standard uncertainty of the parts",
        kind_of="value",
        basis="u = √Σu²; ± a: a/√3; step q: q/(2√3), of a difference √2·q/(2√3); s/√n; α·L·u(T)",
        source=SOURCE,
        default=None,
    )
    expanded_uncertainty: float | None = result(
        "expanded uncertainty of the parts, k = 2",
        kind_of="value",
        formula="2 * combined_uncertainty",
        source=SOURCE,
        default=None,
    )
    part_uncertainties: tuple[float, ...] | None = result(
        "standard uncertainty of each part",
        kind_of="value",
        basis="as the combined one, part by part",
        source=SOURCE,
        default=None,
    )


TOGETHER = (
    {"pressure_gauge", "pressure_absolute", "pressure_difference"},
    {"temperature", "temperature_difference"},
)


def _size(stated: Quantified | None, kind: Kind) -> float:
    """Return a part's figure in the canonical unit of the value's kind; offsets do not apply."""
    if stated is None:
        return 0.0
    names = {stated.kind.name, kind.name}
    if len(names) > 1 and not any(names <= family for family in TOGETHER):
        raise Contradiction(
            "parts", "a part is not of the value's kind", "parts in units of the value's kind"
        )
    return stated.given * float(stated.unit.ratio)


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


def compute(inputs: Inputs) -> Outputs:
    """Combine the parts; the verdict itself is the engine's."""
    value = inputs.value.value
    if not inputs.parts:
        return Outputs(judged_value=value)
    each = tuple(part_uncertainty(part, inputs.value.kind) for part in inputs.parts)
    combined = math.hypot(*each)
    return Outputs(
        judged_value=value,
        combined_uncertainty=combined,
        expanded_uncertainty=2.0 * combined,
        part_uncertainties=each,
    )


def influences(inputs: Inputs) -> list[Influence]:
    """Return the parts as influences on the value."""
    if not inputs.parts:
        return []
    move = Move(("value", "value"), 1.0)
    return [
        Influence(part.words or f"part {i + 1}", part_uncertainty(part, inputs.value.kind), (move,))
        for i, part in enumerate(inputs.parts)
    ]


def _limit(inputs: Inputs, _: Outputs) -> Limit:
    low, high = (side.value if side else None for side in (inputs.low, inputs.high))
    return Limit(low, high, inputs.standing, inputs.source)


CALCULATION = Calculation(
    name="verdict",
    number="C04",
    stage="general",
    title="Combined uncertainty and three-way verdict",
    summary="A value against its limits: pass, fail, or too close to call, and how to settle it.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=((("low",), ("high",)),),
    rules=(
        Rule(
            ("low", "high"),
            lambda i: beyond(i.low.value, i.high.value),
            "the lower limit is above the upper one",
            "low at most high",
        ),
    ),
    checks=(
        Check(
            "value_within",
            "judged_value",
            "value within its limits",
            "more readings, a better instrument, one setting for both readings, parts at 20 °C",
            _limit,
        ),
    ),
    influences=influences,
    columns=False,
)
