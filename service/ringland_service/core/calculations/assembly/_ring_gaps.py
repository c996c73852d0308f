"""Gaps of the rings round the bore: how far apart they stand, and where they could go."""

import itertools
import math
from collections.abc import Iterable, Sequence
from typing import Any

from ringland_service.core.declare import Rule, choice, quantity, record, text
from ringland_service.core.formulas.clocking import arc_mm, separation_deg, to_axis_deg
from ringland_service.core.metrology.limits import LIMITS
from ringland_service.core.quantities import assembly as quantities

GAP_KIND: dict[str, str] = {
    "compression": "compression ring, or an oil ring in one piece",
    "expander": "expander of the oil ring",
    "rail": "rail of the oil ring",
}
# Places for 1, 2 and 3 compression gaps, and for the expander, from the thrust axis.
COMPRESSION_DEG: dict[int, tuple[float, ...]] = {
    1: (45.0,),
    2: (45.0, 225.0),
    3: (45.0, 165.0, 285.0),
}
EXPANDER_DEG: dict[int, float] = {1: 225.0, 2: 135.0, 3: 105.0}
# Rails either side of the expander, else across from it: offsets from its gap.
RAIL_OFFSETS_DEG: tuple[tuple[float, float], ...] = ((-40, 40), (-60, 60), (160, 200), (120, 240))
TOLERANCE = 1e-9


@record
class Gap:
    """One ring's gap."""

    name: str = text("name of the ring", example="top", longest=30)
    kind: str = choice("kind of ring", GAP_KIND, example="compression")
    angle_deg: float = quantity(quantities.ROUND_THE_BORE, "where its gap stands", example=45.0)


def gap(name: str, kind: str, angle_deg: float) -> Gap:
    """Return a gap."""
    return Gap(name=name, kind=kind, angle_deg=angle_deg)


def of_kind(gaps: Iterable[Gap], kind: str) -> list[Gap]:
    """Return the gaps of one kind of ring, in order."""
    return [one for one in gaps if one.kind == kind]


def between_deg(ones: Iterable[Gap], others: Iterable[Gap]) -> float | None:
    """Return the smallest angle between any of the ones and any of the others, None without."""
    pairs = itertools.product(ones, others)
    return min((_apart(a, b) for a, b in pairs if a is not b), default=None)


def _apart(one: Gap, other: Gap) -> float:
    return float(separation_deg(one.angle_deg, other.angle_deg))


def nearest_axis_deg(gaps: Iterable[Gap], thrust_axis_deg: float) -> float | None:
    """Return the smallest angle from any gap to thrust or pin axis, None without gaps."""
    angles = (float(to_axis_deg(one.angle_deg, thrust_axis_deg)) for one in gaps)
    return min(angles, default=None)


def least(i: Any, name: str) -> float:
    """Return the least that is asked for: the request's own limit, else the common one."""
    own: float | None = getattr(i, f"own_{name}")
    return float(own if own is not None else LIMITS[f"ring_clocking.{name}"].low or 0.0)


def violations(i: Any, gaps: Sequence[Gap]) -> list[str]:
    """Return what stands too near to what, in words."""
    compression, rails = of_kind(gaps, "compression"), of_kind(gaps, "rail")
    expanders = of_kind(gaps, "expander")
    found = _too_near(itertools.combinations(compression, 2), least(i, "gap_separation"))
    found += _at_axis(compression, i.thrust_axis_deg, least(i, "gap_to_axis"))
    found += _short_arcs(itertools.product(rails, expanders), i.bore_mm, least(i, "rail_arc"))
    found += _too_near(itertools.product(rails, compression), least(i, "rail_to_gap"))
    return found


def _below(value: float, floor: float) -> bool:
    return floor - value > TOLERANCE * max(abs(floor), 1.0)


def _too_near(pairs: Iterable[tuple[Gap, Gap]], floor_deg: float) -> list[str]:
    return [
        f"{a.name} and {b.name} stand {_apart(a, b):.4g}° apart, under {floor_deg:.4g}°"
        for a, b in pairs
        if _below(_apart(a, b), floor_deg)
    ]


def _at_axis(gaps: Iterable[Gap], thrust_axis_deg: float, floor_deg: float) -> list[str]:
    near = [(one, float(to_axis_deg(one.angle_deg, thrust_axis_deg))) for one in gaps]
    return [
        f"{one.name} stands {angle:.4g}° from the thrust or pin axis, under {floor_deg:.4g}°"
        for one, angle in near
        if _below(angle, floor_deg)
    ]


def _short_arcs(pairs: Iterable[tuple[Gap, Gap]], bore_mm: float, floor_mm: float) -> list[str]:
    arcs = [(a, b, float(arc_mm(bore_mm, _apart(a, b)))) for a, b in pairs]
    return [
        f"{a.name} stands {arc:.1f} mm of arc from {b.name}, under {floor_mm:.4g} mm"
        for a, b, arc in arcs
        if _below(arc, floor_mm)
    ]


def proposed_deg(i: Any, gaps: Sequence[Gap]) -> tuple[float, ...] | None:
    """Return places for the gaps that break no limit, in their order; None where none is known."""
    count = len(of_kind(gaps, "compression"))
    if count not in COMPRESSION_DEG:
        return None
    for offsets in RAIL_OFFSETS_DEG:
        moved = _placed(gaps, i.thrust_axis_deg, count, offsets)
        if not violations(i, moved):
            return tuple(one.angle_deg for one in moved)
    return None


def _placed(
    gaps: Sequence[Gap], thrust_axis_deg: float, count: int, offsets: tuple[float, float]
) -> list[Gap]:
    expander = EXPANDER_DEG[count]
    places = {
        "compression": iter(COMPRESSION_DEG[count]),
        "expander": iter((expander,)),
        "rail": iter([expander + offset for offset in offsets]),
    }
    angles = [math.fmod(thrust_axis_deg + next(places[one.kind]), 360.0) % 360.0 for one in gaps]
    return [gap(one.name, one.kind, a) for one, a in zip(gaps, angles, strict=True)]


def _too_many(i: Any) -> bool:
    return len(of_kind(i.gaps, "expander")) > 1 or len(of_kind(i.gaps, "rail")) > 2


RULES = (
    Rule(
        ("gaps",),
        lambda i: len({one.name.strip() for one in i.gaps}) < len(i.gaps),
        "two rings have one name",
        "a name of its own for each ring, such as top, second, expander, upper rail, lower rail",
    ),
    Rule(
        ("gaps",),
        _too_many,
        "more than one expander or two rails",
        "one piston's rings: an oil ring has one expander and two rails",
    ),
)
