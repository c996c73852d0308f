"""C47: where the gaps of the rings stand round the bore, and ring pins against the windows."""

from ringland_service.core.calculations.assembly import _ring_gaps as rings
from ringland_service.core.calculations.assembly import _ring_pins as pins
from ringland_service.core.calculations.assembly._clocking_inputs import Inputs
from ringland_service.core.declare import Calculation, Check, Notice, kinds, record, result
from ringland_service.core.formulas.clocking import arc_mm, ring_end_margin_mm
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

PLANE = "plane geometry"
SMALL_BORE_DEG = 60.0
# What is looked at before the cylinder goes on: common practice, no source.
ALWAYS = (
    "piston's direction mark to the side that the maker says",
    "circlip gap at 6 or 12 o'clock, never at 3 or 9",
    "each ring's face-up mark seen, and written down",
    "each ring turns freely in its groove",
)
WITH_EXPANDER = "ends of the expander butt, they never overlap"
WITH_PINS = "ring ends straddle their pin before the cylinder goes on"


@record
class Outputs:
    """Separations, what stands too near, places that would do, and what to look at."""

    compression_gap_separation_deg: Number | None = result(
        "smallest angle between two compression gaps",
        kind=kinds.ANGLE,
        digits=0,
        basis="smallest angle round the bore, over all pairs",
        source=PLANE,
        default=None,
    )
    compression_gap_to_axis_deg: Number | None = result(
        "smallest angle from a compression gap to the thrust or the pin axis",
        kind=kinds.ANGLE,
        digits=0,
        basis="smallest angle round the bore to either end of either axis",
        source=PLANE,
        default=None,
    )
    rail_arc_from_expander_mm: Number | None = result(
        "shortest arc from a rail's gap to the expander's",
        kind=kinds.LENGTH,
        digits=1,
        basis="π times bore times the smallest angle, over 360°",
        source=PLANE,
        default=None,
    )
    rail_to_compression_gap_deg: Number | None = result(
        "smallest angle from a rail's gap to a compression gap",
        kind=kinds.ANGLE,
        digits=0,
        basis="smallest angle round the bore, over all pairs",
        source=PLANE,
        default=None,
    )
    clocked_well: bool | None = result(
        "no gap stands too near another or an axis",
        basis="the four separations against their limits",
        source=COMMON,
        common_practice=True,
        default=None,
    )
    violations: tuple[str, ...] | None = result(
        "what stands too near to what; absent where nothing does",
        basis="each pair against its limit",
        source=COMMON,
        common_practice=True,
        default=None,
    )
    proposed_gaps_deg: tuple[float, ...] | None = result(
        "places for the gaps, in the order given, that break no limit",
        kind=kinds.ANGLE,
        digits=0,
        basis="compression gaps off the axes and evenly round the bore, the expander between two, "
        "rails either side of it or across",
        source=COMMON,
        common_practice=True,
        default=None,
    )
    pin_to_window_deg: tuple[float, ...] | None = result(
        "from each pin to the nearest edge of a port window",
        kind=kinds.ANGLE,
        digits=1,
        basis="smallest angle round the bore to any edge",
        source=PLANE,
        default=None,
    )
    ring_end_margin_mm: tuple[float, ...] | None = result(
        "wall between each ring's end and the nearest window, in the order of the pins",
        kind=kinds.LENGTH,
        digits=2,
        basis="π times bore times the angle over 360°, less the half-width of the ring ends",
        source=PLANE,
        default=None,
    )
    smallest_ring_end_margin_mm: Number | None = result(
        "the smallest of these margins",
        kind=kinds.LENGTH,
        digits=2,
        basis="smallest of the margins",
        source=PLANE,
        default=None,
    )
    assembly_checks: tuple[str, ...] = result(
        "to be looked at before the cylinder goes on", basis="list of the trade", source=COMMON
    )


