"""C04: combined uncertainty from its parts, and the three-way verdict of a value."""

import math
from fractions import Fraction

from ringland_service.core.calculations.general._uncertainty_parts import Part, part_uncertainty
from ringland_service.core.calculations.general._unlike_kinds import (
    insist_on_possible,
    taken_notices,
)
from ringland_service.core.declare import (
    NO_EXAMPLE,
    Calculation,
    Check,
    Notice,
    Rule,
    any_quantity,
    choice,
    kinds,
    quantity,
    record,
    records,
    result,
    text,
)
from ringland_service.core.declare.fields import Quantified, UnitGiven
from ringland_service.core.declare.kinds import KINDS, Kind
from ringland_service.core.formulas.air import SEA_LEVEL_KPA
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.metrology.limits import STANDINGS, Limit
from ringland_service.core.metrology.propagation import Influence, Move
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import cited

SOURCE = cited("{jcgm_100_components}")


@record
class Inputs:
    """A value, its limits, and the parts of its uncertainty."""

    value: Quantified = any_quantity("the value judged", example=(0.0745, "mm"))
    low: Quantified | None = any_quantity(
        "lower limit; a limit takes no uncertainty", example=(0.03, "mm"), default=None, exact=True
    )
    high: Quantified | None = any_quantity(
        "upper limit; a limit takes no uncertainty", example=(0.08, "mm"), default=None, exact=True
    )
    standing: str = choice("standing of the limits", STANDINGS, example="maker", default="maker")
    source: str = text("source of the limits", example="workshop manual", longest=200, default="")
    parts: tuple[Part, ...] | None = records(
        Part,
        "parts of the uncertainty, instead of one stated with the value",
        most=30,
        default=None,
    )
    kind: str | None = choice(
        "kind of quantity, where the units leave it open (degC as a difference, say)",
        {name: name.replace("_", " ") for name in KINDS},
        example="length",
        default=None,
    )
    air_pressure_kpa_abs: float | None = quantity(
        quantities.AIR_PRESSURE,
        "air pressure on the spot, between a gauge value and an absolute limit, or the other way;"
        " 101.325 kPa where none is given",
        example=NO_EXAMPLE,
        default=None,
    )

    @property
    def unlike(self) -> bool:
        """Whether value and limits are gauge on one side and absolute on the other."""
        return self.value.kind is not self.limits_kind

    @property
    def limits_kind(self) -> Kind:
        """The kind of the limits; the value's where there are none."""
        return next((side.kind for side in (self.low, self.high) if side), self.value.kind)

    @property
    def judged(self) -> Quantified:
        """The value in the kind of its limits: gauge and absolute by the air pressure."""
        if not self.unlike:
            return self.value
        air = self.air_pressure_kpa_abs
        air = SEA_LEVEL_KPA if air is None else air
        to_absolute = self.limits_kind is kinds.PRESSURE_ABSOLUTE
        value = self.value.value + (air if to_absolute else -air)
        return _canonical(self.limits_kind, value, round(value, 1))

    @property
    def spread(self) -> Quantified:
        """The judged value as a difference: an uncertainty has no part in a scale's zero."""
        of = self.judged
        difference = of.kind is kinds.TEMPERATURE
        kind = kinds.TEMPERATURE_DIFFERENCE if difference else of.kind
        return _canonical(kind, of.value, of.given)


def _canonical(kind: Kind, value: float, given: float) -> Quantified:
    return Quantified(value, UnitGiven(kind.unit, kind, Fraction(1), 0.0), given)


@record
class Outputs:
    """The value with its uncertainty."""

    judged_value: float = result(
        "the value judged, gauge or absolute as its limits are",
        kind_of="judged",
        basis="the value as given; gauge = absolute − air pressure",
        source="as given",
    )
    combined_uncertainty: float | None = result(
        "combined standard uncertainty of the parts",
        kind_of="spread",
        basis="u = √Σu²; ± a: a/√3; step q: q/(2√3), of a difference √2·q/(2√3); s/√n; α·L·u(T)",
        source=SOURCE,
        default=None,
    )
    expanded_uncertainty: float | None = result(
        "expanded uncertainty of the parts, k = 2",
        kind_of="spread",
        formula="2 * combined_uncertainty",
        source=SOURCE,
        default=None,
    )
    part_uncertainties: tuple[float, ...] | None = result(
        "standard uncertainty of each part",
        kind_of="spread",
        basis="as the combined one, part by part",
        source=SOURCE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Combine the parts; the verdict itself is the engine's.

    Raises
    ------
    OutOfBounds
        A temperature below absolute zero, a pressure below vacuum.
    """
    for name in ("value", "low", "high"):
        insist_on_possible(name, getattr(inputs, name), inputs.air_pressure_kpa_abs)
    value = inputs.judged.value
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


def moves_with(inputs: Inputs) -> dict[str, tuple[tuple[str, ...], ...]]:
    """Return what the judged value moves with: the value, and an air pressure in use."""
    air = (("air_pressure_kpa_abs",),) if inputs.unlike else ()
    return {"judged_value": (("value", "value"), *air)}


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
            lambda i: i.low.kind is i.high.kind and beyond(i.low.value, i.high.value),
            "the lower limit is above the upper one",
            "low at most high",
        ),
        Rule(
            ("low", "high"),
            lambda i: i.low.kind is not i.high.kind,
            "one limit is taken as gauge, the other as absolute pressure",
            "both limits in kPa(g), bar(g) or psig, or both in kPa(a), bar(a) or psia",
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
    notices=(
        *taken_notices("value", "low", "high"),
        Notice(
            "standard_air_pressure",
            "air_pressure_kpa_abs",
            lambda i, _: i.unlike and i.air_pressure_kpa_abs is None,
            "value and limits are gauge on one side and absolute on the other: converted with the"
            " standard air pressure, 101.325 kPa; give air_pressure for the place",
        ),
        Notice(
            "air_pressure_used",
            "air_pressure_kpa_abs",
            lambda i, _: i.unlike and i.air_pressure_kpa_abs is not None,
            "value and limits are gauge on one side and absolute on the other: converted with the"
            " air pressure given",
        ),
        Notice(
            "air_pressure_unused",
            "air_pressure_kpa_abs",
            lambda i, _: not i.unlike and i.air_pressure_kpa_abs is not None,
            "value and limits are of one kind: the comparison does not use the air pressure",
        ),
    ),
    influences=influences,
    one_for_one=moves_with,
    columns=False,
)
