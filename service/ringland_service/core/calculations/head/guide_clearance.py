"""C31: clearance of a valve stem in its guide, by two diameters and by rocking."""

from collections.abc import Iterable
from functools import reduce

from ringland_service.core.calculations.head import _guide_checks as judged
from ringland_service.core.calculations.head._guide_fields import Inputs, Outputs, Readings
from ringland_service.core.declare import Calculation
from ringland_service.core.formulas import valves
from ringland_service.core.formulas.elementary import absolute, maximum, minimum
from ringland_service.core.metrology.candidates import Candidates, apart, largest, smallest, spread
from ringland_service.core.numbers import Number


def compute(inputs: Inputs) -> Outputs:
    """Take the stem from the guide, and the clearance from the rock."""
    i = inputs
    guide = i.guide_bore_mm if i.guide_along_mm is None else _largest(_all_guide(i))
    stem = i.stem_size_mm if i.stem_heights_mm is None else _smallest(i.stem_heights_mm)
    both = None if guide is None or stem is None else valves.guide_clearance_mm(guide, stem)
    return Outputs(
        guide_largest_mm=guide,
        guide_bell_mouth_mm=_bell_mouth_mm(i),
        guide_out_of_round_mm=_out_of_round_mm(i),
        stem_smallest_mm=stem,
        stem_taper_mm=_taper_mm(i.stem_heights_mm),
        clearance_direct_mm=both,
        clearance_from_rock_mm=_from_rock_mm(i),
    )


def _largest(values: Iterable[Number]) -> Number:
    return reduce(maximum, values)


def _smallest(values: Iterable[Number]) -> Number:
    return reduce(minimum, values)


def _axes(i: Inputs) -> list[Readings]:
    return [axis for axis in (i.guide_along_mm, i.guide_across_mm) if axis is not None]


def _all_guide(i: Inputs) -> Readings:
    return tuple(bore for axis in _axes(i) for bore in axis)


def _bell_mouth_mm(i: Inputs) -> Number | None:
    axes = _axes(i)
    if not axes:
        return None
    mouths = (_largest((a[0], a[-1])) - _smallest(a[1:-1]) for a in axes)
    return _largest(mouths)


def _out_of_round_mm(i: Inputs) -> Number | None:
    if i.guide_along_mm is None or i.guide_across_mm is None:
        return None
    pairs = zip(i.guide_along_mm, i.guide_across_mm, strict=False)
    return _largest(absolute(along - across) for along, across in pairs)


def _taper_mm(stem: Readings | None) -> Number | None:
    return None if stem is None else _largest(stem) - _smallest(stem)


def extremes(inputs: Inputs) -> dict[str, Candidates]:
    """Return what the sizes of guide and stem, and what follows of them, are taken from."""
    i, found = inputs, {}
    if i.guide_along_mm is not None:
        found["guide_largest_mm"] = largest(_all_guide(i))
        mouths = [end - mid for a in _axes(i) for end in (a[0], a[-1]) for mid in a[1:-1]]
        found["guide_bell_mouth_mm"] = largest(mouths, paired=True)
        if i.guide_across_mm is not None:
            pairs = zip(i.guide_along_mm, i.guide_across_mm, strict=False)
            found["guide_out_of_round_mm"] = apart([along - across for along, across in pairs])
    if i.stem_heights_mm is not None:
        found["stem_smallest_mm"] = smallest(i.stem_heights_mm)
        found["stem_taper_mm"] = spread(i.stem_heights_mm)
    guides = (i.guide_bore_mm,) if i.guide_along_mm is None else _all_guide(i)
    stems = (i.stem_size_mm,) if i.stem_heights_mm is None else i.stem_heights_mm
    rooms = [g - s for g in guides for s in stems if g is not None and s is not None]
    if rooms:
        several = len(guides) > 1 and len(stems) > 1
        found["clearance_direct_mm"] = largest(rooms, paired=several)
    return found


def _from_rock_mm(i: Inputs) -> Number | None:
    rock, beyond = i.rock_mm, i.rock_distance_mm
    if rock is None or beyond is None or i.guide_length_mm is None:
        return None
    return valves.clearance_from_rock_mm(rock, i.guide_length_mm, beyond)


CALCULATION = Calculation(
    name="guide-clearance",
    number="C31",
    stage="head",
    title="Valve stem to guide clearance",
    summary="Clearance of a valve stem in its guide, from two diameters and from rocking the "
    "valve. Guides wear bell-mouthed, so that rocking reads more; a bent stem looks like a worn "
    "guide: roll the stem before you condemn the guide.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    any_of=(
        (
            ("guide_bore_mm", "stem_size_mm"),
            ("guide_along_mm", "stem_size_mm"),
            ("guide_bore_mm", "stem_heights_mm"),
            ("guide_along_mm", "stem_heights_mm"),
            ("rock_mm",),
        ),
    ),
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "valve_springs", "exhaust_valves"),
)