def compute(inputs: Inputs) -> Outputs:
    """Measure the separations of the gaps, and the margins of the ring ends."""
    gaps = inputs.gaps or ()
    compression, rails = rings.of_kind(gaps, "compression"), rings.of_kind(gaps, "rail")
    expanders = rings.of_kind(gaps, "expander")
    from_expander = rings.between_deg(rails, expanders)
    separation = rings.between_deg(compression, compression)
    to_axis = rings.nearest_axis_deg(compression, float(inputs.thrust_axis_deg))
    broken = rings.violations(inputs, gaps)
    margins = _margins_mm(inputs)
    judged = to_axis is not None or from_expander is not None
    return Outputs(
        compression_gap_separation_deg=separation,
        compression_gap_to_axis_deg=to_axis,
        rail_arc_from_expander_mm=_arc_mm(inputs, from_expander),
        rail_to_compression_gap_deg=rings.between_deg(rails, compression),
        clocked_well=not broken if judged else None,
        violations=tuple(broken) or None,
        proposed_gaps_deg=rings.proposed_deg(inputs, gaps),
        pin_to_window_deg=_to_edges_deg(inputs),
        ring_end_margin_mm=margins,
        smallest_ring_end_margin_mm=min(margins) if margins else None,
        assembly_checks=_looked_at(bool(expanders), inputs.ring_pins is not None),
    )


def _arc_mm(inputs: Inputs, angle_deg: float | None) -> Number | None:
    return None if angle_deg is None else arc_mm(inputs.bore_mm, angle_deg)


def _to_edges_deg(inputs: Inputs) -> tuple[float, ...] | None:
    if inputs.ring_pins is None or inputs.port_windows is None:
        return None
    return tuple(pins.to_edge_deg(one, inputs.port_windows) for one in inputs.ring_pins)


def _margins_mm(inputs: Inputs) -> tuple[float, ...] | None:
    edges, half = _to_edges_deg(inputs), inputs.ring_end_half_width_mm
    if edges is None or half is None:
        return None
    return tuple(float(ring_end_margin_mm(inputs.bore_mm, edge, half)) for edge in edges)


def _looked_at(expander: bool, pinned: bool) -> tuple[str, ...]:
    more = [line for line, told in ((WITH_EXPANDER, expander), (WITH_PINS, pinned)) if told]
    return (*ALWAYS, *more)


def _limit(name: str, inputs: Inputs, outputs: Outputs) -> Limit:
    return LIMITS[f"ring_clocking.{name}"].limit()


def _small_bore(inputs: Inputs, outputs: Outputs) -> bool:
    kinds_given = [one.kind for one in inputs.gaps or ()]
    if "rail" not in kinds_given or kinds_given.count("compression") < 2:
        return False
    return bool(rings.least(inputs, "rail_arc") > arc_mm(inputs.bore_mm, SMALL_BORE_DEG))


CALCULATION = Calculation(
    name="ring-clocking",
    number="C47",
    stage="assembly",
    title="Ring clocking",
    summary="Where the gaps of the piston rings stand round the bore, what stands too near, and "
    "places that would do; on a two-stroke the ring ends against the port windows. The maker's "
    "diagram wins. Rings rotate in use: clocking is for the first minutes.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    one_of=((("gaps",), ("ring_pins", "port_windows", "ring_end_half_width_mm")),),
    checks=(
        Check(
            "compression_gap_separation",
            "compression_gap_separation_deg",
            "compression gaps apart",
            "turn the rings to the proposed places",
            lambda i, o: _limit("gap_separation", i, o),
        ),
        Check(
            "compression_gap_to_axis",
            "compression_gap_to_axis_deg",
            "compression gaps off the thrust and pin axes",
            "turn the rings to the proposed places",
            lambda i, o: _limit("gap_to_axis", i, o),
        ),
        Check(
            "rail_arc_from_expander",
            "rail_arc_from_expander_mm",
            "rails from the expander's gap",
            "turn the rails to the proposed places",
            lambda i, o: _limit("rail_arc", i, o),
        ),
        Check(
            "rail_to_compression_gap",
            "rail_to_compression_gap_deg",
            "rails off the compression gaps",
            "turn the rails to the proposed places",
            lambda i, o: _limit("rail_to_gap", i, o),
        ),
        Check(
            "ring_end_margin",
            "smallest_ring_end_margin_mm",
            "wall between ring ends and port windows",
            "measure pin and window edges again, on the cylinder itself",
            lambda i, o: _limit("ring_end_margin", i, o),
            doubt_fails="a ring end that catches in a port wrecks the engine: doubt counts as "
            "too little",
        ),
    ),
    rules=(*rings.RULES, *pins.RULES),
    notices=(
        Notice(
            "small_bore",
            "rail_arc_from_expander_mm",
            _small_bore,
            "in so small a bore the rails cannot stand either side of the expander and off the "
            "compression gaps as well: ask for the maker's diagram",
        ),
        Notice(
            "pins_not_counted",
            "ring_count",
            lambda i, _: i.ring_pins is not None and i.ring_count is None,
            "count the rings too: one pin a ring",
        ),
    ),
    cautions=("ring_fitting",),
)
