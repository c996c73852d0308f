"""What to read again when the cylinder is back, and against which figures. Part of the job card."""

from collections.abc import Iterator

from ringland_service.core.calculations.cylinder import ring_gap
from ringland_service.core.calculations.cylinder.ring_checks import SECOND, TOP, usual_range
from ringland_service.core.calculations.decision.repair_options import (
    DECISIONS,
    EXAMPLE,
    TAKEN_BY,
    Cut,
)
from ringland_service.core.declare import (
    Calculation,
    choice,
    field_like,
    kinds,
    limit_of,
    quantity,
    record,
    result,
)
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

FORM = "difference of two diameters, at the depths of the order"


@record
class Inputs:
    """The decision, the sizes ordered, and the maker's limits on what comes back."""

    way: str = choice("decision for the cylinder", DECISIONS, example=EXAMPLE)
    finish_low_mm: float | None = quantity(
        lengths.BORE, "lower limit of the finish bore", example=68.491, default=None
    )
    finish_high_mm: float | None = quantity(
        lengths.BORE, "upper limit of the finish bore", example=68.501, default=None
    )
    clearance_low_mm: float | None = quantity(
        sizes.WANTED_CLEARANCE, "least clearance wanted, diametral", example=0.03, default=None
    )
    clearance_high_mm: float | None = quantity(
        sizes.WANTED_CLEARANCE, "largest clearance wanted, diametral", example=0.04, default=None
    )
    gap_bore_mm: float | None = quantity(
        lengths.BORE, "bore that the new rings run in", example=68.496, default=None
    )
    top_factor: Number | None = field_like(ring_gap.Inputs, "top_factor")
    second_factor: Number | None = field_like(ring_gap.Inputs, "second_factor")
    out_of_round: Limit | None = limit_of("returned_out_of_round")
    taper: Limit | None = limit_of("returned_taper")
    top_gap: Limit | None = limit_of("top_ring_gap_new")
    second_gap: Limit | None = limit_of("second_ring_gap_new")


@record
class Value:
    """One value to read again."""

    what: str = result("what to read", basis="the order", source="the order")
    standing: str = result("where its limits come from", basis="as listed", source="as listed")
    low_mm: float | None = result(
        "not under this",
        kind=kinds.LENGTH,
        decimals=3,
        basis="the order",
        source="the order",
        default=None,
    )
    high_mm: float | None = result(
        "not over this",
        kind=kinds.LENGTH,
        decimals=3,
        basis="the order",
        source="the order",
        default=None,
    )


@record
class Outputs:
    """Values to read before the cylinder is fitted, and those that shops keep besides."""

    values: tuple[Value, ...] | None = result(
        "values of the order and of the maker",
        basis="finish bore and clearance of the order, limits of the request",
        source="the order, else the maker's limit as given",
        record=Value,
        default=None,
    )
    usual_values: tuple[Value, ...] | None = result(
        "values that shops keep where the maker gives none",
        basis="tables of common practice",
        source=COMMON,
        record=Value,
        common_practice=True,
        default=None,
    )


def _of(what: str, limit: Limit) -> Value:
    low, high = (None if side is None else float(side) for side in (limit.low, limit.high))
    return Value(what=what, standing=limit.standing, low_mm=low, high_mm=high)


def _ordered(i: Inputs) -> Iterator[Value]:
    option = TAKEN_BY[i.way]
    if option is None:
        return
    if i.finish_low_mm is not None and option.cuts is not Cut.NOTHING:
        yield Value(
            what="finish bore at 20 °C, both axes at each depth of the order",
            standing="computed",
            low_mm=i.finish_low_mm,
            high_mm=i.finish_high_mm,
        )
    if i.clearance_low_mm is not None and option.new_fit:
        yield Value(
            what="piston clearance in the finished bore, diametral",
            standing="maker",
            low_mm=i.clearance_low_mm,
            high_mm=i.clearance_high_mm,
        )


def _limits(i: Inputs) -> Iterator[tuple[str, Limit | None, Limit | None]]:
    """Yield what is read, the request's limit, and the one that shops keep."""
    option = TAKEN_BY[i.way]
    if option is None:
        return
    if option.cuts is not Cut.NOTHING:
        out_of_round, taper = LIMITS["returned.out_of_round"], LIMITS["returned.taper"]
        yield f"out-of-round, {FORM}", i.out_of_round, out_of_round.limit()
        yield f"taper, {FORM}", i.taper, taper.limit()
    if option.new_rings:
        top, second = _range(TOP, i.top_factor, i), _range(SECOND, i.second_factor, i)
        yield "gap of the new top ring, in its bore", i.top_gap, top
        yield "gap of the new second ring, in its bore", i.second_gap, second


def _range(row: str, factor: Number | None, i: Inputs) -> Limit | None:
    """Return the range that a new ring's gap is judged against."""
    if i.gap_bore_mm is None:
        return None
    if factor is None:
        return LIMITS[row].limit(i.gap_bore_mm)
    return usual_range(row, factor, i.gap_bore_mm)


def compute(inputs: Inputs) -> Outputs:
    """Return the limits that the work is proven against."""
    asked = list(_limits(inputs))
    maker = [_of(what, limit) for what, limit, _ in asked if limit is not None]
    usual = [_of(what, rule) for what, limit, rule in asked if limit is None and rule is not None]
    return Outputs(values=(*_ordered(inputs), *maker) or None, usual_values=tuple(usual) or None)


CALCULATION = Calculation(
    name="re-check",
    number="section D",
    stage="job",
    title="To be read again",
    summary="What to read when the cylinder is back and before it is fitted, with its limits.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    cautions=("measuring",),
)
