"""What must be ordered, by the decision for the cylinder. A part of the job card."""

from ringland_service.core.calculations.assembly.parts_of_work import ALWAYS_NEW, ONE_EACH, PARTS_OF
from ringland_service.core.calculations.decision.repair_options import (
    DECISIONS,
    EXAMPLE,
    OUTSIDE_ONE_EACH,
    TAKEN_BY,
    Cut,
    RepairOption,
)
from ringland_service.core.declare import Calculation, choice, count, record, result, text
from ringland_service.core.tables.sources import NO_SOURCE as TRADE

WITH_PISTON = ("piston", "graded piston")
RINGS = ("rings", "ring set")
# Two clips hold a pin.
CLIPS = 2


@record
class Inputs:
    """The decision, the piston that it rests on, and the number of cylinders."""

    way: str = choice("decision for the cylinder", DECISIONS, example=EXAMPLE)
    piston: str | None = text("piston decided on", example="+0.50 mm", longest=40, default=None)
    cylinder_count: int | None = count(
        "number of cylinders", low=1, high=16, example=1, default=None
    )


@record
class PartToOrder:
    """One line of the list."""

    part: str = result("what to order", basis="the decision", source=TRADE)
    why: str = result("why", basis="the decision", source=TRADE)
    pieces: int | None = result(
        "how many, for all cylinders", basis="number of cylinders", source=TRADE, default=None
    )


@record
class Outputs:
    """The list, and what is new at every job."""

    parts: tuple[PartToOrder, ...] = result(
        "parts that the decision asks for", basis="the decision", source=TRADE, record=PartToOrder
    )
    always_new: tuple[str, ...] = result(
        "new at every job, whatever the decision", basis="list of the trade", source=TRADE
    )


def _pieces(part: str, cylinders: int | None) -> int | None:
    if cylinders is None:
        return None
    if part == "circlips":
        return CLIPS * cylinders
    return cylinders if part in (*ONE_EACH, *OUTSIDE_ONE_EACH) else None


def _part(part: str, option: RepairOption, inputs: Inputs) -> PartToOrder:
    mark = inputs.piston if part in WITH_PISTON else None
    words = f"{part} {mark}" if mark else part
    why = option.label
    if part in RINGS and option.cuts is Cut.OVERSIZE:
        words, why = f"{part} of the same oversize", "rings must match the oversize"
    return PartToOrder(part=words, why=why, pieces=_pieces(part, inputs.cylinder_count))


def _names(option: RepairOption) -> tuple[str, ...]:
    """Return what an option needs: from outside first, then the parts that usually go with it."""
    outside = () if option.outside is None else (option.outside.part,)
    return outside + (() if option.usual_parts is None else PARTS_OF[option.usual_parts])


def compute(inputs: Inputs) -> Outputs:
    """Return the parts of the decision; none is ordered before an option is taken."""
    option = TAKEN_BY[inputs.way]
    parts = [] if option is None else [_part(name, option, inputs) for name in _names(option)]
    return Outputs(parts=tuple(parts), always_new=ALWAYS_NEW)


CALCULATION = Calculation(
    name="parts-to-order",
    number="C50",
    stage="job",
    title="Parts to order",
    summary="Parts that the decision for the cylinder asks for. All cylinders of one engine go to "
    "one oversize unless the maker allows others.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
)
