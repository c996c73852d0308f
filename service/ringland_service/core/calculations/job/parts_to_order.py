"""What must be ordered, by the decision for the cylinder. A part of the job card."""

from ringland_service.core.calculations.assembly.parts_of_work import ALWAYS_NEW, PARTS_OF
from ringland_service.core.calculations.decision import ways_cut as cut
from ringland_service.core.calculations.decision import ways_kept as kept
from ringland_service.core.calculations.decision.cylinder_ways import DECISIONS
from ringland_service.core.declare import Calculation, choice, count, record, result, text
from ringland_service.core.tables.sources import NO_SOURCE as TRADE

WORK_OF = {
    kept.HONE: "re_ring",
    kept.DEGLAZE: "re_ring",
    kept.SELECT: "plated_cylinder",
    cut.OVERBORE: "overbore",
    cut.SLEEVE: "overbore",
    cut.REPLATE: "plated_cylinder",
    cut.REPLACE: "overbore",
}
FROM_OUTSIDE = {
    cut.SLEEVE: "sleeve",
    cut.REPLATE: "plating, to standard or repair size",
    cut.REPLACE: "cylinder",
}
ONE_EACH = ("piston", "graded piston", "rings", "ring set", "pin", "sleeve", "cylinder")
WITH_PISTON = ("piston", "graded piston")
# Two clips hold a pin.
CLIPS = 2


@record
class Inputs:
    """The decision, the piston that it rests on, and the number of cylinders."""

    decision: str = choice("decision for the cylinder", DECISIONS, example="overbore")
    piston: str | None = text("piston decided on", example="+0.50 mm", longest=40, default=None)
    cylinders: int | None = count("number of cylinders", low=1, high=16, example=1, default=None)


@record
class Part:
    """One line of the list."""

    part: str = result("what to order", basis="the decision", source=TRADE)
    why: str = result("why", basis="the decision", source=TRADE)
    pieces: int | None = result(
        "how many, for all cylinders", basis="number of cylinders", source=TRADE, default=None
    )


@record
class Outputs:
    """The list, and what is new at every job."""

    parts: tuple[Part, ...] = result(
        "parts that the decision asks for", basis="the decision", source=TRADE, record=Part
    )
    always_new: tuple[str, ...] = result(
        "new at every job, whatever the decision", basis="list of the trade", source=TRADE
    )


def _pieces(part: str, cylinders: int | None) -> int | None:
    if cylinders is None:
        return None
    if part == "circlips":
        return CLIPS * cylinders
    return cylinders if part in ONE_EACH else None


def _part(part: str, inputs: Inputs) -> Part:
    mark = inputs.piston if part in WITH_PISTON else None
    words = f"{part} {mark}" if mark else part
    why = DECISIONS[inputs.decision]
    if part in ("rings", "ring set") and inputs.decision == cut.OVERBORE:
        words, why = f"{part} of the same oversize", "rings must match the oversize"
    return Part(part=words, why=why, pieces=_pieces(part, inputs.cylinders))


def compute(inputs: Inputs) -> Outputs:
    """Return the parts of the decision."""
    work = WORK_OF.get(inputs.decision)
    names = PARTS_OF[work] if work else ()
    outside = FROM_OUTSIDE.get(inputs.decision)
    names = (outside, *names) if outside else names
    return Outputs(parts=tuple(_part(name, inputs) for name in names), always_new=ALWAYS_NEW)


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
