"""C46: order of fasteners, tightened from the centre, relieved from the outside."""

import itertools
import math

from ringland_service.core.calculations.assembly import _criss_cross
from ringland_service.core.declare import (
    Calculation,
    Figure,
    Notice,
    Rule,
    count,
    number,
    quantity,
    record,
    records,
    result,
    text,
    usual,
)
from ringland_service.core.declare.usual import ALL
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import assembly as quantities
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

# Two fasteners closer than this are one, written down twice.
LEAST_APART_MM = 3.0
QUARTER_TURN_DEG = 90.0


@record
class Fastener:
    """One fastener and where it stands."""

    id: str = text("number or name of the fastener", example="1", longest=20)
    x_mm: float = quantity(quantities.FASTENER_PLACE, "place along x", example=0.0)
    y_mm: float = quantity(quantities.FASTENER_PLACE, "place along y", example=0.0)
    group: int = count(
        "group by size of thread: 1 the largest, tightened first",
        low=1,
        high=9,
        example=1,
        default=1,
    )


def _fastener(id_: str, x_mm: float, y_mm: float) -> Fastener:
    return Fastener(id=id_, x_mm=x_mm, y_mm=y_mm, group=1)


@record
class Inputs:
    """Fasteners of one face, seen from above, x to the right and y up."""

    fasteners: tuple[Fastener, ...] = records(
        Fastener,
        "fasteners of one face, seen from above; x to the right, y up, any zero",
        least=2,
        most=40,
        example=(
            _fastener("1", 0.0, 0.0),
            _fastener("2", 80.0, 0.0),
            _fastener("3", 80.0, 84.0),
            _fastener("4", 0.0, 84.0),
        ),
    )
    tighten_stages: int = count(
        "number of torque stages", low=1, high=8, example=3, default=usual(3)
    )
    relief_steps: int = count(
        "number of rounds in which the fasteners are relieved",
        low=1,
        high=12,
        example=3,
        default=usual(3),
    )
    relief_step_turn_deg: Number = quantity(
        quantities.TURN, "turn of each fastener in one round of relief", default=usual(90.0)
    )
    ring_share: float = number(
        "share of the largest distance from the centroid within which fasteners make one ring",
        low=0.0,
        high=0.5,
        example=0.1,
        default=usual(_criss_cross.RING_SHARE),
    )


@record
class Outputs:
    """The orders, and the rounds in words."""

    tighten_order: tuple[str, ...] = result(
        "order of tightening",
        basis="group 1 first; in a group rings from its centroid outward (ring_share of the "
        "largest distance makes one ring); in a ring the smallest counter-clockwise angle from "
        "+x, then the one nearest opposite, then the next left",
        source=COMMON,
    )
    relieve_order: tuple[str, ...] = result(
        "order of relief", basis="the order of tightening in exact reverse", source=COMMON
    )
    tighten_list: tuple[str, ...] = result(
        "rounds of tightening", basis="the whole order in each torque stage", source=COMMON
    )
    relieve_list: tuple[str, ...] = result(
        "rounds of relief", basis="the whole order in each round, one turn each", source=COMMON
    )


def compute(inputs: Inputs) -> Outputs:
    """Order each group by itself, the group of the largest threads first."""
    tighten: list[str] = []
    for group in sorted({one.group for one in inputs.fasteners}):
        places = {f.id: (f.x_mm, f.y_mm) for f in inputs.fasteners if f.group == group}
        tighten += _criss_cross.order(places, inputs.ring_share)
    relieve = tighten[::-1]
    return Outputs(
        tighten_order=tuple(tighten),
        relieve_order=tuple(relieve),
        tighten_list=_tightened(inputs, tighten),
        relieve_list=_relieved(inputs, relieve),
    )


def _tightened(inputs: Inputs, order: list[str]) -> tuple[str, ...]:
    stages = int(inputs.tighten_stages)
    return tuple(f"stage {n} of {stages}: {', '.join(order)}" for n in range(1, stages + 1))


def _relieved(inputs: Inputs, order: list[str]) -> tuple[str, ...]:
    rounds, turn = int(inputs.relief_steps), inputs.relief_step_turn_deg
    each = "a quarter turn" if turn == QUARTER_TURN_DEG else f"{turn:g}°"
    lines = [
        f"round {n} of {rounds}, {each} each: {', '.join(order)}" for n in range(1, rounds + 1)
    ]
    return (*lines, "then out by hand, in the same order")


def _named_twice(inputs: Inputs) -> bool:
    return len({one.id.strip() for one in inputs.fasteners}) < len(inputs.fasteners)


def _one_spot(inputs: Inputs) -> bool:
    places = [(one.x_mm, one.y_mm) for one in inputs.fasteners]
    return any(beyond(LEAST_APART_MM, math.dist(*two)) for two in itertools.combinations(places, 2))


CALCULATION = Calculation(
    name="fastener-order",
    number="C46",
    stage="assembly",
    title="Order of fasteners",
    summary="Order in which the fasteners of a head or cover are tightened, from the centre "
    "criss-cross, and relieved in reverse by part turns. The maker's drawing always wins. Cam caps "
    "have an order of their own, and their springs push: relieve them evenly.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    figures=(
        Figure("ring_share", ALL),
        Figure("tighten_stages", ("tighten_list",)),
        Figure("relief_steps", ("relieve_list",)),
        Figure("relief_step_turn_deg", ("relieve_list",)),
    ),
    columns=False,
    rules=(
        Rule(
            ("fasteners",),
            _named_twice,
            "two fasteners have one name",
            "a number or name of its own for each fastener",
        ),
        Rule(
            ("fasteners",),
            lambda i: any(not one.id.strip() for one in i.fasteners),
            "a fastener has no name",
            "a number or name for each fastener",
        ),
        Rule(
            ("fasteners",),
            _one_spot,
            "two fasteners stand within 3 mm of each other",
            "each fastener once, its place in mm",
        ),
    ),
    notices=(
        Notice(
            "relief_in_large_turns",
            "relief_step_turn_deg",
            lambda i, _: i.relief_step_turn_deg > QUARTER_TURN_DEG,
            "more than a quarter turn at a time can warp the head: break loose in quarter turns",
        ),
        Notice(
            "map_the_fasteners",
            "fasteners",
            lambda i, _: len({one.group for one in i.fasteners}) > 1,
            "sizes differ: map lengths and washers before the fasteners leave their holes",
        ),
    ),
    cautions=("relief_of_fasteners", "torque"),
)
