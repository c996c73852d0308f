"""What must be found, cleaned and looked at before anything goes back together.

A part of the job card. A new top end dies of the old one's illness where its cause stays.
"""

from ringland_service.core.calculations.decision import damage as seen
from ringland_service.core.calculations.decision.repair_options import DECISIONS, EXAMPLE, TAKEN_BY
from ringland_service.core.declare import Calculation, choice, record, result
from ringland_service.core.engines import condition
from ringland_service.core.tables.sources import NO_SOURCE as TRADE

ROOT_CAUSES: tuple[tuple[str, str | None], ...] = (
    ("air filter, its seal and boot: dust", None),
    ("mixture and fuel: lean, detonation, wrong octane, fuel in the oil", None),
    ("cooling: fins, fan, coolant, thermostat, head gasket", None),
    ("oil supply: level, grade, pump, jet", "four_stroke"),
    ("oil supply: premix ratio, oil pump, jet", "two_stroke"),
    ("reed and crank seals", "two_stroke"),
    ("lash, decompressor and timing", "four_stroke"),
    ("decompressor and ignition timing", "two_stroke"),
    ("how the owner uses it", None),
)
NOT_FOUND = "not found: say so on the sheet, since the new top end may die of it"
DEBRIS = (
    "flush the oil feed, cooler and tank, and change the filter",
    "flush or replace the bearings that the oil reached",
    "blow through every gallery both ways",
    "look into the crankcase, and on a two-stroke at the reeds",
)
HEAD = (
    "head: crack test, pressure test, finish and flatness of its face",
    "valves: leak test",
)
PORTS_HEAD = ("head: crack test, finish and flatness of its face",)
THREADS = (
    "studs and head threads tried by hand; a pulled thread gets an insert before the faces are "
    "cleaned for good",
    "when ratio, altitude or porting changed: octane, ignition timing and jetting before the "
    "first start",
    "crank turned by hand twice through all strokes: no hard stop",
)


@record
class Inputs:
    """The decision, the engine's cycle, and what the bore looked like."""

    way: str = choice("decision for the cylinder", DECISIONS, example=EXAMPLE)
    cycle: str | None = choice("cycle", condition.CYCLE, example="four_stroke", default=None)
    surface: str | None = choice(
        "look of the bore's surface", condition.SURFACE, example="scored", default=None
    )
    damage: str | None = choice(
        "worst damage found on the cylinder itself", seen.DAMAGE, example="none", default=None
    )


@record
class Outputs:
    """Lists in the order of work."""

    root_cause: tuple[str, ...] = result(
        "causes to look for, in this order", basis="list of the trade", source=TRADE
    )
    checks: tuple[str, ...] = result(
        "to be tried before the cylinder goes on", basis="list of the trade", source=TRADE
    )
    clean_out: tuple[str, ...] | None = result(
        "after a seizure, or where anything broke: what to clean out",
        basis="list of the trade; the bore is scored or smeared, or something broke",
        source=TRADE,
        default=None,
    )


def _of_cycle(cycle: str | None) -> tuple[str, ...]:
    causes = [cause for cause, of in ROOT_CAUSES if of is None or cycle in (None, of)]
    return (*causes, NOT_FOUND)


def _head(inputs: Inputs) -> tuple[str, ...]:
    option = TAKEN_BY[inputs.way]
    if option is not None and not option.mends:
        return ()
    return PORTS_HEAD if inputs.cycle == "two_stroke" else HEAD


def _debris(inputs: Inputs) -> bool:
    broken = inputs.damage not in (None, seen.NONE)
    return broken or inputs.surface in (condition.SCORED, condition.SMEARED)


def compute(inputs: Inputs) -> Outputs:
    """Return the lists that this engine needs."""
    return Outputs(
        root_cause=_of_cycle(inputs.cycle),
        checks=(*_head(inputs), *THREADS),
        clean_out=DEBRIS if _debris(inputs) else None,
    )


CALCULATION = Calculation(
    name="before-assembly",
    number="D.6",
    stage="job",
    title="Before it goes back together",
    summary="Root causes in order, what to clean out, what to try by hand.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    cautions=("records", "cleaning", "burnt_seals", "circlips"),
)
